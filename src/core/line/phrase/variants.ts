import type { Metre } from '../../base';
import { type Contour, contourOf, type Role, type Slot } from '../../feel';

/**
 * Other forms of a contour for bars that an aim asks something special of: cut off after each of its notes (more
 * silence), its long notes struck twice (more notes), its second note an octave from the first, a beat one that
 * stays silent.
 */
export function variantsOf(contour: Contour): readonly Contour[] {
  const { beats, roles, leads, id } = contour;
  const variants: Contour[] = [];
  for (let count = 1; count < roles.length; count += 1) {
    const kept = beats
      .slice(0, count)
      .map((beat, index) => (index === count - 1 ? { ...beat, duration: Math.min(1, beat.duration) } : beat));
    variants.push({
      ...contour,
      id: `${id} cut ${count}`,
      beats: kept,
      roles: roles.slice(0, count),
      leads: 0,
    });
  }
  const first = beats[0];
  if (first && first.start === 0 && roles.length > 1 && roles[1]?.kind !== 'repeat') {
    variants.push({ ...contour, id: `${id} late`, beats: beats.slice(1), roles: roles.slice(1) });
  }
  if (roles.length > 1 && roles[0]?.kind === 'step' && roles[0].step === 1) {
    const octave: Role = { kind: 'step', step: 8, octave: 0 };
    variants.push({ ...contour, id: `${id} octave`, roles: [roles[0], octave, ...roles.slice(2)] });
  }
  const halves = beats.map((beat, index) =>
    index < roles.length && beat.duration >= 1 ? [half(beat, 0), half(beat, 1)] : [beat],
  );
  const doubled = roles.flatMap((role, index): Role[] =>
    halves[index]?.length === 2 ? [role, { kind: 'repeat' }] : [role],
  );
  if (doubled.length > roles.length) {
    variants.push({ ...contour, id: `${id} struck twice`, beats: halves.flat(), roles: doubled, leads });
  }
  return variants;
}

const half = ({ start, duration }: { start: number; duration: number }, place: 0 | 1) => ({
  start: start + (place * duration) / 2,
  duration: duration / 2,
});

/** What is played where no contour of the book fits: the plainest notes of the chord, in beats. */
export function plainContours(slot: Slot, metre: Metre, beats: number): readonly Contour[] {
  const whole = Math.max(1, Math.floor(beats));
  const even = 'x'.repeat(whole);
  const held = `x${'='.repeat(whole - 1)}`;
  const make = (grid: string, text: string): Contour => {
    const contour = contourOf(slot, metre, grid, text, `plain ${grid} ${text}`);
    const scale = whole / contour.beats.reduce((sum, beat) => Math.max(sum, beat.start + beat.duration), 1);
    return {
      ...contour,
      beats: contour.beats.map(({ start, duration }) => ({
        start: start * scale,
        duration: duration * scale,
      })),
    };
  };
  return ['R', '8', '_5', '5'].flatMap((role) => [
    make(held, role),
    make(even, [role, ...Array.from({ length: whole - 1 }, () => '=')].join(' ')),
  ]);
}
