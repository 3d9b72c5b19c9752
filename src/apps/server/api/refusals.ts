/** Every way of not doing what was asked: its status and what is said to people. None tells anything of the inside. */
export const refusals = {
  malformed: [400, "What was sent is not as it has to be; nothing of it was kept."],
  "not paired": [401, "This device is not paired with the workshop, or was shut out; pair it with a new code."],
  "not allowed": [403, "Only the workshop's own screen may do this: the terminal beside the server."],
  host: [
    403,
    "This server answers only to its own names, as localhost; they stand on the terminal where it was started.",
  ],
  origin: [403, "Only the bench's own page may ask this."],
  "no code": [403, "No code is open for pairing; the command turnsleft pair gives a new one."],
  "wrong code": [403, "That is not the code; after a few wrong tries it is void, and turnsleft pair gives a new one."],
  foreign: [403, "An entry is of another workshop; nothing that came with it was kept."],
  "pin needed": [403, "An override needs the PIN of who takes it on himself; nothing that came with it was kept."],
  "wrong pin": [403, "That is not the PIN of this person; after a few wrong tries every next one has to wait longer."],
  "no pin": [403, "This person has no PIN yet and has to set one first."],
  "no name": [400, "A photo is called by the SHA-256 of its bytes: 64 hexadecimal digits, a to f small."],
  "not there": [404, "There is nothing at this address."],
  method: [405, "This address does not answer that method."],
  fork: [
    409,
    "A different entry is held in that place: a device was restored from a backup and wrote on. Nothing was kept.",
  ],
  gap: [409, "An earlier entry of the same device is missing; nothing that came with this one was kept."],
  disorder: [409, "The clock of an entry is not after that of the one before it; nothing that came with it was kept."],
  "too large": [413, "That is more than is taken at once; send it in pieces, or a photo smaller."],
  "too many pixels": [413, "The photo has more pixels than are unpacked here; send it smaller."],
  "media type": [415, "A body is JSON here: Content-Type: application/json."],
  "no picture": [415, "That is no JPEG, PNG or WebP, or not all of it; nothing of it was kept."],
  "wrong digest": [
    422,
    "What arrived is not the photo of that name: it was changed on the way, or is another. Nothing of it was kept.",
  ],
  "carries more": [
    422,
    "The photo carries more than the picture, which may tell where and with what it was taken; nothing of it was kept.",
  ],
  "too many": [429, "Too many requests; wait a moment and ask again."],
  "pin waits": [429, "There were too many wrong PINs for this person; wait, and try again."],
  fault: [500, "A fault of ours: the request could not be answered."],
  full: [
    507,
    "The disk of the workshop's machine is full; what was kept before is safe, and nothing of this was kept.",
  ],
  "read-only": [503, "The workshop's data may be read and not written at the moment; nothing of this was kept."],
  "in use": [503, "Another program holds the workshop's data at the moment; nothing of this was kept."],
  damaged: [
    503,
    "The workshop's data are damaged; restore the last backup into a new folder. Nothing of this was kept.",
  ],
  "not reachable": [503, "The disk with the workshop's data cannot be reached; nothing of this was kept."],
} as const satisfies Readonly<Record<string, readonly [status: number, sentence: string]>>;

export type RefusalKind = keyof typeof refusals;

/** A refusal as an answer, with the details that help a program to put it right. */
export function refused(
  kind: RefusalKind,
  details: Readonly<Record<string, unknown>> = {},
  headers: Readonly<Record<string, string>> = {},
): Response {
  const [status, sentence] = refusals[kind];
  return Response.json({ error: kind, sentence, ...details }, { status, headers });
}

/** The refusal that says when to ask again. */
export function refusedFor(kind: RefusalKind, wait_s: number): Response {
  const whole = Math.max(1, Math.ceil(wait_s));
  return refused(kind, { wait_s: whole }, { "Retry-After": String(whole) });
}
