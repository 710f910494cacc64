import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.{ts,tsx}"],
    benchmark: { include: ["tests/bench/**/*.bench.ts"] },
    globalSetup: ["tests/support/chromium.setup.ts"],
    // Of two cores vitest would use one.
    maxWorkers: 2,
    testTimeout: 30_000,
    hookTimeout: 60_000,
  },
});
