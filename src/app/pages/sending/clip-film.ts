import { feelById } from '../../../core/feel';
import { type LinePiece, type LineSheet, tempoWords } from '../../../core/lesson';
import type { Technique } from '../../../core/line';
import type { Performance } from '../../../core/performance';
import type { ScoreLayout, SystemLayout } from '../../../score';
import {
  CLIP_RATE,
  type ClipBand,
  type ClipFilm,
  type ClipFrame,
  type ClipLayer,
  type ClipScene,
} from '../../../tracks';
import { neckPicture } from '../neck';
import { CAPTION, pen, pictureOf, SCALE, TITLE, textPicture } from './clip-pictures';
import { clipTime, countWords } from './clip-time';

/** How a clip looks. */
export interface ClipLook {
  readonly shape: 'wide' | 'tall';
  readonly ground: 'light' | 'dark';
  /** Its bars are lit up; null for none. */
  readonly technique: Technique | null;
}

export const CLIP_SIZES = {
  wide: { width: 1920, height: 1080 },
  tall: { width: 1080, height: 1920 },
} as const;

/** Ink is black, and inverted on the dark ground, so that its counters stay open. */
const COLOURS = {
  light: { ground: '#ffffff', playhead: '#b06a00', band: '#cfe8da' },
  dark: { ground: '#000000', playhead: '#f0b040', band: '#24503d' },
} as const;

const MARGIN = 48;

/** Where a wide clip has what is said beside the neck, an upright one has it above. */
const PLACES = {
  wide: { neckWidth: 620, neckScale: 1.3, captionLines: 4, bars: 4 },
  tall: { neckWidth: 492, neckScale: SCALE, captionLines: 4, bars: 2 },
} as const;

type Score = typeof import('../../../score');

const systemWith = ({ systems }: ScoreLayout, bar: number): SystemLayout | undefined =>
  systems.find(({ bars }) => bars.some((box) => box.bar === bar));

/** The systems in the order in which they are played, and which of them each played bar is in. */
interface Visits {
  readonly visits: readonly SystemLayout[];
  readonly ofBar: readonly number[];
}

function visitsOf(layout: ScoreLayout, rounds: readonly Performance[]): Visits {
  const visits: SystemLayout[] = [];
  const ofBar: number[] = [];
  for (const { bar } of rounds.flatMap(({ bars }) => bars)) {
    const system = systemWith(layout, bar);
    if (system !== undefined && visits.at(-1) !== system) visits.push(system);
    ofBar.push(visits.length - 1);
  }
  return { visits, ofBar };
}

/** Staff spaces that are tried, in pixels of the page: larger ones leave no room for a bar. */
const SPACES = { largest: 18, least: 6 } as const;

/** A score with the systems that are played, and how many of them are seen at once. */
interface Fitted extends Visits {
  readonly layout: ScoreLayout;
  readonly rows: 1 | 2;
}

/**
 * The largest score of which the system that is played and the next one fit; where all that is played stands in one, or
 * the music is too high for two, one is seen at a time.
 */
function layoutThatFits(
  score: Score,
  sheet: LineSheet,
  rounds: readonly Performance[],
  room: { readonly width: number; readonly height: number; readonly bars: number },
): Fitted {
  const at = (staffSpace: number): Fitted => {
    const layout = score.layoutScore(sheet, {
      width: room.width,
      staffSpace,
      barsPerSystem: room.bars,
      degrees: true,
      fingers: false,
      counting: false,
      measureNumbers: true,
    });
    const visits = visitsOf(layout, rounds);
    return { layout, ...visits, rows: visits.visits.length > 1 ? 2 : 1 };
  };
  for (let space: number = SPACES.largest; space > SPACES.least; space -= 1) {
    const fitted = at(space);
    if (fitted.rows * Math.max(...fitted.layout.systems.map(({ height }) => height)) <= room.height)
      return fitted;
  }
  return { ...at(SPACES.least), rows: 1 };
}

/** What to listen for: in the count-in the feel, then of each bar what its notes do. */
const captionOf = (sheet: LineSheet, piece: LinePiece, bar: number | null): string =>
  bar === null ? feelById(piece.feel).description : (sheet.bars[bar]?.analysis.reason ?? '');

