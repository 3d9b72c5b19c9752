import { render } from "preact";
import { route } from "./app/route.ts";

const root = document.getElementById("app");
if (root) render(<h1>Turnsleft {route}</h1>, root);
