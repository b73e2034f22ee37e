/** A sign that says where the way through the chart leads: the words of lead sheets (common practice, no source). */
export const NAVIGATION = [
  'segno',
  'coda',
  'to coda',
  'fine',
  'D.C.',
  'D.C. al fine',
  'D.C. al coda',
  'D.S.',
  'D.S. al fine',
  'D.S. al coda',
] as const;
export type Navigation = (typeof NAVIGATION)[number];

/** Signs that stand where a bar begins; the others stand at its end. */
export const beginsBar = (sign: Navigation): boolean => sign === 'segno' || sign === 'coda';

/** As it is printed over a bar: `D.S. al Coda`, `To Coda`. */
export const navigationWords = (sign: Navigation): string =>
  sign.replace(/\b(?:fine|coda|segno|to)\b/g, (word) => word.charAt(0).toUpperCase() + word.slice(1));

/** Equal for the ways in which people write a sign: `d.s. al Coda`, `DS al coda`, `Dal Segno al Coda`. */
const plainly = (text: string): string =>
  text
    .toLowerCase()
    .replace(/\bda capo\b/g, 'dc')
    .replace(/\bdal segno\b/g, 'ds')
    .replace(/[^a-z]/g, '');

const BY_TEXT: ReadonlyMap<string, Navigation> = new Map(NAVIGATION.map((sign) => [plainly(sign), sign]));

/** The sign that a text is; null for any other text. */
export const readNavigation = (text: string): Navigation | null => BY_TEXT.get(plainly(text)) ?? null;

/** A jump back: where to, and what is heard from there on. */
export interface Jump {
  readonly sign: Navigation;
  readonly to: 'beginning' | 'segno';
  readonly until: 'fine' | 'coda' | null;
}

/** The jump that stands at the end of a bar. */
export function jumpOf(signs: readonly Navigation[]): Jump | null {
  const sign = signs.find((each) => each.startsWith('D.'));
  if (sign === undefined) return null;
  return {
    sign,
    to: sign.startsWith('D.C.') ? 'beginning' : 'segno',
    until: sign.endsWith('fine') ? 'fine' : sign.endsWith('coda') ? 'coda' : null,
  };
}
