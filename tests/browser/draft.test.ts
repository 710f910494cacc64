import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { opened, type World } from "../support/browser.ts";
import { leastContrast } from "../support/contrast.ts";
import { leading } from "../support/shared-browser.ts";

let world: World;
beforeAll(async () => {
  world = await opened();
});
afterAll(() => world.close());

/** Somebody's thumb: every field that is filled, and every press, is counted. */
function thumb(page: Page) {
  let counted = 0;
  return {
    press: async (selector: string) => {
      counted++;
      await page.locator(selector).first().click();
    },
    put: async (name: string, text: string) => {
      counted++;
      const field = page.locator(`[name="${name}"]`);
      await (["marked", "yes"].includes(text) ? field.selectOption(text) : field.fill(text));
    },
    at: (step: number) => page.locator(".progress", { hasText: `Step ${step} of 5` }).waitFor(),
    counted: () => counted,
  };
}
/** Targets under 72 px a side, and a page wider than its screen. */
const troublesOf = (page: Page) =>
  page.locator("main a, main button, main input:not([type=hidden]), main select").evaluateAll((all) => [
    ...all.flatMap((el) => {
      const { width, height } = el.getBoundingClientRect();
      return width < 71.5 || height < 71.5 ? [`${el.getAttribute("name") ?? el.textContent} ${width}×${height}`] : [];
    }),
    ...(document.documentElement.scrollWidth > window.innerWidth ? ["wider than the screen"] : []),
  ]);
const ON = ".draft button.main";
const ENDS = '.draft button.main[value="whole"]';
/** A phone in two years takes no other day for the last one of the ticket. */
const LAST_DAY = "2099-01-01";

/** From the list of jobs to the guide, for a firm that never opened one. */
async function openFirst(page: Page) {
  const { press, put, at, counted } = thumb(page);
  await press('a[href="/drafts/new"]');
  await press('a[href$="tent=example-60x120-split"]');
  await page.locator(".drawn-tent").waitFor();
  await press(ON);
  await at(2);
  await put("sheet.document", "RC-60120 A");
  await put("sheet.stakeKind", "steel pin");
  await put("sheet.stakeSize", "1 1/8 x 42");
  await press(ON);
  await at(3);
  await put("site.address", "Gate 3, Tansy Lane");
  await put("site.rallyPoint", "gate 3");
  await put("site.stormShelter", "the brick barn");
  await put("site.firstAid", "truck cab");
  await put("sheet.soil", "firm loam");
  await put("site.soilKnown", "yes");
  await press(ON);
  await at(4);
  await put("ticket.number", "LT-77");
  await put("ticket.validTo", LAST_DAY);
  for (const kind of ["electric", "gas", "water"]) await put(`ticket.utilities.${kind}`, "marked");
  await press(ON);
  await at(5);
  await put("crew.1.name", "Ines");
  await put("crew.2.name", "Tobias");
  await press(ON);
  await page.locator("article.call").waitFor();
  return counted();
}

it.each([
  ["on", true],
  ["off", false],
])("from a tent of the list a job is open within 25 entries and presses, and its next one within 15, scripts %s", async (_is, scripts) => {
  const page = await world.show("", { scripts });
  expect(await page.locator(".tick").count()).toBe(0);
  if (scripts) expect(await openFirst(page)).toBeLessThanOrEqual(25);
  await page.goto(world.url);
  const { press, put, at, counted } = thumb(page);
  await press('a[href="/drafts/new"]');
  await press('a[href$="tent=example-60x120-split"]');
  for (const step of [1, 2]) {
    await at(step);
    await press(ON);
  }
  await at(3);
  for (const name of ["address", "rallyPoint", "firstAid"]) await put(`site.${name}`, "school yard");
  await put("site.stormShelter", "school");
  await page.locator("label", { hasText: "Is the ground firm loam?" }).waitFor();
  await put("site.soilKnown", "yes");
  await press(ON);
  await at(4);
  await put("ticket.number", "LT-78");
  await put("ticket.validTo", LAST_DAY);
  await put("ticket.utilities.gas", "marked");
  await press(ON);
  await at(5);
  expect(await page.locator(".tick").allTextContents()).toEqual(["Ines", "Tobias"]);
  await press(ON);
  await page.locator("article.call").waitFor();
  expect(counted()).toBeLessThanOrEqual(15);
});

