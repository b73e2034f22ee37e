/** Steppers: tunes of eight bars (see the notation beside the books). */
export const STEPPERS_TUNES = `
tune night-watch 1-2: root, a hole on two, a pair on three and a four that leads; the answer has a second blow on two, which enters where the one is left empty, and its pair comes down
S x=--xxx= R _5 R > | R R _5 R | R R 5 8 | 8 5 R > | R 3 5 > | R R 3 5 | R 5 3 > | R R 5 3 | 8 5 3 > | 5 8 5 R !co | 5 8 10 8 !co
A x=x=xxx= 8 8 5 R > | R R 5 3 > | 8 8 5 3 > | R R 5 8 > | R R 5 3 R | R R 5 R _5 | R R _5 R 5 | R R R 5 8 | R R 3 5 8 | R R 5 R > | 5 5 8 5 R !co | 5 5 3 R > !co
S x=--xxx= R _5 R > | R R _5 R | R R 5 8 | 8 5 R > | R 3 5 > | R R 3 5 | R 5 3 > | R R 5 3 | 8 5 3 > | 5 8 5 R !co | 5 8 10 8 !co
C xx----x= R R 5 | 8 8 5 | R 5 8 | R R 3 | R R _5 | 8 8 5 | R 5 R | 5 5 R !co | 5 8 5 !co
S x=--xxx= R _5 R > | R R _5 R | R R 5 8 | 8 5 R > | R 3 5 > | R R 3 5 | R 5 3 > | R R 5 3 | 8 5 3 > | 5 8 5 R !co | 5 8 10 8 !co
A x=x=xxx= 8 8 5 R > | R R 5 3 > | 8 8 5 3 > | R R 5 8 > | R R 5 3 R | R R 5 R _5 | R R _5 R 5 | R R R 5 8 | R R 3 5 8 | R R 5 R > | 5 5 8 5 R !co | 5 5 3 R > !co
L x=--xxx= 8 10 8 > | R 5 8 > | 8 5 8 > | 8 8 10 > | R 3 5 > | 8 5 R > | R _5 R 5 | R 3 5 8 | 5 8 10 > !co | 5 8 5 R !co
T x=x=xxx= 8 8 5 R 5 | 8 5 3 R > | R R 5 8 5 | R 3 5 8 5 | R R _5 R 5 | R 5 3 R > | R R 3 5 > | R R 5 8 > | R R 5 >> >
H1 x=x= R > | R 3 | R 5 | R _5 | 8 5
H2 xxx= R R > | R 3 > | R 5 > | R 3 5 | R R 5 | R R _5 | 8 5 >

tune iron-stairs 1-2: clipped steps through the chord and a four that leads; the answer hangs a pair on two and goes the other way
S x=x-x-x= R 5 8 > | 8 5 R > | R R 5 8 | R _5 R 5 | R 3 5 > | R R 3 5 | R 5 3 > | R R 5 3 | 8 5 3 > | R R 5 > | R R _5 R | 5 8 5 R !co | 3 5 8 5 !co
A x=xxx=x= 8 8 5 R > | R R 5 3 > | R R 5 R _5 | R R 5 3 R | 8 8 5 3 > | R R _5 R 5 | 8 8 8 5 R | R R 5 8 > | R R 3 5 8 | R R R _5 R | 5 5 8 5 R !co | 5 5 3 R > !co
S x=x-x-x= R 5 8 > | 8 5 R > | R R 5 8 | R _5 R 5 | R 3 5 > | R R 3 5 | R 5 3 > | R R 5 3 | 8 5 3 > | R R 5 > | R R _5 R | 5 8 5 R !co | 3 5 8 5 !co
C x=----x= R 5 | R 3 | R 8 | 8 3 | 5 R !co | 5 8 !co
S x=x-x-x= R 5 8 > | 8 5 R > | R R 5 8 | R _5 R 5 | R 3 5 > | R R 3 5 | R 5 3 > | R R 5 3 | 8 5 3 > | R R 5 > | R R _5 R | 5 8 5 R !co | 3 5 8 5 !co
A x=xxx=x= 8 8 5 R > | R R 5 3 > | R R 5 R _5 | R R 5 3 R | 8 8 5 3 > | R R _5 R 5 | 8 8 8 5 R | R R 5 8 > | R R 3 5 8 | R R R _5 R | 5 5 8 5 R !co | 5 5 3 R > !co
L x=x-x-x= 8 10 8 > | R 5 8 > | 8 5 8 > | 8 8 10 > | R 3 5 > | 8 5 R > | R _5 R 5 | R 3 5 8 | 5 8 10 > !co | 5 8 5 R !co
T x=xxx=x= 8 8 5 R 5 | 8 5 3 R > | R R 5 8 5 | R 3 5 8 5 | R R _5 R 5 | R 5 3 R > | R R 3 5 > | R R 5 8 > | R R 5 >> >
H1 x=x= R > | R 3 | R 5 | R _5 | 8 5
H2 xxx= R R > | R 3 > | R 5 > | R 3 5 | R R 5 | R R _5 | 8 5 >

tune ferry-bell 1-2: a struck pair, a hole on two, three and four ring up; the answer knocks on two and runs through a pair into four
S xx--x-x= R R 5 8 | R R 3 5 | 8 8 5 R | R R 5 3 | R _5 R 5 | 8 8 5 3 | R 5 8 > | R 3 5 > | R 5 R _5 | R R 5 > | 5 5 3 R !co | 3 3 5 8 !co
A x=x-xxx= 8 8 5 R > | R R 5 3 > | R R 5 R _5 | R R 5 3 R | 8 8 5 3 > | R R _5 R 5 | 8 8 8 5 R | R R 5 8 > | R R 3 5 8 | R R R _5 R | 5 5 8 5 R !co | 5 5 3 R > !co
S xx--x-x= R R 5 8 | R R 3 5 | 8 8 5 R | R R 5 3 | R _5 R 5 | 8 8 5 3 | R 5 8 > | R 3 5 > | R 5 R _5 | R R 5 > | 5 5 3 R !co | 3 3 5 8 !co
C xx----x= R R 5 | R 5 8 | R R 3 | R 3 > | R 5 R | 5 5 R !co | 5 8 5 !co
S xx--x-x= R R 5 8 | R R 3 5 | 8 8 5 R | R R 5 3 | R _5 R 5 | 8 8 5 3 | R 5 8 > | R 3 5 > | R 5 R _5 | R R 5 > | 5 5 3 R !co | 3 3 5 8 !co
A x=x-xxx= 8 8 5 R > | R R 5 3 > | R R 5 R _5 | R R 5 3 R | 8 8 5 3 > | R R _5 R 5 | 8 8 8 5 R | R R 5 8 > | R R 3 5 8 | R R R _5 R | 5 5 8 5 R !co | 5 5 3 R > !co
L xx--x-x= 8 8 10 8 | R R 5 8 | 8 8 10 > | R R 3 5 | R 5 8 > | 8 8 5 R | R _5 R 5 | R 3 5 8 | R R 5 > | 5 5 8 10 !co | 5 5 3 R !co
T x=x-xxx= 8 8 5 R 5 | 8 5 3 R > | R R 5 8 5 | R 3 5 8 5 | R R _5 R 5 | R 5 3 R > | R R 3 5 > | R R 5 8 > | R R 5 >> >
H1 x=x= R > | R 3 | R 5 | R _5 | 8 5
H2 x-x= R > | R 3 | R 5 | R _5 | 8 >
H2 xxx= R R > | R 3 > | R 3 5 | R 5 >

tune hammer-yard 1-2: a pair and one more blow, air on three, and four leads; the answer knocks on two and fills three with a pair
S xxx=--x= R R _5 R | R R 3 5 | R R 5 8 | R R 5 3 | 8 8 5 R | R 3 5 > | 8 8 5 3 | 5 5 3 R !co
A x=x-xxx= 8 8 5 R > | R R 5 3 > | 8 8 5 3 > | R R 5 8 > | R R 5 3 R | R R 5 R _5 | R R _5 R 5 | R R R 5 8 | R R 3 5 8 | R R 5 R > | 5 5 8 5 R !co | 5 5 3 R > !co
S xxx=--x= R R _5 R | R R 3 5 | R R 5 8 | R R 5 3 | 8 8 5 R | R 3 5 > | 8 8 5 3 | 5 5 3 R !co
C xx----x= R R 5 | 8 8 5 | R 5 8 | R R _5 | R R 3 | R 3 > | R 5 R | 5 5 R !co | 5 8 5 !co
S xxx=--x= R R _5 R | R R 3 5 | R R 5 8 | R R 5 3 | 8 8 5 R | R 3 5 > | 8 8 5 3 | 5 5 3 R !co
A x=x-xxx= 8 8 5 R > | R R 5 3 > | 8 8 5 3 > | R R 5 8 > | R R 5 3 R | R R 5 R _5 | R R _5 R 5 | R R R 5 8 | R R 3 5 8 | R R 5 R > | 5 5 8 5 R !co | 5 5 3 R > !co
L xxx=--x= 8 8 10 8 | R R 5 8 | 8 8 10 > | R R 3 5 | R 5 8 > | 8 8 5 R | R _5 R 5 | R 3 5 8 | R R 5 > | 5 5 8 10 !co | 5 5 3 R !co
T x=x-xxx= 8 8 5 R 5 | 8 5 3 R > | R R 5 8 5 | R 3 5 8 5 | R R _5 R 5 | R 5 3 R > | R R 3 5 > | R R 5 8 > | R R 5 >> >
H1 xxx= R R > | R R 3 | R R 5 | R R _5 | 8 8 5 | R 3 5
H2 x=x= R > | R 3 | R 5 | 8 > | R _5
H2 xxx= R R > | R 3 > | R 3 5 | R 5 >

tune coal-barge 1-2: one held over two, a pair hauls up on three and four goes on; the answer comes back in even, clipped blows
S x===xxx= R 5 8 > | 8 5 R > | R R 5 8 | R _5 R 5 | R 3 5 > | R R 3 5 | R 5 3 > | R R 5 3 | 8 5 3 > | R 5 R _5 | R R 5 > | 5 8 5 R !co | 5 8 10 8 !co
A x-x-x-x= 8 8 5 R | R R 5 3 | R 5 R _5 | 8 8 5 3 | R 5 3 R | R _5 R 5 | R R 5 8 | R R _5 R | 5 5 3 R !co
S x===xxx= R 5 8 > | 8 5 R > | R R 5 8 | R _5 R 5 | R 3 5 > | R R 3 5 | R 5 3 > | R R 5 3 | 8 5 3 > | R 5 R _5 | R R 5 > | 5 8 5 R !co | 5 8 10 8 !co
C x=----x= R 5 | R 3 | R 8 | 8 3 | 5 R !co | 5 8 !co
S x===xxx= R 5 8 > | 8 5 R > | R R 5 8 | R _5 R 5 | R 3 5 > | R R 3 5 | R 5 3 > | R R 5 3 | 8 5 3 > | R 5 R _5 | R R 5 > | 5 8 5 R !co | 5 8 10 8 !co
A x-x-x-x= 8 8 5 R | R R 5 3 | R 5 R _5 | 8 8 5 3 | R 5 3 R | R _5 R 5 | R R 5 8 | R R _5 R | 5 5 3 R !co
L x===xxx= 8 10 8 > | R 5 8 > | 8 5 8 > | 8 8 10 > | R 3 5 > | 8 5 R > | R _5 R 5 | R 3 5 8 | 5 8 10 > !co | 5 8 5 R !co
T x=x-xxx= 8 8 5 R 5 | 8 5 3 R > | R R 5 8 5 | R 3 5 8 5 | R R _5 R 5 | R 5 3 R > | R R 3 5 > | R R 5 8 > | R R 5 >> >
H1 x=x= R > | R 3 | R 5 | R _5 | 8 5
H2 xxx= R R > | R 3 > | R 5 > | R 3 5 | R R 5 | R R _5 | 8 5 >

tune long-march 3-5: root, and then fifth, seventh and fifth in quarters and off-beats, an arch one can sing; the answer has the same beat and comes down the same notes
S x=-xx=-x R 5 c 5 | R _5 _c _5 | R 5 c > | R _5 _c > | R 5 3 > | R 5 8 5 | R _5 R > | 8 5 c > | 5 8 c 5 !co | 5 c 5 > !co
A x=-xx=-x 8 c 5 3 | 8 c 5 > | R _c _5 > | R _c _5 _3 | 8 5 3 > | R c 5 3 | R 5 3 > | R c 5 > | 5 c 5 3 !co | 5 4 3 > !co
S x=-xx=-x R 5 c 5 | R _5 _c _5 | R 5 c > | R _5 _c > | R 5 3 > | R 5 8 5 | R _5 R > | 8 5 c > | 5 8 c 5 !co | 5 c 5 > !co
C x=----xx R >> > | R 5 > | R 2 3 | R _5 > | R 5 6 | R 3 > | R _5 _6 | 8 5 > | 8 c > | 5 >> > !co | 5 4 3 !co
S x=-xx=-x R 5 c 5 | R _5 _c _5 | R 5 c > | R _5 _c > | R 5 3 > | R 5 8 5 | R _5 R > | 8 5 c > | 5 8 c 5 !co | 5 c 5 > !co
A x=-xx=-x 8 c 5 3 | 8 c 5 > | R _c _5 > | R _c _5 _3 | 8 5 3 > | R c 5 3 | R 5 3 > | R c 5 > | 5 c 5 3 !co | 5 4 3 > !co
L x=-xx=-x 8 10 8 c | 8 9 10 8 | R 5 8 > | 8 10 8 > | R c 8 c | R 5 8 5 | R 3 5 8 | 5 8 10 8 !co
T x=-xx=xx R 5 c >> > | R _5 _c >> > | R 5 5 6 7 | R _5 _5 _6 _7 | R 3 5 >> > | R 5 3 >> > | 8 c 5 >> > | R _c R >> > | R 3 4 5 >
H1 x=-x R 5 | R > | R 3 | R _5 | R _c | 8 c
H2 x=-x R > | R 5 | R 3 | 8 c
H2 x=xx R >> > | R 3 > | R 5 > | 8 c 5

tune red-lamp 3-5: octave, seventh and fifth in three level quarters and air; the answer sits on the low root and climbs from three
S x=x=x--- 8 c 5 | R _c _5 | R c 5 | R _c R | 8 5 3 | R 5 3 | R 5 c | R _5 _3 | 5 c 5 !co | 5 4 3 !co
A x===xxxx R 3 4 5 > | R 3 5 >> > | R R 3 4 5 | R _5 _5 _6 _7 | R R 3 >> > | R 5 3 >> > | R _5 R >> > | 8 c 5 >> > | 3 4 5 >> > !co | 5 4 3 >> > !co
S x=x=x--- 8 c 5 | R _c _5 | R c 5 | R _c R | 8 5 3 | R 5 3 | R 5 c | R _5 _3 | 5 c 5 !co | 5 4 3 !co
C x=----xx R >> > | R 5 > | R 2 3 | R _5 > | R 5 6 | R 3 > | R _5 _6 | 8 5 > | 8 c > | 5 >> > !co | 5 4 3 !co
S x=x=x--- 8 c 5 | R _c _5 | R c 5 | R _c R | 8 5 3 | R 5 3 | R 5 c | R _5 _3 | 5 c 5 !co | 5 4 3 !co
A x===xxxx R 3 4 5 > | R 3 5 >> > | R R 3 4 5 | R _5 _5 _6 _7 | R R 3 >> > | R 5 3 >> > | R _5 R >> > | 8 c 5 >> > | 3 4 5 >> > !co | 5 4 3 >> > !co
L x=x=x--- 8 10 8 | 8 c 8 | R 5 8 | 8 8 10 | R c 8 | R 3 8 | 8 10 9 | 5 8 10 !co
T x===xxxx R 3 5 >> > | R 3 4 5 > | R 5 5 6 7 | R _5 _5 _6 _7 | R 5 3 >> > | R R 3 >> > | R _5 _6 >> > | 8 c 5 >> > | 8 5 3 >> >
H1 x=x= R > | R _c | R 5 | R 3 | 8 c
H2 xxxx R R >> > | R 3 >> > | R 3 4 5 | R 5 >> > | R _5 >> > | 8 c 5 >
H2 x--- R | 8

tune round-the-yard 3-5: a long root, then fourth, third and root wind down round three, and air; the answer says it a third higher and leads
S x=-xxx-- R 4 3 R | R 4 3 5 | R 6 5 3 | R _6 _5 R | R 5 3 R | 8 6 5 3 | R 2 3 R | R 4 3 4 | 5 4 3 R !co | 5 6 5 3 !co
A x=-xx=xx R 6 5 >> > | 8 6 5 >> > | R _6 _5 >> > | R 4 3 >> > | 8 c 5 >> > | R 6 5 4 3 | 8 6 5 4 3 | 8 5 3 >> > | 5 4 3 >> > !co | 5 6 5 >> > !co
S x=-xxx-- R 4 3 R | R 4 3 5 | R 6 5 3 | R _6 _5 R | R 5 3 R | 8 6 5 3 | R 2 3 R | R 4 3 4 | 5 4 3 R !co | 5 6 5 3 !co
C x=----xx R >> > | R 5 > | R 2 3 | R _5 > | R 5 6 | R 3 > | R _5 _6 | 8 5 > | 8 c > | 5 >> > !co | 5 4 3 !co
S x=-xxx-- R 4 3 R | R 4 3 5 | R 6 5 3 | R _6 _5 R | R 5 3 R | 8 6 5 3 | R 2 3 R | R 4 3 4 | 5 4 3 R !co | 5 6 5 3 !co
A x=-xx=xx R 6 5 >> > | 8 6 5 >> > | R _6 _5 >> > | R 4 3 >> > | 8 c 5 >> > | R 6 5 4 3 | 8 6 5 4 3 | 8 5 3 >> > | 5 4 3 >> > !co | 5 6 5 >> > !co
L x=-xxx-- 8 11 10 8 | 8 9 10 8 | R 5 8 10 | 8 9 8 5 | R 6 8 5 | R 6 8 10 | R 3 5 8 | 5 9 8 5 !co
T x=-xx=xx R 4 3 >> > | R 3 5 >> > | R 5 5 6 7 | R _5 _5 _6 _7 | R 4 5 >> > | R 5 3 >> > | R _6 _5 >> > | 8 6 5 >> > | 8 c 5 >> >
H1 x=-x R > | R 4 | R 3 | R 5 | R _7 | 8 c
H2 xxx- R 3 R | R 3 > | R 5 3 | R R >
H2 x=xx R >> > | R 3 > | R 5 > | 8 c 5 | R _5 >

tune under-the-arch 3-5: half a bar of root, then two slow steps up; every second bar falls by two and turns the last step into a pair that leads
S x==-x-x= R 3 5 | R _5 _c | R 5 > | R 3 > | R 5 c | R _5 > | R 5 4 | 8 c > | 3 5 > !co | 5 c 5 !co
A x==-x-xx 8 5 >> > | 8 5 4 3 | R _5 >> > | 8 c 5 > | R 5 4 3 | R 5 >> > | R _5 _6 _7 | R 3 >> > | 5 4 3 > !co | 5 3 >> > !co
S x==-x-x= R 3 5 | R _5 _c | R 5 > | R 3 > | R 5 c | R _5 > | R 5 4 | 8 c > | 3 5 > !co | 5 c 5 !co
C x==-x-xx R 3 >> > | R 5 3 > | R _5 >> > | R R >> > | R 3 R > | 8 5 3 > | R _c R > | 5 3 R > !co
S x==-x-x= R 3 5 | R _5 _c | R 5 > | R 3 > | R 5 c | R _5 > | R 5 4 | 8 c > | 3 5 > !co | 5 c 5 !co
A x==-x-xx 8 5 >> > | 8 5 4 3 | R _5 >> > | 8 c 5 > | R 5 4 3 | R 5 >> > | R _5 _6 _7 | R 3 >> > | 5 4 3 > !co | 5 3 >> > !co
L x==-x-x= 8 10 9 | R 5 8 | 8 10 8 | R 8 c | 8 10 > | R 8 10 | 8 c 8 | R 8 > | 5 8 10 !co
T x==-x-xx R 5 6 7 | R 3 >> > | R 5 >> > | R _5 _6 _7 | R _5 >> > | R 3 5 > | R 3 4 5 | 8 5 >> > | 8 c 5 >
H1 x==- R | 8
H2 x-x= R > | R 3 | R 5 | R _5 | 8 c
H2 x-xx R >> > | R 3 > | R 5 >

tune tunnel-light 3-5: a pair on one, a jab after two, three, and the rest is dark; the answer keeps pair and jab and speaks late, on four
S xx-xx--- R R c 5 | R R _c R | R R _c _5 | R R 5 3 | R R 3 5 | 8 8 c 5 | R R 4 3 | 8 8 5 3 | 5 5 c 5 !co | 5 5 4 3 !co
A xx-x--xx R R 3 4 5 | R R 3 5 > | R R 5 >> > | R R _5 >> > | R R 3 >> > | R R _5 _6 _7 | R R 5 3 > | 8 8 5 >> > | 8 8 c 5 > | 5 5 3 4 > !co | 5 5 4 3 > !co
S xx-xx--- R R c 5 | R R _c R | R R _c _5 | R R 5 3 | R R 3 5 | 8 8 c 5 | R R 4 3 | 8 8 5 3 | 5 5 c 5 !co | 5 5 4 3 !co
C xx----xx R R >> > | R R 5 > | R R 2 3 | R R _5 > | R R 5 6 | R R 3 > | R R _5 _6 | 8 8 5 > | 8 8 c > | 5 5 >> > !co | 5 5 4 3 !co
S xx-xx--- R R c 5 | R R _c R | R R _c _5 | R R 5 3 | R R 3 5 | 8 8 c 5 | R R 4 3 | 8 8 5 3 | 5 5 c 5 !co | 5 5 4 3 !co
A xx-x--xx R R 3 4 5 | R R 3 5 > | R R 5 >> > | R R _5 >> > | R R 3 >> > | R R _5 _6 _7 | R R 5 3 > | 8 8 5 >> > | 8 8 c 5 > | 5 5 3 4 > !co | 5 5 4 3 > !co
L xx-xx--- 8 8 10 8 | R R 5 8 | 8 8 9 10 | R R c 8 | 8 8 c 8 | 8 8 7 8 | R R 3 8 | 5 5 8 10 !co
T xx-x--xx R R 5 6 7 | R R 5 >> > | R R 3 >> > | R R _5 _6 _7 | R R 3 5 > | R R _5 >> > | 8 8 5 >> > | 8 8 c 5 > | R R 3 4 5
H1 xx-x R R > | R R 3 | R R 5 | R R _c | 8 8 c
H2 x--- R | 8
H2 x-xx R >> > | R 3 > | R 5 > | R _5 _6
`;
