import { exampleCase } from "../../../sheets/caseForm/exampleCase.ts";
import { calledName, type Texts } from "./benchTexts.ts";
import { caseTexts } from "./caseTexts.ts";

/** The worked example as somebody would have typed it here, and what it is called. */
export const exampleTexts = (): Texts => ({
  ...caseTexts(exampleCase),
  [calledName]: "A worked example: the level port of a compact loader's chain case, hurt.",
});

/** The day of the worked example: its wrenches are in date on that day. */
export const exampleDay: string = exampleCase.today;
