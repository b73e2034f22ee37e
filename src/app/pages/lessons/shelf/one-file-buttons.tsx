import { useEffect, useState } from 'react';
import { counted } from '../../../../core/base';
import type { OnShelf } from '../../../../core/shelf';
import { CheckField, FileButton } from '../../../controls';
import { useAtWork } from '../../at-work';
import { saveFile } from '../../saving';
import { momentText } from '../words';
import { readShelf, writeShelf } from './one-file';

/** Lessons changed since the shelf was last in a file, from which on the shelf reminds of it. */
const REMINDED_FROM = 10;

interface OneFileProps {
  readonly lessons: readonly OnShelf[];
  /** Hears what came of it, in a sentence. */
  readonly onSaid: (sentence: string) => Promise<void>;
}

/** The whole shelf as one file, and back; with a word when much was changed since it was last saved so. */
export function OneFile({ lessons, onSaid }: OneFileProps) {
  const { session } = useAtWork();
  const [savedAt, setSavedAt] = useState<number | null | 'unknown'>('unknown');
  const [busy, setBusy] = useState(false);
  const [students, setStudents] = useState(false);
  useEffect(() => {
    void session.storage.shelfSavedAt().then((found) => setSavedAt(found.ok ? found.value : 'unknown'));
  }, [session]);
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
      if ((await session.storage.noteShelfSaved(at)).ok) setSavedAt(at);
      return written.value.sentence;
    });
  const read = (file: File) =>
    inTurn(async () => {
      const came = await readShelf(session, new Uint8Array(await file.arrayBuffer()));
      return came.ok ? came.value : came.problem;
    });
  const changed =
    savedAt === 'unknown'
      ? 0
      : lessons.filter((lesson) => savedAt === null || lesson.savedAt > savedAt).length;
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
      {savedAt !== 'unknown' && changed >= REMINDED_FROM && (
        <p className="shelf__reminder">
          {savedAt === null
            ? `${counted(changed, 'lesson')}, and the shelf was never saved as a file.`
            : `${counted(changed, 'lesson')} changed since the shelf was saved as a file (${momentText(savedAt)}).`}
        </p>
      )}
    </div>
  );
}
