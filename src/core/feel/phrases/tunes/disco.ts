/** Disco: tunes of eight bars (see the notation beside the books). */
export const DISCO_TUNES = `
tune heel-and-toe 1-2: octave pairs on one and two, the low root on three and a four that points on; the answer hits low twice and high twice, waits on three and runs a pair into the bar line
S xxxxx-x- R 8 R 8 R > | R 8 R 8 5 > | R 8 R 8 R 5 | R 8 R 8 R 3 | R 8 R 8 3 > | R 8 R 8 5 3 | R 5 R 5 R > | R 5 R 5 3 > | R _5 R _5 R > | R _5 R _5 3 > | R _5 R _5 R 3 | R R 5 5 R > | 5 8 5 8 R > !co | 5 8 5 8 3 > !co
A xxxx--xx R R 8 8 5 > | R R 8 8 5 3 | R R 5 8 5 > | R R 5 8 5 3 | R 3 5 8 5 > | R 3 5 8 5 3 | 8 8 5 5 R > | 8 8 5 5 3 > | R R 5 5 3 > | R R 5 5 R > | R R 5 3 R > | R R _5 R 3 > | R R _5 R 5 > | R R _5 _5 R > | R 3 5 3 R > | 5 5 8 8 5 > !co | 5 5 8 5 3 > !co | 5 5 R R 5 > !co
S xxxxx-x- R 8 R 8 R > | R 8 R 8 5 > | R 8 R 8 R 5 | R 8 R 8 R 3 | R 8 R 8 3 > | R 8 R 8 5 3 | R 5 R 5 R > | R 5 R 5 3 > | R _5 R _5 R > | R _5 R _5 3 > | R _5 R _5 R 3 | R R 5 5 R > | 5 8 5 8 R > !co | 5 8 5 8 3 > !co
C xxxx--x- R 8 R 8 > | R 8 R 8 5 | R 8 R 8 3 | R R 8 8 > | R R 8 8 5 | R R 5 8 5 | R 5 R 5 > | R 5 R 5 3 | R _5 R _5 > | R R 5 R > | R R 5 5 3 | R 3 5 3 > | 5 8 5 8 > !co | 5 5 8 8 5 !co
S xxxxx-x- R 8 R 8 R > | R 8 R 8 5 > | R 8 R 8 R 5 | R 8 R 8 R 3 | R 8 R 8 3 > | R 8 R 8 5 3 | R 5 R 5 R > | R 5 R 5 3 > | R _5 R _5 R > | R _5 R _5 3 > | R _5 R _5 R 3 | R R 5 5 R > | 5 8 5 8 R > !co | 5 8 5 8 3 > !co
A xxxx--xx R R 8 8 5 > | R R 8 8 5 3 | R R 5 8 5 > | R R 5 8 5 3 | R 3 5 8 5 > | R 3 5 8 5 3 | 8 8 5 5 R > | 8 8 5 5 3 > | R R 5 5 3 > | R R 5 5 R > | R R 5 3 R > | R R _5 R 3 > | R R _5 R 5 > | R R _5 _5 R > | R 3 5 3 R > | 5 5 8 8 5 > !co | 5 5 8 5 3 > !co | 5 5 R R 5 > !co
L xxxxx-x- R 8 R 8 10 8 | R 8 R 8 10 > | R 8 5 8 10 8 | R 8 R 8 8 5 | R 8 R 8 5 8 | R 5 R 5 8 > | R 5 R 5 8 5 | R 3 5 3 8 5 | R _5 R _5 5 > | R _5 R _5 5 3
T xxxx--xx R R 5 8 5 > | R 5 8 5 R > | R R 8 R 5 > | 8 8 5 5 R > | R R 8 8 5 3 | R 3 5 8 5 > | 8 8 5 5 3 > | R R 5 R 8 5 | R R 8 8 3 > | R 5 3 5 3 > | R R _5 R 5 > | R R _5 _5 R > | R _5 R 5 R >
H1 xxxx R 8 R 8 | R 8 R > | R 8 5 > | R 5 R > | R _5 R > | R 5 3 >
H2 xxxx R 8 R > | R 8 5 > | R 8 5 3 | R 5 R > | R _5 R > | R 5 3 >
H2 x-xx R 5 > | R 3 > | R 8 > | R _5 >

tune coin-and-slot 1-1: octave pairs for two beats, a hole on three and one tone on four that points on; the answer strikes each of its steps twice
S xxxx--x- R 8 R 8 5 | R 8 R 8 > | R 8 R 8 R | R _5 R _5 R | R 5 R 5 R | R 5 R 5 > | R _5 R _5 > | 5 8 5 8 R !co
A xxxx--x- R R 8 8 > | R R 8 8 5 | R R 5 8 5 | R R 5 5 > | R R 5 5 8 | R R _5 _5 > | R R _5 _5 R | 8 8 5 5 > | 8 8 5 5 R
S xxxx--x- R 8 R 8 5 | R 8 R 8 > | R 8 R 8 R | R _5 R _5 R | R 5 R 5 R | R 5 R 5 > | R _5 R _5 > | 5 8 5 8 R !co
C xxxx--x- R 8 R 8 8 | R 8 R 8 > | R R 8 8 > | R R 5 5 > | R 5 R 5 > | R _5 R _5 >
S xxxx--x- R 8 R 8 5 | R 8 R 8 > | R 8 R 8 R | R _5 R _5 R | R 5 R 5 R | R 5 R 5 > | R _5 R _5 > | 5 8 5 8 R !co
A xxxx--x- R R 8 8 > | R R 8 8 5 | R R 5 8 5 | R R 5 5 > | R R 5 5 8 | R R _5 _5 > | R R _5 _5 R | 8 8 5 5 > | 8 8 5 5 R
L xxxx--x- R 8 R 8 8 | R R 5 8 8 | R R 5 8 > | R 5 R 5 8 | R 5 R 5 > | R _5 R _5 R | 8 8 5 8 >
T xxxx--x- R R 5 8 > | R R 5 8 5 | R R 8 8 5 | 8 8 5 5 > | R R 5 5 > | R R _5 _5 > | R R 5 5 _5
H1 xxxx R 8 R 8 | R 8 R > | R 5 R > | R _5 R > | R _5 R _5
H2 x-x- R > | R 5 | R 8 | R _5

tune turnstile 1-2: two blows low and two above them, three on the floor and a four that leads; the answer bounces in octaves, leaves three empty and runs a pair into the bar line
S xxxxx-x- R R 8 8 5 > | R R 8 8 5 3 | R R 5 8 5 > | R R 5 8 5 3 | R 3 5 8 5 > | R 3 5 8 5 3 | 8 8 5 5 R > | 8 8 5 5 3 > | R R 5 5 3 > | R R 5 5 R > | R R 5 3 R > | R R _5 R 3 > | R R _5 R 5 > | R R _5 _5 R > | R 3 5 3 R > | 5 5 8 8 5 > !co | 5 5 8 5 3 > !co | 5 5 R R 5 > !co
A xxxx--xx R 8 R 8 5 > | R 8 R 8 5 3 | R 8 R 8 3 > | R 8 R 8 R > | R 5 R 5 3 > | R 5 R 5 R > | R 5 R 5 8 > | R _5 R _5 R > | R _5 R _5 3 > | R _5 R _5 R 3 | R R 5 5 3 > | 5 8 5 8 3 > !co | 5 8 5 8 R > !co
S xxxxx-x- R R 8 8 5 > | R R 8 8 5 3 | R R 5 8 5 > | R R 5 8 5 3 | R 3 5 8 5 > | R 3 5 8 5 3 | 8 8 5 5 R > | 8 8 5 5 3 > | R R 5 5 3 > | R R 5 5 R > | R R 5 3 R > | R R _5 R 3 > | R R _5 R 5 > | R R _5 _5 R > | R 3 5 3 R > | 5 5 8 8 5 > !co | 5 5 8 5 3 > !co | 5 5 R R 5 > !co
C xxxx--x- R 8 R 8 > | R 8 R 8 5 | R 8 R 8 3 | R R 8 8 > | R R 8 8 5 | R R 5 8 5 | R 5 R 5 > | R 5 R 5 3 | R _5 R _5 > | R R 5 R > | R R 5 5 3 | R 3 5 3 > | 5 8 5 8 > !co | 5 5 8 8 5 !co
S xxxxx-x- R R 8 8 5 > | R R 8 8 5 3 | R R 5 8 5 > | R R 5 8 5 3 | R 3 5 8 5 > | R 3 5 8 5 3 | 8 8 5 5 R > | 8 8 5 5 3 > | R R 5 5 3 > | R R 5 5 R > | R R 5 3 R > | R R _5 R 3 > | R R _5 R 5 > | R R _5 _5 R > | R 3 5 3 R > | 5 5 8 8 5 > !co | 5 5 8 5 3 > !co | 5 5 R R 5 > !co
A xxxx--xx R 8 R 8 5 > | R 8 R 8 5 3 | R 8 R 8 3 > | R 8 R 8 R > | R 5 R 5 3 > | R 5 R 5 R > | R 5 R 5 8 > | R _5 R _5 R > | R _5 R _5 3 > | R _5 R _5 R 3 | R R 5 5 3 > | 5 8 5 8 3 > !co | 5 8 5 8 R > !co
L xxxxx-x- R 8 R 8 10 8 | R 8 R 8 10 > | R 8 5 8 10 8 | R 8 R 8 8 5 | R 8 R 8 5 8 | R 5 R 5 8 > | R 5 R 5 8 5 | R 3 5 3 8 5 | R _5 R _5 5 > | R _5 R _5 5 3
T xxxx--xx R R 5 8 5 > | R 5 8 5 R > | R R 8 R 5 > | 8 8 5 5 R > | R R 8 8 5 3 | R 3 5 8 5 > | 8 8 5 5 3 > | R R 5 R 8 5 | R R 8 8 3 > | R 5 3 5 3 > | R R _5 R 5 > | R R _5 _5 R > | R _5 R 5 R >
H1 xxxx R 8 R 8 | R 8 R > | R 8 5 > | R 5 R > | R _5 R > | R 5 3 >
H2 xxxx R 8 R > | R 8 5 > | R 8 5 3 | R 5 R > | R _5 R > | R 5 3 >
H2 x-xx R 5 > | R 3 > | R 8 > | R _5 >

tune seesaw 1-2: octave pairs for two beats, a hole on three and a pair on four that leads; the answer doubles each step, stands low on three and leads from four
S xxxx--xx R 8 R 8 5 > | R 8 R 8 5 3 | R 8 R 8 3 > | R 8 R 8 R > | R 5 R 5 3 > | R 5 R 5 R > | R 5 R 5 8 > | R _5 R _5 R > | R _5 R _5 3 > | R _5 R _5 R 3 | R R 5 5 3 > | 5 8 5 8 3 > !co | 5 8 5 8 R > !co
A xxxxx-x- R R 8 8 5 > | R R 8 8 5 3 | R R 5 8 5 > | R R 5 8 5 3 | R 3 5 8 5 > | R 3 5 8 5 3 | 8 8 5 5 R > | 8 8 5 5 3 > | R R 5 5 3 > | R R 5 5 R > | R R 5 3 R > | R R _5 R 3 > | R R _5 R 5 > | R R _5 _5 R > | R 3 5 3 R > | 5 5 8 8 5 > !co | 5 5 8 5 3 > !co | 5 5 R R 5 > !co
S xxxx--xx R 8 R 8 5 > | R 8 R 8 5 3 | R 8 R 8 3 > | R 8 R 8 R > | R 5 R 5 3 > | R 5 R 5 R > | R 5 R 5 8 > | R _5 R _5 R > | R _5 R _5 3 > | R _5 R _5 R 3 | R R 5 5 3 > | 5 8 5 8 3 > !co | 5 8 5 8 R > !co
C xxxx--x- R 8 R 8 > | R 8 R 8 5 | R 8 R 8 3 | R R 8 8 > | R R 8 8 5 | R R 5 8 5 | R 5 R 5 > | R 5 R 5 3 | R _5 R _5 > | R R 5 R > | R R 5 5 3 | R 3 5 3 > | 5 8 5 8 > !co | 5 5 8 8 5 !co
S xxxx--xx R 8 R 8 5 > | R 8 R 8 5 3 | R 8 R 8 3 > | R 8 R 8 R > | R 5 R 5 3 > | R 5 R 5 R > | R 5 R 5 8 > | R _5 R _5 R > | R _5 R _5 3 > | R _5 R _5 R 3 | R R 5 5 3 > | 5 8 5 8 3 > !co | 5 8 5 8 R > !co
A xxxxx-x- R R 8 8 5 > | R R 8 8 5 3 | R R 5 8 5 > | R R 5 8 5 3 | R 3 5 8 5 > | R 3 5 8 5 3 | 8 8 5 5 R > | 8 8 5 5 3 > | R R 5 5 3 > | R R 5 5 R > | R R 5 3 R > | R R _5 R 3 > | R R _5 R 5 > | R R _5 _5 R > | R 3 5 3 R > | 5 5 8 8 5 > !co | 5 5 8 5 3 > !co | 5 5 R R 5 > !co
L xxxx--xx R 8 R 8 10 8 | R 8 R 8 10 > | R 8 5 8 10 8 | R 8 R 8 8 5 | R 8 R 8 5 8 | R 5 R 5 8 > | R 5 R 5 8 5 | R 3 5 3 8 5 | R _5 R _5 5 > | R _5 R _5 5 3
T xxxx--xx R R 5 8 5 > | R 5 8 5 R > | R R 8 R 5 > | 8 8 5 5 R > | R R 8 8 5 3 | R 3 5 8 5 > | 8 8 5 5 3 > | R R 5 R 8 5 | R R 8 8 3 > | R 5 3 5 3 > | R R _5 R 5 > | R R _5 _5 R > | R _5 R 5 R >
H1 xxxx R 8 R 8 | R 8 R > | R 8 5 > | R 5 R > | R _5 R > | R 5 3 >
H2 xxxx R 8 R > | R 8 5 > | R 8 5 3 | R 5 R > | R _5 R > | R 5 3 >
H2 x-xx R 5 > | R 3 > | R 8 > | R _5 >

tune pumphouse 2-2: octaves for two beats, the low root on three and a tail on four that runs on; the answer climbs by steps and comes down over a hole on three
S xxxxx-xx R 8 R 8 R 5 > | R 8 R 8 R 3 > | R 8 R 8 5 3 > | R 8 R 8 R 3 5 | R 8 R 8 3 5 > | R 8 R 8 R 8 > | R 5 R 5 8 5 > | R 5 R 5 R 3 > | R 5 R 5 3 R > | R _5 R _5 R 3 > | R _5 R _5 3 R > | R 3 R 3 5 3 > | 5 8 5 8 5 3 > !co | 5 8 5 8 R 3 > !co
A xxxx--xx R R 8 8 5 > | R R 8 8 5 3 | R R 5 8 5 > | R R 5 8 5 3 | R 3 5 8 5 > | R 3 5 8 5 3 | 8 8 5 5 R > | 8 8 5 5 3 > | R R 5 5 3 > | R R 5 5 R > | R R 5 3 R > | R R _5 R 3 > | R R _5 R 5 > | R R _5 _5 R > | R 3 5 3 R > | 5 5 8 8 5 > !co | 5 5 8 5 3 > !co | 5 5 R R 5 > !co
S xxxxx-xx R 8 R 8 R 5 > | R 8 R 8 R 3 > | R 8 R 8 5 3 > | R 8 R 8 R 3 5 | R 8 R 8 3 5 > | R 8 R 8 R 8 > | R 5 R 5 8 5 > | R 5 R 5 R 3 > | R 5 R 5 3 R > | R _5 R _5 R 3 > | R _5 R _5 3 R > | R 3 R 3 5 3 > | 5 8 5 8 5 3 > !co | 5 8 5 8 R 3 > !co
C xxxx--x- R 8 R 8 > | R 8 R 8 5 | R 8 R 8 3 | R R 8 8 > | R R 8 8 5 | R R 5 8 5 | R 5 R 5 > | R 5 R 5 3 | R _5 R _5 > | R R 5 R > | R R 5 5 3 | R 3 5 3 > | 5 8 5 8 > !co | 5 5 8 8 5 !co
S xxxxx-xx R 8 R 8 R 5 > | R 8 R 8 R 3 > | R 8 R 8 5 3 > | R 8 R 8 R 3 5 | R 8 R 8 3 5 > | R 8 R 8 R 8 > | R 5 R 5 8 5 > | R 5 R 5 R 3 > | R 5 R 5 3 R > | R _5 R _5 R 3 > | R _5 R _5 3 R > | R 3 R 3 5 3 > | 5 8 5 8 5 3 > !co | 5 8 5 8 R 3 > !co
A xxxx--xx R R 8 8 5 > | R R 8 8 5 3 | R R 5 8 5 > | R R 5 8 5 3 | R 3 5 8 5 > | R 3 5 8 5 3 | 8 8 5 5 R > | 8 8 5 5 3 > | R R 5 5 3 > | R R 5 5 R > | R R 5 3 R > | R R _5 R 3 > | R R _5 R 5 > | R R _5 _5 R > | R 3 5 3 R > | 5 5 8 8 5 > !co | 5 5 8 5 3 > !co | 5 5 R R 5 > !co
L xxxxx-xx R 8 R 8 10 8 > | R 8 R 8 10 8 5 | R 8 5 8 10 8 5 | R 8 R 8 8 5 > | R 8 R 8 8 5 3 | R 5 R 5 8 5 > | R 3 5 3 8 5 > | R 5 R 5 8 5 3 | R _5 R _5 5 3 > | R _5 R _5 5 R >
T xxxxxxxx R R 8 8 5 8 5 > | R R 8 8 5 5 3 > | R 3 5 8 5 8 5 3 | R R 5 8 5 5 R > | 8 8 5 5 3 3 R > | R R 8 R 5 3 5 > | R R 5 5 3 5 3 > | R R 5 5 R R 5 > | R 3 5 3 R 3 5 > | R R _5 R 3 5 3 > | R R _5 _5 R R 5 >
H1 xxxx R 8 R 8 | R 8 R > | R 8 5 > | R 5 R > | R _5 R > | R 5 3 >
H2 xxxx R 8 R > | R 8 5 > | R 8 5 3 | R 5 R > | R _5 R > | R 5 3 >
H2 x-xx R 5 > | R 3 > | R 8 > | R _5 >

tune full-floor 2-2: octave pairs on one, two and three and a four that turns to the next chord; the answer doubles each step and leaves a hole after three
S xxxxxxx- R 8 R 8 R 8 > | R 8 R 8 R 8 5 | R 8 R 8 5 8 > | R 8 R 8 R 8 3 | R 8 R 8 5 8 3 | R 8 R 8 5 8 5 | R 8 R 8 3 8 5 | R 5 R 5 3 5 > | R 5 R 5 R 5 > | R _5 R _5 R _5 > | R _5 R _5 R 5 > | R 5 R 5 R 5 3 | R _5 R _5 R 5 3 | 5 8 5 8 R 8 > !co | 5 8 5 8 R 8 5 !co
A xxxxx-xx R R 8 8 5 3 > | R R 8 8 5 R > | R R 5 8 5 3 > | R R 5 8 5 R > | R 3 5 8 5 3 > | 8 8 5 5 3 R > | 8 8 5 5 R 5 > | R R 5 5 3 R > | R R 5 5 R 5 > | R R 5 3 R 3 > | R R _5 R 5 3 > | R R _5 R 3 R > | R R _5 _5 R 5 > | R 3 5 3 R 5 > | 5 5 8 8 5 3 > !co | 5 5 8 5 R 5 > !co | 5 5 R R 8 5 > !co
S xxxxxxx- R 8 R 8 R 8 > | R 8 R 8 R 8 5 | R 8 R 8 5 8 > | R 8 R 8 R 8 3 | R 8 R 8 5 8 3 | R 8 R 8 5 8 5 | R 8 R 8 3 8 5 | R 5 R 5 3 5 > | R 5 R 5 R 5 > | R _5 R _5 R _5 > | R _5 R _5 R 5 > | R 5 R 5 R 5 3 | R _5 R _5 R 5 3 | 5 8 5 8 R 8 > !co | 5 8 5 8 R 8 5 !co
C xxxx--x- R 8 R 8 > | R 8 R 8 5 | R 8 R 8 3 | R R 8 8 > | R R 8 8 5 | R R 5 8 5 | R 5 R 5 > | R 5 R 5 3 | R _5 R _5 > | R R 5 R > | R R 5 5 3 | R 3 5 3 > | 5 8 5 8 > !co | 5 5 8 8 5 !co
S xxxxxxx- R 8 R 8 R 8 > | R 8 R 8 R 8 5 | R 8 R 8 5 8 > | R 8 R 8 R 8 3 | R 8 R 8 5 8 3 | R 8 R 8 5 8 5 | R 8 R 8 3 8 5 | R 5 R 5 3 5 > | R 5 R 5 R 5 > | R _5 R _5 R _5 > | R _5 R _5 R 5 > | R 5 R 5 R 5 3 | R _5 R _5 R 5 3 | 5 8 5 8 R 8 > !co | 5 8 5 8 R 8 5 !co
A xxxxx-xx R R 8 8 5 3 > | R R 8 8 5 R > | R R 5 8 5 3 > | R R 5 8 5 R > | R 3 5 8 5 3 > | 8 8 5 5 3 R > | 8 8 5 5 R 5 > | R R 5 5 3 R > | R R 5 5 R 5 > | R R 5 3 R 3 > | R R _5 R 5 3 > | R R _5 R 3 R > | R R _5 _5 R 5 > | R 3 5 3 R 5 > | 5 5 8 8 5 3 > !co | 5 5 8 5 R 5 > !co | 5 5 R R 8 5 > !co
L xxxxxxx- R 8 R 8 10 8 > | R 8 R 8 10 8 5 | R 8 5 8 10 8 5 | R 8 R 8 8 5 > | R 8 R 8 8 5 3 | R 5 R 5 8 5 > | R 3 5 3 8 5 > | R 5 R 5 8 5 3 | R _5 R _5 5 3 > | R _5 R _5 5 R >
T xxxxxxxx R R 8 8 5 8 5 > | R R 8 8 5 5 3 > | R 3 5 8 5 8 5 3 | R R 5 8 5 5 R > | 8 8 5 5 3 3 R > | R R 8 R 5 3 5 > | R R 5 5 3 5 3 > | R R 5 5 R R 5 > | R 3 5 3 R 3 5 > | R R _5 R 3 5 3 > | R R _5 _5 R R 5 >
H1 xxxx R 8 R 8 | R 8 R > | R 8 5 > | R 5 R > | R _5 R > | R 5 3 >
H2 xxxx R 8 R > | R 8 5 > | R 8 5 3 | R 5 R > | R _5 R > | R 5 3 >
H2 x-xx R 5 > | R 3 > | R 8 > | R _5 >

tune mirrorball 3-5: octave pairs for two beats, air on three, and a tag from its and that climbs the third, fourth and fifth; the answer comes down the same way
S xxxx-xxx R 8 R 8 3 4 5 | R 8 R 8 3 5 > | R 8 R 8 5 3 > | R 8 R 8 c 5 > | R 8 R 8 3 4 > | R 8 R 8 R 2 3 | R _5 R _5 3 5 > | R 5 R 5 3 4 > | R 5 R 5 c 5 > | 5 8 5 8 c 5 > !co
A xxxx-xxx R 8 R 8 5 4 3 | R 8 R 8 5 4 > | R 8 R 8 c 5 > | R 8 R 8 c 5 3 | R 8 R 8 5 >> > | R _5 R _5 3 R > | R 5 R 5 4 3 > | R 5 R 5 4 3 2 | 5 8 5 8 4 3 > !co
S xxxx-xxx R 8 R 8 3 4 5 | R 8 R 8 3 5 > | R 8 R 8 5 3 > | R 8 R 8 c 5 > | R 8 R 8 3 4 > | R 8 R 8 R 2 3 | R _5 R _5 3 5 > | R 5 R 5 3 4 > | R 5 R 5 c 5 > | 5 8 5 8 c 5 > !co
C xxxx--xx R 8 R 8 5 > | R 8 R 8 >> > | R 8 R 8 3 > | R 8 R 8 c 5 | R _5 R _5 >> > | R 5 R 5 3 > | R 5 R 5 >> >
S xxxx-xxx R 8 R 8 3 4 5 | R 8 R 8 3 5 > | R 8 R 8 5 3 > | R 8 R 8 c 5 > | R 8 R 8 3 4 > | R 8 R 8 R 2 3 | R _5 R _5 3 5 > | R 5 R 5 3 4 > | R 5 R 5 c 5 > | 5 8 5 8 c 5 > !co
A xxxx-xxx R 8 R 8 5 4 3 | R 8 R 8 5 4 > | R 8 R 8 c 5 > | R 8 R 8 c 5 3 | R 8 R 8 5 >> > | R _5 R _5 3 R > | R 5 R 5 4 3 > | R 5 R 5 4 3 2 | 5 8 5 8 4 3 > !co
L xxxx-xxx R 8 R 8 8 9 10 | R 8 R 8 10 9 8 | R 8 R 8 10 8 > | R 8 R 8 c 8 9 | R 5 R 5 10 9 8 | R 5 R 5 8 c 5 | R 5 R 5 6 8 > | R _5 R _5 3 5 > | 5 8 5 8 10 9 8 !co
T xxxxxxxx R 8 R 8 5 3 >> > | R 8 R 8 c 5 3 > | R 8 R 8 5 3 R > | R 8 R 8 3 5 >> > | R 8 R 8 5 >>> >> > | R _5 R _5 R 3 >> > | R 5 R 5 3 5 >> > | R 5 R 5 c 5 >> >
H1 xxxx R 8 R > | R 8 R 8 | R 8 5 > | R 8 >> > | R 5 R > | R _5 R >
H2 xxxx R 8 R > | R 8 >> > | R 8 5 > | R 5 R > | R 5 >> > | R _5 R > | R 8 3 >

tune cascade 3-5: two beats of octaves, then four eighths that fall through the chord into the bar line; the answer waits on three and climbs
S xxxxxxxx R 8 R 8 c 5 3 > | R 8 R 8 c 5 4 > | R 8 R 8 5 4 3 > | R 8 R 8 5 3 R > | R 8 R 8 3 4 5 > | R 8 R 8 c 5 3 R | R _5 R _5 3 5 3 > | R 5 R 5 c 5 3 > | R 5 R 5 3 4 5 > | 5 8 5 8 c 5 3 > !co
A xxxx-xxx R 8 R 8 3 5 > | R 8 R 8 3 4 5 | R 8 R 8 3 R > | R 8 R 8 3 4 > | R 8 R 8 R 2 3 | R _5 R _5 3 5 > | R 5 R 5 3 4 > | R 5 R 5 3 R > | 5 8 5 8 3 4 > !co
S xxxxxxxx R 8 R 8 c 5 3 > | R 8 R 8 c 5 4 > | R 8 R 8 5 4 3 > | R 8 R 8 5 3 R > | R 8 R 8 3 4 5 > | R 8 R 8 c 5 3 R | R _5 R _5 3 5 3 > | R 5 R 5 c 5 3 > | R 5 R 5 3 4 5 > | 5 8 5 8 c 5 3 > !co
C xxxx--xx R 8 R 8 5 > | R 8 R 8 >> > | R 8 R 8 3 > | R 8 R 8 5 4 | R _5 R _5 >> > | R 5 R 5 3 > | R 5 R 5 >> >
S xxxxxxxx R 8 R 8 c 5 3 > | R 8 R 8 c 5 4 > | R 8 R 8 5 4 3 > | R 8 R 8 5 3 R > | R 8 R 8 3 4 5 > | R 8 R 8 c 5 3 R | R _5 R _5 3 5 3 > | R 5 R 5 c 5 3 > | R 5 R 5 3 4 5 > | 5 8 5 8 c 5 3 > !co
A xxxx-xxx R 8 R 8 3 5 > | R 8 R 8 3 4 5 | R 8 R 8 3 R > | R 8 R 8 3 4 > | R 8 R 8 R 2 3 | R _5 R _5 3 5 > | R 5 R 5 3 4 > | R 5 R 5 3 R > | 5 8 5 8 3 4 > !co
L xxxxxxxx R 8 R 8 10 9 8 > | R 8 R 8 10 8 c 5 | R 8 R 8 8 9 10 8 | R 8 R 8 5 8 9 > | R 5 R 5 8 10 9 8 | R 5 R 5 8 c 5 > | R 5 R 5 5 6 8 > | R _5 R _5 3 5 c > | 5 8 5 8 10 9 8 > !co
T xxxxxxxx R 8 R 8 5 3 >> > | R 8 R 8 c 5 3 > | R 8 R 8 5 3 R > | R 8 R 8 3 5 >> > | R 8 R 8 5 >>> >> > | R _5 R _5 R 3 >> > | R 5 R 5 3 5 >> > | R 5 R 5 c 5 >> >
H1 xxxx R 8 R > | R 8 R 8 | R 8 5 > | R 8 >> > | R 5 R > | R _5 R >
H2 xxxx R 8 R > | R 8 >> > | R 8 5 > | R 5 R > | R 5 >> > | R _5 R > | R 8 3 >

tune walking-pairs 3-5: every beat an octave pair, and the pairs themselves walk through the chord; the answer pumps in place and lets a tail go
S xxxxxxxx R 8 2 9 3 10 5 > | R 8 2 9 3 10 4 > | R 8 _c c _5 5 >> > | R 8 _c c _5 5 3 > | R 8 R 8 3 10 5 > | R 8 R 8 _5 5 3 > | R 8 R 8 _c c 5 > | R _5 R _5 3 5 3 > | R 5 R 5 3 5 4 >
A xxxx-xxx R 8 R 8 c 5 > | R 8 R 8 5 3 > | R 8 R 8 3 5 > | R 8 R 8 5 4 3 | R 8 R 8 3 4 5 | R _5 R _5 3 5 > | R 5 R 5 4 3 > | R 5 R 5 c 5 >
S xxxxxxxx R 8 2 9 3 10 5 > | R 8 2 9 3 10 4 > | R 8 _c c _5 5 >> > | R 8 _c c _5 5 3 > | R 8 R 8 3 10 5 > | R 8 R 8 _5 5 3 > | R 8 R 8 _c c 5 > | R _5 R _5 3 5 3 > | R 5 R 5 3 5 4 >
C xxxx--xx R 8 R 8 5 > | R 8 R 8 >> > | R 8 R 8 3 > | R 8 R 8 c 5 | R _5 R _5 >> > | R 5 R 5 3 > | R 5 R 5 >> >
S xxxxxxxx R 8 2 9 3 10 5 > | R 8 2 9 3 10 4 > | R 8 _c c _5 5 >> > | R 8 _c c _5 5 3 > | R 8 R 8 3 10 5 > | R 8 R 8 _5 5 3 > | R 8 R 8 _c c 5 > | R _5 R _5 3 5 3 > | R 5 R 5 3 5 4 >
A xxxx-xxx R 8 R 8 c 5 > | R 8 R 8 5 3 > | R 8 R 8 3 5 > | R 8 R 8 5 4 3 | R 8 R 8 3 4 5 | R _5 R _5 3 5 > | R 5 R 5 4 3 > | R 5 R 5 c 5 >
L xxxxxxxx R 8 2 9 3 10 8 > | R 8 R 8 3 10 9 8 | R 8 R 8 10 9 8 > | R 8 2 9 3 10 9 8 | R 8 R 8 8 9 10 8 | R 5 R 5 8 10 9 8 | R 5 R 5 8 c 5 > | R _5 R _5 3 5 c >
T xxxxxxxx R 8 R 8 5 3 >> > | R 8 R 8 c 5 3 > | R 8 R 8 5 3 R > | R 8 _c c _5 5 >> > | R 8 R 8 3 10 >> > | R _5 R _5 R 3 >> > | R 5 R 5 3 5 >> > | R 5 R 5 c 5 >> >
H1 xxxx R 8 R 8 | R 8 R > | R 8 3 > | R 8 >> > | R 5 R > | R _5 R >
H2 xxxx R 8 R 8 | R 8 >> > | R 8 R > | R 8 5 > | R 5 R > | R _5 R > | R 8 3 >

tune silver-rail 4-5: two beats of octaves and four eighths that come down the chord; the answer doubles a sixteenth behind three on its way, and bar four stops short
S x=x=x=x=x=x=x=x= R 8 R 8 c 5 3 > | R 8 R 8 5 4 3 > | R 8 R 8 c 5 4 > | R 8 R 8 5 c 5 > | R 8 R 8 5 3 R > | R _5 R _5 3 4 5 > | R _5 R _5 R 3 5 > | R 5 R 5 c 5 3 > | R 5 R 5 3 4 5 >
A x=x=x=x=x=xxx=x= R 8 R 8 5 5 4 3 > | R 8 R 8 5 3 3 R > | R 8 R 8 R R 2 3 > | R 8 R 8 8 8 c 5 > | R 8 R 8 3 3 4 5 > | R _5 R _5 R R 2 3 > | R _5 R _5 5 5 4 3 > | R 5 R 5 3 3 4 5 > | R 5 R 5 5 5 4 3 >
S x=x=x=x=x=x=x=x= R 8 R 8 c 5 3 > | R 8 R 8 5 4 3 > | R 8 R 8 c 5 4 > | R 8 R 8 5 c 5 > | R 8 R 8 5 3 R > | R _5 R _5 3 4 5 > | R _5 R _5 R 3 5 > | R 5 R 5 c 5 3 > | R 5 R 5 3 4 5 >
C x=x=x=x=----x=x= R 8 R 8 5 > | R 8 R 8 3 > | R 8 R 8 >> > | R 8 R 8 c 5 | R _5 R _5 >> > | R 5 R 5 3 >
S x=x=x=x=x=x=x=x= R 8 R 8 c 5 3 > | R 8 R 8 5 4 3 > | R 8 R 8 c 5 4 > | R 8 R 8 5 c 5 > | R 8 R 8 5 3 R > | R _5 R _5 3 4 5 > | R _5 R _5 R 3 5 > | R 5 R 5 c 5 3 > | R 5 R 5 3 4 5 >
A x=x=x=x=x=xxx=x= R 8 R 8 5 5 4 3 > | R 8 R 8 5 3 3 R > | R 8 R 8 R R 2 3 > | R 8 R 8 8 8 c 5 > | R 8 R 8 3 3 4 5 > | R _5 R _5 R R 2 3 > | R _5 R _5 5 5 4 3 > | R 5 R 5 3 3 4 5 > | R 5 R 5 5 5 4 3 >
L x=x=x=x=x=x=x=x= R 8 R 8 10 9 8 c | R 8 R 8 8 9 10 8 | R 8 R 8 10 8 c 5 | R 8 R 8 8 c 5 > | R 5 R 5 8 10 9 8 | R 5 R 5 8 c 5 > | R _5 R _5 3 5 6 5
T x=x=x=x=x=x=x=xx R 8 R 8 c 5 4 3 > | R 8 R 8 5 c 5 3 > | R 8 R 8 5 4 3 2 > | R 8 R 8 3 4 5 c > | R 5 R 5 c 5 4 3 > | R 5 R 5 3 5 4 3 > | R _5 R _5 R 3 4 5 >
H1 x=x=x=x= R 8 R 8 | R 8 R > | R 8 5 > | R 5 R > | R _5 R >
H2 x=x=x=xx R 8 R R > | R 8 R >> > | R 8 5 >> > | R 8 5 4 > | R 5 R >> > | R _5 R >> >

tune asking-tail 4-5: octaves for two beats, the root on three and a tail in sixteenths that asks upwards into four; the answer sends it down
S x=x=x=x=x=xxx=-- R 8 R 8 R 3 4 5 | R 8 R 8 R 5 c 8 | R 8 R 8 R 5 4 3 | R 8 R 8 R 5 3 > !ch | R 8 R 8 R 2 b3 3 | R 8 R 8 5 5 4 3 | R _5 R _5 R 3 4 5 | R 5 R 5 R 5 4 3 | R 5 R 5 R 3 4 5
A x=x=x=x=x=--x=xx R 8 R 8 c 5 3 > | R 8 R 8 5 4 3 > | R 8 R 8 R 5 4 > | R 8 R 8 5 3 2 > | R 8 R 8 R 5 4 3 | R 8 R 8 R 3 >> > | R _5 R _5 R 3 >> > | R 5 R 5 c 5 3 > | R 5 R 5 R 3 >> >
S x=x=x=x=x=xxx=-- R 8 R 8 R 3 4 5 | R 8 R 8 R 5 c 8 | R 8 R 8 R 5 4 3 | R 8 R 8 R 5 3 > !ch | R 8 R 8 R 2 b3 3 | R 8 R 8 5 5 4 3 | R _5 R _5 R 3 4 5 | R 5 R 5 R 5 4 3 | R 5 R 5 R 3 4 5
C x=x=x=x=----x=x= R 8 R 8 5 > | R 8 R 8 >> > | R 8 R 8 3 > | R 8 R 8 c 5 | R _5 R _5 >> > | R 5 R 5 3 > | R 5 R 5 >> >
S x=x=x=x=x=xxx=-- R 8 R 8 R 3 4 5 | R 8 R 8 R 5 c 8 | R 8 R 8 R 5 4 3 | R 8 R 8 R 5 3 > !ch | R 8 R 8 R 2 b3 3 | R 8 R 8 5 5 4 3 | R _5 R _5 R 3 4 5 | R 5 R 5 R 5 4 3 | R 5 R 5 R 3 4 5
A x=x=x=x=x=--x=xx R 8 R 8 c 5 3 > | R 8 R 8 5 4 3 > | R 8 R 8 R 5 4 > | R 8 R 8 5 3 2 > | R 8 R 8 R 5 4 3 | R 8 R 8 R 3 >> > | R _5 R _5 R 3 >> > | R 5 R 5 c 5 3 > | R 5 R 5 R 3 >> >
L x=x=x=x=x=xxx=-- R 8 R 8 10 10 9 8 | R 8 R 8 8 8 9 10 | R 8 R 8 5 8 9 10 | R 8 R 8 R 5 c 8 | R 5 R 5 8 10 9 8 | R 5 R 5 5 8 c 5 | R _5 R _5 3 5 6 5
T x=x=x=x=x=x=x=xx R 8 R 8 3 5 c >> > | R 8 R 8 5 3 R >> > | R 8 R 8 c 5 3 >> > | R 8 R 8 5 c 5 >> > | R 5 R 5 3 5 3 >> > | R 5 R 5 c 5 3 >> > | R _5 R _5 R 3 5 >> >
H1 x=x=x=x= R 8 R > | R 8 R 8 | R 8 5 > | R 8 >> > | R 5 R > | R _5 R >
H2 x=xxx=-- R 3 4 5 | R 3 5 > | R 5 3 > | R 8 c 5
H2 x=x=x=xx R 8 R >> > | R 8 5 >> > | R 5 R >> > | R _5 R >> >

tune late-tail 5-5: two beats of octaves, air on three, and from its and a tail of sixteenths that asks upwards into four; the answer sends it down, and the last sixteenth falls into the bar line
S x=x=x=x=--xxx=-x R 8 R 8 3 4 5 > | R 8 R 8 5 c 8 > | R 8 R 8 b3 3 5 > | R 8 R 8 5 4 3 > | R 8 R 8 R 2 3 > | R _5 R _5 3 4 5 > | R _5 R _5 R 2 3 > | R 5 R 5 3 4 5 > | R 5 R 5 5 4 3 >
A x=x=x=x=--xxx=-x R 8 R 8 5 4 3 > | R 8 R 8 c 5 4 > | R 8 R 8 5 3 R > | R 8 R 8 3 2 R > | R 8 R 8 8 c 5 > | R _5 R _5 5 4 3 > | R _5 R _5 3 2 R > | R 5 R 5 5 4 3 > | R 5 R 5 8 c 5 >
S x=x=x=x=--xxx=-x R 8 R 8 3 4 5 > | R 8 R 8 5 c 8 > | R 8 R 8 b3 3 5 > | R 8 R 8 5 4 3 > | R 8 R 8 R 2 3 > | R _5 R _5 3 4 5 > | R _5 R _5 R 2 3 > | R 5 R 5 3 4 5 > | R 5 R 5 5 4 3 >
C x=x=x=------x=xx R 8 R 5 >> > | R 8 R 3 >> > | R 8 R 8 >> > | R _5 R _5 >> > | R 5 R 3 >> >
S x=x=x=x=--xxx=-x R 8 R 8 3 4 5 > | R 8 R 8 5 c 8 > | R 8 R 8 b3 3 5 > | R 8 R 8 5 4 3 > | R 8 R 8 R 2 3 > | R _5 R _5 3 4 5 > | R _5 R _5 R 2 3 > | R 5 R 5 3 4 5 > | R 5 R 5 5 4 3 >
A x=x=x=x=--xxx=-x R 8 R 8 5 4 3 > | R 8 R 8 c 5 4 > | R 8 R 8 5 3 R > | R 8 R 8 3 2 R > | R 8 R 8 8 c 5 > | R _5 R _5 5 4 3 > | R _5 R _5 3 2 R > | R 5 R 5 5 4 3 > | R 5 R 5 8 c 5 >
L x=x=x=x=--xxx=-x R 8 R 8 8 9 10 > | R 8 R 8 10 9 8 > | R 8 R 8 c 8 10 > | R 5 R 5 8 9 10 > | R 5 R 5 10 9 8 > | R _5 R _5 5 6 5 >
T x=x=x=x=x=x=x=xx R 8 R 8 5 c 5 3 > | R 8 R 8 c 5 4 3 > | R 8 R 8 3 5 c 5 > | R 5 R 5 c 5 4 3 > | R 5 R 5 3 5 4 3 > | R _5 R _5 R 3 4 5 >
H1 x=x=x=-x R 8 R > | R 5 R > | R _5 R > | R 8 5 >
H1 x=x=x=x= R 8 R 8 | R 5 R > | R _5 R >
H2 x=x=x=-x R 8 R > | R 8 5 > | R 5 R > | R _5 R >
H2 x=x=x=xx R 8 R >> > | R 8 5 >> > | R 5 R >> > | R _5 R >> >
`;
