import { expect, test, vi } from 'vitest';
import { pageClock } from '../../src/app/clock';
import { openFile } from '../../src/app/pages/opening/open-file';
import { picturesBeside } from '../../src/app/pages/opening/picture';
import { startSession } from '../../src/app/state';
import { failure } from '../../src/core/base';
import { fillPracticePage, writeMusicXml } from '../../src/core/exchange';
import { deriveSheets, printLesson, sampleLesson, setChartText } from '../../src/core/lesson';
import { device } from '../storage/device';
import { directReader } from '../support/direct-reader';

const noAnswer = async () => failure('failed' as const);
const NO_COMPOSER: Parameters<typeof startSession>[1] = {
  compose: noAnswer,
  check: noAnswer,
  brought: noAnswer,
  repair: noAnswer,
  explain: noAnswer,
  rankTakes: noAnswer,
  regrade: noAnswer,
  keysFor: noAnswer,
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

/** What is asked about the file, once it was read. */
async function asked(editor: () => ReturnType<Awaited<ReturnType<typeof start>>['editor']>) {
  await vi.waitFor(() => expect(editor().asking?.busy).toBe(false));
  const { asking } = editor();
  if (asking === null) throw new Error('Nothing is asked.');
  return asking;
}

test('a file is asked about before it is opened, another part can be read, and undo brings the one before back', async () => {
  const { session, saved, lesson, firstNote, editor } = await start();
  const before = lesson().id;
  await openFile(session, new File([duet], 'Duet.musicxml'), directReader);
  expect(lesson().id).toBe(before);
  const question = await asked(editor);
  expect(question.read.parts.all.map(({ name }) => name)).toEqual(['Cello', 'Bass']);
  expect(question.read.facts.feel).toBeNull();
  question.choose({ feel: 'rocksteady' });
  (await asked(editor)).open();
  await vi.waitFor(() => expect(lesson().title).toBe('Duet'));
  expect(lesson().id).not.toBe(before);
  expect(lesson().pieces[0]).toMatchObject({ feel: 'rocksteady' });
  expect(firstNote()).toBe('E');
  const id = lesson().id;
  await vi.waitFor(() => expect(editor().reading).not.toBeNull());

  editor().reading?.askAgain?.();
  (await asked(editor)).choose({ part: 'P1 1' });
  const other = await asked(editor);
  expect(other.wishes.feel).toBe('rocksteady');
  other.open();
  await vi.waitFor(() => expect(firstNote()).toBe('A'));
  const told = () => editor().reading?.sentences.join(' ');
  expect(told()).toContain('“Cello”');
  expect(lesson().id).toBe(id);
  session.lessons.undo();
  expect(firstNote()).toBe('E');
  expect(told()).toContain('“Bass”');
  await session.saveNow();
  expect(saved.get(id)).toMatchObject({ title: 'Duet' });
  await session.startNewLesson();
  expect(editor().reading).toBeNull();
  session.end();
});

test('a file that is left is not opened', async () => {
  const { session, lesson, editor } = await start();
  const before = lesson();
  await openFile(session, new File([duet], 'Duet.musicxml'), directReader);
  (await asked(editor)).leave();
  expect([editor().asking, lesson()]).toEqual([null, before]);
  session.end();
});

test('a file of our own is opened as it was saved, its feel with it', async () => {
  const { session, lesson, editor } = await start();
  const own = sampleLesson(1, 'own');
  const [sheet] = deriveSheets(own);
  if (sheet?.kind !== 'line') throw new Error('A sample has a line.');
  await openFile(session, new File([writeMusicXml(sheet, own.title)], 'own.musicxml'), directReader);
  expect(editor().asking).toBeNull();
  expect(lesson().title).toBe(own.title);
  expect(lesson().pieces[0]).toMatchObject({ feel: sheet.feel.id });
  session.end();
});

test('a lesson file is opened as before, and a file that is neither changes nothing', async () => {
  const { session, lesson, editor } = await start();
  const before = lesson();
  await openFile(session, new File(['<html/>'], 'page.html'), directReader);
  expect(editor().notice).toMatch(/no practice page of Ground Bass/);
  await openFile(session, new File(['plain words'], 'words.txt'), directReader);
  expect(editor().notice).toMatch(/text and no lesson\. If it holds chords, copy them into the chord chart/);
  await openFile(session, new File(['G|--0--2--|\nD|--------|'], 'tab.txt'), directReader);
  expect(editor().notice).toMatch(/tab as text, but no line of it has four to six strings/);
  await openFile(session, new File(['%PDF-1.7 …'], 'sheet.pdf'), directReader);
  expect(editor().notice).toMatch(/^This is a PDF/);
  await openFile(session, new File(['plain words'], 'line.mid'), directReader);
  expect(editor().notice).toMatch(/neither MusicXML nor MIDI/);
  expect(lesson()).toBe(before);
  await openFile(
    session,
    new File([`\u{FEFF}${printLesson(sampleLesson(1, 'other'))}`], 'lesson.json'),
    directReader,
  );
  expect(lesson().title).toBe(sampleLesson(1, 'other').title);
  session.end();
});

test('our own practice page is opened as the lesson in it', async () => {
  const { session, lesson } = await start();
  const own = sampleLesson(1, 'own');
  const template = '<!doctype html><html><script type="application/json" id="lesson"></script></html>';
  const page = fillPracticePage(template, { ...own, title: 'Home </script> & away' }) ?? '';
  await openFile(session, new File([page], 'practice.html'), directReader);
  expect(lesson().title).toBe('Home </script> & away');
  expect(lesson().pieces).toEqual(own.pieces);
  session.end();
});

test('chords that are typed over a line of a file never empty it, even where all of the chart is selected first', async () => {
  const { session, lesson, editor } = await start();
  const four = duet.replace(
    /<\/measure>/g,
    (end) =>
      `${end}${'<measure number="2"><note><pitch><step>G</step><octave>1</octave></pitch><duration>4</duration></note></measure>'.repeat(3)}`,
  );
  await openFile(session, new File([four], 'Duet.musicxml'), directReader);
  (await asked(editor)).choose({ feel: 'one-drop' });
  (await asked(editor)).open();
  await vi.waitFor(() => expect(lesson().title).toBe('Duet'));
  const [{ id } = { id: '' }] = lesson().pieces;
  const notes = () =>
    lesson().pieces.flatMap((piece) =>
      piece.kind === 'line' ? piece.bars.map((bar) => bar.notes.length) : [],
    );
  const before = notes();
  expect(before).toEqual([1, 1, 1, 1]);
  // As the keyboard does it: everything gone with the first letter, then one letter after the other.
  const chart = '| Am | F | G7 | C |';
  for (let length = 1; length <= chart.length; length += 1) {
    session.lessons.change((each) => setChartText(each, id, chart.slice(0, length), length), {
      label: 'change the chart',
    });
  }
  expect(notes()).toEqual(before);
  session.end();
});

test.each([
  ['does not load', 'failed', /^The part of the page that reads music could not be loaded/],
  ['comes to no end', 'silent', /came to no end, so it was given up\. Nothing was changed/],
  ['is stopped', 'called off', /not read any further, and nothing was changed/],
] as const)('a file whose reader %s is not opened, and a sentence says so', async (_how, problem, said) => {
  const { session, lesson, editor } = await start();
  const before = lesson();
  const none = async () => failure(problem);
  await openFile(session, new File([duet], 'Duet.musicxml'), {
    readMusic: none,
    readLesson: none,
    readPicture: none,
    stop: () => undefined,
  });
  expect(lesson()).toBe(before);
  expect(editor().notice).toMatch(said);
  session.end();
});

test('a file that takes its time is shown with a way to stop it, and the page goes on', async () => {
  const { session, lesson, editor } = await start();
  let end: (() => void) | null = null;
  const told: ((share: number) => void)[] = [];
  const opening = openFile(session, new File([duet], 'Duet.musicxml'), {
    ...directReader,
    readMusic: (_bytes, _title, _wishes, onShare) =>
      new Promise((resolve) => {
        if (onShare) told.push(onShare);
        end = () => resolve(failure('called off'));
      }),
    stop: () => end?.(),
  });
  await vi.waitFor(() => expect(editor().beingRead?.name).toBe('Duet.musicxml'));
  expect(editor().beingRead?.share).toBeNull();
  told[0]?.(0.25);
  expect(editor().beingRead?.share).toBe(0.25);
  session.lessons.change((each) => ({ ...each, title: 'Meanwhile' }), { label: 'title' });
  editor().beingRead?.stop();
  await opening;
  expect(editor().beingRead).toBeNull();
  expect(lesson().title).toBe('Meanwhile');
  session.end();
});

test.each([
  ['does not load', 'failed', /^The part of the page that reads pictures could not be loaded/],
  ['comes to no end', 'silent', /came to no end, so it was given up\. Nothing was changed/],
  ['is stopped', 'called off', /not read any further, and nothing was changed/],
] as const)('a picture whose reader %s is not taken, and a sentence says so', async (_how, problem, said) => {
  const { session, editor } = await start();
  let answer: (() => void) | null = null;
  const shrink = picturesBeside(session, 'crest.png', {
    ...directReader,
    readPicture: () =>
      new Promise((resolve) => {
        answer = () => resolve(failure(problem));
      }),
    stop: () => answer?.(),
  });
  const read = shrink(new Blob(['large']), { width: 9, height: 9 });
  await vi.waitFor(() => expect(editor().beingRead?.name).toBe('crest.png'));
  editor().beingRead?.stop();
  expect(await read).toEqual({ ok: false, problem: expect.stringMatching(said) });
  expect(editor().beingRead).toBeNull();
  session.end();
});

test('an empty file, and a lesson file that was cut off, are told as what they are', async () => {
  const { session, lesson, editor } = await start();
  const before = lesson();
  const whole = printLesson(sampleLesson(0, 'cut'));
  for (const [name, text, told] of [
    ['line.mid', '', 'This file is empty. Nothing was changed.'],
    ['line.musicxml', '', 'This file is empty. Nothing was changed.'],
    [
      'week.lesson.json',
      whole.slice(0, whole.length / 2),
      /begins like a lesson file, but is cut off or damaged/,
    ],
  ] as const) {
    await openFile(session, new File([text], name), directReader);
    expect(editor().notice).toMatch(told);
  }
  expect(lesson()).toBe(before);
});
