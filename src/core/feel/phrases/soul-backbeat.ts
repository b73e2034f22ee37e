import { COMMON_PRACTICE } from '../rows';
import { phraseBook } from './notation';
import { SOUL_BACKBEAT_TUNES } from './tunes/soul-backbeat';

/**
 * Soul backbeat: one with the kick, the push on the and of two, and three. The snare owns two and four: there the
 * bass is silent or already ringing. A hole on four, and a short lead out of it.
 */
export const SOUL_PHRASES = phraseBook(
  { manner: 'riff', chromatics: 'short', blues: false, source: COMMON_PRACTICE },
  `
metre 4/4
theme basic 0-0: the root with the kick, the chord again on three, a hole on four
S x===x=-- R R | R 5 | R 8 | R _5 | 8 5
S x=--x=x= R = 5 | R 5 8 | R 5 R | R _5 R
A x===x=x= R 5 > | R R > | 8 5 > | R _5 > | R = =
A x=--x=-- R 5 | R _5 | 8 5 | R R
L x===x=x= R 8 5 | R 5 8 | 8 8 5 | 8 5 >
C x===x=-- R 5 | R R | 8 5 | R _5
T x=--x=x= R 5 > | R R > | R _5 > | R = =
T x===x=x= R 5 > | R = = | 8 5 >
E x=--x=== R R | R _5 | 8 R
H x=x= R 5 | R = | R >
Q x= R | 8
S+A x===x=-- x===x=x= R 5 / 8 5 > | R 8 / R 5 > | R _5 / R R > | R R / R = =

theme kick 1-2: one, the push, and three; the answer adds a note before the bar line
S x==xx=-- R R 3 | R R 5 | R 5 R | R 5 8 | R R R | R 3 5 | R _5 R | 8 5 3
A x==xx=x= R 5 3 > | R R 3 > | R R 5 > | 8 5 3 > | R 3 5 > | R _5 R >
A x==xx=-- 8 5 3 | R 5 3 | R 3 R
L x==xx=-- R 5 8 | 8 8 10 | 8 5 8
L x==xx=x= R 5 8 > | 8 10 8 >
C x==xx=-- R 5 R | R _5 R | 8 5 R | R 3 R
C x===x=-- R 5 | R 3
T x==xx=x= R 5 3 > | R 3 5 > | R _5 R > | R R 5 >
T x=--x=x= R 5 > | R 3 > | R _5 >
H1 x==x R > | R R | R 5
H2 x=-- R | 8
H2 x=x= R > | R 3 | R 5
S+A x==xx=-- x==xx=x= R R 3 / R 5 3 > | R R 5 / 8 5 3 > | R 5 8 / R 3 5 > | R _5 R / R R 3 > | R R R / R R 5 >
S+A+S+T x==xx=-- x==xx=x= x==xx=-- x=--x=x= R R 5 / R R 5 > / R R 5 / R 5 > | R 5 R / R _5 R > / R 5 8 / R _5 > | R R 3 / R 5 3 > / R R 3 / R 5 > | R 3 5 / R 5 3 > / R 3 5 / R 3 >
S+A+S+C x==xx=-- x==xx=x= x==xx=-- x==xx=-- R R 5 / R R 5 > / R R 5 / R 5 R | R 5 R / R _5 R > / R 5 8 / R _5 R | R 3 5 / R 5 3 > / R 3 5 / R 3 R
S+A+L+C x==xx=-- x==xx=x= x==xx=-- x==xx=-- R R 3 / R 5 3 > / R 5 8 / R 5 R | R R 5 / R R 3 > / 8 8 10 / 8 5 R

theme push 3-5: one, the push held into three, and a short lead out of the hole
S x==xx=-x R R 5 > | R c R > | R 3 5 > | R _c R > | R 5 c > | 8 c 5 > | R 6 5 > | R _5 _6 > | R 5 6 >
S x==xx=-- R R _c | R 3 5 | R c 5 | R 6 5 | 8 c 5
A x==xxx-x R 5 c 5 > | 8 c 5 3 > | R R 3 5 > | R 6 5 3 > | R _5 _c R > | R 3 2 R >
A x==xx=-- R 5 3 | 8 c 5 | R _c R | R 6 5 | R 3 R
L x==xx=-x 8 8 10 > | 8 9 10 > | R 5 8 > | 8 c 8 >
L x==xxx-x 8 10 9 8 > | R 5 c 8 >
C x==xx=-- R 5 R | R _5 R | R c R | R 5 6 | 8 5 R
C x=-----x R > | 8 >
T x==xxxxx R 5 6 5 >> > | R c 5 3 >> > | 8 c 5 3 >> > | R 3 5 3 >> >
T x=-xx-xx R 5 3 >> > | R R 5 >> > | 8 c 5 >> >
H1 x==x R > | 8 > | R R | R 5 | R 3
H2 x=-x R > | 8 > | R R
S+A x==xx=-x x==xxx-x R R 5 > / 8 c 5 3 > | R c R > / R 5 c 5 > | R 3 5 > / R 6 5 3 > | R _c R > / R R 3 5 > | R 6 5 > / R 3 2 R > | R 5 6 > / 8 c 5 3 >
S+A x==xx=-- x==xxx-x R R _c / R 5 c 5 > | R 3 5 / 8 c 5 3 > | R c 5 / R R 3 5 >
S+A+L+C x==xx=-x x==xxx-x x==xx=-x x==xx=-- R R 5 > / R c 5 3 > / 8 9 10 > / R 5 R | R 3 5 > / R 6 5 3 > / R 5 8 > / R _5 R | R _c R > / R R 3 5 > / 8 c 8 > / R c R

theme double 3-5: two on one, a rest, the push and three
S xx-xx=-- R = 5 6 | R = _c R | R = c 8 | R = 3 5 | R = _5 _6 | 8 = c 5 | R = 5 c | R = 6 5
A xx-xxx-x R = 5 6 5 > | R = c 5 3 > | R = _c R _5 > | 8 = c 5 3 > | R = 3 5 6 > | R = 3 2 R > | 8 = 6 5 3 >
L xx-xx=-x 8 = 9 10 > | R = 5 8 > | 8 = c 8 >
C xx-xx=-- R = _5 R | R = 3 R | 8 = c 5 | R = _c R | R = 5 3
T xx-xxxxx R = 5 6 5 >> > | R = 5 3 R >> > | 8 = c 5 3 >> > | R = 3 5 3 >> >
T xx-xx-xx R = 5 3 >> > | R = _5 _6 >> >
H1 xx-x R = > | 8 = > | R = R
H2 xx-- R = | 8 =
H2 xx-x R = > | R = 5
S+A xx-xx=-- xx-xxx-x R = 5 6 / 8 = c 5 3 > | R = _c R / R = 5 6 5 > | R = 3 5 / R = c 5 3 > | R = _5 _6 / R = 3 2 R > | R = 5 c / 8 = 6 5 3 > | 8 = c 5 / R = 3 5 6 >
S+A+L+C xx-xx=-- xx-xxx-x xx-xx=-x xx-xx=-- R = 5 6 / R = c 5 3 > / 8 = 9 10 > / R = 5 3 | R = _c R / R = 5 6 5 > / R = 5 8 > / R = 3 R

theme climb 3-5: a rest on two, the tune on three, two short notes into the change
S x=-xx-xx R 3 5 >> > | R 5 6 >> > | R _5 R >> > | 8 6 5 >> > | R 2 3 >> > | R c 5 >> >
S x=-xx=-- R 3 5 | R 5 6 | R 5 c | R _5 R
A x=-xx=-- R 5 3 | R 3 R | 8 c 5 | R _c R | R 5 6 | R _5 R
A x=-xx-xx 8 c 5 >> > | R 5 3 >> > | R 3 2 >> >
L x=-xx-xx R 5 8 >> > | 8 9 10 >> > | 8 c 8 >> >
C x=-xx=-- R _c R | R _5 R | 8 c 5 | R 5 3
T x=-xxxxx R 5 6 5 >> > | 8 c 5 3 >> > | R 3 5 3 >> >
T x=-xx-xx R 5 3 >> > | R _5 _6 >> >
H x=-x R > | 8 >
H x=xx R >> >
S+A x=-xx=-- x=-xx-xx R 3 5 / 8 c 5 >> > | R 5 6 / R 5 3 >> > | R 5 c / R 3 2 >> > | R _5 R / R 2 3 >> >
S+A x=-xx-xx x=-xx=-- R 3 5 >> > / 8 c 5 | R 2 3 >> > / R 5 3 | R 5 6 >> > / R _c R

theme sixteenth 4-5: the push a sixteenth early, a pair of sixteenths as a pickup
S x==x--x=x===---x R R 5 6 > | R c 8 c > | R _c R 3 > | R 5 6 5 > | 8 c 5 6 > | R 5 c 8 >
S x==x--x=x===---- R R 3 5 | R 5 c 5 | R R _c R | 8 c 5 6
A x==x--x=x==x---x R R 5 6 5 > | R _5 _c R 3 > | 8 8 c 5 3 > | R 5 6 8 6 >
A x==x--x=x===---- R R 5 3 | 8 c 5 R | R 3 2 R
L x==x--x=x===---x 8 8 9 10 > | R 5 c 8 >
C x==x--x=x===---- R R _c R | R 5 6 5 | R _5 _6 R | 8 c 5 R
T x==x--x=x=--x=xx R R 5 3 R >> > | 8 8 c 5 3 >> > | R 5 6 5 3 >> >
T x==x--x=x=----xx R R 5 3 >> > | R 5 c 5 >> >
H x==x--x= R R > | R 5 >
H x=--x--x R R >
S+A x==x--x=x===---- x==x--x=x==x---x R R 3 5 / 8 8 c 5 3 > | R 5 c 5 / R R 5 6 5 > | R R _c R / R _5 _c R 3 > | 8 c 5 6 / R 5 6 8 6 >
S+A x==x--x=x===---x x==x--x=x===---- R R 5 6 > / R R 5 3 | R _c R 3 > / 8 c 5 R | R 5 6 5 > / R 3 2 R

metre 6/8
theme basic 0-2: the root, and the chord again on the second beat
S x==x== R 5 | R R | R 8 | R _5 | R 3
S x==x=x R 5 5 | R 5 R | R 3 5 | R R 3
A x==x=x R 5 > | R R > | 8 5 > | R 3 > | R = =
L x==x=x R 8 5 | 8 5 > | R 5 8 | R = =
C x==x== R 5 | R R | 8 5
T x==x=x R 5 > | R 3 > | R = =
T x=-x=x R R > | R 5 >
E x===== R
H x==x== R 5 | R R | R >
Q x== R | 8
theme gospel 3-5: the long beat, then a turn that climbs into the next chord
S x=xx== R 5 6 | R 3 5 | R 5 3 | 8 5 6 | R c 5 | R _5 R
S x==x=x R 5 6 | R 3 4 | R c 5
A x==xxx R 5 >> > | R 3 >> > | 8 c >> > | R _5 >> >
A x=xx=x R 5 3 > | R 3 5 > | 8 6 5 >
L x=xx=x 8 9 10 > | R 5 8 >
C x==x== R 5 | R 3 | 8 5
T x=xxxx R 5 6 >> > | R 3 5 >> > | R 5 3 >> >
T x==xxx R 5 >> > | R 3 >> >
H x==x=x R 3 > | R R > | R 5 >
S+A x=xx== x==xxx R 5 6 / 8 c >> > | R 3 5 / R 5 >> > | R 5 3 / R _5 >> >
S+A x==x=x x=xx=x R 5 6 / R 5 3 > | R 3 4 / 8 6 5 >
S+A+L+C x=xx== x==xxx x=xx=x x==x== R 5 6 / R 3 >> > / 8 9 10 > / R 5

metre 12/8
theme basic 0-2: the root, the fifth, and a note that leads
S x==x==x==x== R R 5 R | R 5 R 5 | R 3 5 3 | R = = =
S x=====x==x== R 5 R | R 5 3 | R R 5
A x=====x==x== R 5 > | R 3 > | 8 5 > | R = =
A x==x==x==x== R 5 3 > | 8 5 3 >
L x=====x==x== R 8 5 | R 5 8 | R = =
C x=====x===== R 5 | R R | 8 5
T x=====x==x== R 5 > | R 3 > | R = =
T x=====x==x=x R 5 3 > | R R 5 >
E x=====x===== R R | R _5
H x==x== R 5 | R R | R > | R 3
Q x== R | 8
theme gospel 3-5: two long beats, then a turn in eighths
S x=====x=xx== R 5 6 5 | R 3 5 6 | R c 5 3 | R 5 3 R
S x==x=xx===== R R 3 5 | R 5 6 8 | R 3 4 5
A x=====x==x=x R 5 3 > | 8 c 5 > | R 3 2 > | R _5 R >
L x==x=xx==x=x 8 8 9 10 8 > | R 3 5 8 c >
C x=====x===== R 5 | R 3 | 8 5
T x=====x==xxx R 5 3 >> > | R 3 5 >> > | 8 6 5 >> >
T x==x=xx==xxx R 3 5 6 5 >> > | R R 3 5 3 >> >
H x==x=x R 3 > | R R > | R 5 >
S+A x=====x=xx== x=====x==x=x R 5 6 5 / 8 c 5 > | R 3 5 6 / R 5 3 > | R c 5 3 / R _5 R >
S+A x==x=xx===== x=====x==x=x R R 3 5 / 8 c 5 > | R 5 6 8 / R 3 2 > | R 3 4 5 / R 5 3 >
`,
  SOUL_BACKBEAT_TUNES,
);
