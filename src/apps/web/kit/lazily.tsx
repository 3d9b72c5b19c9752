import { useSignal } from "@preact/signals";
import type { ComponentType } from "preact";
import { useEffect } from "preact/hooks";

/**
 * A page whose script is fetched when it is first opened; where that fails the page says so, and a tap opens all of it again: a
 * browser asks once for a script, and remembers that it failed.
 */
export const lazily = <Name extends string, Props extends object>(
  load: Load<Name, Props>,
  name: Name,
): ComponentType<Props> => fetchedFirst(load, name, Awaited);

/** A part that nobody misses until its script has come. */
export const quietly = <Name extends string, Props extends object>(
  load: Load<Name, Props>,
  name: Name,
): ComponentType<Props> => fetchedFirst(load, name, () => null);

/** Fetches the script that has a component of this name. */
type Load<Name extends string, Props> = () => Promise<Readonly<Record<Name, ComponentType<Props>>>>;

function fetchedFirst<Name extends string, Props extends object>(
  load: Load<Name, Props>,
  name: Name,
  Meanwhile: ComponentType<{ readonly failed: boolean }>,
): ComponentType<Props> {
  let known: ComponentType<Props> | null = null;
  return function Fetched(props: Props) {
    const page = useSignal(known);
    const failed = useSignal(false);
    useEffect(() => {
      if (known) return;
      load().then(
        (script) => {
          known = script[name];
          page.value = known;
        },
        () => {
          failed.value = true;
        },
      );
    }, []);
    const Page = page.value;
    return Page ? <Page {...props} /> : <Meanwhile failed={failed.value} />;
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
