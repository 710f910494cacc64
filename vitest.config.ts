import { defineConfig } from "vitest/config";
import { LongestFirst } from "./tests/support/longest-first.ts";

const MINUTE = 60_000;

/** Whole jobs on screens, larger explorations, kills at many points: minutes of what `npm test` shows in part. */
const LONG = "tests/**/*.long.test.{ts,tsx}";
/** Tests that put another module in place of one of ours, and so must not share what the others have loaded. */
const MOCKING = ["tests/install/frozen-limits.test.ts", "tests/server/defaults.test.ts"];

const SHARED = {
  // Each project that names one runs it.
  globalSetup: ["tests/support/chromium.setup.ts", "tests/support/shared-folder.setup.ts"],
  // The program is loaded once a worker: doing so for each file takes a quarter of the run.
  isolate: false,
};

export default defineConfig({
  test: {
    // Of two cores vitest would use one.
    maxWorkers: 2,
    sequence: { sequencer: LongestFirst },
    teardownTimeout: 5 * MINUTE,
    projects: [
      {
        extends: true,
        test: {
          ...SHARED,
          name: "shared",
          include: ["tests/**/*.test.{ts,tsx}"],
          exclude: [...MOCKING, LONG],
          benchmark: { include: ["tests/bench/**/*.bench.ts"] },
        },
      },
      { extends: true, test: { ...SHARED, name: "long", include: [LONG], benchmark: { include: [] } } },
      { extends: true, test: { name: "mocking", include: MOCKING, benchmark: { include: [] } } },
    ],
    // Only what hangs runs into these: no test fails because its machine is slow.
    testTimeout: 30 * MINUTE,
    hookTimeout: 30 * MINUTE,
  },
});
