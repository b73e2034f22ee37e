import { fretDistance, romanNumeral } from '../../core/fretboard';
import { formatNameIn } from '../../core/theory';
import { CAPITAL_HEIGHT, textWidth } from '../metrics/measure';
import { describeFretboard } from './describe';
import type { FretboardLayout, FretboardRequest, NeckLine, NeckPlate, NeckText } from './types';

const STRING_SPACE = 28;
const SIDE = 8;
const NAME_ROOM = 24;
const OPEN_ROOM = 38;
const POSITION_ROW = 27;
/** From the plates on the highest string up to the middle of the numeral. */
const ABOVE_PLATES = 11;
/** Fret numbers stay clear of the plates on the lowest string. */
const NUMBER_BASELINE = 27;
const NUMBER_ROW = 32;
const PLATE_WIDTH = 26;
/** Height of a plate and sizes of what is written; the second ones fill the room between the strings. */
const USUAL = { plate: 21, plateText: 15, smallText: 13, positionText: 15 } as const;
const LARGE = { plate: 25, plateText: 22, smallText: 18, positionText: 20 } as const;
/** Left and right of a plate's text. */
const PLATE_MARGIN = 5;
const LEAST_MARGIN = 3;
/** White between plates on neighbouring frets, the heavier rim of a root's included. */
const PLATES_APART = 6;
const NUT = 5;
/** A hand covers four frets, one finger each. */
const HAND = 4;
const LEAST_FRETS = 5;

/** Lays the picture out; the lowest string is at the bottom, as in the tab. */
export function layoutFretboard(request: FretboardRequest): FretboardLayout {
  const neck = new Neck(request);
  const marks = [
    ...neck.frets(),
    ...neck.strings(),
    ...neck.position(request.position, 'position'),
    ...neck.next(),
    ...request.notes.map((note) => neck.plate(note)),
  ];
  return {
    width: request.width,
    height: neck.bottom + NUMBER_ROW,
    marks: request.instrument.leftHanded ? marks.map((mark) => mirror(mark, request.width)) : marks,
    description: describeFretboard(request),
  };
}

/** The frets that hold every note and the hand, at least five of them, and never beyond the neck. */
function windowOf({ notes, position, nextPosition, frets, instrument }: FretboardRequest): {
  readonly first: number;
  readonly last: number;
} {
  if (frets) return frets;
  const fretted = notes.flatMap(({ fret }) => (fret > 0 ? [Number(fret)] : []));
  const hands = [position, nextPosition ?? null].filter((place) => place !== null);
  const shown = [...fretted, ...hands, ...hands.map((place) => place + HAND - 1)];
  const lowest = Math.max(1, Math.min(...shown, instrument.frets));
  // Near the nut the picture begins at the nut, so that the place on the neck is plain.
  const first = shown.length === 0 || lowest <= 2 ? 1 : lowest;
  const last = Math.min(instrument.frets, Math.max(...shown, first + LEAST_FRETS - 1));
  return { first: Math.min(first, Math.max(1, last - LEAST_FRETS + 1)), last };
}

class Neck {
  readonly top: number;
  readonly bottom: number;
  private readonly first: number;
  private readonly last: number;
  private readonly nameRoom: number;
  private readonly left: number;
  private readonly scale: number;
  private readonly hasNext: boolean;
  private readonly sizes: typeof USUAL | typeof LARGE;

  constructor(private readonly request: FretboardRequest) {
    this.sizes = request.large === true ? LARGE : USUAL;
    const { instrument, noteNames, notes, position, nextPosition, width, steady = false } = request;
    const { first, last } = windowOf(request);
    this.first = first;
    this.last = last;
    const hasOpen = first === 1 || notes.some(({ fret }) => fret === 0);
    const names = instrument.openStrings.map((open) => formatNameIn(noteNames, open));
    this.nameRoom = Math.max(NAME_ROOM, ...names.map((name) => textWidth(name, this.sizes.smallText) + 8));
    this.left = SIDE + this.nameRoom + (hasOpen ? OPEN_ROOM : 0);
    this.hasNext = nextPosition != null && nextPosition !== position;
    this.top =
      (position === null && !this.hasNext && !steady
        ? this.sizes.plate / 2 + 4
        : POSITION_ROW + this.sizes.plate / 2) + (this.hasNext || steady ? POSITION_ROW : 0);
    this.bottom = this.top + (instrument.openStrings.length - 1) * STRING_SPACE;
    this.scale = (width - SIDE - this.left) / (this.distance(last) - this.distance(first - 1));
  }

  private distance(fret: number): number {
    return fretDistance(fret, this.request.instrument.scaleLength);
  }

  /** Where a fret's wire stands; 0 is the nut. */
  private wire(fret: number): number {
    return this.left + (this.distance(fret) - this.distance(this.first - 1)) * this.scale;
  }

