import { mendOf, readLetter } from '../../../core/listening';
import { type Given, REGISTER_LIMITS, type Student, setGiven, takeBack } from '../../../core/students';
import { useAtWork } from '../at-work';
import { TextField } from './fields';
import { RecordingFromHome } from './recording-from-home';

const DAY = new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium' });

/** `29 Nov 2026`. */
export const dayText = (day: string): string => DAY.format(new Date(`${day}T12:00`));

/** Beats a minute that can be noted as reached. */
const TEMPO = { least: 20, most: 400 } as const;

/** Characters of a report with the message around it. */
const LONGEST_REPORT = 5000;

interface GivenLessonsProps {
  readonly student: Student;
  readonly onChange: (change: (student: Student) => Student) => void;
  /** A lesson of the list was opened. */
  readonly onOpened: () => void;
}

/** The lessons that a student was given, the latest first: tempo reached, and what to mend next. */
export function GivenLessons({ student, onChange, onOpened }: GivenLessonsProps) {
  if (student.given.length === 0)
    return <p>No lesson was given to {student.name} yet: open one, and give it from here.</p>;
  return (
    <ul className="register__given" aria-label={`Lessons given to ${student.name}`}>
      {student.given.toReversed().map((given) => (
        <GivenLesson
          key={`${given.lesson} ${given.version} ${given.day}`}
          given={given}
          onChange={onChange}
          onOpened={onOpened}
        />
      ))}
    </ul>
  );
}

interface GivenLessonProps extends Omit<GivenLessonsProps, 'student'> {
  readonly given: Given;
}

function GivenLesson({ given, onChange, onOpened }: GivenLessonProps) {
  const { session } = useAtWork();
  const title = given.title === '' ? 'Without a title' : given.title;
  const where = `of “${title}”, given on ${dayText(given.day)}`;
  const open = async () => {
    onOpened();
    if (session.lessons.getState().lesson.id !== given.lesson) await session.openSaved(given.lesson);
    const { document } = session.lessons.getState();
    if (document.id !== given.lesson || document.versions === undefined) return;
    const { openVersion } = await import('../../../core/versions');
    session.lessons.changeDocument((standing) => openVersion(standing, given.version), null);
  };
  return (
    <li>
      <p className="register__lesson">
        <button type="button" className="word" onClick={() => void open()}>
          {title}
        </button>{' '}
        given on {dayText(given.day)}
      </p>
      <div className="register__heard">
        <TextField
          label="Tempo reached"
          where={where}
          value={given.tempo === null ? '' : String(given.tempo)}
          most={12}
          hint="bpm; empty while it was not heard"
          onSettle={(text) => {
            const tempo = text.trim() === '' ? null : Number(text);
            if (tempo !== null && !(Number.isInteger(tempo) && tempo >= TEMPO.least && tempo <= TEMPO.most))
              return `A tempo is a whole number from ${TEMPO.least} to ${TEMPO.most}.`;
            onChange((student) => setGiven(student, given, { tempo }));
            return null;
          }}
        />
        <TextField
          label="To mend next"
          where={where}
          value={given.mend}
          most={REGISTER_LIMITS.mend}
          onSettle={(mend) => {
            onChange((student) => setGiven(student, given, { mend }));
            return null;
          }}
        />
        <TextField
          long
          label="Report from home"
          where={where}
          value=""
          most={LONGEST_REPORT}
          hint="Paste what the student’s practice page saved; tempo and what to mend are taken from it."
          onSettle={(text) => {
            const read = readLetter(text);
            if (!read.ok) return read.problem;
            const { tempo } = read.value;
            if (tempo !== null && (tempo < TEMPO.least || tempo > TEMPO.most))
              return `A tempo is a whole number from ${TEMPO.least} to ${TEMPO.most}.`;
            const mend = [given.mend.trim(), mendOf(read.value)].filter((words) => words !== '').join('; ');
            onChange((student) =>
              setGiven(student, given, {
                tempo: tempo ?? given.tempo,
                mend: mend.slice(0, REGISTER_LIMITS.mend),
              }),
            );
            return null;
          }}
        />
        <RecordingFromHome where={where} />
        <button
          type="button"
          className="button"
          onClick={() => onChange((student) => takeBack(student, given))}
        >
          Not given<span className="visually-hidden"> {where}</span>
        </button>
      </div>
    </li>
  );
}
