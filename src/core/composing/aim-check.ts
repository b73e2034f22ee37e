import { type Fret, fret, midiNumber } from '../base';
import { romanNumeral } from '../fretboard';
import {
  type AimReading,
  type AimTerms,
  type AimWhere,
  aimFor,
  aimsAt,
  aimWords,
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
  sayOf,
  setAim,
  takeIdea,
  withAim,
} from '../lesson';
import {
  type Aim,
  type AimMiss,
  type AimTerm,
  aimsMissed,
  type Idea,
  ideasForBar,
  type LineNotes,
  type Technique,
} from '../line';
import type { Repair } from './hand-check';
import { likeness } from './ideas';

/** An aim that the line does not keep, with its place. */
export interface AimFinding {
  readonly bar: number | null;
  readonly message: string;
  /** Looks for the nearest when it is asked for: an idea that keeps the aim, else the aim as far as it can be kept. */
  readonly repair: () => Repair | null;
}

/** What the repairs of one line need to know. */
interface Case {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
  readonly settings: InstrumentSettings;
  readonly reading: AimReading;
}

const notesOf = (piece: LinePiece): LineNotes => piece.bars.map(({ notes }) => notes);

/** The aims of a piece that its line does not keep, whoever wrote it, in the order of the bars. */
export function checkAims(
  piece: LinePiece,
  sheet: LineSheet,
  settings: InstrumentSettings,
): readonly AimFinding[] {
  const request = lineRequest(piece, sheet.chart, sheet.key, settings);
  const reading = { key: sheet.key, naming: sheet.noteNames ?? 'letters' };
  const about = { piece, sheet, settings, reading };
  const written = notesOf(piece);
  return aimsMissed(request, written).flatMap((miss): readonly AimFinding[] => {
    const aim = request.aims?.[miss.aim];
    const [bar] = miss.bars;
    if (aim === undefined || bar === undefined) return [];
    if (miss.bars.every((each) => (written[each] ?? []).length === 0)) return [];
    const broken = { ...miss, aim };
    return aim.where.kind === 'bar' ? [inBar(about, broken, bar)] : inPhrase(about, broken);
  });
}

/** An aim of the composer's request that some bars do not keep. */
type BrokenAim = Omit<AimMiss, 'aim'> & { readonly aim: Aim };

const TERMS: Readonly<Record<AimTerm, readonly (keyof AimTerms)[]>> = {
  wanted: ['wanted'],
  forbidden: ['forbidden'],
  density: ['density'],
  silence: ['silence'],
  range: ['lowest', 'highest'],
  position: ['position'],
};

/** The part of an aim that is broken: of its techniques only those. */
function brokenPart(aim: AimTerms, { term, techniques }: BrokenAim): AimTerms {
  switch (term) {
    case 'wanted':
      return { wanted: techniques };
    case 'forbidden':
      return { forbidden: techniques };
    case 'density':
      return aim.density === undefined ? {} : { density: aim.density };
    case 'silence':
      return aim.silence === undefined ? {} : { silence: aim.silence };
    case 'range':
      return {
        ...(aim.lowest === undefined ? {} : { lowest: aim.lowest }),
        ...(aim.highest === undefined ? {} : { highest: aim.highest }),
      };
    case 'position':
      return aim.position === undefined ? {} : { position: aim.position };
  }
}

const OF_PLACE: Readonly<Record<AimWhere['kind'], string>> = {
  line: 'an aim of the line',
  section: 'an aim of its section',
  bar: 'its aim',
};

const numberOf = ({ sheet }: Case, bar: number): number => sheet.chart.bars[bar]?.number ?? bar + 1;

/** Whose aim a bar breaks: the nearest that speaks of it. */
function speakerOf({ piece, sheet }: Case, broken: BrokenAim, bar: number): LessonAim | null {
  const aims = aimsAt(piece, sheet.chart, bar);
  const [technique] = broken.techniques;
  return (
    aims.find((aim) =>
      technique === undefined
        ? TERMS[broken.term].some((term) => aim[term] !== undefined)
        : sayOf(aim, technique) === broken.term,
    ) ?? null
  );
}

function inBar(about: Case, broken: BrokenAim, bar: number): AimFinding {
  const speaker = speakerOf(about, broken, bar);
  const words = aimWords(brokenPart(broken.aim, broken), about.reading).join(', ');
  return {
    bar,
    message: `Bar ${numberOf(about, bar)} does not keep ${OF_PLACE[speaker?.where.kind ?? 'bar']}: ${words}. ${broken.nearest}`,
    repair: () => nearestIdea(about, bar) ?? nearestAim(about, broken, bar),
  };
}

