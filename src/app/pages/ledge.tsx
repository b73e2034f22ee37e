import { useEffect, useId, useRef, useState } from 'react';
import { useStore } from 'zustand';
import {
  deriveSheet,
  type Lesson,
  type LinePiece,
  type LineSheet,
  type PlayingSettings,
  setPlaying,
  TEMPO_RANGE,
} from '../../core/lesson';
import { PARTS } from '../../core/performance';
import { NumberWord, SelectWord, SwitchWord } from '../controls';
import { lineAtHand } from './at-hand';
import { listOf } from './describe';
import { NARROW, useMedia } from './hooks';
import { Later, laterPart } from './later';
import { boundsOf, passageOf, practiceTempo } from './playback';
import { useAtWork, useEditor, useLesson } from './session';

const FRETBOARD = laterPart('The fretboard', async () => (await import('./fretboard')).Fretboard);

/** The music stand's ledge: plays the piece at hand, and says how, in a sentence whose words can be changed. */
export function Ledge({ settled }: { readonly settled: Lesson }) {
  const { playback } = useAtWork();
  const lesson = useLesson();
  const pieceId = useEditor((state) => state.pieceId);
  const piece = lineAtHand(lesson, pieceId);
  const settledPiece = lineAtHand(settled, piece?.id ?? pieceId);
  const fault = useStore(playback, (state) => state.fault);
  const bars = settledPiece?.bars.length ?? 0;
  const sheet = settledPiece && deriveSheet(settledPiece, settled.instrument, settled.noteNames);
  const [neck, setNeck] = useState(false);
  return (
    <section className="ledge" aria-label="Playing">
      {neck && piece !== null && sheet?.kind === 'line' && bars > 0 && (
        <Later part={FRETBOARD} given={{ sheet, hand: piece.hand }} />
      )}
      <PlayAndStop canPlay={bars > 0} />
      <div className="ledge__words">
        {piece !== null && sheet?.kind === 'line' && bars > 0 ? (
          <Words piece={piece} sheet={sheet} />
        ) : (
          <p className="ledge__sentence">As soon as there is a line, it can be played here.</p>
        )}
        <PlaybackStatus />
        {fault !== null && (
          <p className="ledge__fault" role="alert">
            {fault}
          </p>
        )}
      </div>
      {bars > 0 && (
        <button
          type="button"
          className="button button--quiet ledge__neck"
          aria-expanded={neck}
          aria-controls={neck ? 'fretboard' : undefined}
          onClick={() => setNeck(!neck)}
        >
          Fretboard
        </button>
      )}
    </section>
  );
}

