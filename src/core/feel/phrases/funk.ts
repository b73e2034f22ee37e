import { COMMON_PRACTICE } from '../rows';
import { phraseBook } from './notation';
import { FUNK_TUNES } from './tunes/funk';

/**
 * Funk in sixteenths: everything hangs on the one. Short notes, holes that are as tight as the notes, a cell that
 * stays while its tail changes; the kick's second and third strokes on the ands of two and three are the bass's, too.
 * Octaves, the ♭7, the sixth and the hammered third are its colours; sixteenths are pickups and turns, never a carpet.
 */
export const FUNK_PHRASES = phraseBook(
  { manner: 'riff', chromatics: 'short', blues: true, source: COMMON_PRACTICE },
  `
metre 4/4
theme basic 0-0: the one, and one note more
S x=----x= R R | R 5 | R 8
S x=--x=-- R R | R 5 | R 8
A x=--x=x= R R > | R 5 > | R 5 R | R = =
A x=----x= R > | R R
L x=--x=x= R 8 5 | R 5 8 | R = =
C x=--x=-- R R | R 5
C x=------ R | 8
T x=--x=x= R 5 > | R = = | R R >
E x=--x=== R R | R _5
H x=x= R 5 | R > | R =
H x=-- R | 8
Q x= R | 8

theme one 1-2: the one struck twice, a hole, and a note or two that answer
S xx----x- R R c | R R 8 | R R 5 | R 8 R | R R 3 | R R _c
S xx--x--- R R c | R R 8 | R R 5 | R R _c | R R 3 | R 8 R
S x-x---x- R R 8 | R R c | R R 5 | R 8 5
A xx--xxx- R R 8 c 5 | R R c 5 > | R R 8 8 5 | R R 5 c > | R R 5 5 > | R R 8 5 > | R 8 R 5 > | R R 3 5 > | R R 5 3 > | R R _c R >
A x---xxx- R c 5 > | R 5 c 5 | R 8 8 > | R 5 8 5 | R 8 5 > | R 5 5 > | R 3 5 >
L xx--xxx- R R 8 8 10 | R R 8 5 8 | R R 5 8 8 | R R 5 5 c | R R 5 c 8 | R R 3 5 c | R R 3 5 5
C xx------ R R | R 8
C x-x----- R R | R 8
T x---xxx- R c 5 > | R 5 5 > | R 8 5 > | R 5 3 > | R 3 5 > | R 3 c >
T xx--x-x- R R 5 > | R R 8 > | R R 3 > | R R c >
H xx-- R R | R 8
H xxx- R R > | R 8 5
S+A xx----x- xx--xxx- R R c / R R 8 c 5 | R R c / R R c 5 > | R R _c / R R 5 c > | R R 8 / R R 8 8 5 | R R 5 / R R 5 5 > | R 8 R / R R 8 5 > | R R 3 / R R 5 3 >
S+A xx--x--- x---xxx- R R c / R c 5 > | R R _c / R 5 c 5 | R R 8 / R 8 5 > | R R 5 / R 5 8 5 | R R 3 / R 3 5 >
S+A+S+C xx----x- xx--xxx- xx----x- xx------ R R c / R R c 5 > / R R c / R R | R R 8 / R R 8 8 5 / R R 5 / R R | R R 5 / R R 5 5 > / R R 8 / R 8 | R R 3 / R R 3 5 > / R R 8 / R R

theme pocket 3-4: with the kick: the one, the and of two, the and of three, and four
S x--x-xx- R R c 8 | R R 5 c | R R _c R | R 8 c 5 | R 5 c 8 | R R 5 6 | R c 8 5 | R R 3 5
A x--x-xxx R R c 5 > | R 8 c 5 > | R R 5 3 > | R R _c R > | R R 6 5 > | R 5 6 5 >
A x--x--xx R R 5 > | R R c > | R 8 c > | R R 8 >
L x--x-xxx R R 8 9 10 | R 5 8 c 8 | 8 8 10 8 c
C x--x---- R R | R 8 | R _c
C x-xx---- R R c | R R 5
T x--x-xxx R R 5 >> > | R R 3 >> > | R 8 c >> > | R R _5 >> >
T x---xxxx R 5 c >> > | R 5 3 >> > | R 3 5 >> >
H x--x R > | R c | R 8
H x-xx R R > | R c >
S+A x--x-xx- x--x-xxx R R c 8 / R R c 5 > | R R 5 c / R 8 c 5 > | R R _c R / R R 5 3 > | R 8 c 5 / R R _c R > | R R 5 6 / R R 6 5 > | R 5 c 8 / R 5 6 5 >
S+A x--x-xx- x--x---- R R c 8 / R _c | R R 3 5 / R 8
S+A+S+C x--x-xx- x--x-xxx x--x-xx- x--x---- R R c 8 / R R c 5 > / R R 5 c / R R | R R _c R / R R 5 3 > / R 8 c 5 / R _c
S+S+S+A x--x-xx- x--x-xx- x--x-xx- x--x-xxx R R c 8 / R R c 8 / R R 5 c / R R 6 5 > | R R 5 6 / R R 5 6 / R 5 c 8 / R R 5 3 >

theme stop 3-4: two on the one, the and of two, and nothing on three; the tail fetches the next bar
S xx-x--xx R R _c R R | R R 5 R 8 | R R 8 c 5 | R R c 5 8 | R R _5 _c R | R R 3 5 6
A xx-x--xx R R _c >> > | R R 5 >> > | R R 8 >> > | R R c >> > | R R 3 >> >
A xx-x---- R R _c | R R 8 | R R 5 | R R c
L xx-x--xx R R 8 9 10 | R R 8 10 8
C xx-x---- R R _c | R R R | R R 8
C xx------ R R | R 8
T xx-x--xx R R 5 >> > | R R 3 >> > | R R _5 >> >
T x---xxxx R 5 c >> > | R 3 5 >> >
H xx-x R R > | R R _c
H x-xx R >> > | 8 >> >
S+A xx-x--xx xx-x--xx R R _c R R / R R 5 >> > | R R 5 R 8 / R R 8 >> > | R R 8 c 5 / R R 3 >> > | R R 3 5 6 / R R c >> >
S+A xx-x--xx xx-x---- R R _c R R / R R 8 | R R 8 c 5 / R R _c | R R c 5 8 / R R 5
S+A+S+C xx-x--xx xx-x--xx xx-x--xx xx------ R R _c R R / R R 5 >> > / R R 8 c 5 / R 8 | R R 5 R 8 / R R 8 >> > / R R c 5 8 / R R

theme climb 3-4: the one alone, and a run of eighths that climbs out of the hole
S x--xxx-- R 5 c 8 | R _5 _c R | R R 3 5 | R 3 5 6 | R 8 c 5 | R c 5 3
A x--xxxxx R 5 c 8 >> > | R 3 5 6 >> > | R _5 _c R >> > | R 5 6 5 >> > | R c 5 3 >> >
A x--xx--- R _c R | R 8 c | R 5 8
L x--xxx-- R 8 9 10 | R 5 8 10
C x--xx--- R _c R | R 5 R | R 8 R
C x------- R
T x--xxxxx R 5 c 5 >> > | R 3 5 3 >> > | R _5 _c R >> >
T x---xxxx R 5 c >> > | R 5 3 >> >
H x--x R > | R 8
H xxxx R c >> > | R 5 >> >
S+A x--xxx-- x--xxxxx R 5 c 8 / R 5 6 5 >> > | R R 3 5 / R 3 5 6 >> > | R _5 _c R / R c 5 3 >> > | R 8 c 5 / R _5 _c R >> >
S+A x--xxx-- x--xx--- R 5 c 8 / R _c R | R 3 5 6 / R 5 8 | R c 5 3 / R _c R
S+A+L+C x--xxx-- x--xxxxx x--xxx-- x--xx--- R 5 c 8 / R 5 6 5 >> > / R 8 9 10 / R _c R | R R 3 5 / R 3 5 6 >> > / R 5 8 10 / R 5 R

theme rolling 4-5: the one, the and of two, and a roll of sixteenths on three
S x=----x=xxx=---- R _c R b3 3 | R 5 c 5 3 | R 8 R b3 3 | R R c c 8 | R 8 8 c 5 | R _c R R 8 | R 5 5 c 8 | R R 5 6 8
A x=----x=xxx=x=xx R 8 R b3 3 5 >> > | R R c 5 6 5 >> > | R 8 8 c 5 3 >> > | R _c R b3 3 R >> >
A x=----x=--x=---- R 8 c | R R _c | R 5 8 | R _c R
L x=----x=xxx=---- R 8 8 9 10 | R 5 8 c 8
C x=----x=----x-xx R 8 R >> > | R R _c >> >
C x=----x=-------- R R | R 8 | R _c
C x=-------------- R
T x=----x=xxx=x=xx R 8 R b3 3 5 >> > | R R 5 c 5 3 >> > | R 8 c 6 5 3 >> >
T x=------x=x=x=xx R 5 c 5 >> > | R 3 5 3 >> >
H x=xx R >> > | R R >
Q x=xx R >> > | R R >
S+A x=----x=xxx=---- x=----x=xxx=x=xx R 8 R b3 3 / R R c 5 6 5 >> > | R R c c 8 / R 8 8 c 5 3 >> > | R _c R R 8 / R _c R b3 3 R >> > | R R 5 6 8 / R 8 R b3 3 5 >> >
S+A x=----x=xxx=---- x=----x=--x=---- R 8 R b3 3 / R 8 c | R R c c 8 / R R _c | R 5 5 c 8 / R _c R
S+A+S+C x=----x=xxx=---- x=----x=xxx=x=xx x=----x=xxx=---- x=----x=-------- R 8 R b3 3 / R R c 5 6 5 >> > / R 8 8 c 5 / R _c | R R c c 8 / R 8 8 c 5 3 >> > / R 5 5 c 8 / R R

theme tight 5-5: with the kick, and a sixteenth that pushes before three and before four
S x=-x--x=--xx-x-- R R 8 c 8 5 | R R R _c R 5 | R R 5 5 c 8 | R R 8 5 c R | R R c 5 6 5 | R R R b3 3 5
A x=-x--x=--xxx=-- R R 8 c 5 3 | R R R b3 3 R | R R c 5 6 5 | R R 8 8 c 5
A x=-x--x=--xx-xxx R R 8 c 5 3 >> > | R R R _c R 5 >> > | R R 5 6 5 3 >> >
L x=-x--x=--xx-x-- R R 8 8 9 10 | R R 8 10 9 8
C x=-x--x=----x-xx R R 8 R >> > | R R R _c >> >
C x=-x--x=-------- R R R | R R _c | R R 8
C x=------x=------ R R | R _c
T x=-x--x=--xx-xxx R R 8 c 5 3 >> > | R R 5 c 5 3 >> >
T x=----x=x=--xxxx R R 5 c 5 >> > | R R 5 3 5 >> >
H x=-x--x= R R R | R R > | R R c
H x=-xx=xx R R c >> > | R R 5 >> >
Q x=xx R >> > | R R >
S+A x=-x--x=--xx-x-- x=-x--x=--xxx=-- R R 8 c 8 5 / R R 8 c 5 3 | R R R _c R 5 / R R R b3 3 R | R R 5 5 c 8 / R R 8 8 c 5 | R R c 5 6 5 / R R R b3 3 R
S+A x=-x--x=--xx-x-- x=-x--x=--xx-xxx R R 8 c 8 5 / R R 8 c 5 3 >> > | R R R _c R 5 / R R R _c R 5 >> > | R R 5 5 c 8 / R R 5 6 5 3 >> >
S+A+S+C x=-x--x=--xx-x-- x=-x--x=--xxx=-- x=-x--x=--xx-x-- x=-x--x=-------- R R 8 c 8 5 / R R 8 c 5 3 / R R 5 5 c 8 / R R _c | R R R _c R 5 / R R R b3 3 R / R R c 5 6 5 / R R R

theme octave 5-5: low with the kick, the octave with the snare, a pickup of two sixteenths
S x=--x-x=--x=x-x- R 8 R R 8 c | R 8 _c R 8 5 | R 8 R 5 8 c | R 8 R _c 8 8
A x=--x-x=--x=--xx R 8 R R >> > | R 8 R c >> > | R 8 _c R >> > | R 8 5 3 >> >
A x=--x-x=--xxx=-- R 8 R 5 c 8 | R 8 R b3 3 5 | R 8 _c 5 3 R
L x=--x-x=--x=x-x- R 8 R R 8 10 | R 8 R c 8 10 | R 8 10 8 10 9 | R 8 R 8 9 10
C x=--x-x=----x-xx R 8 R R >> > | R 8 _c R >> >
C x=--x-x=-------- R 8 R | R 8 _c
C x=--x----------- R 8 | R 5
T x=--x-x=--x=--xx R 8 R 5 >> > | R 8 R 3 >> >
T x=--x-x=--xxx=xx R 8 R 5 c 3 >> > | R 8 R 3 5 c >> >
H x=--x-x= R 8 R | R 8 >
H x=--x-xx R 8 >> >
Q x=xx R >> >
S+A x=--x-x=--x=x-x- x=--x-x=--x=--xx R 8 R R 8 c / R 8 R R >> > | R 8 _c R 8 5 / R 8 R c >> > | R 8 R 5 8 c / R 8 5 3 >> >
S+A x=--x-x=--x=x-x- x=--x-x=--xxx=-- R 8 R R 8 c / R 8 R 5 c 8 | R 8 R 5 8 c / R 8 R b3 3 5 | R 8 R _c 8 8 / R 8 _c 5 3 R
S+A+L+C x=--x-x=--x=x-x- x=--x-x=--xxx=-- x=--x-x=--x=x-x- x=--x-x=-------- R 8 R R 8 c / R 8 R 5 c 8 / R 8 R 8 9 10 / R 8 _c

theme hammered 5-5: three stabs on the one, the flat third hammered into the third on three
S x=-x-x--xxx=---- R R R 2 3 R | R R c 5 3 R | R R 8 5 c 8 | R R R b3 3 R | R R c b3 3 5 | R R 8 b3 3 5 | R R _c b3 3 8
A x=-x-x--xxx=x=xx R R R 5 c 5 3 >> > | R R c 5 6 5 3 >> > | R R 8 c 6 5 3 >> > | R R R b3 3 R 5 >> >
A x=-x-x--xxx=x=-- R R R 5 c 5 3 | R R c b3 3 5 R
L x=-x-x--xxx=x=xx 8 8 8 9 10 8 c >> > | R R R 5 8 c 8 >> >
C x=-x-x------x-xx R R R R >> > | R R c 5 >> >
C x=-x-x---------- R R R | R R c
C x=------x=------ R R | R 5
T x=-x-x--xxx=x=xx R R R 5 c 5 3 >> > | R R c 5 6 5 3 >> >
T x=----x=x=--xxxx R R 5 c 5 >> > | R R 3 5 3 >> >
H x=-x-x-- R R R | R R >
H xxx=x=xx R b3 3 5 >> > | R c 5 3 >> >
Q x=xx R >> >
S+A x=-x-x--xxx=---- x=-x-x--xxx=x=xx R R R 2 3 R / R R R 5 c 5 3 >> > | R R 8 5 c 8 / R R 8 c 6 5 3 >> > | R R R b3 3 R / R R R 5 c 5 3 >> > | R R c b3 3 5 / R R c 5 6 5 3 >> > | R R 8 b3 3 5 / R R 8 c 6 5 3 >> >
S+A x=-x-x--xxx=---- x=-x-x--xxx=x=-- R R R b3 3 R / R R R 5 c 5 3 | R R 8 b3 3 5 / R R c b3 3 5 R
S+A+S+C x=-x-x--xxx=---- x=-x-x--xxx=x=-- x=-x-x--xxx=---- x=-x-x---------- R R R b3 3 R / R R R 5 c 5 3 / R R c b3 3 5 / R R R
; Two, two and three: the backbeat stands on two, and an eighth is cut from the end of the bar.
metre 7/8
theme basic 0-0: the one, and the long beat
S x=--x=- R R | R 5 | R 8
S x=----- R
A x=--x=x R R > | R 5 > | R = =
A x=x=x== R R 5 | R = =
L x=--x== R 8 | R 5 | R R
C x=----- R | 8
C x=--x-- R R | R 5
T x=--x=x R 5 > | R R > | R = =
T x=x=x== R R > | R = =
E x=--x== R R | R _5
H x=x= R 5 | R > | R =
H x=-- R | 8
D x=- R | 8
D x=x R >
Q x= R | 8
S+A x=--x=- x=x=x== R R / R = = | R 5 / R R 5

theme one 1-2: the one struck twice, a hole, and the long beat answers
S xx--x-- R R 8 | R R 5 | R 8 R | R R 3
S xx---x- R R 8 | R R 5 | R R R
A xx--xx- R R 8 5 | R R 5 5 | R 8 R 5 | R R 3 5
A x---xxx R 8 5 > | R 5 5 > | R 3 5 >
L xx--xxx R R 8 8 10 | R R 8 5 8
C xx----- R R | R 8
C x-x---- R R | R 8
T x---xxx R 5 5 > | R 8 5 > | R 5 3 >
T xx--x-x R R 5 > | R R 8 >
H xx-- R R | R 8
D xx- R R | R 8
D xxx R R >
S+A xx--x-- xx--xx- R R 8 / R R 8 5 | R R 5 / R R 5 5 | R 8 R / R 8 R 5 | R R 3 / R R 3 5
S+A xx--x-- x---xxx R R 8 / R 8 5 > | R R 5 / R 5 5 >
S+A+S+C xx--x-- xx--xx- xx--x-- xx----- R R 8 / R R 8 5 / R R 5 / R R | R R 3 / R R 3 5 / R R 8 / R 8

theme pocket 3-4: the one, the and of two, and the long beat cut short
S x--xx-- R R 8 | R c R | R R c | R 8 c | R 5 c | R R 5
S x--x-x- R R c | R 8 c | R R 8
A x--xxxx R R c 5 > | R 8 c 5 > | R R 5 3 > | R _c R 5 >
A x--x-xx R R c > | R R 5 > | R 8 c >
L x--xxx- R R 8 10 | R 5 8 c | 8 10 8 c
C x--x--- R R | R 8 | R _c
C x-x---- R c | R 5
T x--xxxx R R 5 >> > | R R 3 >> > | R 8 c >> >
T x---xxx R 5 >> > | R 3 >> >
H x--x R > | R c | R 8
D xxx R >> > | R c >
D x-x R >
S+A x--xx-- x--xxxx R R 8 / R R c 5 > | R c R / R 8 c 5 > | R R c / R R 5 3 > | R 8 c / R _c R 5 >
S+A x--xx-- x--x-xx R R 8 / R R c > | R 5 c / R R 5 > | R R 5 / R 8 c >
S+A+S+C x--xx-- x--xxxx x--xx-- x--x--- R R 8 / R R c 5 > / R c R / R R | R R c / R 8 c 5 > / R R 8 / R _c
S+S+S+A x--xx-- x--xx-- x--xx-- x--xxxx R R 8 / R R 8 / R R c / R R 5 3 > | R c R / R c R / R 8 c / R _c R 5 >

theme climb 3-4: the one alone, and a run of eighths into the long beat
S x--xxx- R 5 c 8 | R _5 _c R | R R 3 5 | R 3 5 6 | R 8 c 5
A x--xxxx R 5 c >> > | R 3 5 >> > | R _5 _c >> > | R c 5 >> >
A x--xx-- R _c R | R 8 c | R 5 8
L x--xxx- R 8 9 10 | R 5 8 10
C x--xx-- R _c R | R 5 R
C x------ R
T x--xxxx R 5 c >> > | R 3 5 >> >
T x---xxx R 5 >> > | R c >> >
H x--x R > | R 8
D xxx R c > | R >> >
S+A x--xxx- x--xxxx R 5 c 8 / R c 5 >> > | R R 3 5 / R 3 5 >> > | R _5 _c R / R _5 _c >> > | R 8 c 5 / R c 5 >> >
S+A x--xxx- x--xx-- R 5 c 8 / R _c R | R 3 5 6 / R 5 8
S+A+L+C x--xxx- x--xxxx x--xxx- x--xx-- R 5 c 8 / R 3 5 >> > / R 8 9 10 / R _c R | R R 3 5 / R c 5 >> > / R 5 8 10 / R 5 R
S+S+A+C x--xxx- x--xxx- x--xxxx x------ R 5 c 8 / R _5 _c R / R c 5 >> > / R

theme rolling 4-5: the one, the and of two, and a roll of sixteenths on the long beat
S x=----x=xxx=-- R 8 R b3 3 | R R c c 8 | R 8 8 c 5 | R _c R R 8 | R R 5 6 8
A x=----x=xxx=xx R 8 R b3 3 >> > | R R c 5 6 >> > | R 8 8 c 5 >> > | R _c R b3 3 >> >
A x=----x=x=---- R 8 c | R R _c | R 5 8 | R _c R
L x=----x=xxx=-- R 8 8 9 10 | R 5 8 c 8
C x=----x=------ R R | R 8 | R _c
C x=------------ R
T x=----x=xxx=xx R 8 R b3 3 >> > | R R 5 c 5 >> >
T x=------x=x=xx R 5 c >> > | R 3 5 >> >
H x=----x= R 8 | R >
D xxx=xx R b3 3 >> > | R c 5 >> >
S+A x=----x=xxx=-- x=----x=xxx=xx R 8 R b3 3 / R R c 5 6 >> > | R R c c 8 / R 8 8 c 5 >> > | R _c R R 8 / R _c R b3 3 >> > | R R 5 6 8 / R 8 R b3 3 >> >
S+A x=----x=xxx=-- x=----x=x=---- R 8 R b3 3 / R 8 c | R R c c 8 / R R _c
S+A+S+C x=----x=xxx=-- x=----x=xxx=xx x=----x=xxx=-- x=----x=------ R 8 R b3 3 / R R c 5 6 >> > / R 8 8 c 5 / R _c | R R c c 8 / R 8 8 c 5 >> > / R R 5 6 8 / R R
`,
  FUNK_TUNES,
);
