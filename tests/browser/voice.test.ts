import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { en } from "../../views/text/en/en.ts";
import { type OnJob, opened, press, type World } from "../support/browser.ts";
import { letsDown } from "../support/failing-ear.ts";
import { beginInto, type EarMode, listen, listenByMore, sayInto, speak, spoken, talk, tongue } from "../support/scripted-ear.ts";

let world: World;
/** The same crew on other jobs: where the talk begins, and where one looks a seam over that another tied. */
let talking: OnJob;
let tying: OnJob;
beforeAll(async () => {
  world = await opened("drive.AB", "talk.hazards", "tied.S1.AB");
  talking = world.at("talk.hazards");
  tying = world.at("tied.S1.AB");
  const wind = { type: "reading", kind: "wind", mph: 6, gustMph: 9 };
  await tying.say({ as: "p1", key: "wind-00001", seen: (await tying.state()).revision, ...wind });
});
afterAll(() => world.close());

describe("the talk button", () => {
  it("takes an answer, reads it back large, and a press confirms it; out of its limit it is refused with value and limit", async () => {
    const page = await world.screen("p1", { ear: "good" });
    expect(await talk(page, "eight showing")).toMatchObject({ went: "readBack" });
    expect(await page.locator(".read-back .words").textContent()).toMatch(/8 in; needed: .*\. Correct, or wrong\?/);
    expect((await page.locator(".answers .correct button").boundingBox())!.height).toBeGreaterThanOrEqual(96);
    await press(page, ".answers .correct button");
    expect(await page.locator(".gate").textContent()).toMatch(/^8 in\. Need at most 6 in\./);
    expect((await talk(page, "next")).went).toBe("refused");
    expect(await page.locator("#notice").textContent()).toMatch(/^8 in\. Need at most 6 in\./);
    expect((await world.state()).step).toBe("drive.AB");
  });

  it("is let go before the words come back: they still count as said with it held", async () => {
    const page = await world.screen("p1", { ear: "good" });
    const button = (await page.locator("[data-talk]").boundingBox())!;
    await page.mouse.move(button.x + 20, button.y + 20);
    await page.mouse.down();
    await page.locator('body[data-voice="talking"]').waitFor({ state: "attached" });
    await beginInto(page);
    await page.clock.fastForward(450);
    await page.mouse.up();
    await sayInto(page, { alternatives: ["five showing"], begun: true });
    await page.locator(".read-back .words", { hasText: "5 in" }).waitFor();
    await press(page, ".dock .wrong-one button");
    expect(await page.locator(".read-back").count()).toBe(0);
  });

  it("works from the keyboard", async () => {
    const page = await world.screen("p1", { ear: "good" });
    await page.locator("[data-talk]").focus();
    await page.keyboard.down("Space");
    await page.locator('body[data-voice="talking"]').waitFor({ state: "attached" });
    expect(await speak(page, "four showing")).toMatchObject({ went: "readBack" });
    await page.keyboard.up("Space");
    await press(page, ".dock .wrong-one button");
  });

  it("no target in the dock is under 72 px or within 16 of another, with and without something to confirm; More is always among them", async () => {
    const page = await world.screen("p1", { ear: "good" });
    const targets = () =>
      page.locator(".dock button:visible, .dock a:visible").evaluateAll((all) => all.map((e) => e.getBoundingClientRect()));
    for (const [said, many] of [
      [null, 4],
      ["five showing", 4],
    ] as const) {
      if (said) await talk(page, said);
      const boxes = await targets();
      expect(boxes.length).toBe(many);
      for (const { width, height } of boxes) expect(Math.min(width, height)).toBeGreaterThanOrEqual(71.5);
      for (const [i, { left }] of boxes.slice(1).entries()) expect(left - boxes[i]!.right).toBeGreaterThanOrEqual(15.5);
      expect(await page.locator(".dock a[href$='/more']:visible").count()).toBe(1);
    }
    await press(page, ".dock .wrong-one button");
  });
});

