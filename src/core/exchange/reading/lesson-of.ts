import {
  type Bpm,
  beatTicks,
  bpm,
  counted,
  countedInWords,
  failure,
  fret,
  listed,
  metreName,
  midiOf,
  type Result,
  success,
  TICKS_PER_QUARTER,
  withoutMark,
} from '../../base';
import { barSignature, type Chart, chartMetreNames, playOrder } from '../../chart';
import { type Feel, feelById, feelTempo, isSwung, swingRatio } from '../../feel';
import { type Instrument, rangeOf } from '../../fretboard';
import {
  describeLessonProblem,
  freshIds,
  isHeld,
  LESSON_LIMITS,
  type Lesson,
  type LineBar,
  type LinePiece,
  newLesson,
  newLinePiece,
  readLesson,
  setChartText,
  TEMPO_RANGE,
} from '../../lesson';
import { formatPitch } from '../../theory';
import { chartOf, pickupOf, type ReadableChart } from './chart-of';
import { dynamicsOf } from './dynamics-of';
import { type FileFacts, factsOf, keyOf, readText } from './facts';
import type { FoundScore } from './found';
import { atItsLevel } from './measured';
import { type MetrePlan, metreTicks, planMetres } from './metres';
import { notesOf } from './notes-of';
import { instrumentFor, likeliestOctaves, lowered, octaveChoices } from './octaves';
import { Remarks } from './remarks';
import type { Wishes } from './wishes';

/** Notes that are read of a file: many times what a lesson has, and as many as a page draws without standing still. */
const MOST_NOTES = 10_000;
const LONGEST_TITLE = 200;
const LONGEST_NOTES = 2000;
/** The last level sets no limit of its own to the neck. */
const FREE_LEVEL = 5;

export interface LessonFound {
  readonly lesson: Lesson;
  /** What was read, and what was not, for the teacher. */
  readonly sentences: readonly string[];
  readonly facts: FileFacts;
}

type Found = Result<LessonFound, { readonly message: string }>;

/** As many of the bars from the beginning as hold no more notes than are read. */
function withinReach(score: FoundScore, remarks: Remarks): FoundScore {
  let notes = 0;
  const end = score.bars.findIndex((bar) => {
    notes += bar.notes.length;
    return notes > MOST_NOTES;
  });
  if (end < 0) return score;
  remarks.say(
    `At most ${MOST_NOTES.toLocaleString('en')} notes are read: the bars from bar ${end + 1} of the file on are left out.`,
  );
  return { ...score, bars: score.bars.slice(0, end) };
}

/** The tempo in the beats of the metre, within what the playing sentence offers. */
function tempoOf(found: FoundScore, chart: Chart, factor: number, remarks: Remarks): Bpm | null {
  if (found.tempo === null) return null;
  const said = (found.tempo * factor * TICKS_PER_QUARTER) / beatTicks(chart.metre);
  const tempo = Math.min(TEMPO_RANGE.most, Math.max(TEMPO_RANGE.least, Math.round(said * 2) / 2));
  if (Math.abs(tempo - said) > 0.3) {
    remarks.say(
      `The tempo in the file, ${Math.round(said)}, is beyond what can be played here; it is set to ${tempo}.`,
    );
  }
  return bpm(tempo);
}

/** An upbeat of a length that a chart cannot say becomes a whole bar with silence before it. */
function withWholeUpbeat(found: FoundScore, plan: MetrePlan, remarks: Remarks): FoundScore {
  const [first, second] = found.bars;
  if (!first?.pickup || second === undefined || pickupOf(found.bars, plan) !== null) return found;
  const later = Math.max(0, metreTicks(second.metre) - first.length);
  remarks.inBar('The upbeat is written as a whole bar that begins with silence', 0);
  const whole = {
    ...first,
    pickup: false,
    metre: second.metre,
    length: first.length + later,
    chords: first.chords.map((chord) => ({ ...chord, at: chord.at + later })),
    notes: first.notes.map((note) => ({ ...note, start: note.start + later })),
  };
  return { ...found, bars: [whole, ...found.bars.slice(1)] };
}

/** Whether a file and the feel chosen for it swing their eighths alike, in a sentence where they do not. */
function swingRemark(swing: number | null, feel: Feel, tempo: Bpm): readonly string[] {
  if (swing === null) return [];
  const swung = isSwung(swing);
  if (isSwung(swingRatio(feel, tempo)) === swung) return [];
  return [
    swung
      ? `The file swings its eighths; ${feel.name} plays them straight.`
      : `The file plays its eighths straight; ${feel.name} swings them.`,
  ];
}

