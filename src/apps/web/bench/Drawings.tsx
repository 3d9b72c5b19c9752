import { Picture } from "../kit/Picture.tsx";
import { pictures, strip } from "./benchState.ts";
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

/** The window in small, beside the figure. */
export function Strip() {
  return strip.value && <Picture svg={strip.value} kind="strip" />;
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
