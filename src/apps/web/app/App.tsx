import { useSignal } from "@preact/signals";
import { useEffect, useRef } from "preact/hooks";
import { standing } from "../../../sheets/words/benchWords.ts";
import { jumpTo } from "../kit/jump.ts";
import { type Bench, benches } from "./benches.ts";
import { route } from "./route.ts";
import { type Theme, theme, themes } from "./theme.ts";

/** The frame of every bench: a title block above, the page, and what is reached by thumb below. */
export function App() {
  const bench =
    benches.find(({ path, below }) => (below ? route.value.startsWith(`${path}/`) : path === route.value)) ??
    benches[0];
  const { Page } = bench;
  const heading = useRef<HTMLHeadingElement>(null);
  const shown = useRef(bench);
  useEffect(() => {
    document.title = `${bench.name} · Turnsleft`;
    if (shown.current === bench) return;
    shown.current = bench;
    // Another bench is another page: it begins at its top, for the eye and for the keyboard.
    scrollTo(0, 0);
    heading.current?.focus({ preventScroll: true });
  }, [bench]);
  useEffect(() => {
    if (!bench.behind) return;
    const timer = setTimeout(bench.behind, behind_ms);
    return () => clearTimeout(timer);
  }, [bench]);
  return (
    <>
      <header class="title-block">
        <p class="name">Turnsleft</p>
        <h1 ref={heading} tabIndex={-1}>
          {bench.name}
        </h1>
        <ThemeTap />
      </header>
      <Bar bench={bench} />
      <main id="main" key={bench.path}>
        <Page />
      </main>
      <footer>
        <p>{standing}</p>
      </footer>
    </>
  );
}

/** The first answer comes before what is fetched behind it. */
const behind_ms = 300;

/** Where a thumb reaches: the places of this page, and the other benches. */
function Bar({ bench }: { readonly bench: Bench }) {
  const open = useSignal(false);
  return (
    <nav class="bar" aria-label="Benches and places of this page">
      {benches.length > 1 && (
        <ul class="benches" data-open={open.value ? "" : undefined} id="benches">
          {benches.map(
            ({ path, name, below }) =>
              below || (
                <li key={path}>
                  <a
                    href={`#${path}`}
                    aria-current={path === bench.path ? "page" : undefined}
                    onClick={() => {
                      open.value = false;
                    }}
                  >
                    {name}
                  </a>
                </li>
              ),
          )}
        </ul>
      )}
      <div class="thumb">
        {bench.places.map(({ id, word }) => (
          <button key={id} type="button" onClick={() => jumpTo(id)}>
            {word}
          </button>
        ))}
        {benches.length > 1 && (
          <button
            type="button"
            class="more"
            aria-expanded={open.value}
            aria-controls="benches"
            onClick={() => {
              open.value = !open.value;
            }}
          >
            Benches
          </button>
        )}
      </div>
    </nav>
  );
}

/** Day, night, or as the device says. */
function ThemeTap() {
  const next = themes[(themes.indexOf(theme.value) + 1) % themes.length] as Theme;
  return (
    <button
      type="button"
      class="plain theme"
      onClick={() => {
        theme.value = next;
      }}
    >
      Light: {theme.value}
    </button>
  );
}
