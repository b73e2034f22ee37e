/** Waltz: tunes of eight bars (see the notation beside the books). */
export const WALTZ_TUNES = `
tune arm-in-arm 1-2: the one long and round with a tone of the chord on three; the phrase opens into three quarters before it turns
S x===x= R 5 | R 3 | R > | R _5 | R 8 | 8 5 | 3 5 !co | 5 8 !co
A x===x= R 3 | R > | R 5 | 8 5 | R _5 | 5 R !co | 5 3 !co
S x=x=x= R 3 5 | R 5 8 | R 5 3 | R 5 > | 8 5 3 | 8 5 R | 3 5 8 !co | 5 3 R !co
C x===x= R > | R 3 | R 5 | R _5 | 8 5 | 5 R !co
S x===x= R 5 | R 3 | R > | R _5 | R 8 | 8 5 | 3 5 !co | 5 8 !co
A x=x=x= 8 5 3 | R 5 3 | R 5 > | R 3 5 | 8 5 R | 5 3 R !co
L x===x= R 8 | R 10 | 8 10 | R 5 | R 3 | 8 5 | 5 8 !co
T x=x=x= R 5 3 | R 3 > | R 5 > | 8 5 3 | 8 5 R | R 5 R
H x=== R | 8
H x=x= R > | R 5 | R 3 | 8 5
Q x= R | 8

tune glide-and-step 1-2: one bar glides on a long root to the fifth or third, the next takes three steps through its chord
S x===x= R 5 | R 3 | R _5 | R > | 8 5 | R 8 | 5 8 !co | 3 5 !co
A x=x=x= R 5 3 | 8 5 3 | R 3 5 | R 5 > | R 5 8 | 8 5 R | 5 3 R !co
S x===x= R 5 | R 3 | R _5 | R > | 8 5 | R 8 | 5 8 !co | 3 5 !co
C x=x=x= R 5 R | R 5 > | R 3 > | R 5 3 | 8 5 R | 5 3 R !co
S x===x= R 5 | R 3 | R _5 | R > | 8 5 | R 8 | 5 8 !co | 3 5 !co
A x=x=x= R 3 5 | R 5 8 | 8 5 3 | R 5 3 | R 5 > | 8 5 R | 5 3 R !co
L x===x= R 8 | R 10 | 8 10 | 8 5 | R 5 | R 3 | 5 8 !co
T x=x=x= R 5 3 | R 3 > | R 5 > | 8 5 3 | 8 5 R | R 5 R
H x=== R | 8
H x=x= R > | R 5 | R 3 | 8 5
Q x= R | 8

tune turning-gate 1-2: two bars sway on a long root, the third goes up the chord in three quarters, and the fourth stands still
S x===x= R 5 | R 3 | R _5 | R > | 8 5 | 5 8 !co | 3 5 !co
A x===x= R 3 | R > | 8 5 | R 5 | R _5 | 5 3 !co | 5 R !co
A x=x=x= R 3 5 | R 5 8 | R 5 > | R 5 3 | 8 5 3 | 8 5 R | 3 5 8 !co | 5 3 R !co
C x===== R | 8 | 5 !co | 3 !co
S x===x= R 5 | R 3 | R _5 | R > | 8 5 | 5 8 !co | 3 5 !co
A x===x= R 5 | R > | R 3 | 8 5 | R _5 | 5 3 !co | 5 R !co
L x=x=x= R 5 8 | R 3 5 | 8 10 8 | R 3 8 | 8 5 R | R 5 R | 5 8 10 !co | 3 5 8 !co
T x=x=x= R 5 3 | R 3 > | R 5 > | 8 5 3 | 8 5 R | R 5 R
H x=== R | 8
H x=x= R > | R 5 | R 3 | 8 5
Q x= R | 8

tune round-the-floor 1-2: the chord in three quarters, then its root long with a lead on three; the fourth bar is one note
S x=x=x= R 5 3 | R 3 5 | R 5 8 | 8 5 3 | R 5 > | 8 5 R | R 5 R | 5 3 R !co | 3 5 8 !co
A x===x= R 3 | R > | R 5 | 8 5 | R _5 | 5 3 !co | 5 R !co
S x=x=x= R 5 3 | R 3 5 | R 5 8 | 8 5 3 | R 5 > | 8 5 R | R 5 R | 5 3 R !co | 3 5 8 !co
C x===x= R 3 | R 5 | 8 5 | R > | 5 3 !co | 3 5 !co
S x=x=x= R 5 3 | R 3 5 | R 5 8 | 8 5 3 | R 5 > | 8 5 R | R 5 R | 5 3 R !co | 3 5 8 !co
A x===x= R > | R 3 | R 5 | 8 5 | R _5 | 5 3 !co
L x=x=x= R 5 8 | 8 10 8 | R 3 5 | R 3 8 | 8 5 R | R 5 R | 3 5 8 !co
T x===x= R 3 | R > | R 5 | 8 5 | R _5
H x=== R | 8
H x=x= R > | R 5 | R 3 | 8 5
Q x= R | 8

tune slow-lantern 3-5: a long root that three leads out of, twice; the third bar opens the chord, and the fourth is held with its fifth
S x===x= R > | R 3 | R 5 | 8 5 | R _5 | 3 5 !co | 5 > !co
A x===x= R 3 | R > | 8 5 | R 5 | R _7 | R _5 | 5 3 !co | 5 > !co
S x=x=x= R 3 5 | R 5 3 | R 5 > | R 5 8 | R 3 > | 8 5 3 | R _5 > | 3 5 8 !co | 5 3 > !co
C x===x= R 5 | R 3 | R _5 | R > | 8 5 | 5 R !co
S x===x= R > | R 3 | R 5 | 8 5 | R _5 | 3 5 !co | 5 > !co
A x=x=x= R 5 3 | 8 5 3 | R 3 5 | R 5 > | 8 5 > | R 3 > | R _5 > | 5 3 > !co
L x===x= R 8 | 8 10 | R 10 | R 5 | R 3 | 8 > | 5 8 !co
T x=x=xx R 5 3 > | R 3 5 > | R 5 >> > | R 3 >> > | 8 5 3 > | R _5 >> > | 8 5 >> >
H x=== R | 8
H x=x= R > | R 3 | R 5 | 8 5
H x=x= R > | R 3 | R 5 | R _5
Q x= R | 8

tune rocking-chair 3-5: the one leans over two and a light eighth tips onto three; the answer comes down in three even quarters
S x==xx= R 3 5 | R 5 3 | R 5 > | R 3 > | R 5 8 | R _5 > | 8 5 3 | 3 5 > !co | 5 3 > !co
A x=x=x= R 5 3 | 8 5 3 | R 3 > | R 5 > | R 3 5 | 8 5 > | R _5 > | 5 3 > !co
S x==xx= R 3 5 | R 5 3 | R 5 > | R 3 > | R 5 8 | R _5 > | 8 5 3 | 3 5 > !co | 5 3 > !co
C x===x= R 3 | R 5 | R > | R _5 | 8 5 | 5 3 !co
S x==xx= R 3 5 | R 5 3 | R 5 > | R 3 > | R 5 8 | R _5 > | 8 5 3 | 3 5 > !co | 5 3 > !co
A x=x=x= 8 5 3 | R 3 5 | R 5 8 | R 5 > | R 5 3 | R 3 > | R _5 > | 5 3 > !co
L x==xx= R 5 8 | 8 10 8 | R 3 5 | R 8 10 | 8 5 > | 8 9 10 | 5 8 > !co
T x=x=xx R 5 3 > | R 3 5 > | R 5 >> > | R 3 >> > | 8 5 3 > | R _5 >> > | 8 5 >> >
H x==x R > | R 3 | R 5 | 8 5
H x=x= R > | R 3 | R 5 | 8 5
Q x= R | 8

tune tide-and-step 3-5: a long one that three leads out of, answered by three quarters that come down the chord
S x===x= R > | R 3 | R 5 | 8 5 | R _5 | R _7 | 3 5 !co | 5 > !co
A x=x=x= R 5 3 | 8 5 3 | R 5 > | R 3 5 | R 3 > | 8 5 > | R _5 > | 5 3 > !co
S x===x= R > | R 3 | R 5 | 8 5 | R _5 | R _7 | 3 5 !co | 5 > !co
C x===== R | 8 | 5 !co | 3 !co
S x===x= R > | R 3 | R 5 | 8 5 | R _5 | R _7 | 3 5 !co | 5 > !co
A x=x=x= R 3 5 | R 5 3 | 8 5 3 | R 5 8 | R 5 > | R 3 > | 8 5 > | R _5 > | 5 3 > !co
L x=x=x= R 5 8 | 8 10 8 | R 3 5 | R 8 10 | 8 5 > | R 5 > | 5 8 > !co
T x=x=xx R 5 3 > | R 3 5 > | R 5 >> > | R 3 >> > | 8 5 3 > | R _5 >> > | 8 5 >> >
H x=== R | 8
H x=x= R > | R 3 | R 5 | 8 5
Q x= R | 8

tune paper-moth 3-5: a long root with its third or fifth, answered by a long root with two light eighths that run over; every fourth bar is one held note
S x===x= R 5 | R 3 | R > | R _5 | 8 5 | R 8 | 3 5 !co | 5 > !co
A x===xx R >> > | R 3 > | R 5 > | R 3 5 | R _5 > | 8 5 > | 5 >> > !co | 5 3 > !co
S x===x= R 5 | R 3 | R > | R _5 | 8 5 | R 8 | 3 5 !co | 5 > !co
C x===== R | 8 | 5 !co | 3 !co
S x===x= R 5 | R 3 | R > | R _5 | 8 5 | R 8 | 3 5 !co | 5 > !co
A x=x=xx R 5 3 > | R 3 5 > | 8 5 3 > | R 5 >> > | R 3 >> > | R _5 >> > | 5 3 >> > !co
L x===x= R 8 | R 10 | 8 10 | R 5 | 8 > | 5 8 !co
T x=x=xx R 5 3 > | R 3 5 > | R 5 >> > | R 3 >> > | 8 5 3 > | R _5 >> > | 8 5 >> >
H x=== R | 8
H x=x= R > | R 3 | R 5 | 8 5
H x=xx R >> > | R 3 > | R 5 >
Q x= R | 8

tune garden-swing 3-5: the chord swings up in three quarters and down again in the next bar, two bars stand on a long root, and the second swing goes higher
S x=x=x= R 3 5 | R 5 3 | R 5 8 | R 5 > | R 3 > | R _5 > | 3 5 8 !co | 5 3 > !co
A x=x=x= 8 5 3 | R 5 3 | R 5 > | R 3 5 | 8 5 > | R 3 > | R _5 > | 5 3 R !co
S x===x= R 3 | R > | R 5 | 8 5 | R _5 | 3 5 !co
C x===x= R > | R 5 | R 3 | R _5 | 8 5 | 5 R !co
S x=x=x= R 3 5 | R 5 3 | R 5 8 | R 5 > | R 3 > | R _5 > | 3 5 8 !co | 5 3 > !co
A x===x= R > | R 3 | R 5 | 8 5 | R _5 | 5 3 !co
L x=x=x= R 5 8 | 8 10 8 | R 3 8 | R 8 10 | R 3 5 | 8 5 > | 5 8 > !co
T x===xx R 3 > | R 5 > | R >> > | R _5 > | 8 5 > | R 3 5
H x=== R | 8
H x=x= R > | R 3 | R 5 | 8 5
Q x= R | 8
`;
