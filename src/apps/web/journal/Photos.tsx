import { useSignal } from "@preact/signals";
import type { ComponentChildren } from "preact";
import { useCallback, useEffect, useRef } from "preact/hooks";
import { journalWords as words } from "../../../sheets/words/journalPageWords.ts";
import { InView } from "../kit/InView.tsx";
import { pictureOf } from "./journalState.ts";
import "./photos.css";

/** Photos as small pictures in a row, each of which opens big. `of` is what they show, `beside` what stands under each. */
export function Photos(props: {
  readonly names: readonly string[];
  readonly of: string;
  readonly beside?: (name: string) => ComponentChildren;
}) {
  const { names, of, beside } = props;
  if (names.length === 0) return null;
  return (
    <ul class="photos">
      {names.map((name, i) => (
        <li key={name}>
          <Photo name={name} says={words.photoOf(i + 1, names.length, of)} />
          {beside?.(name)}
        </li>
      ))}
    </ul>
  );
}

/** It is fetched when it comes near to view, and its bytes are let go with it. */
function Photo({ name, says }: { readonly name: string; readonly says: string }) {
  const address = useSignal<string | null>(null);
  const away = useSignal(false);
  const wanted = useRef(false);
  const big = useRef<HTMLDialogElement>(null);
  const look = useCallback(
    async (inView: boolean) => {
      if (!inView || wanted.current) return;
      wanted.current = true;
      const picture = await pictureOf(name);
      away.value = picture === null;
      address.value = picture && URL.createObjectURL(picture);
      wanted.current = picture !== null;
    },
    [name],
  );
  useEffect(
    () => () => {
      if (address.peek()) URL.revokeObjectURL(address.peek() as string);
    },
    [],
  );
  const waits = away.value ? words.photoAway : words.photoComing;
  return (
    <InView kind="photo-small" look={look}>
      <button
        type="button"
        aria-label={address.value ? says : `${says}: ${waits}`}
        onClick={() => (address.value ? big.current?.showModal() : void look(true))}
      >
        {address.value ? <img class="small" src={address.value} alt="" decoding="async" /> : <span>{waits}</span>}
      </button>
      <dialog ref={big} class="photo-big" aria-label={says}>
        {address.value && <img class="big" src={address.value} alt={says} />}
        <button type="button" onClick={() => big.current?.close()}>
          {words.closePhoto}
        </button>
      </dialog>
    </InView>
  );
}
