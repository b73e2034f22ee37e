import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  deriveSheets,
  describeLessonProblem,
  parseLesson,
  printLesson,
  sampleLesson,
} from '../../src/core/lesson';

const lesson = sampleLesson(0, 'test');
const text = printLesson(lesson);

function sentence(source: string): string {
  const result = parseLesson(source);
  return result.ok ? 'read' : describeLessonProblem(result.problem);
}

/** Of a lesson file of any version: its pieces with their charts and the notes of each bar. */
const musicOf = (file: string): unknown =>
  JSON.parse(file, (name, value) =>
    name === 'notes' && Array.isArray(value)
      ? value.map(({ start, duration, pitch }) => ({ start, duration, pitch }))
      : value,
  ).pieces.map(({ id, kind, chartText, bars }: Record<string, unknown>) => ({
    id,
    kind,
    chartText,
    bars: Array.isArray(bars) ? bars.map((bar) => ({ ...bar, harmony: null })) : bars,
  }));

/** The lesson file with one value replaced, by its path. */
function spoiled(path: readonly (string | number)[], value: unknown): string {
  const document: unknown = JSON.parse(text);
  let at = document as Record<string | number, unknown>;
  for (const step of path.slice(0, -1)) {
    at = at[step] as Record<string | number, unknown>;
  }
  at[path.at(-1) ?? ''] = value;
  return JSON.stringify(document);
}

