import '../../styles/show.css';
import { type ReactNode, type RefObject, useEffect, useId, useMemo, useRef, useState } from 'react';
import type { LinePiece, LineSheet } from '../../../core/lesson';
import { climbs, passageOf } from '../../../core/playing';
import { SwitchWord, useModal } from '../../controls';
import { Later } from '../at-work';
import { FRETBOARD } from '../ledge';
import { LargeMusic, type Shown } from './music';

interface ShowViewProps {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
  readonly onClose: () => void;
  /** What plays and stops it. */
  readonly children: ReactNode;
}

interface Choices {
  readonly staff: boolean;
  readonly tab: boolean;
  readonly degrees: boolean;
  readonly counting: boolean;
  readonly neck: boolean;
  readonly dark: boolean;
  readonly four: boolean;
}

const darkNow = (): boolean => window.matchMedia('(prefers-color-scheme: dark)').matches;

/** The view for a stand, a class or a shared screen: the next bars in large, and nothing else. */
export function ShowView({ piece, sheet, onClose, children }: ShowViewProps) {
  const dialog = useModal();
  const title = useId();
  const [choices, setChoices] = useState<Choices>(() => ({
    staff: true,
    tab: true,
    degrees: false,
    counting: true,
    neck: false,
    dark: darkNow(),
    // Two bars are read from across the room.
    four: false,
  }));
  const set = (change: Partial<Choices>) => setChoices((now) => ({ ...now, ...change }));
  const { staff, tab, degrees, counting, neck, dark, four } = choices;
  const shown = useMemo<Shown>(
    () => ({ degrees, counting, parts: staff && tab ? 'both' : staff ? 'staff' : 'tab' }),
    [staff, tab, degrees, counting],
  );
  const screen = useRef<HTMLDivElement>(null);
  useWholeScreen(screen);
  const first = passageOf(piece, sheet)?.first;
  const begin = sheet.bars.findIndex(({ written }) => written.number === first);
  return (
    <dialog ref={dialog} className="show-dialog" aria-labelledby={title} onClose={onClose}>
      <div ref={screen} className={`show ${dark ? 'show--dark' : 'show--light'}`}>
        <h2 className="visually-hidden" id={title}>
          {piece.name}, large
        </h2>
        <LargeMusic
          sheet={sheet}
          shown={shown}
          rows={four ? 2 : 1}
          first={Math.max(0, begin)}
          goesRound={piece.playing.loop || climbs(piece.playing)}
        />
        {neck && (
          <div className="show__neck">
            <Later part={FRETBOARD} given={{ sheet, hand: piece.hand, onSave: null }} />
          </div>
        )}
        <div className="show__foot">
          {children}
          {/* biome-ignore lint/a11y/useSemanticElements: switches of a sentence, not a form */}
          <p className="show__words" role="group" aria-label="What is shown">
            <SwitchWord label="Four bars" on={four} onChange={(on) => set({ four: on })}>
              four bars
            </SwitchWord>
            {/* One of the two is always there. */}
            <SwitchWord
              label="Staff"
              on={staff}
              onChange={(on) => set(on ? { staff: on } : { staff: on, tab: true })}
            >
              staff
            </SwitchWord>
            <SwitchWord
              label="Tab"
              on={tab}
              onChange={(on) => set(on ? { tab: on } : { tab: on, staff: true })}
            >
              tab
            </SwitchWord>
            <SwitchWord label="Degrees" on={degrees} onChange={(on) => set({ degrees: on })}>
              degrees
            </SwitchWord>
            <SwitchWord label="Counting" on={counting} onChange={(on) => set({ counting: on })}>
              counting
            </SwitchWord>
            <SwitchWord label="Neck" on={neck} onChange={(on) => set({ neck: on })}>
              neck
            </SwitchWord>
            <SwitchWord label="Dark" on={dark} onChange={(on) => set({ dark: on })}>
              dark
            </SwitchWord>
          </p>
          <button type="button" className="button" onClick={() => dialog.current?.close()}>
            Close
          </button>
        </div>
      </div>
    </dialog>
  );
}

/** Takes the whole screen where the browser gives it, and gives it back. */
function useWholeScreen(screen: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    const asked = screen.current?.requestFullscreen?.().catch(() => undefined);
    return () => {
      void asked?.then(() => (document.fullscreenElement === null ? undefined : document.exitFullscreen()));
    };
  }, [screen]);
}
