import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { isHold } from "../../machines/speech/en/holds.ts";
import { en } from "../../views/text/en/en.ts";
import { type OnJob, opened, press, type World } from "../support/browser.ts";
import { scratchFolder } from "../support/scratch.ts";
import { type EarMode, sayInto, scriptedEar, spoken } from "../support/scripted-ear.ts";
import { launched, PHONE, WAIT_MS } from "../support/shared-browser.ts";
import { writeSpeech } from "../support/spoken.ts";

let world: World;
let browser: Browser;
beforeAll(async () => {
  const file = join(scratchFolder("microphone"), "said.wav");
  writeSpeech(file, ["word", "chatter", "next", "stop"], 0.8);
  const fake = ["--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream", `--use-file-for-fake-audio-capture=${file}`];
  [world, browser] = await Promise.all([opened("talk.hazards", "drive.AB"), launched(fake)]);
});
afterAll(async () => {
  await browser.close();
  await world.close();
});

/** A phone with a microphone, whose browser cannot listen. */
async function phone(job: OnJob = world, ear: EarMode = "none"): Promise<Page> {
  const context = await browser.newContext({ viewport: PHONE, permissions: ["microphone"] });
  context.setDefaultTimeout(WAIT_MS);
  await context.addInitScript(scriptedEar, ear);
  const page = await context.newPage();
  await page.goto(`${job.url}jobs/${job.job}?as=p1`);
  return page;
}
const status = (page: Page, is: string) => page.locator(`body[data-voice="${is}"]`).waitFor({ state: "attached" });
const listensFor = async (page: Page, status: keyof typeof en.client.status) => {
  await page.evaluate(() => localStorage.setItem("ridgecall.listen", "yes"));
  await page.reload();
  await page.locator("#ear-status", { hasText: en.client.status[status] }).waitFor({ state: "attached" });
};