/** Two buttons in one place; the one that would do nothing is away. The focus stays in the place. */
function PlayAndStop({ canPlay }: { readonly canPlay: boolean }) {
  const { playback } = useAtWork();
  const silent = useStore(playback, (state) => state.kind === 'stopped');
  const holder = useRef<HTMLDivElement>(null);
  const hadFocus = useRef(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: runs when the one button has replaced the other
  useEffect(() => {
    if (hadFocus.current) holder.current?.querySelector('button')?.focus();
  }, [silent]);
  const remember = () => {
    hadFocus.current = holder.current?.contains(document.activeElement) ?? false;
  };
  if (silent && !canPlay) return null;
  return (
    <div className="ledge__play" ref={holder}>
      {silent ? (
        <button
          key="play"
          type="button"
          className="play"
          onClick={() => {
            remember();
            void playback.play();
          }}
          onBlur={() => {
            hadFocus.current = false;
          }}
        >
          <svg viewBox="0 0 12 14" width="12" height="14" aria-hidden="true">
            <path d="M0 0 12 7 0 14Z" fill="currentColor" />
          </svg>
          Play
        </button>
      ) : (
        <button
          key="stop"
          type="button"
          className="play play--stop"
          onClick={() => {
            remember();
            playback.stop();
          }}
        >
          <svg viewBox="0 0 12 12" width="12" height="12" aria-hidden="true">
            <path d="M0 0h12v12H0Z" fill="currentColor" />
          </svg>
          Stop
        </button>
      )}
    </div>
  );
}

/** Heard at start and stop; in between it only shows the bar. */
function PlaybackStatus() {
  const { playback, session } = useAtWork();
  const kind = useStore(playback, (state) => state.kind);
  const bar = useStore(playback, (state) => state.bar);
  const announced = useRef<string>('');
  const first = useStore(playback, (state) => state.first);
  const { pieces, instrument, noteNames } = useStore(session.lessons, (state) => state.lesson);
  const heardId = useStore(playback, (state) => state.heard?.pieceId ?? null);
  const heard = pieces.find((piece) => piece.id === heardId);
  const sheet = heard && deriveSheet(heard, instrument, noteNames);
  const index = bar ?? first;
  const number = (sheet?.kind === 'line' ? sheet.bars[index]?.written.number : undefined) ?? index + 1;
  const turning = announced.current !== kind;
  useEffect(() => {
    announced.current = kind;
  }, [kind]);
  return (
    <>
      {kind === 'preparing' && <p className="ledge__status">Getting ready</p>}
      <p
        className={kind === 'preparing' ? 'visually-hidden' : 'ledge__status'}
        role="status"
        aria-label="Playback"
        aria-live={turning ? 'polite' : 'off'}
      >
        {kind === 'playing' ? `Playing bar ${number}` : 'Stopped'}
      </p>
    </>
  );
}

interface SentenceProps {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
}

function Sentence({ piece, sheet }: SentenceProps) {
  const { session } = useAtWork();
  const { playing } = piece;
  const set = (change: Partial<PlayingSettings>, join?: string) =>
    session.lessons.change((lesson) => setPlaying(lesson, piece.id, change), {
      label: 'change how it is played',
      ...(join === undefined ? {} : { join: `${join} ${piece.id}` }),
    });
  return (
    <p className="ledge__sentence">
      <Passage piece={piece} sheet={sheet} set={set} />{' '}
      {playing.loop ? 'round and round in a ' : 'once, without a '}
      <SwitchWord label="Loop" on={playing.loop} onChange={(loop) => set({ loop })}>
        loop
      </SwitchWord>
      , at{' '}
      <NumberWord
        label="Speed in per cent"
        value={playing.tempoShare}
        least={Math.max(20, Math.ceil((TEMPO_RANGE.least / piece.tempo) * 100))}
        most={Math.min(200, Math.floor((TEMPO_RANGE.most / piece.tempo) * 100))}
        step={5}
        onChange={(tempoShare) => set({ tempoShare }, 'speed')}
      />{' '}
      % ({practiceTempo(piece)} bpm), <PartWords playing={playing} set={set} />
      {playing.countIn === 0 ? ', without a ' : ', after '}
      {playing.countIn > 0 && (
        <>
          <SelectWord
            label="Bars of counting in"
            value={playing.countIn === 1 ? 'one bar' : 'two bars'}
            options={[
              { value: 'one bar', label: 'one bar' },
              { value: 'two bars', label: 'two bars' },
            ]}
            onChange={(text) => set({ countIn: text === 'one bar' ? 1 : 2 })}
          />
          {' of '}
        </>
      )}
      <SwitchWord label="Count-in" on={playing.countIn > 0} onChange={(on) => set({ countIn: on ? 1 : 0 })}>
        count-in
      </SwitchWord>
      .
    </p>
  );
}

/** On a narrow screen the sentence is told in short, and unfolds when it is to be changed. */
function Words({ piece, sheet }: SentenceProps) {
  const narrow = useMedia(NARROW);
  const [unfolded, setUnfolded] = useState(false);
  const id = useId();
  if (!narrow) return <Sentence piece={piece} sheet={sheet} />;
  return (
    <>
      {unfolded && (
        <div id={id}>
          <Sentence piece={piece} sheet={sheet} />
        </div>
      )}
      <p className="ledge__short">
        {!unfolded && <>{inShort(piece, sheet)} </>}
        <button
          type="button"
          className="word"
          aria-expanded={unfolded}
          aria-controls={unfolded ? id : undefined}
          onClick={() => setUnfolded(!unfolded)}
        >
          {unfolded ? 'Say it in short' : 'Change how'}
        </button>
      </p>
    </>
  );
}

/** `Bars 1 to 4, looped, 95 bpm, without bass.` */
function inShort(piece: LinePiece, sheet: LineSheet): string {
  const { playing } = piece;
  const passage = passageOf(piece, sheet);
  const silent = PARTS.filter((part) => part !== 'click' && !playing[part]);
  return `${[
    passage === null ? 'All bars' : `Bars ${passage.first} to ${passage.last}`,
    ...(playing.loop ? ['looped'] : []),
    `${practiceTempo(piece)} bpm`,
    ...(silent.length === 0 ? [] : [`without ${listOf(silent)}`]),
  ].join(', ')}.`;
}

type SetPlaying = (change: Partial<PlayingSettings>, join?: string) => void;

function Passage({ piece, sheet, set }: SentenceProps & { readonly set: SetPlaying }) {
  const { least, most } = boundsOf(sheet);
  const { first, last } = passageOf(piece, sheet) ?? { first: least, last: most };
  const choose = (from: number, to: number) =>
    set({ passage: from === least && to === most ? null : { first: from, last: to } }, 'passage');
  return (
    <>
      <span className="ledge__verb">Bars </span>
      <NumberWord
        label="First bar"
        value={first}
        least={least}
        most={most}
        onChange={(from) => choose(from, Math.max(from, last))}
      />
      {' to '}
      <NumberWord
        label="Last bar"
        value={last}
        least={least}
        most={most}
        onChange={(to) => choose(Math.min(first, to), to)}
      />
      ,
    </>
  );
}

/** `with bass, drums and chops, without organ and click`: the order stays, only the small words change. */
function PartWords({ playing, set }: { readonly playing: PlayingSettings; readonly set: SetPlaying }) {
  return PARTS.map((part, index) => {
    const on = playing[part];
    const before = PARTS[index - 1];
    const after = PARTS[index + 1];
    const goesOn = before !== undefined && playing[before] === on;
    const isLast = after === undefined || playing[after] !== on;
    const link = goesOn
      ? isLast
        ? ' and '
        : ', '
      : `${before === undefined ? '' : ', '}${on ? 'with' : 'without'} `;
    return (
      <span key={part}>
        {link}
        <SwitchWord
          label={part.charAt(0).toUpperCase() + part.slice(1)}
          on={on}
          onChange={(next) => set({ [part]: next })}
        >
          {part}
        </SwitchWord>
      </span>
    );
  });
}
