/** A note or rest for drawing; heights count steps above the middle line. */
export interface SignSpec {
  readonly kind: 'note' | 'rest';
  readonly value: number;
  readonly dots: 0 | 1;
  readonly height: number;
  readonly accidental: string | null;
  readonly courtesy: boolean;
  readonly ghost: boolean;
  readonly stem: 'up' | 'down';
  /** All heads on the stem from low to high, where there can be several; height, accidental and cross are theirs. */
  readonly heads?: readonly HeadSpec[];
}

export interface HeadSpec {
  readonly height: number;
  readonly accidental: string | null;
  readonly courtesy: boolean;
  readonly cross: boolean;
}
