import { useState } from 'react';
import { deriveSheet, type Lesson, setPlaying } from '../../../core/lesson';
import { diaryText, entryWords, type LastPractice, lastWords, settingsOf } from '../../../core/practising';
import { useAtWork } from '../at-work';
import type { Student } from './student';

/** Lines of the diary that are shown; all of them are sent. */
const SHOWN = 8;

/** Offers to go on where the student was. */
export function WhereYouWere({
  lesson,
  last,
}: {
  readonly lesson: Lesson;
  readonly last: LastPractice | undefined;
}) {
  const { session, playback } = useAtWork();
  const [offered, setOffered] = useState(true);
  const piece = lesson.pieces.find(({ id }) => id === last?.pieceId);
  const sheet = piece && deriveSheet(piece, lesson.instrument, lesson.noteNames);
  if (!offered || last === undefined || piece?.kind !== 'line' || sheet?.kind !== 'line') return null;
  const goOn = () => {
    session.choosePiece(piece.id);
    session.lessons.change((now) => setPlaying(now, piece.id, settingsOf(last, piece)), {
      label: 'go on where you were',
    });
    if (last.rung !== null && last.rung > 0) playback.waitOnRung(piece.id, last.rung);
    setOffered(false);
  };
  return (
    <div className="notice notice--calm practice__before">
      <p>You practised {lastWords(last, piece, sheet)}.</p>
      <button type="button" className="button button--main" onClick={goOn}>
        Go on where you were
      </button>
      <button type="button" className="button button--quiet" onClick={() => setOffered(false)}>
        Begin as your teacher set it
      </button>
    </div>
  );
}

const share =
  typeof navigator.share === 'function'
    ? (text: string) => navigator.share({ title: 'Practice diary', text })
    : null;

/** Whoever closes the system's choice of apps has sent nothing, and knows it (W3C, Web Share API). */
const hasChangedTheirMind = (problem: unknown): boolean =>
  problem instanceof DOMException && problem.name === 'AbortError';

function saveText(text: string): void {
  const url = URL.createObjectURL(new Blob([text], { type: 'text/plain' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = 'practice-diary.txt';
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 1000);
}

/** What was practised, as it was; it can be sent and cleared. */
export function Diary({ student: { record, kept, clear } }: { readonly student: Student }) {
  const [asked, setAsked] = useState(false);
  const [unsent, setUnsent] = useState(false);
  if (record === null) return null;
  const { diary } = record;
  const text = diaryText(diary);
  return (
    <section className="practice__diary" aria-labelledby="practice-diary">
      <h2 id="practice-diary">Practice diary</h2>
      {diary.length === 0 && record.last.length === 0 ? (
        <p>
          Nothing yet. What you play is written down here: which bars, how long, and the fastest round that
          you played without stopping.
        </p>
      ) : (
        <>
          <ul className="practice__entries">
            {diary.slice(-SHOWN).map((entry, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a line is its place
              <li key={index}>{entryWords(entry)}</li>
            ))}
          </ul>
          <div className="practice__actions">
            {share !== null && (
              <button
                type="button"
                className="button"
                onClick={() =>
                  share(text).then(
                    () => setUnsent(false),
                    (problem: unknown) => setUnsent(!hasChangedTheirMind(problem)),
                  )
                }
              >
                Send the diary
              </button>
            )}
            <button type="button" className="button" onClick={() => saveText(text)}>
              Save the diary as text
            </button>
            <button type="button" className="button button--quiet" onClick={() => setAsked(true)}>
              Clear the diary
            </button>
          </div>
          <p role="status" aria-label="Sending the diary">
            {unsent && 'The diary could not be handed to another app here. Save it as text, and send that.'}
          </p>
          {asked && (
            <p>
              This takes away the diary and where you were, and nothing brings them back.{' '}
              <button
                type="button"
                className="word"
                onClick={() => {
                  clear();
                  setAsked(false);
                }}
              >
                Clear it
              </button>{' '}
              ·{' '}
              <button type="button" className="word" onClick={() => setAsked(false)}>
                keep it
              </button>
            </p>
          )}
        </>
      )}
      <p className="practice__kept">
        {kept
          ? 'The diary, where you were and the headphones’ delay are kept by this browser on this device only; nothing is sent. Your teacher’s lesson stays as it is.'
          : 'This browser keeps nothing for this page, so the diary and where you were last as long as the page is open.'}
      </p>
    </section>
  );
}
