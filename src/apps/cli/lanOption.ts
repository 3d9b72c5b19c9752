import { resolve } from "node:path";
import { StoreTrouble } from "../../journal/storeTrouble.ts";
import { troubleSentence } from "../../sheets/words/storeWords.ts";
import { certificateIn } from "../server/lan/certificateFolder.ts";
import { type LanSide, lanSide, NEW_AUTHORITY, type OpenLan } from "../server/lan/lanSide.ts";
import { localNames } from "../server/lan/localNames.ts";
import { ownCertificate } from "../server/lan/ownCertificate.ts";
import type { Shown } from "../server/lan/shown.ts";
import { InputMistake, mistaken } from "./mistake.ts";

/** What was typed of the local network. */
export type LanWanted = {
  readonly lan: boolean;
  readonly lanPort: string | undefined;
  readonly certificate: string | undefined;
  readonly key: string | undefined;
};

/** @throws InputMistake where the options do not go together */
export function checkLanOptions({ lan, lanPort, certificate, key }: LanWanted): void {
  if (!lan)
    for (const [option, text] of Object.entries({ "--lan-port": lanPort, "--certificate": certificate, "--key": key }))
      if (text !== undefined) throw mistaken(option, text, "together with --lan, which opens the local network");
  if ((certificate === undefined) !== (key === undefined))
    throw mistaken(certificate === undefined ? "--certificate" : "--key", null, bothOrNeither);
}

const bothOrNeither = "--certificate and --key together, or neither: the workshop's own authority serves then";

/**
 * The side that the local network is to see; null where it was not asked for. @throws InputMistake where a certificate cannot be
 * used, StoreTrouble where the authority cannot be kept
 */
export async function lanFrom({ lan, certificate, key }: LanWanted, folder: string): Promise<LanSide | null> {
  if (!lan) return null;
  const current = async (): Promise<Shown> =>
    certificate === undefined || key === undefined
      ? certificateIn(folder, localNames(), new Date())
      : ownFrom(certificate, key);
  return lanSide(current, (fault) => process.stderr.write(`turnsleft: Certificate: ${sentenceOf(fault)}\n`));
}

function ownFrom(certificate: string, key: string): Shown {
  const own = ownCertificate(resolve(certificate), resolve(key), new Date());
  if (!("file" in own)) return own;
  throw mistaken(`--${own.file}`, own.file === "key" ? key : certificate, own.accepted);
}

function sentenceOf(fault: unknown): string {
  if (fault === NEW_AUTHORITY) return "the authority is another; every telephone has to learn it anew, at /trust.";
  if (fault instanceof StoreTrouble) return troubleSentence(fault.trouble, fault.place);
  return fault instanceof InputMistake ? fault.message : `a fault of ours: ${fault}`;
}

/** What the workshop's screen says of the local network. */
export function lanLines({ addresses, trust, goodUntil }: OpenLan): readonly string[] {
  const until = goodUntil.toISOString().slice(0, 10);
  if (trust === null)
    return [`In the local network, with the workshop's own certificate until ${until}:`, ...addresses];
  const { fingerprint, address, isNew } = trust;
  return [
    `In the local network, with a certificate until ${until}, renewed by itself:`,
    ...addresses,
    `A telephone learns to trust it at ${address}`,
    `${isNew ? "NEW: every telephone has to learn it. " : ""}The fingerprint (SHA-256) that it must show then:`,
    `  ${fingerprint.sha256.slice(0, 47)}`,
    `  ${fingerprint.sha256.slice(48)}`,
    `  in words: ${fingerprint.words.join(" ")}`,
  ];
}

/** The same for a program. */
export const lanDocument = ({ port, addresses, trust, goodUntil }: OpenLan) => ({
  port,
  addresses,
  goodUntil: goodUntil.toISOString(),
  trust: trust && { address: trust.address, sha256: trust.fingerprint.sha256, words: trust.fingerprint.words },
});
