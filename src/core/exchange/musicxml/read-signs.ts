import { MARKS, type Mark, type NoteMarks, SIGNS, withMark } from '../../base';
import { childOf, childrenOf, type XmlNode } from './xml-tree';

/** Signs by the element that says them, with its text where that matters. */
function signsIn(within: 'articulations' | 'technical' | 'notations'): ReadonlyMap<string, Mark> {
  const known = MARKS.flatMap((mark): readonly (readonly [string, Mark])[] => {
    const { xml } = mark === 'hammer' ? SIGNS['hammer-on'] : SIGNS[mark];
    return xml.in === within ? [[`${xml.element} ${xml.text ?? ''}`, mark]] : [];
  });
  return new Map(known);
}

const ARTICULATIONS = signsIn('articulations');
const NOTATIONS = signsIn('notations');
/** What has no element of its own is named; so is a way out that leads to no note. */
const TECHNICAL: ReadonlyMap<string, Mark> = new Map([
  ...signsIn('technical'),
  ['snap-pizzicato ', 'pop'],
  ...MARKS.map((mark) => [`other-technical ${mark}`, mark] as const),
]);

/** Elements of a pair by the mark that their beginning stands for; a later one goes before an earlier one. */
const PAIRS: readonly (readonly [element: string, mark: Mark])[] = [
  ['glissando', 'slide'],
  ['slide', 'slide'],
  ['hammer-on', 'hammer'],
  ['pull-off', 'hammer'],
];

const notationsOf = (note: XmlNode, within?: string): readonly XmlNode[] =>
  childrenOf(note, 'notations').flatMap((notations) =>
    within === undefined
      ? notations.children
      : childrenOf(notations, within).flatMap(({ children }) => children),
  );

const keyOf = ({ name, text }: XmlNode): string =>
  name === 'pluck' || name === 'other-technical' ? `${name} ${text.trim()}` : `${name} `;

/** Signs of a note that a lesson does not have, as a sentence lists them. */
const EXTRAS: Readonly<Record<string, string>> = {
  ornaments: 'ornaments',
  arpeggiate: 'arpeggio signs',
  bend: 'bends',
  harmonic: 'harmonics',
  tap: 'taps',
};

/** What stands at a note and has no place in a lesson. */
export function extrasOf(note: XmlNode): readonly string[] {
  const technical = notationsOf(note, 'technical');
  const articulations = notationsOf(note, 'articulations');
  const otherFingers = technical.some((sign) => sign.name === 'pluck' && !TECHNICAL.has(keyOf(sign)));
  return [
    ...[...notationsOf(note), ...technical].flatMap(({ name }) =>
      Object.hasOwn(EXTRAS, name) ? [EXTRAS[name] ?? ''] : [],
    ),
    ...(otherFingers ? ['fingers of the plucking hand other than i and m'] : []),
    ...(articulations.some((sign) => !ARTICULATIONS.has(keyOf(sign)))
      ? ['articulations other than accents, staccato, tenuto, portato and slides']
      : []),
    ...(childOf(note, 'lyric') === undefined ? [] : ['lyrics']),
  ];
}

/** The slurs of a note by their numbers: those that end and those that begin with it. */
export function slursOf(note: XmlNode): {
  readonly starts: readonly string[];
  readonly stops: readonly string[];
} {
  const slurs = notationsOf(note).filter(({ name }) => name === 'slur');
  const numbers = (type: string): readonly string[] =>
    slurs.flatMap(({ attributes }) => (attributes.type === type ? [attributes.number ?? '1'] : []));
  return { starts: numbers('start'), stops: numbers('stop') };
}

/**
 * The marks of a note.
 * @param slurred - a slur leads from the note to the next one
 */
export function marksIn(note: XmlNode, slurred: boolean): NoteMarks | null {
  const all = notationsOf(note);
  const technical = notationsOf(note, 'technical');
  const head = childOf(note, 'notehead');
  const ghost = head !== undefined && (head.text === 'x' || head.attributes.parentheses === 'yes');
  const palm = childrenOf(note, 'play').some((play) => childOf(play, 'mute')?.text === 'palm');
  const starts = [...all, ...technical].filter(({ attributes }) => attributes.type === 'start');
  const found: readonly Mark[] = [
    ...notationsOf(note, 'articulations').flatMap((sign) => ARTICULATIONS.get(keyOf(sign)) ?? []),
    ...all.flatMap((sign) => NOTATIONS.get(keyOf(sign)) ?? []),
    ...(slurred ? (['slur'] as const) : []),
    ...PAIRS.flatMap(([name, mark]) => (starts.some((sign) => sign.name === name) ? [mark] : [])),
    ...technical.flatMap((sign) => TECHNICAL.get(keyOf(sign)) ?? []),
    ...(palm ? (['palm mute'] as const) : []),
    ...(ghost ? (['ghost'] as const) : []),
  ];
  return found.reduce<{ readonly marks?: NoteMarks }>(withMark, {}).marks ?? null;
}

/** Whether a tie that rings on is drawn at the note. */
export const ringsOn = (note: XmlNode): boolean =>
  notationsOf(note).some(({ name, attributes }) => name === 'tied' && attributes.type === 'let-ring');
