import { laterPart } from '../at-work';
import { VersionToPractise } from '../versions';

/**
 * The page that is a single file fetches nothing later, and of the room it takes this part alone: it takes the place of
 * `version-part.ts` there.
 */
export const VERSION_CHOICE = laterPart('The choice of versions', async () => VersionToPractise);
