/** Rockers: tunes of eight bars (see the notation beside the books). */
export const ROCKERS_TUNES = `
tune market-day 1-2: a pair on one, a pair on three that climbs and a four that leads; the answer has its pair on four and comes down
S xx--xxx= R R 5 8 > | 8 8 5 R > | R R 5 3 > | R R 3 5 > | 8 8 5 3 > | R R R 5 8 | R R R 3 5 | R R 5 R > | R R _5 R > | 5 5 8 5 R !co | 3 3 5 8 > !co
A xx--x=xx 8 8 8 5 R | R R 5 3 > | 8 8 5 R > | R R 5 3 R | 8 8 5 3 > | R R 5 R _5 | R R 5 8 > | R R 3 5 8 | R R R _5 R | 5 5 8 5 R !co | 5 5 3 R > !co
S xx--xxx= R R 5 8 > | 8 8 5 R > | R R 5 3 > | R R 3 5 > | 8 8 5 3 > | R R R 5 8 | R R R 3 5 | R R 5 R > | R R _5 R > | 5 5 8 5 R !co | 3 3 5 8 > !co
C xx----x= R R 5 | 8 8 5 | R 5 8 | R R 3 | 8 8 3 | R 3 > | 5 5 R !co | 5 8 5 !co
S xx--xxx= R R 5 8 > | 8 8 5 R > | R R 5 3 > | R R 3 5 > | 8 8 5 3 > | R R R 5 8 | R R R 3 5 | R R 5 R > | R R _5 R > | 5 5 8 5 R !co | 3 3 5 8 > !co
A xx--x=xx 8 8 8 5 R | R R 5 3 > | 8 8 5 R > | R R 5 3 R | 8 8 5 3 > | R R 5 R _5 | R R 5 8 > | R R 3 5 8 | R R R _5 R | 5 5 8 5 R !co | 5 5 3 R > !co
L xx--xxx= 8 8 10 8 > | R R 5 8 > | 8 8 8 10 > | R R 3 5 8 | 8 8 5 R > | R R _5 R 5 | R R R 5 8 | R R 3 5 > | R R 5 R > | 5 5 8 10 > !co | 5 5 8 5 R !co
T xx--xxx= R R 5 8 5 | 8 8 5 R 5 | R R 5 3 > | R 3 5 8 5 | R R 3 5 > | R R _5 R 5 | 8 8 5 3 > | R R 5 8 > | R R 5 >> > | R R 3 >> >
H1 xx-- R R | 8 8
H1 xxx= R R > | R R 5 | R R 3
H2 xxx= R R > | R 3 > | R 5 > | R 3 5 | R R 5 | R R 3 | R R _5 | 8 5 >

tune tin-roof 1-2: a pair on the one, a weighty three and four; the answer fills three with a pair and turns the other way
S xx--x=x= R R _5 R | R R 3 5 | R R 5 3 | R R 5 8 | 8 8 5 R | 8 8 5 3 | R 3 5 > | 3 3 5 8 !co | 5 5 3 R !co
A xx--xxx= 8 8 5 R > | R R 5 3 > | 8 8 5 3 > | R R 5 8 > | R R 5 3 R | R R 5 R _5 | R R R 5 8 | R R 3 5 8 | R R 5 R > | 5 5 8 5 R !co | 5 5 3 R > !co
S xx--x=x= R R _5 R | R R 3 5 | R R 5 3 | R R 5 8 | 8 8 5 R | 8 8 5 3 | R 3 5 > | 3 3 5 8 !co | 5 5 3 R !co
C xx----x= R R 5 | 8 8 5 | R 5 8 | R R _5 | R R 3 | R 3 > | R _5 R | 5 5 R !co | 5 8 5 !co
S xx--x=x= R R _5 R | R R 3 5 | R R 5 3 | R R 5 8 | 8 8 5 R | 8 8 5 3 | R 3 5 > | 3 3 5 8 !co | 5 5 3 R !co
A xx--xxx= 8 8 5 R > | R R 5 3 > | 8 8 5 3 > | R R 5 8 > | R R 5 3 R | R R 5 R _5 | R R R 5 8 | R R 3 5 8 | R R 5 R > | 5 5 8 5 R !co | 5 5 3 R > !co
L xx--x=x= 8 8 10 8 | R R 5 8 | 8 8 10 > | R R 3 5 | R 5 8 > | 8 8 5 R | R _5 R 5 | R 3 5 8 | R R 5 > | 5 5 8 10 !co | 5 5 3 R !co
T xx--xxx= R R 5 8 5 | 8 8 5 R 5 | R R 5 3 > | R 3 5 8 5 | R R 3 5 > | R R _5 R 5 | 8 8 5 3 > | R R 5 8 > | R R 5 >> > | R R 3 >> >
H1 xx-- R R | 8 8
H1 xxx= R R > | R R 5 | R R 3
H2 x=x= R > | R 3 | R 5 | 8 > | 8 5 | R _5
H2 xxx= R R > | R 3 > | R 3 5

tune short-fuse 1-2: a pair and a third blow on two, air, and four alone; the answer leaves two empty and runs from three
S xxx---x= R R 5 8 | R R 3 5 | 8 8 5 R | R R 5 3 | R 5 8 > | R 3 5 > | 8 8 5 3 | R R 5 > | R R _5 R | 5 5 3 R !co | 3 3 5 8 !co
A xx--xxx= 8 8 8 5 R | R R 5 3 > | 8 8 5 R > | R R 5 3 R | 8 8 5 3 > | R R 5 R _5 | R R 5 8 > | R R 3 5 8 | R R R _5 R | 5 5 8 5 R !co | 5 5 3 R > !co
S xxx---x= R R 5 8 | R R 3 5 | 8 8 5 R | R R 5 3 | R 5 8 > | R 3 5 > | 8 8 5 3 | R R 5 > | R R _5 R | 5 5 3 R !co | 3 3 5 8 !co
C xx----x= R R 5 | 8 8 5 | R 5 8 | R R 3 | 8 8 3 | R 3 > | 5 5 R !co | 5 8 5 !co
S xxx---x= R R 5 8 | R R 3 5 | 8 8 5 R | R R 5 3 | R 5 8 > | R 3 5 > | 8 8 5 3 | R R 5 > | R R _5 R | 5 5 3 R !co | 3 3 5 8 !co
A xx--xxx= 8 8 8 5 R | R R 5 3 > | 8 8 5 R > | R R 5 3 R | 8 8 5 3 > | R R 5 R _5 | R R 5 8 > | R R 3 5 8 | R R R _5 R | 5 5 8 5 R !co | 5 5 3 R > !co
L xxx---x= 8 8 10 8 | R R 5 8 | 8 8 10 > | R R 3 5 | R 5 8 > | 8 8 5 R | R _5 R 5 | R 3 5 8 | R R 5 > | 5 5 8 10 !co | 5 5 3 R !co
T xx--xxx= R R 5 8 5 | 8 8 5 R 5 | R R 5 3 > | R 3 5 8 5 | R R 3 5 > | R R _5 R 5 | 8 8 5 3 > | R R 5 8 > | R R 5 >> > | R R 3 >> >
H1 xxx- R R > | R R 5 | R R 3 | R R _5 | 8 8 5
H1 xx-- R R | 8 8
H2 xxx= R R > | R 3 > | R 5 > | R 3 5 | R R 5 | R R _5
H2 x=x= R > | R 3 | R 5

tune upstairs-room 1-2: a pair on one and a stair from three that ends high; the answer is shorter and stands on three
S xx--xxx= R R R 5 8 | R R 5 8 > | R R 3 5 8 | R R R 3 5 | 8 8 5 R > | R R 3 5 > | R R 5 3 > | 8 8 5 3 > | R R 5 R > | R R _5 R > | 5 5 8 5 R !co | 3 3 5 8 > !co
A xx--x=x= 8 8 5 R | R R 5 3 | R 5 R _5 | 8 8 5 3 | R 5 3 R | R _5 R 5 | R R 5 8 | R R _5 R | 5 5 3 R !co
S xx--xxx= R R R 5 8 | R R 5 8 > | R R 3 5 8 | R R R 3 5 | 8 8 5 R > | R R 3 5 > | R R 5 3 > | 8 8 5 3 > | R R 5 R > | R R _5 R > | 5 5 8 5 R !co | 3 3 5 8 > !co
C xx----x= R R 5 | 8 8 5 | R 5 8 | R R 3 | 8 8 3 | R 3 > | 5 5 R !co | 5 8 5 !co
S xx--xxx= R R R 5 8 | R R 5 8 > | R R 3 5 8 | R R R 3 5 | 8 8 5 R > | R R 3 5 > | R R 5 3 > | 8 8 5 3 > | R R 5 R > | R R _5 R > | 5 5 8 5 R !co | 3 3 5 8 > !co
A xx--x=x= 8 8 5 R | R R 5 3 | R 5 R _5 | 8 8 5 3 | R 5 3 R | R _5 R 5 | R R 5 8 | R R _5 R | 5 5 3 R !co
L xx--xxx= 8 8 10 8 > | R R 5 8 > | 8 8 8 10 > | R R 3 5 8 | 8 8 5 R > | R R _5 R 5 | R R R 5 8 | R R 3 5 > | R R 5 R > | 5 5 8 10 > !co | 5 5 8 5 R !co
T xx--x=xx R R 5 8 5 | 8 8 5 R 5 | R R 5 3 > | R 3 5 8 5 | R R 3 5 > | R R _5 R 5 | 8 8 5 3 > | R R 5 8 > | R R 5 >> > | R R 3 >> >
H1 xx-- R R | 8 8
H1 xxx= R R > | R R 5 | R R 3
H2 xxx= R R > | R 3 > | R 5 > | R 3 5 | R R 5 | R R 3 | R R _5 | 8 5 >

tune paper-lantern 1-2: a pair on one, one long tone on three and a pair on four that leads; the answer has its third blow on two and waits for four
S xx--x=xx R R _5 R 5 | R R 5 3 > | R R 3 5 > | R R 5 8 > | 8 8 5 R > | R R _5 R > | 8 8 5 3 > | 5 5 8 5 R !co | 3 3 5 8 > !co
A xxx---x= 8 8 5 R | R R 5 3 | R R 5 8 | R R 3 5 | 8 8 5 3 | R R 5 > | R R _5 R | 5 5 3 > !co | 5 5 3 R !co
S xx--x=xx R R _5 R 5 | R R 5 3 > | R R 3 5 > | R R 5 8 > | 8 8 5 R > | R R _5 R > | 8 8 5 3 > | 5 5 8 5 R !co | 3 3 5 8 > !co
C xx----x= R R 5 | 8 8 5 | R 5 8 | R R _5 | R R 3 | R 3 > | R _5 R | 5 5 R !co | 5 8 5 !co
S xx--x=xx R R _5 R 5 | R R 5 3 > | R R 3 5 > | R R 5 8 > | 8 8 5 R > | R R _5 R > | 8 8 5 3 > | 5 5 8 5 R !co | 3 3 5 8 > !co
A xxx---x= 8 8 5 R | R R 5 3 | R R 5 8 | R R 3 5 | 8 8 5 3 | R R 5 > | R R _5 R | 5 5 3 > !co | 5 5 3 R !co
L xx--x=xx 8 8 10 8 > | R R 5 8 > | 8 8 8 10 > | R R 3 5 8 | 8 8 5 R > | R R _5 R 5 | R R R 5 8 | R R 3 5 > | R R 5 R > | 5 5 8 10 > !co | 5 5 8 5 R !co
T xx--xxx= R R 5 8 5 | 8 8 5 R 5 | R R 5 3 > | R 3 5 8 5 | R R 3 5 > | R R _5 R 5 | 8 8 5 3 > | R R 5 8 > | R R 5 >> > | R R 3 >> >
H1 xx-- R R | 8 8
H1 xxx= R R > | R R 5 | R R 3
H2 xxx= R R > | R 3 > | R 5 > | R 3 5 | R R 5 | R R 3 | R R _5 | 8 5 >

tune ground-floor 3-5: pairs on one and three with a tail that steps; every second tail closes round the next root
S xx--xxx= R R R 2 3 | R R 3 4 5 | R R 5 6 5 | R R 5 4 3 | R R 3 5 6 | R R R _7 _6 | R R _5 _6 _7 | R R 3 2 R | R R 3 5 > | R R _7 R 2 | 8 8 c 5 3 | 8 8 5 4 3 | 8 8 7 6 5 | 3 3 4 5 > !co | 5 5 4 3 > !co
A xx--x=xx R R 5 >> > | R R 3 >> > | 8 8 5 >> > | 8 8 c 5 > | R R _5 >> > | R R 5 4 3 | R R R >> > | R R R _7 _6 | R R R 2 3 | R R 3 5 > | 5 5 3 >> > !co | 5 5 4 3 > !co
S xx--xxx= R R R 2 3 | R R 3 4 5 | R R 5 6 5 | R R 5 4 3 | R R 3 5 6 | R R R _7 _6 | R R _5 _6 _7 | R R 3 2 R | R R 3 5 > | R R _7 R 2 | 8 8 c 5 3 | 8 8 5 4 3 | 8 8 7 6 5 | 3 3 4 5 > !co | 5 5 4 3 > !co
C xx----xx R R >> > | R R 5 > | R R 2 3 | R R _5 > | R R 5 6 | R R 3 > | R R _5 _6 | 8 8 5 > | 8 8 c > | 5 5 >> > !co | 5 5 4 3 !co
S xx--xxx= R R R 2 3 | R R 3 4 5 | R R 5 6 5 | R R 5 4 3 | R R 3 5 6 | R R R _7 _6 | R R _5 _6 _7 | R R 3 2 R | R R 3 5 > | R R _7 R 2 | 8 8 c 5 3 | 8 8 5 4 3 | 8 8 7 6 5 | 3 3 4 5 > !co | 5 5 4 3 > !co
A xx--x=xx R R 3 >> > | 8 8 5 >> > | R R 5 >> > | 8 8 c 5 > | R R _5 >> > | R R 5 4 3 | R R R >> > | R R R _7 _6 | R R R 2 3 | R R 3 5 > | 5 5 3 >> > !co | 5 5 4 3 > !co
L xx--xxx= 8 8 8 9 10 | 8 8 10 9 8 | R R 5 6 8 | R R 3 5 8 | 8 8 9 8 5 | R R 5 8 > | 8 8 c 5 > | R R 3 5 6 | 5 5 6 8 > !co | 5 5 8 9 10 !co
T xx--x=xx R R 5 >> > | R R 3 >> > | R R _5 >> > | R R R 2 3 | 8 8 5 >> > | R R _5 _6 _7 | R R 3 5 > | R R 5 6 > | 8 8 c 5 > | R R 5 3 >
H1 xx-- R R | 8 8
H2 xxx= R R > | R 2 3 | R 3 5 | R 3 > | R 5 > | R _7 _6 | 8 c 5
H2 x=xx R >> > | R 2 3 | 8 >> >

tune loose-gravel 3-5: a pair on one, a pushed eighth into three; air on four, and a tail in every second bar
S xx-xx=-- R R 5 3 | R R 2 3 | R R 3 5 | R R c 5 | R R _7 R | R R 5 6 | R R _5 R | R R 3 R | R R 5 4 | R R _7 _6 | 8 8 c 5 | 8 8 5 3 | R R 5 8 | 3 3 4 5 !co | 5 5 4 3 !co
A xx-xx=xx 8 8 c 5 >> > | 8 8 5 3 >> > | R R 5 3 >> > | R R 2 3 >> > | R R 3 5 >> > | R R _7 R >> > | R R _7 _6 _5 > | R R _5 R >> > | 8 8 c 5 4 3 | R R _5 R 2 3 | 5 5 4 3 >> > !co | 5 5 3 R >> > !co
S xx-xx=-- R R 5 3 | R R 2 3 | R R 3 5 | R R c 5 | R R _7 R | R R 5 6 | R R _5 R | R R 3 R | R R 5 4 | R R _7 _6 | 8 8 c 5 | 8 8 5 3 | R R 5 8 | 3 3 4 5 !co | 5 5 4 3 !co
C xx-xx=-- R R _7 R | R R 2 R | R R 3 R | R R _5 R | R R 5 3 | 8 8 5 3 | R R R 5 | R R _5 _6 | 5 5 3 R !co | 3 3 2 R !co
S xx-xx=-- R R 5 3 | R R 2 3 | R R 3 5 | R R c 5 | R R _7 R | R R 5 6 | R R _5 R | R R 3 R | R R 5 4 | R R _7 _6 | 8 8 c 5 | 8 8 5 3 | R R 5 8 | 3 3 4 5 !co | 5 5 4 3 !co
A xx-xx=xx 8 8 5 3 >> > | 8 8 c 5 >> > | 8 8 9 8 >> > | R R 5 3 >> > | R R 2 3 >> > | R R 3 5 >> > | R R _7 R >> > | R R _7 _6 _5 > | R R _5 R 2 3 | 5 5 6 5 >> > !co | 5 5 4 3 >> > !co
L xx-xx=-- 8 8 9 10 | 8 8 10 8 | R R 5 8 | 8 8 7 8 | R R 3 5 | 8 8 c 5 | R R c 8 | 8 8 10 9 | 5 5 6 8 !co | 5 5 8 10 !co
T xx-xx=xx R R 2 3 >> > | R R 3 5 >> > | R R 5 3 >> > | R R _7 R >> > | R R _5 R >> > | 8 8 c 5 >> > | 8 8 5 3 >> > | R R _5 R 2 3 | R R R _5 _6 _7 | R R 3 5 6 >
H1 xx-x R R > | R R 2 | R R 3 | R R 5 | R R _7 | 8 8 c
H2 x=-- R | 8
H2 x=xx R >> > | R 2 3 | R 3 > | R 5 > | 8 c 5 | R _5 >

tune back-lane 3-5: two short pairs with air after each, the last eighth of every second bar pushes on
S xx--xx-- R R 2 3 | R R 3 5 | R R 5 3 | R R 5 4 | R R 5 6 | R R _7 _6 | R R _5 _6 | R R _7 R | R R 3 2 | R R 5 8 | 8 8 c 5 | 8 8 5 3 | 3 3 4 5 !co | 5 5 4 3 !co
A xx--xx-x 8 8 c 5 > | 8 8 5 3 > | R R 5 3 > | R R 3 5 > | R R _7 R > | R R _5 R > | R R 5 4 3 | R R 2 3 > | R R _7 _6 > | R R _5 _6 > | 5 5 4 3 > !co | 5 5 3 R > !co
S xx--xx-- R R 2 3 | R R 3 5 | R R 5 3 | R R 5 4 | R R 5 6 | R R _7 _6 | R R _5 _6 | R R _7 R | R R 3 2 | R R 5 8 | 8 8 c 5 | 8 8 5 3 | 3 3 4 5 !co | 5 5 4 3 !co
C xx----xx R R >> > | R R 5 > | R R 2 3 | R R _5 > | R R 5 6 | R R 3 > | R R _5 _6 | 8 8 5 > | 8 8 c > | 5 5 >> > !co | 5 5 4 3 !co
S xx--xx-- R R 2 3 | R R 3 5 | R R 5 3 | R R 5 4 | R R 5 6 | R R _7 _6 | R R _5 _6 | R R _7 R | R R 3 2 | R R 5 8 | 8 8 c 5 | 8 8 5 3 | 3 3 4 5 !co | 5 5 4 3 !co
A xx--xx-x 8 8 5 3 > | R R 5 3 > | 8 8 c 5 > | R R 3 5 > | R R _7 R > | R R _5 R > | R R 5 4 3 | R R 2 3 > | R R _7 _6 > | R R _5 _6 > | 5 5 4 3 > !co | 5 5 3 R > !co
L xx--xx-- 8 8 9 10 | 8 8 10 8 | R R 5 8 | 8 8 7 8 | 8 8 c 5 | 8 8 5 8 | R R 3 5 | R R 5 6 | 5 5 6 8 !co | 5 5 8 10 !co
T xx--xxxx R R 3 5 >> > | R R 2 3 >> > | R R 5 6 >> > | R R _5 _6 >> > | R R 5 3 >> > | 8 8 c 5 >> > | 8 8 5 3 >> > | R R _5 _6 _7 > | R R R R 2 3 | R R R 5 >> >
H1 xx-- R R | 8 8
H2 xx-- R 3 | R 2 | R R | R 5
H2 xx-x R 3 > | R R > | R 5 > | R 2 3 | 8 c 5 | R _5 >

tune short-stop 3-5: cut short on one and again on the and of two, long on three, four steps on
S x--xx=x= R R 3 5 | R R 2 3 | R R 5 > | R c 5 3 | R 5 4 3 | R R 3 > | R 2 3 5 | R _7 R 2 | R _7 _6 _5 | R _5 R > | R 5 6 > | 8 8 5 3 | 8 c 5 > | 3 4 5 > !co | 5 4 3 > !co
A x--xx=xx 8 8 5 >> > | 8 c 5 >> > | R R 3 >> > | R R 5 >> > | R 5 3 >> > | R _7 R >> > | R _5 R >> > | R _7 _6 _5 > | R R 5 4 3 | R R _5 _6 _7 | 5 4 3 >> > !co | 5 3 R >> > !co
S x--xx=x= R R 3 5 | R R 2 3 | R R 5 > | R c 5 3 | R 5 4 3 | R R 3 > | R 2 3 5 | R _7 R 2 | R _7 _6 _5 | R _5 R > | R 5 6 > | 8 8 5 3 | 8 c 5 > | 3 4 5 > !co | 5 4 3 > !co
C x-----xx R R > | R 5 > | R >> > | R _7 > | 8 5 > | 5 4 > !co
S x--xx=x= R R 3 5 | R R 2 3 | R R 5 > | R c 5 3 | R 5 4 3 | R R 3 > | R 2 3 5 | R _7 R 2 | R _7 _6 _5 | R _5 R > | R 5 6 > | 8 8 5 3 | 8 c 5 > | 3 4 5 > !co | 5 4 3 > !co
A x--xx=xx 8 c 5 >> > | R R 3 >> > | 8 8 5 >> > | R R 5 >> > | R 5 3 >> > | R _7 R >> > | R _5 R >> > | R _7 _6 _5 > | R R 5 4 3 | R R _5 _6 _7 | 5 4 3 >> > !co | 5 3 R >> > !co
L x--xx=x= 8 8 10 9 | 8 8 9 10 | R R 5 8 | 8 10 8 > | R 5 8 > | 8 7 8 > | R 3 5 8 | 8 c 5 > | R R 3 5 | 5 6 8 > !co | 5 8 10 > !co
T x--xx=xx R R 3 >> > | R R 5 >> > | R 3 5 >> > | R R _5 >> > | R 2 3 >> > | 8 8 5 >> > | 8 c 5 >> > | R R _5 _6 _7 | R R R 2 3 | R R 5 6 > | R 5 3 >> >
H1 x--x R > | R R | R 2 | R 3 | R 5 | R _7 | 8 c
H2 x=x= R > | R 3 | R 2 | R 5 | 8 > | R _5
H2 x=xx R >> > | 8 >> >
`;
