import { useId, useState } from 'react';
import { counted } from '../../../core/base';
import { type Entry, membersOf, REGISTER_LIMITS, type SchoolClass } from '../../../core/students';
import type { AtRegister } from '../register';
import { GivingToClass } from './class-giving';
import { ClassMembers } from './class-members';
import { TextField } from './fields';
import { Question } from './question';

interface ChosenClassProps {
  readonly group: SchoolClass;
  readonly register: AtRegister;
  readonly onSaid: (sentence: string) => void;
}

/** The chosen class: who is in it, and the open lesson for all of them. */
export function ChosenClass({ group, register, onSaid }: ChosenClassProps) {
  const id = useId();
  const [asking, setAsking] = useState(false);
  const members = membersOf(group, register.entries);
  const change = async (edit: (standing: SchoolClass) => SchoolClass) => {
    const changed = await register.change(group.id, (entry: Entry) =>
      entry.kind === 'class' ? edit(entry) : entry,
    );
    onSaid(changed.ok ? 'It is kept.' : `It was not kept. ${changed.problem}`);
  };
  const remove = async () => {
    const removed = await register.remove(group.id);
    onSaid(
      removed.ok
        ? `${group.name} is deleted. Its students stay, with what they were given.`
        : `${group.name} was not deleted. ${removed.problem}`,
    );
  };
  const unread = group.members.length - members.length;
  return (
    <section className="register__chosen" aria-labelledby={id}>
      <h3 id={id}>{group.name}</h3>
      {members.length === 0 ? (
        <p>Nobody is in this class yet: tick its students below.</p>
      ) : (
        <GivingToClass group={group} members={members} register={register} onSaid={onSaid} />
      )}
      {unread > 0 && (
        <p className="register__hint">
          {counted(unread, 'member')} cannot be read here and {unread === 1 ? 'stays' : 'stay'} in the class
          as before.
        </p>
      )}
      <ClassMembers group={group} register={register} onChange={(edit) => void change(edit)} />
      <TextField
        label="Name"
        where="of the class"
        value={group.name}
        most={REGISTER_LIMITS.name}
        onSettle={(text) => {
          if (text.trim() === '') return 'A class needs a name, so that you find it again.';
          void change((standing) => ({ ...standing, name: text.trim() }));
          return null;
        }}
      />
      {asking ? (
        <Question
          asked={`Delete ${group.name}? Its students stay, with what they were given. This cannot be undone.`}
          yes={`Delete ${group.name}`}
          onAnswer={(yes) => {
            setAsking(false);
            if (yes) void remove();
          }}
        />
      ) : (
        <p className="register__deeds">
          <button type="button" className="button" onClick={() => setAsking(true)}>
            Delete
          </button>
        </p>
      )}
    </section>
  );
}
