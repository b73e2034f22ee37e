import { COMMON_PRACTICE } from '../rows';
import { phraseBook } from './notation';
import { SHUFFLE_BLUES_TUNES } from './tunes/shuffle-blues';

/**
 * Shuffle blues: four level quarters with a light swung skip, the box 1 3 5 6 and back, two bars that ask and two
 * that answer. The ♭7 is colour; ♭3 slides into 3; the last pair kicks into the change.
 */
const POOLS = `
pool up = R 3 5 6 | R 3 5 > | R 3 5 c | R _5 _6 > | 8 5 6 > | 8 3 5 6 | R 3 6 5 | R 5 6 > | R 5 6 c | R 3 >> > | R 5 6 8 | R 5 c > | R 2 3 5 | R 3 4 > | R 6 5 >
pool down = 8 6 5 3 | 8 6 5 > | 8 c 6 5 | 8 c 5 6 | 8 c 5 > | 8 5 6 5 | 8 c 6 > | c 6 5 > !co | 6 5 3 > !co | 8 5 6 > | R 5 3 > | 8 5 3 > | R _6 _5 > | R _c _6 > | R _c _6 _5 | c 6 5 3 !co
pool skips = R 3 5 >> > | R 5 3 >> > | 8 6 5 >> > | R 5 6 >> > | 8 c 6 >> > | R _6 _5 >> > | R 3 6 >> > | 8 5 c >> > | R 5 6 5 3
pool slides = R 3 5 6 | R 3 5 > | R 3 6 5 | R 3 5 c | R 5 6 5
pool box = R 3 5 c | R 5 c 5 | R 3 c 5 | R 3 5 3 | R 3 5 8 | R 3 5 R | R 5 3 5 | R 3 R 5 | R 5 8 5 | R 3 5 >
pool boxdown = 8 c 5 3 | 8 c 5 > | R _c _5 > | c 5 3 > !co | 8 5 3 5 | 8 5 3 > | 8 5 R > | R 5 3 > | R _5 R > | 8 3 5 > | 8 5 3 R | R 3 R >
`;

