import { barTicks, beatTicks, isCompound, type Metre, sameMetre, TICKS_PER_QUARTER, ticks } from '../../base';
import {
  beginsBar,
  type Chart,
  type ChartBar,
  type Navigation,
  navigationWords,
  repeatSigns,
  sameEnding,
  timesToSay,
  type WrittenMetre,
  writtenMetres,
} from '../../chart';
import { swingRatio } from '../../feel';
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
import { swingsEighths } from '../../playing';
import { type Key, keySignature, sameKey } from '../../theory';
import { keyAt, signatureOf } from '../signature';
import { dynamicElements, dynamicsByBar } from './dynamics';
import { harmonyElement } from './harmony';
import { linksOf, type NoteLinks } from './note-signs';
import { beamsOf, noteElement, type PartKind, type TieEnds, type WrittenNote } from './notes';
import { type Element, element, tag } from './xml';

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

function leftBarline(chart: Chart, index: number, opens: boolean): Element | null {
  const bar = chart.bars[index];
  if (!bar) return null;
  const begins = bar.ending !== null && !sameEnding(bar, chart.bars[index - 1]);
  if (!opens && !begins) return null;
  return element(
    'barline',
    { location: 'left' },
    opens ? tag('bar-style', 'heavy-light') : null,
    begins ? endingElement(bar, 'start') : null,
    opens ? element('repeat', { direction: 'forward' }) : null,
  );
}

const endingElement = (bar: ChartBar, type: 'start' | 'stop' | 'discontinue'): Element => {
  const numbers = bar.ending ?? [];
  return element(
    'ending',
    { number: numbers.join(','), type },
    type === 'start' ? `${numbers.join(', ')}.` : null,
  );
};

function rightBarline(chart: Chart, index: number): Element | null {
  const bar = chart.bars[index];
  if (!bar) return null;
  const next = chart.bars[index + 1];
  const repeats = bar.repeatEnd !== null;
  const endingStops = bar.ending !== null && !sameEnding(bar, next);
  const style = repeats || !next ? 'light-heavy' : next.section !== bar.section ? 'light-light' : null;
  if (style === null && !endingStops) return null;
  const times = timesToSay(bar);
  return element(
    'barline',
    { location: 'right' },
    style === null ? null : tag('bar-style', style),
    endingStops ? endingElement(bar, repeats || !next ? 'stop' : 'discontinue') : null,
    repeats ? element('repeat', { direction: 'backward', ...(times === null ? {} : { times }) }) : null,
  );
}

/** The end of a bar is not counted: a pickup, and what follows a repeat within a bar. */
const isImplicit = (metre: WrittenMetre | undefined, { pickup }: ChartBar): boolean =>
  pickup || (metre?.from ?? 0) > 0;

function attributesOf(
  sheet: LineSheet,
  index: number,
  part: PartKind,
  metres: readonly WrittenMetre[],
): Element | null {
  const bar = sheet.bars[index]?.written;
  if (!bar) return null;
  const before = sheet.bars[index - 1]?.written;
  const key = keyAt(sheet, index);
  const keyBefore = index === 0 ? null : keyAt(sheet, index - 1);
  const newKey = keyBefore === null || !sameKey(keyBefore, key);
  const [now, then] = [metres[index], metres[index - 1]];
  const newMetre = !before || !sameMetre(saidMetre(before, then), saidMetre(bar, now));
  const shown = !now || !then || !sameMetre(now.metre, then.metre);
  if (!newKey && !newMetre) return null;
  return tag(
    'attributes',
    index === 0 ? tag('divisions', TICKS_PER_QUARTER) : null,
    newKey ? keyElement(key, keyBefore) : null,
    newMetre ? timeElement(saidMetre(bar, now), shown) : null,
    index === 0 ? clefOf(sheet, part) : null,
  );
}

/** A pickup has the metre of the bars after it, as the tutorial for MusicXML 4.0 writes it; another part of a bar its own. */
const saidMetre = (bar: ChartBar, written: WrittenMetre | undefined): Metre =>
  bar.pickup ? (written?.metre ?? bar.metre) : bar.metre;

/** The time that a part of a bar has is said, not shown. */
const timeElement = ({ count, unit }: Metre, shown: boolean): Element =>
  element('time', shown ? {} : { 'print-object': 'no' }, tag('beats', count), tag('beat-type', unit));

/** A key with the same signature as the one before it is said, not shown. */
const keyElement = (key: Key, before: Key | null): Element =>
  element(
    'key',
    before !== null && signatureOf(before) === signatureOf(key) ? { 'print-object': 'no' } : {},
    tag('fifths', signatureOf(key)),
    tag('mode', key.mode),
  );

/**
 * The staff is a plain bass clef whose part sounds an octave lower; the tab is written as it sounds, so that
 * string and fret add up (both as in the W3C's "Tablature" tutorial for MusicXML 4.0).
 */
