import { COMMON_PRACTICE } from '../rows';
import { phraseBook } from './notation';
import { DISCO_TUNES } from './tunes/disco';

/**
 * Disco: with the kick on all four, short and tight; the and belongs to the open hat and the octave. Octaves for
 * part of the bar, a hole, a tail; a cell of two bars that asks and answers.
 */
export const DISCO_PHRASES = phraseBook(
  { manner: 'riff', chromatics: 'short', blues: false, source: COMMON_PRACTICE },
  `
metre 4/4
theme basic 0-0: short roots on the floor, and a hole
S x=x=x=-- R = = | R = 8 | R 8 R | R = 5 | R 5 R
A x=x=x=x= R = 8 5 | R = 5 > | R = = = | R 5 8 5 | R 5 R >
L x=x=x=x= R = 8 8 | R 8 R 8 | R = = = | 8 = 5 8
C x=x=x=-- R = = | R = 5 | R 5 R | 8 5 R
T x=x=x=x= R = 5 > | R = = = | R 5 R > | 8 5 R >
E x=x=x=== R = = | R 5 R | 8 5 R
H x=x= R 8 | R = | R > | R 5
Q x= R | 8

theme pairs 1-1: the root on the beat, its octave off it, three and four short
S xxxxx-x- R 8 R 8 R R | R 8 R 8 R 5 | R 8 R 8 5 5 | R 8 5 8 R 5 | R 8 R 5 R 8 | R R 5 5 R 5 | R R _5 _5 R _5 | R 5 R 5 R 5 | R _5 R _5 R R
A xxxxx=x= R 8 R 8 R > | R 8 R 8 5 > | R 8 R 8 R 5 | R 8 5 8 R > | R 8 R 5 R 5 | R R 5 5 R > | R R _5 _5 R > | R 5 R 5 R > | R _5 R _5 R _5
L xxxxx=x= R 8 R 8 5 8 | R 8 R 8 8 5 | R 8 R 8 5 > | 8 8 5 5 8 5 | 8 8 R R 8 >
C xxxxx-x- R 8 R 8 R 5 | R 8 5 5 R 5 | R 8 R 5 R R | R 5 R 5 R 5 | R _5 R _5 R _5 | R 8 R 8 5 5
T xxxxx=x= R R 5 5 R > | R R _5 _5 R > | R 8 R 8 5 > | R 8 5 5 R > | R 8 R 8 R > | R R R R 5 >
E xxxxx=== R 8 R 8 R | R 8 5 5 R
H xxxx R 8 R 8 | R 8 R > | R 8 5 >
Q xx R 8
S+A xxxxx-x- xxxxx=x= R 8 R 8 R R / R 8 R 8 5 > | R 8 R 8 R 5 / R 8 R 8 R > | R 8 5 8 R 5 / R 8 R 8 R 5 | R 8 R 8 5 5 / R 8 R 8 R >
S+A+S+C xxxxx-x- xxxxx=x= xxxxx-x- xxxxx-x- R 8 R 8 R R / R 8 R 8 5 > / R 8 R 8 R R / R 8 R 8 R 5 | R 8 R 8 R 5 / R 8 5 8 R > / R 8 R 8 R 5 / R 8 5 5 R R
S+A+S+A xxxxx-x- xxxxx=x= xxxxx-x- xxxxx=x= R 8 R 8 R R / R 8 R 8 5 > / R 8 R 8 R R / R 8 R 8 R 5 | R 8 R 8 R 5 / R 8 R 8 R > / R 8 5 8 R 5 / R 8 R 8 5 >

theme floor 2-3: octave pairs, and a turn through the triad
S xxxxxxx= R 5 R 5 R 5 3 | R _5 R _5 R _5 3 | R 5 R 5 3 5 R | R 3 5 3 R R 5 | R 8 R 8 R 8 5 | R 8 R 8 3 5 R | R 8 R 8 5 3 R | R 8 5 8 R 8 R | R 8 R 8 R 3 5
A xxxxxxx= R 5 R 5 R 3 > | R _5 R _5 R 3 > | R 5 R 5 3 R > | R 8 R 8 5 3 > | R 8 R 8 3 5 > | 8 5 8 5 3 R >
A xxxx-xx= R R 5 5 3 > | R R _5 _5 R > | R 8 R 8 5 > | R 8 R 8 3 > | R 8 5 8 5 >
L xxxxxxx= R 8 R 8 10 8 5 | R 8 R 8 5 8 > | R 8 R 8 3 5 8 | 8 10 8 5 8 5 >
C xxxxx-x- R 8 R 8 R 5 | R 8 5 8 R 3 | R 8 5 3 R R | R 8 3 5 R 5 | R 5 R 5 R 3 | R _5 R _5 R _5 | R 5 R 5 3 R
T xxxxxxx= R 5 R 5 R 3 > | R _5 R _5 R 3 > | R 8 R 8 5 3 > | R 8 R 8 3 5 > | R 8 5 8 3 5 > | R 8 R 8 R 3 >
H xxxx R 8 R > | R 8 5 >
Q xx R 8
S+A xxxxxxx= xxxx-xx= R 8 R 8 3 5 R / R 8 R 8 5 > | R 8 R 8 R 3 5 / R 8 5 8 5 > | R 8 R 8 5 3 R / R 8 R 8 3 >
S+A xxxxxxx= xxxxxxx= R 8 R 8 R 8 5 / R 8 R 8 5 3 > | R 8 5 8 R 8 R / 8 5 8 5 3 R >
S+A xxxxxxx= xxxxxxx= R 5 R 5 R 5 3 / R 5 R 5 R 3 > | R _5 R _5 R _5 3 / R _5 R _5 R 3 >
S+A+S+T xxxxxxx= xxxx-xx= xxxxxxx= xxxxxxx= R 8 R 8 3 5 R / R 8 R 8 5 > / R 8 R 8 5 3 R / R 8 R 8 R 3 > | R 8 R 8 R 3 5 / R 8 R 8 3 > / R 8 R 8 3 5 R / R 8 R 8 5 3 >

theme octaves 3-4: octaves through the bar, the last pair leads
S xxxxxxxx R R 5 5 3 3 5 5 | R R _5 _5 R R 3 3 | R R 5 5 R R c 5 | R 8 R 8 R 8 R 8 | R 8 R 8 5 8 5 8 | R 8 R 8 _c c _c c | R 8 R 8 3 10 3 10 | R 8 R 8 R 8 5 6
S xxxxxxxx R 8 R 8 R 8 >> > | R 8 R 8 5 c >> > | R 8 R 8 5 5 >> >
A xxxxxxxx R 8 R 8 5 3 >> > | R 8 c 8 5 6 >> > | R 8 R 8 c 6 5 > | 8 8 c c 6 6 5 > | R 8 R 8 3 4 >> >
A xxxx-xxx R R 5 5 6 5 > | R R _5 _5 R 3 > | R 8 R 8 5 6 > | R 8 R 8 c 5 > | R 8 R 8 5 3 > | R 8 R 8 3 5 >
L xxxxxxxx 8 8 10 10 8 8 >> > | R 8 R 8 9 10 8 5
C xxxxx--- R R 5 5 R | R R _5 _5 R | R 8 R 8 R | R 8 R 8 5 | R 8 c 8 5
C xxxx--x= R 8 R 8 > | R 8 R 8 R
T xxxx-xxx R R 5 5 3 >> > | R R _5 _5 R >> > | R 8 R 8 5 >> > | R 8 R 8 3 >> > | R 8 R 8 c >> >
T x---xxxx R 5 6 >> > | R 5 3 >> > | R _5 _6 >> >
H xxxx R 8 R > | R 8 >> > | R 8 5 >
S+A xxxxxxxx xxxxxxxx R 8 R 8 R 8 R 8 / R 8 R 8 5 3 >> > | R 8 R 8 5 8 5 8 / R 8 c 8 5 6 >> > | R 8 R 8 _c c _c c / R 8 R 8 c 6 5 >
S+A xxxxxxxx xxxx-xxx R 8 R 8 R 8 R 8 / R 8 R 8 5 6 > | R 8 R 8 5 8 5 8 / R 8 R 8 c 5 > | R 8 R 8 R 8 5 6 / R 8 R 8 5 3 >
S+S+A+C xxxxxxxx xxxxxxxx xxxx-xxx xxxxx--- R 8 R 8 R 8 R 8 / R 8 R 8 R 8 >> > / R 8 R 8 5 6 > / R 8 R 8 R | R 8 R 8 5 8 5 8 / R 8 R 8 5 c >> > / R 8 R 8 c 5 > / R 8 R 8 5

theme tail 3-4: octaves for two beats, a hole on three, a tail that asks and answers
S xxxx-xxx R R 5 5 3 4 5 | R R _5 _5 R 2 3 | R 8 R 8 3 4 5 | R 8 R 8 5 6 5 | R 8 R 8 5 c 8 | R 8 R 8 _5 _6 R | R 8 R 8 R 2 3 | R 8 R 8 5 4 3
A xxxx-xxx R R 5 5 3 2 > | R R _5 _5 _5 _6 > | R 8 R 8 5 3 R | R 8 R 8 5 4 > | R 8 R 8 c 5 > | R 8 R 8 8 6 > | R 8 R 8 3 2 >
A xxxx-xxx R 8 R 8 5 >> > | R 8 R 8 3 >> > | R 8 R 8 R >> >
L xxxx-xxx 8 8 10 10 8 9 10 | R 8 R 8 8 9 10 | R 8 R 8 c 8 10
C xxxx---- R R 5 5 | R R _5 _5 | R 8 R 8 | R 8 5 8
C xxxx--x- R 8 R 8 5 | R 8 5 8 R
T xxxx-xxx R R 5 5 3 >> > | R R _5 _5 R >> > | R 8 R 8 5 >> > | R 8 R 8 3 >> > | R 8 5 3 R >> >
H xxxx R 8 R > | R 8 >> >
H2 -xxx 5 >> > | 3 >> >
S+A xxxx-xxx xxxx-xxx R 8 R 8 3 4 5 / R 8 R 8 5 3 R | R 8 R 8 5 6 5 / R 8 R 8 5 4 > | R 8 R 8 5 c 8 / R 8 R 8 c 5 > | R 8 R 8 _5 _6 R / R 8 R 8 3 2 > | R 8 R 8 R 2 3 / R 8 R 8 5 >> >
S+A+L+C xxxx-xxx xxxx-xxx xxxx-xxx xxxx---- R 8 R 8 3 4 5 / R 8 R 8 5 >> > / R 8 R 8 8 9 10 / R 8 R 8 | R 8 R 8 5 6 5 / R 8 R 8 c 5 > / R 8 R 8 c 8 10 / R 8 5 8
S+S+A+C xxxx-xxx xxxx-xxx xxxx-xxx xxxx--x- R 8 R 8 3 4 5 / R 8 R 8 5 6 5 / R 8 R 8 3 2 > / R 8 R 8 5 | R 8 R 8 5 c 8 / R 8 R 8 5 4 3 / R 8 R 8 5 4 > / R 8 5 8 R

theme strut 3-4: the floor on one and two, the octave after them, the same again from three
S x-xxx-xx R R 8 R R 8 | R R 5 R R 5 | R R _5 R R _5 | R R 8 R 5 8 | R R 8 5 5 8 | R R 8 R c 8 | R R 8 _5 R 8 | R R 8 R 8 R | R R 8 R 8 5 | R R 8 5 8 R
A x-xxx-xx R R 8 5 >> > | R R 5 R >> > | R R _5 R >> > | R R 8 3 >> > | R R 8 c >> > | R R 8 R >> >
A x-xxxxxx R R 8 5 6 5 > | R R 8 c 6 5 > | R R 8 R 8 5 >
L x-xxx-xx R R 8 10 9 8 | 8 8 10 8 >> >
C x-xxx--- R R 8 R | R R 8 5
T x-xxx-xx R R 8 5 >> > | R R 8 3 >> > | R R 8 R >> >
T x-xx--xx R R 8 >> >
H x-xx R R 8 | R >> >
S+A x-xxx-xx x-xxx-xx R R 8 R R 8 / R R 8 5 >> > | R R 8 R 5 8 / R R 8 c >> > | R R 8 5 5 8 / R R 8 3 >> > | R R 8 R c 8 / R R 8 R >> >
S+A x-xxx-xx x-xxxxxx R R 8 R R 8 / R R 8 5 6 5 > | R R 8 _5 R 8 / R R 8 c 6 5 > | R R 8 R 5 8 / R R 8 R 8 5 >
S+A+L+C x-xxx-xx x-xxx-xx x-xxx-xx x-xxx--- R R 8 R R 8 / R R 8 5 >> > / R R 8 10 9 8 / R R 8 R

theme sixteenth 4-5: octaves, and a tail in sixteenths before four
S x=x=x=x=--xxx=x= R 5 R 5 3 4 5 R | R _5 R _5 R 2 3 5 | R R 5 5 6 5 3 R | R R _5 _5 R 2 3 R | R 8 R 8 3 4 5 R | R 8 R 8 5 6 8 5 | R 8 R 8 5 c 8 c | R 8 R 8 R 2 3 5
A x=x=x=x=--xxx=x= R 5 R 5 5 4 3 > | R _5 R _5 3 2 R > | R R 5 5 c 6 5 > | R R _5 _5 _5 _6 R > | R 8 R 8 5 4 3 > | R 8 R 8 8 c 5 > | R 8 R 8 3 2 R > | R 8 R 8 5 6 5 >
L x=x=x=x=--xxx=x= R 8 R 8 8 9 10 8 | R 8 R 8 c 8 10 >
C x=x=x=x=x=------ R 5 R 5 R | R _5 R _5 R | R 8 R 8 R | R 8 5 8 R
T x=x=x=x=----x=xx R 5 R 5 3 >> > | R _5 R _5 R >> > | R 8 R 8 5 >> > | R 8 R 8 3 >> >
T x=-x--x=x=--x=xx R R 8 5 3 >> > | R R 5 c 5 >> >
H x=x=x=xx R 8 R >> >
S+A x=x=x=x=--xxx=x= x=x=x=x=--xxx=x= R 8 R 8 3 4 5 R / R 8 R 8 5 4 3 > | R 8 R 8 5 6 8 5 / R 8 R 8 8 c 5 > | R 8 R 8 5 c 8 c / R 8 R 8 3 2 R > | R 8 R 8 R 2 3 5 / R 8 R 8 5 6 5 >
S+A x=x=x=x=--xxx=x= x=x=x=x=----x=xx R 8 R 8 3 4 5 R / R 8 R 8 5 >> > | R 8 R 8 5 6 8 5 / R 8 R 8 3 >> >

theme gallop 5-5: the low note struck twice before its octave
S x-xxx-xxx-xxx-xx R R 5 R R 5 R R 5 R R 5 | R R _5 R R _5 R R _5 R R _5 | R R 5 R R 5 6 6 5 3 3 5 | R R 5 R R c 5 5 c 3 3 5 | R R 8 R R 8 R R 8 R R 8 | R R 8 R R 8 5 5 8 R R 8 | R R 8 R R 8 _c _c c _5 _5 5 | R R 8 R R 8 R R 8 5 c 8
A x-xxx-xxx-xxx-xx R R 5 R R 5 R R 5 3 >> > | R R _5 R R _5 R R 3 R >> > | R R 5 R R 5 6 6 5 3 >> > | R R 8 R R 8 R R 8 5 >> > | R R 8 R R 8 5 5 8 c >> > | R R 8 R R 8 3 3 10 R >> > | R R 8 R R 8 c c 8 5 >> >
A x-xxx-xx--x-x-xx R R 8 R R 8 c 5 >> > | R R 8 R R 8 5 3 >> > | R R 8 R R 8 5 6 >> >
L x-xxx-xxx-xxx-xx R R 5 R R 5 8 8 9 8 8 5 | R R 8 R R 8 8 8 10 9 8 5 | R R 8 R R 8 c c 8 10 9 8
C x-xxx-xxx------- R R 5 R R 5 R | R R _5 R R _5 R | R R 8 R R 8 R | R R 8 R R 8 5
C x-xxx-xx----x--- R R 8 R R 8 R
T x-xxx-xx--x-xxxx R R 5 R R 5 3 5 6 >> > | R R _5 R R _5 R 3 5 >> > | R R 8 R R 8 5 R c >> > | R R 8 R R 8 c 5 3 >> >
T x-xxx-xxx---x-xx R R 8 R R 8 R 5 >> > | R R 8 R R 8 5 3 >> >
H x-xxx-xx R R 8 R >> > | R R 8 5 >> > | R R 8 R R 8
S+A x-xxx-xxx-xxx-xx x-xxx-xxx-xxx-xx R R 8 R R 8 R R 8 R R 8 / R R 8 R R 8 R R 8 5 >> > | R R 8 R R 8 5 5 8 R R 8 / R R 8 R R 8 c c 8 5 >> > | R R 8 R R 8 R R 8 5 c 8 / R R 8 R R 8 3 3 10 R >> >
S+A x-xxx-xxx-xxx-xx x-xxx-xx--x-x-xx R R 8 R R 8 R R 8 R R 8 / R R 8 R R 8 c 5 >> > | R R 8 R R 8 5 5 8 R R 8 / R R 8 R R 8 5 3 >> > | R R 8 R R 8 R R 8 5 c 8 / R R 8 R R 8 5 6 >> >
S+A+L+C x-xxx-xxx-xxx-xx x-xxx-xx--x-x-xx x-xxx-xxx-xxx-xx x-xxx-xxx------- R R 8 R R 8 R R 8 R R 8 / R R 8 R R 8 c 5 >> > / R R 8 R R 8 8 8 10 9 8 5 / R R 8 R R 8 R

theme pushed 5-5: octaves, and a low note pushed in a sixteenth before three
S x-x-x-xx--x-x-x- R 5 R 5 R 5 R 5 | R _5 R _5 R _5 R _5 | R 5 R 5 c 5 3 5 | R 3 R 3 R 5 c 5 | R 8 R 8 R 8 R 8 | R 8 R 8 R 8 5 8 | R 8 R 8 _c c _5 5 | R 8 R 8 5 8 R 8 | R 8 R 8 R 8 c 8
A x-x-x-xx--x-x-xx R 5 R 5 R 5 3 >> > | R _5 R _5 R _5 R >> > | R 5 R 5 c 5 3 >> > | R 8 R 8 R 8 5 >> > | R 8 R 8 5 8 c >> > | R 8 R 8 R 8 3 >> > | R 8 R 8 _c c 5 >> >
A x-x-x-xx--xxx-x- R 8 R 8 R 8 c 5 > | R 8 R 8 R 5 c 8 > | R 8 R 8 5 3 4 5 >
L x-x-x-xx--x-x-x- R 5 R 5 8 9 8 5 | R 8 R 8 8 10 9 8 | R 8 R 8 R 8 9 10
C x-x-x-xx-------- R 5 R 5 R | R _5 R _5 R | R 8 R 8 R | R 8 R 8 5
C x-x-x-xx----x--- R 8 R 8 R R
T x-x-x-xx--x-x-xx R 5 R 5 R 5 3 >> > | R _5 R _5 R _5 R >> > | R 8 R 8 R 8 5 >> > | R 8 R 8 5 8 3 >> > | R 8 R 8 R c 5 >> >
T x-x-x-xx----xxxx R 8 R 8 5 R c >> > | R 8 R 8 R 5 3 >> >
H x-x-x-xx R 8 R >> > | R 8 5 >> >
S+A x-x-x-xx--x-x-x- x-x-x-xx--x-x-xx R 8 R 8 R 8 R 8 / R 8 R 8 R 8 5 >> > | R 8 R 8 R 8 5 8 / R 8 R 8 5 8 c >> > | R 8 R 8 _c c _5 5 / R 8 R 8 _c c 5 >> >
S+A x-x-x-xx--x-x-x- x-x-x-xx--xxx-x- R 8 R 8 R 8 R 8 / R 8 R 8 R 8 c 5 > | R 8 R 8 R 8 c 8 / R 8 R 8 5 3 4 5 > | R 8 R 8 5 8 R 8 / R 8 R 8 R 5 c 8 >
S+A+L+C x-x-x-xx--x-x-x- x-x-x-xx--xxx-x- x-x-x-xx--x-x-x- x-x-x-xx-------- R 8 R 8 R 8 R 8 / R 8 R 8 R 8 c 5 > / R 8 R 8 8 10 9 8 / R 8 R 8 R
`,
  DISCO_TUNES,
);
