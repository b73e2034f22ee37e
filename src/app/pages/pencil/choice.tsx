import type { ReactNode } from 'react';
import { useAtWork } from '../at-work';
import { goOnWriting } from './perform';

interface ChoiceProps<Value extends string | number> {
  readonly label: string;
  readonly className: string;
  readonly all: readonly Value[];
  readonly chosen: Value;
  /** How a value is called; as it is written when left out. */
  readonly nameOf?: (value: Value) => string;
  readonly onChoose: (value: Value) => void;
}

/** A row of keys of which one is chosen; the focus stays where the notes are written. */
export function KeyRow<Value extends string | number>({
  label,
  className,
  all,
  chosen,
  nameOf = String,
  onChoose,
  children,
}: ChoiceProps<Value> & { readonly children?: ReactNode }) {
  return (
    <div className={className} role="radiogroup" aria-label={label}>
      {all.map((value) => (
        // biome-ignore lint/a11y/useSemanticElements: a button keeps the focus where the notes are written
        <button
          key={value}
          type="button"
          role="radio"
          className="strip__value"
          aria-checked={value === chosen}
          onClick={() => onChoose(value)}
        >
          {nameOf(value)}
        </button>
      ))}
      {children}
    </div>
  );
}

/** The same where a row has no room: one key, which opens; then the keys write again. */
export function KeyPick<Value extends string | number>({
  label,
  className,
  all,
  chosen,
  nameOf = String,
  onChoose,
}: ChoiceProps<Value>) {
  const { session } = useAtWork();
  return (
    <select
      className={`strip__key strip__pick ${className}`}
      aria-label={label}
      value={chosen}
      onChange={(event) => {
        const value = all.find((each) => String(each) === event.currentTarget.value);
        goOnWriting(session);
        if (value !== undefined) onChoose(value);
      }}
    >
      {all.map((value) => (
        <option key={value} value={value}>
          {nameOf(value)}
        </option>
      ))}
    </select>
  );
}
