import { createStore } from 'zustand/vanilla';
import type { ReadFile, Wishes } from '../../core/exchange';
import type { Lesson } from '../../core/lesson';
import type { Pencil } from '../../core/writing';
import type { RemovedLesson } from '../storage';

/** Where the teacher is at work. None of it is saved, undone or exported. */
export interface EditorState {
  /** The piece at hand: chart, aims, ideas and playing are about it. */
  readonly pieceId: string;
  /** Index of the chosen written bar whose ideas are shown, or null. */
  readonly bar: number | null;
  /** Where the chosen bar is being written in; null while no bar is open for writing. */
  readonly pencil: Pencil | null;
  /** What the pencil did last, or what is at hand; '' before. */
  readonly said: string;
  /** The lesson as the pencil left it last: of that change it says itself what was done. */
  readonly pencilled: Lesson | null;
  /** What the pencil asks for before it can go on: a word, or a rhythm that is tapped; null where it asks nothing. */
  readonly asked: 'word' | 'taps' | null;
  /** The piece whose line is being composed, or null. */
  readonly composing: string | null;
  /** What the composer had to say about the last line it made. */
  readonly remarks: readonly string[];
  /** Ids of the bars that the last change of the lesson parked. */
  readonly justParked: readonly string[];
  /** A sentence for the teacher about what just happened or failed, or null. */
  readonly notice: string | null;
  /** The file of another program that the lesson was read from, until the teacher has taken note of it. */
  readonly reading: FileReading | null;
  /** A file that was read and is not yet opened: what of it is wanted is asked first. */
  readonly asking: FileQuestion | null;
  /** A file that is being read for longer than a moment, and how to stop it. */
  readonly beingRead: BeingRead | null;
  /** A link that was copied, and the file that is offered in its place; null when it is taken note of. */
  readonly copied: { readonly sentence: string; readonly instead: 'lesson' | 'practice page' | null } | null;
  /** What is being made to send home; null while nothing is. */
  readonly sending: Sending | null;
  readonly saving: SavingState;
  /** A lesson on this device that cannot be opened, or had better not be, until the teacher has taken note of it. */
  readonly rescue: Rescue | null;
  /** Lessons that were taken off this device here, which can be put back until the page is closed; the latest last. */
  readonly removed: readonly RemovedLesson[];
}

/** What a student is sent: sound files to play along with, a film of the score, or everything in one ZIP. */
export type Sending = 'tracks' | 'clip' | 'packet';

/** A lesson that is offered as a file instead of being opened. */
export interface Rescue {
  /** What happened, and that nothing was lost. */
  readonly sentence: string;
  readonly id: string;
}

export interface BeingRead {
  /** The file's name. */
  readonly name: string;
  /** How much of it is read, from 0 to 1; null while that is not known. */
  readonly share: number | null;
  readonly stop: () => void;
}

/** A file of another program, and what is wanted of it. */
export interface FileQuestion {
  readonly fileName: string;
  /** As it would be opened now. */
  readonly read: ReadFile;
  readonly wishes: Wishes;
  /** It is being read again for other wishes. */
  readonly busy: boolean;
  readonly choose: (wishes: Partial<Wishes>) => void;
  /** Opens it as it was read. */
  readonly open: () => void;
  /** Leaves it unopened. */
  readonly leave: () => void;
}

/** What was read from a file. */
export interface FileReading {
  /** What was read and what was left out. */
  readonly sentences: readonly string[];
  /** Asks anew what is wanted of the file. */
  readonly askAgain?: () => void;
  /** Of a lesson that is only shown; nothing of any other. */
  readonly only?: OnlyShown;
}

/** A lesson of a newer copy of the app, of which this one shows what it knows. */
export interface OnlyShown {
  /** Whether something of it is left out here. */
  readonly isReduced: boolean;
  /** Its document as it came, with everything. */
  readonly whole: unknown;
  /** Takes what is shown as a lesson that can be changed and is kept. */
  readonly makeCopy: () => void;
  /** Of an earlier state of a lesson: puts it in the place of the lesson, or goes back to the lesson as it is. */
  readonly earlier?: { readonly bringBack: () => void; readonly leave: () => void };
}

export type SavingState =
  | { readonly kind: 'saved' }
  /** What this copy of the app can show of a lesson of a newer one: nothing of it is kept. */
  | { readonly kind: 'shown' }
  | { readonly kind: 'unsaved' }
  | { readonly kind: 'failed'; readonly sentence: string };

export function createEditorStore(pieceId: string) {
  return createStore<EditorState>(() => ({
    pieceId,
    bar: null,
    pencil: null,
    said: '',
    pencilled: null,
    asked: null,
    composing: null,
    remarks: [],
    justParked: [],
    notice: null,
    reading: null,
    asking: null,
    beingRead: null,
    copied: null,
    sending: null,
    saving: { kind: 'saved' },
    rescue: null,
    removed: [],
  }));
}

export type EditorStore = ReturnType<typeof createEditorStore>;
