import type { Caution } from "../../mechanics/tables/methodCautions.ts";
import { stopWords } from "./callWords.ts";
import { cautionSentences } from "./cautionWords.ts";
import type { FieldWords } from "./fieldWords.ts";
import { erasesForGood } from "./ownerCardWords.ts";

/** What can be written down of a port, of a unit, and of the machine as a whole, by the name of its form. */
export type PortActName =
  | "loose"
  | "stuck"
  | "out"
  | "washersOut"
  | "washersIn"
  | "turns"
  | "byHand"
  | "torqued"
  | "letGo"
  | "dry"
  | "checked"
  | "closed"
  | "cure"
  | "held"
  | "holdEnded"
  | "asked"
  | "found";
export type UnitActName = "drained" | "filled" | "level" | "drawn";
export type MachineActName = "note" | "paper" | "nearMiss" | "released" | "left" | "done" | "unitNoted" | "follows";
export type DecisionActName = "offered" | "decided";
export type RepairActName = "prepared" | "repaired" | "tagged" | "warned";
export type CallActName = "call" | "answered";
export type MeasureActName = "measured" | "named" | "material" | "judged" | "watched" | "pressed";
export type ArrivalActName = "levelFound" | "flushed" | "agreed" | "meter" | "ordered";
export type OwnerActName = "owner" | "erased";
export type NoticeActName = "noticed" | "settled";
/** What is written once the machine has gone. */
export type AfterActName = "looked" | "notReached" | "planned" | "cameBack";
export type WorkshopActName = "open" | "person" | "personLeft" | "wrench" | "workshopNamed";
export type BookedActName = "booked" | "promised";
/** What comes to the shelf and goes from it, and what keeps tools and fingers true. */
export type ShelfActName = "tube" | "drum" | "usedUp" | "calibrated" | "retired" | "finger";
export type BookActName = "figure" | "struck" | "laidDown" | "costs";
export type ActName =
  | PortActName
  | UnitActName
  | MachineActName
  | DecisionActName
  | RepairActName
  | CallActName
  | MeasureActName
  | ArrivalActName
  | OwnerActName
  | NoticeActName
  | AfterActName
  | WorkshopActName
  | BookedActName
  | ShelfActName
  | BookActName;

/** The word on the tap, past tense: it is written down once it is done. */
export const actTitles: Readonly<Record<ActName, string>> = {
  loose: "Broken loose",
  stuck: "Would not open",
  out: "Plug out",
  washersOut: "Washers out",
  washersIn: "Washers in",
  turns: "Turns counted",
  byHand: "By hand",
  torqued: "Torqued",
  letGo: "Let go",
  dry: "Looked for drips",
  checked: "Second pair of eyes",
  closed: "Found closed",
  cure: "Sealant closed",
  held: "Held for now",
  holdEnded: "No longer held for now",
  asked: "Six questions",
  found: "Photo, what was found",
  drained: "Drained",
  filled: "Filled",
  level: "Level checked",
  drawn: "Drawn down",
  note: "Note",
  paper: "Paper made",
  nearMiss: "Near miss",
  released: "Released",
  left: "Left not running",
  done: "Job closed",
  unitNoted: "Another unit",
  follows: "Follows a job",
  offered: "Ways offered",
  decided: "Owner decided",
  prepared: "Made dry",
  repaired: "Repaired",
  tagged: "Tag hung",
  warned: "For the next hand",
  call: "A call",
  answered: "Caller answered",
  measured: "Measured",
  named: "Thread named",
  material: "Case made of",
  judged: "Plug judged",
  watched: "Watched for wet",
  pressed: "Pressure tried",
  levelFound: "Level as it came",
  flushed: "Washed out",
  agreed: "Agreed",
  meter: "Meter read",
  ordered: "Ordered",
  owner: "Owner",
  erased: "Owner erased",
  noticed: "Also noticed",
  settled: "Settled",
  looked: "Looked again",
  notReached: "Not reached",
  planned: "Look again planned",
  cameBack: "Came back",
  open: "Open a job",
  booked: "Booked in",
  promised: "Promised for",
  person: "Add a name",
  personLeft: "Take a name off",
  workshopNamed: "The workshop's name",
  wrench: "Add a wrench",
  tube: "Sealant bought",
  drum: "Fluid bought",
  usedUp: "Used up",
  calibrated: "Wrench calibrated",
  retired: "Tool put away",
  finger: "Own finger measured",
  figure: "Figure from a book",
  struck: "Figure struck",
  laidDown: "Service laid down",
  costs: "Costs settled",
};

