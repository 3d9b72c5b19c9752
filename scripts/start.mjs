/** Prepares, then serves in this same process. */
import "./prepare.mjs";

// The shell that npm puts between dies of a signal without handing it on; whoever is left without it stops as well.
const parent = process.ppid;
setInterval(() => process.ppid === parent || process.kill(process.pid, "SIGTERM"), 200).unref();

const program = new URL("../dist/src/apps/cli/main.js", import.meta.url);
process.argv = [process.argv[0], program.pathname, "start", ...process.argv.slice(2)];
await import(program.href);
