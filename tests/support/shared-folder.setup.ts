import { rmSync } from "node:fs";
import type { TestProject } from "vitest/node";
import { scratchFolder } from "./scratch.ts";

/** A folder that all test files of a run share, for what is made once; gone when the run is over. */
export default function setup(project: TestProject) {
  const folder = scratchFolder("shared");
  project.provide("shared", folder);
  return () => rmSync(folder, { recursive: true, force: true });
}
declare module "vitest" {
  interface ProvidedContext {
    shared: string;
  }
}
