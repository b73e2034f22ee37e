import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { midiOf, ticks } from '../../src/core/base';
import { caretInLetters, chartInLetters } from '../../src/core/chart';
import { checkLesson, composePiece } from '../../src/core/composing';
import { FEEL_IDS, feelById, feelTempo } from '../../src/core/feel';
import {
  addPiece,
  changeLine,
  editChartBar,
  fitsBehind,
  keepBar,
  type Lesson,
  type LinePiece,
  linePiece,
  markTechnique,
  newLesson,
  putParkedBack,
  setChartText,
  setFeel,
  setLevel,
  setMetre,
  setTempo,
} from '../../src/core/lesson';
import { tempoWithin } from '../../src/core/lesson/commands/settings';
import type { Naming } from '../../src/core/theory';

const PIECE = 'piece-1';

function lessonWith(chart: string): Lesson {
  return composePiece(setChartText(newLesson('test', 'Test'), PIECE, chart), PIECE).lesson;
}

function line(lesson: Lesson): LinePiece {
  const piece = linePiece(lesson, PIECE);
  if (piece === null) throw new Error('the line piece is gone');
  return piece;
}

const ids = (lesson: Lesson) => line(lesson).bars.map((bar) => bar.id);
const written = lessonWith('| F | Dm | Gm | C7 |');

describe('another metre', () => {
  it('tells the tempo in its own beat, and the music is as fast as before', () => {
    const fast = setTempo(setFeel(written, PIECE, 'revival-ska'), PIECE, 160);
    const cut = setMetre(fast, PIECE, { count: 2, unit: 2 });
    expect(line(cut).tempo).toBe(80);
    expect(line(setMetre(cut, PIECE, { count: 4, unit: 4 })).tempo).toBe(160);
    expect(line(setFeel(cut, PIECE, 'two-beat')).tempo).toBe(58);
  });
});

describe('a feel of another metre', () => {
  it('brings its metre and its usual tempo, and the way back brings the line back', () => {
    const waltz = setFeel(written, PIECE, 'waltz');
    expect(line(waltz)).toMatchObject({ feel: 'waltz', metre: { count: 3, unit: 4 }, tempo: 120 });
    const ballad = setFeel(waltz, PIECE, 'ballad');
    expect(line(ballad)).toMatchObject({ metre: { count: 6, unit: 8 }, tempo: 58 });
    const back = setFeel(ballad, PIECE, 'rocksteady');
    expect(line(back).metre).toEqual({ count: 4, unit: 4 });
    expect(line(back).bars).toEqual(line(written).bars);
  });

  it('leaves a metre that it is played in, and the metre that is chosen after it', () => {
    const three = setMetre(written, PIECE, { count: 3, unit: 4 });
    expect(line(setFeel(three, PIECE, 'two-beat')).metre).toEqual({ count: 3, unit: 4 });
    const disco = setMetre(setFeel(three, PIECE, 'disco'), PIECE, { count: 3, unit: 4 });
    expect(line(disco)).toMatchObject({ feel: 'disco', metre: { count: 3, unit: 4 } });
  });
});

describe('what a line teaches', () => {
  const ticks = (lesson: Lesson) => [...line(lesson).techniques].sort();

  it('follows the feel as long as nobody chose it', () => {
    expect(ticks(written)).not.toContain('octave');
    const disco = setFeel(written, PIECE, 'disco');
    expect(ticks(disco)).toContain('octave');
    expect(ticks(setLevel(disco, PIECE, 4))).toEqual(ticks(disco));
    expect(ticks(setFeel(setLevel(disco, PIECE, 4), PIECE, 'early-ska'))).not.toContain('octave');
    expect(ticks(setFeel(disco, PIECE, 'early-ska'))).toEqual(ticks(written));
  });

  it('stays as it was chosen', () => {
    const chosen = markTechnique(written, PIECE, 'approach note', 'shown');
    expect(ticks(setFeel(chosen, PIECE, 'disco'))).toEqual(ticks(chosen));
  });
});

describe('bars that were only composed', () => {
  it('are parked without a word, those that a hand wrote or that are kept with one', () => {
    const told = (lesson: Lesson) =>
      checkLesson(lesson)
        .map(({ message }) => message)
        .join(' ');
    const other = setChartText(written, PIECE, '| Bb | Eb | Ab | Db |');
    expect(line(other).parked).toHaveLength(4);
    expect(told(other)).not.toContain('parked');
    const kept = keepBar(written, PIECE, 1, true);
    expect(told(setChartText(kept, PIECE, '| Bb | Eb | Ab | Db |'))).toContain(
      'One bar of the line is parked',
    );
  });
});

