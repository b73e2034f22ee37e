import { barName, listed } from '../../../core/base';
import type { LineSheet } from '../../../core/lesson';
import type { BarBox, SystemLayout } from '../../../score';
import { ScoreFigure } from '../score';
import { describeScore } from '../words';

interface SideBySideProps {
  /** Of the piece. */
  readonly name: string;
  readonly before: LineSheet;
  readonly after: LineSheet;
  /** Indices of the bars that are changed. */
  readonly marked: readonly number[];
}

const ROWS = { degrees: true, fingers: true, numerals: false };

/** The bars are looked at, not chosen. */
const NO_BUTTONS: readonly [] = [];

/** A line and what became of it, side by side where there is room, changed bars framed in both. */
export function SideBySide({ name, before, after, marked }: SideBySideProps) {
  const names = marked.map((bar) => barName(before.bars[bar]?.written.number ?? bar + 1));
  const changed = names.length === 0 ? '' : ` Changed: ${listed(names)}.`;
  const bars = (word: string) => ({
    buttons: NO_BUTTONS,
    chosen: null,
    choose: () => undefined,
    over: {
      isOver: (bar: number) => marked.includes(bar),
      view: (box: BarBox, system: SystemLayout) =>
        marked.includes(box.bar) && (
          <span
            key={box.bar}
            className="regrade__mark"
            style={{ left: box.x, width: box.width, height: system.height }}
            aria-hidden="true"
          >
            <b>{word}</b>
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
          description={`${describeScore(before)}${changed}`}
          rows={ROWS}
          bars={bars('was')}
        />
      </section>
      <section aria-label={`${name} for the other student`}>
        <h4>For the other student</h4>
        <ScoreFigure
          sheet={after}
          name={`${name} for the other student, on staff and tab`}
          description={`${describeScore(after)}${changed}`}
          rows={ROWS}
          bars={bars('changed')}
        />
      </section>
    </div>
  );
}
