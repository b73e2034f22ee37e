import { type SpelledName, sameName, type Ticks } from '../../base';
import type { HarmonySpan } from '../../chart';
import { type Chord, type Degree, formatName } from '../../theory';
import { type Element, element, tag } from './xml';

type Step = Degree['step'];

interface Kind {
  readonly name: string;
  /** Folded into one octave, as the chords of theory are. */
  readonly degrees: readonly Degree[];
}

const degree = (text: string): Degree => {
  const signs = text.slice(0, -1);
  const alteration = signs === 'bb' ? -2 : signs === 'b' ? -1 : signs === '#' ? 1 : 0;
  return { step: STEPS[Number(text.at(-1)) - 1] ?? 1, alteration };
};
const STEPS: readonly Step[] = [1, 2, 3, 4, 5, 6, 7];

/** The chord kinds of MusicXML 4.0 (simple type kind-value) and the degrees that its documentation gives them. */
const KINDS: readonly Kind[] = [
  ['major', '1 3 5'],
  ['minor', '1 b3 5'],
  ['dominant', '1 3 5 b7'],
  ['major-seventh', '1 3 5 7'],
  ['minor-seventh', '1 b3 5 b7'],
  ['half-diminished', '1 b3 b5 b7'],
  ['diminished', '1 b3 b5'],
  ['diminished-seventh', '1 b3 b5 bb7'],
  ['augmented', '1 3 #5'],
  ['augmented-seventh', '1 3 #5 b7'],
  ['major-minor', '1 b3 5 7'],
  ['major-sixth', '1 3 5 6'],
  ['minor-sixth', '1 b3 5 6'],
  ['suspended-second', '1 2 5'],
  ['suspended-fourth', '1 4 5'],
  ['power', '1 5'],
  ['dominant-ninth', '1 3 5 b7 2'],
  ['major-ninth', '1 3 5 7 2'],
  ['minor-ninth', '1 b3 5 b7 2'],
  ['dominant-11th', '1 3 5 b7 2 4'],
  ['major-11th', '1 3 5 7 2 4'],
  ['minor-11th', '1 b3 5 b7 2 4'],
  ['dominant-13th', '1 3 5 b7 2 4 6'],
  ['major-13th', '1 3 5 7 2 4 6'],
  ['minor-13th', '1 b3 5 b7 2 4 6'],
].map(([name = '', degrees = '']) => ({ name, degrees: degrees.split(' ').map(degree) }));

interface Change {
  readonly type: 'add' | 'alter' | 'subtract';
  readonly value: number;
  readonly alter: number;
}

/** Steps beyond the seventh chord are named a ninth, an eleventh, a thirteenth. */
const namedValue = (step: Step): number => (step % 2 === 0 ? step + 7 : step);

/**
 * What turns a kind into a chord. By the standard, an added degree is altered against a dominant chord (major and
 * perfect intervals, a minor seventh), a changed one against the degree in the kind.
 */
function changesFrom(kind: Kind, wanted: readonly Degree[]): readonly Change[] {
  return STEPS.flatMap((step): Change[] => {
    const inKind = kind.degrees.filter((one) => one.step === step).map((one) => one.alteration);
    const inChord = wanted.filter((one) => one.step === step).map((one) => one.alteration);
    const gone = inKind.filter((alteration) => !inChord.some((other) => other === alteration));
    const come = inChord.filter((alteration) => !inKind.some((other) => other === alteration));
    const value = namedValue(step);
    const [lost] = gone;
    const [found, ...others] = come;
    const added = (alteration: number): Change => ({
      type: 'add',
      value,
      alter: step === 7 ? alteration + 1 : alteration,
    });
    if (lost !== undefined && found !== undefined) {
      return [{ type: 'alter', value, alter: found - lost }, ...others.map(added)];
    }
    if (lost !== undefined) return [{ type: 'subtract', value, alter: 0 }];
    return come.map(added);
  });
}

/** The trade leaves the eleventh out of a thirteenth chord, and the third out of an eleventh chord. */
const usuallyLeftOut = (kind: Kind, { type, value }: Change): boolean =>
  type === 'subtract' &&
  ((kind.name.endsWith('13th') && value === 11) || (kind.name.endsWith('11th') && value === 3));

/** The kind with the fewest changes; of several, the one that stands first in the table. */
function describe(chord: Chord): { readonly kind: string; readonly changes: readonly Change[] } {
  const wanted = chord.tones.map((tone) => tone.degree);
  const candidates = KINDS.map((kind) => {
    const changes = changesFrom(kind, wanted);
    const usual = changes.filter((change) => usuallyLeftOut(kind, change)).length;
    return { kind: kind.name, changes, cost: changes.length - usual / 2 };
  });
  return candidates.reduce((best, one) => (one.cost < best.cost ? one : best));
}

/** The symbol without its root and its slash: `m7♭5`. */
function suffixOf(chord: Chord): string {
  const slash = sameName(chord.root, chord.bass) ? '' : `/${formatName(chord.bass)}`;
  const end = slash === '' ? undefined : -slash.length;
  return chord.symbol.slice(formatName(chord.root).length, end);
}

const stepAndAlter = (name: SpelledName, part: 'root' | 'bass'): Element =>
  tag(
    part,
    tag(`${part}-step`, name.letter),
    name.alteration === 0 ? null : tag(`${part}-alter`, name.alteration),
  );

function chordElements(chord: Chord): readonly Element[] {
  const { kind, changes } = describe(chord);
  return [
    stepAndAlter(chord.root, 'root'),
    element('kind', { text: suffixOf(chord) }, kind),
    ...(sameName(chord.root, chord.bass) ? [] : [stepAndAlter(chord.bass, 'bass')]),
    // The kind's text says it all; the degrees are for programs that read the chord.
    ...changes.map(({ type, value, alter }) =>
      element(
        'degree',
        { 'print-object': 'no' },
        tag('degree-value', value),
        tag('degree-alter', alter),
        tag('degree-type', type),
      ),
    ),
  ];
}

/** The chord symbol of a span, or the words for what is no chord, to stand `offset` ticks after its place. */
export function harmonyElement(span: HarmonySpan, offset: Ticks): Element {
  const later = offset === 0 ? null : tag('offset', offset);
  switch (span.harmony.kind) {
    case 'chord':
      return tag('harmony', chordElements(span.harmony.chord), later);
    case 'no chord':
      return tag(
        'harmony',
        tag('root', element('root-step', { text: '' }, 'C')),
        element('kind', { text: 'N.C.' }, 'none'),
        later,
      );
    case 'unknown':
      return element(
        'direction',
        { placement: 'above' },
        tag('direction-type', tag('words', span.harmony.text)),
        later,
      );
  }
}
