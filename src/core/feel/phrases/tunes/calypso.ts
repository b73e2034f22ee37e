/** Calypso and soca: tunes of eight bars (see the notation beside the books). */
export const CALYPSO_TUNES = `
tune quay 1-1: root, octave or fifth long, short, long with four at rest; the answer strikes on two and four leads
S x==xx=-- R 5 8 | R _5 R | 8 5 R | R 5 R | 5 8 5 !co | 5 R 5 !co
A x=xxx=x= 8 8 5 R > | R R _5 R > | R R 5 R > | 5 5 R 5 > !co
S x==xx=-- R 5 8 | R _5 R | 8 5 R | R 5 R | 5 8 5 !co | 5 R 5 !co
C x==xx=x= R _5 R > | R 5 R > | 8 5 R > | R 5 5 > | 5 R 5 > !co
S x==xx=-- R 5 8 | R _5 R | 8 5 R | R 5 R | 5 8 5 !co | 5 R 5 !co
A x=xxx=x= R R 5 R > | R R _5 R > | 8 8 5 R > | R R 5 8 > | 5 5 8 5 > !co
L x==xx=x= R 5 8 > | 8 5 8 > | R 5 8 5 | R 5 R > | 5 8 5 > !co
T x==xx=x= R 5 R > | R _5 R > | 8 5 R > | R 5 8 > | R _5 R _5
H1 x==x R 5 | R > | 8 5 | R _5
H1 x=xx R R 5 | R R _5
H2 x=x= R > | R 5 | 8 5

tune drum-yard 1-1: the bounce of root and fifth with a clipped note on four, and an answer that strikes on two
S x==xx-x- R 5 8 > | R _5 R > | 8 5 R > | R 5 R > | 5 8 5 > !co | 5 R 5 > !co
A x=xxx-x- 8 8 5 R > | R R _5 R > | R R 5 R > | 5 5 R 5 > !co
S x==xx-x- R 5 8 > | R _5 R > | 8 5 R > | R 5 R > | 5 8 5 > !co | 5 R 5 > !co
C x==xx=-- R _5 R | R 5 R | 8 5 R | R 5 8 | 5 R 5 !co
S x==xx-x- R 5 8 > | R _5 R > | 8 5 R > | R 5 R > | 5 8 5 > !co | 5 R 5 > !co
A x=xxx-x- R R 5 R > | R R _5 R > | 8 8 5 R > | R R 5 8 > | 5 5 8 5 > !co
L x==xx-x- R 5 8 > | 8 5 8 > | R 5 8 5 | R 5 R > | 5 8 5 > !co
T x==xx-xx R 5 R 5 > | R _5 R _5 > | 8 5 R R > | R 5 8 5 > | R _5 _5 R >
H1 x==x R 5 | R > | 8 5 | R _5
H1 x=xx R R 5 | R R _5
H2 x-x- R > | R 5 | 8 5

tune sea-wall 2-2: long, short, long up the triad, four at rest; the next bar strikes on two as well, comes down again, and four leads
S x==xx=-- R 3 5 | R 5 8 | R 5 3 | 8 5 3 | 5 3 R !co | 5 8 5 !co
A x=xxx=x= R R 5 3 > | 8 8 5 3 > | R R _5 R > | 8 8 5 R > | R R 3 5 > | 5 5 3 R > !co | 5 5 R 5 > !co
S x==xx=-- R 3 5 | R 5 8 | R 5 3 | 8 5 3 | 5 3 R !co | 5 8 5 !co
C x==xx=x= R 3 5 > | R 5 3 > | R _5 R > | 8 5 R > | R 5 R > | 5 3 R > !co
S x==xx=-- R 3 5 | R 5 8 | R 5 3 | 8 5 3 | 5 3 R !co | 5 8 5 !co
A x=xxx=x= 8 8 5 3 > | R R 5 3 > | R R 3 5 > | R R _5 R > | 8 8 5 R > | 5 5 3 R > !co
L x==xx=x= R 5 8 > | 8 10 8 > | R 3 5 8 | R 5 8 5 | 8 5 8 > | 5 8 10 > !co
T x==xx=x= R 5 3 > | R 3 5 > | R 5 R > | R _5 R > | 8 5 3 > | R 3 5 3
H1 x==x R 3 | R > | R 5 | 8 5 | R _5
H1 x=xx R R 3 | R R 5
H2 x=x= R > | R 3 | R 5 | 8 5

tune parade-boots 2-2: the bounce with a clipped lead on four, three bars alike up the chord; the answer strikes on two and walks down it
S x==xx-x- R 3 5 > | R 5 8 > | R 5 3 > | 8 5 R > | 5 3 R > !co | 5 8 5 > !co
A x=xxx-x- 8 8 5 3 > | R R 5 3 > | R R _5 R > | 8 8 5 R > | 5 5 3 R > !co | 5 5 R 5 > !co
S x==xx-x- R 3 5 > | R 5 8 > | R 5 3 > | 8 5 R > | 5 3 R > !co | 5 8 5 > !co
C x==xx=-- R 3 5 | R 5 R | 8 5 3 | 8 5 R | R _5 R | 5 3 R !co
S x==xx-x- R 3 5 > | R 5 8 > | R 5 3 > | 8 5 R > | 5 3 R > !co | 5 8 5 > !co
A x=xxx-x- R R 3 5 > | R R 5 3 > | 8 8 5 3 > | R R _5 R > | 8 8 5 R > | 5 5 8 5 > !co
L x==xx-x- R 5 8 > | 8 10 8 > | R 5 8 5 | R 3 5 8 | 8 5 8 > | 5 8 10 > !co
T x==xx-xx R 5 3 R > | R 3 5 3 > | R 5 R 5 > | R _5 R 5 > | R 5 3 5 > | R 3 5 R >
H1 x==x R 3 | R > | R 5 | 8 5 | R _5
H1 x=xx R R 3 | R R 5
H2 x-x- R > | R 3 | R 5 | 8 5

tune kite-string 2-2: the chord let down from its octave, and drawn up again in the next bar; four is air until the phrase turns
S x==xx=-- 8 5 3 | 8 5 R | R 5 3 | R 5 8 | 5 3 R !co
A x=xxx=-- R R 3 5 | R R 5 8 | R R _5 R | 8 8 5 3 | 8 8 5 R | 5 5 3 R !co | 5 5 R 5 !co
S x==xx=-- 8 5 3 | 8 5 R | R 5 3 | R 5 8 | 5 3 R !co
C x==xx=x= R 5 3 > | R 3 5 > | 8 5 3 > | 8 5 R > | R _5 R > | 5 3 R > !co
S x==xx=-- 8 5 3 | 8 5 R | R 5 3 | R 5 8 | 5 3 R !co
A x=xxx=-- R R 5 8 | R R 3 5 | R R _5 R | 8 8 5 3 | 8 8 5 R | 5 5 3 R !co | 5 5 R 5 !co
L x==xx=x= 8 10 8 > | R 5 8 > | R 3 5 8 | 8 5 8 5 | 8 5 3 > | 5 8 10 > !co
T x==xx=x= R 5 3 > | R 3 5 > | R 5 R > | R _5 R > | 8 5 3 > | R 3 5 3
H1 x==x 8 5 | R 3 | R 5 | R > | R _5
H1 x=xx R R 3 | R R 5
H2 x=x= R > | R 3 | R 5 | 8 5

tune mango-boat 3-5: the triad up with a lead on four; the answer strikes on two and runs down it, and pairs on four turn the phrase
S x=-xx=x= R 3 5 > | R 5 3 > | R 5 8 > | 8 5 3 > | 3 5 8 > !co | 5 3 R > !co
A x=xxx-x= 8 8 5 3 > | R R 5 3 > | R R 3 5 > | R R _5 R > | 8 8 6 5 > | 5 5 3 R > !co | 5 6 5 3 > !co
S x=-xx=x= R 3 5 > | R 5 3 > | R 5 8 > | 8 5 3 > | 3 5 8 > !co | 5 3 R > !co
C x=-xx=xx R 5 3 R > | R 3 5 3 > | R 5 3 >> > | R 3 R >> > | R _5 R >> > | 8 5 3 >> > | 5 3 R >> > !co
S x=-xx=x= R 3 5 > | R 5 3 > | R 5 8 > | 8 5 3 > | 3 5 8 > !co | 5 3 R > !co
A x=xxx-x= R R 3 5 > | 8 8 5 3 > | R R _5 R > | R R 5 3 > | 8 8 6 5 > | 5 5 8 5 > !co
L x=-xx=x= R 5 8 > | 8 10 8 > | R 3 5 8 | 8 9 10 > | R 5 8 10 | 5 8 10 > !co
T x=-xx=xx R 5 3 >> > | R 3 5 >> > | R 5 5 3 > | R 3 5 3 > | R _5 _3 >> > | 8 5 3 >> > | R R 3 >> >
H1 x=-x R 3 | R > | R 5 | 8 5 | R _5
H1 x=xx R R 3 | R R 5 | R 3 5
H2 x=xx R 5 > | R 3 > | R >> > | R 5 3 | 8 5 >

tune crab-dance 3-5: three and three and two: one, the and of two, and four, sideways up the chord; the next bar fills in two and three and comes down
S x==x==x- R 3 5 | R 5 3 | R 5 8 | R 5 > | 8 5 3 | 3 5 8 !co | 5 3 > !co
A x=xxx-xx 8 8 5 3 >> > | 8 8 6 5 3 > | R R 3 5 3 > | R R _5 R >> > | R R 5 3 >> > | 5 5 3 R >> > !co
S x==x==x- R 3 5 | R 5 3 | R 5 8 | R 5 > | 8 5 3 | 3 5 8 !co | 5 3 > !co
C x==x==xx R 5 3 > | R 3 5 > | R 5 >> > | R 3 >> > | R _5 >> > | 8 5 >> > | 5 3 >> > !co
S x==x==x- R 3 5 | R 5 3 | R 5 8 | R 5 > | 8 5 3 | 3 5 8 !co | 5 3 > !co
A x=xxx-xx R R 3 5 6 > | R R 5 3 >> > | 8 8 5 3 >> > | R R _5 R >> > | 8 8 6 5 3 > | R R 3 5 8 > | 5 5 3 R >> > !co
L x==x==x- R 5 8 | 8 10 8 | R 3 8 | 8 9 10 | R 8 10 | 8 10 > | 5 8 10 !co
T x==x==xx R 5 3 > | R 3 5 > | R 5 >> > | R 3 >> > | R _5 >> > | 8 5 3 > | 8 5 >> >
H1 x==x R 3 | R > | R 5 | 8 5 | R _5
H1 x=xx R R 3 | R R 5 | R 3 5
H2 x=xx R 5 > | R 3 > | R >> > | R 5 3 | 8 5 >

tune steel-and-silk 3-5: the triad with the rest on four kept, and an answer that strikes on two and ends in two eighths
S x==xx=-- R 3 5 | R 5 3 | R 5 8 | 8 5 3 | 3 5 8 !co | 5 3 R !co
A x=xxx=xx 8 8 5 3 >> > | R R 5 3 >> > | 8 8 6 5 3 > | R R 3 5 3 > | R R _5 R >> > | R R 3 5 6 > | 5 5 3 R >> > !co
S x==xx=-- R 3 5 | R 5 3 | R 5 8 | 8 5 3 | 3 5 8 !co | 5 3 R !co
C x==xx=xx R 3 5 3 > | R 5 3 R > | R 5 3 >> > | R 3 R >> > | R _5 R >> > | 8 5 3 >> > | 5 3 R >> > !co
S x==xx=-- R 3 5 | R 5 3 | R 5 8 | 8 5 3 | 3 5 8 !co | 5 3 R !co
A x=xxx=xx R R 3 5 3 > | 8 8 5 3 >> > | R R 5 3 >> > | R R 3 5 6 > | R R _5 R >> > | 8 8 6 5 3 > | 5 5 3 R >> > !co
L x==xx=-- R 5 8 | 8 10 8 | 8 9 10 | R 3 8 | R 8 10 | 5 8 10 !co
T x==xx=xx R 5 3 >> > | R 3 5 3 > | R 5 3 R > | R 3 5 >> > | R _5 _3 >> > | 8 5 3 >> > | R R 3 >> >
H1 x==x R 3 | R > | R 5 | 8 5 | R _5
H1 x=xx R R 3 | R R 5 | R 3 5
H2 x=xx R 5 > | R 3 > | R >> > | R 5 3 | 8 5 >

tune night-carnival 4-5: the bounce up to the chord's colour, half steps on four; answers on two that fall through the colour
S x=-xx=x= R 3 5 > | R 5 c > | R 5 3 > | R 5 8 > | 8 c 5 > | 3 5 c > !co | 5 3 R > !co
A x=xxx-x= 8 8 5 3 > | 8 8 c 5 > | R R 5 3 > | R R 3 5 > | R R _5 R > | 5 5 3 R > !co | 5 c 5 3 > !co
S x=-xx=x= R 3 5 > | R 5 c > | R 5 3 > | R 5 8 > | 8 c 5 > | 3 5 c > !co | 5 3 R > !co
C x=-xx=xx R 5 3 >> > | R 3 5 3 > | R 3 R >> > | R _5 R >> > | 8 c 5 3 > | 8 5 3 >> > | 5 3 R >> > !co
S x=-xx=x= R 3 5 > | R 5 c > | R 5 3 > | R 5 8 > | 8 c 5 > | 3 5 c > !co | 5 3 R > !co
A x=xxx-x= R R 3 5 > | 8 8 5 3 > | R R 5 3 > | R R _5 R > | 8 8 c 5 > | 5 5 8 5 > !co
L x=-xx=x= R 5 8 > | 8 10 8 > | R c 8 > | 8 9 10 > | R 3 5 8 | R 5 8 10 | 5 8 10 > !co
T x=-xx=xx R 5 3 >> > | R 3 5 >> > | R c 5 3 > | 8 c 5 3 > | R 5 5 3 > | R _5 _3 >> > | R 3 5 3 >
H1 x=-x R 3 | R > | R 5 | R c | 8 5
H1 x=xx R R 3 | R R 5 | R 3 5
H2 x=xx R 5 > | R 3 > | R >> > | R 5 3 | 8 5 >

tune tin-lantern 3-5: the plain bounce up with four in the air; the answer strikes on two, comes down, and pushes its last eighth over the line
S x==xx=-- R 3 5 | R 5 8 | R 5 3 | 8 5 3 | 3 5 8 !co | 5 3 R !co
A x=xxx==x 8 8 5 3 > | R R 5 3 > | R R 3 5 > | R R _5 R > | 8 8 6 5 > | 5 5 3 R > !co
S x==xx=-- R 3 5 | R 5 8 | R 5 3 | 8 5 3 | 3 5 8 !co | 5 3 R !co
C x==xx==x R 3 5 > | R 5 3 > | R 5 R > | 8 5 3 > | 5 3 R > !co
S x==xx=-- R 3 5 | R 5 8 | R 5 3 | 8 5 3 | 3 5 8 !co | 5 3 R !co
A x=xxx==x R R 3 5 > | 8 8 5 3 > | R R 5 3 > | R R _5 R > | 8 8 6 5 > | 5 5 3 R > !co
L x==xx=-- R 5 8 | 8 10 8 | 8 9 10 | R 3 8 | R 8 10 | 5 8 10 !co
T x==xx=xx R 5 3 >> > | R 3 5 3 > | R 5 3 R > | R 3 5 >> > | R _5 _3 >> > | 8 5 3 >> > | R R 3 >> >
H1 x==x R 3 | R > | R 5 | 8 5 | R _5
H1 x=xx R R 3 | R R 5 | R 3 5
H2 x=xx R 5 > | R 3 > | R >> > | R 5 3 | 8 5 >
`;
