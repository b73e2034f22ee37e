import { join } from 'node:path';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';
import { buildOptions } from './build/alone.ts';
import { lightChordSymbol } from './build/chord-symbol.ts';
import { lightFontkit } from './build/fontkit.ts';
import { thirdPartyNotices } from './build/notices.ts';
import { offline } from './build/offline.ts';
import { practicePage } from './build/practice-page.ts';
import { securityPolicy } from './build/security-policy.ts';

/**
 * What is heard in real time is listened to without a second browser beside it, which would be heard as a gap; what only
 * computes may run beside it where it gives way (`tests/support/run-tests.mjs`).
 */
const sounding = ['tests/browser/{play*,practice}.test.ts'];

/** What is waited for on a page may take longer than the second that is usual, where two browsers share two cores. */
const patient = { poll: { timeout: 15_000 } };

/**
 * For browsers that open a page, look at it for seconds and close it: the engine's last step of optimizing pays off for
 * what runs longer, and takes an eighth of all work in a page that is just opened. What is listened to in
 * real time (`sounding`) and every benchmark run in the engine as people have it.
 */
const SHORT_LIVED = ['--js-flags=--no-opt'];

export default defineConfig({
  base: './',
  plugins: [
    lightChordSymbol(),
    lightFontkit(),
    react(),
    securityPolicy(),
    thirdPartyNotices(),
    practicePage(),
    offline(),
  ],
  worker: { format: 'es' },
  build: {
    ...buildOptions,
    // Every browser that the page is written for loads modules ahead by itself (Safari since 17, Firefox since 115).
    modulePreload: { polyfill: false },
    rolldownOptions: {
      ...buildOptions.rolldownOptions,
      input: {
        index: join(import.meta.dirname, 'index.html'),
        practice: join(import.meta.dirname, 'practice.html'),
      },
    },
  },
  preview: { port: 4173 },
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          // Left to itself Vitest keeps one core back, which on two cores is half of the time.
          maxWorkers: 2,
          sequence: { groupOrder: 0 },
          include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
          exclude: ['tests/browser/**', 'tests/rules/**', 'tests/pictures/**'],
          environment: 'node',
          // Beside what listens in real time they give way, and take longer than alone.
          testTimeout: 120_000,
          hookTimeout: 120_000,
          // No test leaves anything behind in a module, and each file would else load and warm up the composer anew.
          isolate: false,
          // Tried with the functions that the build gives it.
          server: { deps: { inline: ['chord-symbol'] } },
          benchmark: { include: ['tests/bench/*.bench.ts'] },
        },
      },
      {
        extends: true,
        test: {
          name: 'rules',
          maxWorkers: 2,
          sequence: { groupOrder: 0 },
          include: ['tests/rules/**/*.test.ts'],
          environment: 'node',
          benchmark: { include: [] },
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          maxWorkers: 2,
          sequence: { groupOrder: 1 },
          include: ['tests/browser/**/*.test.ts'],
          exclude: sounding,
          environment: 'node',
          benchmark: { include: ['tests/bench/browser/*.bench.ts'] },
          globalSetup: ['tests/support/serve.ts'],
          provide: { browserArguments: SHORT_LIVED },
          expect: patient,
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'sounding',
          sequence: { groupOrder: 2 },
          include: sounding,
          environment: 'node',
          benchmark: { include: [] },
          globalSetup: ['tests/support/serve.ts'],
          expect: patient,
          testTimeout: 120_000,
          hookTimeout: 120_000,
          fileParallelism: false,
        },
      },
      {
        extends: true,
        test: {
          name: 'pictures',
          include: ['tests/pictures/**/*.test.ts'],
          environment: 'node',
          benchmark: { include: [] },
          globalSetup: ['tests/support/serve.ts'],
          testTimeout: 120_000,
        },
      },
    ],
  },
});
