/** Soul backbeat: tunes of eight bars (see the notation beside the books). */
export const SOUL_BACKBEAT_TUNES = `
tune three-and 1-2: the root pushed once more, a pair on three that goes up, and four short; the answer comes down and picks up on four
S x==xxxx- R R 3 5 > | R R 3 5 3 | R R 5 8 > | R R 5 8 5 | R R 5 3 > | R R 5 R > | R R _5 R > | R R 5 3 R | 8 8 5 3 > | R R 5 R _5 | R R _5 R 5
A x==xx-xx 8 8 5 3 > | R R 5 3 > | 8 5 3 R > | R R 3 5 > | R R _5 R > | R R 5 R > | 8 8 5 R > | R 5 3 R > | R R 5 8 > | R R 3 R > | R _5 R 5 > | R 5 R _5 >
S x==xxxx- R R 3 5 > | R R 3 5 3 | R R 5 8 > | R R 5 8 5 | R R 5 3 > | R R 5 R > | R R _5 R > | R R 5 3 R | 8 8 5 3 > | R R 5 R _5 | R R _5 R 5
C x==xx-x- R R 5 > | R R 3 > | R R _5 > | 8 8 5 > | R 5 R >
S x==xxxx- R R 3 5 > | R R 3 5 3 | R R 5 8 > | R R 5 8 5 | R R 5 3 > | R R 5 R > | R R _5 R > | R R 5 3 R | 8 8 5 3 > | R R 5 R _5 | R R _5 R 5
A x==xx-xx 8 8 5 3 > | R R 5 3 > | 8 5 3 R > | R R 3 5 > | R R _5 R > | R R 5 R > | 8 8 5 R > | R 5 3 R > | R R 5 8 > | R R 3 R > | R _5 R 5 > | R 5 R _5 >
L x==xxxx- R R 5 8 5 | 8 8 10 8 5 | R R 3 5 8 | 8 8 5 8 > | R R 5 8 > | R 3 5 8 5 | R R 5 8 10 | R R 3 8 > | R R _5 R 5 | R R 5 R >
T x==xx-xx R R 5 R > | R R 3 5 > | R R 5 3 > | R R _5 R > | 8 8 5 3 > | R 3 5 R > | R R 3 >> > | R R 5 >> > | R 5 R _5 >
H1 x==x R R | R > | R 5 | R 3 | 8 8 | R _5
H2 x-xx R 5 > | R 3 > | R R > | R _5 > | 8 5 >
H2 x-x- R > | R 3 | R 5

tune down-the-steps 1-2: the root and its push, a tone on three, a pair on four that walks to the bar line; the answer turns up on three
S x==xx-xx 8 8 5 3 > | R R 5 3 > | 8 5 3 R > | R R 3 5 > | R R _5 R > | R R 5 R > | 8 8 5 R > | R 5 3 R > | R R 5 8 > | R R 3 R > | R _5 R 5 > | R 5 R _5 >
A x==xxxx- R R 3 5 > | R R 5 8 > | R R 3 5 3 | R R _5 R > | R R 5 R > | R R 5 8 5 | R R 5 R 5 | R 3 5 3 R | R 3 5 8 >
S x==xx-xx 8 8 5 3 > | R R 5 3 > | 8 5 3 R > | R R 3 5 > | R R _5 R > | R R 5 R > | 8 8 5 R > | R 5 3 R > | R R 5 8 > | R R 3 R > | R _5 R 5 > | R 5 R _5 >
C x==xx-x- R R 5 > | R R 3 > | R R _5 > | 8 8 5 > | R 5 R >
S x==xx-xx 8 8 5 3 > | R R 5 3 > | 8 5 3 R > | R R 3 5 > | R R _5 R > | R R 5 R > | 8 8 5 R > | R 5 3 R > | R R 5 8 > | R R 3 R > | R _5 R 5 > | R 5 R _5 >
A x==xxxx- R R 3 5 > | R R 5 8 > | R R 3 5 3 | R R _5 R > | R R 5 R > | R R 5 8 5 | R R 5 R 5 | R 3 5 3 R | R 3 5 8 >
L x==xx-xx R R 5 8 > | 8 8 10 8 > | R 5 8 5 > | R 3 5 8 > | 8 8 5 8 5 | R 5 8 10 8 | R R 3 8 5 | R R _5 5 > | R R 5 R >
T x==xx-xx R R 5 R > | R R 3 5 > | R R 5 3 > | R R _5 R > | 8 8 5 3 > | R 3 5 R > | R R 3 >> > | R R 5 >> > | R 5 R _5 >
H1 x==x R R | R > | R 5 | R 3 | 8 8 | R _5
H2 x-xx R 5 > | R 3 > | R R > | R _5 > | 8 5 >
H2 x-x- R > | R 3 | R 5

tune kick-and-answer 1-2: one, the push and a short three go up, four leads; the same cell comes down with a pair before the bar line
S x==xx-x- R 3 5 > | R 5 8 > | R R 5 > | R R 3 > | R 5 R > | R R _5 > | R R _5 R | R R 5 R | R 5 3 > | R 3 5 3 | R 5 8 5 | R _5 R 5
A x==xx-xx 8 8 5 3 > | R R 5 3 > | 8 5 3 R > | R R 3 5 > | R R _5 R > | R R 5 R > | 8 8 5 R > | R 5 3 R > | R R 5 8 > | R R 3 R > | R _5 R 5 > | R 5 R _5 >
S x==xx-x- R 3 5 > | R 5 8 > | R R 5 > | R R 3 > | R 5 R > | R R _5 > | R R _5 R | R R 5 R | R 5 3 > | R 3 5 3 | R 5 8 5 | R _5 R 5
C x==xxxx- R R 3 5 > | R R 5 R > | R R 5 3 > | R R _5 R > | R 5 R 5 >
S x==xx-x- R 3 5 > | R 5 8 > | R R 5 > | R R 3 > | R 5 R > | R R _5 > | R R _5 R | R R 5 R | R 5 3 > | R 3 5 3 | R 5 8 5 | R _5 R 5
A x==xx-xx 8 8 5 3 > | R R 5 3 > | 8 5 3 R > | R R 3 5 > | R R _5 R > | R R 5 R > | 8 8 5 R > | R 5 3 R > | R R 5 8 > | R R 3 R > | R _5 R 5 > | R 5 R _5 >
L x==xx-x- R 5 8 5 | 8 8 10 8 | R 3 8 > | R 5 8 > | 8 8 10 > | R 5 8 10 | R 3 5 8 | R _5 5 > | R R 5 > | R 5 R >
T x==xxxxx R R 3 5 3 > | R R 5 8 5 R | R R 5 3 R > | R R _5 R 5 > | R R 5 R 5 > | R 3 5 8 5 > | 8 8 5 3 R > | R R 5 R _5 >
H1 x==x R R | R > | R 5 | R 3 | 8 8 | R _5
H2 x-xx R 5 > | R 3 > | R R > | R _5 > | 8 5 >
H2 x-x- R > | R 3 | R 5

tune leaning-door 3-5: one, the push that leans on three, and one short note out of the hole; the answer walks down off three
S x=-xx=-x R 3 5 > | R 5 6 > | R R 5 > | R R 3 > | R 5 3 > | R 2 3 > | R _7 R > | R _5 R > | R 4 5 > | 8 c 5 >
A x=-xxx-x 8 c 5 3 > | 8 8 5 3 > | R R 5 4 > | R 5 3 2 > | R 3 5 6 > | R R 3 2 > | R 2 3 5 > | 8 6 5 4 > | R R _5 _6 > | R _7 _5 _6 >
S x=-xx=-x R 3 5 > | R 5 6 > | R R 5 > | R R 3 > | R 5 3 > | R 2 3 > | R _7 R > | R _5 R > | R 4 5 > | 8 c 5 >
C x=-xx=x= R R 5 > | R R 3 > | R R _5 > | R 5 3 > | R 3 5 > | 8 8 5 >
S x=-xx=-x R 3 5 > | R 5 6 > | R R 5 > | R R 3 > | R 5 3 > | R 2 3 > | R _7 R > | R _5 R > | R 4 5 > | 8 c 5 >
A x=-xxx-x 8 c 5 3 > | 8 8 5 3 > | R R 5 4 > | R 5 3 2 > | R 3 5 6 > | R R 3 2 > | R 2 3 5 > | 8 6 5 4 > | R R _5 _6 > | R _7 _5 _6 >
L x=-xx=-x 8 9 10 > | R 5 8 > | 8 8 10 > | R c 8 > | 8 10 8 > | 5 6 8 > !co | R 3 8 > | R 5 10 >
T x=-xxxxx R R 3 4 5 > | R R 5 4 3 > | R R 3 5 >> > | R R 5 6 >> > | 8 c 5 3 >> > | R R 5 3 >> > | R R _5 _6 >> > | R R _7 _5 >> >
H1 x=-x R > | R 5 | R 3 | R R | 8 7 | R 2
H2 x=-x R > | R 5 | R 3 | 8 >
H2 xx-x R 3 > | R 5 > | R R >

tune double-knock 3-5: two knocks on one, air, the push and three, and a late lead; the answer goes down the stair
S xx-xx=-x R R 3 5 > | R R 5 6 > | R R 5 3 > | R R 4 5 > | R R 2 3 > | R R _7 R > | R R _5 R > | 8 8 c 5 > | R R c 5 >
A xx-xxx-x 8 8 c 5 3 > | R R 5 5 4 > | R R 3 5 6 > | R R 2 3 5 > | R R 4 5 3 > | R R _7 _5 _6 > | R R 5 3 2 > | R R _7 R 3 > | 8 8 6 5 3 >
S xx-xx=-x R R 3 5 > | R R 5 6 > | R R 5 3 > | R R 4 5 > | R R 2 3 > | R R _7 R > | R R _5 R > | 8 8 c 5 > | R R c 5 >
C xx-xx=x= R R R 5 > | R R R 3 > | R R 3 5 > | R R 5 3 > | R R _7 R > | 8 8 c 5 >
S xx-xx=-x R R 3 5 > | R R 5 6 > | R R 5 3 > | R R 4 5 > | R R 2 3 > | R R _7 R > | R R _5 R > | 8 8 c 5 > | R R c 5 >
A xx-xxx-x 8 8 c 5 3 > | R R 5 5 4 > | R R 3 5 6 > | R R 2 3 5 > | R R 4 5 3 > | R R _7 _5 _6 > | R R 5 3 2 > | R R _7 R 3 > | 8 8 6 5 3 >
L xx-xx=-x R R 5 8 > | 8 8 9 10 > | R R c 8 > | 8 8 8 10 > | R R 3 8 > | R R 5 10 > | R R 6 8 >
T xx-xxxxx R R 3 5 4 3 > | R R 2 3 4 5 > | R R 4 5 3 >> > | R R 2 3 5 >> > | 8 8 c 5 3 >> > | R R _7 _5 _6 >> > | R R R 5 3 >> > | R R R 3 5 >> >
H1 xx-x R R > | R R 5 | R R 3 | R R 2 | 8 8 7 | R R _7
H2 x=-x R > | R 5 | R 3
H2 xx-x R 3 > | R 5 > | R R >

tune side-step 3-5: the root and its push, a chord tone and its neighbour on three, and a half step into the bar line; the answer climbs in a pair on four
S x=-xxx-x R R 5 6 > | R R 5 3 > | R R 3 2 > | R R 3 5 > | R R 5 4 3 | 8 8 5 3 > | R R _5 _6 > | R R R 3 > | R 2 3 5 > | 8 c 5 3 >
A x=-xx=xx R R 3 4 > | R R 3 2 > | R R 5 6 > | R R 5 3 > | R R 5 4 3 | 8 c 5 4 3 | R R _5 _6 > | R R R 3 > | R R 5 >> >
S x=-xxx-x R R 5 6 > | R R 5 3 > | R R 3 2 > | R R 3 5 > | R R 5 4 3 | 8 8 5 3 > | R R _5 _6 > | R R R 3 > | R 2 3 5 > | 8 c 5 3 >
C x=-xx=-x R R 5 > | R R 3 > | R R _5 > | R 5 R > | R 3 5 > | 8 8 5 > | R _7 R >
S x=-xxx-x R R 5 6 > | R R 5 3 > | R R 3 2 > | R R 3 5 > | R R 5 4 3 | 8 8 5 3 > | R R _5 _6 > | R R R 3 > | R 2 3 5 > | 8 c 5 3 >
A x=-xx=xx R R 3 4 > | R R 3 2 > | R R 5 6 > | R R 5 3 > | R R 5 4 3 | 8 c 5 4 3 | R R _5 _6 > | R R R 3 > | R R 5 >> >
L x=-xxx-x 8 8 10 9 > | R R 8 10 > | R R 8 9 > | R 5 8 10 > | R c 8 9 > | 8 9 10 8 > | R R 8 c > | R 3 5 8 >
T x=-xxxxx R R 3 4 5 > | R R 5 4 3 > | R R 3 5 >> > | R R 5 6 >> > | 8 c 5 3 >> > | R R 5 3 >> > | R R _5 _6 >> > | R R R 3 >> >
H1 x=-x R > | R 5 | R 3 | R R | 8 7 | R 2
H2 xx-x R 3 > | R 5 > | R R > | R 2 >
H2 x=-x R > | R 3 | R 5

tune porch-steps 3-5: the root pushed, three, and two eighths on four that step on; the answer holds its tail back until after four
S x=-xx=xx R R 3 4 > | R R 5 6 > | R R 5 4 3 | R 2 3 2 > | R 2 3 4 > | R R 5 3 > | R _7 R 2 > | R R _5 _6 > | 8 c 5 4 3 | R R R 3 >
A x=-xxx-x 8 c 5 3 > | 8 8 5 3 > | R R 5 3 > | R R 5 6 > | R R 3 2 > | R 4 5 3 > | R R _5 _6 > | R R R 3 > | R 2 3 5 >
S x=-xx=xx R R 3 4 > | R R 5 6 > | R R 5 4 3 | R 2 3 2 > | R 2 3 4 > | R R 5 3 > | R _7 R 2 > | R R _5 _6 > | 8 c 5 4 3 | R R R 3 >
C x=-xx=-x R R 5 > | R R 3 > | R R _5 > | R 5 3 > | R 3 5 > | 8 8 5 > | R _7 R >
S x=-xx=xx R R 3 4 > | R R 5 6 > | R R 5 4 3 | R 2 3 2 > | R 2 3 4 > | R R 5 3 > | R _7 R 2 > | R R _5 _6 > | 8 c 5 4 3 | R R R 3 >
A x=-xxx-x 8 c 5 3 > | 8 8 5 3 > | R R 5 3 > | R R 5 6 > | R R 3 2 > | R 4 5 3 > | R R _5 _6 > | R R R 3 > | R 2 3 5 >
L x=-xx=xx 8 8 10 9 > | R R 8 9 > | R c 8 9 > | R 5 8 10 > | 8 9 10 8 > | R R 8 c > | R 3 5 8 >
T x=-xxxxx R R 3 4 5 > | R R 5 4 3 > | R R 3 5 >> > | R R 5 6 >> > | 8 c 5 3 >> > | R R 5 3 >> > | R R _5 _6 >> > | R R R 3 >> >
H1 x=-x R > | R 5 | R 3 | R R | 8 7 | R 2
H2 x=xx R 3 > | R 5 > | R R > | R 2 >
H2 xx-x R 3 > | R 5 >

tune late-pair 4-5: the push and a pair on three, a hole on four and one late eighth; the answer leaves four for two sixteenths into the bar line
S x===--x=x=x=--x= R R 3 5 > | R R 5 6 > | R R 5 3 > | R 4 5 3 > | R 2 3 5 > | R R R 3 > | R R _5 _6 > | 8 c 5 3 >
A x===--x=x===x=xx 8 8 5 3 >> > | R R 5 3 >> > | R R 3 5 >> > | R R 5 6 >> > | R R R 3 >> > | R R _5 _6 >> > | R R 5 4 3 > | 8 c 5 3 >> >
S x===--x=x=x=--x= R R 3 5 > | R R 5 6 > | R R 5 3 > | R 4 5 3 > | R 2 3 5 > | R R R 3 > | R R _5 _6 > | 8 c 5 3 >
C x===--x=x=----x= R R 5 > | R R 3 > | R R _5 > | R 5 3 > | R 3 5 > | 8 8 5 >
S x===--x=x=x=--x= R R 3 5 > | R R 5 6 > | R R 5 3 > | R 4 5 3 > | R 2 3 5 > | R R R 3 > | R R _5 _6 > | 8 c 5 3 >
A x===--x=x===x=xx 8 8 5 3 >> > | R R 5 3 >> > | R R 3 5 >> > | R R 5 6 >> > | R R R 3 >> > | R R _5 _6 >> > | R R 5 4 3 > | 8 c 5 3 >> >
L x===--x=x=x=--x= 8 8 10 9 > | R R 8 10 > | R R 8 9 > | R 5 8 10 > | R c 8 9 > | 8 9 10 8 > | R 3 5 8 >
T x===--x=x=x=x=xx R R 3 5 4 >> > | R R 5 3 R >> > | R R 5 4 3 >> > | R R 3 5 6 >> > | 8 c 5 3 R >> > | R R _5 _6 _5 >> > | R R R 3 5 >> >
H1 x===--x= R > | R 5 | R 3 | R R | 8 c
H2 x=x=--x= R 3 > | R 5 > | R R >
H2 x=--x=xx R 5 >> > | R 3 >> > | R R >> >
`;
