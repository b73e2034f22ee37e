/** Waltz: tunes of eight bars (see the notation beside the books). */
export const WALTZ_TUNES = `
tune arm-in-arm 1-2: the one long and round, three leads; three quarters only where the phrase turns
S x===x= R 5 | R 8 | R > | R _5 | R 3 | 8 5 | R R | R 10 | 3 5 !co | 5 8 !co
A x===x= 8 5 | 8 > | R _5 | R > | 8 3 | R 3 | R 5 | 8 R | 5 3 !co | 5 R !co
S x===x= R 5 | R 8 | R > | R _5 | R 3 | 8 5 | R R | R 10 | 3 5 !co | 5 8 !co
C x=x=x= R 5 > | 8 5 R | R _5 > | R 5 R | 8 5 > | R 3 5 | 8 5 3 | R 3 > | R 5 3 | 5 3 R !co
S x===x= R 5 | R 8 | R > | R _5 | R 3 | 8 5 | R R | R 10 | 3 5 !co | 5 8 !co
A x===x= 8 > | 8 5 | R _5 | R > | 8 3 | R 3 | R 5 | 8 R | 5 3 !co
L x===x= 8 5 | R 8 | 8 > | 8 8 | 8 10 | R 10 | R 5 | 8 3 | 5 8 !co
T x=x=x= R 5 > | 8 5 > | R _5 > | R 5 R | R 3 5 | R 3 > | 8 5 3 | R 5 3 | 8 3 >
H x=== R | 8
H x=x= R > | R 5 | R 3 | R R | 8 5 | 8 >
H x=x= R > | R 5 | R 3 | R R | 8 5 | 8 >
Q x= R | 8

tune glide-and-step 1-2: one bar glides on a long root, the next takes three steps
S x===x= R 5 | R 8 | R _5 | R > | R R | R 3 | 8 5 | R 10 | 5 8 !co | 3 5 !co
A x=x=x= 8 5 > | 8 5 R | R _5 R | R 5 > | R 5 8 | 8 5 3 | R 3 5 | R 5 3 | R 3 > | 5 3 R !co
S x===x= R 5 | R 8 | R _5 | R > | R R | R 3 | 8 5 | R 10 | 5 8 !co | 3 5 !co
C x=x=x= R 5 R | 8 5 > | R 5 > | R _5 > | 8 5 R | R 3 R | R 5 3 | 8 3 > | R 3 > | 5 3 R !co
S x===x= R 5 | R 8 | R _5 | R > | R R | R 3 | 8 5 | R 10 | 5 8 !co | 3 5 !co
A x=x=x= 8 5 R | 8 5 > | R 5 > | R _5 R | R 5 8 | 8 5 3 | R 5 3 | R 3 5 | 8 3 > | 5 3 R !co
L x===x= 8 5 | R 8 | 8 > | 8 8 | R 10 | 8 10 | R 5 | 8 3 | 5 8 !co
T x=x=x= R 5 > | 8 5 > | R _5 > | R 5 8 | R 3 5 | R 3 > | 8 5 3 | R 5 3 | 8 3 >
H x=== R | 8
H x=x= R > | R 5 | R 3 | R R | 8 5 | 8 >
H x=x= R > | R 5 | R 3 | R R | 8 5 | 8 >
Q x= R | 8

tune bell-tower 1-2: the root long and its octave rung on three, or the fifth below; the answer comes down from the top
S x===x= R 8 | R _5 | R 5 | R > | 8 5 | R 10 | R R | R 3 | 5 8 !co | 3 8 !co
A x===x= 8 5 | 8 R | R _5 | 8 > | R > | R 5 | 8 3 | R 3 | R R | 5 R !co | 5 3 !co
S x===x= R 8 | R _5 | R 5 | R > | 8 5 | R 10 | R R | R 3 | 5 8 !co | 3 8 !co
C x===x= R R | R > | R _5 | 8 R | R 5 | 8 > | 8 5 | R 3 | 8 3 | 5 R !co
S x===x= R 8 | R _5 | R 5 | R > | 8 5 | R 10 | R R | R 3 | 5 8 !co | 3 8 !co
A x===x= 8 R | 8 5 | 8 > | R _5 | R > | R 5 | 8 3 | R 3 | R R | 5 R !co
L x=x=x= R 8 5 | 8 5 8 | R 5 8 | R 8 > | 8 5 > | R 3 8 | 8 10 8 | R 8 10 | R 8 3 | 5 8 5 !co
T x=x=x= R 8 5 | R 5 > | 8 5 > | R _5 > | R 8 > | R 3 5 | R 3 > | 8 5 3 | R 5 3 | 8 3 >
H x=== R | 8
H x=x= R > | R 5 | R 3 | R R | R 8 | 8 5
H x=x= R > | R 5 | R 3 | R R | R 8 | 8 >
Q x= R | 8

tune slow-lantern 3-5: long roots, and on three the seventh, sixth or second that lies beside the next one
S x===x= R 5 | R 3 | R > | R 2 | R _7 | 8 7 | R c | R 6 !ch | R _6 | 3 5 !co
A x===x= 8 7 | 8 > | R _7 | R _5 | R > | 8 5 | R _6 | R 3 | 8 c | 5 3 !co | 5 4 !co
S x===x= R 5 | R 3 | R > | R 2 | R _7 | 8 7 | R c | R 6 !ch | R _6 | 3 5 !co
C x=x=x= R 5 > | R 3 2 | 8 7 5 | R _7 _6 | R _5 > | R 5 3 | 8 7 > | R 2 3 | 5 3 R !co
S x===x= R 5 | R 3 | R > | R 2 | R _7 | 8 7 | R c | R 6 !ch | R _6 | 3 5 !co
A x===x= 8 > | 8 7 | R _7 | R _5 | R > | 8 5 | R _6 | R 3 | 8 c | 5 4 !co
L x===x= 8 9 | 8 10 | R 8 | 8 7 | 8 > | R 7 | R 9 | 8 c | 5 8 !co
T x=x=xx R 5 >> > | R 3 >> > | 8 7 >> > | R _5 >> > | R 5 6 7 | R _7 >> > | R 2 3 > | 8 5 >> > | R _5 _6 _7
H x=== R | 8
H x=x= R > | R 3 | R 2 | R _7 | 8 7 | R 5
H x=x= R > | R 3 | R 2 | R _7 | 8 7 | R 5
Q x= R | 8

tune rocking-chair 3-5: the one leans over two, a light eighth tips onto three, in every bar alike
S x==xx= R 3 5 | R 5 6 | R 2 3 | R 5 > | R 3 > | R 3 4 | R _5 _6 | R c 5 | R _7 > | 3 4 5 !co | 3 5 > !co
A x==xx= 8 7 6 | 8 7 > | 8 5 3 | R _7 _6 | 8 7 5 | R 5 3 | R _7 > | R 3 2 | R 5 > | 5 4 3 !co | 5 3 > !co
S x==xx= R 3 5 | R 5 6 | R 2 3 | R 5 > | R 3 > | R 3 4 | R _5 _6 | R c 5 | R _7 > | 3 4 5 !co | 3 5 > !co
C x==xx= R 5 R | R 3 R | 8 5 > | R 5 > | R _5 > | 8 7 5 | R _7 R | R 3 > | R 3 2 | 5 3 R !co
S x==xx= R 3 5 | R 5 6 | R 2 3 | R 5 > | R 3 > | R 3 4 | R _5 _6 | R c 5 | R _7 > | 3 4 5 !co | 3 5 > !co
A x==xx= 8 7 > | 8 7 6 | R _7 _6 | 8 5 3 | 8 7 5 | R 5 3 | R _7 > | R 3 2 | R 5 > | 5 4 3 !co
L x==xx= 8 9 10 | R 5 8 | 8 9 > | R 7 8 | 8 10 9 | R 8 9 | 8 9 7 | R 8 7 | 5 8 9 !co
T x=x=xx R 5 6 7 | R 5 >> > | R 3 >> > | 8 7 >> > | R _5 _6 _7 | R _7 >> > | R 3 4 > | R 2 >> > | 8 5 >> >
H x==x R > | R 3 | R 5 | R 2 | 8 7 | R _7
H x=x= R > | R 3 | R 5 | R 2 | 8 7 | R _7
Q x= R | 8

tune tide-and-step 3-5: a long one that three leads out of, answered by three quarters that come down the scale
S x===x= R > | R 2 | R 3 | R 6 | R _7 | 8 7 | R 5 | 8 > | 3 5 !co | 5 3 !co
A x=x=x= 8 7 > | R 3 > | 8 5 > | R _7 _6 | 8 7 6 | R 2 3 | R 5 > | R _5 > | 5 4 > !co | 3 2 > !co
S x===x= R > | R 2 | R 3 | R 6 | R _7 | 8 7 | R 5 | 8 > | 3 5 !co | 5 3 !co
C x===x= R > | R 3 | R _7 | R 5 | 8 5 | R 2 | 8 > | 5 3 !co
S x===x= R > | R 2 | R 3 | R 6 | R _7 | 8 7 | R 5 | 8 > | 3 5 !co | 5 3 !co
A x=x=x= 8 7 > | R 3 > | 8 5 > | R _7 _6 | 8 7 6 | R 2 3 | R 5 > | R _5 > | 5 4 > !co | 3 2 > !co
L x=x=x= R 5 8 | R 3 5 | 8 9 > | R 5 > | R 3 > | 8 10 > | 5 8 > !co
T x=x=xx R 5 >> > | R 3 >> > | R _5 _6 _7 | R 5 6 7 | 8 7 >> > | R _5 >> >
H x=== R | 8
H x=x= R > | R 3 | R 5
Q x= R | 8

tune lantern-boat 3-5: the long one and three again, but each second bar leans on two
S x===x= R 5 | R 3 | R > | 8 5 | R 2 | R _6 | 8 7 | 5 3 !co | 3 R !co
A x=x==- R 3 | 8 5 | R 5 | R _5 | 8 6 | R 2 | 5 3 !co | 3 5 !co
S x===x= R 5 | R 3 | R > | 8 5 | R 2 | R _6 | 8 7 | 5 3 !co | 3 R !co
C x=x=x= R 3 > | 8 5 > | R 5 > | R _5 > | 8 7 6 | R 2 3 | 5 3 > !co
S x===x= R 5 | R 3 | R > | 8 5 | R 2 | R _6 | 8 7 | 5 3 !co | 3 R !co
A x=x==- R 3 | 8 5 | R 5 | R _5 | 8 6 | R 2 | 5 3 !co | 3 5 !co
L x===x= R 8 | 8 10 | R 9 | 8 > | R 5 | 5 8 !co
T x=x=x= R 5 > | R 3 > | R 5 7 | R _5 _7 | 8 5 > | R _5 >
H x=== R | 8
H x=x= R > | R 3 | R 5
Q x= R | 8

tune candle-row 1-2: one long root and a lead on three, three bars alike; the fourth is a single note held to its end
S x===x= R 5 | R > | R _5 | R 8 | 8 5 | R R | R 3 | 8 3 | R 10 | 3 5 !co | 5 8 !co
A x===x= 8 5 | R _5 | R > | 8 > | R 5 | 8 R | R 3 | 8 3 | R R | 5 3 !co | 5 R !co | 3 > !co
S x===x= R 5 | R > | R _5 | R 8 | 8 5 | R R | R 3 | 8 3 | R 10 | 3 5 !co | 5 8 !co
C x===== R | 8 | 5 !co | 3 !co
S x===x= R 5 | R > | R _5 | R 8 | 8 5 | R R | R 3 | 8 3 | R 10 | 3 5 !co | 5 8 !co
A x===x= R _5 | 8 5 | R > | 8 > | R 5 | 8 R | R 3 | 8 3 | R R | 5 3 !co | 5 R !co | 3 > !co
L x===x= 8 5 | R 8 | 8 > | 8 8 | 8 10 | R 10 | R 5 | 8 3 | 5 8 !co | 3 8 !co
T x===x= R > | R 5 | 8 > | R _5 | 8 5 | R 3 | 8 3 | R R
H x=== R | 8
H x=x= R > | R 5 | R 3 | R R | R _5 | 8 5 | 8 >
Q x= R | 8

tune turning-gate 1-2: two bars sway on a long root, the third takes three steps, and the fourth stands still
S x===x= R 8 | R 5 | R > | R _5 | 8 R | 8 5 | R 10 | R 3 | R R | 5 8 !co | 3 5 !co
A x===x= 8 5 | R 5 | R _5 | 8 > | R > | R R | 8 3 | R 3 | 8 R | 5 3 !co | 5 R !co
A x=x=x= R 5 8 | R 5 > | 8 5 R | R 5 R | 8 5 > | R _5 R | R _5 > | R 3 5 | 8 5 3 | R 5 3 | R 3 > | 3 5 8 !co | 5 3 R !co
C x===== R | 8 | 5 !co | 3 !co
S x===x= R 8 | R 5 | R > | R _5 | 8 R | 8 5 | R 10 | R 3 | R R | 5 8 !co | 3 5 !co
A x===x= R 5 | 8 5 | R _5 | 8 > | R > | R R | 8 3 | R 3 | 8 R | 5 3 !co | 5 R !co
L x=x=x= 8 5 > | R 5 8 | R 8 5 | R 8 > | 8 5 8 | R 3 5 | 8 10 8 | R 5 10 | R 3 8 | 5 8 10 !co | 3 5 8 !co
T x===x= R > | R 5 | 8 > | R _5 | 8 5 | R 3 | 8 3 | R R
H x=== R | 8
H x=x= R > | R 5 | R 3 | R R | R _5 | 8 5 | 8 >
Q x= R | 8

tune paper-moth 3-5: a long root with one step on three, answered by a long root with two light eighths that run over; every fourth bar is one held note
S x===x= R 5 | R 3 | R > | R 2 | R _6 | R 6 | R _7 | 8 7 | 8 5 | R 4 | R _5 | 8 c | 3 5 !co | 5 4 !co | 3 4 !co
A x===xx R >> > | 8 >> > | R _7 _6 | R 2 3 | R 3 > | 8 7 6 | 8 c 5 | R 5 > | R 5 4 | R _5 > | R 3 2 | 5 4 3 !co | 5 >> > !co | 3 >> > !co
S x===x= R 5 | R 3 | R > | R 2 | R _6 | R 6 | R _7 | 8 7 | 8 5 | R 4 | R _5 | 8 c | 3 5 !co | 5 4 !co | 3 4 !co
C x===== R | 8 | 5 !co | 3 !co
S x===x= R 5 | R 3 | R > | R 2 | R _6 | R 6 | R _7 | 8 7 | 8 5 | R 4 | R _5 | 8 c | 3 5 !co | 5 4 !co | 3 4 !co
A x===xx 8 >> > | R >> > | R _7 _6 | R 2 3 | R 3 > | 8 7 6 | 8 c 5 | R 5 > | R 5 4 | R _5 > | R 3 2 | 5 4 3 !co | 5 >> > !co | 3 >> > !co
L x===x= 8 9 | R 8 | 8 10 | R 6 | 8 7 | 8 > | R 5 | 8 c | 5 8 !co | 3 6 !co
T x===xx R >> > | 8 >> > | R 5 > | R 6 7 | R _6 _7 | R 3 > | R 2 3 | R _5 >
H x=== R | 8
H x=x= R > | R 2 | R 3 | R 5 | R _7 | 8 7
H x=xx R >> > | R 2 3 | R 3 > | 8 7 6
Q x= R | 8
`;
