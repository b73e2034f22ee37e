import type { MetrePhrases, PhraseBook } from '../../feel';
import type { LineModel } from '../model';
import type { Tone } from '../tones';
import { turnedThirds } from './changes';
import { type EdgeMaker, edgeMaker } from './edges';
import { type Finisher, finisherFor } from './finish';
import { type Liking, likingFor } from './liking';
import { JOIN_WEIGHT, nodeRulesFor } from './manner';
import { type PoolMaker, poolMaker } from './pools';
import { onwardOf, type Route } from './route';
import { type Segment, segmentsOf } from './segments';
import { type Sounding, soundingFor } from './sounding';
import { type Stands, standsFor } from './stands';

/** What the searches of a request share: its segments, their choices, and what was ever priced. */
export interface Workshop {
  readonly segments: readonly Segment[];
  /** By bar: the tones that are given, or null. */
  readonly given: readonly (readonly Tone[] | null)[];
  readonly pools: PoolMaker;
  readonly finisher: Finisher;
  readonly edges: EdgeMaker;
  readonly liking: Liking;
  readonly stands: Stands;
  readonly route: Route;
  readonly sounding: Sounding;
}

/**
 * Opens what the searches of a request share.
 * @param given by bar: the tones that are given, or null
 * @param mostNodes that a segment chooses from; as many as usual when left out
 */
export function openWorkshop(
  model: LineModel,
  book: PhraseBook,
  metre: MetrePhrases,
  given: readonly (readonly Tone[] | null)[],
  mostNodes?: number,
): Workshop {
  const rules = nodeRulesFor(model, book);
  const finisher = finisherFor(model, {
    longChromatics: rules.longChromatics,
    walk: book.manner === 'walk',
  });
  const kept = given.map((tones) => tones !== null);
  const segments = segmentsOf(model, metre.metre, kept);
  const stands = standsFor(model, segments);
  return {
    segments,
    given,
    pools: poolMaker(model, rules, metre, mostNodes),
    finisher,
    edges: edgeMaker(model, finisher, JOIN_WEIGHT[book.manner]),
    liking: likingFor(book.manner, model.request.level, turnedThirds(model), stands),
    stands,
    route: onwardOf(segments),
    sounding: soundingFor(),
  };
}
