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
H1 x=== R | 8
H1 x=x= R > | R 5 | R 3 | R R | 8 5 | 8 >
H2 x=x= R > | R 5 | R 3 | R R | 8 5 | 8 >

tune glide-and-step 1-2: one bar glides on a long root, the next takes three steps
S x===x= R 5 | R 8 | R _5 | R > | R R | R 3 | 8 5 | R 10 | 5 8 !co | 3 5 !co
A x=x=x= 8 5 > | 8 5 R | R _5 R | R 5 > | R 5 8 | 8 5 3 | R 3 5 | R 5 3 | R 3 > | 5 3 R !co
S x===x= R 5 | R 8 | R _5 | R > | R R | R 3 | 8 5 | R 10 | 5 8 !co | 3 5 !co
C x=x=x= R 5 R | 8 5 > | R 5 > | R _5 > | 8 5 R | R 3 R | R 5 3 | 8 3 > | R 3 > | 5 3 R !co
S x===x= R 5 | R 8 | R _5 | R > | R R | R 3 | 8 5 | R 10 | 5 8 !co | 3 5 !co
A x=x=x= 8 5 R | 8 5 > | R 5 > | R _5 R | R 5 8 | 8 5 3 | R 5 3 | R 3 5 | 8 3 > | 5 3 R !co
L x===x= 8 5 | R 8 | 8 > | 8 8 | R 10 | 8 10 | R 5 | 8 3 | 5 8 !co
T x=x=x= R 5 > | 8 5 > | R _5 > | R 5 8 | R 3 5 | R 3 > | 8 5 3 | R 5 3 | 8 3 >
H1 x=== R | 8
H1 x=x= R > | R 5 | R 3 | R R | 8 5 | 8 >
H2 x=x= R > | R 5 | R 3 | R R | 8 5 | 8 >

tune bell-tower 1-2: the root long and its octave rung on three, or the fifth below; the answer comes down from the top
S x===x= R 8 | R _5 | R 5 | R > | 8 5 | R 10 | R R | R 3 | 5 8 !co | 3 8 !co
A x===x= 8 5 | 8 R | R _5 | 8 > | R > | R 5 | 8 3 | R 3 | R R | 5 R !co | 5 3 !co
S x===x= R 8 | R _5 | R 5 | R > | 8 5 | R 10 | R R | R 3 | 5 8 !co | 3 8 !co
C x===x= R R | R > | R _5 | 8 R | R 5 | 8 > | 8 5 | R 3 | 8 3 | 5 R !co
S x===x= R 8 | R _5 | R 5 | R > | 8 5 | R 10 | R R | R 3 | 5 8 !co | 3 8 !co
A x===x= 8 R | 8 5 | 8 > | R _5 | R > | R 5 | 8 3 | R 3 | R R | 5 R !co
L x=x=x= R 8 5 | 8 5 8 | R 5 8 | R 8 > | 8 5 > | R 3 8 | 8 10 8 | R 8 10 | R 8 3 | 5 8 5 !co
T x=x=x= R 8 5 | R 5 > | 8 5 > | R _5 > | R 8 > | R 3 5 | R 3 > | 8 5 3 | R 5 3 | 8 3 >
H1 x=== R | 8
H1 x=x= R > | R 5 | R 3 | R R | R 8 | 8 5
H2 x=x= R > | R 5 | R 3 | R R | R 8 | 8 >

