import { laterPart } from '../at-work';

/** Where a version of the lesson is chosen. */
export const VERSION_CHOICE = laterPart(
  'The choice of versions',
  async () => (await import('../versions')).VersionToPractise,
);
