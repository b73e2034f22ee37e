import { describe, expect, it } from 'vitest';
import { barTicks, ticks } from '../../src/core/base';
import { harmonyAt, parseChart, printChart } from '../../src/core/chart';
import { describeKey } from '../../src/core/theory';
import { chart, harmony, metre, played, read } from './read';

describe('bars', () => {
  it.each([
    ['| Am | F | C | G |', 'Am·4 | F·4 | C·4 | G·4'],
    ['Am | F\nC | G', 'Am·4 | F·4 | C·4 | G·4'],
    ['Am|F  |C|G', 'Am·4 | F·4 | C·4 | G·4'],
    ['C G', 'C·2 G·2'],
    ['C F G', 'C·2 F·1 G·1'],
    ['C F G C', 'C·1 F·1 G·1 C·1'],
    ['C / / G', 'C·3 G·1'],
    ['C/// ', 'C·4'],
    ['C // G', 'C·3 G·1'],
    ['C | / / G /', 'C·4 | C·2 G·2'],
    ['C G | %', 'C·2 G·2 | C·2 G·2'],
    ['C C G G', 'C·2 G·2'],
    ['N.C. | nc | n.c. C', 'N.C.·4 | N.C.·4 | N.C.·2 C·2'],
    ['F/A | C7(b9, #11)', 'F/A·4 | C7(♭9,♯11)·4'],
    ['C || G', 'C·4 | G·4'],
    ['C ; the tonic | F\n; only words\nG', 'C·4 | G·4'],
  ])('%j', (text, expected) => {
    expect(harmony(chart(text))).toBe(expected);
  });

  it.each([
    ['3/4', 'C G', 'C·2 G·1'],
    ['3/4', 'C F G', 'C·1 F·1 G·1'],
    ['2/2', 'C G', 'C·2 G·2'],
    ['2/2', 'C F G C', 'C·1 F·1 G·1 C·1'],
    ['6/8', 'C G', 'C·1.5 G·1.5'],
    ['6/8', 'C F G', 'C·1 F·1 G·1'],
    ['12/8', 'C F G', 'C·3 F·1.5 G·1.5'],
    ['2/4', 'C F', 'C·1 F·1'],
    ['5/4', 'C F', 'C·3 F·2'],
    ['7/8', 'C F', 'C·2 F·1.5'],
    ['7/8', 'C F G', 'C·1 F·1 G·1.5'],
    ['7/8', 'C / / F / / /', 'C·1.5 F·2'],
    ['9/8', 'C F G', 'C·1.5 F·1.5 G·1.5'],
    ['12/8', 'C / / G', 'C·4.5 G·1.5'],
  ])('in %s %j', (where, text, expected) => {
    expect(harmony(chart(text, where))).toBe(expected);
  });

  it('knows what sounds when', () => {
    const [bar] = chart('C / / G').bars;
    if (!bar) throw new Error('no bar');
    const at = (tick: number) => {
      const found = harmonyAt(bar, ticks(tick));
      return found?.kind === 'chord' ? found.chord.symbol : found;
    };
    expect([at(0), at(2879), at(2880), at(3839), at(3840)]).toEqual(['C', 'C', 'G', 'G', null]);
  });

  it.each([
    ['a blank of no width', '\u200b'],
    ['a mark of direction', '\u200e'],
    ['a turn of direction', '\u202e'],
    ['the mark of a file’s beginning', '\ufeff'],
    ['a zero', '\u0000'],
    ['a tag of two units', '\u{e0041}'],
  ])('reads past %s, which nobody sees, and keeps the places', (_, sign) => {
    const { bars, sections } = chart(`Verse:${sign}\n${sign}| Am${sign} |${sign}F ${sign} C7 |`);
    expect(sections.map(({ name }) => name)).toEqual(['Verse']);
    expect(harmony(chart(`| Am${sign} |${sign}F ${sign} C7 |`))).toBe('Am·4 | F·2 C7·2');
    const [am] = bars;
    expect(am?.place).toEqual({ line: 2, column: 3 + sign.length, length: 2 });
  });

  it('places every bar in the text', () => {
    const { bars } = chart('Verse:\n  | Am  | F C |');
    expect(bars.map((bar) => bar.place)).toEqual([
      { line: 2, column: 5, length: 2 },
      { line: 2, column: 11, length: 3 },
    ]);
  });
});

