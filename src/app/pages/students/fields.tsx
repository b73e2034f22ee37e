import { useId, useState } from 'react';
import { tidyName } from '../../../core/students';
import { draftMark } from '../../controls';

interface TextFieldProps {
  readonly label: string;
  /** Heard after the label, not seen: what sets the field apart from its like elsewhere. */
  readonly where?: string;
  readonly value: string;
  /** Characters at most. */
  readonly most: number;
  /** Several lines. */
  readonly long?: boolean;
  readonly hint?: string;
  /** Hears the text when the field is left, or Enter is pressed in one line; gives what is wrong with it, or null. */
  readonly onSettle: (text: string) => string | null;
}

/** A text that is kept when its field is left. What cannot be kept stays in the field, with a sentence why. */
export function TextField({ label, where, value, most, long = false, hint, onSettle }: TextFieldProps) {
  const id = useId();
  const [draft, setDraft] = useState<string | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const settle = () => {
    if (draft === null) return;
    const wrong = draft === value ? null : onSettle(long ? draft : tidyName(draft));
    setFault(wrong);
    if (wrong === null) setDraft(null);
  };
  const shared = {
    ...draftMark(draft !== null),
    id,
    className: 'field__box',
    maxLength: most,
    value: draft ?? value,
    'aria-invalid': fault !== null,
    'aria-describedby': `${id}-said`,
    onBlur: settle,
  };
  return (
    <div className="field field--wide">
      <label className="field__label" htmlFor={id}>
        {label}
        {where !== undefined && <span className="visually-hidden"> {where}</span>}
      </label>
      {long ? (
        <textarea {...shared} rows={3} onChange={(event) => setDraft(event.currentTarget.value)} />
      ) : (
        <input
          {...shared}
          type="text"
          autoComplete="off"
          onChange={(event) => setDraft(event.currentTarget.value)}
          onKeyDown={(event) => {
            if (event.key === 'Enter') settle();
          }}
        />
      )}
      <p id={`${id}-said`} className="register__hint" role={fault === null ? undefined : 'alert'}>
        {fault ?? hint}
      </p>
    </div>
  );
}
