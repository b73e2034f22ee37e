import { useEffect, useState } from 'react';
import { useAtWork } from '../at-work';
import { attempt, printLessonHandout, saveHandout } from '../saving';

/** How long a PDF may take before its progress is shown, in milliseconds. */
const PATIENCE = 1000;

interface Making {
  readonly done: number;
  readonly all: number;
}

/** Downloads and prints the handout, and says how far it is when that takes longer than a moment. */
export function HandoutSaving() {
  const { session } = useAtWork();
  const [making, setMaking] = useState<Making | null>(null);
  const download = async () => {
    if (making !== null) return;
    setMaking({ done: 0, all: 1 });
    await attempt(session, 'The handout', (lesson) =>
      saveHandout(session, lesson, (done, all) => setMaking({ done, all })),
    );
    setMaking(null);
  };
  const print = () => attempt(session, 'The printed page', printLessonHandout);
  return (
    <div className="designer__saving">
      <div className="designer__actions">
        <button type="button" className="button button--main" onClick={() => void download()}>
          Download PDF
        </button>
        <button type="button" className="button" onClick={() => void print()}>
          Print
        </button>
      </div>
      <div className="designer__progress">{making !== null && <Progress making={making} />}</div>
    </div>
  );
}

function Progress({ making }: { readonly making: Making }) {
  const [long, setLong] = useState(false);
  useEffect(() => {
    const timer = window.setTimeout(() => setLong(true), PATIENCE);
    return () => window.clearTimeout(timer);
  }, []);
  return long ? (
    <progress aria-label="Pages of the PDF that are written" value={making.done} max={making.all} />
  ) : null;
}
