import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['src/**/*.test.ts', 'test/**/*.test.ts', 'reference/**/*.test.ts', 'demo/**/*.test.ts'],
    setupFiles: ['test/fixedSeed.ts'],
    pool: 'threads',
    isolate: false,
    testTimeout: 120_000,
    hookTimeout: 240_000,
  },
});
