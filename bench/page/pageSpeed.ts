import { type Browser, chromium, type Page } from "playwright-core";
import { serverApp } from "../../src/apps/server/app.ts";
import { builtFiles } from "../../src/apps/server/builtFiles.ts";
import { listen } from "../../src/apps/server/listen.ts";
import { chromiumHere } from "../../test/browser/chromiumHere.ts";
import { quantileOf } from "../timed.ts";
import { barePage } from "./barePage.ts";
import { type LoadedScript, loadedScript } from "./loadedScript.ts";
import { type ChangeCost, lateFrames, type Place, slowedDown, tracedPresses } from "./pressed.ts";
import { stretch } from "./stretch.ts";
import { type Cost, total, type Work } from "./traceCost.ts";

/**
 * What presses of a stepper cost a page, as a main thread that takes four times as long: its own time, taken four times. What the
 * browser's own slow-down makes of it stands beside: it stretches short pieces of work more than that (`stretch`), in any page.
 */
export type PressCost = {
  /** Script, style, layout and paint of all that one change brings about. */
  readonly p50_ms: number;
  readonly p95_ms: number;
  /** Of that, what the answer itself takes; the rest is drawn when the hand rests. */
  readonly answerP50_ms: number;
  readonly answerP95_ms: number;
  readonly means_ms: Readonly<Record<Work, number>>;
  /** All of a change where the browser slows the thread down. */
  readonly slowedP50_ms: number;
  readonly slowedP95_ms: number;
  /** There too. */
  readonly lateFrames: number;
};

export type PageSpeed = {
  readonly browser: string;
  readonly presses: number;
  readonly bench: PressCost;
  /** A page that changes one text, pressed in turn with the bench. */
  readonly bare: PressCost;
  /** How many times as long the slowed down thread really took for pieces of half a millisecond; 4 were asked. */
  readonly stretch: number;
  readonly script: LoadedScript;
};

const phone = { viewport: { width: 412, height: 915 }, hasTouch: true, isMobile: true };
const pressesInBlock = 30;

/** The served bench in a real Chromium, pressed in `blocks` of 30. @throws if there is none, or the web app is not built. */
export async function pageSpeed(blocks: number): Promise<PageSpeed> {
  const app = serverApp({ files: builtFiles("dist/web"), version: "bench" });
  const served = await listen((request) => app.fetch(request), 0);
  if (typeof served !== "object") throw new Error(served);
  const browser = await chromium.launch({ executablePath: chromiumHere() });
  try {
    const script = await loadedScript(browser, phone, served.address);
    const [bench, slowBench] = await opened(browser);
    await bench.goto(served.address, { waitUntil: "networkidle" });
    const example = await placeOf(bench, "worked example");
    await bench.touchscreen.tap(example.x, example.y);
    const [bare, slowBare] = await opened(browser);
    await bare.setContent(barePage);
    const subjects: readonly Subject[] = [
      { page: bench, slow: slowBench, places: await turnSteppers(bench), unslowed: [], slowed: [] },
      { page: bare, slow: slowBare, places: [await placeOf(bare, "")], unslowed: [], slowed: [] },
    ];
    for (let block = 0; block < blocks; block++)
      for (const { page, slow, places, unslowed, slowed } of subjects) {
        await page.bringToFront();
        await slow(1);
        unslowed.push(...(await tracedPresses(browser, page, places, pressesInBlock)));
        await slow(slowing);
        slowed.push(...(await tracedPresses(browser, page, places, pressesInBlock)));
      }
    const late: number[] = [];
    for (const { page, places } of subjects) {
      await page.bringToFront();
      late.push(await lateFrames(page, places, blocks * pressesInBlock));
    }
    const [ofBench, ofBare] = subjects.map((it, i) => pressCost(it, late[i] ?? Number.NaN));
    return {
      browser: browser.version(),
      presses: blocks * pressesInBlock,
      bench: ofBench as PressCost,
      bare: ofBare as PressCost,
      stretch: await stretch(browser, bare, slowBare),
      script,
    };
  } finally {
    await browser.close();
    await served.close();
  }
}

const slowing = 4;

type Slow = (rate: number) => Promise<void>;

type Subject = {
  readonly page: Page;
  readonly slow: Slow;
  readonly places: readonly Place[];
  readonly unslowed: ChangeCost[];
  readonly slowed: ChangeCost[];
};

async function opened(browser: Browser): Promise<readonly [Page, Slow]> {
  const context = await browser.newContext(phone);
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  return [page, (rate) => slowedDown(session, rate)];
}

/** The steppers of the turns, up and down by turns so that the count stays where it is. */
async function turnSteppers(page: Page): Promise<readonly Place[]> {
  const named = (way: string): string => `^Turns, catch to seat: .*${way}$`;
  // Brought into view, and once more when what came into view with it has been laid out.
  for (let time = 0; time < 2; time++) {
    await placeOf(page, named("more"));
    await page.waitForTimeout(1000);
  }
  const [more, less] = [await placeOf(page, named("more")), await placeOf(page, named("less"))];
  return [more, more, less, less];
}

/**
 * The middle of the first button so named, brought into view. The page itself is asked: the test tool's own search, click and waiting
 * leave listeners in a page that hear every later event, and their time would be counted as the page's.
 */
async function placeOf(page: Page, name: string): Promise<Place> {
  return page.evaluate(async (name) => {
    const named = () =>
      [...document.querySelectorAll("button")].find((it) =>
        new RegExp(name).test(it.getAttribute("aria-label") ?? it.textContent ?? ""),
      );
    for (let waited = 0; !named() && waited < 100; waited++) await new Promise((done) => setTimeout(done, 100));
    const button = named();
    if (!button) throw new Error(`there is no button ${name}`);
    button.scrollIntoView({ block: "nearest", behavior: "instant" });
    const { x, y, width, height } = button.getBoundingClientRect();
    return { x: x + width / 2, y: y + height / 2 };
  }, name);
}

function pressCost({ unslowed, slowed }: Subject, late: number): PressCost {
  const fourfold = (cost: Cost): number => slowing * total(cost);
  const [totals, answers] = [unslowed.map(({ all }) => fourfold(all)), unslowed.map(({ atOnce }) => fourfold(atOnce))];
  const meanOf = (work: Work): number =>
    (slowing * unslowed.reduce((sum, { all }) => sum + all[work], 0)) / unslowed.length;
  const slowedTotals = slowed.map(({ all }) => total(all));
  return {
    p50_ms: quantileOf(totals, 0.5),
    p95_ms: quantileOf(totals, 0.95),
    answerP50_ms: quantileOf(answers, 0.5),
    answerP95_ms: quantileOf(answers, 0.95),
    means_ms: {
      script: meanOf("script"),
      style: meanOf("style"),
      layout: meanOf("layout"),
      paint: meanOf("paint"),
      commit: meanOf("commit"),
    },
    slowedP50_ms: quantileOf(slowedTotals, 0.5),
    slowedP95_ms: quantileOf(slowedTotals, 0.95),
    lateFrames: late,
  };
}
