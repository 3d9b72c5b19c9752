/** The texts of the bench by field: what was typed, exactly, or the choice that was tapped. An empty one is not given. */
export type Texts = Readonly<Record<string, string>>;

/** Where what lies on the bench is called by a name: a text among the others that no case has, so that it goes wherever they go. */
export const calledName = "from.called";

/** The lists of the bench, and what an element cannot do without: one that is not yet complete is left out. */
export const benchLists = {
  bookFigures: ["torque", "source"],
  wrenches: ["name", "least", "most"],
} as const;
export type ListName = keyof typeof benchLists;

/** The places of a list that hold something, complete or not. */
export function placesOf(list: ListName, texts: Texts): readonly number[] {
  const places = new Set<number>();
  for (const name of Object.keys(texts))
    if (name.startsWith(`${list}.`))
      places.add(Number(name.slice(list.length + 1, name.indexOf(".", list.length + 1))));
  return [...places].toSorted((a, b) => a - b);
}

/** The name of a field without its place in a list. */
export const withoutPlace = (name: string): string => name.replace(/\.\d+(?=\.)/g, "");

/** Whether a text says anything. */
export const isGiven = (text: string | undefined): text is string => text !== undefined && text.trim() !== "";