/** A tie holds only where a bar that is played next goes on with the same note. */
function tiesThatHold(bars: readonly LineBar[], chart: Chart): readonly LineBar[] {
  const order = playOrder(chart);
  const takenUp = new Set<number>();
  order.forEach((bar, place) => {
    const last = bars[bar]?.notes.at(-1);
    const first = bars[order[place + 1] ?? -1]?.notes[0];
    if (last && first?.start === 0 && midiOf(first.pitch) === midiOf(last.pitch)) takenUp.add(bar);
  });
  return bars.map((bar, index) => {
    const last = bar.notes.at(-1);
    if (last?.tiedOn !== true) return bar;
    // A sign that lets a note ring is a tie where the note goes on.
    if (takenUp.has(index))
      return { ...bar, notes: [...bar.notes.slice(0, -1), withoutMark(last, 'let ring')] };
    return { ...bar, notes: bar.notes.map(({ tiedOn: _, ...note }) => note) };
  });
}

function lineBars(
  found: FoundScore,
  plan: MetrePlan,
  chart: Chart,
  instrument: Instrument,
  remarks: Remarks,
): readonly LineBar[] {
  const fresh = freshIds({ pieces: [newLinePiece('piece-1', '')] });
  const dynamics = dynamicsOf(
    found.bars,
    chart.bars.map(({ metre }) => metre),
    plan.factor,
  );
  const bars = chart.bars.map((written, index): LineBar => {
    const bar = found.bars[index];
    const signs = dynamics[index] ?? [];
    const request = {
      notes: bar?.notes ?? [],
      bar: index,
      metre: written.metre,
      factor: plan.factor,
      instrument,
    };
    const notes = notesOf(request, remarks);
    return {
      id: fresh('bar'),
      harmony: barSignature(written),
      origin: 'hand',
      kept: false,
      notes,
      ...(signs.length === 0 ? {} : { dynamics: signs }),
      ...(bar?.words === undefined ? {} : { words: bar.words }),
    };
  });
  return tiesThatHold(bars, chart);
}

function sayWhatIsOffTheNeck(bars: readonly LineBar[], instrument: Instrument, remarks: Remarks): void {
  const { lowest, highest } = rangeOf(instrument);
  const off = (beyond: (midi: number) => boolean, where: string): void => {
    const found = bars.flatMap(({ notes }, bar) =>
      notes.flatMap(({ pitch }) => (beyond(midiOf(pitch)) ? [{ pitch, bar }] : [])),
    );
    const [first] = found;
    if (first === undefined) return;
    const what = `${counted(found.length, 'note')} ${found.length === 1 ? 'lies' : 'lie'} ${where}`;
    remarks.inBar(
      `${what} and cannot be fingered in this tuning: the first is ${formatPitch(first.pitch)}`,
      first.bar,
    );
  };
  off((midi) => midi < lowest, 'below the lowest string');
  off((midi) => midi > highest, 'above the last fret');
}

function sayShortBars(found: FoundScore, remarks: Remarks): void {
  found.bars.forEach(({ pickup, length, metre }, index) => {
    const short = !pickup && length > 0 && length < metreTicks(metre) - 1;
    if (short && index < found.bars.length - 1) {
      remarks.inBar('A bar that is shorter than its metre has silence at its end', index);
    }
  });
}

/** The fret up to which the hand may go: the twelfth, or further where the line needs it. */
function highestFretOf(bars: readonly LineBar[], instrument: Instrument): number {
  const { highest } = rangeOf(instrument, 12);
  const above = bars.some(({ notes }) =>
    notes.some(({ pitch, pins }) => (pins?.fret ?? 0) > 12 || midiOf(pitch) > highest),
  );
  return above ? instrument.frets : 12;
}

const cut = (text: string, most: number): string => [...text.trim()].slice(0, most).join('');

/** The notes of the file where they are to be written, and what is said of it. */
function inOctave(
  score: FoundScore,
  wishes: Wishes,
  remarks: Remarks,
): { found: FoundScore; octaves: number } {
  const known = octaveChoices(score).some(({ octaves }) => octaves === wishes.octaves);
  const octaves = (known ? wishes.octaves : null) ?? likeliestOctaves(score);
  const found = lowered(score, octaves);
  if (octaves > 0 && wishes.take === 'line') {
    remarks.say(`The notes are written ${countedInWords(octaves, 'octave')} lower than in the file.`);
    if (score.bars.some(({ notes }) => notes.some(({ pins }) => pins.fret !== undefined))) {
      remarks.say('Strings and frets of the file are left out: they belong to the other octave.');
    }
  }
  return { found, octaves };
}

