import { barName, type Fret, fret, listed, midiNumber } from '../base';
import { romanNumeral } from '../fretboard';
import {
  type AimReading,
  type AimTerms,
  aimFor,
  changeLine,
  type InstrumentSettings,
  type Lesson,
  type LessonAim,
  type LineBar,
  type LinePiece,
  type LineSheet,
  lineRequest,
  percent,
  rangeWords,
  takeIdea,
  withAim,
} from '../lesson';
import {
  type Aim,
  type AimMiss,
  aimsMissed,
  DEGREE_STEPS,
  type Idea,
  ideasForBar,
  type LineNotes,
  type Technique,
} from '../line';
import type { Repair } from './hand-check';
import { apartBy } from './ideas';

/** What the repairs of one line need to know. */
export interface Case {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
  readonly settings: InstrumentSettings;
  readonly reading: AimReading;
}

/** An aim of the composer's request that some bars do not keep. */
export type BrokenAim = Omit<AimMiss, 'aim'> & { readonly aim: Aim };

/** The notes of a line, bar by bar. */
export const notesOf = (piece: LinePiece): LineNotes => piece.bars.map(({ notes }) => notes);

/** The number of a bar as written. */
export const numberOf = ({ sheet }: Case, bar: number): number => sheet.chart.bars[bar]?.number ?? bar + 1;

/** An idea for one of some bars that shows techniques; the turn of the phrase is tried first. */
export function ideaThatShows(
  about: Case,
  bars: readonly number[],
  techniques: readonly Technique[],
): Repair | null {
  for (const bar of [...bars].reverse()) {
    const idea = ideaThatKeeps(about, about.piece, bar, techniques);
    if (idea !== null) {
      return {
        label: `Take an idea for ${barName(numberOf(about, bar))} that shows ${listed(techniques)}`,
        apply: (lesson) => takeIdea(lesson, about.piece.id, bar, idea),
      };
    }
  }
  return null;
}

/** Whether a piece keeps every aim in a bar, with other notes there if they are given. */
function keepsAims({ sheet, settings }: Case, piece: LinePiece, bar: number, idea: Idea | null): boolean {
  const request = lineRequest(piece, sheet.chart, sheet.key, settings);
  const notes = notesOf(piece).map((each, index) => (index === bar && idea !== null ? idea.notes : each));
  return aimsMissed(request, notes).every(
    ({ aim, bars }) => request.aims?.[aim]?.where.kind !== 'bar' || !bars.includes(bar),
  );
}

/** The idea most like the bar as it stands that keeps every aim of the bar, and shows some techniques. */
function ideaThatKeeps(
  about: Case,
  piece: LinePiece,
  bar: number,
  shown: readonly Technique[] = [],
): Idea | null {
  const request = lineRequest(piece, about.sheet.chart, about.sheet.key, about.settings);
  const apart = apartBy(request, notesOf(piece), bar);
  const ideas = [...ideasForBar(request, notesOf(piece), bar)].sort(
    (one, other) => apart(one) - apart(other),
  );
  return (
    ideas.find(
      (idea) =>
        shown.every((technique) => idea.analysis.techniques.includes(technique)) &&
        keepsAims(about, piece, bar, idea),
    ) ?? null
  );
}

/** The idea most like the bar that keeps its aims. */
export function nearestIdea(about: Case, bar: number): Repair | null {
  const idea = ideaThatKeeps(about, about.piece, bar);
  return idea === null
    ? null
    : {
        label: `Take an idea for ${barName(numberOf(about, bar))} that keeps it`,
        apply: (lesson) => takeIdea(lesson, about.piece.id, bar, idea),
      };
}

/** A weaker form of an aim in one bar: what its button says, and the piece with it. */
interface Weaker {
  readonly label: string;
  readonly change: (piece: LinePiece) => LinePiece;
}

/** The aim of the bar as far as it can be kept: the first weaker form for which there is an idea. */
export function nearestAim(about: Case, broken: BrokenAim, bar: number): Repair | null {
  const { piece } = about;
  for (const { label, change } of weakerForms(about, broken, bar)) {
    const changed = change(piece);
    const weaken = (lesson: Lesson) => changeLine(lesson, piece.id, change);
    if (keepsAims(about, changed, bar, null)) return { label, apply: weaken };
    const idea = ideaThatKeeps(about, changed, bar);
    if (idea !== null) return { label, apply: (lesson) => takeIdea(weaken(lesson), piece.id, bar, idea) };
  }
  return null;
}

