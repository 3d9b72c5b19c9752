import { describe, expect, test } from "vitest";
import { type Finding, findChromium, type Machine } from "./chromium.ts";

const own = "/home/m/.cache/ms-playwright/chromium-1/chrome";

/** A machine on which only these paths run. */
const machine = (running: readonly string[], more: Partial<Machine> = {}): Machine => ({
  platform: "linux",
  named: undefined,
  folders: ["/usr/local/bin", "/usr/bin"],
  downloaded: own,
  distribution: "debian",
  isRoot: true,
  runs: (path) => running.includes(path),
  ...more,
});

const found = (path: string): Finding => ({ type: "found", path });

const commandsOf = (finding: Finding): string[] => {
  if (finding.type !== "missing") throw new Error(finding.type);
  return finding.installations.flatMap(({ commands }) => commands.map((it) => it.join(" ")));
};

const apt = ["apt-get update", "apt-get install --yes --no-install-recommends chromium"];
const download = "node node_modules/playwright-core/cli.js install chromium";

describe("which Chromium is used", () => {
  test("the one that is named, before any other", () => {
    expect(findChromium(machine(["/usr/bin/chromium", "/opt/mine"], { named: "/opt/mine" }))).toEqual(
      found("/opt/mine"),
    );
  });

  test("one that is named and does not run is a mistake, and no other is taken in its place", () => {
    expect(findChromium(machine(["/usr/bin/chromium"], { named: "/opt/mine" }))).toEqual({
      type: "wrong",
      sentence: 'TURNSLEFT_BROWSER: given "/opt/mine"; accepted: the path of a Chromium that runs',
    });
  });

  test("an empty name names none", () => {
    expect(findChromium(machine(["/usr/bin/chromium"], { named: "" }))).toEqual(found("/usr/bin/chromium"));
  });

  test("one that is installed: chromium before its relatives, whatever the order of PATH", () => {
    expect(findChromium(machine(["/usr/local/bin/google-chrome", "/usr/bin/chromium"]))).toEqual(
      found("/usr/bin/chromium"),
    );
    expect(findChromium(machine(["/usr/bin/google-chrome-stable"]))).toEqual(found("/usr/bin/google-chrome-stable"));
  });

  test("one in its place on a Mac, or on Windows", () => {
    const mac = "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome";
    expect(findChromium(machine([mac], { platform: "darwin" }))).toEqual(found(mac));
    const windows = "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe";
    expect(findChromium(machine([windows], { platform: "win32", folders: ["C:\\Program Files"] }))).toEqual(
      found(windows),
    );
  });

  test("playwright's own, once it was downloaded", () => {
    for (const platform of ["linux", "darwin", "win32"] as const)
      expect(findChromium(machine([own], { platform }))).toEqual(found(own));
  });
});

describe("what is installed where there is none, or only a stub that does not run", () => {
  test("on Debian as root its package, and failing that playwright's own", () => {
    expect(commandsOf(findChromium(machine([])))).toEqual([...apt, download]);
  });

  test.each([
    ["not as root", { isRoot: false }],
    ["on Ubuntu, where that package is a snap", { distribution: "ubuntu" }],
    ["on a Mac", { platform: "darwin", distribution: null }],
    ["on Windows", { platform: "win32", distribution: null, isRoot: false }],
  ] as const)("%s only playwright's own", (_, more) => {
    expect(commandsOf(findChromium(machine([], more)))).toEqual([download]);
  });

  test("each is announced by name before it is run", () => {
    const finding = findChromium(machine([]));
    const said = finding.type === "missing" ? finding.installations.map((it) => it.announcement) : [];
    expect(said).toEqual([
      expect.stringMatching(/installing Debian's package chromium/),
      expect.stringMatching(/downloading the one of playwright-core/),
    ]);
  });
});
