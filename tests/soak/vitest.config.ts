import { defineConfig } from 'vitest/config';

/** Long runs, on demand and apart from the tests: `npm run soak`. */
export default defineConfig({
  test: {
    name: 'soak',
    include: ['tests/soak/*.soak.ts'],
    environment: 'node',
    // Random inputs need no page.
    globalSetup: process.argv.includes('fuzz') ? [] : ['tests/support/serve.ts'],
    testTimeout: 3 * 60 * 60 * 1000,
    hookTimeout: 120_000,
    fileParallelism: false,
    server: { deps: { inline: ['chord-symbol'] } },
  },
});