describe('an imported line without chords', () => {
  const imported = changeLine(
    setChartText(newLesson('test', 'Test'), PIECE, '| N.C. | N.C. | N.C. |'),
    PIECE,
    (piece) => ({
      ...piece,
      bars: piece.bars.map((bar, index) => ({
        ...bar,
        origin: 'hand',
        notes: [
          {
            start: ticks(index * 960),
            duration: ticks(960),
            pitch: { letter: 'C', alteration: 0, octave: 2 },
          },
        ],
      })),
    }),
  );

  it('comes under chords that are typed over all of it, key by key', () => {
    const starts = (lesson: Lesson) => line(lesson).bars.map(({ notes }) => notes[0]?.start ?? null);
    const text = '| C | F | G7 |';
    const typed = Array.from(text).reduce(
      (lesson, _, at) => setChartText(lesson, PIECE, text.slice(0, at + 1), at + 1),
      setChartText(imported, PIECE, '', 0),
    );
    expect(starts(typed)).toEqual([0, 960, 1920]);
    expect(line(typed).parked).toEqual([]);
    expect(line(typed).bars.map(({ harmony }) => harmony)).toEqual(['C@3840', 'F@3840', 'G7@3840']);
    expect(starts(setChartText(imported, PIECE, text, text.length))).toEqual([0, 960, 1920]);
  });
});

describe('an imported line over chords', () => {
  const start = (index: number) => ({
    start: ticks(index * 240),
    duration: ticks(240),
    pitch: { letter: 'C', alteration: 0, octave: 2 } as const,
  });
  const imported = changeLine(
    setChartText(newLesson('test', 'Test'), PIECE, '| Am | F | C | G |'),
    PIECE,
    (piece) => ({
      ...piece,
      bars: piece.bars.map((bar, index) => ({ ...bar, origin: 'hand', notes: [start(index)] })),
    }),
  );
  const starts = (lesson: Lesson) => line(lesson).bars.map(({ notes }) => notes[0]?.start ?? null);
  const typedOver = (text: string) =>
    Array.from(text).reduce(
      (lesson, _, at) => setChartText(lesson, PIECE, text.slice(0, at + 1), at + 1),
      imported,
    );

  it('keeps its notes bar by bar when the whole chart is selected and another typed', () => {
    for (const text of ['Dm | G7 | Bb | A', '| E | E | E | E |']) {
      const typed = typedOver(text);
      expect(starts(typed)).toEqual([0, 240, 480, 720]);
      expect(line(typed).parked).toEqual([]);
    }
    expect(starts(setChartText(setChartText(imported, PIECE, '', 0), PIECE, 'D | E', 5))).toEqual([0, 240]);
  });

  it('leaves a bar out that was taken out of its middle', () => {
    const without = setChartText(imported, PIECE, '| Am | F | G |');
    expect(starts(setChartText(without, PIECE, '| Am | F | G | E |'))).toEqual([0, 240, 720, null]);
  });
});

