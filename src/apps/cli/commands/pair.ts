import type { Command } from "commander";
import { type PairedDevice, pairedDevicesIn } from "../../../stores/pairedDevices.ts";
import { dataFlags, dataFolder, dataHelp } from "../dataOption.ts";
import { InputMistake, mistaken } from "../mistake.ts";
import { pairingLine } from "../pairingLine.ts";
import { print } from "../print.ts";
import { askServer } from "../servedData.ts";

type Options = {
  readonly data?: string;
  readonly list?: boolean;
  readonly revoke?: string;
  readonly json?: boolean;
};

export function pairCommand(program: Command): void {
  program
    .command("pair")
    .description("a code that lets one more device into the workshop; which are let in; shutting one out")
    .option(dataFlags, dataHelp)
    .option("--list", "list the devices that were ever let in")
    .option("--revoke <device>", "shut a device out from now on; what it wrote stays")
    .option("--json", "one JSON document")
    .addHelpText("after", "\nExample:\n  turnsleft pair --data hollin-reach")
    .action(async ({ data, list = false, revoke, json = false }: Options) => {
      const folder = dataFolder(data);
      if (list && revoke !== undefined) throw mistaken("--list", "--revoke as well", "one of the two");
      if (list) return printDevices(folder, json);
      if (revoke !== undefined) return revokeDevice(folder, revoke, json);
      const pairing = (await askServer(folder, "POST", "/pairing")) as { code: string; seconds: number };
      print(json, { folder, ...pairing }, [pairingLine(pairing)]);
    });
}

async function printDevices(folder: string, json: boolean): Promise<void> {
  const devices = await devicesOf(folder);
  print(json, { folder, devices }, [
    ...devices.map(deviceLine),
    ...(devices.length === 0 ? ["No device was let in yet; npx turnsleft pair gives a code."] : []),
  ]);
}

/** A running server knows best when each was last seen; the file serves where none runs. */
async function devicesOf(folder: string): Promise<readonly PairedDevice[]> {
  const told = await askServer(folder, "GET", "/devices").catch((fault) => {
    if (fault instanceof InputMistake) return null;
    throw fault;
  });
  return told === null ? pairedDevicesIn(folder) : (told as { devices: readonly PairedDevice[] }).devices;
}

async function revokeDevice(folder: string, device: string, json: boolean): Promise<void> {
  const known = await devicesOf(folder);
  if (!known.some((it) => it.device === device)) {
    const names = known.filter((it) => it.revoked === null).map((it) => it.device);
    throw mistaken("--revoke", device, names.length > 0 ? `one of: ${names.join("; ")}` : "a device; none was let in");
  }
  await askServer(folder, "DELETE", `/devices/${device}`);
  print(json, { folder, revoked: device }, [`${device} is shut out from now on; what it wrote stays.`]);
}

const deviceLine = ({ device, name, since, lastSeen, revoked }: PairedDevice): string =>
  [
    `${device}  ${name}`,
    `let in ${minute(since)}`,
    revoked === null
      ? lastSeen === null
        ? "not seen yet"
        : `last seen ${minute(lastSeen)}`
      : `shut out ${minute(revoked)}`,
  ].join(", ");

const minute = (moment: string): string => `${moment.slice(0, 10)} ${moment.slice(11, 16)} UTC`;
