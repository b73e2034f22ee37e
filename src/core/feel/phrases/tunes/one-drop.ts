/** One drop: tunes of eight bars (see the notation beside the books). */
export const ONE_DROP_TUNES = `
tune hearth-stone 1-2: the one, air, the fifth struck twice on the drop and a short tone on four; the answer falls in two eighths onto a root that rings
S x=--xxx- R 5 5 3 | R 5 5 8 | R 5 5 R | R _5 _5 R | 8 5 5 3 | 8 5 5 R | R 3 3 5 | R _5 _5 _3 | 5 5 5 3 !co
A --xxx=== 5 3 R | 8 5 R | R 3 5 | _5 _5 R | R 5 R | R _5 R | R R 5 | R R _5 | R R 3
S x=--xxx- R 5 5 3 | R 5 5 8 | R 5 5 R | R _5 _5 R | 8 5 5 3 | 8 5 5 R | R 3 3 5 | R _5 _5 _3 | 5 5 5 3 !co
C ----x=x- R > | R 5 | R 3 | R _5 | 8 5 | R 8 | 5 3 !co
S x=--xxx- R 5 5 3 | R 5 5 8 | R 5 5 R | R _5 _5 R | 8 5 5 3 | 8 5 5 R | R 3 3 5 | R _5 _5 _3 | 5 5 5 3 !co
A --xxx=== 5 3 R | 8 5 R | R 3 5 | _5 _5 R | R 5 R | R _5 R | R R 5 | R R _5 | R R 3
L x=--xxx- 8 10 10 8 | R 5 5 8 | R 8 8 10 | R 8 8 5 | R 3 3 5 | 8 5 5 8 | 5 8 8 10 !co
T x=--x=x- R 5 > | R 5 3 | R 3 > | R _5 > | R 3 5 | 8 5 3 | 8 5 > | R R >
H1 x=-- R | 8
H2 xxx- R R 5 | R R 3 | R R > | R 5 5 | R 3 3 | R 5 3 | R _5 _5

tune low-bell 1-2: the root and one heavy tone on the drop that rings; the answer waits for the drop and falls from it in three short notes
S x=--x=== R 5 | R _5 | R 3 | 8 5 | 5 3 !co | 3 5 !co
A ----xxx- 5 3 R | 8 5 R | 8 5 3 | R 3 5 | 5 5 R | R R 5 | R R > | R 5 > | R 3 > | R _5 >
S x=--x=== R 5 | R _5 | R 3 | 8 5 | 5 3 !co | 3 5 !co
C ----x=x- R > | R 5 | R 3 | R _5 | 8 5 | R 8 | 5 3 !co
S x=--x=== R 5 | R _5 | R 3 | 8 5 | 5 3 !co | 3 5 !co
A ----xxx- 5 3 R | 8 5 R | 8 5 3 | R 3 5 | 5 5 R | R R 5 | R R > | R 5 > | R 3 > | R _5 >
L x=--x=== R 8 | 8 10 | R 10 | 8 5 | R 5 | R 3 | 5 8 !co
T x=--xxx- R 5 3 > | R 5 5 3 | R 5 5 > | R 3 3 5 | R _5 _5 > | R R R > | R R 5 > | 8 5 3 > | 8 5 5 > | R 3 5 >
H1 x=-- R | 8
H2 xxx- R R > | R 5 3 | R 3 5 | R R 5 | R R 3 | R _5 >
H2 x=x- R > | R 3 | R 5

tune ferry-bell 1-2: root, air, and two short steps from the drop, up the chord or down; the answer falls in two eighths onto a root that rings
S x=--x=x- R 5 8 | R 3 5 | R _5 R | R R 5 | R 5 3 | 8 5 8 | 8 5 3 | 3 5 8 !co | 5 3 R !co
A --xxx=== 5 3 R | 8 5 R | R 3 5 | _5 _5 R | R 5 R | _5 R 3 | R _5 R | R R 5 | R R 3
S x=--x=x- R 5 8 | R 3 5 | R _5 R | R R 5 | R 5 3 | 8 5 8 | 8 5 3 | 3 5 8 !co | 5 3 R !co
C ----xxx- R R 5 | 5 3 R | 8 5 R | R R > | R 5 > | R 3 > | R _5 > | 5 5 R | 8 5 3
S x=--x=x- R 5 8 | R 3 5 | R _5 R | R R 5 | R 5 3 | 8 5 8 | 8 5 3 | 3 5 8 !co | 5 3 R !co
A --xxx=== 5 3 R | 8 5 R | R 3 5 | _5 _5 R | R 5 R | _5 R 3 | R _5 R | R R 5 | R R 3
L x=--x=x- 8 10 8 | R 5 8 | R 8 10 | R 8 5 | 8 5 8 | R 3 8 | 5 8 10 !co
T x=--xxx- R 5 3 > | R 5 5 3 | R 5 5 > | R 3 3 5 | R _5 _5 > | R R R > | R R 5 > | 8 5 3 > | 8 5 5 > | R 3 5 >
H1 x=-- R | 8
H2 x=x- R > | R 3 | R 5 | R _5 | 8 5 | 8 >

tune pair-of-lamps 1-2: a pair from the drop and the tone it leads to, after the one in the call and without it in the answer
S x=--xxx= R 5 5 R | R 5 5 8 | R 5 5 3 | R _5 _5 R | R 3 3 5 | R R R 5 | R R R 3 | 8 5 5 R | 8 5 5 3 | 5 5 5 R !co
A ----xxx= 5 5 R | 3 3 R | 8 8 5 | 5 3 R | R R 5 | R R 3 | R 3 5 | R R _5 | 8 5 3
S x=--xxx= R 5 5 R | R 5 5 8 | R 5 5 3 | R _5 _5 R | R 3 3 5 | R R R 5 | R R R 3 | 8 5 5 R | 8 5 5 3 | 5 5 5 R !co
C ----x=x- R > | R 5 | R 3 | R _5 | 8 5 | 5 R !co | 5 3 !co
S x=--xxx= R 5 5 R | R 5 5 8 | R 5 5 3 | R _5 _5 R | R 3 3 5 | R R R 5 | R R R 3 | 8 5 5 R | 8 5 5 3 | 5 5 5 R !co
A ----xxx= 5 5 R | 3 3 R | 8 8 5 | 5 3 R | R R 5 | R R 3 | R 3 5 | R R _5 | 8 5 3
L x=--xxx= 8 8 8 10 | R 5 5 8 | R 8 8 5 | 8 10 10 8 | R 8 8 10 | 8 5 5 8 | 5 5 8 10 !co
T x=--x=x- R 5 > | R 5 3 | R 3 > | R _5 > | R 3 5 | 8 5 3 | 8 5 > | R R >
H1 x=-- R | 8
H2 xxx= R R 5 | R R 3 | R R > | R 5 3 | R 3 5 | R _5 R

tune harbour-weight 2-2: root, air, and the fifth heavy on the drop, leaning over its beat with a short note behind it; the answer falls from the drop
S x=--x==x R 5 > | R 3 > | R 5 3 | R 3 5 | R _5 > | 8 5 3 | 8 5 > | R 5 8 | R 3 R | 5 3 R !co
A ----xxx= 5 3 R | 8 5 3 | R 3 5 | R 5 3 | 8 5 R | R R 5 | R R 3 | R _5 R
S x=--x==x R 5 > | R 3 > | R 5 3 | R 3 5 | R _5 > | 8 5 3 | 8 5 > | R 5 8 | R 3 R | 5 3 R !co
C ----x=x- R > | R 5 | R 3 | R _5 | 8 5 | 5 3 !co
S x=--x==x R 5 > | R 3 > | R 5 3 | R 3 5 | R _5 > | 8 5 3 | 8 5 > | R 5 8 | R 3 R | 5 3 R !co
A ----xxx= 5 3 R | 8 5 3 | R 3 5 | R 5 3 | 8 5 R | R R 5 | R R 3 | R _5 R
L x=--x==x R 8 5 | 8 10 8 | R 5 8 | R 8 > | 8 10 > | R 3 8 | 5 8 10 !co
T x=--x=xx R 5 3 5 | R 3 5 > | R 5 R > | R 5 3 > | R _5 R > | 8 5 3 > | R 3 R >
H1 x=-- R | 8
H2 x==x R > | R 3 | R 5 | R _5
H2 xxx= R R > | R 5 3 | R 3 5

tune black-kettle 3-5: a round root, air, and octave, seventh and fifth fall from the drop; the answer is one note on the drop and two that climb
S x=--xxx= R 8 c 5 | R R _c _5 | R 8 c > | R R _c > | R 8 5 3 | R 5 4 3 | 8 8 c 5 | 8 c 5 3 | 8 c 5 > | 5 8 c 5 !co | 5 5 4 3 !co
A ----x=xx R 3 5 | R 3 > | R 3 4 | R _5 > | R 5 > | 8 5 > | R >> > | R _7 > | 8 >> > | 3 4 5 !co | 5 3 > !co
S x=--xxx= R 8 c 5 | R R _c _5 | R 8 c > | R R _c > | R 8 5 3 | R 5 4 3 | 8 8 c 5 | 8 c 5 3 | 8 c 5 > | 5 8 c 5 !co | 5 5 4 3 !co
C ----x=xx R 3 > | R _5 > | R 3 R | R _c R | R _5 R | R >> > | 8 5 3 | 5 3 R !co
S x=--xxx= R 8 c 5 | R R _c _5 | R 8 c > | R R _c > | R 8 5 3 | R 5 4 3 | 8 8 c 5 | 8 c 5 3 | 8 c 5 > | 5 8 c 5 !co | 5 5 4 3 !co
A ----x=xx R 3 5 | R 3 > | R 3 4 | R _5 > | R 5 > | 8 5 > | R >> > | R _7 > | 8 >> > | 3 4 5 !co | 5 3 > !co
L x=--xxx= 8 10 9 8 | R 5 8 10 | R 3 5 8 | 8 8 9 10 | 8 10 8 > | R 8 c 8 | 8 10 9 > | 5 8 9 10 !co
T x=--xxxx R 3 5 >> > | R 5 5 6 7 | R 5 3 >> > | R _5 _5 _6 _7 | R 3 4 5 > | 8 c 5 >> > | R R 3 >> > | 8 5 3 >> > | R _5 R >> >
H1 x=-- R | 8
H2 xxx= R 3 5 | R 3 > | R 5 > | R R > | R _c _5 | R _5 > | 8 c 5
H2 x=xx R >> > | 8 >> >

tune leaning-post 3-5: an eighth on the and of two leans into the drop and the line comes down; the answer leans the same way without the one and goes up
S x--xx-x= 8 c 5 3 | R _c _5 _3 | 8 c 5 > | R _c _5 > | R 5 3 > | R c 5 3 | R c 5 > | 8 5 3 > | 5 4 3 > !co | 8 c 5 > !co
A ---xx-xx R 3 >> > | R 3 5 > | 5 3 >> > | R R >> > | R 5 >> > | R 3 4 5 | _5 R >> > | 8 5 >> > | 3 5 >> > !co | 5 8 >> > !co
S x--xx-x= 8 c 5 3 | R _c _5 _3 | 8 c 5 > | R _c _5 > | R 5 3 > | R c 5 3 | R c 5 > | 8 5 3 > | 5 4 3 > !co | 8 c 5 > !co
C ----x=xx R >> > | R 3 > | R _5 > | R 5 > | R 5 3 | 8 c 5 | 5 3 > !co
S x--xx-x= 8 c 5 3 | R _c _5 _3 | 8 c 5 > | R _c _5 > | R 5 3 > | R c 5 3 | R c 5 > | 8 5 3 > | 5 4 3 > !co | 8 c 5 > !co
A ---xx-xx R 3 >> > | R 3 5 > | 5 3 >> > | R R >> > | R 5 >> > | R 3 4 5 | _5 R >> > | 8 5 >> > | 3 5 >> > !co | 5 8 >> > !co
L x--xx-x= 8 9 10 8 | R 5 8 10 | 8 9 10 > | 8 10 8 > | R 5 8 > | R 3 5 8 | 8 c 8 > | 5 8 10 > !co
T x--xx-xx R 3 5 >> > | R 5 5 6 7 | R _5 _5 _6 _7 | R 5 3 >> > | R 3 5 6 > | 8 c 5 >> > | R _5 R >> > | 8 5 3 >> > | R 3 4 5 >
H1 x=-x R > | R 3 | R 2 | R _7 | 8 c
H2 x=x= R > | R 3 | R 5 | 8 > | 8 c | R _5
H2 x=xx R >> > | 8 >> > | R 3 >

tune long-shadow 3-5: a dotted root whose and hangs on the fourth and falls to the third at the drop; the answer enters just before the drop and leads out
S x==xx--- R 4 3 | R 6 5 | 8 6 5 | R _6 _5 | R 2 3 | R 5 3 | 8 c 5 | R 3 5 | 5 4 3 !co | 5 6 5 !co
A ---xx=xx R 3 >> > | 8 5 >> > | R 5 4 3 | R _5 >> > | R 5 >> > | R R >> > | 8 c 5 > | R 3 5 > | 5 4 3 > !co | 5 3 >> > !co
S x==xx--- R 4 3 | R 6 5 | 8 6 5 | R _6 _5 | R 2 3 | R 5 3 | 8 c 5 | R 3 5 | 5 4 3 !co | 5 6 5 !co
C ----x=xx R >> > | R 3 > | R 3 5 | R _5 > | R 5 3 | R _7 > | 8 c 5 | 5 3 > !co
S x==xx--- R 4 3 | R 6 5 | 8 6 5 | R _6 _5 | R 2 3 | R 5 3 | 8 c 5 | R 3 5 | 5 4 3 !co | 5 6 5 !co
A ---xx=xx R 3 >> > | 8 5 >> > | R 5 4 3 | R _5 >> > | R 5 >> > | R R >> > | 8 c 5 > | R 3 5 > | 5 4 3 > !co | 5 3 >> > !co
L x==xx--- 8 11 10 | R 7 8 | R 5 8 | 8 9 10 | 8 9 8 | R 6 8 | 8 7 8 | 5 9 8 !co
T x==xx=xx R 4 3 >> > | R 3 5 >> > | R 4 5 6 7 | R 2 3 >> > | R _6 _5 _6 _7 | R _6 _5 >> > | 8 6 5 >> > | R 5 3 >> > | 8 c 5 >> >
H1 x==x R > | R 2 | R 3 | R 4 | R _7 | 8 c
H2 x=xx R >> > | R 3 > | R 5 > | R _5 > | R 3 4 | 8 c 5

tune anvil-and-rain 3-5: root, air, a heavy fifth on the drop that hangs till a late short step; the answer is three notes that fall from the drop
S x=--x==x R 5 > | R _5 > | R 5 6 | R 3 > | R _5 _6 | R 3 4 | 8 5 > | 8 c > | 5 8 > !co | 3 5 > !co
A ----xxx= 8 c 5 | R _c _5 | 8 5 3 | R _c > | 8 c > | R 3 > | R _5 > | R 5 > | 5 4 3 !co | 5 3 > !co
S x=--x==x R 5 > | R _5 > | R 5 6 | R 3 > | R _5 _6 | R 3 4 | 8 5 > | 8 c > | 5 8 > !co | 3 5 > !co
C ----xxx= R _c R | R 3 R | R _5 > | R 3 > | R _5 R | R R > | 8 5 R | 5 3 R !co
S x=--x==x R 5 > | R _5 > | R 5 6 | R 3 > | R _5 _6 | R 3 4 | 8 5 > | 8 c > | 5 8 > !co | 3 5 > !co
A ----xxx= 8 c 5 | R _c _5 | 8 5 3 | R _c > | 8 c > | R 3 > | R _5 > | R 5 > | 5 4 3 !co | 5 3 > !co
L x=--x==x 8 10 9 | R 8 > | R 5 8 | 8 10 > | 8 10 8 | R 8 9 | R 5 6 | 5 8 9 !co
T x=--x=xx R 5 6 7 | R 5 >> > | R 3 >> > | R _5 _6 _7 | R _5 >> > | R 3 4 5 | 8 5 >> > | 8 c 5 > | R 3 5 >
H1 x=-- R | 8
H2 x==x R > | R 3 | R 5 | R _7 | 8 c
H2 xxx= R 3 > | R 3 5 | R _c _5 | 8 c 5 | R 5 >

tune slow-hinge 3-5: the one short, two eighths on two that turn back, and home on the drop, ringing; the answer comes in on two, goes on past the drop and leads from the last eighth
S x-xxx=== R 3 2 R | R 3 4 5 | R 2 3 R | R _5 _6 R | R _7 _7 R | R 5 4 3 | 8 c 6 5 | 8 c c 8 | R 3 5 8 | 5 3 2 R !co
A --xxx=-x 5 3 R > | _5 _6 R > | 5 6 8 > | R 3 5 > | 3 2 R > | R 2 3 > | 8 c 5 > | 5 4 3 > !co
S x-xxx=== R 3 2 R | R 3 4 5 | R 2 3 R | R _5 _6 R | R _7 _7 R | R 5 4 3 | 8 c 6 5 | 8 c c 8 | R 3 5 8 | 5 3 2 R !co
C ----x==x R > | R 3 | R 5 | R _5 | 8 5 | 8 c | 5 3 !co
S x-xxx=== R 3 2 R | R 3 4 5 | R 2 3 R | R _5 _6 R | R _7 _7 R | R 5 4 3 | 8 c 6 5 | 8 c c 8 | R 3 5 8 | 5 3 2 R !co
A --xxx=-x 5 3 R > | _5 _6 R > | 5 6 8 > | R 3 5 > | 3 2 R > | R 2 3 > | 8 c 5 > | 5 4 3 > !co
L x-xxx=== 8 10 9 8 | R 3 5 8 | 8 9 10 8 | R 8 9 10 | 8 c c 8 | R 5 6 8
T x---x=xx R 5 >> > | R 3 >> > | R 5 5 3 | R _5 >> > | R 5 6 7 | 8 5 >> > | R 3 4 5
H1 x=-- R | 8
H1 x-xx R 3 2 | R 3 > | R >> >
H2 x=-x R > | R 3 | R 5
H2 x=xx R >> > | R 3 > | R 5 3
`;
