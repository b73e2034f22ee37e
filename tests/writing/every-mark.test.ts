/**
 * Everything that bass players write, one row each: written with its key, it is drawn, printed, heard where it can be,
 * and comes back from MusicXML, text tab and, as far as it goes, MIDI.
 */
import { describe, expect, it } from 'vitest';
import { DYNAMIC_LEVELS, MARKS, type Mark, marksOf, midiOf, SIGNS } from '../../src/core/base';
import { writeMidi, writeMusicXml, writeTextTab } from '../../src/core/exchange';
import { type Lesson, type LineBar, type LineSheet, linePiece } from '../../src/core/lesson';
import { performanceOf } from '../../src/core/performance';
import { announce, COMMANDS, commandById, writeWord } from '../../src/core/writing';
import { engrave } from '../../src/score/engrave';
import { lineSheetOf, readBack } from '../exchange/read-back';
import { layOutForPrint } from '../handout/drawn';
import { NOTES_ONLY } from '../support/score-sheets';
import { Hand } from './hand';

const barsOf = (lesson: Lesson): readonly LineBar[] => {
  const piece = linePiece(lesson, lesson.pieces[0]?.id ?? '');
  if (piece === null) throw new Error('no line');
  return piece.bars;
};

/** Two bars of quarters up and down a chord, for marks of any kind. */
const plain = () => new Hand('| F | C7 |').press('1 3 5 3 1 3 5 3');

/** What rings does so under a note on another string; a slide upwards out of a note is plain where the next one is lower. */
const LINES: Partial<Record<Mark, () => Hand>> = {
  'let ring': () => new Hand('| F | C7 |').press('1 5 8 5 1 3 5 3'),
  'slide up': () => new Hand('| F | C7 |').press('1 5 3 5 1 3 5 3'),
};
const lineFor = (mark: Mark) => (LINES[mark] ?? plain)();

/** A mark on the second note of the first bar. */
function marked(mark: Mark): Hand {
  const hand = lineFor(mark);
  hand.pencil = { ...hand.pencil, bar: 0, tick: 960, next: null };
  return hand.take(commandById(`mark ${mark}`).gesture(hand.lesson, hand.pencil));
}

const drawn = (sheet: LineSheet, parts?: 'staff' | 'tab') =>
  JSON.stringify(
    engrave(sheet, { ...NOTES_ONLY, ...(parts === undefined ? {} : { parts }) }).systems.map(
      ({ ink }) => ink,
    ),
  );

const heard = (lesson: Lesson) => {
  const piece = linePiece(lesson, lesson.pieces[0]?.id ?? '');
  if (piece === null) throw new Error('no line');
  return performanceOf(piece, lineSheetOf(lesson), 'notes');
};

const midiFile = (lesson: Lesson) =>
  writeMidi({
    performance: heard(lesson),
    sheet: lineSheetOf(lesson),
    title: 'Marks',
    parts: new Set(['bass']),
  });

/** What a bar plays: start, length, pitch, marks, tie. */
const told = (bars: readonly LineBar[]) =>
  bars.map(({ notes }) =>
    notes.map(
      (note) =>
        `${note.start}+${note.duration} ${midiOf(note.pitch)} ${marksOf(note).join(' ')}${note.tiedOn === true ? ' ~' : ''}`,
    ),
  );

/** Fingers are a matter of the hand, and the rhythm section keeps its time under a fermata. */
const NOT_HEARD: readonly Mark[] = ['i', 'm', 'fermata'];

it('says a mark by the name that the score is told by, a hammer-on or a pull-off by the note that follows', () => {
  const said = (tick: number, mark: Mark) => {
    const hand = plain();
    hand.pencil = { ...hand.pencil, bar: 0, tick, next: null };
    return announce(commandById(`mark ${mark}`).gesture(hand.lesson, hand.pencil));
  };
  expect(said(0, 'hammer')).toMatch(/^Marked: hammer-on\. /);
  expect(said(1920, 'hammer')).toMatch(/^Marked: pull-off\. /);
  for (const mark of MARKS) if (mark !== 'hammer') expect(said(0, mark)).toContain(`: ${SIGNS[mark].word}. `);
});

it('has a key for each mark', () => {
  expect(
    COMMANDS.filter(({ id }) => id.startsWith('mark '))
      .map(({ id }) => id.slice(5))
      .sort(),
  ).toEqual([...MARKS].sort());
});

describe.each(MARKS)('%s', (mark) => {
  const without = lineFor(mark).lesson;
  const { lesson } = marked(mark);
  const sheet = lineSheetOf(lesson);
  const sign = mark === 'hammer' ? SIGNS['hammer-on'] : SIGNS[mark];

  it('stands at the note that it was written at', () => {
    expect(barsOf(lesson)[0]?.notes.map((note) => marksOf(note))).toEqual([[], [mark], [], []]);
  });

  it('is drawn on staff and tab, on either alone, and printed', () => {
    for (const parts of [undefined, 'staff', 'tab'] as const)
      expect(drawn(sheet, parts) === drawn(lineSheetOf(without), parts), String(parts)).toBe(false);
    const print = (each: Lesson) => JSON.stringify(layOutForPrint(each).pages);
    expect(print(lesson) === print(without)).toBe(false);
  });

  it('is heard where it can be, and as MIDI sends it', () => {
    const sound = (each: Lesson) => JSON.stringify(heard(each));
    expect(sound(lesson) === sound(without)).toBe(NOT_HEARD.includes(mark));
    if (!NOT_HEARD.includes(mark)) expect(midiFile(lesson)).not.toEqual(midiFile(without));
  });

  it('comes back from MusicXML in its own element', () => {
    const file = writeMusicXml(sheet, 'Marks');
    const { xml } = sign;
    const element =
      xml.in === 'play'
        ? 'mute'
        : xml.in === 'notehead'
          ? 'notehead'
          : xml.in === 'tied'
            ? 'tied type="let-ring"'
            : xml.element;
    expect(file).toContain(`<${element}`);
    expect(told(barsOf(readBack(file).lesson))).toEqual(told(barsOf(lesson)));
  });

  it('comes back from text tab by its letters', () => {
    const file = writeTextTab(sheet, 'Marks');
    expect(file).toContain(sign.text.text);
    expect(told(barsOf(readBack(file).lesson))).toEqual(told(barsOf(lesson)));
  });
});

