/** An empty case with its questions. What stays empty counts as not given; the questions themselves are not read. */
export const caseTemplate = {
  questions: {
    "joint.kind": "What is it: engine sump, gear case fill, level or drain, coolant drain, spark plug, ...?",
    "asked.crack": "Crack or missing metal? no | yes",
    "asked.pressure": "Under working pressure? none, or the pressure",
    "asked.reaches": "What can the fluid reach in use: tyre, brake, exhaust, belt, water? [] for none",
    "asked.people": "Carries people for hire, emergency use, tows others, drinking-water catchment? no | yes",
    "asked.repairedBefore": "Repaired here before? no, or the method and why it came back",
    "asked.breather": "Is the breather free? free | blocked | none",
    thread: "Which thread, as M20x1.5?",
    "case.material": "What is the case made of?",
    "case.threadDepth": "Face to the end of the hole, by hook or depth rod?",
    "case.roomBehind": "Inner face to the nearest thing behind, smallest over a turn of the shaft?",
    "plug.underHead": "Length of the plug under its head?",
    "plug.headDiameter": "Diameter of the head's face?",
    "seal.kind": "What seals it, of what material and size?",
    "seal.chamfer": "Where an O-ring lies in a chamfer of the hole: how deep is that?",
    "left.turns": "Turns by hand from the catch to the seat?",
    "left.counted": "Counted with a dot, by eye, or felt?",
    "left.condition": "How do the turns look: good | doubtful | poor | gone?",
    "left.catch": "How does it catch: snug | gritty | slides over?",
    "left.withWasher": "Was a washer on during the count? true | false",
    healthyTurns: "The same count in a sound twin hole?",
    bookFigures: "What do the books say, where, for which seal and surface?",
    wrenches: "Which torque wrenches are at hand?",
  },
  joint: { kind: "" },
  asked: { crack: "", pressure: "", reaches: "", people: "", repairedBefore: "", breather: "" },
  thread: "",
  case: { material: "", threadDepth: "", thinnestWall: "", roomBehind: "" },
  plug: { propertyClass: "", underHead: "", headDiameter: "", chamfer: "", original: "" },
  seal: { kind: "", material: "", outside: "", inside: "", thickness: "", chamfer: "", original: "" },
  left: { turns: "", counted: "", condition: "", catch: "", withWasher: "", goodFrom: "", goodTo: "", height: "" },
  healthyTurns: "",
  surface: "",
  bookFigures: [],
  wrenches: [],
  today: "",
} as const;

/** A document without its empty fields: what nobody filled in was not given. */
export function withoutBlanks(document: unknown): unknown {
  if (Array.isArray(document)) return document.map(withoutBlanks);
  if (typeof document !== "object" || document === null) return document;
  return Object.fromEntries(
    Object.entries(document)
      .filter(([, value]) => value !== "")
      .map(([key, value]) => [key, withoutBlanks(value)]),
  );
}
