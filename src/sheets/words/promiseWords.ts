/** Why a promise cannot be kept, and what is done about it. */
export const promiseWords = {
  over: "The time is over: call the owner, and promise anew.",
  cures: "A bead cures for longer than that: call the owner, and promise anew.",
} as const;
