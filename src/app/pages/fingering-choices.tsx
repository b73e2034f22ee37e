import { type ReactNode, useId, useMemo, useState } from 'react';
import { type Fret, fret, midiOf, type Pins, stringNumber } from '../../core/base';
import { placesOf, romanNumeral } from '../../core/fretboard';
import {
  clearPins,
  deriveSheet,
  handLine,
  type InstrumentSettings,
  keepPosition,
  type Lesson,
  type LinePiece,
  type LineSheet,
  type Passage,
  pinPlace,
  setPins,
  waysToPlay,
} from '../../core/lesson';
import { formatName } from '../../core/theory';
import { SelectField, SelectWord } from '../controls';
import { countOf, stringName } from './describe';
import { useAtWork, useNoteNames } from './session';

interface FingeringChoicesProps {
  readonly piece: LinePiece;
  readonly instrument: InstrumentSettings;
  /** Index of the written bar. */
  readonly bar: number;
}

/** Where and how a bar is played: its notes with their pins, the hand's position, and other ways to play it. */
export function FingeringChoices({ piece, instrument, bar }: FingeringChoicesProps) {
  const sheet = deriveSheet(piece, instrument, useNoteNames());
  const [open, setOpen] = useState(false);
  const shown = sheet.kind === 'line' ? sheet.bars[bar] : undefined;
  if (sheet.kind !== 'line' || shown === undefined || shown.notes.length === 0) return null;
  const number = shown.written.number;
  const places = placesText(
    sheet,
    shown.notes.map(({ fingered }) => fingered),
  );
  const pinned = shown.notes.some(({ note }) => note.pins !== undefined);
  return (
    <details className="fingering" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span className="fingering__title">Fingering of bar {number}</span>{' '}
        <span className="fingering__places">
          {places}
          {pinned && ', pinned: the bar is kept'}
        </span>
      </summary>
      {open && (
        <div className="fingering__body">
          <BarNotes piece={piece} instrument={instrument} sheet={sheet} bar={bar} />
          <Elsewhere piece={piece} instrument={instrument} sheet={sheet} bar={bar} />
        </div>
      )}
    </details>
  );
}

interface BarProps extends FingeringChoicesProps {
  readonly sheet: LineSheet;
}

const placeText = (sheet: LineSheet, string: number, at: number): string =>
  `${stringName(sheet, string)} string, ${at === 0 ? 'open' : `fret ${at}`}`;

const FREE = 'free';

function useChange() {
  const { session } = useAtWork();
  return (label: string, command: (lesson: Lesson) => Lesson) => session.lessons.change(command, { label });
}

