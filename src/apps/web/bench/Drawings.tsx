import { useComputed } from "@preact/signals";
import { LivePicture } from "../kit/Picture.tsx";
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
export const Strip = () => <LivePicture svg={strip} kind="strip" />;

function Pictures() {
  const section = useComputed(() => pictures.value?.section ?? null);
  const window = useComputed(() => pictures.value?.window ?? null);
  return (
    <div class="pictures">
      <LivePicture svg={section} kind="sheet" />
      <LivePicture svg={window} kind="sheet" />
    </div>
  );
}
