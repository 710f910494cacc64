import { type Browser, chromium } from "playwright-core";
import { createAssets } from "../../server/assets.ts";
import { memoryJournal } from "../../server/journal/memory.ts";
import { LANGUAGES } from "../../views/text/languages.ts";
import { brief, MORNING, testApp } from "../support/app.ts";
import { findChromium } from "../support/chromium.ts";
import { FIRST_VISIT_GOAL, firstVisit, totalOf } from "../support/first-visit.ts";
import { openedJob } from "../support/job.ts";
import { serveApp } from "./serve-app.ts";

/**
 * A guide page on a bad link and a slow phone: what it weighs on the wire, and how long until it can be used, the first time
 * and again. It can be used once its main button is in sight and htmx has taken that button's form over: htmx begins in the
 * task after the one in which our own script has run, which lies in the same file.
 */
const VISITS = 5;
const LINK = { offline: false, latency: 400, downloadThroughput: 400_000 / 8, uploadThroughput: 400_000 / 8 };
const SLOWER_PROCESSOR = 4;
const PHONE = { width: 360, height: 640 };

const world = testApp(memoryJournal(), MORNING, LANGUAGES, createAssets());
const path = `/jobs/${(await openedJob(brief(), world)).job}?as=p1`;
const server = await serveApp(world.app);

/** In the page, from its first moment on: notes when it can be used, in ms since it was asked for. */
const watch = () => {
  const looking = setInterval(() => {
    const button = document.querySelector<HTMLElement>(".dock .main button, .gate button");
    if (!button?.checkVisibility() || !button.closest("form")?.hasAttribute("data-htmx-powered")) return;
    clearInterval(looking);
    document.documentElement.dataset.usableMs = String(performance.now());
  }, 10);
};

/** Two visits to the page by a phone that has nothing of ours yet, in ms. */
async function visits(browser: Browser): Promise<readonly [number, number]> {
  const context = await browser.newContext({ viewport: PHONE });
  const page = await context.newPage();
  const devtools = await context.newCDPSession(page);
  await devtools.send("Network.enable");
  await devtools.send("Network.emulateNetworkConditions", LINK);
  await devtools.send("Emulation.setCPUThrottlingRate", { rate: SLOWER_PROCESSOR });
  await page.addInitScript(watch);
  const visit = async () => {
    await page.goto(server.url + path, { waitUntil: "commit" });
    const usable = await page.waitForFunction(() => document.documentElement.dataset.usableMs, null, { timeout: 0 });
    return Number(await usable.jsonValue());
  };
  const took = [await visit(), await visit()] as const;
  await context.close();
  return took;
}

const middle = (of: readonly number[]) => [...of].sort((a, b) => a - b)[Math.floor(of.length / 2)]!;
const kB = (bytes: number) => `${(bytes / 1000).toFixed(1)} kB`;

const weighed = await firstVisit((asked, headers) => world.app.request(asked, { headers }), path);
for (const [name, bytes] of weighed) console.log(`${name.padEnd(64)} ${kB(bytes)}`);
console.log(`${"a first visit to a guide page, on the wire".padEnd(64)} ${kB(totalOf(weighed))} of ${kB(FIRST_VISIT_GOAL)}`);

const browser = await chromium.launch({ executablePath: await findChromium(), args: ["--no-sandbox", "--disable-gpu"] });
try {
  const took: (readonly [number, number])[] = [];
  for (let n = 0; n < VISITS; n++) took.push(await visits(browser));
  const on = `400 kbit/s, 400 ms, a processor ${SLOWER_PROCESSOR} times slower`;
  console.log(`${`until it can be used, the first time, at ${on}`.padEnd(96)} ${Math.round(middle(took.map(([first]) => first)))} ms`);
  console.log(`${`until it can be used, again, at ${on}`.padEnd(96)} ${Math.round(middle(took.map(([, again]) => again)))} ms`);
} finally {
  await browser.close();
  server.close();
}
process.exit(0);
