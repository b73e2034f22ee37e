import { useState } from 'react';
import { type LinePiece, type LineSheet, transposeTo } from '../../core/lesson';
import {
  ALL_KEYS,
  describeKey,
  describeKeyIn,
  describeSignature,
  type Key,
  keySignature,
  sameKey,
} from '../../core/theory';
import { SelectField } from '../controls';
import { NoteNames } from './aims';
import { useAtWork } from './session';

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

/** Moves the whole lesson so that the piece at hand stands in another key. */
function Transpose({ piece, sheet }: TransposeProps) {
  const { session } = useAtWork();
  const [target, setTarget] = useState<Key | null>(null);
  const naming = sheet.noteNames ?? 'letters';
  const keys = keysToMoveTo(sheet.key);
  const chosen = target !== null && target.mode === sheet.key.mode ? target : sheet.key;
  return (
    <div className="aims transpose__keys">
      <SelectField
        label="Transpose to"
        value={describeKey(chosen)}
        options={keys.map((key) => ({
          value: describeKey(key),
          label: sameKey(key, sheet.key)
            ? `${describeKeyIn(naming, key)}, as it is`
            : `${describeKeyIn(naming, key)}: ${describeSignature(key, naming)}`,
        }))}
        onChange={(text) => setTarget(keys.find((key) => describeKey(key) === text) ?? null)}
      />
      {!sameKey(chosen, sheet.key) && (
        <button
          type="button"
          className="button"
          onClick={() => {
            session.lessons.change((lesson) => transposeTo(lesson, piece.id, chosen.tonic), {
              label: `transpose to ${describeKeyIn(naming, chosen)}`,
            });
            setTarget(null);
          }}
        >
          Transpose
        </button>
      )}
    </div>
  );
}

/** The keys of the same mode that are easy to read, in the order of the circle of fifths; the present one too. */
function keysToMoveTo(present: Key): readonly Key[] {
  const readable = ALL_KEYS.filter(
    (key) => key.mode === present.mode && Math.abs(keySignature(key)) <= MOST_SIGNS,
  );
  return readable.some((key) => sameKey(key, present)) ? readable : [present, ...readable];
}
