import { barNames } from '../../../core/base';
import type { LineSheet } from '../../../core/lesson';
import type { BarBox, SystemLayout } from '../../../score';
import { ScoreFigure } from '../score';
import { describeScore } from '../words';

interface SideBySideProps {
  /** Of the piece. */
  readonly name: string;
  readonly before: LineSheet;
  readonly after: LineSheet;
  /** Indices of the bars whose notes are changed. */
  readonly changed: readonly number[];
  /** Indices of bars whose notes are the same and played elsewhere on the neck. */
  readonly elsewhere: readonly number[];
}

const ROWS = { degrees: true, fingers: true, numerals: false };

/** The bars are looked at, not chosen. */
const NO_BUTTONS: readonly [] = [];

/** A line and what became of it, side by side where there is room, changed bars framed in both. */
export function SideBySide({ name, before, after, changed, elsewhere }: SideBySideProps) {
  const named = (what: string, bars: readonly number[]) =>
    bars.length === 0
      ? ''
      : ` ${what}: ${barNames(bars.map((bar) => before.bars[bar]?.written.number ?? bar + 1))}.`;
  const said = `${named('Changed', changed)}${named('Played elsewhere', elsewhere)}`;
  const marked = new Map([
    ...elsewhere.map((bar) => [bar, 'elsewhere'] as const),
    ...changed.map((bar) => [bar, 'changed'] as const),
  ]);
  const bars = (now: boolean) => ({
    buttons: NO_BUTTONS,
    chosen: null,
    choose: () => undefined,
    over: {
      isOver: (bar: number) => marked.has(bar),
      view: (box: BarBox, system: SystemLayout) =>
        marked.has(box.bar) && (
          <span
            key={box.bar}
            className="regrade__mark"
            style={{ left: box.x, width: box.width, height: system.height }}
            aria-hidden="true"
          >
            <b>{now ? marked.get(box.bar) : 'was'}</b>
          </span>
        ),
    },
    drawer: () => null,
  });
  return (
    <div className="regrade__lines">
      <section aria-label={`${name} as it stands`}>
        <h4>As it stands</h4>
        <ScoreFigure
          sheet={before}
          name={`${name} as it stands, on staff and tab`}
          description={`${describeScore(before)}${said}`}
          rows={ROWS}
          bars={bars(false)}
        />
      </section>
      <section aria-label={`${name} for the other student`}>
        <h4>For the other student</h4>
        <ScoreFigure
          sheet={after}
          name={`${name} for the other student, on staff and tab`}
          description={`${describeScore(after)}${said}`}
          rows={ROWS}
          bars={bars(true)}
        />
      </section>
    </div>
  );
}
