import { expect, test } from 'vitest';
import type { StoredEntry } from '../../src/app/storage/register/database';
import { createRegister } from '../../src/app/storage/register/store';
import { addWeek, editSeen, markThing, moveWeek, removeWeek } from '../../src/core/series';
import { type Entry, giveLesson, newClass, newSeries, type Series, setMember } from '../../src/core/students';
import { given, student } from '../students/entries';
import { handClock } from './device';

type Mood = 'works' | 'opens never' | 'is full' | 'is newer';

/** A device whose register can be put into any mood, and which windows share. */
function device() {
  const records = new Map<string, unknown>();
  const state: { mood: Mood } = { mood: 'works' };
  const ears: (() => void)[][] = [];
  const { clock, pass } = handClock();
  const openWindow = () => {
    const own: (() => void)[] = [];
    ears.push(own);
    return createRegister({
      clock,
      channel: {
        tell: () => {
          for (const ear of ears.filter((each) => each !== own).flat()) ear();
        },
        hear: (ear) => own.push(() => ear({ kind: 'removed', id: '' })),
      },
      open: async () => {
        if (state.mood === 'opens never') await new Promise(() => {});
        if (state.mood === 'is newer') throw new DOMException('', 'VersionError');
        return {
          all: async () => structuredClone(records),
          change: async (decide) => {
            const { put, gone } = decide(structuredClone(records));
            if (state.mood === 'is full' && put.length > 0) throw new DOMException('', 'QuotaExceededError');
            for (const entry of put) records.set(entry.id, structuredClone<StoredEntry>(entry));
            for (const id of gone) records.delete(id);
          },
          close: () => {},
        };
      },
    });
  };
  return { records, state, openWindow, pass };
}

const ada = student('a', 'Ada');

test('two windows that change different things of a student keep both', async () => {
  const { openWindow } = device();
  const [one, other] = [openWindow(), openWindow()];
  let heard = 0;
  other.watch(() => {
    heard += 1;
  });
  await one.add(ada);
  expect(heard).toBe(1);
  await one.change('a', (entry) => ({ ...entry, name: 'Ada L.' }));
  await other.change('a', (entry) => (entry.kind === 'student' ? { ...entry, level: 4 } : entry));
  const found = await one.list();
  expect(found.ok && found.value.entries).toEqual([{ ...ada, name: 'Ada L.', level: 4 }]);
});

test('two windows that change a series at once keep both, and each the week that was seen', async () => {
  const { openWindow } = device();
  const [one, other] = [openWindow(), openWindow()];
  const week = (lesson: string) => ({ lesson, version: null, title: lesson });
  const edited = (edit: (series: Series) => Series | null) => (entry: Entry) =>
    entry.kind === 'series' ? edit(entry) : entry;
  await one.add(newSeries('s', 'Autumn', null));
  await Promise.all([
    one.change(
      's',
      edited((series) => addWeek(series, week('harbour'))),
    ),
    other.change(
      's',
      edited((series) => addWeek(series, week('tram'))),
    ),
  ]);
  const seriesNow = async () => {
    const found = await one.list();
    const [series] = found.ok ? found.value.entries : [];
    if (series?.kind !== 'series') throw new Error('The series is kept.');
    return series;
  };
  const seen = (await seriesNow()).weeks;
  expect(seen.map(({ lesson }) => lesson)).toEqual(['harbour', 'tram']);
  // One window moves the tram up; the other, which still sees it below, marks and takes out what it sees.
  await one.change(
    's',
    edited((series) => editSeen(series, seen, 1, (found, at) => moveWeek(found, at, -1))),
  );
  const degree = { kind: 'degree', name: '♭7' } as const;
  await other.change(
    's',
    edited((series) => editSeen(series, seen, 0, (found, at) => markThing(found, at, degree, true))),
  );
  expect((await seriesNow()).weeks.map(({ lesson, marks }) => [lesson, marks.length])).toEqual([
    ['tram', 0],
    ['harbour', 1],
  ]);
  await other.change(
    's',
    edited((series) => editSeen(series, seen, 1, removeWeek)),
  );
  expect((await seriesNow()).weeks.map(({ lesson }) => lesson)).toEqual(['harbour']);
  const gone = await one.change(
    's',
    edited((series) => editSeen(series, seen, 1, removeWeek)),
  );
  expect(gone.ok && gone.value).toBeNull();
});

