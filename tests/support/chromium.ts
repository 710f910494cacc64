import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";

const KNOWN = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
];

/** Chromium's path: named by CHROMIUM, found, or installed as Debian's package. Throws one sentence where none of it works. */
export function findChromium(): string {
  const named = process.env.CHROMIUM;
  if (named && existsSync(named)) return named;
  const found = KNOWN.find((path) => existsSync(path));
  if (found) return found;
  if (process.getuid?.() === 0 && existsSync("/usr/bin/apt-get")) {
    const apt = (...args: string[]) =>
      spawnSync("apt-get", args, { stdio: "ignore", env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" } });
    apt("update", "-qq");
    apt("install", "-y", "-qq", "--no-install-recommends", "chromium");
    if (existsSync("/usr/bin/chromium")) return "/usr/bin/chromium";
  }
  throw new Error("The browser tests need Chromium: install it (Debian: apt-get install chromium) or name its path in CHROMIUM.");
}
