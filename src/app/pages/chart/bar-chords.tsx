import { type RefObject, useEffect, useId, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { barName, listed } from '../../../core/base';
import { chordsInLetters, parseChart, typedChordsIn, usesOf, writtenBar } from '../../../core/chart';
import {
  type ChartBarEdit,
  editChartBar,
  type LinePiece,
  linePiece,
  type PossibleEdit,
  possibleEdits,
  typedChord,
} from '../../../core/lesson';
import type { Naming } from '../../../core/theory';
import { draftMark } from '../../controls';
import { useAtWork } from '../at-work';
import { PutBack } from './parked-bars';
import { NAMING_HINTS } from './typed-names';

type Control = PossibleEdit | 'chords';

/** What takes the focus after an edit, in the drawer of the chosen bar, wherever it opens. */
let awaited: { readonly pieceId: string; readonly control: string } | null = null;

interface BarChordsProps {
  /** As it is this moment. */
  readonly piece: LinePiece;
  /** Index of the written bar, and its number. */
  readonly bar: number;
  readonly number: number;
  readonly noteNames: Naming;
}

/** The chords of the chosen bar as they stand in the chart, to be written over, and the bars around it. */
export function BarChords({ piece, bar, number, noteNames }: BarChordsProps) {
  const { session } = useAtWork();
  const root = useRef<HTMLDivElement>(null);
  const { chartText, metre, key } = piece;
  const chart = useMemo(() => parseChart(chartText, metre, key).chart, [chartText, metre, key]);
  const stored = typedChord(piece, bar);
  useAwaitedFocus(root, piece, bar);
  const numbers = usesOf(chart, bar)
    .filter((use) => use !== bar)
    .map((use) => String(chart.bars[use]?.number ?? use + 1));
  const section = chart.sections[chart.bars[bar]?.section ?? 0]?.name ?? '';
  const go = (index: number, control: Control) => {
    awaited = { pieceId: piece.id, control };
    session.chooseBar(piece.id, index);
  };
  const model = writtenBar(chart, bar);
  return (
    <div className="bar-chords" ref={root}>
      {stored === null ? (
        <p>
          “{section}” is used again here by its name, so this bar is {barName(chart.bars[model]?.number ?? 1)}{' '}
          once more.{' '}
          <button type="button" className="word" onClick={() => go(model, 'chords')}>
            Change it in {barName(chart.bars[model]?.number ?? 1)}
          </button>
        </p>
      ) : (
        <>
          <ChordsField piece={piece} bar={bar} number={number} noteNames={noteNames} stored={stored} />
          <Bars piece={piece} bar={bar} number={number} />
          {numbers.length > 0 && (
            <p className="bar-chords__whole">
              What you change here changes {numbers.length === 1 ? 'bar' : 'bars'} {listed(numbers)} too,
              where “{section}” is used again.
            </p>
          )}
        </>
      )}
      <PutBack
        piece={piece}
        noteNames={noteNames}
        bar={bar}
        number={number}
        onBack={(index) => go(index, 'chords')}
      />
    </div>
  );
}

/**
 * Leads the focus to what an edit has set it for, and along with the drawer when that moves under another system.
 * Where its control goes with the edit, what is there of the others takes it.
 */
function useAwaitedFocus(root: RefObject<HTMLDivElement | null>, piece: LinePiece, bar: number): void {
  const { session } = useAtWork();
  const held = root.current?.contains(document.activeElement) === true;
  useEffect(() => {
    const { pieceId, bar: chosen } = session.editor.getState();
    if (held && document.activeElement === document.body)
      awaited ??= { pieceId: piece.id, control: 'chords' };
    if (awaited?.pieceId !== piece.id || pieceId !== piece.id || chosen !== bar) return;
    const { control } = awaited;
    awaited = null;
    const find = (name: string) => root.current?.querySelector<HTMLElement>(`[data-control="${name}"]`);
    const target = find(control) ?? find('insert after') ?? root.current?.querySelector('button');
    target?.focus({ preventScroll: true });
    if (target instanceof HTMLInputElement) target.select();
  });
  useLayoutEffect(() => {
    const chords = root.current;
    return () => {
      const focused = document.activeElement;
      const open = session.editor.getState().bar !== null;
      if (open && focused instanceof HTMLElement && chords?.contains(focused)) {
        awaited ??= { pieceId: piece.id, control: focused.dataset.control ?? 'chords' };
      }
    };
  }, [root, piece.id, session]);
}

interface ChordsFieldProps extends BarChordsProps {
  /** As the chart has them, in letters. */
  readonly stored: string;
}

function ChordsField({ piece, bar, number, noteNames, stored }: ChordsFieldProps) {
  const { session } = useAtWork();
  const hint = NAMING_HINTS[noteNames];
  const typed = typedChordsIn(noteNames, stored);
  const [draft, setDraft] = useState({ bar, typed, text: typed });
  const [refused, setRefused] = useState(false);
  const id = useId();
  if (draft.bar !== bar || draft.typed !== typed) {
    // Another bar, or its chords came to be others: what was half typed is of no use any more.
    setDraft({ bar, typed, text: typed });
    setRefused(false);
  }
  const type = (text: string) => setDraft({ bar, typed, text });
  const write = () => {
    const text = chordsInLetters(noteNames, draft.text);
    // `solm` or `Bb` may be what is there, in another way of writing.
    if (draft.text.trim() === typed || text.trim() === stored) {
      type(typed);
      setRefused(false);
      return;
    }
    const { lesson } = session.lessons.getState();
    const edited = editChartBar(lesson, piece.id, bar, {
      kind: 'write',
      text,
    });
    setRefused(edited === lesson);
    if (edited !== lesson) {
      session.lessons.change(() => edited, { label: `write the chords of ${barName(number)}` });
    }
  };
  return (
    <div className="bar-chords__field">
      <label htmlFor={id}>Chords of {barName(number)}</label>
      <input
        {...draftMark(draft.text !== typed)}
        id={id}
        className="field__box"
        data-control="chords"
        value={draft.text}
        maxLength={120}
        spellCheck={false}
        autoCapitalize="off"
        autoComplete="off"
        aria-invalid={refused}
        aria-describedby={refused ? `${id}-refused` : hint === null ? undefined : `${id}-names`}
        onChange={(event) => type(event.currentTarget.value)}
        onBlur={write}
        onKeyDown={(event) => {
          if (event.key === 'Enter') write();
          else if (event.key === 'Escape' && draft.text !== typed) {
            event.stopPropagation();
            type(typed);
            setRefused(false);
          }
        }}
      />
      {hint !== null && !refused && (
        <p className="bar-chords__names" id={`${id}-names`}>
          {hint}
        </p>
      )}
      {refused && (
        <p className="bar-chords__refused" id={`${id}-refused`}>
          Write the chords of one bar: for example {typedChordsIn(noteNames, 'Gm C7')}. Bar lines, endings,
          metres and comments belong in the chart’s text.
        </p>
      )}
    </div>
  );
}

const NOT_SAID =
  'The chart’s text cannot say this with the signs around the bar, so nothing was changed. Change the text itself.';

/** What the changes of a bar are called: on their buttons, and for *Undo*. */
const EDITS: readonly { readonly kind: PossibleEdit; readonly word: string; readonly undo: string }[] = [
  { kind: 'repeat', word: 'Repeat the bar', undo: 'repeat' },
  { kind: 'split', word: 'Split the bar', undo: 'split' },
  { kind: 'join', word: 'Join with the next bar', undo: 'join the next bar to' },
  { kind: 'remove', word: 'Remove the bar', undo: 'remove' },
];

function Bars({ piece, bar, number }: Omit<BarChordsProps, 'noteNames'>) {
  const { session } = useAtWork();
  const possible = useMemo(() => possibleEdits(piece, bar), [piece, bar]);
  const change = (edit: Exclude<ChartBarEdit, { readonly kind: 'write' }>, label: string) => {
    const { lesson } = session.lessons.getState();
    const edited = editChartBar(lesson, piece.id, bar, edit);
    if (edited === lesson) {
      session.editor.setState({ notice: NOT_SAID });
      return;
    }
    session.lessons.change(() => edited, { label: `${label} ${barName(number)}` });
    const bars = linePiece(session.lessons.getState().lesson, piece.id)?.bars ?? [];
    const behind = edit.kind === 'insert after' || edit.kind === 'repeat' ? bar + 1 : bar;
    const next = Math.min(behind, bars.length - 1);
    if (next < 0) return;
    const inserts = edit.kind === 'insert before' || edit.kind === 'insert after';
    awaited = { pieceId: piece.id, control: inserts ? 'chords' : edit.kind };
    session.chooseBar(piece.id, next);
  };
  const insert = (kind: 'insert before' | 'insert after', word: string) => (
    <button
      type="button"
      className="word"
      data-control={kind}
      aria-label={`Insert a bar ${word}`}
      onClick={() => change({ kind }, `insert a bar ${word}`)}
    >
      {word}
    </button>
  );
  return (
    <p className="bar-chords__bars">
      <span>
        Insert a bar {possible.has('insert before') && <>{insert('insert before', 'before')} or </>}
        {insert('insert after', 'after')}
      </span>
      {EDITS.filter(({ kind }) => possible.has(kind)).map(({ kind, word, undo }) => (
        <button
          key={kind}
          type="button"
          className="word"
          data-control={kind}
          onClick={() => change({ kind }, undo)}
        >
          {word}
        </button>
      ))}
    </p>
  );
}
