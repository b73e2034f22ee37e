/** Shuffle blues: tunes of eight bars (see the notation beside the books). */
export const SHUFFLE_BLUES_TUNES = `
tune porch-step 1-2: quarters climb to the octave and the pair on four tips over; the answer comes down the stairs
S x=x=x=xx R R 5 8 5 | R R 5 8 > | R 3 5 5 3 | R 5 8 8 5 | R 3 5 8 5 | R R 5 5 > | R R 3 5 > | R _5 R R >
A x=x=x=x= 8 5 R > | 8 8 5 > | 8 5 3 > | R 5 R > | R 5 3 > | R _5 R > | 8 5 3 R
S x=x=x=xx R R 5 8 5 | R R 5 8 > | R 3 5 5 3 | R R 5 5 > | R 3 5 8 > | R 5 8 5 > | 3 3 5 8 5 !co | R _5 R R > | 5 5 8 8 5 !co
C x===x=x= R 5 > | 8 5 > | R 3 > | R _5 > | 8 5 3 | R R >
S x=x=x=xx R R 5 8 5 | R R 5 8 > | R 3 5 5 3 | 5 5 3 R > !co | 8 8 5 R > !co | R 5 8 8 5 | R 3 5 8 5 | R R 5 5 > | R _5 R R >
L x=x=x=xx 8 5 8 8 5 | R 5 8 5 > | 8 10 8 5 > | 8 8 5 8 > | 8 8 10 8 5 | R 5 5 8 5 | R 3 5 8 5 | 8 5 R R > !st
A x=x=x=x= 8 5 R > | R 5 R > | 8 5 3 > | 8 8 5 > | R 5 3 > | R _5 R >
T x=x=x=xx R 5 R 5 > | 8 5 5 R > | R 5 3 R > | R _5 R R > | R 3 5 3 > | 8 5 3 5 >
H1 x=x= R 5 | R 8 | 8 5 | R 3 | R >
H2 x=xx R R > | R 5 > | 8 5 > | R 3 >

tune knock-twice 1-2: knocks twice on the one, then three quarters walk off with it
S xxx=x=x= R R 8 5 > | R R 5 8 5 | R R 3 5 > | R R 5 R > | R R 3 5 8 | R R _5 R > | R R 5 3 >
A x=x=x=xx 8 5 R R > | 8 8 5 5 R | 8 5 3 3 > | R 5 R 5 > | R 5 3 R > | R _5 _5 R > | 8 5 3 5 >
S xxx=x=x= R R 5 8 > | R R 8 5 > | R R 3 5 8 | R R 5 R > | 3 3 5 8 5 !co | R R _5 R > | R R 3 5 > | 5 5 8 5 > !co
C x=x===x= R 5 > | 8 5 > | R 3 > | R R > | 8 5 3 | R _5 >
S xxx=x=x= R R 8 5 > | R R 5 8 5 | R R 3 5 > | 5 5 3 5 > !co | 8 8 5 R > !co | R R 5 R > | R R 3 5 8 | R R _5 R >
L xxx=x=x= 8 8 5 8 5 | R R 5 8 > | 8 8 10 8 > | 8 8 5 8 > | R R 3 5 8 | R R 8 8 5 | 8 8 10 8 5
A x=x=x=xx 8 5 R R > | R 5 R 5 > | 8 5 3 3 > | 8 8 5 5 > | R 3 5 3 > | R _5 _5 R >
T xxx=x=xx R R 5 R 5 > | 8 8 5 R R > | R R 3 5 3 > | R R _5 R R > | R R 5 3 5 > | 8 8 5 3 R >
H1 xxx= R R 5 | R R 8 | 8 8 5 | R R 3 | R R >
H2 x=xx R R > | R 5 > | 8 5 > | R 3 >

tune leaning-gate 1-2: skips on two and four, where the snare leans; the answer stands on plain quarters
S x=xxx=xx R 5 5 8 8 5 | R 5 5 8 8 > | R 3 3 5 5 3 | R R R 5 8 5 | R R 3 5 8 5 | R 5 5 R R > | R 5 3 R 3 > | R _5 _5 R R >
A x=x=x=x= 8 5 R > | R 5 R > | 8 5 3 > | 8 8 5 > | R 3 5 > | R _5 R > | R 5 3 R
S x=xxx=xx R 5 5 8 8 5 | R 5 5 8 8 > | R 3 3 5 8 5 | R 5 5 R 5 > | R 3 3 5 3 > | R R R _5 R > | 3 3 5 8 8 5 !co | R 5 5 8 5 > | 5 5 8 5 5 R !co
C x=--x=xx R 5 R > | 8 5 R > | R 3 5 > | R R 5 > | R 5 3 > | R _5 R > | 8 5 3 R
S x=xxx=xx R 5 5 8 8 5 | R 5 5 8 8 > | R 3 3 5 5 3 | 5 3 3 R 3 > !co | 8 5 5 R R > !co | R R R 5 8 5 | R R 3 5 8 5 | R 5 5 R R > | R _5 _5 R R >
A x=x=x=x= 8 5 8 > | 8 5 R > | 8 5 3 > | R 5 8 > | 5 3 R > !co | R _5 R > | R 3 5 8
L x=xxx=xx 8 5 5 8 8 5 | R 5 5 8 8 > | 8 10 8 5 5 > | 8 8 5 8 5 > | 8 8 10 8 5 3 | R 5 8 8 5 > | R 3 5 8 8 5
T x=x=x=xx R 5 R R > | 8 5 R R > | R 3 5 3 > | R _5 R 5 > | R 5 3 R > | R 5 R 5 >
H1 x=xx R 5 5 | R 8 5 | 8 5 5 | R 3 3 | R 5 >
H2 x=xx R R > | 8 5 > | R 5 > | R 3 >

tune front-door 1-2: one low note, a silence on two, then a swung pair that jumps: knock and come in
S x=--xxx= R 5 5 8 | R 5 5 > | R 3 3 5 | R 8 8 5 | R 5 5 3 | R R 5 > | R R 3 > | R _5 _5 R
A x=x=xxx= 8 5 R R > | R 5 8 8 5 | R 5 3 3 > | R 5 R R > | 8 5 3 R > | 8 5 5 R > | 8 5 5 3 > | R _5 R R >
S x=--xxx= R 5 5 8 | R 5 5 > | R 3 3 5 | R 8 8 5 | R 5 5 3 | R 5 R > | 3 5 5 8 !co | R _5 _5 > | 8 5 5 R !co
C x===x=x= R 5 > | 8 5 > | R 3 > | R R > | R 5 3 | R _5 >
S x=--xxx= R 5 5 8 | R 5 5 > | R 3 3 5 | 5 3 3 R !co | 5 5 5 8 !co | R 8 8 5 | R 5 5 3 | R R 5 > | R _5 _5 R
A x=x=xxx= 8 5 R R > | 8 5 8 8 5 | 8 5 3 3 > | R 5 8 5 > | R 3 5 5 > | R _5 R R > | 5 3 R R > !co
L x=--xxx= 8 8 5 8 | R 8 8 5 | 8 10 10 8 | 8 5 8 > | 8 10 8 5 | R 8 8 > | R 3 5 8 | 8 5 5 >
T x=x=xxx= R 5 R R > | 8 5 5 R > | R 3 5 3 > | R _5 R R > | R 5 3 R > | R 5 5 R >
H1 x=xx R 5 5 | 8 5 5 | R 8 8 | R 3 3
H2 xxx= R R > | R 5 > | 8 5 > | R 3 >

tune back-fence 3-4: leaps over the fence with a pair on one, runs on with a pair on four; the answer walks home by step
S xxx=x=xx R R 3 5 6 5 | R R 3 5 6 > | R R 2 3 5 6 | R R 3 5 4 3 | R R 3 5 >> > | R R _5 _6 >> > | 8 8 7 6 5 3 | R 2 3 5 6 >
A x=x=x=xx 8 7 6 5 > | 8 6 5 3 2 | R 3 2 >> > | 8 6 5 4 3 | 8 c 5 >> > | R _7 _6 _5 > | R 5 3 2 >
S xxx=x=xx R R 3 5 6 5 | R R 3 5 6 > | R R 3 5 >> > | 3 3 4 5 6 > !co | R R 2 3 >> > | 5 5 6 5 4 3 !co | 8 8 6 5 4 3 | R R 3 5 6 8 | R R 5 6 5 3
C x===x=xx R 3 >> > | R 5 >> > | 8 6 >> > | 8 5 4 3 | R 2 3 > | R _6 _5 >
S xxx=x=xx R R 3 5 6 5 | R R 3 5 6 > | R R 2 3 5 6 | 5 5 6 5 3 2 !co | 3 3 4 5 6 > !co | R R 3 5 4 3 | R R 3 5 >> > | R R _5 _6 >> >
L xxx=x=xx 8 8 9 10 8 6 | R R 3 5 8 6 | 8 8 10 9 8 > | 8 8 9 8 6 5 | 5 5 6 8 9 > !co | 8 8 6 8 >> > | R 3 5 6 8 >
A x=x=x=xx 8 7 6 5 > | 8 6 5 3 2 | 8 6 5 >> > | R 5 3 2 > | R 3 2 >> > | R _7 _6 _5 > | R 5 6 >> >
T xxx=x=xx R R 3 2 >> > | R R 5 3 >> > | R R 3 5 6 > | 8 8 6 5 >> > | R R _6 _5 >> > | R R 5 6 >> >
H1 xxx= R R 3 | R R 5 | 8 8 6 | R 2 3
H2 x=xx R >> > | R 3 > | R 5 > | 8 6 >

tune slow-gravel 3-4: up the scale with a quick second note; the answer turns the skip to three and comes down
S x=xxx=x= R 2 3 5 6 | R 2 3 5 > | R b3 3 5 6 | R b3 3 5 > | R _7 _6 _5 > | R 3 4 5 > | R 5 6 5 3
A x=x=xxx= 8 6 5 4 3 | 8 7 6 5 > | R 5 4 3 > | 8 c 6 5 3 | R 3 >>> >> > | 8 5 4 3 > | R _7 _6 _5 > | R 5 3 2 >
S x=xxx=x= R 2 3 5 6 | R 2 3 5 > | R 2 3 5 3 | 3 4 5 6 > !co | R b3 3 5 6 | R 3 4 5 > | 5 6 5 3 > !co | R b3 3 5 > | 8 7 6 5 >
C x=x=--xx R 3 >> > | 8 6 >> > | R 5 >> > | 8 5 3 > | R _6 >> > | R 2 3 >
S x=xxx=x= R 2 3 5 6 | R 2 3 5 > | R b3 3 5 6 | 5 4 3 5 > !co | 3 4 5 6 > !co | R b3 3 5 > | R _7 _6 _5 >
A x=x=xxx= R 3 5 6 > | 8 6 5 4 3 | R 5 6 5 > | 3 5 6 5 > !co | 8 7 6 5 > | R 3 4 5 > | 8 5 4 3 >
L x=xxx=x= 8 9 10 8 > | 8 9 10 9 8 | R 3 5 8 6 | 8 9 8 6 > | 5 6 8 9 > !co | 8 10 9 8 6 | R 5 6 8 >
T x=x=x=xx R 3 5 >> > | R 5 3 >> > | 8 6 5 >> > | R 2 3 >> > | R _6 _5 >> > | R 5 6 >> >
H1 x=xx R 2 3 | R b3 3 | 8 6 5 | R 5 3 | R 3 5
H2 x=xx R >> > | R 3 > | 8 6 > | R 5 >

tune long-stride 3-4: a long first note, the push after two, then two level steps out of the bar
S x==xx=x= R 5 6 > | R 3 5 6 | R 5 6 5 | R _5 _6 > | R 2 3 > | 8 6 5 > | R 4 5 6
A x=x=x=xx 8 7 6 5 > | 8 6 5 4 3 | R 5 3 >> > | R 3 2 R > | R _7 _6 _5 > | 8 c 5 >> > | R 2 3 >> >
S x==xx=x= R 5 6 > | R 3 5 6 | R 5 6 8 | 5 6 5 > !co | R 2 3 > | 3 4 5 6 !co | R 6 5 > | 8 6 5 3
C x==xx==x R 5 3 > | R 3 5 > | 8 6 5 > | 8 5 3 R | R _5 _6 > | R 2 3 >
S x==xx=x= R 5 6 > | R 3 5 6 | R 5 6 5 | 5 4 3 > !co | 3 4 5 6 !co | R _5 _6 > | R 2 3 > | 8 6 5 >
L x==xx=x= 8 9 10 > | 8 10 9 8 | R 5 8 > | 8 9 8 6 | 5 8 9 > !co | 8 9 8 > | R 6 8 >
A x=x=x=xx 8 7 6 5 > | 8 6 5 4 3 | R 5 3 2 > | R 3 2 R > | R _7 _6 _5 > | 8 6 5 >> > | R 3 5 >> >
T x==xx=xx R 5 3 >> > | R 3 5 >> > | 8 6 5 >> > | R _6 _5 >> > | R 5 6 >> > | R 3 2 >> >
H1 x==x R 5 | R 3 | 8 5 | R >
H2 x=xx R >> > | R 3 > | R 5 > | 8 6 >

tune iron-stove 4-5: doubled notes on one and three stoke the fire, a quarter after each; the answer lets the quarters swing
S xxx=xxx= R R 3 5 5 6 | R R 3 5 5 > | R R 3 5 6 > | R b3 3 5 5 > | R R 2 3 4 5 | R R _6 _5 _6 > | 8 8 6 5 5 3 | R b3 3 5 6 5 | R R 3 4 #4 5
A x=x=x=xx 8 7 6 5 > | 8 c 6 >> > | R 5 3 2 > | 8 5 6 5 3 | R 3 2 >> > | R _7 _6 _5 > | 8 6 5 >> >
S xxx=xxx= R R 3 5 5 6 | R R 3 5 5 > | R b3 3 5 6 8 | 3 3 5 6 6 > !co | R R 3 5 6 > | 5 5 6 8 7 5 !co | R R 3 4 #4 5 | 8 8 7 6 6 > | R R 2 3 5 >
C xxx===x= R R 5 > | R R 3 > | 8 8 6 > | R b3 3 > | R R _6 > | R R 6 >
S xxx=xxx= R R 3 5 5 6 | R R 3 5 5 > | R R 3 5 6 > | 5 5 6 5 4 3 !co | 3 3 4 5 6 > !co | R b3 3 5 5 > | R R 2 3 4 5 | R R _6 _5 _6 >
A x=x=x=xx R 3 5 6 > | 8 7 6 5 > | 5 6 7 8 > !co | 8 5 6 5 3 | R 2 3 4 > | 8 c 6 >> > | R 3 5 >> > | R 5 6 >> >
L xxx=xxx= 8 8 10 9 8 6 | 8 9 10 8 8 > | R R 5 8 9 > | 8 8 9 10 9 8 | 8 8 9 8 6 5 | 5 5 8 9 10 > !co | R b3 3 5 8 6
T xxx=x=xx R R 3 5 >> > | R b3 3 R >> > | R R 5 3 >> > | 8 8 7 6 >> > | R R 6 5 >> > | R R _6 _5 >> > | R 2 3 >>> >> >
H1 xxx= R R 3 | R b3 3 | 8 8 6 | R R 5
H2 x=xx R >> > | R 3 > | 8 6 > | R 5 >

tune sidewalk-lean 4-5: a short root, a late pick-up before three, a pair on four that talks back; whole walked bars between
S x--xx=xx R 3 5 6 5 | R 3 5 6 > | R 2 3 5 6 | R b3 3 >> > | R 5 6 >> > | R 6 5 3 2 | R _6 _5 >> > | R 4 3 >> > | 8 7 6 5 3
A x=x=x=x= 8 7 6 > | 8 6 5 > | R 5 3 2 | R 3 4 #4 | 8 c 5 > | R _7 _6 > | R 3 2 > | 8 5 4 3
S x--xx=xx R 3 5 6 5 | R 3 5 6 > | R 5 6 8 6 | 3 4 5 6 > !co | R b3 3 5 > | R 5 6 >> > | 8 9 8 6 5 | 5 4 3 >> > !co | R 2 3 5 >
C x--x===x R 5 > | R 3 > | 8 6 > | R _5 > | 8 5 > | R 6 >
S x--xx=xx R 3 5 6 5 | R 3 5 6 > | R 2 3 5 6 | 5 6 5 4 3 !co | 3 4 5 6 > !co | R b3 3 >> > | R 5 6 >> > | R 6 5 3 2 | R _6 _5 >> >
L x--xx=xx 8 10 9 8 6 | 8 9 10 >> > | R 5 8 9 > | 8 9 10 9 8 | 5 8 9 10 > !co | 8 7 8 9 > | R 6 8 >> >
A x=x=x=x= 8 7 6 > | R 5 3 2 | 8 6 5 > | R 3 4 #4 | R _7 _6 > | R 3 5 > | 8 5 3 > | R 2 3 >
T x--xx=xx R 3 5 >> > | R 5 3 >> > | R 6 5 >> > | 8 7 6 >> > | R 2 3 >> > | R _6 _5 >> >
H1 x--x R 3 | R 5 | 8 6 | R >
H2 x=xx R >> > | R 3 > | 8 7 > | R 5 >

tune rolling-freight 4-5: pairs on two and three roll through the middle of the bar, the four brakes; the answer skips on two and four
S x=xxxxx= R 2 3 5 6 5 | R 2 3 5 6 > | R 3 5 6 5 > | R b3 3 5 6 > | R 4 #4 5 6 > | R 5 6 5 3 > | R _7 _6 _5 _6 > | 8 7 6 5 4 3
A x=xxx=xx 8 7 6 5 >> > | 8 6 5 3 2 > | R 5 4 3 >> > | 8 9 8 6 5 > | R 3 2 R >> > | 8 c 6 5 4 3 | R 6 5 4 3 >
S x=xxxxx= R 2 3 5 6 5 | R 2 3 5 6 > | R 3 5 6 8 > | R b3 3 5 6 > | 3 4 5 6 5 > !co | R 5 6 7 8 > | 5 6 8 6 5 3 !co | 8 9 8 7 6 > | R 3 4 5 6 >
C x=x===xx R 3 >> > | 8 6 >> > | R 5 >> > | R 5 4 3 | 8 5 3 > | R _6 >> >
S x=xxxxx= R 2 3 5 6 5 | R 2 3 5 6 > | R 3 5 6 5 > | 5 6 5 4 3 > !co | 3 4 5 6 8 > !co | R b3 3 5 6 > | R 4 #4 5 6 > | R 5 6 5 3 > | R _7 _6 _5 _6 >
A x=xxx=xx R 3 5 6 >> > | 8 7 6 5 >> > | R 2 3 5 6 > | 8 6 5 3 2 > | 5 6 8 7 6 > !co | R 5 4 3 >> > | R 3 2 R >> >
L x=xxxxx= 8 9 10 9 8 6 | 8 9 10 8 9 > | R 5 8 9 8 > | 8 10 9 8 6 > | 5 8 9 10 9 > !co | 8 9 8 6 5 > | R 3 5 8 9 >
T x=xxx=xx R 2 3 5 >> > | R 5 3 2 >> > | 8 7 6 5 >> > | R 3 5 3 >> > | R _7 _6 _5 >> > | R 3 5 >>> >> >
H1 x=xx R 2 3 | R b3 3 | 8 7 6 | R 5 3 | R 3 5
H2 x=xx R >> > | R 3 > | 8 6 > | R 5 >
`;
