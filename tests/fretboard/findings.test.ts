import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Finger, fret, type Pins, stringNumber, ticks } from '../../src/core/base';
import {
  createInstrument,
  DEFAULT_HAND,
  type FingeredLine,
  fingerLine,
  HAND_SPANS,
  type HandSettings,
  type LineContext,
  type NoteToFinger,
  playingFindings,
  repairFor,
} from '../../src/core/fretboard';
import { repaired } from '../../src/core/fretboard/repairs';
import { contextOf, contexts, hands, ONCE, oddInstruments, pinnedLines } from './arbitrary';
import { run } from './lines';

const bass = createInstrument();
/** A style that wants silence in its rests. */
const MUTED: LineContext = { ...ONCE, muted: true };

const fingered = (
  notes: readonly NoteToFinger[],
  context: LineContext = MUTED,
  hand: HandSettings = DEFAULT_HAND,
): FingeredLine => ({
  notes,
  context,
  hand,
  instrument: bass,
  limitOf: 'level 2',
  fingering: fingerLine(notes, bass, hand, context),
});

const pinned = (notes: readonly NoteToFinger[], pins: Readonly<Record<number, Pins>>): NoteToFinger[] =>
  notes.map((note, index) => ({ ...note, ...(pins[index] === undefined ? {} : { pins: pins[index] }) }));

/** Findings each with the repair that is offered for it. */
const mending = (line: FingeredLine) =>
  playingFindings(line).map((finding) => ({ ...finding, repair: repairFor(line, finding) }));

const kinds = (line: FingeredLine): readonly string[] =>
  playingFindings(line).map(({ kind, note }) => `${note} ${kind}`);

describe('findings about playing', () => {
  it('are none where a line lies well', () => {
    expect(mending(fingered(run([36, 40, 43, 48, 43, 40, 36, 35])))).toEqual([]);
  });

  it('name a note off the neck and move it by the octave', () => {
    const line = fingered(run([36, 27, 64]));
    expect(mending(line)).toMatchObject([
      { kind: 'off the neck', note: 1, repair: { kind: 'octave', halfSteps: 12 } },
      { kind: 'off the neck', note: 2, repair: { kind: 'octave', halfSteps: -12 } },
    ]);
  });

  it('name a pin that no place meets and let it go', () => {
    const line = fingered(pinned(run([36, 38]), { 0: { string: stringNumber(1) } }));
    expect(mending(line)).toMatchObject([
      { kind: 'pin not met', note: 0, repair: { kind: 'release', notes: [0] } },
    ]);
  });

  it('name a fret beyond the level and play the note lower', () => {
    const low = { ...DEFAULT_HAND, highestFret: fret(5) };
    const far = fingered(pinned(run([36, 38, 36]), { 0: { string: stringNumber(4) } }), ONCE, low);
    expect(mending(far).find(({ kind }) => kind === 'fret too high')).toMatchObject({
      note: 0,
      message: 'fret 8 is beyond fret 5, the last of level 2.',
      repair: { kind: 'pin', pins: [{ note: 0, pins: { string: 3, fret: 3 } }] },
    });
    const high = fingered(run([50]), ONCE, low);
    expect(mending(high)).toMatchObject([{ repair: { kind: 'octave', halfSteps: -12 } }]);
  });

  it('name a shift that comes too soon for the tempo', () => {
    const sixteenths = run([29, 53, 29], 240);
    const findings = mending(fingered(sixteenths));
    expect(findings.map(({ kind }) => kind)).toContain('shift too far');
    expect(findings[0]?.message).toMatch(/^the hand has only 0\.06 seconds for the shift from position I to/);
    expect(findings.every(({ repair }) => repair !== null)).toBe(true);
    expect(mending(fingered(run([29, 53, 29], 1920)))).toEqual([]);
  });

  it('let pins go that ask for the shift', () => {
    const notes = pinned(run([29, 38, 29], 240), { 1: { string: stringNumber(4), fret: fret(10) } });
    const shift = mending(fingered(notes)).find(({ kind }) => kind === 'shift too far');
    expect(shift?.repair).toMatchObject({ kind: 'release', notes: [1] });
  });

  it('name a stretch beyond the hand', () => {
    const child = { ...DEFAULT_HAND, ...HAND_SPANS.child };
    const first: Finger = 1;
    const fourth: Finger = 4;
    const notes = pinned(run([29, 32]), { 0: { finger: first }, 1: { fret: fret(4), finger: fourth } });
    expect(mending(fingered(notes, ONCE, child))).toMatchObject([
      {
        kind: 'stretch too wide',
        note: 1,
        message: 'frets 1 and 4 in one position ask for 130 mm; the hand reaches 110 mm.',
        repair: { kind: 'release', notes: [0, 1] },
      },
    ]);
  });

  it('let a pinned position go that asks for the stretch', () => {
    const child = { ...DEFAULT_HAND, ...HAND_SPANS.child };
    const positions = [{ start: ticks(0), end: ticks(960), position: fret(1) }];
    const line = fingered(run([29, 32]), { ...ONCE, positions }, child);
    expect(mending(line)).toMatchObject([
      { kind: 'stretch too wide', repair: { kind: 'release position', note: 1 } },
    ]);
  });

  it('name an open string that rings into a rest, and fret it where there is a fret for it', () => {
    const [first, second] = run([38, 40], 960);
    if (first === undefined || second === undefined) throw new Error('no notes');
    const short = { ...first, duration: ticks(480) };
    const open = { ...short, pins: { fret: fret(0) } };
    expect(mending(fingered([open, second]))).toMatchObject([
      { kind: 'open string rings', note: 0, repair: { kind: 'pin' } },
    ]);
    expect(mending(fingered([open, second], ONCE))).toEqual([]);
    expect(mending(fingered([{ ...open, short: true }, second]))).toEqual([]);
    const lowest = { ...short, midi: run([28])[0]?.midi ?? short.midi };
    expect(mending(fingered([lowest, second]))).toMatchObject([
      { kind: 'open string rings', repair: { kind: 'mark short', notes: [0] } },
    ]);
  });

  it('name a note that has no place up to the last fret, and let the hand go up to it', () => {
    const low = { ...DEFAULT_HAND, highestFret: fret(3) };
    // C♯ lies on fret 4 or 6 at the lowest, in every octave.
    expect(mending(fingered(run([37]), ONCE, low))).toMatchObject([
      { kind: 'fret too high', repair: { kind: 'raise limit', fret: 4 } },
    ]);
  });

  it('are all mended by their repairs, which bring no more faults, on any instrument', () => {
    let found = 0;
    fc.assert(
      fc.property(pinnedLines(1, 6), oddInstruments, hands, contexts, (notes, instrument, hand, asked) => {
        const context = contextOf(notes, asked);
        const line = {
          ...fingered(notes, context, hand),
          instrument,
          fingering: fingerLine(notes, instrument, hand, context),
        };
        const before = kinds(line);
        for (const { kind, note, message, repair } of mending(line)) {
          found += 1;
          if (repair === null) throw new Error(`Nothing mends ${note} ${message} ${JSON.stringify(line)}`);
          const after = kinds(repaired(line, repair));
          expect(after).not.toContain(`${note} ${kind}`);
          if (kind !== 'off the neck') expect(after.length).toBeLessThanOrEqual(before.length);
        }
      }),
      { seed: 7, numRuns: 600 },
    );
    expect(found).toBeGreaterThan(300);
  });
});
