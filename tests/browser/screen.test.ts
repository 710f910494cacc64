import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { opened, press, type World } from "../support/browser.ts";
import { leading } from "../support/shared-browser.ts";

let world: World;
beforeAll(async () => {
  world = await opened("talk.headcount", "sheet.atHand", "overhead.1", "baseline", "corner.first");
});
afterAll(() => world.close());

describe("a phone in a gloved hand, 360 by 640", () => {
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

  it("the drawing moves on in place on every screen, is told in words, and turns as one stands", async () => {
    const job = world.at("baseline");
    const [page, other] = [await job.screen("p2"), await job.screen("p3", { scripts: false })];
    const shown = page.locator(".drawing svg");
    const same = await shown.elementHandle();
    const before = await shown.locator("title").textContent();
    await press(await job.screen("p1"), ".answers .main button");
    await page.locator(`article.call[data-step="${(await job.state()).step}"]`).waitFor();
    expect(await shown.locator("title").textContent()).not.toBe(before);
    expect(await same!.evaluate((svg) => svg.isConnected)).toBe(true);
    await other.reload();
    expect(await other.locator(".drawing svg").isVisible()).toBe(true);
    await page.click(".drawing a");
    const desc = () => page.locator(".whole-drawing svg desc").textContent();
    const lies = await desc();
    await leading(page, () => page.click("text=Turn it"));
    expect(await desc()).not.toBe(lies);
    const turned = await desc();
    await page.click("text=Back to the call");
    expect(await page.locator(".drawing svg desc").textContent()).toBe(turned);
    expect(world.troubles).toEqual([]);
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

  it("a second tap in the moment after a swap does nothing, and Hold is taken all the same", async () => {
    const job = world.at("corner.first");
    const page = await job.screen("p1");
    const { step, entry } = await job.state();
    const next = page.locator(".answers .main button");
    const box = (await next.boundingBox())!;
    const tap = () => page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
    await tap();
    await page.locator(`article.call:not([data-step="${step}"])`).waitFor();
    await tap();
    await page.locator(".dock .hold button").click();
    await page.locator(".call .alarm").waitFor();
    const { entry: after, held } = await job.state();
    expect([after, held?.by]).toEqual([entry + 2, "Ines"]);
    await press(page, ".answers .main button");
  });

  it("a finger that slides off its target before it is let go has pressed nothing", async () => {
    const job = world.at("corner.first");
    const page = await job.screen("p1");
    const { entry } = await job.state();
    const box = (await page.locator(".answers .main button").boundingBox())!;
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width / 2, box.y - 60);
    await page.mouse.up();
    await job.say({ as: "p4", key: "after-slide", seen: entry, type: "note", text: "nothing was pressed" });
    expect((await job.state()).entry).toBe(entry + 1);
  });
});
