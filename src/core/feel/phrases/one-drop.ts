import { COMMON_PRACTICE } from '../rows';
import { phraseBook } from './notation';
import { ONE_DROP_TUNES } from './tunes/one-drop';

/**
 * One drop, in the fast count: the drop falls on three, so the line lands there. A call with the one, an answer
 * without it; few notes, heavy and low; beat four alone leads, and not in every bar.
 */
export const ONE_DROP_PHRASES = phraseBook(
  { manner: 'riff', chromatics: 'short', blues: false, source: COMMON_PRACTICE },
  `
metre 4/4
theme basic 0-0: the root, a rest, and two notes from the drop on
S x=--x=-- R 5 | R R | R _5 | R 8 | 8 5
S x=--x=x= R 5 R | R R 5 | R 5 8 | R _5 R | R 8 5
A ----x=x= R > | 5 R | R 5 | 5 > | R R
A --x=x=== R R | R 5 | 5 R
L x=--x=x= R 5 8 | R 8 8 | 8 5 8 | R 8 5
C x=--x=== R 5 | R R | R _5 | 8 5
C ----x=== R | 5 | 8
T x=--x=x= R 5 > | R R > | R _5 > | R R R | 8 5 >
T x===--x= R > | 8 > | R R
E x=--x=== R R | R _5 | 8 R | R 5
H x=x= R 5 | R = | R > | R _5
Q x= R | 8
S+A x=--x=x= ----x=x= R 5 8 / 5 > | R R 5 / R > | R _5 R / R 5 | R 5 R / 5 R
S+A+S+A x=--x=x= ----x=x= x=--x=x= ----x=== R R R / R R / R R R / R | R R 5 / 5 R / R R 5 / R | R 5 R / 5 R / R 5 R / 5 | R _5 R / R > / R _5 R / R
S+A+S+T x=--x=x= ----x=x= x=--x=x= x===--x= R R R / R R / R R R / R R | R R 5 / 5 R / R R 5 / R > | R 5 R / 5 R / R 5 R / R > | R _5 R / R > / R _5 R / R >
S+A+L+T x=--x=x= ----x=x= x=--x=x= x=--x=x= R R 5 / 5 R / R 8 5 / R 5 > | R 5 R / 5 R / 8 5 8 / R 5 > | R _5 R / R > / R 5 8 / R _5 >

theme pairs 1-2: the one, then two short notes and a long one from the drop
S x=--xxx= R 5 5 8 | R R R 5 | R 5 5 R | R 3 3 5 | R 5 5 3 | R _5 _5 R | 8 5 5 3 | R 3 5 3
A ----xxx= 5 5 R | R R 5 | 8 8 5 | 3 3 R | 5 3 R | 5 5 >
A ----xxx= R R > | 8 5 > | 5 3 > | R 3 > | 3 5 > | R 5 >
L x=--xxx= R 5 5 8 | 8 8 8 5 | R 3 5 8 | R 8 8 10
C x=--x=== R 5 | R _5 | 8 5
C ----xxx= 5 3 R | 5 5 R | 3 3 R | _5 _5 R
T x=--x=x= R 5 > | R _5 > | 8 5 >
T x=--xxx= R 5 5 > | R _5 _5 > | R 3 5 > | R 5 3 >
H1 x=-- R | 8
H2 xxx= R R 3 | R 5 5 | R R >
H2 x=x= R > | R 5 | R 3
S+A x=--xxx= ----xxx= R 5 5 8 / 5 5 R | R 3 3 5 / 3 3 R | R R R 5 / 8 8 5 | R 3 5 3 / 5 3 R | R _5 _5 R / R R > | 8 5 5 3 / 5 3 >
S+A+S+C x=--xxx= ----xxx= x=--xxx= x=--x=== R 5 5 8 / 5 3 R / R 3 5 8 / R 5 | R R R 5 / 5 5 R / R 3 5 3 / R _5
S+A+S+A x=--xxx= ----xxx= x=--xxx= ----xxx= R 5 5 R / 5 5 R / R 5 5 8 / 5 5 > | R 3 3 5 / 5 3 R / R 3 3 5 / 5 3 > | R _5 _5 R / R R 5 / R _5 _5 R / R R > | R 3 5 3 / 3 5 R / R 3 5 8 / 5 3 >
S+A+S+T x=--xxx= ----xxx= x=--xxx= x=--x=x= R 5 5 R / 5 5 R / R 5 5 8 / R 5 > | R 3 3 5 / 5 3 R / R 3 3 5 / R _5 > | R _5 _5 R / R R 5 / R _5 _5 R / R 5 > | R 3 5 3 / 3 5 R / R 3 5 8 / R 5 >
S+A+L+T x=--xxx= ----xxx= x=--xxx= x=--x=x= R 5 5 R / 5 5 R / 8 8 8 5 / R 5 > | R 3 3 5 / 5 3 R / R 3 5 8 / R _5 > | R _5 _5 R / R R > / R 5 5 8 / R 5 >

theme late 1-2: the root on one, then nothing until the drop: a long note, and one more to go on
S x=--x==x R 5 5 | R R 5 | R 5 R | R 3 R | R _5 R | 8 5 3 | R 3 5 | R 5 3
S x=--x=x= R 5 R | R 3 5 | R _5 R | R 5 3 | 8 5 3 | R R 5
A ----x=x= 5 R | R 5 | 3 R | 5 > | R > | 3 > | 8 5
A ----x==x 5 > | R > | 3 >
L x=--x=x= R 5 8 | 8 5 8 | R 8 10 | 8 10 8
C x=--x=== R 5 | R _5 | R 3
C ----x=== R | 5
T x=--x=x= R 5 > | R _5 > | 8 5 > | R 3 >
T x===--x= R > | 8 >
H1 x=-- R | 8
H2 x=x= R > | R 5 | R 3
S+A x=--x=x= ----x=x= R 5 R / 5 > | R 3 5 / 3 R | R 5 3 / R > | 8 5 3 / R 5 | R _5 R / R >
S+A+S+A x=--x=x= ----x=x= x=--x=x= ----x=== R 5 R / 5 R / R 5 8 / 5 | R 3 5 / 5 3 / R 3 5 / R | R 5 3 / R 5 / R 5 3 / R
S+A+S+T x=--x=x= ----x=x= x=--x=x= x===--x= R 5 R / 5 R / R 5 8 / R > | R 3 5 / 5 3 / R 3 5 / R > | R 5 3 / R 5 / 8 5 3 / R >
S+A+L+T x=--x=x= ----x=x= x=--x=x= x=--x=x= R 5 R / 5 R / 8 5 8 / R 5 > | R 3 5 / 5 3 / R 8 10 / R 5 > | R 5 3 / R 5 / 8 10 8 / R 3 >

theme drop 3-5: the one is left to the room, the line begins before the drop
S --xxx=== R 3 5 | R R R | R 3 8 | _5 _6 R | 3 2 R | R 2 3 | 5 5 R | 8 c 5 | R 5 6
A --xxx=xx R 3 5 >> > | 5 3 R >> > | 8 6 5 >> > | _5 _6 R >> > | 3 2 R >> > | R c 5 >> >
A --xxx=x= R 3 5 > | 5 3 R > | 8 6 5 > | _6 _5 R >
L --xxx=xx 5 6 8 >> > | 8 9 10 >> > | 8 10 8 >> >
C --xxx=== 3 2 R | 5 3 R | _5 _6 R | 5 5 R | 8 6 5
C x===x=-- R 3 | R 5 | R _5
T --xxx=xx 5 3 R >> > | _5 _6 R >> > | 3 2 R >> > | 8 6 5 >> >
T x=--x=xx R 5 >> > | R 3 >> > | R _5 >> >
H1 --xx R > | 8 > | R 3 | R R
H2 x=== R | 8
H2 x=xx R >> > | R 3 > | R 5 >
S+A --xxx=== --xxx=xx R 3 5 / 5 3 R >> > | R R R / R 3 5 >> > | 3 2 R / _5 _6 R >> > | R 2 3 / 8 6 5 >> > | 5 5 R / 3 2 R >> > | R 5 6 / 8 6 5 >> >
S+A x=--x=== --xxx=x= R 5 / 5 3 R > | R 3 / 8 6 5 > | R _5 / R 3 5 > | 8 5 / _6 _5 R >
S+A+S+C x===x=-- --xxx=x= --xxx=== x===x=-- R 5 / R 3 5 > / 8 c 5 / R 3 | R 3 / 5 3 R > / R 3 8 / R 5

theme anchor 3-5: root on one, a hole, then a figure that lands on the drop; the answer waits and leads
S x=--xxx= R R 3 5 | R 5 6 8 | R R R 5 | R _5 _6 R | R 3 4 5 | 8 5 6 8 | R 5 3 R | R c 5 3 | R 3 2 R
A ----x=xx R >> > | 5 >> > | 3 >> > | 8 >> > | c >> >
A --x=x=xx 5 R >> > | 3 R >> > | 8 5 >> > | R 5 >> > | R _5 >> >
L x=--xxx= 8 8 9 10 | R 5 6 8 | 8 10 9 8 | R 3 5 8
C x=--x=== R R | R 3 | R 5 | 8 5 | R _5
C ----x=== R | 5 | 3
T x=--x=xx R 5 >> > | R 3 >> > | R _5 >> > | 8 5 >> >
T ----x=xx R >> > | 5 >> > | 3 >> >
H1 x=-- R | 8
H2 x=xx R >> > | 8 >> > | R 3 > | R 5 >
H2 xxx= R 3 5 | R 5 8 | R R 3 | R R >
S+A x=--xxx= ----x=xx R R 3 5 / R >> > | R 5 6 8 / 5 >> > | R 3 4 5 / 3 >> > | R _5 _6 R / 5 >> > | R 5 3 R / 8 >> > | R c 5 3 / R >> >
S+A+L+C x=--xxx= --x=x=xx x=--xxx= x=--x=== R R 3 5 / 5 R >> > / 8 10 9 8 / R 5 | R 3 4 5 / 8 5 >> > / R 3 5 8 / R 3 | R 5 3 R / 3 R >> > / R 5 6 8 / 8 5
S+A+S+A x=--xxx= ----x=xx x=--xxx= --x=x=xx R 3 2 R / R >> > / R 3 4 5 / 8 5 >> > | R R 3 5 / 5 >> > / R R 5 3 / 3 R >> >

theme steady 3-5: a long one into the and of two, then the drop
S x==xx=x= R 3 5 3 | R R 5 6 | R 5 6 5 | R R 3 5 | R _5 R 3 | 8 7 6 5 | R 5 8 6 | R c 5 3
A ---xx=-- 3 R | _5 R | 5 3 | 6 5 | 3 5 | c 5
A ---xx=xx 3 R >> > | 5 3 >> > | 6 5 >> > | _5 R >> >
L x==xx=x= 8 9 10 8 | 8 8 10 8 | R 5 8 10
C x==xx=-- R 3 R | R _5 R | R 5 3 | 8 5 R
T x==xx=xx R 3 R >> > | R 5 3 >> > | R _5 R >> > | 8 6 5 >> >
T ---xx=xx 3 R >> > | 5 3 >> > | 6 5 >> >
H1 x==x R > | 8 > | R 3 | R R
H2 x=x= R 3 | R 5 | R > | 8 >
H2 x=xx R >> > | R 3 >
S+A x==xx=x= ---xx=-- R 3 5 3 / 3 R | R 5 6 5 / 6 5 | R R 3 5 / 5 3 | R _5 R 3 / _5 R
S+A x==xx=x= ---xx=xx R 3 5 3 / 5 3 >> > | R R 5 6 / 6 5 >> > | R _5 R 3 / 3 R >> > | R c 5 3 / _5 R >> >
S+A+L+C x==xx=x= ---xx=xx x==xx=x= x==xx=-- R 3 5 3 / 5 3 >> > / 8 9 10 8 / R 5 3 | R R 3 5 / 3 R >> > / R 5 8 10 / R 3 R

theme double 3-5: two short notes on one, silence, and a long note on the drop
S xx--x=== R R 5 | R R 3 | R R R | R R 8 | R _7 R | 8 8 5 | R 2 3 | R R _5
S xx--x=x= R R 5 6 | R R 5 3 | R R 3 2 | R _7 R 2 | 8 8 6 5 | R R _5 _6
A ----x=xx 5 >> > | 3 >> > | R >> > | 8 >> > | c >> >
A --xxx=x= R 3 5 > | 5 3 R > | 8 6 5 > | _5 _6 R >
L xx--x=x= 8 8 10 9 | R R 8 10 | 8 8 9 10
C xx--x=== R R 5 | R R R | R R _5 | R R 3
C ----x=== R | 5
T x=--x=xx R 5 >> > | R 3 >> > | R _5 >> >
T xx----xx R R >> > | 8 8 >> >
H1 xx-- R R | R 8
H2 x=xx R >> > | R 3 > | R 5 >
S+A xx--x=== ----x=xx R R 5 / 5 >> > | R R 3 / R >> > | R _7 R / 3 >> > | R 2 3 / 5 >> > | 8 8 5 / R >> > | R R _5 / R >> >
S+A xx--x=x= --xxx=x= R R 5 6 / 8 6 5 > | R R 3 2 / 5 3 R > | R _7 R 2 / R 3 5 >
S+A+L+C xx--x=== ----x=xx xx--x=x= xx--x=== R R 5 / R >> > / 8 8 10 9 / R R 5 | R 2 3 / 5 >> > / R R 8 10 / R R R
S+A+S+T xx--x=== ----x=xx xx--x=== xx----xx R R 5 / 5 >> > / R R 3 / R R >> > | R _7 R / R >> > / R 2 3 / R R >> >

theme wait 3-5: enters after the one, holds the drop
S -xx=x=-- R R 5 | R 3 5 | 8 6 5 | 3 2 R | _5 _6 R | R 3 R | R 2 3 | R 5 c
A -xx=x=xx R 3 5 >> > | 8 6 5 >> > | 5 3 R >> > | 3 2 R >> > | R _5 R >> >
L -xx=x=xx 8 9 10 >> > | 5 6 8 >> > | 8 10 8 >> >
C -xx=x=== 3 2 R | _5 _6 R | 5 3 R | R 3 R
T -xx=x=xx 5 3 R >> > | 3 2 R >> > | R _5 R >> > | 8 6 5 >> >
H1 -xx= R R | R 3 | R 5 | R >
H2 x=-- R | 8
H2 x=xx R >> > | R 3 > | R 5 >
S+A -xx=x=-- -xx=x=xx R R 5 / R 3 5 >> > | R 3 5 / 8 6 5 >> > | 3 2 R / R _5 R >> > | _5 _6 R / 5 3 R >> > | R 2 3 / 3 2 R >> > | R 3 R / 8 6 5 >> >

metre 3/4
theme basic 0-2: the root, then two notes from the drop
S x===x= R 5 | R R | R 8 | R 3
S x=x=x= R R 5 | R 5 R | R 3 5
A x=x=x= R 5 > | R R > | 8 5 > | R 3 >
A --x=x= R > | 5 > | 5 R | R R
L x=x=x= R 5 8 | R 8 8 | R 8 5
C x===== R | 8
C x=x=== R 5 | R 3
T x=x=x= R 5 > | R R R | R 3 >
T --x=x= 5 > | R > | R R
E x===== R
H x=x= R 5 | R = | R >
Q x= R | 8
theme sway 3-5: a long one, two short, and a lead
S x=xxx= R 3 5 3 | R R 3 5 | R 5 6 5 | 8 6 5 3 | R 3 4 5
A --x=xx 5 >> > | 3 >> > | R >> > | 8 >> >
A x=x=xx R 5 >> > | R 3 >> > | R _5 >> >
L x=xxx= 8 9 10 8 | R 3 5 8
C x===== R
C x=x=== R 5 | R 3 | 8 5
T x=x=xx R 5 >> > | R 3 >> > | R _5 >> >
H x=xx R >> > | R 3 >
S+A x=xxx= --x=xx R 3 5 3 / 5 >> > | R 5 6 5 / R >> > | R 3 4 5 / 3 >> >
`,
  ONE_DROP_TUNES,
);
