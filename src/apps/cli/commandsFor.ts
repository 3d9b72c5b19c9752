import type { Command } from "commander";

type Adding = (program: Command) => void;

/** Every command, in the order of the help, with what adds it to the program. */
const commands: Readonly<Record<string, () => Promise<Adding>>> = {
  weigh: async () => (await import("./commands/weigh.ts")).weighCommand,
  thread: async () => (await import("./commands/thread.ts")).threadCommand,
  photo: async () => (await import("./commands/photo.ts")).photoCommand,
  limits: async () => (await import("./commands/limits.ts")).limitsCommand,
  strip: async () => (await import("./commands/strip.ts")).stripCommand,
  torque: async () => (await import("./commands/torque.ts")).torqueCommand,
  cure: async () => (await import("./commands/cure.ts")).cureCommand,
  sealant: async () => (await import("./commands/sealant.ts")).sealantCommand,
  pressure: async () => (await import("./commands/pressure.ts")).pressureCommand,
  volume: async () => (await import("./commands/volume.ts")).volumeCommand,
  level: async () => (await import("./commands/level.ts")).levelCommand,
  leak: async () => (await import("./commands/leak.ts")).leakCommand,
  expand: async () => (await import("./commands/expand.ts")).expandCommand,
  viscosity: async () => (await import("./commands/viscosity.ts")).viscosityCommand,
  blend: async () => (await import("./commands/blend.ts")).blendCommand,
  fluid: async () => (await import("./commands/fluid.ts")).fluidCommand,
  due: async () => (await import("./commands/due.ts")).dueCommand,
  held: async () => (await import("./commands/held.ts")).heldCommand,
  convert: async () => (await import("./commands/convert.ts")).convertCommand,
  start: async () => (await import("./commands/start.ts")).startCommand,
  pair: async () => (await import("./commands/pair.ts")).pairCommand,
  pin: async () => (await import("./commands/pin.ts")).pinCommand,
  demo: async () => (await import("./commands/demo.ts")).demoCommand,
  standing: async () => (await import("./commands/standing.ts")).standingCommand,
  backup: async () => (await import("./commands/backup.ts")).backupCommand,
  restore: async () => (await import("./commands/backup.ts")).restoreCommand,
  export: async () => (await import("./commands/exportImport.ts")).exportCommand,
  import: async () => (await import("./commands/exportImport.ts")).importCommand,
  check: async () => (await import("./commands/check.ts")).checkCommand,
};

/** What adds the command of that name; where none is called so, what adds all of them, for the help and for the nearest name. */
export async function commandsFor(name: string | undefined): Promise<readonly Adding[]> {
  const named = name !== undefined && Object.hasOwn(commands, name) ? commands[name] : undefined;
  return Promise.all((named ? [named] : Object.values(commands)).map((load) => load()));
}