/** Shares of silence that can be heard apart in a bar of eighths. */
const SILENCES = [0.75, 0.625, 0.5, 0.375, 0.25, 0.125];
/** How far a range or a position is widened, in half steps and frets. */
const FARTHEST = { range: 12, position: 5 } as const;

const upTo = (most: number): readonly number[] => Array.from({ length: most }, (_, index) => index + 1);

function weakerForms(about: Case, { aim, term, techniques }: BrokenAim, bar: number): readonly Weaker[] {
  const number = numberOf(about, bar);
  const id = about.piece.bars[bar]?.id ?? '';
  const forBar = (label: string, change: (own: AimTerms) => AimTerms): Weaker => ({
    label,
    change: (piece) => {
      const { where = { kind: 'bar', id }, ...own }: Partial<LessonAim> =
        aimFor(piece.aims, { kind: 'bar', id }) ?? {};
      return withAim(piece, where, change(own));
    },
  });
  const without = (from: readonly Technique[] = []) => from.filter((one) => !techniques.includes(one));
  switch (term) {
    case 'wanted':
    case 'forbidden': {
      const named = listed(techniques);
      const label =
        term === 'wanted'
          ? `Do not ask ${barName(number)} for ${named}`
          : `Let ${barName(number)} use ${named}`;
      return [
        forBar(label, (own) => ({
          ...own,
          wanted: without(own.wanted),
          forbidden: without(own.forbidden),
          allowed: [...without(own.allowed), ...techniques],
        })),
      ];
    }
    case 'density':
      return [
        forBar(`Ask for no number of notes in ${barName(number)}`, (own) => ({ ...own, density: 'any' })),
      ];
    case 'degrees':
      return [
        forBar(`Let ${barName(number)} use every degree`, (own) => ({ ...own, degrees: DEGREE_STEPS })),
      ];
    case 'silence':
      return [
        ...SILENCES.filter((share) => share < (aim.silence ?? 0)).map((share) =>
          forBar(`Ask ${barName(number)} for ${percent(share)} of silence`, (own) => ({
            ...own,
            silence: share,
          })),
        ),
        forBar(`Ask for no silence in ${barName(number)}`, (own) => ({ ...own, silence: 0 })),
      ];
    case 'range':
      return upTo(FARTHEST.range).map((by) => {
        const lowest = Math.max(0, (aim.lowest ?? 0) - by);
        const highest = Math.min(127, (aim.highest ?? 127) + by);
        const words = rangeWords(
          {
            ...(aim.lowest === undefined ? {} : { lowest: midiNumber(lowest) }),
            ...(aim.highest === undefined ? {} : { highest: midiNumber(highest) }),
          },
          about.reading,
        );
        return forBar(`Let ${barName(number)} reach ${words ?? ''}`, (own) => ({
          ...own,
          lowest: midiNumber(lowest),
          highest: midiNumber(highest),
        }));
      });
    case 'position':
      return positionsNear(aim.position ?? 1).map((position) => {
        const label =
          position === 0
            ? `Leave the hand free in ${barName(number)}`
            : `Move the hand to position ${romanNumeral(position)} in ${barName(number)}`;
        return { label, change: (piece) => withPosition(piece, bar, fret(position)) };
      });
  }
}

/** Other positions, the nearest first; at last none. */
const positionsNear = (position: number): readonly number[] => [
  ...upTo(FARTHEST.position)
    .flatMap((by) => [position - by, position + by])
    .filter((other) => other >= 1 && other <= 24),
  0,
];

/** Another position for a bar, in the place where it was asked for: kept in the bar, or as the bar's aim. */
function withPosition(piece: LinePiece, bar: number, position: Fret): LinePiece {
  const stored = piece.bars[bar];
  if (stored === undefined) return piece;
  if (stored.position === undefined) {
    const { where, ...own }: Partial<LessonAim> = aimFor(piece.aims, { kind: 'bar', id: stored.id }) ?? {};
    return withAim(piece, where ?? { kind: 'bar', id: stored.id }, { ...own, position });
  }
  const { position: _, ...free } = stored;
  const changed: LineBar = position === 0 ? free : { ...free, position };
  return { ...piece, bars: piece.bars.map((each, index) => (index === bar ? changed : each)) };
}
