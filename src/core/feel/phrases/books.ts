import type { FeelId } from '../types';
import { EARLY_SKA_PHRASES } from './early-ska';
import { ROCKSTEADY_PHRASES } from './rocksteady';
import type { PhraseBook } from './types';

/** The phrase books that are written, by feel. */
export const PHRASE_BOOKS: Readonly<Partial<Record<FeelId, PhraseBook>>> = {
  'early-ska': EARLY_SKA_PHRASES,
  rocksteady: ROCKSTEADY_PHRASES,
};
