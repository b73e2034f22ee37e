import { COMMON_PRACTICE } from '../rows';
import { phraseBook } from './notation';
import { WALTZ_TUNES } from './tunes/waltz';

/**
 * Waltz time: one bar is one swing of the arm. The one is long and heavy, two and three are lighter or left to the
 * chords; two bars belong together, the second leads. A plain waltz sets root against fifth from bar to bar and walks
 * into the change; a dancing one answers on three; a fuller one walks, or sets two against three for a bar.
 */
export const WALTZ_PHRASES = phraseBook(
  { manner: 'walk', chromatics: 'a beat', blues: false, source: COMMON_PRACTICE },
  `
metre 3/4
pool up = R 3 5 | R 3 > | R 5 > | R 2 3 | R 5 6 | R >> > | R _5 _6 | 3 5 > !co | R 5 8 | R 3 6 | R 5 c | R 2 > | R _6 _7 | R 5 3
pool down = 8 5 3 | 8 6 > | 8 5 > | R _7 > | R _5 > | 8 >> > | 5 3 > !co | R 5 3 | 8 7 > | 8 c 5 | R _7 _6 | 8 7 6 | 6 5 > !co
theme basic 0-1: the root long on one, and one light note after it
S x===x= R 5 | R R | R 8 | R _5 | 8 5
S x===== R | 5 !co | _5 !co
A x===x= R > | 8 > | R 5 | R _5 | R R
A x=--x= R 5 | R > | R R | 8 5
L x=x=x= R 5 8 | R 8 5 | R = =
L x===x= 8 5 | R 8
C x=x=-- R 5 | R _5 | R R
C x===== R | 8
T x=x=x= R 5 > | R = = | R _5 >
T x===x= R > | R 5 | R R
E x===== R | 8
H x=x= R 5 | R > | R 3 | R = | 8 >
Q x= R | 8
S+A x===x= x===x= R 5 / R > | R 8 / 8 > | R _5 / R > | R R / R R
S+A x===== x===x= R / R > | R / R 5
S+A+S+C x===x= x===x= x===x= x=x=-- R 5 / R > / R 8 / R 5 | R 5 / 8 > / R 5 / R _5

theme pah 1-2: the one, and the chord's fifth or octave on two and three
S x=x=x= R 5 5 | R 8 5 | R 5 8 | R _5 _5 | R 5 R
A x=x=x= R 5 > | 8 5 > | R _5 > | 8 5 R
A x===x= R > | 8 > | R 5
L x=x=x= R 5 8 | 8 5 8
C x=x=-- R 5 | 8 5 | R _5
C x===== R
T x=x=x= R 5 > | 8 5 > | R _5 >
T x=--x= R > | 8 >
S+A x=x=x= x===x= R 5 5 / R > | R 8 5 / 8 > | R 5 8 / R 5 | R _5 _5 / R >
S+A x=x=x= x=x=x= R 5 5 / R _5 > | R 5 8 / 8 5 > | R 5 R / R 5 >
S+A+S+C x=x=x= x===x= x=x=x= x=x=-- R 5 5 / R > / R 8 5 / R 5 | R 5 8 / 8 > / R 5 5 / R _5

theme swaying 2-2: up the triad, and a long one that leads
S x=x=x= R 3 5 | R 5 3 | R 5 8 | R 3 R | 8 5 3
A x===x= R > | R 3 | R 5 | 8 > | 8 5
A x=x=x= 8 5 3 | 8 3 > | R 3 >
L x=x=x= R 5 8 | 8 10 8 | R 3 8
C x=x=-- R 5 | R 3 | 8 5 | R _5
C x===== R
T x=x=x= R 5 > | R 3 > | 8 5 > | R _5 >
T x=--x= R > | 8 >
S+A x=x=x= x===x= R 3 5 / 8 > | R 5 3 / R > | R 5 8 / 8 > | R 3 R / R >
S+A x=x=x= x=x=x= R 3 5 / 8 5 3 | R 5 3 / R 3 > | R 3 R / 8 3 >
S+A+L+C x=x=x= x===x= x=x=x= x=x=-- R 3 5 / R > / R 5 8 / R 5 | R 5 3 / R > / 8 10 8 / 8 5

theme walked 3-5: quarters up, quarters down
S x=x=x= %up
A x=x=x= %down
A x===x= R > | 8 > | R 6 | 8 c
L x=x=x= 8 9 10 | 8 10 > | R 5 8 | R 3 8 | 8 9 8
C x=x=== R 5 | R 3 | 8 5 | 8 6 | R c
C x=x=-- R 5 | R 3 | 8 5
T x=x=xx R 5 >> > | R 3 >> > | 8 5 >> > | 8 6 >> > | R _5 >> >
T x=--xx R >> > | 8 >> >
S+A x=x=x= x=x=x= R 3 5 / 8 6 > | R 5 6 / 8 5 3 | R 2 3 / 8 5 > | R 3 > / 8 c 5 | R 5 c / R _7 > | R _5 _6 / R 5 > | R _6 _7 / R 2 3
S+A+S+C x=x=x= x=x=x= x=x=x= x=x=== R 2 3 / 8 5 > / R 5 6 / R 5 | R 3 5 / 8 6 > / R _5 _6 / R 3
S+S+A+C x=x=x= x=x=x= x=x=x= x=x=-- R 2 3 / R 3 5 / 8 7 6 / R 5 | R 5 6 / R 5 c / 8 5 3 / R 3

theme bell 3-5: the one, and two notes that answer from above or below
S x=--x= R 5 | R 6 | R _5 | R 3 | 8 5
S x===x= R 5 | R 3 | R c
A x=x=x= R 5 > | R 3 > | 8 6 > | R _6 > | R c >
A x===xx R >> > | 8 >> >
L x=x=x= 8 9 10 | 8 10 > | R 5 8
C x===== R | 8
C x=x=-- R 5 | R 3
T x=--xx R >> > | 8 >> >
T x=x=xx R 5 >> > | R 3 >> > | R _5 >> >
S+A x=--x= x=x=x= R 5 / R 3 > | R 6 / 8 6 > | R 3 / R 5 > | R _5 / R _6 >
S+A x===x= x===xx R 5 / R >> > | R 3 / 8 >> > | R c / R >> >
S+A+L+C x=--x= x=x=x= x=x=x= x===== R 5 / R 3 > / 8 9 10 / R | R 3 / 8 6 > / R 5 8 / R
S+S+A+C x=--x= x=--x= x=x=x= x=x=-- R 5 / R 3 / R 5 > / R 3 | R 3 / R 6 / 8 6 > / R 5

theme lilt 3-5: a pair on two, like a turn in the dance
S x=xxx= R 3 4 5 | R 2 3 > | R 5 6 5 | R 3 5 > | 8 7 6 > | R 5 3 > | R c 5 3
A x=x=x= %down
A x===x= R > | 8 > | R 3
L x=xxx= 8 9 10 > | R 3 5 8 | 8 9 10 8
C x=x=== R 5 | R 3 | 8 5 | 8 6
C x=x=-- R 5 | 8 5
T x=x=xx R 5 >> > | R 3 >> > | 8 5 >> > | R _5 >> >
T x=--xx R >> > | 8 >> >
H x=xx R >> > | R 3 >
S+A x=xxx= x=x=x= R 3 4 5 / 8 6 > | R 5 6 5 / R _5 > | R 2 3 > / 8 5 3 | 8 7 6 > / R 5 >
S+A x=xxx= x===x= R 3 4 5 / 8 > | R 5 6 5 / R 3 | R c 5 3 / R >
S+A+L+C x=xxx= x=x=x= x=xxx= x=x=== R 3 4 5 / 8 6 > / 8 9 10 8 / R 5 | R 5 6 5 / 8 5 > / R 3 5 8 / R 3

theme two 3-5: two against three for a bar, and three that set it right
S x==x== R 5 | R 3 | R 6 | 8 5 | R _5 | R c
A x=x=x= R 3 > | 8 6 > | R 5 > | R _7 > | 8 5 3
A x==x=x R 5 > | R 3 > | 8 5 >
L x==x== R 8 | 8 10
L x=x=x= 8 9 10 | R 5 8
C x===== R | 8
C x==x== R 5 | R 3
T x=x=xx R 5 >> > | R 3 >> > | R _5 >> >
T x==xxx R 5 >> > | R 3 >> > | 8 5 >> >
S+A x==x== x=x=x= R 5 / R 3 > | R 3 / 8 6 > | R 6 / R 5 > | 8 5 / 8 5 3 | R c / R _7 >
S+S+A+C x==x== x==x== x=x=x= x===== R 5 / R 3 / 8 6 > / R | R 3 / R 6 / R 5 > / 8
S+A+L+C x==x== x=x=x= x==x== x==x== R 5 / R 3 > / R 8 / R 5 | R 3 / R 5 > / 8 10 / R 3
`,
  WALTZ_TUNES,
);
