import type { About, ActForm } from "../../../sheets/journal/act.ts";
import type { DueShown } from "../../../sheets/journal/dueShown.ts";
import type { HeldShown } from "../../../sheets/journal/heldShown.tsx";
import type { JobShown } from "../../../sheets/journal/jobShown.ts";
import type { PassportShown } from "../../../sheets/journal/passportShown.tsx";
import type { JobOnWall } from "../../../sheets/journal/standingShown.ts";
import type { SumTexts } from "../../../sheets/sums/sumField.ts";
import type { ActName } from "../../../sheets/words/actWords.ts";
import type { InputProblem } from "../../../sheets/words/problemWords.ts";
import type { Texts } from "../bench/benchTexts.ts";
import type { PortBrought } from "../bench/broughtPort.ts";

/** What a page looks at. */
export type View =
  | { readonly name: "standing" }
  | { readonly name: "job"; readonly job: string }
  | { readonly name: "port"; readonly port: string }
  | { readonly name: "due" }
  | { readonly name: "held" };

export type Shown = {
  readonly standing: readonly JobOnWall[];
  readonly job: JobShown | null;
  readonly port: PassportShown;
  readonly due: readonly DueShown[];
  readonly held: readonly HeldShown[];
};

/** What is written down: an act with what was typed, and of which job; or what puts an earlier entry right. */
export type Draft = {
  readonly act: ActName;
  readonly about: About;
  readonly job: string | null;
  readonly by: string;
  readonly texts: SumTexts;
  /** The entry that this takes the place of, and why. */
  readonly corrects: { readonly entry: string; readonly reason: string } | null;
  /** Gates that are taken on oneself, with the reason. */
  readonly overrides: { readonly gates: readonly GateShut[]; readonly reason: string } | null;
};

export type GateShut = {
  readonly gate: string;
  readonly port: string | null;
  readonly sentence: string;
  readonly mayOverride: boolean;
};

/** What became of what was to be written. */
export type Outcome =
  | { readonly type: "written"; readonly job: string | null }
  | { readonly type: "problems"; readonly problems: readonly InputProblem[] }
  | { readonly type: "shut"; readonly gates: readonly GateShut[] }
  /** Nothing was written: the workshop is there, and asks who takes it on himself for his PIN. */
  | { readonly type: "pin"; readonly pin: PinAsked }
  | { readonly type: "trouble"; readonly sentence: string };

/** How this device stands to the workshop. */
export type Status = {
  readonly paired: boolean;
  readonly workshop: string | null;
  readonly device: string | null;
  readonly persons: readonly { readonly person: string; readonly called: string }[];
  /** Entries that are kept here and are not yet at the workshop. */
  readonly waiting: number;
  /** Photos that entries name and that are here alone. */
  readonly photosWaiting: number;
  /** Whether the workshop answered the last time it was asked; null before it was. */
  readonly reached: boolean | null;
  /** What stands in the way, where it is more than a network away. */
  readonly trouble: string | null;
  /** Whether the workshop shut this device out; a new code lets it in again. */
  readonly shutOut: boolean;
  /** Whose PIN an override waits for before it goes to the workshop. */
  readonly pin: PinAsked | null;
};

/** Whose PIN is asked for; `set` where he has one. */
export type PinAsked = { readonly person: string; readonly called: string; readonly set: boolean };

export type PortOfJob = { readonly job: string; readonly port: string };

export type Request =
  | { readonly ask: "look"; readonly view: View | null }
  /** The page came back into view: whatever came meanwhile is fetched. */
  | { readonly ask: "wake" }
  | { readonly ask: "form"; readonly id: number; readonly draft: Omit<Draft, "overrides"> }
  | { readonly ask: "write"; readonly id: number; readonly draft: Draft }
  /** A port for the bench, and what was weighed there to be written down. */
  | ({ readonly ask: "bring"; readonly id: number } & PortOfJob)
  | ({ readonly ask: "weighed"; readonly id: number; readonly by: string; readonly texts: Texts } & PortOfJob)
  | {
      readonly ask: "withdraw";
      readonly id: number;
      readonly entry: string;
      readonly job: string;
      readonly by: string;
      readonly reason: string;
    }
  /** A person's PIN: proven for the overrides that wait, or set where there was none. */
  | {
      readonly ask: "pin";
      readonly id: number;
      readonly person: string;
      readonly pin: string;
      readonly set: boolean;
      /** The PIN before, where another one is set. */
      readonly was: string | null;
    }
  | { readonly ask: "pair"; readonly id: number; readonly code: string; readonly name: string }
  /** A photo that was taken or chosen is kept here, to be named by what is written. */
  | { readonly ask: "take"; readonly id: number; readonly file: Blob }
  /** A photo is taken off a form again. */
  | { readonly ask: "drop"; readonly photo: string }
  | { readonly ask: "picture"; readonly id: number; readonly photo: string };

export type Reply =
  | { readonly about: "status"; readonly status: Status }
  | { readonly about: "view"; readonly view: View; readonly shown: Shown[keyof Shown] }
  | { readonly about: "form"; readonly id: number; readonly form: ActForm }
  | { readonly about: "outcome"; readonly id: number; readonly outcome: Outcome }
  | { readonly about: "brought"; readonly id: number; readonly brought: PortBrought }
  /** The name of a photo that was kept. */
  | { readonly about: "taken"; readonly id: number; readonly photo: string }
  /** A photo to look at; null where it can be had neither here nor at the workshop. */
  | { readonly about: "picture"; readonly id: number; readonly picture: Blob | null };

/** How a device stands of which nothing is known yet. */
export const notPaired: Status = {
  paired: false,
  workshop: null,
  device: null,
  persons: [],
  waiting: 0,
  photosWaiting: 0,
  reached: null,
  trouble: null,
  shutOut: false,
  pin: null,
};
