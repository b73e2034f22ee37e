import { beatAt, isDotted, type Metre, unitTicks } from '../metre';

const ORDINALS = ['first', 'second', 'third'] as const;

/**
 * Where in the bar a tick lies, as it is counted (`countingOf` of `core/notation` writes the same): `2`, `the & of 2`,
 * `the last third of 2`; in a dotted beat by its eighths: `the third eighth of 2`.
 */
export function beatWords(tick: number, metre: Metre): string {
  const beat = beatAt(metre, tick);
  const number = beat.index + 1;
  const share = (tick - beat.start) / beat.length;
  if (share === 0) return String(number);
  if (isDotted(beat)) {
    const eighth = ORDINALS[(tick - beat.start) / unitTicks(metre)];
    return eighth === undefined ? `within ${number}` : `the ${eighth} eighth of ${number}`;
  }
  const part = PARTS.find(({ at }) => Math.abs(at - share) < 1e-9);
  return part === undefined ? `within ${number}` : `the ${part.name} of ${number}`;
}

const PARTS = [
  { at: 1 / 4, name: 'e' },
  { at: 1 / 2, name: '&' },
  { at: 3 / 4, name: 'a' },
  { at: 1 / 3, name: 'second third' },
  { at: 2 / 3, name: 'last third' },
] as const;
