import * as z from "zod/mini";

/**
 * An identity: ASCII, so that every device and every database sorts it the same way.
 *
 * Identities are brands of their own, so that a port is never handed over where a person is meant.
 */
const identity = () =>
  z
    .string({ error: accepted })
    .check(z.regex(/^[A-Za-z0-9][A-Za-z0-9_.-]{0,63}$/, { error: "letters, digits, dot, dash, 1 to 64 characters" }));

const accepted = "an identity: letters, digits, dot, dash, 1 to 64 characters";

export const workshopId = identity().brand<"WorkshopId">();
export const deviceId = identity().brand<"DeviceId">();
export const personId = identity().brand<"PersonId">();
export const ownerId = identity().brand<"OwnerId">();
export const machineId = identity().brand<"MachineId">();
export const unitId = identity().brand<"UnitId">();
export const portId = identity().brand<"PortId">();
export const jobId = identity().brand<"JobId">();
export const instrumentId = identity().brand<"InstrumentId">();
export const fluidId = identity().brand<"FluidId">();
export const sealantId = identity().brand<"SealantId">();
export const followUpId = identity().brand<"FollowUpId">();
export const noticeId = identity().brand<"NoticeId">();
export const figureId = identity().brand<"FigureId">();

/** The place of an entry in the journal, `device/number`. */
export const entryId = z
  .string({ error: "the place of an entry, as bench/12" })
  .check(z.regex(/^[A-Za-z0-9][A-Za-z0-9_.-]{0,63}\/[1-9]\d{0,15}$/, { error: "the place of an entry, as bench/12" }))
  .brand<"EntryId">();

export type WorkshopId = z.infer<typeof workshopId>;
export type DeviceId = z.infer<typeof deviceId>;
export type PersonId = z.infer<typeof personId>;
export type OwnerId = z.infer<typeof ownerId>;
export type MachineId = z.infer<typeof machineId>;
export type UnitId = z.infer<typeof unitId>;
export type PortId = z.infer<typeof portId>;
export type JobId = z.infer<typeof jobId>;
export type InstrumentId = z.infer<typeof instrumentId>;
export type FluidId = z.infer<typeof fluidId>;
export type SealantId = z.infer<typeof sealantId>;
export type FollowUpId = z.infer<typeof followUpId>;
export type NoticeId = z.infer<typeof noticeId>;
export type FigureId = z.infer<typeof figureId>;
export type EntryId = z.infer<typeof entryId>;
