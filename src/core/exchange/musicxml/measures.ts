import { barTicks, ticks } from '../../base';
import { type ChartBar, repeatSigns, type WrittenMetre, writtenMetres } from '../../chart';
import {
  type BarTies,
  isHeldOver,
  type LineSheet,
  type SheetBar,
  tiesOverBarLines,
  UNTIED,
} from '../../lesson';
import {
  type Accidental,
  accidentalsOf,
  type NotatedBar,
  type NotatedEvent,
  notateBar,
} from '../../notation';
import { type Key, keySignature } from '../../theory';
import { keyAt, signatureOf } from '../signature';
import { attributesOf } from './attributes';
import { leftBarline, rightBarline } from './barlines';
import { directionsOf, navigationOf, soundOf } from './directions';
import { dynamicElements, dynamicsByBar } from './dynamics';
import { harmonyElement } from './harmony';
import { linksOf, type NoteLinks } from './note-signs';
import { beamsOf, noteElement, type PartKind, type TieEnds, type WrittenNote } from './notes';
import { type Element, element } from './xml';

/** The measures of one part; both parts of a piece have the same bars, notes and ties. */
export function measuresOf(sheet: LineSheet, part: PartKind): readonly Element[] {
  const ties = tiesOverBarLines(sheet);
  const accidentals = accidentalsByKey(sheet, ties);
  const links = linksOf(sheet);
  const dynamics = dynamicsByBar(sheet);
  const repeats = repeatSigns(sheet.chart);
  const metres = writtenMetres(sheet.chart);
  return sheet.bars.map((bar, index) => {
    const { written } = bar;
    return element(
      'measure',
      { number: written.number, ...(isImplicit(metres[index], written) ? { implicit: 'yes' } : {}) },
      leftBarline(sheet.chart, index, repeats[index] === true),
      attributesOf(sheet, index, part, metres),
      part === 'staff' ? directionsOf(sheet, index) : soundOf(sheet, index),
      contentOf(
        bar,
        {
          ties: ties[index] ?? UNTIED,
          accidentals: accidentals[index] ?? [],
          links: links[index] ?? [],
          dynamics: part === 'staff' ? (dynamics[index] ?? []) : [],
        },
        part,
      ),
      part === 'staff' ? navigationOf(written, false) : null,
      rightBarline(sheet.chart, index),
    );
  });
}

/** Accidentals start afresh where the key changes, as the signature does. */
function accidentalsByKey(
  sheet: LineSheet,
  ties: readonly BarTies[],
): readonly (readonly (Accidental | null)[])[] {
  const result: (readonly (Accidental | null)[])[] = [];
  for (let from = 0; from < sheet.bars.length; ) {
    const key = keyAt(sheet, from);
    let until = from + 1;
    while (until < sheet.bars.length && signatureOf(keyAt(sheet, until)) === signatureOf(key)) until += 1;
    const first = from;
    const pitches = sheet.bars.slice(from, until).map(({ notes }, place) =>
      notes.map(({ note }, index) => ({
        pitch: note.pitch,
        continued: index === 0 && isHeldOver(ties[first + place] ?? UNTIED),
      })),
    );
    const shown: Key = signatureOf(key) === keySignature(key) ? key : WITHOUT_SIGNATURE;
    result.push(...accidentalsOf(pitches, shown));
    from = until;
  }
  return result;
}

const WITHOUT_SIGNATURE: Key = { tonic: { letter: 'C', alteration: 0 }, mode: 'major' };

/** The end of a bar is not counted: a pickup, and what follows a repeat within a bar. */
const isImplicit = (metre: WrittenMetre | undefined, { pickup }: ChartBar): boolean =>
  pickup || (metre?.from ?? 0) > 0;

/** What is worked out for the whole line, of one bar. */
interface BarFacts {
  readonly ties: BarTies;
  readonly accidentals: readonly (Accidental | null)[];
  readonly links: readonly NoteLinks[];
  readonly dynamics: ReturnType<typeof dynamicsByBar>[number];
}

const UNLINKED: NoteLinks = { start: null, stop: null, alone: null };

function contentOf(bar: SheetBar, facts: BarFacts, part: PartKind): readonly Element[] {
  const { ties, accidentals, links, dynamics } = facts;
  const notated = notateBar(
    bar.notes.map(({ note }) => note),
    bar.written.metre,
  );
  const beams = beamsOf(notated);
  const length = barTicks(bar.written.metre);
  const atEnd = dynamics.filter(({ at }) => at >= length).flatMap((sign) => dynamicElements(sign, 0));
  const events = notated.events.flatMap((event, index) => {
    const written: WrittenNote = {
      event,
      sheetNote: event.note === null ? null : (bar.notes[event.note] ?? null),
      tie: tieOf(notated, index, ties),
      first: beginsNote(notated, index),
      last: notated.events[index + 1]?.note !== event.note,
      links: links[event.note ?? -1] ?? UNLINKED,
      accidental: beginsNote(notated, index) ? (accidentals[event.note ?? -1] ?? null) : null,
      beams: beams[index] ?? [],
      tuplet: tupletOf(notated, index),
    };
    const harmonies = part === 'staff' ? harmoniesWithin(bar, event) : [];
    const signs = dynamics
      .filter(({ at }) => at >= event.start && at < event.start + event.duration && at < length)
      .flatMap((sign) => dynamicElements(sign, sign.at - event.start));
    return [...harmonies, ...signs, noteElement(written, part)];
  });
  return [...events, ...atEnd];
}

const beginsNote = ({ events }: NotatedBar, index: number): boolean =>
  events[index]?.note !== events[index - 1]?.note;

function tieOf({ events }: NotatedBar, index: number, ties: BarTies): TieEnds {
  const event = events[index];
  if (!event || event.note === null) return { from: false, to: 'none' };
  const last = index === events.length - 1;
  return {
    from: index === 0 ? ties.from : events[index - 1]?.tied === true,
    to: event.tied ? 'next' : !last || ties.to === 'none' ? 'none' : ties.to === 'next' ? 'next' : 'let ring',
  };
}

function tupletOf({ triplets }: NotatedBar, index: number): 'start' | 'stop' | null {
  if (triplets.some(({ first }) => first === index)) return 'start';
  return triplets.some(({ last }) => last === index) ? 'stop' : null;
}

/** Chord symbols at or within an event; one that changes in its middle is moved by an offset. */
const harmoniesWithin = (bar: SheetBar, event: NotatedEvent): readonly Element[] =>
  bar.written.spans
    .filter((span) => span.start >= event.start && span.start < event.start + event.duration)
    .map((span) => harmonyElement(span, ticks(span.start - event.start)));
