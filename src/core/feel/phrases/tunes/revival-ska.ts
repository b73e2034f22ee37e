/** Revival ska: tunes of eight bars (see the notation beside the books). */
export const REVIVAL_SKA_TUNES = `
tune square-dance 1-2: two quarters and a bouncing pair climb the chord, four plain quarters come down it
S x=x=xxx= R 3 5 5 > | R 5 8 8 > | R 5 8 8 5 | R 3 5 5 3 | R R 5 5 > | R _5 R R > | R R 3 3 5 | 3 3 5 5 > !co | 5 5 8 8 > !co
A x=x=x=x= 8 5 3 > | 8 5 R > | R 5 3 > | R _5 R > | 8 5 3 R | R 5 R > | 5 3 R > !co | 8 5 8 > !co
S x=x=xxx= R 3 5 5 > | R 5 8 8 > | R 5 8 8 5 | R 3 5 5 3 | R R 5 5 > | R _5 R R > | R R 3 3 5 | 3 3 5 5 > !co | 5 5 8 8 > !co
C x=x---x= R 5 > | 8 5 > | R 3 > | R _5 > | R R > | 8 5 3 | R 5 3 | 5 3 > !co
S x=x=xxx= R 3 5 5 > | R 5 8 8 > | R 5 8 8 5 | R 3 5 5 3 | R R 5 5 > | R _5 R R > | R R 3 3 5 | 3 3 5 5 > !co | 5 5 8 8 > !co
A x=x=x=x= 8 5 3 > | 8 5 R > | R 5 3 > | R _5 R > | 8 5 3 R | R 5 R > | 5 3 R > !co | 8 5 8 > !co
L x=x=xxx= 8 10 8 8 5 | R 5 8 8 > | 8 10 8 8 > | R 3 5 5 8 | 8 5 8 8 > | 8 8 10 10 8 | R 5 8 8 5 | 5 5 8 8 10 !co
T x---x=x= R 5 > | R 5 3 | R 3 > | R _5 > | R 3 5 | 8 5 > | R R > | 8 5 3
H1 x=x= R 3 | R 5 | R > | 8 5 | R _5
H2 xxx= R R > | R 5 3 | R R 3 | R 5 > | R R 5 | R 3 >

tune downhill-cart 1-2: starts at the top and rolls down, a pair on four gives the push; every second bar climbs back on the same beat
S x=x=x=xx 8 5 3 R > | 8 5 R 5 > | R 5 3 R > | R _5 R _5 > | 8 5 3 5 > | 8 8 5 R > | 8 5 8 5 > | 5 3 R _5 > !co | 8 5 3 5 > !co
A x=x=x=xx R 3 5 3 > | R 5 8 5 > | R 3 5 8 > | R R 5 8 > | R 3 5 5 3 | R R 5 5 > | R _5 R 5 > | 3 5 8 5 > !co | 5 5 8 5 > !co
S x=x=x=xx 8 5 3 R > | 8 5 R 5 > | R 5 3 R > | R _5 R _5 > | 8 5 3 5 > | 8 8 5 R > | 8 5 8 5 > | 5 3 R _5 > !co | 8 5 3 5 > !co
C x=x---xx R 5 5 > | 8 5 R > | R _5 R > | R 3 R > | 8 5 3 > | R 5 5 3 | R R 5 > | 5 3 R > !co
S x=x=x=xx 8 5 3 R > | 8 5 R 5 > | R 5 3 R > | R _5 R _5 > | 8 5 3 5 > | 8 8 5 R > | 8 5 8 5 > | 5 3 R _5 > !co | 8 5 3 5 > !co
A x=x=x=xx R 3 5 3 > | R 5 8 5 > | R 3 5 8 > | R R 5 8 > | R 3 5 5 3 | R R 5 5 > | R _5 R 5 > | 3 5 8 5 > !co | 5 5 8 5 > !co
L x=x=x=xx 8 10 8 5 > | R 5 8 5 > | 8 5 8 5 > | R 3 5 8 > | 8 10 8 10 8 | R 5 8 10 8 | 8 8 10 8 5 | 5 8 10 8 > !co
T x---x=xx R 5 R > | R 3 5 > | R 5 5 3 | R 5 3 > | R _5 R > | R R 5 > | 8 5 3 > | 8 5 R >
H1 x=x= 8 5 | R 5 | R > | R 3 | R _5
H2 x=xx R 5 > | R 5 3 | R 3 > | R R > | 8 5 >

tune two-hop 1-2: one firm root, a hop on two, then three and four lead off; the hop goes up in one bar and down in the next
S x=xxx=x= R 3 3 5 > | R 5 5 8 > | R 5 5 8 5 | R 3 3 5 3 | R R R 5 > | R _5 _5 R > | R 3 3 5 8 | 3 5 5 8 > !co | 5 8 8 5 > !co
A x=xxx=x= 8 5 5 3 > | 8 5 5 R > | R 5 5 3 > | R _5 _5 R > | 8 5 5 3 R | R 5 5 R > | 8 8 8 5 > | 5 3 3 R > !co | 8 5 5 8 > !co
S x=xxx=x= R 3 3 5 > | R 5 5 8 > | R 5 5 8 5 | R 3 3 5 3 | R R R 5 > | R _5 _5 R > | R 3 3 5 8 | 3 5 5 8 > !co | 5 8 8 5 > !co
C x=xx--x= R 5 5 > | 8 5 5 > | R 3 3 > | R _5 _5 > | R R R > | R 5 5 3 | 8 5 5 3 | 5 3 3 > !co
S x=xxx=x= R 3 3 5 > | R 5 5 8 > | R 5 5 8 5 | R 3 3 5 3 | R R R 5 > | R _5 _5 R > | R 3 3 5 8 | 3 5 5 8 > !co | 5 8 8 5 > !co
A x=xxx=x= 8 5 5 3 > | 8 5 5 R > | R 5 5 3 > | R _5 _5 R > | 8 5 5 3 R | R 5 5 R > | 8 8 8 5 > | 5 3 3 R > !co | 8 5 5 8 > !co
L x=xxx=x= 8 10 10 8 > | R 5 5 8 > | 8 10 10 8 5 | R 5 5 8 5 | R 3 3 5 8 | 8 5 5 8 > | 8 8 8 10 8 | 5 8 8 10 8 !co
T x---x=xx R 5 R > | R 3 5 > | R 5 5 3 | R 5 3 > | R _5 R > | R R 5 > | 8 5 3 > | R 5 8 >
H1 x=xx R 3 3 | R 5 5 | R R > | 8 5 5 | R _5 _5
H2 x=x= R > | R 3 | R 5 | 8 > | R R

tune brass-steps 1-2: quarters stride up the chord; the answer holds its breath on two, bounces on three and comes down
S x=x=x=x= R 3 5 > | R 5 8 > | R 5 8 5 | R 3 5 8 | R R 5 > | R 3 5 3 | R _5 R > | 3 5 8 > !co | 5 8 5 > !co
A x=--xxx= 8 5 3 > | 8 5 5 > | R _5 _5 > | R 5 3 > | 8 5 5 R | R 5 5 > | R 5 5 R | 8 5 3 R | 5 3 R > !co | 8 5 5 > !co
S x=x=x=x= R 3 5 > | R 5 8 > | R 5 8 5 | R 3 5 8 | R R 5 > | R 3 5 3 | R _5 R > | 3 5 8 > !co | 5 8 5 > !co
C x=x---x= 8 5 > | R 5 > | R _5 > | R 3 > | R R > | 8 5 3 | R 5 3 | 5 3 > !co
S x=x=x=x= R 3 5 > | R 5 8 > | R 5 8 5 | R 3 5 8 | R R 5 > | R 3 5 3 | R _5 R > | 3 5 8 > !co | 5 8 5 > !co
A x=--xxx= 8 5 3 > | 8 5 5 > | R _5 _5 > | R 5 3 > | 8 5 5 R | R 5 5 > | R 5 5 R | 8 5 3 R | 5 3 R > !co | 8 5 5 > !co
L x=x=x=x= 8 10 8 > | R 5 8 > | 8 10 8 5 | R 5 8 5 | R 3 5 8 | 8 5 8 > | 8 8 10 8 | 5 8 10 8 !co
T x---xxx= R 3 5 > | R 5 5 > | R 5 5 3 | R R 5 > | R _5 R > | R 5 R > | 8 5 3 > | 8 5 5 >
H1 x=x= R 3 | R 5 | 8 5 | R > | R _5
H2 x=x= R > | R 3 | R 5 | 8 5 | R _5

tune town-stair 3-5: quarters step up the stair; coming down, the last quarter splits and leads on
S x=x=x=x= R 3 5 > | R 3 5 6 | R 5 6 > | R 3 5 8 | R 2 3 5 | R 3 4 > | R _5 _6 _7 | 3 4 5 > !co | 5 6 7 > !co
A x=x=x=xx 8 5 3 2 > | 8 6 5 4 > | 8 7 6 5 > | R _7 _6 _5 > | R 5 4 3 > | 8 6 5 >> > | R 5 3 >> > | 8 5 3 >> > | 5 4 3 2 > !co | 5 3 R >> > !co
S x=x=x=x= R 3 5 > | R 3 5 6 | R 5 6 > | R 3 5 8 | R 2 3 5 | R 3 4 > | R _5 _6 _7 | 3 4 5 > !co | 5 6 7 > !co
C x=x---xx 8 5 >> > | R 3 >> > | R _5 >> > | R 5 >> > | R 3 R > | 8 6 5 > | R 5 4 3 | 5 3 >> > !co
S x=x=x=x= R 3 5 > | R 3 5 6 | R 5 6 > | R 3 5 8 | R 2 3 5 | R 3 4 > | R _5 _6 _7 | 3 4 5 > !co | 5 6 7 > !co
A x=x=x=xx 8 5 3 2 > | 8 6 5 4 > | 8 7 6 5 > | R _7 _6 _5 > | R 5 4 3 > | 8 6 5 >> > | R 5 3 >> > | 8 5 3 >> > | 5 4 3 2 > !co | 5 3 R >> > !co
L x=x=x=x= 8 9 10 > | 8 10 9 > | 8 9 10 8 | R 5 6 8 | R 3 5 8 | 8 10 8 > | 8 7 8 > | 5 6 7 8 !co
T x---x=xx R 5 6 7 | R 3 >> > | R _5 _6 _7 | R 5 >> > | R 3 4 5 | 8 5 >> > | R 5 3 > | 8 7 6 5
H1 x=x= R 3 | R 5 | R > | R 2 | 8 7
H2 x=xx R >> > | R 3 > | R 5 > | R 5 3 | R R >

tune rebound 3-5: two quarters, a pair that springs to the sixth and back; the answer springs off the top and comes down
S x=x=xxx= R 3 5 6 5 | R 3 5 6 > | R 3 5 6 8 | R 3 4 5 > | R R 5 6 > | R R 3 5 > | R _5 _6 _7 > | 3 3 5 6 > !co | 5 5 6 7 > !co
A x=x=xxx= 8 5 6 5 3 | 8 5 6 5 > | 8 7 6 5 > | R _7 _6 _5 > | 8 6 5 4 3 | R 5 4 3 > | R 5 3 2 > | 8 6 5 3 > | 5 5 4 3 > !co | 8 8 7 6 > !co
S x=x=xxx= R 3 5 6 5 | R 3 5 6 > | R 3 5 6 8 | R 3 4 5 > | R R 5 6 > | R R 3 5 > | R _5 _6 _7 > | 3 3 5 6 > !co | 5 5 6 7 > !co
C x=x---xx 8 5 >> > | R 3 >> > | R _5 >> > | R 5 >> > | R 3 R > | 8 6 5 > | R 5 4 3 | 5 3 >> > !co
S x=x=xxx= R 3 5 6 5 | R 3 5 6 > | R 3 5 6 8 | R 3 4 5 > | R R 5 6 > | R R 3 5 > | R _5 _6 _7 > | 3 3 5 6 > !co | 5 5 6 7 > !co
A x=x=xxx= 8 5 6 5 3 | 8 5 6 5 > | 8 7 6 5 > | R _7 _6 _5 > | 8 6 5 4 3 | R 5 4 3 > | R 5 3 2 > | 8 6 5 3 > | 5 5 4 3 > !co | 8 8 7 6 > !co
L x=x=xxx= 8 10 9 10 8 | R 5 8 9 10 | 8 9 10 9 > | 8 10 9 8 > | R 3 5 6 8 | 8 8 9 10 > | R 5 8 9 8 | 5 6 8 9 10 !co
T x---xxxx R 5 5 6 7 | R 3 5 >> > | R 3 4 5 > | R _5 _5 _6 _7 | R 5 3 >> > | R R 5 >> > | 8 5 3 >> > | R 3 5 6 >
H1 x=x= R 3 | R 5 | R > | 8 6 | R 2
H2 xxx= R 3 > | R R > | R 5 3 | R 5 > | 8 7 > | R 2 3

tune hill-runner 3-5: a firm root, a run of three through two that climbs the scale, and four leads into the change; then the same run downhill
S x=xxx=x= R 2 3 5 > | R 2 3 5 6 | R 3 4 5 > | R 3 4 5 6 | R 5 6 8 > | R 3 4 5 3 | R _5 _6 _7 > | 3 4 5 6 > !co | 5 6 7 8 > !co
A x=xxx=x= 8 7 6 5 > | 8 6 5 3 > | R 5 4 3 > | R _7 _6 _5 > | 8 7 6 5 3 | 8 7 6 5 4 | R 3 2 R > | 8 6 5 3 2 | 5 4 3 R > !co | 8 6 5 8 > !co
S x=xxx=x= R 2 3 5 > | R 2 3 5 6 | R 3 4 5 > | R 3 4 5 6 | R 5 6 8 > | R 3 4 5 3 | R _5 _6 _7 > | 3 4 5 6 > !co | 5 6 7 8 > !co
C x=xx--x= 8 6 5 > | R 3 5 > | R 2 3 > | R _6 _5 > | 8 7 6 5 | R 5 3 > | R 4 3 > | 5 4 3 > !co
S x=xxx=x= R 2 3 5 > | R 2 3 5 6 | R 3 4 5 > | R 3 4 5 6 | R 5 6 8 > | R 3 4 5 3 | R _5 _6 _7 > | 3 4 5 6 > !co | 5 6 7 8 > !co
A x=xxx=x= 8 7 6 5 > | 8 6 5 3 > | R 5 4 3 > | R _7 _6 _5 > | 8 7 6 5 3 | 8 7 6 5 4 | R 3 2 R > | 8 6 5 3 2 | 5 4 3 R > !co | 8 6 5 8 > !co
L x=xxx=x= 8 9 10 8 > | 8 9 10 9 8 | R 5 6 8 9 | R 5 6 8 > | 8 10 9 8 > | 8 7 8 10 > | 8 9 10 8 5 | 5 6 7 8 > !co
T x---x=xx R 5 6 7 | R 3 >> > | R 3 4 5 | R _5 _6 _7 | R 5 >> > | 8 5 >> > | R 5 3 > | 8 7 6 5
H1 x=xx R 2 3 | R 3 > | 8 7 6 | R 5 > | R >> >
H2 x=x= R > | R 3 | R 5 | 8 > | R _7

tune pogo 3-5: pairs on two and on four, quarters between, jumping up the chord; plain quarters answer and fall
S x=xxx=xx R 3 4 5 3 > | R 3 3 5 6 5 | R 3 4 5 6 5 | R 3 3 5 >> > | R 5 5 8 5 > | R 3 4 5 6 > | R R R 5 >> > | R 2 3 5 >> > | 3 4 5 8 5 > !co | 5 6 7 8 >> > !co
A x=x=x=x= 8 6 5 > | 8 5 3 > | 8 5 3 2 | R 5 3 > | R _7 _6 _5 | 8 7 6 5 | R _7 _6 > | R 5 4 3 | 5 4 3 > !co | 8 6 5 > !co
S x=xxx=xx R 3 4 5 3 > | R 3 3 5 6 5 | R 3 4 5 6 5 | R 3 3 5 >> > | R 5 5 8 5 > | R 3 4 5 6 > | R R R 5 >> > | R 2 3 5 >> > | 3 4 5 8 5 > !co | 5 6 7 8 >> > !co
C x=xx--xx 8 5 5 >> > | R 3 3 >> > | R 5 5 >> > | R _5 _5 >> > | R R R >> > | 8 6 5 3 > | R 5 4 3 > | 5 3 3 >> > !co
S x=xxx=xx R 3 4 5 3 > | R 3 3 5 6 5 | R 3 4 5 6 5 | R 3 3 5 >> > | R 5 5 8 5 > | R 3 4 5 6 > | R R R 5 >> > | R 2 3 5 >> > | 3 4 5 8 5 > !co | 5 6 7 8 >> > !co
A x=x=x=x= 8 6 5 > | 8 5 3 > | 8 5 3 2 | R 5 3 > | R _7 _6 _5 | 8 7 6 5 | R _7 _6 > | R 5 4 3 | 5 4 3 > !co | 8 6 5 > !co
L x=xxx=xx 8 9 10 8 5 > | 8 9 10 8 9 10 | R 5 6 8 5 > | R 5 5 8 9 10 | 8 10 10 8 >> > | 8 10 9 8 5 > | R 3 5 8 >> > | 5 6 7 8 9 > !co
T x---x=xx R 5 6 7 | R 3 >> > | R 5 >> > | R _5 _6 _7 | R 3 4 5 | R 5 3 > | 8 5 >> > | 8 7 6 5
H1 x=xx R 3 4 | R 2 3 | R 3 > | 8 7 6 | R >> >
H2 x=xx R >> > | R 3 > | R 5 > | R 5 3 | 8 7 >
`;
