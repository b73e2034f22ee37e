/** Calypso and soca: tunes of eight bars (see the notation beside the books). */
export const CALYPSO_TUNES = `
tune quay 1-1: long, short, long on root and fifth, and four at rest; the answer says it downwards, and four leads
S x==xx--- R 5 8 | R _5 R | R 5 R | 8 5 R | 8 5 8 | 5 8 5 !co | 5 R 5 !co
A x==xx=x- 8 5 R > | R _5 R > | R 5 R > | R 5 8 > | 5 R 5 > !co
S x==xx--- R 5 8 | R _5 R | R 5 R | 8 5 R | 8 5 8 | 5 8 5 !co | 5 R 5 !co
C x==xx=x- R _5 R > | R 5 R > | 8 5 R > | R 5 8 > | 5 R 5 > !co
S x==xx--- R 5 8 | R _5 R | R 5 R | 8 5 R | 8 5 8 | 5 8 5 !co | 5 R 5 !co
A x==xx=x- 8 5 R > | R _5 R > | R 5 R > | R 5 8 > | 5 R 5 > !co
L x==xx=x- R 5 8 > | 8 5 8 > | R 5 8 5 | R 5 R > | 5 8 5 > !co
T x==xx-xx R 5 R 5 > | R _5 R _5 > | 8 5 R R > | R 5 8 5 > | R _5 _5 R >
H1 x==x R 5 | R > | R _5 | 8 5
H2 x=x= R > | R 5 | R _5 | 8 5

tune drum-yard 1-1: the bounce of root and fifth with a clipped note on four in every bar, until the phrase rests
S x==xx=x- R 5 8 > | R _5 R > | R 5 R > | 8 5 R > | 8 5 8 > | 5 8 5 > !co | 5 R 5 > !co
A x==xx=x- 8 5 R > | R _5 R > | R 5 R > | R 5 8 > | 5 R 5 > !co
S x==xx=x- R 5 8 > | R _5 R > | R 5 R > | 8 5 R > | 8 5 8 > | 5 8 5 > !co | 5 R 5 > !co
C x==xx=-- R _5 R | R 5 R | 8 5 R | R 5 8 | 5 R 5 !co
S x==xx=x- R 5 8 > | R _5 R > | R 5 R > | 8 5 R > | 8 5 8 > | 5 8 5 > !co | 5 R 5 > !co
A x==xx=x- 8 5 R > | R _5 R > | R 5 R > | R 5 8 > | 5 R 5 > !co
L x==xx=x- R 5 8 > | 8 5 8 > | R 5 8 5 | R 5 R > | 5 8 5 > !co
T x==xx-xx R 5 R 5 > | R _5 R _5 > | 8 5 R R > | R 5 8 5 > | R _5 _5 R >
H1 x==x R 5 | R > | R _5 | 8 5
H2 x=x= R > | R 5 | R _5 | 8 5

tune sea-wall 2-2: long, short, long up the triad, four at rest; the next bar comes down it, and four leads
S x==xx--- R 3 5 | R 5 8 | R 5 3 | R _5 R | 8 5 3 | 5 3 R !co | 5 8 5 !co
A x==xx=x- 8 5 3 > | R 5 3 > | R _5 R > | 8 5 R > | R 3 5 > | R 3 R > | 5 3 R > !co
S x==xx--- R 3 5 | R 5 8 | R 5 3 | R _5 R | 8 5 3 | 5 3 R !co | 5 8 5 !co
C x==xx=x- R 5 3 > | R _5 R > | R 3 5 > | 8 5 3 > | 5 3 R > !co
S x==xx--- R 3 5 | R 5 8 | R 5 3 | R _5 R | 8 5 3 | 5 3 R !co | 5 8 5 !co
A x==xx=x- 8 5 3 > | R 5 3 > | R _5 R > | 8 5 R > | R 3 5 > | R 3 R > | 5 3 R > !co
L x==xx=x- R 5 8 > | 8 10 8 > | R 3 5 8 | R 5 8 5 | 8 5 8 > | 5 8 10 > !co
T x==xx-xx R 5 3 R > | R 3 5 3 > | R 5 3 5 > | R _5 R 3 > | 8 5 3 R > | R 3 R 3 >
H1 x==x R 3 | R 5 | R > | R _5 | 8 5
H2 x=x= R > | R 3 | R 5 | R _5 | 8 5

tune parade-boots 2-2: the bounce with a clipped lead on four, up the chord in one bar and down it in the next; the phrase's end stands still
S x==xx=x- R 3 5 > | R 5 3 > | R 5 8 > | R _5 R > | 8 5 3 > | 8 5 R > | 5 3 R > !co | 5 8 5 > !co
A x==xx=x- 8 5 3 > | R 5 3 > | R _5 R > | 8 5 R > | R 3 5 > | R 3 R > | 5 3 R > !co
S x==xx=x- R 3 5 > | R 5 3 > | R 5 8 > | R _5 R > | 8 5 3 > | 8 5 R > | 5 3 R > !co | 5 8 5 > !co
C x==xx=-- R 5 3 | R _5 R | R 3 5 | 8 5 3 | 5 3 R !co
S x==xx=x- R 3 5 > | R 5 3 > | R 5 8 > | R _5 R > | 8 5 3 > | 8 5 R > | 5 3 R > !co | 5 8 5 > !co
A x==xx=x- 8 5 3 > | R 5 3 > | R _5 R > | 8 5 R > | R 3 5 > | R 3 R > | 5 3 R > !co
L x==xx=x- R 5 8 > | 8 10 8 > | R 5 8 5 | R 3 5 8 | 8 5 8 > | 5 8 10 > !co
T x==xx-xx R 5 3 R > | R 3 5 3 > | R 5 3 5 > | R _5 R 3 > | 8 5 3 R > | R 3 R 3 >
H1 x==x R 3 | R 5 | R > | R _5 | 8 5
H2 x=x= R > | R 3 | R 5 | R _5 | 8 5

tune kite-string 2-2: the chord let down from its top with a lead on four, and drawn up again with four in the air
S x==xx=x- 8 5 3 > | R 5 3 > | R _5 R > | 8 5 R > | R 3 5 > | R 3 R > | 5 3 R > !co
A x==xx--- R 3 5 | R 5 8 | R 5 3 | R _5 R | 8 5 3 | 5 3 R !co | 5 8 5 !co
S x==xx=x- 8 5 3 > | R 5 3 > | R _5 R > | 8 5 R > | R 3 5 > | R 3 R > | 5 3 R > !co
C x==xx=-- R 5 3 | R _5 R | 8 5 R | R 3 5 | 5 3 R !co
S x==xx=x- 8 5 3 > | R 5 3 > | R _5 R > | 8 5 R > | R 3 5 > | R 3 R > | 5 3 R > !co
A x==xx--- R 3 5 | R 5 8 | R 5 3 | R _5 R | 8 5 3 | 5 3 R !co | 5 8 5 !co
L x==xx=x- R 5 8 > | 8 10 8 > | R 3 5 8 | R 5 8 5 | 8 5 8 > | 5 8 10 > !co
T x==xx-xx R 5 3 R > | R 3 5 3 > | R 5 3 5 > | R _5 R 3 > | 8 5 3 R > | R 3 R 3 >
H1 x==x R 3 | R 5 | R > | R _5 | 8 5
H2 x=x= R > | R 3 | R 5 | R _5 | 8 5

tune mango-boat 3-5: long, short, long up the triad with four in the air; the answer comes down and pushes from the and of four, and two eighths on four turn the phrase
S x==xx=-- R 3 5 | R 5 3 | R _5 _3 | R 5 8 | R _c _5 | 8 5 3 | 3 5 8 !co | 5 3 R !co
A x==xx=-x 8 5 3 > | R 5 3 > | R _c _5 > | R _5 R > | R 3 5 > | R 5 8 > | 8 c 5 > | 5 3 R > !co
S x==xx=-- R 3 5 | R 5 3 | R _5 _3 | R 5 8 | R _c _5 | 8 5 3 | 3 5 8 !co | 5 3 R !co
C x==xx=xx R 5 3 >> > | R 3 5 3 > | R 5 5 3 > | R 3 5 >> > | R _5 R 3 > | R _c _5 _3 > | 8 5 3 >> > | R 3 R >> >
S x==xx=-- R 3 5 | R 5 3 | R _5 _3 | R 5 8 | R _c _5 | 8 5 3 | 3 5 8 !co | 5 3 R !co
A x==xx=-x 8 5 3 > | R 5 3 > | R _c _5 > | R _5 R > | R 3 5 > | R 5 8 > | 8 c 5 > | 5 3 R > !co
L x==xx=-x R 5 8 > | 8 10 8 > | 8 9 10 > | R 3 8 > | R 5 8 10 | 5 8 10 > !co
T x==xx=xx R 5 3 >> > | R 3 5 3 > | R 5 5 3 > | R 3 5 >> > | R _5 R 3 > | R _c _5 _3 > | 8 5 3 >> > | R 3 R >> >
H1 x==x R 3 | R 5 | R > | R _5 | R _c | 8 5
H2 x=-x R > | R 3 | R 5
H2 x=x= R > | R 3 | R 5 | R _5
H2 x=xx R 5 > | R 3 > | R >> > | 8 5 >

tune crab-dance 3-5: three and three and two: root, a chord tone held from the and of two, and four points on; the answer points with two eighths
S x==x=-x= R 3 5 | R 5 3 | R 5 > | R 3 > | R _5 _3 | R _5 > | R _c > | 8 5 3 | 8 5 > | 3 5 8 !co | 5 3 > !co
A x==x=-xx R 5 3 > | R 3 5 > | R 5 >> > | R 3 >> > | R _5 _3 > | R _c _5 > | 8 5 3 > | 8 c 5 > | 5 3 R > !co
S x==x=-x= R 3 5 | R 5 3 | R 5 > | R 3 > | R _5 _3 | R _5 > | R _c > | 8 5 3 | 8 5 > | 3 5 8 !co | 5 3 > !co
C x==x=-x= R 5 > | R 3 > | R 5 3 | R _5 > | R _c > | 8 5 > | 5 3 > !co
S x==x=-x= R 3 5 | R 5 3 | R 5 > | R 3 > | R _5 _3 | R _5 > | R _c > | 8 5 3 | 8 5 > | 3 5 8 !co | 5 3 > !co
A x==x=-xx R 5 3 > | R 3 5 > | R 5 >> > | R 3 >> > | R _5 _3 > | R _c _5 > | 8 5 3 > | 8 c 5 > | 5 3 R > !co
L x==x=-x= R 5 8 | 8 10 8 | R 8 10 | 8 9 10 | R 5 10 | 5 8 10 !co
T x==xx=xx R 5 3 >> > | R 3 5 3 > | R 5 5 3 > | R 3 5 >> > | R _5 R 3 > | R _c _5 _3 > | 8 5 3 >> > | R 3 R >> >
H1 x==x R 3 | R 5 | R > | R _5 | R _c | 8 5
H2 x=-x R > | R 3 | R 5
H2 x=x= R > | R 3 | R 5 | R _5
H2 x=xx R 5 > | R 3 > | R >> > | 8 5 >

tune steel-and-silk 3-5: the bounce with a lead on four, bars up and down in turn; every fourth bar holds from the and of two
S x==xx-x= R 3 5 > | R 5 3 > | R 5 8 > | R _5 R > | R _c _5 > | 8 5 3 > | 3 5 8 > !co | 5 3 R > !co
A x==xx-x= 8 5 3 > | R 5 3 > | R _c _5 > | R _5 R > | R 3 5 > | R 5 8 > | 8 c 5 > | 5 3 R > !co
S x==xx-x= R 3 5 > | R 5 3 > | R 5 8 > | R _5 R > | R _c _5 > | 8 5 3 > | 3 5 8 > !co | 5 3 R > !co
C x==x=-x= R 5 > | R 3 > | R _5 > | R _c > | 8 5 > | 5 3 > !co
S x==xx-x= R 3 5 > | R 5 3 > | R 5 8 > | R _5 R > | R _c _5 > | 8 5 3 > | 3 5 8 > !co | 5 3 R > !co
A x==xx-x= 8 5 3 > | R 5 3 > | R _c _5 > | R _5 R > | R 3 5 > | R 5 8 > | 8 c 5 > | 5 3 R > !co
L x==xx-x= R 5 8 > | 8 10 8 > | 8 9 10 > | R 3 5 8 | R 5 8 10 | 5 8 10 > !co
T x==xx=xx R 5 3 >> > | R 3 5 3 > | R 5 5 3 > | R 3 5 >> > | R _5 R 3 > | R _c _5 _3 > | 8 5 3 >> > | R 3 R >> >
H1 x==x R 3 | R 5 | R > | R _5 | R _c | 8 5
H2 x=-x R > | R 3 | R 5
H2 x=x= R > | R 3 | R 5 | R _5
H2 x=xx R 5 > | R 3 > | R >> > | 8 5 >

tune night-carnival 4-5: three and three and two with two eighths on four in every bar, that fall from the chord into the next; the end of the phrase is long, short, long
S x==x=-xx R 5 3 > | R 3 5 > | R 5 >> > | R 3 >> > | R _5 _3 > | R _c _5 > | 8 5 3 > | 8 c 5 > | 5 3 R > !co
A x==xx=-x 8 5 3 > | R 5 3 > | R _c _5 > | R _5 R > | R 3 5 > | R 5 8 > | 8 c 5 > | 5 3 R > !co
S x==x=-xx R 5 3 > | R 3 5 > | R 5 >> > | R 3 >> > | R _5 _3 > | R _c _5 > | 8 5 3 > | 8 c 5 > | 5 3 R > !co
C x==xx=-- R 5 3 | R _5 _3 | R 3 5 | R _c _5 | 8 c 5 | 5 3 R !co
S x==x=-xx R 5 3 > | R 3 5 > | R 5 >> > | R 3 >> > | R _5 _3 > | R _c _5 > | 8 5 3 > | 8 c 5 > | 5 3 R > !co
A x==xx=-x 8 5 3 > | R 5 3 > | R _c _5 > | R _5 R > | R 3 5 > | R 5 8 > | 8 c 5 > | 5 3 R > !co
L x==x=-xx R 5 8 > | 8 10 8 > | R 8 10 9 | 8 9 10 8 | R 5 8 10 | 5 8 10 > !co
T x==xx=xx R 5 3 >> > | R 3 5 3 > | R 5 5 3 > | R 3 5 >> > | R _5 R 3 > | R _c _5 _3 > | 8 5 3 >> > | R 3 R >> >
H1 x==x R 3 | R 5 | R > | R _5 | R _c | 8 5
H2 x=-x R > | R 3 | R 5
H2 x=x= R > | R 3 | R 5 | R _5
H2 x=xx R 5 > | R 3 > | R >> > | 8 5 >
`;
