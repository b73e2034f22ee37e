import { SIGNS } from '../../core/base';
import { boxOf, glyphMark, type Mark, MUSIC_SIZE, moveMark, pathMark, textMark } from '../ink';
import { CAPITAL_HEIGHT, textWidth } from '../metrics/measure';
import type { ContentEvent } from '../notation/types';
import type { InkBox } from '../types';
import { eventsOf } from './joints';
import { CHORD_SHIFT } from './measure-bar';
import { playingSigns } from './over-tab';
import { type PlacedBar, xOfTick } from './placed';
import { type Skyline, skylineOf } from './skyline';
import { HALF_HEAD, STAFF_LEFT, type Style, THICKNESS } from './style';
import { swingMarks } from './swing';
import { symbolMark } from './symbols';

const CHORD_GAP = 7;
/** Ink this near beside a chord name would read as part of it. */
const CHORD_SIDE = 8;
const ABOVE_STAFF = 8;
/** A numeral or a triplet's figure this near after a chord name, beyond its own side, would read as part of it. */
const NUMERAL_SIDE = 16;
const SMALL_GAP = 5;
/** White over a fermata, beyond a chord name's own gap: its bow is no part of the letters. */
const FERMATA_AIR = 4;
/** A section's name or the feel right before a chord name would read as one with it. */
const HEADING_SIDE = 14;
const ENDING_GAP = 4;
const ENDING_ABOVE = 10;
const ENDING_HOOK = 5;
const ENDING_SHORT = 4;
/** A bar number stands right of the bracket's tip. */
const NUMBER_LEFT = STAFF_LEFT + 12;
const BOX_PADDING = 4;
const WAY_SIDE = 3;
/** White under the signs and words of the way: they are read apart from beams, chord names and the staff. */
const WAY_GAP = 9;
/** SMuFL's code points. */
const WAY_GLYPHS = { segno: 0xe047, coda: 0xe048 } as const;
/** The size of chord names that the music font's size goes with. */
const CHORD_SIZE = 21;
const LEAST_NAME_SHARE = 0.7;
const LEAST_WORD_ROOM = 90;
const LINE_HEIGHT = 1.15;
/** Slanted letters lean over their width. */
const ITALIC_SHARE = 1.05;

/** A row of texts that share a baseline, as low over the ink as all of them allow. */
function rowAbove(texts: readonly Mark[], ink: Skyline, gap: number, highest: number): readonly Mark[] {
  const shifts = texts.map(
    ({ box }) => ink.top(box.left - CHORD_SIDE, box.right + CHORD_SIDE, 0) - gap - box.bottom,
  );
  const shift = Math.min(highest, ...shifts);
  return texts.map((mark) => moveMark(mark, 0, shift));
}

/** One mark or a group of them, as low over the ink, and over `floor`, as it can stand. */
function groupAbove(marks: readonly Mark[], ink: Skyline, gap: number, side = 3, floor = 0): readonly Mark[] {
  const box = boxOf(marks);
  if (!box) return marks;
  const shift = ink.top(box.left - side, box.right + side, Math.min(0, floor)) - gap - box.bottom;
  return marks.map((mark) => moveMark(mark, 0, shift));
}

interface Above {
  readonly bars: readonly PlacedBar[];
  /** How the first bar is counted, where that is written. */
  readonly number: number | undefined;
  readonly right: number;
  /** `Swing eighths`, on the first system only. */
  readonly feel: string | null;
  readonly style: Style;
}

