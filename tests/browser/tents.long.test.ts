import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { opened, type World } from "../support/browser.ts";

let world: World;
beforeAll(async () => {
  world = await opened();
});
afterAll(() => world.close());

const at = (path: string, options: { scripts?: boolean } = {}): Promise<Page> => world.show(path, options);
const field = (page: Page, name: string) => page.locator(`[name="${name}"]`);
const stations = (page: Page) => page.locator("#tent-plan [data-station]");
const shows = (page: Page, text: string) => page.locator("#tent-status", { hasText: text }).waitFor();

describe("the plan while one types", () => {
  it("follows what is typed, and what is typed keeps its place: focus, text and an opened fold", async () => {
    const page = await at("tents/new?from=example-60x120-split");
    expect(await stations(page).count()).toBe(36);
    await page.locator("summary", { hasText: "Plates and stakes" }).click();
    await field(page, "name").fill("Half typed");
    const spacing = field(page, "tent.spacingFt");
    await spacing.fill("");
    await spacing.pressSequentially("6");
    await shows(page, "60 stations");
    expect(await stations(page).count()).toBe(60);
    expect(await spacing.evaluate((el: HTMLInputElement) => [document.activeElement === el, el.value, el.selectionStart])).toEqual([
      true,
      "6",
      1,
    ]);
    expect(await field(page, "name").inputValue()).toBe("Half typed");
    expect(await field(page, "tent.anchors.corner.plates").isVisible()).toBe(true);
  });

  it("a wrong value: its sentence stands beside the field, the drawing is gone; put right, it is back and the sentence gone", async () => {
    const page = await at("tents/new?from=example-60x120-split");
    const spacing = field(page, "tent.spacingFt");
    const beside = page.locator("#wrong-tent-spacingFt");
    await spacing.fill("25");
    await beside.filter({ hasText: "A pole spacing of 25 ft is too wide." }).waitFor();
    expect(await page.locator("#tent-plan svg").count()).toBe(0);
    expect(await page.locator("#tent-plan").textContent()).toContain("25 ft is too wide");
    await page.locator('[name="tent.spacingFt"][aria-invalid="true"]').waitFor();
    await spacing.fill("12");
    await shows(page, "60 × 120 ft");
    expect(await page.locator("#tent-plan svg").count()).toBe(1);
    expect(await beside.isVisible()).toBe(false);
    await page.locator('[name="tent.spacingFt"]:not([aria-invalid])').waitFor();
  });

  it("only what was typed last counts, however the answers come in", async () => {
    const page = await at("tents/new?from=example-60x120-split");
    const waiting: (() => void)[] = [];
    await page.route("**/tents/preview", async (route) => {
      if (waiting.length === 0) await new Promise<void>((go) => waiting.push(go));
      await route.continue().catch(() => {});
    });
    const spacing = field(page, "tent.spacingFt");
    const first = page.waitForRequest("**/tents/preview");
    await spacing.fill("25");
    await first;
    await spacing.fill("6");
    await shows(page, "60 stations");
    waiting[0]!();
    await page.evaluate(() => fetch("/tents.json"));
    expect(await page.locator("#tent-status").textContent()).toContain("60 stations");
    expect(await page.locator("#wrong-tent-spacingFt").textContent()).toBe("");
  });

  it("with the server out of reach the plan says that it is not of what is typed", async () => {
    const page = await at("tents/new?from=example-60x120-split");
    await page.context().setOffline(true);
    await field(page, "tent.spacingFt").fill("6");
    await page.locator(".old", { hasText: "Typed since" }).waitFor({ state: "visible" });
  });

  it("follows in the form that changes a job too", async () => {
    const page = await at(`jobs/${world.job}/amend`);
    await shows(page, "80 × 100 ft, split ends");
    await field(page, "tent.lengthFt").fill("120");
    await field(page, "tent.midsFt").fill("20, 20");
    await shows(page, "80 × 120 ft, split ends");
  });
});

