import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { en } from "../../views/text/en/en.ts";
import { type OnJob, opened, press, type World } from "../support/browser.ts";
import { scratchFolder } from "../support/scratch.ts";
import { type EarMode, scriptedEar } from "../support/scripted-ear.ts";
import { launched, PHONE, WAIT_MS } from "../support/shared-browser.ts";
import { writeSpeech } from "../support/spoken.ts";

let world: World;
let browser: Browser;
beforeAll(async () => {
  const file = join(scratchFolder("microphone"), "said.wav");
  writeSpeech(file, ["word", "chatter", "next", "stop"], 1);
  const fake = ["--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream", `--use-file-for-fake-audio-capture=${file}%noloop`];
  [world, browser] = await Promise.all([opened("talk.hazards", "drive.AB"), launched(fake)]);
});
afterAll(async () => {
  await browser.close();
  await world.close();
});

/** A phone with a microphone, whose browser cannot listen. */
async function phone(job: OnJob = world): Promise<Page> {
  const context = await browser.newContext({ viewport: PHONE, permissions: ["microphone"] });
  context.setDefaultTimeout(WAIT_MS);
  await context.addInitScript(scriptedEar, "none" as EarMode);
  const page = await context.newPage();
  await page.goto(`${job.url}jobs/${job.job}?as=p1`);
  return page;
}
const listensFor = async (page: Page, status: keyof typeof en.client.status) => {
  await page.evaluate(() => localStorage.setItem("ridgecall.listen", "yes"));
  await page.reload();
  await page.locator("#ear-status", { hasText: en.client.status[status] }).waitFor({ state: "attached" });
};

// At the same time: sound takes as long as it takes.
describe.concurrent("a phone that listens by itself, with real sound", () => {
  it("hears next after the wake word and a bare stop, and nothing of what the crew says; no sound leaves it, and it says so", async () => {
    const page = await phone();
    const sent: string[] = [];
    page.on("request", (request) => request.url().startsWith(world.url) || sent.push(request.url()));
    const before = await world.state();
    await listensFor(page, "listening");
    expect(await page.locator("#ear-status").textContent()).toContain(en.client.hears.own);
    expect(await page.locator("[data-talk] small:visible").textContent()).toBe(en.guide.soundStays);
    await page.locator(`article.call:not([data-revision="${before.revision}"])`).waitFor({ state: "attached" });
    expect((await world.state()).thread.at(-1)).toMatchObject({ spoken: true, said: "next" });
    await page.locator(".alarm", { hasText: "ON HOLD" }).waitFor();
    const after = await world.state();
    expect(after.progress.at).toBe(before.progress.at + 1);
    expect(after.entry).toBe(before.entry + 2);
    expect(sent).toEqual([]);
    await press(page, ".answers .main button");
    await page.context().close();
  });

  it("without its files it says so in one line, the buttons go on, and it listens once they come", async () => {
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

  it("is found fit before the job: each check with its mark, the word heard", async () => {
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
