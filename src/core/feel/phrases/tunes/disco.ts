/** Disco: tunes of eight bars (see the notation beside the books). */
export const DISCO_TUNES = `
tune floorboards 1-2: an octave on the one, the floor on two and three, and a pair on four that points on
S xxx-x-xx R 8 R R 5 > | R 8 R R 3 > | R 8 R R 5 3 | R 8 R R _5 > | R 8 R 5 R > | R 8 R R 5 8 | R _5 R R _5 > | R 5 R R 5 > | R 5 R R 3 > | 5 8 5 5 3 > !co
A xxx-x-xx R 8 R 8 5 > | R 8 R 8 5 3 | R 8 R 5 3 > | R 8 R 5 R > | R 8 R 8 8 5 | R _5 R _5 R > | R 5 R 5 R > | R 5 R 5 3 > | R 8 R 5 5 > | 5 8 5 3 R > !co
S xxx-x-xx R 8 R R 5 > | R 8 R R 3 > | R 8 R R 5 3 | R 8 R R _5 > | R 8 R 5 R > | R 8 R R 5 8 | R _5 R R _5 > | R 5 R R 5 > | R 5 R R 3 > | 5 8 5 5 3 > !co
C xxx---xx R 8 R 5 > | R 8 R 3 > | R 8 R 5 R | R 8 R 5 3 | R 8 R R > | R _5 R _5 > | R 5 R 5 > | R 5 R 3 >
S xxx-x-xx R 8 R R 5 > | R 8 R R 3 > | R 8 R R 5 3 | R 8 R R _5 > | R 8 R 5 R > | R 8 R R 5 8 | R _5 R R _5 > | R 5 R R 5 > | R 5 R R 3 > | 5 8 5 5 3 > !co
A xxx-x-xx R 8 R 8 5 3 | R 8 R 8 5 > | R 8 R 5 R > | R 8 R 5 3 > | R 8 R 8 8 5 | R _5 R _5 R > | R 5 R 5 R > | R 5 R 5 3 > | R 8 R 5 5 > | 5 8 5 3 R > !co
L xxx-x-xx R 8 R 8 8 > | R 8 R 8 10 > | R 8 R 8 10 8 | R 8 R 5 8 > | R 5 R 8 8 > | R 5 R 8 5 > | R 5 R 8 10 > | R _5 R 3 5 > | R 5 R 5 8 > | 5 8 5 8 8 > !co
T x-x-xxxx R R R R 5 > | R R R 3 5 > | R R 8 8 5 > | R R 8 5 3 > | R R 5 5 R > | R R _5 _5 R > | R R 3 3 5 > | R R R R >> >
H1 xxx- R 8 R | R 8 > | R 8 5 | R 5 R | R _5 R | R 8 3 | R 5 >
H2 x-xx R 5 > | R 3 > | R R > | R 8 > | R _5 > | R 8 5

tune seesaw 1-2: octave pairs for two beats, a hole on three, and a pair that climbs in one bar and falls in the next
S xxxx--xx R 8 R 8 5 > | R 8 R 8 3 > | R 8 R 8 5 8 | R 8 R 8 3 5 | R 8 R 8 R > | R _5 R _5 R > | R 5 R 5 3 > | R 5 R 5 5 > | R _5 R _5 _5 > | 5 8 5 8 3 > !co
A xxxx--xx R 8 R 8 8 5 | R 8 R 8 5 3 | R 8 R 8 8 > | R 8 R 8 5 R | R _5 R _5 R > | R 5 R 5 5 3 | R 5 R 5 R > | R _5 R _5 _5 > | R 5 R 5 3 > | 5 8 5 8 R > !co
S xxxx--xx R 8 R 8 5 > | R 8 R 8 3 > | R 8 R 8 5 8 | R 8 R 8 3 5 | R 8 R 8 R > | R _5 R _5 R > | R 5 R 5 3 > | R 5 R 5 5 > | R _5 R _5 _5 > | 5 8 5 8 3 > !co
C x-x-x-xx R R 8 5 > | R R R 5 > | R R 5 3 > | R R 8 5 3 | R R _5 _5 > | R R 5 5 > | R R R 3 > | R R _5 R >
S xxxx--xx R 8 R 8 5 > | R 8 R 8 3 > | R 8 R 8 5 8 | R 8 R 8 3 5 | R 8 R 8 R > | R _5 R _5 R > | R 5 R 5 3 > | R 5 R 5 5 > | R _5 R _5 _5 > | 5 8 5 8 3 > !co
A xxxx--xx R 8 R 8 8 > | R 8 R 8 5 3 | R 8 R 8 8 5 | R 8 R 8 5 R | R _5 R _5 R > | R 5 R 5 5 3 | R 5 R 5 R > | R _5 R _5 _5 > | R 5 R 5 3 > | 5 8 5 8 R > !co
L xxxx--xx R 8 R 8 10 > | R 8 R 8 8 > | R 8 R 8 8 10 | R 8 R 8 10 8 | R 8 R 8 8 5 | R 5 R 5 8 > | R 5 R 5 8 10 | R 5 R 5 8 5 | R _5 R _5 5 > | 5 8 5 8 8 > !co
T x-x-xxxx R R R 8 5 > | R R R 3 5 > | R R R 5 R > | R R 8 5 3 > | R R 5 5 R > | R R _5 _5 R > | R R 5 5 >> > | R R R 3 >> >
H1 xxxx R 8 R > | R 8 R 8 | R 8 5 > | R 5 R > | R _5 R > | R 8 5 3
H2 x-xx R 5 > | R 3 > | R 8 > | R R > | R _5 > | R 8 5

tune skate 1-2: the floor on one, two and three, an octave on the and of two, and a pair on four that rolls on
S x-xxx-xx R R 8 R 5 > | R R 8 R 3 > | R R 8 R 5 8 | R R 8 R 3 5 | R R 8 R R > | R R _5 R _5 > | R R 5 R 5 > | R R 5 R 3 > | R R _5 R R > | 5 5 8 5 3 > !co
A x-xxx-xx R R 8 R 8 5 | R R 8 5 3 > | R R 8 R 8 > | R R 8 5 R > | R R 8 R 5 3 | R R _5 _5 R > | R R 5 3 R > | R R 5 5 R > | R R 8 5 5 > | 5 5 8 5 R > !co
S x-xxx-xx R R 8 R 5 > | R R 8 R 3 > | R R 8 R 5 8 | R R 8 R 3 5 | R R 8 R R > | R R _5 R _5 > | R R 5 R 5 > | R R 5 R 3 > | R R _5 R R > | 5 5 8 5 3 > !co
C x-xx--xx R R 8 5 > | R R 8 3 > | R R 8 5 R | R R 8 5 3 | R R 8 R > | R R _5 _5 > | R R 5 5 > | R R 5 3 > | R R _5 R >
S x-xxx-xx R R 8 R 5 > | R R 8 R 3 > | R R 8 R 5 8 | R R 8 R 3 5 | R R 8 R R > | R R _5 R _5 > | R R 5 R 5 > | R R 5 R 3 > | R R _5 R R > | 5 5 8 5 3 > !co
A x-xxx-xx R R 8 R 8 > | R R 8 5 3 > | R R 8 R 8 5 | R R 8 5 R > | R R 8 R 5 3 | R R _5 _5 R > | R R 5 3 R > | R R 5 5 R > | R R 8 5 5 > | 5 5 8 5 R > !co
L x-xxx-xx R R 8 8 10 > | R R 8 8 8 > | R R 8 8 10 8 | R R 8 10 8 > | R R 8 8 5 > | R R 5 8 8 > | R R 5 8 5 > | R R 3 5 8 > | R R _5 R 5 > | 5 5 8 8 5 > !co
T xx--xxxx R 8 R R 5 > | R 8 R 3 5 > | R 8 8 5 R > | R 8 8 5 3 > | R R 5 5 R > | R R _5 _5 R > | R R R 3 5 > | R 8 R 5 >> > | R R R 5 >> >
H1 x-xx R R 8 | R R > | R R 5 | R R _5 | R R 3
H2 x-xx R 5 > | R 3 > | R 8 > | R R > | R _5 > | R 8 5

tune pumphouse 2-2: octaves pumped for two beats, the low root on three, and a tail on four that runs up, then down
S xxxxx-xx R 8 R 8 R 5 > | R 8 R 8 R 3 > | R 8 R 8 R 3 5 | R 8 R 8 R 5 8 | R 8 R 8 R >> > | R _5 R _5 R _5 > | R 5 R 5 R 3 > | R 5 R 5 R 5 > | R 5 R 5 R >> > | R _5 R _5 R 3 > | 5 8 5 8 5 3 > !co
A xxxxx-xx R 8 R 8 8 5 > | R 8 R 8 5 3 > | R 8 R 8 8 5 3 | R 8 R 8 5 R > | R 8 R 8 5 >> > | R _5 R _5 _5 R > | R 5 R 5 5 3 > | R 5 R 5 3 R > | R 5 R 5 3 >> > | R _5 R _5 R >> > | 5 8 5 8 5 R > !co
S xxxxx-xx R 8 R 8 R 5 > | R 8 R 8 R 3 > | R 8 R 8 R 3 5 | R 8 R 8 R 5 8 | R 8 R 8 R >> > | R _5 R _5 R _5 > | R 5 R 5 R 3 > | R 5 R 5 R 5 > | R 5 R 5 R >> > | R _5 R _5 R 3 > | 5 8 5 8 5 3 > !co
C xxx---xx R 8 R 5 > | R 8 R >> > | R 8 R 3 > | R 8 R 5 3 | R _5 R _5 > | R 5 R 3 > | R 5 R >> > | R _5 R >> >
S xxxxx-xx R 8 R 8 R 5 > | R 8 R 8 R 3 > | R 8 R 8 R 3 5 | R 8 R 8 R 5 8 | R 8 R 8 R >> > | R _5 R _5 R _5 > | R 5 R 5 R 3 > | R 5 R 5 R 5 > | R 5 R 5 R >> > | R _5 R _5 R 3 > | 5 8 5 8 5 3 > !co
A xxxxx-xx R 8 R 8 5 3 > | R 8 R 8 8 5 > | R 8 R 8 8 5 3 | R 8 R 8 5 R > | R 8 R 8 5 >> > | R _5 R _5 _5 R > | R 5 R 5 5 3 > | R 5 R 5 3 R > | R 5 R 5 3 >> > | R _5 R _5 R >> > | 5 8 5 8 5 R > !co
L xxxxx-xx R 8 R 8 8 10 > | R 8 R 8 10 8 > | R 8 R 8 8 10 8 | R 8 R 8 8 5 > | R 5 R 5 8 10 > | R 5 R 5 8 5 > | R 5 R 5 5 8 > | R _5 R _5 3 5 > | 5 8 5 8 8 10 > !co
T x-xxxxxx R R 8 R 3 5 > | R R 8 R 5 >> > | R R 8 5 3 >> > | R R 5 R 3 5 > | R R 5 R 5 >> > | R R _5 R _5 >> > | R R 8 R 5 3 > | R R _5 R 3 >> >
H1 xxxx R 8 R > | R 8 R 8 | R 8 5 > | R 8 3 > | R 5 R > | R _5 R > | R 8 >> >
H2 x-xx R 5 > | R >> > | R 3 > | R 8 > | R _5 > | R 8 5

tune mirrorball 3-5: octave pairs for two beats, air on three, and a tag from its and that walks on; from the top down in the answer
S xxxx-xxx R 8 R 8 8 5 > | R 8 R 8 8 >> > | R 8 R 8 8 3 4 | R 8 R 8 8 3 > | R 8 R 8 8 5 4 | R _5 R _5 _5 _7 > | R _5 R _5 _5 >> > | R 5 R 5 5 3 > | R 5 R 5 5 >> > | R 5 R 5 5 3 4 | 5 8 5 8 8 3 > !co
A xxxx-xxx R 8 R 8 c 5 > | R 8 R 8 c 5 3 | R 8 R 8 4 3 > | R 8 R 8 4 3 2 | R 8 R 8 7 6 > | R _5 R _5 _7 _5 > | R _5 R _5 2 3 > | R 5 R 5 4 3 > | R 5 R 5 4 3 2 | R 5 R 5 2 R > | 5 8 5 8 4 3 > !co
S xxxx-xxx R 8 R 8 8 5 > | R 8 R 8 8 >> > | R 8 R 8 8 3 4 | R 8 R 8 8 3 > | R 8 R 8 8 5 4 | R _5 R _5 _5 _7 > | R _5 R _5 _5 >> > | R 5 R 5 5 3 > | R 5 R 5 5 >> > | R 5 R 5 5 3 4 | 5 8 5 8 8 3 > !co
C xxxx--xx R 8 R 8 5 > | R 8 R 8 >> > | R 8 R 8 3 > | R 8 R 8 5 3 | R _5 R _5 >> > | R 5 R 5 3 > | R 5 R 5 >> > | R _5 R _5 _5 >
S xxxx-xxx R 8 R 8 8 5 > | R 8 R 8 8 >> > | R 8 R 8 8 3 4 | R 8 R 8 8 3 > | R 8 R 8 8 5 4 | R _5 R _5 _5 _7 > | R _5 R _5 _5 >> > | R 5 R 5 5 3 > | R 5 R 5 5 >> > | R 5 R 5 5 3 4 | 5 8 5 8 8 3 > !co
A xxxx-xxx R 8 R 8 c 5 3 | R 8 R 8 c 5 > | R 8 R 8 4 3 > | R 8 R 8 4 3 2 | R 8 R 8 7 6 > | R _5 R _5 _7 _5 > | R _5 R _5 2 3 > | R 5 R 5 4 3 > | R 5 R 5 4 3 2 | R 5 R 5 2 R > | 5 8 5 8 4 3 > !co
L xxxx-xxx R 8 R 8 9 10 > | R 8 R 8 10 9 > | R 8 R 8 9 10 8 | R 8 R 8 10 8 > | R 5 R 5 10 9 > | R 5 R 5 9 8 > | R 5 R 5 6 8 > | R _5 R _5 3 5 > | 5 8 5 8 9 10 > !co
T xxxx-xxx R 8 R 8 5 >> > | R 8 R 8 3 >> > | R 8 R 8 5 6 7 | R 8 R 8 c 5 > | R _5 R _5 _5 >> > | R _5 R _5 _5 _6 _7 | R 5 R 5 3 >> > | R 5 R 5 5 >> > | R 8 R 8 >>> >> >
H1 xxxx R 8 R > | R 8 R 8 | R 8 5 > | R 8 >> > | R 5 R > | R _5 R > | R 5 3 >
H2 xxxx R 8 R > | R 8 >> > | R 8 5 > | R 5 R > | R 5 >> > | R _5 R > | R 8 3 >

tune staircase 3-5: octave pairs whose low note climbs through the chord, and comes down under the root in the answer
S xxxxxxxx R 8 R 8 3 10 4 > | R 8 R 8 3 10 5 > | R 8 R 8 3 10 >> > | R 8 R 8 _c c _5 > | R 8 R 8 _c c >> > | R 8 R 8 5 5 4 > | R R R R 3 3 4 > | R R R R 3 3 5 > | R R R R _c _c _5 > | R R R R _c _c >> > | R R R R 3 3 >> > | 3 3 3 3 5 5 4 > !co
A xxxxxxxx R 8 R 8 _c c _5 > | R 8 R 8 _c c _5 5 | R 8 R 8 c c 5 > | R 8 R 8 5 5 3 > | R 8 R 8 5 5 4 3 | R R R R _c _c _5 > | R R R R _5 _5 >> > | R R R R 5 5 3 > | R R R R 5 5 >> > | R R R R 5 5 4 3 | 5 5 5 5 3 3 2 > !co
S xxxxxxxx R 8 R 8 3 10 4 > | R 8 R 8 3 10 5 > | R 8 R 8 3 10 >> > | R 8 R 8 _c c _5 > | R 8 R 8 _c c >> > | R 8 R 8 5 5 4 > | R R R R 3 3 4 > | R R R R 3 3 5 > | R R R R _c _c _5 > | R R R R _c _c >> > | R R R R 3 3 >> > | 3 3 3 3 5 5 4 > !co
C xxxx--xx R 8 R 8 5 > | R 8 R 8 >> > | R 8 R 8 3 > | R 8 R 8 c 5 | R R R R >> > | R R R R 3 > | R R R R _5 >
S xxxxxxxx R 8 R 8 3 10 4 > | R 8 R 8 3 10 5 > | R 8 R 8 3 10 >> > | R 8 R 8 _c c _5 > | R 8 R 8 _c c >> > | R 8 R 8 5 5 4 > | R R R R 3 3 4 > | R R R R 3 3 5 > | R R R R _c _c _5 > | R R R R _c _c >> > | R R R R 3 3 >> > | 3 3 3 3 5 5 4 > !co
A xxxxxxxx R 8 R 8 _c c _5 5 | R 8 R 8 _c c _5 > | R 8 R 8 c c 5 > | R 8 R 8 5 5 3 > | R 8 R 8 5 5 4 3 | R R R R _c _c _5 > | R R R R _5 _5 >> > | R R R R 5 5 3 > | R R R R 5 5 >> > | R R R R 5 5 4 3 | 5 5 5 5 3 3 2 > !co
L xxxxxxxx R 8 R 8 3 10 8 > | R 8 R 8 10 10 9 > | R 8 R 8 8 8 9 > | R 8 R 8 8 10 9 8 | R 8 R 8 3 10 5 8 | R R R R 8 8 9 > | R R R R 5 5 8 > | R R R R 5 5 c > | R R R R 3 3 5 > | 5 5 5 5 8 8 9 > !co
T xxxxxxxx R 8 R 8 5 5 >> > | R 8 R 8 3 10 >> > | R 8 R 8 5 5 6 7 | R 8 R 8 _5 5 >> > | R R R R 5 5 >> > | R R R R 3 3 >> > | R R R R _5 _5 >> > | R R R R _5 _5 _6 _7
H1 xxxx R 8 R > | R 8 3 > | R 8 _c c | R R 3 > | R R R > | R R _c _c
H2 xxxx R 8 R > | R 8 >> > | R 8 5 > | R R >> > | R R 3 > | R R _5 >

tune strutting 3-5: one, two with its octave, nothing on three, and a tail that enters late: up it asks, down it answers
S x-xx-xxx R R 8 5 c > | R R 8 5 c 8 | R R 8 5 >> > | R R 8 c 8 > | R R 8 5 3 > | R R 5 3 4 > | R R 5 3 4 5 | R R _5 _c R > | R R _5 R >> > | R R 5 3 >> > | R R _5 R 2 > | 5 5 8 5 c > !co
A x-xx-xxx R R 8 c 5 > | R R 8 c 5 3 | R R 8 5 4 3 | R R 8 5 4 > | R R 8 7 6 > | R R 5 4 3 > | R R 5 4 3 2 | R R 5 3 2 > | R R _5 _5 _c > | R R R _c _5 > | 5 5 8 5 3 > !co
S x-xx-xxx R R 8 5 c > | R R 8 5 c 8 | R R 8 5 >> > | R R 8 c 8 > | R R 8 5 3 > | R R 5 3 4 > | R R 5 3 4 5 | R R _5 _c R > | R R _5 R >> > | R R 5 3 >> > | R R _5 R 2 > | 5 5 8 5 c > !co
C x-xx--xx R R 8 5 > | R R 8 >> > | R R 8 c 5 | R R 8 3 > | R R _5 >> > | R R 5 3 > | R R 5 >> > | R R _5 _c R
S x-xx-xxx R R 8 5 c > | R R 8 5 c 8 | R R 8 5 >> > | R R 8 c 8 > | R R 8 5 3 > | R R 5 3 4 > | R R 5 3 4 5 | R R _5 _c R > | R R _5 R >> > | R R 5 3 >> > | R R _5 R 2 > | 5 5 8 5 c > !co
A x-xx-xxx R R 8 c 5 3 | R R 8 c 5 > | R R 8 5 4 > | R R 8 5 4 3 | R R 8 7 6 > | R R 5 4 3 > | R R 5 4 3 2 | R R 5 3 2 > | R R _5 _5 _c > | R R R _c _5 > | 5 5 8 5 3 > !co
L x-xx-xxx R R 8 9 10 > | R R 8 10 9 > | R R 8 10 9 8 | R R 8 8 10 > | R R 8 9 8 > | R R 5 8 9 > | R R 5 c 8 > | R R _5 3 5 > | R R 5 6 8 > | 5 5 8 9 10 > !co
T x-xxxxxx R R 8 R 5 >> > | R R 8 R 3 >> > | R R 8 5 5 6 7 | R R 8 c 5 >> > | R R _5 R _5 >> > | R R _5 _5 _5 _6 _7 | R R 5 R 5 >> > | R R 5 R 3 >> >
H1 x-xx R R 8 | R R > | R R 5 | R R _5 | R >> > | R R 3
H2 x-xx R >> > | R 5 > | R 3 > | R 8 > | R 8 c | R _5 >

tune quicksilver 4-5: octaves for two beats, the low root on three, and on four a pickup whose last sixteenth runs into the next chord
S x=x=x=x=x=--x=xx R 8 R 8 R 5 >> > | R 8 R 8 R 3 >> > | R 8 R 8 R 5 c > | R 8 R 8 R 3 4 > | R 8 R 8 R 5 4 > | R _5 R _5 R _5 >> > | R 5 R 5 R 3 >> > | R 5 R 5 R 5 >> > | R _5 R _5 R _7 >> > | 5 8 5 8 5 3 >> > !co
A x=x=x=x=x=--xxx= R 8 R 8 8 8 c 5 | R 8 R 8 8 8 c > | R 8 R 8 R 5 4 3 | R 8 R 8 R 5 4 > | R 8 R 8 R b3 3 > | R _5 R _5 R _5 _c > | R 5 R 5 R 5 4 3 | R 5 R 5 R 5 4 > | R _5 R _5 R b3 3 > | R 8 R 8 R >>> >> > | R 5 R 5 R >>> >> > | 5 8 5 8 5 5 4 3 !co
S x=x=x=x=x=--x=xx R 8 R 8 R 5 >> > | R 8 R 8 R 3 >> > | R 8 R 8 R 5 c > | R 8 R 8 R 3 4 > | R 8 R 8 R 5 4 > | R _5 R _5 R _5 >> > | R 5 R 5 R 3 >> > | R 5 R 5 R 5 >> > | R _5 R _5 R _7 >> > | 5 8 5 8 5 3 >> > !co
C x=x=x=x=----x=x= R 8 R 8 5 > | R 8 R 8 >> > | R 8 R 8 3 > | R 8 R 8 c 5 | R _5 R _5 >> > | R 5 R 5 3 > | R 5 R 5 >> >
S x=x=x=x=x=--x=xx R 8 R 8 R 5 >> > | R 8 R 8 R 3 >> > | R 8 R 8 R 5 c > | R 8 R 8 R 3 4 > | R 8 R 8 R 5 4 > | R _5 R _5 R _5 >> > | R 5 R 5 R 3 >> > | R 5 R 5 R 5 >> > | R _5 R _5 R _7 >> > | 5 8 5 8 5 3 >> > !co
A x=x=x=x=x=--xxx= R 8 R 8 8 8 c > | R 8 R 8 8 8 c 5 | R 8 R 8 R 5 4 > | R 8 R 8 R 5 4 3 | R 8 R 8 R b3 3 > | R _5 R _5 R _5 _c > | R 5 R 5 R 5 4 3 | R 5 R 5 R 5 4 > | R _5 R _5 R b3 3 > | R 8 R 8 R >>> >> > | R 5 R 5 R >>> >> > | 5 8 5 8 5 5 4 3 !co
L x=x=x=x=x=--x=xx R 8 R 8 8 10 9 > | R 8 R 8 8 10 >> > | R 8 R 8 8 c 8 > | R 8 R 8 8 8 9 > | R 5 R 5 8 10 9 > | R 5 R 5 8 8 9 > | R 5 R 5 5 c 8 > | R _5 R _5 3 5 >> > | 5 8 5 8 8 10 9 > !co
T x=x=x=x=--x=x=xx R 8 R 8 3 5 >> > | R 8 R 8 5 5 >> > | R 8 R 8 5 >>> >> > | R 8 R 8 c 5 >> > | R 5 R 5 3 5 >> > | R 5 R 5 3 >>> >> > | R _5 R _5 _5 _5 >> > | R _5 R _5 _5 >>> >> >
H1 x=x=x=x= R 8 R > | R 8 R 8 | R 8 5 > | R 8 >> > | R 5 R > | R _5 R > | R 5 3 >
H2 x=--x=xx R 5 >> > | R 3 >> > | R 8 >> > | R R >> > | R _5 >> > | R 8 c >
`;
