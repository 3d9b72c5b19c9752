import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Box, type Label, labelBox, overlap } from "../../../src/sheets/drawings/lettering.ts";
import { standaloneSvg } from "../../../src/sheets/drawings/standalone.ts";
import { crossings } from "../../../src/sheets/drawings/window/markRows.ts";
import { WindowBar } from "../../../src/sheets/drawings/window/WindowBar.tsx";
import { WindowsCompared } from "../../../src/sheets/drawings/window/WindowsCompared.tsx";
import { type WindowLayout, windowLayout } from "../../../src/sheets/drawings/window/windowLayout.ts";
import type { WindowProps } from "../../../src/sheets/drawings/window/windowProps.ts";
import { anyWindow } from "./arbitraries.ts";
import { expectCommitted } from "./committedDrawing.ts";
import { expectInside } from "./drawnPoints.ts";
import { emptyWindow, healthyWindow, narrowWindow, openWindow } from "./exampleWindows.ts";

describe("pinned: drawings that were looked at", () => {
  test.each([
    ["window-open.svg", openWindow],
    ["window-empty.svg", emptyWindow],
    ["window-narrow.svg", narrowWindow],
    ["window-healthy.svg", healthyWindow],
  ])("%s", (name, props) => {
    expectCommitted(name, standaloneSvg(<WindowBar {...props} />));
  });

  test("windows-compared.svg", () => {
    expectCommitted("windows-compared.svg", standaloneSvg(<WindowsCompared before={emptyWindow} after={openWindow} />));
  });
});

describe("laws", () => {
  test("no lettering overlaps other lettering or leaves the sheet", () => {
    fc.assert(
      fc.property(anyWindow, (props) => {
        const layout = windowLayout(props);
        const all = letteringOf(layout);
        all.forEach((a, i) => {
          expect(all.slice(i + 1).filter((b) => overlap(a, b))).toEqual([]);
          expect(a.x).toBeGreaterThanOrEqual(-1e-6);
          expect(a.y).toBeGreaterThanOrEqual(-1e-6);
          expect(a.x + a.width).toBeLessThanOrEqual(layout.view.width + 1e-6);
          expect(a.y + a.height).toBeLessThanOrEqual(layout.view.height + 1e-6);
        });
      }),
      { numRuns: 1000 },
    );
  });

  test("nothing is drawn outside the view box", () => {
    fc.assert(
      fc.property(anyWindow, anyWindow, (props, other) => {
        expectInside(standaloneSvg(<WindowBar {...props} />));
        expectInside(standaloneSvg(<WindowsCompared before={props} after={other} />));
      }),
      { numRuns: 100 },
    );
  });

  test("every figure is lettered once, and the same figures always lie the same way", () => {
    fc.assert(
      fc.property(anyWindow, (props) => {
        const layout = windowLayout(props);
        expect(windowLayout(structuredClone(props))).toEqual({ ...layout, axis: expect.anything() });
        const kinds = layout.marks.map(({ mark }) => mark.id);
        expect(kinds.filter((kind) => kind === "book")).toHaveLength(props.bookFigures.length);
        const lowAbove = layout.low.label?.text ?? "";
        const limitAbove = layout.limit.label ? 1 : 0;
        expect(kinds.filter((kind) => kind === "limit").length + limitAbove).toBe(1);
        expect(kinds.includes("need") !== lowAbove.startsWith("need")).toBe(true);
        expect(kinds.includes("floor") !== lowAbove.startsWith("floor")).toBe(props.floor_Nm !== null);
      }),
    );
  });

  test("a window that is empty has no flag, says so, and its edges cross; any other has upright edges", () => {
    fc.assert(
      fc.property(anyWindow, (props) => {
        const { empty, flag, emptySign, low, limit } = windowLayout(props);
        expect(empty).toBe(Math.max(props.need_Nm, props.floor_Nm ?? 0) > props.limit_Nm);
        if (empty) {
          expect(flag).toBeNull();
          expect(emptySign?.label.text).toBe("empty");
          expect(low.head).toBeLessThan(limit.head);
          expect(low.foot).toBeGreaterThanOrEqual(limit.foot);
        } else {
          expect(flag === null).toBe(props.advice_Nm === null);
          expect(emptySign).toBeNull();
          expect([low.head, limit.head]).toEqual([low.foot, limit.foot]);
          expect(low.foot).toBeLessThanOrEqual(limit.foot);
        }
      }),
    );
  });

  test("an advice handed to an empty window is not drawn", () => {
    const svg = standaloneSvg(<WindowBar {...emptyWindow} advice_Nm={17} />);
    expect(svg).not.toContain(">17<");
    expect(svg).not.toContain("Set 17");
  });

  test("places on the axis are in proportion to torque, and the axis begins at 0", () => {
    fc.assert(
      fc.property(anyWindow, fc.double({ min: 0, max: 1, noNaN: true }), (props, part) => {
        const { axis, bar } = windowLayout(props);
        expect(axis.ticks_Nm[0]).toBe(0);
        expect(axis.at(part * axis.to_Nm)).toBeCloseTo(bar.x + part * bar.width, 6);
        expect(axis.ticks_Nm.every(Number.isInteger)).toBe(true);
      }),
    );
  });

  test("need is never lettered lower than it is, nor the careful limit higher; an open window never looks empty", () => {
    fc.assert(
      fc.property(anyWindow, (props) => {
        const layout = windowLayout(props);
        const texts = [layout.low.label, layout.limit.label, ...layout.marks.flatMap(({ labels }) => labels[0] ?? [])]
          .filter((label) => label !== null)
          .map(({ text }) => text);
        const figure = (word: string): number =>
          Number(texts.find((text) => text.startsWith(`${word} `))?.slice(word.length));
        const low = figure(layout.low_Nm === props.need_Nm ? "need" : "floor");
        expect(figure("careful limit")).toBeLessThanOrEqual(props.limit_Nm + 0.05);
        expect(low).toBeGreaterThanOrEqual(layout.low_Nm - 0.05);
        if (!layout.empty) expect(low).toBeLessThanOrEqual(figure("careful limit"));
      }),
    );
  });

  test("leaders of the examples run behind no lettering", () => {
    for (const props of [openWindow, emptyWindow, narrowWindow, healthyWindow]) {
      const { marks, letter } = windowLayout(props);
      const top = Math.min(...marks.map(({ box }) => box.y));
      expect(crossings(marks, top, letter)).toBe(0);
    }
  });

  test("bars that are compared share one axis", () => {
    const props = (after: WindowProps) => windowLayout(after, [openWindow.medianStrip_Nm, 90]).axis.to_Nm;
    expect(props(emptyWindow)).toBe(props(openWindow));
  });
});

function letteringOf(layout: WindowLayout): readonly Box[] {
  const { caption, words, ticks, low, limit, bracket, flag, emptySign, marks } = layout;
  const edges = [low.label, limit.label].filter((label): label is Label => label !== null);
  const lone = [...caption, ...words, ...ticks, ...edges, ...(bracket ? [bracket.label] : [])];
  const boxes = [...marks, ...[flag, emptySign].filter((it) => it !== null)].map(({ box }) => box);
  return [...boxes, ...lone.filter(({ text }) => text !== "").map(labelBox)];
}
