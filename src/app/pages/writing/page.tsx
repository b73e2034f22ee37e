import { type ReactNode, useCallback, useEffect, useState } from 'react';
import { useStore } from 'zustand';
import type { Lesson } from '../../../core/lesson';
import { holdsDraft } from '../../controls';
import {
  Later,
  laterPart,
  useAtWork,
  useEditor,
  useLaterParts,
  useSettledLesson,
  useUnhurried,
} from '../at-work';
import { NARROW, useMedia, whenIdle } from '../common';
import { useDesigner } from '../handout';
import { NotePad, Remarks } from '../pad';
import { readyToPrint, saveNeck, useWork } from '../saving';
import { loadScore } from '../score';
import { Brand } from './brand';
import { Happenings } from './happenings';
import { Header } from './header';
import { Copied, Notices } from './notices';

/** Widths at which the note pad folds away; where all is narrow it lies over the sheet. */
const FOLDS = '(max-width: 74.99rem)';

/** The page a lesson is written on: note pad, sheet and ledge. */
export function WritingPage() {
  const { playback, session } = useAtWork();
  const hasVersions = useStore(session.lessons, ({ document }) => document.versions !== undefined);
  const folds = useMedia(FOLDS);
  const narrow = useMedia(NARROW);
  const [padOpen, setPadOpen] = useState(false);
  const designer = useDesigner();
  useShortcuts();
  useLaterParts();

  useEffect(() => {
    loadScore();
    return whenIdle(playback.warmUp, 4000);
  }, [playback]);

  const [offerAt, setOfferAt] = useState<HTMLElement | null>(null);
  const padShown = !folds || padOpen;
  const writeChart = useCallback(() => {
    setPadOpen(true);
    requestAnimationFrame(() => document.querySelector<HTMLElement>('#note-pad textarea')?.focus());
  }, []);
  const closePad = useCallback(() => {
    setPadOpen(false);
    requestAnimationFrame(() => document.querySelector<HTMLElement>('[aria-controls="note-pad"]')?.focus());
  }, []);
  return (
    <div className={`page${designer.View ? ' page--designer' : padShown ? ' page--pad' : ''}`}>
      <Header
        narrow={narrow}
        pad={folds && !designer.View ? { open: padOpen, toggle: () => setPadOpen(!padOpen) } : null}
        handout={{ open: designer.View !== null, toggle: designer.toggle }}
      />
      <Shown
        designer={designer}
        pad={padShown ? { overSheet: narrow, onClose: folds ? closePad : null } : null}
        onWriteChart={writeChart}
        above={
          <>
            <Notices />
            <Copied />
            <Happenings />
            <Reading />
            <Asking />
            <WorkInHand />
            <Sending />
            <div className={hasVersions ? 'versions' : undefined}>
              <Later part={VERSIONS} given={{ offerAt }} />
            </div>
          </>
        }
        below={
          <>
            <div className="versions" ref={setOfferAt} />
            {narrow && <Brand heading={false} />}
          </>
        }
      />
    </div>
  );
}

interface ShownProps {
  readonly designer: ReturnType<typeof useDesigner>;
  /** The note pad, where it is open. */
  readonly pad: { readonly overSheet: boolean; readonly onClose: (() => void) | null } | null;
  readonly onWriteChart: () => void;
  /** What stands over the sheet and under it, whatever the lesson. */
  readonly above: ReactNode;
  readonly below: ReactNode;
}

/** Everything that shows the lesson: while notes are written, only this is rendered again. */
function Shown({ designer, pad, onWriteChart, above, below }: ShownProps) {
  const { session } = useAtWork();
  const settled = useSettledLesson();
  const unhurried = useUnhurried(settled);
  usePrintPages(settled);

  // A sheet that is on the page tells for itself that the lesson is drawn.
  const designed = designer.View !== null;
  useEffect(() => {
    if (designed && settled.id !== '') session.drawn();
  }, [session, settled.id, designed]);

  return (
    <>
      <div className="desk">
        {pad !== null && !designer.View && <NotePad settled={unhurried} {...pad} />}
        {designer.View && <designer.View.Panel settled={settled} onClose={designer.close} />}
        <main className="desk__sheet">
          {above}
          {designer.View ? (
            <designer.View.Preview lesson={settled} />
          ) : (
            <>
              {pad === null && <Remarks />}
              <Later
                key={session.lessons.getState().opening}
                part={SHEET}
                meanwhile={<div className="paper sheet" aria-busy="true" />}
                given={{ settled, onWriteChart }}
              />
              {below}
            </>
          )}
        </main>
      </div>
      <Later
        part={LEDGE}
        meanwhile={<section className="ledge" aria-label="Playing" />}
        given={{ settled: unhurried, saveNeck }}
      />
    </>
  );
}

