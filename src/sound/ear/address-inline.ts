/** In the page that is a single file there is no other file, and the audio thread takes no text: it takes the place of `address.ts`. */
export const EAR_ADDRESS: string | null = null;
