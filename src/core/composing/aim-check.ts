import { barName, capitalised, listed } from '../base';
import {
  type AimTerms,
  type AimWhere,
  aimFor,
  aimsAt,
  aimWords,
  type InstrumentSettings,
  isOwn,
  type LessonAim,
  type LineBar,
  type LinePiece,
  type LineSheet,
  lineRequest,
  sayOf,
  setAim,
} from '../lesson';
import { type AimTerm, aimsMissed, type Technique } from '../line';
import {
  type BrokenAim,
  type Case,
  ideaThatShows,
  nearestAim,
  nearestIdea,
  notesOf,
  numberOf,
} from './aim-repairs';
import type { Repair } from './hand-check';

/** An aim that the line does not keep, with its place. */
export interface AimFinding {
  readonly bar: number | null;
  /** See `Finding.id`. */
  readonly id: string;
  readonly message: string;
  /** Looks for the nearest when it is asked for: an idea that keeps the aim, else the aim as far as it can be kept. */
  readonly repair: () => Repair | null;
}

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
    if (miss.bars.every((each) => isUnwritten(piece.bars[each]))) return [];
    const broken = { ...miss, aim };
    return aim.where.kind === 'bar' ? [inBar(about, broken, bar)] : inPhrase(about, broken);
  });
}

/** Whether a bar is only not written yet: one that a hand emptied, or that is kept, is silent by intent and misses what is asked of it. */
const isUnwritten = (bar: LineBar | undefined): boolean =>
  bar === undefined || (bar.notes.length === 0 && !isOwn(bar));

const TERMS: Readonly<Record<AimTerm, readonly (keyof AimTerms)[]>> = {
  wanted: ['wanted'],
  forbidden: ['forbidden'],
  density: ['density'],
  silence: ['silence'],
  range: ['lowest', 'highest'],
  position: ['position'],
  degrees: ['degrees'],
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
    case 'degrees':
      return aim.degrees === undefined ? {} : { degrees: aim.degrees };
  }
}

const OF_PLACE: Readonly<Record<AimWhere['kind'], string>> = {
  line: 'an aim of the line',
  section: 'an aim of its section',
  bar: 'its aim',
};

/** Whether an aim speaks of silent ones by the wish of its own. */
const asksForSilentOnes = ({ silentOnes }: AimTerms, technique: Technique): boolean =>
  technique === 'beat one silent' && silentOnes !== undefined;

/** Whose aim a bar breaks: the nearest that speaks of it. */
function speakerOf({ piece, sheet }: Case, broken: BrokenAim, bar: number): LessonAim | null {
  const aims = aimsAt(piece, sheet.chart, bar);
  const [technique] = broken.techniques;
  return (
    aims.find((aim) =>
      technique === undefined
        ? TERMS[broken.term].some((term) => aim[term] !== undefined)
        : sayOf(aim, technique) === broken.term || asksForSilentOnes(aim, technique),
    ) ?? null
  );
}

function inBar(about: Case, broken: BrokenAim, bar: number): AimFinding {
  const speaker = speakerOf(about, broken, bar);
  const words = aimWords(brokenPart(broken.aim, broken), about.reading).join(', ');
  return {
    bar,
    id: [speaker?.where.kind ?? 'bar', broken.term, ...broken.techniques].join(' '),
    message: `${capitalised(barName(numberOf(about, bar)))} does not keep ${OF_PLACE[speaker?.where.kind ?? 'bar']}: ${words}. ${broken.nearest}`,
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
  const missing = listed(techniques);
  const { where: place, silentOnes, ...rest } = stored;
  // Some silent ones are wanted by a wish of its own, which goes where they are not to be had.
  const terms =
    silentOnes === undefined || techniques.includes('beat one silent') ? rest : { ...rest, silentOnes };
  const wanted = (terms.wanted ?? []).filter((one) => !techniques.includes(one));
  const numbers = bars.map((bar) => numberOf(about, bar));
  const [from, to] = [Math.min(...numbers), Math.max(...numbers)];
  return [
    {
      bar: bars[0] ?? null,
      id: [where.kind, 'in phrases', ...techniques].join(' '),
      message:
        from === to
          ? `${capitalised(barName(from))} does not show ${missing}, which is to be shown in every phrase of ${name}. ${nearest}`
          : `No bar from ${from} to ${to} shows ${missing}, which is to be shown in every phrase of ${name}. ${nearest}`,
      repair: () =>
        ideaThatShows(about, bars, techniques) ?? {
          label: `Do not ask ${name} for ${missing}`,
          apply: (lesson) => setAim(lesson, piece.id, place, { ...terms, wanted }),
        },
    },
  ];
}
