import { BlockList } from "node:net";
import { hostname, networkInterfaces } from "node:os";

/**
 * The networks that nobody is given for himself alone, so that an authority for them vouches for nothing outside the house.
 *
 * Source: RFC 1918, 3 (10, 172.16, 192.168); RFC 3927, 2.1 (169.254); RFC 1122, 3.2.1.3 (127); RFC 4193, 3.1 (fc00); RFC 4291,
 * 2.5.3 and 2.5.6 (::1, fe80).
 */
export const localNetworks = [
  ["127.0.0.0", 8],
  ["10.0.0.0", 8],
  ["172.16.0.0", 12],
  ["192.168.0.0", 16],
  ["169.254.0.0", 16],
  ["::1", 128],
  ["fc00::", 7],
  ["fe80::", 10],
] as const;

/** The names of which the same is true. Source: RFC 6761, 6.3 (localhost); RFC 6762, 3 (local). */
export const localDomains = ["localhost", "local"] as const;

const locals = new BlockList();
for (const [network, prefix] of localNetworks)
  locals.addSubnet(network, prefix, network.includes(":") ? "ipv6" : "ipv4");

/** Whether an address is one of a local network; one of IPv4 may be written as one of IPv6. */
export function isLocalAddress(address: string | undefined): boolean {
  if (address === undefined) return false;
  const plain = address.replace(/^::ffff:(?=\d+\.)/i, "").replace(/%.*$/, "");
  return locals.check(plain, plain.includes(":") ? "ipv6" : "ipv4");
}

/** By what this machine is called in its own network. */
export type LocalNames = { readonly names: readonly string[]; readonly addresses: readonly string[] };

/** The name by which this machine is found where names are asked of each other (RFC 6762), and its addresses in local networks. */
export function localNames(called = hostname(), interfaces = networkInterfaces()): LocalNames {
  const [first = ""] = called.toLowerCase().split(".");
  const label = first
    .replace(/[^a-z0-9-]/g, "-")
    .replace(/^-+|-+$/g, "")
    .slice(0, 63);
  const addresses = Object.values(interfaces)
    .flatMap((it) => it ?? [])
    .filter(({ family, internal, address }) => family === "IPv4" && !internal && isLocalAddress(address))
    .map(({ address }) => address);
  return { names: label === "" ? [] : [`${label}.local`], addresses: [...new Set(addresses)].sort() };
}
