/** British English lists have no comma before `and`; the page's other words are British as well. */
const LIST = new Intl.ListFormat('en-GB', { type: 'conjunction' });

/** `a`, `a and b`, `a, b and c`; '' for nothing. */
export const listed = (items: readonly (string | number)[]): string => LIST.format(items.map(String));

/** The text with its first letter large, as at the beginning of a sentence. */
export const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
