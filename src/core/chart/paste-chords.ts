import { parseChord } from '../theory';
import { isNumeral } from './bar-reader';
import { isNoChord, unbracketed } from './word-signs';

/* Single chords and their beats as other sheets write them; see `paste-signs.ts`. */

/** Whether a word is a chord or a numeral as the chart has them. */
export const isPlainChord = (word: string): boolean =>
  word !== '' && (parseChord(word).ok || isNumeral(word));

/** The words of a text, cut at blanks. */
export const words = (text: string): readonly string[] => text.split(/\s+/).filter((word) => word !== '');

const REPEATS_BAR = new Set(['./.', '∕', '〃', '𝄎', '//', 'ditto']);

/** What stands alone between two bar lines. */
function cell(text: string, isBarred: boolean): string {
  const alone = text.trim();
  if (REPEATS_BAR.has(alone) && isBarred) return text.replace(alone, '%');
  if (isNoChord(unbracketed(alone))) return text.replace(alone, 'N.C.');
  return text;
}

/** Where the run of these signs at the end of a text begins. */
export function runAtEnd(text: string, signs: string): number {
  let at = text.length;
  while (at > 0 && signs.includes(text.charAt(at - 1))) at -= 1;
  return at;
}

/** Quotes, stars and backticks around a chord, and a call behind it. */
function bare(word: string): string {
  const marks = /^["'*`_]{1,2}/.exec(word)?.[0] ?? '';
  const within = word.length - 2 * marks.length;
  const quoted = marks !== '' && within >= 1 && within <= 20 && word.endsWith(marks);
  const inner = quoted ? word.slice(marks.length, -marks.length) : word.replace(/!$/, '');
  return inner !== word && isPlainChord(inner) ? inner : word;
}

/** A chord and what belongs to it in a word of its own: `A minor`, `C maj7`, `C on E`, `C\E`. */
const joinedChords = (text: string): string =>
  text
    .replace(
      /\b([A-G](?:#|b|♯|♭|sharp|flat)?)[ \t](minor|major|min|maj|sus|add|dim|aug)(?=[\s\d|]|$)/g,
      (all, root, kind) => {
        const chord = `${root}${kind === 'minor' ? 'm' : kind === 'major' ? '' : kind}`;
        return chord.length < all.length ? chord : all;
      },
    )
    .replace(/\b([A-G])sharp/g, '$1#')
    .replace(/\b([A-G])flat/g, '$1b')
    .replace(/(\S)\\([A-G][#b♯♭]?)(?=\s|\||$)/g, '$1/$2')
    .replace(/(\S)[ \t]on[ \t]([A-G][#b♯♭]?)(?=\s|\||$)/g, '$1/$2')
    .replace(/(\S)[ \t]\((add|sus|maj|no|[b#♭♯])(\w{1,4})\)/g, '$1($2$3)');

/** Beats that hang on their chord, `C...F...` or `C---`, and how many beats a chord has, `C (2 beats)`. */
function beatsOf(word: string): string {
  const parts = word.match(/[A-G][^.,]{0,12}?(?:-{2,}|[.,]{2,}|$)/g);
  if (parts === null || parts.join('') !== word || !/-{2,}|[.,]{2,}/.test(word)) return word;
  const counted = parts.map((part) => {
    const end = Math.min(runAtEnd(part, '-'), runAtEnd(part, '.,'));
    const chord = part.length - end >= 2 ? part.slice(0, end) : part;
    return isPlainChord(chord)
      ? [chord, ...Array.from({ length: part.length - chord.length }, () => '/')].join(' ')
      : null;
  });
  return counted.includes(null) ? word : counted.join(' ');
}

/** Chords tied together by dashes, slashes or arrows: `C-F-G`, `ii-V-I`, `C/F/G/C`. */
function untied(word: string): string {
  if (isPlainChord(word)) return word;
  for (const [tie, fewest] of [
    [/[-–—>&]+/, 2],
    ['/', 3],
  ] as const) {
    const parts = word.split(tie);
    if (parts.length >= fewest && parts.every(isPlainChord)) return parts.join(' ');
  }
  return word;
}

/** `Cx4` is C four times, and a minor numeral needs no m: `iim7` is ii7. */
const oddWord = (word: string): string =>
  word
    .replace(/^([A-G][#b♯♭]?(?:m|7|m7)?)[x×*](\d{1,2})$/, '$1 x$2')
    .replace(/^(\d{1,2})[x×]([A-G].{0,8})$/, '$2 x$1')
    .replace(/^([b#♭♯]?(?:i{1,3}|iv|vi{0,2}))m(?=\d|$)/, '$1');

/** Dots, commas and dashes that stand for beats by themselves. */
function standingBeats(text: string, isBarred: boolean): string {
  const list = words(text);
  const runs = list.some((word, index) => /^[-–—]$/.test(word) && /^[-–—]$/.test(list[index + 1] ?? ''));
  return list
    .map((word) =>
      word === '.' || word === ',' || ((runs || isBarred) && /^[-–—]$/.test(word)) ? '/' : word,
    )
    .join(' ');
}

/** Numbers that count chords one by one, `1 C 2 F 3 G`: the chart counts its bars itself. */
function uncounted(list: readonly string[]): readonly string[] {
  const alternate =
    list.length >= 4 &&
    list.length % 2 === 0 &&
    list.every((word, index) => (index % 2 === 0 ? word === String(index / 2 + 1) : /^[A-G]/.test(word)));
  return alternate ? list.filter((_, index) => index % 2 === 1) : list;
}

/** One bar's or one line's chords in the chart's signs; as it is where nothing is foreign. */
export function chordSigns(text: string, isBarred: boolean): string {
  const joined = joinedChords(cell(text, isBarred)).replace(
    /(\S)[ \t]{1,3}\((\d{1,2})(?: ?beats?)?\)/g,
    (all: string, last: string, count: string) =>
      /[A-Za-z\d♭♯]/.test(last) && Number(count) > 0 && Number(count) < 13
        ? `${last}${' /'.repeat(Number(count) - 1)}`
        : all,
  );
  const before = words(joined);
  const counted = words(standingBeats(joined, isBarred));
  const list = uncounted(counted.flatMap((word) => words(untied(beatsOf(oddWord(bare(word)))))));
  const same = list.length === before.length && list.every((word, index) => word === before[index]);
  if (same) return joined;
  const [lead = ''] = /^\s*/.exec(joined) ?? [];
  return `${lead}${list.join(' ')}${/\s$/.test(joined) ? ' ' : ''}`;
}

/** Chords with their beats but without bar lines, counted into bars; null where they are not counted or fill one bar. */
export function countedBars(text: string, beats: number): string | null {
  const list = words(text).flatMap((word) => {
    const hung = /^([^/]{1,16})(\/{1,16})$/.exec(word);
    if (hung === null) return [word];
    const [, chord = '', strokes = ''] = hung;
    // Four strokes are four beats; three are those after the chord's own.
    return [chord, ...(strokes.length === beats ? strokes.slice(1) : strokes)];
  });
  if (!list.includes('/') || !list.every((word) => word === '/' || isPlainChord(word)) || list[0] === '/')
    return null;
  if (list.length <= beats) return null;
  const bars: string[] = [];
  let sounding = '';
  for (let from = 0; from < list.length; from += beats) {
    const [first = '', ...rest] = list.slice(from, from + beats);
    const chord = first === '/' ? sounding : first;
    bars.push(rest.every((word) => word === '/') ? chord : [chord, ...rest].join(' '));
    sounding = [chord, ...rest].findLast((word) => word !== '/') ?? '';
  }
  return `| ${bars.join(' | ')} |`;
}
