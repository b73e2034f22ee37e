import { COMMON_PRACTICE } from '../rows';
import { phraseBook } from './notation';
import { STEPPERS_TUNES } from './tunes/steppers';

/**
 * Steppers: the kick is on all four, so the bass need not mark them. A riff of two bars with big holes, dark and
 * even; form comes from register and silence more than from new figures.
 */
export const STEPPERS_PHRASES = phraseBook(
  { manner: 'riff', chromatics: 'short', blues: false, source: COMMON_PRACTICE },
  `
metre 4/4
theme basic 0-0: two roots, one other note, one silence
S x=x=x=-- R = 5 | R = = | R = 8 | R 5 R | R _5 R | R 5 8
A x=--x=x= R 5 R | R 8 5 | R 5 > | 8 5 > | R _5 > | R = =
A x=x=x=-- 8 5 R | R 5 = | R _5 R
L x=x=x=-- R 8 = | 8 = 5 | R 5 8
C x=--x=-- R 5 | R R | R _5 | 8 5
C x===x=-- R 5 | R R
T x=--x=x= R 5 > | R R > | R _5 > | R = =
T x=x=x=x= R = 5 > | R = = =
E x=--x=== R R | 8 R | R _5
H x=x= R 5 | R = | R >
Q x= R | 8
S+A x=x=x=-- x=--x=x= R = 5 / 8 5 > | R = 8 / R 8 5 | R 5 R / R _5 > | R = = / R 5 R
S+A+S+C x=x=x=-- x=--x=x= x=x=x=-- x=--x=-- R = 5 / R 8 5 / R = 8 / R 5 | R 5 8 / 8 5 > / R = 5 / R _5

theme stamp 1-1: two roots and a note above, answered by one root and a pair
S x=x=x=-- R = 5 | R = 8 | R = _5 | 8 = 5 | R 5 8
A x=--xx-- R 5 5 | 8 5 5 | R 5 R | R R 5 | 8 5 R | R _5 _5
A x=--x=-- 8 5 | R 5 | R _5
L x=x=x=-- R 5 8 | 8 = 5 | R = 8
C x=--x=-- R 5 | R _5 | 8 5
T x=--xxx= R 5 R > | 8 5 R > | R _5 R > | R R 5 >
T x=--x=x= R 5 > | 8 5 > | R _5 >
H x=x= R 5 | R > | 8 >
H1 x=x= R = | R 5
H2 x=-- R | 8
H2 xx-- R 5 | R R
S+A x=x=x=-- x=--xx-- R = 5 / 8 5 5 | R = 8 / R 5 5 | R = _5 / R R 5 | 8 = 5 / R 5 R | R 5 8 / R 5 R | R = 5 / R 5 R
S+A x=x=x=-- x=--x=-- R = 5 / 8 5 | R = 8 / R 5 | R = _5 / R 5
S+A+S+C x=x=x=-- x=--xx-- x=x=x=-- x=--x=-- R = 5 / 8 5 5 / R = 5 / 8 5 | R = 8 / R 5 5 / R = 8 / R 5 | R = _5 / R R 5 / R = _5 / R 5
S+A+S+T x=x=x=-- x=--xx-- x=x=x=-- x=--xxx= R = 5 / 8 5 5 / R = 5 / R 5 R > | R = 8 / R 5 5 / R = 8 / R R 5 > | R = _5 / R R 5 / R = _5 / R 5 R >
S+A+L+T x=x=x=-- x=--xx-- x=x=x=-- x=--xxx= R = 5 / R 5 R / 8 = 5 / R 5 R > | R = _5 / R R 5 / R 5 8 / R _5 R >

theme riff 2-2: three on the beat, answered by a falling pair
S x=x=x=-- R = 3 | R = 5 | R 3 5 | R 3 R | R _5 R | R 5 3 | 8 = 5
A x=--xxx= R 5 3 R | R 3 3 R | 8 5 5 3 | R 5 5 > | R 5 3 > | R R 3 > | R 3 5 3
L x=x=x=-- 8 = 10 | R 5 8 | 8 5 8
L x=--xxx= 8 5 5 8 | R 5 8 10
C x=--x=-- R 5 | R 3 | R R | 8 5
T x=--xxx= R 5 3 > | R 3 5 > | R _5 _5 > | 8 5 3 >
T x=x=x=x= R 3 5 > | R 5 3 >
H x=x= R 3 | R > | R 5
S+A x=x=x=-- x=--xxx= R = 3 / R 5 3 R | R = 5 / 8 5 5 3 | R 3 5 / R 5 3 > | R 3 R / R 3 5 3 | R _5 R / R R 3 > | 8 = 5 / R 5 5 >
S+A+L+C x=x=x=-- x=--xxx= x=x=x=-- x=--x=-- R = 3 / R 5 3 R / 8 = 10 / R 5 | R 3 5 / R 5 3 > / R 5 8 / R 3

theme march 3-5: roots on the beat, a pair on four that turns back
S x=x=x=-- R = _c | R = 2 | R 3 R | R = 5 | R _5 _6 | R c 5 | 8 = 6 | R _6 _5
A x=--xxx= R 5 4 3 | R 3 2 R | 8 6 5 3 | R _5 _6 R | R c 5 3
A x=--xxxx R 5 3 >> > | R 3 5 >> > | 8 6 5 >> > | R _5 R >> > | R c 5 >> >
L x=x=x=-- 8 = 10 | 8 = 9 | 8 c 8
L x=--xxxx 8 10 8 >> > | R 5 8 >> >
C x=--x=-- R 5 | R 3 | R _c | 8 5
C x=x=x=-- R 3 R | R _5 R | 8 6 5
T x=--xxxx R 3 5 >> > | R 5 3 >> > | 8 6 5 >> > | R _5 R >> >
T x=x=x=xx R = 5 >> > | R = 3 >> >
H1 x=x= R R | R 3 | R > | R 5
H2 x=xx R >> > | R 3 > | R R >
S+A x=x=x=-- x=--xxx= R = _c / R 3 2 R | R = 5 / R 5 4 3 | R 3 R / 8 6 5 3 | R = 2 / R c 5 3 | R _5 _6 / R 3 2 R
S+A x=x=x=-- x=--xxxx R = _c / R 5 3 >> > | R c 5 / R 3 5 >> > | 8 = 6 / R _5 R >> > | R = 2 / 8 6 5 >> >
S+A+S+C x=x=x=-- x=--xxx= x=x=x=-- x=--x=-- R = _c / R 5 4 3 / R = 5 / R 3 | R 3 R / R c 5 3 / R 3 5 / R 5
S+A+L+C x=x=x=-- x=--xxxx x=x=x=-- x=--x=-- R = _c / R 5 3 >> > / 8 c 8 / R 5 | R = 2 / R 3 5 >> > / 8 = 10 / R 3

theme chant 3-5: the one, then three notes off the beat that come round like a chant
S x==xxx-- R _c R 3 | R 5 6 5 | R 3 4 3 | R _5 _6 R | 8 c 5 3 | R 3 2 R | R 5 c R | R _c _5 R
A x=--x=xx R 5 >> > | R 3 >> > | 8 5 >> > | R _5 >> > | 8 c >> >
A ---xxx-- 5 4 3 | 3 2 R | 8 c 5 | _5 _c R | 3 3 R
L x==xxx-- 8 9 10 8 | 8 c 8 10 | R 5 8 10
C x==xx=-- R _c R | R 3 R | R 5 3 | 8 5 R
T x==xx=xx R _c R >> > | R 3 R >> > | R 5 3 >> > | 8 6 5 >> >
T x=--x=xx R 5 >> > | R _5 >> > | R 3 >> >
H1 x==x R > | R R | R 3 | R _c
H2 xx-- R 3 | R R
H2 x=xx R >> > | R 3 >
S+A x==xxx-- ---xxx-- R _c R 3 / 5 4 3 | R 3 4 3 / 3 2 R | R 5 c R / 8 c 5 | R 3 2 R / _5 _c R | 8 c 5 3 / 3 3 R
S+A x==xxx-- x=--x=xx R _c R 3 / R 5 >> > | R 5 6 5 / 8 5 >> > | R _5 _6 R / R 3 >> > | 8 c 5 3 / R _5 >> >
S+S+A+C x==xxx-- x==xxx-- ---xxx-- x==xx=-- R _c R 3 / R _c R 3 / 5 4 3 / R _c R | R 5 6 5 / R 3 4 3 / 3 2 R / R 5 3
S+A+L+C x==xxx-- x=--x=xx x==xxx-- x==xx=-- R _c R 3 / R 5 >> > / 8 9 10 8 / R _c R | R 3 2 R / R 3 >> > / R 5 8 10 / R 5 3

theme hollow 3-5: the riff leaves the one out every second bar and lands late
S x=-xx=-- R _c R | R 5 R | R 3 5 | R _5 R | 8 c 8 | R 2 3 | R 3 2
A --x=x=-- 5 3 | 3 R | c 5 | _5 R | 8 5 | _c R
A --x=x=xx 5 3 >> > | 3 R >> > | c 5 >> > | _5 R >> > | 8 5 >> >
L x=-xx=-- 8 10 8 | 8 9 10 | R 5 8
C --x=x=-- 3 R | _c R | _5 R | 5 R
C x===x=-- R 5 | R 3
T x=-xx=xx R 5 3 >> > | R _c R >> > | R 3 5 >> > | 8 c 5 >> >
T --x=x=xx 5 3 >> > | 3 R >> > | 8 5 >> >
H1 x=-x R > | R 3 | R R
H2 x=xx R >> > | R 3 >
H2 x=-- R
S+A x=-xx=-- --x=x=-- R _c R / 5 3 | R 5 R / 3 R | R 3 5 / c 5 | R 2 3 / _c R
S+A x=-xx=-- --x=x=xx R _c R / 5 3 >> > | R 3 5 / 8 5 >> > | R _5 R / 3 R >> > | 8 c 8 / c 5 >> >
S+A+L+C x=-xx=-- --x=x=-- x=-xx=-- --x=x=-- R _c R / 5 3 / 8 10 8 / _c R | R 5 R / 3 R / 8 9 10 / 3 R

theme low 3-5: half the bar the root alone, then a slow turn
S x===x=x= R 3 5 | R _c R | R 5 3 | R _5 _6 | R 2 3 | 8 6 5
A x=--x=-- R 5 | R 3 | R _5 | 8 5
A x===x=xx R 5 >> > | R 3 >> > | R _5 >> > | 8 c >> >
L x===x=x= 8 9 10 | 8 10 8 | R 5 8
C x=====-- R | 8
C x===x=-- R 5 | R _5
T x=--x=xx R 5 >> > | R 3 >> > | R _5 >> >
T x===xxxx R 5 3 >> > | R 3 5 >> >
H x=x= R 3 | R > | R _c
H x=xx R >> >
S+A x===x=x= x=--x=-- R 3 5 / R 5 | R _c R / R 3 | R 5 3 / R _5
S+A x===x=x= x===x=xx R 3 5 / R 5 >> > | R 2 3 / R _5 >> > | R _c R / 8 c >> > | R _5 _6 / R 3 >> >
S+A+S+C x===x=x= x=--x=-- x===x=x= x=====-- R _c R / R 5 / R 2 3 / R | R 3 5 / R _5 / R 5 3 / R
`,
  STEPPERS_TUNES,
);
