import type { Chart } from '../chart';
import { type Aim, TECHNIQUES, type Technique } from '../line';
import { type Say, sayOf } from './aims';
import type { AimTerms, LessonAim, LineBar, LinePiece, SilentOnes } from './types';

/** The aims of a piece by where they hold in its chart. */
interface PlacedAims {
  readonly of: Pick<LinePiece, 'aims' | 'sections'>;
  readonly line: readonly LessonAim[];
  /** By the index of a section: those for it, and for the section that it repeats by its name. */
  readonly sections: ReadonlyMap<number, readonly LessonAim[]>;
  /** By the id of a bar. */
  readonly bars: ReadonlyMap<string, readonly LessonAim[]>;
  /** The sections that an aim for one holds in: itself, and wherever it is used again; none while it is away. */
  readonly uses: (id: string) => readonly number[];
}

/** Charts and pieces never change in place, so what was placed once stays so. */
const placed = new WeakMap<Chart, PlacedAims>();

function add<Place>(places: Map<Place, LessonAim[]>, place: Place, aim: LessonAim): void {
  const there = places.get(place);
  if (there === undefined) places.set(place, [aim]);
  else there.push(aim);
}

/** Every aim is placed once, so that many aims in many sections cost no more than each by itself. */
function placedAims(piece: LinePiece, chart: Chart): PlacedAims {
  const known = placed.get(chart);
  if (known !== undefined && known.of.aims === piece.aims && known.of.sections === piece.sections)
    return known;
  const own = new Map(piece.sections.map(({ id }, index) => [id, index]));
  const again = new Map<string | null, number[]>();
  chart.sections.forEach((section, index) => {
    if (section.again) again.set(section.name, [...(again.get(section.name) ?? []), index]);
  });
  const uses = (id: string): readonly number[] => {
    const index = own.get(id) ?? -1;
    const written = chart.sections[index];
    if (written === undefined) return [];
    const others = (again.get(written.name) ?? []).filter((other) => other !== index);
    return [index, ...others].sort((one, other) => one - other);
  };
  const line: LessonAim[] = [];
  const sections = new Map<number, LessonAim[]>();
  const bars = new Map<string, LessonAim[]>();
  for (const aim of piece.aims) {
    if (aim.where.kind === 'line') line.push(aim);
    else if (aim.where.kind === 'bar') add(bars, aim.where.id, aim);
    else for (const section of uses(aim.where.id)) add(sections, section, aim);
  }
  // Not the whole piece: its line, and all that is derived from it, would stand as long as the chart.
  const of = { aims: piece.aims, sections: piece.sections };
  const found: PlacedAims = { of, line, sections, bars, uses };
  placed.set(chart, found);
  return found;
}

/** Where aims for a bar stand, the nearest first: its own, its section's, the line's. */
export function aimsAt(piece: LinePiece, chart: Chart, bar: number): readonly LessonAim[] {
  const { line, sections, bars } = placedAims(piece, chart);
  return [
    ...(bars.get(piece.bars[bar]?.id ?? '') ?? []),
    ...(sections.get(chart.bars[bar]?.section ?? 0) ?? []),
    ...line,
  ];
}

const SILENT_ONE: Technique = 'beat one silent';

/** What a wish for silent ones says of the bar that is so many bars behind the beginning of its section. */
function sayOfSilence(wish: SilentOnes, place: number): Say {
  if (wish === 'never') return 'forbidden';
  if (wish === 'some bars') return 'allowed';
  const most = wish === 'most';
  return place % (most ? 4 : 2) > 0 ? 'wanted' : most ? 'allowed' : 'forbidden';
}

/** How many bars lie between a bar and the beginning of its section; a pickup is not counted. */
function placeInSection(chart: Chart, bar: number): number {
  const section = chart.bars[bar]?.section;
  const first = chart.bars.findIndex((each) => each.section === section && !each.pickup);
  return Math.max(0, bar - first);
}

