import '../../../styles/whole-dialog.css';
import '../../../styles/shelf.css';
import { useCallback, useDeferredValue, useEffect, useId, useMemo, useRef, useState } from 'react';
import { counted } from '../../../../core/base';
import { ANY_LESSON, findOnShelf } from '../../../../core/shelf';
import { useModal } from '../../../controls';
import type { ListedLesson, RemovedLesson } from '../../../storage';
import { useAtWork, useEditor, useLesson } from '../../at-work';
import { momentText, savedText, shelfTitle } from '../words';
import { ShelfBooklet } from './booklet';
import { Chosen } from './chosen';
import { copy, rename } from './deeds';
import { describeEarlier, inBrief } from './describe';
import { Folder } from './folder';
import { OneFile } from './one-file-buttons';
import { Sift } from './sift';
import { WindowList } from './window-list';

const isRemoved = (lesson: RemovedLesson): string =>
  `“${shelfTitle(lesson)}” is removed. Until this page is closed or reloaded it can be brought back.`;

/** Milliseconds until thousands of lessons are listed anew where they were listed a moment ago: their rows come first. */
const AFTER_ROWS = 400;

interface ShelfProps {
  readonly onClose: () => void;
  /** The lessons as they were listed a moment ago, which are shown until they are listed anew; null for none yet. */
  readonly known: readonly ListedLesson[] | null;
}

