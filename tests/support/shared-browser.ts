import { existsSync, readFileSync } from "node:fs";
import { setTimeout } from "node:timers/promises";
import { type Browser, chromium, type Page } from "playwright-core";
import { inject, onTestFinished } from "vitest";
import type { Chromium } from "./chromium.setup.ts";

/** A name of this machine that is no localhost: over plain http a browser trusts it as little as any machine in a yard. */
export const IN_THE_YARD = "ridgecall.test";
/**
 * What a browser does for speed or safety of its own and no test looks at: a process at hand for the next site, a frame made anew for
 * each page, which take a tenth of the run. Given here it replaces the list of Playwright's own, whose parts that matter it keeps.
 */
const FEATURES_OFF = [
  "IsolateOrigins",
  "site-per-process",
  "SpareRendererForSitePerProcess",
  "RenderDocument",
  "PaintHolding",
  "DestroyProfileOnBrowserClose",
  "HttpsUpgrades",
  "HttpsFirstBalancedModeAutoEnable",
  "ThirdPartyStoragePartitioning",
  "OptimizationHints",
  "NetworkTimeServiceQuerying",
];
const FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  // One process shows the pages of all phones of a worker: each for itself takes an eighth more.
  "--renderer-process-limit=1",
  "--in-process-gpu",
  "--disable-site-isolation-trials",
  `--disable-features=${FEATURES_OFF.join()}`,
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  `--host-resolver-rules=MAP ${IN_THE_YARD} 127.0.0.1`,
];
export const PHONE = { width: 360, height: 640 };
export const DESK = { width: 1280, height: 800 };

/** What a phone shows in a pocket: one that follows hundreds of entries nobody looks at takes most of a test's time. */
export const ASLEEP = "about:blank";

/** For what a page is waited for. Only what never comes runs into it: no test fails because its machine is slow. */
export const WAIT_MS = 5 * 60_000;

/** What cannot be changed on a page that is there. */
export type PageKind = { readonly scripts?: boolean; readonly scheme?: "light" | "dark" };

let browser: Promise<Browser> | undefined;
const idle = new Map<string, Page[]>();

/** One browser for all the tests of a worker; it ends with the worker. `more` flags are for one of a test's own, which closes it. */
export async function launched(more: readonly string[] = []): Promise<Browser> {
  const found = inject("chromium");
  // On a clean machine it is being installed while the first tests run.
  while (!existsSync(found)) await setTimeout(100);
  const there = JSON.parse(readFileSync(found, "utf8")) as Chromium;
  if ("problem" in there) throw new Error(there.problem);
  return chromium.launch({ executablePath: there.path, args: [...FLAGS, ...more], timeout: WAIT_MS });
}

/** A phone of its own: its cookies, its storage, and a browser window that is closed when the test is over. */
export async function newPhone({ scripts = true, scheme = "light" }: PageKind = {}): Promise<Page> {
  browser ??= launched();
  const context = await (await browser).newContext({ viewport: PHONE, javaScriptEnabled: scripts, colorScheme: scheme });
  context.setDefaultTimeout(WAIT_MS);
  return context.newPage();
}

/**
 * The same, wiped after the test and lent to the next one that asks for its kind: to open a window takes a processor most of a
 * second. `prepare` is done to it once.
 */
export async function lentPhone<Kind extends PageKind>(kind: Kind, prepare = async (_: Page) => {}): Promise<Page> {
  const name = JSON.stringify(kind);
  let page = idle.get(name)?.pop();
  if (!page) {
    page = await newPhone(kind);
    await prepare(page);
  }
  const lent = page;
  onTestFinished(async () => {
    // What a page keeps cannot be wiped from outside it.
    if (lent.url() === ASLEEP) return lent.context().close();
    await wipe(lent);
    idle.set(name, [...(idle.get(name) ?? []), lent]);
  });
  return lent;
}

/** Does what leads to another page, or back to the same one, and waits until that is there. */
export async function leading(page: Page, press: () => Promise<unknown>): Promise<void> {
  await Promise.all([page.waitForEvent("domcontentloaded"), press()]);
}

async function wipe(page: Page): Promise<void> {
  const context = page.context();
  for (const event of ["pageerror", "console"] as const) page.removeAllListeners(event);
  await page.unrouteAll({ behavior: "ignoreErrors" });
  await context.setOffline(false);
  await page.evaluate(() => {
    localStorage.clear();
    sessionStorage.clear();
  });
  await page.goto(ASLEEP);
  await context.clearCookies();
  await page.emulateMedia({ media: null, forcedColors: null });
  await page.setViewportSize(PHONE);
}
