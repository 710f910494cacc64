import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { opened, type World } from "../support/browser.ts";
import { DESK, PHONE } from "../support/shared-browser.ts";

let world: World;
beforeAll(async () => {
  world = await opened("stakes.size");
});
afterAll(() => world.close());

/** Turns the rules of each layer round, last to first, and gives what looks otherwise then: an element of each kind with a property. */
const changedByOrder = (page: Page) =>
  page.evaluate(() => {
    const kinds = new Map(
      [...document.querySelectorAll("body, body *:not(script, [hidden], [type=hidden])")].map((e) => {
        const line = [e, e.parentElement, e.parentElement?.parentElement].map(
          (x) => x && `${x.localName}.${x.className}${x.getAttribute("type")}`,
        );
        return [line.join(" < "), e];
      }),
    );
    const looks = () =>
      [...kinds].flatMap(([kind, e]) =>
        ["", "::before"].flatMap((pseudo) => {
          const style = getComputedStyle(e, pseudo);
          // Where nothing stands before, nothing shows.
          if (pseudo !== "" && style.content === "none") return [];
          return [...style].map((property) => `${kind}${pseudo} ${property}: ${style.getPropertyValue(property)}`);
        }),
      );
    const before = looks();
    const turn = (block: CSSStyleSheet | CSSGroupingRule): void => {
      for (const rule of block.cssRules) if (rule instanceof CSSGroupingRule) turn(rule);
      const rules = [...block.cssRules];
      // The order of the layers is a rule as well, the first of its sheet.
      const first = rules.findIndex((rule) => !(rule instanceof CSSLayerStatementRule));
      for (const { cssText } of rules.slice(first)) {
        block.deleteRule(rules.length - 1);
        block.insertRule(cssText, first);
      }
    };
    for (const sheet of document.styleSheets) turn(sheet);
    const was = new Set(before);
    return looks()
      .filter((look) => !was.has(look))
      .slice(0, 5);
  });

it("finds a rule that hangs on standing after another", async () => {
  const page = await world.show("");
  await page.route("**/*.css", (route) => route.fulfill({ contentType: "text/css", body: "h1 { color: red } h1 { color: blue }" }));
  await page.goto(`${world.url}findings`);
  expect(await changedByOrder(page)).toContainEqual(expect.stringMatching(/^h1.*color: rgb\(255, 0, 0\)$/));
});

/** The longer sheets once, as a phone, a desk or paper shows them. */
it.each([
  ["", PHONE, "screen"],
  ["tents/new?width=50&length=100", PHONE, "screen"],
  ["drafts/new?tent=example-80x100-split", PHONE, "screen"],
  ["JOB", PHONE, "screen"],
  ["JOB/truck", PHONE, "screen"],
  ["JOB/layout", DESK, "print"],
  ["JOB/record", DESK, "print"],
  ["JOB/report", DESK, "print"],
  ["JOB/time", PHONE, "screen"],
  ["findings", DESK, "screen"],
] as const)("no rule hangs on standing after another of its layer: /%s", async (path, viewport, media) => {
  const page = await world.screen("p1");
  await page.setViewportSize(viewport);
  await page.emulateMedia({ media });
  await page.goto(`${world.url}${path.replace("JOB", `jobs/${world.job}`)}`);
  expect(await changedByOrder(page)).toEqual([]);
});
