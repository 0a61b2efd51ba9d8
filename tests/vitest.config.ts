import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 60_000,
    hookTimeout: 120_000,
    // A browser on a busy machine may miss a time limit once; what is wrong stays wrong.
    retry: process.env.CI ? 2 : 0,
  },
});
