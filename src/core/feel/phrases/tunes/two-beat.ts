/** Two-beat: tunes of eight bars (see the notation beside the books). */
export const TWO_BEAT_TUNES = `
tune porch-swing 1-2: the fifth above asks, the fifth below answers and steps off four
S x=--x=-- R 5 | R 8 | R 3 | 8 5 | R _5 | 3 5 !co | 5 8 !co
A x=--x=x= R _5 > | 8 5 > | R 5 > | R 3 > | R _5 R | 8 5 3 | R 5 3 | 5 3 > !co | 8 3 >
S x=--x=-- R 5 | R 8 | R 3 | 8 5 | R _5 | 3 5 !co | 5 8 !co
A x=--x=x= R _5 > | 8 5 > | R 5 > | R 3 > | R _5 R | 8 5 3 | R 5 3 | 5 3 > !co | 8 3 >
S x=--x=-- R 5 | R 8 | R 3 | 8 5 | R _5 | 3 5 !co | 5 8 !co
A x=--x=x= 8 5 > | R _5 > | 8 5 3 | R 5 > | R 3 > | R _5 R | R 5 3 | 5 3 > !co | 8 3 >
L x=--x=-- R 8 | 8 5 | 8 10 | 8 8 | R 5 | 10 8 !co | 5 8 !co | 8 3
T x=--x=x= R 5 > | R R > | 8 R > | 8 3 > | R 3 > | R 8 >
H1 x=-- R | 8
H1 x=x= R > | R 3 | R 5 | R _5
H2 x=x= R > | R 5 | R 3 | 8 5 | R _5

tune cellar-bell 1-2: the low fifth first, the high one in answer; only bars four and eight move on four
S x=--x=-- R _5 | 8 5 | R 3 | R 5 | 8 3 | 5 R !co | 3 R !co
A x=--x=-- R 5 | R 8 | R 3 | R _5 | 8 5 | 8 8 | 3 5 !co | 5 8 !co
S x=--x=-- R _5 | 8 5 | R 3 | R 5 | 8 3 | 5 R !co | 3 R !co
C x=--x=x= R _5 > | 8 5 > | R 5 > | R 3 > | 8 3 > | R 5 3 | 5 3 > !co
S x=--x=-- R _5 | 8 5 | R 3 | R 5 | 8 3 | 5 R !co | 3 R !co
A x=--x=-- R 5 | R 8 | R 3 | R _5 | 8 5 | 8 8 | 3 5 !co | 5 8 !co
L x=--x=-- 8 10 | R 8 | 8 5 | R 5 | 8 8 | 5 10 !co | 5 8 !co | 8 3
T x=--x=x= R 5 > | R 3 > | 8 R > | R R > | 8 3 > | 8 5 >
H1 x=-- R | 8
H2 x=-- R | 8
H2 x=x= R > | R 5 | R 3 | R _5 | 8 5

tune gatepost 1-2: one, three and four climb the chord, two notes answer and stand
S x=--x=x= R 3 5 | R 5 > | R 5 8 | R 3 > | R 5 3 | R _5 > | 8 5 > | 3 5 > !co | 5 8 > !co
A x=--x=-- 8 5 | R _5 | R 5 | R 3 | 8 3 | 5 3 !co | 5 R !co
S x=--x=x= R 3 5 | R 5 > | R 5 8 | R 3 > | R 5 3 | R _5 > | 8 5 > | 3 5 > !co | 5 8 > !co
C x=--x=-- 8 5 | R _5 | R 5 | R 3 | 8 3 | 5 3 !co | 5 R !co
S x=--x=x= R 3 5 | R 5 > | R 5 8 | R 3 > | R 5 3 | R _5 > | 8 5 > | 3 5 > !co | 5 8 > !co
A x=--x=-- R _5 | 8 3 | 8 5 | R 5 | R 3 | 5 3 !co | 5 R !co
L x=--x=x= R 5 8 | 8 10 8 | 8 5 > | 8 10 > | R 8 > | R 8 5 | 8 8 > | 5 8 10 !co
T x=--x=x= R R > | R 5 > | 8 R > | R 3 > | 8 3 >
H1 x=x= R > | R 3 | R 5 | R _5 | 8 5
H2 x=x= R > | R 5 | R 3 | R R | R _5

tune hayride 1-2: down from the octave to the fifth and on by four, bar after bar, up again in the answer
S x=--x=x= 8 5 > | 8 5 3 | 8 5 R | R _5 > | R 5 > | 8 3 > | R 5 3 | 5 3 > !co | 5 3 R !co
A x=--x=x= R 5 8 | R 5 > | R 3 5 | R 8 > | R 3 > | R _5 > | R 5 3 | 3 5 8 !co | 5 8 > !co
S x=--x=x= 8 5 > | 8 5 3 | 8 5 R | R _5 > | R 5 > | 8 3 > | R 5 3 | 5 3 > !co | 5 3 R !co
C x=--x=-- R _5 | 8 5 | R 5 | R 3 | 8 3 | 5 R !co | 3 R !co
S x=--x=x= 8 5 > | 8 5 3 | 8 5 R | R _5 > | R 5 > | 8 3 > | R 5 3 | 5 3 > !co | 5 3 R !co
A x=--x=x= R 5 8 | R 5 > | R 3 5 | R 8 > | R 3 > | R _5 > | R 5 3 | 3 5 8 !co | 5 8 > !co
L x=--x=x= 8 10 8 | 8 5 8 | R 5 8 | 8 10 > | R 8 > | 8 5 > | 8 8 > | 5 8 10 !co
T x=--x=x= R 5 > | R R > | 8 3 > | 8 R > | R 3 > | R 8 >
H1 x=x= 8 5 | R 5 | R > | R 3 | R _5
H2 x=x= R > | R 5 | 8 5 | R 3 | R R

tune late-latch 3-5: root and fifth, and in every second bar one late eighth that drops into the change
S x=--x=-- R 5 | R 3 | R 8 | 8 5 | R _5 | R c | 3 5 !co | 5 8 !co
A x=--x=-x R _5 > | 8 5 > | R 5 > | R 3 > | R _6 > | 8 6 > | R 5 4 | R _5 _6 | 5 3 > !co
S x=--x=-- R 5 | R 3 | R 8 | 8 5 | R _5 | R c | 3 5 !co | 5 8 !co
A x=--x=-x R _5 > | 8 5 > | R 5 > | R 3 > | R _6 > | 8 6 > | R 5 4 | R _5 _6 | 5 3 > !co
S x=--x=-- R 5 | R 3 | R 8 | 8 5 | R _5 | R c | 3 5 !co | 5 8 !co
A x=--x=-x 8 5 > | R _5 > | R 3 > | R 5 > | R _6 > | 8 6 > | R 5 4 | R _5 _6 | 5 3 > !co
L x=--x=-- 8 10 | R 8 | 8 5 | R 6 | 8 9 | 8 8 | 5 8 !co | 3 8 !co
T x=--x=x= R 6 7 | R _6 _7 | R 5 > | R 3 > | 8 6 > | R 4 > | 8 3 > | R >> >
H1 x=-- R | 8
H1 x=-x R > | R 5 | R 3
H2 x=-x R > | 8 > | R 5 | R 3 | R _7

tune footpath 3-5: root, fifth and a step on four, all the way; the fourth bar walks and the last walks home
S x=--x=x= R 5 6 | R 5 > | R 3 4 | R 3 > | R 5 4 | R 3 2 | R 2 > | R 5 3 | 3 5 6 !co | 5 6 > !co
A x=--x=x= 8 5 > | 8 6 5 | R _5 _6 | R _5 > | 8 7 > | R 5 3 | R _7 > | 8 5 4 | 5 4 3 !co | 5 3 > !co
S x=--x=x= R 5 6 | R 5 > | R 3 4 | R 3 > | R 5 4 | R 3 2 | R 2 > | R 5 3 | 3 5 6 !co | 5 6 > !co
C x=x=x=x= 8 7 6 5 | R 2 3 > | 8 7 6 > | R 5 4 3 | R 5 3 > | R _7 _6 > | R 2 3 4 | 8 6 5 > | 5 4 3 > !co
S x=--x=x= R 5 6 | R 5 > | R 3 4 | R 3 > | R 5 4 | R 3 2 | R 2 > | R 5 3 | 3 5 6 !co | 5 6 > !co
A x=--x=x= 8 6 5 | R _5 > | 8 5 > | R _5 _6 | 8 7 > | R 5 3 | R _7 > | 8 5 4 | 5 4 3 !co | 5 3 > !co
L x=--x=x= 8 9 10 | 8 10 > | R 5 8 | R 8 9 | 8 9 > | R 8 > | 8 10 9 | 5 8 > !co
T x=--x=x= R 6 7 | R 5 > | R _6 _7 | 8 6 > | R >> > | R 3 > | R 4 > | 8 3 >
H1 x=x= R > | R 3 | R 2 | R 5 | 8 7
H2 x=x= R > | R 5 | R 3 | 8 > | R _7

tune quickstep-home 3-5: root and fifth stand still in one bar; the next one runs two eighths off beat four
S x=--x=-- R 5 | R _5 | R 3 | 8 5 | R 8 | 3 5 !co | 5 R !co
A x=--x=xx R 5 >> > | 8 6 5 4 | R 3 >> > | 8 5 3 2 | R 5 6 7 | R _5 >> > | R _5 _6 _7 | R 5 4 > | 8 5 >> > | 5 3 >> > !co
S x=--x=-- R 5 | R _5 | R 3 | 8 5 | R 8 | 3 5 !co | 5 R !co
A x=--x=xx R 5 >> > | 8 6 5 4 | R 3 >> > | 8 5 3 2 | R 5 6 7 | R _5 >> > | R _5 _6 _7 | R 5 4 > | 8 5 >> > | 5 3 >> > !co
S x=--x=-- R 5 | R _5 | R 3 | 8 5 | R 8 | 3 5 !co | 5 R !co
A x=--x=xx R _5 >> > | 8 5 >> > | R 3 4 > | R 5 >> > | 8 6 5 4 | R 3 >> > | 8 5 3 2 | R 5 6 7 | R _5 _6 _7 | 5 3 >> > !co
L x=--x=-- R 8 | 8 10 | 8 5 | 8 9 | R 6 | 8 8 | 5 8 !co | 3 8 !co
T x=x=x=xx R 3 5 6 7 | R 5 3 >> > | R 3 5 >> > | 8 7 6 5 > | R 2 3 >> > | R 5 4 >> > | R _5 _6 _7 > | 8 5 3 >> >
H1 x=-- R | 8
H2 x=xx R >> > | R 3 > | R 5 > | R 2 3 | 8 7 >

tune parlour-lean 3-5: the third or sixth leans on three and steps on from four; its answer comes down to the fifth
S x=--x=x= R 3 5 | R 3 > | R 3 4 | R 5 c | R 3 2 | R 5 4 | R _7 > | R 5 6 | 3 5 6 !co | 3 4 > !co
A x=--x=-- 8 5 | R _5 | R 3 | 8 c | R 5 | 8 3 | 5 3 !co | 5 R !co
S x=--x=x= R 3 5 | R 3 > | R 3 4 | R 5 c | R 3 2 | R 5 4 | R _7 > | R 5 6 | 3 5 6 !co | 3 4 > !co
C x=--x=-- 8 5 | R _5 | R 3 | 8 c | R 5 | 8 3 | 5 3 !co | 5 R !co
S x=--x=x= R 3 5 | R 3 > | R 3 4 | R 5 c | R 3 2 | R 5 4 | R _7 > | R 5 6 | 3 5 6 !co | 3 4 > !co
A x=--x=-- 8 5 | R _5 | R 3 | 8 c | R 5 | 8 3 | 5 3 !co | 5 R !co
L x=--x=x= 8 10 9 | R 8 9 | 8 10 > | R c 8 | 8 9 10 | 8 9 > | 8 c > | 5 8 9 !co
T x=--x=x= R 5 > | R _6 _7 | 8 5 > | R 4 5 | R 6 7 | R _6 > | R >> > | 8 >> >
H1 x=x= R 3 | R > | R _7 | R 5 | 8 c
H2 x=x= R 3 | R > | R 5 | R 2 | 8 c
`;
