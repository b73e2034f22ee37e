import { defineConfig } from 'vitest/config';

/** Reports are printed on demand, apart from the tests: `npm run report:lines`. */
export default defineConfig({
  test: {
    include: ['tests/report/*.report.ts'],
    environment: 'node',
    testTimeout: 600_000,
    reporters: ['dot'],
    server: { deps: { inline: ['chord-symbol'] } },
  },
});
