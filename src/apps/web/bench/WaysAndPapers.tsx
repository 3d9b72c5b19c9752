import { Papers } from "./Papers.tsx";
import { Ways } from "./Ways.tsx";

/** What can be done, and what stands one tap behind the answer. */
export function WaysAndPapers() {
  return (
    <>
      <Ways />
      <Papers />
    </>
  );
}