/** Chord names, bar number, section name, feel and repeat counts over the staff, each clear of all ink below it. */
export function marksAbove(
  staff: readonly Mark[],
  { bars, number, right, feel, style }: Above,
): readonly Mark[] {
  const { sizes } = style;
  const ink = skylineOf(staff);
  const done: Mark[] = [];
  const settle = (marks: readonly Mark[]): void => {
    for (const mark of marks) {
      done.push(mark);
      ink.add(mark.box);
    }
  };
  for (const { event, x } of eventsOf(bars)) {
    settle(groupAbove(openMarks(event, x), ink, OPEN_GAP));
    settle(groupAbove(fermataMarks(event, x), ink, SMALL_GAP));
  }
  if (style.options.parts === 'staff') settle(playingSigns(bars, () => done.concat(staff), style));
  settle(rowAbove(positionMarks(bars, style), ink, SMALL_GAP, -ABOVE_STAFF));
  for (const box of [...staff, ...done].flatMap(roomFromChords)) ink.add(box);
  const chords = rowAbove(chordMarks(bars, style), ink, CHORD_GAP, -ABOVE_STAFF);
  settle(chords);
  const [first] = bars;
  if (number !== undefined) {
    const text = textMark('bar-number', String(number), NUMBER_LEFT, 0, { size: sizes.small });
    settle(groupAbove([text], ink, SMALL_GAP));
  }
  for (const placed of bars) settle(groupAbove(timesMarks(placed, style), ink, SMALL_GAP));
  settle(rowAbove(endingMarks(bars, style), ink, ENDING_GAP, -ENDING_ABOVE));
  for (const group of wayMarks(bars, style)) settle(groupAbove(group, ink, WAY_GAP, CHORD_SIDE));
  for (const placed of bars) settle(groupAbove(wordMarks(placed, right, style), ink, SMALL_GAP));
  for (const { bar, x } of bars.slice(1)) {
    const name = bar.content.section;
    if (name) settle(groupAbove(boxedText(name, x, right, style), ink, SMALL_GAP, HEADING_SIDE));
  }
  const section = first?.bar.content.section;
  const box = section ? boxedText(section, STAFF_LEFT, right, style) : [];
  const boxRight = boxOf(box)?.right ?? STAFF_LEFT;
  const feelText = (x: number): readonly Mark[] => (feel ? feelMarks(feel, x, sizes.section) : []);
  const beside = section ? feelText(boxRight + 8) : feelText(STAFF_LEFT);
  // What is said of the whole line stands over its chords, even where there is room beside them.
  const floor = feel ? (boxOf(chords)?.top ?? 0) : 0;
  if ((boxOf(beside)?.right ?? 0) <= right) {
    // The name and the feel share their line, so that they are read together.
    settle(groupAbove([...box, ...beside], ink, SMALL_GAP, HEADING_SIDE, floor));
  } else {
    settle(groupAbove(box, ink, SMALL_GAP, HEADING_SIDE, floor));
    settle(groupAbove(feelText(STAFF_LEFT), ink, SMALL_GAP, HEADING_SIDE, floor));
  }
  return done.map((mark) => keepInside(mark, right));
}

/** The room that a chord name leaves to what would be read with it: a numeral, a triplet's figure, a fermata. */
function roomFromChords({ role, kind, box }: Mark): readonly InkBox[] {
  const figure = role === 'position' || (role === 'tuplet' && kind === 'text');
  if (figure) return [{ ...box, left: box.left - NUMERAL_SIDE }];
  return role === 'fermata' ? [{ ...box, top: box.top - FERMATA_AIR }] : [];
}

/** `x3` at the end of a repeat. */
const timesMarks = ({ right, bar }: PlacedBar, { sizes }: Style): readonly Mark[] =>
  bar.content.times === null
    ? []
    : [
        textMark('repeat-count', bar.content.times, right, 0, {
          size: sizes.section,
          bold: true,
          anchor: 'right',
        }),
      ];

/** The signs' size against the staff's music font: they stand out, and do not tower over the chord names. */
const WAY_SIGN = 0.75;

/** The signs of the way through the chart: each bar's at its beginning, and its words at its end. */
const wayMarks = (bars: readonly PlacedBar[], { sizes }: Style): readonly (readonly Mark[])[] =>
  bars
    .flatMap((placed) => [waySignMarks(placed, sizes.chord), wayWordMarks(placed, sizes.section)])
    .filter((marks) => marks.length > 0);

