import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { portSection } from "../../../src/mechanics/joint/section.ts";
import type { SectionInput } from "../../../src/mechanics/joint/sectionInput.ts";
import { type Box, type Label, labelBox, overlap } from "../../../src/sheets/drawings/lettering.ts";
import { BeforeAfter } from "../../../src/sheets/drawings/section/BeforeAfter.tsx";
import { PortSection } from "../../../src/sheets/drawings/section/PortSection.tsx";
import { sectionLayout } from "../../../src/sheets/drawings/section/sectionLayout.ts";
import { pairLayout } from "../../../src/sheets/drawings/section/sideBySide.ts";
import { standaloneSvg } from "../../../src/sheets/drawings/standalone.ts";
import { anyCaption, anyPair, anySection } from "./arbitraries.ts";
import { expectCommitted } from "./committedDrawing.ts";
import { expectInside } from "./drawnPoints.ts";
import {
  healthy,
  hurt,
  longerPlug,
  mostlyUnknown,
  taperPlug,
  taperPlugInRp,
  withORing,
  withSealant,
} from "./exampleSections.ts";

describe("pinned: drawings that were looked at", () => {
  test.each([
    ["port-healthy.svg", healthy, "As found"],
    ["port-hurt.svg", hurt, "As found"],
    ["port-sealant.svg", withSealant, "Sealant without washer"],
    ["port-o-ring.svg", withORing, "O-ring in a chamfer"],
    ["port-longer-plug.svg", longerPlug, "Longer plug with bonded seal"],
    ["port-taper.svg", taperPlug, "As found"],
    ["port-taper-in-rp.svg", taperPlugInRp, "As found"],
    ["port-mostly-unknown.svg", mostlyUnknown, "As found"],
  ])("%s", (name, input, caption) => {
    expectCommitted(name, standaloneSvg(<PortSection section={portSection(input)} caption={caption} />));
  });

  test("before-after.svg", () => {
    const before = { section: portSection(hurt), caption: "As found" };
    const after = { section: portSection(longerPlug), caption: "Longer plug, bonded seal" };
    expectCommitted("before-after.svg", standaloneSvg(<BeforeAfter before={before} after={after} />));
  });
});

describe("laws", () => {
  test("no lettering of a section overlaps other lettering or leaves the sheet", () => {
    fc.assert(
      fc.property(anySection, anyCaption, (input, caption) => {
        const layout = sectionLayout(portSection(input), caption);
        const blocks = [...layout.brackets, ...layout.lines].map(({ block }) => block.box);
        expectApart([...blocks, ...boxes([...layout.caption, ...layout.strip.labels])], layout.view);
      }),
      { numRuns: 400, examples: [[shallowBesideThickWall, ""]] },
    );
  });

  test("no lettering of a pair overlaps other lettering or leaves the sheet", () => {
    fc.assert(
      fc.property(anyPair, anyCaption, ([before, after], caption) => {
        const { view, halves } = pairLayout(
          { section: portSection(before), caption },
          { section: portSection(after), caption: "After" },
        );
        const all = halves.flatMap(({ axis, brackets, behind, caption: top, closure }) => [
          ...[...brackets, behind].map(({ block: { box } }) => ({ ...box, x: box.x + axis })),
          ...boxes([...top, ...closure]),
        ]);
        expectApart(all, view);
      }),
      { numRuns: 400 },
    );
  });

  test("nothing of a section or a pair is drawn outside its view box", () => {
    fc.assert(
      fc.property(anyPair, anyCaption, (pair, caption) => {
        const [before, after] = pair.map((it) => ({ section: portSection(it), caption })) as [Drawn, Drawn];
        for (const svg of [
          standaloneSvg(<PortSection {...before} />),
          standaloneSvg(<BeforeAfter before={before} after={after} />),
        ])
          expectInside(svg);
      }),
      { numRuns: 100 },
    );
  });

  test("a section is lettered with the turns it was given", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 6.5, noNaN: true }), (turnsCarrying) => {
        const { brackets } = sectionLayout(portSection({ ...hurt, turnsCarrying }), "");
        const worn = brackets.find(({ band }) => band.state === "worn");
        expect(worn?.block.labels[0]?.text).toBe(turnsCarrying.toFixed(1));
      }),
    );
  });

  test("both halves of a pair are drawn on one scale, their case faces on one line", () => {
    const { halves } = pairLayout(
      { section: portSection(hurt), caption: "" },
      { section: portSection(longerPlug), caption: "" },
    );
    expect(halves[0].section.depth_mm).toBe(halves[1].section.depth_mm);
    const svg = standaloneSvg(
      <BeforeAfter
        before={{ section: portSection(hurt), caption: "a" }}
        after={{ section: portSection(longerPlug), caption: "b" }}
      />,
    );
    // Both halves are only moved across, neither scaled nor moved along the axis.
    expect([...svg.matchAll(/transform="([^"]*)"/g)].map(([, it]) => it)).toEqual([
      expect.stringMatching(/^translate\([-\d.]+ 0\)$/),
      expect.stringMatching(/^translate\([-\d.]+ 0\)$/),
    ]);
  });
});

/** Coarse turns beside a wall so thick that the lettering is large for the plug: the words under a bracket were too wide. */
const shallowBesideThickWall: SectionInput = {
  ...{
    designation: "M20x2.5",
    d_mm: 20,
    P_mm: 2.5,
    d2_mm: 18.376202367904177,
    D1_mm: 17.29367061317363,
    d3_mm: 16.932826694930114,
  },
  ...{ flank_deg: 30 },
  ...{ threadDepth_mm: 2, thinnestWall_mm: 11.865471507480667, roomBehind_mm: 0.2, underHead_mm: 4, chamfer_mm: 0 },
  ...{ turnsCarrying: 0, turnsHealthy: null, condition: "good", heightLeft: 5e-324, goodFrom_mm: null },
  ...{ goodTo_mm: 1.0000000000000003e-9, surface: "oiled", headDiameter_mm: null },
  seal: { kind: "flat washer", outside_mm: 27, inside_mm: 20.4, thickness_mm: 0.8 },
};

type Drawn = { readonly section: ReturnType<typeof portSection>; readonly caption: string };

const boxes = (labels: readonly Label[]): readonly Box[] => labels.filter(({ text }) => text !== "").map(labelBox);

function expectApart(all: readonly Box[], view: Box): void {
  all.forEach((a, i) => {
    expect(
      all.slice(i + 1).filter((b) => overlap(a, b)),
      JSON.stringify(a),
    ).toEqual([]);
    expect(a.x).toBeGreaterThanOrEqual(view.x - 1e-6);
    expect(a.y).toBeGreaterThanOrEqual(view.y - 1e-6);
    expect(a.x + a.width).toBeLessThanOrEqual(view.x + view.width + 1e-6);
    expect(a.y + a.height).toBeLessThanOrEqual(view.y + view.height + 1e-6);
  });
}
