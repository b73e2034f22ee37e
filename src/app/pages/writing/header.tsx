import { useRef } from 'react';
import { useStore } from 'zustand';
import { LESSON_LIMITS, setTitle } from '../../../core/lesson';
import { FileButton, MenuButton } from '../../controls';
import type { SavingState } from '../../state';
import { useAtWork, useEditor, useLessonText } from '../at-work';
import { LessonsMenu } from '../lessons';
import { prepareHandout } from '../saving';
import { Brand } from './brand';
import { useExports } from './exports';
import { openChosen } from './open';

interface HeaderProps {
  /** In one column the name is only heard here; it stands at the foot of the page. */
  readonly narrow: boolean;
  /** Null where the note pad always stands beside the sheet. */
  readonly pad: { readonly open: boolean; readonly toggle: () => void } | null;
  /** The printed page, which takes the place of the sheet while it is designed. */
  readonly handout: { readonly open: boolean; readonly toggle: () => void };
}

/** Lesson title, saved state, and what concerns the lesson as a whole. */
export function Header({ narrow, pad, handout }: HeaderProps) {
  const { session } = useAtWork();
  const title = useLessonText('title');
  return (
    <header className="header">
      {narrow ? <h1 className="header__brand">Ground Bass</h1> : <Brand heading />}
      <input
        className="header__title"
        aria-label="Lesson title"
        value={title}
        maxLength={LESSON_LIMITS.title}
        onChange={(event) => {
          const text = event.currentTarget.value;
          session.lessons.change((lesson) => setTitle(lesson, text), {
            label: 'change the title',
            join: 'title',
          });
        }}
      />
      <Saving />
      <div className="header__actions">
        <HistoryButtons />
        {pad !== null && (
          <button
            type="button"
            className="button header__pad"
            aria-expanded={pad.open}
            aria-controls="note-pad"
            onClick={pad.toggle}
          >
            Chart and aims
          </button>
        )}
        <LessonsMenu />
        <OpenButton />
        <button
          type="button"
          className="button header__handout"
          aria-pressed={handout.open}
          onClick={handout.toggle}
        >
          Handout
        </button>
        <MenuButton
          label="Export"
          className="button button--main"
          groups={useExports()}
          onOpen={() => void prepareHandout()}
        />
      </div>
    </header>
  );
}

const savingText = (saving: SavingState): string => {
  switch (saving.kind) {
    case 'saved':
      return 'saved';
    case 'shown':
      return 'only shown';
    case 'unsaved':
      return 'saving …';
    default:
      return 'not saved';
  }
};

function Saving() {
  const saving = useEditor((state) => state.saving);
  return (
    <p className={`header__saving header__saving--${saving.kind}`} id="saving">
      {savingText(saving)}
      {saving.kind === 'saved' && <span className="header__where"> on this device</span>}
    </p>
  );
}

/** Lesson files, practice pages, and files of music by their endings and media types. */
const OPENED =
  '.json,application/json,.html,text/html,.musicxml,.xml,.mxl,application/vnd.recordare.musicxml+xml,application/vnd.recordare.musicxml,.mid,.midi,audio/midi,.txt,.tab,text/plain';

function OpenButton() {
  const { session } = useAtWork();
  return (
    <FileButton accept={OPENED} onChoose={(file) => openChosen(session, file)}>
      Open
    </FileButton>
  );
}

/** Each is there only while it has something to do; its place stays free, so that nothing moves. */
function HistoryButtons() {
  const { session } = useAtWork();
  const undoLabel = useStore(session.lessons, (state) => state.undoLabel);
  const redoLabel = useStore(session.lessons, (state) => state.redoLabel);
  const undo = useRef<HTMLButtonElement>(null);
  const redo = useRef<HTMLButtonElement>(null);
  const step = (work: () => void, button: HTMLButtonElement | null, other: HTMLButtonElement | null) => {
    work();
    requestAnimationFrame(() => {
      if (button !== null && getComputedStyle(button).visibility === 'hidden') other?.focus();
    });
  };
  return (
    <>
      <button
        ref={undo}
        type="button"
        className={`button header__undo${undoLabel === null ? ' button--away' : ''}`}
        title={undoLabel === null ? undefined : `Take back: ${undoLabel}`}
        onClick={() => step(session.lessons.undo, undo.current, redo.current)}
      >
        Undo
      </button>
      <button
        ref={redo}
        type="button"
        className={`button header__redo${redoLabel === null ? ' button--away' : ''}`}
        title={redoLabel === null ? undefined : `Bring back: ${redoLabel}`}
        onClick={() => step(session.lessons.redo, redo.current, undo.current)}
      >
        Redo
      </button>
    </>
  );
}
