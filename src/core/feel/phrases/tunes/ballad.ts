/** Ballad in six: tunes of eight bars (see the notation beside the books). */
export const BALLAD_TUNES = `
tune two-bells 1-2: root and fifth, each a long beat; in every second bar the last eighth leans over
S x==x== R 5 | R 8 | R _5 | R R | R 3 | 8 5 | R 10 | 8 3 | 5 8 !co | 3 5 !co
A x==x=x 8 5 > | 8 5 R | R _5 > | R _5 R | R 5 > | R 5 8 | 8 5 3 | R 5 3 | R 3 > | 5 3 R !co
S x==x== R 5 | R 8 | R _5 | R R | R 3 | 8 5 | R 10 | 8 3 | 5 8 !co | 3 5 !co
C x==x=x R 5 R | R R > | 8 5 > | R 5 > | R _5 R | R 3 R | 8 5 R | R 5 3 | R 3 > | 5 3 R !co
S x==x== R 5 | R 8 | R _5 | R R | R 3 | 8 5 | R 10 | 8 3 | 5 8 !co | 3 5 !co
A x==x=x 8 5 R | 8 5 > | R _5 > | R _5 R | R 5 > | R 5 8 | R 5 3 | 8 5 3 | R 3 > | 5 3 R !co
L x==x== 8 5 | R 8 | 8 8 | 8 R | R 10 | 8 10 | R 5 | 8 3 | 5 8 !co
T x==x=x R 5 > | 8 5 > | R _5 > | R R > | R 5 R | R 3 5 | R 5 3 | 8 5 3 | R 3 >
Q x== R | 8
Q x=x R > | R 5 | R R | R 3 | 8 5
Q x=x R > | R 5 | R R | R 3 | 8 > | 8 5

tune lullaby-lean 1-2: the second beat answers the first, and each bar leans on its last eighth; the fourth one rests
S x==x=x R 5 > | R 5 8 | R 5 R | R _5 > | R _5 R | R 3 5 | R 5 3 | R 3 > | 3 5 8 !co | 5 8 > !co
A x==x=x 8 5 > | 8 5 R | R _5 R | R 5 > | R _5 > | 8 5 3 | 8 3 R | 8 3 > | R 3 > | 5 3 R !co
S x==x=x R 5 > | R 5 8 | R 5 R | R _5 > | R _5 R | R 3 5 | R 5 3 | R 3 > | 3 5 8 !co | 5 8 > !co
C x==x== R 5 | R R | 8 5 | R _5 | R 3 | 8 R | R 8 | 8 3 | 5 R !co
S x==x=x R 5 > | R 5 8 | R 5 R | R _5 > | R _5 R | R 3 5 | R 5 3 | R 3 > | 3 5 8 !co | 5 8 > !co
A x==x=x 8 5 R | 8 5 > | R 5 > | R _5 R | R _5 > | 8 3 R | 8 5 3 | 8 3 > | R 3 > | 5 3 R !co
L x==x=x R 8 5 | 8 5 8 | R 8 > | R 5 8 | 8 8 > | R 10 8 | 8 10 8 | R 3 8 | 8 10 > | 5 8 > !co
T x==x=x R 5 > | 8 5 > | R _5 > | R 5 8 | R R > | R 3 5 | R 5 3 | 8 5 3 | R 3 >
Q x== R | 8
Q x=x R > | R 5 | R R | R 3 | 8 5
Q x=x R > | R 5 | R R | R 3 | 8 > | 8 5

tune quiet-heart 1-2: long, short, long: the short one tips onto the second beat; every second bar tips on again
S x=xx== R R 5 | R 5 8 | R 5 R | R R _5 | R R 8 | R 3 5 | R 5 3 | R R 3 | 5 5 8 !co | 3 3 5 !co
A x=xx=x 8 8 5 > | 8 5 R > | 8 8 5 R | R R _5 R | R R 5 > | R R _5 > | 8 5 3 R | 8 5 3 > | R 5 3 > | 5 3 R > !co
S x=xx== R R 5 | R 5 8 | R 5 R | R R _5 | R R 8 | R 3 5 | R 5 3 | R R 3 | 5 5 8 !co | 3 3 5 !co
C x=xx=x R R 5 R | R R 5 > | 8 8 5 > | R R _5 R | R 5 R > | R R 3 R | 8 5 3 > | R 5 3 R | R 3 R > | 5 3 R > !co
S x=xx== R R 5 | R 5 8 | R 5 R | R R _5 | R R 8 | R 3 5 | R 5 3 | R R 3 | 5 5 8 !co | 3 3 5 !co
A x=xx=x 8 5 R > | 8 8 5 > | R R 5 > | R R _5 R | 8 8 5 R | R R _5 > | 8 5 3 > | 8 5 3 R | R 5 3 > | 5 3 R > !co
L x=xx== R 5 8 | 8 8 5 | R 8 5 | R R 8 | 8 5 8 | R 3 8 | 8 8 10 | R 8 10 | 5 5 8 !co
T x=xx=x R R 5 > | R R _5 > | 8 8 5 > | R 5 R > | R 5 8 > | R 3 5 > | R R 3 5 | R 5 3 > | 8 5 3 >
Q x=x R R | R > | R 5 | R 3 | 8 8 | 8 5
Q x=x R > | R 5 | R R | R 3 | 8 > | 8 5

tune harp-in-the-hall 1-2: two long beats, and in bars two, four, six and eight the second beat opens into three eighths
S x==x== R 5 | R 8 | R _5 | R R | 8 5 | R 3 | 8 3 | R 10 | 5 8 !co | 3 5 !co
A x==xxx 8 5 R > | R 5 8 5 | R 5 R > | 8 R 5 > | R _5 R > | 8 5 3 R | R 5 3 > | 8 5 3 > | R 3 5 > | 5 3 R > !co
S x==x== R 5 | R 8 | R _5 | R R | 8 5 | R 3 | 8 3 | R 10 | 5 8 !co | 3 5 !co
C x==xxx R 5 R > | R R 5 > | 8 5 R > | R _5 R > | R 5 8 5 | R 5 3 R | R 3 5 3 | R 3 R > | 8 5 3 R | 5 3 R > !co
S x==x== R 5 | R 8 | R _5 | R R | 8 5 | R 3 | 8 3 | R 10 | 5 8 !co | 3 5 !co
A x==xxx 8 R 5 > | 8 5 R > | R 5 8 5 | R 5 R > | R _5 R > | 8 5 3 > | 8 5 3 R | R 5 3 > | R 3 5 > | 5 3 R > !co
L x==x== 8 5 | R 8 | 8 8 | R 5 | 8 10 | R 10 | 8 R | 8 3 | 5 8 !co
T x==xxx R R 5 > | R 5 8 > | R _5 R > | 8 5 R > | R 3 5 > | R 5 3 > | 8 5 3 > | R R 3 5 | R 3 R >
Q x== R | 8
Q x=x R > | R 5 | R R | R 3 | 8 5
Q x=x R > | R 5 | R R | R 3 | 8 > | 8 5

tune candle-steps 3-5: the fifth or third on the second beat, and the last eighth always a step; down again by the seventh
S x==x=x R 5 6 | R 5 > | R 3 4 | R 3 > | R 2 3 | R _5 _6 | R 3 2 | R 5 4 | R _7 > | 3 5 6 !co | 3 5 > !co
A x==x=x 8 7 > | 8 7 6 | R _7 _6 | R _7 > | 8 5 4 | R _5 > | R 5 > | R 3 2 | 8 c 5 | 5 4 3 !co | 5 3 > !co
S x==x=x R 5 6 | R 5 > | R 3 4 | R 3 > | R 2 3 | R _5 _6 | R 3 2 | R 5 4 | R _7 > | 3 5 6 !co | 3 5 > !co
C x==x== R 5 | R 3 | 8 5 | R _7 | R _5 | R R | 8 7 | R 2 | 5 3 !co
S x==x=x R 5 6 | R 5 > | R 3 4 | R 3 > | R 2 3 | R _5 _6 | R 3 2 | R 5 4 | R _7 > | 3 5 6 !co | 3 5 > !co
A x==x=x 8 7 6 | 8 7 > | R _7 _6 | 8 5 4 | R _7 > | R _5 > | R 5 > | R 3 2 | 8 c 5 | 5 4 3 !co
L x==x=x R 8 9 | 8 9 10 | R 7 8 | R 8 7 | 8 10 9 | 8 9 > | R 5 8 | R 8 > | 8 10 > | 5 8 9 !co
T x==xxx R 5 >> > | R 5 6 7 | R 3 >> > | R _5 _6 _7 | 8 7 >> > | R _5 >> > | R 3 4 5 | R _7 >> > | R 2 3 >
Q x== R | 8
Q x=x R > | R 3 | R 2 | R 5 | R _7
Q x=x R > | R 3 | R 2 | R 5 | R _7 | 8 7

tune two-hearts 3-5: long and short on both beats, rising by the chord, falling by the scale
S x=xx=x R 3 5 6 | R 3 5 > | R 5 3 > | R 2 3 > | R 2 3 4 | R 5 5 6 | R _7 _6 > | R 3 2 > | R _5 _6 _7 | 3 4 5 > !co | 3 5 6 > !co
A x=xx=x 8 7 5 > | 8 7 6 5 | R _7 _6 _5 | R _7 _6 > | 8 5 3 2 | 8 5 3 > | R 5 3 2 | R 5 4 3 | R _7 _5 > | 5 4 3 > !co | 5 3 2 > !co
S x=xx=x R 3 5 6 | R 3 5 > | R 5 3 > | R 2 3 > | R 2 3 4 | R 5 5 6 | R _7 _6 > | R 3 2 > | R _5 _6 _7 | 3 4 5 > !co | 3 5 6 > !co
C x=xx== R 3 5 | R 2 3 | 8 7 5 | R _7 R | R 5 3 | R 3 R | R _7 _5 | 8 5 3 | 5 3 R !co
S x=xx=x R 3 5 6 | R 3 5 > | R 5 3 > | R 2 3 > | R 2 3 4 | R 5 5 6 | R _7 _6 > | R 3 2 > | R _5 _6 _7 | 3 4 5 > !co | 3 5 6 > !co
A x=xx=x 8 7 6 5 | 8 7 5 > | R _7 _6 > | R _7 _6 _5 | 8 5 3 > | 8 5 3 2 | R 5 4 3 | R 5 3 2 | R _7 _5 > | 5 4 3 > !co
L x=xx=x R 5 8 9 | 8 9 10 > | R 7 8 > | R 5 8 > | 8 9 10 9 | R 3 8 7 | 8 7 8 > | R 8 9 > | 8 10 9 > | 5 7 8 > !co
T x=xxxx R 3 5 >> > | R 2 3 >> > | R 3 5 6 7 | R 5 3 >> > | 8 7 5 >> > | R _7 _6 >> > | R 3 4 5 > | R R _5 _6 _7 | R 5 5 >> >
Q x=x R 3 | R > | R 2 | R 5 | R _7 | 8 7
Q x=x R > | R 3 | R 2 | R 5 | R _7 | 8 7

tune opening-hand 3-5: a held root with one late step, then a held root whose second beat opens into a run
S x==x=x R 5 > | R 3 > | R 5 6 | R 3 2 | R 2 > | R _5 > | R _7 > | R 3 4 | R _5 _6 | 3 5 > !co | 5 6 > !co
A x==xxx 8 7 6 5 | 8 7 6 > | R 5 4 3 | R 5 6 > | R _7 _6 > | R _7 _6 _5 | R 2 3 > | 8 5 4 > | R 5 3 > | R 5 >> > | 5 4 3 > !co
S x==x=x R 5 > | R 3 > | R 5 6 | R 3 2 | R 2 > | R _5 > | R _7 > | R 3 4 | R _5 _6 | 3 5 > !co | 5 6 > !co
C x==xxx R 3 2 R | R 5 4 > | R 3 R > | 8 7 5 > | R _7 R > | R 5 3 R | R _5 _7 > | R 3 2 > | R R >> > | 5 4 3 R !co
S x==x=x R 5 > | R 3 > | R 5 6 | R 3 2 | R 2 > | R _5 > | R _7 > | R 3 4 | R _5 _6 | 3 5 > !co | 5 6 > !co
A x==xxx 8 7 6 > | 8 7 6 5 | R 5 6 > | R 5 4 3 | R _7 _6 > | R _7 _6 _5 | R 2 3 > | 8 5 4 > | R 5 3 > | R 5 >> > | 5 4 3 > !co
L x==x=x R 8 9 | 8 9 10 | R 8 > | R 7 8 | 8 9 > | 8 10 9 | R 5 8 | R 8 7 | 8 10 > | 5 8 9 !co
T x==xxx R 5 6 7 | R 5 >> > | R 3 >> > | 8 7 >> > | R _5 _6 _7 | R _5 >> > | R 3 4 > | R _7 >> > | R 2 3 >
Q x== R | 8
Q x=x R > | R 3 | R 2 | R 5 | R _7
Q x=x R > | R 3 | R 2 | R 5 | R _7 | 8 7
Q xxx R >> > | R 2 3 | R 3 > | R _7 _6 | 8 7 6 | R 5 >

tune late-window 4-5: the colour of the chord on the second beat, and half steps on the last eighth
S x==x=x R c > | R 5 > | R 3 > | R c 5 | R 5 c | R _7 > | R _7 _6 | R 5 #4 !ch | R 3 2 | 3 c > !co | 5 c > !co
A x==x=x 8 c > | 8 c 5 | R _7 _6 | R _7 > | 8 7 > | R _5 > | R 5 > | 8 5 > | R 3 > | 5 3 > !co | 5 4 3 !co
S x==x=x R c > | R 5 > | R 3 > | R c 5 | R 5 c | R _7 > | R _7 _6 | R 5 #4 !ch | R 3 2 | 3 c > !co | 5 c > !co
C x==xxx R 5 3 R | R c 5 > | 8 c 5 > | R 3 >> > | R _7 R > | R 5 >> > | R _5 >> > | R 3 2 > | 8 7 >> > | 5 3 R > !co
S x==x=x R c > | R 5 > | R 3 > | R c 5 | R 5 c | R _7 > | R _7 _6 | R 5 #4 !ch | R 3 2 | 3 c > !co | 5 c > !co
A x==x=x 8 c 5 | 8 c > | R _7 > | R _7 _6 | 8 7 > | R _5 > | R 5 > | 8 5 > | R 3 > | 5 3 > !co
L x==x=x R 8 9 | 8 9 10 | R c 8 | 8 10 9 | R 8 > | 8 9 > | 8 10 > | R 8 7 | R 9 8 | 5 c 8 !co
T x==xxx R 5 6 7 | R 5 >> > | R c >> > | R 3 >> > | 8 c >> > | R _5 _6 _7 | R _7 >> > | R _5 >> > | R c 5 >
Q x== R | 8
Q x=x R > | R c | R 3 | R 5 | R _7
Q x=x R > | R c | R 3 | R 5 | R _7 | 8 c
`;
