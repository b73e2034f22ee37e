import { describe, expect, test } from 'vitest';
import { barTicks, midiOf } from '../../src/core/base';
import { FEEL_IDS, type FeelId, feelById } from '../../src/core/feel';
import { deriveSheet, type LineSheet, newLesson, newLinePiece } from '../../src/core/lesson';
import { buildPerformance, type WrittenPart, writtenPart } from '../../src/core/performance';

function sheetWith(feel: FeelId, chartText: string): LineSheet {
  const { instrument } = newLesson('band', 'Band');
  const piece = newLinePiece('line', 'Line');
  const sheet = deriveSheet(
    { ...piece, feel, metre: feelById(feel).metres[0]?.metre ?? piece.metre, chartText },
    instrument,
    'letters',
  );
  if (sheet.kind !== 'line') throw new Error('a line has the sheet of a line');
  return sheet;
}

const CHART = 'Verse:\n| F | B♭m7 | C7 F/A | Dm |\n|: Gm7 | C7 :|';

const played = (sheet: LineSheet) =>
  buildPerformance(sheet, { tempo: sheet.tempo, countIn: 0, passage: null });

/** Each written bar as it is played the first time, from its beginning to its end. */
const firstTimes = (sheet: LineSheet) => {
  const { bars } = played(sheet);
  return sheet.bars.map((_, index) => bars.find(({ bar }) => bar === index));
};

describe('a part of the rhythm section is what the playback plays', () => {
  test.each(FEEL_IDS)('%s: the same chops, stroke by stroke', (feel) => {
    const sheet = sheetWith(feel, CHART);
    const { events } = played(sheet);
    const written = writtenPart(sheet, 'chops');
    firstTimes(sheet).forEach((bar, index) => {
      const sounding = events.filter(
        ({ part, start }) =>
          part === 'chops' && bar !== undefined && start >= bar.start && start < bar.start + bar.duration,
      );
      const heads = (written.bars[index] ?? []).flatMap((stroke) =>
        stroke.heads.map((head) => (head.kind === 'pitch' ? midiOf(head.pitch) : 0)),
      );
      const held = (written.bars[index] ?? []).some(({ tiedOn }) => tiedOn);
      // A chord that is held into a bar is written there again, tied, and struck once.
      if (!held && !written.bars[index - 1]?.some(({ tiedOn }) => tiedOn)) {
        expect([...heads].sort()).toEqual(
          sounding.map((event) => (event.part === 'chops' ? event.midi : 0)).sort(),
        );
      }
    });
  });

  test.each(FEEL_IDS)('%s: the same drums in each bar, ghosts and fills included', (feel) => {
    const sheet = sheetWith(feel, CHART);
    const { events } = played(sheet);
    const written = writtenPart(sheet, 'drums');
    firstTimes(sheet).forEach((bar, index) => {
      const sounding = events.flatMap((event) =>
        event.part === 'drums' &&
        bar !== undefined &&
        event.start >= bar.start &&
        event.start < bar.start + bar.duration
          ? [event.sound]
          : [],
      );
      const heads = (written.bars[index] ?? []).flatMap((stroke) =>
        stroke.heads.map((head) => (head.kind === 'drum' ? head.sound : '')),
      );
      expect(heads.length).toBeGreaterThan(0);
      expect([...heads].sort()).toEqual([...sounding].sort());
    });
  });
});

const PARTS: readonly WrittenPart[] = ['chops', 'organ right', 'organ left', 'drums'];

test.each(FEEL_IDS)('%s: strokes follow each other within their bars, in straight time', (feel) => {
  const sheet = sheetWith(feel, CHART);
  for (const part of PARTS) {
    writtenPart(sheet, part).bars.forEach((strokes, index) => {
      let before = 0;
      for (const { start, duration, heads } of strokes) {
        expect(start).toBeGreaterThanOrEqual(before);
        expect(duration).toBeGreaterThan(0);
        expect(heads.length).toBeGreaterThan(0);
        // Sixty-fourths or thirds of eighths: nothing swung gets onto paper.
        expect(start % 60 === 0 || start % 80 === 0).toBe(true);
        before = start + duration;
      }
      expect(before).toBeLessThanOrEqual(barTicks(sheet.bars[index]?.written.metre ?? sheet.metre));
    });
  }
});

test('ska chops are eighths after eighth rests: off the beat, all four of them (common practice, no source)', () => {
  const [bar] = writtenPart(sheetWith('early-ska', '| F |'), 'chops').bars;
  expect(bar?.map(({ start, duration }) => [start, duration])).toEqual([
    [480, 480],
    [1440, 480],
    [2400, 480],
    [3360, 480],
  ]);
});

test('tones are spelled as the chord spells them: F B♭ D♭ A♭ over B♭m7', () => {
  const bars = writtenPart(sheetWith('early-ska', '| B♭m7 |'), 'chops').bars;
  const names = new Set(
    bars[0]?.flatMap(({ heads }) =>
      heads.map((head) => (head.kind === 'pitch' ? `${head.pitch.letter}${head.pitch.alteration}` : '')),
    ),
  );
  expect([...names].sort()).toEqual(['A-1', 'B-1', 'D-1', 'F0']);
});

test('a pad that goes on over the bar line is tied, and not where the chord changes', () => {
  const right = writtenPart(sheetWith('bossa', '| Fmaj7 | Fmaj7 | G7 |'), 'organ right').bars;
  expect(right.map((strokes) => strokes.map(({ duration, tiedOn }) => [duration, tiedOn]))).toEqual([
    [[3840, true]],
    [[3840, false]],
    [[3840, false]],
  ]);
});

test('a pad is not tied to a bar that does not stand behind it, where the way leads back', () => {
  const right = writtenPart(sheetWith('bossa', '|: Fmaj7 | Fmaj7 :| Fmaj7 |'), 'organ right').bars;
  expect(right.map((strokes) => strokes.map(({ tiedOn }) => tiedOn))).toEqual([[true], [false], [false]]);
});
