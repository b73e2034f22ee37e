/** Steppers: tunes of eight bars (see the notation beside the books). */
export const STEPPERS_TUNES = `
tune gatepost 1-2: a pair of roots, the gap on two, two quarters that climb; a long root comes down in answer
S xx--x=x= R R 5 > | R R _5 > | R R 5 8 | R R 3 > | 8 8 5 > | R R _5 R
A x===x=x= 8 5 > | R _5 > | R 5 > | R 3 > | 8 5 R | 5 R > !co
S xx--x=x= R R 5 8 | R R 5 > | R R _5 > | R R 3 5 | 8 8 5 > | 5 5 R > !co
C xx--x=== R R R | R R _5 | R R 5 | 8 8 5 | R R 3 | 5 5 R !co
S xx--x=x= R R 5 > | R R _5 > | R R 5 8 | R R 3 > | 8 8 5 > | R R _5 R | 5 5 8 > !co
A x===x=x= 8 5 R | R _5 R | 8 5 > | R _5 > | R 5 > | 8 5 3 | 5 3 > !co
L xx--x=x= 8 8 5 > | R R 8 > | R R 8 5 | R R 5 8 | R R 5 > | R R _5 > | 8 8 10 >
T xx--xxx= R R 5 5 > | R R _5 _5 > | 8 8 5 5 > | R R 5 3 > | R R _5 R > | R R 3 5 >
H1 xx-- R R | 8 8
H2 x=x= R > | R 5 | R _5

tune hammer 1-2: one note hammered three times short, the fourth rings; the answer is one long note, the rim, and a step on
S x-x-x-x= R R R 5 | R R R > | R R R _5 | R R R 8 | R R R 3 | 8 8 8 5
A x===--x= R > | 8 5 | R 5 | R _5 | R 3 | 5 > !co
S x-x-x-x= R R R > | R R R 5 | R R R _5 | R R R 3 | 8 8 8 5 | 5 5 5 > !co
C x===--x= R R | R _5 | 8 5 | R 5 | 8 > | 5 R !co
S x-x-x-x= R R R 5 | R R R > | R R R _5 | R R R 8 | R R R 3 | 8 8 8 5 | 5 5 5 R !co
A x===--x= 8 > | R > | 8 5 | R _5 | R 3 | 5 > !co
L x-x-x-x= 8 8 8 5 | R R 8 > | R R 5 8 | 8 8 8 > | R R 5 > | R R _5 > | 8 8 10 8
T x-x-xxx= R R 5 5 > | R R _5 _5 > | 8 8 5 5 > | R R 5 R > | R R 3 5 > | R R _5 R >
H1 x-x= R R | R > | R 5 | R _5 | 8 >
H2 x-x= R > | R R | R 5

tune deepwell 1-2: a long root, the rim alone on three, and a pair that turns; the rim is not answered until the end
S x===--xx R 5 > | R _5 > | R R > | R 3 > | 8 5 > | R 5 R
A x=x=--xx 8 5 R > | R _5 R > | R 5 R > | 8 8 5 > | R 3 5 > | 5 R R > !co
S x===--xx R R > | R 5 > | R _5 > | R 5 3 | 8 5 > | 5 R > !co
C x===x=== R _5 | R R | R 5 | 8 5 | R 3 | 5 R !co
S x===--xx R 5 > | R _5 > | R R > | R 3 > | 8 5 > | R 5 R | 5 R > !co
A x=x=--xx 8 8 5 > | R R _5 > | R R 5 > | 8 5 R > | 8 5 3 > | 5 5 R > !co
L x===--xx 8 5 > | R 8 > | 8 8 5 | 8 10 > | R 5 8 | R 5 > | R _5 >
T x=x=x=xx R 5 R 5 > | R _5 R _5 > | 8 5 R 5 > | R R 5 R > | R 3 5 3 > | R 5 3 R >
H1 x=-- R | 8
H1 x=x= R > | R 5 | R _5
H2 x=xx R 5 > | R _5 > | R R > | R 3 >

tune lantern 1-2: a quarter, a pair and a quarter, then the lantern swings in the dark on four; only the last bar fills it
S x=xxx=-- R 5 5 R | R _5 _5 R | R 5 5 8 | R R R 5 | R 3 3 R | 8 5 5 R
A x=--x=xx 8 5 5 > | R _5 _5 > | R 5 R > | R _5 R > | R 3 5 > | 5 R R > !co
S x=xxx=-- R 5 5 8 | R 5 5 R | R _5 _5 R | R R R _5 | R 5 3 5 | 8 5 5 3 | 5 R R 5 !co
C x=x=x=== R 5 R | R _5 R | 8 5 R | R R _5 | R 3 R | 5 3 R !co
S x=xxx=-- R 5 5 R | R _5 _5 R | R 5 5 8 | R R R 5 | R 3 3 R | 8 5 5 R | 5 R R 5 !co
A x=--x=xx R 5 R > | R _5 R > | 8 5 5 > | R _5 _5 > | 8 5 3 > | R 3 R > | 5 3 R > !co
L x=xxx=-- 8 5 5 8 | R 8 8 5 | 8 8 8 5 | R 5 5 8 | 8 10 10 8 | R 5 5 R | R _5 _5 R
T x=xxx=x= R 5 5 R > | R _5 _5 R > | 8 5 5 R > | R 5 5 8 > | R 3 3 5 > | R 5 3 R >
H1 x=xx R 5 5 | R R > | R _5 _5 | R R R
H2 x=x= R > | R R | R 5
H2 x=-- R | 8

tune undertow 3-4: short root, a tone that drags over three, two steps down; the answer climbs out of a long root
S x-x=-xx= R 5 4 3 | R 3 2 > | R _7 _6 > | R 5 6 > | 8 6 5 > | R 3 2 R | 5 4 3 > !co
A x===xxx= R 2 3 > | R 3 4 > | R _6 _7 > | R _5 _6 > | 8 7 6 > | R 3 4 5 | 3 2 R > !co
S x-x=-xx= R 5 4 > | R 3 2 > | R _7 _6 _5 | R c 5 > | 8 7 6 5 | R 2 3 > | 5 6 5 > !co
C x-x=x=== R 3 R | R 2 R | R _7 _6 | R 2 3 | 8 6 5 | R _6 _5 | 5 3 2 !co
S x-x=-xx= R 5 4 3 | R 3 2 > | R _7 _6 > | R 5 6 > | 8 6 5 > | R 3 2 R | 5 4 3 > !co
A x===xxx= 8 7 6 > | R _7 _6 > | R 2 3 > | R 3 4 > | R 5 4 > | 5 4 3 > !co
L x-x=-xx= 8 9 10 > | 8 10 9 8 | R 5 6 8 | 8 9 8 > | 8 7 8 > | R 5 6 >
T x===xxxx R 5 4 >> > | R 3 2 >> > | 8 7 6 >> > | R _6 _7 >> > | R 3 4 >> > | R _7 _6 >> >
H1 x-x= R > | R 3 | R 2 | R _7 | 8 >
H2 xxx= R R > | R 2 3 | R 3 > | R _7 >

tune cellar 3-4: two roots on the stair, a held third over three and a step; the answer goes one stair further
S xx-x=x-- R R 3 2 | R R 2 3 | R R _7 _6 | R R 5 4 | 8 8 6 5 | R R _6 _5 | 3 3 2 R !co
A xx-x=xx= R R 5 4 > | R R 3 4 > | 8 8 7 6 > | R R _6 _7 > | R R _7 _6 > | R R 3 2 > | 5 5 4 3 > !co
S xx-x=x-- R R 2 3 | R R 3 2 | R R _7 R | R R 5 6 | 8 8 7 6 | R R _6 _5 | 5 5 4 3 !co
C xx-x==== R R R | R R _5 | R R 3 | 8 8 5 | R R 5 | 3 3 R !co
S xx-x=x-- R R 3 2 | R R 2 3 | R R _7 _6 | R R 5 4 | 8 8 6 5 | R R _6 _5 | 3 3 2 R !co
A xx-x=xx= 8 8 6 5 > | R R 5 6 > | R R 3 2 > | R R _7 _6 > | R R 2 3 > | 3 3 4 5 > !co
L xx-x=x-- 8 8 10 9 | 8 8 9 8 | R R 8 7 | R R 5 6 | 8 8 7 6 | 8 8 9 10
T xx-x=xxx R R 3 2 >> > | R R 5 4 >> > | 8 8 7 6 >> > | R R _6 _7 >> > | R R 3 4 >> > | R R _7 _6 >> >
H1 xx-x R R > | R R 2 | R R _7
H1 x=x= R > | R 3
H2 xx-- R R | 8 8
H2 xxx= R R > | R 3 > | R 2 3

tune longshadow 3-4: the root alone for three beats, two eighths that creep on; the answer is three slow footsteps
S x=====xx R 2 3 | R _7 _6 | R 3 2 | R >> > | 8 7 6 | 8 >> > | 3 4 5 !co
A x=--x=x= R 3 4 | R 5 4 | R 3 > | R _6 _7 | 8 7 6 | R _7 > | 5 4 3 !co
S x=====xx R 3 2 | R 2 3 | R _7 _6 | R >> > | 8 7 6 | R _6 _7 | 5 4 3 !co
C x===x=== R R | R _5 | R 3 | 8 5 | R 5 | 3 R !co
S x=====xx R 2 3 | R _7 _6 | R 3 2 | R >> > | 8 7 6 | 8 >> > | 3 4 5 !co
A x=--x=x= R 5 4 | R 3 4 | 8 6 5 | R _7 _6 | R 4 > | R 3 2 | 5 6 > !co
L x=====xx 8 9 10 | 8 10 9 | 8 7 8 | R 6 7 | 8 7 6 | 5 6 7 !co
T x===xxxx R 2 3 >> > | R _7 _6 >> > | R 3 2 >> > | 8 7 6 >> > | R _6 _7 >> > | R 5 4 >> >
H1 x=-- R | 8
H1 x=xx R >> > | R 2 3 | R _7 _6
H2 x=xx R >> > | R 2 3 | R 3 > | R 3 2

tune ironwork 4-5: one, a strike off the beat, three, and two short notes thrown on; the answer hangs over three
S x--xx-xx R _c R 3 4 | R 5 4 3 2 | R _c R >> > | R _5 R 2 3 | R 3 2 >> > | 8 c 8 6 5 | 5 4 3 >> > !co
A x-xx=-xx R 5 4 >> > | R 3 2 >> > | 8 c 5 >> > | R _c _5 >> > | R 2 3 >> > | R _6 _7 >> > | 5 4 3 >> > !co
S x--xx-xx R _c R 3 4 | R _c R >> > | R 5 6 >> > | R 5 4 3 2 | R _5 _6 >> > | 8 7 6 >> > | 3 2 R >> > !co
C x-xx==== R 2 R | R 3 R | R _c R | R _c _5 | R 2 3 | 8 c 5 | 5 3 R !co
S x--xx-xx R _c R 3 4 | R 5 4 3 2 | R _c R >> > | R _5 R 2 3 | R 3 2 >> > | 8 c 8 6 5 | 5 4 3 >> > !co
A x-xx=-xx 8 7 6 >> > | R 3 4 >> > | R _7 _6 >> > | R 5 6 >> > | R #4 5 >> > | 5 3 2 >> > !co
L x--xx-xx 8 c 8 10 9 | 8 8 10 9 8 | 8 9 10 >> > | 8 c 8 >> > | R 5 c >> > | 8 10 9 >> >
T x-xxxxxx R 5 4 3 >>> >> > | 8 7 6 5 >>> >> > | R _7 _6 _5 >>> >> > | R 3 2 R >>> >> > | R 2 3 R 5 >> > | R _c R 3 2 >> > | R 5 4 3 R >> >
H1 x--x R > | R _c | R 5 | R 3 | 8 c
H2 x-xx R >> > | R 3 > | R 2 3 | R _c >

tune latecomer 4-5: the second note comes before its beat and stands over it; every second bar the riff waits until two
S xx=xx=-- R 3 2 R | R 5 4 3 | R _c _5 _6 | R 2 3 5 | 8 7 6 5 | R _c R 2 | 5 4 3 2 !co
A --xxx=xx 5 4 3 >> > | R 2 3 >> > | 3 2 R >> > | 8 c 5 >> > | R _c _5 >> > | _5 _c R >> >
S xx=xx=-- R 3 4 3 | R 3 2 R | R 5 6 5 | R _c R 2 | R _6 _5 _6 | 8 c 5 6 | 5 6 5 3 !co
C xx=x==== R 3 R | R 2 R | R _c R | R 2 3 | R _c _5 | 8 c 5 | 5 3 2 !co
S xx=xx=-- R 3 2 R | R 5 4 3 | R _c _5 _6 | R 2 3 5 | 8 7 6 5 | R _c R 2 | 5 4 3 2 !co
A --xxx=xx 8 c 5 >> > | 3 4 5 >> > | 3 2 R >> > | R _7 _6 >> > | 5 6 5 >> > | b3 3 R >> >
L xx=xx=-- 8 10 9 8 | 8 9 10 8 | 8 c 8 9 | R 5 6 8 | 8 7 6 7 | 8 10 8 c | R 5 6 5
T xx=xxxxx R 3 2 R 5 >> > | R 5 4 3 2 >> > | R _7 _6 _5 _6 >> > | 8 7 6 5 4 >> > | R 2 3 4 5 >> > | R 3 2 R _c >> >
H1 xx=x R 3 > | R R > | R _c R | R 2 3
H2 x=xx R >> > | R 3 > | R 2 >
H2 xxx= R R > | R 2 3

tune floodgate 4-5: the octave bursts out on two, three is left to the rim, a pair runs off; closed by a long stop
S x-xx--xx R 8 c >> > | R 8 7 6 5 | R 5 4 >> > | R _5 _6 >> > | R 8 7 >> > | R _c R 2 3 | 8 c 5 >> >
A x-xxx=xx R 5 4 3 >> > | R 3 2 R >> > | 8 7 6 5 >> > | R _7 _6 _5 >> > | R 2 3 5 >> > | 5 4 3 R >> > !co
S x-xx--xx R 8 7 6 5 | R 8 c >> > | R 5 6 >> > | R _c _5 >> > | R 5 4 3 2 | R 2 3 >> > | 5 8 c >> > !co
C x-xxx=== R 3 2 R | R _7 _6 _5 | 8 7 6 5 | R 2 3 R | R 5 4 3 | R _5 _c R | 5 4 3 R !co
S x-xx--xx R 8 c >> > | R 8 7 6 5 | R 5 4 >> > | R _5 _6 >> > | R 8 7 >> > | R _c R 2 3 | 8 c 5 >> >
A x-xxx=xx 8 7 6 5 >> > | R 5 6 5 >> > | R 5 4 3 >> > | R _7 _6 _5 >> > | R 3 4 5 >> > | 5 6 5 3 >> > !co
L x-xx--xx 8 10 9 >> > | R 8 9 10 9 | R 8 10 >> > | R 8 9 >> > | 8 9 8 7 6 | R 5 6 >> >
T x-xxxxxx R 5 4 3 2 >> > | 8 7 6 5 4 >> > | R 3 2 R _c >> > | R _7 _6 _5 _6 >> > | R 2 3 4 5 >> > | R 5 4 3 >>> >> > | 8 7 6 5 >>> >> >
H1 x-xx R 8 c | R 5 > | R R > | R 2 3 | R _c >
H2 x-xx R >> > | R 3 > | R 8 c
`;
