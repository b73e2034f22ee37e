import { barName, barRange, capitalised, counted, listed } from '../base';
import { isOff, type Summary } from './summary';
import type { BarReport, ListeningReport, NoteReport, Pace } from './types';

/** What the words need to know of the piece. */
export interface Naming {
  /** The number of a written bar, by its index. */
  readonly numberOf: (bar: number) => number;
  /** Beats a minute as the piece tells them. */
  readonly tell: (tempo: number) => number;
}

const STEPS: Readonly<Record<number, string>> = { 1: 'a half step', 2: 'a whole step' };

const stepsWords = (halfSteps: number): string =>
  `${STEPS[Math.abs(halfSteps)] ?? `${Math.abs(halfSteps)} half steps`} ${halfSteps < 0 ? 'below' : 'above'} the written one`;

/** `35 ms late, about 1/20 of a beat`; seconds and beats, early where negative. */
function lateWords(late: number, lateBeats: number): string {
  const ms = Math.round(Math.abs(late) * 1000);
  if (ms < 1) return 'in its place';
  const part = Math.abs(lateBeats) < 0.01 ? 0 : Math.round(1 / Math.abs(lateBeats));
  const share = part === 0 ? '' : part === 1 ? ', about a beat' : `, about 1/${part} of a beat`;
  return `${ms} ms ${late < 0 ? 'early' : 'late'}${share}`;
}

/** What is said of a note; null where it was as written. */
function noteWords(report: NoteReport, place: number): string | null {
  const { verdict, late, lateBeats, held } = report;
  const name = `note ${place}`;
  if (verdict.kind === 'left out') return `${name} was left out`;
  if (verdict.kind === 'not heard') return `I could not hear ${name}`;
  const said = [
    ...(verdict.kind === 'other pitch' ? [`another pitch, ${stepsWords(verdict.halfSteps)}`] : []),
    ...(isOff(report) && late !== null && lateBeats !== null ? [lateWords(late, lateBeats)] : []),
    ...(held === 'short' ? ['shorter than written'] : held === 'long' ? ['held longer than written'] : []),
  ];
  return said.length === 0 ? null : `${name} was ${listed(said)}`;
}

/** `Bar 3: note 2 was left out; the rest was filled.`, or that all of it was as written. */
export function barWords({ bar, notes, extras, rests }: BarReport, { numberOf }: Naming): string {
  const filled = rests.filter(({ verdict }) => verdict === 'filled').length;
  const unknown = rests.filter(({ verdict }) => verdict === 'not heard').length;
  const said = [
    ...notes.flatMap((note, index) => noteWords(note, index + 1) ?? []),
    ...(extras.length === 0 ? [] : [`${counted(extras.length, 'note')} more than written`]),
    ...(filled === 0 ? [] : [filled === 1 ? 'a rest was filled' : `${filled} rests were filled`]),
    ...(unknown === 0 ? [] : ['I could not hear whether its rest was kept']),
  ];
  const name = capitalised(barName(numberOf(bar)));
  return `${name}: ${said.length === 0 ? 'as written' : said.join('; ')}.`;
}

const PACES: Readonly<Record<Pace, string>> = {
  steady: 'steady',
  rushing: 'it went forward (rushing)',
  dragging: 'it held back (dragging)',
};

/** `Round 2, 84 bpm: 11 of 12 notes and 3 of 3 rests as written; steady.` */
export const roundWords = (
  { round, tempo, pace }: ListeningReport[number],
  { notes, right, rests, kept }: Pick<Summary, 'notes' | 'right' | 'rests' | 'kept'>,
  { tell }: Naming,
): string =>
  [
    `Round ${round + 1}, ${tell(tempo)} bpm: ${right} of ${counted(notes, 'note')}`,
    ...(rests === 0 ? [] : [` and ${kept} of ${counted(rests, 'rest')}`]),
    ` as written${pace === null ? '' : `; ${PACES[pace]}`}.`,
  ].join('');

function rightWords(notes: number, right: number): string {
  if (right === notes) return `All ${counted(notes, 'note')} I heard were the written ones.`;
  if (right === 0)
    return `I heard none of the ${counted(notes, 'written note')}. If you played, look at the level and at the input.`;
  return `${right} of ${counted(notes, 'note')} were the written ones.`;
}

/** What is said of a hearing as a whole: what went well first, the rests before anything else that did not. */
export function summaryWords(
  { notes, right, rests, kept, unknown, extras, reached, practise, rounds }: Summary,
  { numberOf, tell }: Naming,
): readonly string[] {
  if (notes + rests === 0)
    return ['I could not hear the bass, so nothing is said about it. Look at the level, and play again.'];
  return [
    `I listened to ${counted(rounds, 'round')}. ${rightWords(notes, right)}`,
    ...(rests === 0
      ? []
      : [
          kept === rests
            ? `${rests === 1 ? 'The rest was' : `All ${rests} rests were`} kept: that is what this line lives on.`
            : `${kept} of ${counted(rests, 'rest')} were kept. Let the string fall silent where the others are filled: the silence belongs to the line.`,
        ]),
    ...(extras === 0 ? [] : [`${counted(extras, 'note')} more than written.`]),
    ...(unknown === 0
      ? []
      : [`${counted(unknown, 'note or rest', 'notes and rests')} I could not hear; they are not judged.`]),
    ...(reached === null ? [] : [`At ${tell(reached)} bpm a whole round was as written, or nearly so.`]),
    practise === null
      ? 'No bar asks to be practised by itself.'
      : `${capitalised(barRange(numberOf(practise.first), numberOf(practise.last)))} ${practise.first === practise.last ? 'is' : 'are'} worth a loop by ${practise.first === practise.last ? 'itself' : 'themselves'}, from ${tell(practise.tempo)} bpm.`,
  ];
}
