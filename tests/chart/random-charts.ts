import fc from 'fast-check';

/** Chart texts out of the whole grammar, written as people write: wide or close, with comments, without a fault. */

interface Cell {
  readonly words: string;
  /** `1.`, `(3/4)`, `(key: D)`. */
  readonly heads: string;
  readonly opens: boolean;
  readonly closes: boolean;
  readonly times: string;
}

const chords = fc.constantFrom(
  'C',
  'F',
  'Gm7',
  'Bb',
  'Am F',
  'D7/F#',
  'C / / G',
  'N.C.',
  'Ebmaj7',
  'Dm G7',
  'C7(b9, #11)',
);
const later = fc.oneof(
  { weight: 5, arbitrary: chords },
  { weight: 2, arbitrary: fc.constantFrom('%', '/ / F /') },
  { weight: 2, arbitrary: fc.constantFrom('<F', '<Bbmaj7', 'C <G7', 'Am / <Dm') },
);

const plain = (words: string): Cell => ({ words, heads: '', opens: false, closes: false, times: '' });
const bars = fc.array(later, { minLength: 1, maxLength: 3 });

const straight = bars.map((all) => all.map(plain));
const repeated = fc.tuple(bars, fc.constantFrom('', '', 'x3')).map(([all, times]) =>
  all.map((words, index) => ({
    ...plain(words),
    opens: index === 0,
    closes: index === all.length - 1,
    times: index === all.length - 1 ? times : '',
  })),
);
const withEndings = fc
  .tuple(bars, fc.array(bars, { minLength: 1, maxLength: 3 }), fc.boolean(), straight)
  .map(([body, endings, first, after]) => [
    ...body.map((words, index) => ({ ...plain(words), opens: index === 0 })),
    ...endings.flatMap((all, ending) =>
      all.map((words, index) => {
        const last = index === all.length - 1;
        return {
          ...plain(words),
          heads: index > 0 ? '' : first && ending === 0 && endings.length > 1 ? '1.' : `${ending + 1}.`,
          closes: last && (ending < endings.length - 1 || endings.length === 1),
        };
      }),
    ),
    ...after,
  ]);
const change = fc.constantFrom(
  '(3/4)',
  '(6/8)',
  '(12/8)',
  '(2/2)',
  '(7/8)',
  '(5/4)',
  '(2/4)',
  '(9/8)',
  '(4/4)',
  '(key: D)',
  '(key: Eb)',
);
const changed = fc
  .tuple(change, fc.constantFrom('F', 'Gm', 'A7'))
  .map(([heads, words]) => [{ ...plain(words), heads }]);

const line = fc
  .record({
    groups: fc.array(fc.oneof(straight, straight, repeated, withEndings, changed), {
      minLength: 1,
      maxLength: 3,
    }),
    close: fc.boolean(),
    open: fc.boolean(),
    comment: fc.constantFrom('', '', '', ' ; softly', '  ; (3/4) | Am | by ear'),
  })
  .map(({ groups, close, open, comment }) => {
    const cells = groups.flat();
    const gap = close ? '' : ' ';
    let text = cells[0]?.opens ? `|:${gap}` : open ? '' : `|${gap}`;
    cells.forEach((cell, index) => {
      const next = cells[index + 1];
      const sign = `${cell.closes ? ':' : ''}|${next?.opens ? ':' : ''}`;
      const heads = cell.heads === '' ? '' : `${cell.heads} `;
      text += heads + cell.words;
      if (next === undefined && open && sign === '|') return;
      text += `${gap}${sign}${cell.times === '' ? '' : ` ${cell.times}`}`;
      if (next !== undefined) text += cell.times === '' ? gap : ' ';
    });
    return text + comment;
  });

const NAMES = ['Intro', 'Verse', 'Chorus', 'Bridge'];
const section = fc.record({
  lines: fc.array(line, { minLength: 1, maxLength: 2 }),
  named: fc.boolean(),
  again: fc.nat(3),
  comment: fc.constantFrom('', ' ; twice as loud'),
  blank: fc.boolean(),
});

/** Its first bar is a chord, so that `%` and slashes have something to go on with. */
export const randomCharts = fc
  .record({
    sections: fc.array(section, { minLength: 1, maxLength: 4 }),
    start: fc.constantFrom(
      '| C |',
      '| Am | F |',
      '(1) G | C |',
      '(3/4) (2) G | C |',
      '(6/8) (1/8) G7 | C |',
      '(12/8) (2/8) G7 | C |',
      'C',
    ),
    first: fc.constantFrom('', '; by heart\n', '\n'),
  })
  .map(({ sections, start, first }) => {
    const used: string[] = [];
    const rows = sections.flatMap(({ lines, named, again, comment, blank }, index) => {
      const space = blank ? [''] : [];
      const known = used[again];
      if (known !== undefined) return [...space, known + comment];
      const name = NAMES[index] ?? 'End';
      if (named) used.push(name);
      return [...space, ...(named ? [`${name}:${comment}`] : []), ...lines];
    });
    return `${first}${start}\n${rows.join('\n')}`;
  });
