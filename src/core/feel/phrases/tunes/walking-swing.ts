/** Walking swing: tunes of eight bars (see the notation beside the books). */
export const WALKING_SWING_TUNES = `
tune garden-gate 1-1: quarters that climb through fifth and octave, and quarters that come down from it; a skip on two marks the half
S x=x=x=x= R 5 8 > | R _5 R 5 | 8 5 R 5 | R 5 8 5 | R 5 R > | R _5 R > | 8 5 R > | 5 8 8 5 !co
A x=x=x=x= R 8 5 > | 8 5 R > | R _5 R 5 | R 5 R _5 | R 5 8 > | R _5 R > | 8 5 R 5
S x=x=x=x= R 5 8 > | R _5 R 5 | 8 5 R 5 | R 5 8 5 | R 5 R > | R _5 R > | 8 5 R > | 5 8 8 5 !co
C x=xxx=x= R R R 5 > | 8 8 8 5 > | R R R _5 > | R 5 5 8 > | R R 5 R > | 8 8 5 R > | R _5 _5 R >
S x=x=x=x= R 5 8 > | R _5 R 5 | 8 5 R 5 | R 5 8 5 | R 5 R > | R _5 R > | 8 5 R > | 5 8 8 5 !co
A x=x=x=x= R 8 5 > | 8 5 R > | R _5 R 5 | R 5 R _5 | R 5 8 > | R _5 R > | 8 5 R 5
L x=x=x=x= R 5 8 > | R 8 8 5 | R 5 8 5 | R _5 R 5
T x=x=x=xx R _5 R 5 > | 8 5 8 5 > | R R 5 R > | R 5 8 5 > | 8 5 R 5 > | R 5 R _5 >
H1 x=x= R > | R 5 | 8 5 | R _5 | R R
H2 x=x= R > | R 5 | 8 5 | R _5 | 8 >
H2 x=xx R 5 > | R 5 5 | R R >

tune cellar-stairs 1-1: first down from the octave, then up with a skip on four that falls into the next bar
S x=x=x=x= 8 5 R > | R _5 R 5 | R 8 5 > | R 5 8 5 | 8 5 R 5 | R 5 R > | R _5 R > | R 5 8 >
A x=x=x=xx R _5 R 5 > | R 5 8 5 > | R R 5 R > | 8 5 R 5 > | R 5 R _5 > | 5 8 5 R > !co
S x=x=x=x= 8 5 R > | R _5 R 5 | R 8 5 > | R 5 8 5 | 8 5 R 5 | R 5 R > | R _5 R > | R 5 8 >
C x=x=x=x= R 5 8 > | R _5 R 5 | R 5 8 5 | R _5 R > | 8 5 R >
S x=x=x=x= 8 5 R > | R _5 R 5 | R 8 5 > | R 5 8 5 | 8 5 R 5 | R 5 R > | R _5 R > | R 5 8 >
A x=x=x=xx R _5 R 5 > | R 5 8 5 > | R R 5 R > | 8 5 R 5 > | R 5 R _5 > | 5 8 5 R > !co
L x=x=x=x= R 5 8 > | R 8 8 5 | R 5 8 5 | R _5 R 5
T x=x=x=xx R _5 R 5 > | 8 5 8 5 > | R R 5 R > | R 5 8 5 > | 8 5 R 5 > | R 5 R _5 >
H1 x=x= 8 5 | R > | R 5 | R _5
H2 x=x= R > | R 5 | 8 > | R _5
H2 x=xx R 5 > | R 5 5 | R R >

tune low-hat-brim 1-1: root and octave first, then down between them; the answer comes from below and climbs; a skip at four closes each half
S x=x=x=x= R 8 5 > | R 8 8 5 | R _5 R 5 | R 5 8 5 | 8 5 R 5 | R 5 R > | R _5 R > | R 5 8 > | 8 5 R > | 5 8 8 5 !co | 5 8 5 > !co
A x=x=x=x= R 5 8 > | R _5 R 5 | 8 5 R 5 | 8 5 R > | R 5 R _5 | R _5 R >
S x=x=x=x= R 8 5 > | R 8 8 5 | R _5 R 5 | R 5 8 5 | 8 5 R 5 | R 5 R > | R _5 R > | R 5 8 > | 8 5 R > | 5 8 8 5 !co | 5 8 5 > !co
C x=x=x=xx R _5 R 5 > | R R _5 R > | 8 5 5 R > | R R 5 R > | R 5 8 5 > | 8 5 R 5 > | R 5 R _5 >
S x=x=x=x= R 8 5 > | R 8 8 5 | R _5 R 5 | R 5 8 5 | 8 5 R 5 | R 5 R > | R _5 R > | R 5 8 > | 8 5 R > | 5 8 8 5 !co | 5 8 5 > !co
A x=x=x=x= R 5 8 > | R _5 R 5 | 8 5 R 5 | 8 5 R > | R 5 R _5 | R _5 R >
L x=x=x=x= R 8 8 5 | R 5 8 > | R 5 8 5 | R _5 R 5
T x=x=x=xx R 8 5 >> > | R _5 R 5 > | 8 5 8 5 > | R R 5 R > | R 5 8 5 > | 8 5 R 5 > | R 5 R _5 >
H1 x=x= R 8 | R > | R 5 | 8 5 | R _5
H2 x=x= R > | R 5 | 8 > | R _5 | R 8
H2 x=xx R 5 > | R 5 5 | R R >

tune garden-path 2-2: quarters up the chord and a neighbour of the next root on four, then down from the octave; a skip on two marks the half
S x=x=x=x= R 3 5 > | R 3 5 8 | R 5 8 > | R 8 5 3 | R R 5 5 | 8 5 R 5 | R 3 8 5 | 3 5 8 > !co | 5 8 8 5 !co | 5 5 8 > !co
A x=x=x=x= 8 5 3 > | 8 5 R 3 | R 8 5 > | 8 5 R > | R _5 R 3 | 8 8 5 > | R R 5 5 | 5 3 R > !co | 5 5 R > !co
S x=x=x=x= R 3 5 > | R 3 5 8 | R 5 8 > | R 8 5 3 | R R 5 5 | 8 5 R 5 | R 3 8 5 | 3 5 8 > !co | 5 8 8 5 !co | 5 5 8 > !co
C x=xxx=x= R 3 R 5 > | R R 3 5 3 | 8 8 5 3 > | R R R 5 > | R 5 R 3 > | 8 8 8 5 > | R R R _5 > | 8 5 3 R > | 5 3 5 8 > !co | 5 5 5 3 > !co
S x=x=x=x= R 3 5 > | R 3 5 8 | R 5 8 > | R 8 5 3 | R R 5 5 | 8 5 R 5 | R 3 8 5 | 3 5 8 > !co | 5 8 8 5 !co | 5 5 8 > !co
A x=x=x=x= 8 5 R 3 | R 8 5 > | 8 5 3 > | 8 5 R > | R _5 R 3 | 8 8 5 > | R R 5 5 | 5 3 R > !co | 5 5 R > !co
L x=x=x=x= 8 10 8 > | R 3 5 8 | R 5 8 > | 8 10 8 5 | R R 8 5 | R 8 8 5 | 8 5 10 8 | R R 5 8 | 8 8 10 8 | 5 8 10 8 !co | 3 5 8 10 !co
T x=x=x=xx R 3 5 3 > | R 3 5 8 > | 8 5 3 R > | R R 3 5 > | R 5 3 >> > | R 8 5 3 > | R R 5 5 > | 8 8 5 5 > | 8 5 R 3 > | R R 5 R >
H1 x=x= R 3 | R > | R 5 | 8 5 | R _5 | R R | 8 3
H2 x=x= R > | R 3 | R 5 | 8 5 | R _5 | 8 >
H2 x=xx R 5 > | R 5 3 | R 5 5 | R R >

tune coat-stairs 2-2: first down from the octave, then up with a skip on four that falls into the next bar
S x=x=x=x= 8 5 3 > | R 8 5 3 | 8 5 R 3 | 8 8 5 3 | 8 5 R > | 8 8 5 > | R R _5 _5 | R R 5 5 | R 8 5 > | 5 3 R > !co | 5 5 R > !co
A x=x=x=xx R 3 5 3 > | R 3 5 8 > | R R 5 5 > | R R 3 5 > | R 5 8 5 > | R R 5 R > | 8 5 R 3 > | R 3 5 >> > | 3 5 8 5 > !co | 5 8 5 R > !co
S x=x=x=x= 8 5 3 > | R 8 5 3 | 8 5 R 3 | 8 8 5 3 | 8 5 R > | 8 8 5 > | R R _5 _5 | R R 5 5 | R 8 5 > | 5 3 R > !co | 5 5 R > !co
C x=x=x=x= R 3 5 > | R R 3 5 | 8 5 R 3 | R 5 8 > | 8 8 5 3 | R R 5 5 | R 8 5 3 | 5 3 R > !co | 5 5 8 > !co
S x=x=x=x= 8 5 3 > | R 8 5 3 | 8 5 R 3 | 8 8 5 3 | 8 5 R > | 8 8 5 > | R R _5 _5 | R R 5 5 | R 8 5 > | 5 3 R > !co | 5 5 R > !co
A x=x=x=xx R 3 5 3 > | R 3 5 8 > | R R 5 5 > | R R 3 5 > | R 5 8 5 > | R R 5 R > | 8 5 R 3 > | R 3 5 >> > | 3 5 8 5 > !co | 5 8 5 R > !co
L x=x=x=x= 8 10 8 5 | R 3 5 8 | R 5 8 > | 8 10 8 > | R 8 8 5 | R R 5 8 | 8 8 10 8 | 8 5 10 8 | 5 8 10 8 !co | 3 5 8 > !co
T x=x=x=xx R 3 5 3 > | R 3 5 >> > | R R 3 5 > | 8 5 R 3 > | 8 5 3 R > | R R 5 5 > | R 8 5 3 > | 8 8 5 5 > | R R 5 R >
H1 x=x= 8 5 | R 3 | R > | R 5 | R _5 | 8 3
H2 x=x= R > | R 3 | R 5 | 8 > | R _5
H2 x=xx R 5 > | R 5 3 | R 3 5 | R 5 5 | R R >

tune high-hat-brim 2-2: root and octave first, then down between them; the answer comes from below and climbs; a skip at four closes each half
S x=x=x=x= R 8 5 3 | R 8 5 > | 8 5 R 3 | R 8 8 5 | 8 5 3 > | 8 8 5 3 | R R _5 _5 | R R 5 5 | 3 8 5 > !co | 5 8 8 5 !co | 5 8 5 > !co
A x=x=x=x= R 3 5 8 | R 3 5 > | R 5 8 > | R R 3 5 | R R 5 5 | R _5 R 5 | R 8 5 3 | 8 5 R 3 | 8 5 R 5 | 3 5 8 > !co | 5 5 8 > !co
S x=x=x=x= R 8 5 3 | R 8 5 > | 8 5 R 3 | R 8 8 5 | 8 5 3 > | 8 8 5 3 | R R _5 _5 | R R 5 5 | 3 8 5 > !co | 5 8 8 5 !co | 5 8 5 > !co
C x=x=x=xx R 8 5 3 > | R 3 5 3 > | 8 5 R 3 > | R R 5 5 > | 8 8 5 3 > | R R _5 R > | 8 5 3 >> > | 8 5 5 R > | R R 5 R > | 5 3 R _5 > !co | 5 8 5 3 > !co
S x=x=x=x= R 8 5 3 | R 8 5 > | 8 5 R 3 | R 8 8 5 | 8 5 3 > | 8 8 5 3 | R R _5 _5 | R R 5 5 | 3 8 5 > !co | 5 8 8 5 !co | 5 8 5 > !co
A x=x=x=x= R 3 5 8 | R 3 5 > | R 5 8 > | R R 3 5 | R R 5 5 | R _5 R 5 | R 8 5 3 | 8 5 R 3 | 8 5 R 5 | 3 5 8 > !co | 5 5 8 > !co
L x=x=x=x= R 8 10 8 | 8 10 8 > | R 8 8 5 | R 5 8 > | 8 10 8 5 | R 3 5 8 | R R 5 8 | 8 5 10 8 | 5 8 10 8 !co | 3 8 10 > !co
T x=x=x=xx R 3 5 8 > | R 8 5 3 > | R 3 5 >> > | 8 5 R 3 > | R R 3 5 > | R 8 5 >> > | R R 5 5 > | 8 8 5 3 > | 8 8 5 5 > | R R 5 R >
H1 x=x= R 8 | R 3 | R > | R 5 | 8 5 | R _5
H2 x=x= R > | R 3 | R 5 | 8 > | R _5 | R 8
H2 x=xx R 5 > | R 5 3 | R 3 5 | R 5 5 | R R >

tune corner-skip 2-2: quarters climb the chord to a neighbour of the next root; in answer a skip on two turns the corner between third and root
S x=x=x=x= R 3 5 > | R 3 5 8 | 8 5 R 3 | R 8 5 3 | R 5 8 > | 8 5 3 > | R 3 8 5 | 3 5 8 > !co | 5 8 8 5 !co
A x=xxx=x= R 3 R 5 > | 8 8 5 3 > | R 3 5 3 > | 8 5 3 R > | R 3 3 5 > | 8 5 5 3 > | R 5 R 3 > | 5 3 5 8 > !co | 5 5 3 R > !co
S x=x=x=x= R 3 5 > | R 3 5 8 | 8 5 R 3 | R 8 5 3 | R 5 8 > | 8 5 3 > | R 3 8 5 | 3 5 8 > !co | 5 8 8 5 !co
C x=x=x=x= 8 5 3 > | 8 5 R 3 | R 8 5 > | R 3 5 > | R 8 5 3 | 8 8 5 3 | 5 3 R > !co | 5 5 8 > !co
S x=x=x=x= R 3 5 > | R 3 5 8 | 8 5 R 3 | R 8 5 3 | R 5 8 > | 8 5 3 > | R 3 8 5 | 3 5 8 > !co | 5 8 8 5 !co
A x=xxx=x= 8 8 5 3 > | R 3 5 3 > | R 3 R 5 > | 8 5 3 R > | R 3 3 5 > | 8 5 5 3 > | R 5 R 3 > | 5 3 5 8 > !co | 5 5 3 R > !co
L x=x=x=x= 8 10 8 > | R 3 5 8 | R 5 8 > | 8 10 8 5 | R 8 8 5 | 8 5 10 8 | R 5 8 10 | 5 8 10 8 !co | 3 5 8 10 !co
T x=xxx=x= R 3 R 5 > | R 3 5 3 > | 8 8 5 3 > | R 3 5 >> > | R 3 3 5 > | 8 5 3 R > | R 5 R 3 > | 8 5 5 3 >
H1 x=x= R 3 | R > | R 5 | 8 5 | R _5
H2 x=x= R > | R 3 | R 5 | 8 > | R _5
H2 x=xx R 5 > | R 5 3 | R 3 5

tune ladder-up 3-5: a scale climbs in quarters and slips a half step into the next root, a broken chord comes down; a late eighth breathes at the half
S x=x=x=x= R 2 3 > | R 2 3 5 | R 2 b3 3 | R 3 5 > | R 3 5 6 | R 2 3 4 | R 3 4 > | R 5 6 > | R 3 4 5 | 3 4 5 > !co | 5 6 7 8 !co
A x=x=x=x= 8 5 3 > | 8 c 5 > | 8 5 3 5 | 8 c 5 3 | R 5 3 > | R _7 _5 > | 8 6 5 > | R _5 R 3 | 8 5 4 > | R 5 4 > | 5 3 R > !co | c 5 3 > !co
S x=x=x=x= R 2 3 > | R 2 3 5 | R 2 b3 3 | R 3 5 > | R 3 5 6 | R 2 3 4 | R 3 4 > | R 5 6 > | R 3 4 5 | 3 4 5 > !co | 5 6 7 8 !co
C x=x=x==x 8 c 5 > | R 3 5 > | 8 5 3 > | R c 5 > | R _7 _5 > | 8 6 5 > | R 5 3 > | R 3 5 6 | 8 5 3 5 | 5 4 3 > !co | c 5 3 > !co
S x=x=x=x= R 2 3 > | R 2 3 5 | R 2 b3 3 | R 3 5 > | R 3 5 6 | R 2 3 4 | R 3 4 > | R 5 6 > | R 3 4 5 | 3 4 5 > !co | 5 6 7 8 !co
A x=x=x=x= 8 c 5 > | 8 5 3 5 | 8 5 3 > | 8 c 5 3 | R 5 3 > | R _7 _5 > | 8 6 5 > | R _5 R 3 | 8 5 4 > | R 5 4 > | 5 3 R > !co | c 5 3 > !co
L x=x=x=x= 8 9 10 > | R 3 5 8 | 8 10 9 > | 8 9 10 8 | R 5 8 9 | R 5 6 8 | R 5 8 > | R 3 5 c | 8 10 8 > | 5 6 7 8 !co | 3 5 8 9 !co
T x=x=x=xx R 3 5 >> > | R 2 3 5 > | R 5 6 7 > | 8 c 5 >> > | R 3 5 3 > | R _5 _6 _7 > | 8 7 6 5 > | 8 5 3 >> > | R 5 4 3 > | R 2 b3 3 5
H1 x=x= R 3 | R > | R 5 | R 2 | 8 c | R _5 | 8 7
H2 x=x= R > | R 3 | R 5 | 8 > | R _5 | R c
H2 x=xx R 5 > | R 5 3 | R 3 > | R 5 4 | R >> >

tune banister 3-5: slides down the scale from the octave or below the root; the answer breaks the chord upward to its seventh; a pair on four in bars four and eight
S x=x=x=x= 8 7 6 > | 8 7 6 5 | 8 c 5 > | R _7 _6 > | R _7 _6 _5 | 8 6 5 > | 8 c 6 5 | R 5 4 > | R 5 4 3 | 8 6 5 4 | 5 4 3 2 !co | 5 4 3 > !co
A x=x=x=x= R 3 5 c | R 3 5 > | R 3 5 8 | R 5 8 > | R 3 5 6 | R _5 R 3 | R 5 3 > | R 3 c 5 | R 3 6 > | 3 5 c > !co | 5 c 8 > !co
S x=x=x=x= 8 7 6 > | 8 7 6 5 | 8 c 5 > | R _7 _6 > | R _7 _6 _5 | 8 6 5 > | 8 c 6 5 | R 5 4 > | R 5 4 3 | 8 6 5 4 | 5 4 3 2 !co | 5 4 3 > !co
C x=x=x=xx 8 7 6 5 > | R 3 5 3 > | 8 c 5 >> > | R _7 _6 _5 > | 8 6 5 3 > | R 5 4 3 > | 8 5 3 >> > | R 3 5 >> > | R _7 _6 >> > | R 5 3 >> > | 5 4 3 R > !co
S x=x=x=x= 8 7 6 > | 8 7 6 5 | 8 c 5 > | R _7 _6 > | R _7 _6 _5 | 8 6 5 > | 8 c 6 5 | R 5 4 > | R 5 4 3 | 8 6 5 4 | 5 4 3 2 !co | 5 4 3 > !co
A x=x=x=x= R 3 5 > | R 3 5 8 | R 3 5 c | R 5 8 > | R 3 5 6 | R _5 R 3 | R 5 3 > | R 3 c 5 | R 3 6 > | 3 5 c > !co | 5 c 8 > !co
L x=x=x=x= 8 9 10 > | R 3 5 8 | 8 10 9 8 | R 3 5 c | R 5 8 9 | 8 10 9 > | 8 9 10 9 | R 5 8 > | R c 8 > | 5 c 8 9 !co | 5 6 8 > !co
T x=x=x=xx R 3 5 6 > | R 3 5 >> > | 8 c 5 >> > | 8 7 6 5 > | R 5 6 7 > | R _5 _6 _7 > | R 3 5 3 > | R _7 _6 >> > | R 5 4 >> > | 8 5 3 >> > | R 3 4 5 >
H1 x=x= 8 7 | R > | R 3 | R 5 | 8 c | R _7 | R _5
H2 x=x= R > | R 3 | R 5 | 8 > | R _5 | R c
H2 x=xx R 5 > | R 5 3 | R 3 > | R 5 4 | R >> >

tune second-beat-skip 3-5: quarters up, and in answer the seventh said twice in a swung skip on two, on its way down
S x=x=x=x= R 3 5 6 | R 2 3 > | R 3 5 > | R 2 3 5 | R 3 5 c | R 5 6 > | R 2 b3 3 | R 3 4 > | R 5 c > | 3 5 6 > !co | 5 6 7 > !co
A x=xxx=x= 8 c c 5 > | 8 c c 5 3 | 8 7 7 6 > | 8 6 6 5 > | 8 7 7 6 5 | R _7 _7 _6 > | R _7 _7 _5 > | 8 5 5 3 > | R 3 3 5 > | R 5 5 4 > | 8 7 6 5 > | 5 4 4 3 > !co | c 6 6 5 > !co
S x=x=x=x= R 3 5 6 | R 2 3 > | R 3 5 > | R 2 3 5 | R 3 5 c | R 5 6 > | R 2 b3 3 | R 3 4 > | R 5 c > | 3 5 6 > !co | 5 6 7 > !co
C x=x=x=x= 8 5 3 > | R 3 5 > | R 5 3 > | 8 c 5 > | R 2 3 > | 8 7 6 > | R _7 _5 > | R 5 4 > | R 2 b3 3 | 5 4 3 > !co | c 5 3 > !co
S x=x=x=x= R 3 5 6 | R 2 3 > | R 3 5 > | R 2 3 5 | R 3 5 c | R 5 6 > | R 2 b3 3 | R 3 4 > | R 5 c > | 3 5 6 > !co | 5 6 7 > !co
A x=xxx=x= 8 c c 5 3 | 8 7 7 6 > | 8 c c 5 > | 8 6 6 5 > | 8 7 7 6 5 | R _7 _7 _6 > | R _7 _7 _5 > | 8 5 5 3 > | R 3 3 5 > | R 5 5 4 > | 8 7 6 5 > | 5 4 4 3 > !co | c 6 6 5 > !co
L x=x=x=x= 8 9 10 > | R 3 5 8 | 8 10 9 > | R 3 5 c | R 5 6 8 | 8 9 10 8 | R 5 8 9 | 8 10 8 > | R 5 8 > | 5 6 7 8 !co | 5 8 9 > !co
T x=xxx=x= R 3 3 5 > | 8 c c 5 > | R 2 3 5 > | R 3 R 5 > | 8 7 6 5 > | R _7 _7 _6 > | R 5 6 7 > | R 5 5 3 > | 8 6 6 5 > | R 3 5 >> > | R 2 3 >> >
H1 x=x= R 3 | R > | R 5 | R 2 | 8 c | R _5 | R _7
H2 x=x= R > | R 3 | R 5 | 8 > | R _5 | R c
H2 x=xx R 5 > | R 5 3 | R 3 > | R 5 4 | R >> >

tune side-door 3-5: chord tones on one and three, a half step beside the next root on four; the answer opens through the seventh
S x=x=x=x= R 3 5 > | R 5 3 > | R 3 5 c | R 3 c > | R 5 >> > | R 3 >> > | R 2 b3 3 | R 2 3 > | R 5 6 > | R 2 3 5 | 3 5 c > !co | 5 c 8 > !co
A x=x=x=x= 8 c 5 > | 8 5 >> > | R _7 >> > | 8 7 6 > | 8 c 5 3 | 8 5 3 > | R _5 R 3 | R 5 4 > | 8 c >> > | R _7 _5 > | R _7 _6 _5 | 5 4 >> > !co | c 5 3 > !co
S x=x=x=x= R 3 5 > | R 5 3 > | R 3 5 c | R 3 c > | R 5 >> > | R 3 >> > | R 2 b3 3 | R 2 3 > | R 5 6 > | R 2 3 5 | 3 5 c > !co | 5 c 8 > !co
C x=x=x=xx R 3 5 3 > | 8 c 5 >> > | R 5 3 >> > | 8 c 5 3 > | R 3 5 >> > | R 5 4 3 > | R _7 _5 >> > | 8 5 3 >> > | R 3 c 5 > | R 5 #4 >> > | 5 3 R >> > !co | c 5 3 >> > !co
S x=x=x=x= R 3 5 > | R 5 3 > | R 3 5 c | R 3 c > | R 5 >> > | R 3 >> > | R 2 b3 3 | R 2 3 > | R 5 6 > | R 2 3 5 | 3 5 c > !co | 5 c 8 > !co
A x=x=x=x= 8 5 >> > | R _7 >> > | 8 c 5 > | 8 7 6 > | 8 c 5 3 | 8 5 3 > | R _5 R 3 | R 5 4 > | 8 c >> > | R _7 _5 > | R _7 _6 _5 | 5 4 >> > !co | c 5 3 > !co
L x=x=x=x= R 3 5 8 | 8 10 9 > | R 3 5 c | 8 10 >> > | R 5 8 9 | 8 9 10 > | R 5 c 8 | R c 8 > | 8 c 8 > | R 5 8 > | 5 c 8 10 !co | 3 5 c 8 !co
T x=x=x=xx R 3 5 >> > | R 5 6 7 > | 8 c 5 >> > | R 3 5 3 > | R 5 4 >> > | R _5 _6 >> > | R _7 _6 _5 > | R 2 3 >> > | 8 5 3 >> > | R 3 c >> > | R 5 >>> >> >
H1 x=x= R > | R 3 | R 5 | 8 c | R _7 | R _5 | 8 >
H2 x=x= R > | R 3 | R 5 | 8 > | R _5 | R c
H2 x=xx R 5 > | R 5 3 | R 3 > | R 5 4 | R >> >

tune bridge-rail 3-5: up the chord to its seventh or sixth in one bar, over the top and down in the next, a swung pair on three to turn the corner
S x=x=x=x= R 3 5 c | R 3 5 6 | R 3 5 > | R 2 3 5 | R 2 3 > | R 5 6 > | R 3 5 8 | R 3 4 5 | 3 5 6 c !co | 5 6 7 8 !co
A x=x=x=x= 8 7 6 5 | 8 c 5 > | 8 6 5 > | 8 c 6 5 | R _7 _6 _5 | 8 5 3 > | R _7 _5 > | 8 7 6 > | R 5 3 > | R 5 4 > | c 6 5 3 !co | c 6 5 > !co
S x=x=x=x= R 3 5 c | R 3 5 6 | R 3 5 > | R 2 3 5 | R 2 3 > | R 5 6 > | R 3 5 8 | R 3 4 5 | 3 5 6 c !co | 5 6 7 8 !co
C x=x=xxx= R 3 5 3 > | 8 c 5 3 > | R 5 4 3 > | 8 7 6 5 > | 8 5 3 5 > | R 3 5 6 > | R _7 _6 _5 > | R 5 3 >> > | 8 6 5 3 > | R 2 3 5 > | 5 4 3 R > !co | c 5 3 5 > !co
S x=x=x=x= R 3 5 c | R 3 5 6 | R 3 5 > | R 2 3 5 | R 2 3 > | R 5 6 > | R 3 5 8 | R 3 4 5 | 3 5 6 c !co | 5 6 7 8 !co
A x=x=x=x= 8 c 5 > | 8 6 5 > | 8 7 6 5 | 8 c 6 5 | R _7 _6 _5 | 8 5 3 > | R _7 _5 > | 8 7 6 > | R 5 3 > | R 5 4 > | c 6 5 3 !co | c 6 5 > !co
L x=x=x=x= R 3 5 8 | 8 9 10 > | R 3 5 c | 8 10 9 > | R 5 8 9 | R 5 6 8 | 8 10 9 8 | 8 10 8 > | R c 8 > | R 5 8 > | 5 6 8 10 !co | 3 5 c 8 !co
T x=x=xxx= R 3 5 3 > | R 5 4 3 > | 8 c 5 3 > | R 5 6 7 > | 8 7 6 5 > | R 2 3 5 > | R _5 _6 _7 > | R 3 5 6 > | 8 5 3 >> > | R 3 5 >> >
H1 x=x= R 3 | R > | R 5 | R 2 | 8 c | R _5 | R c
H2 x=x= R > | R 3 | R 5 | 8 > | R _5 | R c
H2 x=xx R 5 > | R 5 3 | R 3 > | R 5 4 | R >> >
`;
