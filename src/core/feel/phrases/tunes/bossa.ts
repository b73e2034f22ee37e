/** Bossa: tunes of eight bars (see the notation beside the books). */
export const BOSSA_TUNES = `
tune shore 1-2: the chord opens to its octave in one bar, and comes down again in the next
S x==xx==x R 5 8 > | R 3 5 > | R 5 8 5 | R 5 5 > | R _5 R > | R 3 5 8 | R 5 3 > | R _5 _5 > | R 5 3 5 | R _5 R 5 | 5 3 5 > !co
A x==xx==x 8 5 3 R | 8 5 R 5 | 8 5 3 > | 8 5 R > | R 5 3 R | R 5 R > | R _5 R _5 | R _5 R > | R 5 R 5 | R 5 3 > | 5 3 R > !co
S x==xx==x R 5 8 > | R 3 5 > | R 5 8 5 | R 5 5 > | R _5 R > | R 3 5 8 | R 5 3 > | R _5 _5 > | R 5 3 5 | R _5 R 5 | 5 3 5 > !co
C x==xx=== R 5 3 | R 5 R | R 3 5 | 8 5 3 | 8 5 R | R _5 R | R 5 8
S x==xx==x R 5 8 > | R 3 5 > | R 5 8 5 | R 5 5 > | R _5 R > | R 3 5 8 | R 5 3 > | R _5 _5 > | R 5 3 5 | R _5 R 5 | 5 3 5 > !co
A x==xx==x 8 5 R 5 | 8 5 3 5 | 8 5 8 > | 8 5 3 > | R 5 3 5 | R 5 8 5 | R 5 R > | R _5 R 5 | R _5 R > | R 3 5 8 | 5 8 5 > !co
L x==xx==x 8 10 8 > | 8 5 8 > | R 5 8 > | R 3 5 > | 8 8 5 > | 8 10 8 5 | R 8 5 > | R 8 5 3 | 5 8 5 > !co
T x==xx==x R 3 5 > | R 5 R > | 8 5 R > | R _5 R > | 8 5 3 > | R 5 3 > | R 5 8 > | R 3 5 8
H1 x==x R 5 | R > | R 3 | R R | 8 5 | 8 >
H2 x==x R > | R 5 | R 3 | R R | 8 5 | 8 >

tune hammock 1-2: one bar swings up and rests on three, the next swings back and points with the and of four
S x==xx=== R 5 8 | R 3 5 | R 5 3 | R _5 R | R 5 R | 8 5 3 | 8 5 R | R 5 5 | 3 5 8 !co | 5 3 R !co
A x==xx==x 8 5 3 > | 8 5 R > | 8 5 3 R | R 5 R > | R _5 R > | R 5 3 > | R _5 R 5 | 8 5 R 5 | R 3 5 > | R 5 5 > | 5 3 R > !co
S x==xx=== R 5 8 | R 3 5 | R 5 3 | R _5 R | R 5 R | 8 5 3 | 8 5 R | R 5 5 | 3 5 8 !co | 5 3 R !co
C x==xx==x R 5 3 > | R 5 R > | 8 5 R > | R _5 R > | 8 5 3 > | R 3 R > | R 5 R R | R _5 _5 > | 5 3 R > !co
S x==xx=== R 5 8 | R 3 5 | R 5 3 | R _5 R | R 5 R | 8 5 3 | 8 5 R | R 5 5 | 3 5 8 !co | 5 3 R !co
A x==xx==x 8 5 R > | 8 5 3 > | 8 5 3 R | R 5 R > | R _5 R > | R 5 3 > | R _5 R 5 | 8 5 R 5 | R 3 5 > | R 5 5 > | 5 3 R > !co
L x==xx=== 8 10 8 | R 5 8 | 8 5 8 | R 8 5 | R 3 8 | 8 10 5 | R 8 10 | R 3 5 | 5 8 5 !co
T x==xx==x R 3 5 > | R 5 R > | 8 5 R > | R _5 R > | 8 5 3 > | R 5 3 > | R 5 8 > | R 5 5 >
H1 x==x R 5 | R > | R 3 | R R | 8 5 | 8 3
H2 x==x R > | R 5 | 8 > | R 3 | R R | 8 5

tune low-tide 1-2: the root said twice, then the drum's deep tone on three; the answer lifts it and lets it fall
S x==xx==x R R _5 > | R R 5 > | R R 3 > | R R _5 R | R R 5 3 | R R 3 5 | R R 5 8 | 8 8 5 > | R R 5 R | 5 5 3 > !co | 3 3 5 > !co
A x==xx==x 8 8 5 3 | R R 5 8 | 8 8 5 > | R R 5 R | 8 8 5 R | R R 3 R | R R _5 R | R R 5 > | R R 3 > | R R _5 > | 5 5 3 R !co
S x==xx==x R R _5 > | R R 5 > | R R 3 > | R R _5 R | R R 5 3 | R R 3 5 | R R 5 8 | 8 8 5 > | R R 5 R | 5 5 3 > !co | 3 3 5 > !co
C x==xx=== R R 3 | R R _5 | R R 5 | 8 8 5 | 8 8 3 | R R R | R R 8 | 5 5 R !co
S x==xx==x R R _5 > | R R 5 > | R R 3 > | R R _5 R | R R 5 3 | R R 3 5 | R R 5 8 | 8 8 5 > | R R 5 R | 5 5 3 > !co | 3 3 5 > !co
A x==xx==x R R 5 8 | 8 8 5 3 | R R 8 5 | 8 8 5 > | R R 5 3 | R R 3 5 | R R 5 > | R R _5 R | R R _5 > | 5 5 3 > !co
L x==xx==x R R 8 > | 8 8 10 > | 8 8 10 8 | R R 8 5 | R R 8 10 | R R 8 3 | R R 3 5 | R R 5 8 | 8 8 5 > | 5 5 8 > !co
T x==xx==x R R 5 > | R R 3 > | R R _5 > | 8 8 5 > | 8 8 3 > | R R 3 5 | R R 5 8 | R R R >
H1 x==x R R | R > | R 5 | R 3 | 8 8 | 8 >
H2 x==x R > | R R | R 5 | R 3 | 8 > | 8 5

tune harbour-lights 3-5: root, fifth and the colour above it, a fall through the seventh in the answer, and the top in bar seven
S x==xx==x R 5 c > | R 3 5 > | R 5 8 > | R 5 3 > | R 3 5 6 | R 5 c 5 | R _5 _7 > | R _7 _5 > | R 5 3 2 | R _5 _5 _7 | R _5 R > | 3 5 c > !co | 5 3 5 6 !co
A x==xx==x 8 7 5 3 | 8 c 5 3 | R _7 _5 _6 | R 5 3 2 | R _7 _5 > | 8 7 5 > | R 5 3 > | 8 c 5 > | R 3 5 3 | 8 5 3 2 | R _5 R 2 | 5 4 3 2 !co
S x==xx==x R 5 c > | R 3 5 > | R 5 8 > | R 5 3 > | R 3 5 6 | R 5 c 5 | R _5 _7 > | R _7 _5 > | R 5 3 2 | R _5 _5 _7 | R _5 R > | 3 5 c > !co | 5 3 5 6 !co
C x==xx=== R 5 3 | R _7 _5 | 8 7 5 | R 3 5 | R _5 R | 8 5 3 | R 5 c | 5 3 R !co
S x==xx==x R 5 c > | R 3 5 > | R 5 8 > | R 5 3 > | R 3 5 6 | R 5 c 5 | R _5 _7 > | R _7 _5 > | R 5 3 2 | R _5 _5 _7 | R _5 R > | 3 5 c > !co | 5 3 5 6 !co
A x==xx==x R 5 8 9 | 8 7 5 6 | 8 c 5 6 | R 5 8 > | R 3 5 6 | R 5 c 8 | R 5 c > | R _5 R 3 | R _7 R 2 | R _5 R > | 8 7 5 > | 5 c 8 > !co
L x==xx==x 8 c 5 > | 8 10 8 > | R 3 5 > | R 5 8 > | 8 7 5 > | 8 9 10 > | R 3 5 8 | R 5 8 9 | 8 c 5 3 | R _c _5 > | 5 c 8 > !co
T x==xx=xx R 3 5 >> > | R 5 3 >> > | R 5 5 6 7 | R _5 _5 >> > | 8 c 5 >> > | R _5 _5 _6 _7 | R 5 8 >> > | R 5 6 7 > | 8 5 3 >> >
H1 x==x R 5 | R > | R 3 | R 2 | 8 7 | 8 5
H2 x==x R > | R 3 | R 5 | R 2 | 8 7 | R _7

tune veranda-steps 3-5: a third, then the fifth on three, and the and of four steps on; the way back falls in steps, and bar seven sways over the beats
S x==xx==x R 3 5 > | R 3 5 6 | R 3 5 3 | R 2 3 > | R 2 3 5 | R 3 5 c | R _7 _5 > | R _5 R > | R _5 R 2 | R 5 3 > | R 3 5 8 | 3 4 5 > !co | 5 6 5 > !co
A x==xx==x 8 7 5 4 | 8 5 3 2 | R _7 _5 _6 | R 5 3 2 | 8 c 5 3 | R 5 4 3 | R 3 2 R | R _7 _5 > | R 5 3 > | 8 7 5 > | R 2 3 > | 5 4 3 2 !co
S x==xx==x R 3 5 > | R 3 5 6 | R 3 5 3 | R 2 3 > | R 2 3 5 | R 3 5 c | R _7 _5 > | R _5 R > | R _5 R 2 | R 5 3 > | R 3 5 8 | 3 4 5 > !co | 5 6 5 > !co
C x==xx=== R 3 5 | R 5 3 | R _7 _5 | 8 7 5 | 8 5 3 | R 2 3 | R _5 R | 5 3 R !co
S x==xx==x R 3 5 > | R 3 5 6 | R 3 5 3 | R 2 3 > | R 2 3 5 | R 3 5 c | R _7 _5 > | R _5 R > | R _5 R 2 | R 5 3 > | R 3 5 8 | 3 4 5 > !co | 5 6 5 > !co
A x==xx==x 8 7 5 6 | 8 5 3 4 | R 3 5 8 | R _7 R 2 | R 5 8 7 | R 5 3 4 | R 5 4 3 | R 3 5 > | R 2 3 > | R _5 R 3 | 8 7 5 > | 5 6 8 > !co
L x==x=x=x 8 c 5 > | R 3 5 > | 8 10 8 > | R 5 8 > | 8 9 10 > | 8 9 8 5 | R 5 8 9 | R 3 5 8 | 8 10 9 > | R 3 5 6 | 5 8 5 > !co
T x==xx=xx R 3 5 >> > | R 2 3 >> > | R 3 5 6 7 | R 5 3 >> > | R _7 _5 >> > | 8 c 5 >> > | R _5 _6 _7 > | R 3 4 5 > | R 5 5 >> >
H1 x==x R 3 | R > | R 5 | R 2 | 8 7 | R _7
H2 x==x R > | R 3 | R 2 | 8 7 | R 5 | R _7

tune under-the-arch 3-5: the deep side of the neck first, the colour above it in the answer; it comes up from under the root to its top in bar seven
S x==xx==x R _5 _7 > | R _5 R > | R _7 _5 > | R _5 _5 _7 | R _5 R 2 | R _5 _5 > | R _5 _5 _6 | R 5 3 > | R 3 5 > | R _5 R 3 | R 5 5 > | 3 R _5 > !co
A x==xx==x R 5 c 5 | 8 c 5 3 | R 3 5 3 | R 5 3 2 | R 3 5 6 | 8 c 5 > | R 5 c > | R 5 3 > | R 3 5 > | R _5 R 2 | 5 c 5 3 !co
S x==xx==x R _5 _7 > | R _5 R > | R _7 _5 > | R _5 _5 _7 | R _5 R 2 | R _5 _5 > | R _5 _5 _6 | R 5 3 > | R 3 5 > | R _5 R 3 | R 5 5 > | 3 R _5 > !co
C x==xx=== R _5 R | R _7 _5 | R 5 3 | R 5 c | R _5 _7 | 8 c 5 | R 3 5 | 3 R _5 !co
S x==xx==x R _5 _7 > | R _5 R > | R _7 _5 > | R _5 _5 _7 | R _5 R 2 | R _5 _5 > | R _5 _5 _6 | R 5 3 > | R 3 5 > | R _5 R 3 | R 5 5 > | 3 R _5 > !co
A x==xx==x R 5 c 8 | R 5 8 c | 8 c 5 6 | R 3 5 6 | R 3 5 c | R 5 c > | R 5 3 4 | R 5 8 > | R 3 5 > | R _5 R 3 | R _5 R > | 5 c 8 > !co
L x==xx==x 8 c 5 > | R 5 8 > | R 3 5 > | 8 10 8 > | R c 8 > | 8 c 5 3 | R 5 8 c | 8 10 8 5 | R 3 5 8 | R _c _5 > | 5 c 8 > !co
T x==xx=xx R _5 _5 >> > | R _5 R >> > | R 3 5 >> > | R 5 3 >> > | R _5 _6 _7 > | 8 c 5 >> > | R 5 5 >> > | R _5 _5 _6 _7 | R 5 5 6 7
H1 x==x R _5 | R > | R 5 | R 3 | 8 5 | R _7
H2 x==x R > | R _5 | R 3 | 8 c | R 5 | R c

tune held-breath 3-5: a bar in the whole rhythm, then one whose and of two is held over three
S x==xx==x R 5 3 > | R 3 5 > | R 5 c > | R 5 8 > | R 3 5 6 | R _5 R > | R _7 _5 > | R _5 _5 _7 | R 5 5 > | R 5 3 2 | R _5 R 2 | 3 5 c > !co | 5 3 2 > !co
A x==x===x 8 7 5 | R 5 3 | R _7 _5 | R 3 2 | 8 5 3 | R 5 4 | R _5 _7 | R 5 > | 8 5 > | R 3 > | R _5 > | 5 3 2 !co
S x==xx==x R 5 3 > | R 3 5 > | R 5 c > | R 5 8 > | R 3 5 6 | R _5 R > | R _7 _5 > | R _5 _5 _7 | R 5 5 > | R 5 3 2 | R _5 R 2 | 3 5 c > !co | 5 3 2 > !co
C x==x===x R 5 > | R 3 > | R _5 > | 8 5 > | R 5 3 | R _5 R | R 3 R | 5 3 > !co
S x==xx==x R 5 3 > | R 3 5 > | R 5 c > | R 5 8 > | R 3 5 6 | R _5 R > | R _7 _5 > | R _5 _5 _7 | R 5 5 > | R 5 3 2 | R _5 R 2 | 3 5 c > !co | 5 3 2 > !co
A x==x===x 8 5 6 | R 5 8 | R 5 6 | R 3 4 | R 5 3 | 8 7 5 | R _5 R | R 5 > | R 3 > | R _5 > | R _7 R | 5 8 > !co
L x==xx==x 8 c 5 > | 8 10 8 > | R 3 5 > | R 5 8 > | 8 9 10 > | 8 c 5 3 | R 3 5 8 | R 5 8 9 | R c 8 > | R _c _5 > | 5 8 5 > !co
T x==xx=xx R 3 5 >> > | R 5 3 >> > | R 5 5 >> > | R 5 6 7 > | R _5 _5 >> > | R _5 _6 _7 > | 8 7 5 >> > | R 3 5 6 7 | R c 5 >> >
H1 x==x R > | R 5 | R 3 | 8 7 | R _7 | R 2
H2 x==x R > | R 3 | R 5 | 8 7 | R _7 | R 2

tune warm-tiles 1-2: from the octave down in one bar, from the root up in the next, so that each bar begins where the other ends
S x==xx==x 8 5 3 > | 8 5 R > | 8 5 3 R | R 5 3 > | R _5 R > | 8 5 R 5 | R 5 R > | R 5 3 R | R _5 R 5 | R _5 _5 > | 5 3 R > !co
A x==xx==x R 3 5 8 | R 5 8 5 | R 3 5 3 | R 5 8 > | R _5 R 5 | R 5 R 5 | R 3 5 > | R 5 3 5 | R 5 R > | R _5 R > | 3 5 8 > !co
S x==xx==x 8 5 3 > | 8 5 R > | 8 5 3 R | R 5 3 > | R _5 R > | 8 5 R 5 | R 5 R > | R 5 3 R | R _5 R 5 | R _5 _5 > | 5 3 R > !co
C x==xx=== R 5 3 | 8 5 3 | 8 5 R | R 5 R | R _5 R | R 3 5 | R 3 R | 5 3 R !co
S x==xx==x 8 5 3 > | 8 5 R > | 8 5 3 R | R 5 3 > | R _5 R > | 8 5 R 5 | R 5 R > | R 5 3 R | R _5 R 5 | R _5 _5 > | 5 3 R > !co
A x==xx==x R 5 8 5 | R 3 5 8 | R 5 8 > | R 3 5 3 | R _5 R 5 | R 5 R 5 | R 3 5 > | R 5 3 5 | R 5 R > | R _5 R > | 3 5 8 > !co
L x==xx==x 8 10 8 > | 8 5 8 > | R 5 8 > | R 3 5 > | 8 10 8 5 | R 8 10 8 | R 8 5 > | 8 5 3 > | 5 8 5 > !co
T x==xx==x R 3 5 > | R 5 R > | 8 5 R > | R _5 R > | R 5 3 > | 8 5 3 > | R 3 5 8 | R 5 8 >
H1 x==x R 5 | R > | R _5 | R R | R 3 | 8 5
H2 x==x R > | R 5 | R R | R _5 | R 3 | 8 5

tune salt-stair 3-5: each bar leans through the third or the fifth on three; leads in the odd bars, notes of the chord in the even ones, one held bar
S x==xx==x R 5 3 > | R 3 5 > | R _5 R > | R 5 c > | R _7 _5 > | R 3 5 3 | R 5 8 > | R _5 _5 > | R 5 3 2 | R _5 _5 _7 | R 2 3 > | 3 5 c > !co | 5 3 2 > !co
A x==xx==x R 3 5 6 | 8 c 5 3 | R _7 _5 _6 | R 5 3 2 | 8 5 3 2 | R 3 5 3 | R _7 R 2 | R 5 3 4 | R 3 5 > | R _5 R > | 8 c 5 > | 5 4 3 2 !co
S x==xx==x R 5 3 > | R 3 5 > | R _5 R > | R 5 c > | R _7 _5 > | R 3 5 3 | R 5 8 > | R _5 _5 > | R 5 3 2 | R _5 _5 _7 | R 2 3 > | 3 5 c > !co | 5 3 2 > !co
C x==xx=== R 5 3 | R 3 5 | R _5 R | R _7 _5 | 8 5 3 | 8 c 5 | R 2 3 | 5 3 R !co
S x==xx==x R 5 3 > | R 3 5 > | R _5 R > | R 5 c > | R _7 _5 > | R 3 5 3 | R 5 8 > | R _5 _5 > | R 5 3 2 | R _5 _5 _7 | R 2 3 > | 3 5 c > !co | 5 3 2 > !co
A x==xx==x R 5 8 9 | R 3 5 8 | 8 c 5 6 | R 5 c 5 | R 3 5 6 | R 5 3 4 | R _7 R 2 | R _5 R 3 | R 5 8 > | R 3 5 > | R _5 R > | 5 c 8 > !co
L x==xx==x 8 c 5 > | R 3 5 > | 8 10 8 > | R 5 8 > | 8 c 5 3 | 8 10 9 > | R 3 5 8 | R 5 8 c | R _c _5 > | 8 5 3 > | 5 8 5 > !co
T x==xx==x R 3 5 > | R 5 3 > | R 3 5 6 | R _5 R > | R 5 5 > | 8 c 5 > | R _5 _5 _7 | R 2 3 >
H1 x==x R > | R 5 | R 3 | R _7 | R 2 | 8 c
H2 x==x R > | R 3 | R 5 | R 2 | 8 c | R _7
`;
