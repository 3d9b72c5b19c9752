import type { ComponentProps } from "preact";
import { remedyIds } from "../../../mechanics/remedies/method.ts";
import { remedyNames } from "../../../sheets/words/remedyWords.ts";
import { Chooser } from "../kit/Chooser.tsx";

/** One of all the ways of closing a port, by their names. */
export function RemedyChooser(props: Omit<ComponentProps<typeof Chooser>, "taps">) {
  return <Chooser {...props} taps={remedyIds.map((id) => ({ value: id, word: remedyNames[id] }))} />;
}
