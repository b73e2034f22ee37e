import type { SchoolClass, Student } from '../../../core/students';

/** Who can be given a lesson. */
export type Someone = Student | SchoolClass;

interface ChoiceProps {
  readonly legend: string;
  /** One group for all lists of the dialog: one entry is chosen of them all. */
  readonly group: string;
  readonly entries: readonly Someone[];
  /** What is said of an entry beside its name. */
  readonly brief: (entry: Someone) => string;
  readonly chosen: string | null;
  readonly onChoose: (id: string) => void;
}

/** Students, or classes, to choose one. */
export function ChoiceOfEntry({ legend, group, entries, brief, chosen, onChoose }: ChoiceProps) {
  if (entries.length === 0) return null;
  return (
    <fieldset className="register__list">
      <legend>{legend}</legend>
      {entries.map((entry) => (
        <label key={entry.id} className="register__row">
          <input
            type="radio"
            name={group}
            checked={entry.id === chosen}
            onChange={() => onChoose(entry.id)}
          />
          <span>
            {entry.name} <span className="register__brief">{brief(entry)}</span>
          </span>
        </label>
      ))}
    </fieldset>
  );
}
