import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fillPracticePage } from '../../src/core/exchange';
import { type LinePiece, meanIt, parseLesson, sampleLesson, setNotes, setTitle } from '../../src/core/lesson';

const TEMPLATE = `<!doctype html><title>Practice page</title>
<script type="application/json" id="lesson"></script>
<script>run()</script>`;

const LESSON = sampleLesson(0, 'practice');

const page = (lesson: Parameters<typeof fillPracticePage>[1]): string =>
  fillPracticePage(TEMPLATE, lesson) ?? '';

/** What a browser takes for the block's text: all up to the first end of a script (HTML Standard, 13.2.5.4). */
const blockOf = (html: string): string =>
  /<script type="application\/json" id="lesson">([\s\S]*?)<\/script/i.exec(html)?.[1] ?? '';

test('the lesson in the page is the lesson that was put in', () => {
  expect(parseLesson(blockOf(page(LESSON)))).toEqual({ ok: true, value: LESSON });
});

/** Each would end the block, open a comment in it, or be replaced by something, if it stood there as typed. */
const HOSTILE = [
  '</script><script>alert(1)</script>',
  '</SCRIPT ><img src=x onerror=alert(1)>',
  '<!--<script>',
  ']]>',
  '&lt;/script&gt;',
  "$& $' $` $1",
  'line\u2028separator\u2029',
  '\\u003c/script>',
];

test.each(HOSTILE)('%j stays text', (typed) => {
  const lesson = setNotes(setTitle(LESSON, typed), typed);
  const html = page(lesson);
  expect(html.match(/<\/?script|<!--/gi)).toEqual(page(LESSON).match(/<\/?script|<!--/gi));
  expect(parseLesson(blockOf(html))).toEqual({ ok: true, value: lesson });
});

test('any text at all stays text', () => {
  const sign = fc.oneof(
    fc.constantFrom('<', '>', '/', '&', '!', '-', '"', '\\', '$'),
    fc.string({ unit: 'grapheme' }),
  );
  fc.assert(
    fc.property(fc.array(sign, { maxLength: 40 }), (signs) => {
      const lesson = setNotes(LESSON, signs.join(''));
      const block = blockOf(page(lesson));
      expect(block).not.toMatch(/[<>&]/);
      expect(parseLesson(block)).toEqual({ ok: true, value: lesson });
    }),
    { seed: 7, numRuns: 100 },
  );
});

test('a template without a place for the lesson is refused', () => {
  expect(fillPracticePage('<!doctype html>', LESSON)).toBeNull();
});

test('what the teacher has answered with “I mean it” stays behind, in every version', () => {
  const line = LESSON.pieces.find((piece): piece is LinePiece => piece.kind === 'line');
  if (line === undefined) throw new Error('the sample has a line');
  const said = { about: 'music', bar: 0, id: 'said', message: 'said' } as const;
  const answered = meanIt(LESSON, line.id, said);
  expect(JSON.stringify(answered)).toContain('"meant"');
  const own = { id: line.id, own: { meant: [{ bar: null, about: 'notes', fingerprint: 1 }] } } as const;
  const whole: typeof LESSON = {
    ...answered,
    versions: [
      {
        id: 'version-1',
        name: 'for Wednesday',
        own: { instrument: LESSON.instrument },
        lines: [own, { id: line.id, own: {}, without: ['meant', 'count'] }],
        pieces: [{ ...line, meant: own.own.meant }],
      },
    ],
  };
  const sent = blockOf(page(whole));
  expect(sent).not.toMatch(/meant|fingerprint/);
  expect(sent).toContain('for Wednesday');
  expect(sent).toContain('"without":["count"]');
});
