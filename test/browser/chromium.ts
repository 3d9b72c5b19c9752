/** What a machine tells about itself, as far as finding a browser goes. */
export type Machine = {
  readonly platform: NodeJS.Platform;
  /** TURNSLEFT_BROWSER, the way around everything else. */
  readonly named: string | undefined;
  /** The folders of PATH; on Windows those under which programs are installed. */
  readonly folders: readonly string[];
  /** Where playwright-core keeps its own download, there or not. */
  readonly downloaded: string;
  /** ID of /etc/os-release, null where there is none. */
  readonly distribution: string | null;
  readonly isRoot: boolean;
  /** Whether it is there and tells its version. A stub that only says how to install another does not run. */
  readonly runs: (path: string) => boolean;
};

/** A way to get a browser that is not there yet. */
export type Installation = {
  readonly announcement: string;
  readonly commands: readonly (readonly [program: string, ...options: readonly string[]])[];
};

/** A browser to use; or how to get one, the best way first; or why none is looked for. */
export type Finding =
  | { readonly type: "found"; readonly path: string }
  | { readonly type: "missing"; readonly installations: readonly Installation[] }
  | { readonly type: "wrong"; readonly sentence: string };

const onLinux = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "microsoft-edge"];
const onMac = ["Chromium", "Google Chrome", "Microsoft Edge"];
const onWindows = [
  "Chromium\\Application\\chrome.exe",
  "Google\\Chrome\\Application\\chrome.exe",
  "Microsoft\\Edge\\Application\\msedge.exe",
];

const debianPackage: Installation = {
  announcement: "No Chromium was found: installing Debian's package chromium with apt-get ...",
  commands: [
    ["apt-get", "update"],
    ["apt-get", "install", "--yes", "--no-install-recommends", "chromium"],
  ],
};

const ownDownload: Installation = {
  announcement: "No Chromium was found: downloading the one of playwright-core into its own folder of this user ...",
  commands: [["node", "node_modules/playwright-core/cli.js", "install", "chromium"]],
};

/** The browser of this machine: the one named, one installed, or the ways to install one. */
export function findChromium(machine: Machine): Finding {
  const { named, runs, distribution, isRoot } = machine;
  if (named !== undefined && named !== "")
    return runs(named)
      ? { type: "found", path: named }
      : { type: "wrong", sentence: `TURNSLEFT_BROWSER: given "${named}"; accepted: the path of a Chromium that runs` };
  const path = places(machine).find(runs);
  if (path !== undefined) return { type: "found", path };
  // Elsewhere the package of that name is another thing: a snap, or nothing.
  const byPackage = distribution === "debian" && isRoot ? [debianPackage] : [];
  return { type: "missing", installations: [...byPackage, ownDownload] };
}

function places({ platform, folders, downloaded }: Machine): readonly string[] {
  if (platform === "win32")
    return [...onWindows.flatMap((it) => folders.map((folder) => `${folder}\\${it}`)), downloaded];
  const applications = platform === "darwin" ? onMac.map((it) => `/Applications/${it}.app/Contents/MacOS/${it}`) : [];
  return [...applications, ...onLinux.flatMap((it) => folders.map((folder) => `${folder}/${it}`)), downloaded];
}
