import { failure, success } from '../../../core/base';
import type { Lesson } from '../../../core/lesson';
import type { Composer } from '../../composer';
import { type Session, startSession } from '../../state';
import { createPlayback, type Playback } from '../playing';

/** A lesson to practise with: a copy of its own, whose changes are kept nowhere. */
export interface PracticeDesk {
  readonly session: Session;
  readonly playback: Playback;
  /** Puts it away: the sound ends, and nothing of it is kept. */
  readonly end: () => void;
}

/** Stands where the device's shelf stands for a teacher: it holds one lesson and forgets every change. */
const forgetful = (lesson: Lesson): Parameters<typeof startSession>[0] => {
  const found = { kind: 'lesson', lesson, revision: '' } as const;
  return {
    list: async () => success([]),
    load: async () => success(found),
    loadLast: async () => success({ name: lesson.id, found }),
    raw: async () => success(lesson),
    save: async () => success(''),
    take: async () => success(''),
    leave: () => {},
    isOwn: () => true,
    madeWhere: () => 'in another window',
    remove: async (id) =>
      success({ id, title: '', lesson: undefined, facts: undefined, states: [], history: undefined }),
    putBack: async () => success(false),
    noteUsed: async () => success(null),
    earlierStates: async () => success([]),
    keepState: async () => success(null),
    readHistory: async () => success(undefined),
    writeHistory: async () => success(null),
    shelfSaved: async () => success({ at: null, changes: 0 }),
    noteShelfSaved: async () => success(null),
    rememberOpened: async () => success(null),
    prepare: () => {},
    persistence: async () => 'unknown',
    watch: () => () => {},
  };
};

const noAnswer = async () => failure('failed' as const);

/** On the practice page nothing is composed or checked. */
const NO_COMPOSER: Composer = {
  compose: noAnswer,
  check: noAnswer,
  brought: noAnswer,
  repair: noAnswer,
  explain: noAnswer,
  rankTakes: noAnswer,
  regrade: noAnswer,
  keysFor: noAnswer,
};

/** Lays a lesson out for practising. Tempo, loop and parts can be changed; the lesson it came from stays as it is. */
export async function layOut(lesson: Lesson): Promise<PracticeDesk> {
  const session = await startSession(forgetful(lesson), NO_COMPOSER, { watch: () => () => {} });
  const playback = createPlayback(session);
  return {
    session,
    playback,
    end: () => {
      playback.end();
      session.end();
    },
  };
}