// At the same time: sound takes as long as it takes.
describe.concurrent("on a phone of its own", () => {
  it("its own ear hears next after the wake word and a bare stop, and nothing of what the crew says; no sound leaves it, and it says so", async () => {
    const page = await phone();
    const sent: string[] = [];
    page.on("request", (request) => request.url().startsWith(world.url) || sent.push(request.url()));
    const before = await world.state();
    await listensFor(page, "listening");
    expect(await page.locator("[data-talk] small:visible").textContent()).toBe(en.guide.soundStays);
    // Where the machine is busy sound has gaps: what is said is said again until it was heard, as people do.
    const heardBoth = async () => {
      const { held, step } = await world.state();
      if (held && step === before.step) await press(page, ".answers .main button");
      return held !== null && step !== before.step;
    };
    await vi.waitUntil(heardBoth, { timeout: WAIT_MS, interval: 200 });
    const { thread } = await world.state();
    const said = thread.filter((line) => line.spoken).map((line) => line.said);
    expect(said).toContain("next");
    expect(said).toContain("stop");
    expect(said.filter((words) => words !== "next" && !isHold(words))).toEqual([]);
    expect(sent).toEqual([]);
    await press(page, ".answers .main button");
    await page.context().close();
  });

  it("without its ear's files it says so in one line, the buttons go on, and it listens once they come", async () => {
    const job = world.at("drive.AB");
    const page = await phone(job);
    const wasm = /engine\.wasm$/;
    await page.context().route(wasm, (route) => route.fulfill({ status: 503 }));
    await listensFor(page, "filesMissing");
    const { entry } = await job.state();
    await press(page, ".dock .hold button");
    await press(page, ".answers .main button");
    expect((await job.state()).entry).toBe(entry + 2);
    await page.context().unroute(wasm);
    await page.context().route(wasm, async (route) => route.fulfill({ body: (await (await route.fetch()).body()).subarray(0, 1000) }));
    await listensFor(page, "filesBroken");
    await page.context().unroute(wasm);
    await listensFor(page, "listening");
    await page.context().close();
  });

  it("the phone is found fit before the job: each check with its mark, the word heard", async () => {
    const page = await phone();
    await page.goto(`${world.url}phone`);
    await page.locator("[data-check-phone]").click();
    for (const check of ["secure", "storage", "microphone"]) await page.locator(`[data-check="${check}"][data-is="good"]`).waitFor();
    // The server of this test stands in June.
    await page.locator('[data-check="clock"][data-is="bad"]').waitFor();
    await page.locator('[data-check="ear"]:is([data-is="good"], [data-is="prebuilt"])').waitFor();
    await page.locator('[data-check="word"][data-is="good"]').waitFor();
    await page.locator('[data-check="buzz"] [data-answer="no"]').click();
    expect(await page.locator('[data-check="buzz"] p:visible').textContent()).toContain(en.phone.checks.buzz.bad);
    await page.context().close();
  });

  it("a key is held, but not while something is typed", async () => {
    const page = await phone(world, "good");
    await page.locator("body.can-hear").waitFor({ state: "attached" });
    await page.keyboard.down("t");
    await status(page, "talking");
    await sayInto(page, { alternatives: ["what's left"] });
    await page.keyboard.up("t");
    await page.locator("#heard", { hasText: "what's left" }).waitFor();
    await page.goto(`${world.url}jobs/${world.job}/words`);
    await page.fill("input[name=heard]", "");
    await page.locator("input[name=heard]").pressSequentially("stop that");
    expect(await page.inputValue("input[name=heard]")).toBe("stop that");
    await page.context().close();
  });

  it("its own ear is asked for with the first key, as with the first press of a thumb", async () => {
    const page = await phone(world, "good");
    await page.locator("body.can-hear").waitFor({ state: "attached" });
    const asked = page.waitForRequest(/\/assets\/ear\.json$/);
    await page.keyboard.press("Tab");
    expect((await asked).method()).toBe("GET");
    await page.context().close();
  });

  it("a press of a headset's key listens for one thing said, once it was asked for", async () => {
    const page = await phone(world, "good");
    await page.addInitScript(() => {
      const keys: Record<string, () => void> = {};
      Object.assign(window, { headset: keys });
      navigator.mediaSession.setActionHandler = (action, act) => {
        keys[action] = () => act?.({ action });
      };
    });
    await page.goto(`${world.url}phone`);
    await page.locator("[data-headset]").click();
    await page.locator('[data-headset][aria-pressed="true"]').waitFor();
    await page.goto(`${world.url}jobs/${world.job}?as=p1`);
    await page.locator("body.can-hear").waitFor({ state: "attached" });
    await page.evaluate(() => (window as unknown as { headset: Record<string, () => void> }).headset.pause!());
    await page.waitForFunction(() => (window as unknown as { ear: { active: boolean } }).ear.active);
    await sayInto(page, { alternatives: ["how long"] });
    await page.locator("#heard", { hasText: "how long" }).waitFor();
    await status(page, "off");
    await page.context().close();
  });

  it("speech is slowed down, and tells of a call only what changed, as its holder chose", async () => {
    const page = await phone(world, "good");
    await page.goto(`${world.url}phone`);
    await page.locator('[data-rate="0.8"]').click();
    await page.locator('[data-short="yes"]').click();
    await page.locator('[data-short="yes"][aria-pressed="true"]').waitFor();
    await page.locator("[data-try]").click();
    expect(await spoken(page)).toEqual([en.phone.checks.speaker.says]);
    expect(await page.evaluate(() => [localStorage.getItem("ridgecall.rate"), localStorage.getItem("ridgecall.short")])).toEqual([
      "0.8",
      "yes",
    ]);
    await page.context().close();
  });
});

describe("where the browser's own gives up", () => {
  it.each(["network", "silent"] as const)("%s: this phone's own ear takes over, and looks for a microphone", async (ear) => {
    const page = await world.screen("p1", { ear });
    await page.context().unroute("**/assets/ear.json");
    await listensFor(page, "starting");
    await page.clock.runFor(5000);
    await page.locator("#ear-status", { hasText: en.client.status.noMicrophone }).waitFor();
    expect(await page.evaluate(() => document.body.dataset.ear)).toBe("own");
    await page.context().route("**/assets/ear.json", (route) => route.fulfill({ json: null }));
  });
});
