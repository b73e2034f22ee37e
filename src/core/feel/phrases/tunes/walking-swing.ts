/** Walking swing: tunes of eight bars (see the notation beside the books). */
export const WALKING_SWING_TUNES = `
tune two-flights 1-2: two bars climb, two come down, and a pair on four closes each flight
S x=x=x=x= R R 5 8 | R R 5 > | R 3 5 8 | R 5 R 5 | R 3 5 3 | R _5 R > | R R 3 5 | R 5 8 5
A x=x=x=x= R 5 8 > | R 5 R > | R 3 5 > | 8 8 5 > | R 5 3 > | R _5 R > | 8 5 3 > | R R 5 > | R 3 5 3
S x=x=x=x= 8 8 5 R | 8 8 5 > | 8 5 3 R | 8 5 8 5 | 5 5 3 R !co | R 5 R > | 8 8 5 3 | 8 5 R > | R 5 3 R | R _5 R > | R R _5 >
C x=x=x=xx 8 5 R R > | R 5 R R > | 8 5 3 3 > | R _5 R R > | R 3 5 5 > | 8 5 8 8 > | R 5 3 R >
S x=x=x=x= R R 5 8 | R R 5 > | R 3 5 8 | 5 5 8 5 !co | 3 3 5 8 !co | R 5 R 5 | R 3 5 3 | R _5 R > | R R 3 5
L x=x=x=x= R 5 8 8 | 8 5 8 > | 8 10 8 > | R 5 8 > | R 3 5 8 | 8 8 5 8 | 8 8 10 8 | 8 5 8 5 | 5 8 10 8 !co | 8 8 5 >
A x=x=x=x= 8 8 5 R | 8 5 R > | 8 5 3 > | R 5 R > | R 5 3 > | R _5 R > | 8 5 3 R | 8 8 5 >
T x=x=x=xx R 5 R 5 > | 8 5 R R > | R 3 5 3 > | R _5 R R > | R 5 3 R > | 8 5 8 5 > | 8 5 3 5 >
H1 x=x= R 5 | 8 5 | R 8 | R 3 | R >
H2 x=xx R R > | 8 5 > | R 5 > | R 3 >

tune early-bird 1-2: a swung pair on the one pulls the rest along; plain bars between, turned the other way
S xxx=x=x= R R 5 8 5 | R R 5 8 > | R R 3 5 > | R R 8 5 > | R R 3 5 3 | R R 5 R > | R R 5 3 5 | R R R _5 R | R R _5 R >
A x=x=x=x= 8 5 R > | 8 5 8 > | 8 5 3 > | R _5 R > | R 5 3 > | R 5 R > | R 3 5 3 | 8 8 5 > | 8 3 5 >
S xxx=x=x= R R 5 8 5 | R R 5 8 > | R R 3 5 8 | R R 5 R > | R R 5 3 > | R R _5 R > | 3 3 5 3 R !co | 5 5 8 5 > !co | 8 8 5 R 5
C x===x=x= R 5 > | R R > | R 3 > | 8 5 > | R 5 3 | R _5 > | 8 5 3
S xxx=x=x= R R 5 8 5 | R R 5 8 > | R R 3 5 > | 5 5 3 5 8 !co | 5 5 R 5 > !co | R R 8 5 > | R R 3 5 3 | R R 5 R > | R R R _5 R | R R _5 R >
A x=x=x=x= 8 5 R > | R 5 8 > | 8 5 3 > | R 5 R > | R 3 5 > | R _5 R > | R 5 3 > | 8 8 5 > | R 3 5 8
L xxx=x=x= 8 8 5 8 5 | R R 5 8 8 | 8 8 10 8 > | 8 8 5 8 > | 8 8 10 8 5 | R R 5 8 > | R R 3 5 8 | 8 8 5 R >
T x=x=x=xx R 5 R R > | 8 5 R 5 > | R 3 5 3 > | R _5 R R > | 8 5 3 R > | R R 5 R > | R 5 3 3 >
H1 xxx= R R 5 | 8 8 5 | R R 8 | R R 3 | R R >
H2 x=x= R > | 8 5 | R 5 | 8 > | R 3

tune long-breath 1-2: one long root, two quarters out of it; the answer fills all four
S x===x=x= R 5 8 | R 5 > | R 3 5 | R R 5 | R 5 3 | R _5 > | R 3 > | 8 5 >
A x=x=x=x= 8 5 R > | 8 8 5 > | 8 5 3 > | R 5 R > | R 3 5 > | R _5 R > | R 5 3 > | R R 5 > | R 3 5 3
S x===x=x= R 5 8 | R 5 > | R 3 5 | R 8 5 | R 3 > | R _5 > | 3 5 8 !co | 5 8 5 !co | R 5 3 | R R >
C x=x=x=x= 8 5 R > | R 5 R > | 8 5 3 > | 8 5 5 > | R 3 5 3 | R _5 R > | R 5 3 > | R R _5 > | 8 5 3 R
S x===x=x= R 5 8 | R 5 > | R 3 5 | 5 3 R !co | 5 8 > !co | R R 5 | R 5 3 | R _5 > | R 3 > | 8 5 >
A x=x=x=x= R 5 8 > | 8 5 R > | R 3 5 > | R 5 R > | 8 5 3 > | R _5 R > | R 3 5 8 | R R 5 8 | R 5 3 5
L x===x=x= 8 5 8 | R 8 > | 8 10 8 | 8 8 5 | 8 10 > | R 5 8 | 8 5 3 | 8 5 >
T x=x=x=xx R 5 R R > | 8 5 R 5 > | R 3 5 3 > | R _5 R R > | 8 5 3 3 > | 8 8 5 R > | R 5 3 R >
H1 x=x= R 5 | 8 5 | R 8 | R 3 | R >
H2 x=x= R > | R 5 | 8 > | R 3

tune cellar-stairs 1-2: starts at the top and goes down to the root; the answer skips on two and climbs back
S x=x=x=x= 8 8 5 R | 8 8 5 > | 8 5 3 R | 8 5 5 > | 8 5 3 > | 8 5 R > | R 5 3 > | R R _5 > | R 5 3 R | R _5 R >
A x=xxx=x= R 5 5 8 > | R R R 5 > | R 3 3 5 > | R R 5 8 5 | R 3 3 5 3 | R _5 _5 R > | R 3 5 8 > | R 5 5 R >
S x=x=x=x= 8 8 5 R | 8 8 5 > | 8 5 3 5 | 8 5 8 > | 5 5 3 R !co | 8 5 R > | R 5 3 R | R _5 R > | 8 5 3 > | 8 5 R 5 | R 5 R >
C x=xxx=x= R 5 5 R > | 8 5 5 R > | R 5 5 3 > | R _5 _5 R > | 8 5 5 3 R | R R R 5 > | R 3 3 5 3
S x=x=x=x= 8 8 5 R | 8 8 5 > | 8 5 3 R | 5 3 R > !co | 5 5 8 > !co | 8 5 5 > | 8 5 3 > | 8 5 R > | R 5 3 > | R R _5 > | R _5 R >
A x=xxx=x= R 5 5 8 > | R R R 5 > | R 3 3 5 > | R R 5 8 5 | R 3 3 5 8 | R _5 _5 R > | R 3 5 8 > | 5 8 8 5 > !co
L x=x=x=x= 8 5 8 8 | R 5 8 > | 8 10 8 5 | 8 8 5 8 | 8 10 8 > | 8 5 8 > | R 3 5 8 | 8 8 5 > | 5 8 10 8 !co
T x=xxx=x= R 5 5 R > | 8 5 5 R > | R 5 5 3 > | R _5 _5 R > | R 3 3 5 > | 8 8 8 5 > | 8 5 5 3 >
H1 x=x= 8 5 | R 5 | R _5 | 8 3 | R >
H2 x=x= R > | 8 5 | R 5 | 8 > | R 3

tune ladder-and-chord 3-4: a scale climbs, a broken chord falls; then the chord climbs and the scale falls
S x=x=x=x= R 2 3 5 | R 2 3 > | R 2 3 4 | R 2 3 R | R 4 3 > | R 6 5 4 | 8 7 6 5 | R _7 R 2
A x=x=x=x= 8 5 3 > | 8 5 3 2 | R 5 3 > | R 5 3 2 | 8 c 5 3 | R _5 R > | 8 5 6 > | R 5 3 R
S x=x=x=x= R 3 5 6 | R 3 5 > | R 5 3 5 | 3 5 6 > !co | R 3 5 3 | 5 3 5 8 !co | R 3 6 > | R _5 R 3 | R 5 3 >
C x=x=x=xx 8 7 6 5 > | 8 6 5 >> > | R 3 2 >> > | R _7 _6 _5 > | 8 7 5 >> > | R 4 3 2 > | R 6 5 4 >
S x=x=x=x= R 2 3 5 | R 2 3 > | R 2 3 4 | 5 6 7 8 !co | 3 4 5 6 !co | R 2 3 R | R 4 3 > | R 6 5 4 | 8 7 6 5
A x=x=x=x= 8 5 3 2 | R 5 3 > | 8 5 3 > | R 5 3 2 | 5 3 2 > !co | R _5 R > | 8 5 6 > | R 5 6 >
L x=x=x=x= 8 9 10 > | 8 9 10 9 | R 5 8 9 | 8 10 9 > | R 3 5 8 | 5 6 8 9 !co | 8 9 8 > | R 5 8 >
T x=x=x=xx R 3 5 >> > | 8 7 5 >> > | R 5 3 >> > | R 2 3 >> > | R _6 _5 >> > | 8 6 5 >> > | R 3 2 >> >
H1 x=x= R 2 | R 3 | 8 7 | R 5 | R >
H2 x=xx R >> > | R 3 > | 8 7 > | R 5 >

tune down-the-hill 3-4: two bars run downhill by step, two climb up in thirds; the answers stumble on two
S x=x=x=x= 8 7 6 5 | 8 7 6 > | 8 7 5 > | R _7 _6 > | 8 6 5 > | R 3 2 > | 8 7 5 3 | R 6 5 3 | R 4 3 2
A x=xxx=x= 8 6 6 5 > | R 5 4 3 > | 8 5 4 3 2 | R _7 _6 _5 > | 8 7 6 5 4 | R 3 2 R > | R 6 5 4 > | 8 5 6 5 >
S x=x=x=x= R 3 5 6 | R 3 5 > | R 3 5 3 | 3 4 5 > !co | R 5 6 > | R 2 3 5 | R 4 3 > | 5 6 8 > !co | R 2 3 >
C x=x=x=x= R 3 5 > | R 2 3 > | 8 5 6 > | R 5 3 > | R 3 2 > | R _6 _5 > | R 2 3 4 | R 3 5 6
S x=x=x=x= 8 7 6 5 | 8 7 6 > | 8 7 5 > | 5 4 3 2 !co | 5 4 3 > !co | R _7 _6 > | 8 6 5 > | R 3 2 > | 8 7 5 3 | R 6 5 3
A x=xxx=x= R 2 3 5 > | R 5 4 3 > | 8 6 6 5 > | R 3 4 5 > | 5 6 7 8 > !co | R _7 _6 _5 > | 8 7 6 5 > | R 3 4 5 6
L x=x=x=x= R 3 5 8 | 8 10 9 > | 8 9 10 > | R 5 8 9 | 8 9 8 > | 3 5 8 9 !co | 8 10 8 > | R 5 8 >
T x=x=x=xx 8 7 6 5 > | R 5 3 >> > | 8 6 5 >> > | R 3 2 >> > | R _6 _5 >> > | R 2 3 >> > | R 3 5 >> >
H1 x=x= 8 7 | R 3 | R _7 | R 5 | R >
H2 x=x= R > | 8 > | R 3 | R 2 | 8 7

tune winding-lane 3-4: winds about the root and leaves with a pair on four; wide chords stand between
S x=x=x=xx R 2 R _7 > | R _7 R 2 > | R 2 3 2 > | R 2 3 >> > | R 3 2 >> > | R _7 R >> > | R 4 3 2 > | 8 7 8 6 5
A x=x=x=x= R 3 5 > | R 5 3 > | 8 5 3 > | R 3 5 6 | R 5 6 > | 8 5 6 5 | R 3 5 3 | R _5 R >
S x=x=x=xx R 2 3 2 > | R 2 3 5 > | R _7 R 2 > | R 2 3 >> > | 3 4 5 4 3 !co | R 4 3 >> > | 5 6 5 >> > !co | R 3 2 R > | 8 7 6 5 >
C x=x=x=x= 8 5 3 > | 8 7 5 > | R 5 3 2 | R _6 _5 > | 8 6 5 3 | R 3 2 > | R 6 5 > | R _7 _6 _5
S x=x=x=xx R 2 R _7 > | R _7 R 2 > | R 2 3 2 > | 5 6 5 4 3 !co | 3 2 3 4 > !co | R 2 3 >> > | R 3 2 >> > | R _7 R >> >
A x=x=x=x= 8 5 3 > | R 3 5 6 | R 5 3 > | R 3 5 > | 8 5 6 5 | 5 3 5 > !co | R 5 6 > | R _5 R >
L x=x=x=xx 8 9 10 9 > | 8 9 8 7 > | 8 9 10 >> > | R 5 8 >> > | 8 10 9 8 > | 5 6 8 9 > !co | R 3 5 8 > | 8 9 8 >> >
T x=x=x=xx R 2 3 >> > | R 3 5 >> > | R 5 3 >> > | 8 7 5 >> > | R _7 _6 _5 > | 8 6 5 >> > | R 3 2 R >
H1 x=x= R 2 | R _7 | R 3 | 8 5 | R >
H2 x=xx R >> > | R 2 > | R 3 > | 8 7 >

tune crooked-street 4-5: wide chords first, then a scale round the corner; chromatic steps into every second bar
S x=x=x=x= R 3 5 c | R 3 5 > | R 5 3 > | R 3 6 5 | R 5 c > | 8 5 3 5 | R 7 6 5 | R 3 5 3
A x=x=x=x= 8 7 6 > | R 2 b3 3 | R 3 4 #4 | 8 7 5 > | R 2 3 > | R _7 _6 > | 8 6 5 4 | R 4 3 > | R >>> >> >
S x=x=x=x= R 3 5 c | R 3 5 > | R 5 6 8 | R 5 c > | 3 5 7 8 !co | 5 3 5 > !co | R 6 5 3 | 8 5 3 5 | R 5 3 >
C x=x===xx 8 7 >> > | R 3 >> > | R 5 >> > | R _7 >> > | 8 5 4 3 | R 2 3 > | R 6 5 > | R 3 2 >
S x=x=x=x= R 3 5 c | R 3 5 > | R 5 3 > | 5 3 5 8 !co | 3 5 c > !co | R 3 6 5 | R 5 c > | 8 5 3 5 | R 7 6 5
A x=x=x=x= 8 7 6 5 | R 2 b3 3 | 8 7 6 > | R 2 3 > | R 3 4 #4 | R _7 _6 > | 5 4 3 2 !co | R 4 3 > | R >>> >> >
L x=x=x=x= R 5 8 10 | 8 10 9 > | R 3 5 8 | 8 9 10 > | 8 10 9 8 | 5 8 10 9 !co | R 5 8 > | 8 9 8 >
T x=x=x=xx R 5 >>> >> > | 8 7 6 >> > | R 3 5 >> > | R 5 3 >> > | R _6 _5 >> > | R 2 3 >> > | 8 5 3 >> > | R 3 2 >> >
H1 x=x= R 3 | R 5 | 8 7 | R 2 | R >
H2 x=xx R >> > | R 3 > | 8 7 > | R 5 >

tune hesitation 4-5: every second bar holds its second note over three and slips in late; walked bars carry it on
S x=x==xx= R 3 5 > | R 5 6 > | R 3 4 5 | R 5 3 > | R 3 2 > | R 5 4 > | 8 5 4 > | R _5 _6 > | 8 5 6 5
A x=x=x=x= 8 7 6 > | 8 7 5 3 | R 5 3 2 | R 3 4 #4 | 8 6 5 > | R _7 _6 > | R 4 3 > | 8 5 3 2 | R >>> >> >
S x=x==xx= R 3 5 > | R 5 6 8 | R 3 4 5 | R 5 3 > | 3 5 4 > !co | R 3 2 > | 5 8 6 > !co | 8 5 4 > | R _5 _6 >
C x=x=x=xx 8 7 5 >> > | R 3 2 R > | 8 6 5 >> > | R _7 _6 _5 > | R 5 3 >> > | R 4 3 2 > | R 3 5 >> >
S x=x==xx= R 3 5 > | R 5 6 > | R 3 4 5 | 5 3 2 > !co | 3 5 6 > !co | R 5 3 > | R 3 2 > | R 5 4 > | 8 5 4 >
A x=x=x=x= R 2 b3 3 | 8 7 6 > | R 2 3 5 | R 3 4 #4 | 8 6 5 3 | R 5 6 > | R _7 R 2 | R 4 3 > | 5 6 7 > !co
L x=x==xx= 8 10 9 8 | 8 10 9 > | R 5 8 > | 8 10 8 > | R 5 8 9 | 5 8 9 > !co | R 3 8 >
T x=x=x=xx R 3 5 >> > | 8 7 6 >> > | R 5 3 >> > | R 2 3 >> > | R _6 _5 >> > | R 5 >>> >> > | R 3 2 >> > | 8 5 3 >> >
H1 x=x= R 3 | R 2 | 8 7 | R 5 | R >
H2 x=xx R >> > | R 3 > | 8 7 > | R 5 >

tune quick-turn 4-5: a skip on two inside a scale, quarters in thirds against it; the line turns round every two bars
S x=xxx=x= R 2 b3 3 5 | R 2 b3 3 > | R 2 3 5 > | R 3 4 5 6 | R 5 6 5 > | R 3 2 3 > | 8 7 6 5 > | R _7 R 2 > | R 3 4 #4 5
A x=x=x=x= R 3 5 > | R 5 3 > | R 3 5 6 | 8 5 6 > | R 6 5 3 | R 3 5 c | R 5 c > | 8 3 5 > | R _5 R >
S x=xxx=x= 8 7 6 5 > | 8 9 8 7 > | 8 7 6 5 3 | R 5 4 3 > | R _7 _6 _5 > | 5 6 5 4 3 !co | R 3 2 R > | 8 6 5 4 > | R 5 4 3 2
C x=x=x=x= 8 5 3 > | R 5 3 2 | 8 6 5 > | 8 5 3 2 | R _5 R > | R _6 _5 > | 8 c 5 > | R 3 2 >
S x=xxx=x= R 2 b3 3 5 | R 2 b3 3 > | R 2 3 5 > | 5 6 7 8 > !co | 3 4 5 6 > !co | R 3 4 5 6 | R 5 6 5 > | R 3 2 3 > | 8 7 6 5 > | R 3 4 #4 5
L x=x=x=x= R 3 5 8 | 8 10 9 > | R 5 8 10 | 8 9 10 > | R 5 8 9 | 5 8 9 10 !co | 8 10 8 > | 8 9 8 >
A x=xxx=x= 8 7 6 5 > | 8 9 8 7 > | R 5 4 3 > | 8 7 6 5 3 | R 3 2 R > | R _7 _6 _5 > | 8 6 5 4 > | R 5 4 3 2
T x=xxx=xx R 3 4 5 >> > | 8 7 6 5 >> > | R 5 4 3 >> > | R 2 b3 3 >> > | R _7 _6 _5 >> > | R 3 5 >>> >> > | R 3 2 R >> > | R 2 3 5 >> >
H1 x=xx R 2 3 | R 3 5 | 8 7 6 | R b3 3 | R 5 3
H2 x=xx R >> > | R 3 > | 8 7 > | R 5 >
`;
