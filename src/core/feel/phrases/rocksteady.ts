import { COMMON_PRACTICE } from '../rows';
import { phraseBook } from './notation';
import { ROCKSTEADY_TUNES } from './tunes/rocksteady';

/**
 * Rocksteady: a tune in the gaps. Short clusters, then nothing, then two notes that fetch the next chord. One
 * rhythm comes back until it can be sung; its answer has another; bars are thought in twos and fours.
 */
export const ROCKSTEADY_PHRASES = phraseBook(
  { manner: 'riff', chromatics: 'short', blues: false, source: COMMON_PRACTICE },
  `
metre 4/4
theme basic 0-0: two notes and one more, then a rest
S x=x=x=-- R = = | R = 5 | R 5 R | R 5 8 | R _5 R | R 8 5
S x===x=-- R R | R 5 | R _5 | R 8
A x=x=--x= R 5 > | R = > | 8 5 > | R = = | R _5 > | R R R
L x=x=x=-- R 5 8 | 8 5 8 | R = 8 | R = =
C x=x=x=-- R 5 R | R = = | 8 5 R | R _5 R
C x===x=-- R R | R 5 | 8 5 | R _5
T x=x=--x= R 5 > | R = > | R = = | R _5 >
T x=--x=x= R 5 > | R R > | R R R | 8 5 >
E x=x=x=-- R 5 R | R _5 R | R = =
H x=x= R 5 | R = | R > | R _5
Q x= R | 8
S+A x=x=x=-- x=x=--x= R 5 8 / 8 5 > | R = 5 / R 5 > | R 5 R / R _5 > | R = = / R = =

theme tune 1-1: long, two short, long, and a rest, on root and fifth
S x=xxx=-- R 5 5 R | R 5 8 5 | R R 5 R | R _5 _5 R | R 5 R 5 | R R R 5 | 8 5 5 R
A x=xxx=-- 8 5 R 5 | R 5 5 R | 5 5 R 5 !co | R _5 R 5 | R R 5 > | R 5 5 >
A x=x=--x= R 5 > | 8 5 > | R _5 >
L x=xxx=-- R 5 5 8 | 8 5 8 5 | R 5 8 8 | 8 8 8 5
C x===x=-- R 5 | 8 5 | R _5
C x=--x=-- R 5 | R _5
T x=--x=x= R 5 > | 8 5 > | R _5 >
T x=--xxx= R 5 R > | R _5 R > | R R R >
H x=x= R 5 | R > | R _5 | 8 >
H1 x=xx R R 5 | R 5 R
H2 x=-- R | 8
S+A x=xxx=-- x=xxx=-- R 5 5 R / 8 5 R 5 | R 5 8 5 / R 5 5 R | R R R 5 / R R 5 > | R _5 _5 R / R 5 5 > | R R 5 R / R _5 R 5
S+A x=xxx=-- x=x=--x= R 5 5 R / R 5 > | R 5 8 5 / 8 5 > | R _5 _5 R / R 5 > | R R R 5 / R _5 >
S+A+S+C x=xxx=-- x=x=--x= x=xxx=-- x===x=-- R 5 5 R / R 5 > / R 5 5 R / R 5 | R 5 8 5 / 8 5 > / R 5 8 5 / R _5 | R R R 5 / R _5 > / R R R 5 / R 5
S+A+S+T x=xxx=-- x=x=--x= x=xxx=-- x=--x=x= R 5 5 R / R 5 > / R 5 5 R / R 5 > | R 5 8 5 / 8 5 > / R 5 8 5 / R _5 > | R R R 5 / R _5 > / R R R 5 / R 5 >
S+A+L+T x=xxx=-- x=x=--x= x=xxx=-- x=--x=x= R 5 5 R / R 5 > / R 5 5 8 / R 5 > | R 5 8 5 / 8 5 > / 8 5 8 5 / R _5 > | R R R 5 / R _5 > / 8 8 8 5 / R 5 >

theme song 2-4: long, two short, long, and a rest
S x=xxx=-- R 3 5 = | R 5 3 R | R 3 5 3 | R 5 8 5 | R _5 R 3 | 8 5 3 5 | R 3 2 R | R R 3 5 | R 3 4 5 | R 5 6 5 | R _5 _6 R | 8 6 5 8
A x=xxx=-- 8 5 3 5 | R 5 3 R | 8 5 R 3 | R _5 R 3 | R 3 R > | 8 5 3 > | 8 6 5 3 | R 3 2 > | R _6 _5 >
A x=x=--x= R 3 > | 8 5 > | R 5 > | R _5 >
L x=xxx=-- R 3 5 8 | 8 10 8 5 | R 5 8 10 | 8 9 10 8 | R 5 8 >
C x===x=-- R 3 | R 5 | 8 5 | R _5 | R 6
C x=--x=x= R 5 > | R 3 > | 8 5 > | R _5 >
T x=--xxx= R 5 = > | 8 5 = > | R _5 = > | R 5 3 > | R 3 5 >
T x=--xxxx R 5 6 >> > | R 5 3 >> > | 8 6 5 >> > | R _5 _6 >> >
E x=xxx=-- 8 5 3 R | R _5 _6 R | R 5 3 R
H x=x= R > | R 3 | R 5 | 8 >
H1 x=xx R R > | R 3 > | R R 3
H2 x=x= R > | R 3 | 8 >
H2 x=-- R
S+A x=xxx=-- x=xxx=-- R 3 5 = / 8 5 3 5 | R 5 3 R / R 3 5 3 | R 3 5 3 / R 5 3 R | R _5 R 3 / 8 5 3 > | R 3 2 R / R 5 6 5 | R 3 4 5 / 8 6 5 3 | R 5 6 5 / R 3 2 > | 8 6 5 8 / R 3 2 R
S+A x=xxx=-- x=x=--x= R 3 5 = / 8 5 > | R 5 8 5 / R 3 > | R 3 5 3 / R _5 >
S+A+S+T x=xxx=-- x=x=--x= x=xxx=-- x=--xxx= R 3 5 3 / R 5 > / R 3 5 3 / R 5 3 > | R 5 3 R / R 3 > / R 5 3 R / R 3 5 > | R 5 8 5 / 8 5 > / R 5 8 5 / R _5 = >
S+A+L+T x=xxx=-- x=x=--x= x=xxx=-- x=--xxx= R 3 5 3 / R 5 > / 8 10 8 5 / R 5 3 > | R 5 3 R / R 3 > / R 3 5 8 / R 3 5 >
S+A+S+C x=xxx=-- x=xxx=-- x=xxx=-- x===x=-- R 3 5 = / 8 5 3 5 / R 5 8 5 / R 3 | R 5 3 R / R 3 5 3 / R 5 8 5 / R 5 | R 3 2 R / R 5 6 5 / R 3 4 5 / 8 5
S+A+L+C x=xxx=-- x=xxx=-- x=xxx=-- x=--x=x= R 3 5 3 / R 5 3 R / R 5 8 10 / 8 5 > | R 3 4 5 / 8 6 5 3 / 8 9 10 8 / R 5 >

theme cluster 3-5: long, two short, home; the answer leaves the one empty and fetches the next chord
S x=xxx=-- R R 3 5 | R 3 4 5 | R 5 6 5 | R _5 _6 R | R R 5 6 | 8 5 6 8 | R 3 2 R | R 5 6 8 | R 3 5 6 | R c 5 3
A --xxx=xx 5 6 5 >> > | 5 3 R >> > | 8 6 5 >> > | 3 2 R >> > | R _6 _5 >> > | 8 7 6 >> > | 5 c 5 >> > | R 3 5 >> >
A x=xx--xx R 5 3 >> > | R 3 2 >> > | 8 6 5 >> > | R _6 _5 >> > | R 5 6 >> >
L x=xx--xx 8 9 10 >> > | 8 10 8 >> > | R 5 8 >> > | 8 6 8 >> >
C x=xxx=-- R 3 2 R | 8 6 5 3 | R 5 3 R | R _6 _5 R | R R 5 3
C x===x=-- R 3 | R 5 | 8 6 | R c
T x=--x=xx R 5 >> > | 8 6 >> > | R _5 >> > | R 3 >> > | R 6 >> >
T x=--xxxx R 5 6 >> > | R 5 3 >> > | 8 6 5 >> > | R _5 _6 >> >
H1 x=xx R R > | R R 3 | R 3 5 | R >> >
H2 x=-- R | 8
H2 x=-x R > | 8 >
H2 x=xx R >> > | R 3 >
S+A x=xxx=-- --xxx=xx R R 3 5 / 5 6 5 >> > | R 3 4 5 / 8 6 5 >> > | R 5 6 5 / 5 3 R >> > | R R 5 6 / 8 6 5 >> > | R _5 _6 R / 3 2 R >> > | R 3 2 R / R 3 5 >> > | R 5 6 8 / 8 7 6 >> > | R c 5 3 / 5 3 R >> >
S+A+S+C x=xxx=-- x=xx--xx x=xxx=-- x===x=-- R R 3 5 / R 5 3 >> > / R 5 6 8 / R 5 | R 3 4 5 / 8 6 5 >> > / R 3 5 6 / 8 6 | R 5 6 5 / R 3 2 >> > / R 5 6 8 / R 3
S+A+L+C x=xxx=-- --xxx=xx x=xx--xx x=xxx=-- R R 3 5 / 5 3 R >> > / 8 9 10 >> > / R 3 2 R | R R 5 6 / 5 6 5 >> > / R 5 8 >> > / 8 6 5 3 | R 3 2 R / R 3 5 >> > / 8 10 8 >> > / R 5 3 R

theme pushed 3-5: short on one, a pushed long note, two short home, a rest and two that lead
S xx==xx-- R 3 2 R | R 3 4 5 | R 5 6 5 | R 5 3 R | R 3 5 6 | R _5 _6 R | 8 5 6 8 | R c 5 3 | R 2 3 5
S xx==xxx= R 3 2 R > | R 5 6 5 3 | R 3 4 5 6 | 8 6 5 3 >
A xx==x=xx R 3 R >> > | R 5 3 >> > | 8 6 5 >> > | R _5 R >> > | R 3 5 >> > | 8 5 3 >> > | R c 5 >> >
L xx==xxxx 8 10 9 8 >> > | R 5 6 8 >> > | 8 9 10 8 >> > | R 3 5 8 >> >
C x==xx=-- R 3 R | R 5 3 | 8 6 5 | R _5 R | R 5 6
C xx==x=-- R 5 3 | R 3 R | 8 6 5 | R _6 _5
T x==-x=xx R 5 >> > | R R >> > | 8 5 >> > | R _5 >> > | R 6 >> >
T xx==x=xx R 3 R >> > | R 5 3 >> > | 8 6 5 >> > | R _5 _6 >> >
H1 xx== R 3 | R 5 | R >
H2 x=xx R >> > | R 3 >
H2 x=-- R | 8
S+A xx==xx-- xx==x=xx R 3 2 R / R 3 R >> > | R 3 4 5 / R 5 3 >> > | R 5 6 5 / 8 6 5 >> > | R 5 3 R / R 3 5 >> > | R c 5 3 / R _5 R >> > | R _5 _6 R / R 3 R >> > | 8 5 6 8 / 8 6 5 >> > | R 3 5 6 / 8 5 3 >> >
S+A+S+C xx==xx-- xx==x=xx xx==xx-- x==xx=-- R 3 2 R / R 3 R >> > / R 3 4 5 / R 5 3 | R 5 6 5 / R 5 3 >> > / 8 5 6 8 / 8 6 5 | R 3 5 6 / 8 6 5 >> > / R 5 3 R / R 3 R
S+A+L+C xx==xx-- xx==x=xx xx==xxxx x==xx=-- R 3 2 R / R 3 5 >> > / 8 10 9 8 >> > / R 5 3 | R 3 4 5 / 8 6 5 >> > / R 5 6 8 >> > / R 3 R

theme push 3-5: the one is left to the drums; three notes after it, a rest, two that lead
S -xxxx=-- R R 3 5 | R 3 5 6 | R R 5 8 | R 3 2 R | 8 6 5 3 | R _5 _6 R | R R 5 6 | R 3 4 5
A -xxx--xx 8 6 5 >> > | 5 3 R >> > | R 3 R >> > | R _6 _5 >> > | 3 2 R >> > | 8 5 3 >> > | R _5 R >> > | R 3 5 >> >
L -xxxx=xx R 3 5 8 >> > | 8 9 10 8 >> > | 5 6 8 6 >> >
C -xxxx=-- 8 6 5 3 | R _6 _5 R | R 3 2 R | 5 3 2 R
T -xxx--xx 8 6 5 >> > | R _6 _5 >> > | R 3 R >> > | 5 3 R >> >
H1 -xxx R R > | R >> > | R 3 > | R R 3 | R 3 5
H2 x=-- R | 8
H2 x=xx R >> > | 8 >> > | R R >
S+A -xxxx=-- -xxx--xx R R 3 5 / 8 6 5 >> > | R 3 5 6 / 5 3 R >> > | R 3 2 R / R 3 5 >> > | 8 6 5 3 / R _5 R >> > | R R 5 6 / 8 5 3 >> > | R _5 _6 R / 3 2 R >> >

theme dotted 3-5: a long one into its and, two short, a rest; the answer waits for two
S x==xx=-- R 5 6 | R 3 5 | R _5 R | 8 5 6 | R 6 5 | R 2 3 | R 3 2 | R c 5
A x==xx=xx R 3 R >> > | R 5 3 >> > | 8 6 5 >> > | R _5 R >> > | R 3 5 >> >
A --x=x=xx 5 3 >> > | 8 5 >> > | R _5 >> > | 3 R >> > | 5 6 >> >
L x==xx=xx 8 9 10 >> > | 8 10 8 >> > | R 5 8 >> >
C x==xx=-- R 3 R | R 5 3 | 8 5 3 | R _5 R
C x===x=-- R 5 | R 3 | 8 6
T x==-x=xx R 5 >> > | 8 5 >> > | R _5 >> > | R 6 >> >
T x==xx=xx R 3 R >> > | R 5 3 >> > | 8 6 5 >> >
H1 x==x R > | 8 > | R 3 | R 5
H2 x=-- R | 8
H2 x=xx R >> > | R 3 > | R R >
S+A x==xx=-- x==xx=xx R 5 6 / R 5 3 >> > | R 3 5 / 8 6 5 >> > | R 6 5 / R 3 R >> > | R 2 3 / R 3 5 >> > | R 3 2 / R _5 R >> > | R c 5 / R 5 3 >> >
S+A x==xx=-- --x=x=xx R 5 6 / 8 5 >> > | R 3 5 / 5 3 >> > | R _5 R / 3 R >> > | R 2 3 / 5 6 >> >
S+A+L+C x==xx=-- x==xx=xx x==xx=xx x===x=-- R 3 5 / R 5 3 >> > / 8 10 8 >> > / R 5 | R 5 6 / 8 6 5 >> > / 8 9 10 >> > / R 3

theme sixteenth 4-5: a sixteenth pushes into the second beat, the answer rolls out of the rest
S x===x==xx===---- R R 3 5 | R 5 6 8 | R 3 4 5 | R R 5 6 | 8 5 6 8 | R 3 2 R | R c 5 3
A ----x=xxx===x=x= 5 5 3 R >> > | 8 8 6 5 >> > | R R _6 _5 >> > | 3 3 2 R >> >
A x===x==xx===x=x= R 5 3 R >> > | 8 6 5 3 >> > | R 3 2 R >> > | R R 5 6 >> >
L x===x==xx===x=x= 8 8 9 10 >> > | R 5 6 8 >> > | 8 9 10 8 >> >
C x===x==xx===---- R R 3 R | 8 6 5 3 | R R 5 3 | R R _6 _5
C x=======x===---- R 5 | R 3 | 8 6
T x===----x=xxx=x= R 5 5 6 >> > | 8 6 6 5 >> > | R 5 5 3 >> >
H x=xx R >> > | R 3 > | R 5 >
H2 x=-- R | 8
S+A x===x==xx===---- x===x==xx===x=x= R R 3 5 / R 5 3 R >> > | R 5 6 8 / 8 6 5 3 >> > | R 3 2 R / R R 5 6 >> > | R c 5 3 / R 3 2 R >> >
S+A x===x==xx===---- ----x=xxx===x=x= R R 3 5 / 5 5 3 R >> > | R 5 6 8 / 8 8 6 5 >> > | R 3 4 5 / 3 3 2 R >> >
`,
  ROCKSTEADY_TUNES,
);
