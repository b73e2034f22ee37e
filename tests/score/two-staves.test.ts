import { describe, expect, test } from 'vitest';
import { midiOf } from '../../src/core/base';
import { FEEL_IDS } from '../../src/core/feel';
import { type KeyboardSheet, type PartSheet, writtenOrgan, writtenPart } from '../../src/core/performance';
import { engrave } from '../../src/score/engrave';
import type { Ink, InkRole, SystemLayout } from '../../src/score/types';
import { NOTES_ONLY, sheetOf } from '../support/score-sheets';

const CHART = '|: Am7 | Dm7 | E7 | Am7 :| F | G/B | Cmaj7 | E7#9 |';

const organOf = (feel: (typeof FEEL_IDS)[number], chart = CHART, key = 'A minor') =>
  writtenOrgan(sheetOf({ chart, notes: '|'.repeat(chart.split('|').length - 3), key, feel }));

const of = ({ ink }: SystemLayout, ...roles: readonly InkRole[]): readonly Ink[] =>
  ink.filter(({ role }) => roles.includes(role));
const middle = ({ box }: Ink): number => (box.top + box.bottom) / 2;

/** The ten lines of a system from above, as the upper and the lower five. */
function stavesOf(system: SystemLayout): readonly [readonly number[], readonly number[]] {
  const lines = of(system, 'staff-line')
    .map(middle)
    .sort((one, other) => one - other);
  return [lines.slice(0, 5), lines.slice(5)];
}

/** The ink of some roles that belongs to the upper and to the lower staff. */
function byStaff(system: SystemLayout, ...roles: readonly InkRole[]) {
  const [upper, lower] = stavesOf(system);
  const border = ((upper.at(-1) ?? 0) + (lower[0] ?? 0)) / 2;
  const ink = of(system, ...roles);
  return [ink.filter((mark) => middle(mark) < border), ink.filter((mark) => middle(mark) > border)] as const;
}

const left = (marks: readonly Ink[]): number => Math.min(...marks.map(({ box }) => box.left));

describe('both hands of a keyboard stand on two staves', () => {
  const layout = engrave(organOf('one-drop', CHART, 'D major'), NOTES_ONLY);

  test('of five lines, treble clef over bass clef, six spaces apart at least', () => {
    for (const system of layout.systems) {
      const [upper, lower] = stavesOf(system);
      expect([upper.length, lower.length]).toEqual([5, 5]);
      expect((lower[0] ?? 0) - (upper.at(-1) ?? 0)).toBeGreaterThan(59.9);
      // SMuFL: gClef, fClef.
      const [treble, bass] = byStaff(system, 'clef').map((marks) =>
        marks.map((mark) => (mark.kind === 'text' ? mark.text : '')),
      );
      expect([treble, bass]).toEqual([['\ue050'], ['\ue062']]);
    }
  });

  test('with key and metre under each other, whatever the width of the clefs', () => {
    const [system] = layout.systems;
    if (system === undefined) throw new Error('there is a system');
    for (const role of ['key-signature', 'time-signature'] as const) {
      const [above, below] = byStaff(system, role);
      expect(below.length, role).toBe(above.length);
      expect(left(below), role).toBeCloseTo(left(above), 1);
    }
  });

  test('joined by a brace and by bar lines from the top line to the bottom line', () => {
    for (const system of layout.systems) {
      const [upper, lower] = stavesOf(system);
      const [top = 0, bottom = 0] = [upper[0], lower.at(-1)];
      const braces = of(system, 'brace');
      expect(braces.length).toBe(1);
      expect(braces[0]?.box.left).toBeGreaterThanOrEqual(0);
      const through = [...braces, ...of(system, 'bar-line').filter(({ box }) => box.bottom - box.top > 20)];
      expect(through.length).toBeGreaterThan(5);
      for (const { box } of through) {
        expect(Math.abs(box.top - top)).toBeLessThan(1);
        expect(Math.abs(box.bottom - bottom)).toBeLessThan(1);
      }
    }
  });

  test('with the dots of a repeat on both', () => {
    const dots = layout.systems.map((system) =>
      byStaff(system, 'bar-line').map((marks) => marks.filter(({ box }) => box.bottom - box.top < 5).length),
    );
    const sum = (staff: 0 | 1): number => dots.reduce((all, of) => all + (of[staff] ?? 0), 0);
    // Two dots where the repeat begins, two where it ends.
    expect([sum(0), sum(1)]).toEqual([4, 4]);
  });

  test('with what is struck together under each other, and the chords once, over the upper one', () => {
    for (const system of layout.systems) {
      const [right, under] = byStaff(system, 'note');
      const places = (marks: readonly Ink[]) => new Set(marks.map(({ box }) => Math.round(box.left)));
      expect(places(right).size).toBeGreaterThan(0);
      expect(places(under).size).toBeGreaterThan(0);
    }
    const pad = engrave(organOf('bossa'), NOTES_ONLY).systems[0];
    const [right, under] = pad ? byStaff(pad, 'note') : [[], []];
    for (const { box } of under) {
      expect(right.some((head) => Math.abs(head.box.left - box.left) < 0.1)).toBe(true);
    }
    const chords = layout.systems.map((system) => byStaff(system, 'chord').map(({ length }) => length));
    expect(chords).toEqual(layout.systems.map(({ bars }) => [bars.length, 0]));
  });
});

