/** Rockers: tunes of eight bars (see the notation beside the books). */
export const ROCKERS_TUNES = `
tune engine 1-2: a pair on one and a pair on three, both cut short; the answer drives on and leads
S xx--xx-- R R 3 5 | R R 5 R | R R 5 3 | R R 5 5 | 8 8 5 3 | R R 5 8 | R R _5 R | R R R > | R R 8 5 | 5 5 3 R !co
A xx--x=x= 8 8 5 > | R R 3 > | R R 5 > | R 5 3 > | R R _5 > | R R R > | R R 8 5 | 8 8 3 > | 5 5 R > !co
S xx--xx-- R R 3 5 | R R 5 R | R R 5 3 | R R 5 5 | 8 8 5 3 | R R 5 8 | R R _5 R | R R R > | R R 8 5 | 5 5 3 R !co
C xx--x=-- R R > | R R R | 8 8 5 | R R _5 | 8 8 > | R R 3 | 8 5 3
S xx--xx-- R R 3 5 | R R 5 R | R R 5 3 | R R 5 5 | 8 8 5 3 | R R 5 8 | R R _5 R | R R R > | R R 8 5 | 5 5 3 R !co
A xx--x=x= R R 3 > | 8 8 5 > | R R 5 > | R 5 3 > | R R _5 > | R R R > | R R 8 5 | 8 8 3 > | 5 5 R > !co
L xx--xx-- 8 8 10 8 | 8 8 5 8 | R R 8 10 | R R 8 8 | R R 3 8 | R R 5 > | R R 8 5 | R R 5 8 | 8 8 5 5 | R R 5 5
T xx--x=x= R R 5 > | R R >> > | 8 8 5 > | R R 3 > | R R _5 > | 8 8 >> > | R R R > | R 5 R >
H1 xx-- R R | 8 8 | R 5 | R 3
H2 x=x= R > | 8 > | R 5 | R 3

tune late-train 1-2: one alone, then a pair on three and a step out; the answer pulls up after the pair
S x=--xxx= R 3 5 > | R 5 5 8 | R 3 3 5 | R 5 R > | R 5 3 > | R R 5 > | R _5 _5 > | R R R > | R 8 5 > | 5 3 R > !co
A x=--xx-- 8 5 3 | 8 5 R | R 5 3 | R 5 R | R 3 R | R 5 5 | R _5 R | R R > | 8 5 5 | R 5 > | 5 3 R !co
S x=--xxx= R 3 5 > | R 5 5 8 | R 3 3 5 | R 5 R > | R 5 3 > | R R 5 > | R _5 _5 > | R R R > | R 8 5 > | 5 3 R > !co
C x=--x=-- R > | R R | 8 5 | R _5 | 8 > | R 5 | R 3
S x=--xxx= R 3 5 > | R 5 5 8 | R 3 3 5 | R 5 R > | R 5 3 > | R R 5 > | R _5 _5 > | R R R > | R 8 5 > | 5 3 R > !co
L x=--xxx= 8 8 8 10 | 8 5 5 8 | R 3 5 8 | R 8 8 5 | 8 10 8 > | R 5 8 > | R 5 5 > | R 8 5 > | 8 8 5 > | R R 5 > | 8 5 8 >
A x=--xx-- 8 5 3 | 8 5 R | R 5 3 | R 5 R | R 3 R | R 5 5 | R _5 R | R R > | 8 5 5 | R 5 > | 5 3 R !co
T x=--xxx= R R 5 > | R 3 5 > | R 5 R > | R 5 3 > | 8 5 5 > | R 5 >> > | R _5 R > | R 3 >> > | R 5 5 >
H1 x=-- R | 8
H2 xxx= R R > | R 5 > | 8 8 > | R 3 >

tune tail-light 1-2: a pair, the drop, and a quick tail on four; the answer loses the tail
S xx--x=xx R R 5 3 > | R R 8 5 > | R R 3 5 > | R R 5 R > | 8 8 5 3 > | R R _5 R > | R R 3 >> > | R R 5 8 > | R R R 5 > | R R 5 5 > | 8 8 5 5 > | R R _5 _5 > | 5 5 3 R > !co
A xx--x=-- 8 8 5 | R R 3 | 8 5 3 | R R 5 | R R R | R R _5 | R R > | R R 8 | 5 5 R !co
S xx--x=xx R R 5 3 > | R R 8 5 > | R R 3 5 > | R R 5 R > | 8 8 5 3 > | R R _5 R > | R R 3 >> > | R R 5 8 > | R R R 5 > | R R 5 5 > | 8 8 5 5 > | R R _5 _5 > | 5 5 3 R > !co
C xx--x=-- R R > | R R R | R R 3 | 8 8 5 | R R _5 | R R 5 | 8 8 > | 8 8 3
S xx--x=xx R R 5 3 > | R R 8 5 > | R R 3 5 > | R R 5 R > | 8 8 5 3 > | R R _5 R > | R R 3 >> > | R R 5 8 > | R R R 5 > | R R 5 5 > | 8 8 5 5 > | R R _5 _5 > | 5 5 3 R > !co
A xx--x=-- 8 8 5 | R R 3 | R R 8 | R 3 5 | R R 5 | R R R | R R _5 | R R > | 5 5 R !co
L xx--x=xx 8 8 10 8 > | 8 8 8 5 > | R R 3 5 8 | R R 5 8 > | 8 8 10 8 5 | 8 8 5 8 > | R R 5 5 > | R R 8 8 5
T x=--x=xx R 5 R > | R 5 >> > | 8 5 5 > | R 3 >> > | R _5 R > | 8 5 >> > | R R 5 > | R 5 5 >
H1 xx-- R R | 8 8 | R 5 | R 3
H2 x=xx R R > | R 5 > | 8 5 > | R 3 >

tune short-stop 1-2: a pair and two clipped knocks; the answer has one on the one and rolls to four
S xx--x-x- R R 3 5 | R R 5 8 | R R 3 > | R R 5 > | 8 8 5 3 | R R R > | R R _5 > | R R 8 5 | R R 5 5 | 5 5 3 > !co
A x=--xxx= 8 5 3 > | 8 5 5 > | R 3 R > | R 5 R > | R 5 3 > | R R R > | R _5 R > | 8 8 5 > | R 5 5 > | 5 3 R > !co
S xx--x-x- R R 3 5 | R R 5 8 | R R 3 > | R R 5 > | 8 8 5 3 | R R R > | R R _5 > | R R 8 5 | R R 5 5 | 5 5 3 > !co
C xx--x--- R R > | R R R | 8 8 5 | R R _5 | 8 8 > | R R 3
S xx--x-x- R R 3 5 | R R 5 8 | R R 3 > | R R 5 > | 8 8 5 3 | R R R > | R R _5 > | R R 8 5 | R R 5 5 | 5 5 3 > !co
S xx--x-x- 8 8 5 > | R R 5 3 | R R 8 > | R R 5 > | R R _5 > | R R R > | 8 8 3 >
L xx--x-x- 8 8 10 8 | 8 8 8 5 | R R 8 10 | R R 5 8 | R R 3 8 | R R 8 > | R R 5 > | 8 8 5 8
T x=--xxx= R 5 R > | R 5 3 > | R R 5 > | R 3 5 > | 8 5 5 > | R 5 >> > | R _5 R > | 8 5 >> > | R 5 5 >
H1 xx-- R R | 8 8 | R 5 | R 3
H2 x-x- R > | 8 > | R 5 | R 3

tune piston 3-4: the pair on one, a note kicked in before three, a step out; the answer rolls down to the next root
S xx-xx=x= R R _7 R 2 | R R 2 3 > | R R 5 6 > | R R _6 _5 > | R R 3 2 > | R R 4 5 6 | 8 8 7 6 5 | R R _7 R > | 5 5 4 3 2 !co | 3 3 4 5 > !co
A xx--xxxx 8 8 7 6 >> > | R R 3 2 >> > | R R 5 4 >> > | R R _7 _6 >> > | 8 8 6 5 >> > | R R 2 3 >> > | R R 5 6 >> > | 5 5 4 3 >> > !co
S xx-xx=x= R R _7 R 2 | R R 2 3 > | R R 5 6 > | R R _6 _5 > | R R 3 2 > | R R 4 5 6 | 8 8 7 6 5 | R R _7 R > | 5 5 4 3 2 !co | 3 3 4 5 > !co
C xx--x=-- 8 8 7 | R R 2 | R R > | R R R | R R _7 | R R 3 | 8 8 > | R R _6
S xx-xx=x= R R _7 R 2 | R R 2 3 > | R R 5 6 > | R R _6 _5 > | R R 3 2 > | R R 4 5 6 | 8 8 7 6 5 | R R _7 R > | 5 5 4 3 2 !co | 3 3 4 5 > !co
A xx--xxxx 8 8 6 5 >> > | R R 3 2 >> > | R R 5 4 >> > | R R _7 _6 >> > | 8 8 7 6 >> > | R R 2 3 >> > | R R 5 6 >> > | 5 5 4 3 >> > !co
L xx-xx=x= 8 8 9 10 > | 8 8 7 8 9 | R R 5 6 8 | R R 3 5 > | 8 8 9 8 6 | R R 5 6 > | 5 5 6 8 > !co
T x=--xxxx R 5 6 >> > | R 3 2 >> > | 8 6 5 >> > | R _5 _6 >> > | R 2 3 >> > | R 5 4 >> >
H1 xx-x R R > | R R 2 | 8 8 7 | R R 3
H2 x=x= R > | 8 > | R 2 | R 3

tune chain 3-4: one link on one, then four quick ones off three by step; the answer is a pair, the drop and a plain lead
S x=--xxxx R 2 3 4 5 | R 5 6 5 > | R 3 2 R > | R R 2 3 > | R _6 _7 R > | 8 7 6 5 > | R 5 4 3 2 | 5 6 5 4 3 !co | 3 4 5 6 > !co
A xx--x=x= 8 8 7 > | R R 2 > | 8 8 6 5 | R R 5 > | R R _7 _6 | R R 3 2 | 8 8 5 > | R R _5 > | 5 5 4 3 !co
S x=--xxxx R 2 3 4 5 | R 5 6 5 > | R 3 2 R > | R R 2 3 > | R _6 _7 R > | 8 7 6 5 > | R 5 4 3 2 | 5 6 5 4 3 !co | 3 4 5 6 > !co
C xx--x=-- R R > | R R R | 8 8 7 | R R _7 | R R 3 | 8 8 > | R R _6 | R R 2
S x=--xxxx R 2 3 4 5 | R 5 6 5 > | R 3 2 R > | R R 2 3 > | R _6 _7 R > | 8 7 6 5 > | R 5 4 3 2 | 5 6 5 4 3 !co | 3 4 5 6 > !co
L x=--xxxx 8 9 10 9 8 | 8 7 8 9 > | R 5 6 7 8 | R 3 4 5 > | 8 9 8 6 > | R 5 6 8 > | 5 6 7 8 > !co
A xx--x=x= 8 8 7 > | R R 2 > | 8 8 6 5 | R R 5 > | R R _7 _6 | R R 3 2 | 8 8 5 > | R R _5 > | 5 5 4 3 !co
T xx--xxxx R R 3 2 >> > | 8 8 6 5 >> > | R R _5 _6 >> > | R R 2 3 >> > | R R 5 4 >> > | R R 5 6 >> >
H1 x=-- R | 8
H2 xxxx R 2 >> > | R 3 >> > | 8 7 >> > | R _7 >> >

tune push-bar 3-4: two pairs, a hole on four, and the last half beat shoves into the next bar; the answer puts four back
S xx--xx-x R R 5 6 > | R R 3 2 > | R R 2 3 > | R R _7 _6 > | R R 5 4 > | 8 8 7 6 > | R R _5 _6 > | R R 3 5 > | 5 5 4 3 > !co | 3 3 2 R > !co
A xx--xxx= 8 8 7 6 5 | R R 5 4 > | R R 2 3 > | R R 3 2 > | R R _7 _6 _5 | 8 8 6 5 > | R R _6 _7 > | 5 5 4 3 2 !co
S xx--xx-x R R 5 6 > | R R 3 2 > | R R 2 3 > | R R _7 _6 > | R R 5 4 > | 8 8 7 6 > | R R _5 _6 > | R R 3 5 > | 5 5 4 3 > !co | 3 3 2 R > !co
C xx--x=-- R R > | R R R | 8 8 7 | R R _7 | R R 3 | 8 8 > | R R _6 | R R 2
S xx--xx-x R R 5 6 > | R R 3 2 > | R R 2 3 > | R R _7 _6 > | R R 5 4 > | 8 8 7 6 > | R R _5 _6 > | R R 3 5 > | 5 5 4 3 > !co | 3 3 2 R > !co
S xx--xx-x 8 8 9 8 > | 8 8 6 5 > | R R 5 6 > | R R 2 3 > | R R _7 _6 > | R R 3 2 >
L xx--xxx= 8 8 9 10 8 | 8 8 9 8 > | R R 5 6 8 | R R 3 5 > | 8 8 7 8 9 | R R 5 6 >
T x=--xxxx 8 6 5 >> > | R _5 _6 >> > | R 2 3 >> > | R 5 4 >> > | R 5 6 >> > | R 3 2 >> >
H1 xx-- R R | 8 8 | R _7
H2 xx-x R 2 > | R R > | 8 7 > | R 3 >

tune flywheel 4-5: the pair spins through the and of two into a run of three; the answer is stopped and leads from four
S xx-xxxx= R R _7 R 2 3 | R R 2 3 4 5 | R R 3 2 R > | R R 5 6 5 > | R R _7 _6 _5 > | 8 8 7 6 5 > | R R 4 5 6 > | R R c 5 4 3 | 5 5 6 5 4 3 !co | 3 3 4 5 6 > !co
A x=--x=xx 8 6 >> > | R 2 >> > | R 5 >> > | R 3 >> > | R _6 >> > | 8 c >> > | 8 5 >> > | 5 3 >> > !co
S xx-xxxx= R R _7 R 2 3 | R R 2 3 4 5 | R R 3 2 R > | R R 5 6 5 > | R R _7 _6 _5 > | 8 8 7 6 5 > | R R 4 5 6 > | R R c 5 4 3 | 5 5 6 5 4 3 !co | 3 3 4 5 6 > !co
C x=--x=-- R > | 8 > | 8 c | R _7 | R 3 | R _6 | R 2 | R R
S xx-xxxx= R R _7 R 2 3 | R R 2 3 4 5 | R R 3 2 R > | R R 5 6 5 > | R R _7 _6 _5 > | 8 8 7 6 5 > | R R 4 5 6 > | R R c 5 4 3 | 5 5 6 5 4 3 !co | 3 3 4 5 6 > !co
A x=--x=xx R 5 >> > | 8 6 >> > | R 2 >> > | R 3 >> > | R _6 >> > | 8 c >> > | 8 5 >> > | 5 3 >> > !co
L xx-xxxx= 8 8 7 8 9 10 | 8 8 9 10 9 8 | R R 5 6 7 8 | R R 3 4 5 > | 8 8 9 8 6 > | 5 5 6 7 8 > !co
T xx-xxxxx R R _6 _5 _6 >> > | R R 5 4 3 >> > | R R 4 #4 5 >> > | R R 3 5 6 >> > | R R _7 R 2 >> > | 8 8 7 6 5 >> >
H1 xx-x R R > | R R 2 | 8 8 7 | R R _7
H2 xxx= R 2 > | R 3 > | 8 7 > | R _7 >

tune crossing 4-5: one, a kick before three, two quick and a shove over the bar line; the answer starts with the pair and rolls
S x--xxx-x R 5 6 5 > | R R 2 3 > | R _7 R 2 > | R _6 _5 _6 > | R 3 4 3 > | 8 7 6 5 > | R 2 3 2 > | R c 5 4 > | 5 6 5 3 > !co | 3 2 R _7 > !co
A xx--xxxx 8 8 7 6 >> > | R R 2 3 >> > | R R 5 4 >> > | R R 3 2 >> > | R R _7 _6 >> > | 8 8 c 5 >> > | R R b3 3 >> > | 5 5 4 3 >> > !co
S x--xxx-x R 5 6 5 > | R R 2 3 > | R _7 R 2 > | R _6 _5 _6 > | R 3 4 3 > | 8 7 6 5 > | R 2 3 2 > | R c 5 4 > | 5 6 5 3 > !co | 3 2 R _7 > !co
C x--xx=-- R 3 2 | R 2 > | R _7 R | 8 7 6 | R R > | R 2 3 | 8 c > | 5 4 3 !co
S x--xxx-x R 5 6 5 > | R R 2 3 > | R _7 R 2 > | R _6 _5 _6 > | R 3 4 3 > | 8 7 6 5 > | R 2 3 2 > | R c 5 4 > | 5 6 5 3 > !co | 3 2 R _7 > !co
A xx--xxxx 8 8 6 5 >> > | R R 2 3 >> > | R R 5 4 >> > | R R 3 2 >> > | R R _7 _6 >> > | 8 8 c 5 >> > | R R b3 3 >> > | 5 5 4 3 >> > !co
L x--xxx-x 8 9 10 9 > | 8 9 8 6 > | R 5 6 8 > | R 5 8 9 > | 8 7 8 9 > | R 3 5 6 > | 5 6 8 9 > !co
T xx--xxxx R R 5 6 >> > | R R 3 2 >> > | 8 8 6 5 >> > | R R _5 _6 >> > | R R 2 3 >> > | R R #4 5 >> >
H1 x--x R > | R R | 8 7 | R 2
H2 xx-x R 2 > | R R > | 8 7 > | R 3 >

tune stop-sign 4-5: a figure of pairs with the kick on three inside, a bare bar before the end, then the run home
S xx-xx-xx R R _7 R 2 3 | R R 3 2 >> > | R R 5 6 >> > | R R 2 3 >> > | R R _6 _5 >> > | 8 8 7 6 >> > | R R c 5 >> > | 8 8 6 5 >> > | 5 5 4 3 >> > !co | 3 3 2 R >> > !co
A xx--x=x= 8 8 7 > | R R 5 > | 8 8 6 5 | R R 3 2 | R R 2 > | R R _7 _6 | 8 8 c > | 5 5 4 > !co
S xx-xx-xx R R _7 R 2 3 | R R 3 2 >> > | R R 5 6 >> > | R R 2 3 >> > | R R _6 _5 >> > | 8 8 7 6 >> > | R R c 5 >> > | 8 8 6 5 >> > | 5 5 4 3 >> > !co | 3 3 2 R >> > !co
A xx--x=x= R R 5 > | R R 3 2 | 8 8 7 > | 8 8 6 5 | R R 2 > | R R _7 _6 | 8 8 c > | 5 5 4 > !co
S xx-xx-xx R R _7 R 2 3 | R R 3 2 >> > | R R 5 6 >> > | R R 2 3 >> > | R R _6 _5 >> > | 8 8 7 6 >> > | R R c 5 >> > | 8 8 6 5 >> > | 5 5 4 3 >> > !co | 3 3 2 R >> > !co
L xx-xx-xx 8 8 9 10 >> > | 8 8 7 8 9 8 | R R 5 6 8 9 | R R 5 8 >> > | R R 3 5 >> > | 8 8 9 8 >> > | 5 5 6 8 >> > !co
C xx--x--- R R > | R R R | 8 8 7 | R R _7 | R R 3 | 8 8 > | R R _6 | R R 2
T x=--xxxx R 3 2 >> > | 8 6 5 >> > | R _5 _6 >> > | R 2 3 >> > | R 5 4 >> > | R 5 6 >> >
H1 xx-x R R > | R R 2 | 8 8 7 | R R _7
H2 x-xx R >> > | 8 >> > | R 2 > | R 3 >
`;
