/** What a page may ask of the service worker. */
export type Ask = 'take over' | 'tidy up' | 'what is new';

export const isAsk = (message: unknown, ask: Ask): boolean => message === ask;
