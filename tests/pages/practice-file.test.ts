import { expect, test } from 'vitest';
import { lessonOfFile } from '../../src/app/pages/practice/open-lesson';
import type { FileReader } from '../../src/app/reader';
import { failure, success } from '../../src/core/base';
import { newLesson, parseLesson, printLesson } from '../../src/core/lesson';
import type { NoAnswer } from '../../src/workers';

const LESSON = newLesson('lesson-1', 'Harbour steps');
const file = (text: string): File => new File([text], 'lesson.json');

/** A reader that answers as its worker does, or says why there is no answer. */
function readerThat(problem: NoAnswer | null) {
  const asked: string[] = [];
  const none = async () => failure('failed' as const);
  const reader: FileReader = {
    readLesson: async (bytes) => {
      const text = new TextDecoder().decode(bytes);
      asked.push(text);
      return problem === null ? success(parseLesson(text)) : failure(problem);
    },
    readMusic: none,
    readPicture: none,
    stop: () => undefined,
  };
  return { reader, asked };
}

test('a lesson file is read beside the practice page', async () => {
  const { reader, asked } = readerThat(null);
  const text = printLesson(LESSON);
  expect(await lessonOfFile(file(text), reader)).toEqual(success({ lesson: LESSON, said: null }));
  expect(asked).toEqual([text]);
});

test('where no worker can be started, or none is at hand, the page reads it itself', async () => {
  for (const reader of [readerThat('failed').reader, null])
    expect(await lessonOfFile(file(printLesson(LESSON)), reader)).toMatchObject({ ok: true });
});

test.each(['called off', 'silent'] as const)('a reading that is %s has a sentence', async (problem) => {
  const read = await lessonOfFile(file(printLesson(LESSON)), readerThat(problem).reader);
  expect(read.ok ? '' : read.problem).toMatch(/not read any further|came to no end/);
});

test('what is no lesson has the sentence that it has everywhere', async () => {
  const { reader } = readerThat(null);
  expect(await lessonOfFile(file('no lesson'), reader)).toEqual(await lessonOfFile(file('no lesson'), null));
});