/**
 * The aim that a bar has to keep, from all that hold there; what a line or section wants is shown in one of its bars. Of the
 * silent one the nearest place speaks, by the technique or by the wish of its own.
 */
function aimOfBar(aims: readonly LessonAim[], chart: Chart, bar: number): Aim {
  const silent = aims.find((aim) => aim.silentOnes !== undefined || sayOf(aim, SILENT_ONE) !== null);
  const wish = silent !== undefined && sayOf(silent, SILENT_ONE) === null ? silent.silentOnes : undefined;
  const nearest = <Term extends keyof AimTerms>(term: Term): AimTerms[Term] | undefined =>
    aims.find((aim) => aim[term] !== undefined)?.[term];
  const saying = (say: Say) =>
    TECHNIQUES.filter((technique) => {
      if (technique === SILENT_ONE && wish !== undefined)
        return sayOfSilence(wish, placeInSection(chart, bar)) === say;
      const speaker = aims.find((aim) => sayOf(aim, technique) !== null);
      return (
        speaker !== undefined &&
        sayOf(speaker, technique) === say &&
        (say !== 'wanted' || speaker.where.kind === 'bar')
      );
    });
  const density = nearest('density');
  const silence = nearest('silence');
  const position = nearest('position');
  const lowest = nearest('lowest');
  const highest = nearest('highest');
  const degrees = nearest('degrees');
  return {
    where: { kind: 'bar', bar },
    wanted: saying('wanted'),
    allowed: saying('allowed'),
    forbidden: saying('forbidden'),
    ...(density === undefined || density === 'any' ? {} : { density }),
    ...(silence === undefined ? {} : { silence }),
    ...(position === undefined || position === 0 ? {} : { position }),
    ...(lowest === undefined ? {} : { lowest }),
    ...(highest === undefined ? {} : { highest }),
    ...(degrees === undefined ? {} : { degrees }),
  };
}

/** What the line and its sections want: shown in at least one bar of every phrase. */
const wantedInPhrases = (piece: LinePiece, chart: Chart): readonly Aim[] =>
  piece.aims.flatMap((aim): readonly Aim[] => {
    const { where, silentOnes } = aim;
    const some = silentOnes === 'some bars' && sayOf(aim, SILENT_ONE) === null;
    const wanted = some ? [...(aim.wanted ?? []), SILENT_ONE] : aim.wanted;
    if (wanted === undefined || where.kind === 'bar') return [];
    return where.kind === 'line'
      ? [{ where, wanted }]
      : placedAims(piece, chart)
          .uses(where.id)
          .map((section) => ({
            where: { kind: 'section', section },
            wanted,
          }));
  });

/**
 * The aims of a piece as the composer takes them: in every bar the nearest aim counts. A bar in which the teacher
 * keeps the hand in a position is composed in it.
 */
export function composerAims(piece: LinePiece, chart: Chart): readonly Aim[] {
  const held = (bar: number) => piece.bars[bar]?.position;
  const inBars = chart.bars.flatMap((_, bar): readonly Aim[] => {
    const aims = aimsAt(piece, chart, bar);
    const position = held(bar);
    if (aims.length === 0 && position === undefined) return [];
    return [{ ...aimOfBar(aims, chart, bar), ...(position === undefined ? {} : { position }) }];
  });
  return [...wantedInPhrases(piece, chart), ...inBars];
}

/** The bars of a piece, each with the hand position that is kept there or that an aim asks for. */
export function barsInPosition(piece: LinePiece, chart: Chart): readonly LineBar[] {
  if (piece.aims.every(({ position }) => position === undefined)) return piece.bars;
  return piece.bars.map((bar, index) => {
    const { position } = aimOfBar(aimsAt(piece, chart, index), chart, index);
    return bar.position !== undefined || position === undefined ? bar : { ...bar, position };
  });
}
