/** The pages of the journal as one script: whoever opens one of them has them all, with a network or without. */
export { DuePage } from "./DuePage.tsx";
export { HeldPage } from "./HeldPage.tsx";
export { JobPage } from "./JobPage.tsx";
export { PortPage } from "./PortPage.tsx";
export { StandingPage } from "./StandingPage.tsx";
