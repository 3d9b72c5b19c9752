import { useSignal } from "@preact/signals";
import { useRef } from "preact/hooks";

/** What may be read out or sent, and a tap that copies it; where the browser does not let it, it is marked for the hand. */
export function Message({ text }: { readonly text: string }) {
  const paper = useRef<HTMLQuoteElement>(null);
  const said = useSignal("");
  const copy = async (): Promise<void> => {
    try {
      await navigator.clipboard.writeText(text);
      said.value = "Copied.";
    } catch {
      if (paper.current) getSelection()?.selectAllChildren(paper.current);
      said.value = "It is marked: copy it by the menu of this device.";
    }
  };
  return (
    <div class="message">
      <h3>To read out or send</h3>
      <blockquote ref={paper}>{text}</blockquote>
      <p class="row">
        <button type="button" class="plain" onClick={copy}>
          Copy the message
        </button>
        <span role="status">{said}</span>
      </p>
    </div>
  );
}
