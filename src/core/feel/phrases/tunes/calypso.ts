/** Calypso and soca: tunes of eight bars (see the notation beside the books). */
export const CALYPSO_TUNES = `
tune sea-wall 1-2: long, short, long up the triad, four at rest; each second bar down again, and four leads
S x==xx=-- R 3 5 | R 5 8 | R R 5 | R _5 R | R 5 5 | R R 3 | R R _5 | 3 5 8 !co | 5 5 8 !co
A x==xx=x= 8 5 3 > | 8 5 R > | R _5 _3 > | R 5 3 > | R _5 R > | 8 5 3 R | R 5 R > | 8 8 5 > | 5 3 R > !co | 5 5 R > !co
S x==xx=-- R 3 5 | R 5 8 | R R 5 | R _5 R | R 5 5 | R R 3 | R R _5 | 3 5 8 !co | 5 5 8 !co
C x==xx=x= R 3 5 > | R 5 R > | R 5 3 > | R _5 R > | 8 5 R > | R R 5 > | 8 5 3 > | 5 3 R > !co
S x==xx=-- R 3 5 | R 5 8 | R R 5 | R _5 R | R 5 5 | R R 3 | R R _5 | 3 5 8 !co | 5 5 8 !co
A x==xx=x= 8 5 3 > | 8 5 R > | R _5 _3 > | R 5 3 > | R _5 R > | 8 5 3 R | R 5 R > | 8 8 5 > | 5 3 R > !co | 5 5 R > !co
L x==xx=-- 8 10 8 | R 5 8 | R 3 8 | R 8 10 | 8 5 8 | R 5 10 | R 8 8 | 5 8 10 !co
T x==xx=x= R 3 5 > | R 5 5 3 | R 5 5 > | R 3 5 3 | R _5 R > | R R 5 > | 8 5 3 > | R 5 8 > | R 3 5 5
H1 x==x R 3 | R 5 | R > | 8 5 | R R | R _5
H2 x=x= R > | R 3 | R 5 | 8 5 | R _5

tune parade-boots 1-2: the bounce with four struck in every bar; the root pushes once more before the chord opens upwards, or downwards in the answer
S x==xx-x= R R 3 5 | R R 5 8 | R R 5 > | R R 3 > | R R _5 > | R R 5 3 | 8 8 5 > | 3 3 5 > !co | 5 5 8 > !co
A x==xx-x= 8 8 5 3 | 8 8 5 > | R R _5 > | R R 5 3 | R R _5 _3 | 8 8 3 > | R R 5 > | R R 3 > | 5 5 3 > !co | 5 5 3 R !co
S x==xx-x= R R 3 5 | R R 5 8 | R R 5 > | R R 3 > | R R _5 > | R R 5 3 | 8 8 5 > | 3 3 5 > !co | 5 5 8 > !co
C x==xx-x= R R 5 > | 8 8 5 > | R R 3 > | R R _5 > | R R 5 3 | R R R > | 8 8 5 3 | 5 5 3 R !co
S x==xx-x= R R 3 5 | R R 5 8 | R R 5 > | R R 3 > | R R _5 > | R R 5 3 | 8 8 5 > | 3 3 5 > !co | 5 5 8 > !co
A x==xx-x= 8 8 5 3 | 8 8 5 > | R R _5 > | R R 5 3 | R R _5 _3 | 8 8 3 > | R R 5 > | R R 3 > | 5 5 3 > !co | 5 5 3 R !co
L x==xx-x= R R 8 10 | 8 8 10 8 | R R 5 8 | R R 8 > | 8 8 10 > | R R 8 5 | 8 8 8 5 | 5 5 8 > !co
T x==xx-xx R R 3 5 > | R R 5 5 > | R R 5 5 3 | R R 5 R > | R R 3 3 5 | R R _5 _5 > | 8 8 5 3 > | R R 5 3 > | R R 3 >> > | R R 5 >> >
H1 x==x R R | R 3 | R > | R 5 | 8 8 | 8 5
H2 x-x= R > | R 3 | R 5 | 8 5 | R _5

tune kite-string 1-2: long, short, long falling from the octave, answered rising; four is air until it fetches the next half
S x==xx=-- 8 5 3 | 8 5 R | R _5 _3 | R _5 R | R 5 3 | R R _5 | 8 8 5 | 8 5 5 | 5 3 R !co | 5 5 R !co
A x==xx=-- R 3 5 | R 5 8 | R R 5 | R 5 5 | R 3 8 | R _5 R | R R 3 | 3 5 8 !co | 5 5 8 !co
S x==xx=-- 8 5 3 | 8 5 R | R _5 _3 | R _5 R | R 5 3 | R R _5 | 8 8 5 | 8 5 5 | 5 3 R !co | 5 5 R !co
C x==xx=x= 8 5 3 > | 8 5 R > | R _5 R > | R 5 3 > | R 5 R > | R 3 5 > | R R 5 > | 5 3 R > !co
S x==xx=-- 8 5 3 | 8 5 R | R _5 _3 | R _5 R | R 5 3 | R R _5 | 8 8 5 | 8 5 5 | 5 3 R !co | 5 5 R !co
A x==xx=-- R 3 5 | R 5 8 | R R 5 | R 5 5 | R 3 8 | R _5 R | R R 3 | 3 5 8 !co | 5 5 8 !co
L x==xx=-- 8 10 8 | R 5 8 | R 8 10 | 8 5 8 | R 3 8 | R 8 8 | 8 10 5 | 5 8 10 !co
T x==xx=x= R 3 5 > | R 5 5 > | R 5 5 3 | R 5 R > | R _5 R > | R 5 8 > | 8 5 R > | R R 5 > | R 5 3 > | 8 5 3 >
H1 x==x 8 5 | R 3 | R 5 | R > | R R | R _5
H2 x=x= R > | R 5 | R 3 | R _5 | 8 >

tune sugar-scales 1-2: the asking bar goes up and takes a lead on four; the answering bar comes down and lets go of three
S x==xx=x= R 3 5 > | R 5 8 > | R 3 5 8 | R 5 5 > | R R 5 > | R 5 8 5 | R _5 R > | 3 5 8 > !co | 5 8 5 > !co
A x==xx--- 8 5 3 | 8 5 R | R _5 _3 | R _5 R | R 5 3 | R R _5 | 8 8 5 | 8 5 5 | 5 3 R !co | 5 5 R !co
S x==xx=x= R 3 5 > | R 5 8 > | R 3 5 8 | R 5 5 > | R R 5 > | R 5 8 5 | R _5 R > | 3 5 8 > !co | 5 8 5 > !co
C x==xx-x- 8 5 3 > | 8 5 R > | R _5 R > | R 5 3 > | R 5 R > | R 3 R > | R R 5 > | 5 3 R > !co
S x==xx=x= R 3 5 > | R 5 8 > | R 3 5 8 | R 5 5 > | R R 5 > | R 5 8 5 | R _5 R > | 3 5 8 > !co | 5 8 5 > !co
A x==xx--- 8 5 3 | 8 5 R | R _5 _3 | R _5 R | R 5 3 | R R _5 | 8 8 5 | 8 5 5 | 5 3 R !co | 5 5 R !co
L x==xx=x= 8 10 8 > | R 5 8 > | R 5 8 10 | R 8 10 8 | R 3 5 8 | 8 5 8 > | R 8 8 > | 5 8 10 > !co
T x==xx=x= R 3 5 > | R 5 5 > | R 5 5 3 | R 5 8 > | R 3 5 3 | R _5 R > | R R 5 > | R 5 3 > | 8 5 3 >
H1 x==x R 3 | R 5 | R > | 8 5 | R R | R _5
H2 x=x= R > | R 5 | R 3 | 8 5 | 8 >

tune slow-jetty 1-2: up the chord and the last note left to ring; every second bar comes down clipped and steps on four
S x==xx=== R 3 5 | R 5 8 | R R 5 | R _5 R | R 5 5 | R R _5 | R 3 8 | 3 5 8 !co | 5 5 8 !co
A x==xx-x- 8 5 3 > | 8 5 R > | R _5 R > | R 5 3 > | R _5 _3 > | R 5 R > | 8 8 5 > | 8 5 3 R | 5 3 R > !co | 5 5 R > !co
S x==xx=== R 3 5 | R 5 8 | R R 5 | R _5 R | R 5 5 | R R _5 | R 3 8 | 3 5 8 !co | 5 5 8 !co
C x==xx-x- R 3 5 > | R 5 R > | 8 5 R > | R _5 R > | R 5 3 > | R R 5 > | 8 5 3 > | 5 3 R > !co
S x==xx=== R 3 5 | R 5 8 | R R 5 | R _5 R | R 5 5 | R R _5 | R 3 8 | 3 5 8 !co | 5 5 8 !co
A x==xx-x- 8 5 3 > | 8 5 R > | R _5 R > | R 5 3 > | R _5 _3 > | R 5 R > | 8 8 5 > | 8 5 3 R | 5 3 R > !co | 5 5 R > !co
L x==xx=== 8 10 8 | R 5 8 | R 8 10 | 8 5 8 | R 3 8 | R 8 8 | R 5 10 | 5 8 10 !co
T x==xx-x- R 3 5 > | R 5 5 > | R 5 5 3 | R 5 8 > | R _5 R > | 8 5 R > | R R 5 > | R 5 3 > | 8 5 3 >
H1 x==x R 3 | R 5 | R > | R _5 | 8 5 | R R
H2 x-x- R > | R 5 | R 3 | R _5 | 8 >

tune mango-boat 3-5: root, third, fifth and the step above; octave, fifth, third and down; four always leads
S x=-xx=x= R 3 5 > | R 3 5 6 | R 5 6 > | R 3 5 8 | R 3 4 5 | R _5 _6 _7 | R 5 8 > | 3 5 6 > !co | 3 4 5 > !co
A x=-xx=x= 8 5 3 > | 8 5 3 2 | 8 7 6 5 | 8 6 5 > | R _7 _6 _5 | R _5 _3 > | R 5 4 3 | R 5 3 > | 5 4 3 > !co | 5 3 2 R !co
S x=-xx=x= R 3 5 > | R 3 5 6 | R 5 6 > | R 3 5 8 | R 3 4 5 | R _5 _6 _7 | R 5 8 > | 3 5 6 > !co | 3 4 5 > !co
C x=-xx-x= R 3 5 > | R 5 R > | R 3 R > | 8 5 3 > | R _5 R > | R 5 3 > | 8 7 5 > | 5 3 R > !co
S x=-xx=x= R 3 5 > | R 3 5 6 | R 5 6 > | R 3 5 8 | R 3 4 5 | R _5 _6 _7 | R 5 8 > | 3 5 6 > !co | 3 4 5 > !co
A x=-xx=x= 8 5 3 > | 8 5 3 2 | 8 7 6 5 | 8 6 5 > | R _7 _6 _5 | R _5 _3 > | R 5 4 3 | R 5 3 > | 5 4 3 > !co | 5 3 2 R !co
L x=-xx=x= 8 9 10 > | R 5 8 9 | R 5 8 10 | 8 10 9 8 | 8 10 8 > | R 3 8 > | R 5 8 > | 8 9 8 > | 5 7 8 9 !co
T x=-xx=xx R 3 5 >> > | R 5 5 6 7 | R 3 4 5 > | R 3 5 6 7 | R _5 _5 _6 _7 | R 5 3 >> > | R 5 8 >> > | R R 3 >> > | 8 5 3 >> >
H1 x=-x R 3 | R > | R 5 | R 2 | 8 7 | R _7
H2 x=x= R > | R 3 | R 5 | 8 7 | R _7

tune crab-dance 3-5: three and three and two: one, the and of two, and four, sideways up and sideways down; a pair on four turns every fourth bar
S x=-x==x= R 3 5 | R 5 6 | R 3 > | R 5 > | R 3 4 | R _5 _6 | R 5 8 | R _5 > | 3 5 6 !co | 3 5 > !co
A x=-x==x= 8 5 3 | 8 5 > | 8 7 6 | R _7 _6 | R _5 > | 8 6 5 | R 5 > | R _5 _3 | 5 4 3 !co | 5 3 > !co
S x=-x==x= R 3 5 | R 5 6 | R 3 > | R 5 > | R 3 4 | R _5 _6 | R 5 8 | R _5 > | 3 5 6 !co | 3 5 > !co
C x=-x==xx R 3 >> > | R 5 >> > | R _5 >> > | 8 5 >> > | R 5 3 > | 8 7 5 > | R 3 R > | 5 3 R > !co
S x=-x==x= R 3 5 | R 5 6 | R 3 > | R 5 > | R 3 4 | R _5 _6 | R 5 8 | R _5 > | 3 5 6 !co | 3 5 > !co
A x=-x==x= 8 5 3 | 8 5 > | 8 7 6 | R _7 _6 | R _5 > | 8 6 5 | R 5 > | R _5 _3 | 5 4 3 !co | 5 3 > !co
L x=-x==x= 8 9 10 | R 5 8 | 8 10 9 | R 8 9 | 8 10 > | R 7 8 | R 8 > | 8 10 8 | 5 8 9 !co
T x=-x==xx R 5 6 7 | R 3 >> > | R 5 >> > | R _5 _6 _7 | R _5 >> > | R 3 5 > | R 3 4 5 | 8 5 >> > | R 5 3 >
H1 x=-x R 3 | R > | R 5 | R 2 | 8 7 | R _7
H2 x=x= R > | R 3 | R 5 | 8 7 | R _7

tune steel-and-silk 3-5: the rest on four kept in the asking bars that go up, two eighths on four in the answering ones that come down
S x==xx=-- R 3 5 | R 5 6 | R 3 4 | R _5 _6 | R 5 8 | R 2 3 | R 5 3 | 8 6 5 | 3 4 5 !co | 3 5 8 !co
A x==xx=xx 8 5 3 >> > | 8 7 5 4 3 | 8 7 5 >> > | R _7 _6 _5 > | R _5 _3 >> > | R _5 R >> > | R 5 4 3 2 | R 5 3 >> > | 8 6 5 3 > | 5 4 3 >> > !co
S x==xx=-- R 3 5 | R 5 6 | R 3 4 | R _5 _6 | R 5 8 | R 2 3 | R 5 3 | 8 6 5 | 3 4 5 !co | 3 5 8 !co
C x==xx=xx R 3 5 >> > | R 3 R >> > | R 5 R >> > | 8 5 3 >> > | R _5 R >> > | R 5 3 R > | 8 7 5 >> > | 5 3 R >> > !co
S x==xx=-- R 3 5 | R 5 6 | R 3 4 | R _5 _6 | R 5 8 | R 2 3 | R 5 3 | 8 6 5 | 3 4 5 !co | 3 5 8 !co
A x==xx=xx 8 5 3 >> > | 8 7 5 4 3 | 8 7 5 >> > | R _7 _6 _5 > | R _5 _3 >> > | R _5 R >> > | R 5 4 3 2 | R 5 3 >> > | 8 6 5 3 > | 5 4 3 >> > !co
L x==xx=-- 8 9 10 | R 5 8 | 8 10 9 | R 8 9 | R 7 8 | 8 10 8 | R 8 10 | 8 9 8 | 5 8 9 !co
T x==xx=xx R 3 5 >> > | R 5 5 6 7 | R 3 5 6 7 | R 3 4 5 > | R 5 8 >> > | R _5 _5 _6 _7 | R 5 3 >> > | R R 3 >> > | 8 5 3 >> >
H1 x==x R 3 | R > | R 5 | R 2 | 8 7 | R _7
H2 x=xx R >> > | R 3 > | R 5 > | R 2 3 | 8 7 > | R _7 _6

tune night-carnival 4-5: the bounce with the chord's colour on three, half steps on four; down again through the colour, and pairs on four where the phrase turns
S x=-xx=x= R 5 c > | R 3 5 > | R 3 5 c | R 5 c 8 | R _5 R > | R 5 c 5 | R _5 _c > | R 5 8 > | 3 5 c > !co | 5 c 8 > !co
A x=-xx=x= 8 c 5 > | 8 c 5 3 | R _c _5 > | R _7 _6 _5 | 8 7 6 > | 8 5 3 > | R 5 3 > | R _5 _3 > | 5 3 R > !co | c 5 3 > !co
S x=-xx=x= R 5 c > | R 3 5 > | R 3 5 c | R 5 c 8 | R _5 R > | R 5 c 5 | R _5 _c > | R 5 8 > | 3 5 c > !co | 5 c 8 > !co
C x=-xx=xx R 5 c >> > | R 3 R >> > | R 5 3 >> > | R _5 R >> > | 8 c 5 >> > | 8 5 3 >> > | R 3 5 >> > | 5 3 R >> > !co
S x=-xx=x= R 5 c > | R 3 5 > | R 3 5 c | R 5 c 8 | R _5 R > | R 5 c 5 | R _5 _c > | R 5 8 > | 3 5 c > !co | 5 c 8 > !co
A x=-xx=x= 8 c 5 > | 8 c 5 3 | R _c _5 > | R _7 _6 _5 | 8 7 6 > | 8 5 3 > | R 5 3 > | R _5 _3 > | 5 3 R > !co | c 5 3 > !co
L x=-xx=x= R 5 8 9 | 8 9 10 > | R c 8 10 | 8 10 9 > | R c 8 > | 8 10 8 > | R 5 8 > | 8 9 8 c | 5 c 8 > !co
T x=-xx=xx R 3 5 >> > | R 5 5 6 7 | R 5 c >> > | R 3 4 5 > | R _5 _5 _6 _7 | R 5 8 >> > | R 5 3 >> > | R _7 _6 >> > | 8 c 5 >> >
H1 x=-x R 5 | R > | R 3 | R c | 8 7 | R _7
H2 x=x= R > | R c | R 3 | R 5 | 8 c | R _7

tune tin-lantern 3-5: the plain bounce up with four in the air; every second bar comes down and pushes its last eighth over the line
S x==xx=-- R 3 5 | R 5 6 | R _5 _6 | 8 6 5 | R 3 4 | R 5 8 | R _6 _5 | R 2 3 | R 5 3 | 3 4 5 !co | 3 5 8 !co
A x==xx==x 8 5 3 > | 8 6 5 > | R _6 _5 > | R _5 _3 > | 8 7 6 5 | R 5 3 > | R _7 _6 > | 8 c 5 > | R 5 4 3 | 5 4 3 > !co | 5 3 R > !co
S x==xx=-- R 3 5 | R 5 6 | R _5 _6 | 8 6 5 | R 3 4 | R 5 8 | R _6 _5 | R 2 3 | R 5 3 | 3 4 5 !co | 3 5 8 !co
C x==xx==x R 3 5 > | R 5 R > | R 3 R > | 8 5 3 > | R _5 R > | R 5 3 > | 8 6 5 > | 5 3 R > !co
S x==xx=-- R 3 5 | R 5 6 | R _5 _6 | 8 6 5 | R 3 4 | R 5 8 | R _6 _5 | R 2 3 | R 5 3 | 3 4 5 !co | 3 5 8 !co
A x==xx==x 8 5 3 > | 8 6 5 > | R _6 _5 > | R _5 _3 > | 8 7 6 5 | R 5 3 > | R _7 _6 > | 8 c 5 > | R 5 4 3 | 5 4 3 > !co | 5 3 R > !co
L x==xx=-- 8 9 10 | R 5 8 | 8 10 9 | R 6 8 | R 8 10 | 8 10 8 | R 3 8 | 8 9 8 | 5 8 10 !co
T x==xx=xx R 3 5 >> > | R 5 5 6 7 | R 3 4 5 > | R 5 8 >> > | R _5 _5 _6 _7 | R 5 3 >> > | 8 5 3 >> > | R R 3 >> > | R _6 _5 >> >
H1 x==x R 3 | R > | R 5 | R 2 | R _7 | 8 c
H2 x==x R > | R 3 | R 5 | 8 > | R 2
`;
