import type { Rescue as RescueOffer } from '../../state';
import { useAtWork, useEditor } from '../at-work';
import { attempt, keepAsFile, saveAsItIs, savePracticePage } from '../saving';

/** What just happened or failed, until it is put away; and that nothing can be saved, as long as that is so. */
export function Notices() {
  const { session } = useAtWork();
  const notice = useEditor((state) => state.notice);
  const saving = useEditor((state) => state.saving);
  const rescue = useEditor((state) => state.rescue);
  return (
    <div role="alert">
      {notice !== null && (
        <div className="notice">
          <p>{notice}</p>
          <button type="button" className="button button--quiet" onClick={session.dismissNotice}>
            Understood
          </button>
        </div>
      )}
      {saving.kind === 'failed' && (
        <div className="notice">
          <p>{saving.sentence}</p>
          <button type="button" className="button" onClick={() => keepAsFile(session)}>
            Save the lesson file
          </button>
        </div>
      )}
      {rescue !== null && <Rescue rescue={rescue} />}
    </div>
  );
}

/** What came of copying a link, until it is taken note of; a file where a link is too long. */
export function Copied() {
  const { session } = useAtWork();
  const copied = useEditor((state) => state.copied);
  const putAway = () => session.editor.setState({ copied: null });
  const save = () => {
    if (copied?.instead === 'lesson') keepAsFile(session);
    else void attempt(session, 'The practice page', (lesson) => savePracticePage(lesson, session));
    putAway();
  };
  return (
    <div role="status" aria-label="Link" className={copied === null ? undefined : 'notice notice--calm'}>
      {copied !== null && (
        <>
          <p>{copied.sentence}</p>
          {copied.instead !== null && (
            <button type="button" className="button" onClick={save}>
              Save the {copied.instead === 'lesson' ? 'lesson file' : 'practice page'}
            </button>
          )}
          <button type="button" className="button button--quiet" onClick={putAway}>
            Understood
          </button>
        </>
      )}
    </div>
  );
}

/** Offers a lesson that is not opened as a file. */
function Rescue({ rescue }: { readonly rescue: RescueOffer }) {
  const { session } = useAtWork();
  const save = async () => {
    const kept = await session.storage.raw(rescue.id);
    if (kept.ok) saveAsItIs(kept.value);
    else session.editor.setState({ notice: kept.problem });
  };
  return (
    <div className="notice">
      <p>{rescue.sentence}</p>
      <button type="button" className="button" onClick={() => void save()}>
        Save it as a file
      </button>
      <button type="button" className="button button--quiet" onClick={session.dismissRescue}>
        Put away
      </button>
    </div>
  );
}
