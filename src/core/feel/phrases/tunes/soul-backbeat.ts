/** Soul backbeat: tunes of eight bars (see the notation beside the books). */
export const SOUL_BACKBEAT_TUNES = `
tune doorstep 1-2: a root that rings through the snare and two eighths up the step; the answer walks down through four
S x===xx-- R 5 8 | R 5 R | R _5 R | 8 5 R | R 3 5 | R 5 3 | 5 8 5 !co
A x===xxx= 8 5 R > | R 5 R > | R _5 R > | R R 5 > | R 5 3 > | R 3 5 > | 5 3 R > !co
S x===xx-- R 5 R | R 5 8 | R _5 R | 8 5 3 | R 3 R | R R 5 | 5 3 5 !co
C x===x=== R R | R _5 | R 5 | 8 5 | R 3 | 5 R !co
S x===xx-- R 5 8 | R 5 R | R _5 R | 8 5 R | R 3 5 | R 5 3 | 5 8 5 !co
A x===xxx= 8 5 8 > | R _5 R > | R 5 R > | 8 5 3 > | R R _5 > | R 3 5 > | 5 R 5 > !co
L x===xx-- 8 5 8 | R 8 5 | 8 10 8 | R 5 8 | R 8 8 | R 5 R | R _5 R
T x===xxxx R 5 5 R > | R _5 _5 R > | 8 8 5 R > | R R 5 R > | R 5 3 R > | R 3 5 >> > | R _5 R >> >
H1 x=x= R > | R R | R 5 | R _5
H2 x=x= R > | R 5 | R 3
H2 xxx= R R > | R 5 >

tune knocks 1-2: two knocks, a look down the street, two knocks more; the answer opens the door with half a bar's root
S xx--xx-- R R 5 R | R R _5 R | R R 5 8 | R R 3 5 | 8 8 5 R | 5 5 R R !co
A x===x=x= R 5 > | R _5 > | 8 5 > | R R > | R 3 > | 8 5 R | 5 R > !co
S xx--xx-- R R 5 8 | R R 5 R | R R _5 R | R R 3 R | 8 8 5 8 | 5 5 8 5 !co
C xx--x=== R R R | R R _5 | R R 5 | 8 8 R | R R 3 | 5 5 R !co
S xx--xx-- R R 5 R | R R _5 R | R R 5 8 | R R 3 5 | 8 8 5 R | 5 5 R R !co
A x===x=x= 8 5 > | R _5 > | R 5 > | R R > | 8 5 3 | R 5 3 | 5 3 > !co
L xx--xx-- 8 8 5 8 | R R 8 5 | 8 8 10 8 | R R 5 8 | R R 8 8 | R R 5 R | R R _5 R
T xx--xxx= R R 5 R > | R R _5 R > | 8 8 5 R > | R R R 5 > | R R 3 5 > | R R 5 3 >
H1 xx-- R R | 8 8
H2 xx-- R R | 8 8
H2 x=x= R > | R 5 | R 3

tune streetcorner 1-2: one, the push, and a pair on three that turns on its heel; the answer closes with four
S x==xxx-- R R 5 R | R R _5 R | R R 5 8 | R R 3 5 | R 5 8 5 | 8 8 5 R | 5 5 R 5 !co
A x==xx=x= R 5 R > | R _5 R > | 8 5 R > | R R 5 > | R 5 3 > | R 3 5 > | 5 R R > !co
S x==xxx-- R R 5 8 | R R 5 R | R R _5 R | R R 3 R | 8 8 5 3 | R R R 5 | 5 5 8 5 !co
C x==xx=== R R R | R R _5 | R 5 R | 8 5 R | R R 3 | R 3 R | 5 5 R !co
S x==xxx-- R R 5 R | R R _5 R | R R 5 8 | R R 3 5 | R 5 8 5 | 8 8 5 R | 5 5 R 5 !co
A x==xx=x= 8 5 R > | R _5 R > | R 5 R > | R R 5 > | 8 5 3 > | R 5 3 > | 5 3 R > !co
L x==xxx-- 8 8 5 8 | R R 8 5 | 8 8 10 8 | R 5 8 8 | R R 5 8 | R R _5 R
T x==xxxx= R R 5 R > | R R _5 R > | 8 8 5 R > | R 5 R 5 > | R _5 R R > | R R 3 5 > | R R 5 3 >
H1 x==x R > | R R | R 5 | R _5
H2 xx-- R R | R 5 | R _5
H2 x=x= R > | R 5

tune bell 1-2: root and push strike a bell that rings through four; the answer is short and steps on
S x==xx=== R R 5 | R R _5 | R 5 8 | R R 3 | 8 8 5 | 5 5 R !co
A x=--x=x= R 5 > | R _5 > | 8 5 > | R R > | R 5 R | R 3 > | 5 R > !co
S x==xx=== R 5 8 | R R 5 | R R _5 | R 5 R | R 5 3 | 8 5 R | 5 5 8 !co
C x==xx=-- R R R | R R _5 | R 5 R | 8 5 R | R 3 R | 5 5 R !co
S x==xx=== R R 5 | R R _5 | R 5 8 | R R 3 | 8 8 5 | 5 5 R !co
A x=--x=x= 8 5 > | R _5 > | R 5 > | R R > | 8 5 R | R 5 3 | 5 3 > !co
L x==xx=== 8 5 8 | R R 8 | R 5 8 | 8 10 8 | 8 8 5 | R R 5 | R R _5
T x==xx=x= R 5 R > | R _5 R > | 8 5 R > | R R 5 > | R 5 3 > | R 3 5 > | R _5 _5 >
H1 x==x R R | R > | R 5 | R _5
H2 x=-- R | 8
H2 x=x= R > | R 5 | R _5

tune overhang 3-4: the push hangs over three and comes down by steps off the beat; the answer stands on three and climbs
S x=-x=x-x R 5 4 > | R 3 2 > | R _7 _6 > | R 2 3 > | 8 7 6 > | 8 6 5 > | 5 4 3 > !co
A x==xx=-x R 2 3 > | R 3 4 > | R _6 _7 > | R 5 6 > | R _7 _6 > | 8 7 6 > | 3 2 R > !co
S x=-x=x-x R 3 2 > | R 5 4 > | R _7 _6 > | R 5 6 > | 8 7 6 > | R 3 4 > | 5 6 5 > !co
C x==xx=== R 3 R | R 2 R | R 3 2 | R _7 R | R _6 _5 | 8 6 5 | 5 4 3 !co
S x=-x=x-x R 5 4 > | R 3 2 > | R _7 _6 > | R 2 3 > | 8 7 6 > | 8 6 5 > | 5 4 3 > !co
A x==xx=-x R 3 4 > | R 2 3 > | R _6 _7 > | 8 6 5 > | R 3 2 > | R _7 _6 > | 3 4 5 > !co
L x=-x=x-x 8 10 9 > | 8 9 8 > | 8 9 10 > | R 5 6 > | 8 7 8 > | R 6 5 >
T x=-x=xxx R 5 4 >> > | R 3 2 >> > | 8 7 6 >> > | R _6 _7 >> > | R 2 3 >> > | R _7 _6 >> >
H1 x==x R > | R 2 | R 3 | R _7 | 8 >
H2 x=-x R > | 8 > | R R
H2 xx-x R 2 > | R 3 > | R _7 >

tune bannister 3-4: a long root, then down the stairs in two eighths and a late one; the answer goes slowly up again
S x===xx-x 8 7 6 > | R _7 _6 > | R 5 4 > | R 3 2 > | 8 6 5 > | R 4 3 > | 5 4 3 > !co
A x===x==x R 3 > | R 2 > | R 5 > | R _6 > | R _5 > | 8 6 > | 3 5 > !co
S x===xx-x R 3 2 > | R _7 _6 > | 8 7 6 > | R 5 4 > | R 2 3 > | 8 6 5 > | 6 5 3 > !co
C x===x=== R 3 | R R | R _5 | 8 5 | R 5 | 5 R !co
S x===xx-x 8 7 6 > | R _7 _6 > | R 5 4 > | R 3 2 > | 8 6 5 > | R 4 3 > | 5 4 3 > !co
A x===x==x R 5 > | R 3 > | R 2 > | R _6 > | R _7 > | 8 5 > | 3 6 > !co
L x===xx-x 8 10 9 > | 8 9 8 > | 8 9 10 > | R 8 7 > | R 6 5 > | 8 7 8 >
T x===xxxx 8 7 6 >> > | R 5 4 >> > | R _7 _6 >> > | R 3 2 >> > | R _6 _7 >> > | R 3 4 >> >
H1 x=-x R > | 8 > | R R
H1 x==x R > | R 3 | R _7 | R 2
H2 xx-x R 2 > | R 3 > | R _7 > | R R >

tune sidestep 3-4: two roots, a step aside held over three, and air; the answer fills the same step with a run
S xx-x==-- R R 3 | R R 2 | R R _7 | R R 6 | R R _6 | 8 8 7 | 5 5 6 !co
A xx-xxx-x R R 5 4 3 > | R R 3 2 R > | R R 2 3 4 > | 8 8 7 6 5 > | R R _7 _6 _5 > | R R _6 _7 R > | 5 5 6 5 3 > !co
S xx-x==-- R R 2 | R R 3 | R R _7 | R R 5 | R R _6 | 8 8 7 | 5 5 4 !co
C xx-x==== R R R | R R _5 | R R 3 | 8 8 5 | R R 5 | 5 5 3 !co
S xx-x==-- R R 3 | R R 2 | R R _7 | R R 6 | R R _6 | 8 8 7 | 5 5 6 !co
A xx-xxx-x 8 8 7 6 5 > | R R _7 _6 _5 > | R R 5 6 5 > | R R 3 4 5 > | R R 5 4 3 > | R R 3 2 R > | 5 5 4 3 2 > !co
L xx-x==-- 8 8 9 | 8 8 10 | R R 8 | 8 8 7 | R R 6 | R R 5
T xx-xxxxx R R 5 4 3 >> > | R R 3 2 R >> > | 8 8 7 6 5 >> > | R R _7 _6 _5 >> > | R R 2 3 4 >> > | R R _6 _7 R >> >
H1 xx-x R R > | R R 2 | R R _7 | R R 3
H2 xx-- R R | 8 8
H2 xx-x R R > | R R 3 | R 3 >

tune taillight 4-5: root, push and a pair that rises; its last note glows through four until two sixteenths pull away
S x=====x=x=x===xx R R 3 4 >> > | R 3 2 R >> > | R _7 _6 _5 >> > | R 5 4 3 >> > | R R b3 3 >> > | 8 7 6 5 >> > | 5 4 3 2 >> > !co
A x=====x=x===--x= R 5 4 > | 8 7 5 > | R 3 2 > | R _c _5 > | R 5 6 > | R _6 _7 > | 5 3 2 > !co
S x=====x=x=x===xx R R 5 6 >> > | R R 3 4 >> > | R _7 _6 _5 >> > | R c 5 4 >> > | R 3 2 R >> > | 8 7 6 5 >> > | 3 4 5 6 >> > !co
C x=====x=x======= R 3 R | R 2 R | R _c R | R 2 3 | R _7 _5 | 8 c 5 | 5 3 R !co
S x=====x=x=x===xx R R 3 4 >> > | R 3 2 R >> > | R _7 _6 _5 >> > | R 5 4 3 >> > | R R b3 3 >> > | 8 7 6 5 >> > | 5 4 3 2 >> > !co
A x=====x=x===--x= 8 c 5 > | R 5 3 > | R _7 _6 > | R 3 4 > | R _5 _c > | R 2 3 > | 5 6 5 > !co
L x=====x=x=x===xx 8 8 10 9 >> > | 8 9 10 8 >> > | 8 c 8 9 >> > | R 5 6 8 >> > | 8 10 9 8 >> > | R 5 c 5 >> >
T x=====x=x=x=xxxx R R 3 5 4 3 >> > | R c 5 4 3 2 >> > | R 3 2 R _7 _6 >> > | 8 7 6 5 4 3 >> > | R R _5 _6 _7 R >> > | R R 2 3 4 5 >> >
H1 x=====x= R > | R c | R 3 | R _7 | 8 5
H2 x===--x= R > | 8 >
H2 x=x=x=xx R 2 3 >> > | R 3 2 >> > | R R _7 >> >

tune afloat 4-5: after the one nothing on the beat: three notes swim between; the answer puts its foot on three
S x==x-x-x R c 5 > | R 3 4 > | R _7 _6 > | R 5 4 > | 8 7 6 > | R 2 3 > | 5 4 3 > !co
A x=-xxx-x R R 3 2 > | R 5 4 3 > | R _c _5 _6 > | 8 c 5 4 > | R 2 3 5 > | R _6 _7 R > | 3 3 2 R > !co
S x==x-x-x R 3 4 > | R c 5 > | R _7 _6 > | R 5 6 > | 8 7 6 > | R #4 5 > | 5 6 5 > !co
C x==xx=== R 3 R | R c 5 | R 2 R | R _c R | R 2 3 | 8 c 5 | 5 4 3 !co
S x==x-x-x R c 5 > | R 3 4 > | R _7 _6 > | R 5 4 > | 8 7 6 > | R 2 3 > | 5 4 3 > !co
A x=-xxx-x R 5 4 3 > | R R 3 2 > | 8 7 6 5 > | R _7 _6 _5 > | R 3 4 5 > | R 2 b3 3 > | 5 6 5 3 > !co
L x==x-x-x 8 10 9 > | 8 c 8 > | 8 9 10 > | R 8 7 > | 8 9 8 > | R 6 5 >
T x==x-xxx R c 5 >> > | R 5 4 >> > | 8 7 6 >> > | R _7 _6 >> > | R 2 3 >> > | R 3 2 >> >
H1 x==x R > | R c | R 3 | R _7
H2 x-xx R >> > | R 3 > | R 2 >
H2 x=-x R > | 8 >

tune stammer 4-5: the one stammers in sixteenths, then speaks plainly; the answer stammers later, on three
S x=xx--x=x===--x= R R R c 5 > | R R R 3 4 > | R R R _7 _6 > | R R R 5 4 > | 8 8 8 c 5 > | R R R 3 2 > | 5 5 5 4 3 > !co
A x=====x=x=xx--x= R _c R R 3 > | R 3 2 2 R > | R 5 4 4 3 > | 8 7 6 6 5 > | R _7 _6 _6 _5 > | R 3 4 4 5 > | 5 4 3 3 2 > !co
S x=xx--x=x===--x= R R R 3 4 > | R R R c 5 > | R R R _7 _6 > | R R R 5 6 > | R R R 2 3 > | 8 8 8 7 6 > | 5 5 5 6 5 > !co
C x=====x=x======= R 3 R | R _c R | R 2 R | R 2 3 | R _7 _5 | 8 c 5 | 5 3 R !co
S x=xx--x=x===--x= R R R c 5 > | R R R 3 4 > | R R R _7 _6 > | R R R 5 4 > | 8 8 8 c 5 > | R R R 3 2 > | 5 5 5 4 3 > !co
A x=====x=x=xx--x= R 5 4 4 3 > | R 3 2 2 R > | 8 c 5 5 4 > | R _7 _6 _6 _5 > | R 5 6 6 5 > | R _c R R 2 > | 5 6 5 5 3 > !co
L x=xx--x=x===--x= 8 8 8 10 9 > | 8 8 8 9 8 > | 8 8 8 c 8 > | R R R 8 7 > | R R R 5 6 > | 8 8 8 9 10 >
T x=xx--x=x=x=xxxx R R R c 5 4 3 2 >> > | R R R 5 4 3 2 R >> > | R R R _7 _6 _5 _6 _7 >> > | R R R 2 3 4 5 3 >> > | 8 8 8 c 5 4 3 2 >> > | R R R 3 2 R _7 _6 >> >
H1 x=xx--x= R R R > | R R R c | R R R _7 | 8 8 8 c
H2 x===--x= R > | 8 >
H2 x=xx--x= R R R > | R 2 3 >
`;
