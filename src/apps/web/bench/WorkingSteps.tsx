import type { Step } from "../../../mechanics/quantity/working.ts";

/** Every figure with its formula, the numbers put in, the result and the source: a tap on one opens it. */
export function WorkingSteps({ steps }: { readonly steps: readonly Step[] }) {
  return (
    <ul class="working">
      {steps.map(({ formula, substituted, result, source }, i) => (
        <li key={`${i} ${formula}`}>
          <details>
            <summary>
              <code>{formula.slice(0, formula.indexOf("=")).trim()}</code>
              <b>{result}</b>
            </summary>
            <p>
              <code>{formula}</code>
            </p>
            <p>
              <code>
                = {substituted} = {result}
              </code>
            </p>
            <p class="hint">{source}</p>
          </details>
        </li>
      ))}
    </ul>
  );
}
