/** What a line may do only in bars where a technique that allows it may be shown. */
export type Freedom =
  | 'notes outside the chord'
  | 'notes outside the scale'
  | 'octave leap'
  | 'early root'
  | 'silent beat one'
  | 'long silence';
