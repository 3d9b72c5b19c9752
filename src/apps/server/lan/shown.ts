import { X509Certificate } from "node:crypto";
import { isIP } from "node:net";
import type { KeyedCertificate } from "./authority.ts";

/** What a server shows to those who come by HTTPS. */
export type Shown = KeyedCertificate & {
  /** The authority's certificate, which a telephone has to know; null for one that telephones know already. */
  readonly authority: string | null;
  /** Whether the authority was made just now, so that no telephone can know it yet. */
  readonly newAuthority: boolean;
};

/** Whether a server that shows this certificate is called `host`: a name or an address, without a port. */
export function isCalled({ certificate }: Shown, host: string): boolean {
  if (!/^[\w.-]+$|^\[[\da-f:]+\]$/i.test(host)) return false;
  const read = new X509Certificate(certificate);
  const plain = host.replace(/^\[|\]$/g, "").toLowerCase();
  return isIP(plain) === 0 ? read.checkHost(plain) !== undefined : read.checkIP(plain) !== undefined;
}

/** The last day on which a certificate is good. */
export const goodUntil = ({ certificate }: Shown): Date => new Date(new X509Certificate(certificate).validTo);

/** The names in a certificate by which a page can be opened: no address of this machine alone, and none with a star. */
export function openedBy({ certificate }: Shown): readonly string[] {
  const alternatives = new X509Certificate(certificate).subjectAltName ?? "";
  return alternatives
    .split(", ")
    .map((it) => it.replace(/^(DNS|IP Address):/, ""))
    .filter((it) => !/^(localhost|127\.|0:0:0:0:0:0:0:1|\*)/.test(it));
}