  private middle(fret: number): number {
    if (fret === 0) return this.left - NUT - 4 - PLATE_WIDTH / 2;
    return (this.wire(fret - 1) + this.wire(fret)) / 2;
  }

  /** What a plate may take of its fret, so that plates on neighbouring frets stay apart. */
  private room(fret: number): number {
    return fret === 0 ? OPEN_ROOM - 6 : this.wire(fret) - this.wire(fret - 1) - PLATES_APART;
  }

  private y(string: number): number {
    return this.top + (string - 1) * STRING_SPACE;
  }

  frets(): readonly (NeckLine | NeckText)[] {
    const marks: (NeckLine | NeckText)[] = [];
    for (let fret = this.first - 1; fret <= this.last; fret += 1) {
      const x = fret === 0 ? this.wire(0) - NUT / 2 : this.wire(fret);
      marks.push({
        kind: 'line',
        role: fret === 0 ? 'nut' : 'fret',
        x1: x,
        x2: x,
        y1: this.top,
        y2: this.bottom,
        stroke: fret === 0 ? NUT : 1.2,
        dashed: false,
      });
      if (fret >= this.first)
        marks.push(this.text('fret-number', String(fret), this.middle(fret), this.bottom + NUMBER_BASELINE));
    }
    return marks;
  }

  strings(): readonly (NeckLine | NeckText)[] {
    return this.request.instrument.openStrings.flatMap((open, index): (NeckLine | NeckText)[] => {
      const y = this.y(index + 1);
      return [
        {
          kind: 'line',
          role: 'string',
          x1: this.wire(this.first - 1) - (this.first === 1 ? NUT : 0),
          x2: this.wire(this.last),
          y1: y,
          y2: y,
          stroke: 1 + index * 0.4,
          dashed: false,
        },
        this.text(
          'string-name',
          formatNameIn(this.request.noteNames, open),
          SIDE + this.nameRoom / 2 - 2,
          y + (this.sizes.smallText * CAPITAL_HEIGHT) / 2,
        ),
      ];
    });
  }

  /** The hand over its four frets, in Roman numerals. */
  position(position: number | null, role: 'position' | 'next-position'): readonly (NeckLine | NeckText)[] {
    if (position === null || position > this.last) return [];
    const y = role === 'next-position' ? POSITION_ROW - 9 : this.top - this.sizes.plate / 2 - ABOVE_PLATES;
    const start = this.wire(Math.max(position, this.first) - 1) + 3;
    const end = this.wire(Math.min(position + HAND - 1, this.last)) - 3;
    const words = role === 'next-position' ? `then ${romanNumeral(position)}` : romanNumeral(position);
    const text = this.text(
      role,
      words,
      (start + end) / 2,
      y + (this.sizes.positionText * CAPITAL_HEIGHT) / 2,
    );
    const half = textWidth(words, text.size, text.bold) / 2 + 5;
    const line = (from: number, to: number): NeckLine => ({
      kind: 'line',
      role,
      x1: from,
      x2: to,
      y1: y,
      y2: y,
      stroke: 1.6,
      dashed: role === 'next-position',
    });
    return [line(start, text.x - half), text, line(text.x + half, end)];
  }

  next(): readonly (NeckLine | NeckText)[] {
    return this.hasNext ? this.position(this.request.nextPosition ?? null, 'next-position') : [];
  }

  plate(note: FretboardRequest['notes'][number]): NeckPlate {
    const { show, sounding } = this.request;
    const text = show === 'finger' ? String(note.finger ?? '') : note[show];
    const words = textWidth(text, this.sizes.plateText, true);
    const width = Math.min(Math.max(PLATE_WIDTH, words + 2 * PLATE_MARGIN), this.room(note.fret));
    const size = this.sizes.plateText * Math.min(1, (width - 2 * LEAST_MARGIN) / Math.max(1, words));
    return {
      kind: 'plate',
      text,
      x: this.middle(note.fret),
      y: this.y(note.string),
      width,
      height: this.sizes.plate,
      size,
      root: note.degree === 'R' || note.degree === '8',
      sounding: sounding?.string === note.string && sounding.fret === note.fret,
    };
  }

  private text(role: NeckText['role'], text: string, x: number, y: number): NeckText {
    const large = role === 'position' || role === 'next-position';
    return {
      kind: 'text',
      role,
      text,
      x,
      y,
      size: large ? this.sizes.positionText : this.sizes.smallText,
      bold: large,
    };
  }
}

/** Left and right change places; what is written stays readable. */
function mirror(mark: NeckLine | NeckText | NeckPlate, width: number): NeckLine | NeckText | NeckPlate {
  if (mark.kind === 'line') return { ...mark, x1: width - mark.x1, x2: width - mark.x2 };
  return { ...mark, x: width - mark.x };
}
