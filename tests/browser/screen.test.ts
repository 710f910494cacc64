import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { opened, press, type World } from "../support/browser.ts";

let world: World;
beforeAll(async () => {
  world = await opened("talk.headcount", "sheet.atHand", "overhead.1", "baseline", "corner.first");
});
afterAll(() => world.close());

describe("a phone in a gloved hand, 360 by 640", () => {
  it("has no target under 72 px a side, and nothing wider than the screen, on the pages beside the guide", async () => {
    const page = await world.screen("p1");
    for (const path of [
      "/more",
      "/words",
      "/tent",
      "/settings",
      "/people",
      "/weather",
      "/answers",
      "/call",
      "/trouble",
      "/stand-down",
      "/amend",
    ]) {
      await page.goto(`${world.url}jobs/${world.job}${path}`);
      const small = await page
        .locator("button:visible, a.button:visible, input:visible, select:visible, summary:visible")
        .evaluateAll((all) =>
          all.flatMap((e) => {
            const { width, height } = e.getBoundingClientRect();
            return width < 71.5 || height < 71.5
              ? [`${e.textContent || e.getAttribute("name")} ${Math.round(width)}×${Math.round(height)}`]
              : [];
          }),
        );
      expect(small, path).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth), path).toBeLessThanOrEqual(360);
    }
  });

  it("the first call is read whole before anybody holds the screen", async () => {
    const page = await world.show(`jobs/${world.at("sheet.atHand").job}`);
    const at = (selector: string) => page.locator(selector).evaluate((e) => e.getBoundingClientRect().toJSON() as DOMRect);
    expect((await at(".call h1")).bottom).toBeLessThanOrEqual((await at(".answers .who")).top);
    await page.locator(".answers .who button").last().click();
    await page.locator(".answers .main button").waitFor();
  });

  it("a count is put in with the big keys", async () => {
    const page = await world.screen("p1");
    const state = await world.state();
    for (const key of String((state.gate!.check as { from: number }).from))
      await page.locator(".keypad button", { hasText: new RegExp(`^${key}$`) }).click();
    await press(page, ".answers .number button[type=submit]");
    const { step, thread } = await world.state();
    expect([step, thread.at(-1)!.refused]).toEqual(["white.footprint", false]);
  });

  it("a number typed for one gate is gone at the next, and stays while the same gate is looked at", async () => {
    const job = world.at("overhead.1");
    const page = await job.screen("p1", { clock: true });
    const wanted = String(((await job.state()).gate!.check as { from: number }).from);
    await page.fill(".answers .number input[name=value]", wanted);
    await job.say({ as: "p5", key: "note-00001", seen: (await job.state()).revision, type: "note", text: "the gate is open" });
    await page.locator(".earlier", { hasText: "the gate is open" }).waitFor({ state: "attached" });
    expect(await page.inputValue(".answers .number input[name=value]")).toBe(wanted);
    await press(page, ".answers .number button[type=submit]");
    expect((await job.state()).step).toBe("nearest.gas");
    expect(await page.inputValue(".answers .number input[name=value]")).toBe("");
  });

  it("a second screen on the job follows without being touched", async () => {
    const job = world.at("baseline");
    const [first, second] = [await job.screen("p1"), await job.screen("p2")];
    const before = await second.locator("article.call h1").textContent();
    await press(first, ".answers .main button");
    await second.locator(`article.call[data-step="${(await job.state()).step}"]`).waitFor();
    expect(await second.locator("article.call h1").textContent()).not.toBe(before);
  });

  it("a press that began on an older call is refused as moved on, though the screen moved under the finger", async () => {
    const job = world.at("corner.first");
    const page = await job.screen("p2");
    const { step, gate } = await job.state();
    expect(gate).toBeNull();
    const box = (await page.locator(".answers .main button").boundingBox())!;
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    const other = await job.screen("p5");
    await press(other, ".dock .hold button");
    const lead = await job.screen("p1");
    await press(lead, ".answers .main button");
    const turn = (await job.state()).revision;
    await page.locator(`article.call[data-revision="${turn}"]`).waitFor();
    await page.mouse.up();
    expect((await job.state()).step).toBe(step);
    expect(world.troubles).toEqual([]);
  });

  it("what is pressed or typed under More leads back to the guide and shows there", async () => {
    const job = world.at("corner.first");
    const page = await job.screen("p1");
    await page.click("text=More");
    await page.click("text=Say it in words");
    await page.fill("input[name=heard]", "how many stakes at the corners");
    await page.click("text=Say it >> nth=-1");
    await page.locator(".notice", { hasText: "24 in all" }).waitFor();
    await page.click("text=More");
    await page.locator("main.more .safe button").click();
    await page.locator("article.call[data-step^='safe.ground']").waitFor();
    expect((await job.state()).makingSafe).toBe(true);
  });

  it("a press in the moment after somebody else moved the call is not taken, and the screen says so", async () => {
    const job = world.at("corner.first");
    const page = await job.screen("p1");
    const before = (await job.state()).entry;
    const told = await page.evaluate(async () => {
      document.querySelector<HTMLElement>("article.call")!.dataset.revision = "9999";
      await Promise.resolve();
      document.querySelector<HTMLButtonElement>(".answers .main button")!.click();
      return document.querySelector("#notice")!.textContent;
    });
    expect(told).toMatch(/just moved/);
    expect((await job.state()).entry).toBe(before);
  });
});
