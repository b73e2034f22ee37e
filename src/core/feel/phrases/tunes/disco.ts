/** Disco: tunes of eight bars (see the notation beside the books). */
export const DISCO_TUNES = `
tune paper-lantern 1-2: two small gallops, pair and floor, pair and floor; the answer opens into octaves
S xxx=xxx= R 8 R 5 8 5 | R 8 R 5 8 > | R 8 5 3 5 > | R 8 R R 8 > | R 3 5 R 3 > | R R 5 R R > | R 8 R 3 5 3 | R 5 R R 5 > | R _5 R R _5 >
A xxxxx=x= R 8 R 8 5 > | 8 8 5 5 R > | R 8 R 8 3 > | R 5 R 5 R > | R 5 3 5 R > | R _5 R _5 R > | R 5 R 5 3 > | R 8 5 8 R >
S xxx=xxx= R 8 R 5 8 5 | R 8 R 5 8 > | R 8 5 3 5 > | R R 5 R R > | R 3 5 R 3 > | R 5 R 5 5 > | 3 5 3 R 5 > !co | R _5 R R R > | 5 8 5 R 8 > !co
C xxx=x=x= R 8 R 5 > | R 5 R R > | R 5 3 R > | R _5 R R > | R 8 R 3 > | 8 8 5 R > | R 3 5 3 R
S xxx=xxx= R 8 R 5 8 5 | R 8 R 5 8 > | R 8 5 3 5 > | 5 3 5 R 3 > !co | 5 8 5 R 8 5 !co | R 8 R R 8 > | R 3 5 R 3 > | R R 5 R R > | R 5 R R 5 > | R _5 R R _5 >
L xxx=xxx= 8 8 5 8 8 5 | R 8 8 5 8 > | 8 8 10 8 8 > | 8 5 8 8 5 > | R 3 5 8 8 5 | R 5 R 5 8 > | R 3 5 3 5 > | R 5 8 8 5 >
A xxxxx=x= R 8 R 8 5 > | 8 8 5 5 R > | R 8 R 8 3 > | R 5 R 5 R > | R 5 3 5 R > | R _5 R _5 R > | R 8 5 8 R >
T xxx=xxx= R 8 R 5 R > | R R 5 5 R > | R 3 5 5 3 > | R _5 R R R > | R 5 3 R 3 > | 8 8 5 5 R > | R 8 5 3 R >
H1 xxx= R 8 R | R R 5 | R 8 5 | R 3 5
H2 xxx= R R > | R 5 > | R 8 > | R 3 >

tune revolving-door 1-2: floor, then a low-high pair on the snare, twice round; the answer strides in quarters
S x=xxx=xx R R 8 5 R 8 | R R 8 5 R > | R R 8 3 5 > | R R 8 R R > | R R 3 5 5 3 | R R 5 R R > | R R 5 3 R 3 | R R _5 R R > | R R 8 5 5 >
A x=x=x=xx 8 8 5 R > | 8 5 R R > | 8 5 3 R > | R R 5 R > | R 5 3 3 > | R R _5 R > | R 3 5 3 > | R 8 5 5 >
S x=xxx=xx R R 8 5 R 8 | R R 8 5 R > | R R 8 3 5 > | R R 8 R 8 > | R R 3 5 5 > | R R 5 R R > | 3 3 5 R R 3 !co | R R 5 R 5 > | R R _5 R R > | 5 5 8 R 5 8 !co
C x=xxx=x= R R 8 5 > | R R 5 R > | R R 8 3 > | R R _5 R > | R R 3 5 3 | 8 8 5 R > | R 5 3 R >
S x=xxx=xx R R 8 5 R 8 | R R 8 5 R > | R R 8 3 5 > | 5 5 3 R R > !co | 5 5 8 5 R > !co | R R 8 R R > | R R 3 5 5 3 | R R 5 R R > | R R _5 R R >
A x=x=x=xx R 5 8 8 > | 8 8 5 R > | R 3 5 5 > | R R 5 R > | 8 5 3 R > | R R _5 R > | R 5 3 3 > | 8 5 R 5 >
L x=xxx=xx 8 8 5 8 8 5 | R R 8 8 5 > | 8 8 10 8 8 > | 8 5 8 8 8 > | R 3 5 8 8 5 | R R 5 8 8 > | R R 3 5 8 > | R R 5 8 5 >
T x=xxx=xx R R 8 5 R > | R R 5 5 R > | R R 5 3 R > | R R _5 R R > | R R 3 5 3 > | 8 8 5 R R > | R R 8 5 3 >
H1 x=xx R R 8 | R R 5 | R 5 8 | R R 3
H2 x=xx R R > | R 5 > | 8 5 > | R 3 >

tune late-runner 1-2: two steps on the floor and four quick feet after them; the answer puts the quick ones first
S x=x=xxxx R R 5 8 5 8 | R R 5 8 5 > | R R 3 5 3 > | R R R 8 R > | R 5 3 5 R 3 | R 5 R 5 R > | R R R 8 5 3 | R R 5 5 8 > | R R _5 _5 R >
A xxx=x=xx 8 8 5 R R > | R 8 R 5 R > | R 5 3 R R > | R 5 R 5 5 > | 8 8 5 3 R > | R _5 R R R > | R 3 5 R 3 > | R 8 5 8 5 >
S x=x=xxxx R R 5 8 5 8 | R R 5 8 5 > | R R 3 5 3 > | R R 5 8 R > | R 5 3 5 8 > | R 5 R 5 R > | 3 3 5 5 8 5 !co | R R R 5 8 > | R R _5 _5 R > | 5 5 8 8 5 > !co
C x=x=x=xx R R 5 R > | R 5 R R > | R R 5 3 > | R R _5 R > | R 5 3 R > | 8 8 5 R > | R 3 5 3 >
S x=x=xxxx R R 5 8 5 8 | R R 5 8 5 > | R R 3 5 3 > | 5 5 3 5 3 > !co | 8 8 5 8 5 > !co | R R R 8 R > | R 5 3 5 R 3 | R 5 R 5 R > | R R 5 5 8 > | R R _5 _5 R >
L x=x=xxxx 8 8 5 8 5 8 | R 5 8 8 5 > | 8 8 8 10 8 > | 8 8 8 5 8 > | 8 10 8 5 8 > | R R 5 8 8 > | R 3 5 8 5 > | R 8 5 8 5 >
A xxx=x=xx 8 8 5 R R > | R 8 R 5 R > | R 5 3 R R > | R R 5 R 5 > | R 3 5 5 3 > | R _5 R R R > | 8 8 5 3 R > | 8 5 8 R 5 >
T x=x=xxxx R R 5 5 R > | R 5 R R R > | R R 5 3 R > | R R _5 _5 R > | R 5 3 5 3 > | 8 8 5 5 R > | R 3 5 5 3 >
H1 x=x= R 5 | R R | 8 5 | R 8 | R 3
H2 xxxx R 5 R > | R R R > | R 8 R > | R 3 R >

tune mirror-ball 2-2: octaves turning all the way round, and the last pair looks at another note of the chord
S xxxxxxxx R 8 R 8 5 8 3 5 | R 8 R 8 5 8 3 > | R 8 R 8 R 8 5 > | R 8 R 8 R 8 3 > | R 5 R 5 R 5 3 > | R _5 R _5 R _5 R > | R 3 5 3 R 3 5 3 | R 8 R 8 5 3 >> > | R 5 R 5 3 5 >> >
A xxxxxxx= 8 8 5 5 3 3 > | R 8 R 8 5 3 > | R 5 R 5 3 R > | R R 5 5 3 3 > | R _5 R _5 R R > | R 8 5 8 3 5 > | R R 3 3 5 5 >
S xxxxxxxx R 8 R 8 5 8 3 5 | R 8 R 8 5 8 3 > | R 8 R 8 5 8 R > | R 8 R 8 R 8 3 > | R 5 R 5 R 5 3 > | 5 8 5 8 3 5 R > !co | R _5 R _5 R 3 5 > | R 3 5 3 R 3 5 > | 3 5 3 5 R 5 3 > !co | R 5 R 5 3 5 >> >
C xxxxx=x= R 8 R 8 5 > | R 5 R 5 3 > | R 8 R 8 3 > | R R 5 5 3 > | R _5 R _5 R > | 8 8 5 5 3 >
S xxxxxxxx R 8 R 8 5 8 3 5 | R 8 R 8 5 8 3 > | R 8 R 8 R 8 5 > | 5 8 5 8 3 5 3 > !co | 3 5 3 5 R 3 5 > !co | R 8 R 8 R 8 3 > | R 5 R 5 R 5 3 > | R _5 R _5 R _5 R > | R 3 5 3 R 3 5 3 | R 5 R 5 3 5 >> >
A xxxxxxx= R 8 5 8 3 5 > | 8 8 5 5 3 3 > | R R 3 3 5 5 > | R 5 R 5 3 R > | R R 5 5 3 3 > | R _5 R _5 R R > | R 8 R 8 5 3 >
L xxxxxxxx 8 10 8 10 8 10 8 5 | R 8 R 8 10 8 5 > | 8 8 10 10 8 8 5 > | R 8 R 8 5 8 5 8 | R 3 5 8 R 3 5 > | R 5 8 5 R 5 8 > | R 3 5 3 5 3 >> >
T xxxxxxx= R 8 R 8 5 3 > | R 5 R 5 3 R > | R R 5 5 3 3 > | R 8 5 8 3 R > | R _5 R _5 R R > | R 5 3 5 R 3 >
H1 xxxx R 8 R 8 | R 5 R 5 | R 8 5 8 | R 3 5 3
H2 xxx= R 8 > | R 5 > | R 3 > | 8 5 >

tune glass-lift 3-4: octave pairs whose low notes ride up the scale; the answer rides the pairs down again
S xxxxxxxx R 8 R 8 2 9 3 10 | R 8 R 8 2 9 3 > | R 8 R 8 R 8 >> > | R 5 R 5 2 4 3 5 | R 8 R 8 5 6 >> > | R 5 R 5 R 5 >> > | R 8 R 8 2 3 5 > | R R 2 2 3 3 5 > | R 8 R 8 _7 7 >> >
A xxxxxxxx R 8 _7 7 _6 6 5 > | 8 8 7 7 6 6 5 > | 8 8 7 7 5 5 >> > | R R _7 _7 _6 _6 _5 > | R 8 R 8 7 6 5 > | R 5 R 5 4 3 2 > | R 5 4 5 3 5 >> > | R R 5 5 4 4 3 >
S xxxxxxxx R 8 R 8 2 9 3 10 | R 8 R 8 2 9 3 > | R 8 R 8 R 8 >> > | R 5 R 5 2 4 3 5 | R 8 R 8 3 5 6 > | 3 10 3 10 4 5 6 > !co | R 5 R 5 R 5 >> > | 5 8 5 8 6 8 7 8 !co | R R 3 3 4 4 5 > | R 8 R 8 2 3 5 >
C xxxxx=xx R 8 R 8 5 >> > | R 5 R 5 3 >> > | R 8 R 8 3 >> > | 8 8 7 7 5 >> > | R R _5 _5 R >> > | R 8 R 8 5 3 > | R R 5 5 3 2 >
S xxxxxxxx R 8 R 8 2 9 3 10 | R 8 R 8 2 9 3 > | R 8 R 8 R 8 >> > | 5 8 5 8 4 8 3 > !co | 3 10 3 10 2 3 5 > !co | R 5 R 5 2 4 3 5 | R 8 R 8 5 6 >> > | R 5 R 5 R 5 >> > | R R 2 2 3 3 5 >
A xxxxxxxx R 8 _7 7 _6 6 5 > | 8 8 7 7 6 6 5 > | R 8 R 8 7 6 5 > | 8 8 9 8 7 6 5 > | R R _7 _7 _6 _6 _5 > | R 5 R 5 4 3 2 > | R R 5 5 4 4 3 >
L xxxxxxxx 8 8 9 9 10 10 9 8 | 8 8 9 9 10 9 >> > | R 8 R 8 9 10 9 > | 8 9 10 9 8 6 >> > | R 8 R 8 3 10 9 > | R 5 8 5 9 8 >> > | R 5 R 5 8 8 9 >
T xxxxx=xx R 8 R 8 5 >> > | R 8 R 8 3 >> > | R R 5 5 3 >> > | 8 8 7 7 5 >> > | R R _5 _5 _6 >> > | R 5 R 5 R >> > | R R 3 3 5 >> >
H1 xxxx R 8 R 8 | R 8 5 8 | R 5 R 5 | R R 2 3 | 8 8 7 6
H2 xxxx R 8 >> > | R 5 >> > | R R 3 > | 8 7 >> >

tune snare-window 3-4: the pair on one leaves the snare a window, then six eighths chase through; the answer moves the window to three
S xx-xxxxx R 8 8 5 6 5 > | R 8 8 R 8 >> > | R R 5 3 4 5 > | R R 5 R 5 >> > | R R _5 _6 _5 R > | R 8 8 R 2 3 5 | R R 3 5 6 >> > | 8 8 7 6 5 4 3
A xxxx-xxx R 8 R 8 5 3 > | 8 8 7 5 3 2 > | 8 8 6 5 4 3 > | R R 5 5 4 3 > | R 8 7 5 6 5 > | R 5 R 5 3 2 > | R R _7 _6 _5 _6 >
S xx-xxxxx R 8 8 5 6 5 > | R 8 8 5 6 7 8 | R R 5 3 4 5 > | R R 5 R 5 >> > | 3 3 5 3 4 5 > !co | R R _5 _6 _5 R > | 5 5 8 5 6 7 > !co | R 8 8 R 2 3 5 | R R 3 5 6 >> >
C xx-xxxx= R 8 8 5 3 > | R R 5 R 3 > | R 8 8 R 5 > | 8 8 7 6 5 > | R R _5 R R > | R R 3 4 5 >
S xx-xxxxx R 8 8 5 6 5 > | R 8 8 R 8 >> > | R R 5 3 4 5 > | 5 5 8 7 6 5 > !co | 3 3 5 6 5 4 3 !co | R R 5 R 5 >> > | R R _5 _6 _5 R > | R 8 8 R 2 3 5
A xxxx-xxx R 8 R 8 5 3 > | R 8 R 8 5 6 > | R R 5 5 3 4 5 | R 5 R 5 3 2 > | R R 2 3 5 6 > | 8 8 6 5 4 3 > | R R _7 _6 _5 _6 >
L xx-xxxxx 8 8 8 9 10 9 > | 8 8 10 9 8 >> > | R 8 8 9 10 9 8 | R R 5 8 9 8 > | R 8 10 9 8 >> > | R R 5 6 8 9 > | 8 8 9 8 6 >> >
T xxxx-xxx R 8 R 8 5 >> > | R R 5 5 3 >> > | R 8 R 8 3 >> > | 8 8 7 6 5 >> > | R R _5 _5 R >> > | R 5 R 5 6 >> > | R R 2 3 5 >> >
H1 xxxx R 8 R 8 | R 8 5 8 | R R 3 5 | R 5 3 5
H2 xxxx R 8 >> > | R 5 >> > | R R 3 > | 8 7 >> >

tune neon-stairs 3-4: no octaves but doubled eighths that take the scale step by step, and a long lead on four
S xxxxxxx= R R 2 2 3 3 5 | R R 2 2 3 3 > | R R 3 3 5 5 > | R R 3 4 5 5 > | R R _7 _7 _6 _6 _5 | 8 8 7 7 5 5 > | R R 5 5 6 6 > | R R 5 5 3 3 >
A xxxx-xx= 8 8 6 6 5 > | 8 8 7 7 5 > | R R 5 5 3 > | R R 4 4 3 > | R R _6 _6 _5 > | R R 5 4 3 > | R R 3 3 2 >
S xxxxxxx= R R 2 2 3 3 5 | R R 2 2 3 3 > | R R 3 3 5 5 > | R R 3 4 5 5 > | 3 3 4 4 5 5 > !co | R R 5 5 6 6 8 | 5 5 6 6 8 8 > !co | R R 5 5 3 3 > | 8 8 7 7 5 5 >
C xxxx-xx= R R 5 5 3 > | R R 3 3 5 > | 8 8 7 7 5 > | R R 4 4 3 > | R R _5 _5 R > | R R 2 2 3 5
S xxxxxxx= R R 2 2 3 3 5 | R R 2 2 3 3 > | R R 3 3 5 5 > | 5 5 4 4 3 3 > !co | 3 3 4 4 5 5 6 !co | R R 3 4 5 5 > | R R _7 _7 _6 _6 _5 | R R 5 5 6 6 >
L xxxxxxx= 8 8 9 9 10 10 > | 8 8 9 9 10 9 8 | R R 5 5 8 8 > | R R 5 6 8 8 > | 8 8 9 9 8 8 > | R R 3 5 8 8 9 | 5 5 8 8 9 9 > !co
A xxxx-xx= 8 8 6 6 5 > | 8 8 7 7 5 > | R R 5 5 3 > | R R 5 4 3 > | R R _6 _6 _5 > | R R 4 4 3 > | R R 3 3 2 >
T xxxxxxxx R R 2 2 3 3 >> > | R R 5 5 3 3 >> > | R R 3 3 5 5 >> > | 8 8 7 7 5 5 >> > | R R _6 _6 _5 _5 >> > | R R 5 5 6 6 >> > | R R 4 4 3 3 >> >
H1 xxxx R R 2 3 | R R 3 3 | R R 5 5 | 8 8 7 7
H2 xxx= R R > | R 3 > | R 5 > | 8 7 >

tune spark-tail 4-5: level octaves, and in the last eighth of the bar two sixteenths strike a spark into the change
S x=x=x=x=x=x=x=xx R 8 R 8 R 8 5 >> > | R 8 R 8 5 8 3 4 5 | R 8 R 8 2 9 3 >> > | R 5 R 5 R 5 3 >> > | R 8 R 8 _7 7 _6 >> > | R R 5 5 6 5 3 >> > | R 8 R 8 3 10 5 6 8 | R 5 R 5 2 3 5 >> >
A x=x=x=x=x=x=x=x= R 8 _7 7 _6 6 _5 > | 8 8 7 7 6 5 4 3 | R 8 R 8 7 6 5 > | R R _7 _7 _6 _6 _5 > | R 5 R 5 4 3 2 > | 8 8 6 6 5 4 3 > | R 8 5 8 4 8 3 >
S x=x=x=x=x=x=x=xx R 8 R 8 R 8 5 >> > | R 8 R 8 5 8 3 4 5 | R 8 R 8 5 6 8 >> > | R 5 R 5 R 5 3 >> > | 3 10 3 10 4 5 6 >> > !co | R 8 R 8 2 9 3 >> > | 5 8 5 8 6 8 7 >> > !co | R 5 R 5 2 3 5 >> >
C x=x=x=x=x===x=xx R 8 R 8 5 3 >> > | R 8 R 8 3 5 >> > | R 5 R 5 3 R >> > | 8 8 7 7 5 6 >> > | R R _5 _5 R _6 >> > | R 8 R 8 R _7 >> > | R R 3 4 5 3 >> >
S x=x=x=x=x=x=x=xx R 8 R 8 R 8 5 >> > | R 8 R 8 5 8 3 4 5 | R 8 R 8 2 9 3 >> > | 5 8 5 8 4 8 3 >> > !co | 3 10 3 10 2 9 5 >> > !co | R 5 R 5 R 5 3 >> > | R 8 R 8 _7 7 _6 >> > | R R 5 5 6 5 3 >> >
L x=x=x=x=x=x=x=xx R 8 R 8 9 10 9 >> > | 8 8 9 9 10 10 9 8 > | R 8 R 8 3 10 9 >> > | 8 8 10 10 9 9 8 >> > | R 5 8 5 9 8 6 >> > | R 8 R 8 10 9 8 7 8 | R 5 R 5 8 9 8 >> >
A x=x=x=x=x=x=x=x= R 8 _7 7 _6 6 _5 > | 8 8 7 7 6 5 4 3 | R 8 R 8 7 6 5 > | R R _7 _7 _6 _6 _5 > | R 8 R 8 5 6 7 > | R R 5 5 4 3 2 > | R 8 5 8 4 8 3 >
T x=x=x=x=x=x=x=xx R 8 R 8 5 6 >>> >> > | R 8 R 8 5 4 3 >> > | R R 5 5 4 3 2 >> > | 8 8 7 7 6 6 5 >> > | R 8 R 8 2 3 5 >> > | R R _7 _7 _6 _6 _5 >> > | R 5 R 5 3 4 5 >> >
H1 x=x=x=x= R 8 R 8 | R 8 2 9 | R 8 _7 7 | R 5 3 5
H2 x=x=x=xx R 8 5 >> > | R 8 3 >> > | R 5 3 >> > | 8 7 5 >> >

tune short-gallop 4-5: a gallop on one and three, even octaves on two and four; the answer keeps its gallop for the last beat
S xxx=x=x=xxx=x=x= R R 8 R 8 5 5 8 5 > | R R 8 R 8 R R 8 >> > | R R 5 R 5 3 3 5 4 > | R R 8 R 8 3 3 8 4 5 | R R 5 6 5 R R 5 >> > | R R 8 R 8 _7 _7 7 _6 > | 8 8 5 8 5 3 3 5 3 > | R R 8 2 9 3 3 10 5 >
A x=x=x=x=x=x=xxx= R 8 R 8 5 6 5 4 > | R 8 _7 7 _6 6 5 4 > | 8 8 7 7 6 5 4 3 > | R 5 R 5 3 4 5 3 > | R R _7 _7 _6 _6 _5 _6 > | R R 5 5 4 3 2 3 > | R 8 R 8 7 5 3 2 > | R 8 R 8 3 4 >>> >> >
S xxx=x=x=xxx=x=x= R R 8 R 8 5 5 8 5 > | R R 8 R 8 5 5 8 6 8 | R R 8 2 9 3 3 10 5 > | R R 5 R 5 3 3 5 4 > | 3 3 5 4 5 6 6 8 5 > !co | R R 8 R 8 R R 8 >> > | 5 5 8 6 8 7 7 8 5 > !co | R R 5 6 5 R R 5 >> >
C xxx=x=x=x===x=x= R R 8 R 8 5 5 > | R R 8 R 8 3 >> > | R R 5 R 5 3 >> > | 8 8 5 7 5 3 2 > | R R _5 R _5 R _6 > | R R 8 R 8 _7 _6 > | R R 5 6 5 3 2 >
S xxx=x=x=xxx=x=x= R R 8 R 8 5 5 8 5 > | R R 8 R 8 R R 8 >> > | R R 5 R 5 3 3 5 4 > | 5 5 8 5 8 4 4 8 3 > !co | 3 3 5 3 5 2 2 5 3 > !co | R R 8 R 8 3 3 8 4 5 | R R 5 6 5 R R 5 >> > | R R 8 R 8 _7 _7 7 _6 >
A x=x=x=x=x=x=xxx= R 8 R 8 5 6 5 4 > | R 8 _7 7 _6 6 5 4 > | R R 2 2 3 3 5 6 > | R 5 R 5 3 4 5 6 > | 8 8 7 7 6 5 4 3 > | R 8 R 8 3 5 6 7 > | R 8 R 8 3 4 >>> >> >
L xxx=x=x=xxx=x=x= R R 8 R 8 8 8 10 9 > | 8 8 9 8 9 10 10 9 8 > | R R 8 9 8 10 10 9 >> > | R R 5 R 5 8 8 9 8 > | 8 8 10 9 10 8 8 9 >> > | R R 8 R 8 3 3 10 9 > | R R 5 6 5 8 8 10 9 8
T x=x=x=x=x=x=xxx= R 8 R 8 5 6 >>> >> > | R 8 R 8 5 4 3 >> > | R R 5 5 3 4 5 >> > | 8 8 7 7 6 5 4 >> > | R R _7 _7 _6 _5 _6 >> > | R 5 R 5 4 3 2 >> > | R 8 R 8 3 4 5 >> >
H1 xxx=x=x= R R 8 R 8 | R R 8 5 8 | R R 5 R 5 | R R 5 3 5
H2 x=x=xxx= R 8 >>> >> > | R 5 >>> >> > | R 8 5 >> > | R 3 5 >> >

tune trapdoor 4-5: octaves fall through the floor on two and come up late; the answer opens the trap on three instead; sixteenths run out of each bar
S x=x=--x=x=x=x=xx R 8 8 R 8 5 >> > | R 8 8 5 6 5 >> > | R 8 7 5 6 3 4 5 | R 5 5 R 5 3 >> > | R R 3 5 6 5 >> > | R 8 8 _7 7 _6 >> > | R R _5 _6 R R >> > | 8 7 6 5 6 3 >> >
A x=x=x=x=--x=x=xx R 8 R 8 6 5 >> > | R 8 _7 7 6 5 >> > | 8 8 7 7 5 3 >> > | R R 5 5 4 3 >> > | R 5 R 5 4 3 2 > | R R _7 _7 _6 _5 >> > | R 8 R 8 4 3 >> >
S x=x=--x=x=x=x=xx R 8 8 R 8 5 >> > | R 8 8 5 8 6 7 8 | R 8 8 2 9 3 >> > | R 5 5 R 5 3 >> > | 3 5 5 6 8 6 >> > !co | R R 3 5 6 5 >> > | 5 8 8 6 8 7 >> > !co | R R 2 3 5 6 >> >
C x=x=--x=x===x=xx R 8 8 5 3 >> > | R 5 5 R 3 >> > | R 8 8 R 6 >> > | R R 3 5 3 >> > | 8 7 6 5 6 >> > | R R _5 R _6 >> > | R 8 8 3 5 >> >
S x=x=--x=x=x=x=xx R 8 8 R 8 5 >> > | R 8 8 5 6 5 >> > | R 8 7 5 6 3 4 5 | 5 8 8 4 8 3 >> > !co | 3 5 5 2 5 3 >> > !co | R 5 5 R 5 3 >> > | R R 3 5 6 5 >> > | R 8 8 _7 7 _6 >> >
A x=x=x=x=--x=x=xx R 8 R 8 5 6 >> > | R 8 _7 7 6 5 >> > | R R 2 2 3 5 >> > | R R 3 3 4 5 >> > | 8 8 7 7 5 6 >> > | R 5 R 5 4 3 >> > | R R _7 _7 _6 _5 >> >
L x=x=--x=x=x=x=xx R 8 8 9 10 9 >> > | 8 9 10 9 8 6 >> > | R 8 9 10 8 9 >> > | R 5 8 9 10 9 8 > | 8 10 9 8 9 8 >> > | R 8 10 9 8 7 >> > | R 5 8 9 8 6 >> >
T x=x=x=x=--x=x=xx R 8 R 8 5 >>> >> > | R 8 R 8 5 6 >> > | R R 5 5 3 4 >> > | 8 8 7 7 6 5 >> > | R R _7 _7 _6 _5 >> > | R 5 R 5 3 2 >> > | R R 2 3 5 6 >> >
H1 x=x=--x= R 8 8 | R 8 5 | R 5 5 | R R 3
H2 x=x=x=xx R 8 5 >> > | R 5 3 >> > | R 8 3 >> > | 8 7 5 >> >
`;
