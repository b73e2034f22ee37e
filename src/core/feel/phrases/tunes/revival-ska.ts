/** Revival ska: tunes of eight bars (see the notation beside the books). */
export const REVIVAL_SKA_TUNES = `
tune parade 1-2: two steps on the spot, two that stride off; all in quarters until the drum major stops them
S x=x=x=x= R R 5 > | R R _5 > | R R 5 8 | R R 8 > | R R 3 > | 8 8 5 > | 5 5 R > !co
A x=x=x=x= 8 5 R > | R _5 R > | R 5 R > | 8 8 5 > | R 5 3 > | R 3 R > | 5 R R > !co
S x=x=x=x= R R 5 8 | R R 5 > | R R _5 > | R R 8 5 | R R 3 5 | 8 8 5 > | 5 5 8 > !co
C x=x=x=== R 5 R | R _5 R | 8 5 R | R R _5 | R 3 R | R R 5 | 5 3 R !co
S x=x=x=x= R R 5 > | R R _5 > | R R 5 8 | R R 8 > | R R 3 > | 8 8 5 > | 5 5 R > !co
A x=x=x=x= 8 5 8 > | R _5 R > | R 5 R > | 8 5 3 > | R _5 _5 > | R 3 R > | 5 3 R > !co
L x=x=x=x= 8 8 5 8 | R R 8 5 | R R 8 > | 8 8 10 > | R R 5 8 | R R 5 > | R R _5 >
T x=--xxx= R 5 R > | R _5 R > | R R 5 > | 8 5 R > | R 5 3 > | R 3 5 >
H1 x=x= R > | R R | R 5 | R _5
H2 x=x= R > | R R | R 5
H2 x=-- R | 8

tune kite 1-2: a root and air, then a pair tugs at the string and the tail flies up; quarters wind it down again
S x=--xxx= R R 5 8 | R R 5 > | R R _5 > | R 5 R > | R R 3 5 | 8 8 5 > | 5 R 5 > !co
A x=x=x=x= 8 5 R > | R _5 R > | R 5 R > | 8 8 5 > | R 5 3 > | R 3 R > | 5 5 R > !co
S x=--xxx= R R 5 > | R R 5 8 | R R _5 > | R 5 8 > | R 3 5 > | 8 5 8 > | 5 5 8 > !co
C x=x=x=== R 5 R | R _5 R | 8 5 R | R R 5 | R 3 R | 5 3 R !co
S x=--xxx= R R 5 8 | R R 5 > | R R _5 > | R 5 R > | R R 3 5 | 8 8 5 > | 5 R 5 > !co
A x=x=x=x= 8 5 8 > | R _5 R > | R 5 R > | 8 5 3 > | R _5 _5 > | R 5 3 > | 5 3 R > !co
L x=--xxx= 8 8 5 8 | R 8 8 5 | 8 8 10 > | R R 8 > | R 5 8 > | R R 5 > | R R _5 >
T x=x=x=x= R R 5 > | R 5 R > | R _5 R > | 8 5 R > | R 3 5 > | R 5 3 >
H1 x=x= R > | R R | R 5 | R _5
H2 x=x= R > | R R
H2 xxx= R R > | R 5 >

tune marbles 1-2: two marbles roll and a third one falls and lies; the answer holds the one and takes two steps
S xxx=x=== R R 5 8 | R R 5 R | R R _5 R | R R 8 5 | R R 3 5 | 8 8 5 R | 5 5 R 5 !co
A x===x=x= 8 5 > | R _5 > | R 5 > | R R > | R 3 > | 8 5 R | 5 R > !co
S xxx=x=== R R 5 R | R R 5 8 | R R _5 R | R R 3 R | 8 8 5 3 | R R R _5 | 5 5 8 5 !co
C xxx=x=-- R R 5 R | R R _5 R | 8 8 5 R | R R R _5 | R R 3 R | 5 5 3 R !co
S xxx=x=== R R 5 8 | R R 5 R | R R _5 R | R R 8 5 | R R 3 5 | 8 8 5 R | 5 5 R 5 !co
A x===x=x= 8 8 > | R _5 > | R 5 > | R R > | 8 5 3 | R 5 3 | 5 3 > !co
L xxx=x=== 8 8 5 8 | R R 5 8 | 8 8 10 8 | R R 8 8 | R R 8 5 | R R 5 R | R R _5 R
T x=x=x=x= R 5 R > | R _5 R > | R R 5 > | 8 5 R > | R 5 3 > | R 3 5 >
H1 xxx= R R > | R R 5
H1 x=x= R > | R R | R 5 | R _5
H2 x=x= R > | R R | R 5
H2 x=-- R | 8

tune trapdoor 1-2: two quarters, the floor opens on three, a pair jumps over; even quarters answer, and one bar stands
S x=x=--xx R 5 R > | R R 5 > | R _5 R > | 8 5 8 > | R R 3 > | R 8 5 > | 5 R 5 > !co
A x=x=x=x= R R 5 > | R R _5 > | 8 8 5 > | R 5 R > | R R 3 > | 8 5 R > | 5 5 R > !co
S x=x=--xx R R 5 > | R 5 R > | R _5 R > | R R 5 8 | R 3 5 > | 8 8 5 > | 5 5 R > !co
C x===x=== R R | R 5 | R _5 | 8 5 | R 3 | 5 R !co
S x=x=--xx R 5 R > | R R 5 > | R _5 R > | 8 5 8 > | R R 3 > | R 8 5 > | 5 R 5 > !co
A x=x=x=x= 8 8 5 > | R R _5 > | R R 5 > | 8 5 R > | R 5 3 > | R R 3 > | 5 3 R > !co
L x=x=--xx 8 8 5 8 | R 8 5 > | 8 10 8 > | R 8 8 > | R 5 8 > | R 5 R > | R _5 R >
T x=x=x=x= R 5 R > | R _5 R > | 8 5 R > | R R 5 > | R 3 5 > | R 5 3 >
H1 x=x= R > | R R | R 5 | R _5
H2 x=xx R 5 > | R R > | R _5 > | R 3 >
H2 x=-- R | 8

tune gallop 3-4: two gallops to the bar, up a step and back; the answer falls three against two across the beat
S xxx=xxx= R R 2 3 4 > | R R 3 4 3 > | R R _7 _6 _5 > | R R 3 2 R > | R 2 3 5 4 3 | 8 8 7 6 5 > | 5 5 4 3 2 > !co
A x==x==x= 8 6 > | R 3 > | R _7 > | R _6 > | R 2 > | 8 7 6 | 5 4 > !co
S xxx=xxx= R R 3 4 5 > | R R 2 3 2 > | R R _7 _6 _5 > | R R 5 6 5 > | R R 3 2 R > | 8 8 7 6 5 > | 3 3 4 5 6 > !co
C x=x=x=== R 3 R | R 2 R | R _7 R | R _6 _5 | 8 6 5 | R 2 3 | 5 4 3 !co
S xxx=xxx= R R 2 3 4 > | R R 3 4 3 > | R R _7 _6 _5 > | R R 3 2 R > | R 2 3 5 4 3 | 8 8 7 6 5 > | 5 5 4 3 2 > !co
A x==x==x= 8 7 > | R 2 > | R _7 > | R 5 > | R 3 4 | R 3 > | 3 2 > !co
L xxx=xxx= 8 8 9 10 9 > | 8 8 9 8 7 > | 8 7 8 9 10 > | R R 5 6 8 > | 8 8 10 9 8 > | R R 5 6 5 >
T xxx=xxxx R R 3 4 5 >> > | R R 3 2 R >> > | 8 8 7 6 5 >> > | R R 5 4 3 >> > | R R _7 _6 _5 >> > | R R 2 3 4 >> >
H1 xxx= R R > | R 2 3 | R _7 _6 | 8 8 >
H2 xxx= R R > | R 2 3 | R 3 >
H2 x=x= R > | R 3

tune hillclimb 3-4: three firm steps uphill and two short ones over the top; the answer tumbles down and skips over three
S x=x=x=xx R 2 3 >> > | R 3 4 >> > | R _6 _7 >> > | R 3 5 >> > | R _5 _6 >> > | 8 7 5 >> > | 3 4 5 >> > !co
A x=xx-xx= 8 7 6 5 > | R 5 4 3 > | R _7 _6 _5 > | R 3 2 R > | 8 6 5 3 > | R 6 5 4 > | 5 4 3 2 > !co
S x=x=x=xx R 3 4 >> > | R 2 3 >> > | R _6 _7 >> > | R 4 5 >> > | R _5 _6 >> > | 8 7 6 >> > | 5 6 7 >> > !co
C x=x=x=-- R 3 R | R 2 R | 8 7 6 | R _7 _6 | R 2 3 | R _5 R | 5 3 R !co
S x=x=x=xx R 2 3 >> > | R 3 4 >> > | R _6 _7 >> > | R 3 5 >> > | R _5 _6 >> > | 8 7 5 >> > | 3 4 5 >> > !co
A x=xx-xx= R 5 4 3 > | 8 7 6 5 > | R _7 _6 _5 > | R 3 2 R > | R 2 3 4 > | 8 6 5 4 > | 5 6 5 3 > !co
L x=x=x=xx 8 9 10 >> > | R 5 6 >> > | 8 10 9 >> > | R 6 7 >> > | 8 7 8 >> > | R 5 8 >> >
T x=x=xxxx R 3 4 5 >> > | R 5 4 3 >> > | 8 7 6 5 >> > | R _7 _6 _5 >> > | R 3 2 R >> > | R 2 3 4 >> >
H1 x=x= R > | R 2 | R 3 | R _7 | 8 7
H2 x=xx R >> > | R 3 > | R 2 >
H2 x=-- R | 8

tune springboard 3-4: short root, a pair on two, the board on three, a pair off it; quarters land in answer
S x-xxx-xx R 2 3 5 >> > | R 3 2 R >> > | R _7 _6 _5 >> > | R 5 6 5 >> > | 8 7 6 5 >> > | R 3 4 3 >> > | 3 4 5 3 >> > !co
A x=x=x=x= R 5 4 > | R _7 _6 > | 8 6 5 > | R 3 2 > | R 2 3 > | 8 7 6 > | 5 4 3 > !co
S x-xxx-xx R 3 4 5 >> > | R 2 3 R >> > | R _7 _6 _5 >> > | R 5 4 3 >> > | R _6 _7 R >> > | 8 7 6 5 >> > | 5 6 5 3 >> > !co
C x-xxx=== R 2 3 R | R 3 2 R | R _7 _6 _5 | R _6 _7 R | 8 7 6 5 | R 3 4 3 | 5 4 3 R !co
S x-xxx-xx R 2 3 5 >> > | R 3 2 R >> > | R _7 _6 _5 >> > | R 5 6 5 >> > | 8 7 6 5 >> > | R 3 4 3 >> > | 3 4 5 3 >> > !co
A x=x=x=x= 8 6 5 > | R _7 _6 > | R 5 4 > | R 2 3 > | R 3 2 > | 8 7 6 > | 3 2 R > !co
L x-xxx-xx 8 9 10 8 >> > | R 5 6 8 >> > | 8 10 9 8 >> > | 8 7 8 9 >> > | R 6 7 8 >> > | R 5 6 5 >> >
T x-x-xxxx R 3 5 4 >> > | R 5 4 3 >> > | 8 7 6 5 >> > | R _7 _6 _5 >> > | R 2 3 4 >> > | R 3 2 R >> >
H1 x-xx R 2 3 | R R > | R _7 _6 | R 3 >
H2 x-xx R >> > | R 2 3 | R 3 >
H2 x=x= R > | R 3

tune pistons 4-5: pairs thrown three, three and two across the bar; the answer holds the one and walks off in a pair
S xx-xx-xx R R 3 4 >> > | R R 2 3 >> > | R R _7 _6 >> > | R R 5 4 >> > | R R _6 _5 >> > | 8 8 7 6 >> > | 5 5 4 3 >> > !co
A x===xxx= 8 7 6 > | R 5 4 > | R 3 2 > | R _7 _6 > | R 2 3 > | R #4 5 > | 5 4 3 > !co
S xx-xx-xx R R 2 3 >> > | R R 3 4 >> > | R R _7 _6 >> > | R R b3 3 >> > | R R 5 6 >> > | 8 8 7 6 >> > | 3 3 4 5 >> > !co
C xx-xx=== R R 3 R | R R 2 R | R R _7 R | R R _6 _5 | 8 8 6 5 | R R 3 2 | 5 5 4 3 !co
S xx-xx-xx R R 3 4 >> > | R R 2 3 >> > | R R _7 _6 >> > | R R 5 4 >> > | R R _6 _5 >> > | 8 8 7 6 >> > | 5 5 4 3 >> > !co
A x===xxx= R 5 4 > | 8 7 6 > | R _7 _6 > | R 3 2 > | R 3 4 > | 8 c 5 > | 5 6 5 > !co
L xx-xx-xx 8 8 10 9 >> > | 8 8 9 10 >> > | R R 8 7 >> > | 8 8 9 8 >> > | R R 5 6 >> > | 8 8 7 8 >> >
T xx-xxxxx R R 5 4 3 >> > | R R 3 2 R >> > | 8 8 7 6 5 >> > | R R _7 _6 _5 >> > | R R 2 3 4 >> > | R R b3 3 5 >> >
H1 xx-x R R > | R R 3 | R R _7 | 8 8 7
H2 xx-x R R > | R R 2
H2 x=xx R >> > | R 3 > | R 2 >

tune tightrope 4-5: a firm root, three eighths that balance by narrow steps onto three, two more to the far end; the fall is caught over three
S x=xxx=xx R 2 b3 3 >> > | R 3 4 5 >> > | R _7 _6 _5 >> > | R 5 4 3 >> > | 8 7 6 5 >> > | R 3 2 R >> > | 5 4 3 2 >> > !co
A x=xx==xx 8 7 6 >> > | R 5 4 >> > | R 3 2 >> > | R _7 _6 >> > | R 2 3 >> > | 8 c 5 >> > | 5 4 3 >> > !co
S x=xxx=xx R 3 4 5 >> > | R 2 b3 3 >> > | R _7 _6 _5 >> > | R 4 #4 5 >> > | R _5 _6 _7 >> > | 8 7 6 5 >> > | 3 4 #4 5 >> > !co
C x=xxx=== R 3 2 R | R 2 b3 3 | R _7 _6 _5 | R _5 _7 R | 8 7 6 5 | R 5 4 3 | 5 4 2 R !co
S x=xxx=xx R 2 b3 3 >> > | R 3 4 5 >> > | R _7 _6 _5 >> > | R 5 4 3 >> > | 8 7 6 5 >> > | R 3 2 R >> > | 5 4 3 2 >> > !co
A x=xx==xx R 5 4 >> > | 8 7 6 >> > | R _7 _6 >> > | R 3 4 >> > | R 2 3 >> > | R #4 5 >> > | 3 2 R >> > !co
L x=xxx=xx 8 9 10 9 >> > | 8 10 9 8 >> > | R 5 6 8 >> > | 8 7 8 9 >> > | R 6 7 8 >> > | 8 9 8 7 >> > | R 5 6 7 >> >
T x=xxxxxx R 5 4 3 2 >> > | R 2 b3 3 5 >> > | 8 7 6 5 4 >> > | R _7 _6 _5 _6 >> > | R 3 4 #4 5 >> > | R 3 2 R 3 >> >
H1 x=xx R >> > | R 2 3 | R b3 3 | R _7 _6 | 8 7 6
H2 x=xx R >> > | R 3 > | R 2 >
H2 x=-- R | 8

tune catapult 4-5: a double root flings the line to the octave and it runs back in eighths; the answer is a stop and a spring
S xxx=xxxx R R 8 7 6 >> > | R R 5 4 3 >> > | R R 8 9 8 >> > | R R 3 2 R >> > | R R _5 _6 _7 >> > | 8 8 5 6 7 >> > | 5 5 8 7 6 >> > !co
A x=--x=xx R 3 >> > | R 5 >> > | 8 5 >> > | R _5 >> > | R _6 >> > | R 2 >> > | 5 3 >> > !co
S xxx=xxxx R R 5 4 3 >> > | R R 8 7 6 >> > | R R 5 6 5 >> > | R R 3 4 5 >> > | R R _5 _6 _7 >> > | 8 8 5 4 3 >> > | 3 3 6 5 4 >> > !co
C xxx=x=-- R R 3 R | R R 5 4 | R R _5 R | R R 2 R | R R _7 _6 | 8 8 6 5 | 5 5 3 R !co
S xxx=xxxx R R 8 7 6 >> > | R R 5 4 3 >> > | R R 8 9 8 >> > | R R 3 2 R >> > | R R _5 _6 _7 >> > | 8 8 5 6 7 >> > | 5 5 8 7 6 >> > !co
A x=--x=xx R 5 >> > | R 3 >> > | 8 6 >> > | R _5 >> > | R _7 >> > | R 4 >> > | 5 6 >> > !co
L xxx=xxxx 8 8 10 9 8 >> > | R R 8 9 10 >> > | 8 8 9 8 7 >> > | R R 8 7 8 >> > | R R 6 7 8 >> > | R R 5 6 7 >> >
T x=--xxxx R 5 4 >> > | R 3 2 >> > | 8 7 6 >> > | R _7 _6 >> > | R 5 6 >> > | R _5 _6 >> > | R b3 3 >> >
H1 xxx= R R > | R R 8 | R R 5 | R R _5
H2 x=xx R >> > | R 3 > | R 5 >
H2 x=-- R | 8
`;
