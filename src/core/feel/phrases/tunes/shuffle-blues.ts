/** Shuffle blues: tunes of eight bars (see the notation beside the books). */
export const SHUFFLE_BLUES_TUNES = `
tune box-and-kick 1-2: up the box with a swung pair on four in every bar, down the box in answer
S x=x=x=xx R 3 5 3 3 | R 3 c 3 3 | R 5 8 5 5 | R c 8 5 5 | R 3 5 3 > | R 5 8 5 > | R R 5 8 > | R 3 5 c 5 | R 3 5 8 8 | R _5 R _5 > | 3 5 c 5 > !co | 5 8 5 R > !co
A x=x=x=xx 8 5 3 R > | 8 c 3 R > | 8 5 R 5 > | 8 c R 5 > | R 5 3 R > | 8 c 5 3 > | R _5 R _5 > | 8 c 5 3 3 | R 5 R 5 > | 5 3 R _5 > !co | 8 5 3 5 5
S x=x=x=xx R 3 5 3 3 | R 3 c 3 3 | R 5 8 5 5 | R c 8 5 5 | R 3 5 3 > | R 5 8 5 > | R R 5 8 > | R 3 5 c 5 | R 3 5 8 8 | R _5 R _5 > | 3 5 c 5 > !co | 5 8 5 R > !co
C x=x=x=xx R 5 R 5 > | R c R 5 > | 8 5 R 5 > | 8 c R 5 > | 8 5 3 R > | R _5 R _5 > | R 3 R _5 > | R 5 3 R > | 8 c 5 3 > | 5 3 R _5 > !co
S x=x=x=xx R 3 5 3 3 | R 3 c 3 3 | R 5 8 5 5 | R c 8 5 5 | R 3 5 3 > | R 5 8 5 > | R R 5 8 > | R 3 5 c 5 | R 3 5 8 8 | R _5 R _5 > | 3 5 c 5 > !co | 5 8 5 R > !co
A x=x=x=xx 8 5 3 R > | 8 c 3 R > | 8 5 R 5 > | 8 c R 5 > | R 5 3 R > | 8 c 5 3 > | R _5 R _5 > | 8 c 5 3 3 | R 5 R 5 > | 5 3 R _5 > !co | 8 5 3 5 5
L x=x=x=xx R 5 8 5 5 | R c 8 5 5 | 8 10 8 5 5 | 8 10 8 c 5 | 8 10 8 5 > | R 5 8 5 > | R 3 5 8 8 | 8 5 8 5 > | R 5 c 8 8 | 5 8 10 8 8 !co
T x=x=x=xx R 3 5 3 > | R 3 c 3 > | R R 5 8 > | R R c 8 > | R 5 R 5 > | 8 5 R 5 > | R _5 R _5 > | 8 c 5 3 > | R 5 3 R > | 8 5 3 R >
H1 x=x= R 3 | R 5 | R > | 8 5 | R R
H2 x=xx R 5 > | R 3 3 | R 3 > | R 5 5 | R R >

tune level-road 1-2: four level quarters go up; coming down, the last one skips
S x=x=x=x= R 3 5 c | R c 8 5 | R 5 8 5 | R 3 c > | R 3 5 > | R 5 8 > | R 3 5 8 | R R 5 > | R 5 3 > | R 3 5 3 | 3 5 c > !co | 5 8 5 > !co
A x=x=x=xx 8 5 3 R > | 8 c 3 R > | 8 5 R 5 > | 8 c R 5 > | 8 c 5 3 3 | R 5 3 R > | R _5 R _5 > | 8 5 3 R R | R 3 5 R > | 8 c 5 3 > | 5 3 R _5 > !co | R 5 R 5 >
S x=x=x=x= R 3 5 c | R c 8 5 | R 5 8 5 | R 3 c > | R 3 5 > | R 5 8 > | R 3 5 8 | R R 5 > | R 5 3 > | R 3 5 3 | 3 5 c > !co | 5 8 5 > !co
C x=x=x=xx 8 5 3 R > | 8 c 3 R > | 8 5 R 5 > | 8 c R 5 > | 8 c 5 3 3 | R 5 3 R > | R _5 R _5 > | 8 5 3 R R | R 3 5 R > | 8 c 5 3 > | 5 3 R _5 > !co | R 5 R 5 >
S x=x=x=x= R 3 5 c | R c 8 5 | R 5 8 5 | R 3 c > | R 3 5 > | R 5 8 > | R 3 5 8 | R R 5 > | R 5 3 > | R 3 5 3 | 3 5 c > !co | 5 8 5 > !co
A x=x=x=xx 8 c 5 3 > | R c R 5 > | R 5 R 5 > | 8 c 3 R > | 8 5 3 R > | 8 5 R 5 > | 8 c 5 3 3 | R 5 3 R > | R _5 R _5 > | 8 5 3 R R | R 3 5 R > | 5 3 R _5 > !co
L x=x=x=x= R 5 8 5 | R c 8 5 | 8 10 8 5 | 8 10 8 c | R 5 8 > | 8 10 8 > | R 3 5 8 | 8 5 8 > | 8 c 8 > | 5 c 8 10 !co
T x=x=x=xx R 3 5 3 > | R 3 c 3 > | R 5 R 5 > | R c R 5 > | R R 5 8 > | 8 5 R 5 > | R _5 R _5 > | 8 c 5 3 > | R 5 3 R > | R 3 5 c >
H1 x=x= R 3 | R 5 | 8 5 | R > | R c
H2 x=x= R > | R 5 | R 3 | 8 > | R _5

tune hop-on-three 1-2: root and a tone, the swung pair on three, and four carries it over
S x=x=xxx= R 3 5 5 3 | R 3 c 5 3 | R 5 8 8 5 | R c 8 8 5 | R 3 5 5 > | R R 5 5 > | R 5 8 8 > | R 3 5 5 c | R 5 3 3 > | R _5 R R > | 3 5 c c 5 !co | 5 5 8 8 > !co
A x=x=xxx= 8 c 5 5 3 | 8 c R R > | 8 5 R R > | 8 c 3 3 > | 8 5 3 3 > | R 5 3 3 > | R _5 R R > | 8 5 3 3 R | 8 c 5 5 > | R 5 R R > | 5 3 R R > !co | 8 8 5 5 >
S x=x=xxx= R 3 5 5 3 | R 3 c 5 3 | R 5 8 8 5 | R c 8 8 5 | R 3 5 5 > | R R 5 5 > | R 5 8 8 > | R 3 5 5 c | R 5 3 3 > | R _5 R R > | 3 5 c c 5 !co | 5 5 8 8 > !co
C x=x=xxx= 8 5 R R > | 8 c R R > | R 5 R R > | R c R R > | R 3 R R > | R _5 R R > | R 5 3 3 R | 8 5 3 3 > | 8 c 5 5 > | 5 3 R R > !co
S x=x=xxx= R 3 5 5 3 | R 3 c 5 3 | R 5 8 8 5 | R c 8 8 5 | R 3 5 5 > | R R 5 5 > | R 5 8 8 > | R 3 5 5 c | R 5 3 3 > | R _5 R R > | 3 5 c c 5 !co | 5 5 8 8 > !co
A x=x=xxx= 8 5 3 3 > | 8 c 3 3 > | R 5 R R > | R c R R > | 8 c 5 5 3 | 8 5 R R > | R 5 3 3 > | R _5 R R > | 8 5 3 3 R | 8 c 5 5 > | 5 3 R R > !co | 8 8 5 5 >
L x=x=xxx= R 5 8 8 5 | R c 8 8 5 | 8 10 8 8 5 | 8 10 8 8 c | 8 10 8 8 > | R 5 8 8 > | R 3 5 5 8 | 8 8 10 10 8 | 8 5 8 8 > | 5 8 10 10 8 !co
T x=x=xxxx R R 5 5 R > | R R c 5 R > | R 3 5 5 3 > | R 3 c 5 3 > | R 5 3 3 R > | 8 5 R R 5 > | R _5 R R _5 > | 8 5 3 3 5 > | R 3 5 5 c > | R 5 8 8 5 >
H1 x=x= R 3 | R 5 | 8 5 | R > | R _5
H2 xxx= R R > | R R 5 | R R 3 | R 3 > | R 5 >

tune down-the-line 1-2: first down from the octave, then up with a skip on two, in turn to the end
S x=x=x=x= 8 5 3 > | 8 c 3 > | 8 5 R > | 8 c R > | 8 c 5 3 | 8 5 3 R | R 5 3 > | 8 c 5 > | R _5 R > | R 5 R > | 5 3 R > !co | c 5 3 > !co
A x=xxx=x= R 3 3 5 > | R 3 3 c > | R 5 5 8 > | R c 5 8 > | R 3 3 5 3 | R R R 5 > | R 3 3 5 c | R 5 5 8 5 | R 5 5 3 > | R _5 _5 R > | 3 5 5 c > !co | R 5 5 R >
S x=x=x=x= 8 5 3 > | 8 c 3 > | 8 5 R > | 8 c R > | 8 c 5 3 | 8 5 3 R | R 5 3 > | 8 c 5 > | R _5 R > | R 5 R > | 5 3 R > !co | c 5 3 > !co
C x=xxx=x= R 3 3 5 > | R 3 3 c > | R 5 5 8 > | R c 5 8 > | R 3 3 5 3 | R R R 5 > | R 3 3 5 c | R 5 5 8 5 | R 5 5 3 > | R _5 _5 R > | 3 5 5 c > !co | R 5 5 R >
S x=x=x=x= 8 5 3 > | 8 c 3 > | 8 5 R > | 8 c R > | 8 c 5 3 | 8 5 3 R | R 5 3 > | 8 c 5 > | R _5 R > | R 5 R > | 5 3 R > !co | c 5 3 > !co
A x=xxx=x= R 5 5 3 > | R c 5 3 > | R 5 5 R > | R c 5 R > | R 3 3 5 > | R 5 5 8 > | R 3 3 5 3 | R R R 5 > | R 3 3 5 c | R 5 5 8 5 | R _5 _5 R > | 3 5 5 c > !co
L x=x=x=x= 8 10 8 5 | 8 10 8 c | 8 5 8 > | 8 10 8 > | R 5 8 > | R 5 8 5 | 8 c 8 > | R 3 5 8 | 5 c 8 10 !co
T x=xxx=x= R 3 3 5 > | R 3 3 c > | R 5 5 R > | R c 5 R > | 8 5 5 R > | R R R 5 > | R _5 _5 R > | 8 c c 5 > | R 5 5 3 > | R 5 5 8 >
H1 x=x= 8 5 | R 5 | R 3 | R > | 8 c
H2 x=x= R > | R 5 | R 3 | 8 > | R _5

tune sixth-and-back 3-5: up the box to its sixth in quarters, back down with the last quarter split
S x=x=x=x= R 3 5 6 | R 3 5 > | R 2 3 5 | R 5 6 7 | R 2 3 > | R 5 6 > | R 3 4 > | R 3 5 c | 3 5 6 > !co | 5 6 7 > !co
A x=x=x=xx 8 6 5 3 > | 8 7 6 5 > | 8 6 5 4 > | R 5 3 2 > | 8 6 5 >> > | 8 5 3 >> > | R _7 _6 _5 > | R 5 4 3 > | 7 6 5 3 > !co | R 5 4 >> >
S x=x=x=x= R 3 5 6 | R 3 5 > | R 2 3 5 | R 5 6 7 | R 2 3 > | R 5 6 > | R 3 4 > | R 3 5 c | 3 5 6 > !co | 5 6 7 > !co
C x=x=x=xx 8 6 5 3 R | R 5 3 R > | 8 5 3 >> > | R 5 R >> > | R _7 _6 >> > | 8 c 5 >> > | R 3 R >> > | c 5 3 R > !co
S x=x=x=x= R 3 5 6 | R 3 5 > | R 2 3 5 | R 5 6 7 | R 2 3 > | R 5 6 > | R 3 4 > | R 3 5 c | 3 5 6 > !co | 5 6 7 > !co
A x=x=x=xx 8 7 6 5 > | R 5 3 2 > | 8 6 5 3 > | 8 6 5 4 > | 8 6 5 >> > | 8 5 3 >> > | R _7 _6 _5 > | R 5 4 3 > | 7 6 5 3 > !co | R 5 4 >> >
L x=x=x=x= 8 10 9 > | R 5 c 8 | 8 9 10 > | R 5 6 8 | 8 10 8 > | R 3 5 8 | 8 c 8 > | 5 6 7 8 !co
T x=x=x=xx R 3 5 6 > | R 3 5 >> > | R 5 6 7 > | 8 7 6 5 > | R _5 _6 _7 > | R 5 4 >> > | 8 5 3 >> > | R 2 3 >> >
H1 x=x= R 3 | R 5 | R > | 8 c | R 2
H2 x=xx R >> > | R 3 > | R 5 > | R 3 5 | R 5 6

tune leaning-three 3-5: two quarters, the swung pair on three, four leads; rising by steps, falling through the seventh
S x=x=xxx= R 3 5 6 5 | R 3 4 5 > | R 3 5 6 > | R 3 5 6 7 | R 2 3 4 > | R 5 6 7 > | R 3 5 5 6 | R _5 _6 _7 > | 3 5 6 7 > !co | 5 6 7 8 > !co
A x=x=xxx= 8 7 6 5 3 | 8 7 6 5 > | 8 6 5 3 > | R 5 4 3 > | R _7 _6 _5 > | 8 5 4 3 > | 8 6 5 4 3 | R 5 3 2 > | 7 6 5 3 > !co | 5 4 3 R > !co
S x=x=xxx= R 3 5 6 5 | R 3 4 5 > | R 3 5 6 > | R 3 5 6 7 | R 2 3 4 > | R 5 6 7 > | R 3 5 5 6 | R _5 _6 _7 > | 3 5 6 7 > !co | 5 6 7 8 > !co
C x=x=xxx= 8 6 5 3 R | R 5 3 R > | 8 5 3 R > | R 3 2 R > | R _7 _6 _5 > | R 5 4 3 > | 8 7 6 5 > | c 5 4 3 > !co
S x=x=xxx= R 3 5 6 5 | R 3 4 5 > | R 3 5 6 > | R 3 5 6 7 | R 2 3 4 > | R 5 6 7 > | R 3 5 5 6 | R _5 _6 _7 > | 3 5 6 7 > !co | 5 6 7 8 > !co
A x=x=xxx= 8 6 5 3 > | R 5 4 3 > | 8 7 6 5 3 | 8 7 6 5 > | R _7 _6 _5 > | 8 5 4 3 > | 8 6 5 4 3 | R 5 3 2 > | 7 6 5 3 > !co | 5 4 3 R > !co
L x=x=xxx= 8 10 9 8 5 | 8 9 10 8 > | R 5 6 7 8 | R 5 c 8 > | 8 10 9 8 > | R 3 5 6 8 | 8 c 8 9 > | 5 6 7 8 10 !co
T x=x=xxxx R 3 5 6 >> > | R 3 4 5 >> > | R 5 6 7 >> > | 8 7 6 5 >> > | R 2 3 5 >> > | R 5 4 3 >> > | R _5 _6 _7 >> > | 8 6 5 3 >> >
H1 x=x= R 3 | R 5 | R > | 8 c | R 2
H2 xxx= R 3 > | R R > | R 3 5 | R 5 > | 8 c >

tune seventh-slide 3-5: down from the octave through the seventh in quarters, up again with a skip on two
S x=x=x=x= 8 7 6 5 | 8 c 5 3 | 8 7 6 > | 8 6 5 3 | R 5 3 > | 8 6 5 > | R _7 _6 > | R 5 4 > | 7 6 5 > !co | 5 4 3 > !co
A x=xxx=x= R 3 3 5 6 | R 2 3 5 > | R 3 4 5 > | R 3 3 5 c | R 3 5 6 > | R 5 6 7 > | R 2 3 4 > | R 5 5 3 > | 3 5 5 6 > !co | 5 6 6 7 > !co
S x=x=x=x= 8 7 6 5 | 8 c 5 3 | 8 7 6 > | 8 6 5 3 | R 5 3 > | 8 6 5 > | R _7 _6 > | R 5 4 > | 7 6 5 > !co | 5 4 3 > !co
C x=xxx=x= R 5 5 3 > | R 3 3 R > | R 5 4 3 > | 8 5 5 3 R | 8 7 6 5 > | R _7 _7 _6 > | R 5 5 R > | c 5 5 3 > !co
S x=x=x=x= 8 7 6 5 | 8 c 5 3 | 8 7 6 > | 8 6 5 3 | R 5 3 > | 8 6 5 > | R _7 _6 > | R 5 4 > | 7 6 5 > !co | 5 4 3 > !co
A x=xxx=x= R 2 3 5 > | R 3 5 6 > | R 3 3 5 6 | R 3 4 5 > | R 3 3 5 c | R 5 6 7 > | R 2 3 4 > | R 5 5 3 > | 3 5 5 6 > !co | 5 6 6 7 > !co
L x=x=x=x= 8 10 9 > | 8 9 10 > | 8 c 8 > | R 5 c 8 | R 5 6 8 | 8 10 8 5 | 8 9 8 c | 5 6 7 8 !co
T x=xxx=xx R 3 3 5 6 > | R 3 4 5 >> > | R 2 3 5 >> > | R 5 6 7 >> > | 8 7 6 5 >> > | R 5 4 3 >> > | R _5 _5 _6 _7 > | 8 6 5 3 >> >
H1 x=x= R 3 | 8 c | R > | R 5 | R _7
H2 x=x= R > | R 3 | R 5 | 8 c | R 6

tune mill-wheel 3-5: four quarters sink below the root, four climb above it; the last one of every second bar skips over the joint
S x=x=x=x= R _7 _6 _5 | R c 5 3 | R _6 _5 > | 8 c 6 5 | R _7 _6 > | 8 6 5 3 | R 5 4 3 | 8 c 5 > | 8 6 5 > | R 5 3 > | R _5 _6 _7 | R 5 4 > | 8 5 3 R | 5 4 3 R !co | c 6 5 3 !co
A x=x=x=xx R 3 5 6 > | R 3 5 >> > | R 2 3 5 > | R 3 4 5 > | R 3 5 6 5 | R 2 3 >> > | R 5 6 7 > | R _5 _6 _7 > | R 5 3 >> > | 8 6 5 >> > | 8 5 3 >> > | R 3 5 c > | 3 5 6 >> > !co | 5 6 c >> > !co
S x=x=x=x= R _7 _6 _5 | R c 5 3 | R _6 _5 > | 8 c 6 5 | R _7 _6 > | 8 6 5 3 | R 5 4 3 | 8 c 5 > | 8 6 5 > | R 5 3 > | R _5 _6 _7 | R 5 4 > | 8 5 3 R | 5 4 3 R !co | c 6 5 3 !co
C x=x=x=xx R 3 5 3 > | R 5 3 >> > | R 3 R >> > | R _5 _6 >> > | 8 5 3 >> > | 8 6 5 3 > | R 2 3 R > | R _6 _5 >> > | R 5 3 R > | 5 4 3 R > !co | c 5 3 >> > !co
S x=x=x=x= R _7 _6 _5 | R c 5 3 | R _6 _5 > | 8 c 6 5 | R _7 _6 > | 8 6 5 3 | R 5 4 3 | 8 c 5 > | 8 6 5 > | R 5 3 > | R _5 _6 _7 | R 5 4 > | 8 5 3 R | 5 4 3 R !co | c 6 5 3 !co
A x=x=x=xx R 3 5 >> > | R 3 5 6 > | R 2 3 5 > | R 3 4 5 > | R 3 5 6 5 | R 2 3 >> > | R 5 6 7 > | R _5 _6 _7 > | R 5 3 >> > | 8 6 5 >> > | 8 5 3 >> > | R 3 5 c > | 3 5 6 >> > !co | 5 6 c >> > !co
L x=x=x=x= 8 9 10 > | 8 10 9 8 | R 5 6 8 | 8 c 8 > | R 3 5 8 | 8 10 8 > | 8 9 8 > | R 5 c 8 | 5 6 8 10 !co | 3 5 6 8 !co
T x=x=x=xx R 3 5 6 > | R 3 5 >> > | R 5 6 7 > | R 2 3 >> > | R _5 _6 _7 > | 8 5 3 >> > | 8 6 5 >> > | R 3 4 5 > | R 5 5 >> > | R R 3 >> >
H1 x=x= R 3 | R 5 | R > | R _7 | 8 c | R 2
H2 x=x= R > | R 3 | R 5 | 8 > | R _7 | 8 c
H2 x=xx R >> > | R 3 > | R 5 > | 8 6 5 | R 3 5

tune brick-kiln 3-5: the root said twice and the box opens over it; the answer says the top twice, comes down, and skips on four
S x=x=x=x= R R 3 5 | R R 5 6 | R R 3 > | R R 5 c | R R 3 4 | R R 2 3 | R R 5 > | R R 5 3 | R R _5 _6 | R R _7 _6 | R R 6 5 | 8 8 6 5 | R R b3 3 | 3 3 5 6 !co | 5 5 4 3 !co
A x=x=x=xx 8 8 6 5 > | 8 8 c 5 > | 8 8 5 3 > | 8 8 6 >> > | 8 8 5 >> > | R R 5 3 > | R R 5 >> > | R R _7 _6 > | R R _6 _5 > | R R 3 >> > | R R 5 4 3 | 8 8 c 6 5 | 5 5 4 3 > !co | 5 5 3 >> > !co
S x=x=x=x= R R 3 5 | R R 5 6 | R R 3 > | R R 5 c | R R 3 4 | R R 2 3 | R R 5 > | R R 5 3 | R R _5 _6 | R R _7 _6 | R R 6 5 | 8 8 6 5 | R R b3 3 | 3 3 5 6 !co | 5 5 4 3 !co
C x=x=x=xx R R 3 R > | R R _5 R > | 8 8 5 3 R | R R 5 3 R | R R _6 _5 > | R R _7 R > | R R 3 >> > | 8 8 5 >> > | R R R >> > | 5 5 3 R > !co | 5 5 4 3 R !co
S x=x=x=x= R R 3 5 | R R 5 6 | R R 3 > | R R 5 c | R R 3 4 | R R 2 3 | R R 5 > | R R 5 3 | R R _5 _6 | R R _7 _6 | R R 6 5 | 8 8 6 5 | R R b3 3 | 3 3 5 6 !co | 5 5 4 3 !co
A x=x=x=xx 8 8 c 5 > | 8 8 6 5 > | 8 8 5 3 > | 8 8 6 >> > | 8 8 5 >> > | R R 5 3 > | R R 5 >> > | R R _7 _6 > | R R _6 _5 > | R R 3 >> > | R R 5 4 3 | 8 8 c 6 5 | 5 5 4 3 > !co | 5 5 3 >> > !co
L x=x=x=x= 8 8 9 10 | 8 8 10 9 | 8 8 10 8 | R R 5 8 | 8 8 c 8 | R R 6 8 | 8 8 10 > | 8 8 9 > | 5 5 6 8 !co | 3 3 5 8 !co
T x=x=x=xx R R 5 6 7 | R R 3 5 > | R R 3 >> > | R R _5 _6 _7 | R R 5 >> > | R R 2 3 > | 8 8 6 5 > | 8 8 5 >> > | R R 5 4 > | R R 3 4 5
H1 x=x= R R | R 3 | R > | R 5 | 8 8 | R _7
H2 x=x= R > | R R | R 3 | R 5 | 8 c
H2 x=xx R >> > | R 3 > | R R > | 8 6 5 | R 5 >
`;
