import { useId, useState } from 'react';
import { flushSync } from 'react-dom';
import { listed } from '../../../core/base';
import {
  type Entry,
  entriesNaming,
  giveLesson,
  lessonFor,
  REGISTER_LIMITS,
  type Student,
  toMend,
} from '../../../core/students';
import { CheckField } from '../../controls';
import { useAtWork, useLesson } from '../at-work';
import type { AtRegister } from '../register';
import { dayNow, forgetEverywhere, givingOf } from './deeds';
import { dayText, GivenLessons } from './given-lessons';
import { Question } from './question';
import { StudentForm } from './student-form';

interface ChosenStudentProps {
  readonly student: Student;
  readonly register: AtRegister;
  readonly onSaid: (sentence: string) => void;
  readonly onClose: () => void;
}

const TOO_MANY = `More than ${REGISTER_LIMITS.given} lessons of a student are not kept: take some back first.`;

/** The chosen student: what is kept of them, what they were given, and what can be done. */
export function ChosenStudent({ student, register, onSaid, onClose }: ChosenStudentProps) {
  const { session } = useAtWork();
  const title = useLesson().title;
  const id = useId();
  const [named, setNamed] = useState(false);
  const [asking, setAsking] = useState(false);
  const change = async (edit: (standing: Student) => Student | null, done: string, not = '') => {
    const changed = await register.change(student.id, (entry: Entry) =>
      entry.kind === 'student' ? edit(entry) : entry,
    );
    onSaid(!changed.ok ? `It was not kept. ${changed.problem}` : changed.value === null ? not : done);
  };
  const give = () => {
    const { document } = session.lessons.getState();
    const given = givingOf(document, document.open ?? null);
    return change(
      (standing) => giveLesson(standing, { ...given, day: dayNow() }),
      `“${given.title}” is noted as given to ${student.name}, ${dayText(dayNow())}.`,
      TOO_MANY,
    );
  };
  const start = () =>
    session.openCopy(lessonFor(student, session.freshId(), named), () => flushSync(onClose));
  const remove = async () => {
    const forgotten = await forgetEverywhere(session, student.name);
    if (!forgotten.ok) return onSaid(`${student.name} was not deleted. ${forgotten.problem}`);
    const removed = await register.remove(student.id);
    if (!removed.ok) return onSaid(`${student.name} was not deleted. ${removed.problem}`);
    const others = register.entries.filter((entry) => entry.id !== student.id);
    const left = [...forgotten.value, ...entriesNaming(student.name, others)].map((each) => `“${each}”`);
    onSaid(
      left.length === 0
        ? 'The student is deleted, and nothing of them is left on this device.'
        : `The student is deleted. In your own words the name still stands in ${listed(left.slice(0, 10))}: change it there if you like.`,
    );
  };
  const mend = toMend(student);
  return (
    <section className="register__chosen" aria-labelledby={id}>
      <h3 id={id}>{student.name}</h3>
      <div className="register__deeds">
        <button type="button" className="button button--main" onClick={() => void give()}>
          Give the open lesson
        </button>
        <button type="button" className="button" onClick={() => void start()}>
          New lesson for this student
        </button>
        <button type="button" className="button" onClick={() => setAsking(true)}>
          Delete
        </button>
      </div>
      <p className="register__hint">
        The open lesson is “{title === '' ? 'Without a title' : title}”. A new one starts from the bass, hand,
        level and note names below.
      </p>
      <CheckField
        label={`Write “${student.name}” on the handout of the new lesson`}
        checked={named}
        onChange={setNamed}
      />
      <p className="register__hint">
        Only then is the name on paper and in the lesson’s file; links and practice pages go without it.
      </p>
      {asking && (
        <Question
          asked={`Delete ${student.name} with everything that is kept of them? The lessons stay; the name goes from their handouts, versions, earlier states and what Undo takes back. This cannot be undone.`}
          yes={`Delete ${student.name}`}
          onAnswer={(yes) => {
            setAsking(false);
            if (yes) void remove();
          }}
        />
      )}
      {mend.length > 0 && (
        <p>
          To mend next:{' '}
          {mend
            .slice(0, 3)
            .map(({ mend: words, title: lesson }) => `${words} (“${lesson}”)`)
            .join('; ')}
          .
        </p>
      )}
      <GivenLessons
        student={student}
        onChange={(edit) => void change(edit, 'It is kept.')}
        onOpened={onClose}
      />
      <h4>What lessons start from</h4>
      <StudentForm student={student} onChange={(edit) => void change(edit, 'It is kept.')} />
    </section>
  );
}
