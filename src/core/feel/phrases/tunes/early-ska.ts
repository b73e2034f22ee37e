/** Early ska: tunes of eight bars (see the notation beside the books). */
export const EARLY_SKA_TUNES = `
tune sunday-road 1-2: four even quarters, up the chord in one bar and down in the next; the half is marked by a long root
S x=x=x=x= R 3 5 > | R 3 5 8 | R 5 8 5 | R 5 8 > | R 8 5 R | R 5 R _5 | R _5 R 5 | R 5 3 > | R 5 R > | 8 5 3 > | 8 5 R 5 | 3 5 8 > !co | 5 8 8 5 !co | 5 5 8 > !co
A x=x=x=x= 8 5 3 > | 8 5 3 R | 8 5 R 5 | 8 5 R > | 8 5 R 3 | R 5 3 > | R 5 R _5 | R _5 R 5 | R _5 R > | R 8 5 R | R 3 5 > | 5 3 R > !co | 5 5 R > !co
S x=x=x=x= R 3 5 > | R 3 5 8 | R 5 8 5 | R 5 8 > | R 8 5 R | R 5 R _5 | R _5 R 5 | R 5 3 > | R 5 R > | 8 5 3 > | 8 5 R 5 | 3 5 8 > !co | 5 8 8 5 !co | 5 5 8 > !co
C x===x=x= R 3 > | R 5 > | 8 5 > | R 5 3 | R _5 > | R 5 8 | 8 5 3 | R 3 5 | 5 3 > !co | 3 5 > !co
S x=x=x=x= R 3 5 > | R 3 5 8 | R 5 8 5 | R 5 8 > | R 8 5 R | R 5 R _5 | R _5 R 5 | R 5 3 > | R 5 R > | 8 5 3 > | 8 5 R 5 | 3 5 8 > !co | 5 8 8 5 !co | 5 5 8 > !co
A x=x=x=x= 8 5 3 R | 8 5 3 > | 8 5 R 5 | 8 5 R > | 8 5 R 3 | R 5 3 > | R 5 R _5 | R _5 R 5 | R _5 R > | R 8 5 R | R 3 5 > | 5 3 R > !co | 5 5 R > !co
L x=x=x=x= 8 10 8 > | R 3 5 8 | R 5 8 5 | R 5 8 > | 8 10 8 5 | R 8 5 R | 8 5 R > | 8 5 R 5 | R 3 5 > | 5 8 10 > !co | 5 8 8 5 !co
T x=x=x=x= R 3 5 > | R 5 8 > | R 5 R > | 8 5 3 > | R 5 8 5 | 8 5 R > | R _5 R > | R 3 >> > | R 5 >> > | 8 5 >> >
H1 x=x= R 3 | R > | R 5 | 8 5 | R R | R _5
H2 x=x= R 3 | R > | R 5 | 8 5 | R _5

tune skip-to-town 1-2: quarters that climb, and quarters that fall with a swung pair on four
S x=x=x=x= R 3 5 8 | R 5 8 > | R 3 5 > | R 8 5 R | R 5 8 5 | R 8 5 > | R 5 3 > | R _5 R 5 | R 5 R > | 8 5 3 > | 8 5 R 5 | 3 5 8 > !co | 5 5 8 > !co | 5 8 8 5 !co
A x=x=x=xx 8 5 3 R > | 8 5 8 5 > | R 5 8 5 > | 8 5 R 5 > | 8 5 R 3 > | R _5 R 5 > | R _5 R _5 > | R 5 3 R > | R 5 R 5 > | R 3 5 8 > | 8 5 3 >> > | 5 3 R 3 > !co | 5 5 8 5 > !co
S x=x=x=x= R 3 5 8 | R 5 8 > | R 3 5 > | R 8 5 R | R 5 8 5 | R 8 5 > | R 5 3 > | R _5 R 5 | R 5 R > | 8 5 3 > | 8 5 R 5 | 3 5 8 > !co | 5 5 8 > !co | 5 8 8 5 !co
C x=x=x=xx R 5 3 R > | R 5 R 5 > | 8 5 8 5 > | R _5 R 5 > | R 3 5 8 > | 8 5 R 5 > | 8 5 3 R > | R _5 R _5 > | R 3 5 >> > | 5 3 R 5 > !co | 3 5 5 R > !co
S x=x=x=x= R 3 5 8 | R 5 8 > | R 3 5 > | R 8 5 R | R 5 8 5 | R 8 5 > | R 5 3 > | R _5 R 5 | R 5 R > | 8 5 3 > | 8 5 R 5 | 3 5 8 > !co | 5 5 8 > !co | 5 8 8 5 !co
A x=x=x=xx 8 5 3 R > | 8 5 8 5 > | R 5 8 5 > | 8 5 R 5 > | 8 5 R 3 > | R _5 R 5 > | R _5 R _5 > | R 5 3 R > | R 5 R 5 > | R 3 5 8 > | 8 5 3 >> > | 5 3 R 3 > !co | 5 5 8 5 > !co
L x=x=x=x= 8 10 8 5 | R 5 8 > | R 3 5 8 | R 8 5 R | 8 10 8 > | R 5 8 5 | 8 5 R > | 8 5 3 > | R 3 5 > | 5 8 10 > !co | 5 8 8 5 !co
T x=x=x=xx R 3 5 8 > | R 5 R 5 > | R 3 5 >> > | R 5 5 8 > | 8 5 8 5 > | 8 5 3 >> > | R R 5 >> > | 8 5 R 5 > | R _5 R 5 > | R 5 8 >> >
H1 x=x= R 3 | R > | R 5 | 8 5 | R R | R _5
H2 x=xx R >> > | R 3 > | R 5 > | R 5 8 | 8 5 > | 8 5 R | R _5 >

tune kettle-lid 1-2: a swung pair on three in every odd bar, struck on one pitch; plain quarters answer, and a long root marks the half
S x=x=xxx= R 3 5 5 > | R 3 5 5 8 | R R 5 5 8 | R 5 8 8 > | R 8 5 5 R | R R 8 8 5 | R 3 3 3 5 | R 5 3 3 > | R R _5 _5 R | 8 8 5 5 R | 8 5 3 3 > | 3 5 8 8 > !co | 5 5 8 8 5 !co | 5 3 5 5 > !co
A x=x=x=x= 8 5 3 > | 8 5 R 5 | 8 5 3 R | R 5 3 > | R 8 5 R | 8 5 R 3 | R _5 R > | R _5 R 5 | R 5 R _5 | R 3 5 > | 5 3 R > !co | 5 5 R > !co
S x=x=xxx= R 3 5 5 > | R 3 5 5 8 | R R 5 5 8 | R 5 8 8 > | R 8 5 5 R | R R 8 8 5 | R 3 3 3 5 | R 5 3 3 > | R R _5 _5 R | 8 8 5 5 R | 8 5 3 3 > | 3 5 8 8 > !co | 5 5 8 8 5 !co | 5 3 5 5 > !co
C x===x=x= R 5 > | R 3 > | 8 5 > | R 5 3 | R _5 > | R 3 5 | 8 5 3 | R 5 8 | 3 5 > !co | 5 3 > !co
S x=x=xxx= R 3 5 5 > | R 3 5 5 8 | R R 5 5 8 | R 5 8 8 > | R 8 5 5 R | R R 8 8 5 | R 3 3 3 5 | R 5 3 3 > | R R _5 _5 R | 8 8 5 5 R | 8 5 3 3 > | 3 5 8 8 > !co | 5 5 8 8 5 !co | 5 3 5 5 > !co
A x=x=x=x= 8 5 3 > | 8 5 R 5 | 8 5 3 R | R 5 3 > | R 8 5 R | 8 5 R 3 | R _5 R > | R _5 R 5 | R 5 R _5 | R 3 5 > | 5 3 R > !co | 5 5 R > !co
L x=x=xxx= 8 10 8 8 > | R 3 5 5 8 | R 5 8 8 > | R R 5 5 8 | 8 10 8 8 5 | R R 8 8 5 | 8 8 5 5 > | 8 5 3 3 > | 5 8 10 10 > !co | 5 5 8 8 > !co
T x=x=xxx= R 3 5 5 > | R R 5 5 > | R 3 3 3 5 | R R 5 5 8 | R 5 8 8 > | 8 5 3 3 > | 8 8 5 5 R | R R _5 _5 > | R 3 5 >> > | R 5 5 >> > | R 3 3 >> >
H1 x=x= R 3 | R > | R 5 | 8 5 | R R | R _5
H2 xxx= R R > | R R 3 | R R 5 | R 5 8 | 8 8 5 | R R _5

tune two-knocks 1-2: two knocks on the root, then up; two knocks, then down; a swung pair closes each half
S x=x=x=x= R R 3 5 | R R 5 8 | R R 5 > | R R 8 5 | R R 3 > | R R _5 > | R R 5 3 | 8 8 5 > | 8 8 5 3 | 3 3 5 > !co | 5 5 8 > !co | 5 5 3 > !co
A x=x=x=x= 8 8 5 3 | 8 8 5 R | R R 5 3 | R R 8 5 | 8 8 5 > | R R _5 > | R R 5 > | R R 3 > | R R 3 5 | 5 5 3 > !co | 5 5 8 > !co
S x=x=x=x= R R 3 5 | R R 5 8 | R R 5 > | R R 8 5 | R R 3 > | R R _5 > | R R 5 3 | 8 8 5 > | 8 8 5 3 | 3 3 5 > !co | 5 5 8 > !co | 5 5 3 > !co
C x=x=x=xx R R 5 3 > | R R 3 5 > | R R 5 8 > | 8 8 5 R > | R R _5 R > | 8 8 5 3 > | R R 3 >> > | R R 5 >> > | 5 5 3 R > !co | 3 3 5 3 > !co
S x=x=x=x= R R 3 5 | R R 5 8 | R R 5 > | R R 8 5 | R R 3 > | R R _5 > | R R 5 3 | 8 8 5 > | 8 8 5 3 | 3 3 5 > !co | 5 5 8 > !co | 5 5 3 > !co
A x=x=x=x= 8 8 5 3 | 8 8 5 R | R R 5 3 | R R 8 5 | 8 8 5 > | R R _5 > | R R 5 > | R R 3 > | R R 3 5 | 5 5 3 > !co | 5 5 8 > !co
L x=x=x=x= 8 8 10 > | R R 5 8 | R R 8 5 | 8 8 5 > | 8 8 10 8 | R R 5 > | R R 3 5 | 8 8 5 3 | 5 5 8 > !co | 3 3 5 > !co
T x=x=x=xx R R 3 5 > | R R 5 8 > | R R 5 >> > | R R 3 >> > | 8 8 5 3 > | 8 8 5 R > | R R _5 R > | R R 5 3 > | R R _5 >> > | 8 8 5 >> >
H1 x=x= R R | R > | R 3 | R 5 | 8 8 | R _5
H2 x=x= R 3 | R > | R 5 | 8 5 | R _5

tune up-the-hill 3-5: four even quarters, a scale or chord up and the chord down again
S x=x=x=x= R 3 5 6 | R 2 3 5 | R 3 5 > | R 2 3 > | R 3 5 8 | R 3 4 > | R _5 _6 > | R 5 6 > | R 5 3 > | 8 c 5 > | R 3 5 c | 3 5 8 > !co | 3 4 5 > !co
A x=x=x=x= 8 c 5 3 | 8 c 5 4 | 8 5 3 > | 8 6 5 > | 8 c 5 > | R _6 _5 _3 | R _6 _5 > | R 3 2 > | R 5 4 3 | R 3 5 > | 5 4 3 > !co | 8 5 3 2 !co
S x=x=x=x= R 3 5 6 | R 2 3 5 | R 3 5 > | R 2 3 > | R 3 5 8 | R 3 4 > | R _5 _6 > | R 5 6 > | R 5 3 > | 8 c 5 > | R 3 5 c | 3 5 8 > !co | 3 4 5 > !co
C x=x=x=x= R 5 4 3 | R 5 3 > | 8 5 3 > | 8 c 5 > | R 3 2 > | R _5 _6 > | R _6 _5 > | R 3 5 > | 8 6 5 > | 5 3 2 > !co | 3 5 3 > !co
S x=x=x=x= R 3 5 6 | R 2 3 5 | R 3 5 > | R 2 3 > | R 3 5 8 | R 3 4 > | R _5 _6 > | R 5 6 > | R 5 3 > | 8 c 5 > | R 3 5 c | 3 5 8 > !co | 3 4 5 > !co
A x=x=x=x= 8 c 5 4 | 8 5 3 > | 8 c 5 3 | 8 6 5 > | 8 c 5 > | R _6 _5 _3 | R _6 _5 > | R 3 2 > | R 5 4 3 | R 3 5 > | 5 4 3 > !co | 8 5 3 2 !co
L x=x=x=x= 8 9 10 > | R 3 5 8 | 8 10 9 > | R 5 8 > | 8 10 8 > | 8 9 10 8 | R 3 5 6 | R 3 5 > | 8 c 5 > | 5 8 10 > !co | 5 6 8 > !co
T x=x=x=xx R 3 5 >> > | R 5 6 >> > | R 2 3 >> > | 8 c 5 >> > | R _5 _6 >> > | 8 5 3 >> > | R 5 3 >> > | R 3 5 c > | R 2 3 5 > | R _5 _6 _7 >
H1 x=x= R > | R 3 | R 5 | R 2 | 8 > | 8 c | R _c | R _5
H2 x=x= R 3 | R > | R 5 | R 2 | 8 > | 8 c | R _c | R _5

tune down-first 3-5: the chord falls in quarters, the answer climbs and a swung pair on four carries it over
S x=x=x=x= 8 5 3 > | 8 c 5 3 | 8 c 5 4 | 8 c 5 > | R 5 4 3 | R 5 3 > | R _6 _5 _3 | R _c _5 > | R 3 2 > | R _6 _5 > | 8 5 4 3 | 5 4 3 > !co | 5 3 2 > !co
A x=x=x=xx R 3 5 >> > | R 2 3 >> > | R 3 5 6 > | R 3 5 c > | R 2 3 5 > | R _5 _6 >> > | R 5 6 >> > | R 5 3 >> > | 8 5 3 >> > | R _7 _6 >> > | 3 5 6 >> > !co | 3 4 5 >> > !co
S x=x=x=x= 8 5 3 > | 8 c 5 3 | 8 c 5 4 | 8 c 5 > | R 5 4 3 | R 5 3 > | R _6 _5 _3 | R _c _5 > | R 3 2 > | R _6 _5 > | 8 5 4 3 | 5 4 3 > !co | 5 3 2 > !co
C x=x=x=xx R 3 5 3 > | R 5 3 >> > | R 3 2 >> > | R 3 5 >> > | 8 c 5 >> > | 8 5 3 >> > | R _5 _6 >> > | R _7 _6 _5 > | R 5 4 3 > | 5 4 3 >> > !co | 3 5 3 >> > !co
S x=x=x=x= 8 5 3 > | 8 c 5 3 | 8 c 5 4 | 8 c 5 > | R 5 4 3 | R 5 3 > | R _6 _5 _3 | R _c _5 > | R 3 2 > | R _6 _5 > | 8 5 4 3 | 5 4 3 > !co | 5 3 2 > !co
A x=x=x=xx R 2 3 >> > | R 3 5 6 > | R 3 5 >> > | R 3 5 c > | R 2 3 5 > | R _5 _6 >> > | R 5 6 >> > | R 5 3 >> > | 8 5 3 >> > | R _7 _6 >> > | 3 5 6 >> > !co | 3 4 5 >> > !co
L x=x=x=x= 8 10 9 > | 8 9 10 > | 8 10 8 5 | 8 10 8 > | R 3 5 8 | R 5 8 > | 8 9 10 8 | 8 c 5 4 | 8 c 5 > | 5 8 10 > !co | 10 9 8 > !co
T x=x=x=xx R 3 5 >> > | R 2 3 >> > | R 5 6 >> > | R _5 _6 _7 > | R 3 5 c > | R _5 _6 >> > | 8 c 5 >> > | 8 5 3 >> > | R 5 3 >> > | R 3 4 5 >
H1 x=x= R > | R 3 | 8 c | 8 5 | R _c | R _5 | 8 > | R 2
H2 x=xx R >> > | R 3 > | R 2 3 | R 5 > | 8 c > | R _6 _5 | R _5 > | 8 >> >

tune bend-in-three 3-5: quarters up the chord and quarters back down; in bars four and eight a swung pair on three bends the way
S x=x=x=x= R 3 5 > | R 3 5 6 | R 3 5 4 | R 2 3 5 | R 2 3 > | R 5 6 > | R _5 _6 > | R 5 3 > | R 3 4 5 | R 3 5 3 | 8 5 3 > | 3 5 6 > !co | 3 4 5 > !co
A x=x=x=x= 8 c 5 3 | 8 5 3 > | R 5 4 3 | R _6 _5 > | 8 6 5 3 | R 5 3 > | 8 c 5 > | R _c _5 > | R 3 2 > | R _6 _5 _3 | R 3 5 > | 5 4 3 > !co | 8 c 5 > !co
S x=x=x=x= R 3 5 > | R 3 5 6 | R 3 5 4 | R 2 3 5 | R 2 3 > | R 5 6 > | R _5 _6 > | R 5 3 > | R 3 4 5 | R 3 5 3 | 8 5 3 > | 3 5 6 > !co | 3 4 5 > !co
C x=x=xxx= R 3 5 4 3 | R 5 4 3 > | R 3 5 5 > | 8 c 5 5 3 | 8 5 4 3 > | R 5 3 3 > | R _5 _5 _6 > | R 3 3 2 > | R 2 3 4 5 | 5 4 3 3 > !co | 3 5 3 3 > !co
S x=x=x=x= R 3 5 > | R 3 5 6 | R 3 5 4 | R 2 3 5 | R 2 3 > | R 5 6 > | R _5 _6 > | R 5 3 > | R 3 4 5 | R 3 5 3 | 8 5 3 > | 3 5 6 > !co | 3 4 5 > !co
A x=x=x=x= 8 5 3 > | 8 c 5 3 | R 5 4 3 | R _6 _5 > | 8 6 5 3 | R 5 3 > | 8 c 5 > | R _c _5 > | R 3 2 > | R _6 _5 _3 | R 3 5 > | 5 4 3 > !co | 8 c 5 > !co
L x=x=x=x= 8 9 10 > | R 3 5 8 | R 5 6 8 | 8 10 8 > | 8 10 9 8 | R 5 8 > | R 3 5 > | 8 6 5 > | R 5 3 > | 5 6 8 > !co | 3 5 8 > !co
T x=x=xxx= R 3 5 5 > | R 5 3 3 > | R 3 3 4 > | R 5 5 6 > | R 3 5 >> > | R 5 3 >> > | R 2 3 >> > | 8 5 4 3 > | 8 c 5 5 > | R _5 _5 _6 > | R _5 _6 >> >
H1 x=x= R > | R 3 | R 5 | R 2 | 8 > | 8 c | R _5
H2 x=x= R 3 | R > | R 5 | 8 > | 8 5 | R _5
H2 xxx= R R > | R R 3 | R >> >

tune cellar-steps 3-5: the walk goes under the root to the low fifth and comes up again; a swung pair closes each half
S x=x=x=x= R _6 _5 > | R _c _5 > | R _5 _6 > | R _6 _5 _3 | R _5 R > | R 3 2 > | R 5 3 > | R _5 _3 > | 8 6 5 > | 8 c 5 4 | 8 c 5 > | 3 2 R > !co | 5 4 3 > !co
A x=x=x=x= R 2 3 5 | R 3 5 > | R 2 3 > | R 3 5 6 | R 3 4 5 | R _5 R > | R 5 3 > | R 3 4 > | R 3 5 8 | R 5 6 > | 8 c 5 > | 3 4 5 > !co | 3 5 6 > !co
S x=x=x=x= R _6 _5 > | R _c _5 > | R _5 _6 > | R _6 _5 _3 | R _5 R > | R 3 2 > | R 5 3 > | R _5 _3 > | 8 6 5 > | 8 c 5 4 | 8 c 5 > | 3 2 R > !co | 5 4 3 > !co
C x=x=x=xx R _5 _6 >> > | R 3 2 >> > | R 3 5 >> > | R 5 3 >> > | R 5 4 3 > | R _6 _5 _6 > | R _5 R >> > | 8 c 5 >> > | 3 2 R >> > !co | 5 3 2 >> > !co
S x=x=x=x= R _6 _5 > | R _c _5 > | R _5 _6 > | R _6 _5 _3 | R _5 R > | R 3 2 > | R 5 3 > | R _5 _3 > | 8 6 5 > | 8 c 5 4 | 8 c 5 > | 3 2 R > !co | 5 4 3 > !co
A x=x=x=x= R 3 5 > | R 2 3 5 | R 2 3 > | R 3 5 6 | R 3 4 5 | R _5 R > | R 5 3 > | R 3 4 > | R 3 5 8 | R 5 6 > | 8 c 5 > | 3 4 5 > !co | 3 5 6 > !co
L x=x=x=x= R 3 5 8 | 8 9 10 > | 8 c 5 > | 8 10 8 > | R 5 8 > | R 3 5 > | R 5 6 8 | 8 c 5 3 | 8 6 5 > | 5 6 8 > !co | 5 8 c > !co
T x=x=x=xx R _5 _6 _7 > | R _5 _6 >> > | R 2 3 >> > | R 3 5 >> > | R 5 3 >> > | R 5 6 7 > | R 3 4 5 > | 8 c 5 >> > | R 5 6 >> > | R _6 _5 >> > | 8 5 3 >> >
H1 x=x= R > | R 3 | R _5 | R 5 | R 2 | 8 c | 8 >
H2 x=x= R 3 | R > | R _5 | R 5 | 8 c | 8 >
`;
