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
import type { ScoreLayout } from '../../../score';
import { useModal } from '../../controls';
import { Later } from '../at-work';
import { useMedia } from '../common';
import { FRETBOARD } from '../ledge';
import { BarsInWords } from './bars-in-words';
import { barsOf, type Choices, shownOf } from './choices';
import { ClassWords } from './class-words';
import { Fold } from './fold';
import { nextLight, type ShowKey, useShowKeys } from './keys';
import { LargeMusic, useTurn } from './music';
import { guessedInches, pixelOf, readFrom } from './reading';
import { ReadingWords, readInShort } from './reading-words';
import { tracksOf, useRoom } from './room';
import { useSeenBars } from './seen';
import { ShownWords } from './shown-words';

interface ShowViewProps {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
  readonly instrument: InstrumentSettings;
  readonly onChange: (change: Partial<PlayingSettings>) => void;
  readonly onClose: () => void;
  /** What says where it is played, what is amiss and when to rest. */
  readonly status: ReactNode;
  /** What plays and stops it. */
  readonly children: ReactNode;
}

const matches = (query: string): boolean => window.matchMedia(query).matches;

/** Touched, and nothing else: a tablet or a telephone. */
const TOUCHED = '(pointer: coarse) and (not (any-pointer: fine))';

/** From here on the words of what is shown stand open beside the buttons. */
const ROOMY = '(min-width: 90rem) and (min-height: 50rem)';

/** The view for a stand, a class or a shared screen: the next bars in large, and nothing else. */
export function ShowView({ piece, sheet, instrument, onChange, onClose, status, children }: ShowViewProps) {
  const dialog = useModal();
  const title = useId();
  const screen = useRef<HTMLDivElement>(null);
  const stage = useRef<HTMLDivElement>(null);
  const whole = useRoom(screen);
  const room = useRoom(stage);
  useWholeScreen(screen);
  const [choices, setChoices] = useState<Choices>(() => ({
    staff: true,
    tab: true,
    degrees: false,
    counting: true,
    neck: false,
    dark: matches('(prefers-color-scheme: dark)'),
    // Two bars are read from across the room.
    four: false,
    hidden: false,
    answer: true,
    keys: true,
    inches: guessedInches(window.innerWidth, window.innerHeight, matches(TOUCHED)),
  }));
  const set = useCallback((change: Partial<Choices>) => setChoices((now) => ({ ...now, ...change })), []);
  const { staff, tab, degrees, counting, neck, dark, hidden, answer } = choices;
  const shown = useMemo(() => shownOf({ staff, tab, degrees, counting }), [staff, tab, degrees, counting]);
  const bars = barsOf(choices);
  const millimetres = pixelOf(choices.inches, whole.width, whole.height);
  const [drawn, setDrawn] = useState<ScoreLayout | null>(null);
  const [neckWords, setNeckWords] = useState<number | null>(null);
  const [open, setOpen] = useState<string | null>(null);
  const roomy = useMedia(ROOMY);
  const first = passageOf(piece, sheet)?.first;
  const begin = sheet.bars.findIndex(({ written }) => written.number === first);
  const lights = useMemo(() => lightsOf(piece, sheet, instrument), [piece, sheet, instrument]);
  const [lit, setLit] = useState<number | null>(null);
  const { seen, onSeen, place, turnTo, told } = useSeenBars(sheet, begin, bars);
  const light = lit === null ? null : (lights[lit] ?? null);
  const turn = useTurn(sheet.id);
  const act = useCallback(
    (key: ShowKey) => {
      if (key.kind === 'bars') {
        turnTo(key.by);
      } else if (key.kind === 'switch') {
        setChoices((now) => ({
          ...now,
          [key.what]: !now[key.what],
          // One of staff and tab is always there.
          ...(key.what === 'tab' && now.tab ? { staff: true } : {}),
        }));
      } else setLit((now) => nextLight(lights, now, key));
    },
    [lights, turnTo],
  );
  useShowKeys(act, choices.keys);
  const foldOf = (name: string) => ({
    open: open === name,
    onOpen: (now: boolean) => setOpen((before) => (now ? name : before === name ? null : before)),
  });
  const read =
    drawn === null ? {} : readFrom(drawn.systems, { staff, neck: neck ? neckWords : null, millimetres });
  const shownWords = <ShownWords choices={choices} set={set} turnTo={turnTo} />;
  const readingWords = (
    <ReadingWords {...{ sheet, choices, set, read, room, millimetres }} neck={neckWords} />
  );
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
        {!hidden && <BarsInWords {...{ sheet, turn, answer }} bars={seen} />}
        <p className="visually-hidden" role="status" aria-label="Turned to">
          {told}
        </p>
        <div className="show__stage" ref={stage} style={neck ? tracksOf(room) : undefined}>
          <LargeMusic
            sheet={sheet}
            shown={shown}
            bars={bars}
            place={place}
            hidden={hidden}
            light={light}
            turn={turn}
            answer={answer}
            goesRound={piece.playing.loop || climbs(piece.playing)}
            millimetres={millimetres}
            onDrawn={setDrawn}
            onSeen={onSeen}
          />
          {neck && (
            <div className="show__neck">
              <Later
                part={FRETBOARD}
                given={{ sheet, hand: piece.hand, onSave: null, onLarge: setNeckWords }}
              />
            </div>
          )}
        </div>
        <div className="show__foot">
          {children}
          <div className="show__status">{status}</div>
          {roomy ? (
            <>
              {shownWords}
              <Fold name={readInShort(read)} {...foldOf('reading')}>
                {readingWords}
              </Fold>
            </>
          ) : (
            <Fold name="What is shown" {...foldOf('shown')}>
              {shownWords}
              {readingWords}
            </Fold>
          )}
          <Fold name="In class" flows {...foldOf('class')}>
            <ClassWords
              piece={piece}
              lights={lights}
              lit={lit}
              setLit={setLit}
              choices={choices}
              set={set}
              onChange={onChange}
            />
          </Fold>
          <button type="button" className="button show__close" onClick={() => dialog.current?.close()}>
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
