import { isIPv4 } from "node:net";
import { localDomains, localNetworks } from "./localNames.ts";

/**
 * The extension that keeps an authority to the names and networks of a house, as DER.
 *
 * Source: RFC 5280, 4.2.1.10. The library that makes the certificates has no such extension.
 */
export function nameConstraints(): Uint8Array<ArrayBuffer> {
  const domains = localDomains.map((it) => der(DNS_NAME, Buffer.from(it, "ascii")));
  const networks = localNetworks.map(([network, prefix]) => der(IP_ADDRESS, withMask(network, prefix)));
  const subtrees = [...domains, ...networks].map((base) => der(SEQUENCE, base));
  return new Uint8Array(der(SEQUENCE, der(PERMITTED, Buffer.concat(subtrees))));
}

const SEQUENCE = 0x30;
/** permittedSubtrees [0], of GeneralName dNSName [2] and iPAddress [7]. */
const PERMITTED = 0xa0;
const DNS_NAME = 0x82;
const IP_ADDRESS = 0x87;

/** A tag, a length and what it holds. Nothing here is longer than 65 535 bytes. */
function der(tag: number, content: Buffer): Buffer {
  const { length } = content;
  const size = length < 0x80 ? [length] : length < 0x100 ? [0x81, length] : [0x82, length >> 8, length & 0xff];
  return Buffer.concat([Buffer.from([tag, ...size]), content]);
}

/** The bytes of a network and of its mask. */
function withMask(network: string, prefix: number): Buffer {
  const bytes = bytesOf(network);
  const mask = bytes.map((_, i) => (0xff00 >> Math.min(8, Math.max(0, prefix - 8 * i))) & 0xff);
  return Buffer.from([...bytes, ...mask]);
}

/** Of an IPv6 address only the forms in `localNetworks`: groups, then "::", then at most one group. */
function bytesOf(address: string): readonly number[] {
  if (isIPv4(address)) return address.split(".").map(Number);
  const [head = "", tail = ""] = address.split("::");
  const groups = (text: string): number[] =>
    text === "" ? [] : text.split(":").flatMap((it) => [Number.parseInt(it, 16) >> 8, Number.parseInt(it, 16) & 0xff]);
  const [first, last] = [groups(head), groups(tail)];
  return [...first, ...Array<number>(16 - first.length - last.length).fill(0), ...last];
}
