import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/**
 * One seed for a whole run, said at its beginning: `SEED=… npm test` draws the same cases again. In CI it is always the
 * same, so that what a change is judged by is the change, not the draw.
 */
const seed = process.env.SEED ?? (process.env.CI ? '20261120' : String(Date.now() % 2 ** 31));
if (process.env.SEED === undefined) console.log(`Random cases are drawn by SEED=${seed}`);

export default defineConfig({
  test: {
    root: fileURLToPath(new URL('..', import.meta.url)),
    include: ['test/**/*.test.ts'],
    globalSetup: 'test/scratch.ts',
    setupFiles: ['test/setup.ts'],
    env: { SEED: seed },
    testTimeout: 30_000,
    // No module holds state, so that one process can serve many files: it loads the source once.
    isolate: false,
    maxWorkers: '100%',
  },
});
