import { laterPart } from '../at-work';

/** What writes on the neck. */
export const PENCIL = laterPart('The pencil', async () => (await import('../pencil')).NeckPencil);
