/** Photos as a form keeps them: their names with commas between. */
export const namesOf = (text: string): readonly string[] => text.split(",").filter((it) => it !== "");
