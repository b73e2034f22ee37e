/** Funk in sixteenths: tunes of eight bars (see the notation beside the books). */
export const FUNK_TUNES = `
tune stamp-and-climb 1-2: two on the one, a hole for the snare, and three notes that come up into four; bars four and eight roll on
S xx--xxx- R R _5 _c R | R R 5 c 8 | R R 5 8 5 | R R _5 R _5 | R R 3 5 8 | R R 5 3 > | R R 3 5 > | R R _5 R > | R R 5 8 >
A xx--xxxx R R _5 _c R > | R R 5 c 5 > | R R 8 c 5 > | R R 8 5 R > | R R _5 R _5 > | R R 3 5 3 > | R R 5 3 R > | R R 5 R 5 >
S xx--xxx- R R _5 _c R | R R 5 c 8 | R R 5 8 5 | R R _5 R _5 | R R 3 5 8 | R R 5 3 > | R R 3 5 > | R R _5 R > | R R 5 8 >
C xx----xx R R 5 > | R R c > | R R _5 > | R R 3 > | R R 8 > | R R 5 3
S xx--xxx- R R _5 _c R | R R 5 c 8 | R R 5 8 5 | R R _5 R _5 | R R 3 5 8 | R R 5 3 > | R R 3 5 > | R R _5 R > | R R 5 8 >
A xx--xxxx R R _5 _c R > | R R 5 c 5 > | R R 8 c 5 > | R R 8 5 R > | R R _5 R _5 > | R R 3 5 3 > | R R 5 3 R > | R R 5 R 5 >
L xx--xxx- R R 5 c 8 | R R 8 c 8 | R R 8 10 8 | R R 3 5 8 | R R 5 8 5 | R R 8 c 5 | R R 3 5 > | R R _5 R 5
T xxx-xxxx R R 5 8 c 5 > | R R 5 8 5 R > | R R _5 R _c _5 > | R R _5 R _5 R > | R R _5 R 3 5 > | R R 5 R 5 3 >
H1 xx-- R R
H1 xxx- R R > | R R 5 | R R _5 | R R 3 | R R c
H2 xxx- R R > | R 3 > | R 5 > | R _5 > | R c 5 | R 3 5
H2 x-xx R 5 > | R 3 > | R R > | R _5 >

tune into-three 1-2: the one alone, then a pair that picks up into three, and a pair on four that picks up into the next bar
S x-xxx-xx R _5 _c R 5 > | R _5 _c R 3 > !ch | R _5 _c R _5 _c | R _5 _c R 5 c | R R 5 8 5 > | R R _5 R 5 > | R 5 c 8 5 > | R _5 _5 R 5 > | R _5 _5 R _5 > | R 5 5 8 5 > | R 3 5 8 5 > | R 5 3 R 5 > | R R _5 R R >
A x-xxx-x- R _5 _c R 5 | R _5 _c R 3 | R 5 c 8 5 | R _5 _5 R > | R _5 _5 R 5 | R 5 5 8 > | R 5 5 8 5 | R 5 3 R > | R 3 5 8 > | R _5 _c R >
S x-xxx-xx R _5 _c R 5 > | R _5 _c R 3 > !ch | R _5 _c R _5 _c | R _5 _c R 5 c | R R 5 8 5 > | R R _5 R 5 > | R 5 c 8 5 > | R _5 _5 R 5 > | R _5 _5 R _5 > | R 5 5 8 5 > | R 3 5 8 5 > | R 5 3 R 5 > | R R _5 R R >
C xx----xx R R 5 > | R R c > | R R _5 > | R R 3 > | R R 8 > | R R _5 _c
S x-xxx-xx R _5 _c R 5 > | R _5 _c R 3 > !ch | R _5 _c R _5 _c | R _5 _c R 5 c | R R 5 8 5 > | R R _5 R 5 > | R 5 c 8 5 > | R _5 _5 R 5 > | R _5 _5 R _5 > | R 5 5 8 5 > | R 3 5 8 5 > | R 5 3 R 5 > | R R _5 R R >
A x-xxx-x- R _5 _c R 5 | R _5 _c R 3 | R 5 c 8 5 | R _5 _5 R > | R _5 _5 R 5 | R 5 5 8 > | R 5 5 8 5 | R 5 3 R > | R 3 5 8 > | R _5 _c R >
L x-xxx-xx R 5 c 8 c 5 | R 5 c 8 10 8 | R 5 5 8 5 > | R 3 5 8 5 > | R _5 _c R 5 > | R _5 R 5 8 > | R _5 R 5 5 >
T xx--xxxx R R 5 8 5 > | R R _5 _c R > | R R _5 R _5 > | R R 8 c 5 > | R R 5 R 5 > | R R 3 5 3 > | R R 5 3 R >
H1 x-xx R R > | R _5 _c | R 5 > | R 5 3 | R _5 > | R R 5
H1 xx-- R R
H2 x-xx R 5 > | R 3 > | R R > | R _5 > | R 8 >
H2 x-x- R > | R 5 | R 3

tune high-answer 1-2: two low ones, the octave on three, and a pair on four that falls or leads
S xx--x-xx R R 8 c 5 | R R 8 5 > | R R 8 c > | R R 8 5 R | R R 5 R > | R R _5 R > | R R 5 3 > | R R _c _5 > | R R _5 _c R
A xx--xxx- R R 8 c 5 | R R 8 5 R | R R 8 5 > | R R 8 c > | R R 5 R > | R R _5 _c R | R R _5 R > | R R 5 3 > | R R 5 8 5
S xx--x-xx R R 8 c 5 | R R 8 5 > | R R 8 c > | R R 8 5 R | R R 5 R > | R R _5 R > | R R 5 3 > | R R _c _5 > | R R _5 _c R
C xx----xx R R 5 > | R R c > | R R 8 > | R R _5 > | R R 3 > | R R 8 c
S xx--x-xx R R 8 c 5 | R R 8 5 > | R R 8 c > | R R 8 5 R | R R 5 R > | R R _5 R > | R R 5 3 > | R R _c _5 > | R R _5 _c R
A xx--xxx- R R 8 c 5 | R R 8 5 R | R R 8 5 > | R R 8 c > | R R 5 R > | R R _5 _c R | R R _5 R > | R R 5 3 > | R R 5 8 5
L xx--x-xx R R 8 c 8 | R R 8 10 8 | R R 8 8 5 | R R 5 8 5 | R R 5 8 > | R R 3 5 > | R R 5 5 > | R R _5 5 >
T xxx-xxxx R R 5 8 c 5 > | R R 5 8 5 R > | R R _5 R _c _5 > | R R _5 R _5 R > | R R 5 R 5 3 > | R R 5 R 3 5 >
H1 xx-- R R | R 8
H1 xxx- R R > | R R 5 | R R _5 | R R 3
H2 x-xx R 5 > | R 3 > | R R > | R _5 > | R 8 5 | R c 5

tune under-neighbour 3-5: the one with its late echo, the seventh below that falls back on three, and a tail of sixteenths into four
S x==x--x=x=xxx=-- R R _c R 3 4 5 | R R _c R 5 4 3 | R R _c R _5 _c R | R R c 8 5 4 3 | R R _c R 3 5 > !ch | R R _c R 5 3 > !ch | R R _c R 5 4 > !ch | R R _c R _5 _c > !ch | R R 8 c 5 3 > !ch
A x==x--x=x=--x=xx R R _c R 5 >> > | R R _c R 3 >> > | R R _c R _5 >> > | R R 8 c 5 >> > | R R c 8 5 >> > | R R _c R 3 4 5
S x==x--x=x=xxx=-- R R _c R 3 4 5 | R R _c R 5 4 3 | R R _c R _5 _c R | R R c 8 5 4 3 | R R _c R 3 5 > !ch | R R _c R 5 3 > !ch | R R _c R 5 4 > !ch | R R _c R _5 _c > !ch | R R 8 c 5 3 > !ch
C x==xx=--------x= R _c R > | R 8 c > | R R 8 > | R _5 _c > | R 5 3 >
S x==x--x=x=xxx=-- R R _c R 3 4 5 | R R _c R 5 4 3 | R R _c R _5 _c R | R R c 8 5 4 3 | R R _c R 3 5 > !ch | R R _c R 5 3 > !ch | R R _c R 5 4 > !ch | R R _c R _5 _c > !ch | R R 8 c 5 3 > !ch
A x==x--x=x=--x=xx R R _c R 5 >> > | R R _c R 3 >> > | R R _c R _5 >> > | R R 8 c 5 >> > | R R c 8 5 >> > | R R _c R 3 4 5
L x==x--x=x=xxx=-- R R c 8 10 9 8 | R R c 8 c 8 5 | R R 8 c 8 c 5 | R R 3 5 8 c 5 | R R 5 8 c 5 > !ch | R R 3 5 6 5 3 | R R _c R 3 5 8 | R R _c R 5 6 5
T x==x--x=x=x=x=xx R R _c R 3 5 >> > | R R _c R 5 3 >> > | R R _c R 5 4 3 > | R R _c R _5 _c >> > | R R 8 c 5 3 >> > | R R c 8 5 3 >> >
H1 x==x--x= R R _c | R R > | R R 3 | R R 5 | R R c
H1 x==x---- R R
H2 x==x--x= R R > | R R 5
H2 x=xxx=-- R 3 4 5 | R 5 4 3 | R 5 3 > | R _c R >
H2 ----x=xx R >> >
H2 x=--x=xx R 5 >> > | R 3 >> > | R _5 >> > | R c >> >

tune tight-fist 3-5: a knock with its neighbour in the first two beats, and the same knock on another tone in the last two
S x=xxx=--x=xxx=-- R R _c R 5 5 4 5 | R R _c R 3 3 4 5 | R R _c R _5 _5 _c R | R R _c R 5 5 4 3 | R R _c R 8 8 c 5 | R R _c R 5 4 3 > !ch | R R _c R 5 c 5 > !ch | R R _c R 3 4 5 > !ch | R R _c R _5 _c R > !ch | R R 2 R 5 4 3 > !ch
A x=xxx=--x=--x=xx R R _c R 5 3 >> > | R R _c R 3 5 >> > | R R _c R c 5 >> > | R R _c R _5 R >> > | R R _c R 8 5 >> > | R R 2 R 5 3 >> > | R R _c R 5 3 4 5
S x=xxx=--x=xxx=-- R R _c R 5 5 4 5 | R R _c R 3 3 4 5 | R R _c R _5 _5 _c R | R R _c R 5 5 4 3 | R R _c R 8 8 c 5 | R R _c R 5 4 3 > !ch | R R _c R 5 c 5 > !ch | R R _c R 3 4 5 > !ch | R R _c R _5 _c R > !ch | R R 2 R 5 4 3 > !ch
C x=xxx=--------x= R R _c R > | R R _5 R > | R R 2 R > | R R 3 R > | R R 5 8 > | R R _c R 5 | R R _c R 3
S x=xxx=--x=xxx=-- R R _c R 5 5 4 5 | R R _c R 3 3 4 5 | R R _c R _5 _5 _c R | R R _c R 5 5 4 3 | R R _c R 8 8 c 5 | R R _c R 5 4 3 > !ch | R R _c R 5 c 5 > !ch | R R _c R 3 4 5 > !ch | R R _c R _5 _c R > !ch | R R 2 R 5 4 3 > !ch
A x=xxx=--x=--x=xx R R _c R 5 3 >> > | R R _c R 3 5 >> > | R R _c R c 5 >> > | R R _c R _5 R >> > | R R _c R 8 5 >> > | R R 2 R 5 3 >> > | R R _c R 5 3 4 5
L x=xxx=--x=xxx=-- R R _c R 8 8 c 8 | R R _c R 8 9 10 8 | R R _c R 5 c 8 5 | R R _c R 5 6 c 5 | R R _c R 3 5 6 5 | R R 2 R 8 8 c 5 | R R _c R 5 5 6 5
T x=xxx=--x=x=x=xx R R _c R 5 4 3 >> > | R R _c R 3 4 5 >> > | R R _c R c 5 3 >> > | R R _c R _5 _c R >> > | R R 2 R 5 4 3 >> > | R R _c R 5 3 5 >> >
H1 x=xxx=-- R R _c R | R R 2 R | R R > > | R R 3 R | R R 3 5
H2 x=xxx=-- R R _c R | R 3 4 5 | R 5 4 3 | R 5 3 > | R 3 5 > | R _5 _c > | R R 3 >
H2 ----x=xx R >> >
H2 x=--x=xx R 5 >> > | R 3 >> > | R _5 >> >

tune top-drop 3-5: the one and its late echo below, the octave on the push, and from it down in steps; where the neck has no octave the fifth is the floor
S x==x--x=x=--xxx= R R 8 c 5 4 3 | R R 8 c 5 3 > !ch | R R 8 c 5 4 > !ch | R R 8 c 8 c 5 | R R _5 _c R 3 > !ch | R R _5 _c R 4 3 | R R 5 4 3 4 5 | R R 5 3 R 3 > !ch | R R _c _5 _c R > !ch
A x==x--x=x=x=x=x= R R 8 c 5 3 > | R R 8 c 5 4 > | R R 8 c 5 4 3 | R R _5 _c R 3 > | R R _5 _c R 5 > | R R 5 4 3 R > | R R 5 3 R _c > | R R _c _5 _c R >
S x==x--x=x=--xxx= R R 8 c 5 4 3 | R R 8 c 5 3 > !ch | R R 8 c 5 4 > !ch | R R 8 c 8 c 5 | R R _5 _c R 3 > !ch | R R _5 _c R 4 3 | R R 5 4 3 4 5 | R R 5 3 R 3 > !ch | R R _c _5 _c R > !ch
C x==xx=--------x= R _c R > | R 8 c > | R R 8 > | R _5 _c > | R 5 3 >
S x==x--x=x=--xxx= R R 8 c 5 4 3 | R R 8 c 5 3 > !ch | R R 8 c 5 4 > !ch | R R 8 c 8 c 5 | R R _5 _c R 3 > !ch | R R _5 _c R 4 3 | R R 5 4 3 4 5 | R R 5 3 R 3 > !ch | R R _c _5 _c R > !ch
A x==x--x=x=x=x=x= R R 8 c 5 3 > | R R 8 c 5 4 > | R R 8 c 5 4 3 | R R _5 _c R 3 > | R R _5 _c R 5 > | R R 5 4 3 R > | R R 5 3 R _c > | R R _c _5 _c R >
L x==x--x=x=--xxx= R R 8 10 9 8 c | R R 8 9 10 9 8 | R R 8 c 8 c 5 | R R 5 8 c 5 > !ch | R R 5 c 8 c 5 | R R _5 R 5 6 5 | R R 3 5 6 5 3 | R R 3 5 5 4 > !ch
T x==x--x=x=x=xxx= R R 8 c 5 3 >> > | R R 8 c 5 4 3 > | R R _5 _c R 3 >> > | R R _5 _c R 5 >> > | R R 5 4 3 R >> > | R R 5 3 R _c >> > | R R _c _5 _c R >> >
H1 x==x--x= R R _c | R R > | R R 3 | R R 5 | R R 8
H2 x==x--x= R R > | R R 5
H2 x=--xxx= R 5 4 3 | R 3 4 5 | R 5 3 > | R 3 4 > | R _5 _c > | R c 5 >
H2 ----x=x= R >
H2 x=--x=x= R 5 > | R 3 > | R _5 >

tune blue-hinge 4-5: two on the one, the seventh below falls back on three, and the third is bent up from under it
S xx----x=x=xxx=-- R R _c R b3 3 5 | R R _c R 3 4 5 | R R c 8 5 4 3 | R R _c R b3 3 > !ch | R R _c R 5 4 3 | R R _c R 5 #4 4 | R R _c R 5 3 > !ch | R R _c R _5 _c R | R R _c R _5 _c > !ch
A xx----x=x=--x=xx R R _c R 5 >> > | R R _c R 3 >> > | R R _c R _5 >> > | R R c 8 5 >> > | R R 8 c 5 >> > | R R _c R 5 b3 3
S xx----x=x=xxx=-- R R _c R b3 3 5 | R R _c R 3 4 5 | R R c 8 5 4 3 | R R _c R b3 3 > !ch | R R _c R 5 4 3 | R R _c R 5 #4 4 | R R _c R 5 3 > !ch | R R _c R _5 _c R | R R _c R _5 _c > !ch
C xx--x=--------x= R R R > | R R 8 > | R R _5 > | R R _c >
S xx----x=x=xxx=-- R R _c R b3 3 5 | R R _c R 3 4 5 | R R c 8 5 4 3 | R R _c R b3 3 > !ch | R R _c R 5 4 3 | R R _c R 5 #4 4 | R R _c R 5 3 > !ch | R R _c R _5 _c R | R R _c R _5 _c > !ch
A xx----x=x=--x=xx R R _c R 5 >> > | R R _c R 3 >> > | R R _c R _5 >> > | R R c 8 5 >> > | R R 8 c 5 >> > | R R _c R 5 b3 3
L xx----x=x=xxx=-- R R c 8 10 9 8 | R R c 8 c 8 5 | R R 5 8 c 8 5 | R R _c R 3 5 8 | R R 3 5 6 c 5 | R R _c R 5 6 c | R R 5 c 8 c 5
T xx----x=x=x=x=xx R R _c R 3 5 >> > | R R _c R 5 3 >> > | R R c 8 5 3 >> > | R R _c R _5 _c >> > | R R _c R 5 4 3 > | R R 8 c 5 3 >> >
H1 xx----x= R R _c | R R > | R R 3 | R R 5 | R R c
H2 x=xxx=-- R b3 3 5 | R 3 4 5 | R 5 4 3 | R 3 5 > | R 5 3 > | R _5 _c >
H2 ----x=xx R >> >
H2 x=--x=xx R 5 >> > | R 3 >> > | R _5 >> >

tune two-knocks 4-5: the one and its late echo, the seventh below and the root before three, air on three, and three sixteenths behind it into four
S x==x--xx--xxx=-- R R _c R 3 4 5 | R R _c R 5 4 3 | R R c 8 5 c 8 | R R _c R 5 c 5 | R R _c R b3 3 5 | R R c 8 5 4 3 | R R _5 _c R 3 5 | R R 5 8 c 5 3
A x==x--xx--xxx=-x R R _c R 5 4 3 > | R R _c R 3 4 5 > | R R _c R 3 R _c > | R R c 8 5 3 R > | R R c 8 c 5 3 > | R R _5 _c R 3 5 > | R R 5 8 5 3 R >
S x==x--xx--xxx=-- R R _c R 3 4 5 | R R _c R 5 4 3 | R R c 8 5 c 8 | R R _c R 5 c 5 | R R _c R b3 3 5 | R R c 8 5 4 3 | R R _5 _c R 3 5 | R R 5 8 c 5 3
C x==x--xx------xx R R _c R >> > | R R c 8 >> > | R R _5 _c >> > | R R 5 8 >> > | R R 3 5 >> >
S x==x--xx--xxx=-- R R _c R 3 4 5 | R R _c R 5 4 3 | R R c 8 5 c 8 | R R _c R 5 c 5 | R R _c R b3 3 5 | R R c 8 5 4 3 | R R _5 _c R 3 5 | R R 5 8 c 5 3
A x==x--xx--xxx=-x R R _c R 5 4 3 > | R R _c R 3 4 5 > | R R _c R 3 R _c > | R R c 8 5 3 R > | R R c 8 c 5 3 > | R R _5 _c R 3 5 > | R R 5 8 5 3 R >
L x==x--xx--xxx=-- R R c 8 10 9 8 | R R c 8 8 9 10 | R R 5 8 10 8 c | R R _c R 3 5 8 | R R 5 8 c 8 5 | R R 3 5 8 c 5
T x==x--xx--xxx=xx R R _c R 3 5 c >> > | R R _c R 5 4 3 >> > | R R c 8 5 4 3 >> > | R R _c R 5 3 R >> > | R R _5 _c R 3 5 >> > | R R 5 8 c 5 3 >> >
H1 x==x--xx R R _c R | R R b3 3 | R R >> > | R R 3 5
H1 x==x---- R R
H2 x==x--xx R R >> > | R R 5 > | R R _c R
H2 x==x--x= R R >
`;
