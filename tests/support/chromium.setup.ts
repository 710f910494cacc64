import type { TestProject } from "vitest/node";
import { findChromium } from "./chromium.ts";

/** Before any test: no browser, no run. A test that needs one never skips itself. */
export default function setup(project: TestProject) {
  project.provide("chromium", findChromium());
}
declare module "vitest" {
  interface ProvidedContext {
    chromium: string;
  }
}