/** Segno and coda where a bar begins. */
function waySignMarks(placed: PlacedBar, size: number): readonly Mark[] {
  let left = placed.x + WAY_SIDE;
  return placed.bar.content.waySigns.map((sign) => {
    const mark = glyphMark('way', WAY_GLYPHS[sign], left, 0, MUSIC_SIZE * WAY_SIGN * (size / CHORD_SIZE));
    left = mark.box.right + WAY_SIDE;
    return mark;
  });
}

/** The coda's sign after `To Coda`, against the size of the words. */
const CODA_SHARE = 1.3;

/** `To Coda` with its sign, `Fine`, `D.S. al Coda` where a bar ends, flush with its bar line. */
function wayWordMarks(placed: PlacedBar, size: number): readonly Mark[] {
  const { wayWords, leadsToCoda } = placed.bar.content;
  const text = wayWords.join(', ');
  if (text === '') return [];
  const sign = leadsToCoda ? [glyphMark('way', WAY_GLYPHS.coda, 0, 0, CODA_SHARE * size)] : [];
  const [left, right] = [boxOf(sign)?.left ?? 0, boxOf(sign)?.right ?? 0];
  const end = placed.right - (leadsToCoda ? right - left + WAY_SIDE : 0);
  return [
    textMark('way', text, end, 0, { size, bold: true, anchor: 'right' }),
    ...sign.map((mark) => moveMark(mark, placed.right - right, 0)),
  ];
}

/** A name too long for the system is set smaller, and cut short when that is not enough. */
function fittingName(text: string, room: number, size: number): { text: string; size: number } {
  const smaller = Math.max(size * LEAST_NAME_SHARE, (size * room) / textWidth(text, size, true));
  if (smaller >= size) return { text, size };
  let shown = text;
  while (shown.length > 1 && textWidth(`${shown}…`, smaller, true) > room) shown = shown.slice(0, -1);
  return { text: shown === text ? text : `${shown.trimEnd()}…`, size: smaller };
}

const OPEN_GAP = 3;
const OPEN_RADIUS = 3.8;

/** A circle over an open hi-hat. */
function openMarks({ heads = [] }: ContentEvent, x: number): readonly Mark[] {
  if (!heads.some(({ open }) => open)) return [];
  const r = OPEN_RADIUS;
  const arc = r * 0.5523;
  const circle = pathMark(
    'articulation',
    [
      { command: 'M', points: [-r, 0] },
      { command: 'C', points: [-r, -arc, -arc, -r, 0, -r] },
      { command: 'C', points: [arc, -r, r, -arc, r, 0] },
      { command: 'C', points: [r, arc, arc, r, 0, r] },
      { command: 'C', points: [-arc, r, -r, arc, -r, 0] },
      { command: 'Z', points: [] },
    ],
    THICKNESS.staff,
  );
  // Right over the stem, which stands at the right of the head.
  return [moveMark(circle, x + HALF_HEAD, 0)];
}

/** A fermata over its note or rest. */
function fermataMarks({ signs }: ContentEvent, x: number): readonly Mark[] {
  return signs.flatMap((sign) => {
    const { drawn } = SIGNS[sign];
    if (drawn.as !== 'over the staff') return [];
    const mark = glyphMark('fermata', drawn.glyph, 0, 0);
    return [moveMark(mark, x - (mark.box.left + mark.box.right) / 2, 0)];
  });
}

