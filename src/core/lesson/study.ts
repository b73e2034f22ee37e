import { barName, barNames, capitalised, counted, listed } from '../base';
import { playOrder } from '../chart';
import { handSpan } from '../fretboard';
import { type LineStudy, studyLine } from '../line';
import { formatPitchIn } from '../theory';
import { lineRequest } from './line-request';
import type { LineSheet, SheetNote } from './sheet-types';
import type { InstrumentSettings, LinePiece } from './types';

/** A sentence about a line, and the bars that it speaks of, which can be shown on the score; none for the whole line. */
export interface StudyFact {
  readonly name: string;
  readonly sentence: string;
  /** Indices of written bars. */
  readonly bars: readonly number[];
  /** It belongs to the key facts of a handout. */
  readonly key: boolean;
}

/** What the hand does: how often it shifts, where, and how far it stretches. */
interface HandStudy {
  readonly shifts: readonly number[];
  readonly widest: { readonly millimetres: number; readonly bar: number };
}

const percent = (share: number): string => `${Math.round(share * 100)} %`;

const fretted = ({ fingered }: SheetNote): boolean => fingered !== null && fingered.fret > 0;

/**
 * Changes of position between fretted notes as they are played once through, by the bar of the second, each once, and the
 * widest grip within one position.
 */
function handOf({ bars, chart, instrument }: LineSheet): HandStudy {
  const shifts = new Map<string, number>();
  let widest = { millimetres: 0, bar: 0 };
  let position: number | null = null;
  let frets: number[] = [];
  let from = '';
  for (const bar of playOrder(chart)) {
    for (const { fingered, note } of (bars[bar]?.notes ?? []).filter(fretted)) {
      if (fingered === null) continue;
      const to = `${bar}:${note.start}`;
      if (position !== null && fingered.position !== position) shifts.set(`${from} ${to}`, bar);
      from = to;
      if (fingered.position !== position) frets = [];
      position = fingered.position;
      frets.push(fingered.fret);
      const span = handSpan(Math.min(...frets), Math.max(...frets), instrument.scaleLength);
      if (span > widest.millimetres) widest = { millimetres: span, bar };
    }
  }
  return { shifts: [...shifts.values()].sort((one, other) => one - other), widest };
}

const WHAT: readonly (readonly [role: keyof LineStudy['functions'], one: string, several: string])[] = [
  ['chord tone', 'chord tone', 'chord tones'],
  ['passing', 'passing note', 'passing notes'],
  ['neighbour', 'neighbour note', 'neighbour notes'],
  ['scale step', 'other scale step', 'other scale steps'],
  ['approach', 'approach note', 'approach notes'],
  ['anticipation', 'anticipation', 'anticipations'],
  ['none', 'note without a chord', 'notes without a chord'],
];

/**
 * What there is to say about any line: its notes by what they do, techniques, silence, range, leaps, syncopation, form,
 * difficulty and load on the hand, each fact computed from the notes. Empty for an unwritten line.
 */
