import { type ReactNode, useId, useRef, useState } from 'react';

interface Option<Value extends string> {
  readonly value: Value;
  readonly label: string;
}

interface SelectFieldProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly options: readonly Option<Value>[];
  readonly onChange: (value: Value) => void;
}

interface SelectLayout {
  /** Heard after the label, not seen: what sets the field apart from its like elsewhere, `in bar 3`. */
  readonly where?: string;
  /** Takes the whole row where fields stand in columns. */
  readonly wide?: boolean;
}

/** A labelled choice from a list. */
export function SelectField<Value extends string>(props: SelectFieldProps<Value> & SelectLayout) {
  const id = useId();
  return (
    <div className={`field${props.wide === true ? ' field--wide' : ''}`}>
      <label className="field__label" htmlFor={id}>
        {props.label}
        {props.where !== undefined && <span className="visually-hidden"> {props.where}</span>}
      </label>
      <Choice {...props} id={id} className="field__box" />
    </div>
  );
}

/** A choice inside a sentence; its name is heard, not seen, because the sentence says it. */
export function SelectWord<Value extends string>(props: SelectFieldProps<Value>) {
  return <Choice {...props} className="word word--select" name={props.label} />;
}

interface ChoiceProps<Value extends string> extends SelectFieldProps<Value> {
  readonly id?: string;
  readonly className: string;
  readonly name?: string;
}

function Choice<Value extends string>({ id, className, name, value, options, onChange }: ChoiceProps<Value>) {
  return (
    <select
      id={id}
      className={className}
      aria-label={name}
      value={value}
      onChange={(event) => {
        const chosen = options.find((option) => option.value === event.currentTarget.value);
        if (chosen) onChange(chosen.value);
      }}
    >
      {options.map((option) => (
        <option key={option.value} value={option.value}>
          {option.label}
        </option>
      ))}
    </select>
  );
}

/** Marks a field whose text does not count until it is left: the field's own undo takes the typing back. */
export const draftMark = (dirty: boolean) => ({ 'data-draft': dirty ? '' : undefined });

/** Whether a field's text is not part of the lesson: not yet, see {@link draftMark}, or it stands in a dialog over it. */
export const holdsDraft = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && (target.dataset.draft !== undefined || target.closest('dialog') !== null);

interface NumberProps {
  readonly label: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly step?: number;
  /** Someone comes to the field, and may type into it. */
  readonly onBegin?: () => void;
  readonly onChange: (value: number) => void;
}

/** About as long as a button is held down, in milliseconds. */
const PRESS = 400;

/**
 * A whole number with bounds. What is typed counts as soon as it lies within them; what does not when the field
 * is left is moved to the nearest bound, which is said, and an empty field goes back to what it was.
 */
function useNumberDraft({ value, least, most, onChange }: NumberProps) {
  const [draft, setDraft] = useState<string | null>(null);
  const [said, setSaid] = useState('');
  const late = useRef<ReturnType<typeof setTimeout>>(undefined);
  const settle = () => {
    clearTimeout(late.current);
    if (draft === null) return setSaid('');
    const typed = Number.parseFloat(draft);
    setDraft(null);
    if (Number.isFinite(typed)) {
      const within = Math.min(most, Math.max(least, Math.round(typed)));
      if (within !== value) onChange(within);
      if (typed >= least && typed <= most) return;
      const say = () => setSaid(`${typed} lies outside ${least} to ${most}`);
      // A press that left the field is to end on what it was meant for, which the sentence may move.
      if (document.querySelector(':active')) late.current = setTimeout(say, PRESS);
      else say();
    }
  };
  return {
    said,
    text: draft ?? String(value),
    dirty: draft !== null,
    settle,
    type: (text: string) => {
      clearTimeout(late.current);
      const typed = Number(text);
      const counts = text !== '' && Number.isInteger(typed) && typed >= least && typed <= most;
      setDraft(counts ? null : text);
      setSaid('');
      if (counts && typed !== value) onChange(typed);
    },
  };
}

function NumberInput(
  props: NumberProps & { readonly id?: string; readonly className: string; readonly name?: string },
) {
  const draft = useNumberDraft(props);
  return (
    <>
      <input
        {...draftMark(draft.dirty)}
        id={props.id}
        className={props.className}
        aria-label={props.name}
        type="number"
        inputMode="numeric"
        min={props.least}
        max={props.most}
        step={props.step ?? 1}
        value={draft.text}
        onChange={(event) => draft.type(event.currentTarget.value)}
        onFocus={props.onBegin}
        onBlur={draft.settle}
        onKeyDown={(event) => {
          if (event.key === 'Enter') draft.settle();
        }}
      />
      <span className="field__said" aria-live="polite">
        {draft.said && (props.name === undefined ? `${draft.said}.` : ` (${draft.said})`)}
      </span>
    </>
  );
}

/** A labelled number. */
export function NumberField(props: NumberProps) {
  const id = useId();
  return (
    <div className="field">
      <label className="field__label" htmlFor={id}>
        {props.label}
      </label>
      <NumberInput {...props} id={id} className="field__box" />
    </div>
  );
}

/** A number inside a sentence. */
export function NumberWord(props: NumberProps) {
  return <NumberInput {...props} className="word word--number" name={props.label} />;
}

interface CheckFieldProps {
  readonly label: string;
  /** Heard after the label, not seen, see {@link SelectField}. */
  readonly where?: string;
  readonly note?: string;
  readonly checked: boolean;
  readonly onChange: (checked: boolean) => void;
}

/** A tick box with its word, and a remark that is read as its description. */
export function CheckField({ label, where, note, checked, onChange }: CheckFieldProps) {
  const id = useId();
  return (
    <div className="check">
      <input
        id={id}
        type="checkbox"
        className="check__box"
        checked={checked}
        aria-describedby={note === undefined ? undefined : `${id}-note`}
        onChange={(event) => onChange(event.currentTarget.checked)}
      />
      <label htmlFor={id}>
        {label}
        {where !== undefined && <span className="visually-hidden"> {where}</span>}
      </label>
      {note !== undefined && (
        <span className="check__note" id={`${id}-note`}>
          {note}
        </span>
      )}
    </div>
  );
}

interface SwitchWordProps {
  readonly label: string;
  readonly on: boolean;
  readonly onChange: (on: boolean) => void;
  readonly children: ReactNode;
}

/** A word of a sentence that switches something on and off; the sentence around it says which it is. */
export function SwitchWord({ label, on, onChange, children }: SwitchWordProps) {
  return (
    <button
      type="button"
      role="switch"
      className="word"
      aria-checked={on}
      aria-label={label}
      onClick={() => onChange(!on)}
    >
      {children}
    </button>
  );
}
