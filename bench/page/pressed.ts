import type { Browser, CDPSession, Page } from "playwright-core";
import { type Cost, changeCosts, type TraceEvent } from "./traceCost.ts";

/** Where a stepper lies on a page, to be tapped without asking the page again. */
export type Place = { readonly x: number; readonly y: number };

/** No more than what is counted: "v8" would write a second event around every call of a function, within the time that is counted. */
const categories = ["devtools.timeline", "disabled-by-default-devtools.timeline", "v8.execute"];

/** One change: all of it, and what of it the answer takes; the page draws what stands behind the answer when the hand rests. */
export type ChangeCost = { readonly all: Cost; readonly atOnce: Cost };

/** Taps the places in turn, `count` times, and leaves each change alone until it has settled. */
export async function tracedPresses(
  browser: Browser,
  page: Page,
  places: readonly Place[],
  count: number,
): Promise<readonly ChangeCost[]> {
  const events = await traced(browser, page, () => press(page, places, count, settled_ms));
  const [all, atOnce] = [changeCosts(events), changeCosts(events, atOnce_ms)];
  if (all.length !== count) throw new Error(`${count} presses, but ${all.length} in the trace`);
  return all.map((it, i) => ({ all: it, atOnce: atOnce[i] as Cost }));
}

/** What the browser writes down of a page while something is done to it. */
export async function traced(browser: Browser, page: Page, act: () => Promise<void>): Promise<readonly TraceEvent[]> {
  await browser.startTracing(page, { categories });
  await act();
  const trace: { readonly traceEvents: readonly TraceEvent[] } = JSON.parse((await browser.stopTracing()).toString());
  return trace.traceEvents;
}

/** The share of frames that came late while a hand pressed as fast as hands do. A late one missed its turn at 60 Hz. */
export async function lateFrames(page: Page, places: readonly Place[], count: number): Promise<number> {
  await page.evaluate(() => {
    const frames: number[] = [];
    const next = (at: number): void => {
      frames.push(at);
      requestAnimationFrame(next);
    };
    requestAnimationFrame(next);
    Object.assign(globalThis, { frames });
  });
  await press(page, places, count, quick_ms);
  const frames = await page.evaluate(() => (globalThis as unknown as { frames: number[] }).frames);
  const between = frames.slice(1).map((at, i) => at - (frames[i] ?? at));
  return between.filter((it) => it > late_ms).length / between.length;
}

/** Slows the page's main thread down. A worker beside it keeps its pace. */
export async function slowedDown(session: CDPSession, rate: number): Promise<void> {
  await session.send("Emulation.setCPUThrottlingRate", { rate });
}

/** Longer than the page waits before it draws what stands behind its answer. */
const settled_ms = 450;
const atOnce_ms = 180;
const quick_ms = 150;
/** One frame and a half at 60 Hz. */
const late_ms = 25;

async function press(page: Page, places: readonly Place[], count: number, every_ms: number): Promise<void> {
  for (let i = 0; i < count; i++) {
    const { x, y } = places[i % places.length] as Place;
    await page.touchscreen.tap(x, y);
    await page.waitForTimeout(every_ms);
  }
}
