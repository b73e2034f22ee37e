import '../../styles/file-note.css';
import { SelectField } from '../../controls';
import type { FileReading } from '../../state';
import { useAtWork } from '../at-work';

/** Tells what was read from a file and what was left out, and lets another part of it be read. */
export function FileNote({ reading }: { readonly reading: FileReading }) {
  const { session } = useAtWork();
  const { sentences, parts, part, choosePart } = reading;
  const [first, ...others] = sentences;
  return (
    <div className="notice notice--calm file-note">
      <div className="file-note__words">
        <p>{first}</p>
        <ul>
          {others.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
        {parts.length > 1 && (
          <SelectField
            label="Part"
            value={part}
            options={parts.map(({ id, name }) => ({ value: id, label: name }))}
            onChange={choosePart}
          />
        )}
      </div>
      <button type="button" className="button button--quiet" onClick={session.dismissReading}>
        Understood
      </button>
    </div>
  );
}
