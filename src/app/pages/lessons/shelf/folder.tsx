import { useEffect, useRef, useState } from 'react';
import type { FolderDoor } from '../../../storage';
import { useAtWork } from '../../at-work';
import { folderOf } from './folder-watch';

/** The folder that the lessons are kept in, too: chosen, used again, or let go; nothing where a browser cannot. */
export function Folder({ onSaid }: { readonly onSaid: (sentence: string) => Promise<void> }) {
  const { session } = useAtWork();
  const [door, setDoor] = useState<FolderDoor | null>(null);
  const [, setSeen] = useState(0);
  // What came from the folder while the shelf is open stands on it at once.
  const listAnew = useRef(onSaid);
  listAnew.current = onSaid;
  useEffect(() => {
    let stop = () => {};
    let gone = false;
    void folderOf(session).then((opened) => {
      if (gone) return;
      setDoor(opened);
      stop = opened.watch(() => {
        setSeen((count) => count + 1);
        void listAnew.current('');
      });
    });
    return () => {
      gone = true;
      stop();
    };
  }, [session]);
  if (door === null) return null;
  const { kind, name, sentence } = door.state();
  if (kind === 'unable') return null;
  const after = (deed: () => Promise<void>) => () => void deed().then(() => onSaid(''));
  return (
    <div className="shelf__file">
      {kind === 'kept' && (
        <button type="button" className="button" onClick={after(door.look)}>
          Look into the folder “{name}”
        </button>
      )}
      {kind === 'asks' && (
        <button type="button" className="button" onClick={after(door.goOn)}>
          Use the folder “{name}” again
        </button>
      )}
      {(kind === 'none' || kind === 'lost') && (
        <button type="button" className="button" onClick={after(door.choose)}>
          Keep the lessons in a folder
        </button>
      )}
      {kind !== 'none' && (
        <button type="button" className="button" onClick={after(door.stop)}>
          Leave the folder
        </button>
      )}
      <p role="status" aria-label="In the folder" className="shelf__reminder">
        {sentence}
      </p>
    </div>
  );
}
