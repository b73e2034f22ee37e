import { expect, test, vi } from 'vitest';
import { pageClock } from '../../src/app/clock';
import { openFile } from '../../src/app/pages/opening/open-file';
import { startSession } from '../../src/app/state';
import { failure } from '../../src/core/base';
import { printLesson, sampleLesson } from '../../src/core/lesson';
import { device } from '../storage/device';

const noAnswer = async () => failure('failed' as const);
const NO_COMPOSER: Parameters<typeof startSession>[1] = {
  compose: noAnswer,
  check: noAnswer,
  repair: noAnswer,
  explain: noAnswer,
  rankTakes: noAnswer,
};

/** A session on a device that keeps every lesson. */
async function start() {
  const { records: saved, openWindow } = device();
  const session = await startSession(openWindow(pageClock), NO_COMPOSER, { watch: () => () => {} });
  const lesson = () => session.lessons.getState().lesson;
  const firstNote = () => {
    const [piece] = lesson().pieces;
    return piece?.kind === 'line' ? piece.bars[0]?.notes[0]?.pitch.letter : null;
  };
  return { session, saved, lesson, firstNote, editor: () => session.editor.getState() };
}

const part = (id: string, step: string, octave: number): string =>
  `<part id="${id}"><measure number="1"><attributes><divisions>1</divisions><clef><sign>F</sign></clef></attributes><note><pitch><step>${step}</step><octave>${octave}</octave></pitch><duration>4</duration></note></measure></part>`;
const duet = `<score-partwise><part-list><score-part id="P1"><part-name>Cello</part-name></score-part><score-part id="P2"><part-name>Bass</part-name></score-part></part-list>${part('P1', 'A', 2)}${part('P2', 'E', 1)}</score-partwise>`;

test('another part of a file can be chosen, and undo brings the one before back with what was said of it', async () => {
  const { session, saved, lesson, firstNote, editor } = await start();
  const before = lesson().id;
  await openFile(session, new File([duet], 'Duet.musicxml'));
  expect(lesson().title).toBe('Duet');
  expect(lesson().id).not.toBe(before);
  expect(firstNote()).toBe('E');
  expect(editor().reading?.parts.map(({ name }) => name)).toEqual(['Cello', 'Bass']);
  const id = lesson().id;
  editor().reading?.choosePart('P1 1');
  expect([firstNote(), editor().reading?.part, lesson().id]).toEqual(['A', 'P1 1', id]);
  session.lessons.undo();
  expect([firstNote(), editor().reading?.part]).toEqual(['E', 'P2 1']);
  await session.saveNow();
  expect(saved.get(id)).toMatchObject({ title: 'Duet' });
  await session.startNewLesson();
  expect(editor().reading).toBeNull();
  session.end();
});

test('a lesson file is opened as before, and a file that is neither changes nothing', async () => {
  const { session, lesson, editor } = await start();
  const before = lesson();
  await openFile(session, new File(['<html/>'], 'page.html'));
  expect(editor().notice).toMatch(/not a MusicXML score/);
  await openFile(session, new File(['plain words'], 'words.txt'));
  expect(editor().notice).toMatch(/not a lesson/);
  await openFile(session, new File(['plain words'], 'line.mid'));
  expect(editor().notice).toMatch(/neither MusicXML nor MIDI/);
  expect(lesson()).toBe(before);
  await openFile(session, new File([`\u{FEFF}${printLesson(sampleLesson(1, 'other'))}`], 'lesson.json'));
  expect(lesson().title).toBe(sampleLesson(1, 'other').title);
  session.end();
});

test('a file of music whose reader does not load is not opened, and a sentence says so', async () => {
  vi.resetModules();
  vi.doMock('../../src/core/exchange/reading/read', () => {
    throw new Error('not reachable');
  });
  const alone = await import('../../src/app/pages/opening/open-file');
  const { session, lesson, editor } = await start();
  const before = lesson();
  await alone.openFile(session, new File([duet], 'Duet.musicxml'));
  vi.doUnmock('../../src/core/exchange/reading/read');
  expect(lesson()).toBe(before);
  expect(editor().notice).toMatch(/^The part of the page that reads music could not be loaded/);
});
