import { COMMON_PRACTICE } from '../rows';
import { phraseBook } from './notation';
import { ROCKERS_TUNES } from './tunes/rockers';

/**
 * Rockers: the kick drives, and so does the bass. Two eighths on one, the root again on three, beat two left to
 * snare and chop; the tail on four leads as an enclosure. A new chord always gets its downbeat.
 */
export const ROCKERS_PHRASES = phraseBook(
  { manner: 'riff', chromatics: 'short', blues: false, source: COMMON_PRACTICE },
  `
metre 4/4
theme basic 0-0: the root on one, the chord again on three
S x=--x=-- R R | R 5 | R 8 | R _5
S x=--x=x= R R 5 | R 5 8 | R 5 R | R 8 5 | R _5 R | R = =
A x=--x=x= R R > | R 5 > | 8 5 > | R _5 > | R 5 R | R = =
L x=--x=x= R 5 8 | R 8 8 | 8 5 8
C x=--x=== R 5 | R R | R _5 | 8 5
T x=--x=x= R 5 > | R R > | R _5 > | R = =
T x=x=x=x= R R 5 > | R 5 R > | R = = =
E x=--x=== R R | R _5 | 8 R
H x=x= R 5 | R = | R >
Q x= R | 8
S+A x=--x=x= x=--x=x= R 5 8 / 8 5 > | R R 5 / R 5 > | R 5 R / R _5 > | R 8 5 / R 5 R
S+C x=--x=x= x=--x=== R 5 8 / R 5 | R R 5 / R _5

theme pairs 1-2: two eighths on one, a gap, two more on three
S xx--xxx= R R R R 5 | R R R 5 8 | R R 5 5 R | R R 3 5 3 | R R 5 3 R | R R R 3 5 | R R _5 _5 R | 8 8 5 3 5 | R R 3 3 5
A xx--xxx= R R 5 3 > | R R 3 R > | 8 8 5 3 > | R R 8 5 > | R R R _5 > | R R R 3 > | R R R 5 > | 8 8 5 5 R
A xx--x=x= R R 5 > | R R 3 > | 8 8 5 > | R R _5 >
L xx--xxx= R R 5 5 8 | 8 8 5 8 10 | R R 3 5 8
A xx--x=-- R R 8 | R R 5 | R R _5 | 8 8 5
C xx----x= R R > | R R 5 | 8 8 >
C xx----xx R R >> > | 8 8 >> >
C xx--x=-- R R 5 | R R R | R R 3 | 8 8 5
C xx--x=== R R _5 | R R 3
T x=--xxx= R 5 5 > | R 5 R > | R 5 3 > | R 3 5 > | R R R >
T xx--x=x= R R 5 > | R R 3 > | R R _5 >
H1 xx-- R R | 8 8
H2 xxx= R R > | R R 3 | R 5 3
H2 x=x= R > | R 5
S+A xx--xxx= xx--xxx= R R R 5 8 / R R 5 3 > | R R 3 5 3 / R R 3 R > | R R R 3 5 / 8 8 5 3 > | R R 5 3 R / R R _5 _5 >
S+A xx--xxx= xx--x=-- R R R R 5 / R R 8 | R R 5 5 R / R R 8 | R R _5 _5 R / R R 5 | R R R R _5 / R R _5 | R R 5 3 R / R R 5
S+A xx--xxx= xx--x=x= R R 5 5 R / R R 5 > | R R _5 _5 R / R R _5 > | R R R 5 8 / R R 5 > | R R 3 5 3 / R R 5 > | R R R 5 8 / 8 8 5 > | R R 5 5 R / R R 3 >
S+A+S+C xx--xxx= xx--x=x= xx--xxx= xx--x=-- R R 5 5 R / R R 5 > / R R 5 5 R / R R 5 | R R _5 _5 R / R R _5 > / R R R 5 8 / R R R | R R 3 5 3 / R R 5 > / R R 3 5 3 / R R 3
S+A+S+T xx--xxx= xx--x=x= xx--xxx= x=--xxx= R R 5 5 R / R R 5 > / R R 5 5 R / R 5 R > | R R _5 _5 R / R R _5 > / R R R 5 8 / R R R > | R R 3 5 3 / R R 5 > / R R 3 5 8 / R 5 3 >
S+A+L+T xx--xxx= xx--x=x= xx--xxx= x=--xxx= R R 5 5 R / R R 5 > / R R 5 5 8 / R 5 R > | R R _5 _5 R / R R _5 > / R R 5 5 8 / R R R > | R R 3 5 3 / R R 5 > / 8 8 5 8 10 / R 5 3 >
S+A+L+C xx--xxx= xx--xxx= xx--xxx= xx--x=-- R R R 3 5 / R R 5 3 > / R R 5 5 8 / R R 3 | R R 3 5 3 / R R 3 R > / 8 8 5 8 10 / R R 5

theme drive 3-5: two on one, a pushed note before three, the tail closes round the next root
S xx--xxx= R R R 5 6 | R R 5 6 5 | R R 3 4 5 | 8 8 6 5 3 | R R 5 c R | R R _5 _6 R | R R R 2 3 | R R 3 2 R
S xx-xx=-- R R _c R | R R 5 8 | R R 2 3 | 8 8 c 8 | R R _6 R | R R _5 R
A xx--x=xx R R R >> > | R R 3 >> > | R R 5 >> > | 8 8 5 >> > | R R _5 >> > | 8 8 6 >> >
A xx-xx=xx R R _c R >> > | R R 5 3 >> > | 8 8 c 5 >> > | R R 2 3 >> > | R R _5 R >> >
L xx--xxx= 8 8 9 10 8 | R R 5 6 8 | 8 8 8 10 9 | R R 3 5 8
C xx--x=== R R 5 | R R 3 | R R _5
C x=--xxx= R 3 2 R | R 5 3 R | 8 6 5 3
T x=--xxxx R 5 6 >> > | R 3 5 >> > | R 5 3 >> > | R _5 _6 >> >
T xx--x=xx R R 5 >> > | R R 3 >> > | 8 8 6 >> >
H1 xx-- R R | 8 8
H1 xx-x R R > | R R 3 | R R 5
H2 x=xx R >> > | R 3 > | 8 >> >
H2 xxx= R R > | R R 3
S+A xx--xxx= xx--x=xx R R R 5 6 / R R 5 >> > | R R 3 4 5 / 8 8 5 >> > | R R 5 6 5 / R R 3 >> > | R R _5 _6 R / R R R >> > | R R 3 2 R / R R _5 >> > | R R 5 c R / 8 8 6 >> >
S+A xx-xx=-- xx-xx=xx R R _c R / R R 5 3 >> > | R R 5 8 / 8 8 c 5 >> > | R R 2 3 / R R _c R >> > | R R _6 R / R R 2 3 >> >
S+A+L+C xx--xxx= xx--x=xx xx--xxx= xx--x=== R R R 5 6 / R R 5 >> > / 8 8 9 10 8 / R R 5 | R R 3 4 5 / R R 3 >> > / R R 5 6 8 / R R 3
S+S+A+C xx-xx=-- xx-xx=-- xx-xx=xx x=--xxx= R R _c R / R R 2 3 / R R 5 3 >> > / R 3 2 R | R R 5 8 / R R _c R / 8 8 c 5 >> > / R 5 3 R

theme answer 3-5: a short statement and a longer tail that rolls home
S xx--x=-- R R R | R R 5 | R R 3 | R R 8 | 8 8 5 | R R _5
A xx--xxxx R R 5 6 >> > | R R 3 R >> > | 8 8 6 5 >> > | R R R 3 >> > | R R _5 _6 >> > | R R c 5 >> >
A xx-xxxxx R R 3 5 3 >> > | R R 5 6 5 >> > | 8 8 6 5 3 >> > | R R _c R 3 >> >
L xx--xxxx 8 8 9 10 >> > | 8 8 10 8 >> > | R R 5 8 >> >
C xx--x=-- R R 3 | R R R | 8 8 5 | R R _5
T xx--xxxx R R 3 5 >> > | R R 5 3 >> > | 8 8 6 5 >> >
T x=--xxxx R 5 6 >> > | R 5 3 >> > | R _5 _6 >> >
H1 xx-- R R | 8 8
H2 xxxx R R >> > | R 3 >> >
H2 x=xx R >> > | R 3 >
S+A xx--x=-- xx--xxxx R R R / R R 5 6 >> > | R R 3 / R R 3 R >> > | R R 5 / 8 8 6 5 >> > | R R 8 / R R c 5 >> > | R R _5 / R R R 3 >> > | 8 8 5 / R R _5 _6 >> >
S+A+S+A xx--x=-- xx--xxxx xx--x=-- xx-xxxxx R R R / R R 5 6 >> > / R R 8 / 8 8 6 5 3 >> > | R R 3 / R R 3 R >> > / R R 5 / R R 5 6 5 >> >

theme hop 3-5: cut short on one and the and of two, long on three
S x--xx=x= R R 3 5 | R 5 8 5 | R _5 R 3 | 8 6 5 3 | R 3 5 6 | R c R 3 | R R 5 3 | R 2 3 5
A x--xx=xx R 5 3 >> > | R R 3 >> > | 8 6 5 >> > | R _5 R >> > | R c 5 >> >
L x--xx=x= 8 9 10 8 | 8 8 10 8 | R 5 8 10
C x--xx=-- R 5 R | R 3 R | 8 6 5 | R _5 R
T x--xx=xx 8 6 5 >> > | R 3 5 >> > | R _5 R >> > | R 5 3 >> >
H1 x--x R > | R R | R 3
H2 x=xx R >> > | R 3 >
H2 x=-- R | 8
S+A x--xx=x= x--xx=xx R R 3 5 / R 5 3 >> > | R 5 8 5 / 8 6 5 >> > | R _5 R 3 / R R 3 >> > | R c R 3 / R _5 R >> > | R 2 3 5 / R c 5 >> > | R 3 5 6 / 8 6 5 >> >
S+A+L+C x--xx=x= x--xx=xx x--xx=x= x--xx=-- R R 3 5 / R 5 3 >> > / 8 9 10 8 / R 5 R | R _5 R 3 / R c 5 >> > / R 5 8 10 / R 3 R
`,
  ROCKERS_TUNES,
);
