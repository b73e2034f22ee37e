import type { Rescue as RescueOffer } from '../../state';
import { useAtWork, useEditor } from '../at-work';
import { keepAsFile, saveAsItIs } from '../saving';

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
          <button
            type="button"
            className="button"
            onClick={() => keepAsFile(session, session.lessons.getState().lesson)}
          >
            Save the lesson file
          </button>
        </div>
      )}
      {rescue !== null && <Rescue rescue={rescue} />}
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
