import '../../styles/whole-dialog.css';
import '../../styles/students.css';
import { useId, useState } from 'react';
import { counted, listed } from '../../../core/base';
import { classesIn, type Entry, membersOf, newClass, studentsIn } from '../../../core/students';
import { useModal } from '../../controls';
import { useAtWork, useLesson } from '../at-work';
import { useRegister } from '../register';
import { Adding } from './adding';
import { ChoiceOfEntry, type Someone } from './choice';
import { ChosenClass } from './chosen-class';
import { ChosenStudent } from './chosen-student';
import { studentLike } from './deeds';
import { Unreadable } from './unreadable';

/** The students and classes of this device: who they are, what they were given, and what a lesson for them starts from. */
export function Students({ onClose }: { readonly onClose: () => void }) {
  const { session } = useAtWork();
  const lesson = useLesson();
  const dialog = useModal();
  const register = useRegister();
  const id = useId();
  const [chosen, setChosen] = useState<string | null>(null);
  const [said, setSaid] = useState('');
  const students = studentsIn(register.entries);
  const classes = classesIn(register.entries);
  const shown = register.entries.find((entry) => entry.id === chosen);
  const close = () => dialog.current?.close();
  const add = async (made: Entry) => {
    const added = await register.add(made);
    setSaid(
      added.ok ? `${made.name} is kept on this device.` : `${made.name} was not kept. ${added.problem}`,
    );
    if (added.ok) setChosen(made.id);
  };
  const brief = (entry: Someone): string =>
    entry.kind === 'student'
      ? `level ${entry.level}, ${counted(entry.given.length, 'lesson')} given`
      : counted(membersOf(entry, register.entries).length, 'student');
  const choice = { group: id, brief, chosen, onChoose: setChosen };
  return (
    <dialog ref={dialog} className="dialog whole-dialog register" aria-labelledby={id} onClose={onClose}>
      <div className="whole-dialog__head">
        <h2 id={id}>Students</h2>
        <p className="whole-dialog__count">
          {register.known &&
            listed([
              counted(students.length, 'student'),
              ...(classes.length === 0 ? [] : [counted(classes.length, 'class', 'classes')]),
            ])}
        </p>
        <button type="button" className="button" onClick={close}>
          Close the students
        </button>
      </div>
      <p className="register__hint">
        They are kept on this device alone. Nothing of a student goes along with a lesson, its file, link,
        practice page or packet, unless you tick it; a name typed for the handout is on its paper and in the
        lesson’s file.
      </p>
      {register.problem !== null && <p role="alert">{register.problem}</p>}
      <p role="status" aria-label="Done with the students" className="register__said">
        {said}
      </p>
      <div className="register__body">
        <div className="register__left">
          <Adding what="student" onAdd={(name) => add(studentLike(lesson, session.freshId(), name))} />
          {register.known && students.length === 0 && (
            <p className="register__hint">
              No student is kept yet. A new one starts with the bass, hand and level of the open lesson.
            </p>
          )}
          <ChoiceOfEntry legend="Choose a student" entries={students} {...choice} />
          {(students.length > 0 || classes.length > 0) && (
            <Adding what="class" onAdd={(name) => add(newClass(session.freshId(), name))} />
          )}
          <ChoiceOfEntry legend="Choose a class" entries={classes} {...choice} />
          {register.unreadable.map((entry) => (
            <Unreadable key={entry.id} entry={entry} register={register} onSaid={setSaid} />
          ))}
        </div>
        {shown?.kind === 'student' && (
          <ChosenStudent
            key={shown.id}
            student={shown}
            register={register}
            onSaid={setSaid}
            onClose={close}
          />
        )}
        {shown?.kind === 'class' && (
          <ChosenClass key={shown.id} group={shown} register={register} onSaid={setSaid} />
        )}
      </div>
    </dialog>
  );
}
