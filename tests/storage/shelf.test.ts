import { describe, expect, test } from 'vitest';
import { success } from '../../src/core/base';
import { sampleLesson, setTitle } from '../../src/core/lesson';
import { factsOf } from '../../src/core/shelf';
import { device, handClock } from './device';

const LESSON = setTitle(sampleLesson(0, 'lesson-1'), 'Ferry queue');

function atHand() {
  const shared = device();
  const time = handClock();
  const [storage, other] = [shared.openWindow(time.clock), shared.openWindow(time.clock)];
  return { ...shared, ...time, storage, other };
}

test('changes are counted from one saving of the shelf as a file to the next, over a new window', async () => {
  const { storage, other } = atHand();
  expect(await storage.shelfSaved()).toEqual(success({ at: null, changes: 0 }));
  for (const _ of [1, 2, 3]) await storage.writeHistory(LESSON.id, { past: [] });
  await other.writeHistory('lesson-2', { past: [] });
  expect(await other.shelfSaved()).toEqual(success({ at: null, changes: 4 }));
  await storage.noteShelfSaved(1000);
  expect(await storage.shelfSaved()).toEqual(success({ at: 1000, changes: 0 }));
  await storage.writeHistory(LESSON.id, { past: [] });
  expect(await storage.shelfSaved()).toEqual(success({ at: 1000, changes: 1 }));
});

describe('what is told of a lesson', () => {
  test('is written with it and stays with it', async () => {
    const { storage, facts } = atHand();
    await storage.save(LESSON, null, 5);
    expect(facts.get(LESSON.id)).toEqual({
      id: LESSON.id,
      title: 'Ferry queue',
      savedAt: 5,
      usedAt: 5,
      facts: factsOf(LESSON),
    });
    await storage.noteUsed(LESSON.id, 9);
    expect(await storage.list()).toMatchObject({ value: [{ savedAt: 5, usedAt: 9 }] });
  });

  test.each([
    ['missing', undefined],
    ['a number', 7],
    ['of another copy', { id: LESSON.id, title: 'Other', savedAt: 1, usedAt: 1, facts: { version: 0 } }],
  ])('is made anew where it is %s, and then stands', async (_, broken) => {
    const { storage, facts } = atHand();
    await storage.save(LESSON, null, 5);
    if (broken === undefined) facts.delete(LESSON.id);
    else facts.set(LESSON.id, broken);
    expect(await storage.list()).toMatchObject({ value: [{ title: 'Ferry queue', facts: factsOf(LESSON) }] });
    expect(facts.get(LESSON.id)).toMatchObject({ title: 'Ferry queue' });
  });

  test('goes where its lesson is gone', async () => {
    const { storage, facts, records } = atHand();
    await storage.save(LESSON, null, 5);
    records.delete(LESSON.id);
    expect(await storage.list()).toEqual(success([]));
    expect(facts.size).toBe(0);
  });

  test('is listed also while nothing can be written', async () => {
    const { storage, facts, state } = atHand();
    await storage.save(LESSON, null, 5);
    facts.clear();
    state.mood = 'is full';
    expect(await storage.list()).toMatchObject({ value: [{ title: 'Ferry queue' }] });
  });
});

test('the lessons stand in the order in which they were used last', async () => {
  const { storage } = atHand();
  await storage.save(LESSON, null, 5);
  await storage.save({ ...LESSON, id: 'other' }, null, 6);
  await storage.noteUsed(LESSON.id, 7);
  const found = await storage.list();
  expect(found.ok && found.value.map(({ id }) => id)).toEqual([LESSON.id, 'other']);
});

describe('a lesson that is removed', () => {
  test('goes with all that is kept of it, and comes back with all of it', async () => {
    const { storage, other, records, facts, states, histories } = atHand();
    await storage.save(LESSON, null, 5);
    await storage.keepState(LESSON, 6, 'compose line');
    await storage.writeHistory(LESSON.id, { past: [] });
    const before = [records, facts, states, histories].map((store) => [...store]);
    const heard: unknown[] = [];
    other.watch((news) => heard.push(news));
    const removed = await storage.remove(LESSON.id);
    expect([records, facts, states, histories].map((store) => store.size)).toEqual([0, 0, 0, 0]);
    if (!removed.ok) throw new Error('It was not removed.');
    expect(await storage.putBack(removed.value)).toEqual(success(true));
    expect([records, facts, states, histories].map((store) => [...store])).toEqual(before);
    expect(heard).toMatchObject([{ kind: 'removed' }, { kind: 'saved' }]);
  });

  test('never takes the place of another that stands there by now', async () => {
    const { storage, records } = atHand();
    await storage.save(LESSON, null, 5);
    const removed = await storage.remove(LESSON.id);
    await storage.save(setTitle(LESSON, 'Since'), null, 7);
    if (!removed.ok) throw new Error('It was not removed.');
    expect(await storage.putBack(removed.value)).toEqual(success(false));
    expect(records.get(LESSON.id)).toMatchObject({ title: 'Since' });
  });
});

describe('earlier states', () => {
  test('are kept once each, one a day, and are listed with the latest first', async () => {
    const { storage, states } = atHand();
    const day = 24 * 60 * 60 * 1000;
    await storage.keepState(setTitle(LESSON, 'Monday'), 10 * day, null);
    await storage.keepState(setTitle(LESSON, 'Monday again'), 10 * day + 1000, null);
    await storage.keepState(setTitle(LESSON, 'Tuesday'), 11 * day, null);
    await storage.keepState(setTitle(LESSON, 'Tuesday'), 11 * day + 5, 'compose line');
    await storage.keepState(setTitle(LESSON, 'Later'), 11 * day + 9, 'compose line');
    states.set('x', { key: 'x', lesson: LESSON.id, at: 'never' });
    states.set('y', { key: 'y', lesson: LESSON.id, at: 1, before: null, document: { pieces: 7 } });
    const found = await storage.earlierStates(LESSON.id);
    expect(found.ok && found.value.map(({ lesson, before }) => [lesson?.title, before])).toEqual([
      ['Later', 'compose line'],
      ['Tuesday', null],
      ['Monday', null],
      [undefined, null],
    ]);
  });
});
