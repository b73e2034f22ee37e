/** Funk in sixteenths: tunes of eight bars (see the notation beside the books). */
export const FUNK_TUNES = `
tune knock 1-2: the one, an octave popped on two with its echo, a hole on three, and four leads
S x-xx--x- R 8 R > | R 8 5 > | 8 5 R > | R R 8 > | R 8 3 > | 5 8 5 R !co
A x-xx--xx R R 5 8 > | 8 8 5 R > | R 5 R 8 > | R R _5 R > | R R 5 3 > | 8 5 3 R > | 5 5 8 R > !co
S x-xx--x- R 8 R > | R 5 8 > | 8 R 8 > | R _5 R > | R 8 3 > | R 3 5 > | 8 5 8 R !co
C x-xx---- R 8 R | R R 8 | 8 5 R | R _5 R | R 3 R
S x-xx--x- R 8 R > | R 8 5 > | 8 5 R > | R R 8 > | R 8 3 > | 5 8 5 R !co
A x-xx--xx R R 5 R > | 8 8 5 8 > | R 5 R R > | R R _5 _5 > | R R 5 3 > | 8 5 3 R > | 5 5 8 5 > !co
L x-xx--x- R 5 8 > | 8 8 5 > | R 8 8 > | R 8 10 > | R 3 5 > | 8 10 8 >
T x-xx--xx R 5 R 5 > | R R 5 R > | 8 5 R 5 > | R _5 R _5 > | R 5 3 >> > | R R 3 >> >
H1 x-xx R 8 R | R 8 > | R R 5 | R R >
H2 x-x- R > | R R | 8 >

tune bare 1-2: the one alone, two beats of nothing, and a pair on four that runs home
S x-----xx R 5 > | R 8 > | 8 5 > | R _5 > | R >> > | R 3 > | 5 8 R !co
A x---x-xx R 8 5 > | 8 5 R > | R 5 8 > | R _5 R > | 8 5 3 > | R 3 5 > | 5 8 5 > !co
S x-----xx R 8 > | R 5 > | 8 R > | R _5 > | R >> > | 8 3 > | 5 8 R !co
C x-----x- R > | R R | 8 > | R _5 | R 8
S x-----xx R 5 > | R 8 > | 8 5 > | R _5 > | R >> > | R 3 > | 5 8 R !co
A x---x-xx R R 5 > | 8 8 R > | R R 8 > | R R _5 > | 8 8 3 > | R R 3 > | 5 5 8 > !co
L x-x-x-xx R R 8 5 > | R 5 8 5 > | 8 8 8 5 > | R 8 5 R > | 8 8 10 8 > | R 3 5 8 >
T x-x-x-xx R R 5 R > | R 5 R 5 > | 8 5 R R > | R _5 _5 R > | R R 3 >> > | R 5 3 >> >
H1 x-x- R > | R R | 8 5
H2 x-xx R 5 > | R R > | R 8 >

tune stomp 1-2: three knocks at the front of the bar, nothing on three, and one stroke that points
S xxx---x- R R R > | R R 8 > | 8 8 R > | R R 5 > | R R 3 > | 5 5 8 R !co
A xxx-x-x- 8 8 5 R > | R R 8 5 > | R 5 8 R > | R R _5 R > | 8 8 5 3 > | R 3 5 3 > | 5 8 5 R > !co
S xxx---x- R R R > | R R 5 > | 8 8 5 > | R R _5 > | R R 8 > | R 3 5 > | 5 5 8 R !co
C xxx----- R R R | R R 8 | 8 8 R | R R _5 | R R 5
S xxx---x- R R R > | R R 8 > | 8 8 R > | R R 5 > | R R 3 > | 5 5 8 R !co
L xxx-x-x- R R 8 8 > | 8 8 5 8 > | R 5 8 8 > | R 5 8 5 > | 8 8 10 8 > | R 3 5 8 >
S xxx---x- R R R > | 8 8 R > | R R 5 > | R R _5 > | R R 3 > | 8 5 3 > | 5 5 R R !co
T xxx-x-xx R R R 5 R > | 8 8 R 5 R > | R R 5 R 5 > | R R _5 R _5 > | R R R 3 >> > | R R 5 3 >> >
H1 xxx- R R R | R R > | R R 8
H2 x-x- R > | R R | R 5

tune twin 1-2: two on the one, two on four, and a single stroke between them that the answer leaves out
S xx--x-xx R R 8 5 > | R R 5 R > | 8 8 5 R > | R R _5 R > | R R 5 3 > | R R 3 5 > | 5 5 8 5 > !co
A xx----xx R R 5 > | 8 8 R > | R R 8 > | R R _5 > | R R 3 > | 8 8 >> > | 5 5 R R !co
S xx--x-xx R R 8 5 > | R R R 5 > | 8 8 R R > | R R _5 _5 > | R R 8 3 > | 8 8 5 3 > | 5 5 8 R > !co
C xx----x- R R > | R R R !st | 8 8 > | R R _5 | R R 8 | R 8 >
S xx--x-xx R R 8 5 > | R R 5 R > | 8 8 5 R > | R R _5 R > | R R 5 3 > | R R 3 5 > | 5 5 8 5 > !co
A xx----xx R R R > | 8 8 5 > | R R 8 > | R R _5 > | 8 8 3 > | R R >> > | 5 5 8 R !co
L xx--x-xx R R 8 8 > | 8 8 8 5 > | R 5 8 5 > | R R 8 5 > | 8 8 10 8 > | R 3 5 8 >
T xx--x-xx R R 5 R > | R R R 5 > | 8 8 5 R > | R R _5 R > | R R 3 >> > | R R 5 >> >
H1 xx-- R R | R 8 | 8 R
H2 x-xx R 5 > | R R > | R 8 >

tune drag 2-3: two on the one, a long hole, then a late step into four
S xx---xx- R R c > | R R 5 6 | R R 3 > | 8 8 7 > | R R _6 > | R R 2 3 | R R 2 > | R R _7 R !st | 5 5 6 > !co
A xx---xxx R R 3 2 > | 8 8 7 6 > | R R 5 4 > | R R _7 _6 > | R R 5 >> > | 3 3 2 R > !co
S xx---xx- R R 5 > | R R 5 6 | 8 8 6 > | R R _7 > | R R 3 4 | R R 2 R !st | 3 3 4 > !co
C xx---x-- R R 8 | R R > | 8 8 6 | R R _5 | R R c | R R R
S xx---xx- R R c > | R R 5 6 | R R 3 > | 8 8 7 > | R R _6 > | R R 2 3 | R R 2 > | R R _7 R !st | 5 5 6 > !co
A xx---xxx R R 3 >> > | 8 8 7 >> > | R R 5 >> > | R R _7 >> > | R R 2 3 > | 3 3 2 >> > !co
L xx---xx- R R 8 9 | 8 8 9 > | R 5 8 > | 8 8 10 9 | 8 8 10 > | R R 7 8 !st | 5 6 8 > !co
T xx-x-xxx R R 5 4 >> > | R R 3 2 >> > | R R 5 6 >> > | 8 8 5 3 >> > | R R _5 _6 >> > | R R _6 _7 >> > !st
H1 xx-x R R > | R R 5 | R R c
H2 x-xx R 3 > | R >> > | R 5 >

tune lag 3-4: two square beats, then two late ones that limp into the change
S x-x--x-x R R c > | R 2 3 > | R 6 5 > | 8 7 6 > | R _7 _6 > | R 5 6 > | R 3 2 > | R 3 2 R !st | 5 6 5 > !co
A x-x--xxx 8 7 6 5 > | R R 5 4 > | R 3 2 R > | R _7 _6 _5 > | R R 5 6 > | 3 4 5 6 > !co
S x-x--x-x R R 5 > | R 3 4 > | 8 6 5 > | R R _6 > | R 2 3 > | R _6 _7 R !st | 3 4 5 > !co
C x-x--x-- R R 8 | R 2 3 | 8 6 5 | R _7 _5 | R R 5 | R R > | 8 7 6
S x-x--x-x R R c > | R 2 3 > | R 6 5 > | 8 7 6 > | R _7 _6 > | R 5 6 > | R 3 2 > | R 3 2 R !st | 5 6 5 > !co
A x-x--xxx 8 7 6 >> > | R R 5 >> > | R 3 2 >> > | R _7 _6 >> > | R R 3 >> > | 3 4 5 >> > !co
L x-x--x-x 8 9 10 > | R 8 9 > | 8 10 9 > | R 5 8 > | R 7 8 > | 5 8 9 > !co
T x-x--xxx R 5 4 >> > | R 2 3 >> > | 8 7 5 >> > | R R 6 >> > | R _5 _6 >> > | R 5 6 7 8 !st
H1 x-x- R > | R 3 | R R
H2 x-xx R 5 > | R >> > | R 3 >

tune stairs 3-4: the one, a beat of nothing, and three stairs up or down, the last one pushed
S x---xx-x R 2 3 > | R 5 6 > | R 3 2 > | 8 7 6 > | R _7 _6 > | R 3 4 > | R 3 2 R !st | 3 4 5 > !co
A x---xxxx 8 7 6 5 > | R 5 4 3 > | R 3 2 R > | R _7 _6 _5 > | R 5 6 >> > | 5 6 5 4 > !co
S x---xx-x R 3 4 > | R 5 c > | 8 c 5 > | R _6 _5 > | R 2 3 > | R _6 _7 R !st | 5 4 3 > !co
C x---xx-- R 3 R | R 6 5 | R 5 6 | 8 7 6 | R _7 _6 | R 2 3 | R _5 R | R 2 >
S x---xx-x R 2 3 > | R 5 6 > | R 3 2 > | 8 7 6 > | R _7 _6 > | R 3 4 > | R 3 2 R !st | 3 4 5 > !co
A x---xxxx 8 7 6 >> > | R 5 4 >> > | R 3 2 >> > | R _7 _6 >> > | R 3 5 >> > | 5 6 5 >> > !co
L x---xx-x 8 9 10 > | R 7 8 > | 8 10 9 > | R 8 9 > | R 5 8 > | 3 5 8 > !co
T x-x-xxxx R R 5 4 >> > | R R 3 2 >> > | 8 8 7 5 >> > | R R _5 _6 >> > | R R 5 6 7 8 !st | R R 2 3 >> >
H1 x-xx R R > | R 2 3 | R 5 >
H2 xx-x R 3 > | R 5 > | R R >

tune stutter 3-4: three quick ones on the one, a hole, and two dry strokes on the and of three and on four
S xxx=------x=x=-- R R R c > | R R 8 7 > | R R R 5 6 | 8 8 8 7 > | R R R _7 > | R R R 2 > | R R R _7 R !st | 5 5 5 6 > !co
A xxx=------x=x=xx R R R 3 2 >> > | 8 8 8 7 6 >> > | R R R 5 4 >> > | R R R _7 _6 >> > | R R R 2 3 >> > | 5 5 5 6 5 >> > !co
S xxx=------x=x=-- R R 8 c > | R R R 3 4 | R R 8 7 6 | 8 8 R 2 > | R R R _6 > | R R 8 5 > | R R R 3 > | R R R 2 R !st | 3 3 3 4 > !co
C xxx=------x=---- R R R 8 | R R R c | 8 8 8 5 | R R R _5 | R R 8 R | R R R > | R R R 6
S xxx=------x=x=-- R R R c > | R R 8 7 > | R R R 5 6 | 8 8 8 7 > | R R R _7 > | R R R 2 > | R R R _7 R !st | 5 5 5 6 > !co
A xxx=------x=x=xx R R 8 7 6 >> > | 8 8 R 2 3 >> > | R R 5 4 3 >> > | R R 8 5 4 >> > | R R R _6 _7 >> > !st | 5 5 8 7 6 >> > !co
L xxx=------x=x=-- R R 8 9 10 | 8 8 8 9 > | R R 5 8 > | R R 8 9 > | 8 8 8 10 9 | 8 8 8 10 > | 5 5 8 9 > !co
T xxx=--x=--x=x=xx R R R 5 4 3 >> > | R R R c 6 5 >> > | 8 8 8 7 6 5 >> > | R R R 3 2 R >> > | R R R _5 _6 _7 >> > | R R R 2 3 5 >> >
H1 xxx=--x= R R R > | R R R c | R R 8 >
H2 x=--x=xx R 5 >> > | R 3 >> > | R R >> >

tune skip 3-5: the one, then a quick turn on two, nothing on three, and four on its own
S x=--x=xx----x=-- R R c 8 > | R 5 6 5 > | R 2 3 5 > | 8 c 6 5 > | R R _7 _6 > | R R b3 3 > | R 3 2 _7 R !st | 5 5 6 8 > !co
A x=--x=xx----x=xx 8 7 6 5 3 >> > | R 3 2 R 5 >> > | R R 5 4 3 >> > | R R _7 _6 _5 >> > | R 5 #4 4 3 >> > | 3 2 R _7 R >> > !co
S x=--x=xx----x=-- R R c 8 > | R R 3 4 > | R 5 4 3 > | 8 8 7 6 > | R _5 _6 _7 > !st | R R 5 6 > | 3 3 4 5 > !co
C x=--x=xx-------- R R c 8 | R 3 2 R | 8 7 6 5 | R R _7 _6 | R _7 _5 R | R 5 6 5 | R 3 2 >
S x=--x=xx----x=-- R R c 8 > | R 5 6 5 > | R 2 3 5 > | 8 c 6 5 > | R R _7 _6 > | R R b3 3 > | R 3 2 _7 R !st | 5 5 6 8 > !co
A x=--x=xx----x=xx 8 7 6 5 8 >> > | R 3 2 R 3 >> > | R R 5 4 5 >> > | R R _7 _6 R >> > | R 5 #4 4 R >> > | 3 2 R _7 _5 >> > !co
L x=--x=xx----x=-- R 8 9 10 8 | 8 8 9 10 > | R 5 7 8 > | R 8 10 9 > | 8 10 9 8 > | 5 8 9 10 > !co
T x=--x=xx--x=x=xx R R c 6 5 4 >> > | R 3 2 R 5 3 >> > | R R 5 4 3 2 >> > | 8 7 6 5 4 3 >> > | R R _7 _6 _5 _6 >> > | R R b3 3 5 6 >> >
H1 x=--x=xx R R >> > | R R c 8 | R 5 6 5
H2 x=--x=xx R 5 >> > | R R >> > | R 3 >> >

tune gallop 3-5: a gallop on the one, a beat of nothing, a stroke on three, and a push before the bar line
S x=xx----x=----x= R 8 R c > | R 2 3 5 > | R R R 6 > | 8 7 6 5 > | R _7 _6 _5 > | R b3 3 R > | R R _7 R R !st | 5 6 5 3 > !co
A x=xx----x=xx--x= R R R 5 4 3 > | 8 8 8 6 5 3 > | R R R 3 2 R > | R R R _5 _6 _7 > | R R R c 6 5 > | 5 5 5 3 2 R > !co
S x=xx----x=----x= R 8 R 6 > | R 3 4 5 > | R R R c > | 8 6 5 3 > | R _6 _7 R > | R b3 3 5 > | R R 2 R R !st | 3 4 5 6 > !co
C x=xx----x=--x=-- R 8 R R > | R R R c > | 8 7 6 5 > | R _7 _6 _5 > | R b3 3 R > | R 3 2 R >
S x=xx----x=----x= R 8 R c > | R 2 3 5 > | R R R 6 > | 8 7 6 5 > | R _7 _6 _5 > | R b3 3 R > | R R _7 R R !st | 5 6 5 3 > !co
A x=xx----x=xx--x= R 8 R 5 4 3 > | 8 R 8 6 5 3 > | R 8 R 3 2 R > | R _5 R _5 _6 _7 > | R 8 R c 6 5 > | 5 8 5 3 2 R > !co
L x=xx----x=----x= R 8 9 10 > | 8 9 10 8 > | R 5 8 9 > | 8 8 9 10 > | R 7 8 10 > | 5 8 9 10 > !co
T x=xx----x=xxx=xx R R R 5 6 5 3 >> > | R R R c 6 5 4 >> > | 8 8 8 7 6 5 3 >> > | R R R 3 2 R _7 >> > | R R R _5 _6 _7 R >> > | R 8 R 5 #4 4 3 >> >
H1 x=xx--x= R R R > | R 8 R > | R R R c
H2 x=xxx=xx R R R 5 >> > | R 5 4 3 >> > | R 3 2 R >> >

tune shadow 5-5: the one and its echo a sixteenth before two, the and of two, a hole, and four cut short
S x--x--x-----x--- R R c > | R 8 c > | R R 3 5 | 8 c 5 > | R R _7 > | R _6 _7 R !st | 5 6 5 > !co
A x--x--x---x-x-xx R R c 6 5 >> > | 8 7 6 5 3 >> > | R R 3 2 R >> > | R R 5 #4 4 >> > | R R _7 _6 _5 >> > | 5 4 3 2 R >> > !co
S x--x--x-----x--- R R c > | R R b3 3 | R 5 6 > | 8 7 6 > | R R _6 > | 8 c 5 > | R R 2 > | R 2 R R !st | 3 4 5 > !co
C x--x--x--------- R R c | R R 8 | 8 c 5 | R R _7 | R b3 3 | R R > | R 8 6
S x--x--x-----x--- R R c > | R 8 c > | R R 3 5 | 8 c 5 > | R R _7 > | R _6 _7 R !st | 5 6 5 > !co
A x--x--x---x-x-xx R R c 8 c >> > | 8 7 6 8 5 >> > | R R 3 5 3 >> > | R R 5 6 5 >> > | R R _7 R _6 >> > | 5 4 3 5 R >> > !co
L x--x--x---x-x-xx R 8 9 10 8 >> > | 8 8 9 10 9 >> > | R 5 7 8 10 >> > | 8 10 9 8 5 >> > | R R 8 9 10 >> > | 5 6 8 9 10 >> > !co
T x--x--x---xxx-xx R R 5 4 3 2 >> > | R R c 6 5 3 >> > | 8 7 6 5 #4 4 >> > | R R 3 2 R _7 >> > | R R _5 _6 _7 R >> > | R R 8 b3 3 5 >> >
H1 x--x--x- R R > | R R c | R 8 c
H2 x--xx-xx R R 5 >> > | R 8 c >> > | R R 3 >> >
`;