/** Says what is being made while it takes longer than a moment, and lets it be called off. */
function WorkInHand() {
  const work = useWork();
  return (
    <div
      role="status"
      aria-label="In the making"
      className={work === null ? undefined : 'notice notice--calm'}
    >
      {work !== null && (
        <>
          <p>{work.what} …</p>
          <button type="button" className="button button--quiet" onClick={work.cancel}>
            Call it off
          </button>
        </>
      )}
    </div>
  );
}

/** The chart is seen and typed into first; the sheet and what plays it come right behind. */
const SHEET = laterPart('The sheet', async () => (await import('../sheet')).SheetView);

const LEDGE = laterPart('What plays the line', async () => (await import('../ledge')).Ledge);

const READING = laterPart('What was read from the file', async () => (await import('../opening')).FileNote);

const QUESTION = laterPart('What is asked of a file', async () => (await import('../opening')).Question);

const VERSIONS = laterPart('The choice of versions', async () => (await import('../versions')).Versions);

const SENDING = laterPart('What is sent home', async () => (await import('../sending')).Sending);

/** What is made to be sent home, until it is put away. */
function Sending() {
  const sending = useEditor((state) => state.sending);
  return sending !== null && <Later part={SENDING} given={{ sending }} />;
}

/** What is wanted of a file, before it is opened. */
function Asking() {
  const asking = useEditor((state) => state.asking);
  return asking !== null && <Later part={QUESTION} given={{ asking }} />;
}

/** A file that is being read, and what was read from another program's file until it is put away. */
function Reading() {
  const reading = useEditor((state) => state.reading);
  const beingRead = useEditor((state) => state.beingRead);
  return (
    <div role="status" aria-label="Read from a file">
      {beingRead !== null && (
        <div className="notice notice--calm">
          <p>
            Reading “{beingRead.name}”. You can go on meanwhile.{' '}
            <progress
              aria-label="Reading the file"
              {...(beingRead.share === null ? {} : { value: beingRead.share })}
            />
          </p>
          <button type="button" className="button button--quiet" onClick={beingRead.stop}>
            Stop
          </button>
        </div>
      )}
      {reading !== null && <Later part={READING} given={{ reading }} />}
    </div>
  );
}

/**
 * Undo and redo by the keys every program knows, also while a field has the focus; a field whose text does not
 * count yet ({@link holdsDraft}) takes its own typing back first.
 */
function useShortcuts(): void {
  const { session } = useAtWork();
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const key = event.key.toLowerCase();
      if ((key === 'z' || key === 'y') && !holdsDraft(event.target)) {
        event.preventDefault();
        if (key === 'y' || event.shiftKey) session.lessons.redo();
        else session.lessons.undo();
      }
    };
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, [session]);
}

/** Quiet time after a change before the printed pages are made ready, in milliseconds. */
const PRINT_PAUSE = 1500;

/** Keeps the printed pages ready, so that the browser's own print command prints the sheet. */
function usePrintPages(lesson: Lesson): void {
  const { session } = useAtWork();
  useEffect(() => {
    let gone = false;
    let takeAway = () => {};
    // What the page shows is a moment behind a change; paper is not.
    const unwatch = session.lessons.subscribe((now) => {
      if (now.lesson !== lesson) end();
    });
    const end = () => {
      gone = true;
      takeAway();
      takeAway = () => {};
    };
    const prepare = async () => {
      try {
        const undo = await readyToPrint(lesson, () => !gone);
        if (gone) undo();
        else takeAway = undo;
      } catch {
        // Without the page's fonts there is nothing to print; Export says so when it is asked.
      }
    };
    const timer = window.setTimeout(() => void prepare(), PRINT_PAUSE);
    return () => {
      unwatch();
      window.clearTimeout(timer);
      end();
    };
  }, [lesson, session]);
}