describe('an edit of the chart', () => {
  it('leaves every other bar of the line unchanged when a bar is put in front', () => {
    const edited = setChartText(written, PIECE, '| Bb | F | Dm | Gm | C7 |');
    expect(line(edited).bars.slice(1)).toEqual(line(written).bars);
    expect(line(edited).bars[0]?.notes).toEqual([]);
  });

  it('changes nothing in the line when only the spacing or the spelling of a symbol changes', () => {
    const edited = setChartText(written, PIECE, '|F|D- |Gmin|\n|C7|');
    expect(line(edited).bars).toEqual(line(written).bars);
    expect(line(edited).parked).toEqual([]);
  });

  it('keeps the notes of a bar whose chord is half typed, and has them when it is whole again', () => {
    const half = setChartText(written, PIECE, '| F | D? | Gm | C7 |');
    expect(line(half).bars[1]?.notes).toEqual(line(written).bars[1]?.notes);
    expect(line(setChartText(half, PIECE, '| F | Dm | Gm | C7 |')).bars).toEqual(line(written).bars);
  });

  it('leaves notes of the teacher’s own where they are when chords are typed over them, letter by letter', () => {
    const own = changeLine(setChartText(written, PIECE, '| N.C. | N.C. | N.C. | N.C. |'), PIECE, (piece) => ({
      ...piece,
      parked: [],
      bars: piece.bars.map((bar, index) => ({
        ...bar,
        origin: 'hand' as const,
        notes: line(written).bars[index]?.notes ?? [],
      })),
    }));
    const texts = ['| N.C. | F | N.C. | N.C. |', '| N.C. | Fm | N.C. | N.C. |', '| Bb C | Fm7 | N.C. | C? |'];
    const typed = texts.reduce((lesson, text) => setChartText(lesson, PIECE, text), own);
    // They may get another name over a chord, and sound as they did.
    const sounding = (lesson: Lesson) =>
      line(lesson).bars.map(({ id, notes }) => ({
        id,
        notes: notes.map(({ start, duration, pitch }) => ({ start, duration, midi: midiOf(pitch) })),
      }));
    expect(sounding(typed)).toEqual(sounding(own));
    expect(line(typed).parked).toEqual([]);
    const longer = setChartText(typed, PIECE, '| G | Bb C | Fm7 | N.C. | C? |');
    expect(
      line(longer)
        .bars.slice(1)
        .map(({ id }) => id),
    ).toEqual(line(own).bars.map(({ id }) => id));
    const second = editChartBar(longer, PIECE, 2, { kind: 'write', text: 'Fm9' });
    expect(sounding(second)[2]?.notes).toEqual(sounding(own)[1]?.notes);
  });

  it('parks the notes of a bar that went away, and takes them back when it returns', () => {
    const shorter = setChartText(written, PIECE, '| F | Dm | C7 |');
    expect(line(shorter).parked).toEqual([line(written).bars[2]]);
    const back = setChartText(shorter, PIECE, '| F | Dm | Gm | C7 |');
    expect(line(back).bars).toEqual(line(written).bars);
    expect(line(back).parked).toEqual([]);
  });

  it('loses no note whatever is typed: every bar with notes is in the line or parked', () => {
    const symbol = fc.constantFrom('F', 'Dm', 'Gm', 'C7', 'Bb', 'N.C.', '%', 'x?', 'F C7');
    const chart = fc.array(symbol, { maxLength: 9 }).map((bars) => `| ${bars.join(' | ')} |`);
    fc.assert(
      fc.property(fc.array(chart, { minLength: 1, maxLength: 5 }), (texts) => {
        let lesson = written;
        for (const text of texts) {
          lesson = setChartText(lesson, PIECE, text);
        }
        const kept = [...line(lesson).bars, ...line(lesson).parked].map((bar) => bar.id);
        expect(kept).toEqual(expect.arrayContaining(ids(written)));
        expect(new Set(kept).size).toBe(kept.length);
      }),
      { seed: 20260704 },
    );
  });

  it('parks the line when the metre no longer holds it', () => {
    const waltz = setMetre(written, PIECE, { count: 3, unit: 4 });
    expect(line(waltz).bars.every((bar) => bar.notes.length === 0)).toBe(true);
    expect(line(waltz).parked).toHaveLength(4);
    expect(line(setMetre(waltz, PIECE, { count: 4, unit: 4 })).bars).toEqual(line(written).bars);
  });

  it('tells by the caret which of several bars of one chord is new or gone', () => {
    const blues = lessonWith('Blues: ; slow\n| A7 | A7 | A7 | D7 |\n| A7 | A7 |');
    const { chartText, bars } = line(blues);
    const fresh = (lesson: Lesson) =>
      line(lesson).bars.flatMap(({ id }, index) => (bars.some((bar) => bar.id === id) ? [] : [index]));
    for (const [at, bar] of [
      [chartText.indexOf('A7'), 0],
      [chartText.indexOf('A7 | D7'), 2],
      [chartText.lastIndexOf('A7'), 5],
    ] as const) {
      const text = `${chartText.slice(0, at)}A7 | ${chartText.slice(at)}`;
      const longer = setChartText(blues, PIECE, text, at + 5);
      expect(fresh(longer)).toEqual([bar]);
      expect(line(longer).bars.filter((_, index) => index !== bar)).toEqual(bars);
      const shorter = setChartText(blues, PIECE, chartText.slice(0, at) + chartText.slice(at + 5), at);
      expect(line(shorter).bars).toEqual(bars.filter((_, index) => index !== bar));
    }
  });

  it('keeps every bar behind one that is typed before them, key by key', () => {
    const blues = lessonWith('| A7 | A7 | A7 | D7 |');
    let lesson = blues;
    [...'A7 | '].forEach((_, index) => {
      const text = `| ${'A7 | '.slice(0, index + 1)}A7 | A7 | A7 | D7 |`;
      lesson = setChartText(lesson, PIECE, text, 3 + index);
    });
    expect(line(lesson).chartText).toBe('| A7 | A7 | A7 | A7 | D7 |');
    expect(line(lesson).bars.slice(1)).toEqual(line(blues).bars);
  });

  it.each<[Naming, string, string, readonly number[]]>([
    ['german', 'H7 | ', '| H7 | H7 | H7 | D7 |', [2, 7, 12]],
    ['fixed do', 'La7 | ', '| La7 | La7 | La7 | Re7 |', [2, 8, 14]],
    ['fixed do', 'Solm | ', 'Solm | Solm | Solm | Do', [0, 7, 14]],
  ])('follows the caret in %s, too: %j typed into %j', (naming, added, typed, places) => {
    const before = lessonWith(chartInLetters(naming, typed));
    places.forEach((at, bar) => {
      let lesson = before;
      [...added].forEach((_, index) => {
        const text = typed.slice(0, at) + added.slice(0, index + 1) + typed.slice(at);
        const stored = chartInLetters(naming, text);
        const caret = caretInLetters(naming, text, at + index + 1, stored);
        lesson = setChartText(lesson, PIECE, stored, caret);
      });
      expect(line(lesson).bars).toHaveLength(line(before).bars.length + 1);
      expect(line(lesson).bars.filter((_, index) => index !== bar)).toEqual(line(before).bars);
    });
  });

  it('puts a bar back whose chord could not be read and has a blank in its brackets', () => {
    const own = changeLine(lessonWith('| F | C7(foo, bar) |'), PIECE, (piece) => ({
      ...piece,
      bars: piece.bars.map((bar) => ({ ...bar, notes: piece.bars[0]?.notes ?? [] })),
    }));
    const parked = editChartBar(own, PIECE, 1, { kind: 'remove' });
    const [away] = line(parked).parked;
    const back = putParkedBack(parked, PIECE, away?.id ?? '', 0);
    expect(line(back).chartText).toBe('| F | C7(foo, bar) |');
    expect(line(back).bars[1]).toBe(away);
  });

  it('lets a parked bar be put back behind any bar that is as long, with its chords', () => {
    const parked = setChartText(lessonWith('| F | Dm / / C7 | Bb |'), PIECE, '| F | Bb |(3/4) C |');
    const [away] = line(parked).parked;
    const id = away?.id ?? '';
    const back = putParkedBack(parked, PIECE, id, 1);
    expect(line(back).chartText).toBe('| F | Bb | Dm / / C7 |(3/4) C |');
    expect(line(back).bars[2]).toBe(away);
    expect(line(back).parked).toEqual([]);
    expect(line(back).bars.filter((_, index) => index !== 2)).toEqual(line(parked).bars);
    expect([1, 2].map((bar) => away && fitsBehind(line(parked), away, bar))).toEqual([true, false]);
    expect(putParkedBack(parked, PIECE, id, 2)).toBe(parked);
  });
});

