import { createRandom, type Metre } from '../../base';
import type { Contour, MetrePhrases, Role, Theme } from '../../feel';
import type { LineModel } from '../model';
import { different, withLedOn, withLedOnWays } from './led-on';
import { fillsBar } from './segments';

/** The themes of a level whose bars the plan orders. */
const loosely = ({ themes }: MetrePhrases, level: number): readonly Theme[] =>
  ofLevel(
    themes.filter(({ tune }) => tune === null),
    level,
  );

/** The tunes of a level; where there are none, or the bars of the chart are none of the book's, the themes. */
function tunesFirst({ metre, themes }: MetrePhrases, { bars, request: { level } }: LineModel) {
  const tunes = themes.filter(
    ({ tune, levels: { least, most } }) => tune !== null && level >= least && level <= most,
  );
  return tunes.length > 0 && bars.some((bar) => fillsBar(bar, metre))
    ? tunes
    : loosely({ metre, themes }, level);
}

function ofLevel(themes: readonly Theme[], level: number): readonly Theme[] {
  const fitting = themes.filter(({ levels }) => level >= levels.least && level <= levels.most);
  return fitting.length > 0 ? fitting : themes;
}

/**
 * The tunes, or else the themes, that carry a line of a level, in an order of the chart's own that the seed turns:
 * neighbouring seeds begin with different ones. The plainest theme comes last, where it is not among them.
 */
export function themesFor(metre: MetrePhrases, model: LineModel, seed: number): readonly Theme[] {
  return inOrder(metre, model, seed, tunesFirst(metre, model));
}

/** The themes whose bars the plan orders, and that the ways of a bar alone are drawn from, in the same order. */
export const looseThemesFor = (metre: MetrePhrases, model: LineModel, seed: number): readonly Theme[] =>
  inOrder(metre, model, seed, loosely(metre, model.request.level));

function inOrder(
  metre: MetrePhrases,
  model: LineModel,
  seed: number,
  fitting: readonly Theme[],
): readonly Theme[] {
  const order = [...fitting];
  const random = createRandom(
    model.bars.reduce(
      (sum, { stretches }) => (sum * 31 + (stretches[0]?.label ?? '').length + stretches.length) >>> 0,
      7,
    ),
  );
  for (let index = order.length - 1; index > 0; index -= 1) {
    const other = random.below(index + 1);
    const [one, two] = [order[index], order[other]];
    if (one && two) [order[index], order[other]] = [two, one];
  }
  const turned = order.map((_, place) => order[(seed + place) % order.length] ?? order[0]);
  const [plain] = metre.themes;
  return [...new Set([...turned, plain])].flatMap((theme) => (theme ? prepared(theme, metre.metre) : []));
}

const preparedThemes = new WeakMap<Theme, Theme>();

/** A theme as the search takes it. */
function prepared(theme: Theme, metre: Metre): Theme {
  const known = preparedThemes.get(theme);
  if (known) return known;
  // A tune says itself where it is silent.
  const led = theme.tune ? withLedOnWays(theme, metre) : withLedOn(grounded(theme), metre);
  const made = metre.count === 4 ? withHalves(led) : led;
  preparedThemes.set(theme, made);
  return made;
}

const ROOT: Role = { kind: 'step', step: 1, octave: 0 };
const THIRD: Role = { kind: 'step', step: 3, octave: 0 };
const FIFTH: Role = { kind: 'step', step: 5, octave: 0 };
const HALF = 2;

/** The first half of a contour, for the first of two chords. */
function firstHalf(contour: Contour): readonly Contour[] {
  const beats = contour.beats
    .filter(({ start }) => start < HALF)
    .map(({ start, duration }) => ({ start, duration: Math.min(duration, HALF - start) }));
  const roles = contour.roles.slice(0, beats.length);
  const [first] = roles;
  if (roles.length < beats.length || first?.kind !== 'step' || (first.step - 1) % 7 !== 0) return [];
  const base = { ...contour, slot: 'H1' as const, beats, leads: 0, tags: [] };
  const whole = { ...base, id: `${contour.id} first half`, roles };
  return roles.length < 2
    ? [whole]
    : [whole, { ...base, id: `${contour.id} first half led`, roles: roles.slice(0, -1), leads: 1 }];
}

/** The rhythm of a contour's second half, for the second of two chords: its root, and what leads on from it. */
function secondHalf(contour: Contour): readonly Contour[] {
  const beats = contour.beats
    .filter(({ start }) => start >= HALF)
    .map(({ start, duration }) => ({ start: start - HALF, duration }));
  const count = beats.length;
  if (count === 0) return [];
  const base = { ...contour, slot: 'H2' as const, beats, tags: [] };
  const make = (name: string, roles: readonly Role[]): Contour => ({
    ...base,
    id: `${contour.id} second half ${name}`,
    roles,
    leads: count - roles.length,
  });
  if (count === 1) return [make('R', [ROOT])];
  const tones: readonly (readonly [string, Role])[] = [
    ['3', THIRD],
    ['5', FIFTH],
  ];
  return [
    ...(count <= 3 ? [make('R', [ROOT])] : []),
    ...tones.map(([name, tone]) => make(`R ${name}`, [ROOT, tone])),
    ...(count === 3 ? tones.map(([name, tone]) => make(`R R ${name}`, [ROOT, ROOT, tone])) : []),
  ].filter(({ leads }) => leads <= 3);
}

/** A theme whose bars of two chords keep the rhythm of its statements. */
function withHalves(theme: Theme): Theme {
  const { contours } = theme;
  const statements = contours.S ?? [];
  return {
    ...theme,
    contours: {
      ...contours,
      H1: [...(contours.H1 ?? []), ...different(statements.flatMap(firstHalf))],
      H2: [...(contours.H2 ?? []), ...different(statements.flatMap(secondHalf))],
    },
  };
}

/** Whether a theme leaves beat one empty in its statements. */
const restsOnOne = ({ contours }: Theme): boolean =>
  (contours.S ?? []).length > 0 && (contours.S ?? []).every(({ beats }) => (beats[0]?.start ?? 0) > 0);

/** The contour with its root on beat one, a beat long at most and apart from what follows. */
function onOne(contour: Contour): Contour {
  const { beats, roles, id } = contour;
  const [first] = beats;
  if (!first || first.start === 0) return contour;
  return {
    ...contour,
    id: `${id} on one`,
    beats: [{ start: 0, duration: Math.min(1, Math.max(0.5, first.start - 0.5)) }, ...beats],
    roles: [{ kind: 'step', step: 1, octave: 0 }, ...roles],
  };
}

const groundedThemes = new WeakMap<Theme, Theme>();

/**
 * A theme that leaves every beat one empty, with the root on it where it states its motif: the call has the one,
 * the answer does without it (common practice, no source).
 */
function grounded(theme: Theme): Theme {
  if (!restsOnOne(theme)) return theme;
  const known = groundedThemes.get(theme);
  if (known) return known;
  const made: Theme = {
    ...theme,
    contours: { ...theme.contours, S: (theme.contours.S ?? []).map(onOne) },
    models: theme.models.map((model) => ({
      ...model,
      bars: model.bars.map((bar, place) => (place % 2 === 0 ? onOne(bar) : bar)),
    })),
  };
  groundedThemes.set(theme, made);
  return made;
}