function clefOf(sheet: LineSheet, part: PartKind): readonly Element[] {
  const { openStrings } = sheet.instrument;
  if (part === 'staff') {
    return [
      tag('clef', tag('sign', 'F'), tag('line', 4)),
      tag('transpose', tag('diatonic', 0), tag('chromatic', 0), tag('octave-change', -1)),
    ];
  }
  const lowestFirst = [...openStrings].reverse();
  return [
    tag('clef', tag('sign', 'TAB'), tag('line', Math.min(5, openStrings.length))),
    tag(
      'staff-details',
      tag('staff-lines', openStrings.length),
      lowestFirst.map((pitch, index) =>
        element(
          'staff-tuning',
          { line: index + 1 },
          tag('tuning-step', pitch.letter),
          pitch.alteration === 0 ? null : tag('tuning-alter', pitch.alteration),
          tag('tuning-octave', pitch.octave),
        ),
      ),
    ),
  ];
}

/** Quarter notes a minute, which is what a `sound` counts. */
const quartersAMinute = (sheet: LineSheet): number =>
  (sheet.tempo * beatTicks(sheet.metre)) / TICKS_PER_QUARTER;

const tempoSound = (sheet: LineSheet, ...inside: Element[]): Element =>
  element('sound', { tempo: Math.round(quartersAMinute(sheet) * 1000) / 1000 }, inside);

const soundOf = (sheet: LineSheet, index: number): Element | null => (index === 0 ? tempoSound(sheet) : null);

/** The note that a tempo counts: a half in 2/2, a dotted quarter in compound time, else a quarter, in 7/8 too. */
function metronome(metre: Metre, tempo: number): Element {
  const unit = isCompound(metre)
    ? [tag('beat-unit', 'quarter'), tag('beat-unit-dot')]
    : [tag('beat-unit', metre.unit === 2 ? 'half' : 'quarter')];
  return tag('metronome', unit, tag('per-minute', tempo));
}

/** The ratio of a pair of eighths in small whole numbers, as the standard wants it: 1.5 is 3 to 2. */
function swingElement(ratio: number): Element {
  const parts = Array.from({ length: 12 }, (_, index) => index + 1);
  const error = (second: number): number => Math.abs(ratio - Math.round(ratio * second) / second);
  const second = parts.reduce((best, one) => (error(one) < error(best) - 1e-9 ? one : best), 1);
  return tag(
    'swing',
    tag('first', Math.round(ratio * second)),
    tag('second', second),
    tag('swing-type', 'eighth'),
  );
}

/** Signs of the way through the chart where a bar begins or ends, drawn, and said for players (`sound`). */
const navigationOf = ({ navigation = [] }: ChartBar, begins: boolean): readonly Element[] =>
  navigation
    .filter((sign) => beginsBar(sign) === begins)
    .map((sign) =>
      element(
        'direction',
        { placement: 'above' },
        sign === 'segno' || sign === 'coda'
          ? tag('direction-type', tag(sign))
          : tag('direction-type', tag('words', navigationWords(sign))),
        // `To Coda` has the coda's sign behind it, as on the printed line.
        sign === 'to coda' ? tag('direction-type', tag('coda')) : null,
        element('sound', NAVIGATION_SOUNDS[sign]),
      ),
    );

const JUMP_TO_BEGINNING = { dacapo: 'yes' };
const JUMP_TO_SEGNO = { dalsegno: 'segno' };

/** MusicXML 4.0, element `sound`. */
const NAVIGATION_SOUNDS: Readonly<Record<Navigation, Readonly<Record<string, string>>>> = {
  segno: { segno: 'segno' },
  coda: { coda: 'coda' },
  'to coda': { tocoda: 'coda' },
  fine: { fine: 'yes' },
  'D.C.': JUMP_TO_BEGINNING,
  'D.C. al fine': JUMP_TO_BEGINNING,
  'D.C. al coda': JUMP_TO_BEGINNING,
  'D.S.': JUMP_TO_SEGNO,
  'D.S. al fine': JUMP_TO_SEGNO,
  'D.S. al coda': JUMP_TO_SEGNO,
};

function directionsOf(sheet: LineSheet, index: number): readonly Element[] {
  const bar = sheet.bars[index]?.written;
  const section = sheet.chart.sections[bar?.section ?? -1];
  const above = (...children: (Element | null)[]): Element =>
    element('direction', { placement: 'above' }, children);
  const directions: Element[] = [];
  if (index === 0) {
    directions.push(above(tag('direction-type', metronome(sheet.metre, sheet.tempo)), tempoSound(sheet)));
    if (swingsEighths(sheet)) {
      const swing = swingElement(swingRatio(sheet.feel, sheet.tempo));
      directions.push(above(tag('direction-type', tag('words', 'Swing eighths')), tag('sound', swing)));
    }
  }
  if (section?.start === index && section.name !== null) {
    directions.push(above(tag('direction-type', tag('rehearsal', section.name))));
  }
  const words = sheet.bars[index]?.words;
  if (words !== undefined) directions.push(above(tag('direction-type', tag('words', words))));
  return bar === undefined ? directions : [...directions, ...navigationOf(bar, true)];
}

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
