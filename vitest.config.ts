/** Two groups of tests: those that need nothing, and those that look at the built site. */
import { defineConfig } from "vitest/config";

const OF_THE_SITE = ["tests/browser/**/*.test.ts", "tests/site/**/*.test.ts"];

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: "unit",
          include: ["tests/**/*.test.ts"],
          exclude: OF_THE_SITE,
          // The engine keeps no state between tests, so a worker starts once and not for each file.
          isolate: false,
          // Long enough for a machine that is busy with the tests of the site at the same time.
          testTimeout: 120_000,
        },
      },
      {
        test: {
          name: "site",
          include: OF_THE_SITE,
          globalSetup: ["tests/site-setup.ts"],
          // One browser at a time: several of them on a small machine only wait for each other.
          fileParallelism: false,
          // Nor do these keep anything but what they read and the browser.
          isolate: false,
          testTimeout: 120_000,
          hookTimeout: 120_000,
          // A page on a busy machine may take its time; what is waited for comes, or the test fails.
          expect: { poll: { timeout: 30_000 } },
        },
      },
    ],
  },
});
