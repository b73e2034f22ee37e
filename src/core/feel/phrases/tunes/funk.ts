/** Funk in sixteenths: tunes of eight bars (see the notation beside the books). */
export const FUNK_TUNES = `
tune loud-one 1-2: the one, a hole for the snare, then a pair and a short one that answer late in the bar
S x---xxx- R 5 5 8 | R c 5 8 | R 5 8 R | R c 8 R | R 8 8 R | R 5 5 R | R _5 _5 R | R R R 5 | R 5 5 > | R 3 3 5 | R c c 8 | 5 3 3 R !co
A x---xxx- R 8 8 5 | R 8 8 c | 8 5 5 R | 8 c 5 R | R 8 8 > | R _5 _5 > | R 5 5 > | R 8 5 R | 8 c 5 > | 8 5 3 R | R 5 3 > | 5 3 R > !co
S x---xxx- R 5 5 8 | R c 5 8 | R 5 8 R | R c 8 R | R 8 8 R | R 5 5 R | R _5 _5 R | R R R 5 | R 5 5 > | R 3 3 5 | R c c 8 | 5 3 3 R !co
C x---x-x- R R > | R 5 R | R 8 R | 8 c R | 8 5 R | R _5 R | R R R | R 5 > | R c R | R 3 R | 5 3 R !co
S x---xxx- R 5 5 8 | R c 5 8 | R 5 8 R | R c 8 R | R 8 8 R | R 5 5 R | R _5 _5 R | R R R 5 | R 5 5 > | R 3 3 5 | R c c 8 | 5 3 3 R !co
A x---xxx- R 8 8 > | R 8 8 c | R 8 8 5 | 8 c 5 R | 8 5 5 R | R _5 _5 > | R 5 5 > | R 8 5 R | 8 c 5 > | 8 5 3 R | R 5 3 > | 5 3 R > !co
L x---xxx- R 8 8 8 | R c 8 8 | R 5 8 8 | 8 c 8 > | 8 5 8 > | R 8 5 8 | R 5 5 8 | R 8 10 8 | R 5 c 8 | 8 10 8 > | 5 8 8 > !co
T x---xxxx R 5 5 R > | R c 5 R > | R 8 8 5 > | R 8 8 c > | R R R 5 > | R _5 _5 R > | R 5 R 5 > | R 5 3 R > | R 3 3 5 > | R 8 c 5 > | R R 3 5 >
H1 x--- R | 8
H1 x-x- R R | R > | R 5 | R 8 | R 3
H2 xxx- R R > | R R 5 | R 5 > | R 5 8 | R 8 R | R 3 > | R R R

tune hand-and-echo 1-2: two on the one, three and four short; every second bar lets four roll into the next
S xx--x-x- R R 8 5 | R R 8 c | R R 5 8 | R R 5 R | R R _5 R | R R 5 > | R R R > | R R 3 5 | R R c 8 | R R 5 3 | 5 5 3 R !co
A xx--x-xx R R 5 R > | R R c R > | R R 8 5 > | R R 8 c > | 8 8 5 R > | R R _5 R > | R R 8 R > | R R 5 5 > | R R 5 3 > | 8 8 c 5 > | 8 8 5 3 > | 5 5 3 R > !co
S xx--x-x- R R 8 5 | R R 8 c | R R 5 8 | R R 5 R | R R _5 R | R R 5 > | R R R > | R R 3 5 | R R c 8 | R R 5 3 | 5 5 3 R !co
C xx--x-x- R R 5 R | R R R > | R R 8 R | 8 8 c R | 8 8 5 R | R R _5 > | R R 5 > | R R 3 R | R R c R | 8 8 R > | 5 5 3 R !co
S xx--x-x- R R 8 5 | R R 8 c | R R 5 8 | R R 5 R | R R _5 R | R R 5 > | R R R > | R R 3 5 | R R c 8 | R R 5 3 | 5 5 3 R !co
A xx--x-xx R R 8 5 > | R R 8 c > | R R 5 R > | R R c R > | 8 8 5 R > | R R _5 R > | R R 8 R > | R R 5 5 > | R R 5 3 > | 8 8 c 5 > | 8 8 5 3 > | 5 5 3 R > !co
L xx--x-x- R R 8 8 | 8 8 c 8 | 8 8 5 8 | R R 5 8 | R R 8 > | 8 8 8 5 | R R 8 10 | 8 8 10 8 | R R c 8 | R R 3 8 | 5 5 8 > !co
T xx--x-xx R R 5 R > | R R c R > | R R R 5 > | R R R c > | R R 8 5 > | R R _5 R > | 8 8 5 5 > | R R 3 5 > | R R 5 3 > | R R c 5 > | R R 3 >> >
H1 xx-- R R | R 8 | 8 8 | R 5 | R > | R 3
H2 x-x- R > | R 5 | R R | R 8 | R 3 | 8 5

tune long-hole 1-2: two on the one, two beats of air, and a pair on four that fetches the next bar
S xx----xx R R 5 > | R R c > | R R 5 8 | R R 8 > | R R _5 R | R R 8 R | R R R > | R R 5 R | R R 3 5 | R R c 8 | R R 3 > | 5 5 3 R !co
A xx----xx R R 8 5 | R R 8 c | 8 8 5 > | 8 8 c > | R R _5 > | R R 5 > | 8 8 5 R | R R 5 R | R R 5 3 | 8 8 c 5 | 8 8 5 3 | 5 5 R > !co
S xx----xx R R 5 > | R R c > | R R 5 8 | R R 8 > | R R _5 R | R R 8 R | R R R > | R R 5 R | R R 3 5 | R R c 8 | R R 3 > | 5 5 3 R !co
C xx----x- R R > | R R R | R R 5 | R R 8 | 8 8 R | R R _5 | 8 8 > | R R 3 | R R c | 5 5 R !co
S xx----xx R R 5 > | R R c > | R R 5 8 | R R 8 > | R R _5 R | R R 8 R | R R R > | R R 5 R | R R 3 5 | R R c 8 | R R 3 > | 5 5 3 R !co
A xx----xx 8 8 5 > | 8 8 c > | R R 8 5 | R R 8 c | R R _5 > | R R 5 > | 8 8 5 R | R R 5 R | R R 5 3 | 8 8 c 5 | 8 8 5 3 | 5 5 R > !co
L xx----xx R R 8 8 | R R 8 c | 8 8 8 > | R R 8 5 | R R 5 8 | 8 8 5 8 | R R 8 10 | 8 8 10 8 | R R c 8 | R R 10 8 | 5 5 8 > !co
T xx--x-xx R R R 5 > | R R R c > | R R 5 R > | R R c R > | R R 8 5 > | R R _5 _5 > | 8 8 5 R > | R R 3 5 > | R R 5 3 > | R R 5 c > | R R 3 >> >
H1 xx-- R R | R 8 | 8 8 | R 5 | R > | R 3
H2 x-xx R 5 > | R R > | R 8 > | R R 5 | R _5 > | R 3 >

tune doorstep 1-2: the one, a hole, three, and a pair on four that steps over the bar line
S x---x-xx R R 5 > | R R c > | R R 8 5 | R R 8 c | R 5 R > | R 8 5 > | R 8 5 R | R _5 R > | R R 5 8 | R R 3 5 | R c 5 > | R R 3 > | 5 3 R > !co
A x---x-xx R 8 5 R | R 8 c R | 8 8 5 > | 8 8 c > | R 8 R > | R R _5 > | R 5 5 > | 8 5 R > | 8 c 5 R | 8 5 3 > | R 5 3 R | R 5 3 > | 5 R 3 > !co
S x---x-xx R R 5 > | R R c > | R R 8 5 | R R 8 c | R 5 R > | R 8 5 > | R 8 5 R | R _5 R > | R R 5 8 | R R 3 5 | R c 5 > | R R 3 > | 5 3 R > !co
C x---x-x- R R > | R 5 R | R 8 R | 8 c R | 8 5 R | R _5 R | R R 5 | R 5 > | R c R | R 3 R | 5 3 R !co
S x---x-xx R R 5 > | R R c > | R R 8 5 | R R 8 c | R 5 R > | R 8 5 > | R 8 5 R | R _5 R > | R R 5 8 | R R 3 5 | R c 5 > | R R 3 > | 5 3 R > !co
A x---x-xx R 8 R > | R 8 c R | R 8 5 R | 8 8 c > | 8 8 5 > | R R _5 > | R 5 5 > | 8 5 R > | 8 c 5 R | 8 5 3 > | R 5 3 R | R 5 3 > | 5 R 3 > !co
L x---x-xx R 5 8 > | R 8 8 5 | R 8 5 8 | R 8 8 c | 8 8 5 8 | R 5 8 8 | R 8 10 8 | R c 8 > | 8 10 8 > | R 3 8 > | 5 8 5 > !co
T x---xxxx R R R 5 > | R R R c > | R 5 5 R > | R c 5 R > | R 8 8 5 > | R _5 _5 R > | R 5 R 5 > | R R 3 5 > | R 5 5 3 > | R c c 5 > | R 3 5 >> >
H1 x--- R | 8
H1 x-x- R R | R > | R 5 | R 8 | R 3
H2 x-xx R 5 > | R R > | R 8 > | R R 5 | R _5 > | R 3 >

tune kick-drum-shadow 3-5: the one, the ands of two and three with the kick, and a tail of sixteenths on four
S x=----x=--x=xxx= R R c 5 6 > | R R 8 c 5 > | R R 5 5 6 8 | R R c 8 c 5 | R R 5 3 4 5 | R R 3 3 4 > | R 8 c 5 6 5 | R R _c R 2 > | R R _5 _5 _6 R | R 5 6 5 3 > | 5 5 3 3 4 > !co
A x=----x=--x=xxx= R 8 c 5 4 3 | R 8 c 5 3 > | R R 8 7 6 5 | R R 5 5 4 3 | R R 5 4 3 > | R R _7 _7 _6 > | R R _7 _7 _6 _5 | R R 3 3 2 > | R 8 8 c 5 > | 8 8 c 6 5 > | 5 5 3 3 2 > !co
S x=----x=--x=xxx= R R c 5 6 > | R R 8 c 5 > | R R 5 5 6 8 | R R c 8 c 5 | R R 5 3 4 5 | R R 3 3 4 > | R 8 c 5 6 5 | R R _c R 2 > | R R _5 _5 _6 R | R 5 6 5 3 > | 5 5 3 3 4 > !co
C x=----x=--x=x=-- R R c R | R R 5 > | R R 5 R | R 8 c > | R R _c R | R R _5 > | R R 3 R | R 8 5 > | R R 2 R | 5 5 3 R !co
S x=----x=--x=xxx= R R c 5 6 > | R R 8 c 5 > | R R 5 5 6 8 | R R c 8 c 5 | R R 5 3 4 5 | R R 3 3 4 > | R 8 c 5 6 5 | R R _c R 2 > | R R _5 _5 _6 R | R 5 6 5 3 > | 5 5 3 3 4 > !co
A x=----x=--x=xxx= R 8 c 5 3 > | R 8 c 5 4 3 | R R 8 7 6 5 | R R 5 5 4 3 | R R 5 4 3 > | R R _7 _7 _6 > | R R _7 _7 _6 _5 | R R 3 3 2 > | 8 8 c 6 5 > | 5 5 3 3 2 > !co
L x=----x=--x=xxx= R 8 8 8 9 10 | R R 8 8 9 > | R 5 8 8 c 8 | R 8 8 9 8 > | R R 5 8 9 8 | R 8 9 10 9 8 | R R c c 8 9 | 8 8 10 10 9 > | R 5 8 8 9 10 | 5 5 8 8 9 > !co
T x=----x=--x=x=xx R R c 5 >> > | R R 5 5 6 7 | R R 5 3 >> > | R R 3 5 >> > | R 8 c 5 >> > | R R _5 _5 _6 _7 | R R _5 R >> > | R R 5 5 >> > | R R 3 3 4 5
H1 x=----x= R R | R > | R 8 | R 5 | R c | R 3
H2 x=--xxx= R 5 6 > | R R 2 > | R 5 4 > | R 3 2 > | R 3 4 > | 8 7 6 > | R _7 _6 >

tune double-tap 3-5: the one with its sixteenth echo, the and of two, air on three, and a run on four
S xx----x=----xxx= R R 8 5 6 > | R R 5 5 6 8 | R R c 5 6 > | R R R 3 4 > | R R R 3 4 5 | R R 5 3 4 > | R R _5 _6 _7 > | R R _c R 2 > | R R 3 5 6 5 | R R 8 c 5 > | 5 5 3 3 4 > !co
A xx----x=----xxx= R R 8 7 6 5 | R R 8 c 5 > | R R 5 4 3 > | R R 5 4 3 2 | R R _7 _7 _6 > | R R _7 _7 _6 _5 | R R R 3 2 > | 8 8 c 6 5 > | R R 5 3 2 > | 5 5 3 2 R > !co
S xx----x=----xxx= R R 8 5 6 > | R R 5 5 6 8 | R R c 5 6 > | R R R 3 4 > | R R R 3 4 5 | R R 5 3 4 > | R R _5 _6 _7 > | R R _c R 2 > | R R 3 5 6 5 | R R 8 c 5 > | 5 5 3 3 4 > !co
C xx----x=----x=-- R R 5 > | R R c R | R R R > | R R 8 > | R R _7 R | R R _5 R | R R 3 R | R R 5 R | 8 8 5 > | 5 5 3 R !co
S xx----x=----xxx= R R 8 5 6 > | R R 5 5 6 8 | R R c 5 6 > | R R R 3 4 > | R R R 3 4 5 | R R 5 3 4 > | R R _5 _6 _7 > | R R _c R 2 > | R R 3 5 6 5 | R R 8 c 5 > | 5 5 3 3 4 > !co
A xx----x=----xxx= R R 8 c 5 > | R R 8 7 6 5 | R R 5 4 3 > | R R 5 4 3 2 | R R _7 _7 _6 > | R R _7 _7 _6 _5 | R R R 3 2 > | 8 8 c 6 5 > | R R 5 3 2 > | 5 5 3 2 R > !co
L xx----x=----xxx= R R 8 8 9 10 | R R 8 9 8 > | R R 5 8 9 > | R R 5 8 c 8 | R R 8 10 9 8 | 8 8 10 10 9 > | R R c 8 9 8 | R R 8 8 9 > | R R 5 8 9 10 | 5 5 8 8 9 > !co
T xx----x=----x=xx R R 5 5 6 7 | R R 8 5 >> > | R R 5 3 >> > | R R R 3 >> > | R R c 5 >> > | R R _5 _5 _6 _7 | R R _7 R >> > | R R 3 5 >> > | R R R 3 4 5
H1 xx----x= R R R | R R > | R R 8 | R R 5 | R R c | R R 3
H2 x=--xxx= R 5 6 > | R R 2 > | R 5 4 > | R 3 2 > | R 3 4 > | 8 7 6 > | R _7 _6 >

tune late-answer 3-5: the one alone, a beat and more of air, then eighths on three and a sixteenth turn on four
S x=------x=x=xxx= R 5 6 8 c > | R R 3 3 4 5 | R 5 6 5 6 > | R R 3 5 6 > | R 3 5 5 6 8 | R R 2 3 4 > | R _5 _6 _7 R > | R _5 _7 R 2 > | R 5 c 8 c 5 | R R _c R 2 > | 5 5 3 3 4 > !co
A x=------x=x=xxx= R 8 c 5 4 3 | R 8 7 6 5 > | R 8 c 5 3 > | R 5 5 4 3 > | R 5 4 3 2 > | R R _7 _7 _6 > | R R _7 _7 _6 _5 | R 5 3 3 2 > | 8 c 5 5 3 > | R R 3 3 2 > | 5 5 3 2 R > !co
S x=------x=x=xxx= R 5 6 8 c > | R R 3 3 4 5 | R 5 6 5 6 > | R R 3 5 6 > | R 3 5 5 6 8 | R R 2 3 4 > | R _5 _6 _7 R > | R _5 _7 R 2 > | R 5 c 8 c 5 | R R _c R 2 > | 5 5 3 3 4 > !co
C x=------x=x=x=-- R 5 3 R | R R 5 > | R 8 c > | R R _7 R | R _5 _7 R | R R 3 > | R 3 2 R | R 8 5 > | R R R > | 5 3 2 R !co
S x=------x=x=xxx= R 5 6 8 c > | R R 3 3 4 5 | R 5 6 5 6 > | R R 3 5 6 > | R 3 5 5 6 8 | R R 2 3 4 > | R _5 _6 _7 R > | R _5 _7 R 2 > | R 5 c 8 c 5 | R R _c R 2 > | 5 5 3 3 4 > !co
A x=------x=x=xxx= R 8 7 6 5 > | R 8 c 5 4 3 | R 8 c 5 3 > | R 5 5 4 3 > | R 5 4 3 2 > | R R _7 _7 _6 > | R R _7 _7 _6 _5 | R 5 3 3 2 > | 8 c 5 5 3 > | R R 3 3 2 > | 5 5 3 2 R > !co
L x=------x=x=xxx= R 5 8 8 9 10 | R 8 8 8 9 > | R 8 9 10 9 8 | R 8 10 10 9 > | R 5 8 9 8 > | R 5 c 8 9 8 | R 7 8 8 9 > | 8 8 9 10 9 > | R 5 8 8 c 8 | 5 5 8 8 9 > !co
T x=------x=x=x=xx R R 5 5 6 7 | R 5 c 5 >> > | R 5 5 3 >> > | R 3 4 5 >> > | R R 3 5 >> > | R _5 _5 _5 _6 _7 | R R _7 R >> > | R 8 c 5 >> > | R R 3 3 4 5
H1 x=-- R | 8
H1 x=x= R R | R > | R 5 | R 3 | R 8
H2 x=x=xxx= R 5 5 6 > | R R 3 4 > | R 5 5 4 > | R 5 4 3 > | R 3 3 2 > | 8 c 5 4 > | R R _7 _6 >

tune flat-stone 1-2: the one with its echo, a hole, a pair on three and silence; the answer lets one more note out on four
S xx--xx-- R R R 5 | R R R c | R R 5 8 | R R 5 R | R R 8 R | R R _5 R | R R 5 5 | 8 8 5 R | R R 3 5 | R R 5 3 | R R c 8 | R R 3 R | 5 5 3 R !co
A xx--xxx- R R 8 5 R | R R 8 c R | R R 5 R > | R R c R > | R R R 5 > | 8 8 8 5 > | R R 8 8 5 | R R _5 R > | 8 8 5 R > | R R 5 3 R | R R c 5 R | 8 8 c 5 > | R R 3 R > | 5 5 3 R > !co
S xx--xx-- R R R 5 | R R R c | R R 5 8 | R R 5 R | R R 8 R | R R _5 R | R R 5 5 | 8 8 5 R | R R 3 5 | R R 5 3 | R R c 8 | R R 3 R | 5 5 3 R !co
C xx--xx-- R R R R | R R 5 R | R R _5 R | 8 8 c R | R R 8 R | 8 8 5 R | R R 3 R | R R c R | 5 5 3 R !co
S xx--xx-- R R R 5 | R R R c | R R 5 8 | R R 5 R | R R 8 R | R R _5 R | R R 5 5 | 8 8 5 R | R R 3 5 | R R 5 3 | R R c 8 | R R 3 R | 5 5 3 R !co
A xx--xxx- R R 5 R > | R R c R > | R R 8 5 R | R R 8 c R | R R R 5 > | 8 8 8 5 > | R R 8 8 5 | R R _5 R > | 8 8 5 R > | R R 5 3 R | R R c 5 R | 8 8 c 5 > | R R 3 R > | 5 5 3 R > !co
L xx--xx-- R R 8 8 | R R 5 8 | 8 8 5 8 | 8 8 c 8 | R R 8 5 | 8 8 8 8 | R R 8 10 | 8 8 10 8 | R R c 8 | 5 5 8 8 !co
T xx--xxx- R R R 5 > | R R R c > | R R 5 R > | R R c R > | R R 5 8 > | R R _5 R > | 8 8 5 R > | R R R R > | R R 3 5 > | R R 5 3 > | 8 8 5 3 > | R R 3 3 5
H1 xx-- R R | R 8 | 8 8 | R 5 | R > | R 3
H2 xx-- R R | R 5 | R 8 | R _5 | R 3
H2 xxx- R R > | R R 5 | R 5 > | R 8 5 | R 3 >

tune copper-latch 3-5: the one low, a sharp and of two, a long hole, and two sixteenths on four that stay in the chord
S x=----x=----xx-- R R 8 c | R R 5 5 | R R 5 3 | R R c 5 | R R 3 5 | R _c R 3 | R 8 c 5 | R R _5 R | R 5 3 R | R R _c R | R R 3 3 | R R _c _5 | 8 8 c 5 | 5 5 3 R !co | 3 3 5 5 !co
A x=----x=----xxx= R 8 c 5 3 | R R c 5 > | R R 5 3 > | R R 3 5 > | R R _c _5 > | 8 8 c 5 3 | R R 3 3 > | R R _5 _5 > | R R 5 5 > | 8 c 5 3 R | R _c R 3 5 | R R 8 c 5 | 5 5 3 R > !co | 3 3 5 5 > !co
S x=----x=----xx-- R R 8 c | R R 5 5 | R R 5 3 | R R c 5 | R R 3 5 | R _c R 3 | R 8 c 5 | R R _5 R | R 5 3 R | R R _c R | R R 3 3 | R R _c _5 | 8 8 c 5 | 5 5 3 R !co | 3 3 5 5 !co
C x=----x=----xx-- R R _c R | R R R R | R R _5 R | R R 3 R | R R 5 R | R 8 c R | R 5 3 R | R R 3 3 | 5 5 3 R !co
S x=----x=----xx-- R R 8 c | R R 5 5 | R R 5 3 | R R c 5 | R R 3 5 | R _c R 3 | R 8 c 5 | R R _5 R | R 5 3 R | R R _c R | R R 3 3 | R R _c _5 | 8 8 c 5 | 5 5 3 R !co | 3 3 5 5 !co
A x=----x=----xxx= R R c 5 > | R 8 c 5 3 | R R 5 3 > | R R 3 5 > | R R _c _5 > | 8 8 c 5 3 | R R 3 3 > | R R _5 _5 > | R R 5 5 > | 8 c 5 3 R | R _c R 3 5 | R R 8 c 5 | 5 5 3 R > !co | 3 3 5 5 > !co
L x=----x=----xx-- R 8 8 10 | 8 8 10 8 | R R 8 8 | R 8 c 8 | R R 5 8 | 8 8 10 10 | R c 8 8 | R 5 8 10 | 5 5 8 8 !co
T x=----x=----x=xx R R 5 >> > | R R 3 >> > | R R c >> > | R R _5 >> > | R R 5 6 7 | R R _5 _6 _7 | R 8 c 5 > | R R 3 5 > | 8 8 5 >> > | R R 5 3 >
H1 x=----x= R R | R > | R 8 | R 5 | R c | R 3
H2 x=--xx-- R 8 c | R 5 5 | R _c R | R 3 5 | R 5 3 | 8 c 5
H2 x=--xxx= R 5 3 > | R 3 5 > | R _c R > | 8 c 5 > | R 5 5 >

tune bent-hinge 3-5: the one low and held to its last sixteenth, silence, and a small tag right on three; the answer adds one lead late on four
S x==x----xxx----- R R 8 c 5 | R R 3 5 5 | R R _c R R | R R 5 3 R | R R c 5 3 | R R 3 5 c | R 8 8 c 5 | R R _5 _c R | R R 5 5 3 | R R 3 3 5 | R R R 3 5 | R R _c _5 _5 | 8 8 c 5 5 | 5 5 5 3 R !co | 3 3 3 5 5 !co
A x==x----xxx---x= R R c 5 3 > | R 8 8 c 5 > | R R 5 3 R > | R R _c _5 _5 > | R R 3 5 5 > | R R 3 3 5 > | R R _5 _c R > | 8 8 c 5 3 R | R R 8 c 5 3 | R R R 3 5 c | R R 5 5 3 > | R R R R 3 > | 5 5 5 3 R > !co | 3 3 5 3 R > !co
S x==x----xxx----- R R 8 c 5 | R R 3 5 5 | R R _c R R | R R 5 3 R | R R c 5 3 | R R 3 5 c | R 8 8 c 5 | R R _5 _c R | R R 5 5 3 | R R 3 3 5 | R R R 3 5 | R R _c _5 _5 | 8 8 c 5 5 | 5 5 5 3 R !co | 3 3 3 5 5 !co
C x==x----xxx----- R R _c R R | R R _5 R R | R R 3 R R | R R 5 3 R | R R R R R | R 8 c 5 R | R R _5 _c R | R R 5 R R | 5 5 5 3 R !co
S x==x----xxx----- R R 8 c 5 | R R 3 5 5 | R R _c R R | R R 5 3 R | R R c 5 3 | R R 3 5 c | R 8 8 c 5 | R R _5 _c R | R R 5 5 3 | R R 3 3 5 | R R R 3 5 | R R _c _5 _5 | 8 8 c 5 5 | 5 5 5 3 R !co | 3 3 3 5 5 !co
A x==x----xxx---x= R 8 8 c 5 > | R R c 5 3 > | R R 5 3 R > | R R _c _5 _5 > | R R 3 5 5 > | R R 3 3 5 > | R R _5 _c R > | 8 8 c 5 3 R | R R 8 c 5 3 | R R R 3 5 c | R R 5 5 3 > | R R R R 3 > | 5 5 5 3 R > !co | 3 3 5 3 R > !co
L x==x----xxx----- R 8 8 10 8 | 8 8 10 10 8 | R R 8 8 10 | R R 5 c 8 | R 8 8 c 8 | R R c 8 8 | R R 5 5 8 | 8 8 5 c 8 | 5 5 5 8 8 !co
T x==x----xxx-x=x= R R 3 5 5 >> > | R R c 5 3 >> > | R R _c R R >> > | R R 5 5 5 6 7 | R R _5 _5 _5 _6 _7 | R 8 c 5 3 >> > | R R R 3 5 >> > | R R 5 3 R >> > | 8 8 c 5 5 >> > | R R _5 _c R >> >
H1 x==x---- R R | R 8 | R 5 | R 3 | 8 8
H2 xxx----- R R R | R 3 5 | R 5 3 | R _c R | 8 c 5
H2 xxx---x= R 3 5 > | R R R > | R _c R > | R 5 3 > | 8 c 5 >
`;
