import '../../styles/whole-dialog.css';
import '../../styles/students.css';
import { type FormEvent, useId, useRef, useState } from 'react';
import { counted } from '../../../core/base';
import { REGISTER_LIMITS, studentsIn } from '../../../core/students';
import { useModal } from '../../controls';
import { useAtWork, useLesson } from '../at-work';
import { ChosenStudent } from './chosen-student';
import { studentLike } from './deeds';
import { useRegister } from './use-register';

/** The students of this device: who they are, what they were given, and what a lesson for them starts from. */
export function Students({ onClose }: { readonly onClose: () => void }) {
  const { session } = useAtWork();
  const lesson = useLesson();
  const dialog = useModal();
  const register = useRegister();
  const id = useId();
  const [chosen, setChosen] = useState<string | null>(null);
  const [said, setSaid] = useState('');
  const students = studentsIn(register.entries);
  const shown = register.entries.find((entry) => entry.id === chosen);
  const close = () => dialog.current?.close();
  const add = async (name: string) => {
    const made = studentLike(lesson, session.freshId(), name);
    const added = await register.add(made);
    setSaid(added.ok ? `${name} is kept on this device.` : `${name} was not kept. ${added.problem}`);
    if (added.ok) setChosen(made.id);
  };
  return (
    <dialog ref={dialog} className="dialog whole-dialog register" aria-labelledby={id} onClose={onClose}>
      <div className="whole-dialog__head">
        <h2 id={id}>Students</h2>
        <p className="whole-dialog__count">{register.known && counted(students.length, 'student')}</p>
        <button type="button" className="button" onClick={close}>
          Close the students
        </button>
      </div>
      <p className="register__hint">
        They are kept on this device alone. Nothing of a student goes along with a lesson, its file, link,
        practice page or packet, unless you tick it or type a name on the handout.
      </p>
      {register.problem !== null && <p role="alert">{register.problem}</p>}
      <p role="status" aria-label="Done with the students" className="register__said">
        {said}
      </p>
      <div className="register__body">
        <div className="register__left">
          <Adding onAdd={add} />
          {register.known && students.length === 0 && (
            <p className="register__hint">
              No student is kept yet. A new one starts with the bass, hand and level of the open lesson.
            </p>
          )}
          {students.length > 0 && (
            <fieldset className="register__list">
              <legend>Choose a student</legend>
              {students.map((student) => (
                <label key={student.id} className="register__row">
                  <input
                    type="radio"
                    name={id}
                    checked={student.id === chosen}
                    onChange={() => setChosen(student.id)}
                  />
                  <span>
                    {student.name}
                    <span className="register__brief">
                      {' '}
                      level {student.level}, {counted(student.given.length, 'lesson')} given
                    </span>
                  </span>
                </label>
              ))}
            </fieldset>
          )}
          {register.unreadable.map((entry) => (
            <p key={entry.id} className="register__hint">
              {entry.name === '' ? 'An entry' : `“${entry.name}”`}: {entry.sentence}
            </p>
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
      </div>
    </dialog>
  );
}

function Adding({ onAdd }: { readonly onAdd: (name: string) => Promise<void> }) {
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  const [name, setName] = useState('');
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const given = name.trim();
    if (given === '') {
      field.current?.focus();
      return;
    }
    setName('');
    void onAdd(given);
  };
  return (
    <form className="register__adding" onSubmit={submit}>
      <label className="field__label" htmlFor={id}>
        Name of a new student
      </label>
      <input
        ref={field}
        id={id}
        className="field__box"
        autoComplete="off"
        maxLength={REGISTER_LIMITS.name}
        value={name}
        onChange={(event) => setName(event.currentTarget.value)}
      />
      <button type="submit" className="button">
        Add the student
      </button>
    </form>
  );
}
