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

/** Attributes of a `sound` that lead elsewhere in the piece. */
const JUMPS = ['dacapo', 'dalsegno', 'tocoda', 'fine', 'segno', 'coda', 'forward-repeat'] as const;

/** Words that say the same. */
const JUMP_WORDS = /^\W*(?:(?:D\. ?C|D\. ?S|To Coda|Da Capo|Dal Segno)\b.*|Fine|Coda)\W*$/i;

export interface ReadDirection {
  /** Quarter notes a minute. */
  readonly tempo: number | null;
  /** Long to short within a pair of eighths; 1 where the file says straight. */
  readonly swing: number | null;
  readonly rehearsal: string | null;
  readonly words: readonly string[];
  readonly jumps: boolean;
  readonly dynamics: boolean;
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

/** What a `direction`, or a `sound` by itself, says. */
export function readDirection(node: XmlNode): ReadDirection {
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
    words: swing === null ? said.filter((text) => /[\p{L}\p{N}]/u.test(text) && !JUMP_WORDS.test(text)) : [],
    jumps:
      JUMPS.some((jump) => sound?.attributes[jump] !== undefined) ||
      said.some((text) => JUMP_WORDS.test(text)) ||
      named('segno').length > 0 ||
      named('coda').length > 0,
    dynamics: named('dynamics').length > 0 || named('wedge').length > 0,
  };
}
