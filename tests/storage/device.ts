import type { Clock } from '../../src/app/clock';
import type { LessonStorage, Persistence } from '../../src/app/storage';
import type { Database } from '../../src/app/storage/database';
import { createLessonStorage } from '../../src/app/storage/lesson-storage';
import type { Channel, Told } from '../../src/app/storage/news';

/** A clock that stands still until the test lets time pass; promises that wait meanwhile are let through. */
export function handClock() {
  let now = 0;
  const alarms = new Set<{ readonly at: number; readonly work: () => void }>();
  const settle = async (): Promise<void> => {
    for (let turn = 0; turn < 50; turn += 1) await Promise.resolve();
  };
  const clock: Clock = {
    now: () => now,
    after: (delay, work) => {
      const alarm = { at: now + delay, work };
      alarms.add(alarm);
      return () => alarms.delete(alarm);
    },
  };
  return {
    clock,
    settle,
    /** Lets so many milliseconds pass. */
    async pass(time: number): Promise<void> {
      const end = now + time;
      await settle();
      for (;;) {
        const [next] = [...alarms].filter(({ at }) => at <= end).sort((one, other) => one.at - other.at);
        if (next === undefined) break;
        alarms.delete(next);
        now = Math.max(now, next.at);
        next.work();
        await settle();
      }
      now = end;
    },
  };
}

/** How a device's storage behaves. */
type Mood = 'works' | 'opens never' | 'ends no transaction' | 'aborts' | 'is full' | 'is newer' | 'refuses';

const FAULTS: Partial<Record<Mood, string>> = {
  'is newer': 'VersionError',
  refuses: 'SecurityError',
};

