import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import type { Light, LineSheet } from '../../../core/lesson';
import { straightened } from '../../../core/playing';
import type { BarBox, ScoreLayout, ScoreOptions, SystemLayout } from '../../../score';
import type { PlayPosition } from '../../../sound';
import { useAtWork } from '../at-work';
import { useWidth } from '../common';
import { barToRead, countedBeat, useScore } from '../score';
import { type TurnedRows, turnRows } from './page-turn';
import { silencesOf } from './silence';
import { largestSize, type Size, textSizesFor } from './sizes';
import { sameTurn, type Turn, turnAt } from './turn';

export type Shown = Pick<ScoreOptions, 'degrees' | 'counting' | 'parts'>;

interface LargeMusicProps {
  readonly sheet: LineSheet;
  readonly shown: Shown;
  readonly rows: 1 | 2;
  /** Index of the written bar that is shown while nothing is played. */
  readonly first: number;
  /** Whether the first bar comes after the last one. */
  readonly goesRound: boolean;
  /** Nothing of the music is seen. */
  readonly hidden: boolean;
  readonly light: Light | null;
  /** Whose turn it is while it is played by turns. */
  readonly turn: Turn | null;
  /** Whether the bars that are answered are seen. */
  readonly answer: boolean;
}

/** Two bars, or two and the two that come next, as large as the room allows. */
export function LargeMusic(given: LargeMusicProps) {
  const { sheet, shown, rows, first, goesRound, hidden, light, turn, answer } = given;
  const holder = useRef<HTMLDivElement>(null);
  const width = useWidth(holder);
  const height = useRoom(holder);
  const layout = useLargeLayout(sheet, shown, rows, width, height);
  const turned = useTurnedRows(layout, rows, first, goesRound, sheet.id);
  return (
    <div className={`show__music${hidden ? ' show__music--hidden' : ''}`} ref={holder}>
      {hidden && <p className="show__hidden">Hidden: listen</p>}
      {layout !== null &&
        turned.rows.map((row, index) => {
          const system = row === null ? undefined : layout.systems[row];
          return (
            <div
              // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place
              key={index}
              className={`show__row${index === turned.at ? '' : ' show__row--next'}`}
            >
              {system && (
                <LargeSystem
                  layout={layout}
                  system={system}
                  sheet={sheet}
                  light={light}
                  turn={turn}
                  answer={answer}
                />
              )}
            </div>
          );
        })}
    </div>
  );
}

function useRoom(holder: React.RefObject<HTMLElement | null>): number {
  const [height, setHeight] = useState(0);
  useLayoutEffect(() => {
    const watched = holder.current;
    if (watched === null) return;
    const observer = new ResizeObserver(() => setHeight(watched.clientHeight));
    observer.observe(watched);
    return () => observer.disconnect();
  }, [holder]);
  return height;
}

const BARS_IN_ROW = 2;
/** A staff space in the drawing's own units. */
const UNITS = 10;

function useLargeLayout(
  sheet: LineSheet,
  shown: Shown,
  rows: number,
  width: number,
  height: number,
): ScoreLayout | null {
  const state = useScore();
  const score = state.kind === 'ready' ? state.score : null;
  return useMemo(() => {
    if (score === null || width === 0 || height === 0) return null;
    const at = (size: Size): ScoreLayout =>
      score.layoutScore(sheet, {
        ...shown,
        width,
        staffSpace: size.staffSpace,
        textSizes: textSizesFor(size),
        fingers: false,
        barsPerSystem: BARS_IN_ROW,
        strictly: true,
        measureNumbers: true,
      });
    const tried = (size: Size) => {
      const { systems } = at(size);
      return {
        systems: systems.length,
        height: Math.max(...systems.map((system) => system.height)),
        share: Math.min(...systems.map(({ scale }) => (scale * UNITS) / size.staffSpace)),
      };
    };
    return at(largestSize(tried, rows, height));
  }, [score, sheet, shown, rows, width, height]);
}

const systemOf = ({ systems }: ScoreLayout, bar: number): number =>
  Math.max(
    0,
    systems.findIndex(({ bars }) => bars.some((box) => box.bar === bar)),
  );

/** Which systems are seen, followed while it plays. */
function useTurnedRows(
  layout: ScoreLayout | null,
  count: number,
  first: number,
  goesRound: boolean,
  pieceId: string,
): TurnedRows {
  const { playback } = useAtWork();
  const [turned, setTurned] = useState<TurnedRows>({ rows: [], at: 0 });
  useEffect(() => {
    if (layout === null) return;
    const begin = systemOf(layout, first);
    const after = begin + 1 < layout.systems.length ? begin + 1 : null;
    const empty = { rows: Array.from({ length: count }, () => null), at: 0 };
    setTurned(turnRows(empty, begin, after));
    return playback.follow((position) => {
      if (position === null || playback.getState().heard?.pieceId !== pieceId) return;
      const { performance, playedBar } = position;
      // With a row that shows what comes next, the eyes go there by themselves.
      const sounding = playedBar === null ? undefined : performance.bars[playedBar]?.bar;
      const bar = count > 1 ? (sounding ?? performance.bars[0]?.bar) : barToRead(position, goesRound);
      if (bar === undefined || bar === null) return;
      const playing = systemOf(layout, bar);
      const later = performance.bars.slice((playedBar ?? 0) + 1);
      const order = goesRound ? [...later, ...performance.bars] : later;
      const next = order.map((each) => systemOf(layout, each.bar)).find((system) => system !== playing);
      setTurned((before) => turnRows(before, playing, next ?? null));
    });
  }, [layout, count, first, goesRound, playback, pieceId]);
  return turned.rows.length === count ? turned : { rows: [], at: 0 };
}