describe('sections', () => {
  const text = 'C |\nVerse:\nAm | F\nChorus: ; twice\n|: C | G :|\nverse\n| Dm |';

  it('names them, repeats one by its name alone, and goes on without a name', () => {
    const { sections } = chart(text);
    expect(sections.map((section) => [section.name, section.start, section.length, section.again])).toEqual([
      [null, 0, 1, false],
      ['Verse', 1, 2, false],
      ['Chorus', 3, 2, false],
      ['Verse', 5, 2, true],
      [null, 7, 1, false],
    ]);
    expect(harmony(chart(text))).toBe('C·4 | Am·4 | F·4 | C·4 | G·4 | Am·4 | F·4 | Dm·4');
    expect(played(chart(text))).toBe('1 2 3 4 5 4 5 6 7 8');
  });

  it('a letter can be a name', () => {
    expect(harmony(chart('A:\nC | G\nB:\nF\nA'))).toBe('C·4 | G·4 | F·4 | C·4 | G·4');
  });
});

describe('repeats and endings', () => {
  it.each([
    ['|: C | G :|', '1 2 1 2'],
    ['|: C | G :| x3', '1 2 1 2 1 2'],
    ['C | G :|x3 F', '1 2 1 2 1 2 3'],
    ['C |: D :| E :| F', '1 2 2 3 3 4'],
    ['C |: D :|: E :|', '1 2 2 3 3'],
    ['|: C |1. D :|2. E | F', '1 2 1 3 4'],
    ['|: C |1. D | E :|2. F | G | A', '1 2 3 1 4 5 6'],
    ['|: C |1.,2. D :|3. E || F', '1 2 1 2 1 3 4'],
    ['|: C |1.-3. D :|4. E', '1 2 1 2 1 2 1 3'],
    ['|: C |1. D :|2. E :|3. F', '1 2 1 3 1 4'],
    ['|: C |1. D :|2. E |: F :|', '1 2 1 3 4 4'],
    ['A:\nC | D :|\nB:\nE :|', '1 2 1 2 3 3'],
    ['A:\n|: C\nB:\nD :|', '1 2 1 2'],
  ])('%j is played %s', (text, order) => {
    expect(played(chart(text))).toBe(order);
  });

  it('a last ending lasts as long as the one before it, or up to a double bar line', () => {
    const endings = (text: string) =>
      chart(text)
        .bars.map((bar) => bar.ending?.join('') ?? '-')
        .join(' ');
    expect(endings('|: C |1. D :|2. E | F')).toBe('- 1 2 -');
    expect(endings('|: C |1. D :|2. E | F || G')).toBe('- 1 2 2 -');
    expect(endings('|: C |1. D | E :|2. F | G | A')).toBe('- 1 1 2 2 -');
  });
});

