import fc from 'fast-check';
import { deflateSync, strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { holdsLesson, readLessonLink, writeLessonLink } from '../../src/core/exchange';
import { fromBase64Url, toBase64Url } from '../../src/core/exchange/link/base64url';
import {
  type Lesson,
  newLesson,
  SAMPLE_TITLES,
  sampleLesson,
  setChartText,
  setNotes,
  setTitle,
} from '../../src/core/lesson';

const PAGE = 'https://example.org/some/where/';
const samples: readonly Lesson[] = SAMPLE_TITLES.map((_, index) => sampleLesson(index, 'sample'));

const linkTo = (value: unknown): string =>
  `${PAGE}#lesson=${toBase64Url(deflateSync(strToU8(typeof value === 'string' ? value : JSON.stringify(value))))}`;

const sentence = (link: string): string => {
  const read = readLessonLink(link);
  if (read.ok) throw new Error('The link was read.');
  return read.problem.message;
};

describe('a lesson link', () => {
  it('brings back the whole lesson', () => {
    for (const lesson of samples) {
      const link = writeLessonLink(lesson, PAGE);
      expect(holdsLesson(link)).toBe(true);
      expect(readLessonLink(link)).toEqual({ ok: true, value: lesson });
    }
  });

  it('brings back whatever was typed', () => {
    const text = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.string(),
      fc.constantFrom('♭♯ Ü 漢 🎸', '<script>'),
    );
    fc.assert(
      fc.property(text, text, text, (title, notes, chart) => {
        const typed = setChartText(setNotes(setTitle(newLesson('id', 'x'), title), notes), 'piece-1', chart);
        const lesson = JSON.parse(JSON.stringify(typed));
        expect(readLessonLink(writeLessonLink(lesson, PAGE))).toEqual({ ok: true, value: lesson });
      }),
      { seed: 4, numRuns: 60 },
    );
  });

  it('keeps everything after the # and uses only signs that need no escaping', () => {
    for (const lesson of samples) {
      const link = writeLessonLink(lesson, `${PAGE}#lesson=old`);
      expect(link.startsWith(`${PAGE}#lesson=`)).toBe(true);
      expect(link.slice(PAGE.length + 1)).toMatch(/^lesson=[\w-]+$/);
    }
  });

  it('is short enough to be sent for a lesson with one line', () => {
    const lengths = samples.map((lesson) => writeLessonLink(lesson, PAGE).length);
    expect(Math.max(...lengths)).toBeLessThan(2_000);
  });
});

describe('a hostile or broken link does nothing but show a sentence', () => {
  const good = writeLessonLink(samples[0] ?? newLesson('id', 'x'), PAGE);

  it.each([
    ['no lesson', PAGE],
    ['nothing after the mark', `${PAGE}#lesson=`],
    ['signs from another alphabet', `${PAGE}#lesson=%00<script>`],
    ['bytes that are not packed', `${PAGE}#lesson=AAAA`],
    ['a link cut off', good.slice(0, -40)],
    ['JSON of something else', linkTo({ hello: 'world' })],
    ['no JSON', linkTo('{"format": "ground-bass-lesson", ')],
    ['a list where a lesson belongs', linkTo([[[[]]]])],
    ['a number where a list belongs', linkTo({ ...samples[0], pieces: 5 })],
    ['a newer lesson', linkTo({ ...samples[0], version: 99 })],
    ['an own __proto__', linkTo('{"__proto__": {"format": "ground-bass-lesson"}}')],
  ])('%s', (_, link) => {
    expect(sentence(link)).toMatch(/^[A-Z].+\.$/s);
  });

  it('ten megabytes of nesting', () => {
    expect(sentence(linkTo('['.repeat(10_000_000)))).toMatch(/\.$/);
    expect(sentence(linkTo(`{"pieces":${'['.repeat(2_000_000)}`))).toMatch(/\.$/);
  });

  it('a bomb of sixty megabytes, without ever holding it', () => {
    // Each deflated block of zeros unpacks to a thousand times its size.
    const bomb = toBase64Url(deflateSync(new Uint8Array(60_000_000), { level: 6 }));
    expect(sentence(`${PAGE}#lesson=${bomb}`)).toMatch(/cannot be read/);
  });

  it('a link too long for any browser', () => {
    expect(sentence(`${PAGE}#lesson=${'A'.repeat(3_000_000)}`)).toMatch(/too long/);
  });

  it('any damage to a good link gives a lesson or a sentence, and never throws', () => {
    fc.assert(
      fc.property(fc.nat({ max: good.length }), fc.string({ maxLength: 4 }), (at, text) => {
        const read = readLessonLink(good.slice(0, at) + text + good.slice(at + 1));
        expect(read.ok || read.problem.message.length > 10).toBe(true);
      }),
      { seed: 5, numRuns: 200 },
    );
  });
});

describe('the alphabet of addresses', () => {
  it('agrees with the runtime, and reads back what it wrote', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 70 }), (bytes) => {
        const text = toBase64Url(bytes);
        expect(text).toBe(Buffer.from(bytes).toString('base64url'));
        expect(fromBase64Url(text)).toEqual(bytes);
      }),
      { seed: 6 },
    );
  });
});
