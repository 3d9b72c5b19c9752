import { type Encoding, encodings } from "./builtFiles.ts";

/**
 * The smallest encoding that an Accept-Encoding header allows; what it does not name, or names with a weight of nothing, is not sent.
 *
 * Source: RFC 9110, 12.5.3. That identity itself can be refused ("identity;q=0") is not heeded: the file is sent plainly.
 */
export function acceptedEncoding(header: string | undefined): Encoding {
  const weights = new Map(
    (header ?? "").split(",").map((part) => {
      const [name = "", ...parameters] = part.split(";").map((it) => it.trim().toLowerCase());
      const weight = parameters.find((it) => it.startsWith("q="))?.slice(2) ?? "1";
      return [name, Number(weight)] as const;
    }),
  );
  const taken = (it: Encoding): boolean => (weights.get(it) ?? weights.get("*") ?? 0) > 0;
  return encodings.find((it) => it !== "identity" && taken(it)) ?? "identity";
}
