import { X509Certificate } from "node:crypto";
import { wordlist } from "@scure/bip39/wordlists/english.js";

/** A certificate's SHA-256 as telephones show it, and its first 88 bits as eight words for reading out. */
export type Fingerprint = { readonly sha256: string; readonly words: readonly string[] };

const WORDS = 8;
const BITS_A_WORD = 11;

/**
 * The fingerprint of a certificate in PEM.
 *
 * The words are those of BIP-39, 2048 that differ in their first four letters: 88 bits are more than anybody can try in the years
 * for which a certificate is good.
 */
export function fingerprint(certificate: string): Fingerprint {
  const sha256 = new X509Certificate(certificate).fingerprint256;
  const bits = [...sha256.replaceAll(":", "")]
    .map((it) => Number.parseInt(it, 16).toString(2).padStart(4, "0"))
    .join("");
  const words = Array.from({ length: WORDS }, (_, i) => {
    const index = Number.parseInt(bits.slice(i * BITS_A_WORD, (i + 1) * BITS_A_WORD), 2);
    return wordlist[index] ?? "";
  });
  return { sha256, words };
}