describe("listening all the time", () => {
  it("chatter is shown, not taken, and leaves no entry; an answer without the wake word says how to give it", async () => {
    const page = await world.screen("p1", { ear: "good" });
    await listenByMore(page);
    const { entry } = await world.state();
    expect(await speak(page, "gimme six more")).toMatchObject({ went: "leftAlone", notice: "" });
    expect(await page.locator("#heard").textContent()).toBe('Heard: "gimme six more"');
    expect(await speak(page, "eight showing")).toMatchObject({ went: "leftAlone", notice: en.voice.sayFirst("albatross") });
    expect((await world.state()).entry).toBe(entry);
  });

  it("the guide does not hear itself, but a hold while it speaks holds", async () => {
    const page = await world.screen("p1", { ear: "good" });
    await listen(page);
    await tongue(page, true);
    await speak(page, "why");
    const { entry } = await world.state();
    await sayInto(page, { alternatives: ["next"] });
    await sayInto(page, { alternatives: ["stop, stop, somebody's hand"] });
    await page.locator(".alarm", { hasText: "ON HOLD" }).waitFor();
    expect((await world.state()).entry).toBe(entry + 1);
    expect((await spoken(page)).at(-1)).toMatch(/\w/);
    await press(page, ".answers .main button");
  });

  it("hold that rope makes every screen wait, and the lead's bare carry on lets go", async () => {
    const [page, other] = [await world.screen("p1", { ear: "good" }), await world.screen("p5")];
    await listen(page);
    await speak(page, "hold that rope");
    await other.locator(".alarm", { hasText: "WAITING" }).waitFor();
    await speak(page, "carry on");
    expect((await world.state()).held).toBeNull();
  });

  it("what was heard shows on every screen, with whose phone heard it", async () => {
    const [page, other] = [await world.screen("p1", { ear: "good" }), await world.screen("p5")];
    await listen(page);
    await speak(page, "note: torn loop, seam two");
    await other.locator(".earlier li", { hasText: `heard on Ines's phone "note: torn loop, seam two"` }).waitFor();
  });

  it("words that began before somebody else moved the call are not taken for the next one", async () => {
    const page = await talking.screen("p1", { ear: "good" });
    await listen(page);
    const { revision } = await talking.state();
    await beginInto(page);
    await press(await talking.screen("p2"), ".answers .main button");
    await page.locator(`article.call:not([data-revision="${revision}"])`).waitFor({ state: "attached" });
    const { step } = await talking.state();
    await sayInto(page, { alternatives: ["albatross next"], begun: true });
    await page.locator("#notice", { hasText: "Already moved on" }).waitFor();
    expect((await talking.state()).step).toBe(step);
  });

  it.each([0, 5000])("a recognizer that gives one result three times, %d ms apart, moves on once", async (apartMs) => {
    const page = await talking.screen("p1", { ear: "good" });
    await listen(page);
    const before = await talking.state();
    await sayInto(page, { alternatives: ["albatross next"], times: 3, apartMs });
    await page.locator(`article.call:not([data-revision="${before.revision}"])`).waitFor({ state: "attached" });
    await page.clock.runFor(2 * apartMs);
    // What was heard before this was sent before it.
    expect((await speak(page, "what's left")).went).toBe("question");
    const after = await talking.state();
    expect(after.progress.at).toBe(before.progress.at + 1);
    expect(after.entry).toBe(before.entry + 1);
  });

  it("a recognizer that calls each half of a sentence final moves nothing by halves", async () => {
    const page = await talking.screen("p1", { ear: "good" });
    await listen(page);
    const before = await talking.state();
    await sayInto(page, { alternatives: ["next to the pole"], growing: true });
    await page.locator("#heard", { hasText: "next to the pole" }).waitFor();
    expect((await talking.state()).entry).toBe(before.entry);
    await sayInto(page, { alternatives: ["hold"], growing: true });
    await page.locator(".alarm", { hasText: "ON HOLD" }).waitFor();
    await page.clock.fastForward(1000);
    await press(page, ".answers .main button");
  });

  it("two nexts, each said for itself, move on twice", async () => {
    const page = await talking.screen("p1", { ear: "good" });
    await listen(page);
    const before = await talking.state();
    await speak(page, "albatross back");
    await speak(page, "albatross next");
    await speak(page, "albatross next");
    expect((await talking.state()).progress.at).toBe(before.progress.at + 1);
  });

  it("a stop in ten kilobytes of words stops", async () => {
    const page = await talking.screen("p1", { ear: "good" });
    await listen(page);
    await sayInto(page, { alternatives: [`${"and so on ".repeat(1000)}stop stop`] });
    await page.locator(".alarm", { hasText: "ON HOLD" }).waitFor();
    await speak(page, "albatross carry on");
    expect((await talking.state()).held).toBeNull();
  });

  it("ten kilobytes of words are let go, and the next word counts", async () => {
    const page = await talking.screen("p1", { ear: "good" });
    await listen(page);
    const before = await talking.state();
    await sayInto(page, { alternatives: ["next ".repeat(2000)] });
    expect((await speak(page, "what's left")).went).toBe("question");
    expect((await talking.state()).entry).toBe(before.entry);
  });

  it("the second of two people is not taken on the first one's phone", async () => {
    const page = await tying.screen("p1", { ear: "good" });
    await listen(page);
    await speak(page, "albatross tied off");
    await speak(page, "albatross correct");
    expect((await tying.state()).step).toBe("looked.S1.AB");
    await page.goto(`${tying.url}jobs/${tying.job}?as=p3`);
    await page.locator('body[data-voice="listening"]').waitFor({ state: "attached" });
    expect(await speak(page, "albatross none missed")).toMatchObject({
      went: "refused",
      notice: expect.stringContaining("first one's phone"),
    });
  });
});

describe("an ear that lets people down: one clear line, and the buttons go on working", () => {
  // The others are listened to in failing-ears.long.test.ts.
  it.each<[EarMode, keyof typeof en.client.status]>([
    ["denied", "denied"],
    ["network", "network"],
  ])("%s", (mode, line) => letsDown(world, mode, line));

  it("one that never ends is let go when the button was", async () => {
    const page = await world.screen("p1", { ear: "neverEnds" });
    await talk(page, "why");
    await page.locator('body[data-voice="off"]').waitFor({ state: "attached" });
    await page.waitForFunction(() => !(window as unknown as { ear: { active: boolean } }).ear.active);
  });

  it("a screen that nobody holds yet does not listen", async () => {
    const page = await world.screen("nobody", { ear: "good" });
    await page.locator(".answers .who").waitFor();
    expect(await page.locator("[data-talk]:visible").count()).toBe(0);
  });

  it("a browser that cannot listen shows no talk button, and the settings say so", async () => {
    const page = await world.screen("p1", { ear: "none" });
    expect(await page.locator("[data-talk]:visible").count()).toBe(0);
    await page.click("text=More");
    await page.click("text=Settings");
    await page.locator("#voice", { hasText: en.client.status.none }).waitFor();
    expect(world.troubles).toEqual([]);
  });
});
