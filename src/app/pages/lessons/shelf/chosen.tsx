import { type FormEvent, useEffect, useId, useRef, useState } from 'react';
import { LESSON_LIMITS } from '../../../../core/lesson';
import type { EarlierState, ListedLesson } from '../../../storage';
import { useAtWork } from '../../at-work';
import { momentText, savedText, shelfTitle } from '../words';
import { describeLesson } from './describe';

interface ChosenProps {
  readonly lesson: ListedLesson;
  /** It is the lesson at hand. */
  readonly atHand: boolean;
  /** It is in the booklet that is put together. */
  readonly inBooklet: boolean;
  readonly onBooklet: (isIn: boolean) => void;
  readonly onOpen: () => void;
  readonly onRename: (title: string) => void;
  readonly onCopy: () => void;
  readonly onRemove: () => void;
  readonly onLookAt: (state: EarlierState) => void;
}

/** The chosen lesson of the shelf and what can be done with it. */
export function Chosen(props: ChosenProps) {
  const { lesson, atHand, inBooklet, onBooklet, onOpen, onRename, onCopy, onRemove, onLookAt } = props;
  const id = useId();
  const [renaming, setRenaming] = useState(false);
  return (
    <section className="shelf__chosen" aria-labelledby={id}>
      <h3 id={id}>{shelfTitle(lesson)}</h3>
      {lesson.readable ? (
        describeLesson(lesson).map((sentence) => <p key={sentence}>{sentence}</p>)
      ) : (
        <p>{lesson.sentence} It stays on this device as it is; save it as a file, or remove it.</p>
      )}
      {renaming ? (
        <Renaming
          title={lesson.title}
          onDone={(title) => {
            setRenaming(false);
            if (title !== null && title !== lesson.title) onRename(title);
          }}
        />
      ) : (
        <p className="shelf__deeds">
          <button type="button" className="button button--main" onClick={onOpen}>
            {lesson.readable ? 'Open' : 'Save it as a file'}
          </button>
          {lesson.readable && (
            <>
              <button type="button" className="button" onClick={() => setRenaming(true)}>
                Rename
              </button>
              <button type="button" className="button" onClick={onCopy}>
                Copy
              </button>
              <button type="button" className="button" onClick={() => onBooklet(!inBooklet)}>
                {inBooklet ? 'Take out of the booklet' : 'Put into the booklet'}
              </button>
            </>
          )}
          {!atHand && (
            <button type="button" className="button" onClick={onRemove}>
              Remove
            </button>
          )}
        </p>
      )}
      {atHand && <p>This lesson is open: to remove it, open another one first.</p>}
      <EarlierStates key={lesson.id} lesson={lesson} onLookAt={onLookAt} />
    </section>
  );
}

function Renaming({
  title,
  onDone,
}: {
  readonly title: string;
  readonly onDone: (title: string | null) => void;
}) {
  const [text, setText] = useState(title);
  const field = useRef<HTMLInputElement>(null);
  const id = useId();
  useEffect(() => field.current?.select(), []);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    onDone(text.trim());
  };
  return (
    <form className="shelf__renaming" onSubmit={submit}>
      <label className="field__label" htmlFor={id}>
        New title
      </label>
      <input
        ref={field}
        id={id}
        className="field__box"
        value={text}
        maxLength={LESSON_LIMITS.title}
        onChange={(event) => setText(event.currentTarget.value)}
        onKeyDown={(event) => {
          if (event.key !== 'Escape') return;
          event.preventDefault();
          event.stopPropagation();
          onDone(null);
        }}
      />
      <button type="submit" className="button button--main">
        Rename
      </button>
      <button type="button" className="button" onClick={() => onDone(null)}>
        Leave it
      </button>
    </form>
  );
}

const NO_STATES =
  'None is kept yet: one is kept each day that the lesson is changed, and one before each large change: another line, chart or key, much of the notes rewritten, a piece or a version removed, something carried into other versions, an earlier state brought back, or another state from the folder.';

interface EarlierProps {
  readonly lesson: ListedLesson;
  readonly onLookAt: (state: EarlierState) => void;
}

/** The states that were kept of a lesson, fetched when they are asked for. */
function EarlierStates({ lesson, onLookAt }: EarlierProps) {
  const { session } = useAtWork();
  const [states, setStates] = useState<readonly EarlierState[] | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const fetch = async () => {
    const found = await session.storage.earlierStates(lesson.id);
    setProblem(found.ok ? null : found.problem);
    setStates(found.ok ? found.value : null);
  };
  return (
    <details className="shelf__states" onToggle={(event) => event.currentTarget.open && void fetch()}>
      <summary>Earlier states</summary>
      {problem !== null && <p>{problem}</p>}
      {states?.length === 0 && <p>{NO_STATES}</p>}
      {states !== null && states.length > 0 && (
        <ul aria-label={`Earlier states of ${shelfTitle(lesson)}`}>
          {states.map((state) => (
            <li key={state.key}>
              {state.lesson === null ? (
                `${momentText(state.at)}: it cannot be read any more`
              ) : (
                <>
                  <button type="button" className="word" onClick={() => onLookAt(state)}>
                    {momentText(state.at)}
                  </button>{' '}
                  {state.before === null ? 'before the changes of that day' : `before: ${state.before}`}
                </>
              )}
            </li>
          ))}
        </ul>
      )}
      {states === null && problem === null && <p>{savedText(lesson)}</p>}
    </details>
  );
}
