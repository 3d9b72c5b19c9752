import { readdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { StoreTrouble } from "../../journal/storeTrouble.ts";
import { troubleSentence } from "../../sheets/words/storeWords.ts";
import { fileTroubleOf } from "../../stores/fileTrouble.ts";
import { lastBackupOf, noteBackup } from "../../stores/lastBackup.ts";
import { madeFolder } from "../../stores/madeFolder.ts";

/** What backups are made of, where they go, and by which clock. */
export type BackupPlan = {
  readonly folder: string;
  readonly workshop: string;
  readonly place: string;
  /** Backs up into a file and reads it back; a sentence where it could not, or where part of it is damaged. */
  readonly take: (file: string) => Promise<BackupTaken>;
  readonly now: () => Date;
  /** Tells a person; never the same twice in a row. */
  readonly tell: (sentence: string) => void;
};

export type BackupTaken = { readonly made: boolean; readonly trouble: string | null };

export type DailyBackups = {
  /** Makes one if the last is older than a day. It never throws: a workshop without a backup works on. */
  madeIfDue(): Promise<void>;
  /** Looks now and then whether one is due, until it is stopped. */
  start(): void;
  /** Waits for one that is being made, which may be broken off, and tells nothing of it. */
  stop(): Promise<void>;
};

/** So many stay. An owner who is erased is gone from them after as many days. Judgement. */
export const KEPT = 14;

const DAY_ms = 86_400_000;
/** Counted by looking again, not by one long timer: a machine that sleeps over night would be late by the night. */
const LOOK_ms = 600_000;

export function dailyBackups({ folder, workshop, place, take, now, tell }: BackupPlan): DailyBackups {
  let told: string | null = null;
  let making: Promise<void> | null = null;
  let stopping = false;
  let timer: NodeJS.Timeout | null = null;

  const say = (trouble: string | null): void => {
    if (trouble !== null && trouble !== told && !stopping) tell(trouble);
    told = trouble;
  };

  const due = (): boolean => {
    const last = lastBackupOf(folder);
    // A clock that was set back leaves one of tomorrow behind: that is no backup of today.
    return last === null || Math.abs(now().getTime() - Date.parse(last.at)) >= DAY_ms;
  };

  async function make(): Promise<void> {
    const at = now().toISOString();
    const file = join(place, `${workshop}-${at.slice(0, 19).replace(/[-:]/g, "")}Z.backup`);
    madeFolder(place);
    try {
      removeAll(halves(place, workshop));
    } catch (cause) {
      throw fileTroubleOf(place, cause);
    }
    const { made, trouble } = await take(file);
    if (made) {
      noteBackup(folder, { at, file });
      removeAll(backupsIn(place, workshop).slice(0, -KEPT));
    }
    say(trouble && `Daily backup: ${trouble}`);
  }

  const madeIfDue = async (): Promise<void> => {
    try {
      if (due()) await make();
    } catch (fault) {
      say(`Daily backup: ${sentenceOf(fault)}`);
    }
  };

  /** One at a time, however long it takes. */
  const alone = (): Promise<void> => {
    making ??= madeIfDue().finally(() => {
      making = null;
    });
    return making;
  };

  return {
    madeIfDue: alone,
    start() {
      void alone();
      timer = setInterval(() => void alone(), LOOK_ms);
      timer.unref();
    },
    async stop() {
      stopping = true;
      if (timer) clearInterval(timer);
      await making;
    },
  };
}

const sentenceOf = (fault: unknown): string =>
  fault instanceof StoreTrouble ? troubleSentence(fault.trouble, fault.place) : `a fault of ours: ${fault}`;

/** The daily backups of a workshop in a place, the oldest first: their names are in the order of their time. */
const backupsIn = (place: string, workshop: string): readonly string[] =>
  named(place, workshop, /^\d{8}T\d{6}Z\.backup$/);

/** What a backup that was broken off left. */
const halves = (place: string, workshop: string): readonly string[] =>
  named(place, workshop, /^\d{8}T\d{6}Z\.backup\.part$/);

const named = (place: string, workshop: string, rest: RegExp): readonly string[] =>
  readdirSync(place)
    .filter((it) => it.startsWith(`${workshop}-`) && rest.test(it.slice(workshop.length + 1)))
    .sort()
    .map((it) => join(place, it));

const removeAll = (files: readonly string[]): void => {
  for (const file of files) rmSync(file, { force: true });
};
