import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { LESSON_LIMITS } from '../../../core/lesson';
import { draftMark } from '../../controls';

interface NameOfVersionProps {
  readonly name: string;
  /** Hears the name that was written; null where it stays as it is. */
  readonly onName: (name: string | null) => void;
}

/** The name of the open version while it is written; Escape leaves it as it is. */
export function NameOfVersion({ name, onName }: NameOfVersionProps) {
  const [text, setText] = useState(name);
  const field = useRef<HTMLInputElement>(null);
  const left = useRef(false);
  useEffect(() => field.current?.select(), []);
  const leave = (written: string) => {
    if (left.current) return;
    left.current = true;
    const told = written.trim();
    onName(told === '' || told === name ? null : told);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter') leave(text);
    else if (event.key === 'Escape') leave(name);
  };
  return (
    <input
      ref={field}
      className="versions__name"
      aria-label="Name of the version"
      placeholder="for Wednesday’s class"
      maxLength={LESSON_LIMITS.title}
      value={text}
      {...draftMark(text !== name)}
      onChange={(event) => setText(event.currentTarget.value)}
      onKeyDown={onKeyDown}
      onBlur={() => leave(text)}
    />
  );
}
