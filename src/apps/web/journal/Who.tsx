import { journalWords as words } from "../../../sheets/words/journalPageWords.ts";
import { Taps } from "../kit/Taps.tsx";
import { by, status, tapName } from "./journalState.ts";

/** Who writes, by a tap on the name. */
export function Who() {
  const persons = status.value?.persons ?? [];
  return (
    <Taps
      name="who-writes"
      label={words.who}
      hint={persons.length === 0 ? words.nobody : undefined}
      taps={persons.map(({ person, called }) => ({ value: person, word: called }))}
      value={by}
      // A name that is tapped again is meant again.
      give={(person) => person !== "" && tapName(person)}
    />
  );
}
