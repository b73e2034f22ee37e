import { isRecord } from '../../core/base';
import { LESSON_VERSION, type Lesson, type NewerLesson } from '../../core/lesson';
import type { KeptState, OnShelf } from '../../core/shelf';

/** A stored lesson is kept as it came, with just enough beside it to list it without reading it. */
export interface StoredLesson {
  readonly id: string;
  readonly title: string;
  /** Milliseconds since 1970. */
  readonly savedAt: number;
  /** Names the state of the lesson; every save gives it another. Records of earlier copies have none. */
  readonly revision?: string;
  readonly document: unknown;
}

/** An earlier state of a lesson. */
export interface StoredState extends KeptState {
  /** Id of the lesson it is a state of. */
  readonly lesson: string;
  readonly document: unknown;
}

/** What *Undo* takes back and *Redo* brings back. */
export interface StoredHistory {
  /** Of the lesson. */
  readonly id: string;
  readonly history: unknown;
}

/** A lesson on this device as the list shows it. */
export type ListedLesson =
  | ({ readonly readable: true } & OnShelf)
  | {
      readonly readable: false;
      readonly id: string;
      /** As far as it can be told. */
      readonly title: string;
      /** Why it cannot be read: a sentence. */
      readonly sentence: string;
    };

/** What stands on this device under the id of a lesson. */
export type FoundLesson =
  | { readonly kind: 'none' }
  | { readonly kind: 'lesson'; readonly lesson: Lesson; readonly revision: string }
  /** Of a newer copy of the app, as this one can show it: what is said of it, and that it is not written over. */
  | {
      readonly kind: 'newer';
      readonly shown: NewerLesson;
      readonly sentences: readonly string[];
      readonly revision: string;
    }
  | { readonly kind: 'unreadable'; readonly sentence: string; readonly revision: string };

/** Names the state of a record; one of an earlier copy, which has no name for it, is told by its time. */
export function revisionOf(record: unknown): string {
  if (!isRecord(record)) return 'no record';
  return typeof record.revision === 'string' ? record.revision : `at ${String(record.savedAt)}`;
}

/** The document of a record; the record itself where it has none. */
export const documentOf = (record: unknown): unknown =>
  isRecord(record) && isRecord(record.document) ? record.document : record;

/** Whether a record holds a lesson of a newer copy of the app: such a one is never written over. */
export function isOfNewer(record: unknown): boolean {
  const document = documentOf(record);
  return isRecord(document) && typeof document.version === 'number' && document.version > LESSON_VERSION;
}

/** The title that can be made out, else nothing. */
export function titleOf(record: unknown): string {
  const document = documentOf(record);
  const titles = [isRecord(record) ? record.title : null, isRecord(document) ? document.title : null];
  return titles.find((title) => typeof title === 'string') ?? '';
}
