import { useSignal } from "@preact/signals";
import { journalWords as words } from "../../../sheets/words/journalPageWords.ts";
import { bring } from "../bench/broughtPort.ts";
import { broughtFrom } from "./journalState.ts";
import type { PortOfJob } from "./messages.ts";

/** Takes a port to the bench, with what the journal knows of it. */
export function WeighTap({ job, port }: PortOfJob) {
  const lost = useSignal(false);
  const weigh = async (): Promise<void> => {
    const brought = await broughtFrom({ job, port });
    lost.value = brought === null;
    if (!brought) return;
    bring(brought);
    location.hash = "#/";
  };
  return (
    <p class="row">
      <button type="button" class="tap" onClick={weigh}>
        {words.weigh}
      </button>
      {lost.value && <span role="alert">{words.notBrought}</span>}
    </p>
  );
}
