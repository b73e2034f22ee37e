import { COMMON_PRACTICE } from '../rows';
import { phraseBook } from './notation';
import { BALLAD_TUNES } from './tunes/ballad';

/**
 * Ballad in six: two slow beats of three. The root is long and late to leave; the last eighth of a beat points to the
 * next; one bar in four climbs, the others leave room for the voice.
 */
export const BALLAD_PHRASES = phraseBook(
  { manner: 'riff', chromatics: 'short', blues: false, source: COMMON_PRACTICE },
  `
metre 6/8
theme basic 0-1: the root, and the chord again on the second beat
S x==x== R 5 | R R | R 8 | R _5 | 8 5
S x===== R | 8
A x==x== R 5 | R _5 | 8 5 | R >
L x==x== R 8 | 8 5 | R R
C x===== R | 8
C x==x== R 5 | R R | R _5
T x==x== R > | R 5 | R R | 8 >
E x===== R | 8
H x==x== R 5 | R R | R > | R 3
Q x== R | 8
S+A x==x== x==x== R 5 / R > | R R / R R | R 8 / 8 5 | R _5 / R >
S+A+S+C x==x== x==x== x==x== x===== R 5 / R > / R 8 / R | R R / R R / R R / R

theme heart 1-2: long, short, long: the eighth leans into the second beat
S x=xx== R R 5 | R 5 R | R 5 8 | R R 8 | R _5 R | R R 3 | R 5 3 | R 3 5 | 8 5 3
A x=xx=x R 5 5 > | R R 5 > | R 5 R > | R 3 5 > | 8 5 3 >
A x==x=x R 5 > | R 3 > | 8 5 >
L x=xx== R 5 8 | 8 8 10 | R 3 8
L x=xx=x R 5 8 >
C x==x== R 5 | R 3 | R _5
C x===== R
T x==x=x R 5 > | R 3 > | R _5 > | 8 5 >
T x=xx=x R 5 5 > | R 3 5 >
E x==x== R R | R _5
H x=xx== R R 5 | R 5 > | R 3 >
H x==x=x R R > | R 5 >
H2 x==x== R 3 | R 5
Q x=x R > | R R | 8 >
S+A x=xx== x=xx=x R R 5 / R 5 5 > | R 5 8 / R R 5 > | R R 8 / R 5 R > | R _5 R / R R 5 > | R 5 8 / 8 5 3 > | R 3 5 / R 5 R > | R 5 3 / R 3 5 >
S+A+S+C x=xx== x=xx=x x=xx== x==x== R R 5 / R 5 5 > / R 5 8 / R 5 | R 3 5 / R 3 5 > / R 5 R / R 3

theme gospel 3-5: the long beat, then a turn that climbs into the next chord
S x=xx== R 5 6 | R 3 5 | R 5 3 | 8 5 6 | R c 5 | R _5 R | R 6 5
S x==x=x R 5 6 | R 3 4 | R c 5
A x==xxx R 5 >> > | R 3 >> > | 8 c >> > | R _5 >> > | R 6 >> >
A x=xx=x R 5 3 > | R 3 5 > | 8 6 5 > | R c 5 >
L x=xx=x 8 9 10 > | R 5 8 > | 8 10 9 >
C x==x== R 5 | R 3 | 8 5
C x===== R
T x=xxxx R 5 6 >> > | R 3 5 >> > | R 5 3 >> >
T x==xxx R 5 >> > | R 3 >> >
H x==x=x R 3 > | R R > | R 5 >
H2 x==x== R 3 | R 5
Q x=x R > | 8 > | R 3 | R 5
S+A x=xx== x==xxx R 5 6 / 8 c >> > | R 3 5 / R 5 >> > | R 5 3 / R _5 >> > | R c 5 / R 6 >> >
S+A x==x=x x=xx=x R 5 6 / R 5 3 > | R 3 4 / 8 6 5 > | R c 5 / R 3 5 >
S+A+L+C x=xx== x==xxx x=xx=x x==x== R 5 6 / R 3 >> > / 8 9 10 > / R 5 | R 3 5 / R 5 >> > / 8 10 9 > / R 3
S+S+A+C x=xx== x=xx== x=xx=x x===== R 5 6 / R 3 5 / 8 6 5 > / R | R 5 3 / R c 5 / R 3 5 > / R

theme arpeggio 3-5: the chord in slow eighths, high on the second beat, and back
S x=xx=x R 5 8 5 | R 3 5 3 | R 5 10 8 | R 5 6 5 | R c 5 3
A x=xx== R 5 3 | 8 5 3 | R _5 R | R 6 5
A x=xxxx R 5 3 >> > | R 3 5 >> > | 8 5 3 >> >
L x=xx=x R 5 10 9 | 8 9 10 8 | R 5 8 10
C x==x== R 5 | 8 5
C x===== R
T x=xxxx R 5 3 >> > | R 3 5 >> > | 8 6 5 >> >
T x==xxx R 5 >> > | R _5 >> >
H x=xx=x R 5 3 > | R 3 5 >
Q x=x R > | R 5
S+A x=xx=x x=xx== R 5 8 5 / R 5 3 | R 3 5 3 / 8 5 3 | R 5 6 5 / R _5 R
S+A x=xx=x x=xxxx R 5 8 5 / R 3 5 >> > | R 5 10 8 / 8 5 3 >> > | R c 5 3 / R 5 3 >> >
S+A+L+C x=xx=x x=xx== x=xx=x x==x== R 5 8 5 / R 5 3 / R 5 10 9 / 8 5 | R 3 5 3 / R 6 5 / 8 9 10 8 / R 5

theme held 3-5: the first beat held, three eighths on the second
S x==xxx R 5 6 5 | R 3 4 5 | R _5 _6 _7 !st | R c 5 3 | R 5 3 R | R 5 6 8
A x==x== R 5 | R 3 | 8 6 | R c
A x==x=x R 5 > | R 3 > | 8 c >
L x==xxx R 8 9 10 | 8 10 9 8
C x===== R | 8
C x==x== R 5 | R _5
T x==xxx R 5 >> > | R 3 >> > | R _5 >> >
T x=xx=x R 5 3 > | R 3 5 >
H x==x=x R R > | R 5 >
H2 x==x== R 3 | R 5
Q x=x R >
S+A x==xxx x==x== R 5 6 5 / R 3 | R 3 4 5 / 8 6 | R c 5 3 / R 5
S+A x==xxx x==x=x R 5 6 5 / R 3 > | R _5 _6 _7 / R 5 > | R 5 3 R / 8 c >
S+A+L+C x==xxx x==x=x x==xxx x===== R 5 6 5 / R 3 > / R 8 9 10 / R | R 3 4 5 / R 5 > / 8 10 9 8 / R

theme pickup 3-5: the chord held all the bar but its last eighths
S x====x R > | 8 > | R 5 | R 3
S x==-xx R 3 5 | R 5 6 | 8 6 5 | R _5 _6
A x==-xx R >> > | 8 >> >
A x==x=x R 3 > | R 5 > | 8 6 > | R c >
L x==xxx R 8 9 10 | 8 10 9 8
C x===== R | 8
C x==x== R 5 | R 3 | R c
T x==-xx R >> > | 8 >> >
T x=xxxx R 5 6 >> > | R 3 5 >> > | 8 c 5 >> >
S+A x====x x==x=x R > / R 3 > | R 5 / 8 6 > | R 3 / R c >
S+A x==-xx x==-xx R 3 5 / 8 >> > | R 5 6 / R >> > | 8 6 5 / R >> >
S+A+L+C x==-xx x==x=x x==xxx x===== R 3 5 / 8 6 > / R 8 9 10 / R | R 5 6 / R 3 > / 8 10 9 8 / R

metre 12/8
theme basic 0-1: two long beats, the fifth or the octave on the second half
S x=====x===== R 5 | R R | R 8 | R _5
S x=====x==x== R 5 R | R R 5 | R 5 8 | R 8 5 | R = =
A x=====x==x== R 5 > | 8 5 > | R R > | R _5 > | R = =
L x=====x==x== R 8 5 | R 5 8 | R = =
C x=====x===== R 5 | R R | 8 5 | R _5
C x=====x==--- R 5 | R R
T x=====x==x== R 5 > | R _5 > | R = =
T x==x==x==x== R = 5 > | R 5 R > | R = = =
E x=====x===== R R | R _5 | 8 R
H x==x== R 5 | R R | R > | 8 5
Q x== R | 8
S+A x=====x==x== x=====x==x== R 5 R / R 5 > | R 5 8 / 8 5 > | R = = / R = =

theme heart 1-2: long, a lean into the second half, and a note that leads
S x=====x=xx== R 5 5 R | R R 5 8 | R 5 3 R | R 3 5 3 | R 5 8 5
S x=xx==x=xx== R R 5 R R 3 | R 5 R R 5 8 | R 5 8 8 5 R
A x=====x==x=x R 5 R > | R 5 5 > | 8 5 3 > | R 3 5 >
L x=====x=xx== R 8 8 5 | R 5 8 10
C x=====x===== R 5 | R 3 | 8 5
T x=====x==x=x R 5 R > | R 5 3 > | R _5 R >
T x=====x==x== R 5 > | R 3 >
Q x=x R > | R R
S+A x=====x=xx== x=====x==x=x R 5 5 R / R 5 R > | R 3 5 3 / 8 5 3 > | R R 5 8 / R 5 5 >

theme gospel 3-5: two long beats, then a turn in eighths that climbs into the chord
S x=====x=xx== R 5 6 5 | R 3 5 6 | R c 5 3 | R 5 3 R | 8 6 5 3
S x==x=xx===== R R 3 5 | R 5 6 8 | R 3 4 5 | 8 c 5 3
A x=====x==x=x R 5 3 > | 8 c 5 > | R 3 2 > | R _5 R > | R 6 5 >
A x=====x==xxx R 5 3 >> > | R 3 5 >> > | 8 6 5 >> >
L x==x=xx==x=x 8 8 9 10 8 > | R 3 5 8 c >
L x=====x=xx== 8 9 10 8 | R 5 8 10
C x=====x===== R 5 | R 3 | 8 5 | R c
T x=====x==xxx R 5 3 >> > | R 3 5 >> > | 8 6 5 >> >
T x==x=xx==xxx R 3 5 6 5 >> > | R R 3 5 3 >> >
H x==x=x R 3 > | R R > | R 5 >
H2 x==x== R 3 | R 5
Q x=x R > | 8 > | R 3
S+A x=====x=xx== x=====x==x=x R 5 6 5 / 8 c 5 > | R 3 5 6 / R 5 3 > | R c 5 3 / R _5 R > | 8 6 5 3 / R 3 2 >
S+A x==x=xx===== x=====x==xxx R R 3 5 / R 5 3 >> > | R 5 6 8 / 8 6 5 >> > | R 3 4 5 / R 3 5 >> >

theme arpeggio 3-5: the chord in slow eighths, high in the middle, and back
S x==x=xx=xx== R 5 8 10 8 5 | R 3 5 8 5 3 | R 5 6 8 6 5
S x==x==x=xx== R 5 8 5 3 | R 3 5 6 5 | R 5 c 5 3
A x==x==x==x=x R 5 3 R > | 8 5 3 5 > | R 3 5 3 > | 8 6 5 3 >
L x==x==x=xx== R 5 8 9 10 | 8 9 10 8 5
C x=====x===== R 5 | R 3
T x==x==x==xxx R 5 3 5 >> > | R 3 5 3 >> > | 8 6 5 3 >> >
T x=====x==xxx R 5 3 >> > | R _5 R >> >
S+A x==x==x=xx== x==x==x==x=x R 5 8 5 3 / R 3 5 3 > | R 3 5 6 5 / 8 5 3 5 > | R 5 c 5 3 / 8 6 5 3 >
; Three slow beats of three: the first holds, the second answers, the third leads.
metre 9/8
theme basic 0-1: the root, and a note of the chord on each of the other beats
S x==x==x== R R R | R 5 5 | R 5 R | R 8 5 | R = =
S x=====x== R 5 | R R | R 8
A x==x==x== R 5 > | R R > | 8 5 > | R _5 > | R = =
A x=====x== R > | R 5
L x==x==x== R 5 8 | R = = | 8 5 8
C x=====x-- R R | R 5
C x======== R | 8
T x==x==x== R 5 > | R R > | R = = | R _5 >
E x======== R | 8
H x==x== R 5 | R R | R >
Q x== R | 8
S+A x==x==x== x==x==x== R 5 5 / R 5 > | R R R / R R R | R 8 5 / 8 5 >
S+A x==x==x== x=====x== R 5 R / R > | R = = / R R
S+A+S+C x==x==x== x==x==x== x==x==x== x======== R 5 5 / R 5 > / R 8 5 / R | R = = / R = = / R = = / R

theme heart 1-2: the eighth leans into the second beat, the third is long
S x=xx==x== R R 5 5 | R 5 R 5 | R 5 8 5 | R R 3 5 | R 3 5 3
A x=xx==x=x R R 5 5 > | R 5 R 5 > | R 3 5 3 > | 8 5 3 5 >
A x==x==x=x R 5 5 > | R 3 5 > | 8 5 3 >
L x=xx==x== R 5 8 5 | 8 8 10 8
C x==x==x== R 5 R | R 3 5
C x=====x-- R 5 | R 3
T x==x==x=x R 5 5 > | R 3 5 > | R _5 R >
T x=xx==x=x R R 5 5 > | R 3 5 3 >
H x=xx== R R 5 | R 5 >
Q x=x R > | R R | 8 >
S+A x=xx==x== x=xx==x=x R R 5 5 / R 5 R 5 > | R 5 8 5 / R R 5 5 > | R R 3 5 / 8 5 3 5 > | R 3 5 3 / R 3 5 3 >
S+A+S+C x=xx==x== x=xx==x=x x=xx==x== x==x==x== R R 5 5 / R R 5 5 > / R 5 8 5 / R 5 R | R 3 5 3 / R 3 5 3 > / R R 3 5 / R 3 5

theme gospel 3-5: two long beats, and a turn on the third that climbs into the chord
S x=xx==x== R 5 6 5 | R 3 5 3 | R 5 3 5 | 8 5 6 5 | R c 5 3
S x==x==x=x R 5 6 5 | R 3 5 > | R 6 5 3
A x==x==xxx R 5 3 >> > | R 3 5 >> > | 8 c 5 >> > | R _5 R >> >
A x=xx==x=x R 5 3 5 > | R 3 5 3 > | 8 6 5 3 >
L x=xx==x=x 8 9 10 8 > | R 5 8 9 > | 8 10 9 8 >
C x==x==x== R 5 3 | R 3 R | 8 5 R
C x=====x-- R 5 | R 3
T x==x==xxx R 5 3 >> > | R 3 5 >> > | 8 6 5 >> >
T x=xx==xxx R 5 6 5 >> > | R 3 5 3 >> >
H x==x=x R 3 > | R R >
H2 x==x== R 3 | R 5
Q x=x R > | R 3
S+A x=xx==x== x==x==xxx R 5 6 5 / 8 c 5 >> > | R 3 5 3 / R 5 3 >> > | R 5 3 5 / R _5 R >> > | R c 5 3 / R 3 5 >> >
S+A x==x==x=x x=xx==x=x R 5 6 5 / 8 6 5 3 > | R 3 5 > / R 5 3 5 > | R 6 5 3 / R 3 5 3 >
S+A+L+C x=xx==x== x==x==xxx x=xx==x=x x==x==x== R 5 6 5 / R 3 5 >> > / 8 9 10 8 > / R 5 3 | R 3 5 3 / R 5 3 >> > / 8 10 9 8 > / R 3 R
S+S+A+C x=xx==x== x=xx==x== x=xx==x=x x=====x-- R 5 6 5 / R 3 5 3 / 8 6 5 3 > / R 5

theme arpeggio 3-5: the chord in slow eighths over two beats, and back
S x=xx=xx== R 5 8 5 3 | R 3 5 8 5 | R 5 10 8 5 | R 5 6 5 3 | R c 5 3 5
A x=xx==x== R 5 3 5 | 8 5 3 R | R _5 R 5 | R 6 5 3
A x=xx==xxx R 5 3 5 >> > | R 3 5 3 >> > | 8 5 3 5 >> >
L x=xx=xx=x R 5 8 10 9 > | 8 9 10 8 5 >
C x==x==x== R 5 R | 8 5 3
C x======== R
T x=xx==xxx R 5 3 5 >> > | R 3 5 3 >> > | 8 6 5 3 >> >
T x==x==xxx R 5 3 >> > | R _5 R >> >
H x=xx=x R 5 3 > | R 3 5 >
Q x=x R > | R 5
S+A x=xx=xx== x=xx==x== R 5 8 5 3 / R 5 3 5 | R 3 5 8 5 / 8 5 3 R | R 5 6 5 3 / R _5 R 5 | R c 5 3 5 / R 6 5 3
S+A x=xx=xx== x=xx==xxx R 5 8 5 3 / R 3 5 3 >> > | R 5 10 8 5 / 8 5 3 5 >> >
S+A+L+C x=xx=xx== x=xx==x== x=xx=xx=x x==x==x== R 5 8 5 3 / R 5 3 5 / R 5 8 10 9 > / R 5 R | R 3 5 8 5 / R 6 5 3 / 8 9 10 8 5 > / 8 5 3
`,
  BALLAD_TUNES,
);
