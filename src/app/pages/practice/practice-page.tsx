import '../../styles/practice.css';
import { type ReactNode, useDeferredValue, useEffect, useState } from 'react';
import type { Lesson } from '../../../core/lesson';
import { lineAtHand } from '../../../core/lesson';
import { SelectField } from '../../controls';
import { AtWorkProvider, useAtWork, useEditor, useLesson } from '../at-work';
import { whenIdle } from '../common';
import { loadScore } from '../score';
import { Cautions } from './cautions';
import type { PracticeDesk } from './desk';
import { PracticeLedge } from './ledge';
import { PracticePiece } from './piece';
import { SkipLinks } from './skip-links';

interface PracticePageProps {
  readonly desk: PracticeDesk;
  /** What stands at the end of the head: the way back, or the way to another lesson. */
  readonly actions: ReactNode;
  /** A sentence about what just failed. */
  readonly notice: ReactNode;
}

/** What a student opens: the sheet in large and how it is played, and nothing else. */
export function PracticePage({ desk, actions, notice }: PracticePageProps) {
  useEffect(() => {
    loadScore();
    return whenIdle(desk.playback.warmUp, 4000);
  }, [desk]);
  return (
    <AtWorkProvider value={desk}>
      <div className="page page--practice">
        <SkipLinks />
        <Head actions={actions} />
        <div className="desk">
          <main className="desk__sheet">
            {notice}
            <Sheet />
          </main>
        </div>
        <PlayingLedge />
      </div>
    </AtWorkProvider>
  );
}

function PlayingLedge() {
  return <PracticeLedge lesson={useDeferredValue(useLesson())} />;
}

function Head({ actions }: { readonly actions: ReactNode }) {
  const { title } = useLesson();
  useEffect(() => {
    const before = document.title;
    document.title = `${title === '' ? 'Lesson' : title}: practice page`;
    return () => {
      document.title = before;
    };
  }, [title]);
  return (
    <header className="header">
      <h1 className="practice__title">{title === '' ? 'Lesson without a title' : title}</h1>
      <div className="header__actions">{actions}</div>
    </header>
  );
}

const WHOLE = 'whole';

function Sheet() {
  const { session } = useAtWork();
  const lesson = useLesson();
  const pieceId = useEditor((state) => state.pieceId);
  const [shown, setShown] = useState<string>(WHOLE);
  const atHand = lineAtHand(lesson, pieceId);
  const pieces = lesson.pieces.filter((piece) => shown === WHOLE || piece.id === shown);
  const choose = (choice: string) => {
    setShown(choice);
    if (choice !== WHOLE) session.choosePiece(choice);
  };
  return (
    <div className="paper sheet sheet--large">
      {lesson.pieces.length > 1 && (
        <div className="practice__choice">
          <SelectField
            label="On the sheet"
            value={shown}
            options={[
              { value: WHOLE, label: 'The whole lesson' },
              ...lesson.pieces.map((piece) => ({ value: piece.id, label: `Only ${piece.name}` })),
            ]}
            onChange={choose}
          />
        </div>
      )}
      {pieces.map((piece) => (
        <PracticePiece key={piece.id} piece={piece} lesson={lesson} atHand={piece.id === atHand?.id} />
      ))}
      <Notes lesson={lesson} />
      <Cautions />
      <p className="practice__kept">
        Nothing is kept here: tempo, loop and parts are as your teacher set them whenever this page is opened.
      </p>
    </div>
  );
}

function Notes({ lesson: { notes } }: { readonly lesson: Lesson }) {
  if (notes.trim() === '') return null;
  return (
    <section className="practice__notes" aria-labelledby="practice-notes">
      <h2 id="practice-notes">Notes</h2>
      <p>{notes}</p>
    </section>
  );
}
