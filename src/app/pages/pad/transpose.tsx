import { useState } from 'react';
import { type LinePiece, type LineSheet, transposeBy, transposeTo } from '../../../core/lesson';
import {
  describeKey,
  describeKeyIn,
  describeSignature,
  type Key,
  keySignature,
  keysOfMode,
  sameKey,
  transpositionBy,
} from '../../../core/theory';
import { SelectField } from '../../controls';
import { NoteNames } from '../aims';
import { useAtWork } from '../at-work';

/** More than six sharps or flats are always simpler in another spelling. */
const MOST_SIGNS = 6;

interface TransposeProps {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
}

/** Another key, and other names for the notes. */
export function TransposeFields(props: TransposeProps) {
  return (
    <div className="transpose">
      <Transpose {...props} />
      <NoteNames />
    </div>
  );
}

/** Where the lesson is to go: the piece at hand to a key, or everything by so many half steps. */
type Move = { readonly to: Key } | { readonly by: number };

/** Moves the whole lesson: to another key of the piece at hand, or by an interval. */
function Transpose({ piece, sheet }: TransposeProps) {
  const { session } = useAtWork();
  const [chosen, setChosen] = useState<Move | null>(null);
  const naming = sheet.noteNames ?? 'letters';
  const present = sheet.key;
  const keys = keysToMoveTo(present);
  const move = chosen !== null && isMove(chosen, present) ? chosen : null;
  const key = move !== null && 'to' in move ? move.to : present;
  const transpose = () => {
    if (move === null) return;
    session.lessons.change(
      (lesson) =>
        'to' in move ? transposeTo(lesson, piece.id, move.to.tonic) : transposeBy(lesson, piece.id, move.by),
      {
        label:
          'to' in move
            ? `transpose to ${describeKeyIn(naming, move.to)}`
            : `transpose ${intervalWords(move.by)}`,
      },
    );
    setChosen(null);
  };
  return (
    <div className="aims transpose__keys">
      <SelectField
        label="Transpose to"
        wide
        value={describeKey(key)}
        options={keys.map((each) => ({
          value: describeKey(each),
          label: sameKey(each, present)
            ? `${describeKeyIn(naming, each)}, as it is`
            : `${describeKeyIn(naming, each)}: ${describeSignature(each, naming)}`,
        }))}
        onChange={(text) => {
          const to = keys.find((each) => describeKey(each) === text);
          setChosen(to === undefined ? null : { to });
        }}
      />
      <SelectField
        label="Transpose by"
        wide
        value={String(move !== null && 'by' in move ? move.by : 0)}
        options={INTERVALS.map((by) => ({
          value: String(by),
          label:
            by === 0
              ? 'no interval'
              : `${intervalWords(by)}: ${describeKeyIn(naming, transpositionBy(present, by).key)}`,
        }))}
        onChange={(text) => setChosen({ by: Number(text) })}
      />
      {move !== null && (
        <button type="button" className="button" onClick={transpose}>
          Transpose
        </button>
      )}
    </div>
  );
}

/** Whether a move chosen earlier still leads somewhere else. */
const isMove = (move: Move, present: Key): boolean =>
  'by' in move ? move.by !== 0 : move.to.mode === present.mode && !sameKey(move.to, present);

/** An octave up to an octave down, in half steps. */
const INTERVALS = Array.from({ length: 25 }, (_, index) => 12 - index);

/** The trade's names of the intervals up to an octave, by half steps. */
const INTERVAL_NAMES = [
  'unison',
  'a half step',
  'a whole step',
  'a minor third',
  'a major third',
  'a fourth',
  'a tritone',
  'a fifth',
  'a minor sixth',
  'a major sixth',
  'a minor seventh',
  'a major seventh',
  'an octave',
] as const;

const intervalWords = (halfSteps: number): string =>
  `${halfSteps > 0 ? 'up' : 'down'} ${INTERVAL_NAMES[Math.abs(halfSteps)] ?? ''}`;

/** The keys of the same mode that are easy to read, in the order of the circle of fifths; the present one too. */
function keysToMoveTo(present: Key): readonly Key[] {
  const readable = keysOfMode(present.mode).filter((key) => Math.abs(keySignature(key)) <= MOST_SIGNS);
  return readable.some((key) => sameKey(key, present)) ? readable : [present, ...readable];
}
