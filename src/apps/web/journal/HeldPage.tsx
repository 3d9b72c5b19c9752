import { journalWords as words } from "../../../sheets/words/journalPageWords.ts";
import { Picture } from "../kit/Picture.tsx";
import { Frame } from "./Frame.tsx";

/** How the workshop's own repairs have held, by method; few cases say little, and that is said. */
export function HeldPage() {
  return (
    <Frame view={{ name: "held" }}>
      {(methods) => (
        <>
          {methods.length === 0 && <p class="begin">{words.nothingHeld}</p>}
          {methods.map(({ method, sentences, causes, picture }) => (
            <section key={method} class="part" aria-label={method}>
              <h2>{method}</h2>
              {picture && <Picture svg={picture} kind="held" />}
              <ul>
                {sentences.map((it) => (
                  <li key={it}>{it}</li>
                ))}
              </ul>
              {causes.length > 0 && (
                <>
                  <h3>{words.causes}</h3>
                  <ul>
                    {causes.map((it) => (
                      <li key={it}>{it}</li>
                    ))}
                  </ul>
                </>
              )}
            </section>
          ))}
        </>
      )}
    </Frame>
  );
}
