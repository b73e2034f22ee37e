import { type ReactNode, useCallback, useEffect, useRef, useState } from 'react';
import type { Result } from '../../../core/base';
import type { FileReader } from '../../reader';
import { studentStore } from '../../student-store';
import { useDroppedFile } from '../common';
import { layOut, type PracticeDesk } from './desk';
import { lessonOfAddress, lessonOfFile, lessonOfText, type OpenedLesson } from './open-lesson';
import { PracticePage } from './practice-page';

/** Inside a page of someone else nothing is remembered: whose device it is, that page may know. */
const IS_FRAMED = window.self !== window.top;

interface StudentPageProps {
  /** The text of the lesson that came in the page's own file; null where the page came without one. */
  readonly embedded: string | null;
  /** Reads files beside the page; null where there is none, as in the page that is a single file. */
  readonly reader: FileReader | null;
}

/**
 * The practice page by itself, away from the lesson's own page: it shows what it is given and keeps no lesson. Without
 * a lesson in its file it takes the one in the address, or a file that is opened or dropped on it.
 */
export function StudentPage({ embedded, reader }: StudentPageProps) {
  const open = embedded === null;
  const { desk, notice, beingRead, show, showFile, refuse } = useOpenedLesson(reader);
  useEffect(() => {
    if (embedded !== null) {
      void show(lessonOfText(embedded));
      return;
    }
    const showLinked = () => {
      const read = lessonOfAddress(window.location.hash);
      if (read !== null) void show(read);
    };
    showLinked();
    window.addEventListener('hashchange', showLinked);
    return () => window.removeEventListener('hashchange', showLinked);
  }, [embedded, show]);
  useDroppedFile(open ? showFile : null, refuse);

  const alert = (
    <>
      <div role="alert" className={notice === null ? undefined : 'notice'}>
        {notice !== null && <p>{notice}</p>}
      </div>
      <div role="status" aria-label="The file that is being read">
        {beingRead !== null && reader !== null && (
          <div className="notice notice--calm">
            <p>
              Reading “{beingRead}”. <progress aria-label="Reading the file" />
            </p>
            <button type="button" className="button button--quiet" onClick={reader.stop}>
              Stop
            </button>
          </div>
        )}
      </div>
    </>
  );
  const opener = open ? <OpenButton onFile={showFile} main={desk === null} /> : null;
  if (desk === null) return <Door notice={alert}>{opener}</Door>;
  return (
    <PracticePage
      key={desk.session.lessons.getState().lesson.id}
      desk={desk}
      actions={opener}
      store={IS_FRAMED ? null : studentStore}
      notice={alert}
    />
  );
}

/** Shown while no lesson is open. */
function Door({ notice, children }: { readonly notice: ReactNode; readonly children: ReactNode }) {
  return (
    <main className="practice-door">
      <h1>Practice page</h1>
      {notice}
      <p>
        Open the lesson file that your teacher sent you, or drop it on this page. It stays in this browser:
        nothing is sent anywhere, and nothing you do here changes the file. The lesson is not kept: open the
        file again the next time, and go on where you were.
      </p>
      <p>{children}</p>
    </main>
  );
}

/** Milliseconds after which a file that is still being read is shown as such. */
const SHOWN_AFTER = 400;

function useOpenedLesson(reader: FileReader | null) {
  const [beingRead, setBeingRead] = useState<string | null>(null);
  const [desk, setDesk] = useState<PracticeDesk | null>(null);
  const [notice, setNotice] = useState<string | null>(null);
  const current = useRef<PracticeDesk | null>(null);
  const show = useCallback(async (read: Result<OpenedLesson, string>) => {
    if (!read.ok) {
      setNotice(read.problem);
      return;
    }
    const { lesson, said } = read.value;
    const laidOut = await layOut(lesson);
    current.current?.end();
    current.current = laidOut;
    setNotice(said);
    setDesk(laidOut);
  }, []);
  const showFile = useCallback(
    async (file: File) => {
      const timer = window.setTimeout(() => setBeingRead(file.name), SHOWN_AFTER);
      const read = await lessonOfFile(file, reader);
      window.clearTimeout(timer);
      setBeingRead(null);
      await show(read);
    },
    [show, reader],
  );
  return { desk, notice, beingRead, show, showFile, refuse: setNotice };
}

type OnFile = (file: File) => Promise<void>;

function OpenButton({ onFile, main }: { readonly onFile: OnFile; readonly main: boolean }) {
  const chooser = useRef<HTMLInputElement>(null);
  return (
    <>
      <button
        type="button"
        className={main ? 'button button--main' : 'button'}
        onClick={() => chooser.current?.click()}
      >
        Open
      </button>
      <input
        ref={chooser}
        type="file"
        hidden
        accept=".json,application/json"
        onChange={async (event) => {
          const field = event.currentTarget;
          const file = field.files?.[0];
          if (file) await onFile(file);
          field.value = '';
        }}
      />
    </>
  );
}