tune carousel 1-2: three full quarters, the chord up in one bar and down in the next; the fourth bar stands on its one
S x=x=x= R 5 8 | R 5 > | R 3 5 | R 8 5 | R 5 R | R 3 > | R _5 R | R _5 > | 3 5 8 !co | 5 8 5 !co
A x=x=x= 8 5 R | 8 5 > | 8 5 3 | R _5 > | R _5 R | 8 3 > | R 5 > | R 5 3 | 5 3 R !co | 5 3 > !co
S x=x=x= R 5 8 | R 5 > | R 3 5 | R 8 5 | R 5 R | R 3 > | R _5 R | R _5 > | 3 5 8 !co | 5 8 5 !co
C x===x= R > | R 5 | R R | 8 5 | R _5 | R 3 | 8 3 | 8 > | 5 R !co
S x=x=x= R 5 8 | R 5 > | R 3 5 | R 8 5 | R 5 R | R 3 > | R _5 R | R _5 > | 3 5 8 !co | 5 8 5 !co
A x=x=x= 8 5 > | 8 5 R | 8 5 3 | R _5 > | R _5 R | 8 3 > | R 5 > | R 5 3 | 5 3 R !co
L x=x=x= R 8 5 | R 5 8 | 8 5 8 | R 8 > | 8 10 8 | R 3 8 | R 8 10 | 8 8 5 | 5 8 5 !co
T x=x=x= R 5 > | 8 5 > | R 5 8 | R _5 > | R 3 5 | R 3 > | 8 5 3 | R 5 3 | 8 3 >
H1 x=x= R 5 | R > | R 3 | R R | 8 5 | 8 3
H2 x=x= R > | R 5 | R 3 | R R | 8 5 | 8 >

tune slow-lantern 3-5: long roots, and on three the seventh, sixth or second that lies beside the next one
S x===x= R 5 | R 3 | R > | R 2 | R _7 | 8 7 | R c | R 6 !ch | R _6 | 3 5 !co
A x===x= 8 7 | 8 > | R _7 | R _5 | R > | 8 5 | R _6 | R 3 | 8 c | 5 3 !co | 5 4 !co
S x===x= R 5 | R 3 | R > | R 2 | R _7 | 8 7 | R c | R 6 !ch | R _6 | 3 5 !co
C x=x=x= R 5 > | R 3 2 | 8 7 5 | R _7 _6 | R _5 > | R 5 3 | 8 7 > | R 2 3 | 5 3 R !co
S x===x= R 5 | R 3 | R > | R 2 | R _7 | 8 7 | R c | R 6 !ch | R _6 | 3 5 !co
A x===x= 8 > | 8 7 | R _7 | R _5 | R > | 8 5 | R _6 | R 3 | 8 c | 5 4 !co
L x===x= 8 9 | 8 10 | R 8 | 8 7 | 8 > | R 7 | R 9 | 8 c | 5 8 !co
T x=x=xx R 5 >> > | R 3 >> > | 8 7 >> > | R _5 >> > | R 5 6 7 | R _7 >> > | R 2 3 > | 8 5 >> > | R _5 _6 _7
H1 x=== R | 8
H1 x=x= R > | R 3 | R 2 | R _7 | 8 7 | R 5
H2 x=x= R > | R 3 | R 2 | R _7 | 8 7 | R 5

tune hillside 3-5: three quarters, two bars climbing the scale and two coming down by another path
S x=x=x= R 2 3 | R 3 5 | R 3 4 | R 2 > | R 5 6 | R 3 > | R _6 _7 | R 3 2 | 3 4 5 !co | 3 5 6 !co | R _5 _6
A x=x=x= 8 7 6 | 8 7 > | R _7 _6 | 8 5 3 | R 5 > | R _7 > | 8 c 5 | R 5 3 | R 3 2 | 5 4 3 !co | 5 3 > !co
S x=x=x= R 2 3 | R 3 5 | R 3 4 | R 2 > | R 5 6 | R 3 > | R _6 _7 | R 3 2 | 3 4 5 !co | 3 5 6 !co | R _5 _6
C x=x=x= R 3 R | R 5 > | 8 7 5 | R _7 R | R 2 R | R 5 3 | R _7 > | R _5 > | 5 3 R !co
S x=x=x= R 2 3 | R 3 5 | R 3 4 | R 2 > | R 5 6 | R 3 > | R _6 _7 | R 3 2 | 3 4 5 !co | 3 5 6 !co | R _5 _6
A x=x=x= 8 7 > | 8 7 6 | R _7 _6 | 8 5 3 | R _7 > | R 5 > | 8 c 5 | R 3 2 | R 5 3 | 5 4 3 !co
L x=x=x= 8 9 10 | R 5 8 | 8 9 > | 8 10 9 | R 7 8 | R 8 9 | 8 9 7 | R 8 7 | 5 8 9 !co | 5 7 8 !co
T x=x=xx R 5 6 7 | R 5 >> > | R 3 >> > | 8 7 >> > | R _5 _6 _7 | R _7 >> > | R 3 4 > | R 2 >> > | 8 5 >> >
H1 x=x= R > | R 3 | R 2 | R _7 | 8 7 | R 5
H2 x=x= R > | R 3 | R 2 | R _7 | 8 7 | R 5

