import { useRef, useState } from 'react';
import { useStore } from 'zustand';
import { SAMPLE_TITLES, setTitle } from '../../core/lesson';
import { MenuButton, type MenuGroup } from '../controls';
import type { SavingState } from '../state';
import type { ListedLesson } from '../storage';
import { useExports } from './exports';
import { useAtWork, useEditor, useLesson } from './session';

interface HeaderProps {
  /** Null where the note pad always stands beside the sheet. */
  readonly pad: { readonly open: boolean; readonly toggle: () => void } | null;
  /** The printed page, which takes the place of the sheet while it is designed. */
  readonly handout: { readonly open: boolean; readonly toggle: () => void };
}

/** Lesson title, saved state, and what concerns the lesson as a whole. */
export function Header({ pad, handout }: HeaderProps) {
  const { session } = useAtWork();
  const { title } = useLesson();
  return (
    <header className="header">
      <h1 className="header__brand">Ground Bass</h1>
      <input
        className="header__title"
        aria-label="Lesson title"
        value={title}
        maxLength={200}
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
        <MenuButton label="Export" className="button button--main" groups={useExports()} />
      </div>
    </header>
  );
}

const savingText = (saving: SavingState): string => {
  switch (saving.kind) {
    case 'saved':
      return 'saved';
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

function LessonsMenu() {
  const { session } = useAtWork();
  const currentId = useLesson().id;
  const [saved, setSaved] = useState<readonly ListedLesson[]>([]);
  const others = saved.filter((lesson) => lesson.id !== currentId).slice(0, 12);
  const groups: readonly MenuGroup[] = [
    {
      items: [
        {
          label: 'New lesson',
          note: 'The lesson at hand stays on this device.',
          onChoose: () => void session.startNewLesson(),
        },
      ],
    },
    {
      heading: 'Samples to try',
      items: SAMPLE_TITLES.map((title, index) => ({
        label: title,
        onChoose: () => void session.startSample(index),
      })),
    },
    {
      heading: 'On this device',
      items: others.map((lesson) => ({
        label: lesson.title === '' ? 'Without a title' : lesson.title,
        note: `saved ${savedTime(lesson.savedAt)}`,
        onChoose: () => void session.openSaved(lesson.id),
      })),
    },
  ];
  const refresh = async () => {
    await session.saveNow();
    setSaved(await session.storage.list());
  };
  return <MenuButton label="Lessons" className="button" groups={groups} onOpen={() => void refresh()} />;
}

const savedTime = (milliseconds: number): string =>
  new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short' }).format(milliseconds);

function OpenButton() {
  const { session } = useAtWork();
  const chooser = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" className="button" onClick={() => chooser.current?.click()}>
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
          if (file) {
            const text = await file.text();
            await session.openFile(text);
          }
          field.value = '';
        }}
      />
    </>
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
