/** Waltz: tunes of eight bars (see the notation beside the books). */
export const WALTZ_TUNES = `
tune lantern 1-2: the one long and round, then a pair on three that swings the arm into the next bar
S x===xx R 5 > | R 8 > | 8 5 > | R _5 > | R 3 > | R >> > | 5 8 R !co
A x===x= 8 > | R 5 | R > | 8 5 | R _5 | 8 3 | 5 R !co
S x===xx R 8 > | R 5 > | 8 R > | R _5 > | R 3 > | 8 >> > | 5 R 5 !co
C x===== R | 8 | 5 !co
S x===xx R 5 > | R 8 > | 8 5 > | R _5 > | R 3 > | R >> > | 5 8 R !co
A x===x= 8 5 | R > | 8 > | R _5 | R 8 | 8 3 | 5 8 !co
L x===xx 8 5 8 | R 8 > | R 8 5 | 8 8 > | R 10 8 | 8 10 >
T x=x=xx R 5 R > | R R 5 > | 8 5 R > | R _5 R > | R 3 >> > | R 5 >> >
H1 x=x= R > | R 5 | R R
H2 x=xx R 5 > | R R > | R 3 >

tune sidestep 1-2: a short one and a long two, as if the dancer stepped aside; the answer stands still and leads
S x=x=== R 5 | R 8 | 8 5 | R > | R _5 | R 3 | 5 8 !co
A x===x= 8 > | R > | R 5 | 8 5 | R _5 | 8 3 | 5 R !co
S x=x=== R 8 | R 5 | 8 > | R _5 | R 3 | 8 5 !co
C x===x= R > | R 8 | 8 R | R R
S x=x=== R 5 | R 8 | 8 5 | R > | R _5 | R 3 | 5 8 !co
A x=x=x= 8 5 > | R 5 > | R 8 > | R _5 > | 8 3 > | R 3 > | 5 R > !co
L x=x=== R 8 | 8 5 | 8 > | R 10 | 8 10 | 5 8 !co
T x=x=x= R 5 > | R R > | 8 5 > | R _5 > | R 3 > | R >> >
H1 x=x= R > | R 5 | R 8
H2 x=x= R > | R R | 8 >

tune garland 1-2: a turn of two eighths on the second beat, hung between the one and the three
S x=xxx= R 5 8 > | R 8 5 > | 8 5 R > | R _5 R > | R 3 5 > | R 5 3 > | 5 8 5 R !co
A x===x= 8 > | R > | R 5 | 8 5 | R _5 | 8 3 | 5 8 !co
S x=xxx= R 5 R > | R 5 8 > | 8 5 8 > | R _5 R > | R 3 5 8 | 8 5 3 > | 5 8 R 5 !co
C x===x= R > | R 8 | 8 R | R _5
S x=xxx= R 5 8 > | R 8 5 > | 8 5 R > | R _5 R > | R 3 5 > | R 5 3 > | 5 8 5 R !co
A x===x= 8 5 | R 8 | R > | 8 > | R _5 | 8 3 | 5 R !co
L x=xxx= R 8 5 8 | 8 5 8 > | R 5 8 5 | 8 10 8 > | R 3 8 >
T x=x=xx R 5 R > | 8 5 R > | R R 5 > | R _5 R > | R 3 >> > | R 5 >> >
H1 x=xx R 5 > | R R > | R 5 8
H2 x=x= R > | R R | 8 >

tune window 1-2: the one, an open beat, and a single note on three; every second bar closes the gap in quarters
S x=--x= R 5 | R > | R 8 | 8 > | R _5 | R 3 | 5 R !co
A x=x=x= 8 5 > | R 5 8 | R 5 > | R _5 > | R 8 > | 8 5 3 | R 3 > | 5 8 > !co
S x=--x= R 8 | R > | R 5 | 8 > | R _5 | 8 3 | 5 8 !co
C x=--x= R > | R R | R 8 | 8 >
S x=--x= R 5 | R > | R 8 | 8 > | R _5 | R 3 | 5 R !co
L x=x=x= R 5 8 | 8 5 8 | R 8 > | 8 8 > | R 8 10 | 8 10 >
S x=--x= 8 5 | R > | 8 > | R 5 | R _5 | 8 3 | 5 R !co
T x=x=x= R 5 > | R R > | 8 5 > | R _5 > | R 3 > | R >> >
H1 x=-- R | 8
H2 x=x= R > | R R | R 5

tune lean 3-4: the one leans over two, a light note falls onto three; steps up, steps down
S x==xx= R 2 3 | R 5 > | R 3 4 | 8 7 > | R _7 _6 | R 2 R !st | 3 4 5 !co
A x=x=x= 8 7 > | R 5 4 | R 3 > | 8 6 5 | R _7 > | R 2 3 | 5 4 > !co
S x==xx= R 3 4 | R 2 > | R 5 6 | 8 6 > | R _6 _5 | R 3 > | R _7 R !st | 5 6 > !co
C x==x== R 5 | R 3 | R R | 8 6 | R _5 | R >
S x==xx= R 2 3 | R 5 > | R 3 4 | 8 7 > | R _7 _6 | R 2 R !st | 3 4 5 !co
A x=x=x= 8 7 6 | R 5 > | R 3 2 | 8 6 > | R _7 _6 | R 2 > | R 3 > | 5 4 3 !co
L x==xx= 8 9 10 | 8 9 > | R 7 8 | R 5 8 | 8 10 9 | 8 10 > | 8 9 7 | 5 8 9 !co
T x=x=xx R 5 >> > | R 3 4 > | 8 7 6 > | R _5 _6 _7 !st | R 3 >> > | R 2 >> > | R _7 _6 >
H1 x==x R > | R 3 | R 2
H2 x=xx R 3 > | R >> > | R 2 >

tune staircase 3-4: two quarters and two eighths that climb; the next bar comes down and sits
S x=x=xx R 2 3 > | R 3 4 5 | R 5 6 > | 8 7 6 5 | R _7 _6 > | R 3 2 > | R 3 2 > !st | 3 4 5 > !co
A x===x= 8 7 | R > | 8 6 | R _7 | R 2 | R 5 | 5 4 !co
S x=x=xx R 3 4 > | R 2 3 5 | R 6 5 > | 8 6 5 > | R _6 _7 > | R _7 _6 _5 | 5 4 3 > !co
C x===x= R > | 8 7 | R _7 | R 6 | R R | R 3
S x=x=xx R 2 3 > | R 3 4 5 | R 5 6 > | 8 7 6 5 | R _7 _6 > | R 3 2 > | R 3 2 > !st | 3 4 5 > !co
A x===x= 8 > | R 5 | 8 7 | R 3 | R _7 | R _6 | 5 6 !co
L x=x=xx 8 9 10 > | R 5 8 9 | R 7 8 > | 8 10 9 8 | 8 9 8 7 | 5 6 8 > !co
T x=x=xx R 5 4 > | R 2 >> > | 8 7 5 > | R _5 _6 _7 !st | R 3 >> > | R _6 >> > | R 5 >> >
H1 x=xx R 2 > | R 3 > | R R >
H2 x=xx R 3 > | R >> > | R 5 >

tune sigh 3-4: two quick notes and a long sigh on the second beat; the answer holds the one and leads
S xxx=== R 2 3 | R 3 > | 8 7 6 | R 2 > | R _7 _6 | R 6 5 | R 5 4 !ch | R _7 R !st | 5 4 3 !co
A x===xx R 5 > | 8 6 > | R 3 > | R _7 > | R >> > | 8 7 6 | 3 2 > !co
S xxx=== R 3 4 !ch | R 2 3 | 8 6 5 | 8 7 > | R _6 _5 | R 5 6 | R 2 R !st | 3 4 5 !co
C x===x= R > | R 5 | 8 7 | R _6 | R R
S xxx=== R 2 3 | R 3 > | 8 7 6 | R 2 > | R _7 _6 | R 6 5 | R 5 4 !ch | R _7 R !st | 5 4 3 !co
A x===xx R 5 4 | 8 >> > | R 3 2 | R _7 _6 | R 5 > | 8 7 > | 3 >> > !co
L xxx=== 8 9 10 | R 5 8 | 8 9 > | 8 10 > | 8 9 7 | 8 10 9 !ch | R 7 8 | 5 8 10 !co
T x=x=xx R 5 >> > | R 3 2 > | 8 7 6 > | R _5 _6 _7 !st | R 3 >> > | R _7 _6 > | R 6 5 >
H1 xxx= R 2 3 | R R > | R 5 >
H2 x=xx R 3 > | R >> > | R 2 >

tune arch 4-5: a long one and three eighths that bend like an arch; quarters walk back under it
S x==xxx R 3 5 > | R 2 3 4 | R 5 6 5 | 8 7 6 > | R _7 _6 _5 | R #4 5 > | R 5 3 > | R 2 _7 R !st | 3 5 6 > !co
A x=x=x= 8 7 > | R 5 4 | R _7 > | 8 6 5 | R 3 > | R c > | 5 4 3 !co
S x==xxx R 3 5 > | R 5 4 > | R 2 3 5 | 8 6 5 > | R _5 _6 > | R b3 3 > | R _6 _7 R !st | 5 6 5 > !co
C x===x= R > | 8 7 | R c | R _7 | R 3 | 8 6
S x==xxx R 3 5 > | R 2 3 4 | R 5 6 5 | 8 7 6 > | R _7 _6 _5 | R #4 5 > | R 5 3 > | R 2 _7 R !st | 3 5 6 > !co
A x=x=x= 8 7 6 | R 5 > | R _7 _6 | 8 6 > | R 3 2 | R c 5 | R 3 > | 5 4 > !co
L x==xxx 8 9 10 > | R 5 8 9 | 8 10 9 > | R 7 8 > | 8 9 8 7 | 5 8 9 10 !co
T x=x=xx R 5 >> > | R 3 #4 > | 8 7 6 > | R _7 >> > | R _5 _6 _7 !st | R c >> > | R 2 3 >
H1 x=xx R 3 > | R >> > | R 5 >
H2 x=xx R 3 > | R >> > | R #4 >

tune hover 4-5: three strokes that hover between the beats, then three quarters that set the dance right
S x==x=x R 6 > | R 3 > | R 5 4 | 8 7 > | R _7 > | R c > | R 2 R !st | 5 6 > !co
A x=x=x= R 2 3 | 8 7 > | R 5 > | R _6 _7 !st | R _7 _6 | 8 6 5 | 3 4 > !co
S x==x=x R 5 > | R 2 > | R 3 4 | 8 6 > | R _6 > | R 3 > | R 7 > !st | 3 5 > !co
C x==x== R 5 | R c | 8 6 | R > | R _7 !ch | R R
S x==x=x R 6 > | R 3 > | R 5 4 | 8 7 > | R _7 > | R c > | R 2 R !st | 5 6 > !co
A x=x=x= R 2 > | 8 7 6 | R 5 4 | R _6 > | R _7 > | 8 6 > | 3 4 5 !co
L x==x=x 8 10 > | R 8 9 | 8 9 > | R 8 > | 5 10 9 !co
T x==xxx R 5 >> > | R 3 4 > | 8 7 >> > | R _5 _6 _7 !st | R 2 >> > | R _7 _6 > | R c 5 >
H1 x==x R > | R 3 | R 5
H2 x=xx R 3 > | R >> > | R 2 >

tune snap 4-5: a snapped root and a long note above it, then three steps away; quarters and a run answer
S xx==x= R 8 7 | R 5 4 | R 3 > | 8 6 > | R _7 _6 | R c > | R 2 R !st | 5 6 > !co
A x=x=xx R 2 3 > | 8 7 6 > | R 5 #4 4 !ch | R 3 >> > | R _7 _6 > | R _5 _6 _7 !st | 3 2 R > !co
S xx==x= R 8 7 | R 3 2 | R 5 > | 8 7 > | R _6 > | R c 6 | R _7 R !st | 3 5 4 !co
C x===x= R > | 8 7 | R c | R _7 | R R | R 3 | 8 6
S xx==x= R 8 7 | R 5 4 | R 3 > | 8 6 > | R _7 _6 | R c > | R 2 R !st | 5 6 > !co
A x=x=xx R 2 >> > | 8 7 >> > | R 5 >> > | R 3 4 > | R _7 >> > | R _5 >> > | 3 2 >> > !co
L xx==x= R 10 9 | R 8 9 | 8 10 > | 8 9 > | R 9 7 | 5 8 9 !co
T x=x=xx R 5 >> > | R 3 2 > | 8 7 6 > | R _7 >> > | R _5 _6 _7 !st | R c >> > | R 2 3 >
H1 xx== R 5 | R 3 | R 8
H2 x=xx R 3 > | R >> > | R 5 >
`;
