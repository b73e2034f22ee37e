/** Calypso and soca: tunes of eight bars (see the notation beside the books). */
export const CALYPSO_TUNES = `
tune hop 1-2: a hop on the one, two steps, and the drums alone on four; the answer carries on
S xxx=x=-- R R 5 8 | R R 8 5 | 8 8 5 R | R R _5 R | R R 3 5 | 5 5 8 R !co
A xxx=x=x= 8 8 5 R > | R R 8 5 > | R R 5 8 > | R R _5 R > | 8 8 5 3 > | R R 5 3 > | 5 5 8 5 > !co
S xxx=x=-- R R 5 8 | R R 5 R | 8 8 R 5 | R R _5 _5 | R R 3 R | 8 8 5 3 | 5 5 R 5 !co
C xxx=--x= R R R > | R R 8 > | 8 8 5 > | R R _5 > | R R 5 > | R R 3 >
S xxx=x=-- R R 5 8 | R R 8 5 | 8 8 5 R | R R _5 R | R R 3 5 | 5 5 8 R !co
L xxx=x=x= R R 5 8 > | 8 8 5 8 > | R R 8 8 > | R 5 8 5 > | 8 8 10 8 > | R R 3 8 >
S xxx=x=-- R R 8 5 | R R 5 R | 8 8 5 R | R R _5 R | R R 5 3 | 8 8 5 3 | 5 5 8 5 !co
T xxx=--xx R R 5 R > | R R R 5 > | 8 8 5 R > | R R _5 R > | R R 3 5 > | R R 3 >> > | R R 5 >> >
H1 xxx= R R 5 | R R > | R R 8
H2 x=xx R 5 > | R R > | R 8 >

tune call 1-2: a long call, one note on three, and a pair on four that throws it into the next bar
S x===x=xx R 5 8 > | R 8 5 > | 8 5 R > | R _5 R > | R 3 5 > | R 5 3 > | 5 8 5 > !co
A x===xxx= 8 5 8 > | R 5 R > | 8 8 5 > | R _5 R > | 8 5 3 > | R 3 R > | 5 8 R > !co
S x===x=xx R 5 8 > | R R 5 > | 8 8 5 > | R _5 _5 > | R 3 5 > | 8 5 3 > | 5 8 R > !co
C x===--x= R > | R 5 | 8 > | R _5 | R R !st
S x===x=xx R 5 8 > | R 8 5 > | 8 5 R > | R _5 R > | R 3 5 > | R 5 3 > | 5 8 5 > !co
A x===xxx= 8 5 R > | R 5 8 > | 8 8 R > | R _5 _5 > | 8 5 3 > | R 3 5 > | 5 8 5 > !co
L x===x=xx 8 8 5 > | R 8 8 > | R 5 8 5 | 8 10 8 > | R 5 10 >
T x=x=x=xx R 5 R 5 > !st | R R 5 R > | R _5 R R > | 8 5 R 5 > | R 3 5 >> > | R 5 3 >> > | R R 5 >> >
H1 x=xx R 5 > | R R > | R 8 5
H2 x=xx R 5 > | R R > | R 3 >

tune skip 1-2: a skip on two, air on three, and four as the step across
S x=xx--x= R 5 8 > | R 8 5 > | 8 5 R > | R _5 R > | R 3 5 > | 8 5 3 > | 5 8 5 R !co
A x=xxx=x= 8 8 5 R > | R 5 8 5 > | R 8 5 8 > | R _5 _5 R > | 8 5 3 R > | R 3 5 3 > | 5 8 5 R > !co
S x=xx--x= R 5 8 > | R R 8 > | 8 8 5 > | R R _5 > | R 3 5 > | R 5 3 > | 5 5 8 R !co
C x=x=--x= R R > | R 8 > | 8 5 > | R _5 > | R 3 >
S x=xx--x= R 5 8 > | R 8 5 > | 8 5 R > | R _5 R > | R 3 5 > | 8 5 3 > | 5 8 5 R !co
A x=xxx=x= 8 8 5 8 > | R 5 8 R > | R 8 5 R > | R _5 _5 _5 > | 8 5 3 5 > | R 3 5 R > | 5 8 5 8 > !co
L x=xx--x= 8 5 8 > | R 8 8 > | R 5 8 5 | 8 8 10 > | R 5 10 >
T x=xxx=x= R 5 R 5 > | R R 5 R > | 8 5 5 R > | R _5 R _5 > | R 3 5 3 > | R 5 3 >> > | R R 3 >> >
H1 x=xx R 5 8 | R 5 > | R R >
H2 x=x= R > | R R | 8 >

tune smile 2-2: long, and two short ones that smile across the middle of the bar; four is for the drums
S x==xxx-- R 3 5 8 | R 5 3 5 | 8 5 3 R | R _5 _5 R | R R 3 5 | R 5 8 5 | 3 5 3 R !co
A x==xxxx= 8 5 3 R > | R 5 3 5 > | R 3 5 3 > | R _5 _5 R > | 8 8 5 3 > | R R 3 5 > | 5 3 5 R > !co
S x==xxx-- R 3 5 8 | R 3 5 3 | 8 8 5 3 | R R _5 R | R 5 3 R | 5 8 5 3 !co
C x==x--x= R R > | R 5 > | 8 5 > | R 3 > | R _5 > | 8 R >
S x==xxx-- R 3 5 8 | R 5 3 5 | 8 5 3 R | R _5 _5 R | R R 3 5 | R 5 8 5 | 3 5 3 R !co
A x==xxxx= 8 5 3 5 > | R 5 3 R > | R 3 5 8 > | R _5 _5 _5 > | 8 8 5 8 > | R R 3 R > | 5 3 5 3 > !co
L x==xxx-- R 5 8 10 | 8 10 8 5 | R 8 10 8 | 8 8 10 8 | 5 8 10 8 !co
T x==xx=xx R 5 3 >> > | R 3 5 >> > | R 5 R 5 > | 8 5 3 >> > | R _5 _5 R > | R R 3 >> >
H1 x==x R 5 | R > | R 3
H2 x=xx R 3 > | R 5 > | R >> >

tune sway 3-4: the bar swings out on the and of two, waits, and comes in late; four steps across
S x==x-xx= R 3 5 > | R 5 6 > | 8 6 5 > | R _7 _6 > | R 2 3 > | R 2 _7 R !st | 3 4 5 > !co
A x==x-xxx 8 7 6 5 > | R 5 4 3 > | R 3 2 R > | R _7 _6 _5 > | R 3 4 5 > | 5 6 5 3 > !co
S x==x-xx= R 3 5 > | R 2 3 > | 8 7 6 > | R _6 _5 > | R 5 4 > | R 3 2 R !st | 5 4 3 > !co
C x==x-xx= R 3 2 > | R 2 R > | 8 6 5 > | R _7 R > | R 5 6 > | R 5 3 >
S x==x-xx= R 3 5 > | R 5 6 > | 8 6 5 > | R _7 _6 > | R 2 3 > | R 2 _7 R !st | 3 4 5 > !co
A x==x-xxx 8 7 6 >> > | R 5 4 >> > | R 3 2 >> > | R _7 _6 >> > | R 3 4 >> > | 5 6 5 >> > !co
L x==x-xx= 8 9 10 8 | 8 10 9 > | R 5 8 9 | R 7 8 > | 8 9 10 > | 5 8 9 10 !co
T x==xxxxx R 5 4 3 >> > | R 3 2 R >> > | 8 7 6 5 >> > | R _5 _6 _7 >> > !st | R 5 3 >>> >> > | R 3 4 5 >> >
H1 x==x R > | R 3 | R 5
H2 x=xx R >> > | R 3 > | R 5 >

tune patter 3-4: two on the one, the and of two falling onto three, all short, and four leads
S xx-xx-x- R R 2 3 > | R R 5 6 > | 8 8 7 6 > | R R _7 _6 > | R R 3 2 > | R R 6 5 > | R R _6 _7 R !st | 3 3 4 5 > !co
A xx-xx-xx 8 8 7 5 6 > | R R 5 4 3 > | R R 3 2 >> > | R R _7 _6 _5 > | R R 5 6 >> > | 5 5 4 3 2 > !co
S xx-xx-x- R R 2 3 > | R R 3 4 > | 8 8 6 5 > | R R _6 _5 > | R R 6 5 > | R R 2 _7 R !st | 5 5 6 8 > !co
C xx-xx--- R R 2 R | R R 5 8 | 8 8 7 8 | R R _7 R | R R 3 R | R R _6 _5 | R R 2 > | R R 8 6
S xx-xx-x- R R 2 3 > | R R 5 6 > | 8 8 7 6 > | R R _7 _6 > | R R 3 2 > | R R 6 5 > | R R _6 _7 R !st | 3 3 4 5 > !co
A xx-xx-xx 8 8 7 5 >> > | R R 5 4 >> > | R R 3 2 R > | R R _7 _6 >> > | R R 5 6 5 > | 5 5 4 3 >> > !co
L xx-xx-x- R R 8 9 10 | 8 8 9 10 > | R R 7 8 > | 8 8 10 9 > | R R 8 9 > | 5 5 8 9 > !co
T xx-xx-xx R R 5 6 >> > | R R 3 4 5 > | 8 8 7 6 >> > | R R _5 _6 _7 R !st | R R 3 2 >> > | R R 5 3 >> >
H1 xx-x R R > | R R 3 | R R 5
H2 x-xx R 3 > | R >> > | R 5 >

tune beckon 3-4: a held root and a late pickup of three; the answer lets the drums have the one
S x===-xxx R 5 6 > | R 3 4 > | 8 7 6 5 | R _5 _6 > | R 3 >> > | R _6 _7 R !st | 5 3 2 > !co
A -xx=x=xx R 8 6 5 > | R 3 5 3 > | R _7 _6 _5 > | R 5 4 3 > | R 2 3 >> > | 8 7 6 >> > | 3 5 3 2 > !co
S x===-xxx R 5 6 > | R 2 3 4 | 8 6 5 3 | R _6 _7 > | R 5 >> > | 8 6 5 > | 3 4 5 6 !co
C x===--xx R >> > | R 5 > | 8 >> > | R _7 > | R 3 > | 8 6 >
S x===-xxx R 5 6 > | R 3 4 > | 8 7 6 5 | R _5 _6 > | R 3 >> > | R _6 _7 R !st | 5 3 2 > !co
A -xx=x=xx R 8 7 6 > | R 3 5 4 > | R _7 _6 >> > | R 5 4 >> > | R 2 3 5 > | 8 7 6 5 > | 3 5 4 3 > !co
L x===-xxx 8 8 9 10 | R 7 8 9 | 8 10 9 8 | R 8 9 > | 8 10 8 > | 8 9 10 > | 5 8 9 10 !co
T x=x=-xxx R 5 4 >> > | R R 5 6 7 !st | 8 7 6 >> > | R 3 2 >> > | R _5 _6 >> > | R 3 >>> >> >
H1 x=-x R > | R 5 | R 3
H2 x=xx R 3 > | R >> > | R 5 >

tune flutter 4-5: long, short, and a flutter of sixteenths before four, as a bird would answer the drums
S x=====x=x=xxx=-- R 3 5 6 5 > | R 5 6 8 7 > | 8 6 5 4 3 > | R 5 3 4 3 > | R _7 _6 _7 _6 > | R 3 2 3 2 R !st | 3 5 6 5 4 3 !co
A x=====x=x=x=x=xx 8 7 6 5 3 >> > | R 5 4 3 2 >> > | R 3 5 6 5 >> > | R _7 _6 _5 _6 >> > | R 2 3 4 5 >> > | 5 6 5 3 2 >> > !co
S x=====x=x=xxx=-- R 3 5 6 5 > | R 2 3 4 3 > | 8 7 6 5 4 > | R _7 _6 _5 _6 > | R 5 4 3 2 R | R _6 _7 R _7 R !st | 5 3 4 5 4 3 !co
C x=====x=x=------ R 3 R | R 5 8 | 8 6 5 | R _7 R | R 2 3 | R R > | R 5 6
S x=====x=x=xxx=-- R 3 5 6 5 > | R 5 6 8 7 > | 8 6 5 4 3 > | R 5 3 4 3 > | R _7 _6 _7 _6 > | R 3 2 3 2 R !st | 3 5 6 5 4 3 !co
A x=====x=x=x=x=xx 8 7 6 5 8 >> > | R 5 4 3 5 >> > | R 3 5 6 8 >> > | R _7 _6 _5 R >> > | R 2 3 4 3 >> > | 5 6 5 3 R >> > !co
L x=====x=x=xxx=-- 8 9 10 9 8 > | 8 10 9 10 9 8 | R 5 8 9 8 > | R 7 8 10 9 8 | 8 9 10 8 6 > | 5 8 9 10 9 8 !co
T x=====x=x=xxx=xx R 5 4 3 2 R >> > | R 3 4 5 #4 4 >> > | 8 7 6 5 4 3 >> > | R 3 2 R _7 _6 >> > | R _5 _6 _7 _6 _7 >> > !st | R 5 6 5 4 3 >> >
H1 x=====x= R > | R 3 | R 5
H2 x=xxx=xx R 3 2 R >> > | R 5 4 3 >> > | R 2 3 5 >> >

tune rattle 4-5: short steps that dodge three, with the answer coming in after the one
S x-xx-xx= R 2 3 5 > | R 5 6 5 > | 8 7 6 5 > | R _7 _6 _5 > | R 3 4 5 6 | R 5 4 3 > | R _6 _7 2 R !st | 3 4 5 6 > !co
A -xxx-xxx R 8 7 6 5 > | R 3 2 R >> > | R _7 _6 _5 >> > | R 5 4 3 2 > | R 5 6 5 >> > | 5 4 3 2 R > !co
S x-xx-xx= R 2 3 5 > | R 3 2 R > | 8 6 5 3 > | R _5 _6 _7 > !st | R c 6 5 > | R 5 #4 4 > | 5 3 4 5 > !co
C x-xx--x= R 2 3 > | R 3 2 > | 8 7 6 > | R _7 _6 > | R 5 6 > | R 2 R >
S x-xx-xx= R 2 3 5 > | R 5 6 5 > | 8 7 6 5 > | R _7 _6 _5 > | R 3 4 5 6 | R 5 4 3 > | R _6 _7 2 R !st | 3 4 5 6 > !co
A -xxx-xxx R 8 7 6 >> > | R 3 2 R _7 > | R _7 _6 _5 _6 > | R 5 4 3 >> > | R 5 6 5 3 > | 5 4 3 2 >> > !co
L x-xx-xx= 8 9 10 8 > | R 7 8 9 10 | 8 10 9 8 > | R 5 8 9 > | 8 8 9 10 > | 5 6 8 9 10 !co
T x-xx-xxx R 5 4 3 >> > | R 2 3 5 >> > | 8 7 6 5 >> > | R _5 _6 _7 >> > !st | R 3 2 R >> > | R 5 #4 4 >> > | R 3 5 >>> >> >
H1 x-xx R 2 3 | R R > | R 5 >
H2 x=xx R >> > | R 3 > | R 5 >

tune parade 4-5: a step, then a long one that leans over three, and three quick ones to the bar line
S x=x==xxx R 3 5 6 > | R 5 6 5 > | 8 7 5 6 > | R _7 _6 _5 > | R 3 2 >> > | R 2 3 2 R !st | 3 5 4 3 > !co
A x=x==xxx 8 6 5 3 > | R 5 4 3 > | R 3 4 5 > | R _6 _5 _6 > | 8 7 6 >> > | R c 6 5 > | 5 3 2 R > !co
S x=x==xxx R 3 5 6 > | R 2 3 4 > | 8 7 6 5 > | R _5 _6 _7 R !st | R 5 3 >> > | R 5 #4 4 > | 5 6 5 4 > !co
C x=x==xx= R 3 2 > | R 2 R > | 8 7 6 > | R _7 R > | R 5 3 > | R 5 6 >
S x=x==xxx R 3 5 6 > | R 5 6 5 > | 8 7 5 6 > | R _7 _6 _5 > | R 3 2 >> > | R 2 3 2 R !st | 3 5 4 3 > !co
A x=x==xx= 8 6 5 > | R 5 4 > | R 3 5 > | R _6 _5 > | 8 7 6 > | R c 6 > | 5 3 2 > !co
L x=x==xxx 8 9 10 9 > | R 5 8 9 > | 8 10 9 8 > | R 7 8 9 > | R 8 9 >> > | 5 8 9 10 > !co
T x=xxxxxx R 5 4 3 2 >> > | R 3 2 R 3 >> > | 8 7 6 5 3 >> > | R _5 _6 _7 R 2 > !st | R 5 6 5 4 >> > | R R 3 5 #4 >> >
H1 x=xx R 3 > | R R > | R 5 >
H2 x=xx R >> > | R 3 > | R 5 >
`;
