import { COMMON_PRACTICE } from '../rows';
import { phraseBook } from './notation';
import { BOSSA_TUNES } from './tunes/bossa';

/**
 * Bossa: root on one, a short note on the and of two that points to three, three like the low drum, a short note
 * on the and of four that points home. Fifth above answered by fifth below; a colour tone on three from the second
 * time on; once a phrase the and of two is held over three.
 */
export const BOSSA_PHRASES = phraseBook(
  { manner: 'riff', chromatics: 'short', blues: false, source: COMMON_PRACTICE },
  `
metre 4/4
theme basic 0-0: long root, long fifth
S x===x=== R 5 | R _5 | R R | R 8
A x===x=== R _5 | R 5 | 8 5 | R R
A x===x=x= R 5 > | R _5 > | R = =
L x===x=== R 8 | 8 5 | R R
C x===x=== R R | R 5 | R _5
C x======= R | 8
T x===x=x= R 5 > | R _5 > | R = = | 8 5 >
E x===x=== R R | R _5
H x=x= R 5 | R = | R >
H x=== R | 8
Q x= R

theme lilt 1-1: a short note before three points to it
S x==xx=== R 5 5 | R _5 _5 | R 5 R | R R 5 | R 8 5
S x==xx==x R 5 5 R | R 5 5 8 | R _5 _5 R | R 8 5 5
A x==xx==x R _5 _5 > | R 5 5 > | 8 5 5 > | R 5 R >
A x==xx=== R _5 _5 | 8 5 5 | R 5 5 | R 5 R
A x==xx=x= R 5 5 > | R _5 _5 > | 8 5 5 >
L x==xx=== R 5 8 | 8 8 5 | R 8 8
L x==xx==x R 5 8 8 | 8 8 5 5
C x==xx=== R 5 5 | R _5 _5 | R 5 R
T x==xx=x= R 5 5 > | R _5 _5 > | R 5 R >
T x==xx==x R 5 R > | R _5 R > | 8 5 R > | R 5 5 >
E x==x==== R R | R _5
H x==x R 5 | R > | R R
H1 x==x R 5 | R >
H2 x==x R > | R 5
H x=== R
S+A x==xx=== x==xx=== R 5 5 / R _5 _5 | R _5 _5 / R 5 5 | R 5 R / R _5 _5
S+A+S+C x==xx=== x==xx==x x==xx=== x==xx=== R 5 5 / R _5 _5 > / R 8 5 / R 5 5 | R 5 R / R 5 5 > / R 5 5 / R _5 _5
S+A+S+C x==xx==x x==xx==x x==xx==x x==x==== R 5 5 R / R _5 _5 > / R 5 5 8 / R 5 | R _5 _5 R / R 5 5 > / R 5 5 R / R _5
S+A+S+T x==xx=== x==xx==x x==xx=== x==xx==x R 5 5 / R _5 _5 > / R 5 5 / R _5 _5 > | R _5 _5 / R 5 5 > / R _5 _5 / R 5 5 >
S+A+L+T x==xx=== x==xx==x x==xx=== x==xx==x R 5 5 / R _5 _5 > / R 5 8 / R 5 5 > | R _5 _5 / R 5 5 > / 8 8 5 / R _5 _5 >

theme rhythm 1-2: the whole rhythm, root and fifth, a chord tone to point home
S x==xx==x R 5 5 3 | R 5 5 R | R _5 _5 R | R 3 5 5 | R 5 3 3 | R 5 5 5
A x==xx==x R _5 _5 > | 8 5 5 > | R 5 5 > | R 5 3 > | R 3 3 >
A x==xx=== R _5 _5 | R 5 5
L x==xx==x R 5 8 8 | 8 8 5 > | R 5 8 5
C x==xx=== R 5 5 | R _5 _5 | R 5 R | R 3 5
T x==xx==x R 5 5 > | R _5 _5 > | R 5 3 > | R 5 R > | R 3 R >
T x==xx=x= R 5 3 > | R 3 5 >
H x==x R > | R 5 | R R
H1 x==x R > | R 5
H2 x==x R > | R 3
H x=== R
S+A x==xx==x x==xx==x R 5 5 R / R _5 _5 > | R _5 _5 R / R 5 5 > | R 3 5 5 / R 5 3 > | R 5 3 3 / 8 5 5 >
S+A+S+T x==xx==x x==xx==x x==xx==x x==xx==x R 5 5 R / R _5 _5 > / R 5 5 R / R _5 _5 > | R 5 5 3 / R _5 _5 > / R 5 5 3 / R 5 3 > | R 3 5 5 / R 5 3 > / R 3 5 5 / R 5 5 >
S+A+S+C x==xx==x x==xx==x x==xx==x x==xx=== R 5 5 3 / R _5 _5 > / R 3 5 5 / R 5 5 | R 5 5 R / R 5 3 > / R _5 _5 R / R 3 5

theme sway 3-5: fifth above, fifth below, the and of four leads
S x==xx==x R 5 5 > | R 5 6 > | R 5 5 R | R 3 5 > | R 5 3 > | R 5 c > | R 5 5 6
A x==xx==x R _5 _5 > | R _5 _6 > | R 5 3 > | 8 5 5 > | R _5 _5 _7 | R c 5 > | 8 c 5 >
A x==xx=== R _5 _5 | R 5 3 | R 5 c
L x==xx==x 8 8 10 > | R 5 8 > | 8 9 10 > | R 5 9 >
C x==xx=== R 5 5 | R _5 _5 | R 5 3 | R 3 5
C x==x==== R 5 | R 3 | R _5
T x==xx==x R 5 5 > | R _5 _5 > | R 5 3 >
T x==xx=xx R 5 5 >> > | R _5 _5 >> > | R 3 5 >> >
H x==x R > | R 5 | 8 >
H x=== R
S+A x==xx==x x==xx==x R 5 5 > / R _5 _5 > | R 5 6 > / R _5 _6 > | R 3 5 > / R 5 3 > | R 5 c > / 8 c 5 > | R 5 5 R / R _5 _5 _7
S+A+S+C x==xx==x x==xx==x x==xx==x x==xx=== R 5 5 > / R _5 _5 > / R 5 c > / R 5 3 | R 5 6 > / R _5 _6 > / R 3 5 > / R 5 5
S+A+L+C x==xx==x x==xx==x x==xx==x x==x==== R 5 5 > / R _5 _5 > / 8 9 10 > / R 5 | R 5 c > / R 5 3 > / R 5 8 > / R 3

theme colour 3-5: the colour of the chord on three
S x==xx==x R 5 c > | R 5 3 > | R 5 6 > | R _5 3 > | R 3 c > | R 5 7 >
S x==xx=x= R 5 3 > | R 5 c 5 | R 5 6 >
A x==xx==x R c 5 > | R 5 3 > | R _7 _6 > | R _5 _5 > | 8 c 3 > | R 6 5 >
A x==xx=== R 5 3 | R c 5 | R _5 _6
L x==xx==x 8 8 10 > | R 5 9 > | 8 c 10 > | R 5 8 >
C x==x==== R 5 | R 3 | R c
C x==xx=== R 5 5 | R 5 3
T x==xx==x R 5 3 > | R c 5 > | R _5 _6 >
T x==xx=xx R 5 3 >> > | R c 5 >> > | R _5 _5 >> >
H x==x R > | R c | R 5
H x=== R
S+A x==xx==x x==xx==x R 5 c > / R 6 5 > | R 5 3 > / R _5 _5 > | R 3 c > / 8 c 3 > | R _5 3 > / R _7 _6 > | R 5 6 > / R 5 3 >
S+A x==xx=x= x==xx==x R 5 3 > / R c 5 > | R 5 c 5 / R _5 _5 >
S+A+L+C x==xx==x x==xx==x x==xx==x x==x==== R 5 c > / R 6 5 > / R 5 9 > / R 5 | R 5 3 > / R c 5 > / 8 8 10 > / R 3

theme held 3-5: the and of two is held over three
S x==xx==x R 5 5 > | R 5 6 > | R 3 5 > | R 5 3 >
S x==xx==x 8 c 5 > | R _5 R > | R _5 3 >
A x==x===x R 5 > | R _5 > | R 3 > | R c > | R 6 >
A x==x==xx R 5 >> > | R _5 >> > | R 3 >> >
L x==x==xx R 8 >> > | 8 10 >> > | 8 9 >> >
C x==x==== R 5 | R _5 | R 3
C x==xx=== R 5 5 | R _5 _5
T x==x==xx R 5 >> > | R 3 >> > | R _5 >> >
T x==xx==x R 5 5 > | R _5 _5 >
H x==x R > | R 5
H x=== R
S+A x==xx==x x==x===x R 5 5 > / R 3 > | R 5 6 > / R c > | R 3 5 > / R _5 > | R 5 3 > / R 6 >
S+A x==xx==x x==x==xx R 5 5 > / R 3 >> > | R 5 6 > / R _5 >> >
S+A+L+C x==xx==x x==x===x x==x==xx x==x==== R 5 5 > / R 3 > / 8 10 >> > / R 5 | R 5 3 > / R _5 > / R 8 >> > / R 3
; Three and two: a dotted pair and a quarter, then another pair.
metre 5/4
theme basic 0-1: root, and the fifth on four
S x=====x=== R 5 | R R | R _5 | R 8
A x=====x=x= R 5 > | R R > | R _5 > | R = =
L x=====x=x= R 8 5 | R = =
C x=====x=== R 5 | R R | 8 5
C x====----- R | 8
T x=====x=x= R 5 > | R = = | R _5 >
E x=====x=== R R | R _5
H x=x= R 5 | R = | R >
H x=== R | 8
Q x= R | 8
S+A x=====x=== x=====x=x= R 5 / R 5 > | R R / R = = | R _5 / R R >
theme push 1-2: a dotted pair before three, the fifth on four
S x==xx=x=== R 5 5 R | R R 5 5 | R 5 R 5 | R R _5 R | R 5 5 _5
A x==xx=x==x R 5 5 R > | R R 5 5 > | R 5 R _5 > | R 5 R 5 >
A x=====x==x R 5 > | R _5 > | 8 5 >
L x==xx=x=== R 8 8 5 | R 5 8 8
C x==xx=x=== R 5 5 R | R R R 5
C x=====x=== R 5 | R _5
T x==xx=x=x= R 5 5 R > | R R 5 5 >
T x=====x=x= R 5 > | R _5 >
H x==x R > | R 5
S+A x==xx=x=== x==xx=x==x R 5 5 R / R 5 5 R > | R R 5 5 / R R 5 5 > | R 5 R 5 / R 5 R _5 >
S+A+S+C x==xx=x=== x==xx=x==x x==xx=x=== x=====x=== R 5 5 R / R 5 5 R > / R 5 5 _5 / R 5 | R R 5 5 / R 5 R 5 > / R R _5 R / R _5

theme sway 3-5: fifth above, fifth below, the last eighth leads
S x==xx=x==x R 5 5 R > | R 5 6 5 > | R 3 5 3 > | R 5 3 5 > | R 5 c 5 >
A x==xx=x==x R _5 _5 R > | R 5 3 R > | 8 5 5 3 > | R c 5 3 >
A x==xx=x=== R _5 _5 R | R 5 3 5 | R 5 c 5
L x==xx=x==x 8 8 10 8 > | R 5 8 9 > | 8 9 10 8 >
C x==xx=x=== R 5 5 R | R 5 3 R | R 3 5 R
C x=====x=== R 5 | R 3 | R _5
T x==xx=x=xx R 5 5 3 >> > | R _5 _5 R >> > | R 3 5 3 >> >
T x==xx=x==x R 5 3 5 > | R _5 _5 _6 >
H x==x R > | R 5 | 8 >
S+A x==xx=x==x x==xx=x==x R 5 5 R > / R _5 _5 R > | R 5 6 5 > / R 5 3 R > | R 3 5 3 > / 8 5 5 3 > | R 5 c 5 > / R c 5 3 >
S+A+S+C x==xx=x==x x==xx=x==x x==xx=x==x x==xx=x=== R 5 5 R > / R _5 _5 R > / R 5 c 5 > / R 5 3 R | R 3 5 3 > / R c 5 3 > / R 5 6 5 > / R 5 5 R

theme held 3-5: the push before three is held to the end of its part
S x==x==x==x R 5 R > | R 3 5 > | R c 5 > | R 6 5 > | R 5 3 >
A x==x==x=== R 5 R | R 3 5 | R _5 R | R c 5
A x==x==x=xx R 5 3 >> > | R 3 5 >> >
L x==x==x==x R 8 9 > | 8 10 9 >
C x==x==x=== R 5 R | R 3 R
C x=====x=== R 5 | R 3
T x==x==x=xx R 5 3 >> > | R _5 R >> > | R c 5 >> >
T x==x==x==x R 5 3 > | R 3 5 >
H x==x R > | R 5
S+A x==x==x==x x==x==x=== R 5 R > / R 3 5 | R 3 5 > / R _5 R | R c 5 > / R 5 R | R 6 5 > / R 3 5
S+A+S+C x==x==x==x x==x==x=xx x==x==x==x x==x==x=== R 5 R > / R 3 5 >> > / R c 5 > / R 3 R | R 3 5 > / R 5 3 >> > / R 5 3 > / R 5 R
`,
  BOSSA_TUNES,
);
