import { parseChord } from '../theory';
import { isNumeral } from './bar-reader';
import { linesOf, saidIn } from './lines';
import { readNavigation } from './navigation';

/*
 * What people paste is written with other signs than a chart: dots, dashes and commas for beats, `x4` after a last bar
 * line, chords in brackets within the words of a song. Each rule here turns one of them into the chart's own sign and
 * leaves everything else as it is (common practice, no source).
 */

const isPlainChord = (word: string): boolean => word !== '' && (parseChord(word).ok || isNumeral(word));

const words = (text: string): readonly string[] => text.split(/\s+/).filter((word) => word !== '');

/** Blanks of every width, and signs that are not seen. */
const seen = (line: string): string =>
  line.replace(/[\u00a0\u2000-\u200a\u202f\u205f\u3000]/g, ' ').replace(/[\u200b-\u200d\u2060\ufeff]/g, '');

/** Bar lines of other sheets: `‖`, `[|`, `|]`. */
const barLines = (line: string): string => line.replace(/‖|\[\||\|\]/g, '||');

const REPEATS_BAR = new Set(['./.', '∕', '〃', '𝄎', '//', 'ditto']);
const TIMES_WORDS = /^(?:repeat|play)?\s*(\d{1,2})\s*times?$/i;

/** What stands alone between two bar lines. */
function cell(text: string, isBarred: boolean): string {
  const alone = text.trim();
  if (REPEATS_BAR.has(alone) && isBarred) return text.replace(alone, '%');
  if (/^\(?(?:no chord|n\.?c\.?)\)?$/i.test(alone)) return text.replace(alone, 'N.C.');
  return text;
}

/** Where the run of these signs at the end of a text begins. */
function runAtEnd(text: string, signs: string): number {
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
function chordSigns(text: string, isBarred: boolean): string {
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

/** `[C]Hello my [F]friend`: the chords, and the words behind a semicolon. */
function wordsApart(line: string): readonly string[] | null {
  const inside = [...line.matchAll(/\[([^\]]{1,12})\]/g)].map(([, chord = '']) => chord);
  if (inside.length === 0 || !inside.every((chord) => parseChord(chord).ok)) return null;
  const rest = line
    .replace(/\[[^\]]{1,12}\]/g, '')
    .replace(/\s+/g, ' ')
    .trim();
  if (rest === '' && inside.length === 1) return null;
  return rest === '' ? [inside.join(' ')] : [inside.join(' '), `; ${rest}`];
}

/** `x4`, `(2x)`, `repeat`, `4 times`: how often what stands before is played; null for anything else. */
function timesOf(text: string): number | null {
  const plain = text
    .trim()
    .replace(/^\((.{1,20})\)$/, '$1')
    .trim();
  const count =
    /^[x×](\d{1,2})$/.exec(plain)?.[1] ?? /^(\d{1,2})[x×]$/.exec(plain)?.[1] ?? TIMES_WORDS.exec(plain)?.[1];
  if (count !== undefined) return Number(count);
  return /^repeat$/i.test(plain) ? 2 : null;
}

const closed = (cells: readonly string[], times: number): string =>
  `|: ${cells.map((each) => each.trim()).join(' | ')} :|${times > 2 ? ` x${times}` : ''}`;

/** Whether bars are left empty for the one before: not the one that is being typed, which has no bars behind it. */
function hasGaps(cells: readonly string[]): boolean {
  const last = cells.findLastIndex((each) => each.trim() !== '');
  return (
    cells.some((each) => each.trim() === '') &&
    (last < cells.length - 2 || cells.slice(0, last).some((each) => each.trim() === ''))
  );
}

/** The bars with the bar lines that the line had at its ends. */
function betweenBarLines(line: string, cells: readonly string[]): string {
  const [start = ''] = /^\s*\|*/.exec(line) ?? [];
  const end = line.slice(runAtEnd(line.trimEnd(), '|'));
  return start.trim() === '' && end === line ? line : `${start}${cells.join('|')}${end}`;
}

