import '../../styles/study.css';
import { useMemo, useState } from 'react';
import { barName, capitalised } from '../../../core/base';
import {
  type InstrumentSettings,
  type LinePiece,
  type LineSheet,
  type StudyFact,
  studyFacts,
} from '../../../core/lesson';
import type { BarBox, SystemLayout } from '../../../score';
import { ScoreFigure } from '../score';
import { chordsOf } from '../words';

interface LineStudiedProps {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
  readonly instrument: InstrumentSettings;
}

/** Everything that can be said of a line, folded away under one line; any of it is shown on the score. */
export function LineStudied(given: LineStudiedProps) {
  const [open, setOpen] = useState(false);
  if (given.sheet.bars.every(({ notes }) => notes.length === 0)) return null;
  return (
    <details className="shapes" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span className="shapes__title">What is in {given.piece.name}</span>{' '}
        <span className="shapes__chords">notes · silence · range · form · how hard it is</span>
      </summary>
      {open && <Studied {...given} />}
    </details>
  );
}

/** The bars are looked at, not chosen. */
const NO_BUTTONS: readonly [] = [];

const ROWS = { degrees: true, fingers: false, numerals: true };

function Studied({ piece, sheet, instrument }: LineStudiedProps) {
  const facts = useMemo(() => studyFacts(piece, sheet, instrument), [piece, sheet, instrument]);
  const [shown, setShown] = useState<string | null>(null);
  const fact = facts.find(({ name }) => name === shown) ?? null;
  return (
    <div className="study">
      <dl className="study__facts">
        {facts.map((each) => (
          <div key={each.name} className="study__fact">
            <dt>{each.name}</dt>
            <dd>
              {each.sentence}{' '}
              {each.bars.length > 0 && (
                <button
                  type="button"
                  className="word"
                  aria-pressed={each.name === shown}
                  aria-label={`Show on the score: ${each.name}, ${piece.name}`}
                  onClick={() => setShown(each.name === shown ? null : each.name)}
                >
                  {each.name === shown ? 'shown below' : 'show'}
                </button>
              )}
            </dd>
          </div>
        ))}
      </dl>
      <MarkedScore piece={piece} sheet={sheet} fact={fact} />
      <details className="study__notes">
        <summary>Every note of {piece.name}: its degree and what it does</summary>
        <ol>
          {sheet.bars.map((bar) => (
            <li key={bar.written.number}>
              <b>
                {capitalised(barName(bar.written.number))}, {chordsOf(bar.written, sheet.noteNames)}:
              </b>{' '}
              {bar.analysis.notes.length === 0
                ? 'silence.'
                : `${bar.analysis.notes
                    .map(({ degreeText, function: role }) =>
                      [degreeText, role ?? 'without a chord'].filter((part) => part !== '').join(' '),
                    )
                    .join(', ')}.`}
            </li>
          ))}
        </ol>
      </details>
    </div>
  );
}

interface MarkedScoreProps {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
  readonly fact: StudyFact | null;
}

/** The line with its degrees and the chords' functions, the bars that a fact speaks of framed and named. */
function MarkedScore({ piece, sheet, fact }: MarkedScoreProps) {
  const marked = fact?.bars ?? [];
  const view = (box: BarBox, system: SystemLayout) =>
    marked.includes(box.bar) && (
      <span
        key={box.bar}
        className="study__mark"
        style={{ left: box.x, width: box.width, height: system.height }}
        aria-hidden="true"
      >
        <b>{fact?.name}</b>
      </span>
    );
  return (
    <ScoreFigure
      sheet={sheet}
      name={`What is in ${piece.name}, on the score`}
      description={
        fact === null
          ? 'The line with its degrees and the functions of its chords.'
          : `${fact.name}. ${fact.sentence}`
      }
      rows={ROWS}
      bars={{
        buttons: NO_BUTTONS,
        chosen: null,
        choose: () => undefined,
        over: { isOver: (bar) => marked.includes(bar), view },
        drawer: () => null,
      }}
    />
  );
}
