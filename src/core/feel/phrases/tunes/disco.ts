/** Disco: tunes of eight bars (see the notation beside the books). */
export const DISCO_TUNES = `
tune floorboards 1-2: four short ones on the kick, the root twice, then up and over; a pair on four in every fourth bar
S x-x-x-x- R R 5 > | R R 5 8 | R R 8 5 | R R _5 > | R R 5 R | R R 3 5 | R R 5 3 | R R 3 > | 5 5 3 R !co | 3 3 5 > !co
A x-x-x-x- 8 8 5 > | 8 8 5 R | R R _5 R | R R 5 > | R R _5 > | 8 8 5 3 | R R 5 3 | 8 8 3 > | 5 5 R > !co | R R 3 R
S x-x-x-x- R R 5 > | R R 5 8 | R R 8 5 | R R _5 > | R R 5 R | R R 3 5 | R R 5 3 | R R 3 > | 5 5 3 R !co | 3 3 5 > !co
C x-x-x-xx R R 5 R > | R R 5 5 > | 8 8 5 R > | R R _5 _5 > | R R 8 5 > | R R 5 3 > | R R 3 5 > | 8 8 5 3 > | 5 5 3 R > !co
S x-x-x-x- R R 5 > | R R 5 8 | R R 8 5 | R R _5 > | R R 5 R | R R 3 5 | R R 5 3 | R R 3 > | 5 5 3 R !co | 3 3 5 > !co
A x-x-x-x- 8 8 5 R | 8 8 5 > | R R 5 > | R R _5 > | R R _5 R | 8 8 3 > | 8 8 5 3 | R R 3 5 | 5 5 R > !co
L x-x-x-x- R R 8 > | R R 8 8 | 8 8 5 8 | R R 5 8 | R R 8 5 | 8 8 10 8 | R R 3 8 | 8 8 10 > | 5 5 8 > !co
T x-x-x-xx R R 5 R > | R R 5 5 > | 8 8 5 5 > | R R 8 5 > | R R _5 _5 > | R R 3 5 > | R R 5 3 > | 8 8 5 3 > | R R R 5 >
H1 x-x- R R | R > | R 5 | R 3 | 8 8 | 8 >
H2 x-x- R > | R 5 | R 3 | R R | 8 > | 8 5

tune seesaw 1-2: octave pairs for two beats, then two short ones that ask, and two that answer
S xxxxx-x- R 8 R 8 R 5 | R 8 R 8 5 > | R 5 R 5 R 5 | R 5 R 5 R > | R _5 R _5 R _5 | R _5 R _5 R > | R 8 R 8 3 5 | R 5 R 5 R 3 | R 5 R 5 3 > | R 8 R 8 5 3
A xxxxx-x- R 8 R 8 5 R | R 8 R 8 R > | R 5 R 5 5 R | R 5 R 5 5 > | 8 5 8 5 R > | R _5 R _5 R 5 | 8 5 8 5 3 > | R 8 R 8 5 3 | R 5 R 5 3 R | R 8 R 8 3 >
S xxxxx-x- R 8 R 8 R 5 | R 8 R 8 5 > | R 5 R 5 R 5 | R 5 R 5 R > | R _5 R _5 R _5 | R _5 R _5 R > | R 8 R 8 3 5 | R 5 R 5 R 3 | R 5 R 5 3 > | R 8 R 8 5 3
C xxxxx-x- R 8 R 8 R > | R 8 R 8 5 R | R 5 R 5 R > | R 5 R 5 R R | R _5 R _5 R > | 8 5 8 5 R > | R 8 R 8 3 R | R 5 R 5 3 R | R 5 R 3 R >
S xxxxx-x- R 8 R 8 R 5 | R 8 R 8 5 > | R 5 R 5 R 5 | R 5 R 5 R > | R _5 R _5 R _5 | R _5 R _5 R > | R 8 R 8 3 5 | R 5 R 5 R 3 | R 5 R 5 3 > | R 8 R 8 5 3
A xxxxx-x- R 8 R 8 5 > | R 8 R 8 5 R | R 5 R 5 5 > | R 5 R 5 5 R | R _5 R _5 R > | 8 5 8 5 R > | R 5 R 5 3 > | R 8 R 8 3 > | 8 5 8 5 3 >
L xxxxx-x- R 8 R 8 8 5 | R 8 R 8 8 > | 8 5 8 5 8 > | R 5 R 5 8 > | R 5 8 5 8 5 | R 8 R 8 10 8 | R 5 R 5 8 10 | R 8 R 8 10 > | R 5 8 5 10 8
T xxxxx-x- R 8 R 8 5 > | R 5 R 5 R > | R 8 R 8 R 5 | R _5 R _5 R > | R 5 R 5 5 > | R 8 R 8 3 5 | R 5 R 5 3 > | R 8 R 8 3 > | R 5 R 5 3 5
H1 xxxx R 8 R > | R 8 R 8 | R 5 R > | R 5 R 5 | R _5 R > | R 8 R 5 | R 5 R 3
H2 x-x- R > | R 5 | R 3 | R R | 8 > | 8 5

tune skate 1-2: the floor on one and three, an octave on the and of two, and a pair on four that rolls on
S x-xxx-xx R R 8 R 5 > | R R 5 R 5 > | R R 8 5 R > | R R _5 R _5 > | R R 5 R 5 8 | R R 3 R 5 > | R R 5 R 3 > | R R 8 R 3 5 | R R 5 3 5 > | 5 5 3 5 R > !co
A x-xxx-xx 8 8 5 8 5 > | R R 8 5 5 > | R R 5 8 5 > | R R _5 R R > | 8 8 5 R R > | 8 8 5 3 R > | 8 8 5 8 3 > | R R 5 3 R > | R R 8 5 3 R | 5 5 R 5 R > !co
S x-xxx-xx R R 8 R 5 > | R R 5 R 5 > | R R 8 5 R > | R R _5 R _5 > | R R 5 R 5 8 | R R 3 R 5 > | R R 5 R 3 > | R R 8 R 3 5 | R R 5 3 5 > | 5 5 3 5 R > !co
C x-xxx-x- R R 8 R > | R R 5 R > | 8 8 5 R > | R R _5 R > | R R 8 R 5 | R R 5 R R | R R 3 R > | 8 8 5 3 R | R R 5 R 3 | 5 5 3 R > !co
S x-xxx-xx R R 8 R 5 > | R R 5 R 5 > | R R 8 5 R > | R R _5 R _5 > | R R 5 R 5 8 | R R 3 R 5 > | R R 5 R 3 > | R R 8 R 3 5 | R R 5 3 5 > | 5 5 3 5 R > !co
A x-xxx-xx R R 8 5 5 > | 8 8 5 8 5 > | R R 5 8 5 > | R R _5 R R > | 8 8 5 R R > | 8 8 5 3 R > | 8 8 5 8 3 > | R R 5 3 R > | 5 5 R 5 R > !co
L x-xxx-xx R R 8 8 5 > | R R 5 8 8 > | 8 8 5 8 8 > | R R 8 8 8 5 | R R 5 8 5 8 | R R 8 10 8 > | R R 5 8 10 8 | 8 8 10 8 5 > | R R 3 8 5 >
T x-xxx-xx R R 8 R 5 > | R R 5 R 5 > | R R _5 R _5 > | 8 8 5 R 5 > | R R 8 5 5 > | R R 8 R 3 5 | R R 5 R 3 > | R R 3 R 5 > | R R 8 3 5 >
H1 x-xx R R 8 | R R > | R R 5 | R R _5 | R R 3 | 8 8 5
H2 x-xx R 5 > | R R > | R 8 5 | R 3 > | R _5 > | 8 5 >

tune pumphouse 2-2: eighths right through, the root pumped for half the bar, the triad moved in pairs
S xxxx--xx R R R R 3 > | R R R R 5 5 | R R R R 5 > | R R R R 8 > | R R R R 3 3 | R R R R R > | 5 5 5 5 R > !co
A xxxx--xx 8 8 8 8 3 > | 8 8 8 8 3 3 | 8 8 8 8 R > | R R R R 3 3 | R R R R _5 > | R R R R R > | R R R R 3 > | 5 5 5 5 3 > !co
S xxxx--xx R R R R 3 > | R R R R 5 5 | R R R R 5 > | R R R R 8 > | R R R R 3 3 | R R R R R > | 5 5 5 5 R > !co
C xxxx--xx R R R R R > | R R R R 3 3 | R R R R R R | 8 8 8 8 R > | R R R R 5 > | 5 5 5 5 R R !co
S xxxx--xx R R R R 3 > | R R R R 5 5 | R R R R 5 > | R R R R 8 > | R R R R 3 3 | R R R R R > | 5 5 5 5 R > !co
A xxxx--xx 8 8 8 8 R > | 8 8 8 8 3 3 | 8 8 8 8 3 > | R R R R 3 3 | R R R R _5 > | R R R R R > | R R R R 3 > | 5 5 5 5 3 > !co
L xxxx--xx R R R R 5 > | 8 8 8 8 8 > | R R R R 8 8 | R R R R 8 > | 8 8 8 8 8 8 | R R R R 5 5 | 5 5 5 5 5 > !co
T xxxx--xx R R R R 5 > | R R R R 3 > | R R R R >> > | 8 8 8 8 3 > | 8 8 8 8 >> >
H1 xxxx R R R R | R R R > | R R 5 > | R R 3 3 | R R 3 > | 8 8 5 5
H2 xxxx R R R > | R R 5 > | R R 3 > | R R R R | R R 5 5 | 8 8 5 >

tune mirrorball 3-5: octaves through the bar, the last pair walks on; up in one bar, down in the next
S xxxx--xx R 8 R 8 5 > | R 8 R 8 5 6 | R 8 R 8 >> > | R 5 R 5 6 > | R _5 R _5 _6 _7 | R 5 R 5 3 > | R 8 R 8 3 4 | R 5 R 5 >> > | R 8 R 8 6 7
A xxxx--xx R 8 R 8 7 > | R 8 R 8 5 3 | R 8 R 8 7 6 | R 5 R 5 3 2 | R 5 R 5 4 > | R 8 R 8 _6 > | R 8 R 8 3 2 | R 5 R 5 _6 > | R _5 R _5 _6 _5 | R 8 R 8 3 >
S xxxx--xx R 8 R 8 5 > | R 8 R 8 5 6 | R 8 R 8 >> > | R 5 R 5 6 > | R _5 R _5 _6 _7 | R 5 R 5 3 > | R 8 R 8 3 4 | R 5 R 5 >> > | R 8 R 8 6 7
C xxxx--xx R 8 R 8 R > | R 8 R 8 5 > | R 5 R 5 R > | R 8 R 8 5 R | R 5 R 5 3 R | R _5 R _5 R > | R 8 R 8 3 R | R 5 R 5 3 >
S xxxx--xx R 8 R 8 5 > | R 8 R 8 5 6 | R 8 R 8 >> > | R 5 R 5 6 > | R _5 R _5 _6 _7 | R 5 R 5 3 > | R 8 R 8 3 4 | R 5 R 5 >> > | R 8 R 8 6 7
A xxxx--xx R 8 R 8 7 6 | R 8 R 8 7 > | R 8 R 8 5 3 | R 5 R 5 3 2 | R 5 R 5 4 > | R 8 R 8 _6 > | R 8 R 8 3 2 | R 5 R 5 _6 > | R _5 R _5 _6 _5 | R 8 R 8 3 >
L xxxx--xx R 8 R 8 9 > | R 8 R 8 9 8 | R 8 R 8 8 > | R 5 R 5 9 8 | R 5 R 5 9 > | R 8 R 8 9 10 | R 5 R 5 7 > | R 8 R 8 7 >
T xxxx--xx R 8 R 8 7 > | R 8 R 8 >> > | R 5 R 5 >> > | R _5 R _5 _7 > | R 5 R 5 7 >
H1 xxxx R 8 R 8 | R 8 R > | R 8 5 > | R 5 R 5 | R 5 R > | R 8 >> > | R _5 R >
H2 xxxx R 8 R > | R 8 >> > | R 8 5 > | R 5 R > | R 5 >> > | R 8 3 > | R 5 6 >

tune staircase 3-5: octave pairs whose low note walks in quarters, down from the root or up from it
S xxxx--xx R 8 R 8 _6 > | R 8 R 8 _6 6 | R 8 R 8 3 > | R 8 R 8 5 > | R R R R 3 > | R R R R _6 > | R R R R _6 _6 | R R R R 5 > | R 8 R 8 _5 > | R R R R _5 _5
A xxxx--xx R 8 R 8 3 > | R 8 R 8 3 4 | R R R R 3 > | R R R R 5 5 | R 8 R 8 _5 > | R 8 R 8 _7 > | R R R R _6 > | R R R R 2 >
S xxxx--xx R 8 R 8 _6 > | R 8 R 8 _6 6 | R 8 R 8 3 > | R 8 R 8 5 > | R R R R 3 > | R R R R _6 > | R R R R _6 _6 | R R R R 5 > | R 8 R 8 _5 > | R R R R _5 _5
C xxxx--xx R 8 R 8 R > | R R R R R > | R R R R 5 >
S xxxx--xx R 8 R 8 _6 > | R 8 R 8 _6 6 | R 8 R 8 3 > | R 8 R 8 5 > | R R R R 3 > | R R R R _6 > | R R R R _6 _6 | R R R R 5 > | R 8 R 8 _5 > | R R R R _5 _5
A xxxx--xx R 8 R 8 3 4 | R 8 R 8 3 > | R R R R 3 > | R R R R 5 5 | R 8 R 8 _5 > | R 8 R 8 _7 > | R R R R _6 > | R R R R 2 >
L xxxx--xx R 8 R 8 2 9 | R 8 R 8 5 > | R 8 R 8 10 > | R R R R 8 > | R R R R 9 > | R R R R 7 7 | R 8 R 8 3 10 | 8 8 8 8 10 > | R R R R 8 8
T xxxx--xx R 8 R 8 6 > | R 8 R 8 7 > | R R R R 6 7 | R 8 R 8 >> > | R R R R >> > | R R R R _6 _7
H1 xxxx R 8 R 8 | R 8 R > | R R R R | R R R > | R 8 _7 > | R 8 2 > | R R 3 >
H2 xxxx R 8 R > | R R R > | R 8 _7 > | R 8 2 > | R R 3 > | R R >> > | R 8 >> >

tune strutting 3-5: one, then two with its octave, the same again from three, and the tail leads
S x-xxx-xx R R 8 R 5 > | R R 8 5 6 > | R R 8 R 5 6 | R R 8 5 c > | R R 5 3 4 > | R R 5 R 3 > | R R _5 _6 _7 > | R R 8 R >> > | R R 5 R 5 6 | 5 5 3 5 6 > !co
A x-xxx-xx 8 8 7 6 5 > | R R 8 7 6 > | R R 8 5 4 3 | R R 5 4 3 > | R R 5 3 2 > | R R _7 _6 _5 > | R R _7 _6 _7 > | 8 8 5 3 2 > | R R _5 R _7 > | 5 5 3 2 R > !co
S x-xxx-xx R R 8 R 5 > | R R 8 5 6 > | R R 8 R 5 6 | R R 8 5 c > | R R 5 3 4 > | R R 5 R 3 > | R R _5 _6 _7 > | R R 8 R >> > | R R 5 R 5 6 | 5 5 3 5 6 > !co
C x-xxx-x- R R 8 R > | R R 5 R > | R R 8 5 R | R R _5 R > | R R 3 R > | 8 8 7 5 > | R R _7 R > | R R 5 R 3 | R R 8 5 > | 5 5 3 R > !co
S x-xxx-xx R R 8 R 5 > | R R 8 5 6 > | R R 8 R 5 6 | R R 8 5 c > | R R 5 3 4 > | R R 5 R 3 > | R R _5 _6 _7 > | R R 8 R >> > | R R 5 R 5 6 | 5 5 3 5 6 > !co
A x-xxx-xx R R 8 7 6 > | 8 8 7 6 5 > | R R 8 5 4 3 | R R 5 4 3 > | R R 5 3 2 > | R R _7 _6 _5 > | R R _7 _6 _7 > | 8 8 5 3 2 > | 5 5 3 2 R > !co
L x-xxx-xx R R 8 8 9 > | R R 8 10 9 8 | R R 5 8 9 > | 8 8 9 10 9 > | R R 8 10 9 > | R R 5 8 7 > | R R 8 8 7 > | R R 3 8 9 8 | 5 5 8 8 9 > !co
T x-xxx-xx R R 8 5 6 7 | R R 8 5 >> > | R R 5 5 >> > | R R 8 3 >> > | R R _5 _5 _6 _7 | R R 5 3 >> > | 8 8 7 5 >> > | R R 8 R >> > | R R 5 5 6 7
H1 x-xx R R 8 | R R > | R R 5 | R R _5 | R R 3 | R >> >
H2 x-xx R R > | R >> > | R 5 > | R 3 > | R 2 > | R 8 >

tune quicksilver 4-5: octaves for three beats, and on four a turn in sixteenths that runs on in every second bar
S x=x=x=x=----x=x= R 8 R 8 5 > | R 8 R 8 c > | R 8 R 8 5 6 | R 5 R 5 c > | R _5 R _5 _7 > | R 5 R 5 3 > | R 8 R 8 _6 > | R 8 R 8 >> >
A x=x=x=x=----xxx= R 8 R 8 7 6 > | R 8 R 8 5 4 3 | R 8 R 8 b3 3 > | R 5 R 5 4 3 > | R 5 R 5 #4 4 > | R 8 R 8 c 5 > | R 8 R 8 5 #4 > | R _5 R _5 _6 _7 > | R 5 R 5 3 2 > | R 8 R 8 >>> >> >
S x=x=x=x=----x=x= R 8 R 8 5 > | R 8 R 8 c > | R 8 R 8 5 6 | R 5 R 5 c > | R _5 R _5 _7 > | R 5 R 5 3 > | R 8 R 8 _6 > | R 8 R 8 >> >
C x=x=x=x=----xxx= R 8 R 8 5 3 R | R 8 R 8 5 R > | R 8 R 8 3 R > | R 5 R 5 3 R > | R 5 R 5 _7 R > | R _5 R _5 _7 R > | R 8 R 8 c 5 R | R 5 R 5 R >> > | R 8 R 8 R >> >
S x=x=x=x=----x=x= R 8 R 8 5 > | R 8 R 8 c > | R 8 R 8 5 6 | R 5 R 5 c > | R _5 R _5 _7 > | R 5 R 5 3 > | R 8 R 8 _6 > | R 8 R 8 >> >
A x=x=x=x=----xxx= R 8 R 8 5 4 3 | R 8 R 8 7 6 > | R 8 R 8 b3 3 > | R 5 R 5 4 3 > | R 5 R 5 #4 4 > | R 8 R 8 c 5 > | R _5 R _5 _6 _7 > | R 5 R 5 3 2 > | R 8 R 8 >>> >> >
L x=x=x=x=----x=x= R 8 R 8 9 > | R 8 R 8 9 8 | R 8 R 8 9 10 | R 5 R 5 9 > | R 5 R 5 8 > | R 8 R 8 10 > | R 5 R 5 c >
T x=x=x=x=----xxx= R 8 R 8 5 6 7 | R 8 R 8 >>> >> > | R 8 R 8 5 >> > | R 5 R 5 6 >> > | R 5 R 5 >>> >> > | R 8 R 8 3 >> > | R _5 R _5 _6 _7 > | R 5 R 5 5 6 7
H1 x-x-x-x- R 8 R 8 | R 8 R > | R 8 5 > | R 5 R 5 | R 5 R > | R 8 >> > | R _5 R >
H2 x-x-xxx- R 8 >>> >> > | R 8 5 >> > | R 8 R >> > | R 5 3 >> > | R 5 >>> >> > | R 8 7 6 > | R 5 4 3 >
`;