describe('the staves come apart where notes between them would touch', () => {
  const NOTES = ['note', 'stem', 'flag', 'beam', 'accidental', 'rest', 'ledger-line'] as const;

  test.each(FEEL_IDS)('%s', (feel) => {
    for (const system of engrave(organOf(feel), NOTES_ONLY).systems) {
      const [upper, lower] = byStaff(system, ...NOTES);
      for (const { box } of upper) {
        const under = lower.filter((mark) => mark.box.left < box.right && mark.box.right > box.left);
        for (const mark of under) expect(mark.box.top).toBeGreaterThan(box.bottom);
      }
    }
  });
});

describe('the hands', () => {
  const pitches = ({ bars }: PartSheet): readonly (readonly number[])[] =>
    bars.map((strokes) =>
      strokes.flatMap(({ heads }) =>
        heads.flatMap((head) => (head.kind === 'pitch' ? [midiOf(head.pitch)] : [])),
      ),
    );
  const struckTwice = ({ right, left: low }: Pick<KeyboardSheet, 'right' | 'left'>): number =>
    right.bars.flatMap((strokes, bar) =>
      strokes.flatMap(({ start, heads }) => {
        const below = low.bars[bar]?.find((stroke) => stroke.start === start)?.heads ?? [];
        return heads.filter((head) => below.some((other) => JSON.stringify(other) === JSON.stringify(head)));
      }),
    ).length;

  test.each(FEEL_IDS)('%s: together play what the playback plays, the right over the left', (feel) => {
    const organ = organOf(feel);
    const [right, low] = [pitches(organ.right), pitches(organ.left)];
    const alone = [writtenPart(organ.line, 'organ right'), writtenPart(organ.line, 'organ left')];
    const [asPlayed, under] = alone.map((part) => pitches(part));
    expect(low).toEqual(under);
    right.forEach((bar, index) => {
      const keys = (...hands: readonly (readonly number[] | undefined)[]) =>
        [...new Set(hands.flatMap((hand) => hand ?? []))].sort();
      expect(keys(bar, low[index])).toEqual(keys(asPlayed?.[index], under?.[index]));
      const [lowest, highest] = [Math.min(...bar), Math.max(...(low[index] ?? []))];
      expect(lowest).toBeGreaterThanOrEqual(highest);
    });
  });

  test('press no key twice at once: of G7♯9 both would have B', () => {
    const line = sheetOf({ chart: '| G7#9 |', notes: '', key: 'C', feel: 'bossa' });
    const doubled = { right: writtenPart(line, 'organ right'), left: writtenPart(line, 'organ left') };
    expect(struckTwice(doubled)).toBeGreaterThan(0);
    expect(struckTwice(writtenOrgan(line))).toBe(0);
  });
});
