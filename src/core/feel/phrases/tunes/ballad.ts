/** Ballad in six: tunes of eight bars (see the notation beside the books). */
export const BALLAD_TUNES = `
tune open-hands 1-2: root and fifth, each a long beat; the third bar breaks the chord, and the fourth holds one note
S x==x== R 5 | R _5 | R 3 | R 8 | 8 5 | 5 8 !co | 3 5 !co
A x==x=x R 5 R | 8 5 R | R 3 > | R _5 R | 5 R > !co | 5 3 R !co | R 5 5
S x=xx=x R 5 8 5 | R 3 5 > | R 3 5 3 | R 5 8 > | R 5 3 > | 3 5 8 > !co | 5 3 R > !co | R 5 R 5 | 8 5 R 5
C x===== R | 8 | 5 !co | 3 !co
S x==x== R 5 | R _5 | R 3 | R 8 | 8 5 | 5 8 !co | 3 5 !co
A x==x=x R 5 8 | R 3 > | R 5 3 | R 5 R | R 5 5 | 8 5 R | R _5 R
L x==x== R 8 | R 10 | R 5 | 8 10 | R 3 | 8 5 | 5 8 !co
T x=xx=x R 5 3 > | R 3 5 > | 8 5 3 > | R 5 R 5 | 8 5 R 5
Q x== R | 8
Q x=x R > | R 5 | R 3 | 8 5
Q x=x R > | R 5 | R 3 | R _5

tune two-bells 1-2: a low bell and the one above it, root and fifth; each second bar leans on its last eighth, and the lift rings the octave
S x==x== R 5 | R 8 | R _5 | R 3 | 8 5 | 5 8 !co | 3 5 !co
A x==x=x R 5 R | R 3 > | R 5 3 | 5 3 R !co | R 5 5 | 8 5 R | R _5 R
S x==x== R 5 | R 8 | R _5 | R 3 | 8 5 | 5 8 !co | 3 5 !co
C x=xx== R 5 8 | R 3 5 | R 5 R | 8 5 3 | 8 5 R | R _5 R | 5 3 R !co
S x==x== R 5 | R 8 | R _5 | R 3 | 8 5 | 5 8 !co | 3 5 !co
A x==x=x R 5 R | R 5 8 | R 3 > | R 5 5 | 8 5 R | R _5 R
L x=xx=x R 5 8 5 | R 3 5 8 | R 5 8 > | R 3 5 3 | 8 10 8 > | 8 5 8 > | 5 8 10 > !co | R 5 R 5 | 8 5 R 5
T x==x=x R 5 3 | R 3 > | 8 5 3 | R 5 R | R 5 5 | 8 5 R | R _5 R
Q x== R | 8
Q x=x R > | R 5 | R 3 | 8 5
Q x=x R > | R 5 | R 3 | R _5

tune lullaby-lean 1-2: root, fifth and a last eighth that leans, in every bar of the tune; the third bar opens its first beat as well, and the fourth comes to rest
S x==x=x R 5 R | R 5 8 | R 3 > | R 5 3 | 3 5 8 !co | R 5 5 | 8 5 R | R _5 R
A x==x== R 5 | R 3 | R _5 | 8 5 | R 8 | 5 R !co
S x=xx=x R 5 8 5 | R 3 5 > | R 3 5 3 | R 5 8 > | R 5 3 > | 3 5 8 > !co | 5 3 R > !co | R 5 R 5 | 8 5 R 5
C x=xx== R 5 8 | R 3 5 | R 5 R | 8 5 3 | 8 5 R | R _5 R | 5 3 R !co
S x==x=x R 5 R | R 5 8 | R 3 > | R 5 3 | 3 5 8 !co | R 5 5 | 8 5 R | R _5 R
A x==x== R 8 | R 5 | R 3 | 8 5 | R _5 | 5 8 !co
L x=xx=x R 5 8 5 | R 5 8 > | R 3 5 8 | 8 10 8 > | 8 5 8 > | R 3 5 3 | 5 8 10 > !co | R 5 R 5 | 8 5 R 5
T x==x=x R 5 3 | R 3 > | 8 5 3 | R 5 R | R 5 5 | 8 5 R | R _5 R
Q x== R | 8
Q x=x R > | R 5 | R 3 | 8 5
Q x=x R > | R 5 | R 3 | R _5

tune harp-in-the-hall 2-2: two long beats; in every second bar the second beat opens into three eighths, as a harp goes down again
S x==x== R 5 | R 3 | R _5 | R 8 | 8 5 | 5 8 !co | 3 5 !co
A x==xxx R 5 3 5 | R 5 3 R | 8 5 3 5 | R 3 5 3 | 8 5 3 R | R 5 3 > | R 3 5 > | 5 3 R 3 !co
S x==x== R 5 | R 3 | R _5 | R 8 | 8 5 | 5 8 !co | 3 5 !co
C x==x=x R 5 3 | R 3 R | R 5 > | R 3 > | 8 5 3 | 5 3 R !co
S x==x== R 5 | R 3 | R _5 | R 8 | 8 5 | 5 8 !co | 3 5 !co
A x==xxx R 3 5 3 | R 5 3 5 | R 5 3 R | 8 5 3 5 | 8 5 3 R | R 5 3 > | R 3 5 > | 5 3 R 3 !co
L x==x=x R 8 5 | R 5 8 | R 3 8 | 8 10 8 | 8 5 8 | R 8 > | R 5 > | 5 8 > !co
T x==xxx R 5 3 5 | R 3 5 3 | R 5 3 > | R 3 5 > | 8 5 3 5 | 8 5 3 >
Q x== R | 8
Q x=x R 3 | R 5 | R > | 8 5
Q xxx R 3 5 | R 5 3 | R 3 > | 8 5 3

tune wide-window 3-5: the hand opened over root, fifth and octave, which then rings, widest in bar seven; the answer is root and fifth with a step on the last eighth
S xxxx== R 5 8 10 | R 3 5 8 | R 5 8 5 | R 5 8 3 | 8 5 3 R | 3 5 8 5 !co | 5 3 R 5 !co
A x==x=x R 5 > | R 3 > | R _5 > | 8 5 > | R 5 3 | R 3 R | 5 3 > !co | 5 8 > !co
S xxxx== R 5 8 10 | R 3 5 8 | R 5 8 5 | R 5 8 3 | 8 5 3 R | 3 5 8 5 !co | 5 3 R 5 !co
C x====x R > | R 3 | R 5 | R _5 | 8 5 | 5 > !co
S xxxx== R 5 8 10 | R 3 5 8 | R 5 8 5 | R 5 8 3 | 8 5 3 R | 3 5 8 5 !co | 5 3 R 5 !co
A x==x=x R 5 > | R 3 > | R 5 8 | R _5 > | 8 5 > | R 5 3 | 5 8 > !co
L xxxx== R 5 8 10 | R 8 10 8 | R 3 5 8 | R 3 8 10 | R 5 8 5 | 5 8 10 8 !co
T x=xx=x R 5 3 > | R 3 5 > | R 3 R > | 8 5 3 > | R _5 R > | R 5 R >
Q x== R | 8
Q x=x R > | R 3 | R 5 | 8 5
Q x=x R > | R 3 | R 5 | R _5

tune slow-fountain 3-5: the root held, and a second beat that falls through the chord and turns back on its last eighth; every fourth bar has two long tones
S x==xxx R 5 3 5 | R 5 3 R | R 3 5 3 | 8 5 3 5 | 8 5 3 R | R 3 2 R | R 5 3 > | R 3 5 > | R _5 _7 R | 5 3 R 3 !co
A x==xxx R 5 3 5 | R 5 3 R | R 3 2 R | 8 5 3 R | R 3 5 3 | R 5 3 > | R 3 2 >
S x==xxx R 5 3 5 | R 5 3 R | R 3 5 3 | 8 5 3 5 | 8 5 3 R | R 3 2 R | R 5 3 > | R 3 5 > | R _5 _7 R | 5 3 R 3 !co
C x==x== R 5 | R 3 | 8 5 | R _5 | 5 3 !co
S x==xxx R 5 3 5 | R 5 3 R | R 3 5 3 | 8 5 3 5 | 8 5 3 R | R 3 2 R | R 5 3 > | R 3 5 > | R _5 _7 R | 5 3 R 3 !co
A x==xxx R 5 3 5 | R 5 3 R | R 3 2 R | 8 5 3 R | R 3 5 3 | R 5 3 > | R 3 2 >
L x=xx== R 5 8 | R 3 5 | R 5 10 | R 3 8 | 8 10 8 | 5 8 10 !co
T x==xxx R 5 3 5 | R 5 3 > | R 3 5 3 | R 3 5 > | 8 5 3 5 | 8 c 5 3 | R 3 2 >
Q x== R | 8
Q x=x R 3 | R 5 | R > | 8 5
Q xxx R 3 5 | R 5 3 | R 3 > | R 5 >

tune cradle-song 3-5: long, short, long, short: the chord rocked up and back to where it came from; the fourth bar holds its root and falls through the chord
S x=xx=x R 3 5 3 | R 3 5 R | R 5 8 5 | R 5 3 5 | R _5 R 3 | R 3 5 > | R 5 3 > | 8 5 3 R | 3 5 8 5 !co
A x=xx=x R 3 5 R | R 3 5 3 | R 5 3 R | R 5 3 5 | 8 5 3 R | R 5 3 > | R 3 5 > | 8 5 3 > | 5 3 R 3 !co
S x=xx=x R 3 5 3 | R 3 5 R | R 5 8 5 | R 5 3 5 | R _5 R 3 | R 3 5 > | R 5 3 > | 8 5 3 R | 3 5 8 5 !co
C x==xxx R 5 3 R | R 5 3 5 | R 3 2 R | R 3 5 3 | 8 5 3 R | R 5 3 > | 5 3 R 3 !co
S x=xx=x R 3 5 3 | R 3 5 R | R 5 8 5 | R 5 3 5 | R _5 R 3 | R 3 5 > | R 5 3 > | 8 5 3 R | 3 5 8 5 !co
A x=xx=x R 3 5 R | R 3 5 3 | R 5 3 R | R 5 3 5 | 8 5 3 R | R 5 3 > | R 3 5 > | 8 5 3 > | 5 3 R 3 !co
L x=xx== R 5 8 | R 5 10 | R 3 8 | R 3 5 | 8 10 8 | 5 8 10 !co
T x==xxx R 5 3 > | R 5 3 5 | R 3 5 > | R 3 5 3 | 8 5 3 > | 8 c 5 3 | R 5 >> >
Q x== R | 8
Q x=x R 3 | R 5 | R > | 8 5
Q xxx R 3 > | R 5 > | R 5 3 | 8 5 3

tune candle-steps 3-5: root and fifth with a last eighth on the way; the second bar has two long tones, the third breaks the chord, and the fourth holds
S x==x=x R 5 3 | R 5 6 | R 3 R | R 5 > | R 3 > | R _5 > | R 5 8 | 8 5 3 | 8 5 > | 3 5 > !co
A x==x== R 5 | R 3 | 8 5 | R _5 | R 8 | 5 3 !co
S x=xx=x R 3 5 3 | R 3 5 R | R 5 8 5 | R 5 3 5 | R 3 5 > | R 5 3 > | 8 5 3 > | 3 5 8 5 !co
C x====x R > | R 3 | R 5 | R _5 | 8 5 | 5 > !co
S x==x=x R 5 3 | R 5 6 | R 3 R | R 5 > | R 3 > | R _5 > | R 5 8 | 8 5 3 | 8 5 > | 3 5 > !co
A x==x== R 5 | R 8 | R 3 | 8 5 | R _5 | 5 8 !co
L x=xx=x R 5 8 5 | R 3 5 8 | R 5 8 10 | R 5 8 > | R 3 8 > | 8 10 8 > | R 3 5 > | 5 8 10 8 !co
T x==x=x R 5 3 | R 3 5 | R 5 > | R 3 > | R _5 > | 8 5 3 | 8 5 >
Q x== R | 8
Q x=x R 3 | R > | R 5 | 8 5
Q xxx R 3 5 | R 3 > | R 5 3 | R 5 >

tune opening-hand 3-5: a held root with its fifth, then a held root whose second beat opens into three eighths; bar seven opens both
S x==x== R 5 | R 3 | R 8 | R _5 | 8 5 | 3 5 !co | 5 8 !co
A x==xxx R 5 3 5 | R 5 3 R | R 3 2 R | 8 5 3 5 | 8 5 3 R | R 3 5 3 | R 5 3 > | R 3 5 > | 5 3 R > !co
S x==x== R 5 | R 3 | R 8 | R _5 | 8 5 | 3 5 !co | 5 8 !co
C x==x=x R 5 > | R 3 > | R 5 3 | R _5 > | R 3 R | 8 5 3 | 5 3 > !co
S x==x== R 5 | R 3 | R 8 | R _5 | 8 5 | 3 5 !co | 5 8 !co
A x==xxx R 3 5 3 | R 5 3 5 | R 5 3 R | 8 5 3 R | R 3 2 R | R 5 3 > | R 3 5 > | 8 5 3 > | 5 3 R > !co
L x=xx=x R 5 8 5 | R 5 8 10 | R 3 5 8 | R 5 8 > | R 3 8 > | 8 10 8 > | R 3 5 > | 5 8 10 8 !co
T x==xxx R 5 3 > | R 5 3 5 | R 3 5 > | R 3 5 3 | 8 5 3 > | 8 c 5 3 | R 3 2 >
Q x== R | 8
Q x=x R 3 | R > | R 5 | 8 5
Q xxx R 3 5 | R 3 > | R 5 > | R 5 3 | 8 5 >

tune bell-and-rope 3-5: two long tones in a bar, the bass leaning from one to the other, and a last eighth only where the phrase moves on
S x==x== R 5 | R 3 | R _5 | 8 5 | R 8 | 3 5 !co | 5 3 !co
A x==x=x R 5 3 | R 3 R | R 3 5 | R _5 > | R 5 > | R 3 > | 8 5 3 | 8 5 > | 5 3 > !co
S x=xx== R 3 5 | R 5 3 | R 5 8 | 8 5 3 | R 3 R | R _5 R | 3 5 8 !co
C x====x R > | R 3 | R 5 | R _5 | 8 5 | 5 > !co
S x==x== R 5 | R 3 | R _5 | 8 5 | R 8 | 3 5 !co | 5 3 !co
A x==x=x R 5 3 | R 3 R | R 3 5 | R _5 > | R 5 > | R 3 > | 8 5 3 | 8 5 > | 5 3 > !co
L x==x== R 8 | R 10 | 8 10 | R 5 | R 3 | 5 8 !co
T x==x=x R 5 3 | R 3 5 | R 5 > | R 3 > | 8 5 3 | 8 5 > | R _5 >
Q x== R | 8
Q x=x R 3 | R 5 | R > | 8 5
Q x=x R 3 | R > | R 5 | R _5
`;
