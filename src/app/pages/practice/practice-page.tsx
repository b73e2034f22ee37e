import '../../styles/practice.css';
import { type ReactNode, useCallback, useDeferredValue, useEffect, useState } from 'react';
import { useStore } from 'zustand';
import type { Lesson, Piece } from '../../../core/lesson';
import { lineAtHand } from '../../../core/lesson';
import { EMPTY_RECORD, hearingDelay, withHearingDelay } from '../../../core/practising';
import { SelectField } from '../../controls';
import type { StudentStore } from '../../student-store';
import { AtWorkProvider, Later, laterPart, useAtWork, useEditor, useLesson } from '../at-work';
import { whenIdle } from '../common';
import type { BarMarks } from '../listening';
import { loadScore } from '../score';
import { Cautions } from './cautions';
import type { PracticeDesk } from './desk';
import { Diary, WhereYouWere } from './diary';
import { FileLimits } from './file-limits';
import { Headphones } from './headphones';
import { PracticeLedge } from './ledge';
import { PracticePiece } from './piece';
import { SkipLinks } from './skip-links';
import { type Student, useStudent } from './student';
import { VERSION_CHOICE } from './version-part';

interface PracticePageProps {
  readonly desk: PracticeDesk;
  /** What stands at the end of the head: the way back, or the way to another lesson. */
  readonly actions: ReactNode;
  /** What remembers the student; null where nothing is remembered, as for a teacher who looks at the page. */
  readonly store: StudentStore | null;
  /** A sentence about what just failed. */
  readonly notice: ReactNode;
}

/** What a student opens: the sheet in large and how it is played, and nothing else. */
export function PracticePage({ desk, actions, store, notice }: PracticePageProps) {
  const student = useStudent(desk, store);
  useEffect(() => {
    loadScore();
    return whenIdle(desk.playback.warmUp, 4000);
  }, [desk]);
  return (
    <AtWorkProvider value={desk}>
      <div className="page page--practice">
        <SkipLinks />
        <Head actions={actions} />
        <div className="desk">
          <main className="desk__sheet">
            {notice}
            <Sheet student={student} />
          </main>
        </div>
        <PlayingLedge rest={student.rest} />
      </div>
    </AtWorkProvider>
  );
}

function PlayingLedge({ rest }: { readonly rest: string | null }) {
  return <PracticeLedge settled={useDeferredValue(useLesson())} rest={rest} />;
}

function Head({ actions }: { readonly actions: ReactNode }) {
  const { title } = useLesson();
  useEffect(() => {
    const before = document.title;
    document.title = `${title === '' ? 'Lesson' : title}: practice page`;
    return () => {
      document.title = before;
    };
  }, [title]);
  return (
    <header className="header">
      <h1 className="practice__title">{title === '' ? 'Lesson without a title' : title}</h1>
      <div className="header__actions">{actions}</div>
    </header>
  );
}

const WHOLE = 'whole';

/** What was heard of the bars of a piece. */
interface Heard {
  readonly pieceId: string;
  readonly marks: BarMarks;
}

const NO_MARKS: BarMarks = new Map();

/** The choice of a piece's build-up alone; null where it has none. */
const stagesOf = (piece: Piece): string | null =>
  piece.kind === 'line' && piece.buildUp !== undefined ? `stages of ${piece.id}` : null;

