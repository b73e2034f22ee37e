import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { midiOf } from '../../src/core/base';
import { linePiece } from '../../src/core/lesson';
import { cost, enter, type GivenLine } from './entering';

/** Lines written by hand for the feels' charts, mostly of eight bars: beat, length in beats, MIDI number. */
const LINES: readonly GivenLine[] = JSON.parse(readFileSync(new URL('lines.json', import.meta.url), 'utf8'));

it('enters whole lines in at most 1.6 keys a note, silences and keys held with others counted', () => {
  let keys = 0;
  let notes = 0;
  for (const line of LINES) {
    const { lesson, pencil, done } = enter(line);
    const bars = linePiece(lesson, pencil.pieceId)?.bars ?? [];
    const entered = bars.map((bar) =>
      bar.notes.map((note) => [note.start / 960 + 1, note.duration / 960, midiOf(note.pitch)]),
    );
    expect(entered).toEqual(line.bars);
    keys += cost(done);
    notes += line.bars.flat().length;
  }
  expect(notes).toBe(905);
  expect(keys / notes).toBeLessThanOrEqual(1.6);
  expect(keys / notes).toBeGreaterThan(1);
}, 300_000);
