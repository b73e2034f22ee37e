import { describe, expect, test } from 'vitest';
import { composePiece } from '../../src/core/composing';
import { FEEL_IDS, type FeelId } from '../../src/core/feel';
import { deriveSheet, newLesson, setChartText, setFeel } from '../../src/core/lesson';
import { buildPerformance, PARTS, type Performance } from '../../src/core/performance';
import { renderMix } from '../../src/sound/synthesis/mix';
import { createKit } from '../../src/sound/synthesis/voices';
import { integratedLoudness, LOUDNESS_RATE, truePeak } from './loudness';

const NOBODY = { bass: false, drums: false, chops: false, organ: false, click: false };
const EVERYONE = { bass: true, drums: true, chops: true, organ: true, click: true };
const kit = createKit(LOUDNESS_RATE);

/** Four composed bars at the feel's own tempo, with the deviations of people. */
function tuneIn(feel: FeelId): Performance {
  const empty = newLesson('lesson', 'Lesson');
  const id = empty.pieces[0]?.id ?? '';
  const { lesson } = composePiece(setFeel(setChartText(empty, id, '| F | Dm | Gm | C7 |'), id, feel), id);
  const [piece] = lesson.pieces;
  const sheet = piece && deriveSheet(piece, lesson.instrument, lesson.noteNames);
  if (sheet?.kind !== 'line') throw new Error('The lesson has no line');
  return buildPerformance(sheet, { tempo: sheet.tempo, countIn: 0, passage: null, humaniseSeed: 1 });
}

describe('how loud the music is', () => {
  test.each(FEEL_IDS)('%s: as loud as the others, and no peak is cut', (feel) => {
    const mix = renderMix(tuneIn(feel), EVERYONE, kit);
    // One volume for every feel: within 3 LU of each other (common practice, no source).
    expect(integratedLoudness(mix)).toBeGreaterThan(-20.5);
    expect(integratedLoudness(mix)).toBeLessThan(-16.5);
    // EBU R 128 (2023): a true peak of −1 dBTP at most.
    expect(Math.max(truePeak(mix.left), truePeak(mix.right))).toBeLessThanOrEqual(-1);
  });

  test('the bass leads, and everyone can be heard beside it (common practice, no source)', () => {
    const tune = tuneIn('rocksteady');
    const [bass = 0, ...others] = PARTS.map((part) =>
      integratedLoudness(renderMix(tune, { ...NOBODY, [part]: true }, kit)),
    );
    for (const other of others) {
      expect(bass - other).toBeGreaterThan(0);
      expect(bass - other).toBeLessThan(12);
    }
  });

  test('nobody makes no sound', () => {
    expect(integratedLoudness(renderMix(tuneIn('bossa'), NOBODY, kit))).toBe(Number.NEGATIVE_INFINITY);
  });
});
