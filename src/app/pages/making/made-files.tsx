import { useState } from 'react';
import { canSend, fileOf, type MadeFile, saveMade, saveZip, sendFiles } from '../saving';

interface Listed extends MadeFile {
  /** Its length, for example. */
  readonly said: string;
}

interface MadeFilesProps {
  /** Of the list. */
  readonly name: string;
  /** The name of a ZIP with all of them. */
  readonly zip: string;
  readonly files: readonly Listed[];
}

const megabytes = (bytes: number): string =>
  bytes < 100_000 ? `${Math.ceil(bytes / 1000)} kB` : `${(bytes / 1e6).toFixed(1)} MB`;

/** Files that are ready: each to be saved, all of them in one step, or sent by the system's own sheet where it has one. */
export function MadeFiles({ name, zip, files }: MadeFilesProps) {
  const all = files.map(fileOf);
  const [said, setSaid] = useState('');
  if (files.length === 0) return null;
  return (
    <>
      <ul className="sending__files" aria-label={name}>
        {files.map((file, index) => (
          <li key={file.stem + file.kind}>
            <button type="button" className="button" onClick={() => saveMade(file)}>
              Save {all[index]?.name}
            </button>{' '}
            {file.said}, {megabytes(all[index]?.size ?? 0)}
          </li>
        ))}
      </ul>
      <div className="sending__answers">
        {canSend(all) && (
          <button
            type="button"
            className="button button--main"
            onClick={() => void sendFiles(all).then(setSaid)}
          >
            Send {all.length === 1 ? 'it' : 'them'}
          </button>
        )}
        {files.length > 1 && (
          <button type="button" className="button" onClick={() => void saveZip(zip, files)}>
            Save all in one ZIP
          </button>
        )}
      </div>
      <p role="status" aria-label="Sending" className="sending__said">
        {said}
      </p>
    </>
  );
}
