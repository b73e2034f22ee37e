/** Ballad in six: tunes of eight bars (see the notation beside the books). */
export const BALLAD_TUNES = `
tune rocking 1-2: the root, the second beat below or above it, and one light eighth that tips into the next bar
S x==x=x R 5 > | R 8 > | 8 5 > | R _5 > | R 3 > | R R > | 5 8 R !co
A x==x== 8 5 | R > | 8 > | R 5 | R _5 | 8 3 | 5 R !co
S x==x=x R 8 > | R 5 > | 8 R > | R _5 > | 8 3 > | R >> > | 5 R 5 !co
C x==x== R > | R 8 | R R | 8 R | R _5
S x==x=x R 5 > | R 8 > | 8 5 > | R _5 > | R 3 > | R R > | 5 8 R !co
A x==x== 8 > | R 5 | 8 R | R _5 | R > | 8 3 | 5 8 !co
L x==x=x 8 5 8 | R 8 > | 8 8 5 | R 8 5 | R 10 8 | 8 10 >
T x=xx=x R R 5 > | R 5 R > | 8 5 R > | R R _5 > | R 3 >> > | R 5 >> >
H1 x=x R > | R 5 | R R
H2 x=x R > | R 5 | 8 >

tune heartbeat 1-2: short and long like a heart, and the second beat left to ring
S xx=x== R R 5 | R R 8 | 8 8 5 | R R _5 | R R 3 | R R > | 5 5 R !co
A x==x=x 8 5 > | R 5 > | R 8 > | R _5 > | 8 3 > | R 3 > | 5 8 > !co
S xx=x== R R 8 | R R 5 | 8 8 R | R R _5 | R R > | 8 8 3 | 5 5 8 !co
C x==x== R > | R 8 | R R | 8 R | R _5
S xx=x== R R 5 | R R 8 | 8 8 5 | R R _5 | R R 3 | R R > | 5 5 R !co
L xx=x=x R R 8 > | 8 8 5 > | R 5 8 > | R R 8 5 | 8 8 10 > | R 3 8 >
A x==x=x 8 5 > | R R > | R 5 > | R _5 > | 8 3 > | R 3 > | 5 R > !co
T x==x=x R 5 > | R R > | 8 R > | R _5 > | R 3 > | R >> >
H1 x== R | 8
H2 x=x R > | R 5 | 8 >

tune swell 1-2: a held root, and three eighths that swell out of the second beat; the answer is bare
S x==xxx R R 5 > | R 5 8 > | 8 8 5 > | R R _5 > | R R 3 > | R 3 5 > | 5 R 5 R !co
A x==x== 8 5 | R > | R 5 | 8 > | R _5 | 8 3 | 5 R !co
S x==xxx R 5 8 > | R R 5 > | 8 5 R > | R _5 R > | R 5 3 > | R 3 5 8 | 5 8 5 R !co
C x==x== R > | R R | R 8 | 8 > | R _5
S x==xxx R R 5 > | R 5 8 > | 8 8 5 > | R R _5 > | R R 3 > | R 3 5 > | 5 R 5 R !co
A x==x=x 8 5 > | R R > | R 5 > | 8 R > | R _5 > | 8 3 > | 5 R > !co
L x==xxx R 8 5 8 | 8 5 8 > | R 5 8 5 | 8 10 8 5 | R 8 10 >
T x==xxx R 5 R > | R R 5 > | 8 R 5 > | R _5 R > | R 3 >> > | R 5 >> >
H1 x=x R > | R R | R 5
H2 x=x R > | R 5 | 8 >

tune feather 2-2: the root sung almost to the end, and two eighths that fall or float into the next bar
S x===xx R 5 > | R 3 > | 8 5 > | R _5 > | R >> > | 8 3 > | 3 5 R !co
A x==x== 8 5 | R 3 | R > | 8 > | R _5 | R 5 | 5 3 !co
S x===xx R 3 > | R 5 > | 8 3 > | R _5 > | R >> > | R 8 > | 5 3 R !co
C x==x== R > | R R | R 8 | 8 R | R _5
S x===xx R 5 > | R 3 > | 8 5 > | R _5 > | R >> > | 8 3 > | 3 5 R !co
A x==x=x 8 5 > | R 3 > | R 5 > | 8 3 > | R _5 > | R R > | 5 3 > !co
L x===xx 8 10 8 | R 8 > | R 5 8 | 8 10 > | 5 8 10 !co
T x=xx=x R 3 5 > | R 5 3 > | 8 5 3 > | R R _5 > | R 5 >> > | R 3 >> >
H1 x=x R > | R 3 | R 5
H2 x=x R > | R 3 | 8 >

tune cradle 3-4: steps that rock up over both beats and a bar that stands still below them
S x=xx=x R 2 3 > | R 3 5 > | R 5 6 > | 8 7 6 > | R _7 _6 > | R 2 _7 R !st | 3 4 5 > !co
A x==x== 8 7 | R > | R 5 | 8 6 | R _7 | R 3 | 5 4 !co
S x=xx=x R 3 4 > | R 2 3 > | R 5 4 > | 8 6 5 > | R _6 _5 > | R _7 _6 _7 !st | 5 4 3 > !co
C x==x== R > | R 3 | 8 6 | R 2 !ch | 8 7 | R _7 !ch | R R | R c
S x=xx=x R 2 3 > | R 3 5 > | R 5 6 > | 8 7 6 > | R _7 _6 > | R 2 _7 R !st | 3 4 5 > !co
A x==x=x 8 7 > | R R > | R 5 > | 8 6 > | R _7 > | R 3 > | 5 4 > !co
L x=xx=x 8 9 10 > | R 5 8 9 | R 7 8 > | 8 10 9 8 | 5 8 9 > !co
T x==xxx R 5 >> > | R 3 2 > | 8 7 6 > | R _5 _6 _7 !st | R 3 >> > | R 2 >> > | R _7 _6 >
H1 x=x R > | R 3 | R 2
H2 x=x R > | R 3 | R 5

tune tide 3-4: a note that comes ahead of the second beat and stays, until the last eighth draws back
S x=x==x R 5 > | R 3 > | 8 6 > | R _7 > | R 2 > | R _6 _7 !st | 3 5 > !co
A x==x=x 8 7 > | R 5 4 | R 3 > | R _7 _6 | R 6 > | 8 5 > | 5 4 > !co
S x=x==x R 6 > | R 5 > | 8 7 > | R _6 > | R 3 > | R 2 R !st | 5 6 > !co
C x==x== R > | R c | 8 6 | R _7 | R R | R 3
S x=x==x R 5 > | R 3 > | 8 6 > | R _7 > | R 2 > | R _6 _7 !st | 3 5 > !co
L x=x==x R 8 9 | 8 9 > | 8 10 9 | R 8 > | R 7 8 | 8 10 > | 5 8 9 !co
A x==x=x 8 7 > | R 3 2 | R 5 > | R _7 _6 | R c > | 8 6 > | 5 4 3 !co
T x==xxx R 5 4 > | R 3 >> > | 8 7 6 > | R _5 _6 _7 !st | R 5 >> > | R 3 2 > | R _7 >> >
H1 x=x R > | R 3 | R 5
H2 x=x R > | R 3 | R 2

tune lament 3-4: the root held, then a quick step onto a long one, as a voice breaks; it falls more than it rises
S x==xx= 8 7 6 | R 3 2 | R 5 > | 8 6 > | R 2 3 | R 5 4 | R _7 _6 | R _7 R !st | 5 4 3 !co
A x==x=x R 5 > | 8 6 > | R 3 > | R 2 > | R _7 > | R R > | 3 2 > !co
S x==xx= 8 6 5 | R 5 6 | R 3 > | R _7 > | R 3 4 !ch | R 6 5 | R _6 _5 | R 2 R !st | 3 4 5 !co
C x==x=x R R > | R _7 > | 8 7 > | R 2 > | R 5 > | R _7 R !st
S x==xx= 8 7 6 | R 3 2 | R 5 > | 8 6 > | R 2 3 | R 5 4 | R _7 _6 | R _7 R !st | 5 4 3 !co
A x==x=x R 5 4 | 8 7 > | R 3 2 | R 2 3 | R _7 _6 | R 6 > | 3 2 R !co
L x==xx= 8 10 9 | 8 9 10 | R 8 9 | R 7 8 | 8 10 > | 8 9 7 | 5 9 8 !co
T x==xxx R 5 >> > | R 3 2 > | 8 7 6 > | R _5 _6 _7 !st | R 3 >> > | R _7 _6 > | R 6 5 >
H1 x=x R > | R 3 | R 2
H2 x=x R > | R 3 | R 5

tune grace 4-5: two long notes, the second with a grace of two sixteenths before the next bar
S x=====x===xx R 5 >> > | R 3 >> > | R 5 4 3 | 8 7 6 5 | R _7 >> > | R c 6 5 | R 2 R _7 !st | 3 5 >> > !co
A x==x== 8 7 | R > | R 3 | R 6 | R _7 | 8 c | 5 4 !co
S x=====x===xx R 6 >> > | R 3 4 5 | R 2 3 4 !ch | 8 6 5 4 | R _6 >> > | R 5 #4 4 | R _7 _6 _7 !st | 5 6 >> > !co
C x==x== R > | 8 7 | R c | R 3 | R _7
S x=====x===xx R 5 >> > | R 3 >> > | R 5 4 3 | 8 7 6 5 | R _7 >> > | R c 6 5 | R 2 R _7 !st | 3 5 >> > !co
A x==x=x 8 7 6 | R 5 > | R 3 > | R 6 > | R _7 > | 8 c > | 5 4 3 !co
L x=====x===xx R 8 9 10 | 8 10 9 8 | 8 9 >> > | R 8 >> > | 5 10 9 8 !co
T x==xxx R 5 >> > | R 3 2 > | R 3 #4 > | 8 7 6 > | R _5 _6 _7 !st | R c 5 > | R _7 _6 >
H1 x=x R > | R 3 | R 5
H2 x=x R > | R 3 | R 2

tune threefold 4-5: three slow steps across the two beats, and an answer that puts the beats back
S x=x=x= R 2 3 | R 3 > | 8 7 6 | R 5 > | R _7 _6 | R 6 > | R 2 R !st | 3 4 5 !co
A x==x=x 8 7 > | R 5 4 | R 3 > | 8 6 > | R _7 > | R 2 > | 5 4 > !co
S x=x=x= R 3 4 | R 5 6 | 8 6 5 | R 2 > | R _6 _5 | R c > | R _7 R !st | 5 4 3 !co
C x==x== R > | R c | 8 7 | R _7 | R R | R 3 | 8 6
S x=x=x= R 2 3 | R 3 > | 8 7 6 | R 5 > | R _7 _6 | R 6 > | R 2 R !st | 3 4 5 !co
A x==xxx 8 7 6 > | R 5 4 3 | R 3 >> > | 8 6 >> > | R _7 _6 > | R 2 3 > | 5 4 3 > !co
L x=x=x= 8 9 10 | R 8 9 | 8 10 9 | R 7 8 | R 8 > | 8 10 > | 8 9 6 | 5 8 9 !co
T x==xxx R 5 >> > | R 3 2 > | 8 7 6 > | R _5 _6 _7 !st | R 5 #4 4 | R c 5 > | R _7 >> >
H1 x=x R > | R 3 | R 5
H2 x=x R > | R 3 | R 2

tune sob 4-5: both beats short and long, a line that catches its breath, over an answer of one held note
S xx=xx= R 5 4 3 | R 2 3 > | 8 7 6 > | R 5 4 > | R _7 _6 > | R 3 5 6 | R 2 _7 R !st | 3 2 3 4 !co
A x====x R > | 8 > | R 2 | R 5 | R _7 | 8 7 | 8 6 | 5 > !co
S xx=xx= R 5 6 > | R 3 4 > | 8 6 5 > | R 8 c 6 | R _6 _5 > | R 3 2 > | R _7 _6 _7 !st | 5 4 3 > !co
C x====x R > | R 3 | 8 6 | R R !st | 8 7 | R _7 | 8 >
S xx=xx= R 5 4 3 | R 2 3 > | 8 7 6 > | R 5 4 > | R _7 _6 > | R 3 5 6 | R 2 _7 R !st | 3 2 3 4 !co
A x===xx R 3 > | 8 7 > | R 2 3 | R 5 > | R _7 > | 8 >> > | 5 4 > !co
L xx=xx= R 8 9 10 | 8 9 10 > | R 10 9 8 | R 7 8 > | 5 8 10 9 !co
T x=xx=x R 5 4 > | R 3 2 > | 8 7 6 > | R _5 _6 _7 !st | R 5 >> > | R c >> > | R _7 _6 >
H1 xx= R > | R 3 | R 5
H2 x=x R > | R 3 | R 2
`;
