import { describe, expect, test } from 'vitest';
import { CAUTIONS, cautionsInBrief, cautionWords } from '../../src/core/lesson';

const all = CAUTIONS.map(cautionWords).join(' ');
const onPaper = cautionsInBrief();

describe('the cautions say what their sources say', () => {
  // BAPAM, "Don't Cramp Your Style"; bassplayer.com, "Bassists, save your hands": the body moves before the hand plays.
  test('the warm-up is movement from large to small, and then slow playing', () => {
    expect(all).toMatch(
      /walk or climb stairs for three to five minutes, then move shoulders, elbows and wrists.*then play slowly/u,
    );
    expect(onPaper).toContain('Warm up by moving.');
    expect(all).toContain('not stretching');
  });

  // WHO, leaflet "Make Listening Safe"; WHO and ITU, Recommendation H.870.
  test('hearing has something to do, and a recommendation that is not called a limit', () => {
    expect(all).toContain('in a quiet room, at most 60 % of full');
    expect(onPaper).toContain('at most 60 % of full');
    expect(all).toContain('WHO and ITU advise at most 80 dB for 40 hours a week, 75 dB for children');
    expect(all).not.toMatch(/safe limit/u);
  });

  // NIOSH, occupational noise exposure, 1998: 85 dBA for 8 h, half the time every 3 dB: 94 dBA is three halvings.
  test('the hour at 94 dBA follows from 85 dBA for eight hours', () => {
    expect(8 / 2 ** ((94 - 85) / 3)).toBe(1);
    expect(all).toContain('85 dBA for eight hours');
    expect(all).toContain('one hour at 94 dBA');
  });

  test('pain stops the playing, a doctor is asked, and every caution names its source', () => {
    for (const words of [all, onPaper]) {
      expect(words).toContain('Pain means stop');
      expect(words).toContain('ask a doctor');
    }
    for (const caution of CAUTIONS) {
      expect(cautionWords(caution)).toContain(`(${caution.by})`);
      expect(onPaper).toContain(caution.brief);
      expect(caution.source.length).toBeGreaterThan(10);
    }
  });
});