/** The film of a line as it is played: staff and tab with playhead, neck, title and what to listen for. */
export async function filmOf(
  lessonTitle: string,
  piece: LinePiece,
  sheet: LineSheet,
  rounds: readonly Performance[],
  look: ClipLook,
): Promise<ClipFilm<HTMLCanvasElement>> {
  const score = await import('../../../score');
  await score.loadScoreFonts();
  await document.fonts.ready;
  const { width, height } = CLIP_SIZES[look.shape];
  const dark = look.ground === 'dark';
  const inner = width - 2 * MARGIN;
  const pictures: HTMLCanvasElement[] = [];
  const known = new Map<string, number>();
  const picture = async (key: string, make: () => Promise<HTMLCanvasElement> | HTMLCanvasElement) => {
    const before = known.get(key);
    if (before !== undefined) return before;
    const index = pictures.push(await make()) - 1;
    known.set(key, index);
    return index;
  };
  const text = (words: string, size: number, most: number, wide = inner) =>
    picture(`${size} ${words}`, () => textPicture(words, wide, size, dark, most));

  const neckOf = (bar: number, sounding: Parameters<typeof neckPicture>[3]) => {
    const request = neckPicture(sheet, bar, undefined, sounding);
    const place = sounding?.fingered;
    return picture(`neck ${bar} ${place?.string} ${place?.fret}`, async () => {
      if (request === null) return pen(1, 1)[0];
      const { neckWidth, neckScale } = PLACES[look.shape];
      const drawing = score.drawFretboard({ ...request, show: 'degree', steady: true, width: neckWidth });
      return pictureOf(drawing, dark, neckScale);
    });
  };

  const first = rounds[0]?.bars[0]?.bar ?? 0;
  const firstNeck = await neckOf(first, null);
  const neckHeight = pictures[firstNeck]?.height ?? 0;
  const { captionLines, bars: barsInRow } = PLACES[look.shape];
  const beside = look.shape === 'wide';
  const captionHeight = captionLines * CAPTION.line;
  const captionX = beside ? 2 * MARGIN + (pictures[firstNeck]?.width ?? 0) : MARGIN;
  const captionY = height - MARGIN - (beside ? neckHeight : neckHeight + MARGIN + captionHeight);
  const top = MARGIN + 2 * TITLE.height - 40;
  const room = (beside ? height - MARGIN - Math.max(neckHeight, captionHeight) : captionY) - MARGIN - top;
  const { layout, rows, visits, ofBar } = layoutThatFits(score, sheet, rounds, {
    width: inner / SCALE,
    height: room / SCALE,
    bars: barsInRow,
  });
  const rowHeight = Math.round(room / rows);

  const title = await text(`${lessonTitle}: ${piece.name}`, TITLE.size, 1);
  const under = await text(
    `${feelById(piece.feel).name}, ${tempoWords(piece, rounds[0]?.tempo ?? piece.tempo)}`,
    CAPTION.size,
    1,
  );
  const scenes: ClipScene[] = [];
  const sceneOf = new Map<string, number>();

  /** The ground under the bars that show what is to be lit up. */
  const litBars = (system: SystemLayout, y: number): readonly ClipBand[] =>
    system.bars
      .filter(
        ({ bar }) =>
          look.technique !== null && sheet.bars[bar]?.analysis.techniques.includes(look.technique) === true,
      )
      .map((box) => ({
        x: MARGIN + box.x * SCALE,
        y,
        width: box.width * SCALE,
        height: Math.min(system.height * SCALE, rowHeight),
      }));

  /** Two systems, the one that is played and the one that comes next, each in its row; with neck and words. */
  const scene = async (
    visit: number,
    bar: number,
    sounding: Parameters<typeof neckPicture>[3],
    words: string,
  ) => {
    const neck = await neckOf(bar, sounding);
    const key = `${visit} ${neck} ${words}`;
    const before = sceneOf.get(key);
    if (before !== undefined) return before;
    const layers: ClipLayer[] = [
      { picture: title, x: MARGIN, y: MARGIN, strength: 1 },
      { picture: under, x: MARGIN, y: MARGIN + TITLE.height - 14, strength: 1 },
      {
        picture: neck,
        x: beside ? MARGIN : Math.round((width - (pictures[neck]?.width ?? 0)) / 2),
        y: height - MARGIN - neckHeight,
        strength: 1,
      },
      {
        picture: await text(words, CAPTION.size, captionLines, width - MARGIN - captionX),
        x: captionX,
        y: captionY,
        strength: 1,
      },
    ];
    const bands: ClipBand[] = [];
    for (const each of rows === 2 ? [visit, visit + 1] : [visit]) {
      const system = visits[each];
      if (system === undefined) continue;
      const y = top + (each % rows) * rowHeight;
      const drawn = await picture(`system ${system.index}`, () =>
        pictureOf(score.drawMarks(layout, system.index), dark),
      );
      layers.push({ picture: drawn, x: MARGIN, y, strength: each === visit ? 1 : 0.5 });
      bands.push(...litBars(system, y));
    }
    const index = scenes.push({ visit, bands, layers }) - 1;
    sceneOf.set(key, index);
    return index;
  };

  const time = clipTime(rounds, sheet);
  const frames: ClipFrame[] = [];
  let last = { visit: 0, bar: first };
  for (let index = 0; index < Math.ceil(time.seconds * CLIP_RATE); index += 1) {
    const moment = time.at(index / CLIP_RATE);
    if (moment.kind !== 'playing') {
      const words = moment.kind === 'counting' ? countWords(moment.beat) : captionOf(sheet, piece, null);
      frames.push({ scene: await scene(last.visit, last.bar, null, words), playhead: null });
      continue;
    }
    const visit = ofBar[moment.played] ?? 0;
    last = { visit, bar: moment.bar };
    const place = score.playheadX(layout, moment.bar, moment.tick);
    const system = visits[visit];
    const span = system && score.playheadSpan(system);
    const y = top + (visit % rows) * rowHeight;
    frames.push({
      scene: await scene(visit, moment.bar, moment.note, captionOf(sheet, piece, moment.bar)),
      playhead:
        place === null || span === undefined
          ? null
          : {
              x: Math.round(MARGIN + place.x * SCALE),
              top: y + Math.round(span.top * SCALE),
              bottom: y + Math.round(span.bottom * SCALE),
            },
    });
  }
  return { width, height, colours: COLOURS[look.ground], pictures, scenes, frames };
}
