/** Bossa: tunes of eight bars (see the notation beside the books). */
export const BOSSA_TUNES = `
tune two-palms 1-2: root, fifth twice, root again, as two hands have it on a drum; the fifth rings where the phrase ends
S x==xx==x R 5 5 R !ch | R 5 5 > | R _5 _5 R !ch | R 5 5 3 | 8 5 5 R | R _5 _5 R !st | 5 8 8 5 !co | 5 R R > !co
A x==xx==x R _5 _5 R !ch | R _5 _5 > | R 5 5 > | R 5 5 R !ch | R 5 3 > | 8 5 5 > | R 5 5 8 | 5 R R > !co | 5 8 8 > !co
S x==xx==x R 5 5 R !ch | R 5 5 > | R _5 _5 R !ch | R 5 5 3 | 8 5 5 R | R _5 _5 R !st | 5 8 8 5 !co | 5 R R > !co
C x==xx=== R 5 R | R _5 R | 8 5 R | R 5 3 | R 3 5 | 5 R R !co
S x==xx==x R 5 5 R !ch | R 5 5 > | R _5 _5 R !ch | R 5 5 3 | 8 5 5 R | R _5 _5 R !st | 5 8 8 5 !co | 5 R R > !co
A x==xx==x R _5 _5 R !ch | R _5 _5 > | R 5 5 > | R 5 5 R !ch | R 5 3 > | 8 5 5 > | R 5 5 8 | 5 R R > !co | 5 8 8 > !co
L x==xx==x R 5 8 > | R 5 8 5 | R 3 5 > | 8 10 8 > | R 5 5 8 | R 5 5 > | 5 8 8 > !co
T x==xx==x R 5 3 > | R 5 5 > | R 3 5 > | R 5 R > | R _5 R > | 8 5 3 >
H1 x==x R 5 | R > | R 3 | 8 5 | R _5
H2 x==x R > | R 5 | R 3 | 8 5 | R _5

tune low-tide 1-2: the fifth below twice, the root again; the answer has the fifth above and points on, and the phrase ends on its root
S x==xx==x R _5 _5 R | R 5 5 R !ch | R 5 5 > | 8 5 5 R | R 5 5 3 | 5 R R > !co | 5 8 8 > !co
A x==xx==x R 5 5 > | R 5 3 > | R 5 5 R !ch | 8 5 5 > | R _5 _5 R !ch | 5 8 5 > !co | 5 R R > !co
S x==xx==x R _5 _5 R | R 5 5 R !ch | R 5 5 > | 8 5 5 R | R 5 5 3 | 5 R R > !co | 5 8 8 > !co
C x==xx=== R 5 R | R _5 R | 8 5 R | R 5 3 | R 3 5 | 5 R R !co
S x==xx==x R _5 _5 R | R 5 5 R !ch | R 5 5 > | 8 5 5 R | R 5 5 3 | 5 R R > !co | 5 8 8 > !co
A x==xx==x R 5 5 > | R 5 8 > | R 3 5 > | R 5 5 8 | 8 5 5 > | 5 8 8 > !co
L x==xx==x R 5 8 > | R 5 8 5 | 8 10 8 > | R 3 5 8 | R 5 5 8 | 8 5 5 > | 5 8 8 > !co
T x==xx==x R 5 3 > | R 5 5 > | R 3 5 > | R 5 R > | R _5 R > | 8 5 3 >
H1 x==x R 5 | R > | R 3 | 8 5 | R _5
H2 x==x R > | R 5 | R 3 | 8 5 | R _5

tune shore 1-2: the wave runs up to the octave on three, and draws back to the fifth below
S x==xx==x R 5 8 5 | R 5 8 > | R 5 5 8 | R 5 5 > | R 3 5 > | R _5 _5 > | 5 8 8 5 !co
A x==xx==x 8 5 5 > | R _5 _5 R !ch | 8 5 5 R | R 5 3 > | 8 5 3 > | R 5 5 > | 5 R R > !co
S x==xx==x R 5 8 5 | R 5 8 > | R 5 5 8 | R 5 5 > | R 3 5 > | R _5 _5 > | 5 8 8 5 !co
C x==xx=== R 5 R | R _5 R | 8 5 R | R 5 3 | R 3 5 | 5 R R !co
S x==xx==x R 5 8 5 | R 5 8 > | R 5 5 8 | R 5 5 > | R 3 5 > | R _5 _5 > | 5 8 8 5 !co
A x==xx==x R 5 5 > | R 5 5 8 | R 3 5 > | 8 5 5 > | R 5 3 5 | 5 8 8 > !co
L x==xx==x R 5 8 > | 8 10 8 > | R 5 8 5 | R 3 5 8 | R 5 5 8 | 8 5 8 > | 5 8 8 > !co
T x==xx==x R 5 3 > | R 5 5 > | R 3 5 > | R 5 R > | R _5 R > | 8 5 3 >
H1 x==x R 5 | R > | R _5 | R 3 | 8 5
H2 x==x R > | R 5 | R _5 | R 3 | 8 5

tune lamp-on-the-bay 3-5: root, the fifth twice and a lead; the answer says it with the fifth below, and once a phrase the fifth holds over three
S x==xx==x R 5 5 > | R _5 _5 > | R 5 5 c !co | R _5 _5 R !ch | R 5 5 R !ch | 5 R R > !co | 5 8 8 > !co
A x==xx==x R _5 _5 > | R 5 5 > | R _5 _7 > | R _5 R > | R 5 c > | R _5 _5 R !ch | 5 R R > !co | 5 3 R > !co
S x==xx==x R 5 5 > | R _5 _5 > | R 5 5 c !co | R _5 _5 R !ch | R 5 5 R !ch | 5 R R > !co | 5 8 8 > !co
C x==x===x R 5 > | R _5 > | R c > | R 3 > | 8 5 > | 5 R > !co
S x==xx==x R 5 5 > | R _5 _5 > | R 5 5 c !co | R _5 _5 R !ch | R 5 5 R !ch | 5 R R > !co | 5 8 8 > !co
A x==xx==x R 5 c > | R 5 5 > | R 3 5 > | R _5 _5 > | R 5 5 8 | 8 5 5 > | 5 c 8 > !co
L x==xx==x R 5 8 > | R 5 c 8 | 8 c 5 > | R 5 5 8 | R 3 5 > | 8 10 8 > | R 5 c > | 5 8 8 > !co
T x==xx==x R 5 3 > | R 5 5 > | R _5 _5 > | R 5 c > | R 3 5 > | R _5 R > | R _7 _5 > | 8 5 3 >
H1 x==x R 5 | R > | R _5 | R 3 | R c | 8 5
H2 x==x R > | R 5 | R 3 | R _5 | R c | 8 5

tune tiled-steps 3-5: root, fifth and the seventh on three, led on from the and of four; the answer comes down to root and fifth, and once a phrase the fifth holds over three
S x==xx==x R 5 c > | R 5 c 5 | R _5 _7 > | R 5 5 > | R _5 _5 > | R 5 3 > | 5 c 5 > !co | 5 3 R > !co
A x==xx==x R _5 _5 > | R 5 5 > | R 5 3 > | R _7 _5 > | 8 5 5 > | R _5 _5 R !ch | 5 R R > !co | 5 3 R > !co
S x==xx==x R 5 c > | R 5 c 5 | R _5 _7 > | R 5 5 > | R _5 _5 > | R 5 3 > | 5 c 5 > !co | 5 3 R > !co
C x==x===x R 5 > | R _5 > | R c > | R 3 > | 8 5 > | 5 R > !co
S x==xx==x R 5 c > | R 5 c 5 | R _5 _7 > | R 5 5 > | R _5 _5 > | R 5 3 > | 5 c 5 > !co | 5 3 R > !co
A x==xx==x R 5 5 > | R 5 8 > | R _5 _5 > | R 3 5 > | R 5 c > | 8 5 5 > | 5 8 8 > !co
L x==xx==x R 5 8 > | 8 c 5 > | R 5 c 8 | 8 10 8 > | R 3 5 > | R 5 5 8 | R 5 8 9 | 5 8 8 > !co
T x==xx==x R 5 3 > | R 5 5 > | R _5 _5 > | R 5 c > | R 3 5 > | R _5 R > | R _7 _5 > | 8 5 3 >
H1 x==x R 5 | R > | R c | R _5 | R 3 | 8 5
H2 x==x R > | R 5 | R 3 | R _5 | R c | 8 5

tune held-breath 3-5: two bars in the whole rhythm, the fifth above and the fifth below; bars four and seven hold their second note over three
S x==xx==x R 5 5 > | R _5 _5 > | R 5 c > | R 5 5 R !ch | R _5 _5 R !ch | R 5 3 > | 5 8 8 > !co | 5 R R > !co
A x==xx==x R _5 _5 > | R 5 5 > | R _5 _5 R !ch | R 5 3 > | R 3 5 > | 8 5 5 > | 5 R R > !co | 5 3 R > !co
S x==xx==x R 5 5 > | R _5 _5 > | R 5 c > | R 5 5 R !ch | R _5 _5 R !ch | R 5 3 > | 5 8 8 > !co | 5 R R > !co
C x==x===x R 5 > | R _5 > | R c > | R 3 > | 8 5 > | 5 R > !co
S x==xx==x R 5 5 > | R _5 _5 > | R 5 c > | R 5 5 R !ch | R _5 _5 R !ch | R 5 3 > | 5 8 8 > !co | 5 R R > !co
A x==xx==x R 5 c > | R 5 5 > | R 3 5 > | R _5 _5 > | R 5 5 8 | 8 5 5 > | 5 8 8 > !co
L x==x===x R 8 > | R 5 8 | 8 10 > | R 10 > | R 5 > | R c > | 5 8 > !co
T x==xx==x R 5 3 > | R 5 5 > | R _5 _5 > | R 5 c > | R 3 5 > | R _5 R > | R _7 _5 > | 8 5 3 >
H1 x==x R > | R 5 | R _5 | R 3 | 8 5 | R c
H2 x==x R > | R 5 | R 3 | R _5 | 8 5

tune under-the-arch 3-5: the deep side first, the fifth below twice; the answer has it above with the seventh, and comes to its top in bar seven
S x==xx==x R _5 _5 > | R _5 _5 R !ch | R _5 R > | R _5 _7 > | R _5 _5 _7 | R 5 5 > | R _5 R 3 | 5 R R > !co | 3 R _5 > !co
A x==xx==x R 5 5 > | R 5 c > | R 5 5 c | R 5 3 > | R _5 R > | 8 c 5 > | 5 8 8 > !co | 5 3 R > !co
S x==xx==x R _5 _5 > | R _5 _5 R !ch | R _5 R > | R _5 _7 > | R _5 _5 _7 | R 5 5 > | R _5 R 3 | 5 R R > !co | 3 R _5 > !co
C x==x===x R _5 > | R 5 > | R c > | R 3 > | 8 5 > | 5 R > !co
S x==xx==x R _5 _5 > | R _5 _5 R !ch | R _5 R > | R _5 _7 > | R _5 _5 _7 | R 5 5 > | R _5 R 3 | 5 R R > !co | 3 R _5 > !co
A x==xx==x R 5 5 8 | R 5 5 > | R 5 c > | R 3 5 > | R _5 R > | R 5 8 > | 5 c 8 > !co
L x==xx==x R 5 8 > | 8 c 5 > | R 5 c 8 | 8 10 8 > | R 5 8 9 | R 5 5 8 | R 3 5 > | 5 c 8 > !co
T x==xx==x R 5 3 > | R 5 5 > | R _5 _5 > | R 5 c > | R 3 5 > | R _5 R > | R _7 _5 > | 8 5 3 >
H1 x==x R _5 | R > | R 5 | R 3 | 8 5 | R c
H2 x==x R > | R _5 | R 3 | R 5 | R c | 8 5

tune veranda 3-5: two fifths in every bar, until bar seven sways over three and climbs; the second note of bar four holds over three
S x==xx==x R 5 5 > | R _5 _5 > | R 5 3 > | R 5 5 6 !co | R _5 _5 R !ch | 5 8 8 > !co | 5 R R > !co
A x==xx==x R 5 3 > | R _5 _5 > | R 5 5 > | R 3 5 > | R _5 R > | R 5 c 5 | R _5 _5 _7 | 5 3 R > !co | 5 8 8 > !co
S x==xx==x R 5 5 > | R _5 _5 > | R 5 3 > | R 5 5 6 !co | R _5 _5 R !ch | 5 8 8 > !co | 5 R R > !co
C x==x===x R 5 > | R _5 > | R c > | R 3 > | 8 5 > | 5 R > !co
S x==xx==x R 5 5 > | R _5 _5 > | R 5 3 > | R 5 5 6 !co | R _5 _5 R !ch | 5 8 8 > !co | 5 R R > !co
A x==xx==x R 5 5 > | R 5 c > | R 3 5 > | R 5 5 8 | R _5 R > | 8 5 5 > | 5 8 5 > !co
L x==x=x=x R 5 8 > | R 3 5 > | 8 c 5 > | 8 10 8 > | R 5 c 8 | R 5 8 9 | R 5 3 > | 5 8 5 > !co
T x==xx==x R 5 3 > | R 5 5 > | R _5 _5 > | R 5 c > | R 3 5 > | R _5 R > | R _7 _5 > | 8 5 3 >
H1 x==x R 5 | R > | R _5 | R 3 | 8 5 | R c
H2 x==x R > | R 5 | R 3 | R _5 | R c | 8 5
`;
