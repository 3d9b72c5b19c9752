/** How the bench asks for one field: its name, and how it is read, where that has to be said. */
export type FieldWords = { readonly label: string; readonly hint?: string };

/** How the bench asks for a field of the case; lists are asked by the name of their element, as "wrenches.least". */
export const fieldWords = {
  "asked.crack": { label: "Crack or missing metal?" },
  "asked.pressure": { label: "Under working pressure?" },
  "asked.pressure.value": { label: "Working pressure" },
  "asked.reaches": { label: "What can the fluid reach?", hint: "Everything that applies." },
  "asked.people": {
    label: "Does it carry people?",
    hint: "For hire, emergency use, towing others, drinking-water catchment.",
  },
  "asked.repairedBefore": { label: "Repaired here before?" },
  "asked.repairedBefore.method": { label: "By what" },
  "asked.repairedBefore.cause": { label: "Why it came back" },
  "asked.breather": { label: "Is the breather free?" },
  "asked.waterTest": { label: "Pressure and vacuum test", hint: "Where water stands outside." },
  "asked.alloyTested": { label: "Light alloy tested for magnesium?" },
  "joint.kind": { label: "What is it?" },
  thread: { label: "Thread", hint: "As M20x1.5, G 1/2 or 3/4-16 UNF." },
  "case.material": { label: "Case made of" },
  "left.turns": { label: "Turns, catch to seat", hint: "By hand, in gloves. Half turns count as half." },
  "left.counted": { label: "How do you know?" },
  "left.condition": { label: "How do they look?" },
  "left.catch": { label: "How does it catch?" },
  "left.withWasher": { label: "Washer on while counting?" },
  "left.goodFrom": { label: "Good thread from", hint: "Below the case face." },
  "left.goodTo": { label: "Good thread to", hint: "Below the case face." },
  "left.height": { label: "Thread height left", hint: "As a share of a sound one." },
  healthyTurns: { label: "Turns in a sound twin hole" },
  healthyWithWasher: { label: "Washer on for that count?" },
  "plug.underHead": { label: "Plug, under the head", hint: "Head face to tip." },
  "plug.headDiameter": { label: "Plug, head face across" },
  "plug.chamfer": { label: "Plug, point that carries nothing" },
  "plug.propertyClass": { label: "Stamp on the head" },
  "plug.original": { label: "Does this plug belong here?" },
  "case.threadDepth": { label: "Hole, face to the end" },
  "case.thinnestWall": { label: "Wall, thinnest side" },
  "case.roomBehind": { label: "Room behind the hole", hint: "Least over a turn of the shaft." },
  temperature: { label: "Case temperature" },
  "seal.kind": { label: "Sealed by" },
  "seal.material": { label: "Washer of" },
  "seal.outside": { label: "Ring, outside" },
  "seal.inside": { label: "Ring, inside" },
  "seal.thickness": { label: "Ring, thickness" },
  "seal.chamfer": { label: "O-ring's chamfer, depth", hint: "Face down to the first thread." },
  "seal.original": { label: "Does this seal belong here?" },
  surface: { label: "Thread and head are" },
  prevailing: { label: "Turns hard before the seat, at" },
  "bookFigures.torque": { label: "The book says" },
  "bookFigures.source": { label: "Where it stands" },
  "bookFigures.seal": { label: "For which seal" },
  "bookFigures.surface": { label: "For which surface" },
  "wrenches.name": { label: "Wrench" },
  "wrenches.kind": { label: "Kind" },
  "wrenches.least": { label: "Scale from" },
  "wrenches.most": { label: "Scale to" },
  "wrenches.step": { label: "Step of the scale" },
  "wrenches.calibrated": { label: "Last calibrated", hint: "As 2026-06-01." },
  "wish.today": { label: "Wanted today?" },
  "wish.ceiling": { label: "May cost at most" },
  "wish.opensAgain": { label: "Must it open again?" },
  "wish.afterRepair": { label: "Weigh repairs although it is refused as found?" },
} as const satisfies Readonly<Record<string, FieldWords>>;

export type FieldName = keyof typeof fieldWords;

/** Choices whose word for people is another than the word of the case. */
export const choiceWords: Readonly<Record<string, string>> = {
  nothing: "none of these",
  original: "yes",
};

/** The parts of the bench in their order. */
export const partWords = {
  asked: "Asked first",
  joint: "What it is",
  left: "What is left",
  lengths: "Plug and hole",
  seal: "Seal",
  book: "Book and wrench",
  wish: "Wanted",
} as const;
export type PartName = keyof typeof partWords;
