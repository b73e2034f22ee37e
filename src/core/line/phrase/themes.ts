import { createRandom } from '../../base';
import type { Contour, MetrePhrases, Theme } from '../../feel';
import type { LineModel } from '../model';

/**
 * The themes that carry a line of a level, in an order of the chart's own that the seed turns: neighbouring seeds
 * begin with different ones. The plainest theme comes last, where it is not among them.
 */
export function themesFor(metre: MetrePhrases, model: LineModel, seed: number): readonly Theme[] {
  const { level } = model.request;
  const fitting = metre.themes.filter(({ levels }) => level >= levels.least && level <= levels.most);
  const order = fitting.length > 0 ? [...fitting] : [...metre.themes];
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
  return [...new Set([...turned, plain])].flatMap((theme) => (theme ? grounded(theme) : []));
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