describe('the tempo of a new line', () => {
  const tempoIn = (lesson: Lesson) => line(lesson).tempo;

  it('is the feel’s usual one whichever way the feel was chosen, until somebody chooses another', () => {
    const drop = setFeel(written, PIECE, 'one-drop');
    expect(tempoIn(drop)).toBe(138);
    expect(tempoIn(setFeel(setFeel(drop, PIECE, 'disco'), PIECE, 'early-ska'))).toBe(126);
    const chosen = setTempo(written, PIECE, 130);
    expect(tempoIn(setFeel(chosen, PIECE, 'one-drop'))).toBe(130);
    expect(tempoIn(setFeel(chosen, PIECE, 'rocksteady'))).not.toBe(130);
  });

  it('is so from any feel and metre to any other, before a chart is written and after', () => {
    const metres = [
      { count: 4, unit: 4 },
      { count: 3, unit: 4 },
      { count: 2, unit: 2 },
      { count: 6, unit: 8 },
    ] as const;
    for (const lesson of [newLesson('test', 'Test'), written]) {
      for (const [from, to] of FEEL_IDS.flatMap((one) => FEEL_IDS.map((other) => [one, other] as const))) {
        for (const metre of metres) {
          const set = setFeel(setMetre(setFeel(lesson, PIECE, from), PIECE, metre), PIECE, to);
          const usual = tempoWithin(feelTempo(feelById(to), line(set).metre).usual);
          expect(tempoIn(set), `${from}, ${metre.count}/${metre.unit}, ${to}`).toBe(usual);
        }
      }
    }
  });

  it('is so in another line beside it, and with a chart that comes first or brings a metre', () => {
    const swing = setFeel(newLesson('test', 'Test'), PIECE, 'walking-swing');
    expect(tempoIn(setChartText(swing, PIECE, '(3/4) | F | Dm |'))).toBe(
      feelTempo(feelById('walking-swing'), line(swing).metre).usual,
    );
    const lesson = addPiece(swing, 'line', PIECE);
    const id = lesson.pieces[1]?.id ?? '';
    expect(linePiece(lesson, id)?.tempo).toBe(tempoIn(swing));
    expect(linePiece(setFeel(lesson, id, 'disco'), id)?.tempo).toBe(feelById('disco').tempo.usual);
  });
});