tune rocking-chair 3-5: the one leans over two, a light eighth tips onto three, in every bar alike
S x==xx= R 3 5 | R 5 6 | R 2 3 | R 5 > | R 3 > | R 3 4 | R _5 _6 | R c 5 | R _7 > | 3 4 5 !co | 3 5 > !co
A x==xx= 8 7 6 | 8 7 > | 8 5 3 | R _7 _6 | 8 7 5 | R 5 3 | R _7 > | R 3 2 | R 5 > | 5 4 3 !co | 5 3 > !co
S x==xx= R 3 5 | R 5 6 | R 2 3 | R 5 > | R 3 > | R 3 4 | R _5 _6 | R c 5 | R _7 > | 3 4 5 !co | 3 5 > !co
C x==xx= R 5 R | R 3 R | 8 5 > | R 5 > | R _5 > | 8 7 5 | R _7 R | R 3 > | R 3 2 | 5 3 R !co
S x==xx= R 3 5 | R 5 6 | R 2 3 | R 5 > | R 3 > | R 3 4 | R _5 _6 | R c 5 | R _7 > | 3 4 5 !co | 3 5 > !co
A x==xx= 8 7 > | 8 7 6 | R _7 _6 | 8 5 3 | 8 7 5 | R 5 3 | R _7 > | R 3 2 | R 5 > | 5 4 3 !co
L x==xx= 8 9 10 | R 5 8 | 8 9 > | R 7 8 | 8 10 9 | R 8 9 | 8 9 7 | R 8 7 | 5 8 9 !co
T x=x=xx R 5 6 7 | R 5 >> > | R 3 >> > | 8 7 >> > | R _5 _6 _7 | R _7 >> > | R 3 4 > | R 2 >> > | 8 5 >> >
H1 x==x R > | R 3 | R 5 | R 2 | 8 7 | R _7
H2 x=x= R > | R 3 | R 5 | R 2 | 8 7 | R _7

tune ballroom-stairs 4-5: a walk in three with half steps, and a pair on three where each fourth bar hurries home
S x=x=x= R 3 5 | R 5 c | R 3 > | R 5 > | R c 5 | R _7 > | R 3 4 | R 2 > | R 5 #4 !ch | 3 5 c !co | 3 5 > !co
A x=x=x= 8 7 > | 8 c 5 | R _7 > | R _7 _6 | 8 5 3 | 8 5 > | R 5 > | R 3 2 | R _6 > | 5 3 2 !co | c 5 > !co
S x=x=x= R 3 5 | R 5 c | R 3 > | R 5 > | R c 5 | R _7 > | R 3 4 | R 2 > | R 5 #4 !ch | 3 5 c !co | 3 5 > !co
C x=x=xx R 3 >> > | R 5 >> > | 8 7 >> > | R _5 >> > | R _7 >> > | 8 5 >> > | R 5 3 > | R c 5 > | 5 3 >> > !co
S x=x=x= R 3 5 | R 5 c | R 3 > | R 5 > | R c 5 | R _7 > | R 3 4 | R 2 > | R 5 #4 !ch | 3 5 c !co | 3 5 > !co
A x=x=x= 8 c 5 | 8 7 > | R _7 > | R _7 _6 | 8 5 3 | 8 5 > | R 5 > | R 3 2 | R _6 > | 5 3 2 !co
L x=x=x= 8 9 10 | R 5 8 | 8 9 > | R c 8 | 8 10 9 | R 8 9 | 8 10 > | R 8 7 | 5 c 8 !co
T x=x=xx R 5 6 7 | R 5 >> > | R 3 >> > | 8 c >> > | R _5 _6 _7 | R _7 >> > | R 5 #4 > | R c >> > | 8 5 >> >
H1 x=x= R > | R 3 | R 5 | R c | 8 7 | R _7
H2 x=x= R > | R 3 | R 5 | R c | 8 7 | R _7
`;
