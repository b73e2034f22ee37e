/** One drop: tunes of eight bars (see the notation beside the books). */
export const ONE_DROP_TUNES = `
tune stone-bridge 1-2: the root, air, then two shorts from the drop and one that goes on; the answer leaves the one to the room
S x===xxx- R 3 3 5 | R 5 5 8 | R 3 3 > | R 5 5 3 | R 5 5 R | R R R 5 | R _5 _5 R | R 3 3 R | 8 5 5 3 | 8 5 5 > | R R R > | 3 5 5 8 !co | 5 3 3 > !co
A ----xxx- R R > | 8 8 5 | 8 8 > | R R 5 | R R 3 | R 3 > | R 5 > | 8 5 3 | R R _5 | 5 3 R !co | 3 3 R !co | 5 5 > !co
S x===xxx- R 3 3 5 | R 5 5 8 | R 3 3 > | R 5 5 3 | R 5 5 R | R R R 5 | R _5 _5 R | R 3 3 R | 8 5 5 3 | 8 5 5 > | R R R > | 3 5 5 8 !co | 5 3 3 > !co
C ----xxx- R R > | R R R | R R _5 | 8 5 R | R 3 R | R 5 R | R _5 R | R R 5 | 5 3 R !co | 3 3 R !co
S x===xxx- R 3 3 5 | R 5 5 8 | R 3 3 > | R 5 5 3 | R 5 5 R | R R R 5 | R _5 _5 R | R 3 3 R | 8 5 5 3 | 8 5 5 > | R R R > | 3 5 5 8 !co | 5 3 3 > !co
A ----xxx- 8 8 5 | 8 8 > | R R > | 8 5 3 | R R 5 | R 3 > | R 5 > | R R _5 | R R 3 | 5 5 3 !co | 5 3 R !co
L x===xxx- 8 10 10 8 | 8 5 5 8 | R 5 5 8 | R 8 8 > | R 3 3 5 | 8 8 8 5 | 8 10 10 > | 8 5 5 3 | R 5 5 > | 5 8 8 10 !co | 5 5 5 8 !co
T x===xxx- R 3 5 > | R 5 R > | R 5 3 > | R 3 3 > | R 5 5 > | 8 5 5 > | 8 5 3 > | R _5 _5 > | R R R > | R 3 >> > | R 5 >> > | R _5 >> >
H1 x=== R | 8
H2 xxx= R R > | R R 3 | R R 5 | R 3 > | R 5 > | R R _5 | 8 8 >

tune river-gate 1-2: root, the drop, and one more; the answer comes in on two and walks through the drop
S x===x-x- R 3 5 | R 5 8 | R 5 > | R 5 3 | R 3 > | R 5 R | R _5 R | R R 5 | R R > | 8 5 3 | 8 5 > | R _5 > | 3 5 8 !co | 5 3 > !co
A --x=x-x- R 3 > | R 5 > | R R > | 8 5 3 | 8 5 > | R 5 3 | R _5 > | R 3 R | 8 5 R | R R _5 | 5 3 > !co | 5 3 R !co
S x===x-x- R 3 5 | R 5 8 | R 5 > | R 5 3 | R 3 > | R 5 R | R _5 R | R R 5 | R R > | 8 5 3 | 8 5 > | R _5 > | 3 5 8 !co | 5 3 > !co
C --x=x-x- R R > | R 3 R | R 5 R | R _5 R | 8 5 R | R 3 > | R 5 > | R _5 > | 5 3 R !co | 3 R > !co
S x===x-x- R 3 5 | R 5 8 | R 5 > | R 5 3 | R 3 > | R 5 R | R _5 R | R R 5 | R R > | 8 5 3 | 8 5 > | R _5 > | 3 5 8 !co | 5 3 > !co
A --x=x-x- 8 5 3 | 8 5 > | R 3 > | R 5 > | R 5 3 | R R > | R _5 > | R 3 R | 8 5 R | R R _5 | 5 8 > !co | 5 3 > !co
L x===x-x- 8 10 8 | R 5 8 | 8 5 8 | 8 10 > | R 8 5 | 8 5 > | R 8 > | R 3 5 | 8 5 3 | 5 8 10 !co | 3 5 8 !co
T x===x-x- R 5 > | R 3 > | R _5 > | 8 5 > | R R > | 8 5 3 | R 3 5 | R >> > | R 5 3 | R R _5 | 8 >> >
H1 x=== R | 8
H1 x=-- R | 8
H2 x=x= R > | R 3 | R 5 | 8 > | 8 5 | R _5

tune evening-coals 1-2: root, air, a short pair on the drop and air again; every second bar puts one note on four
S x=--xx-- R 5 3 | R 3 5 | R 5 5 | R 3 R | R R 5 | R 5 8 | R _5 R | R R _5 | R 5 R | 8 5 3 | 8 8 5 | 3 5 3 !co | 5 3 R !co
A x=--xxx- R 5 3 > | 8 5 3 > | R R 5 > | R 3 R > | 8 8 5 > | R 5 5 > | R 5 R > | R _5 R > | R R _5 > | R R R > | 5 3 R > !co | 5 5 3 > !co
S x=--xx-- R 5 3 | R 3 5 | R 5 5 | R 3 R | R R 5 | R 5 8 | R _5 R | R R _5 | R 5 R | 8 5 3 | 8 8 5 | 3 5 3 !co | 5 3 R !co
C x=--xx-- R 3 R | R R R | R 5 R | R _5 R | 8 5 R | R 5 3 | R R 5 | 8 5 3 | 5 3 R !co | 3 R R !co
S x=--xx-- R 5 3 | R 3 5 | R 5 5 | R 3 R | R R 5 | R 5 8 | R _5 R | R R _5 | R 5 R | 8 5 3 | 8 8 5 | 3 5 3 !co | 5 3 R !co
A x=--xxx- 8 5 3 > | R R 5 > | R 5 3 > | R 3 R > | 8 8 5 > | R 5 5 > | R 5 R > | R _5 R > | R R _5 > | R R R > | 5 3 R > !co | 5 5 3 > !co
L x=--xx-- 8 10 8 | R 5 8 | 8 5 8 | R 8 8 | 8 8 10 | 8 8 5 | R 3 5 | 8 5 3 | 5 8 10 !co | 5 5 8 !co
T x=--xxx- R 3 5 > | R 5 R > | R R 5 > | 8 5 3 > | R 5 5 > | R _5 R > | 8 8 5 > | R R _5 > | R 5 3 > | R 5 >> > | R 3 >> >
H1 x=== R | 8
H2 xx-- R R | R 5 | R 3
H2 xxx= R R > | R 5 > | R 3 > | R _5 > | 8 5 >

tune black-kettle 3-5: a round root, air, three notes from the drop; the answer is one note on the drop and two that fetch
S x=--xxx= R R 3 5 | R 3 4 5 | R 5 6 5 | R 5 4 3 | R R 2 3 | R 3 5 > | R 5 3 > | R _7 _6 _5 | R _5 _6 _7 | R 3 2 > | 8 c 5 3 | 8 5 4 3 | 8 c 5 > | 3 4 5 > !co | 5 4 3 > !co
A ----x=xx R >> > | R 5 > | R 3 > | 8 >> > | 8 5 3 | 8 c 5 | R _7 _6 | R 2 3 | R _5 > | R _5 _6 | 5 4 3 !co | 5 >> > !co | 3 >> > !co
S x=--xxx= R R 3 5 | R 3 4 5 | R 5 6 5 | R 5 4 3 | R R 2 3 | R 3 5 > | R 5 3 > | R _7 _6 _5 | R _5 _6 _7 | R 3 2 > | 8 c 5 3 | 8 5 4 3 | 8 c 5 > | 3 4 5 > !co | 5 4 3 > !co
C ----x=xx R >> > | R 3 R | R _5 R | R _7 R | 8 5 3 | R _5 > | R 3 > | R 5 > | 5 3 R !co | 3 2 R !co
S x=--xxx= R R 3 5 | R 3 4 5 | R 5 6 5 | R 5 4 3 | R R 2 3 | R 3 5 > | R 5 3 > | R _7 _6 _5 | R _5 _6 _7 | R 3 2 > | 8 c 5 3 | 8 5 4 3 | 8 c 5 > | 3 4 5 > !co | 5 4 3 > !co
A ----x=xx R 5 > | R 3 > | R >> > | 8 >> > | 8 5 3 | 8 c 5 | R _7 _6 | R 2 3 | R _5 > | R _5 _6 | 5 4 3 !co | 5 >> > !co | 3 >> > !co
L x=--xxx= 8 8 9 10 | 8 10 9 8 | R 5 6 8 | R 3 5 8 | 8 9 10 > | 8 8 c 5 | 8 10 8 > | R 5 8 > | 8 c 5 3 | R R 3 5 | 5 6 8 > !co | 5 8 9 10 !co
T x=--xxxx R 3 5 >> > | R 2 3 >> > | R 5 6 >> > | R _5 _6 >> > | R 5 3 >> > | 8 5 3 >> > | 8 c 5 >> > | R _5 _6 _7 > | R R 2 3 > | R 3 4 5 >
H1 x=-- R | 8
H2 xxx= R R > | R 2 3 | R 3 5 | R 3 > | R 5 > | R _7 _6 | R _5 > | 8 c 5
H2 x=xx R >> > | 8 >> >

tune leaning-post 3-5: an eighth on the and of two leans into a long note on the drop; the one always sounds
S x--xx-x= R c 5 3 | R 2 3 5 | R c 5 > | R 5 3 > | R 2 3 > | R _7 R 3 | R _7 R > | R _c _5 > | R _7 R 2 | 8 c 5 3 | 8 c 5 > | R 3 5 > | 3 4 5 > !co | 5 4 3 > !co
A x--xx-xx 8 c 5 >> > | R 2 3 >> > | R _7 R >> > | R 5 3 >> > | R _c _5 >> > | 8 5 3 >> > | R 3 5 >> > | 8 c 5 4 3 | R _7 _6 _5 > | R 3 2 >> > | 5 4 3 >> > !co | 3 2 R >> > !co
S x--xx-x= R c 5 3 | R 2 3 5 | R c 5 > | R 5 3 > | R 2 3 > | R _7 R 3 | R _7 R > | R _c _5 > | R _7 R 2 | 8 c 5 3 | 8 c 5 > | R 3 5 > | 3 4 5 > !co | 5 4 3 > !co
C x--xx-x= R _7 R > | R 2 R > | R _5 R > | R 3 R > | R 2 3 > | 8 5 3 > | R 5 3 > | R 3 2 > | R _5 _6 > | 3 2 R > !co | 5 4 3 > !co
S x--xx-x= R c 5 3 | R 2 3 5 | R c 5 > | R 5 3 > | R 2 3 > | R _7 R 3 | R _7 R > | R _c _5 > | R _7 R 2 | 8 c 5 3 | 8 c 5 > | R 3 5 > | 3 4 5 > !co | 5 4 3 > !co
A x--xx-xx R 2 3 >> > | R _7 R >> > | 8 c 5 >> > | R 5 3 >> > | R _c _5 >> > | 8 5 3 >> > | R 3 5 >> > | 8 c 5 4 3 | R _7 _6 _5 > | R 3 2 >> > | 5 4 3 >> > !co | 3 2 R >> > !co
L x--xx-x= 8 9 10 8 | 8 9 10 > | 8 7 8 > | R 5 8 > | R c 8 > | 8 9 8 5 | R 3 5 8 | 8 c 5 > | R 2 3 5 | 5 6 8 > !co | 5 9 10 > !co
T x--xx-xx R 2 3 >> > | R 3 5 >> > | R _7 R >> > | R _c _5 >> > | 8 c 5 >> > | R 5 3 >> > | R _5 R 2 3 | R 3 5 6 > | R R _5 _6 _7 | 8 5 3 >> >
H1 x=-x R > | R 3 | R 2 | R _7 | R R | 8 c
H2 x=x= R > | R 3 | R 5 | R 2 | 8 > | 8 c | R _5
H2 x=xx R >> > | 8 >> > | R 2 3

tune long-shadow 3-5: a dotted root whose and falls into the drop; the answer enters just before the drop and leads out
S x==xx--- R 2 3 | R 3 5 | R 5 3 | R 5 6 | R 3 R | R _7 R | R _5 _6 | R _7 _6 | R 5 4 | R 3 2 | 8 c 5 | 8 5 3 | 3 4 5 !co | 5 4 3 !co
A ---xx=xx R R >> > | R 3 >> > | R 5 >> > | 8 5 >> > | 8 c 5 > | R _7 _6 _5 | R _5 >> > | R R 2 3 | R R _5 > | 8 5 4 3 | R 3 5 > | 5 3 >> > !co | 5 4 3 > !co
S x==xx--- R 2 3 | R 3 5 | R 5 3 | R 5 6 | R 3 R | R _7 R | R _5 _6 | R _7 _6 | R 5 4 | R 3 2 | 8 c 5 | 8 5 3 | 3 4 5 !co | 5 4 3 !co
C x==xx--- R 3 R | R 2 R | R _7 R | R 5 3 | R _5 R | R _5 _6 | 8 5 3 | R 3 2 | 5 3 R !co | 3 2 R !co
S x==xx--- R 2 3 | R 3 5 | R 5 3 | R 5 6 | R 3 R | R _7 R | R _5 _6 | R _7 _6 | R 5 4 | R 3 2 | 8 c 5 | 8 5 3 | 3 4 5 !co | 5 4 3 !co
A ---xx=xx 8 5 >> > | 8 c 5 > | R R >> > | R 3 >> > | R 5 >> > | 8 5 4 3 | R _7 _6 _5 | R _5 >> > | R R 2 3 | R 3 5 > | 5 8 >> > !co | 5 4 3 > !co
L x==xx--- 8 9 10 | 8 10 8 | R 5 8 | 8 10 9 | R 3 5 | R 5 6 | 8 c 5 | 8 5 8 | 5 6 8 !co | 3 5 8 !co
T x==xx=xx R 2 3 >> > | R 3 5 >> > | R 5 6 >> > | R _5 _6 >> > | R 5 3 >> > | 8 c 5 >> > | 8 5 3 >> > | R _5 _6 _7 > | R R R 2 3 | R 3 5 6 >
H1 x==x R > | R 2 | R 3 | R 5 | R _7 | 8 c | R R
H2 x=-- R | 8
H2 x=xx R >> > | R 2 3 | R 3 > | R 5 > | R _5 > | 8 c 5

tune night-bus 3-5: root, a long note on the drop and a step on four; the answer comes in on two and runs home
S x---x=x= R 3 5 | R 5 6 | R 3 2 | R 5 4 | R 5 3 | R 3 > | R 5 > | R _5 _6 | R _7 _6 | R _7 > | 8 5 4 | 8 5 3 | 8 c > | 3 5 > !co | 5 4 > !co | 5 3 2 !co
A --x=x=xx R 3 >> > | 8 5 >> > | R 5 >> > | 8 c 5 > | R 5 4 3 | R _7 _6 _5 | R R >> > | R _5 >> > | R R 2 3 | R _5 _6 _7 | R 3 5 > | 5 3 >> > !co | 5 4 3 > !co
S x---x=x= R 3 5 | R 5 6 | R 3 2 | R 5 4 | R 5 3 | R 3 > | R 5 > | R _5 _6 | R _7 _6 | R _7 > | 8 5 4 | 8 5 3 | 8 c > | 3 5 > !co | 5 4 > !co | 5 3 2 !co
C --x=x=xx R R >> > | R 3 2 R | R _7 R > | R _5 R > | R 5 3 R | R 3 >> > | 8 5 3 > | R _5 >> > | 5 3 R > !co | 3 2 R > !co
S x---x=x= R 3 5 | R 5 6 | R 3 2 | R 5 4 | R 5 3 | R 3 > | R 5 > | R _5 _6 | R _7 _6 | R _7 > | 8 5 4 | 8 5 3 | 8 c > | 3 5 > !co | 5 4 > !co | 5 3 2 !co
A --x=x=xx 8 5 >> > | 8 c 5 > | R 3 >> > | R 5 >> > | R 5 4 3 | R _7 _6 _5 | R R >> > | R _5 >> > | R R 2 3 | R 3 5 > | 5 8 >> > !co | 5 4 3 > !co
L x---x=x= 8 10 9 | 8 9 10 | R 5 8 | 8 10 8 | 8 10 > | R 8 > | R 5 6 | 8 c 5 | R 3 5 | 5 8 10 !co | 5 6 8 !co
T x---x=xx R 3 >> > | R 5 >> > | R _5 >> > | R 2 3 > | R _5 _6 _7 | R R 2 3 | 8 5 >> > | 8 c 5 > | R 3 5 > | R 5 6 >
H1 x=-- R | 8
H1 x=x= R > | R _5 | R 3
H2 x=x= R > | R 3 | R 2 | R 5 | R _7 | 8 c | R _5
H2 x=xx R >> > | R 2 3 | 8 >> >

tune cellar-door 1-2: the root falls onto one long note on the drop, then air; the answer is the drop and one that leads
S x===x=-- R 5 | R 3 | R _5 | R 8 | R R | 8 5 | 8 3 | R 10 | 3 5 !co | 5 8 !co
A ----x=x= R > | 8 5 | R 5 | R _5 | 8 > | R 3 | 8 3 | R R | 5 R !co | 5 3 !co | 3 > !co
S x===x=-- R 5 | R 3 | R _5 | R 8 | R R | 8 5 | 8 3 | R 10 | 3 5 !co | 5 8 !co
C ----x=x= R R | R > | 8 R | R _5 | R 5 | R 3 | 8 5 | 5 R !co | 3 R !co
S x===x=-- R 5 | R 3 | R _5 | R 8 | R R | 8 5 | 8 3 | R 10 | 3 5 !co | 5 8 !co
A ----x=x= 8 5 | R > | R 5 | R _5 | 8 > | R 3 | 8 3 | R R | 5 R !co | 5 3 !co | 3 > !co
L x===x=-- 8 10 | R 8 | 8 5 | 8 8 | R 5 | 8 3 | R 3 | 5 8 !co | 3 8 !co
T x===x=x= R 5 > | R _5 > | 8 5 > | R 3 > | R 3 5 | 8 5 3 | R R > | R 5 3 | R R _5 | 8 3 >
H1 x=== R | 8
H2 x=-- R | 8
H2 x=x= R > | R 5 | R 3 | R _5 | 8 > | 8 5

tune wet-slate 1-2: root, air, and a note laid on the drop for the rest of the bar; the answer enters on two with a pair and lies down on three
S x---x=== R 5 | R 3 | R _5 | R R | R 8 | 8 5 | 8 3 | R 10 | 3 5 !co | 5 3 !co
A --xxx=== R R 5 | 8 8 5 | R R _5 | R R R | R R 3 | 8 5 R | R 5 R | R R 8 | R 5 3 | 8 5 3 | 5 5 R !co | 5 3 R !co
S x---x=== R 5 | R 3 | R _5 | R R | R 8 | 8 5 | 8 3 | R 10 | 3 5 !co | 5 3 !co
C --xxx=== R R R | R R _5 | R 5 R | 8 5 R | 8 8 R | R 3 R | R R 5 | 5 3 R !co | 3 3 R !co
S x---x=== R 5 | R 3 | R _5 | R R | R 8 | 8 5 | 8 3 | R 10 | 3 5 !co | 5 3 !co
A --xxx=== 8 8 5 | R R 5 | R R _5 | R R R | R R 3 | 8 5 R | R 5 R | R R 8 | R 5 3 | 8 5 3 | 5 5 R !co | 5 3 R !co
L x---x=== 8 10 | R 8 | 8 5 | 8 8 | R 5 | R 10 | 8 3 | 5 8 !co | 3 8 !co
T x---x=x= R 5 > | R _5 > | R 3 > | 8 5 > | R 3 5 | 8 5 3 | R R > | R 5 3 | 8 3 > | R R _5
H1 x=-- R | 8
H2 x=== R | 8
H2 x=x= R > | R 5 | R 3 | R _5 | 8 >

tune anvil-and-rain 3-5: root, air, a heavy note on the drop that hangs till a late short step; the answer is three notes from the drop
S x=--x==x R 5 > | R 3 > | R 5 6 | R _5 > | R 5 4 | R 3 2 | R _6 _7 | R _7 _6 | R _5 _6 | 8 c > | 8 5 > | 8 5 4 | R 3 4 | 3 5 > !co | 5 4 3 !co
A ----xxx= R 3 5 | R 2 3 | 8 c 5 | 8 5 3 | R _7 _6 | R 3 > | 8 5 > | 8 c > | R _5 > | R _7 > | R 5 > | 5 4 3 !co | 3 2 R !co | 5 3 > !co
S x=--x==x R 5 > | R 3 > | R 5 6 | R _5 > | R 5 4 | R 3 2 | R _6 _7 | R _7 _6 | R _5 _6 | 8 c > | 8 5 > | 8 5 4 | R 3 4 | 3 5 > !co | 5 4 3 !co
C ----xxx= R R > | R _5 R | R _7 R | R 2 R | 8 5 R | R 3 R | R 3 > | 8 5 3 | R _5 > | 5 3 R !co | 3 2 R !co
S x=--x==x R 5 > | R 3 > | R 5 6 | R _5 > | R 5 4 | R 3 2 | R _6 _7 | R _7 _6 | R _5 _6 | 8 c > | 8 5 > | 8 5 4 | R 3 4 | 3 5 > !co | 5 4 3 !co
A ----xxx= R 2 3 | R 3 5 | 8 c 5 | 8 5 3 | R _7 _6 | R 3 > | 8 5 > | 8 c > | R _5 > | R _7 > | R 5 > | 5 4 3 !co | 3 2 R !co | 5 3 > !co
L x=--x==x 8 10 9 | R 8 > | 8 10 > | 8 9 10 | R 5 6 | 8 c 5 | 8 5 > | R 5 > | 5 8 > !co | 5 8 9 !co
T x=--x=xx R 5 >> > | R 3 >> > | R _5 >> > | 8 5 >> > | R _5 _6 _7 | R 5 6 7 | R 3 4 5 | 8 c 5 > | R 2 3 > | R 3 5 >
H1 x=-- R | 8
H2 x==x R > | R 2 | R 3 | R 5 | R _7 | 8 c
H2 xxx= R 3 > | R 2 3 | R 3 5 | 8 c 5 | R _7 _6
`;
