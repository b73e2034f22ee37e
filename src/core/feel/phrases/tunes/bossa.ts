/** Bossa: tunes of eight bars (see the notation beside the books). */
export const BOSSA_TUNES = `
tune tide-line 1-2: the root says itself again before three, the fifth answers deep, the last eighth rises
S x==xx==x R R 5 8 | R R 5 > | R 3 5 > | R 5 5 > | R 3 5 8 | R _5 _5 > | R 5 3 > | R R _5 >
A x===x==x 8 5 > | R _5 > | R 3 > | R 5 > | 8 5 3 | R R > | R 5 3
S x==xx==x R R 5 8 | R R 5 > | R 3 5 > | R 5 8 > | R 3 5 8 | R R _5 > | 3 5 5 8 !co | 8 5 5 > !co | R R 3 >
C x==xx=x= R 5 R > | 8 5 5 > | R 5 3 > | R _5 R > | 8 5 3 > | R R 5 > | R 3 3 >
S x==xx==x R R 5 8 | R R 5 > | R 3 5 > | 5 5 3 > !co | 5 5 8 > !co | R 5 5 > | R 3 5 8 | R _5 _5 > | R R _5 >
L x==xx==x 8 8 5 8 | R 5 8 > | 8 8 10 > | 8 5 8 > | 8 10 8 5 | 8 8 5 > | R 3 8 > | R R 8 5
A x===x==x 8 5 > | R 5 > | R 3 > | R _5 > | 8 5 3 | R R > | R 5 3
T x==xx==x R 5 R > | R _5 R > | R 5 3 > | 8 5 R > | R 3 R > | R R 5 > | 8 5 3 >
H1 x==x R R | R 5 | 8 5 | R 3 | R >
H2 x==x R > | 8 > | R 5 | R 3

tune veranda 1-2: one bar comes to rest on three, the next has the late note that goes on; two and two like the rim
S x==xx=== R 5 8 | R 5 5 | R 3 5 | R 8 5 | R 5 3 | R _5 _5 | R 3 3 | R 5 R
A x==xx==x 8 5 5 > | R _5 _5 > | 8 5 3 > | 8 5 R > | R 5 3 > | R 5 5 > | R 3 5 > | R R 5 >
S x==xx=== R 5 8 | R 5 5 | R 3 5 | R 8 5 | R 5 3 | 8 5 5 !co | 3 5 5 !co | R _5 _5 | 5 5 8 !co | R 5 R
C x===x==x R 5 > | R R > | R 3 > | 8 5 > | R 5 3 | R _5 >
S x==xx=== R 5 8 | R 5 5 | R 3 5 | 5 5 3 !co | 5 8 5 !co | R 8 5 | R 5 3 | R _5 _5 | R 5 R
L x==xx==x 8 8 5 > | R 5 8 > | 8 8 10 > | 8 5 8 5 | 8 10 8 > | R 8 8 > | R 3 8 5 | R 8 5 >
A x==xx==x 8 5 5 > | R _5 _5 > | R 3 R > | R 5 R > | 8 5 3 > | 8 5 R > | R 5 3 > | R R 5 >
T x==xx==x R 5 5 > | 8 5 R > | R 5 3 > | R _5 _5 > | R 3 5 > | R R 5 > | 8 5 3 >
H1 x==x R 5 | 8 5 | R R | R 3 | R >
H2 x==x R > | R 5 | 8 > | R 3

tune rocking-boat 1-2: a long one, a long three, a short that tips over; the answer adds the short before three
S x===x==x R 5 8 | R 5 > | R 3 5 | R 8 > | R 5 3 | R _5 > | R 3 > | R _5 R
A x==xx==x 8 5 5 > | R _5 _5 > | 8 5 3 > | 8 8 5 > | R 5 3 > | R 5 5 > | R 3 3 > | R 5 R >
S x===x==x R 5 8 | R 5 > | R 3 5 | R 8 > | R 5 3 | R _5 > | 3 5 8 !co | 8 5 R !co | R 8 5 | 5 8 > !co
C x===x=x= R 5 > | 8 5 > | R 3 > | R R > | 8 5 3 | R _5 >
S x===x==x R 5 8 | R 5 > | R 3 5 | 5 3 > !co | 5 8 5 !co | R 8 > | R 5 3 | R _5 > | R _5 R
A x==xx==x R 5 5 8 | R 5 8 > | R 3 5 8 | R _5 _5 > | R 5 3 > | 8 5 5 > | R 3 5 > | 8 8 5 >
L x===x==x 8 5 8 | R 8 > | 8 10 > | 8 5 > | 8 10 8 | R 8 5 | R 3 8 | 8 8 >
T x==xx==x R 5 R > | 8 5 5 > | R 5 3 > | R _5 _5 > | R 3 5 > | R 5 5 > | 8 5 3 >
H1 x==x R R | R 5 | 8 5 | R 3 | R >
H2 x==x R > | R 5 | 8 > | R 3

tune market-walk 1-2: after the deep three a full step on four; then the light form, all shorts
S x==xx=x= R 5 8 5 | R 5 8 > | R 3 5 > | R 5 R 5 | R 5 3 5 | R R 5 > | R 3 5 8 | R 5 5 > | R _5 R >
A x==xx==x 8 5 5 > | R _5 _5 > | 8 5 3 > | 8 5 R > | R 5 3 > | R 8 5 > | 8 3 5 > | R 5 R >
S x==xx=x= R 5 8 5 | R 5 8 > | R 3 5 > | R R 5 > | R 3 5 8 | R 5 R > | 3 5 8 5 !co | R _5 R > | 8 5 R > !co
C x===x==x R 5 > | 8 5 > | R 3 > | R R > | R 5 3 | R _5 >
S x==xx=x= R 5 8 5 | R 5 8 > | R 3 5 > | 5 3 R > !co | 5 5 8 > !co | R 5 R 5 | R 5 3 5 | R R 5 > | R 5 5 > | R _5 R >
L x==xx=x= 8 8 5 8 | R 5 8 8 | 8 8 10 8 | 8 5 8 > | 8 10 8 > | R 5 8 > | R 3 5 8 | 8 8 5 >
A x==xx==x 8 5 5 > | R _5 _5 > | R 5 3 > | R 8 5 > | 8 5 3 > | 8 5 R > | R 3 5 > | R 5 5 >
T x==xx=x= R 5 R > | 8 5 5 > | R 5 3 > | R _5 R > | R 3 5 > | R 5 5 > | 8 5 3 >
H1 x==x R 5 | 8 5 | R R | R 3 | R >
H2 x=x= R > | R 5 | 8 > | R 3

tune hammock 3-4: the push before three hangs on across it; only the last eighth gets up; the answer walks it out
S x==x===x R 5 > | R 3 > | R 5 6 | R _5 > | R 3 4 | 8 5 > | R 5 4 | R 3 2
A x==xx==x 8 7 5 > | R 6 5 > | R 2 3 > | 8 6 5 4 | R _6 _5 > | R 4 3 > | R 5 3 2 | 8 5 3 >
S x==x===x R 5 > | R 3 > | R 5 6 | R _5 > | 5 3 > !co | R 8 > | 3 5 > !co | R 5 4 | 8 5 6
C x==xx==x R 4 3 > | R 5 3 > | R 2 3 > | 8 6 5 > | R _7 _5 > | R 3 R >
S x==x===x R 5 > | R 3 > | R 5 6 | 5 3 2 !co | 3 5 6 !co | R _5 > | R 3 4 | 8 5 > | R 3 2
A x==xx==x R 2 3 > | 8 7 5 > | R 6 5 > | R 2 3 4 | R 4 3 2 | R _6 _5 > | 5 6 8 > !co | R 3 5 6
L x==x===x 8 10 > | R 8 > | R 8 9 | 8 10 9 | R 5 8 | 5 8 9 !co | 8 9 >
T x==xx=xx R 5 3 >> > | R 3 5 >> > | 8 7 5 >> > | R _5 _5 >> > | R 2 3 >> > | R 6 5 >> > | R 5 3 2 >
H1 x==x R 5 | R 3 | 8 5 | R >
H2 x==x R > | 8 > | R 3 | R 5

tune harbor-steps 3-4: the fifth falls to the third on three and two quick steps lead off the quay; answered rising
S x==xx=xx R 5 3 2 > | R 5 3 4 5 | R 5 3 >> > | R 5 6 5 > | 8 7 5 6 > | R _5 _5 _6 > | R 3 5 4 3 | R 5 5 >> >
A x==xx==x R 2 3 > | R 3 5 > | R 2 3 4 | R 3 5 6 | R 6 5 > | 8 6 5 > | R _7 _5 > | R _5 _5 >
S x==xx=xx R 5 3 2 > | R 5 3 4 5 | R 5 3 >> > | R 5 8 7 > | 5 6 5 4 3 !co | R 3 5 >> > | 3 5 5 6 > !co | 8 6 5 4 > | R _7 _5 _6 >
C x==x===x R 3 > | R 5 > | 8 5 > | R _5 > | R 5 4 | R 3 2
S x==xx=xx R 5 3 2 > | R 5 3 4 5 | R 5 3 >> > | 5 6 5 4 > !co | 5 4 3 2 > !co | R 5 6 5 > | 8 7 5 6 > | R _5 _5 _6 > | R 3 5 4 3
L x==xx=xx 8 9 10 9 > | R 5 8 9 > | 8 9 8 7 > | R 5 8 >> > | 8 10 9 8 > | 5 8 9 8 > !co | 8 9 10 >> >
A x==xx==x 8 7 5 > | 8 6 5 > | R 6 5 > | R 5 3 2 | R _7 _5 > | R 4 3 > | R 5 3 > | 8 7 6 5
T x==xx=xx R 5 3 >> > | R 3 5 >> > | 8 7 5 >> > | R 2 3 >> > | R _5 _5 >> > | R _5 _5 _6 > | R 6 5 >> >
H1 x==x R 5 | R 3 | 8 7 | R 2 | R >
H2 x=xx R >> > | R 3 > | R 5 > | 8 7 >

tune paper-fan 3-4: a short root and air; the tune opens from the and of two; the answer steps out on four
S x--xx==x R 2 3 > | R 4 3 > | R 6 5 > | R 3 5 6 | R 5 3 > | 8 7 5 > | R _6 _5 > | R 2 3 4
A x==xx=x= 8 6 5 > | R 5 3 > | R 4 3 > | R _7 _5 > | R 6 5 > | R _6 _5 > | R 3 5 >
S x--xx==x R 2 3 > | R 4 3 > | R 6 5 > | R 3 5 6 | 3 4 5 > !co | R 5 8 > | 5 6 5 > !co | 8 7 5 > | R 5 6 >
C x==xx==x R 5 3 > | R 4 3 > | 8 6 5 > | R _5 _5 > | R 3 R > | R 5 3 2
S x--xx==x R 2 3 > | R 4 3 > | R 6 5 > | 3 4 3 > !co | 5 4 3 > !co | R 3 5 6 | R 5 3 > | 8 7 5 > | R 2 3 4
L x--xx==x 8 9 10 > | R 5 8 > | 8 9 8 > | R 6 8 > | 8 10 9 > | 5 8 9 > !co | 8 9 10 9
A x==xx=x= 8 6 5 > | R 5 3 > | R 4 3 > | R _7 _5 > | R 6 5 > | R _6 _5 > | R 3 5 >
T x--xx=xx R 5 3 >> > | R 2 3 >> > | R 6 5 >> > | 8 7 5 >> > | R _6 _5 >> > | R 3 5 >> > | R 5 3 2 >
H1 x--x R 5 | R 3 | R 2 | R >
H2 x==x R > | 8 > | R 3 | R 5

tune tilted-room 4-5: three plus three plus two, the third weight on four leans into the bar line; the answer gives three its due
S x==x==x= R 5 > | R 3 5 | R 3 > | R 5 6 | R 5 4 | R 6 > | 8 5 > | R _5 _6 | R 3 4
A x==xx=xx 8 7 5 6 > | R 2 3 >> > | R 5 3 2 > | R 6 5 >> > | 8 6 5 4 3 | R _6 _5 >> > | R 4 3 2 > | 8 9 8 7 >
S x==x==x= R 5 > | R 3 5 | R 5 8 | R 3 > | 5 3 > !co | R 5 6 | 3 5 > !co | 8 6 > | R _5 _6 | 5 6 8 !co
C x==xx==x R 4 3 > | R 5 3 > | 8 7 5 > | R 2 3 > | R _6 _5 > | R 6 5 > | R 5 3 2
S x==x==x= R 5 > | R 3 5 | R 3 > | 5 3 2 !co | 3 5 6 !co | R 5 6 | R 5 4 | R 6 > | 8 5 >
A x==xx=xx R 2 3 4 5 | 8 7 5 6 > | R 3 5 >> > | R 2 3 >> > | R 6 5 >> > | 5 6 8 7 > !co | R _6 _5 >> > | R 4 3 2 >
L x==x==x= 8 10 > | R 8 9 | 8 10 9 | R 5 8 | 8 9 > | 5 8 10 !co | 8 10 8
T x==xx=xx R 5 3 >> > | R 3 5 >> > | 8 7 5 >> > | R 2 3 >> > | R _6 _5 >> > | R 5 >>> >> > | R 4 3 >> >
H1 x==x R 5 | R 3 | 8 7 | R >
H2 x=xx R >> > | R 3 > | R 5 > | 8 7 >

tune slow-wave 4-5: after the deep three a push that rings over four, the last eighth slides home from a half step
S x==xxx=x R 2 3 5 > | R 6 5 3 > | R 5 3 5 > | R 5 5 3 > | R 3 5 3 > | 8 7 5 3 > | R _7 _5 R > | R 4 3 2 > | R 5 3 2 R
A x==xx==x 8 7 5 > | R 2 3 > | 8 6 5 > | R 4 3 2 | R _7 _5 > | 8 7 6 5 | R 2 3 4 | R 6 5 >
S x==xxx=x R 2 3 5 > | R 5 8 5 > | R 5 3 5 > | R 5 5 3 > | 3 4 5 3 > !co | R 3 5 8 5 | 5 6 5 3 > !co | 8 7 5 3 > | R _6 _5 R >
C x==x===x R 3 > | R 5 > | 8 5 > | R 5 4 | R _5 > | R 3 2 | R 5 6
S x==xxx=x R 2 3 5 > | R 6 5 3 > | R 5 3 5 > | 5 4 3 5 > !co | 3 2 3 5 > !co | R 5 5 3 > | R 3 5 3 > | 8 7 5 3 > | R 5 3 2 R
L x==xxx=x 8 9 10 8 > | R 5 8 9 > | 8 10 9 8 > | 8 9 8 10 > | R 6 8 9 > | 5 8 9 10 > !co | 8 9 10 8 7
A x==xx==x 8 7 5 > | R 2 3 > | 8 6 5 > | R 4 3 2 | R _7 _5 > | 8 7 6 5 | R 5 3 > | R 6 5 >
T x==xx=xx R 5 3 >> > | R 3 5 >> > | 8 7 5 >> > | R 2 3 >> > | R _6 _5 >> > | R 6 5 >> > | R 4 3 >> >
H1 x==x R 5 | R 3 | 8 7 | R 2 | R >
H2 x==x R > | 8 > | R 3 | R 5

tune evening-stairs 4-5: the full rhythm as a melody that steps up and steps down; off-beats alone at the top
S x==xx==x R 2 3 5 | R 2 3 > | R 3 5 6 | R 4 5 > | R 4 3 > | R 5 6 > | R _7 R > | 8 7 8 > | R 3 R >
A x==xx==x 8 7 6 5 | 8 7 5 > | R 5 3 2 | 8 6 5 4 | R 6 5 3 | R 3 R > | R _7 _6 > | 8 6 5 >
S x==xx==x R 2 3 5 | R 2 3 > | R 3 5 6 | R 5 8 > | 3 4 5 6 !co | R 6 5 > | 5 6 8 > !co | R _6 _5 > | 8 7 8 >
C x==x==xx R 3 >> > | R 5 >> > | 8 5 >> > | R _5 >> > | R 5 3 > | R 3 R >
S x==xx==x R 2 3 5 | R 2 3 > | R 3 5 6 | 3 4 5 > !co | 5 4 3 > !co | R 4 5 > | R 4 3 > | R 5 6 > | R 3 R >
A x==xx==x 8 7 6 5 | 8 7 5 > | R 6 5 3 | R 4 3 > | 5 6 7 > !co | R _7 _6 > | 8 6 5 > | R 5 6 >
L x=-x-x-x 8 9 10 > | R 5 8 > | 8 10 9 > | 8 9 8 > | R 8 9 > | 5 8 9 > !co | 8 10 9 8
T x==xx=xx R 2 3 >> > | 8 7 5 >> > | R 5 3 >> > | R 3 5 >> > | R _6 _5 >> > | R 5 >>> >> > | R 6 5 >> >
H1 x==x R 2 | R 3 | 8 7 | R 5 | R >
H2 x==x R > | 8 > | R 3 | R 5
`;
