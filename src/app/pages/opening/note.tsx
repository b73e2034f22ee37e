import '../../styles/file-note.css';
import { SelectField } from '../../controls';
import type { FileReading } from '../../state';
import { useAtWork } from '../at-work';

/** Tells what was read from a file and what was left out; lets another part be read, or a copy be made of what is shown. */
export function FileNote({ reading }: { readonly reading: FileReading }) {
  const { session } = useAtWork();
  const { sentences, parts, part, choosePart, only } = reading;
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
      {only === undefined ? (
        <button type="button" className="button button--quiet" onClick={session.dismissReading}>
          Understood
        </button>
      ) : (
        <button type="button" className="button" onClick={only.makeCopy}>
          Make a copy
        </button>
      )}
    </div>
  );
}
