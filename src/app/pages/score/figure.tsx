import { type KeyboardEvent, type ReactNode, useCallback, useId, useMemo, useRef, useState } from 'react';
import type { Sheet } from '../../../core/lesson';
import type { BarBox, ScoreLayout, ScoreOptions, SystemLayout } from '../../../score';
import { useMedia, usePrinting, useWidth } from '../common';
import { useScoreLayout } from './layout';
import { usePlayhead } from './playhead';
import { useScore } from './ready';
import { type BarButton, SystemView } from './system';

interface Bars {
  /** One a written bar. */
  readonly buttons: readonly BarButton[];
  /** Index of the chosen bar, or null. */
  readonly chosen: number | null;
  readonly choose: (bar: number | null) => void;
  /** What lies over a bar, besides its button; nothing when left out. */
  readonly over?: {
    readonly isOver: (bar: number) => boolean;
    readonly view: (box: BarBox, system: SystemLayout) => ReactNode;
  };
  /** What opens under the system of the chosen bar. */
  readonly drawer: (bar: number) => ReactNode;
}

interface ScoreFigureProps {
  readonly sheet: Sheet;
  readonly name: string;
  readonly description: string;
  readonly rows: Pick<ScoreOptions, 'degrees' | 'fingers' | 'numerals'>;
  /** Null where the bars cannot be chosen. */
  readonly bars: Bars | null;
  /** Drawn to be read from a step away; printed by the browser, it is as wide as the paper. */
  readonly large?: boolean;
  /** Its line is being composed. */
  readonly busy?: boolean;
}

/** What a system is expected to take, so that the page does not jump when the drawing comes. */
const EXPECTED = { withRows: 232, bare: 150, staffSpace: 10 } as const;

/** The smallest words keep their size where the staff is small. */
const SMALL_STAFF = { textSizes: { small: 12 } } as const;

type Height = 'high' | 'middle' | 'low';

/** The large staff is as large as lets two systems with their tab be seen at once, header and ledge beside them. */
const STAFF_AT: Readonly<Record<Height, number>> = { high: 13, middle: 11.5, low: 10 };
const MIDDLE = '(max-height: 49.49rem)';
const NOT_HIGH = '(max-height: 43.49rem)';

function useHeight(): Height {
  const middle = useMedia(MIDDLE);
  const low = useMedia(NOT_HIGH);
  return low ? 'low' : middle ? 'middle' : 'high';
}

/** Narrow screens get a slightly smaller staff and fewer bars. */
const sizesFor = (width: number, large: boolean, height: Height) => {
  if (width < 480) return { staffSpace: large ? 9.5 : 8.5, barsPerSystem: 2, ...SMALL_STAFF };
  if (large)
    return {
      staffSpace: STAFF_AT[height],
      barsPerSystem: width < 960 && height !== 'low' ? 2 : 4,
    };
  return width < 760
    ? { staffSpace: 9, barsPerSystem: 4, ...SMALL_STAFF }
    : { staffSpace: 10, barsPerSystem: 4 };
};

/** Width of a printed system in CSS pixels: between margins of 14 mm it fits on A4 and on Letter. */
const PRINTED_WIDTH = 680;

/** The score of one piece: drawn system by system, with a button over every bar and a playhead. */
export function ScoreFigure({
  sheet,
  name,
  description,
  rows,
  bars,
  large = false,
  busy = false,
}: ScoreFigureProps) {
  const figure = useRef<HTMLElement>(null);
  const shownWidth = useWidth(figure);
  const printed = usePrinting() && large;
  const width = printed ? PRINTED_WIDTH : shownWidth;
  const height = useHeight();
  const sizes = useMemo(() => sizesFor(width, large && !printed, height), [width, large, printed, height]);
  const state = useScore();
  const id = useId();
  const options = useMemo(
    () => ({ width, ...sizes, ...rows, counting: false, measureNumbers: true }),
    [width, sizes, rows],
  );
  const { laid, inTheMaking } = useScoreLayout(state, sheet, options, printed);
  const count = sheet.kind === 'line' ? sheet.bars.length : sheet.bars;
  const { staffSpace, barsPerSystem } = sizes;
  const expected =
    Math.ceil(count / barsPerSystem) *
    (sheet.kind === 'line' ? EXPECTED.withRows : EXPECTED.bare) *
    (staffSpace / EXPECTED.staffSpace);
  return (
    <figure
      ref={figure}
      className={laid === null ? 'score score--waiting' : 'score'}
      aria-label={name}
      aria-busy={busy || inTheMaking}
      aria-describedby={`${id}-text`}
      style={laid === null ? { minHeight: expected } : undefined}
    >
      <figcaption className="visually-hidden" id={`${id}-text`}>
        {description}
      </figcaption>
      {state.kind === 'failed' && (
        <p className="score__fault">
          The music type could not be loaded, so the score is not drawn. Reload the page when it is reachable
          again; nothing of the lesson is lost.
        </p>
      )}
      {laid !== null && (
        <Systems layout={laid.layout} sheet={laid.sheet} bars={bars} figure={figure} whole={printed} />
      )}
    </figure>
  );
}

