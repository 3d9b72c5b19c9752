import { render } from "preact";
import { App } from "./app/App.tsx";
import { weighKept } from "./bench/BenchPage.tsx";

const root = document.getElementById("app");
if (!root) throw new Error("the page has no place for the app");
render(<App />, root);
weighKept();
// There is none on a plain address of a network: browsers keep it to secure ones and to this machine.
addEventListener("load", () => navigator.serviceWorker?.register("./sw.js").catch(() => {}));
