import { COMMON_PRACTICE } from '../rows';
import { phraseBook } from './notation';
import { TWO_BEAT_TUNES } from './tunes/two-beat';

/**
 * Two-beat: one and three, full but cut before the chop, the fifth above or below on three, whichever lies next to
 * the coming root. Two and four stay empty unless the line walks into a change; a walk closes the phrase.
 */
const rows = (oneBeat: string): string => `
theme basic 0-0: root on one, fifth on three
S x=--x=-- R 5 | R _5 | R 8 | R R
A x=--x=-- R _5 | R 5 | 8 5 | R R
A x=--x=x= R 5 > | R _5 > | R = =
L x=--x=-- 8 5 | R 8
L x=--x=x= R 8 5 | 8 5 >
C x=--x=-- R R | R 5 | R _5
C x===x=-- R 5 | R _5
T x=--x=x= R 5 > | R _5 > | R = =
T x=x=x=x= R = 5 > | R 5 R > | R = = =
E x=--x=== R R | R _5 | 8 R
H x=x= R 5 | R > | R 3 | R _5 | 8 > | R =
H x=-- R | 8
H x=-x R >
${oneBeat}

theme fifths 1-1: root and fifth, a third note where a bar answers, a walk on root and fifth at the end
S x=--x=-- R 5 | R _5 | 8 5 | R 8
A x=--x=x= R 5 > | R _5 > | 8 5 > | R 5 5 | R _5 _5
A x=--x=-- R _5 | R 5 | 8 5
L x=--x=x= R 5 8 | R 8 5 | 8 5 >
C x=--x=-- R _5 | R 5 | 8 5
C x=--x=x= R 5 > | R _5 >
T x=x=x=x= R 5 8 > | R 5 R > | R _5 R > | 8 5 R >
T x=--x=x= R 5 > | R _5 > | 8 5 >
H x=x= R 5 | R > | R _5 | 8 >
H x=-- R | 8
S+A x=--x=-- x=--x=x= R 5 / R _5 > | R _5 / R 5 > | 8 5 / R 5 > | R 5 / R 5 >
S+A+S+C x=--x=-- x=--x=x= x=--x=-- x=--x=-- R 5 / R _5 > / R 5 / R _5 | R _5 / R 5 > / R _5 / R 5 | R 5 / R 5 > / 8 5 / R _5
S+A+S+T x=--x=-- x=--x=x= x=--x=-- x=x=x=x= R 5 / R _5 > / R 5 / R 5 R > | R _5 / R 5 > / R _5 / R _5 R > | R 5 / R 5 > / 8 5 / 8 5 R >
S+A+L+T x=--x=-- x=--x=x= x=--x=x= x=--x=x= R 5 / R _5 > / R 5 8 / R 5 > | R _5 / R 5 > / R 8 5 / R _5 >

theme alternate 2-2: root and fifth, and a walk up the triad at the end
S x=--x=-- R 5 | R _5 | 8 5 | R 8
A x=--x=x= R 5 > | R _5 > | R 3 > | 8 5 > | R 5 3 | R _5 R
A x=--x=-- R _5 | R 5 | 8 5
L x=--x=x= R 5 8 | 8 5 > | R 8 5
L x=--x=-- 8 5 | R 8
C x=--x=-- R _5 | R 5 | 8 5 | R 3
T x=x=x=x= R 3 5 > | 8 5 3 > | R 5 3 >
T x=--x=x= R 5 > | R 3 >
S+A x=--x=-- x=--x=x= R 5 / R _5 > | R _5 / R 5 > | R 5 / R 3 > | 8 5 / R 5 >
S+A+S+C x=--x=-- x=--x=x= x=--x=-- x=--x=-- R 5 / R _5 > / R 5 / R _5 | R _5 / R 5 > / R _5 / R 5 | 8 5 / R 3 > / 8 5 / R _5
S+A+S+T x=--x=-- x=--x=x= x=--x=-- x=x=x=x= R 5 / R _5 > / R 5 / R 5 3 > | R _5 / R 5 > / R _5 / R 3 5 > | R 5 / R 3 > / 8 5 / 8 5 3 >

theme turns 3-5: root and fifth, a late eighth that closes round the next root
S x=--x=-- R 5 | R _5 | 8 5 | R 8
A x=--x=-x R 5 > | R _5 > | R 3 > | 8 5 >
A x=--x=xx R 5 >> > | R _5 >> > | R 3 >> > | 8 5 >> >
L x=--x=-x 8 10 > | R 8 > | 8 5 >
L x=--x=x= 8 5 > | R 5 8
C x=x=x=x= R 2 3 > | R _5 _6 _7 | 8 6 5 > | 8 7 6 > | R 3 5 > | R _7 _6 >
C x=--x=-- R R | R _5
T x=x=x=x= R 3 5 > | R _5 _6 _7 | 8 7 6 > | R 5 3 > | R 2 3 >
T x=--x=xx R 5 >> > | R 3 >> > | R _5 >> >
S+A x=--x=-- x=--x=-x R 5 / R _5 > | R _5 / R 5 > | 8 5 / R 3 > | R 8 / R 5 >
S+A x=--x=-- x=--x=xx R 5 / R _5 >> > | R _5 / R 3 >> > | R 5 / 8 5 >> >
S+A+S+C x=--x=-- x=--x=-x x=--x=-- x=x=x=x= R 5 / R _5 > / R 5 / R 2 3 > | R 5 / R 3 > / 8 5 / 8 7 6 > | R _5 / R 5 > / R 3 / R _5 _6 _7
S+A+L+C x=--x=-- x=--x=xx x=--x=-x x=x=x=x= R 5 / R _5 >> > / 8 10 > / 8 6 5 > | R _5 / R 5 >> > / R 8 > / R 3 5 >

theme walkup 3-5: root and fifth, every second bar walks on four
S x=--x=x= R 5 > | R _5 > | R 5 6 | R 3 > | 8 5 > | R _5 _6
A x=--x=-- R _5 | R 5 | 8 5 | R 3
A x=x=x=x= R 2 3 > | 8 7 6 > | R 3 5 > | 8 6 5 >
L x=--x=x= 8 9 10 | 8 10 > | R 5 8
C x=--x=-- R R | R 5 | R _5
C x===x=-- R 3 | R 5
T x=x=x=xx R 3 5 >> > | R 5 3 >> > | 8 6 5 >> > | R _5 _6 >> >
T x=x=x=x= R _5 _6 _7 | R 3 5 > | 8 7 6 >
S+A x=--x=x= x=--x=-- R 5 > / R _5 | R 3 > / 8 5 | R _5 > / R 5 | R 5 6 / 8 5
S+A x=--x=x= x=x=x=x= R 5 > / 8 7 6 > | R _5 > / R 2 3 >
S+A+L+C x=--x=x= x=--x=-- x=--x=x= x=x=x=x= R 5 > / R _5 / 8 10 > / 8 6 5 > | R 3 > / R 5 / R 5 8 / R 3 5 >

theme colour 3-5: the third or the sixth on three from the second time on
S x=--x=-- R 5 | R 3 | R 6 | R _6 | 8 5
A x=--x=-x R 3 > | R 6 > | R c > | R 5 > | R _5 >
A x=--x=-- R _5 | R 3
L x=--x=-x 8 10 > | R 8 > | 8 c >
C x=x=x=x= 8 7 6 > | R 2 3 > | 8 c 6 > | R _7 _6 >
C x=--x=-- R 5 | R _5
T x=x=x=x= R _5 _6 _7 | R 3 5 > | R 5 3 >
T x=--x=xx R 5 >> > | R 3 >> >
S+A x=--x=-- x=--x=-x R 5 / R 3 > | R 3 / R 6 > | R 5 / R c > | 8 5 / R 3 >
S+A+L+C x=--x=-- x=--x=-x x=--x=-x x=x=x=x= R 5 / R 3 > / R 8 > / 8 c 6 > | R 3 / R 5 > / 8 10 > / 8 7 6 >
S+S+A+C x=--x=-- x=--x=-- x=--x=-x x=x=x=x= R 5 / R 6 / R 3 > / R 2 3 > | R 3 / R 5 / R c > / R _7 _6 >
`;