/** The bar's notes, each to be pinned to a place and a finger. */
function BarNotes({ piece, instrument, sheet, bar }: BarProps) {
  const change = useChange();
  const hand = useMemo(() => handLine(piece, instrument), [piece, instrument]);
  const shown = sheet.bars[bar];
  if (hand === null || shown === undefined) return null;
  const anyPin = shown.notes.some(({ note }) => note.pins !== undefined);
  return (
    <div>
      <table className="fingering__notes">
        <caption className="visually-hidden">Notes of bar {shown.written.number} on the neck</caption>
        <thead>
          <tr>
            <th scope="col">Note</th>
            <th scope="col">Place</th>
            <th scope="col">Finger</th>
          </tr>
        </thead>
        <tbody>
          {shown.notes.map(({ note, fingered }, index) => {
            const { at, pins = {} } = pinPlace(hand, { bar, note: index });
            const name = `${formatName(note.pitch)} on ${countOf(note.start, shown.written.metre)}`;
            const pin = (next: Pins) =>
              change(`pin ${name} in bar ${shown.written.number}`, (lesson) =>
                setPins(lesson, piece.id, [{ at, pins: next }]),
              );
            const { string: _string, fret: _fret, ...finger } = pins;
            const { finger: _finger, ...place } = pins;
            return (
              <tr key={note.start}>
                <th scope="row">{name}</th>
                <td>
                  <SelectWord
                    label={`Place of ${name}`}
                    value={placeValue(pins)}
                    options={placeOptions(sheet, midiOf(note.pitch), pins, fingered)}
                    onChange={(value) => pin({ ...finger, ...placePins(value) })}
                  />
                </td>
                <td>
                  <SelectWord
                    label={`Finger for ${name}`}
                    value={pins.finger === undefined ? FREE : String(pins.finger)}
                    options={[
                      { value: FREE, label: fingered === null ? '–' : String(fingered.finger) },
                      ...FINGERS.map((each) => ({ value: String(each), label: `${each}, pinned` })),
                    ]}
                    onChange={(value) => {
                      const chosen = FINGERS.find((each) => String(each) === value);
                      pin(chosen === undefined ? place : { ...place, finger: chosen });
                    }}
                  />
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      <p className="fingering__actions">
        <PositionChoice piece={piece} sheet={sheet} bar={bar} instrument={instrument} />
        {anyPin && (
          <button
            type="button"
            className="word"
            onClick={() =>
              change(`let the pins of bar ${shown.written.number} go`, (lesson) =>
                clearPins(lesson, piece.id, { first: bar, last: bar }),
              )
            }
          >
            Let the pins of this bar go
          </button>
        )}
      </p>
    </div>
  );
}

const FINGERS = [0, 1, 2, 3, 4] as const;

const placeValue = ({ string, fret: at }: Pins): string =>
  string === undefined && at === undefined ? FREE : `${string ?? ''}:${at ?? ''}`;

/** The pins that a place in the list stands for. */
function placePins(value: string): Pins {
  if (value === FREE) return {};
  const [string = '', at = ''] = value.split(':');
  return {
    ...(string === '' ? {} : { string: stringNumber(Number(string)) }),
    ...(at === '' ? {} : { fret: fret(Number(at)) }),
  };
}

/** Every place of the pitch; a pin that fits none of them is listed too, so that it can be seen and let go. */
function placeOptions(
  sheet: LineSheet,
  midi: ReturnType<typeof midiOf>,
  pins: Pins,
  fingered: { readonly string: number; readonly fret: number } | null,
) {
  const own = placeValue(pins);
  const places = placesOf(midi, sheet.instrument).map((place) => ({
    value: placeValue(place),
    label: `${placeText(sheet, place.string, place.fret)}, pinned`,
  }));
  const partial =
    own === FREE || places.some(({ value }) => value === own)
      ? []
      : [
          {
            value: own,
            label: [
              ...(pins.string === undefined ? [] : [`${stringName(sheet, pins.string)} string`]),
              ...(pins.fret === undefined ? [] : [`fret ${pins.fret}`]),
              'pinned',
            ].join(', '),
          },
        ];
  return [
    {
      value: FREE,
      label: fingered === null ? 'not on this neck' : placeText(sheet, fingered.string, fingered.fret),
    },
    ...partial,
    ...places,
  ];
}

/** Keeps the hand in a position for this bar, or from this bar to another one. */
function PositionChoice({ piece, sheet, bar }: BarProps) {
  const change = useChange();
  const [last, setLast] = useState(bar);
  const kept = piece.bars[bar]?.position;
  const end = Math.max(bar, Math.min(last, sheet.bars.length - 1));
  const keep = (position: Fret | null, range: number) =>
    change(
      position === null ? 'free the hand' : `keep the hand in position ${romanNumeral(position)}`,
      (lesson) => keepPosition(lesson, piece.id, { first: bar, last: range }, position),
    );
  return (
    <span>
      Hand in position{' '}
      <SelectWord
        label="Hand position"
        value={kept === undefined ? FREE : String(kept)}
        options={[
          { value: FREE, label: 'as it comes' },
          ...Array.from({ length: sheet.instrument.frets }, (_, index) => ({
            value: String(index + 1),
            label: romanNumeral(index + 1),
          })),
        ]}
        onChange={(value) => keep(value === FREE ? null : fret(Number(value)), end)}
      />{' '}
      up to bar{' '}
      <SelectWord
        label="Hand stays up to bar"
        value={String(end)}
        options={sheet.bars.slice(bar).map(({ written }, index) => ({
          value: String(bar + index),
          label: String(written.number),
        }))}
        onChange={(value) => {
          setLast(Number(value));
          if (kept !== undefined) keep(kept, Number(value));
        }}
      />
    </span>
  );
}

const BAR = 'bar';
const LINE = 'line';

/** The next best ways to play a note, the bar or the whole line, each with what it costs and saves. */
function Elsewhere({ piece, instrument, sheet, bar }: BarProps) {
  const change = useChange();
  const id = useId();
  const [asked, setAsked] = useState(BAR);
  const notes = sheet.bars[bar]?.notes ?? [];
  const note = Number(asked);
  const value = asked === BAR || asked === LINE || notes[note] !== undefined ? asked : BAR;
  const passage = useMemo(
    (): Passage =>
      value === LINE
        ? { kind: 'line' }
        : value === BAR
          ? { kind: 'bar', bar }
          : { kind: 'note', bar, note: Number(value) },
    [value, bar],
  );
  const ways = useMemo(() => waysToPlay(piece, instrument, passage), [piece, instrument, passage]);
  const metre = sheet.bars[bar]?.written.metre;
  const what = value === LINE ? 'the line' : value === BAR ? 'the bar' : 'the note';
  return (
    <div className="elsewhere">
      <SelectField
        label="Elsewhere on the neck"
        value={value}
        options={[
          { value: BAR, label: 'This bar' },
          ...notes.map((each, index) => ({
            value: String(index),
            label: `Only ${formatName(each.note.pitch)}${metre === undefined ? '' : ` on ${countOf(each.note.start, metre)}`}`,
          })),
          { value: LINE, label: 'The whole line' },
        ]}
        onChange={setAsked}
      />
      <ol className="ways" aria-label={`Ways to play ${what}`}>
        {ways.map(({ way, places, take }, index) => (
          <li key={JSON.stringify(places)} className={`way${way.current ? ' way--current' : ''}`}>
            <p id={`${id}-${index}`}>
              {value !== LINE && <strong className="way__places">{placesText(sheet, places)}</strong>}{' '}
              {way.description}
            </p>
            {way.current ? (
              <Now />
            ) : (
              <button
                type="button"
                className="word"
                id={`${id}-${index}-take`}
                aria-labelledby={`${id}-${index}-take ${id}-${index}`}
                onClick={() => change(`play ${what} elsewhere on the neck`, take)}
              >
                Play it there
              </button>
            )}
          </li>
        ))}
      </ol>
    </div>
  );
}

const Now = (): ReactNode => <span className="way__now">as it is now</span>;

/** `E 3 3 · D open`: each string by its name, then its frets as they follow each other. */
function placesText(
  sheet: LineSheet,
  places: readonly ({ readonly string: number; readonly fret: number } | null)[],
): string {
  const runs: { readonly string: number; readonly frets: string[] }[] = [];
  for (const place of places) {
    const at = place === null ? '–' : place.fret === 0 ? 'open' : String(place.fret);
    const last = runs.at(-1);
    if (last !== undefined && last.string === (place?.string ?? 0)) last.frets.push(at);
    else runs.push({ string: place?.string ?? 0, frets: [at] });
  }
  return runs.map(({ string, frets }) => [stringName(sheet, string), ...frets].join(' ').trim()).join(' · ');
}
