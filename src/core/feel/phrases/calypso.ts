import { COMMON_PRACTICE } from '../rows';
import { phraseBook } from './notation';
import { CALYPSO_TUNES } from './tunes/calypso';

/**
 * Calypso and soca: a bouncing figure that pushes into the second half of the bar, root and chord tones, always
 * dancing; the chord's tune is heard, the last note is a pickup, and the fourth bar lets go.
 */
export const CALYPSO_PHRASES = phraseBook(
  { manner: 'riff', chromatics: 'short', blues: false, source: COMMON_PRACTICE },
  `
metre 4/4
theme basic 0-0: root, fifth, and a rest
S x===x=-- R 5 | R R | R _5 | R 8
S x=--x=x= R 5 R | R R 5
A x===x=x= R 5 > | R R > | R 5 R | R = =
L x===x=x= R 5 8 | 8 5 8 | R = =
C x===x=-- R 5 | R R | 8 5
T x===x=x= R 5 > | R = = | R _5 >
E x===x=== R R | R _5
H x=x= R 5 | R > | R =
H x=== R | 8
Q x= R | 8

theme step 1-1: root, fifth and octave in a bouncing pair
S x=xxx=-- R 5 5 R | R 5 8 5 | R 8 5 R | R R 5 8 | R _5 _5 R | R 5 R 5
A x=xxx=x= R 5 5 R > | R 8 5 R > | R 5 8 5 > | R R 5 5 > | R _5 _5 R > | R _5 R _5 >
A x=--xxx= R 5 5 > | R 8 5 > | R _5 _5 >
L x=xxx=x= R 5 8 8 5 | R 5 5 8 8 | 8 5 8 8 5 | R 8 8 5 >
C x=xxx=-- R 5 5 R | 8 5 5 R | R _5 _5 R
C x=x=x=-- R 5 R | R _5 R
T x=--xxx= R 5 5 > | R 8 5 > | R _5 _5 > | R 5 R > | R _5 R >
T x=xxx=x= R 5 R 5 > | R _5 R _5 > | R 8 5 5 >
H x=xx R 5 5 | R R > | R 5 >
S+A x=xxx=-- x=xxx=x= R 5 5 R / R 8 5 R > | R 5 8 5 / R 5 5 R > | R R 5 8 / R 5 8 5 > | R _5 _5 R / R R 5 5 > | R 5 5 R / R _5 _5 R >
S+A x=xxx=-- x=--xxx= R 5 5 R / R 8 5 > | R 5 8 5 / R _5 _5 > | R _5 _5 R / R 5 5 >
S+A+S+C x=xxx=-- x=xxx=x= x=xxx=-- x=xxx=-- R 5 5 R / R 8 5 R > / R 5 8 5 / R _5 _5 R | R R 5 8 / R 5 8 5 > / R 5 5 R / 8 5 5 R | R 5 5 R / R _5 _5 R > / R 8 5 R / R 5 5 R
S+A+S+T x=xxx=-- x=xxx=x= x=xxx=-- x=--xxx= R 5 5 R / R 8 5 R > / R 5 8 5 / R 5 5 > | R 5 8 5 / R 5 5 R > / R _5 _5 R / R 5 R > | R _5 _5 R / R R 5 5 > / R 5 5 R / R _5 _5 >
S+A+L+T x=xxx=-- x=xxx=x= x=xxx=x= x=--xxx= R 5 5 R / R _5 _5 R > / R 5 8 8 5 / R 5 5 > | R 5 8 5 / R 5 5 R > / 8 5 8 8 5 / R _5 R >

theme bounce 2-2: one, the and of two, and three, then a note that calls
S x==xx=-- R R 5 | R 5 R | R 5 8 | R 3 5 | R 5 3 | 8 5 3 | R _5 R
S x=xxx=-- R 3 5 R | R 5 3 R | R 3 5 8 | 8 5 3 R
A x==xx=x= R 5 R > | R 3 5 > | R 5 3 > | 8 5 3 > | R R 5 >
L x==xx=x= R 5 8 5 | 8 8 5 > | R 3 5 8
C x==xx=-- R 5 R | R 3 R | 8 5 R
C x===x=-- R 5 | R 3
T x==xx=x= R 5 3 > | R 3 5 > | R 5 5 >
T x=--x=x= R 5 > | R 3 >
E x==xx=== R 5 R | R 3 R
H x==x R 5 | R > | R 3
H x=x= R > | R 5
S+A x==xx=-- x==xx=x= R R 5 / R 5 3 > | R 5 8 / 8 5 3 > | R 3 5 / R 3 5 > | R 5 3 / R R 5 >
S+A+S+C x==xx=-- x==xx=x= x==xx=-- x==xx=-- R 3 5 / R 5 3 > / R 5 8 / R 3 R | R R 5 / R 3 5 > / R 5 3 / R 5 3
S+A+S+T x==xx=-- x==xx=x= x==xx=-- x==xx=x= R 3 5 / R 5 3 > / R 5 8 / R 5 3 > | R 5 3 / R 3 5 > / R 3 5 / R 3 5 >
S+A+L+T x==xx=-- x==xx=x= x==xx=x= x==xx=x= R 3 5 / R 5 3 > / R 5 8 5 / R 5 3 > | R R 5 / R 5 3 > / R 3 5 8 / R 3 5 >

theme pushing 3-5: the push on the and of two, and a pickup on the and of four
S x==xx=-x R 3 5 > | R 5 6 > | R 5 3 > | R R 5 > | 8 6 5 > | R 5 8 >
S x==xx=x= R 3 5 6 | R 5 6 5 | R 5 3 R | 8 6 5 3 | R 3 4 5
A x==xx=-x R 5 3 > | 8 6 5 > | R _5 R > | R 3 R > | R c 5 >
A x==xx=xx R 5 3 >> > | 8 6 5 >> > | R 3 5 >> > | R 6 5 >> >
L x==xx=xx 8 9 10 >> > | R 5 8 >> > | 8 10 8 >> >
C x==xx=-- R 5 R | R 3 R | 8 6 5
C x==x=--- R 5 | R 3
T x==xx=xx R 5 3 >> > | R 3 5 >> > | R _5 _6 >> >
T x=--x=xx R 5 >> > | R 3 >> >
H x==x R > | R 3 | R 5
H x=xx R >> > | R 3 >
S+A x==xx=-x x==xx=-x R 3 5 > / 8 6 5 > | R 5 6 > / R 5 3 > | R 5 3 > / R _5 R > | R 5 8 > / R c 5 >
S+A x==xx=x= x==xx=xx R 3 5 6 / 8 6 5 >> > | R 5 6 5 / R 3 5 >> > | R 5 3 R / R 6 5 >> > | R 3 4 5 / R 5 3 >> >
S+A+L+C x==xx=-x x==xx=-x x==xx=xx x==xx=-- R 3 5 > / 8 6 5 > / 8 9 10 >> > / R 5 R | R 5 6 > / R 5 3 > / R 5 8 >> > / R 3 R
S+A+S+C x==xx=x= x==xx=xx x==xx=x= x==x=--- R 3 5 6 / 8 6 5 >> > / R 5 6 5 / R 5 | R 5 3 R / R 3 5 >> > / R 3 4 5 / R 3

theme tumbling 3-5: three and three and two, like a drum phrase
S x==x==x= R 3 5 | R 5 6 | R 5 3 | 8 6 5 | R 5 8 | R c 5
A x==x==xx R 5 >> > | R 3 >> > | 8 6 >> > | R _5 >> > | R 6 >> >
A x==x==x= R 5 > | R 3 > | 8 5 >
L x==x==x= 8 9 10 | R 5 8 | 8 10 8
C x==x==-- R 5 | R 3 | 8 5
C x==xx=-- R 5 R | R 3 R
T x==x==xx R 5 >> > | R 3 >> > | R _5 >> >
T x==xx=xx R 5 3 >> > | R 3 5 >> >
H x==x R > | R 3
H x=xx R >> >
S+A x==x==x= x==x==xx R 3 5 / R 5 >> > | R 5 6 / 8 6 >> > | R 5 3 / R 3 >> > | R c 5 / R _5 >> >
S+A x==x==x= x==x==x= R 3 5 / 8 5 > | R 5 8 / R 5 > | R 5 3 / R 3 >
S+A+L+C x==x==x= x==x==xx x==x==x= x==x==-- R 3 5 / R 5 >> > / 8 9 10 / R 5 | R 5 6 / R 6 >> > / R 5 8 / R 3

theme singing 3-5: a tune in chord tones over the bounce; the answer leaves the one to the drums
S x=xxx=-- R 3 5 6 | R 5 6 5 | R 3 4 5 | 8 6 5 3 | R 5 3 R | R 2 3 5
A -xxxx=xx R 3 5 3 >> > | 8 6 5 3 >> > | R 5 6 5 >> > | 5 3 2 R >> >
A x=xxx=xx R 5 3 R >> > | 8 6 5 3 >> > | R 3 5 3 >> >
L x=xxx=x= 8 9 10 8 > | R 3 5 8 10 | R 5 6 8 >
C x=xxx=-- R 5 3 R | R 3 2 R | 8 6 5 3
C x==x=--- R 5 | R 3
T x=xxx=xx R 3 5 3 >> > | R 5 6 5 >> > | 8 6 5 3 >> >
T x=--x=xx R 5 >> > | R 3 >> >
H x=xx R 3 > | R >> > | R 5 >
H x==x R > | R 3
S+A x=xxx=-- x=xxx=xx R 3 5 6 / 8 6 5 3 >> > | R 5 6 5 / R 3 5 3 >> > | R 2 3 5 / R 5 3 R >> >
S+A x=xxx=-- -xxxx=xx R 3 4 5 / 8 6 5 3 >> > | R 5 3 R / R 3 5 3 >> > | 8 6 5 3 / 5 3 2 R >> >
S+A+L+C x=xxx=-- x=xxx=xx x=xxx=x= x=xxx=-- R 3 5 6 / R 5 3 R >> > / 8 9 10 8 > / R 5 3 R | R 5 6 5 / 8 6 5 3 >> > / R 3 5 8 10 / R 3 2 R
; Half a bar of four at a time: a bar that bounces, and one that answers.
metre 2/4
theme basic 0-0: root and fifth
S x=x= R R | R 5 | R 8
S x=== R
A x=x= R > | R = | R 5
L x=x= R 8 | R =
C x=-- R | 8
C x=== R | 8
T x=x= R > | R = | 8 >
E x=== R | 8
H x=x= R 5 | R > | R =
Q x= R | 8
S+A x=x= x=x= R 5 / R > | R R / R = | R 8 / R >

theme step 1-1: a bar with a pair, a bar that lets go
S x=xx R 5 5 | R 5 8 | R 8 5 | R R 5
S xxx= R R 5 | R 5 R
A x=-- R | 8 | 5 !co
A x=x= R > | 5 R !co | R 5 | 8 >
L x=xx R 5 8 | 8 5 8
C x=-- R | 8
T x=xx R 5 > | R R >
T x=x= R > | R 5
S+A x=xx x=-- R 5 5 / R | R 5 8 / R | R 8 5 / R
S+A x=xx x=x= R 5 5 / R > | R 8 5 / 5 R !co | R R 5 / 8 >
S+A+S+C x=xx x=x= x=xx x=-- R 5 5 / R > / R 5 8 / R | R 8 5 / R > / R R 5 / R

theme bounce 2-2: one and the and of two, then a note that calls
S x==x R 5 | R 3 | R R | R 8
S x=xx R 3 5 | R 5 3
A x=x= R > | 5 > !co | 3 R !co | R 5 | 8 >
A x=-- R | 5 !co
L x==x R 8 | 8 10
C x=-- R | 8
C x=x- R 5 | R 3
T x=x= R > | 5 > !co | R 3
T x=xx R 3 > | R 5 >
S+A x==x x=x= R 5 / R > | R 3 / 5 > !co | R R / R > | R 8 / 5 > !co
S+A+S+C x==x x=x= x==x x=-- R 5 / R > / R 3 / R | R R / R > / R 5 / R

theme pushing 3-5: the and of two is held over into the answer
S x==x R 5 | R 3 | R 6 | R 8 | 8 6
S x=xx R 3 5 | R 5 6 | 8 6 5
A -xx= 5 > !co | 3 > !co | 6 5 !co
A x=-x R > | 5 > !co | 8 >
A x=xx R >> > | 8 >> >
L x==x 8 10 | R 8 | 8 9
C x=-- R | 8
C x=x- R 5 | R 3
T x=xx R >> > | 5 >> > !co | R 3 >
T xxxx R 3 >> > | R 5 >> >
S+A x==x x=-x R 5 / R > | R 3 / 5 > !co | R 6 / 8 > | 8 6 / 5 > !co
S+A x=xx x=-x R 3 5 / 8 > | R 5 6 / R >
S+A x==x x=xx R 5 / R >> > | R 3 / 8 >> >
S+A+S+C x==x x=-x x==x x=-- R 5 / R > / R 3 / R | R 6 / 5 > !co / R 5 / R
S+A+L+C x==x x=xx x==x x=x- R 5 / R >> > / 8 10 / R 5 | R 3 / 8 >> > / R 8 / R 3

theme singing 3-5: a tune in chord tones over two bars
S x=xx R 3 5 | R 5 6 | R 3 4 | R 2 3 | 8 6 5 | R 5 3
A xxx= 6 5 3 !co | 8 6 5 | 5 3 R !co | R 3 >
A x=xx R >> > | 5 >> > !co | 8 >> >
L x=xx 8 9 10 | R 5 8 | 8 10 8
C x=x- R 5 | R 3
C x=-- R | 8
T x=xx R >> > | 8 >> > | R 3 >
T xxxx R 3 >> > | 8 6 >> >
S+A x=xx xxx= R 3 5 / 6 5 3 !co | R 5 6 / 8 6 5 | R 3 4 / 5 3 R !co | 8 6 5 / R 3 >
S+A x=xx x=xx R 3 5 / R >> > | R 2 3 / 5 >> > !co | R 5 3 / 8 >> >
S+A+S+C x=xx xxx= x=xx x=x- R 3 5 / 6 5 3 !co / R 5 6 / R 5 | R 2 3 / 5 3 R !co / R 3 4 / R 3
S+A+L+C x=xx x=xx x=xx x=-- R 3 5 / R >> > / 8 9 10 / R | R 5 3 / 5 >> > !co / R 5 8 / 8
`,
  CALYPSO_TUNES,
);
