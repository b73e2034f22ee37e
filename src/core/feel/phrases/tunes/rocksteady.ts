/** Rocksteady: tunes of eight bars (see the notation beside the books). */
export const ROCKSTEADY_TUNES = `
tune porch-song 1-2: a long note, two short, one that rings and a rest on four; the answer leaves the one to the drums, two short, a long one on three and one that fetches the chord
S x=xxx=-- R 3 3 5 | R 5 5 8 | R 5 5 3 | R R R 5 | R 8 8 5 | 8 5 5 3 | R _5 _5 R | R 5 5 R | R 3 5 3 | R 5 3 R | 8 8 5 R | R R R _5 | 3 5 5 8 !co | 5 3 3 R !co | 5 8 8 5 !co
A --xxx=x= R 5 3 > | R 5 5 > | R 3 5 > | R R 5 > | 8 5 3 > | 8 5 5 > | R 5 R > | R _5 R > | R R 3 > | R 5 8 > | 5 5 3 > !co | 5 3 R > !co | 3 5 5 > !co | 5 8 5 > !co
S x=xxx=-- R 3 3 5 | R 5 5 8 | R 5 5 3 | R R R 5 | R 8 8 5 | 8 5 5 3 | R _5 _5 R | R 5 5 R | R 3 5 3 | R 5 3 R | 8 8 5 R | R R R _5 | 3 5 5 8 !co | 5 3 3 R !co | 5 8 8 5 !co
C xx----x= R R 5 | R R > | R 5 > | R R 3 | R 5 3 | R 3 > | R 5 8 | 8 8 5 | 8 5 > | R R _5 | 5 5 R !co | 5 3 > !co | 5 8 5 !co
S x=xxx=-- R 3 3 5 | R 5 5 8 | R 5 5 3 | R R R 5 | R 8 8 5 | 8 5 5 3 | R _5 _5 R | R 5 5 R | R 3 5 3 | R 5 3 R | 8 8 5 R | R R R _5 | 3 5 5 8 !co | 5 3 3 R !co | 5 8 8 5 !co
A --xxx=x= R 5 3 > | R 5 5 > | R 3 5 > | R R 5 > | 8 5 3 > | 8 5 5 > | R 5 R > | R _5 R > | R R 3 > | R 5 8 > | 5 5 3 > !co | 5 3 R > !co | 3 5 5 > !co | 5 8 5 > !co
L x=xxx=-- 8 10 10 8 | R 5 5 8 | 8 5 5 8 | 8 8 10 8 | R 3 5 8 | R 8 8 5 | 8 8 8 5 | R 5 8 5 | 5 8 8 10 !co | 5 8 8 5 !co
T x=--xxxx R 5 R 5 > | R 3 5 3 > | R 5 3 5 > | 8 5 3 R > | 8 5 R 5 > | R 5 8 5 > | R 3 R 3 > | R 5 3 R > | R _5 R 5 > | R _5 R R > | R 5 5 R >
H1 x=xx R 3 3 | R 5 5 | R R > | 8 5 5 | R _5 _5 | R 3 5
H2 x=-- R | 8
H2 x=x= R > | R 5 | R 3 | 8 > | R _5

tune three-to-the-gate 1-2: a short step and a long one, a short pair, and the gate stays open on four; the answer knocks twice, waits on two and goes on through a pair
S x-x=xx-- R 3 5 3 | R 5 8 5 | R 5 R 5 | R 5 3 R | R 3 5 8 | 8 5 3 R | R R 5 8 | R R 5 3 | R _5 R 5 | R R 5 R | 8 5 R 5 | R R 3 5 | 3 5 8 5 !co | 5 3 R 5 !co | 5 8 5 R !co
A xx--xxx= R R 5 3 > | 8 8 5 3 > | 8 8 5 R > | R R 5 8 > | R R 3 5 > | R R 5 R _5 | R R _5 R 5 | R R 5 R 8 | R 5 3 R > | R 5 8 5 > | 5 5 3 R > !co | 5 5 8 5 > !co | 5 5 R 5 > !co
S x-x=xx-- R 3 5 3 | R 5 8 5 | R 5 R 5 | R 5 3 R | R 3 5 8 | 8 5 3 R | R R 5 8 | R R 5 3 | R _5 R 5 | R R 5 R | 8 5 R 5 | R R 3 5 | 3 5 8 5 !co | 5 3 R 5 !co | 5 8 5 R !co
C ----xxx= R R > | R 5 > | R 3 > | 8 5 > | R 5 R | R R 5 | R _5 > | R 5 3 | 8 5 R | 5 R > !co | 5 3 > !co
S x-x=xx-- R 3 5 3 | R 5 8 5 | R 5 R 5 | R 5 3 R | R 3 5 8 | 8 5 3 R | R R 5 8 | R R 5 3 | R _5 R 5 | R R 5 R | 8 5 R 5 | R R 3 5 | 3 5 8 5 !co | 5 3 R 5 !co | 5 8 5 R !co
A xx--xxx= R R 5 3 > | 8 8 5 3 > | 8 8 5 R > | R R 5 8 > | R R 3 5 > | R R 5 R _5 | R R _5 R 5 | R R 5 R 8 | R 5 3 R > | R 5 8 5 > | 5 5 3 R > !co | 5 5 8 5 > !co | 5 5 R 5 > !co
L x-x=xx-- 8 8 10 8 | R 5 8 5 | 8 10 8 5 | R 3 8 5 | R 8 5 8 | R 5 8 10 | 8 5 8 5 | R 5 8 8 | 5 8 10 8 !co | 5 8 5 3 !co
T x-x=xxx= R 3 5 3 > | R 5 R 5 > | R R 5 3 > | 8 5 3 R > | 8 5 R 5 > | R 5 8 5 > | R 3 5 8 > | R 5 3 R > | R _5 R 5 > | R R 5 8 >
H1 x=x= R 3 | R 5 | R > | 8 5 | R _5 | 8 >
H2 xx-- R R | R 5 | R 3 | 8 5
H2 xxx= R R > | R 5 > | R 3 > | 8 5 >

tune back-step 1-2: two short and a long one, the third beat bare, and one note that fetches the chord; the answer comes a beat late, two short, and the same bare third beat
S xxx=--x= R R 5 > | R R 3 > | 8 8 5 > | R 5 3 > | R R _5 > | R 3 5 > | R 5 8 > | 8 5 3 > | R 5 R > | R R 5 3 | R R R 5 | 5 5 3 > !co | 5 5 R > !co | 3 3 5 > !co
A --xx--x= R 5 > | R R > | R 3 > | 8 5 > | R 5 3 | R _5 > | R R 5 | 8 5 3 | R 5 R | R 5 8 | 5 R > !co | 5 3 > !co | 3 5 > !co
S xxx=--x= R R 5 > | R R 3 > | 8 8 5 > | R 5 3 > | R R _5 > | R 3 5 > | R 5 8 > | 8 5 3 > | R 5 R > | R R 5 3 | R R R 5 | 5 5 3 > !co | 5 5 R > !co | 3 3 5 > !co
C xx----x= R R 5 | R R > | R 5 > | R R 3 | R 5 3 | R 3 > | R 5 8 | 8 8 5 | 8 5 > | R R _5 | 5 5 R !co | 5 3 > !co | 5 8 5 !co
S xxx=--x= R R 5 > | R R 3 > | 8 8 5 > | R 5 3 > | R R _5 > | R 3 5 > | R 5 8 > | 8 5 3 > | R 5 R > | R R 5 3 | R R R 5 | 5 5 3 > !co | 5 5 R > !co | 3 3 5 > !co
A --xx--x= R 5 > | R R > | R 3 > | 8 5 > | R 5 3 | R _5 > | R R 5 | 8 5 3 | R 5 R | R 5 8 | 5 R > !co | 5 3 > !co | 3 5 > !co
L xxx=--x= 8 8 10 > | 8 8 10 8 | R 5 8 > | R 5 8 5 | 8 8 5 8 | R R 8 5 | R R 8 > | R 3 5 8 | 5 5 8 > !co | 5 5 8 5 !co
T x=--xxxx R 5 R 5 > | R 3 5 3 > | R 5 3 5 > | 8 5 3 R > | 8 5 R 5 > | R 5 8 5 > | R 3 R 3 > | R 5 3 R > | R _5 R 5 > | R _5 R R > | R 5 5 R >
H1 x=x= R 3 | R 5 | R > | 8 5 | R _5 | 8 >
H2 xx-- R R | R 5 | R 3 | 8 5
H2 xxx= R R > | R 5 > | R 3 > | 8 5 >

tune slow-boat 1-2: one note over half a bar, a short pair, a rest; the answer rows in three short strokes and a long one
S x===xx-- R 5 8 | R 3 5 | R 5 3 | R 5 R | 8 5 3 | 8 5 R | R R 5 | R _5 R | R R 3 | R 3 R | 3 5 8 !co | 5 3 R !co | 5 8 5 !co
A x-x-xxx= R R 5 3 > | 8 8 5 R > | R 5 R 5 > | 8 5 3 R > | R 3 5 3 > | R R 5 8 > | 8 5 R 5 > | R 5 8 5 > | R R _5 R 5 | R _5 R 5 > | R 5 3 R > | R R 3 5 > | 5 5 3 R > !co | 5 8 5 R > !co | 5 R 5 8 > !co
S x===xx-- R 5 8 | R 3 5 | R 5 3 | R 5 R | 8 5 3 | 8 5 R | R R 5 | R _5 R | R R 3 | R 3 R | 3 5 8 !co | 5 3 R !co | 5 8 5 !co
C ----xxx= R 5 > | R R > | R 3 > | 8 5 > | R 5 R | R _5 > | R 5 3 | R R 5 | 8 5 R | 5 R > !co | 5 3 > !co
S x===xx-- R 5 8 | R 3 5 | R 5 3 | R 5 R | 8 5 3 | 8 5 R | R R 5 | R _5 R | R R 3 | R 3 R | 3 5 8 !co | 5 3 R !co | 5 8 5 !co
A x-x-xxx= R R 5 3 > | 8 8 5 R > | R 5 R 5 > | 8 5 3 R > | R 3 5 3 > | R R 5 8 > | 8 5 R 5 > | R 5 8 5 > | R R _5 R 5 | R _5 R 5 > | R 5 3 R > | R R 3 5 > | 5 5 3 R > !co | 5 8 5 R > !co | 5 R 5 8 > !co
L x===xx-- 8 10 8 | 8 5 8 | R 8 5 | 8 10 5 | R 5 8 | 8 8 5 | R 3 5 | 5 8 10 !co | 5 8 5 !co
T x-x-xxx= R 5 8 5 > | R 5 R 5 > | R R 5 R > | R 3 5 8 > | 8 5 3 R > | 8 5 R 5 > | R R 5 3 > | R R 5 8 > | R 3 5 3 > | R 5 3 R > | R _5 R 5 > | R R _5 R >
H1 x=x= R 3 | R 5 | R > | 8 5 | R _5 | 8 >
H2 xx-- R R | R 5 | R 3 | 8 5
H2 xxx= R R > | R 5 > | R 3 > | 8 5 >

tune blue-shutters 3-5: short on one, a pushed note that rings, two short home by step, a rest; the last eighth fetches every second chord, and the last bar waits before it climbs
S xx=-xx-- R 3 4 5 | R 5 4 3 | R R 3 4 | R 3 5 6 | R R 5 4 | R R 3 2 | R _7 R 2 | R R _6 _7 | R _5 _7 R | R R 2 3 | R 5 6 5 | 8 8 c 5 | 3 3 4 5 !co | 5 5 4 3 !co
A xx=-xx-x 8 c 5 4 > | R 5 4 3 > | 8 8 c 5 > | R 3 4 3 > | R 5 3 2 > | R R _7 _5 > | R _5 _7 R > | R 3 2 R > | R R 3 4 > | 8 5 4 3 > | 5 5 4 3 > !co | 5 4 3 2 > !co
S xx=-xx-- R 3 4 5 | R 5 4 3 | R R 3 4 | R 3 5 6 | R R 5 4 | R R 3 2 | R _7 R 2 | R R _6 _7 | R _5 _7 R | R R 2 3 | R 5 6 5 | 8 8 c 5 | 3 3 4 5 !co | 5 5 4 3 !co
C xx=---xx R 5 4 3 | R R >> > | R 3 >> > | R 5 3 > | R 3 2 > | 8 c 5 > | R R _5 > | R R _6 _7 | R _7 R > | 5 3 2 > !co
S xx=-xx-- R 3 4 5 | R 5 4 3 | R R 3 4 | R 3 5 6 | R R 5 4 | R R 3 2 | R _7 R 2 | R R _6 _7 | R _5 _7 R | R R 2 3 | R 5 6 5 | 8 8 c 5 | 3 3 4 5 !co | 5 5 4 3 !co
A xx=-xx-x R 5 4 3 > | 8 c 5 4 > | 8 8 c 5 > | R 3 4 3 > | R 5 3 2 > | R R _7 _5 > | R _5 _7 R > | R 3 2 R > | R R 3 4 > | 8 5 4 3 > | 5 5 4 3 > !co | 5 4 3 2 > !co
L xx=-xx-- R 3 5 8 | R 5 8 5 | 8 8 10 9 | R 5 6 8 | 8 10 9 8 | R R 5 8 | 8 8 9 10 | 8 8 c 5 | R 3 4 5 | 5 5 6 8 !co | 5 5 8 10 !co
T xx=--xxx R R 5 6 7 | R R 5 >> > | R R 3 >> > | R 3 5 >> > | R 5 3 >> > | R R _5 _6 _7 | R R _5 >> > | 8 c 5 >> > | R R >>> >> > | R 5 5 6 7
H1 xx== R R | R 3 | R 5 | R > | 8 8 | 8 c | R _7 | R _5
H2 xx-- R R | R 3 | R 2 | R 5
H2 xx-x R R > | R 3 > | R 5 >

tune fish-market 3-5: long, two short that step, long, and a rest; the last eighth of every second bar leads on, and the last bar leaves the third beat out
S x=xxx--- R 2 3 5 | R 3 4 5 | R 5 6 5 | R 5 4 3 | R 5 6 8 | R 3 2 R | R _7 R 2 | R _5 _7 R | R 3 5 6 | 8 c 5 3 | R _5 _6 _7 | 3 4 5 8 !co | 5 4 3 5 !co
A x=xxx--x 8 c 5 3 > | 8 7 6 5 > | R 5 4 3 > | R 3 2 R > | R _7 _5 _6 > | R _5 _7 R > | R 2 3 4 > | 8 5 4 3 > | R 5 3 R > | R 4 3 2 > | 5 4 3 R > !co | 5 6 5 3 > !co
S x=xxx--- R 2 3 5 | R 3 4 5 | R 5 6 5 | R 5 4 3 | R 5 6 8 | R 3 2 R | R _7 R 2 | R _5 _7 R | R 3 5 6 | 8 c 5 3 | R _5 _6 _7 | 3 4 5 8 !co | 5 4 3 5 !co
C x=xx---x R 5 3 > | R 3 2 > | R 5 4 > | R 3 4 > | 8 c 5 > | 8 5 3 > | R _7 R > | R _5 _6 > | 5 4 3 > !co
S x=xxx--- R 2 3 5 | R 3 4 5 | R 5 6 5 | R 5 4 3 | R 5 6 8 | R 3 2 R | R _7 R 2 | R _5 _7 R | R 3 5 6 | 8 c 5 3 | R _5 _6 _7 | 3 4 5 8 !co | 5 4 3 5 !co
A x=xxx--x 8 7 6 5 > | 8 c 5 3 > | R 5 4 3 > | R 3 2 R > | R _7 _5 _6 > | R _5 _7 R > | R 2 3 4 > | 8 5 4 3 > | R 5 3 R > | R 4 3 2 > | 5 4 3 R > !co | 5 6 5 3 > !co
L x=xxx--- 8 9 10 8 | 8 10 9 8 | R 5 6 8 | R 3 5 8 | 8 9 8 5 | R 5 8 5 | R 3 4 5 | 8 c 5 3 | 5 6 8 10 !co | 5 8 9 10 !co
T x=xx--xx R 5 5 6 7 | R 2 3 >> > | R 3 5 >> > | R 5 3 >> > | R 5 6 >> > | R _5 _5 _6 _7 | R _5 _5 >> > | 8 c 5 >> > | R R R >> > | R R 2 3 >
H1 x=xx R 2 3 | R 3 4 | R 3 5 | R R > | R 5 > | 8 c 5 | R _7 _6 | R _5 >
H2 x=-- R | 8
H2 x=-x R > | 8 >
H2 x=xx R >> > | R 2 3 | R 5 > | R _5 >

tune lantern 3-5: a dotted note into the and of two, a long one on three, a rest; last eighth leads where a bar answers, and the long one is missing where a half closes
S x=-xx--- R 2 3 | R 4 5 | R 4 3 | R 3 5 | R 5 3 | R _7 R | R _5 R | R 5 4 | R 3 4 | R _7 _5 | 8 c 5 | R 5 c | R 5 6 | 3 4 5 !co | 5 4 3 !co
A x=-xx=-x 8 c 5 > | R 4 3 > | 8 7 5 > | R 2 3 > | R 5 3 > | R _7 R > | R 3 4 > | R _7 _5 > | R _5 _6 > | R 5 4 > | 8 5 3 > | R _5 R > | 5 4 3 > !co
S x=-xx--- R 2 3 | R 4 5 | R 4 3 | R 3 5 | R 5 3 | R _7 R | R _5 R | R 5 4 | R 3 4 | R _7 _5 | 8 c 5 | R 5 c | R 5 6 | 3 4 5 !co | 5 4 3 !co
C x=-x---x R 5 > | R 3 > | R 2 > | 8 5 > | 8 c > | R _7 > | R _5 > | 5 3 > !co
S x=-xx--- R 2 3 | R 4 5 | R 4 3 | R 3 5 | R 5 3 | R _7 R | R _5 R | R 5 4 | R 3 4 | R _7 _5 | 8 c 5 | R 5 c | R 5 6 | 3 4 5 !co | 5 4 3 !co
A x=-xx=-x R 4 3 > | 8 c 5 > | 8 7 5 > | R 2 3 > | R 5 3 > | R _7 R > | R 3 4 > | R _7 _5 > | R _5 _6 > | R 5 4 > | 8 5 3 > | R _5 R > | 5 4 3 > !co
L x=-xx--- 8 9 10 | R 5 8 | 8 10 8 | R 5 c | 8 10 9 | R 6 8 | R 3 5 | 8 c 5 | R 5 6 | 5 6 8 !co | 5 8 10 !co
T x=-x--xx R 5 6 7 | R 5 >> > | R 3 >> > | R 2 3 > | R _5 _6 _7 | R _5 >> > | 8 5 >> > | R R >> > | R 3 5 > | 8 c 5 >
H1 x==x R > | R 3 | R 5 | R 2 | 8 c | 8 > | R _7 | R _5
H2 x=-- R | 8
H2 x=-x R > | 8 >
H2 x=xx R >> > | R 2 3 | R 5 > | R _5 >

tune two-that-fetch 3-5: long, two short, the beat on three left empty, and two that lead on, the same to the end
S x-xx--xx R 2 3 >> > | R 3 4 5 > | R 3 5 >> > | R 5 6 5 3 | R 5 4 >> > | R 3 2 >> > | R R 3 4 5 | R _5 _6 >> > | R _7 _6 _5 > | R _7 R >> > | 8 c 5 >> > | 3 4 5 >> > !co | 5 4 3 >> > !co
A x-xx--xx 8 c 5 4 3 | 8 c 5 >> > | R 5 4 3 > | R 5 3 2 > | R 3 2 >> > | 8 5 3 >> > | R _7 _6 >> > | R R _5 _6 _7 | R _5 R >> > | R 5 6 >> > | 5 4 3 >> > !co | 5 3 R >> > !co
S x-xx--xx R 2 3 >> > | R 3 4 5 > | R 3 5 >> > | R 5 6 5 3 | R 5 4 >> > | R 3 2 >> > | R R 3 4 5 | R _5 _6 >> > | R _7 _6 _5 > | R _7 R >> > | 8 c 5 >> > | 3 4 5 >> > !co | 5 4 3 >> > !co
C x-xx---x R 5 3 > | R 3 2 > | R 3 5 > | 8 5 3 > | R _7 R > | R _5 _6 > | 8 c 5 > | 5 4 3 > !co
S x-xx--xx R 2 3 >> > | R 3 4 5 > | R 3 5 >> > | R 5 6 5 3 | R 5 4 >> > | R 3 2 >> > | R R 3 4 5 | R _5 _6 >> > | R _7 _6 _5 > | R _7 R >> > | 8 c 5 >> > | 3 4 5 >> > !co | 5 4 3 >> > !co
A x-xx--xx 8 c 5 >> > | 8 c 5 4 3 | R 5 3 2 > | R 5 4 3 > | R 3 2 >> > | 8 5 3 >> > | R _7 _6 >> > | R R _5 _6 _7 | R _5 R >> > | R 5 6 >> > | 5 4 3 >> > !co | 5 3 R >> > !co
L x-xx--xx 8 9 10 8 > | 8 10 9 8 > | R 5 8 >> > | 8 10 8 >> > | R 3 5 8 > | R 5 6 8 > | R 5 6 >> > | R 3 5 6 > | 8 c 5 >> > | 5 6 8 >> > !co | 5 8 10 >> > !co
T x-xx--xx R 5 5 6 7 | R 3 5 >> > | R 2 3 >> > | R 5 3 >> > | R 5 6 >> > | R R _5 _6 _7 | R _5 _5 >> > | R R R 2 3 | 8 c 5 >> > | R 3 4 5 >
H1 x=xx R 3 5 | R 2 3 | R R > | R >> > | R 5 3 | 8 c 5 | R _7 _6 | R _5 >
H2 x=xx R >> > | R 2 3 | R 3 > | R 5 > | 8 c 5 | R _5 >
`;
