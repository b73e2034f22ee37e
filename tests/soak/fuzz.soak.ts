/**
 * Random and damaged inputs through every stage, as many as asked for: `FUZZ_INPUTS=100000 FUZZ_KINDS=charts npm run
 * soak -- fuzz`. Nothing may be thrown, and nothing may take longer than a second of the processor. Every input is
 * made of a seed of its own, counted up from `FUZZ_SEED` (by chance when left out); a fault prints the seed with
 * which that one input comes again.
 */
import { expect, test } from 'vitest';
import { fuzzKinds } from '../support/fuzz-kinds';
import { fuzzed } from '../support/fuzzing';
import { tell } from './minutes';

const inputs = Number(process.env.FUZZ_INPUTS ?? 300);
const seed = Number(process.env.FUZZ_SEED ?? Math.floor(Math.random() * 2 ** 31));

const kinds = fuzzKinds();
const asked = process.env.FUZZ_KINDS?.split(',') ?? kinds.map(({ name }) => name);

test.each(kinds.filter(({ name }) => asked.includes(name)))('$name', (kind) => {
  expect(fuzzed(kind, { seed, inputs, tell })).toEqual([]);
});
