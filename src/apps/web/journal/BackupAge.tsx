import { useSignal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import { backupLine } from "../../../sheets/words/backupWords.ts";
import { status } from "./journalState.ts";

/** How old the workshop's last daily backup is, as its server tells; nothing where it is out of reach, or keeps no journal. */
export function BackupAge() {
  const line = useSignal("");
  const reached = status.value?.reached === true;
  useEffect(() => {
    if (!reached) return;
    const ask = async (): Promise<void> => {
      try {
        const told: Health = await (await fetch("health")).json();
        line.value = told.backup === undefined ? "" : backupLine(told.backup);
      } catch {
        line.value = "";
      }
    };
    void ask();
    const timer = setInterval(ask, every_ms);
    return () => clearInterval(timer);
  }, [line, reached]);
  return reached && line.value !== "" && <p class="hint">{line}</p>;
}

type Health = { readonly backup?: { readonly age_h: number } | null };

/** A page on the wall stays open for weeks. */
const every_ms = 10 * 60_000;