/** Whose turn it is, while the line is played by turns. */
export function useTurn(pieceId: string): Turn | null {
  const { playback } = useAtWork();
  const [turn, setTurn] = useState<Turn | null>(null);
  useEffect(
    () =>
      playback.follow((position) => {
        const own = playback.getState().heard?.pieceId === pieceId ? position : null;
        const now = own === null ? null : turnAt(own);
        setTurn((before) => (sameTurn(before, now) ? before : now));
      }),
    [playback, pieceId],
  );
  return turn;
}

interface DrawnSystemProps {
  readonly layout: ScoreLayout;
  readonly system: SystemLayout;
  readonly sheet: LineSheet;
}

type LargeSystemProps = DrawnSystemProps & Pick<LargeMusicProps, 'light' | 'turn' | 'answer'>;

function LargeSystem({ layout, system, sheet, light, turn, answer }: LargeSystemProps) {
  const drawing = useRef<HTMLDivElement>(null);
  const state = useScore();
  useLayoutEffect(() => {
    if (state.kind === 'ready')
      drawing.current?.replaceChildren(state.score.drawSystem(layout, system.index));
  }, [state, layout, system]);
  return (
    <div className="system show__system" style={{ height: system.height, width: system.width }}>
      {system.bars.map((box) => (
        <Silences
          key={box.bar}
          box={box}
          system={system}
          sheet={sheet}
          lit={light?.kind === 'silence' && light.bars.includes(box.bar)}
        />
      ))}
      <div className="system__drawing" ref={drawing} />
      {system.bars.map(({ bar, x, width }) => {
        const place = { left: x, width, height: system.height };
        const answered = turn?.kind === 'answer' && turn.bars.includes(bar);
        return (
          <span key={bar} aria-hidden="true">
            {light !== null && (
              <span className={light.bars.includes(bar) ? 'show__lit' : 'show__unlit'} style={place} />
            )}
            {answered && (
              <span className={answer ? 'show__answer' : 'show__answer show__answer--hidden'} style={place}>
                {!answer && 'your answer'}
              </span>
            )}
          </span>
        );
      })}
      <LargePlayhead layout={layout} system={system} sheet={sheet} />
    </div>
  );
}

/** The place of a moment: that of what begins there. */
const xAt = ({ positions, x, width }: BarBox, tick: number): number =>
  positions.find((position) => position.tick >= tick)?.x ?? x + width;

interface SilencesProps extends Omit<DrawnSystemProps, 'layout'> {
  readonly box: BarBox;
  /** Whether it is pointed at. */
  readonly lit: boolean;
}

/** Where the bass is silent, marked and named. */
function Silences({ box, system, sheet, lit }: SilencesProps) {
  const bar = sheet.bars[box.bar];
  if (bar === undefined) return null;
  const notes = bar.notes.map(({ note }) => note);
  const space = (system.staff.bottom - system.staff.top) / 4;
  return silencesOf(notes, bar.written.metre).map(({ start, end }) => {
    const left = xAt(box, start) - space;
    const right = Math.min(xAt(box, end) - space * 1.2, box.x + box.width - space / 2);
    return (
      <span
        key={start}
        className={`show__silence${lit ? ' show__silence--lit' : ''}`}
        style={{
          left,
          width: Math.max(space * 2, right - left),
          top: system.staff.top - space,
          height: system.tab.bottom - system.staff.top + space * 2,
          fontSize: space * 1.3,
        }}
        aria-hidden="true"
      >
        rest
      </span>
    );
  });
}

function LargePlayhead({ layout, system, sheet }: DrawnSystemProps) {
  const { playback } = useAtWork();
  const head = useRef<HTMLDivElement>(null);
  const state = useScore();
  useEffect(() => {
    if (state.kind !== 'ready') return;
    const { playheadX } = state.score;
    const placeOf = ({ performance, playedBar, tick }: PlayPosition) => {
      // While it is counted in, it waits where the music begins.
      const played = performance.bars[playedBar ?? (tick < performance.countIn ? 0 : -1)];
      if (played === undefined) return null;
      const within = Math.max(0, tick - played.start);
      return playheadX(layout, played.bar, straightened(within, sheet, performance.tempo));
    };
    return playback.follow((position) => {
      const element = head.current;
      const own = playback.getState().heard?.pieceId === sheet.id ? position : null;
      const place = own && placeOf(own);
      const isHere = place?.system === system.index;
      element?.classList.toggle('playhead--on', isHere);
      if (element === null || own === null || !isHere) return;
      element.style.transform = `translateX(${place.x}px)`;
      element.dataset.count = String(countedBeat(own, sheet.chart.metre) ?? '');
    });
  }, [playback, layout, system, sheet, state]);
  return <div className="playhead" ref={head} aria-hidden="true" />;
}
