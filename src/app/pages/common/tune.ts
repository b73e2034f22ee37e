/** What all versions of a lesson share, and what is on the page while none of them is. */
export const THE_TUNE = 'the tune itself';
