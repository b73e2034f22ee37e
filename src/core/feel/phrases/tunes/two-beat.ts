/** Two-beat: tunes of eight bars (see the notation beside the books). */
export const TWO_BEAT_TUNES = `
tune boots 1-2: left boot low, right boot high, the next bar the other way round and a step on; the last bar walks
S x=--x=-- R 5 | R _5 | R 8 | 8 5 | 5 R !co
A x=--x=x= R _5 > | R 5 > | 8 5 > | R R > | R 3 > | R 5 R | 5 R > !co
S x=--x=-- R 5 | R _5 | 8 5 | R 3 | 5 8 !co
C x=--x=x= R 5 R | R _5 R | 8 5 R | R R > | R 5 3 | 5 R > !co
S x=--x=-- R 5 | R _5 | R 8 | 8 5 | 5 R !co
A x=--x=x= 8 5 > | R _5 > | R 5 > | R 3 > | R 5 R | 5 3 > !co
L x=--x=-- R 8 | 8 5 | 8 10 | R 5 | R _5
T x=x=x=x= R 5 R > | R _5 R > | 8 5 R > | R R 5 > | R 3 5 > | R 5 3 >
H1 x=x= R > | R 5 | R _5 | R R
H2 x=x= R > | R 5 | R _5
H2 x=-- R | 8

tune buckboard 1-2: one wheel on one, two bumps on three; the answer rolls level and steps off on four
S x=--xx-- R 5 R | R _5 R | R 5 8 | 8 5 R | R R 5 | R 3 5 | 5 R R !co
A x=--x=x= 8 5 > | R _5 > | R 5 > | R R > | R 3 > | 5 R > !co
S x=--xx-- R 5 8 | R 5 R | R _5 R | R R _5 | R 3 R | 8 5 3 | 5 8 5 !co
C x===x=-- R 5 | R _5 | R R | 8 5 | R 3 | 5 R !co
S x=--xx-- R 5 R | R _5 R | R 5 8 | 8 5 R | R R 5 | R 3 5 | 5 R R !co
A x=--x=x= R _5 > | 8 8 > | R 5 > | R R > | 8 5 3 | R 5 3 | 5 3 > !co
L x=--xx-- 8 5 8 | R 8 5 | 8 10 8 | R 8 8 | R 5 8 | R 5 R | R _5 R
T x=--xxx= R 5 R > | R _5 R > | 8 5 R > | R R 5 > | R 3 5 > | R 5 3 >
H1 x=-- R | 8
H1 x=x= R > | R 5 | R _5
H2 xx-- R R | R 5 | R _5
H2 x=x= R > | R 5

tune stile 1-2: two quick feet on one side, one on the other; the answer has the quick feet on three, and the walk comes with both
S xx--x=-- R R 5 | R R _5 | R R 8 | 8 8 5 | R R 3 | 5 5 R !co
A x=--xx-- 8 5 R | R 5 R | R _5 R | R R 5 | R 5 3 | R 3 5 | 5 R R !co
S xx--x=-- R R _5 | R R 5 | R R 8 | 8 8 5 | R R 3 | 5 5 8 !co
C xx--x=x= R R 5 > | R R _5 > | R R R > | 8 8 5 > | R R 3 > | 5 5 R > !co
S xx--x=-- R R 5 | R R _5 | R R 8 | 8 8 5 | R R 3 | 5 5 R !co
A x=--xx-- 8 5 8 | R _5 R | R 5 R | R R _5 | 8 5 3 | R 3 R | 5 3 R !co
L xx--x=-- 8 8 5 | R R 8 | 8 8 10 | R R 5 | R R _5
T xx--xxx= R R 5 R > | R R _5 R > | 8 8 5 R > | R R R 5 > | R R 3 5 > | R R 5 3 >
H1 xx-- R R | 8 8
H1 x=x= R > | R 5 | R _5
H2 xx-- R R | R 5 | 8 8
H2 x=x= R > | R 5

tune milepost 1-2: every bar of the road steps on at four, the post between stands bare; the end walks home
S x=--x=x= R 5 > | R _5 > | R 5 R | 8 5 > | R R > | R 3 > | 5 8 > !co
A x=--x=-- R _5 | R 5 | R R | 8 5 | R 3 | 5 R !co
S x=--x=x= R _5 > | R 5 > | R 5 8 | 8 5 > | R R > | R 5 3 | 5 R > !co
C x===x=== R 5 | R _5 | R R | 8 5 | R 3 | 5 R !co
S x=--x=x= R 5 > | R _5 > | R 5 R | 8 5 > | R R > | R 3 > | 5 8 > !co
A x=--x=-- 8 5 | R _5 | R 5 | R R | R 3 | 5 3 !co
L x=--x=x= R 5 8 | 8 5 > | R 8 > | R 8 5 | 8 10 > | R 5 > | R _5 >
T x=x=x=x= R 5 R > | R _5 R > | 8 5 R > | R R _5 > | R 3 5 > | R 5 3 >
H1 x=x= R > | R 5 | R _5
H2 x=x= R > | R R
H2 x=-- R | 8

tune latchkey 3-4: two beats and a late eighth that turns the key; the answer steps through on three and four
S x=--x=-x R 5 > | R 3 > | R _5 > | R _6 > | 8 6 > | R 2 > | 5 3 > !co
A x=--x=x= R 3 4 | R _7 _6 | R 2 3 | 8 7 6 | R 5 4 | R _6 _7 | 5 4 > !co
S x=--x=-x R 3 > | R 5 > | R _5 > | R _7 > | 8 5 > | R 2 > | 3 5 > !co
C x=x=x=-- R 2 3 | R _7 _6 | 8 7 6 | R 2 R | R _6 _5 | R 3 4 | 5 4 3 !co
S x=--x=-x R 5 > | R 3 > | R _5 > | R _6 > | 8 6 > | R 2 > | 5 3 > !co
A x=--x=x= 8 7 6 | R _7 _6 | R 2 3 | R 3 4 | R 5 4 | R _6 _7 | 5 6 > !co
L x=--x=-x 8 10 > | 8 9 > | R 8 > | 8 7 > | R 6 >
T x=x=x=xx R 2 3 >> > | 8 7 6 >> > | R _7 _6 >> > | R 3 4 >> > | R _5 _6 >> > | R 3 2 >> >
H1 x=-x R > | 8 >
H1 x=x= R > | R 3 | R 2 | R _7
H2 x=xx R >> > | R 3 > | R 2 3
H2 x=-x R > | 8 >

tune porchstep 3-4: a root on the porch, three steps down from three to the gate; the answer sits down, root and fifth
S x=--xxx= R 4 3 2 | R 2 3 > | R _5 _6 _7 | R 5 4 > | 8 7 6 > | R 3 2 R | 5 4 3 > !co
A x=--x=-- R _5 | R 5 | R 3 | 8 5 | R _7 | R 2 | 3 R !co
S x=--xxx= R 2 3 > | R 5 4 3 | R _5 _6 _7 | R 3 2 > | 8 7 6 > | R _7 _6 > | 5 6 5 > !co
C x===x=== R 3 | R _5 | R R | 8 5 | R 5 | 5 R !co
S x=--xxx= R 4 3 2 | R 2 3 > | R _5 _6 _7 | R 5 4 > | 8 7 6 > | R 3 2 R | 5 4 3 > !co
A x=--x=-- R 5 | R _5 | R 3 | 8 6 | R _7 | R 2 | 3 5 !co
L x=--xxx= 8 10 9 8 | 8 9 10 > | R 6 7 8 | 8 9 8 > | 8 7 8 > | R 5 6 >
T x=x=xxx= R 2 3 4 > | R 5 4 3 > | 8 7 6 5 > | R _7 _6 _5 > | R 3 2 R > | R 2 3 5 >
H1 x=-- R | 8
H1 x=x= R > | R 2 | R 3 | R _7
H2 xxx= R R > | R 2 3 | R 3 > | R _7 >

tune rattler 3-4: the rails rattle in pairs, root twice and two steps; the answer is one beat, another, and two into the change
S xx--xx-- R R 5 4 | R R 2 3 | R R _7 _6 | R R 3 2 | R R _6 _5 | 8 8 7 6 | 5 5 4 3 !co
A x=--x=xx R 3 >> > | R 5 >> > | R _6 >> > | 8 6 >> > | R _7 >> > | R 2 >> > | 5 3 >> > !co
S xx--xx-- R R 2 3 | R R 5 4 | R R _7 _6 | R R 5 6 | R R _6 _7 | 8 8 7 6 | 3 3 4 5 !co
C xx--x=== R R 3 | R R _5 | R R R | 8 8 5 | R R 5 | 5 5 3 !co
S xx--xx-- R R 5 4 | R R 2 3 | R R _7 _6 | R R 3 2 | R R _6 _5 | 8 8 7 6 | 5 5 4 3 !co
A x=--x=xx 8 6 >> > | R _6 >> > | R 3 >> > | R 5 >> > | R _7 >> > | R 2 >> > | 3 5 >> > !co
L xx--xx-- 8 8 10 9 | 8 8 9 10 | R R 8 7 | 8 8 9 8 | R R 6 7
T xx--xxxx R R 5 4 >> > | R R 2 3 >> > | R R _7 _6 >> > | 8 8 7 6 >> > | R R _6 _7 >> > | R R 3 2 >> >
H1 xx-- R R | 8 8
H1 x=xx R >> > | R 2 3 | R _7 _6
H2 xx-- R R | 8 8
H2 x=xx R >> > | R 3 > | R 2 >

tune lamplighter 4-5: a short root, a colour tone that burns through four, a late half step; the answer goes by with two in a row
S x=--x==x R 6 > | R 3 > | R _6 > | R _5 > | 8 6 > | R 2 > | 3 6 > !co
A x=--x=xx R 5 >> > | R 3 >> > | R _5 >> > | R _7 >> > | 8 5 >> > | R 2 >> > | 5 4 >> > !co
S x=--x==x R 3 > | R 6 > | R _6 > | R 5 > | 8 7 > | R _7 > | 5 3 > !co
C x=x=x=x= 8 7 6 > | R 2 3 > | R _7 _6 > | R 3 2 > | R _5 _6 > | R 3 4 > | 5 4 3 > !co
S x=--x==x R 6 > | R 3 > | R _6 > | R _5 > | 8 6 > | R 2 > | 3 6 > !co
A x=--x=xx 8 5 >> > | R _5 >> > | R 3 >> > | R 5 >> > | R _7 >> > | R 4 >> > | 3 2 >> > !co
L x=--x==x 8 10 > | 8 9 > | R 8 > | 8 7 > | R 6 >
T x=x=xxxx R 2 3 4 >> > | R 2 b3 3 >> > | 8 7 6 5 >> > | R _7 _6 _5 >> > | R 5 4 3 >> > | R 3 2 R >> >
H1 x=-x R > | 8 >
H1 x=x= R > | R 3 | R _7 | R 2
H2 x=xx R >> > | R 3 > | R 2 >
H2 x=-x R > | 8 >

tune hayloft 4-5: a late eighth slides into three and another into one; the answer climbs the ladder rung by rung
S x=-xx=-x R 4 3 > | R b3 3 > | R #4 5 > | R _6 _5 > | R _7 _6 > | 8 7 6 > | 5 4 3 > !co
A x=x=x=-- R 2 3 | R _7 _6 | 8 7 6 | R 3 4 | R _6 _5 | R 3 2 | R _6 _7 | 5 4 3 !co
S x=-xx=-x R #4 5 > | R 4 3 > | R b3 3 > | R _7 _6 > | R _6 _5 > | 8 7 6 > | 5 6 5 > !co
C x=--x=-- R 3 | R _5 | R 2 | R _7 | 8 5 | R R | 5 R !co
S x=-xx=-x R 4 3 > | R b3 3 > | R #4 5 > | R _6 _5 > | R _7 _6 > | 8 7 6 > | 5 4 3 > !co
A x=x=x=-- 8 7 6 | R _7 _6 | R 2 3 | R 3 4 | R _6 _5 | R _6 _7 | R 5 4 | 3 4 5 !co
L x=-xx=-x 8 9 10 > | 8 10 9 > | R 7 8 > | 8 9 8 > | 8 7 8 > | R 5 6 >
T x=x=x=xx R 2 3 >> > | 8 7 6 >> > | R _7 _6 >> > | R _5 _6 >> > | R 3 4 >> > | R 5 4 >> > | R 3 2 >> >
H1 x=-x R > | 8 >
H1 x=x= R > | R 3 | R 2 | R _7
H2 x=-x R > | 8 >
H2 x=xx R >> > | R 3 > | R 2 3

tune crossing 4-5: root and fifth, then a gallop of sixteenths over the crossing into the change; the next bar lets the train go by
S x===----x===x=xx R 3 4 >> > | R 5 4 >> > | R _5 _6 >> > | R 3 2 >> > | R _7 _6 >> > | 8 7 6 >> > | 5 4 3 >> > !co
A x===----x===---- R _5 | R 5 | R 3 | R _7 | 8 5 | R 2 | 5 R !co
S x===----x===x=xx R 5 4 >> > | R 3 4 >> > | R _5 _6 >> > | R 2 3 >> > | R _6 _7 >> > | 8 6 5 >> > | 3 4 5 >> > !co
C x===x===x===---- R 2 3 | R _7 _6 | 8 7 6 | R 3 2 | R _6 _5 | R 2 R | 5 4 3 !co
S x===----x===x=xx R 3 4 >> > | R 5 4 >> > | R _5 _6 >> > | R 3 2 >> > | R _7 _6 >> > | 8 7 6 >> > | 5 4 3 >> > !co
A x===----x===---- R 5 | R _5 | 8 6 | R 3 | R _7 | R 2 | 3 5 !co
L x===----x===x=xx 8 10 9 >> > | 8 9 8 >> > | R 7 8 >> > | 8 7 8 >> > | R 5 6 >> >
T x===x===x=xxx=xx R 2 3 4 5 4 >> > | R 3 5 5 4 3 >> > | 8 7 6 6 5 4 >> > | R _7 _6 _6 _5 _6 >> > | R 3 2 2 R 2 >> > | R 5 4 4 3 2 >> >
H1 x===x=xx R 3 >> > | R R >> > | R _7 >> > | R 2 >> >
H1 x===---- R | 8
H2 x===x=xx R 3 >> > | R R >> > | R 2 >> > | R _7 >> >
`;
