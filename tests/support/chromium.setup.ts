import { renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { TestProject } from "vitest/node";
import { findChromium, isInstallable } from "./chromium.ts";
import { scratchFolder } from "./scratch.ts";

/**
 * Before any test: no browser, no run. A test that needs one never skips itself. Where it has to be installed first, tests that need
 * none begin meanwhile. Provides the name of a file which is there as soon as it is known where the browser is, or why it is not.
 */
export default async function setup(project: TestProject) {
  const folder = scratchFolder("chromium");
  const found = join(folder, "found.json");
  const looked = findChromium();
  if (!isInstallable()) await looked;
  const told = looked
    .then(
      (path): Chromium => ({ path }),
      ({ message }: Error): Chromium => ({ problem: message }),
    )
    .then((chromium) => {
      writeFileSync(`${found}.new`, JSON.stringify(chromium));
      renameSync(`${found}.new`, found);
    });
  project.provide("chromium", found);
  return async () => {
    await told;
    rmSync(folder, { recursive: true, force: true });
  };
}
export type Chromium = { readonly path: string } | { readonly problem: string };
declare module "vitest" {
  interface ProvidedContext {
    chromium: string;
  }
}
