import { beforeAll, describe, expect, test } from 'vitest';
import { build, check, soundHouse, type Verdict } from './broken-house';

const impure: readonly { readonly fault: string; readonly code: string }[] = [
  { fault: 'the document', code: 'document.title' },
  { fault: 'the window', code: 'window.innerWidth' },
  { fault: 'an audio context', code: 'new AudioContext()' },
  { fault: 'a web worker', code: "new Worker('mixer.js')" },
  { fault: 'a request', code: "fetch('lesson.json')" },
  { fault: 'a timer', code: 'setTimeout(() => 1, 1)' },
  { fault: 'the clock of the page', code: 'performance.now()' },
  { fault: 'the console', code: 'console.log(1)' },
  { fault: 'the process', code: 'process.env' },
];

describe('the core, compiled on its own', () => {
  let verdict: Verdict;
  beforeAll(async () => {
    const files = impure.map(({ code }, index) => [
      `src/core/base/fault-${index}.ts`,
      `export const fault = () => ${code};\n`,
    ]);
    verdict = await check('types', await build({ ...soundHouse, ...Object.fromEntries(files) }));
  });

  test('passes a house in order', async () => {
    expect(await check('types', await build(soundHouse))).toEqual({ passed: true, said: '' });
  });

  test('fails', () => expect(verdict.passed).toBe(false));

  test.each(impure)('does not know $fault', ({ code }) => {
    const index = impure.findIndex((other) => other.code === code);
    expect(verdict.said).toMatch(
      new RegExp(`fault-${index}\\.ts\\(1,\\d+\\): error TS(2304|2552|2580|2584|2591)`),
    );
  });
});

const chance: readonly { readonly fault: string; readonly code: string }[] = [
  { fault: 'unseeded chance', code: 'Math.random()' },
  { fault: 'unseeded chance passed on', code: '[1].map(Math.random)' },
  { fault: 'unseeded chance by its name', code: "Math['random']()" },
  { fault: 'unseeded chance taken out', code: '(({ random }) => random())(Math)' },
];

const world: readonly { readonly fault: string; readonly code: string }[] = [
  { fault: 'the clock', code: 'Date.now()' },
  { fault: 'the time of a new date', code: 'new Date()' },
  { fault: 'the time as text', code: 'Date()' },
  { fault: 'anything by way of the world', code: "Reflect.get(globalThis, 'crypto')" },
];

const storage = ['localStorage', 'sessionStorage', 'indexedDB'].map((code) => ({ code }));

describe('the linter', () => {
  let verdict: Verdict;
  beforeAll(async () => {
    const fault = (folder: string, cases: readonly { readonly code: string }[]): [string, string][] =>
      cases.map(({ code }, index) => [
        `${folder}/fault-${index}.ts`,
        `export const fault = () => ${code};\n`,
      ]);
    const files = Object.fromEntries([
      ...fault('src/core/base', chance),
      ...fault('src/core/chart', world),
      ...fault('src/score', storage),
      ...fault('src/app', chance),
    ]);
    verdict = await check('lint', await build({ ...soundHouse, ...files }));
  });

  const line = (folder: string, cases: readonly { readonly code: string }[], code: string): string =>
    `${folder}/fault-${cases.findIndex((other) => other.code === code)}\\.ts:1:\\d+`;

  test('passes a house in order', async () => {
    expect(await check('lint', await build(soundHouse))).toMatchObject({ passed: true });
  });

  test('fails', () => expect(verdict.passed).toBe(false));

  test.each(chance)('keeps out of the core: $fault', ({ code }) => {
    expect(verdict.said).toMatch(new RegExp(`${line('src/core/base', chance, code)} plugin`));
  });

  test.each(world)('keeps out of the core: $fault', ({ code }) => {
    expect(verdict.said).toMatch(
      new RegExp(`${line('src/core/chart', world, code)} lint/style/noRestrictedGlobals`),
    );
  });

  test.each(storage)('keeps $code in its room', ({ code }) => {
    expect(verdict.said).toMatch(
      new RegExp(`${line('src/score', storage, code)} lint/style/noRestrictedGlobals`),
    );
  });

  test('lets the app have chance', () => {
    expect(verdict.said).not.toMatch(/src\/app\/fault-\d+\.ts:\d+:\d+ plugin/);
  });
});
