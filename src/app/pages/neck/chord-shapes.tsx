import { useLayoutEffect, useMemo, useRef, useState } from 'react';
import { type Fret, fret } from '../../../core/base';
import type { HandSettings } from '../../../core/fretboard';
import {
  type ChordOnNeck,
  chordsOnNeck,
  kindsOf,
  type LineSheet,
  type NeckShape,
  octavesOf,
  type ShapeKind,
  shapeAt,
} from '../../../core/lesson';
import { formatChordIn } from '../../../core/theory';
import type { FretboardRequest } from '../../../score';
import { SelectWord } from '../../controls';
import { useNear, useWidth } from '../common';
import { useScore } from '../score';

type Kind = ShapeKind['id'];

const KINDS: readonly { readonly value: Kind; readonly label: string }[] = [
  { value: 'tones', label: 'chord tones' },
  { value: 'scale', label: 'scale' },
];

type Label = FretboardRequest['show'];

const LABELS: readonly { readonly value: Label; readonly label: string }[] = [
  { value: 'degree', label: 'degree' },
  { value: 'name', label: 'name' },
  { value: 'finger', label: 'finger' },
];

/** Where the hand stands when the line frets nothing: by the open strings. */
const AT_THE_NUT: Fret = fret(1);

interface ChordShapesProps {
  readonly sheet: LineSheet;
  readonly hand: HandSettings;
}

/**
 * The chords of a chart on the neck, all at once where the line plays them; for one of them every octave that
 * lies under one hand, along the whole neck.
 */
export function ChordShapes({ sheet, hand }: ChordShapesProps) {
  const [kind, setKind] = useState<Kind>('tones');
  const [show, setShow] = useState<Label>('degree');
  const [chosen, setChosen] = useState<string | null>(null);
  const chords = useMemo(() => chordsOnNeck(sheet), [sheet]);
  const only = chords.find(({ chord }) => chord.symbol === chosen) ?? null;
  return (
    <div className="shapes__body">
      <p className="shapes__choice">
        {only === null
          ? 'Every chord where the line plays it: its '
          : `Every octave of ${nameOf(sheet, only)} along the neck: its `}
        <SelectWord label="Notes of the shapes" value={kind} options={KINDS} onChange={setKind} /> by{' '}
        <SelectWord label="Written on the shapes" value={show} options={LABELS} onChange={setShow} />
        {only !== null && (
          <>
            {' '}
            <button type="button" className="button button--quiet" onClick={() => setChosen(null)}>
              Back to all chords
            </button>
          </>
        )}
      </p>
      {only === null ? (
        <ul className="shapes__list" aria-label="Shapes of the chords">
          {chords.map((chord) => (
            <Shape
              key={chord.chord.symbol}
              sheet={sheet}
              show={show}
              name={nameOf(sheet, chord)}
              what={scaleName(kindOf(sheet, chord, kind))}
              view={shapeAt(
                sheet,
                chord.chord,
                kindOf(sheet, chord, kind),
                chord.position ?? AT_THE_NUT,
                hand,
              )}
              onAll={() => setChosen(chord.chord.symbol)}
            />
          ))}
        </ul>
      ) : (
        <Octaves sheet={sheet} hand={hand} chord={only} kind={kind} show={show} />
      )}
    </div>
  );
}

const nameOf = (sheet: LineSheet, { chord }: ChordOnNeck): string =>
  formatChordIn(sheet.noteNames ?? 'letters', chord);

const scaleName = ({ id, what }: ShapeKind): string => (id === 'scale' ? `${what} ` : '');

const kindOf = (sheet: LineSheet, { chord, key }: ChordOnNeck, kind: Kind): ShapeKind =>
  kindsOf(chord, key, sheet.noteNames ?? 'letters')[kind];

interface OctavesProps extends ChordShapesProps {
  readonly chord: ChordOnNeck;
  readonly kind: Kind;
  readonly show: Label;
}

function Octaves({ sheet, hand, chord, kind, show }: OctavesProps) {
  const views = useMemo(() => {
    const wholeNeck = { ...hand, highestFret: sheet.instrument.frets };
    return octavesOf(sheet, chord.chord, kindOf(sheet, chord, kind), wholeNeck);
  }, [sheet, hand, chord, kind]);
  const name = nameOf(sheet, chord);
  if (views.length === 0) {
    return <p>No octave of it lies under this hand: a wider reach or the other hand system may hold one.</p>;
  }
  return (
    <>
      <p className="shapes__count">
        {views.length} {views.length === 1 ? 'shape' : 'shapes'}, from the nut upwards.
      </p>
      <ul className="shapes__list" aria-label={`All shapes of ${name}`}>
        {views.map((view) => (
          <Shape
            key={view.id}
            sheet={sheet}
            show={show}
            name={name}
            what={scaleName(kindOf(sheet, chord, kind))}
            view={view}
            onAll={null}
          />
        ))}
      </ul>
    </>
  );
}

interface ShapeProps {
  readonly sheet: LineSheet;
  readonly show: Label;
  /** The chord's. */
  readonly name: string;
  /** Which scale it is, to be read on into where it lies; '' for chord tones. */
  readonly what: string;
  readonly view: NeckShape;
  /** Shows all the shapes of the chord; null where they are shown already. */
  readonly onAll: (() => void) | null;
}

function Shape({ sheet, show, name, what, view, onAll }: ShapeProps) {
  return (
    <li className="shape">
      <p className="shape__head">
        <strong>{name}</strong>
        <span>
          {what}
          {view.where}
        </span>
        {onAll !== null && (
          <button type="button" className="word shape__all" onClick={onAll}>
            All shapes of {name}
          </button>
        )}
      </p>
      <Picture
        strings={sheet.instrument.openStrings.length}
        request={{
          title: `${name}: ${view.title}`,
          instrument: sheet.instrument,
          noteNames: sheet.noteNames ?? 'letters',
          notes: view.notes,
          position: view.position,
          show,
        }}
      />
    </li>
  );
}

interface PictureProps {
  readonly request: Omit<FretboardRequest, 'width'>;
  readonly strings: number;
}

/** Keeps its place free until it is drawn, and is drawn when it comes near the view. */
function Picture({ request, strings }: PictureProps) {
  const holder = useRef<HTMLDivElement>(null);
  const width = useWidth(holder);
  const near = useNear(holder);
  const score = useScore();
  useLayoutEffect(() => {
    if (score.kind !== 'ready' || !near || width === 0) return;
    holder.current?.replaceChildren(score.score.drawFretboard({ ...request, width }));
  }, [score, near, width, request]);
  return <div className="shape__picture" data-strings={strings} ref={holder} />;
}
