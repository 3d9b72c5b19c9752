import { useSignal } from "@preact/signals";
import type { ComponentChildren } from "preact";

/** A paper is written out only while somebody reads it: every step of a stepper would write it anew. */
export function Sheet({ title, children }: { readonly title: string; readonly children: () => ComponentChildren }) {
  const open = useSignal(false);
  return (
    <details
      class="fold"
      onToggle={(event) => {
        open.value = event.currentTarget.open;
      }}
    >
      <summary>
        <h3>{title}</h3>
      </summary>
      {open.value && children()}
    </details>
  );
}
