import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

const BROWSERS = 'test/browser/**/*.test.ts';

/** Rooms and journeys side by side, as many at a time as there are processors to run them, for their memory's sake no more than three. */
const SIDE_BY_SIDE = Math.min(3, availableParallelism());

export default defineConfig({
  test: {
    setupFiles: ['test/fixedSeed.ts'],
    pool: 'threads',
    isolate: false,
    testTimeout: 120_000,
    hookTimeout: 240_000,
    projects: [
      {
        extends: true,
        test: {
          name: 'rooms',
          include: [
            'src/**/*.test.ts',
            'test/**/*.test.ts',
            'reference/**/*.test.ts',
            'demo/**/*.test.ts',
          ],
          exclude: [BROWSERS],
          maxWorkers: SIDE_BY_SIDE,
          sequence: { groupOrder: 0 },
        },
      },
      // A browser has workers of its own: one at a time, and when nothing else runs.
      {
        extends: true,
        test: { name: 'browsers', include: [BROWSERS], maxWorkers: 1, sequence: { groupOrder: 1 } },
      },
    ],
  },
});
