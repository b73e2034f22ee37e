import { type FormEvent, useId, useRef, useState } from 'react';
import { REGISTER_LIMITS, tidyName } from '../../../core/students';

interface AddingProps {
  /** `student` or `class`. */
  readonly what: string;
  readonly onAdd: (name: string) => Promise<void>;
}

/** A name, and the step that makes a student or a class of it. */
export function Adding({ what, onAdd }: AddingProps) {
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  const [name, setName] = useState('');
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const given = tidyName(name);
    if (given === '') {
      field.current?.setCustomValidity(`Write a name first: a ${what} is found by it again.`);
      field.current?.reportValidity();
      return;
    }
    setName('');
    void onAdd(given);
  };
  return (
    <form className="register__adding" onSubmit={submit}>
      <label className="field__label" htmlFor={id}>
        Name of a new {what}
      </label>
      <input
        ref={field}
        id={id}
        className="field__box"
        autoComplete="off"
        maxLength={REGISTER_LIMITS.name}
        value={name}
        onChange={(event) => {
          event.currentTarget.setCustomValidity('');
          setName(event.currentTarget.value);
        }}
      />
      <button type="submit" className="button">
        Add the {what}
      </button>
    </form>
  );
}