/** A word above a bar, in as many lines as the room to the right asks for. */
function wordMarks(placed: PlacedBar, right: number, { sizes }: Style): readonly Mark[] {
  const { words } = placed.bar.content;
  if (words === null) return [];
  const x = xOfTick(placed, 0) - CHORD_SHIFT;
  const size = sizes.degree;
  const room = Math.max(right - x, LEAST_WORD_ROOM);
  const lines: string[] = [];
  for (const word of words.split(' ')) {
    const line = lines.at(-1);
    const longer = line === undefined ? word : `${line} ${word}`;
    if (line !== undefined && textWidth(longer, size) * ITALIC_SHARE <= room)
      lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines.map((text, index) =>
    textMark('words', text, x, (index - lines.length + 1) * size * LINE_HEIGHT, { size, italic: true }),
  );
}

/** Brackets over endings, with their numbers. */
function endingMarks(bars: readonly PlacedBar[], { sizes }: Style): readonly Mark[] {
  const size = sizes.section;
  const top = -size - ENDING_HOOK;
  return bars.flatMap((placed, index) => {
    const { ending } = placed.bar.content;
    if (!ending) return [];
    const left = (index === 0 ? placed.signs : placed.x) + (ending.text ? 1 : 0);
    const right = placed.right - (ending.stops ? ENDING_SHORT : 0);
    const hook = (x: number) => ({ command: 'L', points: [x, 0] }) as const;
    const line = pathMark(
      'ending',
      [
        { command: 'M', points: [left, ending.text ? 0 : top] },
        { command: 'L', points: [left, top] },
        { command: 'L', points: [right, top] },
        ...(ending.stops === 'closed' ? [hook(right)] : []),
      ],
      THICKNESS.box,
    );
    const number = textMark('ending', ending.text, left + ENDING_HOOK, -ENDING_HOOK + 1, { size });
    return ending.text ? [line, number] : [line];
  });
}

/** A long name at the right end is moved left rather than clipped. */
function keepInside(mark: Mark, right: number): Mark {
  return mark.box.right > right ? moveMark(mark, right - mark.box.right, 0) : mark;
}

/** `Swing eighths` and what it means for the notes. */
function feelMarks(feel: string, x: number, size: number): readonly Mark[] {
  const words = textMark('feel', feel, x, 0, { size, bold: true });
  return [words, ...swingMarks(words.box.right + size * 0.6, size)];
}

/** White that two labelled positions must have between them. */
const LABEL_GAP = 6;

/**
 * The hand's position in Roman numerals over the note at which it is taken, labelled, so that it is not read as a
 * chord's numeral; without the label where positions follow each other too closely for it.
 */
function positionMarks(bars: readonly PlacedBar[], { options, sizes }: Style): readonly Mark[] {
  if (options.positions !== true) return [];
  const style = { size: sizes.small, anchor: 'middle' } as const;
  const taken = eventsOf(bars).filter(({ event }) => event.position !== '');
  const plain = taken.map(({ event, x }) => textMark('position', event.position, x, 0, style));
  let until = Number.NEGATIVE_INFINITY;
  return taken.flatMap(({ event, x }, index) => {
    const labelled = textMark('position', `pos. ${event.position}`, x, 0, style);
    const next = plain[index + 1]?.box.left ?? Number.POSITIVE_INFINITY;
    const fits = labelled.box.left >= until + LABEL_GAP && labelled.box.right + LABEL_GAP <= next;
    const mark = fits ? labelled : plain[index];
    until = mark?.box.right ?? until;
    return mark ?? [];
  });
}

function chordMarks(bars: readonly PlacedBar[], { sizes }: Style): readonly Mark[] {
  return bars.flatMap((placed, index) =>
    placed.bar.content.chords
      .filter(({ again, tick }) => !again || (index === 0 && tick === 0))
      .map(({ tick, parts }) =>
        symbolMark('chord', parts, xOfTick(placed, tick) - CHORD_SHIFT, { size: sizes.chord, bold: true }),
      ),
  );
}

function boxedText(name: string, x: number, limit: number, { sizes }: Style): readonly Mark[] {
  const edge = THICKNESS.box / 2;
  const { text, size } = fittingName(name, limit - x - 2 * (BOX_PADDING + edge), sizes.section);
  const mark = textMark('section', text, x + BOX_PADDING + edge, 0, { size, bold: true });
  const left = x + edge;
  const right = mark.box.right + BOX_PADDING;
  const top = -CAPITAL_HEIGHT * size - BOX_PADDING;
  const bottom = Math.max(mark.box.bottom, 0) + BOX_PADDING;
  return [
    mark,
    pathMark(
      'section',
      [
        { command: 'M', points: [left, top] },
        { command: 'L', points: [right, top] },
        { command: 'L', points: [right, bottom] },
        { command: 'L', points: [left, bottom] },
        { command: 'Z', points: [] },
      ],
      THICKNESS.box,
    ),
  ];
}