export const TWO_BEAT_PHRASES = phraseBook(
  { manner: 'walk', chromatics: 'short', blues: false, source: COMMON_PRACTICE },
  `
metre 4/4${rows('Q x= R | 8')}
metre 2/2${rows('Q xx R > | R 3 | R 5\nQ x= R | 8')}
metre 3/4
theme basic 0-2: the root on one, the fifth on two or three
S x=x=-- R 5 | R _5 | R R | R 3
S x===x= R 5 | R R | R _5
A x=x=x= R 5 > | R _5 > | R 5 R | R 3 >
A x=--x= R > | R 5 | R R
L x=x=x= R 5 8 | 8 5 > | R = =
C x=--x= R 5 | R R | R >
C x=x=-- R 5 | R R
T x=x=x= R 5 > | R _5 > | R = = | R 3 >
E x===== R
H x=x= R 5 | R > | R =
Q x= R | 8
theme lilt 3-5: root and fifth, and a pair that leads
S x=x=-- R 5 | R 3 | R _5 | 8 5
A x=--xx R >> > | 8 >> >
A x=x=xx R 5 >> > | R 3 >> > | R _5 >> >
L x=x=x= 8 10 > | R 5 8
C x=x=x= R 2 3 | R 3 5 | 8 6 5 | R _6 _7
T x=x=xx R 5 >> > | R 3 >> > | R _5 >> >
H x=xx R >> >
S+A x=x=-- x=--xx R 5 / R >> > | R _5 / R >> > | R 3 / 8 >> >
; As a polka: both beats of 2/4 are the bass's, the chords come after them.
metre 2/4
theme basic 0-1: root and fifth, a beat each
S x=x= R 5 | R _5 | R = | R 8
A x=x= R _5 | R 5 | R = | 8 5 | R >
L x=x= 8 5 | R 8 | R =
C x=x= R R | R 5 | R _5
C x=== R | 8
T x=x= R > | R = | 8 >
E x=== R | 8
H x=x= R 5 | R > | R =
Q x= R | 8 | 5 !co
S+A x=x= x=x= R 5 / R _5 | R = / R = | R 5 / R > | R _5 / R 5 | R 8 / R >
S+A+S+C x=x= x=x= x=x= x=== R 5 / R _5 / R 5 / R | R = / R = / R = / R | R _5 / R > / R 5 / R

theme fifths 1-1: root and fifth, a third note where a bar answers, a walk on root and fifth at the end
S x=--x=-- R 5 | R _5 | 8 5 | R 8
A x=--x=x= R 5 > | R _5 > | 8 5 > | R 5 5 | R _5 _5
A x=--x=-- R _5 | R 5 | 8 5
L x=--x=x= R 5 8 | R 8 5 | 8 5 >
C x=--x=-- R _5 | R 5 | 8 5
C x=--x=x= R 5 > | R _5 >
T x=x=x=x= R 5 8 > | R 5 R > | R _5 R > | 8 5 R >
T x=--x=x= R 5 > | R _5 > | 8 5 >
H x=x= R 5 | R > | R _5 | 8 >
H x=-- R | 8
S+A x=--x=-- x=--x=x= R 5 / R _5 > | R _5 / R 5 > | 8 5 / R 5 > | R 5 / R 5 >
S+A+S+C x=--x=-- x=--x=x= x=--x=-- x=--x=-- R 5 / R _5 > / R 5 / R _5 | R _5 / R 5 > / R _5 / R 5 | R 5 / R 5 > / 8 5 / R _5
S+A+S+T x=--x=-- x=--x=x= x=--x=-- x=x=x=x= R 5 / R _5 > / R 5 / R 5 R > | R _5 / R 5 > / R _5 / R _5 R > | R 5 / R 5 > / 8 5 / 8 5 R >
S+A+L+T x=--x=-- x=--x=x= x=--x=x= x=--x=x= R 5 / R _5 > / R 5 8 / R 5 > | R _5 / R 5 > / R 8 5 / R _5 >

theme alternate 2-2: root and fifth, the third to turn
S x=x= R 5 | R _5 | R 3 | 8 5 | R 8
A x=x= R > | R 5 | R _5 | 8 >
L x=x= 8 5 | 8 10 | R 8
C x=x= R R | R 5 | 8 5
C x=x- R 5 | R R
T x=x= R > | 8 > | 3 > !co
S+A x=x= x=x= R 5 / R > | R 3 / R > | R _5 / R 5 | 8 5 / R >
S+A+S+C x=x= x=x= x=x= x=x- R 5 / R > / R 3 / R 5 | R _5 / R 5 / R 3 / R R

theme turns 3-5: root and fifth, and a pair that closes round the next root
S x=x= R 5 | R _5 | 8 5 | R 3
A x=xx R >> > | 8 >> > | R 3 >
A x=x= R > | R _5 | 8 >
L x=x= 8 10 | R 8 | 8 >
C x=x= R R | R _5
C x=x- R 5 | R 3
T x=xx R >> > | 8 >> > | R 5 >
T xxxx R 2 3 > | R _5 _6 _7 | 8 7 6 > | R 3 >> >
S+A x=x= x=xx R 5 / R >> > | R _5 / 8 >> > | 8 5 / R 3 > | R 3 / R >> >
S+A+S+C x=x= x=xx x=x= x=x- R 5 / R >> > / R _5 / R 5 | R _5 / R >> > / 8 5 / R 3
S+A+L+C x=x= x=xx x=x= xxxx R 5 / R >> > / 8 10 / 8 7 6 > | R 3 / 8 >> > / R 8 / R 2 3 >

theme walkup 3-5: two bars of root and fifth, then a walk into the next chord
S x=x= R 5 | R _5 | R 6 | R 3
A xxx= R 3 5 | R 2 3 | 8 6 5 | R 3 >
A x=x= R > | R 6 | R _6 | 8 >
L x=x= 8 9 | 8 10 | R 8
C x=x= R 5 | R _5 | R 3
C x=x- R R | R 5
T xxxx R 3 >> > | R _5 _6 _7 | 8 6 5 > | R 3 5 >
T x=x= R > | 8 >
S+A x=x= xxx= R 5 / R 3 > | R _5 / R 2 3 | R 3 / 8 6 5 | R 6 / R 3 5
S+S+A+C x=x= x=x= x=x= x=x- R 5 / R _5 / R > / R 5 | R 5 / R 6 / 8 > / R R
`,
  TWO_BEAT_TUNES,
);
