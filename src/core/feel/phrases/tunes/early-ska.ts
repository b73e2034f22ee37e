/** Early ska: tunes of eight bars (see the notation beside the books). */
export const EARLY_SKA_TUNES = `
tune stairs 1-2: quarters climb, the answer steps down and skips on four
S x=x=x=x= R 3 5 > | R 5 8 > | R 3 5 8 | R R 5 > | R 5 3 > | R R _5 > | R 5 R > | R _5 _5 > | 8 5 8 > | 8 5 R > !co | 5 3 5 > !co
A x=x=x=xx 8 5 3 R > | 8 5 8 5 > | 8 8 5 3 > | R 5 R R > | R 5 3 >> > | R _5 R R > | R 3 R R > | 8 8 5 5 >
S x=x=x=x= R 3 5 > | R 5 8 > | R 3 5 8 | R R 5 > | R 5 3 > | R R _5 > | R 5 R > | R _5 _5 > | 8 5 8 > | 8 5 R > !co | 5 3 5 > !co
C x=x=--x= R 5 > | R 3 > | 8 5 > | R _5 > | 8 3 > | 5 R > !co
S x=x=x=x= R 3 5 > | R 5 8 > | R 3 5 8 | R R 5 > | R 5 3 > | R R _5 > | R 5 R > | R _5 _5 > | 8 5 8 > | 8 5 R > !co | 5 3 5 > !co
A x=x=x=xx 8 5 3 R > | 8 5 8 5 > | 8 8 5 3 > | R 5 R R > | R 5 3 >> > | R _5 R R > | R 3 R R > | 8 8 5 5 >
L x=x=x=x= 8 10 8 > | 8 8 5 > | R 3 5 8 | R 5 5 8 | R 5 8 5 | R 5 R > | R 5 5 > | 8 8 5 8 | 8 5 8 > | 8 3 5 >
T x=x=x=xx R R 5 R > | R 3 5 >> > | 8 8 5 5 > | 8 5 3 >> > | R R _5 _5 > | R 5 3 >> >
H1 x=x= R 5 | 8 5 | R _5 | R 3
H1 x=x= R > | 8 >
H2 x=xx R R > | R 5 > | 8 5 > | R 3 >

tune skip-on-three 1-2: two plain quarters, a skip on three, a step out; the answer walks level
S x=x=xxx= R 3 5 5 > | R R 5 5 > | R R 3 3 > | R 5 8 8 > | R R _5 _5 > | R 5 8 8 5 | R R 5 R > | 8 5 8 8 > | 8 5 3 3 > !co | 5 5 3 R > !co
A x=x=x=x= 8 5 3 > | 8 8 5 > | R 3 R > | R 5 R > | R 5 3 > | R _5 R > | 5 3 R > !co
S x=x=xxx= R 3 5 5 > | R R 5 5 > | R R 3 3 > | R 5 8 8 > | R R _5 _5 > | R 5 8 8 5 | R R 5 R > | 8 5 8 8 > | 8 5 3 3 > !co | 5 5 3 R > !co
C x===x=x= R 5 > | R 3 > | 8 5 > | R _5 > | R R > | 8 3 > | 5 R > !co
S x=x=xxx= R 3 5 5 > | R R 5 5 > | R R 3 3 > | R 5 8 8 > | R R _5 _5 > | R 5 8 8 5 | R R 5 R > | 8 5 8 8 > | 8 5 3 3 > !co | 5 5 3 R > !co
S x=x=xxx= 8 5 3 3 > | 8 8 5 5 > | R 3 R R > | R 5 R R > | R 5 3 3 > | R _5 R R > | R R 5 R > | 8 5 8 8 > | 5 3 R R > !co
L x=x=x=x= 8 10 8 > | R 5 8 5 | R 3 5 8 | 8 8 5 > | R 3 5 > | R 5 5 > | 8 10 8 5 | R 5 R > | 8 5 8 > | R R 5 >
T x=x=xxx= R R 5 R > | R 5 3 R > | R R R 5 > | R 3 5 3 > | 8 8 5 5 > | R R 3 >> > | R _5 R R >
H1 x=x= R 5 | 8 5 | R _5 | R 3
H1 x=x= R > | 8 >
H2 xxx= R R > | R 5 > | 8 8 > | R 3 >

tune long-foot 1-2: one long step and two short ones; the answer walks four
S x===x=x= R 3 5 | R 5 > | R 3 > | R 5 8 | R 5 3 | R _5 > | R R > | 5 3 > !co
A x=x=x=x= 8 5 3 > | 8 5 R > | R 5 3 > | R 5 R > | 8 5 8 > | R 3 R > | R _5 R > | 8 3 5 >
S x===x=x= R 3 5 | R 5 > | R 3 > | R 5 8 | R 5 3 | R _5 > | R R > | 5 3 > !co
C x===--x= R > | 8 > | R 5 | R 3 | 5 > !co
S x===x=x= R 3 5 | R 5 > | R 3 > | R 5 8 | R 5 3 | R _5 > | R R > | 5 3 > !co
L x===x=x= 8 10 > | 8 5 > | 8 10 8 | R 8 5 | R 8 > | R 5 > | 8 5 8 | R 5 5 | R R 5
A x=x=x=x= 8 5 3 > | 8 5 R > | R 5 3 > | R 5 R > | 8 5 8 > | R 3 R > | R _5 R > | 8 3 5 >
T x=x=x=x= R R 5 > | R 3 >> > | R 5 R > | R 5 >> > | 8 8 5 > | 8 5 >> > | R R _5 > | R _5 >> >
H1 x=x= R 5 | 8 5 | R _5 | R 3
H1 x=x= R > | 8 >
H2 x=x= R > | R 5 | R 3 | 8 >

tune heel-kick 1-2: a skip on one kicks the bar off; the answer comes the other way and breathes on three
S xxx=x=x= R R 3 5 > | R R 5 8 > | R R 5 3 > | R R R 5 > | R R R _5 > | R R 5 8 5 | R R 5 R > | 8 8 5 8 > | 8 8 5 3 > !co | 5 5 3 R > !co
A x=x=--x= 8 5 > | R 3 > | R 5 > | 8 5 3 | R _5 > | R R > | 8 3 >
S xxx=x=x= R R 3 5 > | R R 5 8 > | R R 5 3 > | R R R 5 > | R R R _5 > | R R 5 8 5 | R R 5 R > | 8 8 5 8 > | 8 8 5 3 > !co | 5 5 3 R > !co
C x=x=x=x= 8 5 R > | 8 5 3 > | R 5 R > | R 3 R > | R _5 R > | R 5 3 > | 8 5 8 > | R R 5 >
S xxx=x=x= R R 3 5 > | R R 5 8 > | R R 5 3 > | R R R 5 > | R R R _5 > | R R 5 8 5 | R R 5 R > | 8 8 5 8 > | 8 8 5 3 > !co | 5 5 3 R > !co
A x=x=--x= 8 5 > | R 3 > | R 5 > | 8 5 3 | R _5 > | R R > | 8 3 >
L xxx=x=x= 8 8 10 8 > | 8 8 5 8 > | R R 3 5 8 | R R 5 5 8 | R R 5 R > | R R 5 5 > | 8 8 5 5 > | 8 8 3 5 >
T x=x=x=x= R R 5 > | R 3 >> > | 8 8 5 > | R 5 >> > | R R _5 > | 8 5 >> > | R 5 R > | R _5 >> >
H1 xxx= R R 5 | 8 8 5 | R R _5 | R R 3
H1 xxx= R R > | 8 8 >
H2 x=x= R > | R 5 | R 3 | 8 >

tune street-climb 3-4: quarters by step upward; the answer comes down with a skip on three
S x=x=x=x= R 2 3 5 | R 2 3 > | R 3 4 > | R _7 R 2 | R 3 5 6 | R 2 3 4 | 3 4 5 > !co | 5 3 2 > !co
A x=x=xxx= 8 7 6 5 > | 8 6 5 3 > | R _7 _6 _5 > | R 3 2 R > | 8 5 6 5 > | R 5 4 3 > | 5 4 3 2 > !co
S x=x=x=x= R 2 3 5 | R 2 3 > | R 3 4 > | R _7 R 2 | R 3 5 6 | R 2 3 4 | 3 4 5 > !co | 5 3 2 > !co
C x=x=--xx R 3 >> > | 8 6 >> > | R _5 >> > | R 5 >> > | 8 5 >> > | 3 2 >> > !co
S x=x=x=x= R 2 3 5 | R 2 3 > | R 3 4 > | R _7 R 2 | R 3 5 6 | R 2 3 4 | 3 4 5 > !co | 5 3 2 > !co
L x=x=xxx= 8 9 10 8 > | 8 7 8 9 > | R 3 5 6 8 | R 5 6 5 > | 8 9 8 6 > | 5 6 8 7 > !co
S x=x=x=x= 8 7 6 > | 8 6 5 > | R _7 _6 > | R 2 3 > | R 5 4 > | R 3 2 > | 8 7 6 5
T x=x=x=xx R 3 2 >> > | 8 6 5 >> > | R 5 6 >> > | R _6 _5 >> > | R 2 3 >> > | R 5 4 >> >
H1 x=x= R 3 | R 2 | 8 6 | R _5
H1 x=x= R > | 8 >
H2 xxx= R 2 > | R 3 > | 8 7 > | R _7 >

tune slow-hat 3-4: a dotted step that skips into three; the answer is four level quarters
S x==xx=x= R 2 3 5 | R 3 5 6 | R _6 _5 > | R 5 6 > | R 2 3 > | 8 7 6 > | R 3 2 > | 5 6 5 > !co | 3 4 5 > !co
A x=x=x=x= 8 6 5 > | R 5 3 2 | R _7 _6 > | 8 5 4 > | R 3 5 > | 8 7 6 5 | R 3 2 > | 5 4 3 > !co
S x==xx=x= R 2 3 5 | R 3 5 6 | R _6 _5 > | R 5 6 > | R 2 3 > | 8 7 6 > | R 3 2 > | 5 6 5 > !co | 3 4 5 > !co
C x==xx=x= R R 3 > | 8 8 5 > | R R _6 > | 8 7 5 > | R R 2 > | R R 5 >
S x==xx=x= R 2 3 5 | R 3 5 6 | R _6 _5 > | R 5 6 > | R 2 3 > | 8 7 6 > | R 3 2 > | 5 6 5 > !co | 3 4 5 > !co
A x=x=x=x= 8 6 5 > | R 5 3 2 | R _7 _6 > | 8 5 4 > | R 3 5 > | 8 7 6 5 | R 3 2 > | 5 4 3 > !co
L x==xx=x= 8 9 10 > | 8 9 8 6 | R 5 6 8 | R 3 5 > | 8 7 8 > | 5 6 8 > !co
T x=x=x=xx 8 6 5 >> > | R 3 2 >> > | R _5 _6 >> > | R 2 3 >> > | R 3 5 >> > | R 5 6 >> >
H1 x==x R 2 | R > | 8 7 | R 3
H2 x=x= R > | 8 > | R 2 | R 3

tune gatepost 3-4: one note and an open second beat, then three and a swung pair; the answer fills the gap walking
S x=--x=xx R 5 6 5 | R 3 2 > | R 5 >> > | R _5 _6 > | R 3 4 5 | 8 5 6 > | R 3 >> > | 5 3 2 > !co
A x=x=x=x= 8 7 6 5 | 8 6 5 > | R 2 3 > | R _7 _6 > | R 3 5 > | R 5 4 > | R 3 2 > | 5 4 3 > !co
S x=--x=xx R 5 6 5 | R 3 2 > | R 5 >> > | R _5 _6 > | R 3 4 5 | 8 5 6 > | R 3 >> > | 5 3 2 > !co
C x=x=x=x= 8 5 3 > | R 2 3 > | R _6 _5 > | 8 6 5 > | R 3 2 > | R 5 3 >
S x=--x=xx R 5 6 5 | R 3 2 > | R 5 >> > | R _5 _6 > | R 3 4 5 | 8 5 6 > | R 3 >> > | 5 3 2 > !co
L x=x=x=x= 8 9 10 > | 8 9 8 6 | R 3 5 8 | R 5 6 > | 8 7 8 > | 5 6 8 > !co
S x=--x=xx 8 5 6 5 | 8 6 5 > | R 3 2 > | R _5 _6 > | R 5 >> > | 8 6 >> > | R _7 >> >
T x=x=x=xx R 3 2 >> > | R _6 _5 >> > | R 2 3 >> > | R 5 3 >> > | R 5 6 >> > | 8 7 6 >> >
H1 x=x= R 5 | R 3 | 8 6 | R 2
H1 x=x= R > | 8 >
H2 x=xx R >> > | 8 >> > | R 2 > | R 3 >

tune fast-shoes 4-5: two quarters and four running eighths; the answer walks the other way in quarters
S x=x=xxxx R 5 6 5 >> > | R 2 3 5 >> > | R _6 _5 _6 >> > | R 3 4 3 >> > | 8 6 5 6 >> > | R 3 2 3 >> > | 5 3 2 3 >> > !co | 3 5 6 5 >> > !co
A x=x=x=x= 8 7 6 > | 8 c 5 3 | R _7 _6 > | R 3 2 > | 8 6 5 > | R 2 3 > | R c 5 > | 5 4 3 > !co
S x=x=xxxx R 5 6 5 >> > | R 2 3 5 >> > | R _6 _5 _6 >> > | R 3 4 3 >> > | 8 6 5 6 >> > | R 3 2 3 >> > | 5 3 2 3 >> > !co | 3 5 6 5 >> > !co
C x=x=--xx R _6 >> > | R 2 >> > | R 5 >> > | 8 5 >> > | R 3 >> > | 8 6 >> >
S x=x=xxxx R 5 6 5 >> > | R 2 3 5 >> > | R _6 _5 _6 >> > | R 3 4 3 >> > | 8 6 5 6 >> > | R 3 2 3 >> > | 5 3 2 3 >> > !co | 3 5 6 5 >> > !co
L x=x=x=x= 8 9 10 > | R 5 6 8 | 8 9 8 c | R 3 5 > | 8 7 8 > | 5 6 8 > !co
A x=x=x=x= 8 7 6 > | 8 c 5 3 | R _7 _6 > | R 3 2 > | 8 6 5 > | R 2 3 > | R c 5 > | 5 4 3 > !co
T x=x=xxxx R 3 2 R >> > | R 5 4 3 >> > | R 2 3 5 >> > | R 3 5 6 >> > | 8 6 5 3 >> > | R _5 _6 _7 >> >
H1 x=x= R 3 | R 5 | 8 6 | R _6
H1 x=x= R > | 8 >
H2 xxxx R 2 >> > | R 3 >> > | 8 7 >> > | R _7 >> >

tune half-step-hop 4-5: the skip on two slides through a half step; the answer sinks by scale
S x=xxx=x= R b3 3 5 > | R 2 3 5 > | R 4 #4 5 > | R 2 3 5 6 | R _6 _7 R > | 8 7 6 5 > | R 3 2 R > | R 5 6 5 3 | 3 4 #4 5 > !co | 5 4 3 R > !co
A x=x=x=x= 8 c 5 > | 8 7 6 5 | R _7 _6 > | R 5 4 > | 8 6 5 > | R 3 2 > | R 2 3 > | 5 3 2 > !co
S x=xxx=x= R b3 3 5 > | R 2 3 5 > | R 4 #4 5 > | R 2 3 5 6 | R _6 _7 R > | 8 7 6 5 > | R 3 2 R > | R 5 6 5 3 | 3 4 #4 5 > !co | 5 4 3 R > !co
C x===x=x= R 3 > | 8 7 > | R 2 > | R _6 > | R 5 > | 8 c > | R _7 >
S x=xxx=x= R b3 3 5 > | R 2 3 5 > | R 4 #4 5 > | R 2 3 5 6 | R _6 _7 R > | 8 7 6 5 > | R 3 2 R > | R 5 6 5 3 | 3 4 #4 5 > !co | 5 4 3 R > !co
A x=x=x=x= 8 c 5 > | 8 7 6 5 | R _7 _6 > | R 5 4 > | 8 6 5 > | R 3 2 > | R 2 3 > | 5 3 2 > !co
L x=xxx=x= 8 9 10 8 > | R 5 6 8 > | 8 7 8 9 > | R 3 5 6 > | 8 9 8 6 5 | 5 6 7 8 > !co
T x=x=x=xx R 3 5 >> > | 8 6 5 >> > | R 5 6 >> > | R _6 _5 >> > | R 3 2 >> > | 8 c 5 >> >
H1 x=xx R b3 3 | R 2 3 | 8 7 6 | R R >
H2 x=x= R > | 8 > | R 2 | R 3

tune side-door 4-5: pushed notes before two and three, caught by a level four; the answer is plain and goes the other way
S xx=xx=x= R 2 3 5 > | R 3 2 R > | R 5 6 5 > | R R _6 _5 > | 8 7 6 5 > | R 3 4 5 6 | R R 2 3 > | 5 6 5 3 > !co | 3 2 R _7 > !co
A x=x=x=x= 8 7 6 > | 8 6 5 3 | R 3 5 > | R _7 _6 > | R 5 4 > | 8 c 5 > | R 3 2 > | 5 4 3 > !co
S xx=xx=x= R 2 3 5 > | R 3 2 R > | R 5 6 5 > | R R _6 _5 > | 8 7 6 5 > | R 3 4 5 6 | R R 2 3 > | 5 6 5 3 > !co | 3 2 R _7 > !co
C x=x=--xx R 5 >> > | 8 6 >> > | R _6 >> > | 8 c >> > | R 2 >> > | R 3 >> >
S xx=xx=x= R 2 3 5 > | R 3 2 R > | R 5 6 5 > | R R _6 _5 > | 8 7 6 5 > | R 3 4 5 6 | R R 2 3 > | 5 6 5 3 > !co | 3 2 R _7 > !co
L xx=xx=x= 8 9 10 9 > | 8 9 8 6 > | R 5 6 8 > | R 3 5 6 > | 8 8 7 8 > | 5 6 7 8 > !co
A x=x=x=x= 8 7 6 > | 8 6 5 3 | R 3 5 > | R _7 _6 > | R 5 4 > | 8 c 5 > | R 3 2 > | 5 4 3 > !co
T x=x=x=xx 8 6 5 >> > | R 3 2 >> > | R _5 _6 >> > | R 2 3 >> > | R c 5 >> > | R 5 6 >> >
H1 xx=x R 2 3 | R R > | 8 7 6 | R R 3
H2 x=x= R > | 8 > | R 2 | R 3
`;