export function studyFacts(
  piece: LinePiece,
  sheet: LineSheet,
  settings: InstrumentSettings,
): readonly StudyFact[] {
  const request = lineRequest(piece, sheet.chart, sheet.key, settings, sheet.noteNames);
  const line = sheet.bars.map(({ notes }) => notes.map(({ note }) => note));
  const study = studyLine(request, line);
  if (study === null) return [];
  const hand = handOf(sheet);
  const numbers = (bars: readonly number[]) =>
    [...new Set(bars)].map((bar) => sheet.bars[bar]?.written.number ?? bar + 1);
  const names = (bars: readonly number[]) => barNames(numbers(bars));
  const all = (bars: readonly number[]) => bars.length === sheet.bars.length;
  const shownIn = (bars: readonly number[]) =>
    all(bars) ? 'In every bar.' : `${counted(bars.length, 'bar')} of ${sheet.bars.length}: ${names(bars)}.`;
  const name = (bar: number) => barName(sheet.bars[bar]?.written.number ?? bar + 1);
  const pitch = (each: LineStudy['lowest']) => formatPitchIn(sheet.noteNames ?? 'letters', each);
  const fact = (title: string, sentence: string, bars: readonly number[] = [], key = false): StudyFact => ({
    name: title,
    sentence,
    bars,
    key,
  });
  const kinds = WHAT.flatMap(([role, one, several]) => {
    const count = study.functions[role] ?? 0;
    return count === 0 ? [] : [`${counted(count, one, several)} (${percent(count / study.notes)})`];
  });
  const told = study.syncopation.filter((strength) => strength !== null);
  const mean = told.reduce((sum, strength) => sum + strength, 0) / Math.max(1, told.length);
  const syncopated = study.syncopation.flatMap((strength, bar) =>
    strength !== null && strength > 0 ? [bar] : [],
  );
  const { level, rhythm, load, leaps } = study;
  return [
    fact('Notes', `${capitalised(listed(kinds))}, ${study.notes} in all.`, [], true),
    ...study.techniques.map(({ technique, bars }) => fact(capitalised(technique), shownIn(bars), bars)),
    fact(
      'Silence',
      `${percent(study.silence)} of the written time is silent${
        study.silentBars.length === 0 ? '' : `; without a note: ${names(study.silentBars)}`
      }.`,
      study.silentBars,
      true,
    ),
    fact(
      'Beat one',
      study.silentOnes.length === 0
        ? 'Sounds in every whole bar that has notes.'
        : `Silent in ${counted(study.silentOnes.length, 'bar that has notes', 'bars that have notes')}: ${names(study.silentOnes)}.`,
      study.silentOnes,
    ),
    fact(
      'Range',
      `From ${pitch(study.lowest)} to ${pitch(study.highest)}, ${counted(study.range, 'half step')}.`,
      [],
      true,
    ),
    fact(
      'Leaps',
      leaps.count === 0
        ? 'None: the line moves by step or stays.'
        : `${counted(leaps.count, 'move')} of more than a step, the widest of ${leaps.widest} half steps.`,
      leaps.bars,
    ),
    fact(
      'Syncopation',
      told.length === 0
        ? 'Not measured: the metre or a triplet has no place in the published measure.'
        : `${mean.toFixed(1)} a bar on average (Longuet-Higgins and Lee, 1984; 0 is a march)${
            syncopated.length === 0 ? '.' : `; syncopated: ${names(syncopated)}.`
          }`,
      syncopated,
    ),
    fact('Form', `${study.form.map(({ letter }) => letter).join(' ')}, ${formUnit(study, name)}.`, [], true),
    fact(
      'Level',
      `${level.level} by its rhythms, notes and frets; the piece is for level ${piece.level}.`,
      [],
      true,
    ),
    fact(
      'Hardest rhythm',
      `Of level ${rhythm.level}, in ${all(rhythm.bars) ? 'every bar' : names(rhythm.bars)}.`,
      rhythm.bars,
    ),
    fact('Speed', `${level.notesPerSecond.toFixed(1)} notes a second in its busiest bar.`),
    fact(
      'Shifts',
      hand.shifts.length === 0
        ? 'None: the hand stays where it is.'
        : `The hand moves ${counted(hand.shifts.length, 'time')}, in ${names(hand.shifts)}.`,
      [...new Set(hand.shifts)],
    ),
    fact(
      'Stretch',
      hand.widest.millimetres === 0
        ? 'None: no two fretted notes lie apart in one position.'
        : `${Math.round(hand.widest.millimetres)} mm at the widest, in ${name(hand.widest.bar)}; ${piece.hand.comfortableSpan} mm is comfortable for this hand.`,
      hand.widest.millimetres === 0 ? [] : [hand.widest.bar],
    ),
    fact(
      'Load',
      `${Math.round(load.notesPerMinute)} notes a minute; ${counted(load.run.notes, 'note')} without a rest at the longest, for ${load.run.seconds.toFixed(1)} seconds.`,
      [],
      true,
    ),
  ];
}

function formUnit({ form }: LineStudy, name: (bar: number) => string): string {
  const size = Math.max(...form.map(({ bars }) => bars.length));
  return size === 1
    ? `bar by bar from ${name(form[0]?.bars[0] ?? 0)}`
    : `phrases of up to ${counted(size, 'bar')}`;
}
