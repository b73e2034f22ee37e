/** What a page may ask of the service worker. */
export type Ask = 'take over' | 'tidy up' | 'what is new' | 'what was shared';

export const isAsk = (message: unknown, ask: Ask): boolean => message === ask;
