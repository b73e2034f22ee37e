import { parseChord } from '../theory';
import { linesOf, saidIn } from './lines';
import { readNavigation } from './navigation';
import { barSigns } from './paste-bars';
import { chordSigns, countedBars, isPlainChord, words } from './paste-chords';
import { timesAtEnd, timesIn, unbracketed } from './word-signs';

/*
 * What people paste is written with other signs than a chart: dots, dashes and commas for beats, `x4` after a last bar
 * line, chords in brackets within the words of a song. Each rule here turns one of them into the chart's own sign and
 * leaves everything else as it is (common practice, no source).
 */

/** Blanks of every width, and signs that are not seen. */
const seen = (line: string): string =>
  line.replace(/[\u00a0\u2000-\u200a\u202f\u205f\u3000]/g, ' ').replace(/[\u200b-\u200d\u2060\ufeff]/g, '');

/** Bar lines of other sheets: `‖`, `[|`, `|]`. */
const barLines = (line: string): string => line.replace(/‖|\[\||\|\]/g, '||');

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

/** A name, how often its part is played, and what follows: `Verse x2`, `Intro (x2): C F`. */
function nameAndTimes(line: string): {
  readonly called: string;
  readonly often: string;
  readonly rest: string;
} {
  for (const { index, 0: word } of line.matchAll(/\S+/g)) {
    const [sign = ''] = word.split(':', 1);
    const often = unbracketed(sign);
    const called = line.slice(0, index).trim();
    if (timesIn(often) !== null && NAME.test(called)) {
      const rest = line
        .slice(index + sign.length)
        .replace(/^:/, '')
        .trimStart();
      return { called, often, rest };
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
  const often = timesAtEnd(text);
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
