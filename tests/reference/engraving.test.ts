import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { engrave } from '../../src/score/engrave';
import { GLYPHS } from '../../src/score/metrics/glyph-table';
import type { Ink, InkRole } from '../../src/score/types';
import { SCORE_FIXTURES } from '../support/score-fixtures';
import { NOTES_ONLY, sheetOf } from '../support/score-sheets';

interface FontMetadata {
  readonly glyphBBoxes: Readonly<
    Record<string, { readonly bBoxNE: readonly [number, number]; readonly bBoxSW: readonly [number, number] }>
  >;
  readonly glyphAdvanceWidths: Readonly<Record<string, number>>;
}

interface Drawn {
  readonly ink: readonly Ink[];
  /** The staff's top line, in the ink's units. */
  readonly top: number;
}

function draw(key: string, notes: string): Drawn {
  const [system] = engrave(sheetOf({ key, chart: '| C |', notes }), NOTES_ONLY).systems;
  if (!system) throw new Error('Nothing was laid out.');
  return { ink: system.ink, top: system.staff.top / system.scale };
}

const of = ({ ink }: Drawn, role: InkRole): readonly Ink[] => ink.filter((one) => one.role === role);

/** Steps above the lowest line (line 1 is 0, the space over it 1) of a sign that stands at its glyph's origin. */
const steps = ({ top }: Drawn, y: number): number => Math.round((top + 40 - y) / 5);

const originsOf = (drawn: Drawn, role: InkRole): readonly number[] =>
  of(drawn, role).flatMap((ink) => (ink.kind === 'text' ? [steps(drawn, ink.y)] : []));

// SMuFL 1.4 metadata of Bravura, as its makers publish it with the font.
describe('the glyphs', () => {
  const metadata: FontMetadata = createRequire(import.meta.url)('@vexflow-fonts/bravura/metadata.json');

  it.each(GLYPHS.map((glyph) => [glyph.name, glyph] as const))(
    '%s has the size its font states',
    (name, glyph) => {
      const box = metadata.glyphBBoxes[name];
      expect(box).toBeDefined();
      expect([glyph.left, glyph.bottom]).toEqual(box?.bBoxSW.map((value) => expect.closeTo(value, 2)));
      expect([glyph.right, glyph.top]).toEqual(box?.bBoxNE.map((value) => expect.closeTo(value, 2)));
      expect(glyph.advance).toBeCloseTo(metadata.glyphAdvanceWidths[name] ?? Number.NaN, 2);
    },
  );
});

// SMuFL 1.4: fClef U+E062, 4stringTabClef U+E06E, 6stringTabClef U+E06D.
describe('the clefs', () => {
  it('are the bass clef on the fourth line and the word TAB', () => {
    const drawn = draw('C', 'C2/4');
    const [bass, tab] = of(drawn, 'clef').toSorted((one, other) => one.box.top - other.box.top);
    expect(bass).toMatchObject({ text: '\ue062' });
    expect(bass?.kind === 'text' && steps(drawn, bass.y)).toBe(6);
    expect(tab).toMatchObject({ text: '\ue06e' });
  });
});

// netplaces.com, "Bass guitar notation and tablature": the bass sounds an octave lower than written, its open E
// stands on the first ledger line below the staff, its open A in the lowest space, D on the middle line, G in the
// highest space.
describe('the open strings', () => {
  it.each([
    ['E1', -2, 1],
    ['A1', 1, 0],
    ['D2', 4, 0],
    ['G2', 7, 0],
  ] as const)('%s stands %i steps above the lowest line, with %i ledger lines', (pitch, place, ledgers) => {
    const drawn = draw('C', `${pitch}/4`);
    expect(originsOf(drawn, 'note')).toEqual([place]);
    expect(of(drawn, 'ledger-line').length).toBe(ledgers);
  });
});

// Open Music Theory, "Key signatures": order and places of sharps and flats in the bass clef.
describe('key signatures in the bass clef', () => {
  it('write sharps as F C G D A E B, from the fourth line', () => {
    expect(originsOf(draw('C♯', 'C♯2/4'), 'key-signature')).toEqual([6, 3, 7, 4, 1, 5, 2]);
  });

  it('write flats as B E A D G C F, from the second line', () => {
    expect(originsOf(draw('C♭', 'C♭2/4'), 'key-signature')).toEqual([2, 5, 1, 4, 0, 3, -1]);
  });
});

// Stems go up below the middle line and down from it (common practice, no source); a beam follows the note
// farthest from the middle line.
describe('stems', () => {
  const direction = (notes: string): readonly string[] => {
    const drawn = draw('C', notes);
    const heads = of(drawn, 'note');
    return of(drawn, 'stem').map((stem) => {
      const middle = heads.find((head) => head.box.left <= stem.box.right && head.box.right >= stem.box.left);
      return middle && stem.box.top < middle.box.top - 10 ? 'up' : 'down';
    });
  };

  it('turn at the middle line', () => {
    expect(direction('A1/1 C2/1 D2/1 F2/1')).toEqual(['up', 'up', 'down', 'down']);
  });

  it('agree under one beam', () => {
    expect(direction('E1/.5 F2/.5 G2/.5 C2/.5 r/2')).toEqual(['up', 'up', 'up', 'up']);
  });
});

describe('every fixture', () => {
  it.each(Object.entries(SCORE_FIXTURES))('%s has its notes, its frets and its chords', (_, make) => {
    const sheet = make();
    if (sheet.kind === 'blank') return;
    const ink = engrave(sheet, NOTES_ONLY).systems.flatMap((system) => system.ink);
    const count = (role: InkRole) => ink.filter((one) => one.role === role).length;
    const notes = sheet.bars.flatMap((bar) => bar.notes).length;
    expect(count('note')).toBeGreaterThanOrEqual(notes);
    expect(count('fret')).toBe(notes);
  });
});