it("with scripts off the same by a button: the plan, the sentence in its place, and all that was typed", async () => {
  const page = await at("tents/new?from=example-60x120-split", { scripts: false });
  const show = page.locator("button", { hasText: "Show the plan" });
  await field(page, "name").fill("Half typed");
  await field(page, "tent.spacingFt").fill("25");
  await show.click();
  await page.locator("#wrong-tent-spacingFt", { hasText: "25 ft is too wide" }).waitFor();
  expect(await page.locator("#tent-plan svg").count()).toBe(0);
  await field(page, "tent.spacingFt").fill("6");
  await show.click();
  await stations(page).nth(59).waitFor({ state: "attached" });
  expect(await stations(page).count()).toBe(60);
  expect(await field(page, "name").inputValue()).toBe("Half typed");
});

it.each([
  ["on", true],
  ["off", false],
])("a tent is saved, copied, edited and used to open a job, scripts %s", async (_is, scripts) => {
  const name = `Blue, scripts ${scripts}`;
  const page = await at("", { scripts });
  await page.locator("main a", { hasText: "Tents" }).click();
  await page.locator('a[href="/tents/example-60x120-split"]').click();
  await page.locator("a", { hasText: "Copy it" }).click();
  await field(page, "name").fill(name);
  await page.locator("button", { hasText: "Save the tent" }).click();
  await page.locator("h1", { hasText: name }).waitFor();
  await page.locator("a", { hasText: "Edit it" }).click();
  await field(page, "tent.spacingFt").fill("12");
  await page.locator("button", { hasText: "Save the tent" }).click();
  await page.locator("h1", { hasText: new RegExp(`^${name}$`) }).waitFor();
  await page.locator("a", { hasText: "Copy it" }).click();
  expect(await field(page, "name").inputValue()).toBe(`Copy of ${name}`);
  await page.goBack();
  await page.locator("a", { hasText: "Open a job with it" }).click();
  const goOn = page.locator(".draft button.main");
  const step = (no: number) => page.locator(".progress", { hasText: `Step ${no} of 5` }).waitFor();
  const fill = async (no: number, told: Record<string, string>) => {
    await step(no);
    for (const [what, text] of Object.entries(told)) await page.locator(`input[name="${what}"]`).fill(text);
    if (no === 4) await field(page, "ticket.utilities.gas").selectOption("marked");
    await goOn.click();
  };
  await fill(1, { title: "Village fete (invented)" });
  await fill(2, { "sheet.document": "TS-9", "sheet.stakeKind": "pin", "sheet.stakeSize": "1 in x 3 ft 6 in" });
  await fill(3, { "site.address": "The green", "site.rallyPoint": "the pump", "site.firstAid": "cab", "site.stormShelter": "school" });
  await fill(4, { "ticket.number": "LT-7", "ticket.validTo": "2099-01-01" });
  await step(5);
  // The second time the firm knows them.
  if ((await page.locator(".tick").count()) === 0) await fill(5, { "crew.1.name": "Ines", "crew.2.name": "Tobias" });
  else await goOn.click();
  await page.locator("article.call").waitFor();
  const { plan } = (await (await fetch(`${page.url().split("?")[0]}/plan.json`)).json()) as { plan: { spec: object } };
  expect(plan.spec).toMatchObject({ widthFt: 60, lengthFt: 120, spacingFt: 12 });
});

it("on a phone: no sideways scroll, every target 72 px at least", async () => {
  const page = await world.screen("p1");
  const wrong = "tents/new?from=example-60x90-split";
  for (const path of [
    "tents",
    wrong,
    "tents/new?from=example-80x100-split",
    "tents/example-80x100-split",
    "drafts/new?tent=example-80x100-split",
  ]) {
    await page.goto(`${world.url}${path}`);
    if (path === wrong) {
      await field(page, "tent.spacingFt").fill("25");
      await shows(page, "No drawing");
    }
    await page.locator("details").evaluateAll((all) => {
      for (const one of all) one.setAttribute("open", "");
    });
    expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
    const small = await page
      .locator("main a, main button, main summary, main input:not([type=hidden]), main select, main textarea")
      .evaluateAll((all) =>
        all.flatMap((el) => {
          const { width, height } = el.getBoundingClientRect();
          return width < 72 || height < 72 ? [`${el.tagName} ${el.getAttribute("name") ?? el.textContent} ${width}×${height}`] : [];
        }),
      );
    expect(small).toEqual([]);
  }
});

it("nothing went wrong in any page", () => {
  expect(world.troubles.filter((t) => !/ERR_INTERNET_DISCONNECTED|Failed to fetch/.test(t))).toEqual([]);
});