interface SystemsProps {
  readonly layout: ScoreLayout;
  readonly sheet: Sheet;
  readonly bars: Bars | null;
  readonly figure: React.RefObject<HTMLElement | null>;
  /** Whether every system is drawn, out of view or not. */
  readonly whole: boolean;
}

function Systems({ layout, sheet, bars, figure, whole }: SystemsProps) {
  const [lastFocused, setLastFocused] = useState(0);
  const reachable = bars === null ? 0 : Math.min(bars.chosen ?? lastFocused, bars.buttons.length - 1);
  usePlayhead(layout, sheet, figure);
  const latest = useRef(bars);
  latest.current = bars;
  const choose = useCallback((bar: number) => {
    const now = latest.current;
    now?.choose(bar === now.chosen ? null : bar);
  }, []);

  const onKeyDown = (event: KeyboardEvent) => {
    if (bars === null) return;
    if (event.key === 'Escape' && bars.chosen !== null) {
      event.stopPropagation();
      const { chosen } = bars;
      bars.choose(null);
      focusBar(figure.current, chosen);
      return;
    }
    const from = barOfTarget(event.target);
    const to = from === null ? null : barAfterKey(layout, event.key, from);
    if (to !== null) {
      event.preventDefault();
      setLastFocused(to);
      focusBar(figure.current, to);
    }
  };

  return (
    // The keys are those of the buttons inside.
    // biome-ignore lint/a11y/noStaticElementInteractions: the listener serves the buttons within
    <div onKeyDown={onKeyDown}>
      {layout.systems.map((system) => {
        const holdsChosen =
          bars !== null && bars.chosen !== null && system.bars.some((box) => box.bar === bars.chosen);
        return (
          <div key={system.index}>
            <SystemView
              layout={layout}
              system={system}
              buttons={bars?.buttons ?? null}
              chosen={bars?.chosen ?? null}
              reachable={reachable}
              whole={whole}
              over={
                system.bars.some(({ bar }) => bars?.over?.isOver(bar)) ? (bars?.over?.view ?? null) : null
              }
              onChoose={choose}
              onFocus={setLastFocused}
            />
            {holdsChosen && bars !== null && bars.chosen !== null && bars.drawer(bars.chosen)}
          </div>
        );
      })}
    </div>
  );
}

const barOfTarget = (target: EventTarget): number | null => {
  const bar = target instanceof HTMLElement ? target.dataset.bar : undefined;
  return bar === undefined ? null : Number(bar);
};

function focusBar(figure: HTMLElement | null, bar: number | null): void {
  figure?.querySelector<HTMLElement>(`[data-bar="${bar}"]`)?.focus();
}

/** Left and right go bar by bar, up and down to the bar above or below, Home and End to the system's ends. */
function barAfterKey(layout: ScoreLayout, key: string, from: number): number | null {
  const systems = layout.systems;
  const at = systems.findIndex((system) => system.bars.some((box) => box.bar === from));
  const here = systems[at];
  const exists = (bar: number) => systems.some((system) => system.bars.some((box) => box.bar === bar));
  switch (key) {
    case 'ArrowLeft':
      return exists(from - 1) ? from - 1 : null;
    case 'ArrowRight':
      return exists(from + 1) ? from + 1 : null;
    case 'ArrowUp':
      return barBelow(systems[at - 1], here, from);
    case 'ArrowDown':
      return barBelow(systems[at + 1], here, from);
    case 'Home':
      return here?.bars[0]?.bar ?? null;
    case 'End':
      return here?.bars.at(-1)?.bar ?? null;
    default:
      return null;
  }
}

/** The bar of another system under or over the middle of this one. */
function barBelow(
  other: SystemLayout | undefined,
  here: SystemLayout | undefined,
  bar: number,
): number | null {
  const box = here?.bars.find((each) => each.bar === bar);
  if (!other || !box) return null;
  const middle = box.x + box.width / 2;
  return (other.bars.find((each) => middle < each.x + each.width) ?? other.bars.at(-1))?.bar ?? null;
}
