import { defineConfig } from "vitest/config";

const MINUTE = 60_000;

export default defineConfig({
  test: {
    include: ["tests/**/*.test.{ts,tsx}"],
    benchmark: { include: ["tests/bench/**/*.bench.ts"] },
    globalSetup: ["tests/support/chromium.setup.ts", "tests/support/shared-folder.setup.ts"],
    // Of two cores vitest would use one.
    maxWorkers: 2,
    // Only what hangs runs into these: no test fails because its machine is slow.
    testTimeout: 30 * MINUTE,
    hookTimeout: 30 * MINUTE,
    teardownTimeout: 5 * MINUTE,
  },
});
