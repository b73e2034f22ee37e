import { type RefObject, useId, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import { type ChartProblem, caretInLetters, guessedIn, typedProblem } from '../../../core/chart';
import { type ChartReading, type LinePiece, setChartText, takeSuggestion } from '../../../core/lesson';
import { type Naming, shortened } from '../../../core/theory';
import { Later, laterPart, useAtWork, useNoteNames, usePieceNow } from '../at-work';
import { describeFacts } from '../words';
import { KeyFound } from './key-found';
import { NextSigns } from './next-signs';
import { NAMING_HINTS, useTypedChart } from './typed-names';

const HARMONY = laterPart('What the chords tell of the key', async () => (await import('./harmony')).Harmony);
const SIGNS = laterPart('The signs of the chart', async () => (await import('./signs')).ChartSigns);
const PASTED = laterPart('What reads a pasted chart', async () => (await import('./pasted')).Pasted);
const PARKED = laterPart('The parked bars', async () => (await import('./parked-bars')).ParkedBars);

/** Typing after a rest this long is a step of its own for *Undo*. */
const BURST_MS = 1200;

interface ChartFieldProps {
  /** Perhaps as it was a moment ago: what is typed is shown as it is this moment. */
  readonly piece: LinePiece;
  /** What its chart tells, perhaps as it was a moment ago. */
  readonly reading: ChartReading;
}

/** The chord chart as it is typed, what cannot be read in it, and what it says. */
export function ChartField({ piece: settled, reading }: ChartFieldProps) {
  const piece = usePieceNow(settled);
  const { session } = useAtWork();
  const field = useRef<HTMLTextAreaElement>(null);
  const facts = useRef<HTMLParagraphElement>(null);
  const burst = useRef({ count: 0, at: 0 });
  const [caret, setCaret] = useState<number | null>(null);
  const id = useId();
  const naming = useNoteNames() ?? 'letters';
  const hint = NAMING_HINTS[naming];
  const { text, type } = useTypedChart(piece.chartText, naming, (stored) => {
    const now = performance.now();
    if (now - burst.current.at > BURST_MS) burst.current.count += 1;
    burst.current.at = now;
    const typed = field.current;
    const caret = typed && caretInLetters(naming, typed.value, typed.selectionEnd, stored);
    session.lessons.change((lesson) => setChartText(lesson, piece.id, stored, caret), {
      label: 'change the chart',
      join: `chart ${piece.id} ${burst.current.count}`,
    });
  });
  /** Writes at the caret, where it stands behind what was put in. */
  const putIn = (sign: string) => {
    const box = field.current;
    if (box === null) return;
    const { selectionStart: from, selectionEnd: to, value } = box;
    flushSync(() => type(value.slice(0, from) + sign + value.slice(to)));
    box.focus();
    box.setSelectionRange(from + sign.length, from + sign.length);
  };
  return (
    <div className="chart">
      <div className="field">
        <label className="field__label" htmlFor={id}>
          Chord chart
        </label>
        <textarea
          ref={field}
          id={id}
          className="field__box chart__text"
          rows={5}
          spellCheck={false}
          autoCapitalize="off"
          autoComplete="off"
          aria-describedby={hint === null ? `${id}-facts` : `${id}-names ${id}-facts`}
          value={text}
          onChange={(event) => type(event.currentTarget.value)}
          onSelect={(event) => setCaret(event.currentTarget.selectionEnd)}
        />
        {hint !== null && (
          <p className="chart__letters" id={`${id}-names`}>
            {hint}
          </p>
        )}
      </div>
      <NextSigns before={text.slice(0, caret ?? text.length)} reading={reading} putIn={putIn} />
      <Later part={PASTED} given={{ piece, reading, onTaken: () => field.current?.focus() }} />
      <Problems piece={piece} typed={text} problems={reading.problems} naming={naming} field={field} />
      <p className="chart__facts" id={`${id}-facts`} ref={facts} tabIndex={-1}>
        {describeFacts(reading)}
      </p>
      <KeyFound piece={piece} reading={reading} onTaken={() => facts.current?.focus()} />
      <Later
        part={HARMONY}
        meanwhile={
          // The same room as what comes, so that nothing under it moves.
          reading.chart.bars.length > 0 && <p className="chords-at-work chords-at-work--coming" />
        }
        given={{
          piece,
          reading,
          onWritten: () => {
            const before = field.current?.value ?? '';
            requestAnimationFrame(() => showWritten(field.current, before));
          },
        }}
      />
      <details className="chart-signs">
        <summary>Signs of the chart</summary>
        <Later part={SIGNS} given={{ putIn }} />
      </details>
      <Later part={PARKED} given={{ piece, noteNames: naming }} />
    </div>
  );
}

interface ProblemsProps {
  readonly piece: LinePiece;
  /** The chart as the field shows it. */
  readonly typed: string;
  readonly problems: readonly ChartProblem[];
  readonly naming: Naming;
  readonly field: RefObject<HTMLTextAreaElement | null>;
}

/** A suggestion as its button says it: a pasted line may be as long as the chart. */
const inShort = (suggestion: string): string => shortened(suggestion, 64);

function Problems({ piece, typed, problems, naming, field }: ProblemsProps) {
  const { session } = useAtWork();
  if (problems.length === 0) return null;
  const show = (problem: ChartProblem, length = problem.length) => {
    const text = field.current;
    if (text === null) return;
    const start = offsetOf(text.value, problem);
    text.focus();
    text.setSelectionRange(start, start + length);
  };
  /** Takes the guess at what was meant by a stored problem, which the field shows as `shown`. */
  const mend = (stored: ChartProblem, shown: ChartProblem, suggestion: string) => {
    flushSync(() =>
      session.lessons.change((lesson) => takeSuggestion(lesson, piece.id, stored), {
        label: `write ${inShort(suggestion)}`,
      }),
    );
    show(shown, suggestion.length);
  };
  return (
    <ul className="problems" aria-label="Chart problems">
      {problems.map((found) => {
        const stored = guessedIn(naming, piece.chartText, typed, found);
        const problem = typedProblem(naming, piece.chartText, typed, stored);
        const { line, column, message, suggestion } = problem;
        return (
          <li key={`${line}:${column}:${message}`}>
            <button type="button" className="problem" onClick={() => show(problem)}>
              <span className="problem__place">
                Line {line}, column {column}
              </span>{' '}
              {message}
            </button>
            {suggestion !== undefined && (
              <button
                type="button"
                className="word problem__mend"
                aria-label={`Write ${inShort(suggestion)} in line ${line}, column ${column}`}
                onClick={() => mend(stored, problem, suggestion)}
              >
                Write {inShort(suggestion)}
              </button>
            )}
          </li>
        );
      })}
    </ul>
  );
}

/** Leads to what was written first in the text, and selects it. */
function showWritten(field: HTMLTextAreaElement | null, before: string): void {
  if (field === null) return;
  const start = [...field.value].findIndex((sign, index) => sign !== before[index]);
  const end = field.value.indexOf(')', start) + 1;
  field.focus();
  if (start >= 0 && end > start) field.setSelectionRange(start, end);
}

/** Offset into the text of a place counted in lines and columns from 1. */
function offsetOf(text: string, place: ChartProblem): number {
  const before = text.split('\n').slice(0, place.line - 1);
  return before.reduce((sum, line) => sum + line.length + 1, 0) + place.column - 1;
}
