import { describe, expect, test } from 'vitest';
import { writtenPart } from '../../src/core/performance';
import { engrave } from '../../src/score/engrave';
import { DRUM_PLACES } from '../../src/score/notation/part-content';
import type { Ink, InkRole, ScoreLayout } from '../../src/score/types';
import { NOTES_ONLY, sheetOf } from '../support/score-sheets';

const inkOf = (layout: ScoreLayout, role: InkRole): readonly Ink[] =>
  layout.systems.flatMap(({ ink }) => ink.filter((mark) => mark.role === role));
const middle = ({ box }: Ink): number => (box.top + box.bottom) / 2;
const BLACK = '\ue0a4';
const CROSS = '\ue0a9';

describe('a rhythm alone', () => {
  const line = sheetOf({
    chart: '| E♭ | B♭7 |',
    key: 'E♭ major',
    notes: 'E♭1/1 r/.5 G1/.5 B♭1/1.5 A1/.5~ | A1/1 r/3',
  });
  const layout = engrave(line, { ...NOTES_ONLY, rhythm: true, counting: true });

  test('stands on one line, without clef of a pitch, key, accidentals, chords, tab', () => {
    expect(inkOf(layout, 'staff-line').length).toBe(layout.systems.length);
    for (const role of ['key-signature', 'accidental', 'ledger-line', 'chord', 'tab-line', 'fret'] as const) {
      expect(inkOf(layout, role), role).toEqual([]);
    }
    const clefs = inkOf(layout, 'clef').map((mark) => (mark.kind === 'text' ? mark.text : ''));
    // SMuFL: unpitchedPercussionClef1.
    expect(new Set(clefs)).toEqual(new Set(['\ue069']));
  });

  test('has all its heads on that line, their stems up, and the rests and ties of the line', () => {
    const [staff] = inkOf(layout, 'staff-line');
    const heads = inkOf(layout, 'note');
    // Four notes, of which the last is held over the bar line.
    expect(heads.length).toBe(5);
    for (const head of heads) expect(middle(head)).toBeCloseTo(staff ? middle(staff) : 0, 0);
    for (const stem of inkOf(layout, 'stem'))
      expect(stem.box.bottom).toBeLessThanOrEqual((heads[0]?.box.bottom ?? 0) + 0.1);
    expect(inkOf(layout, 'tie').length).toBe(1);
    const rests = (of: ScoreLayout) => inkOf(of, 'rest').length;
    expect(rests(layout)).toBe(rests(engrave(line, { ...NOTES_ONLY, parts: 'staff' })));
  });

  test('is counted as the line is', () => {
    const counted = (of: ScoreLayout) =>
      inkOf(of, 'counting').map((mark) => (mark.kind === 'text' ? mark.text : ''));
    expect(counted(layout)).toEqual(counted(engrave(line, { ...NOTES_ONLY, counting: true })));
  });
});

describe('the drums', () => {
  // N. Weinberg, "Guidelines for Drumset Notation" (Percussive Arts Society, 1994), from memory, as steps from the
  // middle line of five: 4 is the top line, −4 the bottom line.
  test('stand where the guidelines have them, cymbals as crosses', () => {
    expect(DRUM_PLACES.kick).toEqual({ height: -3, cross: false });
    expect(DRUM_PLACES.snare).toEqual({ height: 1, cross: false });
    expect(DRUM_PLACES['closed hat']).toEqual({ height: 5, cross: true });
    expect(DRUM_PLACES.ride).toEqual({ height: 4, cross: true });
    expect(DRUM_PLACES.crash).toEqual({ height: 6, cross: true });
    expect(DRUM_PLACES['foot hat']).toEqual({ height: -5, cross: true });
    expect(DRUM_PLACES.rim).toEqual({ ...DRUM_PLACES.snare, cross: true });
  });

  // Common practice, no source: what is hardly heard stands in brackets, which touch nothing beside them.
  test('have room for the brackets of what is hardly heard, at every sixteenth', () => {
    const sheet = sheetOf({ chart: '| E | A | B7 | E |', notes: '| | | ', feel: 'funk' });
    const { systems } = engrave(writtenPart(sheet, 'drums'), NOTES_ONLY);
    let brackets = 0;
    for (const { ink } of systems) {
      const heads = ink.filter(({ role }) => role === 'note').map(({ box }) => box);
      const narrow = heads.filter(({ left, right }) => right - left < 5);
      brackets += narrow.length;
      for (const one of narrow)
        for (const other of heads) {
          const beside = one !== other && other.top < one.bottom && other.bottom > one.top;
          if (beside && one.right > other.left - 0.4) expect(one.left).toBeGreaterThan(other.right + 0.4);
        }
    }
    expect(brackets).toBeGreaterThan(20);
  });

  test('are drawn there: every stroke a head, crosses and circles where they belong, all stems up', () => {
    const sheet = sheetOf({ chart: '| Am | Dm | Am | E7 |', notes: '| | | ', feel: 'one-drop' });
    const part = writtenPart(sheet, 'drums');
    const layout = engrave(part, NOTES_ONLY);
    const strokes = part.bars.flat().flatMap(({ heads }) => heads);
    const sounds = strokes.flatMap((head) => (head.kind === 'drum' ? [head.sound] : []));
    const heads = inkOf(layout, 'note').flatMap((mark) => (mark.kind === 'text' ? [mark] : []));
    const crosses = heads.filter(({ text }) => text === CROSS);
    expect(crosses.length).toBe(sounds.filter((sound) => DRUM_PLACES[sound].cross).length);
    expect(heads.filter(({ text }) => text === BLACK).length).toBe(
      sounds.filter((sound) => !DRUM_PLACES[sound].cross).length,
    );
    const top = Math.min(...inkOf(layout, 'staff-line').map(({ box }) => box.top));
    const heights = new Set(crosses.map((mark) => Math.round((top + 20 - middle(mark)) / 5)));
    expect([...heights].sort()).toEqual(
      [
        ...new Set(
          sounds.filter((sound) => DRUM_PLACES[sound].cross).map((sound) => DRUM_PLACES[sound].height),
        ),
      ].sort(),
    );
    expect(inkOf(layout, 'articulation').length).toBe(sounds.filter((sound) => sound === 'open hat').length);
  });
});

test('chops are chords on one stem in the treble clef, with the accidentals of their chord', () => {
  const sheet = sheetOf({ chart: '| E7 |', key: 'A minor', notes: 'E1/4', feel: 'early-ska' });
  const part = writtenPart(sheet, 'chops');
  const layout = engrave(part, NOTES_ONLY);
  const [clef] = inkOf(layout, 'clef');
  // SMuFL: gClef.
  expect(clef?.kind === 'text' && clef.text).toBe('\ue050');
  const strokes = part.bars[0] ?? [];
  expect(inkOf(layout, 'note').length).toBe(strokes.reduce((sum, { heads }) => sum + heads.length, 0));
  expect(inkOf(layout, 'flag').length).toBe(strokes.length);
  // G sharp is written once in the bar.
  expect(inkOf(layout, 'accidental').length).toBe(1);
  expect(inkOf(layout, 'tab-line')).toEqual([]);
});
