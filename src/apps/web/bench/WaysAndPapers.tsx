import { lazily } from "../kit/lazily.tsx";
import { broughtPort } from "./broughtPort.ts";
import { Papers } from "./Papers.tsx";
import { Ways } from "./Ways.tsx";

/** What can be done, and what stands one tap behind the answer; of a job's port first the way back to it. */
export function WaysAndPapers() {
  return (
    <>
      {broughtPort() && <ToJob />}
      <Ways />
      <Papers />
    </>
  );
}

/** The journal is not fetched for a port of nobody's job. */
const ToJob = lazily(() => import("../journal/ToJob.tsx"), "ToJob");
