import { Picture } from "../kit/Picture.tsx";
import { pictures } from "./benchState.ts";
import { Odds } from "./Odds.tsx";

/** The port as found, its window, and a hundred like it. */
export function Drawings() {
  return (
    <>
      <Pictures />
      <Odds />
    </>
  );
}

function Pictures() {
  const drawn = pictures.value;
  return (
    <div class="pictures">
      {drawn && <Picture svg={drawn.section} kind="sheet" />}
      {drawn?.window && <Picture svg={drawn.window} kind="sheet" />}
    </div>
  );
}
