import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { SpecInput } from "../../machines/tent/spec-input.ts";
import { brief } from "../support/briefs.ts";
import { opened, type World } from "../support/browser.ts";
import { leading } from "../support/shared-browser.ts";
import { eighty, hundred, twenty } from "../tent/tents.ts";

const SIZES: [string, SpecInput][] = [
  ["20×20", twenty],
  ["80×100", eighty],
  ["100×200", hundred],
];
let world: World;
const jobs = new Map<string, string>();

beforeAll(async () => {
  world = await opened();
  const demo = brief();
  for (const [size, tent] of SIZES) {
    const site = { ...demo.site, baselineBearingDeg: 37, street: { edge: "DA", name: "Tansy Lane" } };
    const told = await fetch(`${world.url}jobs`, {
      method: "POST",
      headers: { "content-type": "application/json", origin: world.url.slice(0, -1) },
      body: JSON.stringify({
        key: `layout-of-${size.replace("×", "-")}`,
        brief: { ...demo, tent: { ...demo.tent, ...tent, ...endsOf(tent) }, site },
      }),
    });
    jobs.set(size, ((await told.json()) as { job: string }).job);
  }
});
afterAll(() => world.close());

const endsOf = (tent: SpecInput) => (tent.onePiece ? { splitEnds: false, midsFt: [] } : {});
const path = (size: string, query = "") => `jobs/${jobs.get(size)}/layout${query}`;

describe.each(SIZES)("printed, the layout of a %s", (size) => {
  it.each([
    ["a4", "ft", [595, 842]],
    ["letter", "mm", [612, 792]],
  ])("takes one page for the drawing and one for the readings: %s, %s", async (paper, units, points) => {
    const page = await world.show(path(size, `?paper=${paper}&units=${units}`), { scripts: false });
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
    expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(2);
    const boxes = [...pdf.matchAll(/\/MediaBox\s*\[0 0 ([\d.]+) ([\d.]+)\]/g)].map((m) => [m[1], m[2]].map((n) => Math.round(Number(n))));
    expect(boxes.length).toBeGreaterThan(0);
    for (const box of boxes) expect(box).toEqual(points);
  });
  it.each(["a4", "letter"])("has no letter under 6.5 pt on %s", async (paper) => {
    const page = await world.show(path(size, `?paper=${paper}`), { scripts: false });
    await page.emulateMedia({ media: "print" });
    const points = await page.evaluate(() => {
      const drawn = [...document.querySelectorAll<SVGTextElement>("main svg text")].map((t) => {
        const box = t.ownerSVGElement!.viewBox.baseVal;
        const shown = t.ownerSVGElement!.getBoundingClientRect();
        const scale = Math.min(shown.width / box.width, shown.height / box.height);
        return Number(t.getAttribute("font-size")) * scale * 0.75;
      });
      const read = [...document.querySelectorAll("caption, th, td, .notes")].map(
        (e) => Number.parseFloat(getComputedStyle(e).fontSize) * 0.75,
      );
      return { drawn: Math.min(...drawn), read: Math.min(...read) };
    });
    expect(points.read).toBeGreaterThan(6.49);
    expect(points.drawn).toBeGreaterThan(6.49);
  });
});

describe("the layout on a phone", () => {
  it.each(SIZES.map(([size]) => size))("%s: the drawing is scrolled in its box, the page is not wider than the screen", async (size) => {
    const page = await world.show(path(size));
    const seen = await page.evaluate(() => {
      const box = document.querySelector(".sheet")!;
      return { page: document.documentElement.scrollWidth, box: box.getBoundingClientRect().right, within: box.scrollWidth };
    });
    expect(seen.page).toBeLessThanOrEqual(360);
    expect(seen.box).toBeLessThanOrEqual(360);
    expect(seen.within).toBeGreaterThan(600);
  });
  it("has no letter under 12 px in the drawing, and none outside its frame", async () => {
    for (const [size] of SIZES) {
      const page = await world.show(path(size));
      const { least, outside } = await page.evaluate(() => {
        const svg = document.querySelector<SVGSVGElement>("main svg")!;
        const frame = svg.getBoundingClientRect();
        const scale = frame.width / svg.viewBox.baseVal.width;
        const texts = [...svg.querySelectorAll("text")].filter((t) => t.textContent !== "");
        return {
          least: Math.min(...texts.map((t) => Number(t.getAttribute("font-size")) * scale)),
          outside: texts.flatMap((t) => {
            const r = t.getBoundingClientRect();
            const out = r.left < frame.left || r.right > frame.right || r.top < frame.top || r.bottom > frame.bottom;
            return out ? [t.textContent] : [];
          }),
        };
      });
      expect(least, size).toBeGreaterThanOrEqual(12);
      expect(outside, size).toEqual([]);
    }
  });
});

describe("the layout page", () => {
  it("is chosen in units and paper with scripts off", async () => {
    const page = await world.show(path("80×100"), { scripts: false });
    for (const name of ["Millimeters", "Letter"]) await leading(page, () => page.getByRole("link", { name }).click());
    expect(await page.locator("caption", { hasText: "Stake line A–B" }).textContent()).toContain("1829 out");
    expect(await page.locator("main").getAttribute("class")).toContain("letter");
  });
  it("gives a drawing that a browser reads as XML without an error", async () => {
    const page = await world.show("");
    const errors = await page.evaluate(
      async (path) => {
        const text = await (await fetch(path)).text();
        const read = new DOMParser().parseFromString(text, "image/svg+xml");
        return [read.querySelector("parsererror")?.textContent ?? null, read.documentElement.namespaceURI];
      },
      `/jobs/${jobs.get("100×200")}/layout.svg`,
    );
    expect(errors).toEqual([null, "http://www.w3.org/2000/svg"]);
  });
  it("went without trouble", () => expect(world.troubles).toEqual([]));
});