/** All lessons of this device: found, renamed, copied, removed, and looked at as they were. */
export function Shelf({ onClose, known }: ShelfProps) {
  const { session } = useAtWork();
  const atHand = useLesson().id;
  const dialog = useModal();
  const id = useId();
  const [lessons, setLessons] = useState(known);
  const [problem, setProblem] = useState<string | null>(null);
  const [wish, setWish] = useState(ANY_LESSON);
  const [chosen, setChosen] = useState<string | null>(null);
  const [inBooklet, setInBooklet] = useState<readonly string[]>([]);
  const last = useEditor(({ removed }) => removed.at(-1));
  const [said, setSaid] = useState(last === undefined ? '' : isRemoved(last));
  const back = useRef<HTMLButtonElement>(null);

  const list = useCallback(async () => {
    const found = await session.storage.list();
    setProblem(found.ok ? null : `The lessons kept here cannot be listed. ${found.problem}`);
    if (found.ok) setLessons(found.value);
  }, [session]);
  const isListed = known !== null;
  useEffect(() => {
    const saved = session.saveNow();
    const timer = setTimeout(() => void saved.then(list), isListed ? AFTER_ROWS : 0);
    return () => clearTimeout(timer);
  }, [session, list, isListed]);
  useEffect(
    () =>
      session.storage.watch((news) => {
        if (news.kind === 'saved' || news.kind === 'removed') void list();
      }),
    [session, list],
  );

  const readable = useMemo(() => (lessons ?? []).filter((lesson) => lesson.readable), [lessons]);
  const unreadable = useMemo(() => (lessons ?? []).filter((lesson) => !lesson.readable), [lessons]);
  const asked = useDeferredValue(wish);
  const found = useMemo<readonly ListedLesson[]>(() => {
    const all = findOnShelf(readable, asked);
    // What cannot be read has nothing to be found by but its title, and is never kept out of sight.
    return asked === ANY_LESSON || asked.words === '' ? [...all, ...unreadable] : all;
  }, [readable, unreadable, asked]);
  const shown = found.find((lesson) => lesson.id === chosen) ?? null;

  const chapters = useMemo(
    () => inBooklet.flatMap((each) => readable.find((lesson) => lesson.id === each) ?? []),
    [readable, inBooklet],
  );

  const close = () => dialog.current?.close();
  const open = async (lesson: ListedLesson) => {
    close();
    if (!lesson.readable) session.offerAsFile(lesson.id, lesson.sentence);
    else if (lesson.id !== atHand) await session.openSaved(lesson.id);
  };
  const say = async (sentence: string) => {
    setSaid(sentence);
    await list();
  };
  const remove = async (lesson: ListedLesson) => {
    const done = await session.removeSaved(lesson.id);
    if (!done.ok) return say(done.problem);
    setChosen(null);
    await say(isRemoved(done.value));
    back.current?.focus();
  };
  const putBack = async () => {
    if (last === undefined) return;
    const done = await session.putBack(last);
    if (!done.ok) return say(done.problem);
    setChosen(last.id);
    await say(
      done.value ? 'It is on the shelf again, as it was.' : 'Another lesson stands in its place by now.',
    );
  };
  return (
    <dialog ref={dialog} className="dialog whole-dialog shelf" aria-labelledby={id} onClose={onClose}>
      <div className="whole-dialog__head">
        <h2 id={id}>The shelf</h2>
        <p role="status" className="whole-dialog__count shelf__count">
          {lessons === null
            ? ''
            : `${counted(found.length, 'lesson')}${found.length === lessons.length ? '' : ` of ${lessons.length}`}`}
        </p>
        <OneFile lessons={readable} onSaid={say} />
        <Folder onSaid={say} />
        <button type="button" className="button" onClick={close}>
          Close the shelf
        </button>
      </div>
      {problem !== null && <p role="alert">{problem}</p>}
      <Sift lessons={readable} wish={wish} onChange={setWish} />
      <div className="shelf__said">
        <p role="status" aria-label="Done on the shelf">
          {said}
        </p>
        {last !== undefined && (
          <button ref={back} type="button" className="button" onClick={() => void putBack()}>
            Bring the removed lesson back
          </button>
        )}
      </div>
      <div className="shelf__body">
        {lessons !== null && found.length === 0 ? (
          <p className="shelf__none">
            {lessons.length === 0
              ? 'No lesson is kept on this device yet: one is, as soon as something is changed.'
              : 'No lesson on the shelf is like this. Take a word or a choice away.'}
          </p>
        ) : (
          <WindowList
            label="Lessons on the shelf"
            items={found}
            foundBy={asked}
            chosen={chosen}
            onChoose={setChosen}
            onOpen={(lesson) => void open(lesson)}
          >
            {(lesson) => (
              <>
                <span className="shelf__title">
                  {shelfTitle(lesson)}
                  {lesson.id === atHand && <span className="shelf__open"> (open)</span>}
                </span>
                <span className="shelf__brief">
                  {lesson.readable
                    ? [inBrief(lesson), momentText(lesson.usedAt)].filter((part) => part !== '').join(' · ')
                    : savedText(lesson)}
                </span>
              </>
            )}
          </WindowList>
        )}
        {shown === null ? (
          found.length > 0 && <p className="shelf__hint">Choose a lesson to see what can be done with it.</p>
        ) : (
          <Chosen
            key={shown.id}
            lesson={shown}
            atHand={shown.id === atHand}
            inBooklet={inBooklet.includes(shown.id)}
            onBooklet={(isIn) =>
              setInBooklet(isIn ? [...inBooklet, shown.id] : inBooklet.filter((each) => each !== shown.id))
            }
            onOpen={() => void open(shown)}
            onRename={(title) =>
              void rename(session, shown.id, title).then((done) =>
                say(done.ok ? `It is called “${shelfTitle({ title })}” now.` : done.problem),
              )
            }
            onCopy={() =>
              void copy(session, shown.id).then((done) => {
                if (done.ok) setChosen(done.value);
                return say(done.ok ? `A copy of “${shelfTitle(shown)}” stands on the shelf.` : done.problem);
              })
            }
            onRemove={() => void remove(shown)}
            onLookAt={(state) => {
              const { lesson, at } = state;
              if (lesson === null) return;
              close();
              void session.lookAt({ lesson, sentences: describeEarlier(lesson.title, at) });
            }}
          />
        )}
      </div>
      <ShelfBooklet
        lessons={chapters}
        listed={found.filter((lesson) => lesson.readable).filter(({ id }) => !inBooklet.includes(id))}
        onChange={setInBooklet}
      />
    </dialog>
  );
}
