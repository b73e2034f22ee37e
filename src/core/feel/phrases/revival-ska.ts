import { COMMON_PRACTICE } from '../rows';
import { phraseBook } from './notation';
import { REVIVAL_SKA_TUNES } from './tunes/revival-ska';

/**
 * Fast revival ska: straight, tight and bouncing. One and three are firm, an eighth pair gives the bounce; a bar
 * that rises square is answered by one that falls over three. Never eight bars of eighths without a rest.
 */
const PHRASES_IN_FOUR = `
pool up = R 3 5 > | R 3 5 6 | R 5 6 > | R 5 8 > | R 3 5 8 | R 2 3 > | 8 5 6 > | R _5 _6 > | 8 3 5 > | R 3 >> > | 8 5 6 7 | R 3 4 5 | R 5 6 5 | R 3 6 5
pool down = 8 6 5 > | 8 5 3 > | 8 7 6 > | 8 5 >> > | R _6 _5 > | 5 3 2 > !co | R 5 3 > | R _5 >> > | 8 5 3 2 | 8 6 5 3 | R _7 _6 > | 8 c 5 >
pool skips = R 3 5 >> > | R 5 3 >> > | 8 6 5 >> > | 8 5 3 >> > | R _5 _6 >> > | R 2 3 >> > | R 3 5 6 5
theme basic 0-0: root and fifth on the beat
S x=x=x=x= R = = = | R 5 R 5 | R = 5 = | R 5 8 5 | R _5 R _5 | R 8 5 R | R = 5 > | R = 8 5
A x=x=x=x= 8 5 R 5 | R = 5 > | R 5 R > | R _5 R > | R = = = | 8 = 5 R
L x=x=x=x= R 5 8 5 | 8 5 8 > | R = 8 = | R = = =
C x=x=x=-- R 5 R | R = 5 | 8 5 R | R _5 R | R = =
C x=x=x=== R 5 R | R = 5 | R = =
T x=x=x=x= R = 5 > | R 5 R > | R _5 R > | R = = =
T x=--x=x= R 5 > | R = = | R R >
E x=x=x=== R 5 R | R _5 R | 8 5 R | R = =
H x=x= R 5 | R = | R > | R 8 | R _5
Q x= R | 8
theme hop 1-1: root and fifth in a bounce, answered from the fifth below
S x=x=xxx= R = 5 5 R | R 5 R R 5 | R _5 R R _5 | R = _5 _5 R | R 5 8 8 5 | R _5 _5 _5 R
A x=x=x=x= R 5 R > | R _5 R > | R _5 _5 > | R = _5 >
A x=x=xxx= R _5 R R > | R 5 5 R > | 8 5 5 R >
L x=x=xxx= R 5 8 8 5 | 8 8 5 5 8 | R 8 8 5 >
C x=xxx=-- R 5 5 R | R _5 _5 R | 8 5 5 R
C x=x=x=-- R 5 R | R _5 R
T x=--xxx= R 5 5 > | R _5 _5 >
T x=x=xxx= R R 5 5 > | R 5 R 5 > | R _5 R _5 >
H x=x= R 5 | R > | R _5
H xxx= R R 5 | R R > | R R _5
S+A x=x=xxx= x=x=x=x= R = 5 5 R / R _5 R > | R _5 R R _5 / R 5 R > | R 5 R R 5 / R = _5 > | R 5 8 8 5 / R _5 _5 >
S+A x=x=xxx= x=x=xxx= R = 5 5 R / R _5 R R > | R = _5 _5 R / R 5 5 R >
S+A+S+C x=x=xxx= x=x=x=x= x=x=xxx= x=xxx=-- R = 5 5 R / R _5 R > / R 5 8 8 5 / R _5 _5 R | R _5 R R _5 / R 5 R > / R = 5 5 R / R 5 5 R | R = _5 _5 R / R 5 R > / R _5 R R _5 / 8 5 5 R
S+A+S+T x=x=xxx= x=x=x=x= x=x=xxx= x=--xxx= R = 5 5 R / R _5 R > / R 5 R R 5 / R 5 5 > | R _5 R R _5 / R 5 R > / R = _5 _5 R / R _5 _5 > | R = _5 _5 R / R 5 R > / R = 5 5 R / R 5 5 >
S+A+L+T x=x=xxx= x=x=x=x= x=x=xxx= x=--xxx= R = 5 5 R / R _5 R > / R 5 8 8 5 / R _5 _5 > | R = _5 _5 R / R 5 R > / R 8 8 5 > / R 5 5 >

theme bounce 2-2: two quarters, an eighth pair, a quarter
S x=x=xxx= R = 5 5 R | R = 3 5 3 | R R 5 3 R | R = 3 R 5 | R 5 8 5 3 | R = _5 _5 R | 8 = 5 5 3 | R = 5 3 5
A x=x=xxx= 8 5 3 5 > | R 5 3 R > | R _5 R R > | R = 3 5 > | 8 5 5 3 > | R 5 R 3 >
L x=x=xxx= R 5 8 8 5 | 8 10 8 5 > | R 3 5 5 8
C x=x=x=-- R 3 R | R 5 3 | 8 5 R | R _5 R | R = 5
C x=xxx=-- R 5 3 R | R 3 5 3 | 8 5 3 R
T x=--xxx= R 5 5 > | R 3 5 > | R 5 3 > | R _5 _5 >
T x=--x=x= R 5 > | R 3 > | R _5 >
H x=x= R 3 | R > | R 5 | R =
H xxx= R R 3 | R R > | R 3 5
S+A x=x=xxx= x=x=xxx= R = 3 5 3 / 8 5 3 5 > | R = 5 5 R / R 5 3 R > | R R 5 3 R / R = 3 5 > | R = _5 _5 R / R 5 R 3 >
S+A x=x=xxx= x=x=x=x= R = 3 5 3 / R 5 3 > | R R 5 3 R / R 3 5 > | R = 5 3 5 / R _5 R >
S+A+S+C x=x=xxx= x=x=xxx= x=x=xxx= x=xxx=-- R = 3 5 3 / 8 5 3 5 > / R R 5 3 R / R 3 5 3 | R = 5 5 R / R 5 3 R > / R = 3 5 3 / R 5 3 R | R R 5 3 R / R = 3 5 > / R 5 8 5 3 / 8 5 3 R
S+A+S+T x=x=xxx= x=x=xxx= x=x=xxx= x=--xxx= R = 3 5 3 / 8 5 3 5 > / R R 5 3 R / R 3 5 > | R R 5 3 R / R = 3 5 > / R = 3 5 3 / R 5 3 >
S+A+L+T x=x=xxx= x=x=xxx= x=x=xxx= x=--xxx= R = 3 5 3 / R 5 3 R > / R 3 5 5 8 / R 5 3 > | R = 5 3 5 / R _5 R R > / R 5 8 8 5 / R 3 5 >
`;

