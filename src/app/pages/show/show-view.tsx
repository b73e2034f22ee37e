import '../../styles/show.css';
import {
  type ReactNode,
  type RefObject,
  useCallback,
  useEffect,
  useId,
  useMemo,
  useRef,
  useState,
} from 'react';
import { barNames } from '../../../core/base';
import {
  type InstrumentSettings,
  type LinePiece,
  type LineSheet,
  lightsOf,
  type PlayingSettings,
} from '../../../core/lesson';
import { climbs, passageOf } from '../../../core/playing';
import { SwitchWord, useModal } from '../../controls';
import { Later } from '../at-work';
import { FRETBOARD } from '../ledge';
import { ClassWords } from './class-words';
import { nextLight, type ShowKey, useShowKeys } from './keys';
import { LargeMusic, type Shown, useTurn } from './music';

interface ShowViewProps {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
  readonly instrument: InstrumentSettings;
  readonly onChange: (change: Partial<PlayingSettings>) => void;
  readonly onClose: () => void;
  /** What plays and stops it. */
  readonly children: ReactNode;
}

/** Written bars that stand beside each other. */
const BARS_IN_ROW = 2;

interface Choices {
  readonly staff: boolean;
  readonly tab: boolean;
  readonly degrees: boolean;
  readonly counting: boolean;
  readonly neck: boolean;
  readonly dark: boolean;
  readonly four: boolean;
  /** Everything hidden: the class listens. */
  readonly hidden: boolean;
  /** Whether the bars that the student answers are seen. */
  readonly answer: boolean;
  /** Whether letters are keys here. */
  readonly keys: boolean;
}

const darkNow = (): boolean => window.matchMedia('(prefers-color-scheme: dark)').matches;

/** The view for a stand, a class or a shared screen: the next bars in large, and nothing else. */
export function ShowView({ piece, sheet, instrument, onChange, onClose, children }: ShowViewProps) {
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
    hidden: false,
    answer: true,
    keys: true,
  }));
  const set = (change: Partial<Choices>) => setChoices((now) => ({ ...now, ...change }));
  const { staff, tab, degrees, counting, neck, dark, four, hidden, answer } = choices;
  const shown = useMemo<Shown>(
    () => ({ degrees, counting, parts: staff && tab ? 'both' : staff ? 'staff' : 'tab' }),
    [staff, tab, degrees, counting],
  );
  const screen = useRef<HTMLDivElement>(null);
  useWholeScreen(screen);
  const first = passageOf(piece, sheet)?.first;
  const begin = sheet.bars.findIndex(({ written }) => written.number === first);
  const rows = four ? 2 : 1;
  const lights = useMemo(() => lightsOf(piece, sheet, instrument), [piece, sheet, instrument]);
  const [lit, setLit] = useState<number | null>(null);
  const [turned, setTurned] = useState(0);
  const light = lit === null ? null : (lights[lit] ?? null);
  const turn = useTurn(sheet.id);
  const act = useCallback(
    (key: ShowKey) => {
      if (key.kind === 'bars') {
        const last = Math.ceil(sheet.bars.length / BARS_IN_ROW) - 1;
        setTurned((now) => Math.min(last, Math.max(0, now + key.by * rows)));
      } else if (key.kind === 'switch') {
        setChoices((now) => ({
          ...now,
          [key.what]: !now[key.what],
          // One of staff and tab is always there.
          ...(key.what === 'tab' && now.tab ? { staff: true } : {}),
        }));
      } else setLit((now) => nextLight(lights, now, key));
    },
    [lights, rows, sheet.bars.length],
  );
  useShowKeys(act, choices.keys);
  const numbers = light?.bars.map((bar) => sheet.bars[bar]?.written.number ?? bar + 1) ?? [];
  return (
    <dialog ref={dialog} className="show-dialog" aria-labelledby={title} onClose={onClose}>
      <div ref={screen} className={`show ${dark ? 'show--dark' : 'show--light'}`}>
        <h2 className="visually-hidden" id={title}>
          {piece.name}, large
        </h2>
        <div className="show__said" role="status" aria-label="What is lit up">
          {light !== null && (
            <>
              <p className="show__name">
                {light.name}
                {numbers.length < sheet.bars.length && `: ${barNames(numbers)}`}
              </p>
              <p>{light.sentence}</p>
            </>
          )}
        </div>
        {turn !== null && (
          <p className="show__turn">
            {turn.kind === 'call' ? 'Call: listen' : 'Answer: play'},{' '}
            {barNames(turn.bars.map((bar) => sheet.bars[bar]?.written.number ?? bar + 1))}
          </p>
        )}
        <LargeMusic
          sheet={sheet}
          shown={shown}
          rows={rows}
          first={Math.min(sheet.bars.length - 1, Math.max(0, begin) + turned * BARS_IN_ROW)}
          hidden={hidden}
          light={light}
          turn={turn}
          answer={answer}
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
              tab <kbd>T</kbd>
            </SwitchWord>
            <SwitchWord label="Degrees" on={degrees} onChange={(on) => set({ degrees: on })}>
              degrees <kbd>D</kbd>
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
          <ClassWords
            piece={piece}
            lights={lights}
            lit={lit}
            setLit={setLit}
            choices={choices}
            set={set}
            onChange={onChange}
          />
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
