import { type Navigation, readNavigation } from '../../chart';
import { childOf, childrenOf, numberOf, readNumber, textOf, type XmlNode } from './xml-tree';

/** Quarter notes in a note type of a metronome mark. */
const QUARTERS: Readonly<Record<string, number>> = {
  breve: 8,
  whole: 4,
  half: 2,
  quarter: 1,
  eighth: 0.5,
  '16th': 0.25,
};

/** Tempi that anyone plays, in quarter notes a minute; beyond them the file is wrong. */
const PLAYABLE = { least: 5, most: 1000 } as const;

const playable = (quarters: number | null): number | null =>
  quarters !== null && quarters >= PLAYABLE.least && quarters <= PLAYABLE.most ? quarters : null;

function metronomeTempo(mark: XmlNode): number | null {
  const unit = QUARTERS[textOf(mark, 'beat-unit') ?? ''];
  const number = /\d+(?:\.\d+)?/.exec(textOf(mark, 'per-minute') ?? '')?.[0];
  const perMinute = readNumber(number);
  if (unit === undefined || perMinute === null) return null;
  const dots = childrenOf(mark, 'beat-unit-dot').length;
  return playable(perMinute * unit * (2 - 0.5 ** Math.min(dots, 4)));
}

/** Attributes of a `sound` that lead elsewhere in the piece (MusicXML 4.0), and the sign each stands for. */
const SOUNDS: readonly (readonly [attribute: string, sign: Navigation])[] = [
  ['segno', 'segno'],
  ['tocoda', 'to coda'],
  ['coda', 'coda'],
  ['fine', 'fine'],
  ['dacapo', 'D.C.'],
  ['dalsegno', 'D.S.'],
];

/**
 * The sign of the way through the piece that a direction is: by its words, else by what it says to players, else by
 * its drawing. A coda that is drawn within a bar is where the music leaves for it.
 * @param begins - whether the direction stands where its bar begins
 */
function navigationOf(
  said: readonly string[],
  drawn: readonly XmlNode[],
  sound: XmlNode | undefined,
  begins: boolean,
): Navigation | null {
  const inWords = said.map(readNavigation).find((sign) => sign !== null && sign !== 'coda');
  if (inWords !== undefined && inWords !== null) return inWords;
  const heard = SOUNDS.find(([attribute]) => (sound?.attributes[attribute] ?? 'no') !== 'no');
  if (heard !== undefined) return heard[1];
  if (drawn.some(({ name }) => name === 'segno')) return 'segno';
  const coda =
    drawn.some(({ name }) => name === 'coda') || said.some((text) => readNavigation(text) === 'coda');
  return coda ? (begins ? 'coda' : 'to coda') : null;
}

export interface ReadDirection {
  /** Quarter notes a minute. */
  readonly tempo: number | null;
  /** Long to short within a pair of eighths; 1 where the file says straight. */
  readonly swing: number | null;
  readonly rehearsal: string | null;
  readonly words: readonly string[];
  readonly navigation: Navigation | null;
}

function swingOf(sound: XmlNode | undefined): number | null {
  const swing = childOf(sound, 'swing');
  if (swing === undefined) return null;
  if (childOf(swing, 'straight') !== undefined) return 1;
  const [first, second] = [numberOf(swing, 'first'), numberOf(swing, 'second')];
  const eighths = (textOf(swing, 'swing-type') ?? 'eighth') === 'eighth';
  if (!eighths || first === null || second === null || second <= 0) return null;
  const ratio = first / second;
  return ratio >= 1 && ratio <= 4 ? ratio : null;
}

/**
 * What a `direction`, or a `sound` by itself, says.
 * @param begins - whether it stands where its bar begins
 */
export function readDirection(node: XmlNode, begins: boolean): ReadDirection {
  const sound = node.name === 'sound' ? node : childOf(node, 'sound');
  const types = childrenOf(node, 'direction-type').flatMap(({ children }) => children);
  const named = (name: string): readonly XmlNode[] => types.filter((type) => type.name === name);
  const mark = named('metronome')[0];
  const swing = swingOf(sound);
  const rehearsal = named('rehearsal')
    .map(({ text }) => text)
    .join(' ');
  const said = named('words').map(({ text }) => text);
  return {
    tempo:
      playable(readNumber(sound?.attributes.tempo)) ?? (mark === undefined ? null : metronomeTempo(mark)),
    swing,
    rehearsal: rehearsal === '' ? null : rehearsal,
    // The words beside a swing ratio only say it again.
    words:
      swing === null
        ? said.filter((text) => /[\p{L}\p{N}]/u.test(text) && readNavigation(text) === null)
        : [],
    navigation: navigationOf(said, types, sound, begins),
  };
}
