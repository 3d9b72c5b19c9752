/** The port taken where none is asked for: nothing known uses it, and no system hands it out by itself. Judgement. */
export const usualPort = 8746;

/** Why a port could not be had. */
export type PortProblem = "taken" | "not allowed";
