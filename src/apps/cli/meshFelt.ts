import { knownDesignation } from "../../mechanics/threads/namingCandidates.ts";
import type { MeshEvidence } from "../../mechanics/threads/namingEvidence.ts";
import { countFromText } from "./counts.ts";
import { mistaken } from "./mistake.ts";

/**
 * What was felt on turning by hand: "two turns, then tight" in the hole it was found in, "4 turns, free in M22x1.5" in a
 * known hole, "4 easy turns with M22x1.5" of a known plug in this hole. @throws InputMistake if it cannot be read.
 */
export function meshFelt(text: string, field: string): MeshEvidence {
  const plain = text
    .trim()
    .replace(/\s+/g, " ")
    .replace(/^(?:it )?(?:went|goes|runs|ran) (?:in |on )?/i, "");
  const [, body = plain, joint = "", other] = /^(.+?),? (in|with) (?:an? )?(?:known )?(\S*\d.*)$/i.exec(plain) ?? [];
  const known = other === undefined ? null : knownDesignation(other);
  if (other !== undefined && known === null)
    throw mistaken(field, text, `after "${joint}" a thread that is known here, as M22x1.5 or 7/8-14 UNF`);
  const felt = turnsFelt(body);
  if (!felt) throw mistaken(field, text, accepted);
  return { type: "mesh", unknown: joint.toLowerCase() === "with" ? "hole" : "plug", known, ...felt };
}

const accepted =
  '"two turns, then tight", "4 turns, free in M22x1.5" (a known hole) or "4 turns, free with M22x1.5" (a known plug)';

function turnsFelt(body: string): Pick<MeshEvidence, "turns" | "felt"> | null {
  for (const shape of shapes) {
    const { count, felt } = shape.exec(body)?.groups ?? {};
    const turns = count === undefined ? null : countFromText(count);
    const how = feltWords[felt?.toLowerCase() ?? ""];
    if (turns !== null && how) return { turns, felt: how };
  }
  return null;
}

const shapes: readonly RegExp[] = [
  /^(?<count>.+?) turns?,?(?: and)?(?: then)? (?<felt>\p{L}+)$/iu,
  /^(?<felt>\p{L}+) (?:after|for) (?<count>.+?) turns?$/iu,
  /^(?<count>.+?) (?<felt>easy|free) turns?$/iu,
];

const feltWords: Readonly<Record<string, MeshEvidence["felt"]>> = {
  ...{ tight: "tight", hard: "tight", stiff: "tight", binds: "tight" },
  ...{ free: "free", easy: "free", easily: "free", freely: "free" },
};
