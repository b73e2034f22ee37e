import { describe, expect, test } from 'vitest';
import { composePiece } from '../../src/core/composing';
import { FEEL_IDS, type FeelId } from '../../src/core/feel';
import { deriveSheet, newLesson, setChartText, setFeel } from '../../src/core/lesson';
import { buildPerformance, type Performance } from '../../src/core/performance';
import { PARTS, type Part } from '../../src/core/playing';
import { renderMix } from '../../src/sound/synthesis/mix';
import { createKit } from '../../src/sound/synthesis/voices';
import { integratedLoudness, TRACK_RATE, truePeak } from '../../src/tracks/loudness';

const NOBODY = { bass: false, drums: false, chops: false, organ: false, click: false };
const EVERYONE = { bass: true, drums: true, chops: true, organ: true, click: true };
const kit = createKit(TRACK_RATE);

const tunes = new Map<FeelId, Performance>();

/** Four composed bars at the feel's own tempo, with the deviations of people; each composed once. */
function tuneIn(feel: FeelId): Performance {
  const known = tunes.get(feel) ?? composedIn(feel);
  tunes.set(feel, known);
  return known;
}

function composedIn(feel: FeelId): Performance {
  const empty = newLesson('lesson', 'Lesson');
  const id = empty.pieces[0]?.id ?? '';
  const { lesson } = composePiece(setFeel(setChartText(empty, id, '| F | Dm | Gm | C7 |'), id, feel), id);
  const [piece] = lesson.pieces;
  const sheet = piece && deriveSheet(piece, lesson.instrument, lesson.noteNames);
  if (sheet?.kind !== 'line') throw new Error('The lesson has no line');
  return buildPerformance(sheet, {
    tempo: sheet.tempo,
    countIn: 0,
    passage: null,
    humaniseSeed: 1,
    drumSeed: 1,
  });
}

describe('how loud the music is', () => {
  test.each(FEEL_IDS)('%s: as loud as the others, and no peak is cut', (feel) => {
    const mix = renderMix(tuneIn(feel), EVERYONE, kit);
    // One volume for every feel: within 4 LU of each other (common practice, no source).
    expect(integratedLoudness(mix)).toBeGreaterThan(-21.5);
    expect(integratedLoudness(mix)).toBeLessThan(-17.5);
    // EBU R 128 (2023): a true peak of −1 dBTP at most. Longer pieces have strokes that meet more closely than these four
    // bars do, by up to 1.3 dB in three rounds of sixteen bars (`npm run report:sound`).
    expect(Math.max(truePeak(mix.left), truePeak(mix.right))).toBeLessThanOrEqual(-2.3);
  });

  /** How many LU each part may lie under the bass, at least and at most: common practice, no source; the figures are ours. */
  const UNDER = { drums: [1, 8], chops: [5, 10.5], organ: [5, 11.5], click: [5, 10.5] } as const;
  /** A pad or a bubble lies behind the drummer. */
  const ORGAN_UNDER_DRUMS = 2;

  test.each(FEEL_IDS)('%s: the bass leads, and everyone can be heard beside it', (feel) => {
    const tune = tuneIn(feel);
    const heard = new Map(
      PARTS.map((part) => [part, integratedLoudness(renderMix(tune, { ...NOBODY, [part]: true }, kit))]),
    );
    const of = (part: Part): number => heard.get(part) ?? 0;
    const bass = of('bass');
    for (const part of PARTS) {
      if (part === 'bass') continue;
      const [least, most] = UNDER[part];
      expect(bass - of(part), part).toBeGreaterThan(least);
      expect(bass - of(part), part).toBeLessThan(most);
    }
    expect(of('drums') - of('organ')).toBeGreaterThan(ORGAN_UNDER_DRUMS);
  });

  test('nobody makes no sound', () => {
    expect(integratedLoudness(renderMix(tuneIn('bossa'), NOBODY, kit))).toBe(Number.NEGATIVE_INFINITY);
  });
});
