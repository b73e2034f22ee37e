import { describe, expect, it } from 'vitest';
import type { Metre } from '../../src/core/base';
import { writeMusicXml, writeTextTab } from '../../src/core/exchange';
import type { FeelId } from '../../src/core/feel';
import { engrave } from '../../src/score/engrave';
import { NOTES_ONLY, sheetOf } from '../support/score-sheets';

const FOUR: Metre = { count: 4, unit: 4 };
const TWELVE: Metre = { count: 12, unit: 8 };

/** Where a line says that its eighths are swung: in its score, its MusicXML, its tab. */
function saidIn(feel: FeelId, metre: Metre): readonly boolean[] {
  const sheet = sheetOf({ chart: '| F |', notes: 'F1/4', key: 'F', feel, metre, tempo: 120 });
  const score = engrave(sheet, NOTES_ONLY);
  return [
    score.systems.some(({ ink }) => ink.some(({ role }) => role === 'swing')),
    writeMusicXml(sheet, 'Lesson').includes('<swing>'),
    writeTextTab(sheet, 'Lesson').includes('eighths swung'),
  ];
}

describe('swung eighths', () => {
  it.each<[FeelId, Metre, boolean]>([
    ['shuffle-blues', FOUR, true],
    ['early-ska', FOUR, true],
    // So little that no one hears it.
    ['rockers', FOUR, false],
    // The beat is divided in three already.
    ['shuffle-blues', TWELVE, false],
    ['funk', FOUR, false],
  ])('of %s in %o are told alike by score, MusicXML and tab: %s', (feel, metre, told) => {
    expect(saidIn(feel, metre)).toEqual([told, told, told]);
  });
});