/** A device whose storage can be put into any mood, and which windows share. */
export function device() {
  const records = new Map<string, unknown>();
  const settings = new Map<string, unknown>();
  const facts = new Map<string, unknown>();
  const states = new Map<string, unknown>();
  const histories = new Map<string, unknown>();
  const unreadable = new Set<string>();
  const state: { mood: Mood; opened: number; refusals: number } = { mood: 'works', opened: 0, refusals: 0 };
  const losses = new Set<() => void>();
  const closings = new Set<() => void>();
  const heldUp: (() => void)[] = [];
  const windows: ((news: Told) => void)[][] = [];
  const writes: string[] = [];
  const keeping = { asked: 0, state: 'not granted' as Persistence };

  const keyOf = (state: unknown): string => (state as { readonly key: string }).key;
  const statesOf = (id: string) =>
    [...states].filter(([, state]) => (state as { readonly lesson?: unknown }).lesson === id);

  const holdUp = (): Promise<void> => new Promise((resolve) => heldUp.push(resolve));

  /** Runs a transaction: work on it is done only when it ends. */
  const transact = async <Value>(work: () => Value, writing = false): Promise<Value> => {
    if (state.mood === 'ends no transaction') await holdUp();
    if (state.mood === 'aborts') throw new DOMException('', 'AbortError');
    if (writing && state.mood === 'is full') throw new DOMException('', 'QuotaExceededError');
    return work();
  };

  const open = async (onLost: () => void): Promise<Database> => {
    if (state.mood === 'opens never') await holdUp();
    const fault = FAULTS[state.mood];
    if (fault !== undefined) throw new DOMException('', fault);
    if (state.refusals > 0) {
      state.refusals -= 1;
      throw new DOMException('The connection was closed.', 'AbortError');
    }
    state.opened += 1;
    let closed = false;
    closings.add(() => {
      closed = true;
    });
    losses.add(() => {
      closed = true;
      onLost();
    });
    const here = <Value>(work: () => Value, writing = false): Promise<Value> =>
      transact(() => {
        if (closed) throw new DOMException('', 'InvalidStateError');
        return work();
      }, writing);
    return {
      ids: () => here(() => [...records.keys()]),
      read: (id) =>
        here(() => {
          if (unreadable.has(id)) throw new DOMException('', 'DataError');
          return structuredClone(records.get(id));
        }),
      update: (id, decide) =>
        here(() => {
          const kept = decide(structuredClone(records.get(id)));
          if (kept === null) return;
          records.set(id, structuredClone(kept.record));
          facts.set(id, structuredClone(kept.facts));
          writes.push(kept.record.title);
        }, true),
      remove: (id) =>
        here(() => {
          const own = statesOf(id);
          const removed = {
            id,
            lesson: records.get(id),
            facts: facts.get(id),
            states: own.map(([, state]) => state),
            history: histories.get(id),
          };
          for (const store of [records, facts, histories]) store.delete(id);
          for (const [key] of own) states.delete(key);
          return removed;
        }, true),
      putBack: (removed) =>
        here(() => {
          const { id } = removed;
          if (removed.lesson === undefined || records.has(id)) return false;
          records.set(id, removed.lesson);
          if (removed.facts !== undefined) facts.set(id, removed.facts);
          if (removed.history !== undefined) histories.set(id, removed.history);
          for (const state of removed.states) states.set(keyOf(state), state);
          return true;
        }, true),
      facts: () => here(() => [...facts.values()].map((each) => structuredClone(each))),
      writeFacts: (made, gone) =>
        here(() => {
          for (const each of made) facts.set(each.id, structuredClone(each));
          for (const id of gone) facts.delete(id);
        }, true),
      updateFacts: (id, decide) =>
        here(() => {
          const made = decide(structuredClone(facts.get(id)));
          if (made !== null) facts.set(id, structuredClone(made));
        }, true),
      states: (id) => here(() => statesOf(id).map(([, state]) => structuredClone(state))),
      writeState: (state, letGo) =>
        here(() => {
          states.set(state.key, structuredClone(state));
          for (const key of letGo) states.delete(key);
        }, true),
      history: (id) => here(() => structuredClone(histories.get(id))),
      writeHistory: (history) =>
        here(() => {
          histories.set(history.id, structuredClone(history));
        }, true),
      setting: (name) => here(() => settings.get(name)),
      writeSetting: (name, value) =>
        here(() => {
          settings.set(name, value);
        }, true),
      close: () => {
        closed = true;
      },
    };
  };

  return {
    records,
    settings,
    facts,
    states,
    histories,
    unreadable,
    state,
    writes,
    keeping,
    /** Lets everything that was held up go on. */
    letGo: () => {
      for (const resolve of heldUp.splice(0)) resolve();
    },
    /** The database is closed, and nobody is told. */
    closeUnawares: () => {
      for (const close of closings) close();
    },
    /** The person clears the site's data. */
    clear: () => {
      for (const store of [records, settings, facts, states, histories]) store.clear();
      const told = [...losses];
      losses.clear();
      for (const lose of told) lose();
    },
    /**
     * The person clears the site's data while the page is at work on them: what is under way is aborted, so many
     * openings are refused, and only then are those told who had the database open.
     */
    async clearUnderWay(settle: () => Promise<void>, refusals: number): Promise<void> {
      for (const store of [records, settings, facts, states, histories]) store.clear();
      const told = [...losses];
      losses.clear();
      for (const close of closings) close();
      state.mood = 'works';
      state.refusals = refusals;
      for (const resolve of heldUp.splice(0)) resolve();
      await settle();
      for (const lose of told) lose();
    },
    /** Another window on the device; `deaf` ones hear no other. */
    openWindow(clock: Clock, { deaf = false } = {}): LessonStorage {
      const ears: ((news: Told) => void)[] = [];
      if (!deaf) windows.push(ears);
      const channel: Channel = {
        tell: (news) => {
          for (const ear of windows.filter((each) => each !== ears).flat()) ear(structuredClone(news));
        },
        hear: (ear) => ears.push(ear),
      };
      return createLessonStorage({
        open,
        clock,
        channel,
        keeping: async () => ({
          ask: () => {
            keeping.asked += 1;
          },
          state: async () => keeping.state,
        }),
        window: `window-${Math.random()}`,
      });
    },
  };
}
