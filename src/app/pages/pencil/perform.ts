import type { Metre } from '../../../core/base';
import type { Lesson } from '../../../core/lesson';
import {
  announce,
  type Command,
  type DidKind,
  type Done,
  deskOf,
  fitPencil,
  type Gesture,
  newPencil,
  type Passage,
  type Pencil,
  settled,
  stepName,
  stillSaid,
  withFindings,
} from '../../../core/writing';
import type { Session } from '../../state';

/** Where a drag began: what it does is done to this, again and again, as one step. */
export interface Origin {
  readonly lesson: Lesson;
  readonly pencil: Pencil;
  /** Names the drag, so that its changes are one step. */
  readonly join: string;
}

/** Rest after a gesture before it is said, in milliseconds: whoever types fast hears where they have come to. */
const SAY_AFTER = 150;
let saying = 0;

/** Nothing that is seen or heard: with it, the same sentence is another text, and so is said again. */
const AGAIN = '\u200b';

/** Says something at once, in the place of what was still to be said. */
export function tell(session: Session, text: string): void {
  window.clearTimeout(saying);
  session.editor.setState(({ said }) => ({ said: said === text ? text + AGAIN : text }));
}

/** What a bar can be asked to become: it is finished then, and the lesson check may have a word to say. */
const IS_FINISHED: ReadonlySet<string> = new Set<DidKind>([
  'easier',
  'busier',
  'sparser',
  'silent on one',
  'octave',
  'inverted',
  'leading',
]);
/** The longest that what was done waits for what the lesson check has to say of it, in milliseconds. */
const CHECK_WAIT = 600;

/** Says what was done to a bar, with what the lesson check would now point out and did not before. */
function sayWithCheck(session: Session, done: Done, before: Lesson): void {
  const { pieceId, bar } = done.pencil;
  const did = announce(done);
  window.clearTimeout(saying);
  saying = window.setTimeout(() => tell(session, did), CHECK_WAIT);
  void session.composer.brought(before, done.lesson, pieceId, bar).then((brought) => {
    const isNow =
      session.lessons.getState().lesson === done.lesson && session.editor.getState().pencil === done.pencil;
    if (isNow) tell(session, brought.ok ? withFindings(did, brought.value) : did);
  });
}

function say(session: Session, done: Done, before: Lesson): void {
  const { did } = done;
  // A single note that goes an octave away is one of a bar that is being written.
  if (did.kind !== 'refused' && did.detail !== undefined && IS_FINISHED.has(did.kind)) {
    sayWithCheck(session, done, before);
    return;
  }
  window.clearTimeout(saying);
  if (did.kind === 'refused') tell(session, announce(done));
  else saying = window.setTimeout(() => tell(session, announce(done)), SAY_AFTER);
}

/** The lesson and the pencil as they are now; null while no bar is open for writing. */
export function workNow(session: Session): Omit<Origin, 'join'> | null {
  const { lesson } = session.lessons.getState();
  const { pencil } = session.editor.getState();
  const fitted = pencil && fitPencil(lesson, pencil);
  return fitted && { lesson, pencil: fitted };
}

/**
 * Makes a gesture: one step of the lesson with its name, the pencil where it leaves it, and what was done said.
 * @param origin - where a drag began; what it did to the lesson so far is replaced
 */
export function perform(session: Session, gesture: Gesture, origin: Origin | null = null): void {
  const work = origin ?? workNow(session);
  if (work === null) return;
  const done = settled(gesture)(work.lesson, work.pencil);
  const desk = deskOf(done.lesson, done.pencil);
  if (done.did.kind !== 'refused' && desk !== null && done.lesson !== session.lessons.getState().lesson) {
    session.editor.setState(({ remarks }) => ({
      pencilled: done.lesson,
      remarks: stillSaid(remarks, work.lesson, done.lesson, done.pencil),
    }));
    session.lessons.change(() => done.lesson, {
      label: stepName(desk, done.did),
      ...(origin === null ? {} : { join: origin.join }),
    });
  }
  const { pencil } = done;
  if (pencil.copied !== null) lastCopied.set(session, pencil.copied);
  session.editor.setState({
    pencil,
    pieceId: pencil.pieceId,
    bar: pencil.bar,
    // What is asked for is asked for a bar: whoever goes to another one leaves that as it was.
    ...(pencil.bar === work.pencil.bar ? {} : { asked: null }),
  });
  say(session, done, work.lesson);
}

/** What was copied last: it outlasts the pencil that copied it. */
const lastCopied = new WeakMap<Session, Passage>();

/** Takes the pencil out at the beginning of a bar (index from 0). */
export function takeOut(session: Session, pieceId: string, bar: number, metre: Metre): void {
  const copied = lastCopied.get(session) ?? null;
  session.editor.setState({ pencil: { ...newPencil(pieceId, bar, metre), copied }, said: '' });
}

/** Does what a key of the scheme says, or asks for what it needs. */
export function run(session: Session, { asks, gesture }: Command): void {
  if (asks === undefined) perform(session, gesture);
  else session.editor.setState({ asked: asks });
}

/** The keys write again, after something else was asked for. */
export function goOnWriting(session: Session): void {
  session.editor.setState({ asked: null });
  document.querySelector<HTMLElement>('.pencil--here')?.focus({ preventScroll: true });
}

/** Puts the pencil away; the bar stays chosen, and whoever came by the keyboard stands on it again. */
export function putAway(session: Session): void {
  document.querySelector<HTMLElement>('.bar[aria-pressed="true"]')?.focus({ preventScroll: true });
  session.editor.setState({ pencil: null, said: '', asked: null });
}
