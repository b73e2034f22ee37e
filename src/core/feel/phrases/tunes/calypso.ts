/** Calypso and soca: tunes of eight bars (see the notation beside the books). */
export const CALYPSO_TUNES = `
tune sea-wall 1-2: long, short, long up the triad, four at rest; each second bar down again, and four leads
S x==xx=-- R 3 5 | R 5 3 | R 5 8 | R 3 R | R _5 R | R 5 R | R R 5 | R R 3 | 3 5 8 !co | 3 5 3 !co
A x==xx=x= 8 5 3 R | 8 5 3 > | R 5 3 > | R 5 3 R | R _5 R > | 8 3 R > | R 3 5 > | 8 5 R > | 5 3 R > !co | R 3 R >
S x==xx=-- R 3 5 | R 5 3 | R 5 8 | R 3 R | R _5 R | R 5 R | R R 5 | R R 3 | 3 5 8 !co | 3 5 3 !co
C x==xx=x= R 5 3 R | R 3 R > | R 5 R > | 8 5 3 > | R _5 R > | 8 5 R > | R R 3 R | R 3 5 3 | 5 3 R > !co
S x==xx=-- R 3 5 | R 5 3 | R 5 8 | R 3 R | R _5 R | R 5 R | R R 5 | R R 3 | 3 5 8 !co | 3 5 3 !co
A x==xx=x= 8 5 3 > | 8 5 3 R | R 5 3 > | R 5 3 R | R _5 R > | 8 3 R > | R 3 5 > | 8 5 R > | 5 3 R > !co
L x==xx=-- R 5 8 | 8 10 8 | R 3 8 | 8 5 8 | 8 8 5 | R 8 10 | R 5 10 | R 8 5 | 5 8 10 !co
T x==xx=x= R 3 5 > | R 5 3 > | 8 5 3 > | R 3 3 5 | R 5 3 5 | R _5 R > | R 5 5 > | R R 3 5 | R 5 8 >
H1 x==x R 3 | R 5 | R > | R R | 8 5 | 8 3
H2 x=x= R > | R 3 | R 5 | R R | 8 5 | 8 >

tune parade-boots 1-2: the bounce with four struck in every bar, the root said twice before the chord opens
S x==xx-x= R R 3 5 | R R 5 3 | R R 5 > | R R 3 > | R R 5 8 | R R _5 > | R R _5 R | R R 5 R | 3 3 5 > !co | 5 5 3 > !co
A x==xx-x= 8 8 5 3 | 8 8 5 > | R R 5 3 | R R 3 R | R R _5 R | 8 8 3 > | R R _5 > | 8 8 5 R | 5 5 3 R !co | R R 5 >
S x==xx-x= R R 3 5 | R R 5 3 | R R 5 > | R R 3 > | R R 5 8 | R R _5 > | R R _5 R | R R 5 R | 3 3 5 > !co | 5 5 3 > !co
C x==xx-x= R R 3 R | R R 5 R | R R R > | 8 8 5 R | R R _5 R | R R 3 > | 8 8 3 R | 8 8 R > | 5 5 3 R !co
S x==xx-x= R R 3 5 | R R 5 3 | R R 5 > | R R 3 > | R R 5 8 | R R _5 > | R R _5 R | R R 5 R | 3 3 5 > !co | 5 5 3 > !co
A x==xx-x= 8 8 5 > | 8 8 5 3 | R R 3 R | R R 5 3 | R R _5 R | R R _5 > | 8 8 3 > | 8 8 5 R | 5 5 3 R !co
L x==xx-x= R R 8 5 | R R 8 > | 8 8 10 8 | R R 8 10 | 8 8 10 > | R R 5 8 | 8 8 8 5 | R 5 8 > | 5 5 8 > !co
T x==xx-xx R 5 R R > | R R 5 R > | 8 5 R 5 > | R R 5 3 > | R R 3 5 > | 8 8 5 3 > | R R 5 >> > | R R 3 >> > | R R _5 >> > | 8 8 5 >> > | R R 3 3 5 | R R R 5 >
H1 x==x R R | R > | R 3 | R 5 | 8 8 | 8 5
H2 x=x= R > | R 3 | R 5 | R R | 8 5 | 8 >

tune mango-boat 3-5: root, third, fifth and the step above; octave, sixth or seventh, and down; four always leads
S x=-xx=x= R 3 5 6 | R 3 5 > | R 3 5 4 | R 5 6 > | R 5 6 5 | R 5 3 2 | R 2 3 > | R _5 _6 _7 | R _5 _6 > | 3 5 6 > !co | 3 4 5 > !co
A x=-xx=x= 8 7 5 > | 8 7 6 5 | 8 5 3 2 | 8 5 3 > | R _7 _6 _5 | R _7 _6 > | R 5 4 3 | R 5 3 > | R 3 2 > | 5 4 3 > !co | 5 3 2 R !co
S x=-xx=x= R 3 5 6 | R 3 5 > | R 3 5 4 | R 5 6 > | R 5 6 5 | R 5 3 2 | R 2 3 > | R _5 _6 _7 | R _5 _6 > | 3 5 6 > !co | 3 4 5 > !co
C x=-xx--- R 3 R | R 5 3 | R 5 R | 8 5 3 | R _7 R | R 2 3 | R _5 R | 8 7 5 | 5 3 R !co
S x=-xx=x= R 3 5 6 | R 3 5 > | R 3 5 4 | R 5 6 > | R 5 6 5 | R 5 3 2 | R 2 3 > | R _5 _6 _7 | R _5 _6 > | 3 5 6 > !co | 3 4 5 > !co
A x=-xx=x= 8 5 3 > | 8 5 3 2 | 8 7 6 5 | 8 7 5 > | R _7 _6 _5 | R _7 _6 > | R 5 4 3 | R 5 3 > | R 3 2 > | 5 4 3 > !co
L x=-xx=x= R 5 8 9 | 8 9 10 > | R 5 8 7 | 8 10 9 8 | R 7 8 > | 8 9 8 > | R 3 8 > | R 5 8 > | 8 10 9 > | 5 7 8 9 !co
T x=-xx=xx R 5 R R > | R R 5 R > | 8 5 R 5 > | R 5 5 6 7 | R 3 5 >> > | R 5 3 >> > | R 2 3 >> > | 8 7 5 >> > | R _5 _5 _6 _7 | R _7 _6 >> > | R 3 4 5 > | R 5 R >> >
H1 x==x R 3 | R > | R 5 | R 2 | 8 7 | R _7
H2 x=x= R > | R 3 | R 5 | R 2 | 8 7 | R _7

tune crab-dance 3-5: three and three and two: one, the and of two, and four; a pair on four turns every fourth bar
S x=-x==x= R 3 5 | R 5 6 | R 5 > | R 3 > | R 3 4 | R 2 3 | R _5 _6 | R 5 3 | R _7 > | 3 5 6 !co | 3 5 > !co
A x=-x==x= 8 7 6 | 8 5 > | 8 7 > | 8 5 3 | R _7 _6 | R _7 > | R 5 > | R 3 2 | R _5 > | 5 4 3 !co | 5 3 > !co
S x=-x==x= R 3 5 | R 5 6 | R 5 > | R 3 > | R 3 4 | R 2 3 | R _5 _6 | R 5 3 | R _7 > | 3 5 6 !co | 3 5 > !co
C x=-x==xx R 5 R > | R 3 R > | R 5 3 > | 8 7 5 > | R _5 >> > | R _7 R > | R 5 >> > | R 3 >> > | 8 5 3 R | 5 3 R > !co
S x=-x==x= R 3 5 | R 5 6 | R 5 > | R 3 > | R 3 4 | R 2 3 | R _5 _6 | R 5 3 | R _7 > | 3 5 6 !co | 3 5 > !co
A x=-x==x= 8 5 > | 8 7 6 | 8 5 3 | 8 7 > | R _7 _6 | R _7 > | R 5 > | R 3 2 | R _5 > | 5 4 3 !co
L x=-x==x= 8 9 10 | R 5 8 | R 8 9 | R 7 8 | 8 10 9 | 8 9 > | R 8 > | 8 10 > | R 8 7 | 5 8 9 !co
T x=-x==xx R 5 6 7 | R 5 >> > | R 3 >> > | 8 7 >> > | R _5 _6 _7 | R _5 >> > | R _7 >> > | R 3 5 > | R 2 3 >
H1 x==x R 3 | R > | R 5 | R 2 | 8 7 | R _7
H2 x=x= R > | R 3 | R 2 | R 5 | 8 7 | R _7

tune steel-and-silk 3-5: the rest on four kept in the asking bars, two eighths on four in the answering ones
S x==xx=-- R 3 5 | R 5 6 | R 2 3 | R 5 3 | R 3 4 | R _5 _6 | R _7 _6 | R 3 2 | R 5 R | 3 4 5 !co | 5 4 3 !co
A x==xx=xx 8 7 5 4 3 | 8 7 5 >> > | 8 5 3 >> > | R _7 _6 >> > | R _7 _6 _5 > | R 5 3 >> > | R 5 4 3 2 | R 3 5 >> > | R 5 6 5 > | 5 4 3 >> > !co
S x==xx=-- R 3 5 | R 5 6 | R 2 3 | R 5 3 | R 3 4 | R _5 _6 | R _7 _6 | R 3 2 | R 5 R | 3 4 5 !co | 5 4 3 !co
C x==xx=xx R 5 3 2 R | R 3 R >> > | R 5 3 R > | 8 7 5 R > | R _7 R >> > | R 5 R >> > | R 3 2 R > | 8 5 3 >> > | R _5 R >> > | 5 3 R >> > !co
S x==xx=-- R 3 5 | R 5 6 | R 2 3 | R 5 3 | R 3 4 | R _5 _6 | R _7 _6 | R 3 2 | R 5 R | 3 4 5 !co | 5 4 3 !co
A x==xx=xx 8 7 5 >> > | 8 7 5 4 3 | 8 5 3 >> > | R _7 _6 >> > | R _7 _6 _5 > | R 5 3 >> > | R 5 4 3 2 | R 3 5 >> > | R 5 6 5 > | 5 4 3 >> > !co
L x==xx=-- 8 9 10 | R 5 8 | R 7 8 | 8 10 9 | R 8 9 | 8 9 8 | R 8 7 | 8 10 8 | 5 8 9 !co
T x==xx=xx R 5 R R > | R R 5 R > | 8 5 R 5 > | R 5 5 6 7 | R 3 5 6 7 | R 3 5 >> > | R 5 3 >> > | 8 7 5 >> > | R _5 _5 _6 _7 | R _7 _6 >> > | R 2 3 >> > | R 5 R >> >
H1 x==x R 3 | R > | R 5 | R 2 | 8 7 | R _7
H2 x=xx R >> > | R 3 > | R 5 > | R 2 3 | 8 7 > | R _7 _6

tune night-carnival 4-5: the bounce with the chord's colour on three, half steps on four; pairs on four where the phrase turns
S x=-xx=x= R 5 c > | R 3 5 c | R 5 c 5 | R 3 5 > | R 3 c 5 | R _5 _5 > | R _7 _6 > | R 5 5 > | R 5 3 > | 3 5 c > !co | 5 c 5 > !co
A x=-xx=x= 8 c 5 > | 8 c 5 3 | 8 7 6 > | R _7 _6 > | R _7 _6 _5 | 8 5 3 > | R 5 3 > | R c 5 > | 5 3 R > !co | c 5 3 > !co
S x=-xx=x= R 5 c > | R 3 5 c | R 5 c 5 | R 3 5 > | R 3 c 5 | R _5 _5 > | R _7 _6 > | R 5 5 > | R 5 3 > | 3 5 c > !co | 5 c 5 > !co
C x=-xx=xx R 5 3 R > | R 3 R >> > | R c 5 >> > | R 5 3 >> > | 8 c 5 R > | R _7 R >> > | R _5 R >> > | 8 5 3 >> > | 5 3 R >> > !co
S x=-xx=x= R 5 c > | R 3 5 c | R 5 c 5 | R 3 5 > | R 3 c 5 | R _5 _5 > | R _7 _6 > | R 5 5 > | R 5 3 > | 3 5 c > !co | 5 c 5 > !co
A x=-xx=x= 8 c 5 3 | 8 c 5 > | 8 7 6 > | R _7 _6 > | R _7 _6 _5 | 8 5 3 > | R 5 3 > | R c 5 > | 5 3 R > !co
L x=-xx=x= R 5 8 9 | 8 9 10 > | R c 8 > | R c 8 10 | 8 10 9 > | R 5 8 c | 8 10 8 > | R 5 8 > | 8 9 8 c | 5 c 8 > !co
T x=-xx=xx R 5 R R > | R R 5 R > | 8 5 R 5 > | R 5 5 6 7 | R 5 c >> > | R 3 5 >> > | R c 5 >> > | 8 c 5 >> > | R _5 _5 _6 _7 | R _7 _6 >> > | R 5 3 >> >
H1 x==x R 5 | R > | R 3 | R c | 8 7 | R _7
H2 x=x= R > | R c | R 3 | R 5 | 8 c | R _7

tune kite-string 1-2: long, short, long falling from the octave, answered rising; four is air in every bar until the fourth fetches the next half
S x==xx=-- 8 5 R | 8 5 3 | R 5 R | R _5 R | R 5 3 | 8 R R | 8 8 5 | R R _5 | 8 3 R | R 3 R | 5 3 R !co | 3 R R !co
A x==xx=-- R 5 8 | R 5 5 | R 3 5 | R R 5 | 8 8 R | R 5 R | R _5 R | R 3 3 | R R 3 | R R 8 | 3 5 8 !co | 5 5 8 !co
S x==xx=-- 8 5 R | 8 5 3 | R 5 R | R _5 R | R 5 3 | 8 R R | 8 8 5 | R R _5 | 8 3 R | R 3 R | 5 3 R !co | 3 R R !co
C x==xx=x= R 5 R > | 8 5 R > | R _5 R > | R 5 3 > | 8 5 3 > | R 5 8 5 | R 3 R > | R R 5 > | 5 3 R > !co | 3 5 R > !co
S x==xx=-- 8 5 R | 8 5 3 | R 5 R | R _5 R | R 5 3 | 8 R R | 8 8 5 | R R _5 | 8 3 R | R 3 R | 5 3 R !co | 3 R R !co
A x==xx=-- R 5 5 | R 5 8 | R 3 5 | R R 5 | 8 8 R | R 5 R | R _5 R | R 3 3 | R R 3 | R R 8 | 3 5 8 !co | 5 5 8 !co
L x==xx=-- 8 10 8 | R 5 8 | 8 5 8 | 8 8 5 | R 8 8 | R 3 8 | 8 8 10 | 8 10 5 | 5 8 10 !co | 3 5 8 !co
T x==xx=x= 8 5 R > | R 5 R > | R 5 8 > | R 3 5 > | R _5 R > | 8 5 3 > | R R 5 > | R 5 3 > | R 5 8 5 | R 3 5 3
H1 x==x 8 5 | R 5 | R > | R 3 | R R | 8 R
H2 x=-- R | 8
H2 x=x= R > | R 5 | R R | R 3 | 8 >

tune sugar-scales 1-2: the asking bar goes up and takes a lead on four; the answering bar comes down and keeps four empty
S x==xx=x= R 5 8 > | R 3 5 > | R 5 R > | R R 5 > | R 5 8 5 | R _5 R > | R 3 5 8 | 8 5 R > | R 5 3 > | R 3 R > | 3 5 8 > !co | 5 8 5 > !co
A x==xx--- 8 5 R | 8 5 3 | R 5 R | R _5 R | R 5 3 | R R _5 | 8 R R | 8 8 5 | R 3 R | R R R | 5 3 R !co | 5 R R !co
S x==xx=x= R 5 8 > | R 3 5 > | R 5 R > | R R 5 > | R 5 8 5 | R _5 R > | R 3 5 8 | 8 5 R > | R 5 3 > | R 3 R > | 3 5 8 > !co | 5 8 5 > !co
C x==xx--- R 5 R | 8 5 R | R _5 R | R R R | R 3 R | 8 3 R | R 5 3 | 8 8 R | 5 3 R !co | 3 3 R !co
S x==xx=x= R 5 8 > | R 3 5 > | R 5 R > | R R 5 > | R 5 8 5 | R _5 R > | R 3 5 8 | 8 5 R > | R 5 3 > | R 3 R > | 3 5 8 > !co | 5 8 5 > !co
A x==xx--- 8 5 3 | 8 5 R | R 5 R | R _5 R | R 5 3 | R R _5 | 8 R R | 8 8 5 | R 3 R | R R R | 5 3 R !co | 5 R R !co
L x==xx=x= R 5 8 5 | 8 10 8 > | R 8 8 > | 8 5 8 > | R 3 8 > | 8 8 5 > | R 5 8 10 | R 5 8 > | 5 8 10 > !co | 3 5 8 > !co
T x==xx=x= R 5 R > | R 5 8 > | R 3 5 > | 8 5 R > | R _5 R > | R R 5 > | R 5 3 > | 8 5 3 > | R 3 5 3 | R 5 8 5
H1 x==x R 5 | R 3 | R > | R R | 8 5 | 8 3
H2 x=x= R > | R 5 | R R | R 3 | 8 5 | 8 >
H2 x=-- R | 8

tune slow-jetty 1-2: root, fifth and root, the last one left to ring; every second bar cuts it and steps on four
S x==xx=== R 5 R | R _5 R | R 5 5 | R 5 8 | R R 5 | R 3 5 | 8 5 R | R 3 R | R 5 3 | 8 5 3 | 5 5 R !co | 3 5 5 !co
A x==xx-x- 8 5 8 > | 8 5 R > | R _5 R > | R 5 R > | R 5 5 > | 8 8 5 > | R 3 R > | 8 5 3 > | R 5 3 > | R 3 5 > | 5 3 R > !co | 5 5 3 > !co
S x==xx=== R 5 R | R _5 R | R 5 5 | R 5 8 | R R 5 | R 3 5 | 8 5 R | R 3 R | R 5 3 | 8 5 3 | 5 5 R !co | 3 5 5 !co
C x==xx=== R 5 R | R _5 R | 8 5 R | R R R | 8 5 8 | R 3 R | R 5 3 | 5 3 R !co | 3 3 R !co
S x==xx=== R 5 R | R _5 R | R 5 5 | R 5 8 | R R 5 | R 3 5 | 8 5 R | R 3 R | R 5 3 | 8 5 3 | 5 5 R !co | 3 5 5 !co
A x==xx-x- 8 5 R > | 8 5 8 > | R _5 R > | R 5 R > | R 5 5 > | 8 8 5 > | R 3 R > | 8 5 3 > | R 5 3 > | R 3 5 > | 5 3 R > !co | 5 5 3 > !co
L x==xx=== 8 5 8 | R 5 8 | R 8 8 | 8 8 5 | 8 10 8 | R 3 8 | 8 10 10 | R 8 10 | 5 8 8 !co | 5 8 10 !co
T x==xx-x- R 5 R > | R _5 R > | 8 5 R > | R 5 5 > | R 5 8 > | R 3 5 > | R R 5 > | R 5 3 > | 8 5 3 > | R 3 5 8
H1 x==x R 5 | R R | R > | R _5 | R 3 | 8 5
H2 x=== R | 8
H2 x=x= R > | R 5 | R R | 8 > | R 3

tune tin-lantern 3-5: the plain bounce with four in the air; every second bar pushes its last eighth over the line
S x==xx=-- R 3 5 | R 5 6 | 8 6 5 | R 2 3 | R 3 4 | R 5 3 | R 3 2 | 8 5 3 | R _6 _5 | R _7 _6 | 8 c 5 | R 5 4 | 3 4 5 !co | 5 4 3 !co
A x==xx==x 8 6 5 > | 8 5 3 > | R 5 3 > | R 3 5 > | 8 c 5 > | R _6 _5 > | R 3 5 6 | 8 7 6 5 | R 5 4 3 | R _7 _6 > | R 3 2 > | 5 4 3 > !co | 5 3 R > !co
S x==xx=-- R 3 5 | R 5 6 | 8 6 5 | R 2 3 | R 3 4 | R 5 3 | R 3 2 | 8 5 3 | R _6 _5 | R _7 _6 | 8 c 5 | R 5 4 | 3 4 5 !co | 5 4 3 !co
C x==xx==x R 5 R > | R 3 R > | R _5 R > | 8 5 3 > | 8 6 5 > | R 2 R > | R _6 R > | R 5 3 R | 5 3 R > !co | 3 2 R > !co
S x==xx=-- R 3 5 | R 5 6 | 8 6 5 | R 2 3 | R 3 4 | R 5 3 | R 3 2 | 8 5 3 | R _6 _5 | R _7 _6 | 8 c 5 | R 5 4 | 3 4 5 !co | 5 4 3 !co
A x==xx==x 8 5 3 > | 8 6 5 > | R 5 3 > | R 3 5 > | 8 c 5 > | R _6 _5 > | R 3 5 6 | 8 7 6 5 | R 5 4 3 | R _7 _6 > | R 3 2 > | 5 4 3 > !co | 5 3 R > !co
L x==xx=-- 8 9 10 | R 5 8 | 8 10 9 | R 6 8 | 8 10 8 | R 3 8 | 8 9 8 | 8 c 8 | 5 6 8 !co | 5 8 10 !co
T x==xx=xx R 3 5 >> > | R 5 R >> > | R 3 4 5 > | R 5 5 6 7 | R _5 _5 _6 _7 | 8 6 5 >> > | 8 5 3 >> > | R 2 3 >> > | R _6 _5 >> > | R 5 3 >> >
H1 x==x R 3 | R > | R 5 | R 2 | R _7 | 8 c
H2 x=-- R | 8
H2 x==x R > | R 3 | R 5 | 8 > | R 2
`;