const LENGTHS: readonly (readonly [name: string, keys: string, bar: string])[] = [
  ['a whole note', '1 ] ]', '0+3840'],
  ['half notes', '1 ] 5', '0+1920 1920+1920'],
  ['quarters', '1 3 5 3', '0+960 960+960 1920+960 2880+960'],
  ['eighths', '1 [ 3 5 3', '0+480 480+480 960+480 1440+480'],
  ['sixteenths', '1 [ [ 3 5 3', '0+240 240+240 480+240 720+240'],
  ['a dotted half note', '1 ] . 5', '0+2880 2880+960'],
  ['a dotted quarter and an eighth', '1 . 5', '0+1440 1440+480'],
  ['a dotted eighth and a sixteenth', '1 [ . 5', '0+720 720+240'],
  ['triplets of eighths', '1 [ t 3 5', '0+320 320+320 640+320'],
  ['triplets of quarters', '1 t 3 5', '0+640 640+640 1280+640'],
  ['silence between notes', '1 0 5 0', '0+960 1920+960'],
  ['a tie over the bar line', '1 ] 5 -', '0+1920 1920+1920~'],
];

describe.each(LENGTHS)('%s', (_, keys, bar) => {
  const { lesson } = new Hand('| F | C7 |').press(keys);
  const lengths = (each: Lesson) =>
    barsOf(each)[0]
      ?.notes.map(({ start, duration, tiedOn }) => `${start}+${duration}${tiedOn === true ? '~' : ''}`)
      .join(' ');

  it('is written by its keys, and drawn', () => {
    expect(lengths(lesson)).toBe(bar);
    expect(drawn(lineSheetOf(lesson)).length).toBeGreaterThan(500);
  });

  it.each([
    ['MusicXML', () => writeMusicXml(lineSheetOf(lesson), 'Lengths')],
    ['MIDI', () => midiFile(lesson)],
    ['text tab', () => writeTextTab(lineSheetOf(lesson), 'Lengths')],
  ] as const)('comes back from %s', (_file, write) => {
    expect(lengths(readBack(write()).lesson)).toBe(bar);
  });
});

/** Signs of a bar as a lesson keeps them. */
const signsOf = (lesson: Lesson) =>
  barsOf(lesson).map(({ dynamics = [], words = '' }) => ({ dynamics, words }));

describe('dynamics, hairpins and words', () => {
  const ways = {
    ...Object.fromEntries(
      DYNAMIC_LEVELS.map((level) => [
        level,
        () => {
          const hand = plain();
          hand.pencil = { ...hand.pencil, bar: 0, tick: 0, next: null };
          // From mezzo forte, where no sign is, up or down to the level.
          const steps = DYNAMIC_LEVELS.indexOf(level) - DYNAMIC_LEVELS.indexOf('mf');
          const keys = steps > 0 ? Array(steps).fill('Shift+G') : Array(-steps).fill('Shift+H');
          return hand.press((steps === 0 ? ['Shift+G', 'Shift+H'] : keys).join(' '));
        },
      ]),
    ),
    'a crescendo': () => plain().press('Shift+Enter Home Shift+G Shift+C'),
    'a diminuendo': () => plain().press('Shift+Enter Home Shift+G Shift+V'),
    'a word above the bar': () => {
      const hand = plain();
      return hand.take(writeWord('dig in')(hand.lesson, hand.pencil));
    },
  };

  it.each(Object.entries(ways))(
    '%s is drawn, printed and comes back from MusicXML and text tab',
    (name, write) => {
      const { lesson } = write();
      const without = plain().lesson;
      const sheet = lineSheetOf(lesson);
      expect(signsOf(lesson)).not.toEqual(signsOf(without));
      for (const parts of [undefined, 'staff', 'tab'] as const)
        expect(drawn(sheet, parts) === drawn(lineSheetOf(without), parts), String(parts)).toBe(false);
      const print = (each: Lesson) => JSON.stringify(layOutForPrint(each).pages);
      expect(print(lesson) === print(without)).toBe(false);
      const silent = name === 'mf' || name === 'a word above the bar';
      expect(JSON.stringify(heard(lesson)) === JSON.stringify(heard(without))).toBe(silent);
      expect(signsOf(readBack(writeMusicXml(sheet, 'Signs')).lesson)).toEqual(signsOf(lesson));
      expect(signsOf(readBack(writeTextTab(sheet, 'Signs')).lesson)).toEqual(signsOf(lesson));
    },
  );
});