describe('directives', () => {
  it('a metre holds from its bar on', () => {
    expect(harmony(chart('C | (3/4) D | E F |\n(6/8)\nG'))).toBe('C·4 | D·3 | E·2 F·1 | G·3');
  });

  it('a pickup is a short bar 0 that is not counted', () => {
    const { bars } = chart('(1) G7 | C | F');
    expect(bars.map((bar) => [bar.number, bar.pickup, barTicks(bar.metre)])).toEqual([
      [0, true, 960],
      [1, false, 3840],
      [2, false, 3840],
    ]);
  });

  it('a pickup of an eighth or two is written as such where beats are dotted', () => {
    const lengthOf = (text: string) => chart(text).bars.map(({ metre }) => barTicks(metre))[0];
    expect(lengthOf('(6/8) (1/8) G7 | C')).toBe(480);
    expect(lengthOf('(6/8) (2/8) G7 | C')).toBe(960);
    expect(lengthOf('(1/8) G7 | C')).toBe(480);
    expect(chart('(6/8) (1/8) G7 | C').bars.map(({ number, pickup }) => [number, pickup])).toEqual([
      [0, true],
      [1, false],
    ]);
    for (const text of ['| (6/8) (1/8) G7 | C |', '| (12/8) (2/8) G7 | C |']) {
      expect(printChart(chart(text))).toBe(text);
    }
  });

  it('half a dotted beat is no pickup: it is refused with what can be written', () => {
    const { problems } = read('(6/8) (0.5) G7 | C');
    expect(problems).toMatchObject([{ line: 1, column: 7, length: 5, suggestion: '(1/8)' }]);
    expect(problems[0]?.message).toMatch(/A beat of 6\/8 is a dotted quarter/);
    expect(read('(9/8) (1.5) G7 | C').problems).toHaveLength(1);
    expect(read('(7/8) (0.5) G7 | C').problems).toEqual([]);
  });

  it.each(['(pickup 1) G7 | C |', '(Pickup: 1) G7 | C |'])(
    '%s asks for the beats alone, and offers them',
    (text) => {
      const [problem, ...others] = read(text).problems;
      expect(others).toEqual([]);
      expect(problem).toMatchObject({ line: 1, column: 1, suggestion: '(1)' });
      expect(problem?.message).toMatch(/pickup is written by its beats alone/);
    },
  );

  it('a key holds from its bar on', () => {
    const keys = chart('C | (key: Bb) F | G |\n(key: Dm) A').bars.map(
      (bar) => bar.key && describeKey(bar.key),
    );
    expect(keys).toEqual([null, 'B♭ major', 'B♭ major', 'D minor']);
  });
});

