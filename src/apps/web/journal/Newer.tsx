import { useSignal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import { journalWords as words } from "../../../sheets/words/journalPageWords.ts";

/** Says that a newer Turnsleft was fetched behind the page, and takes it over when it is tapped: nothing changes under a hand. */
export function Newer() {
  const waiting = useSignal<ServiceWorker | null>(null);
  useEffect(() => {
    const { serviceWorker } = navigator;
    if (!serviceWorker) return;
    let at: ServiceWorkerRegistration | undefined;
    const look = (): void => {
      waiting.value = at?.waiting ?? null;
    };
    const found = (): void => at?.installing?.addEventListener("statechange", look);
    serviceWorker.getRegistration().then((it) => {
      at = it;
      look();
      // One that is being fetched already tells of it no more.
      found();
      at?.addEventListener("updatefound", found);
    });
    return () => at?.removeEventListener("updatefound", found);
  }, []);
  const worker = waiting.value;
  if (!worker) return null;
  return (
    <p class="next newer">
      <span>{words.newer}</span>
      <button
        type="button"
        class="plain"
        onClick={() => {
          navigator.serviceWorker.addEventListener("controllerchange", () => location.reload(), { once: true });
          worker.postMessage("take over");
        }}
      >
        {words.takeNewer}
      </button>
    </p>
  );
}
