import type { PortId } from "../journal/facts/ids.ts";
import { asRead } from "../journal/shop/instruments.ts";
import { humidityRead } from "../mechanics/cure/air.ts";
import { cureClocks } from "../mechanics/cure/clocks.ts";
import { ordinaryFront } from "../mechanics/cure/front.ts";
import { exact, valueIn } from "../mechanics/quantity/quantity.ts";
import { h, mm, percent } from "../mechanics/quantity/unit.ts";
import type { RemedyId } from "../mechanics/remedies/method.ts";
import { weigh } from "../mechanics/remedies/weigh.ts";
import { type AnswerDocument, answerDocument, type WindowDocument } from "../sheets/answer/answerDocument.ts";
import { weighedFact } from "../sheets/answer/weighedFact.ts";
import { readCase } from "../sheets/caseForm/caseDocument.ts";
import type { WrittenCase } from "../sheets/caseForm/caseSchema.ts";
import { type CaseName, casesOfDemo } from "./cases.ts";
import type { Calendar, Told } from "./script.ts";
import { calibrationOf } from "./workshop.ts";

/** A port of the demo weighed by the engine on its day: the fact, and what it said to pull. */
export type Weighing = {
  readonly fact: Told;
  /** What the engine says to set, by the option or, for null, for the port as found. @throws Error if it gives none */
  readonly pull: (option: RemedyId | null) => { readonly set: string; readonly wrench: "TW-1" | "TW-2" };
  /** Why the engine refused an option; null where it did not. */
  readonly refused: (option: RemedyId) => string | null;
};

/** A case of the demo as it was written down on its day, with the wrenches and their certificates of that day. */
export function caseOfDemo(name: CaseName, day: number, calendar: Calendar): WrittenCase {
  const wrench = (id: "TW-1" | "TW-2" | "TW-3", least: string, most: string, step: string) => ({
    name: id,
    kind: "click" as const,
    least,
    most,
    step,
    calibrated: calendar.day(calibrationOf(id, day)),
  });
  return {
    ...casesOfDemo[name],
    wrenches: [
      wrench("TW-1", "5 N·m", "25 N·m", "1 N·m"),
      wrench("TW-2", "20 N·m", "120 N·m", "2 N·m"),
      wrench("TW-3", "60 N·m", "340 N·m", "5 N·m"),
    ],
    today: calendar.day(day),
  };
}

function weighing(name: CaseName, port: string, day: number, calendar: Calendar, engine: string): Weighing {
  const document = caseOfDemo(name, day, calendar);
  const read = readCase(document, null);
  if (!read.ok) throw new Error(`the demo's case ${name} does not read: ${JSON.stringify(read.problems)}`);
  const answer = answerDocument(weigh(read.given), read.ordinary, document, [], engine);
  return {
    fact: weighedFact(port as PortId, answer) as Told,
    pull: (option) => pullOf(windowOf(answer, option), `${name}, ${option}`),
    refused: (option) => answer.remedies.find(({ id }) => id === option)?.refused?.rule ?? null,
  };
}

const windowOf = (answer: AnswerDocument, option: RemedyId | null): WindowDocument | null =>
  option === null ? answer.asFound.window : (answer.remedies.find(({ id }) => id === option)?.window ?? null);

function pullOf(window: WindowDocument | null, what: string) {
  const pull = window?.pull;
  if (!pull?.wrench) throw new Error(`the engine gives no pull for ${what}`);
  return { set: `${pull.set_Nm} N·m`, wrench: pull.wrench as "TW-1" | "TW-2" };
}

/** Weighs a port of the demo on a day, once. */
export type Weigher = (name: CaseName, port: string, day: number) => Weighing;

/** A bead of 3 mm closed at a moment: how long it cures, by the engine and by its label. */
export type Cures = (temperature: string, humidity: string, port: string, closedAt: string) => Told;

export const weigherOf =
  (calendar: Calendar, engine: string): Weigher =>
  (name, port, day) =>
    weighing(name, port, day, calendar, engine);

export const cures: Cures = (temperature, humidity, port, closedAt) => {
  const T = asRead("T", temperature, "temperature");
  const air = { T, RH: humidityRead(valueIn(percent, asRead("RH", humidity, "plain number")), port) };
  const label = { time: exact("t_0", 24, h, "label"), saidFor: "this air" } as const;
  const clocks = cureClocks({ width: exact("w", 3, mm, "bead"), open: "one edge", air, front: ordinaryFront, label });
  const through_h = valueIn(h, clocks.curedThrough.likely);
  const after = (hours: number): string => new Date(Date.parse(closedAt) + hours * 3_600_000).toISOString();
  return {
    type: "CureBegan",
    port,
    sealant: "S-A",
    bead: "3 mm",
    temperature,
    humidity,
    closedAt,
    splashFrom: after(valueIn(h, clocks.mayBeSplashed.time)),
    earliest: after(Math.max(24, through_h)),
    curedThrough_h: through_h,
  };
};
