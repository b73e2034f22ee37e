import { useEffect, useState } from 'react';
import { CheckField, FileButton } from '../../../controls';
import type { ListedLesson } from '../../../storage';
import { useAtWork } from '../../at-work';
import { saveFile } from '../../saving';
import { readShelf, writeShelf } from './one-file';
import { reminderOf } from './reminder';

interface OneFileProps {
  readonly lessons: readonly ListedLesson[];
  /** Hears what came of it, in a sentence. */
  readonly onSaid: (sentence: string) => Promise<void>;
}

/** The whole shelf as one file, and back; with a word when much was changed since it was last saved so. */
export function OneFile({ lessons, onSaid }: OneFileProps) {
  const { session } = useAtWork();
  const [reminder, setReminder] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  const [students, setStudents] = useState(false);
  useEffect(() => {
    let gone = false;
    void reminderOf(session, lessons).then((sentence) => {
      if (!gone) setReminder(sentence);
    });
    return () => {
      gone = true;
    };
  }, [session, lessons]);
  const inTurn = async (work: () => Promise<string>) => {
    if (busy) return;
    setBusy(true);
    await onSaid(await work());
    setBusy(false);
  };
  const save = () =>
    inTurn(async () => {
      const at = Date.now();
      const written = await writeShelf(session, students);
      if (!written.ok) return `The shelf was not saved as a file. ${written.problem}`;
      saveFile('ground-bass-shelf', written.value.parts, 'zip');
      if ((await session.storage.noteShelfSaved(at)).ok) setReminder(null);
      return written.value.sentence;
    });
  const read = (file: File) =>
    inTurn(async () => {
      const came = await readShelf(session, new Uint8Array(await file.arrayBuffer()));
      return came.ok ? came.value : came.problem;
    });
  return (
    <div className="shelf__file">
      <button type="button" className="button" aria-busy={busy} onClick={() => void save()}>
        Save the shelf as a file
      </button>
      <CheckField
        label="With students, classes and series"
        note="in the shelf’s file"
        checked={students}
        onChange={setStudents}
      />
      <FileButton accept=".zip,application/zip" onChoose={read}>
        Bring a shelf in
      </FileButton>
      {reminder !== null && <p className="shelf__reminder">{reminder}</p>}
    </div>
  );
}
