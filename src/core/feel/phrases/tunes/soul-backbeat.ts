/** Soul backbeat: tunes of eight bars (see the notation beside the books). */
export const SOUL_BACKBEAT_TUNES = `
tune kick-and-answer 1-2: one, the push and three go up; the same cell comes down and adds a note before the bar line
S x==xx--- R 3 5 | R 5 8 | R R 5 | R 5 5 | R 3 3 | R 5 3 | R _5 R | R R 3 | 3 5 8 !co | 5 5 8 !co
A x==xx=x= 8 5 3 > | 8 5 R > | R 5 3 > | R _5 R > | R 5 R > | 8 5 3 R | 8 5 3 5 | R 5 5 > | 5 3 R > !co | R R 3 >
S x==xx--- R 3 5 | R 5 8 | R R 5 | R 5 5 | R 3 3 | R 5 3 | R _5 R | R R 3 | 3 5 8 !co | 5 5 8 !co
C x==xx=x= R 5 R > | R _5 R > | 8 5 R > | R 5 3 > | R R R > | R 5 3 R | 8 5 3 R | R 3 R > | 5 3 R > !co
S x==xx--- R 3 5 | R 5 8 | R R 5 | R 5 5 | R 3 3 | R 5 3 | R _5 R | R R 3 | 3 5 8 !co | 5 5 8 !co
A x==xx=x= 8 5 3 > | 8 5 R > | R 5 3 > | R _5 R > | R 5 R > | 8 5 3 R | 8 5 3 5 | R 5 5 > | 5 3 R > !co | R R 3 >
L x==xx--- R 5 8 | 8 10 8 | 8 5 8 | R 3 8 | 8 8 10 | R 8 8 | R 8 5 | 5 8 10 !co
T x==xx=x= R 3 5 > | R R 5 > | R 5 R > | R _5 R > | 8 5 R > | R 5 3 > | 8 5 3 > | R 5 8 >
H1 x==x R 5 | R 3 | R R | R > | 8 5
H2 x=-- R | 8
H2 x=x= R > | R 5 | R 3 | R R | 8 >

tune lamplighter 1-2: comes down from the octave onto three, bar after bar; every fourth bar picks up into the next
S x==xx=-- 8 5 R | 8 5 3 | R _5 R | R 5 R | R 5 3 | R R _5 | 8 8 5 | R R R | 5 3 R !co | 8 3 R
A x==xx=-- R 5 8 | R 3 5 | R R 5 | R 5 5 | R _5 R | R 3 3 | R R 3 | R 5 3 | 3 5 8 !co | R R R
S x==xx=-- 8 5 R | 8 5 3 | R _5 R | R 5 R | R 5 3 | R R _5 | 8 8 5 | R R R | 5 3 R !co | 8 3 R
C x==xx=x= R 5 R > | 8 5 R > | R _5 R > | R R R > | R 5 3 > | 8 5 3 > | R 3 R > | 5 3 R > !co
S x==xx=-- 8 5 R | 8 5 3 | R _5 R | R 5 R | R 5 3 | R R _5 | 8 8 5 | R R R | 5 3 R !co | 8 3 R
A x==xx=-- R 5 8 | R 3 5 | R R 5 | R 5 5 | R _5 R | R 3 3 | R R 3 | R 5 3 | 3 5 8 !co | R R R
L x==xx=-- 8 8 10 | 8 5 8 | R 5 8 | 8 10 8 | R 8 8 | 8 10 5 | R 3 8 | 5 8 10 !co
T x==xx=x= R R 5 > | R 5 R > | R 3 5 > | R _5 R > | 8 5 R > | 8 5 3 > | R 5 3 > | R R 3 >
H1 x==x 8 5 | R 5 | R R | R 3 | R _5
H2 x=-- R | 8
H2 x=x= R > | R R | R 5 | R 3

tune three-and 1-2: the push and a pair on three make the tune; the answer is the bare cell
S x==xxx-- R R 5 8 | R R 3 5 | R 5 5 8 | R R 5 5 | R 3 3 5 | R R 5 3 | R R _5 R | R 5 5 3 | 3 3 5 8 !co | 5 5 8 5 !co
A x==xx=-- 8 5 R | R 5 R | 8 5 3 | R _5 R | R 5 3 | R R _5 | R R R | 8 8 5 | 5 3 R !co | R 3 R
S x==xxx-- R R 5 8 | R R 3 5 | R 5 5 8 | R R 5 5 | R 3 3 5 | R R 5 3 | R R _5 R | R 5 5 3 | 3 3 5 8 !co | 5 5 8 5 !co
C x==xx=x= R 5 R > | 8 5 R > | R _5 R > | R R R > | R 5 3 > | 8 5 3 > | R 3 R > | 5 3 R > !co
S x==xxx-- R R 5 8 | R R 3 5 | R 5 5 8 | R R 5 5 | R 3 3 5 | R R 5 3 | R R _5 R | R 5 5 3 | 3 3 5 8 !co | 5 5 8 5 !co
A x==xx=-- 8 5 R | R 5 R | 8 5 3 | R _5 R | R 5 3 | R R _5 | R R R | 8 8 5 | 5 3 R !co | R 3 R
L x==xxx-- R 8 8 5 | R R 8 10 | R 5 8 8 | 8 8 10 8 | R 5 8 10 | 8 8 5 8 | R 3 5 8 | 5 5 8 10 !co
T x==xxxx= R R 3 5 > | R R 5 R > | R R _5 R > | 8 8 5 R > | R R 5 3 > | R R R 5 > | 8 8 5 3 > | R R 5 8 >
H1 x==x R R | R 5 | R 3 | R > | 8 8
H2 xx-- R R | R 5 | R 3 | R _5 | 8 5

tune slow-nod 1-2: a long root through the snare and a tone on three; every second bar leads on four
S x===x--- R 5 | R 3 | R _5 | R R | 8 5 | R 8 | 3 5 !co | 5 8 !co
A x===x=x= R 5 > | 8 5 > | R _5 > | R R > | R 3 > | 8 5 3 | R 5 3 | R 5 R | 5 3 > !co | 5 R > !co
S x===x--- R 5 | R 3 | R _5 | R R | 8 5 | R 8 | 3 5 !co | 5 8 !co
C x===x=x= R 5 > | 8 5 > | R _5 > | R R > | R 3 > | 8 5 3 | R 5 3 | R 5 R | 5 3 > !co | 5 R > !co
S x===x--- R 5 | R 3 | R _5 | R R | 8 5 | R 8 | 3 5 !co | 5 8 !co
A x===x=x= 8 5 > | R R > | R 5 > | R _5 > | R 3 > | 8 5 3 | R 5 3 | R 5 R | 5 3 > !co | 5 R > !co
L x===x--- R 8 | 8 5 | 8 10 | 8 8 | R 5 | 10 8 !co | 5 8 !co | 8 3
T x===x=x= R 5 > | R _5 > | R 3 5 | R R > | 8 5 > | R 3 > | R 5 R | 8 5 3
H1 x=x= R > | R 5 | R 3 | R R | 8 5
H2 x=-- R | 8
H2 x=x= R > | R R | R 5 | R 3 | 8 >

tune leaning-door 3-5: one, the push held into three, and one short note out of the hole; the answer walks down off three
S x=-xx=-x R 3 5 > | R 5 6 > | R R 5 > | R 5 c > | R 5 3 > | R R 3 > | R _5 _6 > | R _7 R > | 3 5 6 > !co | 5 6 8 > !co
A x=-xxx-x 8 c 5 3 > | 8 7 6 5 > | 8 5 4 3 > | R 5 3 2 > | R _7 _6 _5 > | 8 5 3 R > | R 3 2 R > | 8 6 5 4 > | 5 4 3 R > !co | R 5 4 3 >
S x=-xx=-x R 3 5 > | R 5 6 > | R R 5 > | R 5 c > | R 5 3 > | R R 3 > | R _5 _6 > | R _7 R > | 3 5 6 > !co | 5 6 8 > !co
C x=-xx=-x R 5 R > | 8 5 R > | R 3 R > | R _5 R > | 8 5 3 > | R R R > | R _7 R > | 5 3 R > !co
S x=-xx=-x R 3 5 > | R 5 6 > | R R 5 > | R 5 c > | R 5 3 > | R R 3 > | R _5 _6 > | R _7 R > | 3 5 6 > !co | 5 6 8 > !co
A x=-xxx-x 8 c 5 3 > | 8 7 6 5 > | 8 5 4 3 > | R 5 3 2 > | R _7 _6 _5 > | 8 5 3 R > | R 3 2 R > | 8 6 5 4 > | 5 4 3 R > !co | R 5 4 3 >
L x=-xx=-x 8 9 10 > | R 5 8 > | 8 8 10 > | R c 8 > | 8 10 8 > | R 6 8 > | 8 7 8 > | 5 6 8 > !co
T x=-xx=xx R 3 5 >> > | R R 3 >> > | R R 5 >> > | 8 7 6 >> > | R 5 4 >> > | R _7 _6 _6 _7 | R R _5 >> > | 8 5 3 >> >
H1 x==x R > | R 5 | R 3 | R R | 8 7
H2 x=-x R > | R 5 | R 3 | 8 > | R _7

tune double-knock 3-5: two knocks on one, air, the push and three; the answer goes down the stair and leads
S xx-xx=-- R R 3 5 | R R 5 6 | R R 5 3 | R R 5 c | R R _7 R | R R _5 _6 | R R 2 3 | R R 3 2 | R R R 5 | 5 5 6 8 !co
A xx-xxx-x 8 8 6 5 3 > | 8 8 7 6 5 > | R R 5 4 3 > | R R 5 3 2 > | R R _7 _6 _5 > | 8 8 c 5 3 > | R R 3 2 R > | 8 8 5 4 3 > | 5 5 4 3 R > !co | R R 5 3 R >
S xx-xx=-- R R 3 5 | R R 5 6 | R R 5 3 | R R 5 c | R R _7 R | R R _5 _6 | R R 2 3 | R R 3 2 | R R R 5 | 5 5 6 8 !co
C xx-xx=-x R R 5 R > | R R 3 R > | R R _5 R > | 8 8 5 R > | R R 5 3 > | 8 8 5 3 > | R R _7 R > | 5 5 3 R > !co
S xx-xx=-- R R 3 5 | R R 5 6 | R R 5 3 | R R 5 c | R R _7 R | R R _5 _6 | R R 2 3 | R R 3 2 | R R R 5 | 5 5 6 8 !co
A xx-xxx-x 8 8 6 5 3 > | 8 8 7 6 5 > | R R 5 4 3 > | R R 5 3 2 > | R R _7 _6 _5 > | 8 8 c 5 3 > | R R 3 2 R > | 8 8 5 4 3 > | 5 5 4 3 R > !co | R R 5 3 R >
L xx-xx=-- R R 5 8 | 8 8 9 10 | R R c 8 | 8 8 10 9 | 8 8 10 8 | 8 8 7 6 | 8 8 7 8 | 5 5 6 8 !co
T xx-xx=xx R R 3 5 >> > | R R 5 4 >> > | 8 8 7 6 >> > | R R _7 _6 _6 _7 | R R 3 4 >> > | 8 8 5 3 >> > | R R 2 3 >> >
H1 xx-x R R > | R R 5 | R R 3 | 8 8 7 | R R _7
H2 xx-- R R | 8 8
H2 x=-x R > | R 5 | R 3

tune quiet-two 3-5: the root, a rest where the snare falls, the tune on the push and three; a short lead in every second bar
S x=-xx=-- R 2 3 | R 5 6 | R 3 5 | R 3 2 | R 5 c | R 3 4 | R _7 R | R 5 3 | 3 4 5 !co | 5 6 8 !co
A x=-xx=-x 8 6 5 > | 8 5 3 > | R 5 4 > | R _7 _6 > | 8 7 6 > | R 3 2 > | 8 c 5 > | R 5 3 > | 5 4 3 > !co | R _5 _6 >
S x=-xx=-- R 2 3 | R 5 6 | R 3 5 | R 3 2 | R 5 c | R 3 4 | R _7 R | R 5 3 | 3 4 5 !co | 5 6 8 !co
C x=-xx=-x R 5 3 > | R 3 R > | 8 5 R > | R 2 R > | R _5 R > | R _7 R > | 8 5 3 > | 5 3 R > !co
S x=-xx=-- R 2 3 | R 5 6 | R 3 5 | R 3 2 | R 5 c | R 3 4 | R _7 R | R 5 3 | 3 4 5 !co | 5 6 8 !co
A x=-xx=-x 8 6 5 > | 8 5 3 > | R 5 4 > | R _7 _6 > | 8 7 6 > | R 3 2 > | 8 c 5 > | R 5 3 > | 5 4 3 > !co | R _5 _6 >
L x=-xx=-- 8 9 10 | R 5 8 | 8 10 9 | R 6 8 | 8 7 6 | 8 7 8 | 8 c 8 | 5 7 8 !co
T x=-xx=xx R 3 5 7 > | R 2 3 >> > | R 5 6 >> > | 8 7 6 >> > | R 5 4 >> > | R _7 _6 _6 _7 | R _5 _6 >> > | 8 6 5 >> >
H1 x=-x R > | R 3 | R 5 | 8 7 | R _7
H2 x=-- R | 8
H2 x=-x R > | R 3 | R 5

tune late-pair 5-5: one, the push and three, a hole on four, and two sixteenths run into every second bar
S x=====x=x===---- R 3 5 | R 5 6 | R R 5 | R 5 c | R 5 3 | R _7 R | R _5 _6 | R c 8 | 3 5 6 !co | 5 c 8 !co
A x=====x=x===--xx 8 c 5 >> > | 8 6 5 >> > | R 5 3 >> > | R _7 _6 >> > | R R 3 >> > | 8 5 3 2 > | R 5 4 3 > | 5 4 3 >> > !co | 8 7 6 5 >
S x=====x=x===---- R 3 5 | R 5 6 | R R 5 | R 5 c | R 5 3 | R _7 R | R _5 _6 | R c 8 | 3 5 6 !co | 5 c 8 !co
C x=====x=x===--xx R 5 R >> > | 8 5 R >> > | R 3 R >> > | R _5 R >> > | R _c R >> > | 8 5 3 >> > | R 5 3 R > | 5 3 R >> > !co
S x=====x=x===---- R 3 5 | R 5 6 | R R 5 | R 5 c | R 5 3 | R _7 R | R _5 _6 | R c 8 | 3 5 6 !co | 5 c 8 !co
A x=====x=x===--xx 8 c 5 >> > | 8 6 5 >> > | R 5 3 >> > | R _7 _6 >> > | R R 3 >> > | 8 5 3 2 > | R 5 4 3 > | 5 4 3 >> > !co | 8 7 6 5 >
L x=====x=x===---- 8 9 10 | R 5 8 | R c 8 | 8 10 9 | 8 7 6 | 8 c 8 | 8 8 10 | 5 c 8 !co
T x=====x=x=x=--xx R 3 5 6 >> > | R 5 6 7 >> > | R R 3 5 >> > | R 5 4 3 >> > | 8 7 6 5 >> > | R _5 _6 _7 >> > | R _7 _6 _5 >> > | 8 6 5 3 >> > | R R 5 6 7 >
H1 x=====x= R > | R 5 | R 3 | 8 c | R R
H2 x===---- R | 8
H2 x===--xx R >> > | 8 >> > | R 5 > | R 3 >

tune velvet-rope 3-4: one, the push, and a pair on three that goes one step on; the answer is the bare cell with one short lead after the hole
S x==xxx-- R R 3 5 | R 5 5 6 | R 3 4 5 | R R 5 c | R 5 5 3 | R R 2 3 | R 3 3 5 | R _7 _7 R | R R _5 _6 | R R _7 _6 | R 5 4 3 | 8 8 6 5 | 8 c c 5 | 3 3 4 5 !co | 5 5 4 3 !co
A x==xx=-x 8 6 5 > | R 5 3 > | 8 5 3 > | R _7 _6 > | R _6 _5 > | 8 c 5 > | R 3 5 > | R R 3 > | R 3 2 > | R R _5 > | R 2 3 > | 5 4 3 > !co | 5 3 R > !co
S x==xxx-- R R 3 5 | R 5 5 6 | R 3 4 5 | R R 5 c | R 5 5 3 | R R 2 3 | R 3 3 5 | R _7 _7 R | R R _5 _6 | R R _7 _6 | R 5 4 3 | 8 8 6 5 | 8 c c 5 | 3 3 4 5 !co | 5 5 4 3 !co
C x==xx=-x R 5 R > | R 3 R > | R _7 R > | R _5 R > | 8 5 R > | R R R > | 8 5 3 > | R 5 3 > | 5 3 R > !co | 3 2 R > !co
S x==xxx-- R R 3 5 | R 5 5 6 | R 3 4 5 | R R 5 c | R 5 5 3 | R R 2 3 | R 3 3 5 | R _7 _7 R | R R _5 _6 | R R _7 _6 | R 5 4 3 | 8 8 6 5 | 8 c c 5 | 3 3 4 5 !co | 5 5 4 3 !co
A x==xx=-x R 5 3 > | 8 6 5 > | 8 5 3 > | R _7 _6 > | R _6 _5 > | 8 c 5 > | R 3 5 > | R R 3 > | R 3 2 > | R R _5 > | R 2 3 > | 5 4 3 > !co | 5 3 R > !co
L x==xxx-- 8 8 9 10 | R 5 5 8 | 8 10 9 8 | R 5 6 8 | 8 8 10 8 | R c c 8 | 8 8 10 10 | R 3 5 8 | 5 6 6 8 !co | 5 8 8 10 !co
T x==xx=xx R 3 5 >> > | R R 5 >> > | R R 3 >> > | R 5 5 6 7 | R _5 _5 _6 _7 | 8 6 5 >> > | 8 5 3 >> > | R R _5 >> > | R 2 3 >> > | R 5 3 >> >
H1 x==x R > | R 5 | R 3 | R R | R _7 | 8 c
H2 xx-- R R | R 3 | R 5 | R _7 | 8 c
H2 x=-x R > | R 3 | R 5 | 8 > | R _7
`;
