import { useComputed } from "@preact/signals";
import type { ComponentChildren } from "preact";
import { notCountedYet } from "../../../sheets/words/benchWords.ts";
import { type PartName, partWords } from "../../../sheets/words/fieldWords.ts";
import { fieldId } from "../kit/NumberField.tsx";
import { addElement, elements, removeElement } from "./benchState.ts";
import { benchLists, isGiven, type ListName } from "./benchTexts.ts";
import { opened, text } from "./laidTexts.ts";
import { Reading } from "./Reading.tsx";

/** Everything that is read at the port, in the order in which it is come by. What stays empty widens the answer. */
export function Readings() {
  return (
    <>
      <section class="part" aria-labelledby="joint">
        <h2 id="joint" tabIndex={-1}>
          {partWords.joint}
        </h2>
        {named("joint.kind", "thread", "case.material")}
      </section>
      <section class="part" aria-labelledby="left">
        <h2 id="left" tabIndex={-1}>
          {partWords.left}
        </h2>
        {named("left.turns", "left.counted", "left.condition", "left.catch", "left.withWasher", "healthyTurns")}
        <WithCount />
      </section>
      <Fold part="lengths">
        {named("plug.underHead", "case.threadDepth", "case.roomBehind", "case.thinnestWall", "plug.headDiameter")}
        {named("plug.chamfer", "left.goodFrom", "left.goodTo", "left.height", "plug.propertyClass", "plug.original")}
      </Fold>
      <Fold part="seal">
        {named("seal.kind", "seal.material", "seal.outside", "seal.inside", "seal.thickness")}
        <OfORing />
        {named("surface", "seal.original")}
      </Fold>
      <Fold part="book">
        <List list="bookFigures" title="Book figure" keys={["torque", "source", "seal", "surface"]} />
        <List list="wrenches" title="Wrench" keys={["name", "kind", "least", "most", "step", "calibrated"]} />
      </Fold>
      <Fold part="wish">
        {named("wish.today", "wish.opensAgain", "wish.ceiling", "temperature", "prevailing", "asked.alloyTested")}
        {named("asked.waterTest", "wish.afterRepair")}
      </Fold>
    </>
  );
}

const named = (...names: readonly string[]) => names.map((name) => <Reading key={name} name={name} />);

/** Asked only where there is a count to ask about. */
function WithCount() {
  return text("healthyTurns").value === "" ? null : <Reading name="healthyWithWasher" />;
}

/** Only an O-ring lies in a chamfer. */
function OfORing() {
  return text("seal.kind").value === "O-ring" && <Reading name="seal.chamfer" />;
}

/** A part that may be folded away; whether it was open is kept with the port. */
function Fold({ part, children }: { readonly part: PartName; readonly children: ComponentChildren }) {
  return (
    <details
      class="part fold"
      open={opened.value.has(part)}
      onToggle={(event) => {
        const open = new Set(opened.peek());
        if (event.currentTarget.open) open.add(part);
        else open.delete(part);
        opened.value = open;
      }}
    >
      <summary>
        <h2 id={part} tabIndex={-1}>
          {partWords[part]}
        </h2>
      </summary>
      {children}
    </details>
  );
}

/** What an element still lacks before it counts. */
function Lacking({ list, at }: { readonly list: ListName; readonly at: number }) {
  const lacking = useComputed(() =>
    benchLists[list].map((key) => `${list}.${at}.${key}`).filter((name) => !isGiven(text(name).value)),
  );
  return lacking.value.length > 0 && <p class="hint">{notCountedYet(lacking.value)}</p>;
}

/** Hands the keyboard to the first field of a new element, once it is there. */
const added = (name: string): void => {
  requestAnimationFrame(() => document.getElementById(fieldId(name))?.focus());
};

/** The elements of a list, and a tap for one more. */
function List(props: { readonly list: ListName; readonly title: string; readonly keys: readonly string[] }) {
  const { list, title, keys } = props;
  return (
    <>
      {elements(list).map((at, i) => (
        <fieldset class="element" key={at}>
          <legend>
            {title} {i + 1}
          </legend>
          {keys.map((key) => (
            <Reading key={key} name={`${list}.${at}.${key}`} />
          ))}
          <Lacking list={list} at={at} />
          <button type="button" class="plain" onClick={() => removeElement(list, at)}>
            Take {title.toLowerCase()} {i + 1} away
          </button>
        </fieldset>
      ))}
      <button type="button" class="plain add" onClick={() => added(addElement(list))}>
        + {title}
      </button>
    </>
  );
}
