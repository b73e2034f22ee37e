/** Waltz: tunes of eight bars (see the notation beside the books). */
export const WALTZ_TUNES = `
tune arm-in-arm 1-2: the one long and round with a tone of the chord on three; the phrase opens into three quarters before it turns
S x===x= R 5 | R 3 | R > | R _5 | R 8 | 8 5 | 3 5 !co | 5 8 !co
A x===x= R 3 | R > | R 5 | 8 5 | R _5 | 5 R !co | 5 3 !co
S x=x=x= R 3 5 | R 5 8 | R 5 3 | 8 5 3 | 8 5 R | 3 5 8 !co | 5 3 R !co | R _5 R
C x===x= R > | R 3 | R 5 | R _5 | 8 5 | 5 R !co
S x===x= R 5 | R 3 | R > | R _5 | R 8 | 8 5 | 3 5 !co | 5 8 !co
A x=x=x= 8 5 3 | R 5 3 | R 3 5 | 8 5 R | 5 3 R !co | R 5 8 | R _5 R
L x===x= R 8 | R 10 | 8 10 | R 5 | R 3 | 8 5 | 5 8 !co
T x=x=x= R 5 3 | R 3 > | 8 5 3 | 8 5 R | R 5 R | R _5 R
H x=== R | 8
H x=x= R > | R 5 | R 3 | 8 5
Q x= R | 8

tune glide-and-step 1-2: one bar glides on a long root to the fifth or third, the next takes three steps through its chord
S x===x= R 5 | R 3 | R _5 | R > | 8 5 | R 8 | 5 8 !co | 3 5 !co
A x=x=x= R 5 3 | 8 5 3 | R 3 5 | R 5 8 | 8 5 R | 5 3 R !co | R _5 R
S x===x= R 5 | R 3 | R _5 | R > | 8 5 | R 8 | 5 8 !co | 3 5 !co
C x=x=x= R 5 R | R 3 > | R 5 3 | 8 5 R | 5 3 R !co | R 5 8 | R _5 R
S x===x= R 5 | R 3 | R _5 | R > | 8 5 | R 8 | 5 8 !co | 3 5 !co
A x=x=x= R 3 5 | R 5 8 | 8 5 3 | R 5 3 | 8 5 R | 5 3 R !co | R _5 R
L x===x= R 8 | R 10 | 8 10 | 8 5 | R 5 | R 3 | 5 8 !co
T x=x=x= R 5 3 | R 3 > | 8 5 3 | 8 5 R | R 5 R | R _5 R
H x=== R | 8
H x=x= R > | R 5 | R 3 | 8 5
Q x= R | 8

tune turning-gate 1-2: two bars sway on a long root, the third goes up the chord in three quarters, and the fourth stands still
S x===x= R 5 | R 3 | R _5 | R > | 8 5 | 5 8 !co | 3 5 !co
A x===x= R 3 | R > | 8 5 | R 5 | R _5 | 5 3 !co | 5 R !co
A x=x=x= R 3 5 | R 5 8 | R 5 3 | 8 5 3 | 8 5 R | 3 5 8 !co | 5 3 R !co | R _5 R
C x===== R | 8 | 5 !co | 3 !co
S x===x= R 5 | R 3 | R _5 | R > | 8 5 | 5 8 !co | 3 5 !co
A x===x= R 5 | R > | R 3 | 8 5 | R _5 | 5 3 !co | 5 R !co
L x=x=x= R 5 8 | R 3 5 | 8 10 8 | R 3 8 | 8 5 R | R 5 R | 5 8 10 !co | 3 5 8 !co | R _5 R
T x=x=x= R 5 3 | R 3 > | 8 5 3 | 8 5 R | R 5 R | R _5 R
H x=== R | 8
H x=x= R > | R 5 | R 3 | 8 5
Q x= R | 8

tune round-the-floor 1-2: the chord in three quarters, then its root long with a lead on three; the fourth bar is one note
S x=x=x= R 5 3 | R 3 5 | R 5 8 | 8 5 3 | 8 5 R | R 5 R | 5 3 R !co | 3 5 8 !co | R _5 R
A x===x= R 3 | R > | R 5 | 8 5 | R _5 | 5 3 !co | 5 R !co
S x=x=x= R 5 3 | R 3 5 | R 5 8 | 8 5 3 | 8 5 R | R 5 R | 5 3 R !co | 3 5 8 !co | R _5 R
C x===x= R 3 | R 5 | 8 5 | R > | 5 3 !co | 3 5 !co
S x=x=x= R 5 3 | R 3 5 | R 5 8 | 8 5 3 | 8 5 R | R 5 R | 5 3 R !co | 3 5 8 !co | R _5 R
A x===x= R > | R 3 | R 5 | 8 5 | R _5 | 5 3 !co
L x=x=x= R 5 8 | 8 10 8 | R 3 5 | R 3 8 | 8 5 R | R 5 R | 3 5 8 !co | R _5 R
T x===x= R 3 | R > | R 5 | 8 5 | R _5
H x=== R | 8
H x=x= R > | R 5 | R 3 | 8 5
Q x= R | 8

tune cradle-rock 2-2: the one leans over two and a light eighth tips onto three, up the chord; the answer is a long root that three leads out of
S x==xx= R 3 5 | R 5 3 | R 5 8 | R 3 > | R 5 > | R _5 > | 8 5 3 | 3 5 8 !co | 5 3 R !co
A x===x= R > | R 3 | R 5 | 8 5 | R _5 | 5 3 !co
S x==xx= R 3 5 | R 5 3 | R 5 8 | R 3 > | R 5 > | R _5 > | 8 5 3 | 3 5 8 !co | 5 3 R !co
C x===x= R 3 | R 5 | R > | R _5 | 8 5 | 5 3 !co
S x==xx= R 3 5 | R 5 3 | R 5 8 | R 3 > | R 5 > | R _5 > | 8 5 3 | 3 5 8 !co | 5 3 R !co
A x=x=x= R 5 3 | 8 5 3 | R 3 5 | R 3 > | 8 5 R | 5 3 R !co
L x==xx= R 5 8 | 8 10 8 | R 3 8 | 8 5 3 | R 3 5 | 5 8 10 !co
T x===x= R 3 | R > | R 5 | 8 5 | R _5
H x=== R | 8
H x=x= R > | R 5 | R 3 | 8 5
Q x= R | 8

tune slow-lantern 3-3: a long root, and on three the tone that lies beside the next one; every fourth bar comes down in three quarters
S x===x= R 3 | R > | R 5 | R 2 | R _7 | 8 7 | 8 5 | 3 5 !co | 5 > !co
A x===x= R > | R 3 | R _7 | 8 7 | R 5 | R 2 | 8 5 | R _5 | 5 3 !co
S x===x= R 3 | R > | R 5 | R 2 | R _7 | 8 7 | 8 5 | 3 5 !co | 5 > !co
C x=x=x= 8 7 5 | R 5 3 | 8 5 3 | R 3 5 | R _7 _5 | R 3 > | 8 5 > | 5 3 > !co
S x===x= R 3 | R > | R 5 | R 2 | R _7 | 8 7 | 8 5 | 3 5 !co | 5 > !co
A x===x= R > | R 3 | R _7 | 8 7 | R 5 | R 2 | 8 5 | R _5 | 5 3 !co
L x===x= R 8 | 8 10 | 8 9 | R 10 | R 5 | R 3 | 8 7 | 8 > | 5 8 !co
T x=x=xx R 5 3 > | R 3 5 > | 8 7 5 > | R 5 >> > | R 3 >> > | 8 5 3 > | R _5 >> > | 8 5 >> >
H x=== R | 8
H x=x= R > | R 3 | R 5 | 8 5
H x=x= R > | R 3 | R 5 | R _5
Q x= R | 8

tune rocking-chair 3-5: the one leans over two and a light eighth tips onto three in every bar, up and then down, and rests where the phrase ends
S x==xx= R 3 5 | R 2 3 | R 5 3 | R 3 4 | R 5 6 | R 3 > | R 5 > | R _7 3 | 3 4 5 !co | 3 5 > !co
A x==xx= 8 7 5 | R _7 _5 | R 5 3 | 8 5 3 | 8 7 6 | R 5 > | R _7 > | R 3 2 | R 3 > | 5 4 3 !co | 5 3 > !co
S x==xx= R 3 5 | R 2 3 | R 5 3 | R 3 4 | R 5 6 | R 3 > | R 5 > | R _7 3 | 3 4 5 !co | 3 5 > !co
C x===x= R 3 | R 5 | R > | R _7 | 8 7 | 8 5 | R _5 | 5 3 !co
S x==xx= R 3 5 | R 2 3 | R 5 3 | R 3 4 | R 5 6 | R 3 > | R 5 > | R _7 3 | 3 4 5 !co | 3 5 > !co
A x==xx= 8 7 5 | R _7 _5 | R 5 3 | 8 5 3 | 8 7 6 | R 5 > | R _7 > | R 3 2 | R 3 > | 5 4 3 !co | 5 3 > !co
L x==xx= 8 9 10 | R 5 8 | 8 10 8 | R 3 8 | 8 10 9 | 8 7 8 | R 3 5 | 5 8 10 !co
T x=x=xx R 5 3 > | R 3 5 > | R 5 >> > | R 3 >> > | 8 7 5 > | 8 5 3 > | R _5 >> > | 8 5 >> >
H x==x R > | R 3 | R 5 | 8 5
H x=x= R > | R 3 | R 5 | 8 5
Q x= R | 8

tune brook-turn 3-5: a pair on two runs up to three, like a turn in the dance; the answer comes down the chord in three quarters
S x=xxx= R 2 3 5 | R 3 4 5 | R 5 6 5 | R 3 5 3 | R 2 3 > | R 5 4 3 | 8 7 6 5 | R _7 _6 _5 | 3 4 5 3 !co | 5 4 3 R !co
A x=x=x= 8 5 3 | R 5 3 | 8 7 5 | R _7 _5 | R 3 > | R 5 > | 8 5 > | R _5 > | 5 3 R !co
S x=xxx= R 2 3 5 | R 3 4 5 | R 5 6 5 | R 3 5 3 | R 2 3 > | R 5 4 3 | 8 7 6 5 | R _7 _6 _5 | 3 4 5 3 !co | 5 4 3 R !co
C x===x= R 3 | R > | R 5 | R _7 | 8 7 | 8 5 | R _5 | 5 3 !co
S x=xxx= R 2 3 5 | R 3 4 5 | R 5 6 5 | R 3 5 3 | R 2 3 > | R 5 4 3 | 8 7 6 5 | R _7 _6 _5 | 3 4 5 3 !co | 5 4 3 R !co
A x=x=x= 8 7 5 | R 5 3 | 8 5 3 | R _7 _5 | R 3 > | R 5 > | 8 5 > | R _5 > | 5 3 R !co
L x=xxx= 8 9 10 8 | R 3 5 8 | 8 10 9 8 | R 5 6 8 | 8 9 10 > | R 3 4 5 | 5 6 8 10 !co
T x===xx R >> > | R 3 > | R 5 3 | R 5 > | 8 7 5 | R _5 > | 8 5 > | R 3 5
H x=== R | 8
H x=xx R 2 3 | R 3 5 | R 3 > | R >> >
H x=x= R > | R 3 | R 5 | 8 5
Q x= R | 8

tune two-for-three 3-5: two long tones against the three of the band, bar for bar; where the phrase moves, three quarters come down the chord
S x==x== R 5 | R 3 | R _5 | 8 5 | R 8 | 3 5 !co | 5 3 !co
A x==x== R 3 | R 5 | 8 5 | R _5 | R 8 | 5 3 !co
A x=x=x= 8 7 5 | R 5 3 | 8 5 3 | R _7 _5 | R 3 5 | R 3 > | 8 5 > | 5 3 > !co
C x==x== R 3 | R 5 | R _5 | 8 5 | 5 R !co
S x==x== R 5 | R 3 | R _5 | 8 5 | R 8 | 3 5 !co | 5 3 !co
A x==x== R 3 | R 5 | 8 5 | R _5 | R 8 | 5 3 !co
L x=x=x= R 5 8 | 8 10 8 | 8 9 10 | R 3 5 | R 3 8 | 8 7 5 | 5 8 10 !co
T x==xxx R 5 3 > | R 3 5 > | R 5 >> > | R 3 >> > | 8 7 5 > | R _5 >> > | 8 5 >> >
H x=== R | 8
H x=x= R > | R 3 | R 5 | 8 5
Q x= R | 8

tune tide-and-step 3-5: a long one that three leads out of, answered by three quarters that come down the chord or its scale
S x===x= R > | R 3 | R 5 | R 2 | R _7 | 8 7 | 8 5 | R _5 | 3 5 !co | 5 > !co
A x=x=x= 8 7 5 | R 5 3 | 8 5 3 | R _7 _5 | 8 7 > | R _7 > | R 3 > | R 5 > | 8 5 > | 5 3 R !co
S x===x= R > | R 3 | R 5 | R 2 | R _7 | 8 7 | 8 5 | R _5 | 3 5 !co | 5 > !co
C x===== R | 8 | 5 !co | 3 !co
S x===x= R > | R 3 | R 5 | R 2 | R _7 | 8 7 | 8 5 | R _5 | 3 5 !co | 5 > !co
A x=x=x= R 3 5 | 8 7 5 | R 5 3 | 8 5 3 | R _7 _5 | R 3 > | 8 7 > | 8 5 > | R _5 > | 5 3 > !co
L x=x=x= R 5 8 | 8 10 8 | R 3 5 | 8 9 10 | R 8 10 | 8 5 > | R 5 > | 5 8 > !co
T x=x=xx R 5 3 > | R 3 5 > | R 5 >> > | R 3 >> > | 8 7 5 > | 8 5 3 > | R _5 >> > | 8 5 >> >
H x=== R | 8
H x=x= R > | R 3 | R 5 | 8 5
Q x= R | 8

tune paper-moth 3-5: a long root and one step on three, answered by a long root with two light eighths that run over; every fourth bar is one held note
S x===x= R 5 | R 3 | R > | R 2 | R _7 | 8 7 | R _5 | 8 5 | 3 5 !co | 5 > !co
A x===xx R >> > | R 3 > | R 3 2 | R _7 _5 | 8 7 5 | R 5 > | R 2 3 | R 3 5 | R _5 > | 8 5 > | 5 >> > !co | 5 3 > !co
S x===x= R 5 | R 3 | R > | R 2 | R _7 | 8 7 | R _5 | 8 5 | 3 5 !co | 5 > !co
C x===== R | 8 | 5 !co | 3 !co
S x===x= R 5 | R 3 | R > | R 2 | R _7 | 8 7 | R _5 | 8 5 | 3 5 !co | 5 > !co
A x===xx R >> > | R 3 > | R 3 2 | R _7 _5 | 8 7 5 | R 5 > | R 2 3 | R 3 5 | R _5 > | 8 5 > | 5 >> > !co | 5 3 > !co
L x===x= R 8 | 8 9 | 8 10 | R 10 | R 5 | 8 7 | 8 > | 5 8 !co
T x===xx R >> > | R 3 > | R 5 3 | R 3 5 | R 5 > | R 2 3 | R _5 > | 8 7 5 | 8 5 >
H x=== R | 8
H x=x= R > | R 3 | R 5 | 8 5
H x=xx R >> > | R 3 > | R 5 >
Q x= R | 8
`;
