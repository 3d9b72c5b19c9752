import { render } from "preact-render-to-string";
import type { Weighed } from "../../mechanics/remedies/weigh.ts";
import { PortSection } from "../drawings/section/PortSection.tsx";
import { WindowBar } from "../drawings/window/WindowBar.tsx";
import { commonTorque, WindowStrip } from "../drawings/window/WindowStrip.tsx";
import { type BenchOdds, benchOdds, type TriedTorque } from "./benchOdds.tsx";
import { sectionOf, windowOf } from "./pictures.ts";

/** The drawings of the bench's answer, each as the text of its SVG. */
export type BenchPictures = {
  /** The window in small; null where there is none. */
  readonly strip: string | null;
  /** Null where nobody looks at them. */
  readonly pictures: {
    readonly section: string;
    readonly window: string | null;
    readonly odds: BenchOdds | null;
  } | null;
};

/** The port as found, drawn; where somebody looks at it, its section, and the odds at the torque that was tried. */
export function benchPictures(weighed: Weighed, tried: TriedTorque, looked: boolean): BenchPictures {
  const { asFound, portCase } = weighed;
  const window = windowOf(portCase, asFound, caption);
  return {
    strip: window && render(<WindowStrip window={window} to_Nm={commonTorque([window])} />),
    pictures: looked
      ? {
          section: render(<PortSection section={sectionOf(portCase, asFound)} caption={caption} />),
          window: window && render(<WindowBar {...window} />),
          odds: benchOdds(weighed, tried),
        }
      : null,
  };
}

const caption = "As found";
