import type { ComponentType } from "preact";
import { BenchPage } from "../bench/BenchPage.tsx";
import { lazily } from "../kit/lazily.tsx";
import { fetchSums, sums } from "./sums.ts";

/** A place that a thumb jumps to: the id of a heading of this page or the address of another one, and the word on the bar. */
export type Place = { readonly id: string; readonly word: string };

/** One bench: where it stands, what it is called, its page and its places. */
export type Bench = {
  readonly path: string;
  readonly name: string;
  readonly Page: ComponentType;
  readonly places: readonly Place[];
  /** What is fetched once it stands, so that it is there when the network is not. */
  readonly behind?: () => void;
  /** Whether it is opened from another page alone, at a path of its own below this one. */
  readonly below?: true;
};

const onTheLift: Place = { id: "#/standing", word: "On the lift" };

/** Every bench in its order: a further one is one more row here. */
export const benches: readonly [Bench, ...Bench[]] = [
  {
    path: "/",
    name: "Torn thread",
    Page: BenchPage,
    places: [
      { id: "asked", word: "Ask" },
      { id: "left", word: "Read" },
      { id: "answer", word: "Answer" },
      { id: "ways", word: "Do" },
      { id: "papers", word: "Papers" },
    ],
  },
  {
    path: "/thread",
    name: "Which thread",
    Page: lazily(sums.thread, "ThreadPage"),
    places: sumPlaces("plug"),
    behind: fetchSums,
  },
  {
    path: "/level",
    name: "Level",
    Page: lazily(sums.level, "LevelPage"),
    places: sumPlaces("holds"),
    behind: fetchSums,
  },
  {
    path: "/drip",
    name: "Drip",
    Page: lazily(sums.drip, "DripPage"),
    places: sumPlaces("asked"),
    behind: fetchSums,
  },
  {
    path: "/cure",
    name: "Cure",
    Page: lazily(sums.cure, "CurePage"),
    places: sumPlaces("joint"),
    behind: fetchSums,
  },
  {
    path: "/convert",
    name: "Units",
    Page: lazily(sums.convert, "ConvertPage"),
    places: sumPlaces("quantity"),
    behind: fetchSums,
  },
  {
    path: "/standing",
    name: "On the lift",
    Page: lazily(journal, "StandingPage"),
    places: [{ id: "workshop", word: "Open a job" }],
  },
  { path: "/due", name: "Falling due", Page: lazily(journal, "DuePage"), places: [] },
  { path: "/held", name: "What held", Page: lazily(journal, "HeldPage"), places: [] },
  {
    path: "/job",
    name: "Job",
    Page: lazily(journal, "JobPage"),
    places: [onTheLift, { id: "job", word: "Stands" }, { id: "log", word: "Log" }],
    below: true,
  },
  {
    path: "/port",
    name: "Port",
    Page: lazily(journal, "PortPage"),
    places: [onTheLift],
    below: true,
  },
];

/** All pages of the journal lie in one script. */
function journal() {
  return import("../journal/pages.ts");
}

/** The places of a bench of one sum; its readings begin at the heading `first`. */
function sumPlaces(first: string): readonly Place[] {
  return [
    { id: first, word: "Read" },
    { id: "answer", word: "Answer" },
    { id: "behind", word: "Working" },
  ];
}
