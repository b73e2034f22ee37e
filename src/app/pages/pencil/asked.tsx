import { useEffect, useId, useRef } from 'react';
import { barName } from '../../../core/base';
import { BAR_WORDS_LENGTH } from '../../../core/lesson';
import { type Desk, wordAbove, writeWord } from '../../../core/writing';
import { useAtWork, useEditor } from '../at-work';
import { goOnWriting, perform } from './perform';
import { Taps } from './taps';

interface AskedProps {
  readonly desk: Desk;
  /** Of the bar at hand, as it is written over it. */
  readonly number: number;
}

/** What the pencil asks for before it goes on. */
export function Asked({ desk, number }: AskedProps) {
  const asked = useEditor((state) => state.asked);
  if (asked === null) return null;
  return asked === 'word' ? <Word desk={desk} number={number} /> : <Taps desk={desk} number={number} />;
}

function Word({ desk, number }: AskedProps) {
  const { session } = useAtWork();
  const field = useRef<HTMLInputElement>(null);
  const id = useId();
  useEffect(() => field.current?.focus(), []);
  const write = () => {
    const text = field.current?.value.trim() ?? '';
    goOnWriting(session);
    if (text !== wordAbove(desk)) perform(session, writeWord(text));
  };
  return (
    <form
      className="strip__asked"
      onSubmit={(event) => {
        event.preventDefault();
        write();
      }}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.stopPropagation();
        goOnWriting(session);
      }}
    >
      <label htmlFor={id}>Word above {barName(number)}</label>
      <input
        ref={field}
        id={id}
        className="field__box"
        defaultValue={wordAbove(desk)}
        maxLength={BAR_WORDS_LENGTH}
        autoComplete="off"
      />
      <button type="submit" className="button">
        Write it
      </button>
      <button type="button" className="button button--quiet" onClick={() => goOnWriting(session)}>
        Leave it as it was
      </button>
    </form>
  );
}
