import { rmSync } from "node:fs";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { createAssets } from "../../../server/assets.ts";
import { memoryJournal } from "../../../server/journal/memory.ts";
import { LANGUAGES } from "../../../views/text/languages.ts";
import { brief, MORNING, testApp } from "../../support/app.ts";
import { findChromium } from "../../support/chromium.ts";
import { openedJob } from "../../support/job.ts";
import { scratchFolder } from "../../support/scratch.ts";
import { scriptedEar } from "../../support/scripted-ear.ts";
import { writeSpeech } from "../../support/spoken.ts";
import { serveApp } from "../serve-app.ts";

/**
 * From the end of a voice at the microphone to the screen, in Chromium: the whole way, with the server. The page listens to the same
 * microphone for when it fell still.
 */
const SAID_TIMES = 12;
const folder = scratchFolder("screen-lag");
const file = join(folder, "said.wav");
writeSpeech(file, ["next", "stop"], 1.2);

const world = testApp(memoryJournal(), MORNING, LANGUAGES, createAssets());
const path = `/jobs/${(await openedJob(brief(), world)).job}?as=p1`;
const server = await serveApp(world.app);

/** Runs in the page, first: keeps the sound that its ear is given. Another microphone would play the file from another place. */
function keepSound(): void {
  const given = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
  navigator.mediaDevices.getUserMedia = async (wanted) => {
    const stream = await given(wanted);
    Object.assign(window, { stream });
    return stream;
  };
}
/** Runs in the page: notes how long after the last sound each later entry is shown, in ms. */
function watch(): void {
  const { stream } = window as unknown as { readonly stream: MediaStream };
  const context = new AudioContext({ sampleRate: 48_000 });
  const analyser = new AnalyserNode(context, { fftSize: 512 });
  context.createMediaStreamSource(stream).connect(analyser);
  const sound = new Float32Array(analyser.fftSize);
  let loudAt = 0;
  setInterval(() => {
    analyser.getFloatTimeDomainData(sound);
    if (sound.some((sample) => Math.abs(sample) > 0.01)) loudAt = performance.now();
  }, 5);
  const lags: number[] = [];
  Object.assign(window, { lags });
  const shown = () => document.querySelector<HTMLElement>("article.call")?.dataset.entry;
  let last = shown();
  new MutationObserver(() => {
    if (shown() === last) return;
    last = shown();
    lags.push(performance.now() - loudAt);
  }).observe(document, { subtree: true, childList: true, attributes: true, attributeFilter: ["data-entry"] });
}

const fake = ["--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream", `--use-file-for-fake-audio-capture=${file}`];
const browser = await chromium.launch({ executablePath: await findChromium(), args: ["--no-sandbox", "--disable-gpu", ...fake] });
try {
  const context = await browser.newContext({ viewport: { width: 360, height: 640 }, permissions: ["microphone"] });
  // Functions that run in the page come with a call of it where tsx has read them.
  await context.addInitScript("globalThis.__name = (named) => named");
  await context.addInitScript(keepSound);
  await context.addInitScript(scriptedEar, "none" as const);
  await context.addInitScript(() => localStorage.setItem("ridgecall.listen", "yes"));
  const page = await context.newPage();
  await page.goto(server.url + path);
  await page.locator('body[data-voice="listening"]').waitFor({ state: "attached" });
  await page.evaluate(watch);
  const lags = await page.waitForFunction(
    (times) => {
      const { lags } = window as unknown as { readonly lags: readonly number[] };
      return lags.length >= times ? lags : null;
    },
    SAID_TIMES,
    { timeout: 0, polling: 500 },
  );
  const sorted = (await lags.jsonValue())!.map(Math.round).sort((a, b) => a - b);
  console.log(
    `From the end of the voice to the screen, in Chromium: ${sorted[Math.floor(sorted.length / 2)]} ms in the middle of ${sorted.join(", ")}`,
  );
} finally {
  await browser.close();
  server.close();
  rmSync(folder, { recursive: true, force: true });
}
process.exit(0);