test('a record that cannot be read takes none along, and nothing is written over it', async () => {
  const { records, openWindow } = device();
  const register = openWindow();
  await register.add(ada);
  records.set('b', { id: 'b', document: { ...student('b', 'Ben'), level: 'high' } });
  records.set('c', { id: 'c', document: { ...student('c', 'Cleo'), version: 7 } });
  records.set('d', null);
  const before = structuredClone(records);
  const found = await register.list();
  if (!found.ok) throw new Error(found.problem);
  expect(found.value.entries.map(({ id }) => id)).toEqual(['a']);
  expect(found.value.unreadable.map(({ id, name }) => [id, name])).toEqual([
    ['b', 'Ben'],
    ['c', 'Cleo'],
    ['d', ''],
  ]);
  for (const id of ['b', 'c', 'd']) {
    const done = await register.change(id, (entry) => ({ ...entry, name: 'Changed' }));
    expect(done.ok).toBe(false);
  }
  await register.bringIn([student('b', 'Ben')]);
  for (const [id, record] of before) expect(records.get(id)).toEqual(record);
  expect(records.size).toBe(before.size + 1);
});

test('what the validator refuses is not written, and one that is gone is said', async () => {
  const { records, openWindow } = device();
  const register = openWindow();
  await register.add(ada);
  expect((await register.change('a', (entry) => ({ ...entry, name: 'x'.repeat(999) }))).ok).toBe(false);
  expect((await register.change('a', (entry) => ({ ...entry, id: 'b' }))).ok).toBe(false);
  expect(records.get('a')).toEqual({ id: 'a', document: ada });
  await register.remove('a');
  const late = await register.change('a', (entry) => entry);
  expect(late.ok ? '' : late.problem).toContain('another window has removed it');
});

test('a deleted student is gone from the classes, too', async () => {
  const { records, openWindow } = device();
  const register = openWindow();
  await register.add(ada);
  await register.add(setMember(newClass('c', 'Wednesday'), 'a', true));
  await register.remove('a');
  expect(JSON.stringify([...records])).not.toContain('"a"');
  const found = await register.list();
  expect(found.ok && found.value.entries).toEqual([newClass('c', 'Wednesday')]);
});

test('several are edited in one step, each as it stands; who is gone or cannot be read is told', async () => {
  const { records, state, openWindow } = device();
  const [one, other] = [openWindow(), openWindow()];
  await one.add(ada);
  await one.add(student('b', 'Ben'));
  await one.add(student('d', 'Dee'));
  records.set('c', { id: 'c', document: { ...student('c', 'Cleo'), version: 7 } });
  const damaged = structuredClone(records.get('c'));
  let heard = 0;
  other.watch(() => {
    heard += 1;
  });
  await other.change('a', (entry) => ({ ...entry, name: 'Ada L.' }));
  const give = () =>
    one.changeEach(['a', 'b', 'c', 'gone', 'd'], (entry) =>
      entry.kind === 'student' && entry.id !== 'd' ? giveLesson(entry, given('one')) : null,
    );
  expect(await give()).toEqual({ ok: true, value: ['c', 'gone', 'd'] });
  expect(heard).toBe(1);
  const found = await other.list();
  expect(found.ok && found.value.entries).toEqual([
    { ...ada, name: 'Ada L.', given: [given('one')] },
    student('b', 'Ben', { given: [given('one')] }),
    student('d', 'Dee'),
  ]);
  expect(records.get('c')).toEqual(damaged);
  const before = structuredClone(records);
  state.mood = 'is full';
  expect((await one.changeEach(['a', 'b'], (entry) => ({ ...entry, name: 'Other' }))).ok).toBe(false);
  expect(records).toEqual(before);
});

test('a storage that is silent, full or newer is told in a sentence and loses nothing', async () => {
  const { records, state, openWindow, pass } = device();
  await openWindow().add(ada);
  state.mood = 'opens never';
  const waiting = openWindow().list();
  await pass(3000);
  const silent = await waiting;
  expect(silent.ok ? '' : silent.problem).toContain('three seconds');
  state.mood = 'is newer';
  const newer = await openWindow().list();
  expect(newer.ok ? '' : newer.problem).toContain('newer Ground Bass');
  state.mood = 'is full';
  const full = await openWindow().change('a', (entry) => ({ ...entry, name: 'Other' }));
  expect(full.ok ? '' : full.problem).toContain('full');
  expect([...records.values()]).toEqual([{ id: 'a', document: ada }]);
});
