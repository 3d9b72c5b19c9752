import { useSignal } from "@preact/signals";
import type { ComponentType } from "preact";
import { useEffect } from "preact/hooks";

/**
 * A page whose script is fetched when it is first opened; where that fails the page says so, and a tap opens all of it again: a
 * browser asks once for a script, and remembers that it failed.
 */
export const lazily = (load: () => Promise<ComponentType>): ComponentType => fetchedFirst(load, Awaited);

/** A part that nobody misses until its script has come. */
export const quietly = (load: () => Promise<ComponentType>): ComponentType => fetchedFirst(load, () => null);

function fetchedFirst(
  load: () => Promise<ComponentType>,
  Meanwhile: ComponentType<{ readonly failed: boolean }>,
): ComponentType {
  let known: ComponentType | null = null;
  return function Fetched() {
    const page = useSignal(known);
    const failed = useSignal(false);
    useEffect(() => {
      if (known) return;
      load().then(
        (it) => {
          known = it;
          page.value = it;
        },
        () => {
          failed.value = true;
        },
      );
    }, []);
    const Page = page.value;
    return Page ? <Page /> : <Meanwhile failed={failed.value} />;
  };
}

function Awaited({ failed }: { readonly failed: boolean }) {
  if (!failed) return <p class="begin">One moment.</p>;
  return (
    <p class="begin" role="alert">
      This bench could not be fetched. What you typed elsewhere is kept.
      <button type="button" class="plain" onClick={() => location.reload()}>
        Try again
      </button>
    </p>
  );
}
