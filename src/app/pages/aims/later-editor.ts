import { laterPart } from '../at-work';

/** The fields of an aim come after the first look: most lines are written without them. */
export const EDITOR = laterPart('The fields of an aim', async () => (await import('./editor')).AimEditor);
