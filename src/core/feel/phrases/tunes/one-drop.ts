/** One drop: tunes of eight bars (see the notation beside the books). */
export const ONE_DROP_TUNES = `
tune two-and-three 1-2: two, its off-beat and three in every bar, no note of its own on the one; the answer comes down and leads on from four
S --xxx=-- R R 5 | R 5 8 | R R _5 | R 3 5 | R _5 R | 8 8 5 | R R 3 | 8 5 8 | 8 5 R | R 5 3 | 5 5 8 !co | 3 3 5 !co | 5 3 R !co
A --xxx=x- 8 5 R > | 8 8 5 > | R 5 R > | R _5 R > | 8 5 3 > | R R 5 > | R 3 5 > | R R _5 > | R 5 8 5 | 5 5 R > !co | 5 3 R > !co
S --xxx=-- R R 5 | R 5 8 | R R _5 | R 3 5 | R _5 R | 8 8 5 | R R 3 | 8 5 8 | 8 5 R | R 5 3 | 5 5 8 !co | 3 3 5 !co | 5 3 R !co
C --xxx=-- 8 5 R | R 5 R | R _5 R | 8 8 R | R R R | R 3 R | 5 5 R !co | 5 3 R !co
S --xxx=-- R R 5 | R 5 8 | R R _5 | R 3 5 | R _5 R | 8 8 5 | R R 3 | 8 5 8 | 8 5 R | R 5 3 | 5 5 8 !co | 3 3 5 !co | 5 3 R !co
A --xxx=x- 8 5 R > | 8 8 5 > | R 5 R > | R _5 R > | 8 5 3 > | R R 5 > | R 3 5 > | R R _5 > | R 5 8 5 | 5 5 R > !co | 5 3 R > !co
L --xxx=-- 8 8 10 | R 5 8 | 8 10 8 | R 8 8 | 8 5 8 | R 3 8 | 8 8 5 | 5 8 10 !co
T --xxx=xx R R 5 R > | R 5 R R > | R _5 R R > | 8 5 R R > | R 3 5 3 > | R R _5 R > | 8 5 3 R > | R 5 3 >> > | R R 3 >> >
H1 --x= R | 8
H2 x=x- R > | R 5 | R 3 | 8 > | R _5

tune stone-bridge 1-2: a low root, air, then octave, fifth and root tumble from the drop; the answer leaves the one and climbs back
S x===xxx- R 8 5 R | R R _5 R | R 8 5 3 | R 8 5 > | R R _5 > | 8 8 5 R | R 5 3 R | 8 8 5 > | 5 8 5 R !co | 5 8 5 3 !co
A ----xxx- R 5 8 | R 3 5 | R 5 > | R _5 > | R 3 > | 8 5 > | 8 5 8 | R _5 R | 5 5 8 !co | 3 5 8 !co
S x===xxx- R 8 5 R | R R _5 R | R 8 5 3 | R 8 5 > | R R _5 > | 8 8 5 R | R 5 3 R | 8 8 5 > | 5 8 5 R !co | 5 8 5 3 !co
C ----xxx- R 5 > | R _5 > | R 5 R | R _5 R | R 3 R | R 3 > | 8 5 > | 5 3 R !co | 5 5 R !co
S x===xxx- R 8 5 R | R R _5 R | R 8 5 3 | R 8 5 > | R R _5 > | 8 8 5 R | R 5 3 R | 8 8 5 > | 5 8 5 R !co | 5 8 5 3 !co
A ----xxx- R 5 8 | R 3 5 | R 5 > | R _5 > | R 3 > | 8 5 > | 8 5 8 | R _5 R | 5 5 8 !co | 3 5 8 !co
L x===xxx- R 8 10 8 | R 5 8 > | R 8 5 8 | 8 10 8 5 | 8 8 5 8 | R 3 5 8 | 8 5 8 > | 5 8 10 8 !co
T x===xxx- R 5 R > | R 3 5 > | R R 5 3 | R _5 R > | 8 5 R > | R R 5 > | R 5 3 > | R R _5 > | 8 5 3 > | R 5 >> >
H1 x=== R | 8
H2 xxx- R 5 > | R R > | R 5 3 | R 3 > | R _5 > | 8 5 >

tune river-gate 1-2: root, fifth and octave climb through the drop, dry; the answer comes in on two and walks down again
S x===x-x- R 5 8 | R _5 R | R 3 5 | R 5 > | R _5 > | 8 5 8 | R 3 > | 8 5 > | 3 5 8 !co | 5 5 8 !co
A --x=x-x- 8 5 3 | 8 5 R | 8 5 > | R _5 > | R 5 3 | R 5 > | R R _5 | R 3 > | 5 3 R !co | 5 5 R !co
S x===x-x- R 5 8 | R _5 R | R 3 5 | R 5 > | R _5 > | 8 5 8 | R 3 > | 8 5 > | 3 5 8 !co | 5 5 8 !co
C --x=x-x- R 5 > | R _5 > | 8 5 R | 8 5 > | R 3 > | R _5 R | R 3 R | 5 3 R !co
S x===x-x- R 5 8 | R _5 R | R 3 5 | R 5 > | R _5 > | 8 5 8 | R 3 > | 8 5 > | 3 5 8 !co | 5 5 8 !co
A --x=x-x- 8 5 3 | 8 5 R | 8 5 > | R _5 > | R 5 3 | R 5 > | R R _5 | R 3 > | 5 3 R !co | 5 5 R !co
L x===x-x- 8 10 8 | R 8 5 | R 5 8 | 8 5 8 | 8 8 > | R 8 > | R 3 8 | 5 8 10 !co
T x===x-x- R 5 > | R 5 3 | R 3 > | R _5 > | 8 5 > | R 3 5 | 8 5 3 | R >> > | R R >
H1 x=== R | 8
H2 x-x- R > | R 3 | R 5 | 8 > | R _5

tune evening-coals 1-2: root, air, one note on the drop and a quick pair on four that turns; the answer steps in on two and comes down with the same pair
S x=--x-xx R 5 8 5 | R _5 R _5 | R 5 8 > | R 3 5 3 | R _5 R > | R 3 5 > | 8 5 8 5 | 8 5 8 > | 3 5 8 5 !co | 5 5 8 > !co
A --x-x-xx 8 8 5 R | 8 8 5 3 | R R 5 > | R R _5 > | 8 8 5 > | R R _5 R | R 5 3 > | R R 3 > | 5 5 3 R !co | 5 5 5 R !co
S x=--x-xx R 5 8 5 | R _5 R _5 | R 5 8 > | R 3 5 3 | R _5 R > | R 3 5 > | 8 5 8 5 | 8 5 8 > | 3 5 8 5 !co | 5 5 8 > !co
C --x-x-xx R R 5 > | R R _5 > | R R 5 R | R R _5 R | 8 8 5 R | R R 3 R | R R 3 > | 5 5 3 R !co
S x=--x-xx R 5 8 5 | R _5 R _5 | R 5 8 > | R 3 5 3 | R _5 R > | R 3 5 > | 8 5 8 5 | 8 5 8 > | 3 5 8 5 !co | 5 5 8 > !co
A --x-x-xx 8 8 5 R | 8 8 5 3 | R R 5 > | R R _5 > | 8 8 5 > | R R _5 R | R 5 3 > | R R 3 > | 5 5 3 R !co | 5 5 5 R !co
L x=--x-xx 8 10 8 5 | R 8 8 5 | R 5 8 > | 8 5 8 > | 8 10 8 > | R 8 5 8 | R 3 5 8 | 5 8 10 8 !co
T x=--x-xx R 5 R > | R 3 5 > | R 5 5 3 | R _5 R > | 8 5 R > | R R 5 > | 8 5 3 > | R 5 3 > | R 3 >> > | R 5 >> >
H1 x=-- R | 8
H2 x-xx R 5 > | R R > | R _5 > | R 5 3 | R 3 > | 8 5 >

tune cellar-door 1-2: root, air, then two pairs come down the steps from the drop; the answer sets off on two and goes up them
S x=--xxxx R 8 8 5 5 | R R R _5 _5 | R 5 5 3 3 | R 8 8 5 > | R R R _5 > | R 5 5 3 > | 8 5 5 R > | 8 5 5 R R | 5 5 5 3 3 !co | 5 8 8 5 > !co
A --x=xxx- R 5 5 8 | R 3 3 5 | R _5 _5 R | R 5 5 > | R _5 _5 > | R 3 3 > | 8 5 5 8 | 8 5 5 > | 3 5 5 8 !co | 5 5 5 8 !co
S x=--xxxx R 8 8 5 5 | R R R _5 _5 | R 5 5 3 3 | R 8 8 5 > | R R R _5 > | R 5 5 3 > | 8 5 5 R > | 8 5 5 R R | 5 5 5 3 3 !co | 5 8 8 5 > !co
C --x=xxx- R 5 5 > | R _5 _5 > | R 5 5 R | R _5 _5 R | R 3 3 R | 8 5 5 R | 8 5 5 > | 5 3 3 R !co
S x=--xxxx R 8 8 5 5 | R R R _5 _5 | R 5 5 3 3 | R 8 8 5 > | R R R _5 > | R 5 5 3 > | 8 5 5 R > | 8 5 5 R R | 5 5 5 3 3 !co | 5 8 8 5 > !co
A --x=xxx- R 5 5 8 | R 3 3 5 | R _5 _5 R | R 5 5 > | R _5 _5 > | R 3 3 > | 8 5 5 8 | 8 5 5 > | 3 5 5 8 !co | 5 5 5 8 !co
L x=--xxxx 8 10 10 8 8 | R 5 5 8 8 | R 5 5 8 > | R 8 8 5 8 | 8 8 8 5 > | 8 10 10 8 5 | R 3 3 5 8 | 5 8 8 10 8 !co
T x=--xxxx R 5 5 3 > | R 5 5 R > | R 3 3 5 > | R _5 _5 R > | R R R 5 > | 8 5 5 R > | 8 5 5 3 > | R R R 5 3 | R 3 3 >> >
H1 x=-- R | 8
H2 xxxx R R 5 > | R R _5 > | R 5 5 > | R R 3 > | R 5 5 3 | 8 8 5 >

tune wet-slate 1-2: a short high root, air, and it is struck again on the drop and falls home; the answer breaks in on two with a pair and climbs
S x---xxx= 8 8 5 R | R R _5 _5 | 8 8 5 3 | 8 8 5 > | R R _5 > | R 5 3 R | 8 5 3 R | R 5 3 > | 5 5 3 R !co | 8 5 3 > !co
A --xxx-x= R 5 8 > | R 3 5 > | R _5 R > | R 3 5 8 | R 5 8 5 | R _5 R _5 | R 3 5 3 | 8 5 8 > | 3 5 8 > !co | 5 5 8 > !co
S x---xxx= 8 8 5 R | R R _5 _5 | 8 8 5 3 | 8 8 5 > | R R _5 > | R 5 3 R | 8 5 3 R | R 5 3 > | 5 5 3 R !co | 8 5 3 > !co
C --xxx-x= R 5 R > | R _5 R > | R 3 R > | R 5 3 R | 8 5 R > | R _5 R R | R 3 5 R | 5 3 R > !co
S x---xxx= 8 8 5 R | R R _5 _5 | 8 8 5 3 | 8 8 5 > | R R _5 > | R 5 3 R | 8 5 3 R | R 5 3 > | 5 5 3 R !co | 8 5 3 > !co
A --xxx-x= R 5 8 > | R 3 5 > | R _5 R > | R 3 5 8 | R 5 8 5 | R _5 R _5 | R 3 5 3 | 8 5 8 > | 3 5 8 > !co | 5 5 8 > !co
L x---xxx= 8 10 10 8 | R 8 5 8 | R 8 8 > | 8 8 5 8 | R 3 5 8 | 8 10 8 > | R 5 8 > | 5 8 8 10 !co
T x---xxx= R R 5 > | R 3 5 > | R R 5 3 | R R _5 > | 8 5 R > | R 5 3 > | 8 8 5 > | 8 5 3 > | R _5 R > | R 3 >> >
H1 x--- R | 8
H2 xxx= R R > | R 5 > | R 5 3 | R 3 > | R _5 > | 8 5 >

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

tune leaning-post 3-5: an eighth on the and of two leans into the drop and the line comes down; the answer leans the same way and goes up
S x--xx-x= 8 c 5 3 | R _c _5 _3 | 8 c 5 > | R _c _5 > | R 5 3 > | R c 5 3 | R c 5 > | 8 5 3 > | 5 4 3 > !co | 8 c 5 > !co
A x--xx-xx R 3 5 >> > | R 3 4 5 > | R R 3 4 5 | R _5 R >> > | R R 3 >> > | R 5 3 >> > | R _7 R >> > | 8 5 8 >> > | 3 4 5 >> > !co | 5 6 8 >> > !co
S x--xx-x= 8 c 5 3 | R _c _5 _3 | 8 c 5 > | R _c _5 > | R 5 3 > | R c 5 3 | R c 5 > | 8 5 3 > | 5 4 3 > !co | 8 c 5 > !co
C x--xx-x= R 3 R > | R _5 R > | R 5 3 > | R _c R > | R _7 R > | 8 5 3 > | 8 c 5 > | 5 3 R > !co
S x--xx-x= 8 c 5 3 | R _c _5 _3 | 8 c 5 > | R _c _5 > | R 5 3 > | R c 5 3 | R c 5 > | 8 5 3 > | 5 4 3 > !co | 8 c 5 > !co
A x--xx-xx R 3 5 >> > | R 3 4 5 > | R R 3 4 5 | R _5 R >> > | R R 3 >> > | R 5 3 >> > | R _7 R >> > | 8 5 8 >> > | 3 4 5 >> > !co | 5 6 8 >> > !co
L x--xx-x= 8 9 10 8 | R 5 8 10 | 8 9 10 > | 8 10 8 > | R 5 8 > | R 3 5 8 | 8 c 8 > | 5 8 10 > !co
T x--xx-xx R 3 5 >> > | R 5 5 6 7 | R _5 _5 _6 _7 | R 5 3 >> > | R 3 5 6 > | 8 c 5 >> > | R _5 R >> > | 8 5 3 >> > | R 3 4 5 >
H1 x=-x R > | R 3 | R 2 | R _7 | 8 c
H2 x=x= R > | R 3 | R 5 | 8 > | 8 c | R _5
H2 x=xx R >> > | 8 >> > | R 3 >

tune long-shadow 3-5: a dotted root whose and hangs on the fourth and falls to the third at the drop; the answer enters just before the drop and leads out
S x==xx--- R 4 3 | R 6 5 | 8 6 5 | R _6 _5 | R 2 3 | R 5 3 | 8 c 5 | R 3 5 | 5 4 3 !co | 5 6 5 !co
A ---xx=xx R 3 >> > | 8 5 >> > | R 5 4 3 | R _5 >> > | R 5 >> > | R R >> > | 8 c 5 > | R 3 5 > | 5 4 3 > !co | 5 3 >> > !co
S x==xx--- R 4 3 | R 6 5 | 8 6 5 | R _6 _5 | R 2 3 | R 5 3 | 8 c 5 | R 3 5 | 5 4 3 !co | 5 6 5 !co
C ---xx=xx R 3 >> > | R 3 R > | R _5 R > | R R >> > | R _7 R > | 8 5 3 > | R _5 >> > | 5 3 R > !co
S x==xx--- R 4 3 | R 6 5 | 8 6 5 | R _6 _5 | R 2 3 | R 5 3 | 8 c 5 | R 3 5 | 5 4 3 !co | 5 6 5 !co
A ---xx=xx R 3 >> > | 8 5 >> > | R 5 4 3 | R _5 >> > | R 5 >> > | R R >> > | 8 c 5 > | R 3 5 > | 5 4 3 > !co | 5 3 >> > !co
L x==xx--- 8 11 10 | R 7 8 | R 5 8 | 8 9 10 | 8 9 8 | R 6 8 | 8 7 8 | 5 9 8 !co
T x==xx=xx R 4 3 >> > | R 3 5 >> > | R 4 5 6 7 | R 2 3 >> > | R _6 _5 _6 _7 | R _6 _5 >> > | 8 6 5 >> > | R 5 3 >> > | 8 c 5 >> >
H1 x==x R > | R 2 | R 3 | R 4 | R _7 | 8 c
H2 x=xx R >> > | R 3 > | R 5 > | R _5 > | R 3 4 | 8 c 5

tune night-bus 3-5: root, a long note on the drop and a step on four; the answer comes in on two and walks down the scale
S x---x=x= R 5 6 | R _5 _6 | R 5 > | R _5 > | R 3 4 | R 3 > | 8 5 4 | 8 c > | 5 8 > !co | 3 5 > !co
A --x=x=xx 8 5 4 3 | R 5 4 3 | R 3 >> > | R _5 >> > | 8 c 5 > | 8 5 >> > | R 5 >> > | R _7 _6 _5 | 5 4 3 > !co | 5 3 >> > !co
S x---x=x= R 5 6 | R _5 _6 | R 5 > | R _5 > | R 3 4 | R 3 > | 8 5 4 | 8 c > | 5 8 > !co | 3 5 > !co
C --x=x=xx R 3 >> > | R 3 R > | R _5 R > | R _c R > | 8 5 3 > | R R >> > | R _5 >> > | 5 3 R > !co
S x---x=x= R 5 6 | R _5 _6 | R 5 > | R _5 > | R 3 4 | R 3 > | 8 5 4 | 8 c > | 5 8 > !co | 3 5 > !co
A --x=x=xx 8 5 4 3 | R 5 4 3 | R 3 >> > | R _5 >> > | 8 c 5 > | 8 5 >> > | R 5 >> > | R _7 _6 _5 | 5 4 3 > !co | 5 3 >> > !co
L x---x=x= 8 10 9 | R 8 9 | R 5 8 | 8 10 > | R 8 > | 8 10 8 | R 5 6 | 5 8 9 !co
T x---x=xx R 5 6 7 | R _5 _6 _7 | R 3 >> > | R 5 >> > | R 3 4 5 | R _5 >> > | 8 5 >> > | R 3 5 > | 8 c 5 >
H1 x=-- R | 8
H1 x=x= R > | R _5 | R 3
H2 x=x= R > | R 3 | R 5 | 8 c | R _5 | 8 >
H2 x=xx R >> > | R 3 > | 8 >> >

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
`;
