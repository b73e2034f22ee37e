import { chordParserFactory } from 'chord-symbol';
import { remembering } from '../base';
import { foldedStep, sameDegree } from './degrees';
import { alterationOrNull } from './names';
import type { ChordFamily, Degree } from './types';

/*
 * The only file that knows the chord symbol library.
 *
 * Two libraries were tried on the symbols musicians write. `chord-symbol` reads a descriptor as a grammar
 * (`7(♭9,♯11)`, `m(maj7)`, `Δ`, `-7`, in any order and spelling) and says what it cannot read; `tonal` looks
 * descriptors up in a list, so that brackets, `add11` or `m(maj7)` come back empty. So `chord-symbol` reads the
 * part after the root, and nothing else: its note names are not spelled by function (the ♯5 of C comes back as
 * A♭), so spelling is this room's own work. `tonal` stays outside the program, as the tests' second opinion.
 */

/** What the part of a chord symbol after its root says. */
export interface Descriptor {
  /** The descriptor as drawn: `m7♭5`, `maj7`, `7(♭9,♯11)`. */
  readonly suffix: string;
  /** The root first, then in order of thirds, folded into one octave, without repetition. */
  readonly degrees: readonly Degree[];
  readonly family: ChordFamily;
}

/** Longer descriptors than this are nothing anyone writes, and need not be tried. */
const LONGEST_DESCRIPTOR = 40;

const parse = chordParserFactory({
  notationSystems: ['english'],
  altIntervals: ['b5', '#5', 'b9', '#9'],
});