/** Bars whose repeats, jumps and gaps are written in other signs; the line as it is where none is. */
function barSigns(line: string): string {
  if (line.includes(':'))
    return line.replace(/\|([^|]*)/g, (_, text: string) => `|${chordSigns(text, true)}`);
  const begun = line.trim().replace(/^\|+/, '');
  const inner = begun.slice(0, runAtEnd(begun, '|'));
  const cells = inner.split('|');
  const gaps = hasGaps(cells);
  let changed = false;
  let open: string[] = [];
  const done: string[] = [];
  for (const [index, each] of cells.entries()) {
    const times = timesOf(each);
    const sign = readNavigation(each.trim().replace(/^\(|\)$/g, ''));
    if (times !== null && times > 0 && open.length > 0) {
      done.push(closed(open, times));
      open = [];
      changed = true;
    } else if (sign !== null && open.length > 0) {
      open.push(`${open.pop()?.trim() ?? ''} (${sign})`);
      changed = true;
    } else if (each.trim() === '' && gaps && index > 0) {
      open.push(' % ');
      changed = true;
    } else open.push(chordSigns(each, true));
  }
  if (!changed) return betweenBarLines(line, open);
  const rest = open.length === 0 ? [] : [`| ${open.map((each) => each.trim()).join(' | ')} |`];
  return [...done, ...rest].join(' ');
}

/** Chords with their beats but without bar lines, counted into bars; null where they are not counted or fill one bar. */
function countedBars(text: string, beats: number): string | null {
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

/** A number or `Bar 1:` in front of a line, and what stands behind it. */
const NUMBERED = /^\s*(?:bars? ?|m\.? ?)?(\d{1,3})(?:[.:)]\s*|\s+)(\S.*)$/i;

/** The lines whose numbers only count: rising from the first, each before chords in letters. */
function withoutNumbers(lines: readonly string[]): readonly string[] {
  if (lines.some((line) => line.includes(':|'))) return lines;
  const filled = lines.filter((line) => line.trim() !== '');
  const read = filled.map((line) => NUMBERED.exec(saidIn(line)));
  const numbers = read.map((found) => Number(found?.[1] ?? Number.NaN));
  const counts =
    filled.length > 1 &&
    (numbers[0] === 1 || numbers[0] === 0) &&
    numbers.every((number, index) => index === 0 || number > (numbers[index - 1] ?? 0)) &&
    read.every((found) => words((found?.[2] ?? '').replace(/\|/g, ' ')).every((word) => !/^\d/.test(word)));
  if (!counts) return lines;
  return lines.map((line) => {
    const found = NUMBERED.exec(saidIn(line));
    return found === null
      ? line
      : `${(found[2] ?? '').trim()} ; ${found[1]}${line.slice(saidIn(line).length).replace(';', ',')}`;
  });
}

/** Letters that mark the parts, `A` over its chords or in front of them, in the order of the alphabet. */
function withLetters(lines: readonly string[]): readonly string[] {
  const marks = lines.flatMap((line, index) => {
    const [, letter, rest = ''] = /^([A-H])(?:(?: {2,}|\t)(\S.*))?$/.exec(line.trimEnd()) ?? [];
    const next = lines.slice(index + 1).find((each) => each.trim() !== '') ?? '';
    const below = rest === '' ? next : rest;
    return letter !== undefined && words(below).length > 1 && words(below).every(isPlainChord)
      ? [{ index, letter, rest }]
      : [];
  });
  if (marks.length < 2 || marks.some(({ letter }, place) => letter !== 'ABCDEFGH'[place])) return lines;
  return lines.flatMap((line, index) => {
    const mark = marks.find((each) => each.index === index);
    return mark === undefined ? [line] : [`${mark.letter}:`, ...(mark.rest === '' ? [] : [mark.rest])];
  });
}

const NAME_FIRST = /^\s*(?:\[([^\]|]{2,40})\]|\(([^)|]{2,40})\)|([\p{L}][\p{L}\d ]{1,24})\s[-–—])\s+(\S.*)$/u;
const NAME = /^\p{L}[\p{L}\d -]{1,24}$/u;
const TIMES_FIRST = /^\(?([x×]\d{1,2}|\d{1,2}[x×])\)?:?/u;

/** A name, how often its part is played, and what follows: `Verse x2`, `Intro (x2): C F`. */
function nameAndTimes(line: string): {
  readonly called: string;
  readonly often: string;
  readonly rest: string;
} {
  for (const { index, 0: word } of line.matchAll(/\S+/g)) {
    const times = TIMES_FIRST.exec(word);
    const called = line.slice(0, index).trim();
    if (times !== null && NAME.test(called)) {
      const rest = line.slice(index + times[0].length).trimStart();
      return { called, often: times[1] ?? '', rest };
    }
  }
  return { called: '', often: '', rest: '' };
}

/** What parts of a tune are called here: by a usual word, or as this text calls them. */
export interface PartNames {
  readonly isName: (text: string) => boolean;
  /** A part of this text. */
  readonly isKnown: (text: string) => boolean;
}