/** What stands over the taps that lie behind the first ones. */
export const groupTitles = {
  hands: "Plug and washers",
  thread: "The thread",
  repair: "Repair",
  fluid: "Fluid",
  machine: "Machine",
  owner: "Owner",
  after: "Afterwards",
  shelf: "On the shelf",
  tools: "Tools and fingers",
  names: "Names",
} as const;
export type GroupName = keyof typeof groupTitles;

const minding = (...cautions: readonly Caution[]): readonly string[] => cautions.map((it) => cautionSentences[it]);

/** Cautions where they hurt: before the hand does it. */
export const actMinds: { readonly [N in ActName]?: readonly string[] } = {
  loose: minding("engine off and key away", "lift or stands first", "hot oil"),
  drained: [...minding("waste oil caught"), "Is the fill open, is it the right unit, is the pan large enough?"],
  filled: ["Does the name on the drum match the unit's sheet, and is this the right unit?"],
  torqued: ["Gloves off the scale: number, wrench, seal and thread condition read once more."],
  held: minding("do not start"),
  cure: [
    ...minding("sealant on skin", "cure before it runs"),
    "The label must name this fluid: gear oil softens ordinary silicone.",
  ],
  asked: ["What nobody answers is not a no: every make-do waits for it."],
  letGo: ["Stop here, and never a bit more: count the turns that are left before any pull."],
  looked: [
    "Nobody's word is taken for it: what was not looked at is not dry. If it weeps, drips or failed, write down next what came back.",
  ],
  decided: [
    "If the better repair is refused, the limits of the make-do go into the owner's hand. No signature frees anybody from handing over something dangerous.",
  ],
  prepared: minding("solvent aired", "eyes and swarf", "nothing moving behind", "magnesium burns"),
  tagged: minding("next man told"),
  call: [stopWords],
  answered: [stopWords, ...minding("oil on the road")],
  erased: [erasesForGood],
  pressed: minding("pump limited"),
  material: minding("magnesium burns"),
  left: ["Locked, on a trailer or by hand: it does not run."],
};

export const portFieldWords = {
  hard: { label: "How hard?" },
  torque: { label: "Broke loose at", hint: "Where a wrench showed it." },
  words: { label: "In your words" },
  count: { label: "How many?", hint: "None is a count, too: 0." },
  because: { label: "Why as many?", hint: "Where another count goes in than came out." },
  enteredBecause: { label: "Why do you enter it for him?" },
  turns: { label: "Turns, catch to seat", hint: "By hand, in gloves. Half turns count as half." },
  counted: { label: "How do you know?" },
  washer: { label: "Washer on while counting?" },
  set: { label: "Set on the wrench" },
  wrench: { label: "Which wrench?" },
  clicked: { label: "Did it click, or show it?" },
  pulledBy: { label: "Who pulled?" },
  reached: { label: "Reached, if it shows it" },
  again: { label: "Was this a second pull to check the click?" },
  mark: { label: "Witness mark set?" },
  at: { label: "Let go at" },
  turned: { label: "Turned on by" },
  dry: { label: "Is it dry?" },
  by: { label: "What is in the hole?" },
  sealant: { label: "Which tube?" },
  ago: { label: "Closed before now by" },
  until: { label: "Until which day?", hint: "As 2026-06-01." },
  after: { label: "After" },
  how: { label: "Seen by" },
} as const satisfies Readonly<Record<string, FieldWords>>;

export const unitFieldWords = {
  out: { label: "Came out", hint: "Empty if nobody measured; a gate will ask before it is filled." },
  how: { label: "Measured by" },
  temperature: { label: "Temperature" },
  metal: { label: "Metal on the magnet" },
  water: { label: "Water in it?" },
  colour: { label: "Colour and smell" },
  volume: { label: "Went in" },
  called: { label: "Name on the drum" },
  right: { label: "Does the level stand right?" },
  below: { label: "Below the lip" },
  fell: { label: "The level fell by" },
  words: { label: "In your words" },
} as const satisfies Readonly<Record<string, FieldWords>>;

export const machineFieldWords = {
  words: { label: "In your words" },
  paper: { label: "Which paper?" },
  signed: { label: "Signed for?" },
  earlier: { label: "Which job came before?", hint: "Its number, as it stands on its papers." },
} as const satisfies Readonly<Record<string, FieldWords>>;

/** The workshop's own figures for this port, each with where it stands; null where it has none. */
export const bookHint = (figures: readonly { readonly torque: string; readonly source: string }[]): string | null =>
  figures.length === 0 ? null : `Book: ${figures.map(({ torque, source }) => `${torque} (${source})`).join("; ")}.`;
