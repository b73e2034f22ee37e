import { DYNAMIC_LEVELS, type DynamicLevel, type DynamicSign, type Ticks, ticks } from '../base';
import { BAR_WORDS_LENGTH, type LineBar } from '../lesson';
import { type Desk, lengthOf, refused } from './context';
import { selectionOf } from './places';
import type { Did, Done, Gesture, Moment } from './types';
import { onLine } from './write';

/** The lesson with other signs at some bars. They belong to the bar, not to its notes: it stays as composed as it was. */
function signed(desk: Desk, changes: ReadonlyMap<number, LineBar>, did: Did): Done {
  const bars = desk.piece.bars.map((bar, index) => changes.get(index) ?? bar);
  const piece = { ...desk.piece, bars };
  return {
    lesson: {
      ...desk.lesson,
      pieces: desk.lesson.pieces.map((each) => (each === desk.piece ? piece : each)),
    },
    pencil: desk.pencil,
    did,
  };
}

function withDynamics(bar: LineBar, dynamics: readonly DynamicSign[]): LineBar {
  const { dynamics: _, ...rest } = bar;
  return dynamics.length === 0 ? rest : { ...rest, dynamics };
}

const signsOf = (desk: Desk, bar: number): readonly DynamicSign[] => desk.piece.bars[bar]?.dynamics ?? [];

/** The signs of a bar with another one, or none, at a place. */
const placed = (
  signs: readonly DynamicSign[],
  at: Ticks,
  sign: Omit<DynamicSign, 'at'> | null,
): readonly DynamicSign[] =>
  [...signs.filter((each) => each.at !== at), ...(sign === null ? [] : [{ at, ...sign }])].sort(
    (one, other) => one.at - other.at,
  );

function changedAt(
  desk: Desk,
  where: readonly { readonly moment: Moment; readonly sign: Omit<DynamicSign, 'at'> | null }[],
  detail: string,
): Done {
  const changes = new Map<number, LineBar>();
  for (const { moment, sign } of where) {
    const bar = changes.get(moment.bar) ?? desk.piece.bars[moment.bar];
    if (bar === undefined) continue;
    changes.set(moment.bar, withDynamics(bar, placed(bar.dynamics ?? [], ticks(moment.tick), sign)));
  }
  return signed(desk, changes, { kind: 'dynamics', bars: [...changes.keys()], detail });
}

/** Without a sign, a line is played mezzo forte, as the performance has it. */
const UNSAID: DynamicLevel = 'mf';

/** How loud it is at a moment, by the last level before it or at it. */
function levelAt(desk: Desk, { bar, tick }: Moment): DynamicLevel {
  for (let index = bar; index >= 0; index -= 1) {
    const sign = signsOf(desk, index).findLast(
      ({ at, level }) => level !== undefined && (index < bar || at <= tick),
    );
    if (sign?.level !== undefined) return sign.level;
  }
  return UNSAID;
}

const signAt = (desk: Desk, { bar, tick }: Moment): DynamicSign | undefined =>
  signsOf(desk, bar).find(({ at }) => at === tick);

/** Louder or softer from the note at hand, or the first that is selected, by one level: mp, mf, f. */
export const dynamic = (way: 1 | -1): Gesture =>
  onLine((desk) => {
    const { start } = selectionOf(desk);
    const level = DYNAMIC_LEVELS[DYNAMIC_LEVELS.indexOf(levelAt(desk, start)) + way];
    if (level === undefined) return refused(desk, way === 1 ? 'no louder sign' : 'no softer sign');
    const { at: _, ...sign } = signAt(desk, start) ?? { at: 0 };
    return changedAt(desk, [{ moment: start, sign: { ...sign, level } }], level);
  });

/**
 * A hairpin from the note at hand to the next sign; with more selected, over that and no further. The same one again
 * takes it away.
 */
export const hairpin = (way: 'crescendo' | 'diminuendo'): Gesture =>
  onLine((desk) => {
    const { start, end } = selectionOf(desk);
    const { at: _, hairpin: before, ...level } = signAt(desk, start) ?? { at: 0 };
    if (before === way) {
      const rest = 'level' in level ? level : null;
      return changedAt(desk, [{ moment: start, sign: rest }], `no ${way}`);
    }
    const stop = { bar: end.bar, tick: Math.min(end.tick, lengthOf(desk, end.bar)) };
    const stops = desk.pencil.from !== null && signAt(desk, stop) === undefined;
    return changedAt(
      desk,
      [{ moment: start, sign: { ...level, hairpin: way } }, ...(stops ? [{ moment: stop, sign: {} }] : [])],
      way,
    );
  });

/** All signs of loudness in what is selected go; those of the bar where only a note is at hand without any. */
export const noDynamics: Gesture = onLine((desk) => {
  const { start, end } = selectionOf(desk);
  const inside = (bar: number, at: number) =>
    (bar > start.bar || at >= start.tick) && (bar < end.bar || at <= end.tick);
  const found = desk.piece.bars.flatMap((bar, index) =>
    index < start.bar || index > end.bar
      ? []
      : (bar.dynamics ?? []).map(({ at }) => ({ bar: index, tick: at })),
  );
  const chosen = found.filter(({ bar, tick }) => inside(bar, tick));
  const gone = chosen.length > 0 ? chosen : found;
  return gone.length === 0
    ? refused(desk, 'no sign here')
    : changedAt(
        desk,
        gone.map((moment) => ({ moment, sign: null })),
        'none',
      );
});

/** The word above the bar at hand, '' where it has none. */
export const wordAbove = (desk: Desk): string => desk.piece.bars[desk.pencil.bar]?.words ?? '';

/** Writes a word above the bar at hand, in the place of the one there; '' takes it away. */
export const writeWord = (text: string): Gesture =>
  onLine((desk) => {
    const word = [...text.trim()].slice(0, BAR_WORDS_LENGTH).join('').trim();
    const { bar } = desk.pencil;
    const stored = desk.piece.bars[bar];
    if (stored === undefined || word === wordAbove(desk)) return refused(desk, 'same word already');
    const { words: _, ...rest } = stored;
    const changed = word === '' ? rest : { ...rest, words: word };
    return signed(desk, new Map([[bar, changed]]), { kind: 'word', bars: [bar], detail: word });
  });
