import { published, type Source } from "./source.ts";

export const serviceClasses = ["GL-1", "GL-2", "GL-3", "GL-4", "GL-5", "GL-6", "MT-1"] as const;
export type ServiceClass = (typeof serviceClasses)[number];

/** What a class is made for, as ids. */
export type ServiceUse =
  | "manual box, mild load"
  | "spiral bevel, moderate to severe"
  | "hypoid, moderate"
  | "manual box or transaxle, selected"
  | "hypoid, high speed and shock"
  | "hypoid, low speed and high torque"
  | "manual box, heavy, without synchronisers";

export type ServiceClassRow = {
  readonly uses: readonly ServiceUse[];
  /** Whether the class is in current use. */
  readonly current: boolean;
  /** Whether every test of the class can still be run. */
  readonly verifiable: boolean;
  readonly source: Source;
};

const API_1560 = published("API 1560, lubricant service designations (as quoted)");

const out: ServiceClassRow = { uses: [], current: false, verifiable: false, source: API_1560 };

/** Service classes of lubricants for manual transmissions and axles. */
export const serviceClassRows: Readonly<Record<ServiceClass, ServiceClassRow>> = {
  "GL-1": { uses: ["manual box, mild load"], current: true, verifiable: true, source: API_1560 },
  "GL-2": out,
  "GL-3": out,
  "GL-4": {
    uses: ["spiral bevel, moderate to severe", "hypoid, moderate", "manual box or transaxle, selected"],
    current: true,
    verifiable: false,
    source: published("API 1560 (as quoted); API ballot of 2010 and trade press on test hardware no longer made"),
  },
  "GL-5": {
    uses: ["hypoid, high speed and shock", "hypoid, low speed and high torque"],
    current: true,
    verifiable: true,
    source: published("API 1560 (as quoted); ASTM D7450"),
  },
  "GL-6": out,
  "MT-1": {
    uses: ["manual box, heavy, without synchronisers"],
    current: true,
    verifiable: true,
    source: published("API 1560 (as quoted); ASTM D5760"),
  },
};
