import type { SealKind } from "../../mechanics/joint/port.ts";
import { isTaper, type TaperThread } from "../../mechanics/threads/thread.ts";
import { threadFromText } from "../../mechanics/threads/threadText.ts";
import type { WrittenCase } from "./caseSchema.ts";

/** A seal that was written down for a thread that seals on its own flanks. */
export type RingOfTaper = { readonly kind: SealKind; readonly thread: TaperThread };

/**
 * A case without the seal that it gives a taper thread, as one typed for the port before, and what that was; the case as it is
 * where there is none.
 */
export function withoutRingOfTaper(written: WrittenCase): {
  readonly counted: WrittenCase;
  readonly ring: RingOfTaper | null;
} {
  const kind = written.seal?.kind;
  const none = { counted: written, ring: null };
  if (kind === undefined || kind === "taper" || kind === "none" || typeof written.thread !== "string") return none;
  const read = threadFromText(written.thread);
  if (!read.ok || !isTaper(read.thread)) return none;
  const { seal: _, ...counted } = written;
  return { counted, ring: { kind, thread: read.thread } };
}
