import { defineConfig } from 'vitest/config';

/** Composes lines for the jury on demand, apart from the tests: `npm run jury:lines`. */
export default defineConfig({
  test: {
    include: ['tests/jury/*.jury.ts'],
    environment: 'node',
    testTimeout: 600_000,
    reporters: ['dot'],
    server: { deps: { inline: ['chord-symbol'] } },
  },
});
