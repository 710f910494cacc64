import { execFile } from "node:child_process";
import { existsSync } from "node:fs";
import { promisify } from "node:util";

/** Chromium without windows: it shows a page for half of what the whole browser takes. */
const SHELL = "/usr/bin/chromium-headless-shell";
const KNOWN = [
  SHELL,
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
];
const APT = "/usr/bin/apt-get";

/** Whether Debian's package is wanted and may be installed here, which takes a while. */
export const isInstallable = (): boolean =>
  namedChromium() === undefined && !existsSync(SHELL) && process.getuid?.() === 0 && existsSync(APT);

const namedChromium = () => [process.env.CHROMIUM].find((path) => path && existsSync(path));

/** Chromium's path: named by CHROMIUM, installed as Debian's package where that may be done, or found. Rejects with one sentence where none of it works. */
export async function findChromium(): Promise<string> {
  if (isInstallable()) await installShell();
  const found = namedChromium() ?? KNOWN.find((path) => existsSync(path));
  if (found) return found;
  throw new Error(
    "The browser tests need Chromium: install it (Debian: apt-get install chromium-headless-shell) or name its path in CHROMIUM.",
  );
}

/** A failure shows afterward: the browser is not there. */
async function installShell(): Promise<void> {
  const apt = (...args: string[]) =>
    promisify(execFile)(APT, args, { env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" } }).catch(() => {});
  await apt("update", "-qq");
  await apt("install", "-y", "-qq", "--no-install-recommends", "chromium-headless-shell");
}
