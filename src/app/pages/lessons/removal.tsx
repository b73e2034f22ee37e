import { useEffect, useId, useRef, useState } from 'react';
import { useModal } from '../../controls';
import type { ListedLesson } from '../../storage';
import { useAtWork } from '../at-work';
import { savedText, shelfTitle } from './shelf';

interface LessonRemovalProps {
  /** The lessons that can be removed: all but the one at hand. */
  readonly lessons: readonly ListedLesson[];
  readonly onRemoved: () => void;
  readonly onClose: () => void;
}

/** A dialog that takes lessons off this device, each after asking once more, since nothing brings them back. */
export function LessonRemoval({ lessons, onRemoved, onClose }: LessonRemovalProps) {
  const { session } = useAtWork();
  const dialog = useModal();
  const done = useRef<HTMLButtonElement>(null);
  const [asked, setAsked] = useState<string | null>(null);
  const [said, setSaid] = useState('');
  const id = useId();
  const remove = async (lesson: ListedLesson) => {
    const removed = await session.removeSaved(lesson.id);
    setAsked(null);
    setSaid(removed.ok ? `“${shelfTitle(lesson)}” is removed.` : removed.problem);
    done.current?.focus();
    onRemoved();
  };
  return (
    <dialog ref={dialog} className="dialog" aria-labelledby={id} onClose={onClose}>
      <h2 id={id}>Remove a lesson from this device</h2>
      <p role="status">{said}</p>
      {lessons.length === 0 && <p>Only the lesson at hand is left.</p>}
      <ul className="removal__list" aria-label="Lessons on this device">
        {lessons.map((lesson) => (
          <li key={lesson.id} className="removal__lesson">
            {asked === lesson.id ? (
              <Question lesson={lesson} onRemove={() => void remove(lesson)} onKeep={() => setAsked(null)} />
            ) : (
              <>
                <p id={`${id}-${lesson.id}`}>
                  {shelfTitle(lesson)} <span className="removal__saved">{savedText(lesson)}</span>
                </p>
                <button
                  type="button"
                  className="word"
                  id={`${id}-${lesson.id}-remove`}
                  aria-labelledby={`${id}-${lesson.id}-remove ${id}-${lesson.id}`}
                  onClick={() => setAsked(lesson.id)}
                >
                  Remove
                </button>
              </>
            )}
          </li>
        ))}
      </ul>
      <button ref={done} type="button" className="button" onClick={() => dialog.current?.close()}>
        Done
      </button>
    </dialog>
  );
}

interface QuestionProps {
  readonly lesson: ListedLesson;
  readonly onRemove: () => void;
  readonly onKeep: () => void;
}

function Question({ lesson, onRemove, onKeep }: QuestionProps) {
  const keep = useRef<HTMLButtonElement>(null);
  const id = useId();
  useEffect(() => keep.current?.focus(), []);
  return (
    <>
      <p id={id}>Remove “{shelfTitle(lesson)}” for good? It cannot be brought back.</p>
      <span className="removal__answers">
        <button type="button" className="word" aria-describedby={id} onClick={onRemove}>
          Remove it
        </button>
        <button ref={keep} type="button" className="word" aria-describedby={id} onClick={onKeep}>
          Keep it
        </button>
      </span>
    </>
  );
}