describe('the lesson file', () => {
  it.each([0, 1])('gives sample %i back as it was', (index) => {
    const sample = sampleLesson(index, 'test');
    expect(parseLesson(printLesson(sample))).toEqual({ ok: true, value: sample });
  });

  it('is brought up to date from version 1, which knew no aims and no takes', () => {
    const old = readFileSync(new URL('version-1.json', import.meta.url), 'utf8');
    const read = parseLesson(old);
    if (!read.ok) throw new Error(describeLessonProblem(read.problem));
    const [line, blank] = read.value.pieces;
    expect(read.value.version).toBe(3);
    expect(line).toMatchObject({
      name: 'Short drill',
      aims: [],
      sections: [],
      parkedSections: [],
      takes: [],
    });
    expect(line).toMatchObject({ bars: [JSON.parse(old).pieces[0].bars[0], { harmony: 'C6/9@3840' }] });
    expect(blank).toEqual(JSON.parse(old).pieces[1]);
    expect(parseLesson(printLesson(read.value))).toEqual(read);
  });

  it('is brought up to date from version 2, which listed articulations', () => {
    const old = readFileSync(new URL('version-2/marks.json', import.meta.url), 'utf8');
    const read = parseLesson(old);
    if (!read.ok) throw new Error(describeLessonProblem(read.problem));
    const [line] = read.value.pieces;
    if (line?.kind !== 'line') throw new Error('The first piece is a line.');
    expect(read.value.version).toBe(3);
    expect(line.bars[0]?.notes.map(({ marks }) => marks)).toEqual([
      { damping: 'ghost' },
      { stress: 'accent', length: 'staccato' },
      undefined,
    ]);
    expect(line.parked[0]?.notes[0]?.marks).toEqual({ stress: 'accent' });
    expect(line.takes[0]?.bars[0]?.notes[0]?.marks).toEqual({ length: 'staccato' });
    expect(JSON.stringify(read.value)).not.toContain('articulations');
    expect(parseLesson(printLesson(read.value))).toEqual(read);
  });

  it.each(readdirSync(new URL('version-2', import.meta.url)))(
    'opens version 2’s %s with all of its bars',
    (name) => {
      const old = readFileSync(new URL(`version-2/${name}`, import.meta.url), 'utf8');
      const read = parseLesson(old);
      if (!read.ok) throw new Error(describeLessonProblem(read.problem));
      expect(JSON.parse(old).version).toBe(2);
      expect(read.value.title).toBe(JSON.parse(old).title);
      expect(musicOf(printLesson(read.value))).toEqual(musicOf(old));
      for (const sheet of deriveSheets(read.value))
        if (sheet.kind === 'line') expect(sheet.problems).toEqual([]);
      expect(parseLesson(printLesson(read.value))).toEqual(read);
    },
  );

  it('makes two techniques of what version 2 called space, and keeps its aims', () => {
    const old = JSON.parse(readFileSync(new URL('version-2/marks.json', import.meta.url), 'utf8'));
    const aims = [
      { where: { kind: 'bar', id: old.pieces[0].bars[0].id }, wanted: ['chord tones', 'space'] },
      { where: { kind: 'line' }, forbidden: ['space'] },
    ];
    const read = (feel: string) => {
      const found = parseLesson(JSON.stringify({ ...old, pieces: [{ ...old.pieces[0], feel, aims }] }));
      if (!found.ok) throw new Error(describeLessonProblem(found.problem));
      const [line] = found.value.pieces;
      if (line?.kind !== 'line') throw new Error('The first piece is a line.');
      return line;
    };
    const line = read('rocksteady');
    expect(line.techniques).toEqual(['chord tones', 'beat one silent', 'long silences']);
    expect(line.aims.map(({ wanted, forbidden }) => wanted ?? forbidden)).toEqual([
      ['chord tones', 'beat one silent'],
      ['beat one silent', 'long silences'],
    ]);
    expect(read('early-ska').aims[0]?.wanted).toEqual(['chord tones', 'long silences']);
  });

  it('keeps marks, dynamics and words, and refuses what contradicts itself', () => {
    const marked = (marks: unknown): string => spoiled(['pieces', 0, 'bars', 0, 'notes', 0, 'marks'], marks);
    const all = { stress: 'accent', length: 'tenuto', damping: 'palm mute', pluck: 'i', exit: 'hammer' };
    expect(sentence(marked(all))).toBe('read');
    expect(sentence(marked({ length: 'let ring', damping: 'ghost' }))).toMatch(/neither dead nor muted/);
    expect(sentence(marked({ exit: 'bend' }))).toMatch(/damaged/);
    const inBar = (name: string, value: unknown): string => spoiled(['pieces', 0, 'bars', 0, name], value);
    const hairpin = [{ at: 0, level: 'p', hairpin: 'crescendo' }, { at: 3840 }];
    expect(sentence(inBar('dynamics', hairpin))).toBe('read');
    expect(sentence(inBar('dynamics', [{ at: 0 }, { at: 0, level: 'f' }]))).toMatch(/one a place/);
    expect(sentence(inBar('words', 'dig in'))).toBe('read');
    expect(sentence(inBar('words', 'x'.repeat(81)))).toMatch(/damaged/);
  });

  it.each([
    ['a text that is not JSON', 'Am | Dm', /not readable as JSON/],
    ['another program’s JSON', '{"format":"something","version":1}', /not a lesson of Ground Bass/],
    ['a list', '[]', /not a lesson of Ground Bass/],
    ['a lesson from a newer version', spoiled(['version'], 4), /newer Ground Bass \(version 4/],
    ['a damaged tempo', spoiled(['pieces', 0, 'tempo'], 'fast'), /damaged at “pieces › 1 › tempo”/],
    ['a number where a list belongs', spoiled(['pieces'], 7), /damaged at “pieces”/],
    ['no piece at all', spoiled(['pieces'], []), /damaged at “pieces”/],
    [
      'a note before the one before it',
      spoiled(['pieces', 0, 'bars', 0, 'notes', 1, 'start'], 0),
      /without overlapping/,
    ],
    ['an endless text', `"${'a'.repeat(5_000_001)}"`, /too large/],
  ])('says in a sentence what is wrong with %s', (_, source, expected) => {
    expect(sentence(source)).toMatch(expected);
    expect(sentence(source)).toMatch(/Nothing was changed\.$/);
  });

  it('never throws, whatever the text is', () => {
    fc.assert(
      fc.property(fc.oneof(fc.json(), fc.string()), (source) => {
        expect(parseLesson(source).ok).toBe(false);
      }),
      { seed: 20260702, numRuns: 500 },
    );
  });

  it('never throws on a lesson with one value spoiled', () => {
    const paths = leavesOf(JSON.parse(text));
    fc.assert(
      fc.property(fc.constantFrom(...paths), fc.jsonValue(), (path, value) => {
        sentence(spoiled(path, value));
      }),
      { seed: 20260703, numRuns: 500 },
    );
  });
});

function leavesOf(value: unknown, path: readonly (string | number)[] = []): (string | number)[][] {
  if (typeof value !== 'object' || value === null) {
    return [[...path]];
  }
  return Object.entries(value).flatMap(([key, inner]) =>
    leavesOf(inner, [...path, Array.isArray(value) ? Number(key) : key]),
  );
}
