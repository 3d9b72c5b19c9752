import { jumpTo } from "./jump.ts";
import { fieldId } from "./NumberField.tsx";

/** What to do next; a tap goes there. */
export function Next({ sentence, field }: { readonly sentence: string; readonly field: string | null }) {
  return (
    <p class="next">
      <span>
        <b>Next</b> {sentence}
      </span>
      {field !== null && (
        <button type="button" class="plain" onClick={() => jumpTo(fieldId(field))}>
          Go there
        </button>
      )}
    </p>
  );
}
