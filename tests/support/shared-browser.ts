import { type Browser, chromium } from "playwright-core";
import { inject } from "vitest";

const FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** For what a page is waited for. Only what never comes runs into it: no test fails because its machine is slow. */
export const WAIT_MS = 20_000;

let browser: Promise<Browser> | undefined;

/** One browser for all the tests of a worker, with a context for each screen; it ends with the worker. */
export const sharedBrowser = (): Promise<Browser> => {
  browser ??= chromium.launch({ executablePath: inject("chromium"), args: FLAGS, timeout: WAIT_MS });
  return browser;
};
