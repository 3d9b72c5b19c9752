import { give } from "../bench/benchState.ts";
import { example } from "../bench/laidTexts.ts";
import { backToPort } from "../bench/ports.ts";

/** Carries a thread that was named to the bench of a torn thread, in place of the one that stands there. */
export function TakenOver({ threads }: { readonly threads: readonly string[] }) {
  return (
    <p class="row">
      {threads.map((it) => (
        <button key={it} type="button" class="plain" onClick={() => carry(it)}>
          Weigh it as {it}
        </button>
      ))}
    </p>
  );
}

function carry(thread: string): void {
  if (example.value) backToPort();
  give("thread", thread);
  location.hash = "#/";
}
