import type { Metre } from '../../base';
import { type Beat, type Contour, type ContourTag, contourOf, type Role, type Slot } from '../../feel';

/**
 * Other forms of a contour, for bars that an aim asks something special of or that no contour of the book fits: with
 * a breath in its middle, cut off after each of its notes (more silence), its long notes struck twice (more notes), its second note an octave
 * from the first, a beat one that stays silent, a last note that leads on, or comes early, off the beat.
 */
export function variantsOf(contour: Contour): readonly Contour[] {
  const known = knownVariants.get(contour);
  if (known) return known;
  const made = [
    ...gapped(contour),
    ...shortened(contour),
    ...led(contour),
    ...late(contour),
    ...octave(contour),
    ...struckTwice(contour),
    ...pushed(contour),
  ];
  knownVariants.set(contour, made);
  return made;
}

/** The books stay as they are, so each contour is varied once. */
const knownVariants = new WeakMap<Contour, readonly Contour[]>();

/** A bar that breathes: its first note, half a bar of nothing, and one or two notes that lead on. */
function gapped(contour: Contour): readonly Contour[] {
  const { beats, roles, id } = contour;
  const [first] = beats;
  const [role] = roles;
  const last = beats.at(-1);
  if (!first || !role || !last || first.start !== 0 || role.kind === 'repeat') return [];
  const whole = Math.ceil(last.start + last.duration);
  const struck = { start: 0, duration: Math.min(1, first.duration) };
  const from = Math.max(whole - 1, struck.duration + whole / 2);
  const room = whole - from;
  if (whole < 3 || room <= 0) return [];
  const base = { ...contour, roles: [role] };
  const one = { ...base, id: `${id} gap`, beats: [struck, { start: from, duration: room }], leads: 1 };
  if (room < 1) return [one];
  const halves = [half({ start: from, duration: room }, 0), half({ start: from, duration: room }, 1)];
  return [one, { ...base, id: `${id} gap and pair`, beats: [struck, ...halves], leads: 2 }];
}

/** A note that ends what is cut off is short. */
const clipped = (beat: Beat): Beat => ({ ...beat, duration: Math.min(1, beat.duration) });

function shortened(contour: Contour): readonly Contour[] {
  const { beats, roles, leads, id } = contour;
  const counts = roles.map((_, index) => index + 1).filter((count) => count < roles.length || leads > 0);
  return counts.map((count) => ({
    ...contour,
    id: `${id} cut ${count}`,
    beats: beats.slice(0, count).map((beat, index) => (index === count - 1 ? clipped(beat) : beat)),
    roles: roles.slice(0, count),
    leads: 0,
  }));
}

function led(contour: Contour): readonly Contour[] {
  const { roles, leads, id } = contour;
  if (roles.length < 2 || leads > 1) return [];
  return [{ ...contour, id: `${id} led`, roles: roles.slice(0, -1), leads: leads + 1 }];
}

/** A bar that begins later than this many beats in is late already. */
const LATEST = 1;

/** Without its first note. */
const isRoot = (role: Role): boolean => role.kind === 'step' && (role.step - 1) % 7 === 0;

function late(contour: Contour): readonly Contour[] {
  const { beats, roles, id } = contour;
  const [struck] = beats;
  if (!struck || struck.start > LATEST || roles.length < 2 || roles[1]?.kind === 'repeat') return [];
  const [first, ...others] = roles;
  const base = { ...contour, beats: beats.slice(1) };
  // A chord that has just come is told by its root: without it the bar is one of the chord before.
  const tags: readonly ContourTag[] = others.some(isRoot) ? contour.tags : [...contour.tags, 'goes on'];
  const plain = { ...base, id: `${id} late`, roles: others, tags };
  // Where the one is silent, the root is waited for: it takes the place of the note after it.
  return first ? [plain, { ...base, id: `${id} late root`, roles: [first, ...others.slice(1)] }] : [plain];
}

function octave(contour: Contour): readonly Contour[] {
  const { roles, id } = contour;
  const [first] = roles;
  if (roles.length < 2 || first?.kind !== 'step' || first.step !== 1) return [];
  const eighth: Role = { kind: 'step', step: 8, octave: 0 };
  return [{ ...contour, id: `${id} octave`, roles: [first, eighth, ...roles.slice(2)] }];
}

function struckTwice(contour: Contour): readonly Contour[] {
  const { beats, roles, id } = contour;
  const halves = beats.map((beat, index) =>
    index < roles.length && beat.duration >= 1 ? [half(beat, 0), half(beat, 1)] : [beat],
  );
  const doubled = roles.flatMap((role, index): Role[] =>
    halves[index]?.length === 2 ? [role, { kind: 'repeat' }] : [role],
  );
  return doubled.length > roles.length
    ? [{ ...contour, id: `${id} struck twice`, beats: halves.flat(), roles: doubled }]
    : [];
}

/** The last note gives its second half to a lead. */
function pushed(contour: Contour): readonly Contour[] {
  const { beats, leads, id } = contour;
  const last = beats.at(-1);
  if (leads > 0 || !last || last.duration < 1) return [];
  const before = { start: last.start, duration: last.duration - 0.5 };
  const early = { start: last.start + last.duration - 0.5, duration: 0.5 };
  return [{ ...contour, id: `${id} pushed`, beats: [...beats.slice(0, -1), before, early], leads: 1 }];
}

const half = ({ start, duration }: Beat, place: 0 | 1): Beat => ({
  start: start + (place * duration) / 2,
  duration: duration / 2,
});

/** Single notes, and chord tones one after the other. */
const SINGLE = ['R', '8', '_5', '5', '3'];
const SEVERAL = ['R 5', 'R 3', 'R _5', 'R 8', '8 5', '8 3', '5 R', '3 R', 'R >', '8 >', '3 >', '5 >'];

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
  const single = SINGLE.flatMap((role) => [
    make(held, role),
    make(even, [role, ...Array.from({ length: whole - 1 }, () => '=')].join(' ')),
  ]);
  return [...single, ...SEVERAL.map((text) => make('xx', text))];
}
