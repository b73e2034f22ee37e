import { type SpelledName, sameName, type Ticks } from '../../base';
import type { HarmonySpan } from '../../chart';
import { type Chord, type Degree, formatName } from '../../theory';
import { KINDS, type Kind, STEPS, type Step } from './kinds';
import { type Element, element, tag } from './xml';

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
