/** Notes that nobody plucks as others: hammered, pulled off and dead ones, and the lowest string of five and six. */
import { describe, expect, test } from 'vitest';
import { expectedOf, type NoteReport, reportOf } from '../../src/core/listening';
import { createKit } from '../../src/sound';
import { renderMix } from '../../src/sound/synthesis/mix';
import { lineOf, roundsOf } from './players';
import { hear } from './students';
import { RATE } from './studio';

const kit = createKit(RATE);
const BASS_ALONE = { bass: true, drums: false, chops: false, organ: false, click: false };
const BEGINS = 0.8;

/** What is said of each note of a line that our own bass plays as it is written, twice. */
function heardOf(bars: readonly string[], chart: string) {
  const performance = lineOf(84, bars, chart);
  const { left, right } = renderMix(performance, BASS_ALONE, kit, 2);
  const silence = Math.round(BEGINS * RATE);
  const sound = new Float32Array(silence + left.length + RATE);
  for (const [index, value] of left.entries()) sound[silence + index] = (value + (right[index] ?? 0)) / 2;
  const { heard, deafness } = hear(sound);
  const report = reportOf(expectedOf(roundsOf(performance, 2, BEGINS)), heard, deafness);
  const heardBars = report.flatMap((round) => round.bars);
  return { notes: heardBars.flatMap((bar) => bar.notes), extras: heardBars.flatMap((bar) => bar.extras) };
}

const kindOf = ({ verdict }: NoteReport) => verdict.kind;
const ALARMS = ['left out', 'other pitch'];

describe('what is not plucked as other notes', () => {
  test('a note that is hammered or pulled off is heard, or left open: it is never said to be left out', () => {
    const { notes, extras } = heardOf(
      ['1 A1 q {hammer}, 2 C2 q, 3 A1 h', '1 D2 q, 2 F2 q {hammer}, 3 G2 q, 4 D2 q'],
      '| Am | Dm |',
    );
    const soft = notes.filter(({ note }) => note.soft);
    expect(soft.length).toBeGreaterThanOrEqual(4);
    expect(soft.map(kindOf).filter((kind) => kind === 'played').length).toBeGreaterThanOrEqual(2);
    expect(notes.map(kindOf).filter((kind) => ALARMS.includes(kind))).toEqual([]);
    expect(extras).toEqual([]);
  });

  test('a dead note is heard as a stroke, or left open', () => {
    const { notes, extras } = heardOf(
      ['1 A1 q, 2 A1 8 x, 3 C2 q, 4 E2 8 x', '1 D2 q, 2& D2 8 x, 3 A1 h'],
      '| Am | Dm |',
    );
    const dead = notes.filter(({ note }) => note.dead);
    expect(dead.length).toBe(6);
    expect(dead.map(kindOf).filter((kind) => kind === 'played').length).toBeGreaterThanOrEqual(3);
    expect(notes.map(kindOf).filter((kind) => ALARMS.includes(kind))).toEqual([]);
    expect(extras).toEqual([]);
  });

  test('the low B string of five and six strings is heard down to its open note', () => {
    const { notes, extras } = heardOf(
      ['1 B0 q, 2 C1 q, 3 D1 q, 4 B0 q', '1 E1 q, 2 B0 8, 2& B0 8, 3 F#1 q, 4 B0 q'],
      '| Bm | Em |',
    );
    expect(notes.length).toBe(18);
    expect(new Set(notes.map(kindOf))).toEqual(new Set(['played']));
    expect(extras).toEqual([]);
  });
});