/** Spellings that the library does not know or reads otherwise, written as it knows them; in this order. */
const SPELLINGS: readonly (readonly [RegExp, string])[] = [
  [/♭/g, 'b'],
  [/♯/g, '#'],
  [/[–—−‐‑]/g, '-'],
  [/[º˚]/g, '°'],
  [/[∆△]/g, 'Δ'],
  // `7-9` and `7+9` mean the altered ninth, `7-5` the flat fifth.
  [/(?<=\d|\()-(?=5|9|13)/g, 'b'],
  [/(?<=\d|\()\+(?=4|5|9|11)/g, '#'],
  [/#4/g, '#11'],
  [/^maj(?=#11$)/, 'maj7'],
  [/^dom(?=7|9|11|13)/, ''],
  [/^dom$/, '7'],
  [/(?<=\d)dim5/, 'b5'],
  [/^power$/, '5'],
  // The library forgets what is added to a power chord, but knows chords without their third.
  [/^5\(?b?7\)?$/, '7(no3)'],
  [/^5\(?(?:add)?(\d+)\)?$/, '(add$1,no3)'],
  [/^5\(?([b#]\d+)\)?$/, '($1,no3)'],
  [/^j(?=7|9|11|13)/, 'maj'],
  // A minor chord with a major seventh: `m/maj7`, `m#7`.
  [/^(m|mi|min|-)\/?(?:maj|Maj|ma|Ma|M|#)(?=7)/, '$1Maj'],
  // Ninths and elevenths of a diminished chord stand on its diminished seventh.
  [/^(dim|°|o)(b?9)$/, '$17(add$2)'],
  [/^(dim|°|o)11$/, '$17(add9,add11)'],
  // Only over a dominant does the eleventh take the third away.
  [/^(?:maj|Maj|ma|Ma|M|Δ)11/, 'maj9(add11)'],
  [/^(?:\+|aug)11/, '9(#5,add11)'],
  [/^(?:\+|aug)(?:maj|Maj|ma|Ma|M)11/, 'maj9(#5,add11)'],
  // The one published table that has augmented thirteenths stacks them in thirds (music21 10.5).
  [/^(?:\+|aug)13/, '13(#5,add11)'],
  [/^(?:\+|aug)(?:maj|Maj|ma|Ma|M)13/, 'maj13(#5,add11)'],
  // A seventh in brackets is the chord's own, and a ninth chord without one is an added ninth.
  [/^sus([24])\(b7\)$/, '7sus$1'],
  [/^(m?)(?:maj|Maj|ma|Ma|M|Δ)?9\((?:no|omit) ?7\)$/, '$1add9'],
  // It reads what is left out only behind what is added.
  [/\((?:no|omit) ?([35]), ?([b#]\d+|[24679]|1[13])\)$/, '($2,no$1)'],
  // In brackets it cannot be taken for the accidental of the root.
  [/^[b#]\d+/, '($&)'],
];

const inLibrarySpelling = (descriptor: string): string =>
  SPELLINGS.reduce((text, [pattern, replacement]) => text.replace(pattern, replacement), descriptor);

const FLATS_AND_SHARPS: Readonly<Record<string, string>> = { b: '♭', '#': '♯' };

/** The library's interval names (`b3`, `#11`, `bb7`) as degrees within an octave. */
function degreeOfInterval(interval: string): Degree | null {
  const match = /^(b{0,2}|#{0,2})(\d+)$/.exec(interval);
  if (!match) return null;
  const signs = match[1] ?? '';
  const alteration = alterationOrNull(signs.startsWith('b') ? -signs.length : signs.length);
  return alteration === null ? null : { step: foldedStep(Number(match[2]) - 1), alteration };
}

/** Places in order of thirds; a sixth beside a seventh is a thirteenth. */
const PLACES: Readonly<Record<Degree['step'], number>> = { 1: 0, 3: 1, 5: 2, 6: 3, 7: 4, 2: 5, 4: 6 };
const THIRTEENTH = 7;

/** `suspended` is the step that stands where the third would. */
function degreesOf(intervals: readonly string[], suspended: Degree['step'] | null): readonly Degree[] {
  const degrees: Degree[] = [];
  for (const interval of intervals) {
    const degree = degreeOfInterval(interval);
    if (degree && !degrees.some((known) => sameDegree(known, degree))) degrees.push(degree);
  }
  const seventh = degrees.some(({ step, alteration }) => step === 7 && alteration > -2);
  const place = ({ step }: Degree) => {
    if (step === suspended) return PLACES[3];
    return step === 6 && seventh ? THIRTEENTH : PLACES[step];
  };
  return degrees.sort((one, other) => place(one) - place(other));
}

function familyOf(degrees: readonly Degree[], suspended: boolean): ChordFamily {
  const has = (step: Degree['step'], alteration: Degree['alteration']) =>
    degrees.some((degree) => sameDegree(degree, { step, alteration }));
  if (suspended) return 'suspended';
  if (has(3, -1)) {
    if (!has(5, -1) || has(5, 0)) return 'minor';
    return has(7, -1) ? 'half-diminished' : 'diminished';
  }
  if (has(7, -1)) return 'dominant';
  return has(5, 1) && !has(5, 0) ? 'augmented' : 'major';
}

/** From the library's names for a quality to the trade's: `mi` m, `ma7` maj7, `+` aug, `sus` sus4. */
function drawnBase(base: string): string {
  return base
    .replace(/^miMa(\d+)/, 'm(maj$1)')
    .replace(/^mi/, 'm')
    .replace(/^ma(?=\d)/, 'maj')
    .replace(/^\+/, 'aug')
    .replace(/sus$/, 'sus4')
    .replace(/69$/, '6/9')
    .replace(' bass', '(bass)');
}

function drawnChanges(base: string, changes: readonly string[]): string {
  const drawn = changes.map((change) =>
    change
      .replace(/\s/g, '')
      .replace('Ma7', 'maj7')
      .replace(/[b#]/g, (sign) => FLATS_AND_SHARPS[sign] ?? sign)
      .replace(/^omit/, 'no'),
  );
  const [only, ...others] = drawn;
  if (only === undefined) return '';
  const bare = others.length === 0 && (/^add\d/.test(only) || (/\d$/.test(base) && /^[♭♯]/.test(only)));
  return bare ? only : `(${drawn.join(',')})`;
}

/** The library hears an eleventh that is added to a ninth chord, but leaves it out of the symbol. */
function drawableChanges(
  base: string,
  changes: readonly string[],
  intervals: readonly string[],
): readonly string[] {
  const forgotten = /9$/.test(base) && ['3', '9', '11'].every((each) => intervals.includes(each));
  return forgotten && !changes.includes('add11') ? [...changes, 'add11'] : changes;
}

/** All that the library reads of a fifth alone, or of a root alone; anything else beside it is lost on it. */
const WHOLE = /^(5|M?(maj|ma)?\(?(no|omit) ?3\)?|\(?(no|omit) ?3, ?(no|omit) ?5\)?|\(?bass\)?)$/i;

function read(descriptor: string): Descriptor | null {
  if (descriptor.length > LONGEST_DESCRIPTOR) return null;
  const parsed = parse(`C${inLibrarySpelling(descriptor)}`);
  if ('error' in parsed || parsed.input.rootNote !== 'C' || parsed.input.bassNote) return null;
  const { intervals, isSuspended, intents, quality } = parsed.normalized;
  if ((quality === 'power' || quality === 'bass') && !WHOLE.test(inLibrarySpelling(descriptor).trim()))
    return null;
  const { descriptor: base } = parsed.formatted;
  const chordChanges = drawableChanges(base, parsed.formatted.chordChanges, intervals);
  const suspendedSecond = intervals.includes('9') && chordChanges.includes('omit3') && !isSuspended;
  const degrees = degreesOf(intervals, isSuspended ? 4 : suspendedSecond ? 2 : null);
  const family = familyOf(degrees, isSuspended || suspendedSecond);
  if (suspendedSecond) {
    const others = chordChanges.filter((change) => change !== 'add9' && change !== 'omit3');
    const plain = chordChanges.includes('add9') ? drawnBase(base) : drawnBase(base).replace(/9$/, '7');
    return { suffix: `${plain}sus2${drawnChanges('sus2', others)}`, degrees, family };
  }
  // An eleventh over a major third drops the third and is written `11`, not as the suspension it amounts to.
  const written = intents.eleventh && base === '9sus' ? '11' : drawnBase(base);
  return { suffix: written + drawnChanges(written, chordChanges), degrees, family };
}

/**
 * Reads the part of a chord symbol after its root (`m7b5`, `-7`, `(b9)`, nothing at all for a major triad), or
 * gives null.
 */
export const readDescriptor = remembering(read);
