import { createStore } from 'zustand/vanilla';
import type { Lesson } from '../../core/lesson';
import type { Elsewhere } from '../storage';
import { type History, mapDocuments, newHistory, record, redo, type Step, undo } from './history';

/** How a step is called that was not made in this window. */
export const stepElsewhere = (where: Elsewhere) => `the change ${where}` as const;

/** What makes a plain lesson of a document that has versions; it is fetched for the first that has any. */
export type Versions = typeof import('../../core/versions');

/** The document and its history; everything in here is undone together, and only `document` is saved. */
export interface LessonState {
  /** What is worked on: the open version of the document, or the document itself where it has no versions. */
  readonly lesson: Lesson;
  readonly document: Lesson;
  /** Name of the step that *Undo* takes back, or null when there is none. */
  readonly undoLabel: string | null;
  /** Name of the step that *Redo* brings back, or null when there is none. */
  readonly redoLabel: string | null;
  /** Counts the lessons that were opened: it stays when the one at hand goes on under another id. */
  readonly opening: number;
}

export interface Change {
  /** Names the step for *Undo*: a verb and its object, `compose line`. */
  readonly label: string;
  /** Changes in a row with the same key are one step: one field being typed into, one slider being dragged. */
  readonly join?: string;
}

/** Freezes a document all through, so that a change in place fails at once where it is made. */
function deepFreeze<Value>(value: Value): Value {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const part of Object.values(value)) {
      deepFreeze(part);
    }
  }
  return value;
}

const settled = (lesson: Lesson): Lesson => (import.meta.env.PROD ? lesson : deepFreeze(lesson));

const settledStep = (step: Step<Lesson>): Step<Lesson> => ({ ...step, document: settled(step.document) });

/** @throws Error for a document with versions before what reads them is here. */
function needed(versions: Versions | null): Versions {
  if (versions === null) throw new Error('A document with versions needs their room first.');
  return versions;
}

const stateOf = (history: History<Lesson>, opening: number, versions: Versions | null): LessonState => ({
  opening,
  document: history.present,
  lesson:
    history.present.versions === undefined
      ? history.present
      : settled(needed(versions).lessonAsOpen(history.present)),
  undoLabel: history.past.at(-1)?.label ?? null,
  redoLabel: history.future[0]?.label ?? null,
});

/** What an edit is asked before it is made: why not, in a sentence, or null. */
export interface EditChecks {
  /** The lesson that is worked on is not to be changed so. */
  readonly whyRefused: (next: Lesson, before: Lesson) => string | null;
  /** A document could not be read again. */
  readonly whyNotKept: (document: Lesson) => string | null;
}

const NO_CHECKS: EditChecks = { whyRefused: () => null, whyNotKept: () => null };

/**
 * The store of the document, without React: read with `getState`, followed with `subscribe`.
 * @param onRefused - hears why an edit was not made, in a sentence
 * @param checks - what an edit is asked before it is made
 */
export function createLessonStore(
  initial: Lesson,
  onRefused: (sentence: string) => void = () => undefined,
  { whyRefused, whyNotKept }: EditChecks = NO_CHECKS,
  versions: Versions | null = null,
) {
  let history = newHistory(settled(initial));
  /** As it was opened: this is never taken back. */
  let first = history.present;
  let opening = 0;
  let tools = versions;
  const store = createStore<LessonState>(() => stateOf(history, opening, tools));
  const take = (next: History<Lesson>) => {
    if (next !== history) {
      history = next;
      store.setState(stateOf(history, opening, tools));
    }
  };
  /** The document with an edited lesson in the place of the one that is worked on. */
  const stored = (next: Lesson): Lesson =>
    history.present.versions === undefined ? next : settled(needed(tools).storeEdited(history.present, next));
  return {
    getState: store.getState,
    getInitialState: store.getInitialState,
    subscribe: store.subscribe,
    /** Runs an edit command on the document as one step (or as part of the last, see {@link Change.join}). */
    change(command: (lesson: Lesson) => Lesson, change: Change): void {
      const { lesson } = store.getState();
      const next = settled(command(lesson));
      if (next === lesson) return;
      const document = stored(next);
      const refused =
        whyRefused(next, lesson) ?? whyNotKept(next) ?? (document === next ? null : whyNotKept(document));
      if (refused === null) take(record(history, document, change.label, change.join ?? null));
      else onRefused(refused);
    },
    /** The document with its history, to be kept for later. */
    history: (): History<Lesson> => history,
    /** Puts steps of before the document was opened in front of its history; what reads their versions is to be here. */
    remember(before: History<Lesson>): void {
      const untouched = history.past.length === 0 && history.future.length === 0;
      take({
        ...history,
        past: [...before.past.map(settledStep), ...history.past],
        future: untouched ? before.future.map(settledStep) : history.future,
      });
    },
    /**
     * What holds edits against the validator is here: those that came before it and could not be read again are taken
     * back, with the sentence that would have refused them.
     */
    checkAgain(): void {
      const refused = whyNotKept(history.present);
      if (refused === null) return;
      let kept = history;
      while (kept.past.length > 0 && kept.present !== first && whyNotKept(kept.present) !== null)
        kept = undo(kept);
      if (kept === history) return;
      take({ ...kept, future: [] });
      onRefused(refused);
    },
    /** What reads versions is here. */
    knowVersions: (room: Versions) => {
      tools = room;
    },
    /**
     * Runs a command on the document with all its versions as one step; `null` for no step, as where another version
     * is opened.
     */
    changeDocument(command: (document: Lesson) => Lesson, change: Change | null): void {
      const next = settled(command(history.present));
      if (next === history.present) return;
      const refused = change === null ? null : (whyRefused(next, history.present) ?? whyNotKept(next));
      if (refused !== null) onRefused(refused);
      else if (change === null) take({ ...history, present: next, joinKey: null });
      else take(record(history, next, change.label, change.join ?? null));
    },
    undo: () => take(undo(history)),
    redo: () => take(redo(history)),
    /** Another lesson altogether, with a history of its own. */
    open: (lesson: Lesson) => {
      opening += 1;
      first = settled(lesson);
      take(newHistory(first));
    },
    /** What was made of the document elsewhere; changes there in a row are one step. */
    follow: (lesson: Lesson, where: Elsewhere) =>
      take(record(history, settled(lesson), stepElsewhere(where), where)),
    /** The document goes on under an id of its own, with all its history. */
    goOnAs: (id: string, change: (lesson: Lesson) => Lesson) =>
      take(mapDocuments(history, (lesson) => settled({ ...change(lesson), id }))),
  };
}

export type LessonStore = ReturnType<typeof createLessonStore>;
