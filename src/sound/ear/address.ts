import address from './worklet?worker&url';

/** Where the audio thread finds the ear. */
export const EAR_ADDRESS: string | null = address;
