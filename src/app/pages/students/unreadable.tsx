import { useState } from 'react';
import { success } from '../../../core/base';
import { useAtWork } from '../at-work';
import type { AtRegister } from '../register';
import { forgetEverywhere } from './deeds';
import { Question } from './question';

interface UnreadableProps {
  readonly entry: AtRegister['unreadable'][number];
  readonly register: AtRegister;
  readonly onSaid: (sentence: string) => void;
}

/** An entry that cannot be read: it stays as it is, or is deleted with all that is kept of it. */
export function Unreadable({ entry, register, onSaid }: UnreadableProps) {
  const { session } = useAtWork();
  const [asking, setAsking] = useState(false);
  const called = entry.name === '' ? 'the entry without a name' : `“${entry.name}”`;
  const remove = async () => {
    const forgotten = entry.name === '' ? success([]) : await forgetEverywhere(session, entry.name);
    const removed = forgotten.ok ? await register.remove(entry.id) : forgotten;
    onSaid(removed.ok ? `${called} is deleted.` : `${called} was not deleted. ${removed.problem}`);
  };
  return (
    <div className="register__unreadable">
      <p className="register__hint">
        {entry.name === '' ? 'An entry' : called}: {entry.sentence}
      </p>
      {asking ? (
        <Question
          asked={`Delete ${called}, although it cannot be read here? This cannot be undone.`}
          yes="Delete what cannot be read"
          onAnswer={(yes) => {
            setAsking(false);
            if (yes) void remove();
          }}
        />
      ) : (
        <button type="button" className="button" onClick={() => setAsking(true)}>
          Delete<span className="visually-hidden"> {called}</span>
        </button>
      )}
    </div>
  );
}
