/** All checks in order; the first that fails ends the run. The types were checked by the build in prepare.mjs. */
import { spawnSync } from "node:child_process";

const checks = [
  ["format and lint", "@biomejs/biome/bin/biome", ["check"]],
  ["unused code", "knip/bin/knip.js", []],
  ["tests", "vitest/vitest.mjs", ["run"]],
];

for (const [name, program, options] of checks) {
  console.log(`\n${name}`);
  const { status } = spawnSync(process.execPath, [`node_modules/${program}`, ...options], { stdio: "inherit" });
  if (status === 0) continue;
  console.error(`turnsleft: the check "${name}" failed; its output is above.`);
  process.exit(1);
}
