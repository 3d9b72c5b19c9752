import { X509Certificate } from "node:crypto";
import { readFileSync } from "node:fs";
import { belong } from "./certificateFolder.ts";
import type { Shown } from "./shown.ts";

/** Which of the two files cannot be used, and what could be. */
export type CertificateProblem = { readonly file: "certificate" | "key"; readonly accepted: string };

/** The workshop's own certificate and its key, from files in PEM, as they are good at `now`. */
export function ownCertificate(certificateFile: string, keyFile: string, now: Date): Shown | CertificateProblem {
  const certificate = textOf(certificateFile);
  const key = textOf(keyFile);
  if (certificate === null) return { file: "certificate", accepted: "a file that can be read" };
  if (key === null) return { file: "key", accepted: "a file that can be read" };
  const read = certificateFrom(certificate);
  if (read === null)
    return { file: "certificate", accepted: "a certificate in PEM, with those between it and its root" };
  if (!belong({ certificate, key }))
    return { file: "key", accepted: "the key of that certificate in PEM, without a passphrase" };
  if (Date.parse(read.validTo) <= now.getTime())
    return {
      file: "certificate",
      accepted: `a certificate that is good now; this one was until ${dayOf(read.validTo)}`,
    };
  if (Date.parse(read.validFrom) > now.getTime())
    return {
      file: "certificate",
      accepted: `a certificate that is good now; this one is from ${dayOf(read.validFrom)} on`,
    };
  return { certificate, key, authority: null, newAuthority: false };
}

const dayOf = (moment: string): string => new Date(moment).toISOString().slice(0, 10);

function textOf(file: string): string | null {
  try {
    return readFileSync(file, "utf8");
  } catch {
    return null;
  }
}

function certificateFrom(text: string): X509Certificate | null {
  try {
    return new X509Certificate(text);
  } catch {
    return null;
  }
}
