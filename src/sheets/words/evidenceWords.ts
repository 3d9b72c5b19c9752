import type { TorqueEvidence } from "../../journal/shop/instruments.ts";

/** What a pull is worth afterwards: any wrench may tighten, not every one may claim. */
export const evidenceWords: Readonly<Record<TorqueEvidence, string>> = {
  "in range and in date": "may be claimed",
  "out of range": "out of its range, tightens and may not claim",
  "out of date": "calibration over, tightens and may not claim",
  "date not known": "calibration not known, tightens and may not claim",
  "no wrench named": "no wrench named, may not be claimed",
  "not a wrench known here": "wrench not known here, may not be claimed",
};
