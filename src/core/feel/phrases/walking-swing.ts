import { COMMON_PRACTICE } from '../rows';
import { phraseBook } from './notation';
import { WALKING_SWING_TUNES } from './tunes/walking-swing';

/**
 * Walking swing: even quarters, harmony on one and three, motion on two and four, and an approach on four that takes
 * its whole quarter. A scale bar is answered by an arpeggio; now and then a skip, once in a while a breath.
 */
export const WALKING_SWING_PHRASES = phraseBook(
  { manner: 'walk', chromatics: 'a beat', blues: false, source: COMMON_PRACTICE },
  `
metre 4/4
pool up = R 3 5 > | R 2 3 > | R 2 3 5 | R 2 3 4 | 8 5 6 c | 8 3 4 5 | R _5 _6 _7 | R 2 3 R | R _7 R > | 8 5 c > | R _5 R > | R 3 5 c | R 3 >> > | R 5 >> > | R 5 c > | R 3 5 6 | R >>> >> > | 3 5 c > !co | R 3 4 > | R 5 6 > | R 3 c 5 | R 5 3 > | R 6 5 > | R _5 _7 R | R 2 3 b3 | R 3 6 >
pool down = 8 c 5 > | 8 7 6 > | 8 5 3 2 | 8 5 4 > | 8 3 2 > | R 5 3 2 | R 3 2 _7 | R _7 R > | 8 c 5 3 | 8 c 6 5 | 8 7 6 5 | 8 5 3 > | 8 6 5 > | 5 3 2 > !co | 5 4 3 > !co | c 5 3 > !co | R _7 _6 > | R _7 _5 > | R _7 _6 _5 | R _5 >> > | 8 c 3 > | 8 c #4 5 | R 5 #4 > | 3 5 3 > !co
pool lift = 8 9 10 > | 8 10 9 > | 8 10 8 > | R 3 5 8 | R 5 8 > | 3 5 c 8 !co | 5 6 c 8 !co | 5 c 8 > !co | 8 9 8 c
pool turn = R >>> >> > | R 5 >> > | R 3 >> > | 8 5 >> > | R _5 >> > | R 3 5 > | 8 7 6 > | R 5 3 > | 8 c 5 >
pool skips = R 3 5 >> > | 8 5 3 >> > | R 5 3 >> > | R _5 R >> > | 8 c 5 >> > | R 2 3 >> >
pool triads = R 3 5 > | R 5 3 5 | R 3 5 8 | R 3 5 3 | R 3 8 5 | R 8 5 3 | R R 3 5 | R 3 5 5 | R 5 8 5 | R 3 R > | R 5 3 > | R _5 R 3 | R 8 5 > | R 5 R 3
pool falls = 8 5 3 > | 8 5 3 5 | 8 5 R > | 5 3 R > !co | R _5 R > | 8 3 5 > | R 5 3 > | R 3 R _5 | 8 5 8 >
theme basic 0-0: root and fifth, four to the bar
S x=x=x=x= R = 5 5 | R 5 R 5 | R = = = | R 5 8 5 | R = 5 R | R 8 5 R | R 5 8 > | R = 5 >
A x=x=x=x= 8 5 R 5 | R 5 8 5 | R = 5 > | R _5 R > | R _5 R _5 | R = = = | R 5 R >
L x=x=x=x= R 5 8 5 | 8 5 8 > | R = 8 8 | R = = =
C x=x=x=== R 5 R | R = 5 | 8 5 R | R _5 R | R = =
C x===x=x= R 5 > | R = = | 8 5 >
T x=x=x=x= R 5 R > | R = 5 > | R _5 R > | R = = =
E x=x=x=== R 5 R | R _5 R | 8 5 R
E x===x=== R = | R _5
T x===x=x= R 5 > | R R >
H x=x= R 5 | R > | R = | R _5 | R 8
Q x= R | 8 | 3 !co
theme fifths 1-1: root, fifth and octave in quarters, up in one bar and down in the next
S x=x=x=x= R 5 8 5 | R R 5 8 | R 5 8 > | R R _5 R | R 5 5 > | R R 5 5 | R _5 _5 R | R 8 5 >
A x=x=x=x= 8 5 R 5 | 8 5 R > | R 5 R > | R _5 R > | 8 5 8 > | 8 8 5 5 | 8 5 5 >
L x=x=x=x= R 5 8 5 | 8 5 8 5 | 8 5 8 > | R 5 8 8
C x=x=x=x= R 5 R > | 8 5 R > | R _5 R >
T x=x=x=x= R 5 8 > | 8 5 R > | R 5 R > | R _5 R >
T x=x=--x= R 5 > | 8 5 > | R _5 >
H x=x= R 5 | R > | R _5 | 8 >
S+A x=x=x=x= x=x=x=x= R 5 8 5 / 8 5 R > | R R 5 8 / 8 5 R > | R R _5 R / R 5 R > | R R 5 5 / 8 8 5 5
S+A+S+C x=x=x=x= x=x=x=x= x=x=x=x= x=x=x=x= R 5 8 5 / 8 5 R > / R 5 8 5 / R 5 R > | R 5 R 5 / R 5 8 > / R 5 R 5 / 8 5 R > | R _5 R _5 / R 5 R > / R _5 R _5 / R _5 R >
S+A+S+T x=x=x=x= x=x=x=x= x=x=x=x= x=x=--x= R 5 8 5 / 8 5 R > / R 5 8 5 / R 5 > | R 5 R 5 / R 5 8 > / R 5 R 5 / 8 5 > | R _5 R _5 / R 5 R > / R _5 R _5 / R 5 >
S+A+L+T x=x=x=x= x=x=x=x= x=x=x=x= x=x=x=x= R 5 R 5 / R 5 R > / 8 5 8 5 / R 5 R > | R _5 R _5 / R 5 R > / R 5 8 5 / R _5 R >

theme chords 2-2: the triad on one and three, the nearest chord tone on four
S x=x=x=x= %triads
A x=x=x=x= %falls
L x=x=x=x= R 3 5 8 | 8 10 8 > | R 5 8 > | 8 10 8 5
C x=x=x=x= %falls
C x=x=x=== R 3 5 | 8 5 R | R 5 3 | R _5 R
C x=x=x=-- R 3 5 | 8 5 3 | R 5 R
T x=x=x=x= R 3 5 > | R 5 3 > | 8 5 3 > | R _5 R >
T x=--x=x= R 5 > | R 3 > | 8 5 >
H x=x= R 3 | R > | R 5 | 8 > | R _5
S+A x=x=x=x= x=x=x=x= R 3 5 > / 8 5 3 > | R 3 5 8 / 8 5 3 > | R 5 3 > / R 3 5 > | R R 3 5 / 8 5 3 > | R 8 5 3 / R 3 5 > | R 3 8 5 / 8 5 3 5
S+A+S+A x=x=x=x= x=x=x=x= x=x=x=x= x=x=x=x= R 3 5 > / 8 5 3 > / R 3 5 8 / 8 5 3 > | R R 3 5 / 8 5 3 > / R R 3 5 / R 5 3 > | R 5 3 > / R 3 5 > / R 5 3 > / 8 5 3 5
S+A+L+T x=x=x=x= x=x=x=x= x=x=x=x= x=x=x=x= R 3 5 > / 8 5 3 > / R 3 5 8 / R 5 3 > | R R 3 5 / R 5 3 > / R 5 8 > / 8 5 3 >

theme kick 2-2: the triad with a swung pair on four, going on its way
S x=x=x=xx R 3 5 5 3 | R 3 5 8 5 | R 5 3 3 5 | R R 3 5 > | 8 5 3 3 > | R 3 5 3 >
A x=x=x=x= 8 5 3 > | R 5 3 > | R 3 5 > | R _5 R > | 8 5 R >
L x=x=x=x= R 3 5 8 | 8 10 8 > | R 5 8 >
C x=x=x=xx 8 5 3 5 > | R 5 3 5 >
C x=x=x=x= 8 5 3 >
T x=x=x=xx R 3 5 5 > | R 5 3 5 > | 8 5 3 3 >
T x=x=x=x= R 3 5 > | R 5 3 >
H x=x= R 3 | R > | R 5 | 8 >
H x=xx R 3 > | R 5 >
S+A x=x=x=xx x=x=x=x= R 3 5 5 3 / 8 5 3 > | R 3 5 8 5 / R 5 3 > | R 5 3 3 5 / R 3 5 > | R R 3 5 > / 8 5 3 >

theme pure 3-5: scale up, arpeggio down, always a quarter ahead
S x=x=x=x= %up
A x=x=x=x= %down
L x=x=x=x= %lift
C x=x=x=x= %down
C x=x=x=== R 3 5 | 8 c 5 | R 5 3 | R 2 3 | R _7 _6
C x===x=x= R 5 > | R 3 > | 8 c > | R >> >
T x=x=x=x= %turn
T x=x=x=xx %skips
E x=x=x=== R 3 R | R _5 R | 8 5 R | R 5 6
H x=x= R > | R 3 | R 5 | 8 > | 8 c | R 2 | R _7 | R _5
S+A x=x=x=x= x=x=x=x= R 2 3 5 / 8 c 5 > | R 3 5 c / R _7 _6 > | R 2 3 > / 8 5 3 > | R 3 5 > / 8 7 6 5 | R 5 c > / 8 5 3 2 | R _5 _6 _7 / R 3 5 >

theme arc 3-5: down first, the answer climbs
S x=x=x=x= %down
A x=x=x=x= %up
L x=x=x=x= %lift
C x=x=x=x= %up
C x=x=x=== R 5 3 | 8 c 5 | R _5 R | R _7 _6
T x=x=x=x= %turn
T x=x=x=xx %skips
H x=x= R > | R 3 | R 5 | 8 > | 8 c | R 2 | R _7
S+A x=x=x=x= x=x=x=x= 8 c 5 > / R 2 3 5 | 8 7 6 5 / R 3 5 > | 8 c 6 5 / R 5 6 > | R _7 _6 > / R 3 5 c | 8 5 3 > / R 2 3 >

theme skip 3-5: a swung skip on two in every second bar
S x=x=x=x= %up
A x=xxx=x= R 5 = 3 > | 8 5 = 3 > | R 3 = 5 > | 8 c 6 5 > | R 5 6 5 > | R 3 2 R > | R _7 _6 _5 > | 8 c = 5 > | R 3 4 5 >
A x=x=x=x= %down
L x=x=x=x= %lift
C x=x=x=x= %down
C x=xxx=== R 3 = 5 | 8 c 6 5 | R 5 = 3
T x=x=x=xx %skips
T x=x=x=x= %turn
H x=x= R > | R 3 | R 5 | 8 > | 8 c | R _7
H x=xx R >> > | R 3 >
S+A x=x=x=x= x=xxx=x= R 2 3 5 / 8 c 6 5 > | R 3 5 c / 8 5 = 3 > | R 3 5 > / R 5 6 5 > | 8 c 5 > / R 3 4 5 >

theme late 3-5: quarters, and a breath on three with a pair that leads
S x=x=x=x= %up
A x=x=x=xx %skips
A x=x=x=x= %down
L x=x=x=x= %lift
C x=x===xx R 3 >> > | 8 5 >> > | R 5 >> > | 8 c >> > | R _7 >> >
C x=x=x=-- R 3 5 | 8 c 5 | R 5 3
T x=x=x=xx %skips
T x=--x=xx R 5 >> > | 8 c >> > | R 3 >> >
H x=x= R > | R 3 | R 5 | 8 > | 8 c
H x=xx R >> > | 8 >> >
S+A x=x=x=x= x=x=x=xx R 2 3 5 / 8 c 5 >> > | R 3 5 6 / R 5 3 >> > | R 3 5 > / 8 5 3 >> > | 8 7 6 > / R 2 3 >> >

metre 3/4
pool up = R 3 5 | R 3 > | R 5 > | R 2 3 | R 5 6 | R >> > | R _5 _6 | 3 5 > !co | R 5 8 | R 3 6 | R 5 c | R 2 >
pool down = 8 5 3 | 8 6 > | 8 5 > | R _7 > | R _5 > | 8 >> > | 5 3 > !co | R 5 3 | 8 7 > | 8 c 5 | 8 c >
theme basic 0-2: root, and two notes of the chord
S x=x=x= R = = | R 5 = | R 5 8 | R 3 5 | R 5 3 | R 5 > | R = 5
A x=x=x= 8 5 R | R 5 R | R 5 > | 8 5 3 | R 3 > | R = =
L x=x=x= R 5 8 | R 3 8 | R = = | 8 10 8
C x=x=== R 5 | R = | 8 5 | R 3
C x===x= R > | R R | R 5
T x=x=x= R 5 > | R = = | R 3 > | R _5 >
E x===== R
H x=x= R 5 | R = | R > | R 3
Q x= R | 8
theme pure 3-5: three quarters up, three down
S x=x=x= %up
A x=x=x= %down
L x=x=x= 8 9 10 | 8 10 > | R 5 8 | R 3 8 | 8 9 8
C x=x=x= %down
C x=x=== R 5 | R 3 | 8 5 | 8 c
T x=x=xx R 5 >> > | R 3 >> > | 8 5 >> > | 8 c >> >
T x=x=x= R >> > | 8 >> > | R 3 > | R 5 >
H x=x= R > | R 3 | R 5 | 8 >
S+A x=x=x= x=x=x= R 2 3 / 8 5 > | R 3 5 / 8 6 > | R 5 c / 8 5 3 | R 3 > / R _7 >
theme skip 3-5: a swung pair on two
S x=xxx= R 3 4 5 | R 2 3 > | R 5 6 5 | R 3 5 > | 8 7 6 > | R 5 3 > | 8 c 5 >
A x=x=x= %down
L x=xxx= 8 9 10 > | R 3 5 8 | 8 9 10 8
C x=x=x= %down
C x=x=== R 5 | R 3 | 8 5
T x=x=xx R 5 >> > | R 3 >> > | 8 5 >> > | R _5 >> >
T x=x=x= R >> > | R 5 >
H x=xx R >> > | R 3 >
; Three and two: the chord is set on one and again on four, and the fifth quarter leads.
metre 5/4
pool up = R 3 5 6 > | R 2 3 5 > | R 3 5 8 > | R 5 6 5 > | R 2 3 4 5 | R 3 5 c > | R _5 _6 _7 R | R 3 4 5 > | 8 5 6 c > | R 2 3 R > | R 5 3 5 > | R 3 2 3 >
pool down = 8 c 5 3 > | 8 7 6 5 > | 8 5 3 2 > | R _7 _6 _5 > | 8 6 5 3 > | R 3 2 _7 > | 8 c 6 5 > | R 5 3 2 > | 8 5 4 3 > | R _7 R _5 >
theme basic 0-1: the root, the fifth, and the root again on four
S x=x=x=x=x= R 5 R R 5 | R = = = = | R = 5 R 5 | R 5 8 R 5 | R 5 R 8 >
A x=x=x=x=x= R 5 R 5 > | R = 5 R > | R _5 R 5 > | R = = = = | 8 5 R 5 >
L x=x=x=x=x= R 5 8 5 8 | R = = = = | 8 5 8 R >
C x=x=x=x=== R 5 R R | R = = = | 8 5 R R | R 5 R _5
C x=====x=== R R | R 5
T x=x=x=x=x= R 5 R 5 > | R = 5 R > | R = = = = | R _5 R _5 >
E x=====x=== R R | R _5 | R 5
H x=x= R 5 | R > | R = | R _5 | R 8
Q x= R | 8 | 5 !co
theme chords 2-2: the triad in three, root and a chord tone in two
S x=x=x=x=x= R 3 5 R 5 | R 5 3 R 3 | R 3 5 8 5 | R 3 R 5 > | 8 5 3 R 5
A x=x=x=x=x= 8 5 3 R > | R 5 3 5 > | R _5 R 3 > | R 3 5 R >
L x=x=x=x=x= R 3 5 8 5 | 8 10 8 5 > | R 5 8 5 8
C x=x=x=x=== R 3 5 R | 8 5 3 R | R 5 3 5
C x=====x=x= R 5 > | R 3 >
T x=x=x=x=x= R 3 5 R > | R 5 3 5 > | 8 5 3 5 >
T x=x=x=x=-- R 3 5 R | R 5 3 R
H x=x= R 3 | R > | R 5

theme pure 3-5: up in five, down in five, the last quarter ahead
S x=x=x=x=x= %up
A x=x=x=x=x= %down
L x=x=x=x=x= 8 9 10 8 > | 8 10 9 8 > | R 3 5 8 9 | R 5 8 9 10
C x=x=x=x=== R 3 5 6 | 8 c 5 3 | R 2 3 5 | 8 6 5 R
C x=x=x=x=-- R 3 5 3 | 8 5 3 R
T x=x=x=x=xx R 3 5 3 >> > | 8 c 5 3 >> > | R 5 3 R >> > | R _5 _6 _5 >> >
T x=x=x=x=x= R 5 3 >> > | R 3 5 >> > | 8 5 3 >> >
H x=x= R > | R 3 | R 5 | 8 > | 8 c
S+A x=x=x=x=x= x=x=x=x=x= R 2 3 5 > / 8 c 5 3 > | R 3 5 6 > / 8 7 6 5 > | R 3 5 c > / R _7 _6 _5 > | R 2 3 4 5 / 8 5 3 2 >

theme skip 3-5: a swung pair on two of the answer
S x=x=x=x=x= %up
A x=xxx=x=x= R 3 4 5 3 > | 8 7 6 5 3 > | R 5 6 5 3 > | R 5 = 3 5 > | 8 c = 5 3 >
A x=x=x=x=x= %down
L x=xxx=x=x= 8 9 8 10 8 > | R 3 5 8 9 10
C x=xxx=x=== R 3 4 5 R | 8 7 6 5 R
C x=x=x=x=== R 3 5 6 | 8 c 5 3
T x=x=x=x=xx R 3 5 3 >> > | 8 c 5 3 >> >
T x=xxx=x=xx R 3 4 5 3 >> > | R 5 6 5 3 >> >
H x=x= R > | R 3 | 8 > | 8 c
H x=xx R >> > | R 3 >
S+A x=x=x=x=x= x=xxx=x=x= R 2 3 5 > / 8 7 6 5 3 > | R 3 5 6 > / R 5 6 5 3 > | R 3 5 c > / R 3 4 5 3 >

theme parts 3-5: three quarters, then a breath on four with a pair that leads
S x=x=x=x=x= %up
A x=x=x=--xx R 3 5 >> > | 8 5 3 >> > | R 5 3 >> > | 8 c 5 >> >
A x=x=x=x=x= %down
L x=x=x=x=xx 8 9 10 8 >> > | R 3 5 8 >> >
C x=x=x===== R 3 5 | 8 5 3 | R 5 R
C x=x=x=--x= R 3 5 > | 8 5 3 >
T x=x=x=--xx R 5 3 >> > | R 3 5 >> > | R _5 R >> >
T x=x=x=x=xx R 3 5 3 >> > | 8 c 5 3 >> >
H x=xx R >> > | R 3 >
S+A x=x=x=x=x= x=x=x=--xx R 2 3 5 > / 8 5 3 >> > | R 3 5 6 > / R 5 3 >> > | R 5 6 5 > / 8 c 5 >> >
`,
  WALKING_SWING_TUNES,
);