/** The lesson with the line of the file, for whatever hand can play it. */
function withLine(
  lesson: Lesson,
  piece: LinePiece,
  bars: readonly LineBar[],
  instrument: Instrument,
): Lesson {
  const hand = { ...piece.hand, highestFret: fret(highestFretOf(bars, instrument)) };
  return { ...lesson, instrument, pieces: [{ ...piece, level: FREE_LEVEL, hand, bars }] };
}

/** What a lesson is made of, once it is known how. */
interface Plan {
  readonly found: FoundScore;
  readonly title: string;
  readonly feel: Feel;
  readonly tempo: Bpm;
  readonly chart: ReadableChart;
  /** Null where only the chords are taken. */
  readonly line: { readonly bars: readonly LineBar[]; readonly instrument: Instrument } | null;
}

function madeOf({ found, title, feel, tempo, chart, line }: Plan): Lesson {
  const lesson = { ...newLesson('read', title), notes: cut(found.credits.join('\n'), LONGEST_NOTES) };
  const piece: LinePiece = {
    ...newLinePiece('piece-1', cut(found.name ?? 'Line', LONGEST_TITLE) || 'Line'),
    key: keyOf(found),
    metre: chart.metre,
    tempo,
    feel: feel.id,
  };
  if (line === null) return setChartText({ ...lesson, pieces: [piece] }, piece.id, chart.text);
  return withLine(lesson, { ...piece, chartText: chart.text }, line.bars, line.instrument);
}

/** What composing would do to what was read: the bars of a line, or null where only chords are taken. */
function composingRemark(bars: readonly LineBar[] | null): string {
  if (bars === null) return 'Compose line writes a line over these chords.';
  return bars.some(isHeld)
    ? 'Compose line leaves the bars as they are whose strings, frets or fingers the file gives; of the others, keep those that are to stay.'
    : 'Compose line would write another line in place of this one: keep the bars that are to stay.';
}

/**
 * Makes a lesson of what was found in a file: its chart through the house's own printing, its line by the bars of
 * that chart, or the chart alone. The one validator has the last word.
 * @param fallbackTitle for a file without a title
 */
export function lessonOf(whole: FoundScore, fallbackTitle: string, wishes: Wishes, remarks: Remarks): Found {
  const score = withinReach(whole, remarks);
  if (score.bars.length === 0)
    return failure({ message: 'There is no bar in this file. Nothing was changed.' });
  const plan = planMetres(score.bars, remarks);
  if (plan === null) {
    const begins = score.bars[0]?.metre ?? { count: 0, unit: 0 };
    return failure({
      message: `Most of this file is in a metre that a lesson cannot have (it begins in ${metreName(begins)}; a lesson can be in ${listed(chartMetreNames())}). Nothing was changed.`,
    });
  }
  const asLine = wishes.take === 'line';
  const aboutNotes = asLine ? remarks : new Remarks();
  const placed = inOctave(score, wishes, remarks);
  const found = withWholeUpbeat(placed.found, plan, remarks);
  const readable = chartOf(found.bars, plan, remarks);
  if (readable === null || readable.text.length > LESSON_LIMITS.text) {
    return failure({
      message: 'The chart of this file is longer than a lesson can hold. Nothing was changed.',
    });
  }
  const instrument = instrumentFor(found);
  sayShortBars(found, remarks);
  const bars = lineBars(found, plan, readable.chart, instrument, aboutNotes);
  sayWhatIsOffTheNeck(bars, instrument, aboutNotes);
  const told = tempoOf(found, readable.chart, plan.factor, remarks);
  const asked = wishes.feel ?? found.feel;
  const known = factsOf(score, placed.octaves, readable);
  const feel = feelById(asked ?? known.feels[0] ?? 'early-ska');
  const tempo = told ?? feelTempo(feel, readable.metre).usual;
  const title = cut(found.title ?? fallbackTitle, LONGEST_TITLE) || 'New lesson';
  const line = asLine ? { bars, instrument } : null;
  const made = atItsLevel(madeOf({ found, title, feel, tempo, chart: readable, line }));
  const checked = readLesson(JSON.parse(JSON.stringify(made.lesson)));
  if (!checked.ok) return failure({ message: describeLessonProblem(checked.problem) });
  const facts: FileFacts = { ...known, title, tempo: told, feel: asked };
  return success({
    lesson: checked.value,
    facts,
    sentences: [
      `Read from the file: ${readText(facts, asLine)}.`,
      ...(asLine ? [] : ['Only the chords are taken; the notes stay in the file.']),
      ...(told === null && asked !== null ? [`The file has no tempo; ${tempo} stands there.`] : []),
      ...(asked === null ? [] : swingRemark(found.swing, feel, tempo)),
      ...made.sentences,
      ...remarks.sentences(pickupOf(found.bars, plan) === null ? 1 : 0),
      composingRemark(asLine ? bars : null),
    ],
  });
}