function Sheet({ student }: { readonly student: Student }) {
  const { session } = useAtWork();
  const lesson = useLesson();
  const pieceId = useEditor((state) => state.pieceId);
  const [shown, setShown] = useState<string>(WHOLE);
  const [before] = useState(() => student.record?.last.find(({ lessonId }) => lessonId === lesson.id));
  const atHand = lineAtHand(lesson, pieceId);
  const [heard, setHeard] = useState<Heard | null>(null);
  const onMarks = useCallback((of: string, marks: BarMarks) => setHeard({ pieceId: of, marks }), []);
  const pieces = lesson.pieces.filter(
    (piece) => shown === WHOLE || piece.id === shown || shown === stagesOf(piece),
  );
  const choose = (choice: string) => {
    setShown(choice);
    const chosen = lesson.pieces.find((piece) => piece.id === choice || stagesOf(piece) === choice);
    if (chosen !== undefined) session.choosePiece(chosen.id);
  };
  return (
    <div className="paper sheet sheet--large">
      <WhereYouWere lesson={lesson} last={before} />
      <VersionChoice />
      {(lesson.pieces.length > 1 || lesson.pieces.some((piece) => stagesOf(piece) !== null)) && (
        <div className="practice__choice">
          <SelectField
            label="On the sheet"
            value={shown}
            options={[
              { value: WHOLE, label: 'The whole lesson' },
              ...lesson.pieces.flatMap((piece) => {
                const stages = stagesOf(piece);
                return [
                  { value: piece.id, label: `Only ${piece.name}` },
                  ...(stages === null
                    ? []
                    : [{ value: stages, label: `Only the build-up of ${piece.name}` }]),
                ];
              }),
            ]}
            onChange={choose}
          />
        </div>
      )}
      {pieces.map((piece) => (
        <PracticePiece
          key={piece.id}
          piece={piece}
          lesson={lesson}
          atHand={piece.id === atHand?.id}
          stagesOnly={shown === stagesOf(piece)}
          marks={heard?.pieceId === piece.id ? heard.marks : NO_MARKS}
        />
      ))}
      <ListeningRoom lesson={lesson} student={student} onMarks={onMarks} />
      <Notes lesson={lesson} />
      <Cautions />
      <PracticeRoom lesson={lesson} />
      <Headphones student={student} />
      <Diary student={student} />
      <FileLimits kept={student.kept} />
      {student.record === null && (
        <p className="practice__kept">
          Nothing is kept here: tempo, loop and parts are as the lesson sets them whenever this page is
          opened. Opened by itself on a student’s device the page remembers where they were, and keeps a diary
          there.
        </p>
      )}
    </div>
  );
}

/** The choice of a version, where the lesson came with several. */
function VersionChoice() {
  const { session } = useAtWork();
  const several = useStore(session.lessons, ({ document }) => document.versions !== undefined);
  return several && <Later part={VERSION_CHOICE} given={{}} />;
}

const TOOLS = laterPart('The practice room', async () => (await import('../tools')).Tools);

/** Metronome and tuning, fetched when they are asked for. */
function PracticeRoom({ lesson: { instrument, noteNames } }: { readonly lesson: Lesson }) {
  const [open, setOpen] = useState(false);
  return (
    <details className="practice__words" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Metronome and tuning</summary>
      {open && (
        <Later
          part={TOOLS}
          given={{ openStrings: instrument.openStrings, noteNames: noteNames ?? 'letters' }}
        />
      )}
    </details>
  );
}

const LISTENING = laterPart('What listens', async () => (await import('../listening')).Listening);

interface ListeningRoomProps {
  readonly lesson: Lesson;
  readonly student: Student;
  readonly onMarks: (pieceId: string, marks: BarMarks) => void;
}

/** What listens to the student, fetched when it is asked for. */
function ListeningRoom({ lesson, student, onMarks }: ListeningRoomProps) {
  const [open, setOpen] = useState(false);
  /** Where nothing is kept it is measured anew each time. */
  const [measured, setMeasured] = useState(EMPTY_RECORD);
  const onDelay = (input: string, milliseconds: number) => {
    setMeasured((before) => withHearingDelay(before, input, milliseconds));
    student.setHearing(input, milliseconds);
  };
  const delayOf = (input: string) =>
    hearingDelay(student.record ?? EMPTY_RECORD, input) ?? hearingDelay(measured, input);
  return (
    <details className="practice__words" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Play, and be heard</summary>
      {open && <Later part={LISTENING} given={{ lesson, delayOf, onDelay, onMarks }} />}
    </details>
  );
}

function Notes({ lesson: { notes } }: { readonly lesson: Lesson }) {
  if (notes.trim() === '') return null;
  return (
    <section className="practice__notes" aria-labelledby="practice-notes">
      <h2 id="practice-notes">Notes</h2>
      <p>{notes}</p>
    </section>
  );
}
