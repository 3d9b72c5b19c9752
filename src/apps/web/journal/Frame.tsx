import type { ComponentChildren } from "preact";
import { useEffect } from "preact/hooks";
import { journalWords as words } from "../../../sheets/words/journalPageWords.ts";
import { look, shownOf, status } from "./journalState.ts";
import { Kept } from "./Kept.tsx";
import type { Shown, View } from "./messages.ts";
import { Newer } from "./Newer.tsx";
import { PairPart } from "./PairPart.tsx";
import { PinPart } from "./PinPart.tsx";

/** A page of the journal: where what is written stands, and what it shows; before it is paired, how to pair it. */
export function Frame<V extends View["name"]>(props: {
  readonly view: Extract<View, { name: V }>;
  readonly children: (shown: Shown[V]) => ComponentChildren;
}) {
  const { view, children } = props;
  useEffect(() => {
    look(view);
    return () => look(null);
  }, [JSON.stringify(view)]);
  const known = status.value;
  const shown = shownOf<V>(view);
  if (!known) return <p class="begin">{words.moment}</p>;
  if (!known.paired)
    return (
      <div class="journal">
        <Newer />
        <PairPart trouble={known.trouble} again={false} />
      </div>
    );
  return (
    <div class="journal">
      <Kept status={known} />
      <Newer />
      {known.shutOut && <PairPart trouble={null} again={true} />}
      {known.pin && <PinPart key={known.pin.person} pin={known.pin} why={words.pinWaits(known.pin.called)} />}
      {shown === undefined ? <p class="begin">{words.moment}</p> : children(shown)}
    </div>
  );
}
