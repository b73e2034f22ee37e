/** Rocksteady: tunes of eight bars (see the notation beside the books). */
export const ROCKSTEADY_TUNES = `
tune lamp-lit 1-2: two steps and two short notes, then nothing; the answer rests on three and fetches the chord
S x=x=xx-- R 3 5 3 | R 5 8 5 | R 3 5 > | R 5 5 R | R 5 3 R | R _5 _5 R | R R 5 > | R R _5 _5 | 8 5 8 > | 8 5 3 R !co | 5 3 R R !co
A x=x=--x= 8 5 > | R 3 > | R 5 > | R _5 > | R R > | 8 3 > | 5 R > !co
S x=x=xx-- R 3 5 3 | R 5 8 5 | R 3 5 > | R 5 5 R | R 5 3 R | R _5 _5 R | R R 5 > | R R _5 _5 | 8 5 8 > | 8 5 3 R !co | 5 3 R R !co
C x===x=-- R > | 8 5 | R R | R _5 | 8 > | R 3 | 5 R !co
S x=x=xx-- R 3 5 3 | R 5 8 5 | R 3 5 > | R 5 5 R | R 5 3 R | R _5 _5 R | R R 5 > | R R _5 _5 | 8 5 8 > | 8 5 3 R !co | 5 3 R R !co
A x=x=--x= 8 5 > | R 3 > | R 5 > | R _5 > | R R > | 8 3 > | 5 R > !co
L x=x=xx-- R 3 5 8 | R 5 8 8 | 8 10 8 5 | 8 8 5 8 | 8 10 8 > | R 5 5 > | R R 5 5 | 8 5 8 5 | 8 8 5 >
T x=x=--x= R 5 > | R 3 > | 8 5 > | R _5 > | R R > | 8 3 >
H1 x=x= R 5 | 8 5 | R _5 | R 3
H1 x=x= R > | 8 >
H2 x=x= R > | 8 > | R 5 | R 3

tune porch-step 1-2: one note, a step of silence, two short; the answer is three in a row, a hole and a fetch
S x=--xx-- R 3 5 | R 5 R | R 5 3 | R 5 5 | R 3 R | R _5 R | 8 5 3 | R R > | R 8 5 | 5 3 R !co
A xxx=--x= 8 5 3 > | R R 5 > | R 3 5 > | 8 8 5 > | R R 3 > | R R _5 > | R R R > | 5 5 R > !co
S x=--xx-- R 3 5 | R 5 R | R 5 3 | R 5 5 | R 3 R | R _5 R | 8 5 3 | R R > | R 8 5 | 5 3 R !co
C xxx=---- R R > | R R R | R 3 R | R 5 R | 8 8 5 | R _5 R | 8 5 3
S x=--xx-- R 3 5 | R 5 R | R 5 3 | R 5 5 | R 3 R | R _5 R | 8 5 3 | R R > | R 8 5 | 5 3 R !co
A xxx=--x= 8 5 3 > | 8 8 5 > | R 5 3 > | R R 5 > | R R 3 > | R R _5 > | R R R > | 5 5 R > !co
L x=--xx-- 8 10 8 | R 8 5 | R 3 8 | 8 5 8 | R 5 8 | R 5 > | R 5 R | 8 8 5 | 8 5 >
T xxx=--x= R 5 5 > | R 5 3 > | R R 5 > | R 3 5 > | 8 8 5 > | R _5 R >
H1 x=-- R | 8
H2 xxx= R R > | R 5 > | 8 8 > | R 3 >

tune three-and-wait 1-2: three quick ones and a landing, then the rest; the answer waits in the middle
S xxx=x=-- R R 3 5 | R R 5 R | R 3 5 3 | R 5 5 8 | R 5 3 R | R R _5 R | 8 8 5 3 | R R 5 > | R R 8 5 | 8 8 5 5 | R _5 _5 > | 5 5 3 R !co
A x=--xxx= 8 5 3 > | R 5 5 > | R 3 R > | 8 8 5 > | R 3 5 > | R R R > | R _5 R > | R 5 R > | 5 3 R > !co
S xxx=x=-- R R 3 5 | R R 5 R | R 3 5 3 | R 5 5 8 | R 5 3 R | R R _5 R | 8 8 5 3 | R R 5 > | R R 8 5 | 8 8 5 5 | R _5 _5 > | 5 5 3 R !co
C x=--x=-- R > | R R | R 5 | 8 5 | R _5 | 8 > | R 3
S xxx=x=-- R R 3 5 | R R 5 R | R 3 5 3 | R 5 5 8 | R 5 3 R | R R _5 R | 8 8 5 3 | R R 5 > | R R 8 5 | 8 8 5 5 | R _5 _5 > | 5 5 3 R !co
L xxx=x=-- 8 8 10 8 | R R 5 8 | R 3 5 8 | 8 8 5 8 | 8 10 8 5 | R 5 5 > | R 5 8 5 | 8 8 5 > | R R 5 5 | 8 5 5 8
S xxx=x=-- 8 5 3 R | 8 8 5 R | R 5 3 R | R R 5 > | R R 3 > | R _5 _5 R | 8 8 5 > | 8 8 5 5 | R _5 _5 >
T x=--xxx= R 5 R > | R 5 3 > | 8 5 5 > | R 3 5 > | R _5 R > | R 5 >> > | R R 5 >
H1 x=-- R | 8
H2 xxx= R R > | R 5 > | 8 8 > | R 3 >

tune bell-and-two 1-2: a half note, two short, a rest; the answer is three even quarters
S x===xx-- R 3 5 | R 5 8 | R 5 3 | R 5 R | R 3 R | R _5 R | 8 5 3 | R R > | R 8 5 | 5 3 R !co
A x=x=x=-- 8 5 3 | 8 5 R | R 3 > | R 5 > | R 5 3 | R _5 R | R 5 R | R R > | 8 5 > | 5 3 > !co
S x===xx-- R 3 5 | R 5 8 | R 5 3 | R 5 R | R 3 R | R _5 R | 8 5 3 | R R > | R 8 5 | 5 3 R !co
C x=--x=-- R > | R R | 8 5 | R _5 | 8 > | R 5 | R 3
S x===xx-- R 3 5 | R 5 8 | R 5 3 | R 5 R | R 3 R | R _5 R | 8 5 3 | R R > | R 8 5 | 5 3 R !co
A x=x=x=-- 8 5 3 | 8 5 R | R 3 > | R 5 > | R 5 3 | R _5 R | R 5 R | R R > | 8 5 > | 5 3 > !co
L x===xx-- 8 10 8 | 8 8 5 | R 8 10 | R 8 8 | R 3 8 | 8 5 8 | R 5 >
T x=x=x=x= R R 5 > | R 3 5 > | R 5 R > | R 5 >> > | 8 8 5 > | R 3 >> > | R _5 R > | 8 5 >> >
H1 x=xx R R 5 | R 5 R | R R > | R R 3
H2 x=x= R > | 8 > | R 5 | R 3

tune garden-gate 3-4: a sung line of five that turns back before the rest; the answer falls and fetches
S x=xxxx-- R 3 4 5 6 | R 3 2 3 R | R 5 6 5 3 | R _6 _5 _6 R | R 2 3 5 > | 8 6 5 6 8 | R 5 4 3 2 | 5 6 5 3 R !co | 3 4 5 3 R !co
A x=xx--xx 8 6 5 >> > | R 3 2 >> > | 8 7 6 >> > | R _6 _5 >> > | R 5 3 >> > | R 2 3 >> > | 5 4 3 >> > !co
S x=xxxx-- R 3 4 5 6 | R 3 2 3 R | R 5 6 5 3 | R _6 _5 _6 R | R 2 3 5 > | 8 6 5 6 8 | R 5 4 3 2 | 5 6 5 3 R !co | 3 4 5 3 R !co
C x=x=x=-- R 3 2 | 8 7 6 | R 2 R | R _6 _5 | R 3 > | 8 6 > | R _7 R | 5 4 > !co
S x=xxxx-- R 3 4 5 6 | R 3 2 3 R | R 5 6 5 3 | R _6 _5 _6 R | R 2 3 5 > | 8 6 5 6 8 | R 5 4 3 2 | 5 6 5 3 R !co | 3 4 5 3 R !co
A x=xx--xx 8 6 5 >> > | R 3 2 >> > | 8 7 6 >> > | R _6 _5 >> > | R 5 3 >> > | R 2 3 >> > | 5 4 3 >> > !co
L x=xxxx-- 8 9 10 9 8 | 8 7 8 9 8 | R 5 6 7 8 | R 3 4 5 > | 8 9 8 6 5 | 5 6 8 9 8 !co
T x=xx--xx R 5 6 >> > | 8 6 5 >> > | R 3 5 >> > | R _5 _6 >> > | R 2 3 >> > | R 5 3 >> >
H1 x=xx R 2 3 | R R > | 8 7 6 | R 3 > | R 3 2
H2 x=-x R > | 8 > | R 3 | R 2

tune late-guest 3-4: the one is left to the room, three notes knock just behind it; the answer has the one and runs home
S -xx=x=-- R 3 5 | R 2 3 | R 3 2 | 8 6 5 | R _6 _5 | R _7 R | R 5 6 | R 5 > | 5 6 5 !co | 3 2 R !co
A x=--xxxx R 3 2 >> > | R 5 6 >> > | 8 6 5 >> > | 8 7 6 >> > | R _6 _5 >> > | R 2 3 >> > | R 5 3 >> >
S -xx=x=-- R 3 5 | R 2 3 | R 3 2 | 8 6 5 | R _6 _5 | R _7 R | R 5 6 | R 5 > | 5 6 5 !co | 3 2 R !co
C x=--xx-- R 3 2 | R 2 > | 8 7 6 | R _7 _6 | R 5 > | R 2 R | 8 5 > | R 3 >
S -xx=x=-- R 3 5 | R 2 3 | R 3 2 | 8 6 5 | R _6 _5 | R _7 R | R 5 6 | R 5 > | 5 6 5 !co | 3 2 R !co
A x=--xxxx R 3 2 >> > | R 5 6 >> > | 8 6 5 >> > | 8 7 6 >> > | R _6 _5 >> > | R 2 3 >> > | R 5 3 >> >
L -xx=x=-- 8 9 10 | 8 9 8 | 5 6 8 | 8 10 9 | 8 7 8 | R 5 6 | R 3 5
T x=--xxxx R 3 5 >> > | 8 6 5 >> > | R _5 _6 >> > | R 3 2 >> > | R 5 4 >> > | R 5 6 >> >
H1 x=-- R | 8
H2 xxxx R 2 >> > | R 3 >> > | 8 7 >> > | R _7 >> >

tune tide-over 3-4: two steps and a note held across three; the same wave comes back with two that lead
S x=xx==-- R 3 2 | R 5 6 | R _6 _5 | R 2 3 | R 3 5 | 8 7 6 | R _7 R | R 5 > | 5 4 3 !co | 3 4 5 !co
A x=xx==xx 8 6 5 >> > | R 5 4 >> > | R 3 2 >> > | R _7 _6 >> > | 8 7 6 >> > | R 2 3 >> > | R 3 5 >> > | 5 4 3 >> > !co
S x=xx==-- R 3 2 | R 5 6 | R _6 _5 | R 2 3 | R 3 5 | 8 7 6 | R _7 R | R 5 > | 5 4 3 !co | 3 4 5 !co
C x===x=-- R > | 8 7 | R _6 | R 3 | 8 > | R _7 | R 2 | 3 2 !co
S x=xx==-- R 3 2 | R 5 6 | R _6 _5 | R 2 3 | R 3 5 | 8 7 6 | R _7 R | R 5 > | 5 4 3 !co | 3 4 5 !co
A x=xx==xx 8 7 6 >> > | R 5 4 >> > | R 3 2 >> > | R _7 _6 >> > | 8 6 5 >> > | R 2 3 >> > | R 3 5 >> > | 5 4 3 >> > !co
L x=xx==xx 8 9 10 >> > | 8 9 8 >> > | R 5 6 >> > | R 3 5 >> > | 8 7 8 >> > | 5 6 8 >> > !co
T x=xxx=xx R 3 2 R >> > | R _5 _6 _7 >> > | R 2 3 5 >> > | R 5 4 3 >> > | R 5 6 5 >> > | 8 6 5 3 >> >
H1 x=xx R 2 3 | R 3 > | 8 7 6 | R R >
H2 x=xx R >> > | 8 >> > | R 2 > | R 3 >

tune ribbon 4-5: three quick sixteenths on two curl into a long three; the answer is plain and late
S x===xxx=x===---- R 3 4 5 6 | R 3 2 R 2 | R _7 R 2 3 | R 5 6 5 3 | R _6 _7 R 2 | 8 5 6 5 8 | R R 2 3 5 | 5 5 4 3 R !co | 3 5 4 3 R !co
A x===x===--x=x=x= 8 6 5 >> > | R 3 2 >> > | R 5 3 >> > | R _6 _5 >> > | 8 7 6 >> > | R 2 3 >> > | R c 5 >> >
S x===xxx=x===---- R 3 4 5 6 | R 3 2 R 2 | R _7 R 2 3 | R 5 6 5 3 | R _6 _7 R 2 | 8 5 6 5 8 | R R 2 3 5 | 5 5 4 3 R !co | 3 5 4 3 R !co
C x===x===x===---- R 2 > | R 5 > | 8 6 > | R _7 R | R 3 2 | 8 7 6 | R _7 _6 | 5 3 2 !co
S x===xxx=x===---- R 3 4 5 6 | R 3 2 R 2 | R _7 R 2 3 | R 5 6 5 3 | R _6 _7 R 2 | 8 5 6 5 8 | R R 2 3 5 | 5 5 4 3 R !co | 3 5 4 3 R !co
A x===x===--x=x=x= 8 6 5 >> > | R 3 2 >> > | R 5 3 >> > | R _6 _5 >> > | 8 7 6 >> > | R 2 3 >> > | R c 5 >> >
L x===xxx=x===---- 8 8 9 8 10 | 8 6 7 8 9 | R 5 6 5 8 | R 3 4 5 > | 8 10 9 8 6 | 5 6 7 8 9 !co
T x===x===--x=x=x= R _5 _6 >> > | R 3 2 >> > | R 5 4 >> > | R 5 6 >> > | 8 6 5 >> > | R 3 5 >> >
H1 x===xxx= R R 2 3 | R 2 3 > | 8 8 7 6 | R R _7 R
H2 x===x=x= R >> > | 8 >> > | R 2 > | R 3 >

tune two-rooms 4-5: a long one that leans into two short and a step; next door the one is empty and the notes lead
S x==xxx-- R 5 6 8 | R 3 2 R | R 3 4 5 | R _6 _7 R | R 5 4 3 | 8 6 5 3 | R 2 3 > | R c 5 3 | 5 6 5 3 !co | 3 2 R _7 !co
A --xxx=xx 8 7 6 >> > | 5 3 2 >> > | R 3 5 >> > | 8 6 5 >> > | R _7 _6 >> > | 3 2 R >> > | 5 6 5 >> > | 8 c 5 >> >
S x==xxx-- R 5 6 8 | R 3 2 R | R 3 4 5 | R _6 _7 R | R 5 4 3 | 8 6 5 3 | R 2 3 > | R c 5 3 | 5 6 5 3 !co | 3 2 R _7 !co
C x==xx=-- R 3 2 | R 2 > | 8 7 6 | R _7 _6 | R R > | R 3 > | 8 c > | 5 4 3 !co
S x==xxx-- R 5 6 8 | R 3 2 R | R 3 4 5 | R _6 _7 R | R 5 4 3 | 8 6 5 3 | R 2 3 > | R c 5 3 | 5 6 5 3 !co | 3 2 R _7 !co
A --xxx=xx 8 7 6 >> > | 5 3 2 >> > | R 3 5 >> > | 8 6 5 >> > | R _7 _6 >> > | 3 2 R >> > | 5 6 5 >> > | 8 c 5 >> >
L x==xxx-- 8 9 10 8 | 8 10 9 8 | R 5 6 > | R 5 8 9 | 8 7 8 9 | 5 6 8 9 !co
T x==xxxxx R 5 6 5 >> > | 8 7 6 5 >> > | R 3 4 5 >> > | R _7 _6 _5 >> > | R 3 2 3 >> > | R c 5 3 >> >
H1 x==x R 2 | R > | 8 7 | R 3
H2 x=xx R >> > | 8 >> > | R 2 > | R 3 >

tune upper-window 4-5: two beats, a note hung over three and a short one after it; the answer looks down and fetches
S x-xx=x-- 8 7 6 5 | R 2 3 5 | R 3 2 R | R 5 6 5 | R _7 _6 _5 | R 3 4 > | 8 c 5 6 | 5 4 3 2 !co | 3 4 5 6 !co
A x-xx--xx R 3 2 >> > | 8 6 5 >> > | R 5 4 >> > | R _6 _5 >> > | R 2 3 >> > | R c 5 >> > | 5 4 3 >> > !co
S x-xx=x-- 8 7 6 5 | R 2 3 5 | R 3 2 R | R 5 6 5 | R _7 _6 _5 | R 3 4 > | 8 c 5 6 | 5 4 3 2 !co | 3 4 5 6 !co
C x-x-x=-- R 3 > | 8 7 > | R _7 _6 | R 3 2 | 8 c > | R 2 > | R 2 R | 5 3 > !co
S x-xx=x-- 8 7 6 5 | R 2 3 5 | R 3 2 R | R 5 6 5 | R _7 _6 _5 | R 3 4 > | 8 c 5 6 | 5 4 3 2 !co | 3 4 5 6 !co
L x-xx=x-- 8 9 10 9 | 8 10 9 8 | R 5 6 8 | R 3 5 > | 8 7 8 9 | 5 6 8 9 !co
A x-xx--xx R 3 2 >> > | 8 6 5 >> > | R 5 4 >> > | R _6 _5 >> > | R 2 3 >> > | R c 5 >> > | 5 4 3 >> > !co
T x-xx=xxx R 3 4 5 >> > | 8 7 6 5 >> > | R _5 _6 _7 >> > | R 2 3 5 >> > | R 5 4 5 >> > | R 5 6 5 >> >
H1 x-xx R 2 3 | R R > | 8 7 6 | R 3 >
H2 x=xx R >> > | 8 >> > | R 2 > | R 3 >
`;
