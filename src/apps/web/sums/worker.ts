import type { SumName, SumRead } from "../../../sheets/sums/sumAnswer.ts";
import type { SumTexts } from "../../../sheets/sums/sumField.ts";
import type { SumReply, SumRequest } from "./messages.ts";

/** The sums beside the page: naming a thread weighs some hundreds, so no tap waits for it. Each is fetched when it is first asked. */
const sums: Readonly<Record<SumName, () => Promise<(texts: SumTexts, today: string) => SumRead>>> = {
  thread: async () => (await import("../../../sheets/sums/threadSum.tsx")).threadSum,
  level: async () => (await import("../../../sheets/sums/levelSum.tsx")).levelSum,
  drip: async () => (await import("../../../sheets/sums/dripSum.tsx")).dripSum,
  cure: async () => (await import("../../../sheets/sums/cureSum.tsx")).cureSum,
  convert: async () => (await import("../../../sheets/sums/convertSum.tsx")).convertSum,
};

const page = self as unknown as { postMessage(reply: SumReply): void };

addEventListener("message", async ({ data: { name, texts, today } }: MessageEvent<SumRequest>) => {
  try {
    const sum = await sums[name]();
    page.postMessage({ name, part: "read", read: sum(texts, today) });
    fetchOthers();
  } catch (cause) {
    page.postMessage({ name, part: "fault", message: cause instanceof Error ? cause.message : String(cause) });
  }
});

/** Behind the first answer the other sums are fetched, for when there is no network. */
function fetchOthers(): void {
  for (const sum of Object.values(sums)) sum().catch(() => {});
}
