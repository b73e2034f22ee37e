import { type Metre, sameMetre } from '../../base';
import type { MetrePhrases, PhraseBook } from '../../feel';
import type { LineModel } from '../model';
import type { NodeRules } from './node-cost';

/** How much a segment's join weighs beside its own cost, by manner (hand-set). */
export const JOIN_WEIGHT = { walk: 1.35, riff: 1 } as const;

/** The phrases for a metre: its own, else those of the feel's first, whose parts of bars are joined. */
export const phrasesIn = ({ metres }: PhraseBook, metre: Metre): MetrePhrases =>
  metres.find((one) => sameMetre(one.metre, metre)) ?? metres[0];

/** What the price of a node depends on beside its segment, from level, book and feel. */
export function nodeRulesFor({ request }: LineModel, book: PhraseBook): NodeRules {
  const { bassRole, silence } = request.feel;
  return {
    level: request.level,
    manner: book.manner,
    blues: book.blues,
    longChromatics: book.chromatics === 'a beat',
    restsOnOne: bassRole.mayRestOnOne,
    pumps: bassRole.mayPump,
    silence: silence.least,
  };
}