export const REVIVAL_SKA_PHRASES = phraseBook(
  { manner: 'walk', chromatics: 'short', blues: false, source: COMMON_PRACTICE },
  `
metre 4/4${PHRASES_IN_FOUR}
theme square 3-5: quarters up, answered by quarters with a pair on four
S x=x=x=x= %up
A x=x=x=xx %skips
A x=x=x=x= %down
L x=x=x=x= 8 10 8 > | 8 9 10 > | R 3 5 8 | R 5 8 >
C x=x=x=-- 8 6 5 | R 3 5 | R 5 3 | R _6 _5 | 8 5 3
C x=x=x=== R 5 R | R 3 > | 8 5 > | R _5 >
T x=x=x=xx %skips
T x=--x=xx R 5 >> > | R 3 >> > | 8 6 >> > | R _5 >> >
E x=x=x=== R 3 R | 8 5 R | R _5 R
H x=x= R > | R 3 | R 5 | 8 > | R _5
H x=xx R >> > | R 3 >
S+A x=x=x=x= x=x=x=xx R 3 5 6 / 8 6 5 >> > | R 5 6 > / R 5 3 >> > | R 3 5 8 / 8 5 3 >> > | 8 5 6 7 / R 3 5 >> >
S+C x=x=x=x= x=x=x=-- R 3 5 6 / 8 6 5 | R 3 4 5 / R 5 3 | R 5 6 5 / R _6 _5

theme bouncing 3-5: two quarters, a pair that springs back, a lead; the answer holds over three
S x=x=xxx= R = 3 R _5 | R = 3 4 5 | R 3 5 6 5 | R 5 6 5 3 | 8 6 5 6 5 | R = 2 3 > | R 3 5 3 > | R _5 _6 _7 > | 8 = 6 5 > | R R 3 5 6
A x=xx==x= 8 6 5 > | 8 5 3 > | R 5 3 > | R _6 _5 > | 8 c 5 > | R 3 2 >
A x=xxxxx= 8 6 5 3 2 > | R 3 5 6 5 > | 8 7 6 5 3 > | R 5 6 5 3 >
L x=x=xxx= 8 8 9 10 > | 8 10 9 8 > | R 3 5 6 8 | R 5 8 9 >
C x=xx==-- 8 6 5 | R 5 3 | R 3 R | R _6 _5
C x=xxx=-- R 3 2 R | 8 6 5 3 | R 5 6 5
T x=--xxxx R 5 3 >> > | R 3 5 >> > | R 5 6 >> > | R _5 _6 >> >
T x=--x=xx R 5 >> > | R 3 >> > | R _5 >> >
H x=x= R > | R 3 | R 5 | 8 >
H xxx= R R > | R 3 > | R 5 >
S+A x=x=xxx= x=xx==x= R = 3 R _5 / 8 6 5 > | R = 3 4 5 / 8 5 3 > | R 3 5 6 5 / R 5 3 > | R 5 6 5 3 / R _6 _5 > | 8 6 5 6 5 / R 3 2 >
S+A x=x=xxx= x=xxxxx= R 3 5 6 5 / 8 6 5 3 2 > | R = 3 4 5 / 8 7 6 5 3 > | R R 3 5 6 / R 5 6 5 3 >
S+A+L+C x=x=xxx= x=xx==x= x=x=xxx= x=xxx=-- R = 3 4 5 / 8 6 5 > / 8 10 9 8 > / 8 6 5 3 | R 3 5 6 5 / R 5 3 > / R 3 5 6 8 / R 3 2 R

theme run 3-5: a firm one, a run of three eighths through two, a firm three
S x=xxx=x= R 3 4 5 > | R 5 6 5 > | R 3 5 6 5 | R 2 3 5 > | 8 7 6 5 > | 8 6 5 3 > | R _6 _7 R > | R 3 2 R > | R 5 6 8 >
A x=x=x=x= %down
A x=x=x=xx %skips
L x=xxx=x= 8 9 10 8 > | R 5 6 8 > | 8 7 8 10 >
C x=xxx=-- R 3 4 5 | 8 6 5 3 | R 5 6 5 | R 3 2 R
C x=x=x=== R 3 5 | 8 6 5 | R 5 >
T x=xxx=xx R 3 5 3 >> > | 8 6 5 3 >> > | R 5 6 5 >> >
T x=--x=xx R 5 >> > | R 3 >> > | 8 5 >> >
H x=x= R > | R 3 | R 5 | 8 >
H x=xx R >> > | R 3 >
S+A x=xxx=x= x=x=x=x= R 3 4 5 > / 8 6 5 > | R 5 6 5 > / 8 5 3 > | R 2 3 5 > / R 5 3 > | 8 7 6 5 > / R 3 5 >
S+C x=xxx=x= x=xxx=-- R 3 5 6 5 / 8 6 5 3 | R 3 4 5 > / R 3 2 R

theme pump 3-4: eighths in pairs, broken by a stop before every turn
S xxxxxxx= R = 3 = 5 = > | R = 5 = 6 = 5 | 8 = 6 = 5 = > | R = 3 = 5 = 6 | R = _6 = _5 = > | R = 5 = 3 = >
A xxxxx=-- 8 = 6 = 5 | 8 = 5 = 3 | R = 5 = 3 | R = _6 = _5 | R = 3 = 5
A xxxxx=x= 8 = 6 = 5 > | 8 = 5 = 3 > | R = 3 = 5 >
L xxxxxxx= 8 = 10 = 8 = > | R = 3 = 5 = 8 | 8 = 9 = 10 = >
C xxxxx=-- 8 = 6 = 5 | R = 5 = R | R = 3 = R
C x=x=x=-- 8 5 R | R 3 R
T x=--xxxx R 5 3 >> > | R 3 5 >> > | R 5 6 >> >
T xxxxx=xx R = 3 = 5 >> > | 8 = 6 = 5 >> > | R = 5 = 3 >> >
H xxx= R = > | R = 3 | 8 = >
H xxxx R = >> > | R = 3 >
S+A xxxxxxx= xxxxx=-- R = 3 = 5 = 6 / 8 = 6 = 5 | R = 5 = 6 = 5 / 8 = 5 = 3 | R = 3 = 5 = > / R = 5 = 3
S+A xxxxxxx= xxxxx=x= R = 3 = 5 = 6 / 8 = 6 = 5 > | 8 = 6 = 5 = > / R = 3 = 5 >

metre 2/2${PHRASES_IN_FOUR}
theme square 3-5: quarters up, quarters down, with a pair that leads
S x=x=x=x= %up
A x=x=x=xx %skips
A x=x=x=x= %down
L x=x=x=x= 8 10 8 > | 8 9 10 > | R 3 5 8
C x=x=x=-- 8 6 5 | R 3 5 | R 5 3
C x=x=x=== R 5 R | R 3 > | 8 5 >
T x=x=x=xx %skips
T x=--x=xx R 5 >> > | R 3 >> >
H xx R > | R 3 | R 5 | 8 >
S+A x=x=x=x= x=x=x=xx R 3 5 6 / 8 6 5 >> > | R 5 6 > / R 5 3 >> >
theme bouncing 3-5: two quarters, a pair that springs back, a lead
S x=x=xxx= R = 3 R _5 | R = 3 4 5 | R 3 5 6 5 | R 5 6 5 3 | R = 2 3 > | 8 = 6 5 >
A x=xx==x= 8 6 5 > | 8 5 3 > | R 5 3 > | R _6 _5 >
L x=x=xxx= 8 8 9 10 > | R 3 5 6 8
C x=xx==-- 8 6 5 | R 5 3 | R 3 R
T x=--xxxx R 5 3 >> > | R 3 5 >> > | R 5 6 >> >
T x=--x=xx R 5 >> > | R 3 >> >
H xx R > | R 3 | R 5
theme run 3-5: a firm one, a run through two, a firm three
S x=xxx=x= R 3 4 5 > | R 5 6 5 > | R 2 3 5 > | 8 6 5 3 > | R 3 2 R >
A x=x=x=x= %down
L x=xxx=x= 8 9 10 8 > | R 5 6 8 >
C x=xxx=-- R 3 4 5 | 8 6 5 3 | R 3 2 R
T x=xxx=xx R 3 5 3 >> > | 8 6 5 3 >> >
T x=--x=xx R 5 >> > | 8 5 >> >
H xx R > | R 3
; As a fast polka: half a bar of four at a time, two bars belong together.
metre 2/4
theme basic 0-1: root and fifth on the beat
S x=x= R = | R 5 | R _5 | R 8
A x=x= 8 5 | R > | R 5 | R = | 5 R !co
L x=x= R 8 | 8 5 | R =
C x=x- R R | R 5 | 8 5
C x=== R | 8
T x=x= R > | R = | 8 >
E x=== R | 8
H x=x= R 5 | R = | R > | R _5
Q x= R | 8 | 5 !co
S+A x=x= x=x= R = / R = | R 5 / 8 5 | R 5 / R > | R _5 / R >
theme bounce 1-2: a quarter and a pair, two quarters that answer
S x=xx R 5 5 | R 3 5 | R R 5 | R 5 8 | R 5 3 | 8 5 3
A x=x= 8 5 | R > | R _5 | 5 > !co | R 3
A xxx= R R 5 | 8 5 R | R 3 5 | R 5 >
L x=xx 8 8 5 | R 5 8 | 8 10 8
C x=x- R 5 | 8 5 | R R
T x=xx R 5 > | R 3 > | R R >
T x=x= R > | 8 >
H x=xx R 5 5 | R 3 >
S+A x=xx x=x= R 5 5 / 8 5 | R 3 5 / R > | R 5 8 / 5 > !co | R 5 3 / R _5
S+A+S+C x=xx x=x= x=xx x=x- R 5 5 / R > / R 5 8 / R 5 | R 3 5 / R > / R 5 3 / 8 5

theme square 3-5: the triad in two bars, up and down again
S x=x= R 3 | R 5 | 8 6 | R _6 | R 2
A x=x= 5 > !co | 5 6 !co | 8 > | R > | 5 3 !co
A x=xx 5 >> > !co | R >> > | 8 >> >
L x=x= 8 10 | 8 9 | R 8 | 5 8 !co
C x=x- R 3 | R 5 | 8 5
C x=x= R R | R 5
T x=xx R >> > | 8 >> > | 5 3 > !co
T xxxx R 3 >> > | 8 6 >> > | R 5 >> >
H x=xx R >> > | R 3 >
S+A x=x= x=x= R 3 / 5 6 !co | R 3 / 5 > !co | R 5 / 8 > | R 2 / 3 > !co | 8 6 / 5 3 !co
S+A x=x= x=xx R 3 / 5 >> > !co | R 5 / R >> > | 8 6 / 5 >> > !co
S+A+S+C x=x= x=x= x=x= x=x- R 3 / 5 6 !co / R 3 / R 5 | R 3 / 5 > !co / 8 6 / R 3

theme bouncing 3-5: a pair on two that springs back, and a bar that falls
S x=xx R 3 5 | R 3 > | R 5 6 | R 5 3 | 8 6 5 | R _5 _6
A x=xx R 5 > | 8 6 > | R 3 > | 5 3 > !co
A xxx= 8 6 5 | R 5 3 | R 3 5 | R 3 >
L x=xx 8 9 10 | 8 10 9 | R 5 8
C x=x- R 5 | 8 5 | R 3
C xxx- R 3 R | 8 6 5
T xxxx R 3 >> > | R 5 >> > | 8 6 >> > | R 3 5 >
T x=xx R >> > | 8 >> >
H x=xx R >> > | R 5 >
S+A x=xx x=xx R 3 5 / R 5 > | R 5 6 / 8 6 > | R 5 3 / R 3 > | R _5 _6 / 5 3 > !co
S+A x=xx xxx= R 3 5 / 8 6 5 | R 5 6 / R 5 3 | 8 6 5 / R 3 >
S+A+L+C x=xx x=xx x=xx xxx- R 3 5 / R 5 > / 8 9 10 / 8 6 5 | R 5 3 / R 3 > / R 5 8 / R 3 R

theme run 3-5: eighths that run up, two quarters to land
S xxxx R 3 4 5 | R 2 3 5 | R 5 6 5 | R 3 5 6 | 8 6 5 3 | 8 7 6 5
A x=x= R > | 8 > | R 5 | R 3
A xxx= 8 6 5 | R 3 > | R 5 3
L xxxx 8 9 10 8 | R 5 6 8 | R 3 5 8
C x=x- R 5 | R 3
C xxx- R 3 R | 8 6 5
T xxxx R 3 >> > | 8 6 >> > | R 5 >> >
T x=xx R >> > | 8 >> >
S+A xxxx x=x= R 3 4 5 / 8 > | R 2 3 5 / R > | 8 7 6 5 / R 3 | R 5 6 5 / R >
S+A+S+C xxxx x=x= xxxx x=x- R 3 4 5 / 8 > / 8 6 5 3 / R 5 | R 2 3 5 / R > / R 5 6 5 / R 3

; Two, two and three, as in the round dances of the Balkans: the long beat has a note more.
metre 7/8
theme basic 0-1: the root on each of the three beats, the last one long
S x=x=x== R = = | R 5 R | R = 5 | R _5 R | R 8 5
A x=x=x== 8 5 R | R 5 > | R = = | R _5 > | R R 5
L x=x=x== R 5 8 | R = 8 | R = =
C x=x=x-- R 5 R | R = = | 8 5 R
C x===x== R R | R 5 | R _5
T x=x=x== R = = | R 5 > | R _5 > | R R >
E x=x=x== R 5 R | R = = | R _5 R
H x=x= R 5 | R = | R >
D x== R | 8
D x=x R > | R 5
Q x= R | 8
theme turning 1-2: two beats even, and the long one turned in three eighths
S x=x=xxx R = 5 5 R | R 5 R R 5 | R R 3 5 3 | R 3 5 5 3 | R 5 8 5 3
A x=x=x=x 8 5 R > | R 5 5 > | R 3 5 > | R R 5 >
A x=x=x== 8 5 3 | R 5 > | R _5 > | R 3 >
L x=x=xxx R 5 8 8 5 | 8 8 10 8 5
C x=x=x-- R 3 5 | 8 5 R | R 5 R
T x=x=x=x R 5 R > | R 3 5 > | 8 5 5 >
T x=x=xxx R 5 R R > | R 3 5 5 >
H xxx= R R 5 | R 3 5
D xxx R R > | R 5 3
D x=x R > | R 5
S+A x=x=xxx x=x=x=x R = 5 5 R / 8 5 R > | R 3 5 5 3 / R 3 5 > | R R 3 5 3 / R 5 5 >

theme square 3-5: up the chord on the three beats, down again with a note that leads
S x=x=x== R 3 5 | R 5 6 | 8 6 5 | R 3 6 | R 5 8
A x=x=x=x 8 6 5 > | 8 5 3 > | R 5 3 > | R _6 _5 > | R 3 5 >
L x=x=x=x 8 9 10 > | R 5 8 > | 8 10 8 >
C x=x=x-- R 3 5 | 8 6 5 | R 5 3
C x===x== R 5 | 8 5 | R 3
T x=x=xxx R 5 3 >> > | R 3 5 >> > | 8 6 5 >> >
T x=x=x=x R 3 5 > | 8 5 3 >
H x=x= R 3 | R > | R 5
D x=x R > | R 5 | 8 >
D xxx R >> > | R 3 >
S+A x=x=x== x=x=x=x R 3 5 / 8 6 5 > | R 5 6 / R 5 3 > | 8 6 5 / R 3 5 > | R 3 6 / 8 5 3 > | R 5 8 / R _6 _5 >
S+C x=x=x== x=x=x-- R 3 5 / 8 6 5 | R 5 6 / R 5 3

theme bouncing 3-5: pairs on the first two beats, the long one rings
S xxxxx== R 3 4 5 6 | R R 3 3 5 | R 5 6 5 3 | 8 7 6 5 3 | R 2 3 4 5
A xxx=x=x 8 6 5 3 > | R 3 5 3 > | R 5 3 2 > | R R 5 3 >
A x=x=xxx 8 5 3 >> > | R 5 3 >> > | R 3 5 >> >
L xxxxx=x 8 9 10 9 8 > | R 3 5 6 8 >
C xxxxx-- R 3 4 5 3 | 8 7 6 5 3
C x=x=x-- R 3 5 | R 5 R
T x=x=xxx R 5 3 >> > | 8 6 5 >> >
T xxx=xxx R 3 5 3 >> > | 8 6 5 3 >> >
H xxxx R 3 4 5 | R 5 >> >
D xxx R >> > | R 5 >
S+A xxxxx== xxx=x=x R 3 4 5 6 / 8 6 5 3 > | R R 3 3 5 / R 3 5 3 > | R 5 6 5 3 / R 5 3 2 > | 8 7 6 5 3 / R 3 5 3 >
S+A xxxxx== x=x=xxx R 3 4 5 6 / 8 5 3 >> > | R 5 6 5 3 / R 3 5 >> >

theme spinning 3-5: two quarters, and the long beat spins in eighths
S x=x=xxx R 3 5 6 5 | R 5 6 5 3 | R R 3 4 5 | 8 6 5 3 2 | R 5 3 5 6 | R 3 5 3 >
A x=x=xxx 8 6 5 3 > | R 5 8 6 > | R 3 5 >> > | 8 5 3 >> >
A x=x=x== 8 5 > | R 3 > | R _5 > | R 5 3
L x=x=xxx 8 9 10 9 8 | R 5 8 9 >
C x=x=x-- R 5 3 | 8 5 R
C x=x=xx- R 5 3 R | 8 6 5 3
T x=x=xxx R 5 3 >> > | 8 6 5 >> > | R 3 5 >> >
T x===xxx R 5 >> > | R 3 >> >
H x=xx R >> > | R 3 >
D xxx R >> > | R 3 >
S+A x=x=xxx x=x=xxx R 3 5 6 5 / 8 6 5 3 > | R 5 6 5 3 / R 3 5 >> > | R R 3 4 5 / 8 5 3 >> > | R 5 3 5 6 / R 5 8 6 >
S+C x=x=xxx x=x=xx- R 3 5 6 5 / 8 6 5 3 | R 5 6 5 3 / R 5 3 R
`,
  REVIVAL_SKA_TUNES,
);
