import '../../styles/file-note.css';
import type { FileReading } from '../../state';
import { useAtWork } from '../at-work';
import { Sentences } from './sentences';

/** Tells what was read from a file and what was left out; lets it be read otherwise, or a copy be made of what is shown. */
export function FileNote({ reading }: { readonly reading: FileReading }) {
  const { session } = useAtWork();
  const { sentences, askAgain, only } = reading;
  const [first, ...others] = sentences;
  return (
    <div className="notice notice--calm file-note">
      <div className="file-note__words">
        <p>{first}</p>
        <Sentences sentences={others} />
        {askAgain !== undefined && (
          <p>
            <button type="button" className="word" onClick={askAgain}>
              Read it otherwise
            </button>
          </p>
        )}
      </div>
      {only === undefined ? (
        <button type="button" className="button button--quiet" onClick={session.dismissReading}>
          Understood
        </button>
      ) : (
        <div className="file-note__choices">
          {only.earlier !== undefined && (
            <>
              <button type="button" className="button button--main" onClick={only.earlier.bringBack}>
                Bring it back
              </button>
              <button type="button" className="button" onClick={only.earlier.leave}>
                Leave it
              </button>
            </>
          )}
          <button type="button" className="button" onClick={only.makeCopy}>
            Make a copy
          </button>
        </div>
      )}
    </div>
  );
}
