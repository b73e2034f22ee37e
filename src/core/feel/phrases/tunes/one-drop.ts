/** One drop: tunes of eight bars (see the notation beside the books). */
export const ONE_DROP_TUNES = `
tune plumb 1-2: the one, then nothing, then a long note on the drop; the answer has only the drop and a fetch
S x=--x=== R 3 | R 5 | R R | R _5 | R > | R 8 | 8 5 | 8 3 | 5 R !co
A ----x=x= R 3 | R > | 3 R | R 5 | 8 5 | 5 R | 3 > | 5 3 | 5 > | _5 >
S x=--x=== R 3 | R 5 | R R | R _5 | R > | R 8 | 8 5 | 8 3 | 5 R !co
C ----x=== R | 8 | 5 | _5
S x=--x=== R 3 | R 5 | R R | R _5 | R > | R 8 | 8 5 | 8 3 | 5 R !co
A ----x=x= R > | R 3 | 3 R | R 5 | 8 5 | 5 > | 3 > | 5 3 | 5 R | _5 >
L x=--x=x= 8 10 8 | R 8 5 | R 8 10 | 8 5 8 | R 3 5 | R 5 8 | R 5 5 | R 5 > | 8 8 5 | 8 5 >
T x=--x=x= R 5 > | R 3 > | R R > | R >> > | R _5 > | 8 5 > | R 5 R !st
H1 x=-- R | 8
H2 x=x= R > | 8 > | R 5 | R 3

tune three-to-ground 1-2: three level steps that land on the drop; the answer waits for it and knocks twice
S x=x=x=-- R 3 5 | R 5 R | R 5 3 | R R 5 | 8 5 3 | R _5 R | R R > | R 5 8 | 8 5 R | 5 3 R !co
A ----xxx= R R 3 | R R > | 3 3 R | 8 8 5 | R R 5 | 3 3 > | 5 5 R | 5 3 R | 5 5 >
S x=x=x=-- R 3 5 | R 5 R | R 5 3 | R R 5 | 8 5 3 | R _5 R | R R > | R 5 8 | 8 5 R | 5 3 R !co
C x===x=-- R > | R R | R _5 | 8 5 | 8 > | R 3
S x=x=x=-- R 3 5 | R 5 R | R 5 3 | R R 5 | 8 5 3 | R _5 R | R R > | R 5 8 | 8 5 R | 5 3 R !co
A ----xxx= R 3 > | R R > | 3 3 > | 8 8 5 | R R 5 | 5 5 > | 3 3 R | 5 3 R | 5 5 R
L x=x=x=-- 8 10 8 | R 8 5 | R 3 8 | 8 5 8 | 8 10 > | 8 8 5 | R 5 8 | R 5 >
T x=--xxx= R 5 5 > | R 5 3 > | R R R > | R 3 5 > | R _5 _5 > | R 5 >> > | 8 8 5 >
H1 x=x= R 5 | R _5 | R > | 8 5 | R 3
H2 x=x= R > | 8 > | R 5 | R 3

tune heavy-pair 1-2: a pair on the one, a hole, one note on the drop; the answer leaves the one and walks from two
S xx--x=-- R R 3 | R R 5 | R 5 3 | R R R | R R _5 | R R > | R R 8 | 8 8 5 | 8 8 3 | 5 5 R !co
A --x=x=x= R 3 > | R 5 > | 5 3 > | 5 R > | 3 R > | 8 5 > | R R > | _5 R > | R 5 R
S xx--x=-- R R 3 | R R 5 | R 5 3 | R R R | R R _5 | R R > | R R 8 | 8 8 5 | 8 8 3 | 5 5 R !co
C xx--x=== R R > | R R R | 8 8 5 | R R _5 | 8 8 > | R R 3
S xx--x=-- R R 3 | R R 5 | R 5 3 | R R R | R R _5 | R R > | R R 8 | 8 8 5 | 8 8 3 | 5 5 R !co
A --x=x=x= R 3 > | R 5 > | 5 3 > | 8 5 > | 3 R > | 5 R > | R R > | _5 R > | R 5 8
L xx--x=x= 8 8 10 8 | R R 8 5 | R R 8 10 | 8 8 5 8 | R R 5 8 | R R 5 > | 8 8 5 >
T xx--x=x= R R 5 > | R R 3 > | R R R > | R R >> > | 8 8 5 > | R R _5 > | 8 8 3 >
H1 xx-- R R | R 5 | 8 8
H2 x=x= R > | 8 > | R 5 | R 3

tune four-knocks 1-2: four short knocks and a silent four; the answer sits on the drop and leans on
S x-x-xx-- R 3 5 3 | R R 5 R | R R 3 5 | R 5 5 R | R 5 3 R | R _5 _5 R | R R R > | R 5 8 5 | 8 5 5 R | 5 5 3 R !co
A ----x=x= R 3 | R > | 3 > | 8 5 | R 5 | 5 > | 3 R | 5 3 | 5 R | _5 >
S x-x-xx-- R 3 5 3 | R R 5 R | R R 3 5 | R 5 5 R | R 5 3 R | R _5 _5 R | R R R > | R 5 8 5 | 8 5 5 R | 5 5 3 R !co
C x-x-x=-- R R > | R R 5 | R 5 R | R _5 R | 8 8 5 | R 5 > | R R 3 | R 5 3 | 8 5 3
S x-x-xx-- R 3 5 3 | R R 5 R | R R 3 5 | R 5 5 R | R 5 3 R | R _5 _5 R | R R R > | R 5 8 5 | 8 5 5 R | 5 5 3 R !co
A ----x=x= R > | R 3 | 3 > | 8 5 | R 5 | 3 R | 5 > | 5 3 | 5 R | _5 >
L x-x-xx-- 8 8 10 8 | R 8 8 5 | R 3 5 8 | 8 8 5 8 | 8 10 8 5 | R 5 5 8 | R 5 5 > | R R 8 5 | 8 8 5 5 | 8 5 5 8 | R 5 R 5
T x=--x=x= R 5 > | R 3 > | R R > | R >> > | R _5 > | 8 5 > | 8 3 >
H1 x=x= R R | R 5 | R _5 | R > | 8 5 | R 3
H2 x=x= R > | 8 > | R 5 | R 3

tune pick-and-drop 3-4: a short pick-up on the and of two swings into a long drop; the answer comes without the one and goes on
S x=-xx=== R 2 3 | R 4 5 | R _7 R | R _6 _5 | R 3 2 | 8 7 6 | R 5 6 | R 5 > | 3 4 5 !co | 5 4 3 !co
A ---xx=xx 6 5 >> > | 2 R >> > | 2 3 >> > | _6 _5 >> > | 7 8 >> > | 4 3 >> > | 3 5 >> > | 5 R >> >
S x=-xx=== R 2 3 | R 4 5 | R _7 R | R _6 _5 | R 3 2 | 8 7 6 | R 5 6 | R 5 > | 3 4 5 !co | 5 4 3 !co
C x=--x=-- R 2 | R > | R R | 8 7 | R _6 | R 3 | 8 > | 3 2 !co
S x=-xx=== R 2 3 | R 4 5 | R _7 R | R _6 _5 | R 3 2 | 8 7 6 | R 5 6 | R 5 > | 3 4 5 !co | 5 4 3 !co
A ---xx=xx 6 5 >> > | 2 3 >> > | 2 R >> > | _6 _5 >> > | 7 8 >> > | 4 3 >> > | 3 5 >> >
L x=-xx=x= 8 9 10 > | 8 9 8 6 | R 5 6 8 | R 4 5 > | 8 7 8 > | 5 6 8 > !co
T x=--x=xx R 5 >> > | 8 6 >> > | R 3 >> > | R _6 >> > | R 2 >> > | R _5 >> >
H1 x=-x R 2 | R > | 8 7 | R 3 | R R
H2 x=xx R >> > | 8 >> > | R 2 > | R 3 >

tune behind-the-gate 3-4: two off-beats lean against the drop; the answer has the one and a pair that leads
S -x=xx=-- R 2 3 | R 3 5 | R 3 2 | R _6 _5 | R _7 R | 8 7 5 | R R 2 | R 5 6 | 5 4 3 !co | 3 2 R !co
A x=--x=xx 8 5 >> > | R 5 >> > | R 3 >> > | 8 6 >> > | R _6 >> > | R 2 >> > | 5 3 >> > !co
S -x=xx=-- R 2 3 | R 3 5 | R 3 2 | R _6 _5 | R _7 R | 8 7 5 | R R 2 | R 5 6 | 5 4 3 !co | 3 2 R !co
C x=--x=x= R 5 > | 8 7 > | R 3 2 | R 2 > | R _7 > | R _5 _6 | R R >
S -x=xx=-- R 2 3 | R 3 5 | R 3 2 | R _6 _5 | R _7 R | 8 7 5 | R R 2 | R 5 6 | 5 4 3 !co | 3 2 R !co
L x=--xxxx 8 9 10 >> > | 8 9 8 >> > | R 5 6 >> > | R 5 8 >> > | R 3 5 >> > | 8 6 5 >> >
S -x=xx=-- 8 7 6 | R 3 2 | 8 6 5 | R _7 _6 | R _7 R | R 2 3 | R 5 > | 5 3 2 !co
T x=--xxxx 8 6 5 >> > | R 3 2 >> > | R _5 _6 >> > | R 2 3 >> > | R 5 4 >> > | R 5 6 >> >
H1 x=-- R | 8
H2 x=xx R >> > | 8 >> > | R 2 > | R 3 >

tune long-weight 3-4: a pair on the one, a heavy drop, and its last half beat pushes on; the answer is three notes from the drop
S xx--x==x R R 3 2 | R R 5 6 | R R 5 > | R R 3 > | R R _6 > | R _7 R 2 | 8 8 6 > | R 2 3 > | 5 5 4 3 !co | 3 3 2 > !co
A ----xxx= R 3 > | R 2 3 | 5 4 3 | 8 7 6 | R _7 > | 5 6 > | 3 2 > | _5 _6 > | 3 4 >
S xx--x==x R R 3 2 | R R 5 6 | R R 5 > | R R 3 > | R R _6 > | R _7 R 2 | 8 8 6 > | R 2 3 > | 5 5 4 3 !co | 3 3 2 > !co
C ----x==x 8 > | R > | 3 > | 2 > | _6 > | 3 2 | 5 >
S xx--x==x R R 3 2 | R R 5 6 | R R 5 > | R R 3 > | R R _6 > | R _7 R 2 | 8 8 6 > | R 2 3 > | 5 5 4 3 !co | 3 3 2 > !co
A ----xxx= R 3 > | R 2 3 | 5 6 > | 8 7 6 | R _7 > | 5 4 3 | 3 2 > | _5 _6 > | 3 4 >
L xx--x==x 8 8 10 9 | 8 9 10 > | R R 5 6 | 8 8 9 > | R 5 6 8 | R R 5 > | R 2 3 5
T xx--x=xx R R 3 >> > | R R _6 >> > | R 2 3 >> > | R R _5 >> > | R R 5 >> > | 8 8 6 >> >
H1 xx-- R R | R 2 | 8 8 | R _7
H2 x==x R > | 8 > | R 2 | R 3

tune cellar-stair 4-5: down the stairs in four notes, the third short of the drop; the answer climbs out without the one
S xx=xx=-- R _7 _6 _5 | 8 7 6 5 | R 3 2 R | R R 3 2 | R 5 4 3 | R R _7 R | R 2 3 > | 5 4 3 2 !co | 3 2 R _7 !co
A --xxx=xx R 2 3 >> > | _5 _6 R >> > | R 3 5 >> > | 5 6 8 >> > | 3 4 5 >> > | 8 6 5 >> > | 3 2 R >> >
S xx=xx=-- R _7 _6 _5 | 8 7 6 5 | R 3 2 R | R R 3 2 | R 5 4 3 | R R _7 R | R 2 3 > | 5 4 3 2 !co | 3 2 R _7 !co
C xx--x=-- R _7 R | R R _6 | R R 3 | 8 c > | R _7 > | R R 2 | R R > | 8 8 7
S xx=xx=-- R _7 _6 _5 | 8 7 6 5 | R 3 2 R | R R 3 2 | R 5 4 3 | R R _7 R | R 2 3 > | 5 4 3 2 !co | 3 2 R _7 !co
L xx=xx=-- 8 8 9 10 | 8 9 10 8 | R 5 6 8 | R 3 5 > | 8 7 8 9 | 5 6 8 9 !co
A --xxx=xx R 2 3 >> > | 5 4 3 >> > | R 3 5 >> > | _5 _6 R >> > | 3 4 5 >> > | 8 6 5 >> > | 3 2 R >> >
T xx--xxxx R R _5 _6 >> > | R R 4 5 >> > | R R 2 3 >> > | R R 5 6 >> > | R R 3 2 >> > | 8 8 6 5 >> >
H1 xx=x R _7 R | R R > | 8 7 6 | R 2 3
H2 x=xx R >> > | 8 >> > | R 2 > | R 3 >

tune counterweight 4-5: short one, a short push into a short drop, a pair that leads; the answer hangs one long note against it
S x--xx-xx R 5 6 5 3 | R R 2 >> > | R 2 3 >> > | R _6 _5 >> > | R c 5 >> > | 8 7 6 >> > | R 4 5 >> > | R 3 2 >> > | 5 6 5 >> > !co | 3 2 R >> > !co
A ----x==x R > | 8 c | 5 > | 3 2 | 3 > | 6 5 | 2 > | _6 > | _5 _6
S x--xx-xx R 5 6 5 3 | R R 2 >> > | R 2 3 >> > | R _6 _5 >> > | R c 5 >> > | 8 7 6 >> > | R 4 5 >> > | R 3 2 >> > | 5 6 5 >> > !co | 3 2 R >> > !co
C x--xx=-- R 2 R | R 5 > | R 3 2 | 8 7 6 | R _7 R | R _6 _5 | R 2 > | 8 c > | 5 4 3 !co
S x--xx-xx R 5 6 5 3 | R R 2 >> > | R 2 3 >> > | R _6 _5 >> > | R c 5 >> > | 8 7 6 >> > | R 4 5 >> > | R 3 2 >> > | 5 6 5 >> > !co | 3 2 R >> > !co
A ----x==x R > | 8 c | 3 2 | 5 > | 3 > | 6 5 | 2 > | _6 > | _5 _6
L x--xx-xx 8 9 10 >> > | 8 9 8 >> > | R 5 6 8 9 | R 5 8 >> > | 8 7 8 >> > | R 3 5 >> >
T x--xx=xx R 5 6 >> > | R 3 2 >> > | 8 6 5 >> > | R _5 _6 >> > | R 2 3 >> > | R 5 4 >> >
H1 x--x R > | R R | 8 7 | R 2
H2 x-xx R >> > | 8 >> > | R 2 > | R 3 >

tune half-light 4-5: half the bar stays dark, a pick-up falls on the drop; the answer shows the one and walks down to it
S ---xxx== 2 R 3 | _7 R 2 | 5 R R | 3 R 5 | 2 3 5 | 9 8 7 | _6 _5 R | 7 8 5 | 3 2 R
A x==xx=xx 8 7 6 >> > | R _7 _6 >> > | R 3 2 >> > | R 5 3 >> > | R 2 3 >> > | 8 6 5 >> > | R c 5 >> > | 5 4 3 >> > !co
S ---xxx== 2 R 3 | _7 R 2 | 5 R R | 3 R 5 | 2 3 5 | 9 8 7 | _6 _5 R | 7 8 5 | 3 2 R
C x==xx=-- R 3 2 | 8 7 6 | R _7 R | R 2 > | R 5 > | R _6 _5 | R 2 R | 5 3 2 !co
S ---xxx== 2 R 3 | _7 R 2 | 5 R R | 3 R 5 | 2 3 5 | 9 8 7 | _6 _5 R | 7 8 5 | 3 2 R
A x==xx=xx 8 7 6 >> > | R _7 _6 >> > | R 3 2 >> > | R 5 4 >> > | R 2 3 >> > | 8 6 5 >> > | R c 5 >> > | 5 4 3 >> > !co
L ---xxx== 7 8 10 | 9 8 9 | 5 6 8 | 9 10 8 | 7 8 9 | 2 3 5
T x==xx=x= R 3 2 > | 8 6 5 > | R _7 _6 > | R 2 3 > | R _5 _6 > | R 5 4 > | R 5 6 >
H1 x==x R > | R 2 | 8 7 | R _7
H2 x=xx R >> > | 8 >> > | R 2 > | R 3 >
`;
