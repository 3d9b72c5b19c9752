import { standing } from "../../../sheets/words/benchWords.ts";
import { jumpTo } from "../kit/jump.ts";
import { benches } from "./benches.ts";
import { route } from "./route.ts";
import { type Theme, theme, themes } from "./theme.ts";

/** The frame of every bench: a title block above, the page, and what is reached by thumb below. */
export function App() {
  const bench = benches.find(({ path }) => path === route.value) ?? benches[0];
  if (!bench) return null;
  const { Page } = bench;
  return (
    <>
      <header class="title-block">
        <p class="name">Turnsleft</p>
        <h1>{bench.name}</h1>
        <ThemeTap />
      </header>
      <main id="main">
        <Page />
      </main>
      <footer>
        <p>{standing}</p>
      </footer>
      <nav class="thumb" aria-label="This page">
        {places.map(({ id, word }) => (
          <button key={id} type="button" onClick={() => jumpTo(id)}>
            {word}
          </button>
        ))}
        {benches.length > 1 && <BenchLinks />}
      </nav>
    </>
  );
}

const places = [
  { id: "asked", word: "Ask" },
  { id: "left", word: "Read" },
  { id: "answer", word: "Answer" },
  { id: "ways", word: "Do" },
  { id: "papers", word: "Papers" },
] as const;

function BenchLinks() {
  return (
    <>
      {benches.map(({ path, name }) => (
        <a key={path} href={`#${path}`} aria-current={route.value === path ? "page" : undefined}>
          {name}
        </a>
      ))}
    </>
  );
}

/** Day, night, or as the device says. */
function ThemeTap() {
  const next = themes[(themes.indexOf(theme.value) + 1) % themes.length] as Theme;
  return (
    <button
      type="button"
      class="plain theme"
      aria-label={`Light: ${theme.value}. Change to ${next}`}
      onClick={() => {
        theme.value = next;
      }}
    >
      {theme.value === "night" ? "Night bay" : theme.value === "day" ? "Day" : "Light"}
    </button>
  );
}
