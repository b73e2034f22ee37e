/** What a line may do only in bars where a technique that allows it may be shown. */
export type Freedom =
  | 'notes outside the chord'
  | 'notes outside the scale'
  | 'octave leap'
  | 'early root'
  | 'silent beat one'
  | 'long silence';

/** How the last note of a bar may reach the first one under the next chord, where a technique brings the way with it. */
export type LeadWay =
  /** A step of the scale, or several in one direction. */
  | 'step'
  /** A half step from outside the scale. */
  | 'half step'
  /** The fifth of the coming root, a fourth below it or a fifth above. */
  | 'fifth'
  /** The coming root itself, ahead of its time. */
  | 'early';
