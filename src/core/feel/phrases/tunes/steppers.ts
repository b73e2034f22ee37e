/** Steppers: tunes of eight bars (see the notation beside the books). */
export const STEPPERS_TUNES = `
tune night-watch 1-2: one, two, three and air; the answer stands on the root and rolls a pair through three
S x=x=x--- R R 3 | R R 5 | R 3 5 | R 5 8 | R 5 3 | R R _5 | R _5 R | R 3 R | R R 8 | R 5 R | 8 5 3 | 8 8 5 | 3 3 5 !co | 5 5 3 !co
A x===xxx= R 5 3 > | R 3 3 > | R 5 5 > | 8 5 5 3 | 8 5 5 > | R _5 _5 > | R 3 3 R | R R R > | R _5 _5 R | R R R _5 | 5 3 3 > !co | 5 3 3 R !co
S x=x=x--- R R 3 | R R 5 | R 3 5 | R 5 8 | R 5 3 | R R _5 | R _5 R | R 3 R | R R 8 | R 5 R | 8 5 3 | 8 8 5 | 3 3 5 !co | 5 5 3 !co
C x=x=x--- R R R | R 3 R | R 5 R | R _5 R | 8 5 R | R R 5 | R 5 3 | R R _5 | 5 3 R !co | 3 3 R !co
S x=x=x--- R R 3 | R R 5 | R 3 5 | R 5 8 | R 5 3 | R R _5 | R _5 R | R 3 R | R R 8 | R 5 R | 8 5 3 | 8 8 5 | 3 3 5 !co | 5 5 3 !co
A x===xxx= 8 5 5 3 | 8 5 5 > | R 5 3 > | R 3 3 > | R 5 5 > | R _5 _5 > | R 3 3 R | R R R > | R _5 _5 R | 5 8 8 > !co | 5 3 3 > !co
L x=x=x--- 8 8 10 | 8 10 8 | 8 8 5 | R 5 8 | 8 5 8 | R 8 8 | R 3 5 | 8 5 3 | 5 8 10 !co | 5 5 8 !co
T x===xxx= R 3 5 > | R 5 R > | R 5 5 > | R 3 3 > | R _5 _5 > | R R R > | 8 5 5 > | 8 5 3 > | R 5 3 > | R 5 >> > | R 3 >> > | R _5 >> >
H1 x=x= R R | R 3 | R 5 | R > | 8 8 | R _5
H2 x=-- R | 8
H2 xxx= R R > | R 3 > | R 5 > | R R _5

tune iron-stairs 1-2: three equal steps and a silent four; every second bar takes the fourth step into the chord
S x=x=x--- R 3 5 | R 5 3 | R 5 8 | R 3 R | R 5 R | R R 5 | R _5 R | R R 3 | R R _5 | 8 5 3 | 8 5 R | R 8 5 | 3 5 8 !co | 5 3 R !co
A x=x=x=x= 8 5 3 > | 8 5 3 R | 8 5 R > | R 5 3 > | R 3 5 > | R _5 R > | R 5 R > | R 3 R > | R 5 8 > | 8 5 R _5 | 5 3 R > !co | 5 3 5 > !co
S x=x=x--- R 3 5 | R 5 3 | R 5 8 | R 3 R | R 5 R | R R 5 | R _5 R | R R 3 | R R _5 | 8 5 3 | 8 5 R | R 8 5 | 3 5 8 !co | 5 3 R !co
C x=x=x--- R 3 R | R 5 R | R _5 R | 8 5 R | R 5 3 | R R R | R R _5 | R R 5 | 5 3 R !co | 3 5 3 !co
S x=x=x--- R 3 5 | R 5 3 | R 5 8 | R 3 R | R 5 R | R R 5 | R _5 R | R R 3 | R R _5 | 8 5 3 | 8 5 R | R 8 5 | 3 5 8 !co | 5 3 R !co
A x=x=x=x= 8 5 3 R | 8 5 8 > | 8 5 3 > | R 5 3 > | R 3 5 > | R 5 8 > | R _5 R > | R 5 R > | R 3 R > | 5 8 5 > !co | 5 3 5 > !co
L x=x=x--- 8 10 8 | R 5 8 | 8 5 8 | 8 8 10 | R 8 5 | 8 8 5 | R 3 5 | 8 5 3 | 5 8 10 !co | 5 8 5 !co
T x=x=x=x= R 3 5 > | R 5 R > | R 5 8 > | 8 5 3 > | R _5 R > | R R 5 > | 8 5 R > | R 5 3 > | R 3 >> > | R 5 >> > | R _5 >> >
H1 x=x= R 3 | R 5 | R > | 8 5 | R _5
H2 x=-- R | 8
H2 x=x= R > | R 3 | R 5 | 8 > | R _5

tune deep-well 1-2: the root alone for half the bar, one slow turn on three; the answer adds a step on four
S x===x--- R 3 | R 5 | R R | R 8 | R _5 | 8 5 | 8 3 | R > | 3 5 !co | 5 R !co
A x===x=x= R 5 > | R 5 3 | 8 5 3 | 8 5 > | R 3 R | R _5 > | R 3 > | R _5 R | R R > | R R _5 | 5 3 > !co | 5 3 R !co
S x===x--- R 3 | R 5 | R R | R 8 | R _5 | 8 5 | 8 3 | R > | 3 5 !co | 5 R !co
C x===x--- R R | R 5 | R _5 | R 3 | 8 5 | R > | 5 R !co | 3 R !co
S x===x--- R 3 | R 5 | R R | R 8 | R _5 | 8 5 | 8 3 | R > | 3 5 !co | 5 R !co
A x===x=x= 8 5 > | 8 5 3 | R 5 > | R 5 3 | R 3 R | R _5 > | R 3 > | R _5 R | R R > | R R _5 | 5 8 > !co | 5 3 > !co
L x===x--- 8 10 | R 8 | 8 5 | 8 8 | R 5 | R 3 | 5 8 !co | 3 8 !co
T x===x=x= R 5 > | R 3 > | R _5 > | 8 5 > | R R > | R 3 5 | R 5 3 | 8 5 3 | R R _5 | R >> > | 8 3 >
H1 x=== R | 8
H1 x=-- R | 8
H2 x=-- R | 8
H2 x=x= R > | R 3 | R 5 | 8 > | R _5

tune hammer-yard 1-2: a pair and two more blows, the last one higher or lower, then air; every second bar leads out of it
S xxx=x--- R R R 3 | R R R 5 | R R R R | R R R _5 | R R R 8 | R R 5 3 | R R 3 R | R R 5 R | 8 8 8 5 | 8 8 5 3 | R R 3 5 | 3 3 3 5 !co | 5 5 5 3 !co
A xxx=x=x= 8 8 8 5 > | 8 8 8 5 3 | R R R 5 > | R R R 5 3 | R R R 3 > | R R R _5 > | R R R _5 R | R R R 3 R | R R R R > | R R R R _5 | 5 5 5 3 > !co | 5 5 5 3 R !co
S xxx=x--- R R R 3 | R R R 5 | R R R R | R R R _5 | R R R 8 | R R 5 3 | R R 3 R | R R 5 R | 8 8 8 5 | 8 8 5 3 | R R 3 5 | 3 3 3 5 !co | 5 5 5 3 !co
C xxx=x--- R R R R | R R 3 R | R R R 5 | R R R _5 | 8 8 5 R | R R 5 R | R R _5 R | R R 5 3 | 5 5 3 R !co | 3 3 3 R !co
S xxx=x--- R R R 3 | R R R 5 | R R R R | R R R _5 | R R R 8 | R R 5 3 | R R 3 R | R R 5 R | 8 8 8 5 | 8 8 5 3 | R R 3 5 | 3 3 3 5 !co | 5 5 5 3 !co
A xxx=x=x= 8 8 8 5 3 | R R R 5 > | 8 8 8 5 > | R R R 5 3 | R R R 3 > | R R R _5 > | R R R _5 R | R R R 3 R | R R R R > | R R R R _5 | 5 5 5 3 > !co | 5 5 5 3 R !co
L xxx=x--- 8 8 8 10 | 8 8 8 5 | 8 8 10 8 | R R 5 8 | R R R 8 | 8 8 8 8 | R R 3 5 | 8 8 5 3 | 5 5 5 8 !co | 3 3 5 8 !co
T xxx=x=x= R R R 5 > | R R R 3 > | R R 3 5 > | R R R _5 > | R R 5 8 > | 8 8 8 5 > | 8 8 5 3 > | R R R R > | R R R >> > | R R 5 3 > | 8 8 8 >> >
H1 xxx= R R R | R R > | R R 3 | R R 5 | 8 8 8 | R R _5
H2 x=-- R | 8
H2 x=x= R > | R 3 | R 5 | 8 > | R _5

tune long-march 3-5: root, an eighth before three, three, and air; the answer keeps the riff and steps into the chord
S x=-xx=-- R _c R | R 2 3 | R 5 3 | R 3 5 | R _7 R | R 5 4 | R 3 2 | R _7 _6 | R _5 R | R _5 _6 | R 5 8 | R 3 R | 8 c 5 | 8 5 3 | 3 4 5 !co | 5 4 3 !co
A x=-xx=xx R 5 4 3 > | R 5 3 >> > | 8 c 5 >> > | 8 c 5 4 3 | 8 5 3 >> > | R 2 3 >> > | R 3 5 >> > | R _c R >> > | R _7 _6 _5 > | R _7 R 2 3 | R _5 R >> > | 5 4 3 >> > !co | 5 3 R >> > !co
S x=-xx=-- R _c R | R 2 3 | R 5 3 | R 3 5 | R _7 R | R 5 4 | R 3 2 | R _7 _6 | R _5 R | R _5 _6 | R 5 8 | R 3 R | 8 c 5 | 8 5 3 | 3 4 5 !co | 5 4 3 !co
C x=-xx=-- R _c R | R _7 R | R 3 R | R _5 R | R 2 R | R 5 3 | R 3 2 | 8 5 3 | R _5 _6 | 5 3 R !co | 3 2 R !co
S x=-xx=-- R _c R | R 2 3 | R 5 3 | R 3 5 | R _7 R | R 5 4 | R 3 2 | R _7 _6 | R _5 R | R _5 _6 | R 5 8 | R 3 R | 8 c 5 | 8 5 3 | 3 4 5 !co | 5 4 3 !co
A x=-xx=xx 8 c 5 >> > | 8 c 5 4 3 | 8 5 3 >> > | R 5 4 3 > | R 5 3 >> > | R 2 3 >> > | R 3 5 >> > | R _c R >> > | R _7 _6 _5 > | R _5 R >> > | 5 6 5 >> > !co | 5 4 3 >> > !co
L x=-xx=-- 8 c 8 | 8 9 10 | 8 10 8 | R 5 8 | 8 7 8 | R 3 5 | 8 c 5 | 8 10 9 | 5 6 8 !co | 5 8 10 !co
T x=-xx=xx R 2 3 >> > | R 3 5 >> > | R _7 R >> > | R 5 3 >> > | R _5 R >> > | 8 c 5 >> > | 8 5 3 >> > | R R _5 _6 _7 | R _7 R 2 3 | R 3 5 6 > | R 5 6 >> >
H1 x=-x R > | R R | R 2 | R 3 | R 5 | R _c | R _7 | 8 c
H2 x=-- R | 8
H2 x=xx R >> > | R 2 3 | R 3 > | R 5 > | 8 c 5 | R _5 >

tune red-lamp 3-5: three level steps and air; the answer sits on the root and runs from three
S x=x=x--- R R _c | R R 3 | R 2 3 | R 3 5 | R R 5 | R 5 4 | R 5 3 | R 3 2 | R _7 R | R _7 _6 | R _5 _6 | R R 2 | 8 8 c | 8 c 5 | 8 5 3 | 3 4 5 !co | 5 4 3 !co
A x===xxxx R 5 4 3 > | 8 c 5 4 3 | R 5 3 >> > | 8 c 5 >> > | 8 7 6 5 > | R 3 5 >> > | R 2 3 >> > | R _7 _6 _5 > | R _7 R 2 3 | R _5 _6 >> > | R R _5 _6 _7 | 8 5 3 >> > | 5 4 3 >> > !co | 5 4 3 2 > !co
S x=x=x--- R R _c | R R 3 | R 2 3 | R 3 5 | R R 5 | R 5 4 | R 5 3 | R 3 2 | R _7 R | R _7 _6 | R _5 _6 | R R 2 | 8 8 c | 8 c 5 | 8 5 3 | 3 4 5 !co | 5 4 3 !co
C x=x=x--- R R _c | R 3 R | R _7 R | R R R | R 2 R | R _5 R | R 5 3 | 8 c 5 | R 3 2 | 5 3 R !co | 3 2 R !co
S x=x=x--- R R _c | R R 3 | R 2 3 | R 3 5 | R R 5 | R 5 4 | R 5 3 | R 3 2 | R _7 R | R _7 _6 | R _5 _6 | R R 2 | 8 8 c | 8 c 5 | 8 5 3 | 3 4 5 !co | 5 4 3 !co
A x===xxxx 8 c 5 4 3 | 8 c 5 >> > | 8 7 6 5 > | R 5 4 3 > | R 5 3 >> > | R 3 5 >> > | R 2 3 >> > | R _7 _6 _5 > | R _5 _6 >> > | R R _5 _6 _7 | 5 6 5 >> > !co | 5 4 3 >> > !co
L x=x=x--- 8 8 c | 8 9 10 | 8 10 8 | R 5 8 | 8 8 10 | R 3 5 | 8 c 5 | 8 10 9 | 5 6 8 !co | 5 8 10 !co
T x===xxxx R 2 3 >> > | R 3 5 >> > | R 5 3 >> > | R _5 _6 >> > | R R R 2 3 | R R _5 _6 _7 | R 3 5 6 > | 8 c 5 >> > | 8 5 3 >> > | R 5 6 >> > | R _7 R >> >
H1 x=x= R R | R 2 | R 3 | R 5 | R > | R _c | R _7 | 8 c
H2 x=-- R | 8
H2 xxxx R R >> > | R 3 >> > | R R 2 3 | R 5 >> > | R _5 >> > | 8 c 5 >

tune round-the-yard 3-5: a long root, three notes off its end that turn round three, and air; the answer lands and leads
S x=-xxx-- R R 2 3 | R 2 3 R | R 3 2 R | R _c R 3 | R 3 4 5 | R 5 4 3 | R R 3 5 | R R _7 _6 | R _7 R 2 | R R _c R | R R _5 _6 | 8 c 5 3 | 8 5 4 3 | 3 3 4 5 !co | 5 5 4 3 !co
A x=-xx=xx R 5 3 >> > | 8 c 5 >> > | R R 5 4 3 | 8 5 3 >> > | 8 c 5 4 3 | R R 3 >> > | R 3 5 >> > | R R _7 _6 _5 | R _c R >> > | R _7 R 2 3 | R _5 R >> > | R R _5 _6 _7 | 5 4 3 >> > !co | 5 3 R >> > !co
S x=-xxx-- R R 2 3 | R 2 3 R | R 3 2 R | R _c R 3 | R 3 4 5 | R 5 4 3 | R R 3 5 | R R _7 _6 | R _7 R 2 | R R _c R | R R _5 _6 | 8 c 5 3 | 8 5 4 3 | 3 3 4 5 !co | 5 5 4 3 !co
C x=-xxx-- R 3 2 R | R _c R R | R 2 3 R | R _7 R R | R _5 _7 R | R 5 3 R | R R 3 2 | 8 c 5 3 | R R _5 _6 | 5 4 3 R !co | 3 3 2 R !co
S x=-xxx-- R R 2 3 | R 2 3 R | R 3 2 R | R _c R 3 | R 3 4 5 | R 5 4 3 | R R 3 5 | R R _7 _6 | R _7 R 2 | R R _c R | R R _5 _6 | 8 c 5 3 | 8 5 4 3 | 3 3 4 5 !co | 5 5 4 3 !co
A x=-xx=xx 8 c 5 >> > | 8 5 3 >> > | 8 c 5 4 3 | R 5 3 >> > | R R 5 4 3 | R R 3 >> > | R 3 5 >> > | R R _7 _6 _5 | R _c R >> > | R _5 R >> > | 5 6 5 >> > !co | 5 4 3 >> > !co
L x=-xxx-- 8 8 9 10 | 8 9 10 8 | 8 10 9 8 | R 3 5 8 | 8 c 8 10 | R 5 6 8 | 8 c 5 8 | R R 3 5 | 5 5 6 8 !co | 5 8 9 10 !co
T x=-xx=xx R 2 3 >> > | R 3 5 >> > | R R 3 >> > | R 5 3 >> > | R _5 R >> > | R R _5 _6 _7 | R R R 2 3 | R 3 5 6 > | 8 c 5 >> > | 8 5 3 >> > | R 5 6 >> >
H1 x==x R > | R R | R 2 | R 3 | R 5 | R _c | R _7 | 8 c
H2 xx-- R 3 | R R | R 2
H2 x=xx R >> > | R 2 3 | R 3 > | R 5 > | 8 c 5 | R _5 >

tune under-the-arch 3-5: half a bar of root, then two slow steps; every second bar turns the last step into a pair that leads
S x==-x-x= R 3 5 | R 2 3 | R 5 4 | R 5 3 | R _7 _6 | R _c R | R 3 2 | R _5 _6 | R _7 R | R 3 > | R 5 > | R _5 > | 8 c 5 | 8 5 3 | 3 5 > !co | 5 4 3 !co
A x==-x-xx 8 5 >> > | 8 c 5 > | R 5 >> > | R 5 4 3 | 8 5 4 3 | R 3 >> > | R _7 >> > | R _7 _6 _5 | R _5 >> > | R _5 _6 > | R R 2 3 | R 3 5 > | 5 3 >> > !co | 5 4 3 > !co
S x==-x-x= R 3 5 | R 2 3 | R 5 4 | R 5 3 | R _7 _6 | R _c R | R 3 2 | R _5 _6 | R _7 R | R 3 > | R 5 > | R _5 > | 8 c 5 | 8 5 3 | 3 5 > !co | 5 4 3 !co
C x==-x-x= R 3 R | R _c R | R _5 R | R 2 R | R R > | R 3 > | R 5 3 | R _5 _6 | 8 5 3 | R 3 2 | 5 3 R !co | 3 R > !co
S x==-x-x= R 3 5 | R 2 3 | R 5 4 | R 5 3 | R _7 _6 | R _c R | R 3 2 | R _5 _6 | R _7 R | R 3 > | R 5 > | R _5 > | 8 c 5 | 8 5 3 | 3 5 > !co | 5 4 3 !co
A x==-x-xx R 5 >> > | R 5 4 3 | 8 5 >> > | 8 c 5 > | 8 5 4 3 | R 3 >> > | R _7 >> > | R _7 _6 _5 | R _5 >> > | R R 2 3 | 5 8 >> > !co | 5 4 3 > !co
L x==-x-x= 8 9 10 | 8 10 9 | 8 10 8 | R 5 8 | 8 c 8 | 8 10 > | R 5 6 | R 3 5 | 8 c 5 | 5 6 8 !co | 5 8 10 !co
T x==-x-xx R 3 >> > | R 5 >> > | R _5 >> > | R 2 3 > | R _5 _6 _7 | R R 2 3 | R 3 5 > | 8 5 >> > | 8 c 5 > | R 5 6 > | R _7 >> >
H1 x=== R | 8
H2 x=x= R > | R 2 | R 3 | R 5 | R _7 | 8 c | R _5
H2 x=xx R >> > | R 2 3 | 8 >> >

tune coal-barge 1-2: root, a hole, three and four call; the answer is three level blows that turn from the fifth and stop
S x=--x=x= R R 5 | R 5 R | R 5 8 | R R > | R 5 > | R _5 R | R 8 5 | 8 5 R | R R 3 | R 3 5 | R 5 3 | R 3 R | 3 3 5 !co | 5 3 R !co
A x=x=x=-- R 5 R | 8 5 R | R 5 5 | R _5 R | R 8 5 | 8 5 5 | R 5 3 | 8 5 3 | R 3 R | R 5 8 | R 3 5 | 5 3 R !co | 5 5 3 !co
S x=--x=x= R R 5 | R 5 R | R 5 8 | R R > | R 5 > | R _5 R | R 8 5 | 8 5 R | R R 3 | R 3 5 | R 5 3 | R 3 R | 3 3 5 !co | 5 3 R !co
C x=x=x=-- R 5 R | R _5 R | 8 5 R | R R R | R 8 R | R 3 R | R 5 3 | 5 3 R !co | 3 5 R !co
S x=--x=x= R R 5 | R 5 R | R 5 8 | R R > | R 5 > | R _5 R | R 8 5 | 8 5 R | R R 3 | R 3 5 | R 5 3 | R 3 R | 3 3 5 !co | 5 3 R !co
A x=x=x=-- 8 5 R | R 5 R | R 5 5 | R _5 R | R 8 5 | 8 5 5 | R 5 3 | 8 5 3 | R 3 R | R 5 8 | R 3 5 | 5 3 R !co | 5 5 3 !co
L x=--x=x= 8 8 5 | R 5 8 | 8 5 8 | R 8 8 | R 8 5 | 8 8 10 | 8 10 8 | R 3 8 | 5 8 10 !co | 5 5 8 !co
T x=x=x=x= R 5 R > | 8 5 R > | R 5 5 > | R _5 R > | R 5 8 > | R 3 5 > | R 5 3 > | 8 5 3 > | R R 5 > | R 3 R >
H1 x=-- R | 8
H1 x=x= R 5 | R R | R > | R 3
H2 x=x= R > | R 5 | R R | R 3 | 8 5
H2 x=-- R | 8

tune night-press 1-2: a struck pair and one dark note on three; the answer keeps the pair and speaks from the fifth or third in a short run
S xx--x=-- R R 5 | R R R | R R 3 | R R _5 | R R 8 | 8 8 5 | R 5 R | 8 8 R | R 3 5 | R 5 3 | 8 8 3 | 3 3 5 !co | 5 5 3 !co
A xx--xxx= R R 5 5 > | 8 8 5 5 R | R R 5 5 R | 8 8 5 5 > | R R _5 _5 R | R R _5 _5 > | R R 5 3 R | R R 3 3 > | R R 3 3 R | 8 8 5 3 R | R R 5 3 > | 5 5 3 3 R !co | 5 5 5 3 > !co
S xx--x=-- R R 5 | R R R | R R 3 | R R _5 | R R 8 | 8 8 5 | R 5 R | 8 8 R | R 3 5 | R 5 3 | 8 8 3 | 3 3 5 !co | 5 5 3 !co
C xx--xxx= R R 5 5 R | R R _5 _5 R | 8 8 5 5 R | R R R R > | R R 5 3 R | R R 3 3 R | 8 8 5 3 R | 5 5 3 3 R !co | 3 3 3 3 R !co
S xx--x=-- R R 5 | R R R | R R 3 | R R _5 | R R 8 | 8 8 5 | R 5 R | 8 8 R | R 3 5 | R 5 3 | 8 8 3 | 3 3 5 !co | 5 5 3 !co
A xx--xxx= 8 8 5 5 R | R R 5 5 > | R R 5 5 R | 8 8 5 5 > | R R _5 _5 R | R R _5 _5 > | R R 5 3 R | R R 3 3 > | R R 3 3 R | 8 8 5 3 R | R R 5 3 > | 5 5 3 3 R !co | 5 5 5 3 > !co
L xx--x=-- 8 8 5 | R R 8 | 8 8 8 | R 5 8 | R 8 5 | 8 8 10 | R 8 10 | R 3 8 | 5 5 8 !co | 3 3 8 !co
T xx--xxx= R R 5 5 > | 8 8 5 5 > | R R _5 _5 > | R R R 5 > | R R 5 R > | R R 3 5 > | R R 5 3 > | R R 3 3 > | 8 8 5 3 > | R R 5 >> >
H1 xx-- R R | R 5 | 8 8 | R 3 | R _5 | R >
H2 x=-- R | 8
H2 xxx= R R > | R 5 R | R 5 > | R 3 R | R 3 >

tune tunnel-light 3-5: a pair on one, a jab after two, three, and the rest is dark; the answer keeps pair and jab and speaks late, on four
S xx-xx--- R R _c R | R R 3 R | R R 3 5 | R R 5 3 | R R 5 4 | R R 2 3 | R R _7 _6 | R R 3 2 | R R c 5 | R R 3 4 | R R _5 _6 | 8 8 c 5 | 8 8 5 3 | 3 3 4 5 !co | 5 5 4 3 !co
A xx-x--xx R R 5 4 3 | R R 5 3 > | R R 5 >> > | 8 8 c 5 > | 8 8 5 3 > | R R 3 2 > | R R 3 >> > | R R _7 _6 _5 | R R _c R > | R R _5 _6 > | 8 8 5 4 3 | R R 3 4 > | 5 5 4 3 > !co | 5 5 3 R > !co
S xx-xx--- R R _c R | R R 3 R | R R 3 5 | R R 5 3 | R R 5 4 | R R 2 3 | R R _7 _6 | R R 3 2 | R R c 5 | R R 3 4 | R R _5 _6 | 8 8 c 5 | 8 8 5 3 | 3 3 4 5 !co | 5 5 4 3 !co
C xx-x--xx R R 3 2 R | R R _c _c R | R R 5 3 R | R R 3 R > | R R _5 _7 R | R R _c R > | 8 8 5 3 R | R R R >> > | 5 5 4 3 R !co | 3 3 2 R > !co
S xx-xx--- R R _c R | R R 3 R | R R 3 5 | R R 5 3 | R R 5 4 | R R 2 3 | R R _7 _6 | R R 3 2 | R R c 5 | R R 3 4 | R R _5 _6 | 8 8 c 5 | 8 8 5 3 | 3 3 4 5 !co | 5 5 4 3 !co
A xx-x--xx R R 5 3 > | R R 5 4 3 | R R 5 >> > | 8 8 c 5 > | 8 8 5 3 > | R R 3 2 > | R R 3 >> > | R R _7 _6 _5 | R R _c R > | R R _5 _6 > | 8 8 5 4 3 | R R 3 4 > | 5 5 4 3 > !co | 5 5 3 R > !co
L xx-xx--- 8 8 9 10 | 8 8 10 8 | 8 8 c 8 | R R 5 8 | 8 8 10 9 | R R 6 8 | R R c 8 | 8 8 c 5 | 5 5 6 8 !co | 5 5 8 10 !co
T xx-x--xx R R 5 >> > | R R 3 >> > | R R R >> > | R R 5 6 7 | R R _5 _6 _7 | R R 3 5 > | R R _5 >> > | 8 8 5 >> > | 8 8 c 5 > | R R 2 3 >
H1 xx-x R R > | R R 3 | R R 5 | R R 2 | R R _7 | 8 8 c
H2 x--- R | 8
H2 x-xx R >> > | R 2 3 | R 3 > | R 5 > | R _7 _6

tune slow-crane 3-5: a long low root, half a bar of nothing, a pair on four; the answer is three level steps down or up and silence
S x===--xx R 5 4 | R 3 5 | R _c R | R 5 3 | R 3 > | R 2 3 | R 5 > | R _7 _6 | R _5 _6 | R >> > | 8 c 5 | 8 5 > | R c 5 | 3 4 5 !co | 5 4 3 !co
A x=x=x=-- R 5 3 | 8 5 3 | R 3 5 | R 3 2 | R _7 _6 | R _c R | 8 c 5 | R 5 4 | R 2 3 | R _5 _6 | R 3 R | 8 5 4 | 5 4 3 !co | 5 3 R !co
S x===--xx R 5 4 | R 3 5 | R _c R | R 5 3 | R 3 > | R 2 3 | R 5 > | R _7 _6 | R _5 _6 | R >> > | 8 c 5 | 8 5 > | R c 5 | 3 4 5 !co | 5 4 3 !co
C x=x=x=-- R 3 R | R _c R | R 5 3 | R _5 R | R 2 R | 8 5 3 | R _7 R | R 3 2 | 5 3 R !co | 3 2 R !co
S x===--xx R 5 4 | R 3 5 | R _c R | R 5 3 | R 3 > | R 2 3 | R 5 > | R _7 _6 | R _5 _6 | R >> > | 8 c 5 | 8 5 > | R c 5 | 3 4 5 !co | 5 4 3 !co
A x=x=x=-- 8 5 3 | R 5 3 | R 3 5 | R 3 2 | R _7 _6 | R _c R | 8 c 5 | R 5 4 | R 2 3 | R _5 _6 | R 3 R | 8 5 4 | 5 4 3 !co | 5 3 R !co
L x===--xx 8 c 8 | R 5 8 | 8 9 10 | 8 10 9 | 8 10 > | R 6 8 | 8 c 5 | R 5 > | 5 6 8 !co | 5 8 10 !co
T x=x=x=xx R 5 3 >> > | R 3 5 >> > | R _c R >> > | R 2 3 >> > | R 5 5 6 7 | R _5 _5 _6 _7 | 8 c 5 >> > | 8 5 3 >> > | R _5 R >> > | R 3 4 5 >
H1 x=== R | 8
H1 x=x= R > | R 3 | R 5 | R _7
H2 x=xx R >> > | R 2 3 | R 3 > | R 5 > | 8 c 5 | R _7 _6
H2 x=-- R | 8
`;
