import { describe, expect, test } from 'vitest';
import { type LineNote, marksOf, midiOf } from '../../src/core/base';
import { harmonyText } from '../../src/core/chart';
import { writeMidi, writeMusicXml } from '../../src/core/exchange';
import {
  deriveSheet,
  type Lesson,
  type LinePiece,
  type LineSheet,
  linePiece,
  setFeel,
} from '../../src/core/lesson';
import { performanceOf } from '../../src/core/performance';
import { lineSheetOf, readBack } from '../exchange/read-back';
import { Hand } from './hand';

/** Lines of our own, as a teacher writes them with the keys of the scheme, a bar a line; how often they are played. */
const LINES = [
  {
    name: 'a repeat in 4/4 with triplets, a tie over the bar line, ghost notes, a slide and a hammer-on',
    times: 2,
    chart: '|: F | Dm7 | Gm7 | C7 | F/A | Bb | C7 | F :|',
    bars: [
      '1 [ t 3 5 8 t ] 5 3',
      '1 [ , x , 3 5 , x 1 ] -',
      '5 [ 1 3 \\ 5 3 1',
      '1 ] t 3 5 7 ] t',
      '1 [ 3 5 k 6',
      '1 ] 5 y',
      '1 > [ 3 [ 5 , x 3 [ 1 3 5 3 1',
      '1 ] ] ] w 0',
    ],
    looked: {
      bar: 1,
      notes:
        '38@0+480, 38@480+480 ghost, 38@960+480, 41@1440+480, 45@1920+480, 45@2400+480 ghost, 50@2880+960 ~',
    },
  },
  {
    name: '12/8 with ties over the bar line, silence and a ghost note',
    times: 1,
    chart: '(12/8) | Am | Dm | E7 | Am | F | Dm | E7 | Am |',
    bars: [
      '1 5 [ 8 ] 5 [ 3 , 5 3 1 3',
      '1 x 3 5 1 ] 5 [ 0 5 , 3 5 3 -',
      '5 3 1 ] ] 5 1',
      '1 5 8 0',
      '1 ] 5',
      '1 [ 3 5 , -',
      '5 1 3',
      '1 ] ]',
    ],
    looked: { bar: 5, notes: '38@0+1440, 41@1440+1440, 45@2880+1440, 45@4320+1440 ~' },
  },
  {
    name: '3/4 after a pickup, with a triplet of quarters, a tie and a slide',
    times: 1,
    chart: '(3/4) (1) D7 | G | Em | Am | D7 | G | Em | Am | G |',
    bars: [
      '5 [ 3',
      '1 ] 3 5',
      '1 t 3 5 3 t',
      '1 3 ] -',
      '1 [',
      '1 [ 3 x 5 , 6 \\ 5',
      '1 ] . 3',
      '1 5',
      '1 ]',
    ],
    looked: { bar: 2, notes: '40@0+640, 43@640+640, 47@1280+640, 43@1920+960' },
  },
] as const;

function written({ chart, bars }: (typeof LINES)[number]): { piece: LinePiece; sheet: LineSheet } {
  const hand = new Hand(chart);
  hand.lesson = setFeel(hand.lesson, hand.pencil.pieceId, 'steppers');
  bars.forEach((keys, bar) => {
    for (const key of keys.split(' ')) {
      hand.press(key);
      if (hand.refusal !== null) throw new Error(`Bar ${bar}, ${key}: ${hand.refusal}`);
    }
    if (hand.pencil.bar === bar && bar < bars.length - 1) hand.press('Enter');
  });
  const piece = linePiece(hand.lesson, hand.pencil.pieceId);
  const sheet = piece && deriveSheet(piece, hand.lesson.instrument, hand.lesson.noteNames);
  if (piece === null || sheet?.kind !== 'line') throw new Error('no line');
  return { piece, sheet };
}

const noteText = (note: LineNote): string =>
  [
    `${midiOf(note.pitch)}@${note.start}+${note.duration}`,
    ...(note.tiedOn === true ? ['~'] : []),
    ...marksOf(note),
  ].join(' ');
const barTexts = ({ bars }: LinePiece) => bars.map(({ notes }) => notes.map(noteText).join(', '));

/** When each note of a bar begins, and which it is: marks shorten what MIDI tells of its length. */
const onsets = (bar: LinePiece['bars'][number]): string =>
  bar.notes.map(({ pitch, start }) => `${midiOf(pitch)}@${start}`).join(', ');

const chartTexts = ({ chart: { bars } }: LineSheet) =>
  bars.map(({ number, metre, spans, repeatStart, repeatEnd }) =>
    [
      `${number}: ${metre.count}/${metre.unit}`,
      ...spans.map(({ start, harmony }) => `${harmonyText(harmony)}@${start}`),
      repeatStart,
      repeatEnd,
    ].join(' '),
  );

function lineOf(lesson: Lesson): LinePiece {
  const piece = linePiece(lesson, lesson.pieces[0]?.id ?? '');
  if (piece === null) throw new Error('no line');
  return piece;
}

describe.each(LINES)('$name', (line) => {
  const { piece, sheet } = written(line);

  test('is whole, bar by bar', () => {
    expect(piece.bars.filter(({ over }) => over !== undefined)).toEqual([]);
    expect(barTexts(piece)[line.looked.bar]).toBe(line.looked.notes);
  });

  test('comes back from MusicXML note by note, with its chart', () => {
    const { lesson } = readBack(writeMusicXml(sheet, 'By hand'));
    expect(barTexts(lineOf(lesson))).toEqual(barTexts(piece));
    expect(chartTexts(lineSheetOf(lesson))).toEqual(chartTexts(sheet));
  });

  test('comes back from MIDI as it is played', () => {
    const performance = performanceOf(piece, sheet, 'notes');
    const { lesson } = readBack(
      writeMidi({ performance, sheet, title: 'By hand', parts: new Set(['bass']) }),
    );
    const played = Array.from({ length: line.times }, () => piece.bars.map(onsets)).flat();
    expect(lineOf(lesson).bars.slice(0, played.length).map(onsets)).toEqual(played);
  });
});
