/** Two-beat: tunes of eight bars (see the notation beside the books). */
export const TWO_BEAT_TUNES = `
tune porch-swing 1-2: root on one, the fifth on three and a step off four; the answer doubles the one and comes back; at the half a root is held until four fetches the chord
S x=--x=x= R 5 > | R 3 5 | R 5 3 | R 5 8 | R _5 > | 8 5 > | 8 5 R | R 3 > | R 8 5 | R 5 R | R _5 R | 3 5 > !co | 5 8 > !co | 5 R 5 !co
A xx--x=x= R R 5 > | 8 8 5 R | R R 5 3 | R R 5 8 | R R 5 R | 8 8 5 > | R R 3 > | R R 3 5 | R R _5 > | R R _5 R | 8 8 5 3 | 5 5 8 > !co | 5 5 R > !co | 5 5 3 R !co
S x=--x=x= R 5 > | R 3 5 | R 5 3 | R 5 8 | R _5 > | 8 5 > | 8 5 R | R 3 > | R 8 5 | R 5 R | R _5 R | 3 5 > !co | 5 8 > !co | 5 R 5 !co
C x===--x= R > | R 5 | R 3 | 8 5 | R _5 | 8 > | 5 > !co | 5 R !co
S x=--x=x= R 5 > | R 3 5 | R 5 3 | R 5 8 | R _5 > | 8 5 > | 8 5 R | R 3 > | R 8 5 | R 5 R | R _5 R | 3 5 > !co | 5 8 > !co | 5 R 5 !co
A xx--x=x= R R 5 > | 8 8 5 R | R R 5 3 | R R 5 8 | R R 5 R | 8 8 5 > | R R 3 > | R R 3 5 | R R _5 > | R R _5 R | 8 8 5 3 | 5 5 8 > !co | 5 5 R > !co | 5 5 3 R !co
L x=--x=x= 8 10 8 | 8 10 > | R 8 5 | R 8 > | 8 8 5 | R 5 8 | 8 5 8 | 5 10 8 !co | 5 8 > !co
T x=x=x=x= R 3 5 > | R 5 8 5 | R 5 3 > | 8 5 R > | 8 5 3 > | R 5 R > | R 3 5 8 | R _5 R > | R 3 R > | R 5 R 5
H1 x=-- R | 8
H1 x=x= R > | R 3 | R 5 | R _5
H2 x=x= R > | R 5 | R 3 | 8 5 | R _5
H2 x=xx R 5 > | R 5 3 | R R > | R 3 >

tune wagon-bell 1-2: a doubled root and one fifth that is cut off, as a bell; the answer lays a pair on three and walks on from four
S xx--x=-- R R 5 | 8 8 5 | R R _5 | R R 3 | R R 8 | R 5 8 | R 3 5 | 8 8 3 | 5 5 8 !co | 3 3 5 !co | 5 5 R !co
A x=--xxx= R 5 3 > | R 5 8 5 | R 5 8 > | R 5 R > | 8 5 R > | 8 5 3 > | R 3 5 > | R _5 R > | R 5 R 5 | R 5 3 R | R 3 5 8 | 8 5 R 5 | 5 8 5 > !co | 5 3 R > !co | 3 5 8 5 !co
S xx--x=-- R R 5 | 8 8 5 | R R _5 | R R 3 | R R 8 | R 5 8 | R 3 5 | 8 8 3 | 5 5 8 !co | 3 3 5 !co | 5 5 R !co
C xxx=--x= R R 5 > | R R 5 R | R R 3 > | R R 5 3 | 8 8 5 > | 8 8 5 R | R R _5 > | R 3 5 > | 5 5 R > !co | 5 5 8 5 !co
S xx--x=-- R R 5 | 8 8 5 | R R _5 | R R 3 | R R 8 | R 5 8 | R 3 5 | 8 8 3 | 5 5 8 !co | 3 3 5 !co | 5 5 R !co
A x=--xxx= R 5 3 > | R 5 8 5 | R 5 8 > | R 5 R > | 8 5 R > | 8 5 3 > | R 3 5 > | R _5 R > | R 5 R 5 | R 5 3 R | R 3 5 8 | 8 5 R 5 | 5 8 5 > !co | 5 3 R > !co | 3 5 8 5 !co
L xx--x=-- 8 8 10 | R R 8 | 8 8 5 | R 5 8 | R R 5 | R 8 5 | 5 5 8 !co | 5 8 10 !co
T x=x=x=x= R 3 5 > | R 5 8 5 | R 5 3 > | 8 5 R > | 8 5 3 > | R 5 R > | R 3 5 8 | R _5 R > | R 3 R > | R 5 R 5
H1 x=-- R | 8
H1 x=x= R > | R 3 | R 5 | R _5
H2 x=x= R > | R 5 | R 3 | 8 5 | R _5
H2 x=xx R 5 > | R 5 3 | R R > | R 3 >

tune gatepost 1-2: root, fifth on three, and a quick pair on four into the change; the answer doubles the one and steps once more on four
S x=--x=xx R 5 R > | R 5 3 > | R 5 8 > | R 5 8 5 | R 3 5 > | 8 5 R > | 8 5 3 > | R _5 R > | R 5 R 5 | R 3 5 8 | R 5 3 R | 8 5 R 5 | 5 8 5 > !co | 5 3 R > !co | 3 5 3 > !co
A xx--x=x= R R 5 > | 8 8 5 R | R R 5 3 | R R 5 8 | R R 5 R | 8 8 5 > | R R 3 > | R R 3 5 | R R _5 > | R R _5 R | 8 8 5 3 | 5 5 8 > !co | 5 5 R > !co | 5 5 3 R !co
S x=--x=xx R 5 R > | R 5 3 > | R 5 8 > | R 5 8 5 | R 3 5 > | 8 5 R > | 8 5 3 > | R _5 R > | R 5 R 5 | R 3 5 8 | R 5 3 R | 8 5 R 5 | 5 8 5 > !co | 5 3 R > !co | 3 5 3 > !co
C x===--x= R > | R 5 | R 3 | 8 5 | R _5 | 8 > | 5 > !co | 5 R !co
S x=--x=xx R 5 R > | R 5 3 > | R 5 8 > | R 5 8 5 | R 3 5 > | 8 5 R > | 8 5 3 > | R _5 R > | R 5 R 5 | R 3 5 8 | R 5 3 R | 8 5 R 5 | 5 8 5 > !co | 5 3 R > !co | 3 5 3 > !co
A xx--x=x= R R 5 > | 8 8 5 R | R R 5 3 | R R 5 8 | R R 5 R | 8 8 5 > | R R 3 > | R R 3 5 | R R _5 > | R R _5 R | 8 8 5 3 | 5 5 8 > !co | 5 5 R > !co | 5 5 3 R !co
L x=--x=xx 8 10 8 > | 8 10 8 5 | R 8 5 > | R 5 8 > | R 8 5 R | 8 8 5 > | 8 5 8 > | R 5 8 5 | 5 10 8 > !co | 5 8 5 > !co
T x=x=x=xx R 3 5 3 > | R 5 8 5 > | R 5 3 R > | 8 5 3 R > | 8 5 R 5 > | R 5 R 5 > | R _5 R 5 > | R 3 5 8 > | R 5 8 5 R
H1 x=-- R | 8
H1 x=x= R > | R 3 | R 5 | R _5
H2 x=x= R > | R 5 | R 3 | 8 5 | R _5
H2 x=xx R 5 > | R 5 3 | R R > | R 3 >

tune hayride 1-2: one, a pair on three and a four that leads; the answer goes the other way in one, three and four, the two left to the chop
S x=--xxx= R 5 3 > | R 5 8 5 | R 5 8 > | R 5 R > | 8 5 R > | 8 5 3 > | R 3 5 > | R _5 R > | R 5 R 5 | R 5 3 R | R 3 5 8 | 8 5 R 5 | 5 8 5 > !co | 5 3 R > !co | 3 5 8 5 !co
A x=--x=x= 8 5 > | R 5 > | R _5 R | R 3 5 | 8 5 R | R 5 R | R _5 > | R 5 3 | 8 5 3 | R 5 8 | R 3 > | R 8 5 | 5 R > !co | 5 8 > !co | 5 3 R !co
S x=--xxx= R 5 3 > | R 5 8 5 | R 5 8 > | R 5 R > | 8 5 R > | 8 5 3 > | R 3 5 > | R _5 R > | R 5 R 5 | R 5 3 R | R 3 5 8 | 8 5 R 5 | 5 8 5 > !co | 5 3 R > !co | 3 5 8 5 !co
C xxx=--x= R R 5 > | R R 5 R | R R 3 > | R R 5 3 | 8 8 5 > | 8 8 5 R | R R _5 > | R 3 5 > | 5 5 R > !co | 5 5 8 5 !co
S x=--xxx= R 5 3 > | R 5 8 5 | R 5 8 > | R 5 R > | 8 5 R > | 8 5 3 > | R 3 5 > | R _5 R > | R 5 R 5 | R 5 3 R | R 3 5 8 | 8 5 R 5 | 5 8 5 > !co | 5 3 R > !co | 3 5 8 5 !co
A x=--x=x= 8 5 > | R 5 > | R _5 R | R 3 5 | 8 5 R | R 5 R | R _5 > | R 5 3 | 8 5 3 | R 5 8 | R 3 > | R 8 5 | 5 R > !co | 5 8 > !co | 5 3 R !co
L x=--xxx= 8 10 8 > | 8 10 8 5 | R 8 5 > | R 8 5 R | R 5 8 5 | R 5 8 > | 8 8 5 > | R 3 8 5 | 5 10 8 > !co | 5 8 5 > !co
T x=x=x=xx R 3 5 3 > | R 5 8 5 > | R 5 3 R > | 8 5 3 R > | 8 5 R 5 > | R 5 R 5 > | R _5 R 5 > | R 3 5 8 > | R 5 8 5 R
H1 x=-- R | 8
H1 x=x= R > | R 3 | R 5 | R _5
H2 x=x= R > | R 5 | R 3 | 8 5 | R _5
H2 x=xx R 5 > | R 5 3 | R R > | R 3 >

tune late-latch 3-5: root and fifth, and in every second bar one late eighth that drops into the change; the fourth bar walks
S x=--x=-- R 5 | R _5 | 8 5 | R 3 | R 8 | 3 5 !co | 5 R !co
A x=--x=-x R _5 > | R 5 > | 8 5 > | R 3 > | R 5 4 | R _5 _6 | 8 6 > | 5 3 > !co | 5 R > !co
S x=--x=-- R 5 | R _5 | 8 5 | R 3 | R 8 | 3 5 !co | 5 R !co
C x=x=x=x= R 2 3 > | 8 7 6 > | R 2 3 5 | R 5 6 7 | 8 7 6 5 | R 3 5 > | R _7 _6 > | R _5 _6 _7 | R 5 4 > | 5 4 3 > !co
S x=--x=-- R 5 | R _5 | 8 5 | R 3 | R 8 | 3 5 !co | 5 R !co
A x=--x=-x R 5 > | 8 5 > | R _5 > | R 3 > | R 5 4 | R _5 _6 | 8 6 > | 5 3 > !co | 5 R > !co
L x===x=-- 8 5 | R 8 | 8 10 | R 5 | 8 9 | 5 8 !co | 3 8 !co
T x=x=x=x= R 5 6 7 | R 3 5 > | R _5 _6 _7 | R 2 3 > | 8 7 6 5 | 8 5 >> > | R 5 >> > | R 3 >> > | R _7 _6 >
H1 x=-- R | 8
H1 x=-x R > | R 5 | R 3
H1 x=x= R > | R 3 | R 5
H2 x=-x R > | 8 > | R 5 | R 3
H2 x=x= R > | R 3 | R 5 | 8 >
H2 x=xx R >> > | R 5 > | R 5 3

tune footpath 3-5: root, fifth and a step on four, all the way; the fourth bar walks, one bar rests and the last runs home
S x=--x=x= R 5 > | R 5 6 | R 5 4 | R 3 4 | R 5 3 | R _5 > | 3 5 6 !co | 5 6 > !co
A x=--x=x= R _5 > | 8 5 > | R 3 > | R _5 _6 | 8 6 5 | R 5 3 | 8 7 > | R _7 > | 8 5 4 | 5 4 3 !co | 5 3 > !co
S x=--x=x= R 5 > | R 5 6 | R 5 4 | R 3 4 | R 5 3 | R _5 > | 3 5 6 !co | 5 6 > !co
C x=x=x=x= R 2 3 > | 8 7 6 5 | 8 7 6 > | R 5 6 7 | R 5 4 3 | R 5 3 > | R _7 _6 > | R 2 3 4 | 8 6 5 > | 5 4 3 > !co
S x=--x=x= R 5 > | R 5 6 | R 5 4 | R 3 4 | R 5 3 | R _5 > | 3 5 6 !co | 5 6 > !co
A x=--x=x= 8 5 > | R 3 > | R _5 > | R _5 _6 | 8 6 5 | R 5 3 | 8 7 > | R _7 > | 8 5 4 | 5 4 3 !co | 5 3 > !co
L x===x=-- 8 5 | R 8 | 8 10 | R 5 | 8 9 | 5 8 !co | 3 8 !co
T x=x=x=xx R 5 6 7 > | R 3 5 >> > | R 2 3 5 > | R 2 3 >> > | R 5 3 >> > | R _5 _6 _7 > | 8 7 6 5 > | 8 5 3 >> > | R 5 4 >> >
H1 x=x= R > | R 3 | R 5 | R 2 | 8 7
H2 x=x= R > | R 5 | R 3 | 8 > | R _7
H2 x=xx R >> > | R 5 > | R 5 3 | R 3 >

tune quickstep-home 3-5: root and fifth stand still in one bar; the next one runs two eighths off beat four; a root alone marks the half
S x=--x=-- R 5 | R _5 | 8 5 | R 3 | R 8 | 3 5 !co | 5 R !co
A x=--x=xx R 5 >> > | R 5 6 7 !st | R _5 >> > | 8 6 5 4 | R _5 _6 _7 !st | R 3 >> > | R 5 4 > | 8 5 >> > | 8 5 3 2 | 5 3 >> > !co
S x=--x=-- R 5 | R _5 | 8 5 | R 3 | R 8 | 3 5 !co | 5 R !co
C x===--xx R 5 > | R >> > | R 6 7 | 8 6 5 | R _6 _7 | 8 >> > | R 3 4 | R 5 4 | 5 >> > !co
S x=--x=-- R 5 | R _5 | 8 5 | R 3 | R 8 | 3 5 !co | 5 R !co
A x=--x=xx R 5 6 7 !st | R _5 >> > | R 5 >> > | 8 6 5 4 | R _5 _6 _7 !st | R 3 >> > | R 5 4 > | 8 5 >> > | 8 5 3 2 | 5 3 >> > !co
L x=--x=-- 8 5 | R 8 | 8 10 | R 5 | 8 9 | 5 8 !co | 3 8 !co
T x=x=x=xx R 5 6 7 > | R 3 5 >> > | R 2 3 5 > | R 5 3 >> > | R 2 3 >> > | 8 7 6 5 > | R _5 _6 _7 > | 8 5 3 >> > | R 5 4 >> >
H1 x=-- R | 8
H1 x=x= R > | R 5 | R 3
H2 x=xx R >> > | R 3 > | R 5 > | R 5 3 | R 2 3

tune barn-stride 3-5: root, fifth and a step on four; in answer the root alone, a breath, and two eighths into the change
S x=--x=x= R 5 > | R 5 6 | R _5 > | R 5 4 | R _5 _6 | 8 5 > | R 5 3 | 3 5 6 !co | 5 6 > !co
A x=----xx R 5 > | R >> > | 8 >> > | R 6 7 | 8 6 5 | R _6 _7 | 8 5 4 | R 3 4 | R 3 > | 5 >> > !co
S x=--x=x= R 5 > | R 5 6 | R _5 > | R 5 4 | R _5 _6 | 8 5 > | R 5 3 | 3 5 6 !co | 5 6 > !co
C x=x=x=x= R 2 3 > | 8 7 6 5 | 8 7 6 > | R 5 6 7 | R 2 3 5 | R 3 5 > | R _7 _6 > | R _5 _6 _7 | R 5 4 > | 5 4 3 > !co
S x=--x=x= R 5 > | R 5 6 | R _5 > | R 5 4 | R _5 _6 | 8 5 > | R 5 3 | 3 5 6 !co | 5 6 > !co
A x=----xx R >> > | 8 >> > | R 5 > | R 6 7 | 8 6 5 | R _6 _7 | 8 5 4 | R 3 4 | R 3 > | 5 >> > !co
L x=--x=x= 8 5 > | R 5 8 | 8 10 9 | 8 10 > | R 8 9 | R 8 > | 8 9 > | 5 8 10 !co
T x=x=x=xx R 5 6 7 > | R 3 5 >> > | R 2 3 5 > | R 5 3 >> > | R 2 3 >> > | 8 7 6 5 > | R _5 _6 _7 > | 8 5 3 >> > | R 5 4 >> >
H1 x=x= R > | R 3 | R 5 | R 2 | R _5
H2 x=x= R > | R 5 | R 3 | 8 >
H2 x=xx R >> > | R 5 > | R 5 3 | R 3 >
`;
