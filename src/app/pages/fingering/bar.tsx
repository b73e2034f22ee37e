import { useMemo, useState } from 'react';
import { barName, type Fret, fret, midiOf, type Pins, stringNumber } from '../../../core/base';
import { countedIn } from '../../../core/chart';
import { placesOf, romanNumeral } from '../../../core/fretboard';
import {
  clearPins,
  handLine,
  keepPosition,
  type LineSheet,
  pinPlace,
  setPins,
  stringName,
} from '../../../core/lesson';
import { formatNameIn } from '../../../core/theory';
import { SelectWord } from '../../controls';
import { type BarOnNeck, useChange } from './bar-on-neck';

const placeText = (sheet: LineSheet, string: number, at: number): string =>
  `${stringName(sheet, string)} string, ${at === 0 ? 'open' : `fret ${at}`}`;

const FREE = 'free';

/** The bar's notes, each to be pinned to a place and a finger. */
export function BarFingering({ piece, instrument, sheet, bar }: BarOnNeck) {
  const change = useChange();
  const hand = useMemo(() => handLine(piece, instrument), [piece, instrument]);
  const shown = sheet.bars[bar];
  if (hand === null || shown === undefined) return null;
  const placed = countedIn(sheet.chart, bar, shown.written.metre);
  const anyPin = shown.notes.some(({ note }) => note.pins !== undefined);
  return (
    <div>
      <table className="fingering__notes">
        <caption className="visually-hidden">Notes of {barName(shown.written.number)} on the neck</caption>
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
            const name = `${formatNameIn(sheet.noteNames ?? 'letters', note.pitch)} on ${placed(note.start)}`;
            const pin = (next: Pins) =>
              change(`pin ${name} in ${barName(shown.written.number)}`, (lesson) =>
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
      <p className="fingering__hint">
        What is chosen here is pinned: it is played there, and the bar stays as it is in every new take.
      </p>
      <p className="fingering__actions">
        <PositionChoice piece={piece} sheet={sheet} bar={bar} instrument={instrument} />
        {anyPin && (
          <button
            type="button"
            className="word"
            onClick={() =>
              change(`let the pins of ${barName(shown.written.number)} go`, (lesson) =>
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
function PositionChoice({ piece, sheet, bar }: BarOnNeck) {
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