/** A technique that a line or section wants in every phrase, in a phrase that does not show it. */
function inPhrase(about: Case, { aim, bars, techniques, nearest }: BrokenAim): readonly AimFinding[] {
  const { piece, sheet } = about;
  const { where } = aim;
  const sectionId = where.kind === 'section' ? piece.sections[where.section]?.id : undefined;
  const stored = aimFor(
    piece.aims,
    sectionId === undefined ? { kind: 'line' } : { kind: 'section', id: sectionId },
  );
  if (stored === null) return [];
  const name =
    where.kind === 'section' ? (sheet.chart.sections[where.section]?.name ?? 'the section') : 'the line';
  const missing = techniques.join(' and ');
  const { where: place, ...terms } = stored;
  const wanted = (terms.wanted ?? []).filter((one) => !techniques.includes(one));
  const numbers = bars.map((bar) => numberOf(about, bar));
  const [from, to] = [Math.min(...numbers), Math.max(...numbers)];
  return [
    {
      bar: bars[0] ?? null,
      message:
        from === to
          ? `Bar ${from} does not show ${missing}, which ${name} wants in every phrase. ${nearest}`
          : `No bar from ${from} to ${to} shows ${missing}, which ${name} wants in every phrase. ${nearest}`,
      repair: () =>
        ideaThatShows(about, bars, techniques) ?? {
          label: `Do not ask ${name} for ${missing}`,
          apply: (lesson) => setAim(lesson, piece.id, place, { ...terms, wanted }),
        },
    },
  ];
}

/** An idea for one of some bars that shows techniques; the turn of the phrase is tried first. */
function ideaThatShows(
  about: Case,
  bars: readonly number[],
  techniques: readonly Technique[],
): Repair | null {
  for (const bar of [...bars].reverse()) {
    const idea = ideaThatKeeps(about, about.piece, bar, techniques);
    if (idea !== null) {
      return {
        label: `Take an idea for bar ${numberOf(about, bar)} that shows ${techniques.join(' and ')}`,
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
  const nearness = likeness(piece.bars[bar]?.notes ?? []);
  const ideas = [...ideasForBar(request, notesOf(piece), bar)].sort(
    (one, other) => nearness(other) - nearness(one),
  );
  return (
    ideas.find(
      (idea) =>
        shown.every((technique) => idea.analysis.techniques.includes(technique)) &&
        keepsAims(about, piece, bar, idea),
    ) ?? null
  );
}

function nearestIdea(about: Case, bar: number): Repair | null {
  const idea = ideaThatKeeps(about, about.piece, bar);
  return idea === null
    ? null
    : {
        label: `Take an idea for bar ${numberOf(about, bar)} that keeps it`,
        apply: (lesson) => takeIdea(lesson, about.piece.id, bar, idea),
      };
}

/** A weaker form of an aim in one bar: what its button says, and the piece with it. */
interface Weaker {
  readonly label: string;
  readonly change: (piece: LinePiece) => LinePiece;
}

/** The aim of the bar as far as it can be kept: the first weaker form for which there is an idea. */
function nearestAim(about: Case, broken: BrokenAim, bar: number): Repair | null {
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
      const named = techniques.join(' and ');
      const label =
        term === 'wanted' ? `Do not ask bar ${number} for ${named}` : `Allow ${named} in bar ${number}`;
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
      return [forBar(`Ask for no number of notes in bar ${number}`, (own) => ({ ...own, density: 'any' }))];
    case 'silence':
      return [
        ...SILENCES.filter((share) => share < (aim.silence ?? 0)).map((share) =>
          forBar(`Ask bar ${number} for ${percent(share)} of silence`, (own) => ({ ...own, silence: share })),
        ),
        forBar(`Ask for no silence in bar ${number}`, (own) => ({ ...own, silence: 0 })),
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
        return forBar(`Let bar ${number} reach ${words ?? ''}`, (own) => ({
          ...own,
          lowest: midiNumber(lowest),
          highest: midiNumber(highest),
        }));
      });
    case 'position':
      return positionsNear(aim.position ?? 1).map((position) => {
        const label =
          position === 0
            ? `Leave the hand free in bar ${number}`
            : `Move the hand to position ${romanNumeral(position)} in bar ${number}`;
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
