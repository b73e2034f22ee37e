/** Funk in sixteenths: tunes of eight bars (see the notation beside the books). */
export const FUNK_TUNES = `
tune loud-one 1-2: the one, a hole for the snare, then a pair and a short one, the same in every bar
S x---xxx- R 5 5 8 | R 5 c 8 | R 8 8 5 | R 5 5 R | R c c 8 | R _5 _5 R | R 3 3 5 | R 5 5 > | R 3 5 > | 5 3 3 R !co
A x---xxx- R 5 c 8 | R 5 5 8 | R 8 8 5 | R 8 8 > | R _5 _5 R | R 5 5 > | R 5 5 3 | R 3 3 5 | R 5 3 > | 5 3 3 R !co
S x---xxx- R 5 5 8 | R 5 c 8 | R 8 8 5 | R 5 5 R | R c c 8 | R _5 _5 R | R 3 3 5 | R 5 5 > | R 3 5 > | 5 3 3 R !co
C x---x-xx R 5 R > | R 8 5 > | R c 8 > | R 5 5 > | R _5 _5 > | R 8 c 5 | R 3 5 > | R 5 3 >
S x---xxx- R 5 5 8 | R 5 c 8 | R 8 8 5 | R 5 5 R | R c c 8 | R _5 _5 R | R 3 3 5 | R 5 5 > | R 3 5 > | 5 3 3 R !co
A x---xxx- R 8 8 5 | R 8 c 5 | R 8 8 > | R 5 5 R | R _5 _5 R | R _5 _5 > | R 5 5 3 | R 5 3 R | R 5 3 > | 5 3 3 R !co
L x---xxx- R 5 8 8 | R 8 10 8 | R c c 8 | R 5 5 8 | R 8 8 c | R 5 8 5 | R 3 5 8 | R 5 c 5 | 5 8 8 c !co
T x---xxxx R 5 5 R > | R 5 5 5 > | R 8 8 5 > | R c c 5 > | R _5 _5 R > | R 3 3 5 > | R 5 5 3 > | R R 3 5 > | R 5 5 >> >
H1 x--- R | 8
H1 x-x- R R | R > | R 5 | R 8 | R 3
H2 xxx- R R > | R R 5 | R 5 > | R 5 8 | R 8 R | R 3 > | R R R

tune hand-and-echo 1-2: two on the one, three and four short; bars four and eight let four roll into the next
S xx--x-x- R R 8 5 | R R 5 8 | R R c 8 | R R 5 R | R R 8 c | R R _5 R | R R 3 5 | R R 5 > | R R 3 > | 5 5 3 R !co
A xx--x-x- R R 5 8 | R R c 8 | R R 8 5 | R R 8 > | R R 5 R | R R _5 R | R R 5 3 | R R 3 5 | R R R > | 5 5 3 R !co
S xx--x-x- R R 8 5 | R R 5 8 | R R c 8 | R R 5 R | R R 8 c | R R _5 R | R R 3 5 | R R 5 > | R R 3 > | 5 5 3 R !co
C xx--x-xx R R 5 R > | R R 8 5 > | R R c 5 > | R R R R > | R R _5 R > | R R 8 c 5 | R R 5 3 > | R R 3 5 >
S xx--x-x- R R 8 5 | R R 5 8 | R R c 8 | R R 5 R | R R 8 c | R R _5 R | R R 3 5 | R R 5 > | R R 3 > | 5 5 3 R !co
A xx--x-x- R R 8 5 | R R 8 c | R R 8 > | R R c 5 | R R 5 R | R R _5 R | R R _5 > | R R 5 3 | R R 3 R | R R 3 > | 5 5 3 R !co
L xx--x-x- R R 8 8 | R R 8 10 | R R c 8 | R R 5 8 | R R 8 c | R R 3 8 | R R 5 c | R R 5 5 | 5 5 8 8 !co
T xx--x-xx R R 5 5 > | R R 8 5 > | R R c 5 > | R R R R > | R R _5 R > | R R 3 5 > | R R 5 3 > | R R R 5 > | R R 3 >> >
H1 xx-- R R | R 8 | 8 8 | R 5 | R > | R 3
H2 x-x- R > | R 5 | R R | R 8 | R 3 | 8 5

tune long-hole 1-2: two on the one, two beats of air, and a pair on four that fetches the next bar
S xx----xx R R 5 > | R R c > | R R 8 > | R R 5 8 | R R c 8 | R R _5 > | R R _5 R | R R 3 > | R R 3 5 | 5 5 3 > !co
A xx----xx R R c > | R R 5 > | R R 8 5 | R R 8 > | R R 8 c | R R _5 > | R R R > | R R 3 > | R R 5 3 | 5 5 R > !co
S xx----xx R R 5 > | R R c > | R R 8 > | R R 5 8 | R R c 8 | R R _5 > | R R _5 R | R R 3 > | R R 3 5 | 5 5 3 > !co
C xx--x-x- R R 5 > | R R 8 5 | R R c 5 | R R 5 R | R R _5 R | R R 8 > | R R 3 > | R R 5 3
S xx----xx R R 5 > | R R c > | R R 8 > | R R 5 8 | R R c 8 | R R _5 > | R R _5 R | R R 3 > | R R 3 5 | 5 5 3 > !co
A xx----xx R R 8 5 | R R 8 c | R R 8 > | R R c 5 | R R 5 R | R R _5 R | R R _5 > | R R 5 3 | R R 3 > | 5 5 R > !co
L xx----xx R R 8 8 | R R 8 10 | R R c 8 | R R 8 > | R R 5 8 | R R 10 8 | R R 8 c | R R 5 c | R R 5 5 | 5 5 8 > !co
T xx--x-xx R R R 5 > | R R 5 5 > | R R 8 5 > | R R c 5 > | R R _5 _5 > | R R 3 5 > | R R 5 3 > | R R 5 >> > | R R 3 >> >
H1 xx-- R R | R 8 | 8 8 | R 5 | R > | R 3
H2 x-xx R 5 > | R R > | R 8 > | R R 5 | R _5 > | R 3 >

tune doorstep 1-2: the one, a hole, three, and a pair on four that steps over the bar line
S x---x-xx R R 5 > | R 8 5 > | R R c 8 | R R 5 8 | R 5 R > | R 8 c 5 | R R 3 > | R _5 R > | R R 3 5 | 5 3 R > !co
A x---x-xx R 8 5 > | R R 5 > | R R c > | R R 8 5 | R 8 c > | R _5 R > | R R _5 > | R 5 3 > | R R 5 3 | 5 R 3 > !co
S x---x-xx R R 5 > | R 8 5 > | R R c 8 | R R 5 8 | R 5 R > | R 8 c 5 | R R 3 > | R _5 R > | R R 3 5 | 5 3 R > !co
C x---xxx- R 5 5 > | R 8 8 5 | R c c 5 | R 5 5 R | R _5 _5 R | R 8 8 > | R 3 3 > | R 5 5 3
S x---x-xx R R 5 > | R 8 5 > | R R c 8 | R R 5 8 | R 5 R > | R 8 c 5 | R R 3 > | R _5 R > | R R 3 5 | 5 3 R > !co
A x---x-xx R 8 c 5 | R 8 8 5 | R 8 R > | R c 5 > | R 5 5 > | R 5 5 R | R _5 _5 > | R 5 3 > | R 5 3 R | 5 R 3 > !co
L x---x-xx R 5 8 > | R 8 8 5 | R 8 10 8 | R c 8 > | R 5 8 5 | R 5 8 8 | R 3 5 > | R 8 8 c | R 5 5 > | 5 8 5 > !co
T x---xxxx R R R 5 > | R 5 5 R > | R 8 8 5 > | R c c 5 > | R _5 _5 R > | R R 3 5 > | R 5 5 3 > | R 3 3 5 > | R R 5 >> >
H1 x--- R | 8
H1 x-x- R R | R > | R 5 | R 8 | R 3
H2 x-xx R 5 > | R R > | R 8 > | R R 5 | R _5 > | R 3 >

tune kick-drum-shadow 3-5: a sixteenth pair on the one, then the kick's two ands and a short four; the tail never changes its rhythm
S xx----x=--x=x=-- R R 8 c 5 | R R 8 5 c | R R 8 c > | R R 5 5 3 | R R 5 c 5 | R R _5 _c R | R R 5 4 3 | R R c 5 > | R R _5 _5 > | 5 5 5 4 3 !co
A xx----x=--x=x=-- R R 8 5 c | R R 8 c 5 | R R 8 c > | R R 5 c 5 | R R 5 5 > | R R _5 _c R | R R 5 3 4 | R R c 5 > | R R _5 _5 > | 5 5 5 3 4 !co
S xx----x=--x=x=-- R R 8 c 5 | R R 8 5 c | R R 8 c > | R R 5 5 3 | R R 5 c 5 | R R _5 _c R | R R 5 4 3 | R R c 5 > | R R _5 _5 > | 5 5 5 4 3 !co
C xx----x=----x=x= R R 8 5 > | R R 8 c 5 | R R c 5 > | R R 5 3 > | R R 5 4 3 | R R _5 _c R | R R _5 R > | R R 5 5 >
S xx----x=--x=x=-- R R 8 c 5 | R R 8 5 c | R R 8 c > | R R 5 5 3 | R R 5 c 5 | R R _5 _c R | R R 5 4 3 | R R c 5 > | R R _5 _5 > | 5 5 5 4 3 !co
A xx----x=--x=x=-- R R 5 c 8 | R R 5 5 c | R R 5 c > | R R 3 4 5 | R R 3 3 > | R R _5 _c R | R R _5 R > | R R 5 3 > | R R R 3 4 | 5 5 3 4 5 !co
L xx----x=--x=x=-- R R 8 10 8 | R R 8 8 10 | R R 8 9 > | R R c 8 c | R R 5 8 c | R R 5 8 > | R R 5 c 8 | R R 5 c 5 | R R 3 5 c | 5 5 8 c 8 !co
T xx----x=--x=x=xx R R 8 c 5 >> > | R R 8 5 5 >> > | R R 5 5 3 >> > | R R 5 3 5 >> > | R R _5 _5 _5 >> > | R R c c 5 >> > | R R 5 3 3 4 5 | R R _5 _c R >> >
H1 xx----x= R R R | R R > | R R 8 | R R 5 | R R c | R R 3
H2 x=--x=x= R 5 > | R 3 > | R 5 3 | R c 5 | R 8 > | R _5 > | R 3 5

tune double-tap 3-5: the one with its sixteenth echo, the and of two, air on three, and a turn in sixteenths on four that is answered once
S xx----x=----xxx= R R 8 8 c 5 | R R 8 c 5 > | R R 8 8 c > | R R 5 5 4 3 | R R 5 4 3 > | R R c c 5 > | R R _5 _5 _c R | R R _5 _c _5 > | R R 5 c 5 > | 5 5 5 5 4 3 !co
A xx----x=----xxx= R R 8 c 5 > | R R 8 8 c 5 | R R 8 8 c > | R R 5 4 3 > | R R 5 5 4 3 | R R c c 5 > | R R _5 _c _5 > | R R _5 _5 _c R | R R 5 c 5 > | 5 5 5 4 3 > !co
S xx----x=----xxx= R R 8 8 c 5 | R R 8 c 5 > | R R 8 8 c > | R R 5 5 4 3 | R R 5 4 3 > | R R c c 5 > | R R _5 _5 _c R | R R _5 _c _5 > | R R 5 c 5 > | 5 5 5 5 4 3 !co
C xx----x=----x=x= R R 8 5 > | R R 8 c 5 | R R c 5 > | R R 5 3 > | R R 5 5 > | R R _5 R > | R R _5 _c R | R R 8 R >
S xx----x=----xxx= R R 8 8 c 5 | R R 8 c 5 > | R R 8 8 c > | R R 5 5 4 3 | R R 5 4 3 > | R R c c 5 > | R R _5 _5 _c R | R R _5 _c _5 > | R R 5 c 5 > | 5 5 5 5 4 3 !co
A xx----x=----xxx= R R 8 5 c 8 | R R 8 5 c > | R R 5 5 c 8 | R R 5 3 4 5 | R R 5 3 4 > | R R R 3 4 5 | R R R 3 4 > | R R _5 _5 _c R | R R _5 _c R > | 5 5 3 3 4 5 !co
L xx----x=----xxx= R R 8 10 9 8 | R R 8 8 9 > | R R 8 8 c 8 | R R c c 8 > | R R 5 5 c 8 | R R 5 c 8 > | R R 5 8 c 5 | R R 5 c 5 > | R R 3 3 4 5 | 5 5 8 8 c 8 !co
T xx----x=----x=xx R R 8 5 >> > | R R 5 5 >> > | R R 3 5 >> > | R R c 5 >> > | R R 5 3 >> > | R R _5 _5 >> > | R R 5 3 4 5 | R R R 5 >> > | R R _c _5 >> >
H1 xx----x= R R R | R R > | R R 8 | R R 5 | R R c | R R 3
H2 x=--xxx= R 5 4 3 | R 5 4 > | R 3 4 > | R 3 4 5 | R 8 c > | R _5 _c R

tune late-answer 3-5: a sixteenth pair on the one, a long hole, then eighths on three and a turn on four that goes round one note
S xx------x=x=xxx= R R 5 c 8 c 5 | R R 5 c 5 4 3 | R R 5 c 8 c > | R R 5 c 5 4 > | R R 3 5 5 4 3 | R R 3 4 5 4 3 | R R R _c _5 _c R | R R _5 _c R _c > | R R 5 3 5 4 > | 5 5 3 4 5 4 3 !co
A xx------x=x=xxx= R R 5 c 8 c > | R R 5 c 8 c 5 | R R 5 c 5 4 > | R R 5 c 5 4 3 | R R 3 4 5 4 > | R R 3 5 5 4 3 | R R _5 _c R _c > | R R R _c _5 _c R | R R 5 3 5 4 > | 5 5 3 4 5 4 > !co
S xx------x=x=xxx= R R 5 c 8 c 5 | R R 5 c 5 4 3 | R R 5 c 8 c > | R R 5 c 5 4 > | R R 3 5 5 4 3 | R R 3 4 5 4 3 | R R R _c _5 _c R | R R _5 _c R _c > | R R 5 3 5 4 > | 5 5 3 4 5 4 3 !co
C xx------x=x=--x= R R 5 c > | R R 8 c 5 | R R 5 3 > | R R 3 5 > | R R c 5 > | R R _5 _c R | R R R _5 > | R R 5 4 3
S xx------x=x=xxx= R R 5 c 8 c 5 | R R 5 c 5 4 3 | R R 5 c 8 c > | R R 5 c 5 4 > | R R 3 5 5 4 3 | R R 3 4 5 4 3 | R R R _c _5 _c R | R R _5 _c R _c > | R R 5 3 5 4 > | 5 5 3 4 5 4 3 !co
A xx------x=x=xxx= R R 8 c 5 4 3 | R R 8 c 5 c > | R R 8 c 5 4 > | R R 5 4 3 4 5 | R R 5 4 3 4 > | R R c 5 5 4 3 | R R c 5 3 4 > | R R R _c _5 _c > | R R 5 3 R 3 > | 5 5 5 4 3 4 > !co
L xx------x=x=xxx= R R 8 8 10 9 8 | R R 8 9 10 9 > | R R 5 8 8 9 > | R R 5 c 8 9 8 | R R 5 8 8 c 5 | R R 8 8 9 8 > | R R 5 5 8 c > | R R 5 c 5 c > | R R 3 4 5 4 > | 5 5 8 8 9 8 > !co
T xx------x=x=x=xx R R 5 c 5 >> > | R R 8 c 5 >> > | R R 3 4 5 >> > | R R 5 4 3 >> > | R R 3 5 3 >> > | R R R _c _5 >> > | R R _5 _c R >> > | R R 3 3 3 4 5
H1 xx-- R R | R 8
H1 xx--x=x= R R R > | R R 3 5 | R R 5 3 | R R 5 c | R R 5 >
H2 x=x=xxx= R 5 5 4 3 | R 5 5 4 > | R 3 3 4 > | R 3 5 4 3 | R c 5 c > | R _c _5 _c R

tune flat-stone 1-2: the one with its echo, a hole, a pair on three and silence; bars four and eight let one more note out on four
S xx--xx-- R R R 5 | R R R c | R R 5 8 | R R c 8 | R R 5 R | R R _5 R | R R 3 5 | R R 8 R | R R 3 R | 5 5 3 R !co
A xx--xx-- R R R c | R R R 5 | R R c 8 | R R 5 8 | R R 5 R | R R _5 R | R R 3 5 | R R 8 5 | R R 5 3 | 5 5 3 R !co
S xx--xx-- R R R 5 | R R R c | R R 5 8 | R R c 8 | R R 5 R | R R _5 R | R R 3 5 | R R 8 R | R R 3 R | 5 5 3 R !co
C xx--xxx- R R 5 R > | R R c 5 > | R R 8 5 R | R R R 5 > | R R _5 R > | R R 8 c 5 | R R 5 3 > | R R 3 5 >
S xx--xx-- R R R 5 | R R R c | R R 5 8 | R R c 8 | R R 5 R | R R _5 R | R R 3 5 | R R 8 R | R R 3 R | 5 5 3 R !co
A xx--xx-- R R 8 5 | R R 8 c | R R c 5 | R R 5 R | R R _5 R | R R 5 5 | R R 5 3 | R R 3 R | R R 8 8 | 5 5 3 R !co
L xx--xx-- R R 8 8 | R R 8 10 | R R c 8 | R R 5 8 | R R 8 5 | R R 5 c | R R 3 8 | R R 5 5 | 5 5 8 8 !co
T xx--xxx- R R R 5 > | R R 5 5 > | R R c 5 > | R R 8 5 > | R R _5 R > | R R R R > | R R 3 5 > | R R 5 3 > | R R 3 3 5
H1 xx-- R R | R 8 | 8 8 | R 5 | R > | R 3
H2 xx-- R R | R 5 | R 8 | R _5 | R 3
H2 xxx- R R > | R R 5 | R 5 > | R 8 5 | R 3 >

tune copper-latch 3-5: the one held to its echo on the last sixteenth, a sharp and of two, a long hole, and two sixteenths on four that stay in the chord
S x==x--x=----xx-- R R 8 c 5 | R R 8 8 c | R R 5 c 5 | R R 5 5 3 | R R c c 5 | R R _c _5 _c | R R 5 4 3 | R R 3 3 5 | R R _5 _c R | 5 5 5 5 3 !co
A x==x--x=----xx-- R R 8 8 c | R R 8 c 5 | R R 5 5 3 | R R 5 c 5 | R R 5 4 3 | R R c c 5 | R R _5 _c R | R R _c _5 _c | R R 3 3 5 | 5 5 5 4 3 !co
S x==x--x=----xx-- R R 8 c 5 | R R 8 8 c | R R 5 c 5 | R R 5 5 3 | R R c c 5 | R R _c _5 _c | R R 5 4 3 | R R 3 3 5 | R R _5 _c R | 5 5 5 5 3 !co
C x==x--x=----x=x= R R 8 5 > | R R 8 c 5 | R R c 5 > | R R 5 3 > | R R 5 5 > | R R _c _5 > | R R _5 R > | R R 5 4 3
S x==x--x=----xx-- R R 8 c 5 | R R 8 8 c | R R 5 c 5 | R R 5 5 3 | R R c c 5 | R R _c _5 _c | R R 5 4 3 | R R 3 3 5 | R R _5 _c R | 5 5 5 5 3 !co
A x==x--x=----xx-- R R 5 c 8 | R R 8 5 c | R R 5 5 c | R R 3 4 5 | R R 5 3 4 | R R 3 3 4 | R R _5 _c R | R R R 3 4 | R R _5 R R | 5 5 3 4 5 !co
L x==x--x=----xx-- R R 8 10 8 | R R 8 8 10 | R R c c 8 | R R 5 8 c | R R 5 c 8 | R R 8 8 8 | R R 5 8 8 | R R 5 5 c | 5 5 8 c 8 !co
T x==x--x=----x=xx R R 8 5 >> > | R R 5 5 >> > | R R 5 3 >> > | R R c 5 >> > | R R 3 5 >> > | R R _5 _5 >> > | R R 5 3 4 5 | R R _c _5 >> >
H1 x==x--x= R R R | R R > | R R 8 | R R 5 | R R c | R R 3
H2 x=--xx-- R c 5 | R 8 c | R 5 3 | R _5 _c | R 3 5 | R 5 5
H2 x=--x=x= R 5 > | R 3 > | R 5 3 | R c 5 | R _5 >

tune bent-hinge 3-5: the one low and held to its last sixteenth, silence, and a small tag right on three; bars four and eight add a pickup late on four
S x==x----xxx----- R R 8 c 5 | R R 8 8 c | R R 5 5 3 | R R 5 4 3 | R R c 5 3 | R R _5 _c R | R R R _c R | R R 3 3 5 | R R 5 c 5 | 5 5 5 4 3 !co
A x==x----xxx----- R R 8 8 c | R R 8 c 5 | R R 5 4 3 | R R 5 5 3 | R R c c 5 | R R _5 _c R | R R R _c R | R R 3 3 5 | R R 5 c 5 | 5 5 5 4 3 !co
S x==x----xxx----- R R 8 c 5 | R R 8 8 c | R R 5 5 3 | R R 5 4 3 | R R c 5 3 | R R _5 _c R | R R R _c R | R R 3 3 5 | R R 5 c 5 | 5 5 5 4 3 !co
C x==x----xxx---x= R R 8 c 5 > | R R 5 c 5 > | R R 5 4 3 > | R R c 5 3 > | R R R _c R > | R R _5 _c R > | R R 3 3 5 > | R R 5 5 3 >
S x==x----xxx----- R R 8 c 5 | R R 8 8 c | R R 5 5 3 | R R 5 4 3 | R R c 5 3 | R R _5 _c R | R R R _c R | R R 3 3 5 | R R 5 c 5 | 5 5 5 4 3 !co
A x==x----xxx----- R R 5 c 8 | R R 5 5 c | R R 3 4 5 | R R 5 3 4 | R R 3 3 4 | R R _5 _c R | R R _5 _5 R | R R R 3 4 | R R 8 5 c | 5 5 3 4 5 !co
L x==x----xxx----- R R 8 10 8 | R R 8 8 10 | R R c 8 c | R R 5 c 8 | R R 5 8 c | R R 8 9 8 | R R 5 8 8 | R R 5 5 c | 5 5 8 c 8 !co
T x==x----xxx-x=xx R R 8 c 5 5 >> > | R R 5 5 3 3 >> > | R R 5 4 3 5 >> > | R R c 5 3 3 >> > | R R _5 _c R R >> > | R R R 3 5 5 >> > | R R _c _5 _5 _5 >> > | R R 3 4 5 5 >> >
H1 x==x---- R R | R 8 | R 5 | R 3
H2 xxx----- R R R | R 3 5 | R 5 3 | R _c R | R c 5
H2 xxx---x= R 3 5 > | R R R > | R _c R > | R 5 3 > | R c 5 >
`;