it("the tent is drawn as its size is typed, and the device says its zone and its day, which can be typed over", async () => {
  const page = await world.show("drafts/new");
  await page.locator('[name="tent.widthFt"]').fill("40");
  await page.locator('[name="tent.lengthFt"]').pressSequentially("60");
  await page.locator("#tent-status", { hasText: "Drawn: 40 × 60 ft" }).waitFor();
  await page.locator(ENDS).click();
  await page.locator(".progress", { hasText: "Step 2 of 5" }).waitFor();
  const draft = page.url().split("/").at(-2)!;
  await page.goto(`${world.url}drafts/${draft}/ticket`);
  const device = await page.evaluate(() => Intl.DateTimeFormat().resolvedOptions().timeZone);
  expect(await page.locator('[name="zone"]').inputValue()).toBe(device);
  await page.locator('[name="zone"]').fill("Europe/Paris");
  await leading(page, () => page.locator('button[value="back"]').click());
  await page.goto(`${world.url}drafts/${draft}/ticket`);
  expect(await page.locator('[name="zone"]').inputValue()).toBe("Europe/Paris");
  const today = await page.evaluate(() => new Date().toLocaleDateString("sv-SE"));
  expect(await page.locator('[name="ticket.validFrom"]').inputValue()).toBe(today);
});

it("without scripts a size leads to its drawing, and from there with its ends said to the sheet", async () => {
  const page = await world.show("drafts/new", { scripts: false });
  await page.locator('[name="tent.widthFt"]').fill("60");
  await page.locator('[name="tent.lengthFt"]').fill("120");
  await page.locator(ON).click();
  await page.locator(".drawn-tent").waitFor();
  await page.locator(".tent-on", { hasText: "6 pieces, one ring of quarter poles" }).waitFor();
  await page.locator(ENDS).click();
  await page.locator(".progress", { hasText: "Step 2 of 5" }).waitFor();
});

it("a stake's fraction can be typed on a phone: its keys have letters, a slash and a space", async () => {
  const page = await world.show("drafts/new?tent=example-60x120-split");
  await page.locator(ON).click();
  expect(await page.locator('[name="sheet.stakeSize"]').getAttribute("inputmode")).toBe("text");
  expect(await page.locator('[name="sheet.raiseGustMph"]').getAttribute("inputmode")).toBe("decimal");
});

it("every step fits a gloved thumb and a phone of 360 by 640, also with all of it wrong", async () => {
  const page = await world.show("drafts/new");
  const expectClear = async (path: string) => {
    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({ colorScheme });
      expect((await leastContrast(page)).ratio, `${path}, ${colorScheme}`).toBeGreaterThanOrEqual(7);
    }
  };
  await page.locator('[name="tent.widthFt"]').fill("60");
  await page.locator('[name="tent.lengthFt"]').fill("120");
  await page.locator(ENDS).waitFor();
  expect(await troublesOf(page)).toEqual([]);
  expect(await page.locator(ON).evaluateAll((all) => all.map((el) => el.getBoundingClientRect().height >= 95.5))).toEqual([true, true]);
  await expectClear("ends");
  await page.locator(ENDS).click();
  await page.locator(".progress", { hasText: "Step 2 of 5" }).waitFor();
  const draft = page.url().split("/").at(-2)!;
  const paths = ["tent", "sheet", "site", "ticket", "crew"].flatMap((step) => [step, `${step}?wrong=yes`]);
  for (const path of ["drafts/new", "drafts/new?tent=example-100x200-split-2-rings", ...paths.map((p) => `drafts/${draft}/${p}`)]) {
    await page.goto(`${world.url}${path}`);
    expect([path, await troublesOf(page)]).toEqual([path, []]);
    expect(await page.locator(ON).evaluateAll((all) => all.map((el) => el.getBoundingClientRect().height >= 95.5))).toEqual([true]);
    await expectClear(path);
  }
});

