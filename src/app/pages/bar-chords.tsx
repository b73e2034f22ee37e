import { useEffect, useId, useRef, useState } from 'react';
import { type ChartBarEdit, editChartBar, type LinePiece, linePiece, typedChord } from '../../core/lesson';
import { draftMark } from '../controls';
import { useAtWork, useNoteNames } from './session';
import { lettersHint } from './typed-letters';

/** The new bar whose chords wait to be written over, wherever its drawer opens. */
let awaited: { readonly pieceId: string; readonly bar: number } | null = null;

interface BarChordsProps {
  /** As it is this moment. */
  readonly piece: LinePiece;
  /** Index of the written bar, and its number. */
  readonly bar: number;
  readonly number: number;
  /** Whether the bar can be divided into bars of its own. */
  readonly divides: boolean;
}

/** The chords of the chosen bar as they stand in the chart, to be written over, and the bars around it. */
export function BarChords({ piece, bar, number, divides }: BarChordsProps) {
  const typed = typedChord(piece, bar);
  if (typed === null) {
    return (
      <p className="bar-chords">
        This bar comes from a section that is used again by its name; change it where the section is written
        out.
      </p>
    );
  }
  return (
    <div className="bar-chords">
      <ChordsField key={`${bar} ${typed}`} piece={piece} bar={bar} number={number} typed={typed} />
      <Bars piece={piece} bar={bar} number={number} divides={divides} />
    </div>
  );
}

interface ChordsFieldProps extends Omit<BarChordsProps, 'divides'> {
  readonly typed: string;
}

function ChordsField({ piece, bar, number, typed }: ChordsFieldProps) {
  const { session } = useAtWork();
  const hint = lettersHint(useNoteNames() ?? 'letters');
  const [draft, setDraft] = useState(typed);
  const [refused, setRefused] = useState(false);
  const field = useRef<HTMLInputElement>(null);
  const id = useId();
  useEffect(() => {
    if (awaited?.pieceId !== piece.id || awaited.bar !== bar) return;
    awaited = null;
    field.current?.focus();
    field.current?.select();
  }, [piece.id, bar]);
  const write = () => {
    if (draft.trim() === typed) {
      setDraft(typed);
      setRefused(false);
      return;
    }
    const { lesson } = session.lessons.getState();
    const edited = editChartBar(lesson, piece.id, bar, { kind: 'write', text: draft });
    setRefused(edited === lesson);
    if (edited !== lesson) {
      session.lessons.change(() => edited, { label: `write the chords of bar ${number}` });
    }
  };
  return (
    <div className="bar-chords__field">
      <label htmlFor={id}>Chords of bar {number}</label>
      <input
        {...draftMark(draft !== typed)}
        ref={field}
        id={id}
        className="field__box"
        value={draft}
        maxLength={120}
        spellCheck={false}
        autoCapitalize="off"
        autoComplete="off"
        aria-invalid={refused}
        aria-describedby={refused ? `${id}-refused` : hint === null ? undefined : `${id}-letters`}
        onChange={(event) => setDraft(event.currentTarget.value)}
        onBlur={write}
        onKeyDown={(event) => {
          if (event.key === 'Enter') write();
          else if (event.key === 'Escape' && draft !== typed) {
            event.stopPropagation();
            setDraft(typed);
            setRefused(false);
          }
        }}
      />
      {hint !== null && !refused && (
        <p className="bar-chords__letters" id={`${id}-letters`}>
          {hint}
        </p>
      )}
      {refused && (
        <p className="bar-chords__refused" id={`${id}-refused`}>
          Write the chords of one bar, without bar lines: for example Gm C7.
        </p>
      )}
    </div>
  );
}

function Bars({ piece, bar, number, divides }: BarChordsProps) {
  const { session } = useAtWork();
  const change = (edit: ChartBarEdit, label: string, shift: 0 | 1 = 0) => {
    session.lessons.change((lesson) => editChartBar(lesson, piece.id, bar, edit), {
      label: `${label} bar ${number}`,
    });
    const bars = linePiece(session.lessons.getState().lesson, piece.id)?.bars ?? [];
    if (edit.kind === 'insert before' || edit.kind === 'insert after') {
      awaited = { pieceId: piece.id, bar: bar + shift };
    }
    if (bars.length > bar + shift) session.chooseBar(piece.id, bar + shift);
  };
  return (
    <p className="bar-chords__bars">
      Insert a bar{' '}
      <button
        type="button"
        className="word"
        aria-label="Insert a bar before"
        onClick={() => change({ kind: 'insert before' }, 'insert a bar before')}
      >
        before
      </button>{' '}
      or{' '}
      <button
        type="button"
        className="word"
        aria-label="Insert a bar after"
        onClick={() => change({ kind: 'insert after' }, 'insert a bar after', 1)}
      >
        after
      </button>
      {' · '}
      <button type="button" className="word" onClick={() => change({ kind: 'repeat' }, 'repeat', 1)}>
        Repeat the bar
      </button>
      {divides && (
        <>
          {' · '}
          <button type="button" className="word" onClick={() => change({ kind: 'split' }, 'split')}>
            Split the bar
          </button>
        </>
      )}
      {' · '}
      <button type="button" className="word" onClick={() => change({ kind: 'remove' }, 'remove')}>
        Remove the bar
      </button>
    </p>
  );
}
