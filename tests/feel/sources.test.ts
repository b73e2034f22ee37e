/**
 * Rows that name a publication, against what those publications state: written down here a second time, from the notes
 * that were taken of them. A row that says more than its source is marked as common practice, or as ours.
 */
import { describe, expect, test } from 'vitest';
import { FEELS, rhythmCellsOf } from '../../src/core/feel';

const ska = '--x---x---x---x-';
const drop = '----x-------x---';
/** Title, as far as it is needed to know it, and the grids of a bar that it states, by what plays them. */
const STATED: readonly (readonly [title: string, rows: readonly string[]])[] = [
  ['raggaemusicinfo.blogspot.com 2013/04', [`chops ${ska}`, `chops ${drop}`]],
  ['thepianoshed.com', [`left ${ska}`, `right ${drop}`]],
  ['primidi.com/rocksteady', [`kick ${drop}`, `snare ${drop}`]],
  ['weigu.lu/music/drumppy', ['closed hat x-x-X-x-x-x-X-x-']],
  ['artsentertainment.cc', ['kick x-------x-------', 'snare --------x-------']],
  ['Drummer magazine 98', ['snare --------x-------', 'kick x---x---x---x---', 'closed hat x-x-x-x-x-x-x-x-']],
  ['"Ska punk"', ['kick x---x---x---x---']],
  ['"The train beat"', ['kick x-------x-------', 'snare x-x-X-x-x-x-X-x-', `foot hat ${drop}`]],
  [
    'mattdeanworld.co.uk 2015/10/25',
    ['kick x-------x-------', `snare ${drop}`, 'kick x-----x-----', 'snare ---x-----x--'],
  ],
  ['"Waltz beats"', ['kick x-----------', 'snare ----x---x---', 'closed hat X---x---x---']],
  ['"10 drum beats in a 6/8', ['kick x-----', 'snare ---x--', 'closed hat XxxXxx']],
  ['"Groove of the week #7"', ['kick x---x---x---x---', 'snare ---x--x----x--x-']],
  ['"Soca and calypso"', ['closed hat x-o-x-o-x-o-x-o-']],
  ['"50 ways to get funky"', ['kick x-----x---x-----', `snare ${drop}`]],
  ['"The basic drum beats"', ['closed hat XxxxXxxxXxxxXxxx']],
  ['es.knowledger.de/0571690', ['kick x-x-x-x-x-x-x-x-']],
  ['rhythmnotes.net/reggae-drum-beats', [`snare ${drop}`]],
];

const rows = FEELS.flatMap((feel) =>
  feel.metres.flatMap(
    ({ metre, drums, evenBars = [], fill, dressing = [], variants, ways, chops, organ }) => {
      const named = [
        ...(ways?.others.flatMap((way) => way.drums) ?? []),
        ...drums,
        ...evenBars,
        ...fill,
        ...dressing,
        ...(variants?.hats.flat() ?? []),
        ...(variants?.strokes ?? []),
      ];
      return [
        ...named.map(({ sound, grid, source }) => ({ row: `${sound} ${grid}`, source })),
        { row: `chops ${chops.grid}`, source: chops.source },
        { row: `left ${organ.left.grid}`, source: organ.left.source },
        { row: `right ${organ.right.grid}`, source: organ.right.source },
        ...(rhythmCellsOf(feel.id, metre) ?? []).map(({ grid, source }) => ({ row: `bass ${grid}`, source })),
      ].map((each) => ({ ...each, feel: feel.id }));
    },
  ),
);

describe('the sources of the rows', () => {
  test('no row claims more than its publication states', () => {
    const published = rows.filter(({ source }) => source.startsWith('published: '));
    expect(published.length).toBeGreaterThan(40);
    for (const { feel, row, source } of published) {
      const stated = STATED.filter(([title]) => source.includes(title)).flatMap(([, grids]) => grids);
      expect(stated, `${feel}: ${source}`).toContain(row);
    }
  });

  test('each publication is needed', () => {
    for (const [title] of STATED)
      expect(
        rows.some(({ source }) => source.includes(title)),
        title,
      ).toBe(true);
  });

  test('what this program made is called its own: fills, what a drummer adds, and most rhythms of the bass', () => {
    for (const feel of FEELS) {
      for (const { fill, dressing = [] } of feel.metres) {
        for (const { source } of [...fill, ...dressing]) expect(source).toMatch(/^ours/);
      }
      expect(feel.layBack.source).toMatch(/^ours/);
      expect(feel.weights.source).toMatch(/^ours/);
    }
    const cells = rows.filter(({ row }) => row.startsWith('bass '));
    const own = cells.filter(({ source }) => source.startsWith('ours')).length;
    expect(own / cells.length).toBeGreaterThan(0.6);
    expect(own).toBeLessThan(cells.length);
  });
});
