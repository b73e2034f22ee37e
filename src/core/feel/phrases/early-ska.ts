import { COMMON_PRACTICE } from '../rows';
import { phraseBook } from './notation';
import { EARLY_SKA_TUNES } from './tunes/early-ska';

/**
 * Early ska: a walk in even quarters, weight on two and four, a swung pair as a skip. A bar goes up, the next
 * comes down; beat four or the pair on it leads. One bar in four or eight stops to breathe.
 */
export const EARLY_SKA_PHRASES = phraseBook(
  { manner: 'walk', chromatics: 'short', blues: false, source: COMMON_PRACTICE },
  `
metre 4/4
pool up = R 3 5 > | R 3 5 6 | R 2 3 > | R _5 _6 R | 8 5 6 7 | 8 3 4 5 | 8 3 5 6 | R 2 3 5 | R _5 _6 _7 | R _7 R 2 | R 3 2 > | R 5 6 > | R 5 8 > | R 3 >> > | R 5 >> > | R 3 5 8 | R _5 _6 > | R 3 5 c | R c 5 > | R >>> >> > | R 3 4 > | 3 5 8 > !co | 3 5 6 > !co | R 5 6 5 | R 5 3 > | R 3 6 > | R 5 c > | R 6 5 >
pool down = 8 6 5 > | 8 5 3 > | 8 5 4 > | 8 5 3 2 | 8 7 5 > | 8 3 2 > | 8 7 6 3 | R _7 _5 > | R 3 2 _7 | 8 7 6 > | 8 6 5 3 | 8 5 >> > | 5 3 2 > !co | 5 6 5 > !co | 8 5 6 > | 8 c 5 > | 8 c 5 3 | 6 5 3 > !co | R _6 _5 > | R _5 >> > | R 3 >> > | R 5 3 > | R >>> >> > | R _7 _6 > | 3 2 R > !co | 8 7 6 5 | 8 6 c 5 | c 5 3 > !co | R _c _5 >
pool triads = R 3 5 > | R 3 5 8 | R 5 3 5 | R 5 8 5 | R 5 3 > | R 3 5 3 | R 3 8 5 | R 5 8 > | R _5 _3 _5
pool falls = 8 5 3 5 | 8 5 3 > | 8 5 R > | 5 3 R > !co | 8 3 5 > | R 5 3 R | R _5 _3 > | R _5 R > | R 5 3 > | R 3 5 > | 8 10 8 >
pool turn = R 5 >> > | R >>> >> > | 8 5 >> > | R 3 >> > | R _5 >> > | 8 6 >> >
pool turn5 = R 3 5 >> > | R 5 3 >> > | 8 6 5 >> > | R 5 6 >> > | 8 5 3 >> > | R _5 _6 >> > | R 2 3 >> > | 8 c 5 >> >
pool lift = 8 10 8 > | 8 9 10 > | R 3 5 8 | R 5 8 > | 8 6 5 > | 3 5 8 > !co | 5 6 8 > !co | 8 7 8 >

theme basic 0-0: even quarters on root and fifth
S x=x=x=x= R = = = | R 5 R 5 | R = 5 = | R 5 8 5 | R _5 R _5 | R = = 5 | R 8 5 R | R 5 8 > | R = 5 >
A x=x=x=x= 8 5 R 5 | 8 5 8 > | R = 5 > | R 5 R > | R _5 R > | R = = = | 8 = 5 R | R 8 5 >
L x=x=x=x= R 5 8 5 | 8 5 8 > | R = 8 = | R = = = | R 5 8 =
C x=x=x=== R 5 R | R = 5 | R 5 > | R = = | 8 5 R | R _5 R
C x=x===x= R 5 > | R = = | 8 5 > | R _5 >
T x=x=x=x= R = 5 > | R 5 R > | R _5 R > | R = = = | 8 5 R >
T x===x=x= R 5 > | R = = | R R > | 8 5 >
E x=x=x=== R 5 R | R _5 R | 8 5 R | R = =
E x===x=== R = | R _5
H x=x= R 5 | R = | R > | R 8 | R _5
Q x= R | 8

theme fifths 1-1: root and fifth in quarters, and a swung pair where a bar answers
S x=x=x=x= R 5 8 5 | R R 5 > | R 5 8 > | R R _5 R | R R 5 8 | R _5 _5 R | 8 5 8 > | R 5 5 R | R R 8 5
A x=x=x=xx R 5 R 5 > | R 5 8 5 > | 8 5 R 5 > | R _5 R _5 > | R 5 R R 5 | R _5 R R > | R 5 8 8 5
A x=x=x=x= 8 5 R > | 8 5 R 5 | R _5 R > | R 5 R > | 8 5 5 >
L x=x=x=x= R 5 8 5 | R 5 8 8 | 8 5 8 5 | 8 5 8 >
C x=x=x=x= 8 5 R > | R 5 8 > | 8 8 5 >
C x=x=x=xx R 5 R 5 > | 8 5 R 5 > | R _5 R R >
T x=--x=xx R 5 R > | R 5 8 > | 8 5 8 > | R _5 R >
T x=--x=x= R 5 > | 8 5 > | R _5 >
H x=x= R 5 | R > | R _5 | 8 >
H x=xx R 5 > | R R >
S+A x=x=x=x= x=x=x=xx R 5 8 5 / 8 5 R 5 > | R R 5 8 / R 5 8 5 > | R R _5 R / R 5 R 5 > | R 5 8 > / R 5 R R 5
S+A+S+C x=x=x=x= x=x=x=xx x=x=x=x= x=x=--x= R R 5 8 / R 5 8 5 > / R R 5 8 / R 5 > | R 5 8 5 / 8 5 R 5 > / R 5 8 5 / R _5 > | R R _5 R / R 5 R 5 > / R R _5 R / R 5 >
S+A+S+T x=x=x=x= x=x=x=xx x=x=x=x= x=--x=xx R R 5 8 / R 5 8 5 > / R R 5 8 / R 5 R > | R 5 8 5 / 8 5 R 5 > / R 5 8 5 / R _5 R > | R R _5 R / R 5 R 5 > / R R _5 R / R 5 R >
S+A+L+T x=x=x=x= x=x=x=xx x=x=x=x= x=--x=xx R R 5 8 / R 5 R 5 > / 8 8 5 8 / R 5 R > | R R _5 R / R 5 R 5 > / R 5 8 5 / R _5 R >

theme triads 2-2: a bar climbs the triad, the next one falls
S x=x=x=x= %triads
A x=x=x=x= %falls
L x=x=x=x= R 3 5 8 | R 5 8 > | 8 10 8 > | R 3 8 5 | 8 10 8 5
C x=x=x=x= %falls
C x=x=x=x= R 5 3 > | 8 5 3 > | R 3 5 > | R _5 R >
C x=x=x=xx R 3 5 5 > | R 5 3 3 > | 8 5 3 3 >
T x=--x=xx R 5 >> > | 8 5 >> > | R _5 >> > | R 3 >> >
T x=x=x=xx R 3 5 >> > | R 5 3 >> > | 8 5 3 >> >
H x=x= R 3 | R > | R 5 | 8 > | R _5
S+A x=x=x=x= x=x=x=x= R 3 5 3 / 8 5 3 > | R 3 5 8 / R 5 3 > | R 5 3 5 / R _5 R > | R 3 5 > / R 5 3 >
S+A+S+C x=x=x=x= x=x=x=x= x=x=x=x= x=x=x=xx R 3 5 3 / R 5 3 > / R 3 5 3 / R 5 3 3 > | R 3 5 8 / 8 5 3 > / R 3 5 > / R 5 3 3 > | R 5 3 5 / R 3 5 > / R 5 3 5 / R 3 5 5 >
S+A+S+T x=x=x=x= x=x=x=x= x=x=x=x= x=--x=xx R 3 5 3 / R 5 3 > / R 3 5 3 / R 5 >> > | R 3 5 8 / 8 5 3 > / R 3 5 > / R _5 >> > | R 5 3 5 / R 3 5 > / R 5 3 5 / R 3 >> >
S+A+L+T x=x=x=x= x=x=x=x= x=x=x=x= x=x=x=xx R 3 5 3 / R 5 3 > / R 3 5 8 / 8 5 3 >> > | R 5 3 5 / R 3 5 > / R 5 8 > / R 5 3 >> >

theme skipped 2-2: the triad with a swung pair on four
S x=x=x=xx R 3 5 = > | R 5 3 = > | R 3 5 5 3 | R 3 5 >> > | R 5 3 >> > | R 3 5 8 5
A x=x=x=x= %falls
L x=x=x=xx R 3 5 8 5 | 8 10 8 5 > | R 5 8 = >
C x=x=x=x= R 5 3 > | 8 5 3 > | R 3 5 > | R _5 R >
C x=x=x=x= %falls
T x=--x=xx R 5 >> > | 8 5 >> > | R _5 >> > | R 3 >> >
T x=x=x=xx R 3 5 >> > | 8 5 3 >> >
H x=x= R 3 | R > | R 5 | 8 >
H x=xx R 3 > | R >> >

theme straight 3-5: four even quarters, up and answered down
S x=x=x=x= %up
A x=x=x=x= %down
L x=x=x=x= %lift
C x=x=x=x= %down
C x=x=--xx R 3 >> > | R 5 >> > | 8 5 >> > | 8 6 >> > | R _5 >> >
T x=x=x=xx %turn5
T x=--x=xx R 5 >> > | R 3 >> > | 8 6 >> > | 8 5 >> > | R _5 >> > | R _6 >> >
T x=x=x=x= %turn
E x=x=x=== R 3 R | 8 5 R | R _5 R | R _7 R
H x=x= R > | R 3 | R 5 | 8 > | R _5 | 3 > | 8 6 | R 2
S+A x=x=x=x= x=x=x=x= R 3 5 6 / 8 6 5 > | R 2 3 5 / 8 7 5 > | R 3 5 > / 8 6 5 > | R _5 _6 R / R 3 2 > | 8 5 6 7 / 8 5 3 > | R 5 3 > / R 3 5 >
S+A+S+T x=x=x=x= x=x=x=x= x=x=x=x= x=x=x=xx R 3 5 6 / 8 6 5 > / R 3 5 6 / 8 6 5 >> > | R 2 3 5 / 8 7 5 > / R 2 3 5 / R 5 3 >> > | 8 6 5 > / R 3 5 > / 8 6 5 > / R 3 5 >> >
S+A+L+T x=x=x=x= x=x=x=x= x=x=x=x= x=x=x=xx R 3 5 6 / 8 6 5 > / 8 9 10 > / 8 6 5 >> > | R _5 _6 R / R 3 2 > / R 5 8 > / 8 5 3 >> >

theme pickup 3-5: quarters, with a swung pair that leads out of every answer
S x=x=x=x= %up
A x=x=x=xx %turn5
L x=x=x=x= %lift
C x=x=x=x= %down
C x=x=--xx R 3 >> > | 8 5 >> > | R 5 >> > | 8 6 >> > | R _6 >> >
T x=--x=xx R 5 >> > | R 3 >> > | 8 6 >> > | 8 5 >> > | R _5 >> >
T x=x=x=xx %turn5
H x=x= R > | R 3 | R 5 | 8 > | R _5 | R 2
H x=xx R >> > | 8 >> >
S+A x=x=x=x= x=x=x=xx R 3 5 6 / 8 6 5 >> > | R 3 5 > / 8 5 3 >> > | R 2 3 5 / R 5 3 >> > | 8 6 5 > / R 3 5 >> > | R _5 _6 _7 / R 2 3 >> >

theme double 3-5: a skip on one, repeated on its pitch
S xxx=x=x= R = 3 5 > | R = 5 3 > | R = 3 5 6 | 8 = 6 5 > | R = 5 6 > | R = _6 _5 > | 8 = 5 3 > | R = 3 >> > | R = 2 3 > | R = 3 5 c | 8 = c 5 >
A x=x=x=x= %down
L xxx=x=x= 8 = 10 8 > | 8 = 9 10 > | R = 3 5 8 | 8 = 7 8 >
C x=x=x=x= %down
C xxx=--xx R = 3 >> > | 8 = 6 >> > | R = 5 >> >
T x=x=x=xx %turn5
T x=--x=xx R 5 >> > | R 3 >> > | 8 6 >> > | 8 5 >> >
H x=x= R > | R 3 | R 5 | 8 >
H xxx= R = > | R = 3 | 8 = >
S+A xxx=x=x= x=x=x=x= R = 3 5 6 / 8 6 5 > | R = 3 5 > / 8 5 3 > | R = 2 3 5 / 8 7 5 > | R = 5 6 > / R 5 3 >

theme midrun 3-5: a swung pair on two, on the way up or down
S x=xxx=x= R 3 4 5 > | R 2 3 5 > | R 5 6 5 > | 8 7 6 5 > | R 3 2 3 > | R 3 4 5 6 | R _6 _7 R > | 8 6 5 3 > | R 5 6 8 > | R 3 5 6 >
A x=x=x=x= %down
L x=xxx=x= 8 9 10 8 > | 5 6 7 8 > !co | R 3 5 8 > | 8 7 8 10 >
C x=x=x=x= %down
C x=xx--xx R 3 4 >> > | 8 7 6 >> > | 8 6 5 >> > | R 5 6 >> >
T x=x=x=xx %turn5
T x=--x=xx R 5 >> > | R 3 >> > | 8 6 >> > | 8 5 >> >
H x=x= R > | R 3 | R 5 | 8 >
H x=xx R >> > | R 3 >
S+A x=xxx=x= x=x=x=x= R 3 4 5 6 / 8 6 5 > | R 2 3 5 > / R 5 3 > | 8 7 6 5 > / R 3 5 > | R 3 5 6 > / 8 5 3 >

theme gap 3-5: quarters, answered by two and a pickup after a hole
S x=x=x=x= %up
A x=x=--xx R 3 >> > | R 5 >> > | 8 5 >> > | 8 6 >> > | R _5 >> > | R _6 >> > | 8 c >> >
L x=x=x=x= %lift
C x=x=x=x= %down
C x=x=x=-- R 3 5 | 8 6 5 | R 5 3 | R _6 _5
T x=x=x=xx %turn5
T x=x=--xx R 5 >> > | 8 5 >> > | R _5 >> > | 8 6 >> >
H x=x= R > | R 3 | R 5 | 8 >
S+A x=x=x=x= x=x=--xx R 3 5 6 / 8 6 >> > | R 3 5 > / 8 5 >> > | R 2 3 5 / R 5 >> > | 8 6 5 > / R 3 >> >

theme rolling 4-5: quarters with sixteenths as a pickup, once a phrase
S x=x=x=x= %up
A x=x=x=x= %down
L x=x=x=x= %lift
C x=x=x=x= %down
C x=x=--xx R 3 >> > | R 5 >> > | 8 6 >> >
T x===x===x===x=xx R 3 5 3 >> > | 8 5 3 R >> > | R 5 6 5 >> > | 8 6 5 3 >> >
H x=x= R > | R 3 | R 5 | 8 > | R _5
S+A x=x=x=x= x=x=x=x= R 3 5 c / 8 6 5 > | R 3 5 6 / 8 c 5 > | R 5 c > / 8 5 3 >

metre 3/4
pool up = R 3 5 | R 3 > | R 5 > | R 2 3 | R 5 6 | R >> > | R _5 _6 | 3 5 > !co | R 5 8 | R 3 6
pool down = 8 5 3 | 8 6 > | 8 5 > | R _7 > | R _5 > | R >> > | 8 >> > | 5 3 > !co | R 5 3 | 8 7 >
theme basic 0-2: three quarters on the chord
S x=x=x= R = = | R 5 = | R 5 8 | R 3 5 | R 5 3 | R 5 >
A x=x=x= 8 5 R | R 5 R | R 5 > | 8 5 3 | R 3 > | R = =
L x=x=x= R 5 8 | R 3 8 | R = = | 8 10 8
C x=x=== R 5 | R = | 8 5 | R 3
C x===x= R > | R R | R 5
T x=x=x= R 5 > | R = = | R 3 > | R _5 >
E x===== R
H x=x= R 5 | R = | R > | R 3
Q x= R | 8
theme waltz 3-5: three quarters up, three down
S x=x=x= %up
A x=x=x= %down
L x=x=x= 8 9 10 | 8 10 > | R 5 8 | R 3 8
C x=x=x= %down
C x=x=== R 5 | R 3 | 8 5 | 8 6
T x=x=xx R 5 >> > | R 3 >> > | 8 5 >> > | 8 6 >> > | R _5 >> >
T x=--xx R >> > | 8 >> >
H x=x= R > | R 3 | R 5 | 8 >
S+A x=x=x= x=x=x= R 3 5 / 8 6 > | R 5 6 / 8 5 3 | R 2 3 / 8 5 > | R 3 > / 8 5 >
theme lilt 3-5: a swung pair on two
S x=xxx= R 3 4 5 | R 2 3 > | R 5 6 5 | R 3 5 > | 8 7 6 > | R 5 3 >
A x=x=x= %down
L x=xxx= 8 9 10 > | 5 6 8 > !co | R 3 5 8
C x=x=x= %down
C x=x=== R 5 | R 3 | 8 5 | 8 6
T x=x=xx R 5 >> > | R 3 >> > | 8 5 >> > | R _5 >> >
H x=x= R > | R 3 | R 5
H x=xx R >> >
`,
  EARLY_SKA_TUNES,
);
