import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";

/** Chromium without windows: it shows a page for half of what the whole browser takes. */
const SHELL = "/usr/bin/chromium-headless-shell";
const KNOWN = [
  SHELL,
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
];

/** Chromium's path: named by CHROMIUM, installed as Debian's package where that may be done, or found. Throws one sentence where none of it works. */
export function findChromium(): string {
  const named = process.env.CHROMIUM;
  if (named && existsSync(named)) return named;
  if (!existsSync(SHELL)) installShell();
  const found = KNOWN.find((path) => existsSync(path));
  if (found) return found;
  throw new Error(
    "The browser tests need Chromium: install it (Debian: apt-get install chromium-headless-shell) or name its path in CHROMIUM.",
  );
}

function installShell(): void {
  if (process.getuid?.() !== 0 || !existsSync("/usr/bin/apt-get")) return;
  const apt = (...args: string[]) =>
    spawnSync("apt-get", args, { stdio: "ignore", env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" } });
  apt("update", "-qq");
  apt("install", "-y", "-qq", "--no-install-recommends", "chromium-headless-shell");
}