it("a job of which nothing is known is open within 10 entries and presses, and is filled in with the same thumb", async () => {
  const page = await world.show("");
  const { press, put, at, counted } = thumb(page);
  await press('a[href="/drafts/new"]');
  await press('a[href$="tent=example-40x80-whole"]');
  await press(ON);
  await at(2);
  await press('button[value="unknown"]');
  await at(3);
  await put("site.address", "Gate 3, Tansy Lane");
  await press(ON);
  await at(4);
  await press('button[value="unknown"]');
  await at(5);
  if ((await page.locator(".tick").count()) === 0)
    for (const [row, name] of ["Ines", "Tobias"].entries()) await put(`crew.${row + 1}.name`, name);
  await press(ON);
  await page.locator("article.call").waitFor();
  expect(counted()).toBeLessThanOrEqual(10);
  await page.locator(".who button").first().click();
  await page.locator(".answers a.main").click();
  await page.locator("h1", { hasText: "Not known yet" }).waitFor();
  expect(await troublesOf(page)).toEqual([]);
  for (const [name, text] of [
    ["document", "RC-1 A"],
    ["stakeKind", "pin"],
    ["stakeSize", "1 x 42"],
  ] as const)
    await put(`sheet.${name}`, text);
  await press(ON);
  await page.locator(".answers", { hasText: "Look at it" }).waitFor();
});

it("Enter in a field of any step keeps what was typed, opens no job and leads nowhere", async () => {
  const page = await world.show("drafts/new");
  const enter = async (name: string, text: string) => {
    const field = page.locator(`[name="${name}"]`).first();
    await field.fill(text);
    const back = page.waitForResponse((answer) => answer.request().method() === "GET" && answer.request().isNavigationRequest());
    await field.press("Enter");
    await back;
    await page.waitForLoadState();
    expect(await page.locator(`[name="${name}"]`).first().inputValue()).toBe(text);
  };
  await page.locator('[name="tent.widthFt"]').fill("40");
  await enter("tent.lengthFt", "60");
  const draft = page.url().split("/").at(-2)!;
  for (const [step, name] of [
    ["tent", "title"],
    ["sheet", "sheet.document"],
    ["site", "site.address"],
    ["ticket", "ticket.number"],
  ] as const) {
    await page.goto(`${world.url}drafts/${draft}/${step}`);
    await enter(name, "RC-1");
    expect(page.url().split("?")[0]).toBe(`${world.url}drafts/${draft}/${step}`);
  }
  await page.goto(`${world.url}drafts/${draft}/crew`);
  const people = await page.locator(".person").count();
  const empty = page.locator('input[name$=".name"]:not([type="hidden"])');
  await empty.first().fill("Somebody new");
  await empty.first().press("Enter");
  await page.locator(".tick", { hasText: "Somebody new" }).waitFor();
  expect(await page.locator(".person").count()).toBeGreaterThan(people);
  expect(page.url()).toContain(`/drafts/${draft}/crew`);
});

it.each(["light", "dark"] as const)("drafts and people are taken out by the same thumb in %s", async (scheme) => {
  const page = await world.show("drafts/new", { scheme });
  await page.locator('[name="title"]').fill(`A wedding at the old mill beside the river ${scheme}`);
  await page
    .locator(".draft button.unpressed")
    .first()
    .evaluate((press: HTMLElement) => press.click());
  await page.locator(".progress").waitFor();
  const draft = page.url().split("/").at(-2)!;
  for (const path of ["drafts", `drafts/${draft}/throw-away`, "firm/people", `firm/people?draft=${draft}`]) {
    await page.goto(`${world.url}${path}`);
    expect([path, await troublesOf(page)]).toEqual([path, []]);
    expect((await leastContrast(page)).ratio, path).toBeGreaterThanOrEqual(7);
  }
  await page.goto(`${world.url}drafts`);
  await page.locator(`a[href="/drafts/${draft}/throw-away"]`).click();
  await page.locator("main form button").click();
  await page.locator("h1", { hasText: "Not opened yet" }).waitFor();
  expect(await page.locator(`a[href="/drafts/${draft}"]`).count()).toBe(0);
});

it("nothing went wrong in any page", () => {
  expect(world.troubles).toEqual([]);
});
