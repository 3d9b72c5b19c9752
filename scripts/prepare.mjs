/** Installs and builds what is missing, says what it does, and fails with a plain sentence. */
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { chmodSync, existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

process.chdir(fileURLToPath(new URL("..", import.meta.url)));
const say = (line) => process.argv.includes("--quiet") || console.log(line);

const least = [20, 19];
const [major, minor] = process.versions.node.split(".").map(Number);
if (major < least[0] || (major === least[0] && minor < least[1]))
  giveUp(`Node ${least.join(".")} or newer is needed; this is ${process.versions.node}.`);

install();
build();
buildWeb();

function install() {
  const stamp = "node_modules/.turnsleft-installed";
  const wanted = createHash("sha256").update(readFileSync("package-lock.json")).digest("hex");
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === wanted) return;
  say("Installing the packages of package-lock.json (only when they change) ...");
  const ci = npm("ci");
  // Some versions of npm refuse a lock file written by another: one plain install then serves.
  if (ci.status !== 0 && !(/lock file/i.test(ci.stderr) && npm("install", "--no-save").status === 0)) {
    console.error(ci.stderr);
    giveUp("the packages could not be installed; is the npm registry in reach?");
  }
  writeFileSync(stamp, wanted);
}

function npm(...command) {
  const onWindows = process.platform === "win32";
  const options = [...command, "--no-audit", "--no-fund", "--loglevel=error"];
  return spawnSync(onWindows ? "npm.cmd" : "npm", options, { encoding: "utf8", shell: onWindows });
}

function build() {
  say("Building ...");
  const { status } = spawnSync(process.execPath, ["node_modules/typescript/bin/tsc", "-b"], { stdio: "inherit" });
  if (status !== 0) giveUp("the build failed; the compiler's words are above.");
  chmodSync("dist/src/apps/cli/main.js", 0o755);
}

/** The web app, where a byte of what it is made of has changed. */
function buildWeb() {
  const stamp = "dist/web-built";
  const sources = ["src/mechanics", "src/journal", "src/stores", "src/sheets", "src/apps/web"].flatMap((folder) =>
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((it) => it.isFile())
      .map((it) => `${it.parentPath}/${it.name}`),
  );
  const hash = createHash("sha256");
  for (const path of [...sources.sort(), "vite.config.ts", "package.json", "package-lock.json"])
    hash.update(path).update("\0").update(readFileSync(path)).update("\0");
  const wanted = hash.digest("hex");
  if (existsSync("dist/web/index.html") && existsSync(stamp) && readFileSync(stamp, "utf8") === wanted) return;
  say("Building the web app (only when it changes) ...");
  rmSync(stamp, { force: true });
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ["node_modules/vite/bin/vite.js", "build", "--logLevel", "warn"],
    { encoding: "utf8" },
  );
  if (status !== 0) {
    console.error(stdout + stderr);
    giveUp("the web app could not be built; the bundler's words are above.");
  }
  writeFileSync(stamp, wanted);
}

function giveUp(reason) {
  console.error(`turnsleft: ${reason}`);
  process.exit(1);
}
