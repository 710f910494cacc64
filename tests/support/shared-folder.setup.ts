import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { TestProject } from "vitest/node";

/** A folder that all test files of a run share, for what is made once; gone when the run is over. */
export default function setup(project: TestProject) {
  const folder = mkdtempSync(join(tmpdir(), "ridgecall-shared-"));
  project.provide("shared", folder);
  return () => rmSync(folder, { recursive: true, force: true });
}
declare module "vitest" {
  interface ProvidedContext {
    shared: string;
  }
}
