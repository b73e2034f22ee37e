import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import type { LineSheet } from '../../../core/lesson';
import { straightened } from '../../../core/playing';
import type { BarBox, ScoreLayout, ScoreOptions, SystemLayout } from '../../../score';
import type { PlayPosition } from '../../../sound';
import { useAtWork } from '../at-work';
import { useWidth } from '../common';
import { barToRead, countedBeat, useScore } from '../score';
import { type TurnedRows, turnRows } from './page-turn';
import { silencesOf } from './silence';
import { largestSize, type Size, textSizesFor } from './sizes';

export type Shown = Pick<ScoreOptions, 'degrees' | 'counting' | 'parts'>;

interface LargeMusicProps {
  readonly sheet: LineSheet;
  readonly shown: Shown;
  readonly rows: 1 | 2;
  /** Index of the written bar that is shown while nothing is played. */
  readonly first: number;
  /** Whether the first bar comes after the last one. */
  readonly goesRound: boolean;
}

/** Two bars, or two and the two that come next, as large as the room allows. */
export function LargeMusic({ sheet, shown, rows, first, goesRound }: LargeMusicProps) {
  const holder = useRef<HTMLDivElement>(null);
  const width = useWidth(holder);
  const height = useRoom(holder);
  const layout = useLargeLayout(sheet, shown, rows, width, height);
  const turned = useTurnedRows(layout, rows, first, goesRound, sheet.id);
  return (
    <div className="show__music" ref={holder}>
      {layout !== null &&
        turned.rows.map((row, index) => {
          const system = row === null ? undefined : layout.systems[row];
          return (
            <div
              // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place
              key={index}
              className={`show__row${index === turned.at ? '' : ' show__row--next'}`}
            >
              {system && <LargeSystem layout={layout} system={system} sheet={sheet} />}
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

interface LargeSystemProps {
  readonly layout: ScoreLayout;
  readonly system: SystemLayout;
  readonly sheet: LineSheet;
}

function LargeSystem({ layout, system, sheet }: LargeSystemProps) {
  const drawing = useRef<HTMLDivElement>(null);
  const state = useScore();
  useLayoutEffect(() => {
    if (state.kind === 'ready')
      drawing.current?.replaceChildren(state.score.drawSystem(layout, system.index));
  }, [state, layout, system]);
  return (
    <div className="system show__system" style={{ height: system.height, width: system.width }}>
      {system.bars.map((box) => (
        <Silences key={box.bar} box={box} system={system} sheet={sheet} />
      ))}
      <div className="system__drawing" ref={drawing} />
      <LargePlayhead layout={layout} system={system} sheet={sheet} />
    </div>
  );
}

/** The place of a moment: that of what begins there. */
const xAt = ({ positions, x, width }: BarBox, tick: number): number =>
  positions.find((position) => position.tick >= tick)?.x ?? x + width;

/** Where the bass is silent, marked and named. */
function Silences({ box, system, sheet }: { readonly box: BarBox } & Omit<LargeSystemProps, 'layout'>) {
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
        className="show__silence"
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

function LargePlayhead({ layout, system, sheet }: LargeSystemProps) {
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
