import { isGone } from './faults';

/**
 * Whether a record was not read because its database went; else the fault is the record's own. The browser's word for
 * what it does not know is said of both, and then the other records are worth more.
 */
export const isOfDatabase = (fault: unknown): boolean =>
  isGone(fault) && !(fault instanceof Error && fault.name === 'UnknownError');