export const SHUFFLE_BLUES_PHRASES = phraseBook(
  { manner: 'walk', chromatics: 'a beat', blues: true, source: COMMON_PRACTICE },
  `
metre 4/4${POOLS}
theme basic 0-0: four level quarters on root, fifth and octave
S x=x=x=x= R = = = | R = 5 5 | R 5 8 5 | R 5 R 5 | R = 8 8 | R = 5 R | R 8 5 R | R 5 8 >
A x=x=x=x= 8 5 R 5 | 8 = 5 > | R = 5 > | R _5 R > | R = = = | R 5 R >
A x=x=x=-- R = 5 | 8 5 R | R 5 R
L x=x=x=x= R 5 8 5 | 8 5 8 > | R = 8 8 | R = = =
C x=x=x=-- R 5 R | R = 5 | 8 5 R | R _5 R | R = =
C x=x=x=== R 5 R | R = 5
T x=x=x=x= R = 5 > | R 5 R > | R _5 R > | R = = =
T x=x=--x= R 5 > | R = = | R R >
E x=x=x=== R 5 R | R _5 R | 8 5 R | R = =
H x=x= R 5 | R > | R = | R _5
Q x= R | 8
theme kick 1-1: root, fifth and octave, and a swung pair on four
S x=x=x=xx R = 5 5 8 | R = 5 8 5 | R 5 8 8 5 | R = _5 _5 R | R 5 5 8 5
S x=x=x=x= R = 5 8 | R 5 8 5 | R = _5 R
A x=x=x=x= 8 5 R > | 8 = 5 > | R 5 R > | 8 5 5 > | R _5 R >
A x=x=x=xx 8 5 R R 5 | 8 5 R 5 >
L x=x=x=xx R 5 8 8 5 | 8 = 5 8 5 | R = 5 8 8
C x=x=x=-- R 5 R | 8 5 R | R _5 R | R 5 8
T x=x=x=xx R 5 R 5 > | 8 5 R R > | R _5 R R >
T x=--x=xx R 5 R > | 8 5 R > | R _5 R >
H x=x= R 5 | R > | 8 > | R _5
H x=xx R 5 > | R R >
S+A x=x=x=xx x=x=x=x= R = 5 5 8 / 8 5 R > | R = 5 8 5 / R 5 R > | R 5 8 8 5 / 8 = 5 > | R = _5 _5 R / R 5 R >
S+A x=x=x=x= x=x=x=xx R = 5 8 / 8 5 R R 5 | R 5 8 5 / 8 5 R 5 >
S+A+S+C x=x=x=xx x=x=x=x= x=x=x=xx x=x=x=-- R = 5 5 8 / 8 5 R > / R = 5 5 8 / 8 5 R | R = 5 8 5 / R 5 R > / R = 5 8 5 / R 5 R | R = _5 _5 R / R 5 R > / R = _5 _5 R / R _5 R

theme jump 2-2: up the chord to its seventh, a swung pair on four
S x=x=x=xx R 3 5 c 5 | R 3 5 c c | R 5 c 5 3 | R 3 5 5 c | R 3 5 8 5 | R 3 5 5 3 | R 5 3 3 5 | R 3 5 8 8
A x=x=x=x= 8 c 5 3 | 8 c 5 > | 8 5 3 > | R _5 R > | 8 5 3 5 | R 5 3 >
A x=x=x=xx 8 c 5 5 3 | 8 c 5 3 > | 8 5 3 3 > | R 5 3 5 >
L x=x=x=xx R 5 8 c 5 | R 3 5 c 8 | R 5 8 8 5 | 8 10 8 8 5
C x=x=x=-- 8 c 5 | R 3 5 | 8 5 3 | R 5 3 | R _5 R
T x=x=x=xx R 3 5 c > | R 5 3 3 > | 8 c 5 5 > | R 5 3 5 > | R 3 5 5 >
T x=--x=xx R 5 c > | R 3 5 > | R 5 3 > | 8 c 5 >
H x=x= R 3 | R > | R 5 | R c
H x=xx R 3 > | R 5 > | R c >
S+A x=x=x=xx x=x=x=x= R 3 5 c 5 / 8 c 5 > | R 3 5 c c / 8 c 5 3 | R 5 c 5 3 / 8 c 5 > | R 3 5 8 5 / 8 5 3 > | R 3 5 5 3 / 8 5 3 5
S+A+S+C x=x=x=xx x=x=x=x= x=x=x=xx x=x=x=-- R 3 5 c 5 / 8 c 5 3 / R 3 5 c 5 / 8 c 5 | R 3 5 c c / 8 c 5 > / R 3 5 c c / R 5 3 | R 3 5 8 5 / 8 5 3 > / R 3 5 8 5 / 8 5 3

theme box 2-2: up the chord and back, and a breath every second bar
S x=x=x=x= %box
A x=x=x=x= %boxdown
A x=x=x=xx R 3 5 5 3 | R 5 3 5 > | 8 5 3 3 >
L x=x=x=x= R 3 5 8 | 8 10 8 > | 8 10 8 5 | R 5 8 >
C x=x=x=-- R 3 5 | 8 5 R | R 5 3 | R _5 R | 8 5 3
C x=x=x=== R 3 5 | R 5 R
T x=x=x=xx R 3 5 5 > | R 5 3 3 > | R _5 R R > | 8 5 3 5 >
T x=--x=xx R 5 5 > | R 3 3 >
H x=x= R 3 | R > | R 5
H x=xx R 3 > | R 5 >

theme level 3-5: quarters up the box and down again, a kick before the change
S x=x=x=x= %up
A x=x=x=x= %down
A x=x=x=xx %skips
L x=x=x=x= 8 10 8 > | R 5 8 > | 8 c 8 > | R 3 5 8 | 5 6 c 8 !co | 8 9 10 >
C x=x=x=-- R 3 5 | 8 6 5 | R 5 6 | 8 c 6 | R 6 5
C x=x===xx R 5 >> > | 8 6 >> > | R 3 >> > | R c >> >
T x=x=x=xx %skips
T x=x=x=x= R 5 6 > | R >>> >> > | 8 c 6 > | R _6 _5 >
E x=x=x=== R 3 R | 8 5 R | R _6 _5
H x=x= R > | R 3 | R 5 | 8 > | R 6 | R c
H x=xx R >> > | R 3 >
S+A x=x=x=x= x=x=x=x= R 3 5 6 / c 6 5 3 | R 3 5 6 / 8 6 5 > | R 3 5 c / 8 6 5 > | R 5 6 c / 8 c 6 > | R 2 3 5 / 8 c 5 > | R 5 6 8 / c 6 5 >
S+A x=x=x=x= x=x=x=xx R 3 5 6 / 8 c 6 >> > | R 5 6 8 / 8 6 5 >> > | R 3 6 5 / R 5 3 >> >
S+A+L+C x=x=x=x= x=x=x=x= x=x=x=x= x=x=x=xx R 3 5 6 / c 6 5 3 / 8 10 8 > / 8 c 6 >> > | R 3 5 6 / 8 6 5 > / R 5 8 > / 8 6 5 >> >

theme skip 3-5: quarters with the swung pair on four, the same note or on its way
S x=x=x=xx R 3 5 6 5 | R 3 5 6 6 | R 5 6 5 3 | R 3 5 c 6 | 8 c 6 5 3 | R 3 6 5 > | R 3 5 >> > | R 5 3 >> > | R _5 _6 >> > | R 5 6 >> >
A x=x=x=x= %down
A x=x=--xx 8 5 >> > | R 5 >> > | 8 6 >> > | R c >> > | R 3 >> >
L x=x=x=xx 8 10 8 c 6 | R 5 8 >> > | 8 c 8 >> > | R 3 5 8 c
C x=x=x=-- R 3 5 | 8 6 5 | 8 c 6 | R 5 6
C x=x===xx R 5 >> > | 8 6 >> > | R 3 >> >
T x=x=x=xx %skips
T x=--x=xx R 5 >> > | 8 6 >> > | R c >> >
H x=x= R > | R 3 | R 5 | 8 > | R 6
H x=xx R >> > | R 3 >
S+A x=x=x=xx x=x=x=x= R 3 5 6 5 / 8 6 5 > | R 3 5 c 6 / R 5 3 > | R 5 6 5 3 / 8 c 6 >
S+A x=x=x=xx x=x=--xx R 3 5 6 5 / 8 6 >> > | R 3 5 6 6 / 8 5 >> > | R 5 6 5 3 / R c >> >

theme slide 3-5: the flat third slides into the third on two
S x=xxx=x= R b3 3 5 6 | R b3 3 5 > | R b3 3 6 5 | R b3 3 5 c | R b3 3 R > | 8 5 6 5 > | 8 c 6 5 > | R b3 3 5 8
A x=x=x=x= %down
A x=x=x=xx %skips
L x=xxx=x= 8 10 8 6 > | R b3 3 5 8 | 8 c 8 6 > | 8 6 c 8 >
C x=x=x=-- 8 6 5 | R 5 6 | 8 c 6 | R 3 5
C x=xxx=-- R b3 3 5 | 8 c 6 5
T x=x=x=xx %skips
T x=--x=xx R 5 >> > | R 6 >> >
H x=x= R > | R 3 | 8 >
H x=xx R b3 3 | R >> >
S+A x=xxx=x= x=x=x=x= R b3 3 5 6 / 8 6 5 > | R b3 3 5 c / c 6 5 3 | R b3 3 6 5 / 8 c 5 > | R b3 3 5 8 / 8 c 6 >
S+C x=xxx=x= x=xxx=-- R b3 3 5 6 / 8 c 6 5 | R b3 3 6 5 / R b3 3 5

theme lope 3-5: skips on two and four
S x=xxx=xx R = 3 5 6 5 | 8 = 6 5 6 5 | R = _5 _6 >> > | R = 3 R >> > | R 3 = 5 6 5 | R 5 = 6 c 6 | R 3 = 5 >> >
A x=xxx=x= 8 6 = 5 3 | 8 c = 6 5 | 8 6 = 5 > | 8 c 6 5 > | R 3 = 5 > | R 5 = 3 >
L x=xxx=xx R 5 = 8 c 6 | 8 10 = 8 >> > | 8 c = 8 6 5
C x=xxx=-- 8 6 = 5 | R 3 = 5 | R 5 3 R | 8 c 6 5
C x=x=x=-- R 3 5 | 8 6 5
T x=xxx=xx R 3 = 5 >> > | R 5 = 3 >> > | 8 6 = 5 >> >
T x=--x=xx R 5 >> > | R 3 >> >
H x=xx R >> > | R 3 > | R 5 >
S+A x=xxx=xx x=xxx=x= R 3 = 5 6 5 / 8 c = 6 5 | R 5 = 6 c 6 / 8 6 = 5 > | R = 3 5 6 5 / 8 c 6 5 >
S+A+L+C x=xxx=xx x=xxx=x= x=xxx=xx x=xxx=-- R 3 = 5 6 5 / 8 6 = 5 3 / R 5 = 8 c 6 / 8 c 6 5 | R = 3 5 6 5 / R 3 = 5 > / 8 10 = 8 >> > / 8 6 = 5

metre 12/8
theme basic 0-2: four long beats on the chord
S x==x==x==x== R = = = | R = 5 5 | R 5 8 5 | R 3 5 3 | R 3 5 R | R 5 3 5
A x==x==x==x== 8 5 R 5 | R = 5 > | 8 5 3 > | R 5 3 > | R = = = | R 3 R >
L x==x==x==x== R 5 8 5 | R 3 5 8 | R = 8 8 | R = = =
C x==x==x===== R 5 R | R = 5 | 8 5 R | R 3 5
C x==x==x==--- R 5 R | R = 5
T x==x==x==x== R = 5 > | R 5 3 > | R = = =
T x==x==x==x=x R 5 3 5 > | R 3 5 5 >
E x==x==x===== R 5 R | R _5 R
H x==x== R 5 | R > | R = | R 3
Q x== R | 8
theme rolling 3-5: long beats, a short note before the last
S x==x==x==x=x R 3 5 6 5 | R 3 5 c 6 | R 5 6 5 3 | R 3 6 5 >
A x==x==x==x== 8 6 5 3 | 8 c 6 > | 8 6 5 > | R 5 3 >
L x==x==x==x=x 8 10 8 c 6 | R 5 8 c >
C x==x==x==--- R 3 5 | 8 6 5 | R 5 6
T x==x==x==x=x R 3 5 >> > | R 5 3 >> > | 8 6 5 >> >
T x==x==---xxx R 5 6 >> > | 8 5 6 >> >
H x==x=x R 3 > | R >> >
S+A x==x==x==x=x x==x==x==x== R 3 5 6 5 / 8 6 5 > | R 3 5 c 6 / 8 c 6 > | R 5 6 5 3 / 8 6 5 3
theme triplets 4-5: the third beat rolls
S x==x==xxxx== R 3 5 6 5 3 | R 5 6 5 6 8 | R 3 5 c 6 5 | R 3 4 5 6 >
A x==x==x==x=x 8 6 5 >> > | R 5 3 >> > | 8 c 6 >> > | R 3 5 >> >
L x==x==xxxx== R 5 8 9 10 8 | 8 9 8 10 8 >
C x==x==x==--- R 3 5 | 8 6 5
T x==x==xxxxxx R 5 6 5 3 5 >> > | 8 6 5 6 5 3 >> >
T x==x==x==x=x R 3 5 >> > | R 5 3 >> >
H x==xxx R 3 >> >
S+A x==x==xxxx== x==x==x==x=x R 3 5 6 5 3 / 8 6 5 >> > | R 3 5 c 6 5 / R 5 3 >> >
`,
  SHUFFLE_BLUES_TUNES,
);
