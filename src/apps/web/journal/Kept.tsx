import { journalWords as words } from "../../../sheets/words/journalPageWords.ts";
import type { Status } from "./messages.ts";

/** Where what was written stands: here, or at the workshop too; honest, small, and never in the way. */
export function Kept({ status }: { readonly status: Status }) {
  const { waiting, photosWaiting, reached, trouble, workshop, device } = status;
  const level = reached === true && waiting + photosWaiting === 0;
  const beside = trouble ?? (reached === false ? words.away : "");
  return (
    <p class="kept" role="status" data-level={level ? "" : undefined}>
      <span class="sign" aria-hidden="true">
        {level ? "✓" : "○"}
      </span>
      <span>
        <b>{level ? words.atWorkshop : words.keptHere(waiting, photosWaiting)}</b> {beside && `${beside} `}
        <span class="whose">
          {workshop}, {device}
        </span>
      </span>
    </p>
  );
}
