/**
 * What a plain drawing has no use for. An image element runs and fetches none of it, and the page's security
 * policy forbids it besides; it is refused all the same, so that no one relies on a logo that does more.
 * The text may be any megabytes: no pattern goes over the same blanks again and again.
 */
const ACTIVE = [
  /<\s*(?:[\w-]+:)?(?:script|foreignObject|iframe|object|embed|a|animate\w*|set|handler)[\s/>]/i,
  /[\s"'/]on[a-z]+\s*=/i,
  /<!ENTITY|<\?xml-stylesheet|@import|javascript:/i,
];

/** An address, and its beginning where it leads into the drawing itself or holds a picture. */
const ADDRESS = /(?:href|src)\s*=(?:\s*["']\s*(#|data:image\/(?:png|jpeg)[;,]))?/gi;

/** Whether an SVG's text holds script, links or embedded pages. */
export const isActive = (svg: string): boolean =>
  ACTIVE.some((sign) => sign.test(svg)) || [...svg.matchAll(ADDRESS)].some(([, own]) => own === undefined);