describe('problems', () => {
  /** 61 letters: one more than a name can have. */
  const LONG_NAME = 'The verse that nobody can remember since its name has no endx';
  const problems = (text: string) =>
    read(text).problems.map(({ line, column, length, message }) => [`${line}:${column}+${length}`, message]);

  it.each([
    ['Am | Foo', '1:6+3', /“Foo” begins like a chord on F/],
    ['Am\n  am ', '2:3+2', /capital letter/],
    ['Am | <script>', '1:7+7', /not a chord symbol/],
    ['Am | | F', '1:4+3', /bar is empty/],
    ['%', '1:1+1', /no bar before/],
    ['/ / G', '1:1+1', /no chord stands before/],
    ['C G / |', '1:1+5', /make 3 beats here, but a bar of 4\/4 has 4/],
    ['C D E F G', '1:1+9', /5 chords are too many/],
    ['C % | D', '1:3+1', /% repeats a whole bar/],
    ['|: C | D', '1:1+2', /never ends/],
    ['|: C |: D :|', '1:6+2', /before the one before it ends/],
    [':| C', '1:1+2', /no bar before it to repeat/],
    ['|: C :| :|', '1:9+2', /has ended there already; leave one of the two out/],
    ['|: C | D :|x3\n:| F', '2:1+2', /has ended there already/],
    ['C | x3 D', '1:5+2', /right after :\|/],
    [
      'C | (3/4 F',
      '1:5+4',
      /^“\(3\/4” opens a bracket and does not close it\. Brackets before a bar hold a metre/,
    ],
    ['(key: C | F', '1:1+5', /^“\(key:” opens a bracket and does not close it\./],
    ['[A\nC', '1:1+2', /^“\[A” opens a bracket and does not close it\. The name of a section/],
    ['C7(b9,#11 | F', '1:1+9', /^“C7\(b9,#11” opens a bracket and does not close it\. Write \) after it\.$/],
    ['|: C :| x1', '1:9+2', /2 to 20 times/],
    ['C | (1/8) D', '1:5+5', /Only the first bar/],
    ['(5/8) C', '1:1+5', /5\/8 is not a metre/],
    ['(9) C', '1:1+3', /fewer than 4 beats/],
    ['C | (2) D', '1:5+3', /Only the first bar/],
    ['(key: X) C', '1:1+8', /A key is a note name/],
    ['(key: H) C', '1:1+8', /the German H is B/],
    ['(soft) C', '1:1+6', /Brackets before a bar/],
    ['C (3/4) D', '1:3+5', /beginning of a bar/],
    ['C 1. D', '1:3+2', /beginning of a bar/],
    ['C |1. D', '1:7+1', /does not lead back/],
    ['C | 2.', '1:5+2', /no bar follows/],
    ['Verse\nC', '1:1+5', /no section “Verse” yet/],
    ['Verse: C', '1:1+6', /on a line of its own/],
    [
      `${LONG_NAME}:\nC`,
      '1:1+62',
      /^“The verse that nobod…” is too long for the name of a section \(61 characters; 60 at most\)/m,
    ],
    [`[${LONG_NAME}]\nC`, '1:1+63', /^“The verse that nobod…” is too long for the name of a section/m],
    ['A:\nC\nA:\nD', '3:1+2', /already/],
    ['A:\nB:\nC\nA', '4:1+1', /no bars to repeat/],
    ['A:\nC\nA\n:|', '4:1+2', /name alone cannot end a repeat/],
  ])('%j', (text, place, message) => {
    const found = problems(text);
    expect(found.map(([where]) => where)).toContain(place);
    expect(found.map(([, sentence]) => sentence).join('\n')).toMatch(message);
  });

  it('suggests the chord with its bracket closed, and wide letters as the usual ones', () => {
    const suggested = (text: string) => read(text).problems.map(({ suggestion }) => suggestion);
    expect(suggested('C7(b9,#11 | F')).toEqual(['C7(♭9,♯11)']);
    expect(suggested('Ｃ | Ｇ７')).toEqual(['C', 'G7']);
  });

  it('suggests as much of a long name as a section can have, and reads it then', () => {
    for (const text of [`${LONG_NAME}:`, `[${LONG_NAME}]`]) {
      const [problem] = read(`${text}\nC | F`).problems;
      const mended = chart(`${problem?.suggestion}\nC | F`);
      expect(mended.sections.map(({ name }) => name)).toEqual([LONG_NAME.slice(0, 60)]);
    }
    expect(chart(`${LONG_NAME.slice(0, 60)}:\nC`).sections[0]?.name).toBe(LONG_NAME.slice(0, 60));
  });

  it('plays a repeat that is closed twice as often as its first end says', () => {
    expect(played(read('|: C | D :|x3 | :| F').chart)).toBe('1 2 1 2 1 2 3');
  });

  it('leaves the rest of the chart alone', () => {
    const { chart: rest } = read('Am | Foo | C G x |\n|: F | Bar');
    expect(harmony(rest)).toBe('Am·4 | ?Foo·4 | C·2 G·1 ?x·1 | F·4 | ?Bar·4');
    expect(played(rest)).toBe('1 2 3 4 5');
  });

  it('comes in the order of the text', () => {
    const lines = problems('|: Foo\nBar').map(([where]) => where);
    expect(lines).toEqual(['1:1+2', '1:4+3', '2:1+3']);
  });

  it('cuts a chart that is longer than anyone writes', () => {
    const { chart: long, problems: found } = parseChart('A:\nC|D|E|F\n'.concat('A\n'.repeat(3000)), metre());
    expect(long.bars).toHaveLength(2000);
    expect(found.map((problem) => problem.message).join()).toMatch(/at most 2000 bars or sections/);
  });
});
