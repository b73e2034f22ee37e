/** Shuffle blues: tunes of eight bars (see the notation beside the books). */
export const SHUFFLE_BLUES_TUNES = `
tune box-and-kick 1-2: up the box with a swung pair on four, down the box in level quarters, and a fuller bar where the form turns
S x=x=x=xx R 3 5 c 5 | R 3 5 3 > | R 3 5 3 5 | R 5 8 5 > | R c 5 3 > | R R 5 8 5 | R R 5 5 > | R 5 8 8 5 | 3 5 c 5 3 !co | 5 8 5 R > !co
A x=x=x=x= 8 c 5 3 | 8 5 3 > | 8 c 5 > | R 3 5 3 | R 3 5 > | R 5 8 5 | 8 5 R > | R R 5 > | R _5 R 5 | c 5 3 R !co | 5 8 5 R !co
S x=x=x=xx R 3 5 c 5 | R 3 5 3 > | R 3 5 3 5 | R 5 8 5 > | R c 5 3 > | R R 5 8 5 | R R 5 5 > | R 5 8 8 5 | 3 5 c 5 3 !co | 5 8 5 R > !co
C x=xxx=xx R 3 5 c 5 > | 8 c 5 3 5 > | R 3 5 3 R > | R R R _5 R > | R R R 5 R > | R 3 3 5 3 > | 8 8 5 3 R > | R R 5 8 5 > | 5 c 5 3 R > !co
S x=x=x=xx R 3 5 c 5 | R 3 5 3 > | R 3 5 3 5 | R 5 8 5 > | R c 5 3 > | R R 5 8 5 | R R 5 5 > | R 5 8 8 5 | 3 5 c 5 3 !co | 5 8 5 R > !co
A x=x=x=x= 8 5 3 > | 8 c 5 > | 8 c 5 3 | R 3 5 3 | R 3 5 > | R 5 8 5 | 8 5 R > | R R 5 > | R _5 R 5 | c 5 3 R !co | 5 8 5 R !co
L x=x=x=x= R 5 8 c | R 3 5 8 | 8 10 8 c | R 5 8 5 | 8 10 8 5 | 8 10 8 > | R 8 8 5 | R c 8 5 | 5 8 10 8 !co
T x=xxx=xx R 3 5 c 5 > | R R 3 5 3 > | 8 c 5 3 5 > | R R R _5 R > | R R R 5 R > | R 3 3 5 5 > | R 5 5 3 R > | R R 5 8 5 > | 8 5 5 3 R >
H1 x=x= R 3 | R 5 | R > | 8 c | R c
H1 x=xx R 5 > | R c 5 | R R > | R 3 >
H2 x=xx R 5 > | R 3 5 | R 5 3 | R c 5 | R R > | R 3 > | R 5 5

tune level-road 1-2: four level quarters up to the seventh; coming down, the last one skips into the change
S x=x=x=x= R 3 5 c | R 3 5 3 | R 3 5 > | R c 5 3 | R 5 8 5 | R 5 8 > | R R 5 5 | 3 5 c 5 !co | 5 8 5 > !co
A x=x=x=xx 8 c 5 3 > | 8 5 3 R > | 8 c 5 >> > | R 3 5 3 > | 8 c 5 3 5 | 8 5 R 5 > | R R 5 5 > | R _5 R 5 > | c 5 3 R > !co | 5 3 R _5 > !co
S x=x=x=x= R 3 5 c | R 3 5 3 | R 3 5 > | R c 5 3 | R 5 8 5 | R 5 8 > | R R 5 5 | 3 5 c 5 !co | 5 8 5 > !co
C x=x=xxx= R 3 5 5 > | 8 c 5 3 > | R 3 5 c 5 | 8 5 3 R > | R R 5 5 > | R 5 R R > | R 3 3 5 3 | c 5 3 R > !co
S x=x=x=x= R 3 5 c | R 3 5 3 | R 3 5 > | R c 5 3 | R 5 8 5 | R 5 8 > | R R 5 5 | 3 5 c 5 !co | 5 8 5 > !co
A x=x=x=xx 8 5 3 R > | 8 c 5 >> > | 8 c 5 3 > | R 3 5 3 > | 8 c 5 3 5 | 8 5 R 5 > | R R 5 5 > | R _5 R 5 > | c 5 3 R > !co | 5 3 R _5 > !co
L x=x=x=x= R 3 5 8 | R 5 8 c | 8 10 8 c | R 5 8 5 | 8 10 8 5 | 8 10 8 > | R 5 8 > | 5 c 8 10 !co
T x=x=x=xx R 3 5 3 > | R 3 5 c > | R c 5 3 > | 8 c 5 3 > | R R 5 5 > | R R 3 5 > | R 5 8 5 > | R 3 5 >> > | 8 5 3 R >
H1 x=x= R 3 | R 5 | 8 c | R > | R c | 8 5
H2 x=xx R 5 > | R 3 5 | R 5 3 | R c 5 | R R > | R 3 > | R 5 5

tune hop-on-three 1-2: root and third, a swung pair hops on three and four steps on; level quarters come down
S x=x=xxx= R 3 5 5 3 | R 3 5 c 5 | R 3 5 3 > | R 3 5 5 > | R 5 8 8 5 | R R 3 5 > | R R 5 5 > | R R 5 8 5 | 3 5 c c 5 !co | 5 5 8 8 > !co
A x=x=x=x= 8 c 5 3 | 8 c 5 > | 8 5 3 > | R 3 5 > | R 5 8 5 | R R 5 > | 8 5 R > | R _5 R 5 | c 5 3 > !co | 5 3 R > !co | 8 5 5 >
S x=x=xxx= R 3 5 5 3 | R 3 5 c 5 | R 3 5 3 > | R 3 5 5 > | R 5 8 8 5 | R R 3 5 > | R R 5 5 > | R R 5 8 5 | 3 5 c c 5 !co | 5 5 8 8 > !co
C x=x=x=xx 8 c 5 3 > | R 3 5 3 > | R 3 5 c 5 | 8 5 3 R > | R R 5 5 > | R 5 R 5 > | R c 5 3 > | c 5 3 R > !co
S x=x=xxx= R 3 5 5 3 | R 3 5 c 5 | R 3 5 3 > | R 3 5 5 > | R 5 8 8 5 | R R 3 5 > | R R 5 5 > | R R 5 8 5 | 3 5 c c 5 !co | 5 5 8 8 > !co
A x=x=x=x= 8 c 5 > | 8 5 3 > | 8 c 5 3 | R 3 5 > | R 5 8 5 | R R 5 > | 8 5 R > | R _5 R 5 | c 5 3 > !co | 5 3 R > !co | 8 5 5 >
L x=x=xxx= R 3 5 5 8 | R 5 8 8 c | 8 10 8 8 c | R 5 8 8 5 | 8 10 8 8 5 | 8 10 8 8 > | R R 5 5 8 | 5 8 10 10 8 !co
T x=x=xxxx R 3 5 5 3 > | R 3 5 c 5 > | 8 c 5 5 3 > | R R 5 5 R > | R R 5 8 5 > | R 3 5 3 >> > | R R 3 3 5 > | 8 8 5 3 R >
H1 x=x= R 3 | R 5 | R > | 8 c | R c
H2 x=xx R 5 > | R 3 5 | R 5 3 | R c 5 | R R > | R 3 > | R 5 5

tune down-the-line 1-2: down from the octave through the seventh, up again with a skip on two; a pair on four at the ends
S x=x=x=x= 8 c 5 3 | 8 c 5 > | 8 5 3 > | 8 c 3 > | R 5 8 5 | 8 5 R > | R R 5 > | R _5 R 5 | c 5 3 R !co | 5 3 R > !co | 8 8 5 >
A x=xxx=x= R 3 3 5 3 | R 3 3 5 > | R R 3 5 3 | R 3 5 c 5 | R R 3 5 > | R 3 5 8 5 | R R R _5 _5 | R R R 5 > | R R 5 8 5 | R 5 5 8 > | 3 5 5 c > !co | R 3 3 c 5
S x=x=x=x= 8 c 5 3 | 8 c 5 > | 8 5 3 > | 8 c 3 > | R 5 8 5 | 8 5 R > | R R 5 > | R _5 R 5 | c 5 3 R !co | 5 3 R > !co | 8 8 5 >
C x=x=x=xx 8 c 5 3 > | R 3 5 3 > | 8 5 3 R > | R 3 5 c 5 | R R 5 5 > | R 5 8 5 > | R c 5 3 > | c 5 3 R > !co
S x=x=x=x= 8 c 5 3 | 8 c 5 > | 8 5 3 > | 8 c 3 > | R 5 8 5 | 8 5 R > | R R 5 > | R _5 R 5 | c 5 3 R !co | 5 3 R > !co | 8 8 5 >
A x=xxx=x= R 3 3 5 > | R R 3 5 3 | R 3 3 5 3 | R 3 5 c 5 | R R 3 5 > | R 3 5 8 5 | R R R _5 _5 | R R R 5 > | R R 5 8 5 | R 5 5 8 > | 3 5 5 c > !co | R 3 3 c 5
L x=x=x=x= 8 10 8 c | R 5 8 c | R 3 5 8 | 8 10 8 5 | R 5 8 5 | 8 10 8 > | R 5 8 > | 5 c 8 10 !co
T x=xxx=xx R 3 3 5 3 > | R R 3 5 3 > | R 3 5 c 5 > | 8 c c 5 3 > | R R R _5 R > | R R R 5 R > | R R 5 8 5 > | R 3 3 5 5 > | R 5 5 3 R >
H1 x=x= 8 c | R 3 | R 5 | R > | R c
H2 x=xx R 5 > | R 3 5 | R 5 3 | R c 5 | R R > | R 3 > | R 5 5

tune sixth-and-back 3-5: up the box to its sixth in quarters, down from the octave or the seventh, the last quarter split
S x=x=x=x= R 3 5 6 | R 3 5 > | R 3 6 5 | R 3 5 c | R b3 3 5 | R 3 6 > | R 2 3 5 | R 5 6 > | R 3 c 6 | 3 5 6 c !co | 3 5 6 > !co
A x=x=x=xx 8 c 6 5 > | 8 6 5 3 > | 8 c 5 >> > | 8 c 6 5 3 | R 3 5 6 5 | 8 6 5 >> > | R 3 5 >> > | R _7 _6 _5 > | R 5 4 3 > | c 6 5 3 R !co | c 6 5 3 > !co
S x=x=x=x= R 3 5 6 | R 3 5 > | R 3 6 5 | R 3 5 c | R b3 3 5 | R 3 6 > | R 2 3 5 | R 5 6 > | R 3 c 6 | 3 5 6 c !co | 3 5 6 > !co
C x=x=xxx= 8 c 6 5 > | R 3 5 6 5 | 8 6 5 3 > | R 3 4 #4 5 | R c 6 5 > | R 3 5 3 > | R _7 _6 _5 > | R 5 4 3 > | c 6 5 3 R !co
S x=x=x=x= R 3 5 6 | R 3 5 > | R 3 6 5 | R 3 5 c | R b3 3 5 | R 3 6 > | R 2 3 5 | R 5 6 > | R 3 c 6 | 3 5 6 c !co | 3 5 6 > !co
A x=x=x=xx 8 6 5 3 > | 8 c 5 >> > | 8 c 6 5 > | 8 c 6 5 3 | R 3 5 6 5 | 8 6 5 >> > | R 3 5 >> > | R _7 _6 _5 > | R 5 4 3 > | c 6 5 3 R !co | c 6 5 3 > !co
L x=x=x=x= R 3 5 8 | R 5 8 c | 8 10 8 c | 8 10 9 > | R 5 6 8 | 8 9 10 > | R 5 c 8 | 8 10 8 > | 5 6 c 8 !co
T x=x=xxxx R 3 5 6 5 > | 8 c 6 5 3 > | R 3 5 6 >> > | R 3 4 #4 5 > | 8 6 5 3 5 > | R 3 5 3 >> > | R 5 6 7 >> > | R _7 _6 _5 >> >
H1 x=x= R 3 | R 5 | R > | 8 c | R 2 | R c
H1 x=xx R c 5 | R 3 > | R 5 > | R >> >
H2 x=xx R 5 > | R 5 3 | R c 5 | R 3 5 | R >> > | R 6 5 | R 3 >

tune kick-box 3-5: the box with a swung pair on four that falls back from its sixth, then level quarters down through the seventh
S x=x=x=xx R 3 5 6 5 | R 3 5 6 > | R 3 6 5 3 | R 3 5 c 6 | R b3 3 5 6 | R 3 5 >> > | R 3 6 5 > | R 5 6 5 > | 3 5 6 5 > !co | 3 5 6 c 6 !co
A x=x=x=x= 8 c 6 5 | 8 c 5 > | 8 6 5 > | 8 c 6 > | 8 6 5 3 | R 3 5 > | R _7 _6 _5 | R _7 _6 > | R 5 4 > | c 6 5 3 !co | c 6 5 > !co
S x=x=x=xx R 3 5 6 5 | R 3 5 6 > | R 3 6 5 3 | R 3 5 c 6 | R b3 3 5 6 | R 3 5 >> > | R 3 6 5 > | R 5 6 5 > | 3 5 6 5 > !co | 3 5 6 c 6 !co
C x=xxx=xx R 3 5 6 5 > | 8 c 6 5 3 > | R b3 3 5 6 > | 8 c 6 5 >> > | R 3 3 5 6 > | R 3 3 5 >> > | R R 3 5 3 > | R _7 _6 _5 >> > | c 6 5 3 R > !co
S x=x=x=xx R 3 5 6 5 | R 3 5 6 > | R 3 6 5 3 | R 3 5 c 6 | R b3 3 5 6 | R 3 5 >> > | R 3 6 5 > | R 5 6 5 > | 3 5 6 5 > !co | 3 5 6 c 6 !co
A x=x=x=x= 8 c 5 > | 8 6 5 > | 8 c 6 5 | 8 c 6 > | 8 6 5 3 | R 3 5 > | R _7 _6 _5 | R _7 _6 > | R 5 4 > | c 6 5 3 !co | c 6 5 > !co
L x=x=x=xx R 3 5 8 c | R 5 8 10 8 | 8 10 9 8 > | 8 10 8 c 5 | R 5 6 8 9 | R 5 6 8 > | R 3 5 8 > | 5 6 8 10 8 !co
T x=xxx=xx R 3 5 6 5 > | R b3 3 5 6 > | 8 c 6 5 3 > | R 3 3 5 6 > | R 3 3 5 >> > | 8 c 6 5 >> > | R R 3 5 3 > | R 5 6 7 >> >
H1 x=x= R 3 | R 5 | R > | 8 c | R c
H1 x=xx R c 5 | R 3 > | R 5 > | R >> >
H2 x=xx R 5 > | R 5 3 | R c 5 | R 3 5 | R >> > | R 6 5 | R 3 >

tune grace-third 3-5: the minor third slides into the major one as a swung pair on two, box above it; the answer walks down in quarters
S x=xxx=x= R b3 3 5 6 | R b3 3 5 > | R 3 3 5 6 | R 3 5 6 5 | R b3 3 6 5 | R 2 3 5 > | R 3 5 6 > | R b3 3 5 c | R 3 3 5 > | 3 4 #4 5 6 !co | 3 5 5 6 > !co
A x=x=x=x= 8 c 6 5 | 8 c 5 > | 8 6 5 3 | 8 6 5 > | 8 c 6 > | R 3 5 > | R _7 _6 _5 | R _7 _6 > | R 5 4 > | c 6 5 3 !co | c 6 5 > !co
S x=xxx=x= R b3 3 5 6 | R b3 3 5 > | R 3 3 5 6 | R 3 5 6 5 | R b3 3 6 5 | R 2 3 5 > | R 3 5 6 > | R b3 3 5 c | R 3 3 5 > | 3 4 #4 5 6 !co | 3 5 5 6 > !co
C x=x=x=xx 8 c 6 5 > | R 3 5 6 5 | 8 6 5 3 > | 8 c 5 >> > | R 3 5 3 > | R 5 3 >> > | R _7 _6 _5 > | R 5 4 3 > | c 6 5 3 R !co
S x=xxx=x= R b3 3 5 6 | R b3 3 5 > | R 3 3 5 6 | R 3 5 6 5 | R b3 3 6 5 | R 2 3 5 > | R 3 5 6 > | R b3 3 5 c | R 3 3 5 > | 3 4 #4 5 6 !co | 3 5 5 6 > !co
A x=x=x=x= 8 c 5 > | 8 6 5 3 | 8 c 6 5 | 8 6 5 > | 8 c 6 > | R 3 5 > | R _7 _6 _5 | R _7 _6 > | R 5 4 > | c 6 5 3 !co | c 6 5 > !co
L x=xxx=x= R 3 5 6 8 | R 5 6 8 c | 8 10 9 8 > | 8 8 10 8 c | R 5 6 8 9 | R 5 6 8 > | R b3 3 5 8 | 5 6 c 8 10 !co
T x=xxx=xx R b3 3 5 6 > | R 3 5 6 5 > | R 3 3 5 6 > | 8 c 6 5 3 > | R b3 3 5 >> > | R 3 3 5 >> > | 8 c 6 5 >> > | R 5 6 7 >> >
H1 x=x= R 3 | R 5 | R > | 8 c | R c
H1 x=xx R b3 3 | R c 5 | R 3 > | R 5 > | R >> >
H2 x=xx R 5 > | R 5 3 | R c 5 | R 3 5 | R >> > | R 6 5 | R 3 >

tune mill-wheel 3-5: four quarters sink below the root or from its octave, four climb the box; the last of every second bar skips over the joint
S x=x=x=x= 8 c 6 5 | 8 c 5 > | R _7 _6 _5 | 8 6 5 3 | R _7 _6 > | 8 6 5 > | 8 c 6 > | R 5 4 > | c 6 5 3 !co | c 6 5 > !co
A x=x=x=xx R 3 5 6 5 | R 3 5 6 > | R 3 5 >> > | R b3 3 5 6 | R 2 3 5 > | R 3 5 c > | R 3 6 5 > | 8 c 6 5 > | 3 5 6 >> > !co | 3 5 6 5 > !co
S x=x=x=x= 8 c 6 5 | 8 c 5 > | R _7 _6 _5 | 8 6 5 3 | R _7 _6 > | 8 6 5 > | 8 c 6 > | R 5 4 > | c 6 5 3 !co | c 6 5 > !co
C x=xxx=x= R 3 5 6 5 | R 3 5 6 > | R b3 3 5 > | R R 3 5 > | R 2 3 5 > | 8 c 6 5 > | 8 c c 5 3 | R _7 _7 _6 > | c 6 5 3 R !co
S x=x=x=x= 8 c 6 5 | 8 c 5 > | R _7 _6 _5 | 8 6 5 3 | R _7 _6 > | 8 6 5 > | 8 c 6 > | R 5 4 > | c 6 5 3 !co | c 6 5 > !co
A x=x=x=xx R 3 5 6 > | R 3 5 >> > | R 3 5 6 5 | R b3 3 5 6 | R 2 3 5 > | R 3 5 c > | R 3 6 5 > | 8 c 6 5 > | 3 5 6 >> > !co | 3 5 6 5 > !co
L x=x=x=x= R 3 5 8 | R 5 8 c | 8 10 8 c | 8 10 9 > | R 5 6 8 | 8 9 10 > | R 5 c 8 | 8 10 8 > | 5 6 c 8 !co
T x=xxx=xx R 3 5 6 5 > | R b3 3 5 6 > | 8 c 6 5 3 > | R 3 3 5 6 > | R 3 3 5 >> > | 8 c 6 5 >> > | R R 3 5 3 > | R 5 6 7 >> >
H1 x=x= R 3 | R 5 | R > | 8 c | R _7 | R 2
H1 x=xx R c 5 | R 3 > | R 5 > | R >> >
H2 x=xx R 5 > | R 5 3 | R c 5 | R 3 5 | R >> > | R 6 5 | R 3 >
`;
