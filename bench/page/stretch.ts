import type { Browser, Page } from "playwright-core";
import { traced } from "./pressed.ts";

/**
 * How many times as long a page's main thread takes for pieces of about half a millisecond once the browser slows it down fourfold. It
 * stops the thread for slices of time, which count as the thread's own: on two busy cores pieces of half a millisecond took 5.2 times as
 * long, of two 4.6 times, of ten and more 4.0 to 4.2 times. What a press brings about is many short pieces.
 */
export async function stretch(browser: Browser, page: Page, slow: (rate: number) => Promise<void>): Promise<number> {
  let [unslowed_ms, slowed_ms] = [0, 0];
  for (let round = 0; round < rounds; round++) {
    await slow(1);
    unslowed_ms += await pieces(browser, page);
    await slow(4);
    slowed_ms += await pieces(browser, page);
  }
  return slowed_ms / unslowed_ms;
}

const rounds = 4;

/** The mean thread time of pieces that are the same every time, ms. */
async function pieces(browser: Browser, page: Page): Promise<number> {
  const events = await traced(browser, page, () => page.evaluate(inPieces));
  const ran = events.filter(({ name }) => name === "TimerFire").map(({ tdur, dur }) => tdur ?? dur ?? 0);
  return ran.reduce((sum, it) => sum + it, 0) / ran.length / 1000;
}

/** In the page: 60 pieces, each after a pause. */
async function inPieces(): Promise<void> {
  for (let piece = 0; piece < 60; piece++)
    await new Promise<void>((done) => {
      setTimeout(() => {
        let x = piece;
        for (let i = 0; i < 50_000; i++) x = (x * 1103515245 + 12345) | 0;
        Object.assign(globalThis, { x });
        done();
      }, 20);
    });
}
