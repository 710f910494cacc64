import { describe, expect, it } from "vitest";
import type { Mark } from "../../machines/picture/mark.ts";
import { readBrief } from "../../server/input/brief.ts";
import { CallPicture } from "../../views/drawing/call/call-picture.tsx";
import { LayoutDrawing } from "../../views/drawing/layout.tsx";
import { groundAround } from "../../views/drawing/site/ground-around.ts";
import { pressedAt, siteFrame, viewOf } from "../../views/drawing/site/site-frame.ts";
import { layoutDxf } from "../../views/pages/layout/dxf.ts";
import { en } from "../../views/text/en/en.ts";
import { brief } from "../support/app.ts";
import { site } from "../support/sites.ts";

const point = (alongFt: number, offFt: number) => ({ alongFt, offFt });
const gas = { id: "gas 1", kind: "gas", told: "ticket", points: [point(-20, 30), point(130, 30)] };
const { frozen } = readBrief({ ...brief(), siteModel: { buried: [gas], wanted: { cornerA: point(10, 20), headingDeg: 0 } } });
const { plan } = frozen;
const ground = groundAround(frozen)!;
const picture = (about: readonly Mark[]) =>
  String(
    <CallPicture
      picture={{ kind: "plan", about, done: [], next: [], counts: false }}
      plan={plan}
      words={en}
      turn={0}
      surroundings={{ ground }}
    />,
  );

describe("lines around a tent", () => {
  it("lie in the plan as they lie from the place where the tent is wanted", () =>
    expect(ground.site.buried[0]!.points).toEqual([
      { xFt: 10, yFt: -30 },
      { xFt: 10, yFt: 120 },
    ]));
  it("stand on the layout in their color, with their letter and name, and on none where nobody entered any", () => {
    const drawn = String(<LayoutDrawing plan={plan} words={en} around={ground} />);
    expect(drawn).toMatch(/drawn-zones.+data-line="gas 1".+#f5c400.+>G<.+>gas 1</s);
    const without = String(<LayoutDrawing plan={plan} words={en} />);
    expect(without).not.toMatch(/drawn-zones|data-line/);
  });
  it("stand with a call about stakes, and not with one about cloth", () => {
    expect(picture([{ is: "stakeLine", edge: "AB" }])).toMatch(/drawn-zones.+data-line="gas 1"/s);
    expect(picture([{ is: "piece", id: plan.pieces[0]!.id }])).not.toContain("data-line");
  });
  it("have a layer of their own for drawing programs, in the nearest index color, with their zones", () => {
    const dxf = layoutDxf({ plan, site: {}, around: ground }, "ft", en);
    expect(dxf).toMatch(/\n2\nburied gas\n70\n0\n62\n2\n|buried gas[\s\S]{0,40}62\n\s*2\n/);
    expect(dxf).toContain("tolerance zones");
    expect(layoutDxf({ plan, site: {} }, "ft", en)).not.toContain("tolerance zones");
  });
});

describe("a press on the drawing of a site", () => {
  const frame = siteFrame(viewOf(plan, site({}), { places: [{ middle: { xFt: 50, yFt: 40 }, headingDeg: 0 }] }), {
    ink: "black",
    ground: "white",
    avoid: { xFt: 0, yFt: 0 },
  });
  it.each([1, 2])("is the point that is drawn there, shown %i times as wide", (times) => {
    const [x, y] = frame.at({ xFt: 37, yFt: -6 });
    expect(pressedAt(frame, [x * times, y * times], frame.widePx * times)).toEqual({ xFt: 37, yFt: -6 });
  });
  it("beside it is its edge", () =>
    expect(pressedAt(frame, [-50, 99_999], frame.widePx)).toEqual({ xFt: Math.round(frame.view.left), yFt: Math.round(frame.view.near) }));
});
