import { useSignal } from "@preact/signals";
import type { ComponentType } from "preact";
import { useEffect } from "preact/hooks";

/**
 * A page whose script is fetched when it is first opened; where that fails the page says so, and a tap opens all of it again: a
 * browser asks once for a script, and remembers that it failed.
 */
export function lazily(load: () => Promise<ComponentType>): ComponentType {
  let known: ComponentType | null = null;
  return function Lazy() {
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
    if (Page) return <Page />;
    if (!failed.value) return <p class="begin">One moment.</p>;
    return (
      <p class="begin" role="alert">
        This bench could not be fetched. What you typed elsewhere is kept.
        <button type="button" class="plain" onClick={() => location.reload()}>
          Try again
        </button>
      </p>
    );
  };
}
