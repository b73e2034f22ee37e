import type { LineModel } from '../model';
import { type Entry, type Exit, leapsUpTo } from './ends';
import { type Rule, TEACHERS_LIST } from './types';

const OCTAVE = 12;

/** Where octaves are pumped two voices are heard, and the upper one may come from a fifth farther. */
const PUMPED = 19;

const mostOf = ({ request }: LineModel): number => (request.feel.bassRole.mayPump ? PUMPED : OCTAVE);

/** A leap beyond an octave over the bar line, or leaps that go on in one direction over it and add up to more. */
function leapsAcross(exit: Exit, entry: Entry, distance: number, most: number): boolean {
  if (Math.abs(distance) <= 2) return false;
  if (Math.abs(distance) > OCTAVE) return true;
  const before = exit.leaps * distance > 0 ? exit.leaps : 0;
  const after = entry.leaps * distance > 0 ? entry.leaps : 0;
  return Math.abs(before + distance + after) > most;
}

export const LEAPS: Rule = {
  number: 8,
  rule: 'Leaps in one direction in succession add up to an octave at most, and several to a fifth more where the feel pumps octaves.',
  source: TEACHERS_LIST,
  heard: 'leaps in one direction go beyond an octave',
  mend: 'turn back by step',
  caution: { own: 'beside its neighbours the leaps go beyond an octave', entering: null },
  alone: ({ model, tones }) => tones.some((_, index) => Math.abs(leapsUpTo(tones, index)) > mostOf(model)),
  inParts: true,
  meeting: ({ model, exit, entry }) =>
    leapsAcross(exit, entry, entry.first.midi - exit.last.midi, mostOf(model)),
  tied: null,
  whole: null,
};