/** Chords with their comment taken for chords, `C; F; G`. */
function afterSemicolons(said: string, comment: string): string | null {
  const chords = comment
    .slice(1)
    .split(';')
    .map((each) => each.trim());
  const all = [said.trim(), ...chords];
  return comment !== '' && all.every((each) => parseChord(each).ok) ? all.join(' ') : null;
}

/** The name in front of a line, how often its part is played, and what is left; null without one. */
function headed(
  line: string,
  { isName }: PartNames,
): { readonly head: string; readonly rest: string } | null {
  const named = NAME_FIRST.exec(line);
  const name = (named?.[1] ?? named?.[2] ?? named?.[3] ?? '').trim();
  if (isName(name)) return { head: `${name}:`, rest: named?.[4] ?? '' };
  const { called, often, rest } = nameAndTimes(line);
  if (isName(called)) {
    return rest === ''
      ? { head: `${called}: ; ${often}`, rest }
      : { head: `${called}:`, rest: `${rest} ${often}` };
  }
  const [, metre, bars = ''] = /^\s*(\d{1,2}\/\d{1,2})\s+(\S.*)$/.exec(line) ?? [];
  return metre === undefined ? null : { head: `(${metre})`, rest: bars };
}

/** Chords in brackets that belong together, and words that say how often they are played: `(C F) x2`, `C F repeat`. */
function repeatedChords(line: string): string {
  const text = line.trim();
  const often = /\(?(?:[x×]\d{1,2}|\d{1,2}[x×])\)?$/.exec(text)?.[0] ?? '';
  const group = text.slice(0, text.length - often.length).trimEnd();
  const inner = /^[([{]/.test(group) && /[)\]}]$/.test(group) ? group.slice(1, -1) : '';
  if (inner.length >= 3 && inner.length <= 200 && words(inner).every(isPlainChord))
    return `${inner} ${often}`;
  const [, chords = '', count] =
    /^(.{1,200}?)\s(?:repeat(?: (\d{1,2}) times)?|(?:play )?(\d{1,2}) times)\s*$/i.exec(line) ?? [];
  const times = count ?? /(\d{1,2}) times\s*$/i.exec(line)?.[1] ?? '2';
  return chords !== '' && words(chords).every(isPlainChord) ? `${chords} x${times}` : line;
}

/** A line in the chart's signs; several where names or words stand with the chords. */
function lineSigns(line: string, beats: number, names: PartNames): readonly string[] {
  const said = saidIn(line);
  const comment = line.slice(said.length);
  const chords = afterSemicolons(said, comment);
  if (chords !== null) return [chords];
  const behind = comment === '' ? '' : ` ${comment}`;
  const plain = repeatedChords(barLines(said));
  const [first, ...others] = wordsApart(plain) ?? [];
  if (first !== undefined) return [first + behind, ...others];
  const head = headed(plain, names);
  if (head !== null) {
    return head.rest === ''
      ? [`${head.head}${behind}`]
      : [head.head, ...lineSigns(`${head.rest}${behind}`, beats, names)];
  }
  const again = /^repeat (?:the )?(\S.{1,30})$/i.exec(plain.trim().replace(/\.$/, ''))?.[1] ?? '';
  if (names.isKnown(again)) return [`${again}${behind}`];
  const signs = plain.includes('|') ? barSigns(plain) : chordSigns(plain, false);
  const written = plain.includes('|') ? signs : (countedBars(signs, beats) ?? signs);
  return [written === said ? line : `${written.trimEnd()}${behind}`];
}

/** A jump on a line of its own belongs to the bar before it. */
function withJumps(lines: readonly string[]): readonly string[] {
  const done: string[] = [];
  for (const line of lines) {
    const sign = readNavigation(line.trim().replace(/^\(|\)$/g, ''));
    const before = done.at(-1) ?? '';
    const end = before.lastIndexOf('|');
    if (sign === null || end <= before.indexOf('|') || before.includes(';')) done.push(line);
    else done[done.length - 1] = `${before.slice(0, end).trimEnd()} (${sign}) ${before.slice(end)}`;
  }
  return done;
}

/**
 * A pasted text with the chart's own signs in place of those of other sheets. What is a chart's already, and what is not
 * understood, stays as it is; words are moved behind semicolons and never dropped.
 * @param beats of a bar, by which chords are counted that stand with their beats but without bar lines
 */
export function inChartSigns(text: string, beats: number, names: PartNames): string {
  const lines = withLetters(withoutNumbers(linesOf(seen(text))));
  return withJumps(lines.flatMap((line) => lineSigns(line, beats, names))).join('\n');
}
