/** How many bars to read at sight can be asked for. */
export const AT_SIGHT = [4, 8] as const;
