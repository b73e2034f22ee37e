import { LETTERS, type Letter, type Mark } from '../base';
import { COMMAND_GROUPS, type Command, type CommandGroup, type Row, row } from './command';
import { refused } from './context';
import { go, goBar, goEdge, goString, select, selectBar, setDigits, setWay } from './go';
import { dot, fill, join, longer, moveNote, moveRest, shorter, split, tie, triplet } from './lengths';
import { mark } from './marks';
import { mend, wholenessOf } from './mend';
import { copy, cut, emptyBar, erase, paste, repeatBar, repeatSelection, takeOut } from './passages';
import { byHalfStep, byOctave, byScaleStep, otherSide, otherString } from './pitches';
import { settled } from './places';
import { rhythmOfBefore, rhythmOfFeel } from './rhythms';
import { dynamic, hairpin, noDynamics } from './signs';
import { type BarWish, wish } from './transform';
import type { Gesture } from './types';
import { onLine, tenFretsUp, writeAgain, writeDegree, writeFret, writeName, writeSilence } from './write';

const DEGREE_WORDS = [
  'the root',
  'the second',
  'the third',
  'the fourth',
  'the fifth',
  'the sixth',
  'the seventh',
];

const DEGREES: readonly Row[] = [
  ...DEGREE_WORDS.map((words, index) => ({
    ...row(
      `degree ${index + 1}`,
      [String(index + 1)],
      index === 0 ? 'R' : String(index + 1),
      `Write ${words} of the chord, nearest to the last note`,
      writeDegree(index + 1),
    ),
    when: 'degrees' as const,
  })),
  {
    ...row('degree 8', ['8'], '8', 'Write the next root above', writeDegree(8)),
    when: 'degrees' as const,
  },
];

const FRETS: readonly Row[] = Array.from({ length: 10 }, (_, index) => ({
  ...row(
    `fret ${index}`,
    [String(index)],
    String(index),
    `Write fret ${index} on the string at hand`,
    writeFret(index),
  ),
  when: 'frets' as const,
}));

const nameKey = (letter: Letter): readonly string[] => (letter === 'B' ? ['b', 'h'] : [letter.toLowerCase()]);

const NAMES: readonly Row[] = LETTERS.map((letter) => ({
  ...row(
    `name ${letter}`,
    nameKey(letter),
    letter,
    `Write ${letter} as the scale has it, nearest to the last note`,
    writeName(letter),
  ),
  name: letter,
}));

const WISH_KEYS: readonly (readonly [BarWish, string, string])[] = [
  ['easier', 'Shift+E', 'Easier'],
  ['busier', 'Shift+B', 'Busier'],
  ['sparser', 'Shift+S', 'Sparser'],
  ['silent on one', 'Shift+O', 'Silent on one'],
  ['an octave up', 'PageUp', 'Octave up'],
  ['an octave down', 'PageDown', 'Octave down'],
  ['inverted', 'Shift+I', 'Inverted'],
  ['leading to the next chord', 'Shift+L', 'Leading on'],
];

const MARK_KEYS: readonly (readonly [Mark, string, string])[] = [
  ['accent', '>', 'Accent'],
  ['strong accent', 'Shift+K', 'Strong accent'],
  ['staccato', 'y', 'Staccato'],
  ['tenuto', '_', 'Tenuto'],
  ['portato', 'Shift+M', 'Portato'],
  ['let ring', 'w', 'Let ring'],
  ['ghost', 'x', 'Ghost note'],
  ['palm mute', 'p', 'Palm mute'],
  ['i', 'i', 'Index finger'],
  ['m', 'm', 'Middle finger'],
  ['slap', 'Shift+T', 'Slap'],
  ['pop', 'Shift+P', 'Pop'],
  ['hammer', 'k', 'Hammer-on or pull-off'],
  ['slide', '\\', 'Slide'],
  ['slur', 'u', 'Slur'],
  ['slide from below', 'Shift+U', 'Slide in from below'],
  ['slide from above', 'Shift+D', 'Slide in from above'],
  ['slide down', 'Shift+W', 'Slide out downwards'],
  ['slide up', 'Shift+Q', 'Slide out upwards'],
  ['fermata', 'Shift+F', 'Fermata'],
];

/** With notes selected, those; else the bar before. */
const repeated =
  (way: 'by degree' | 'as it is'): Gesture =>
  (lesson, pencil) =>
    (pencil.from === null ? repeatBar(way) : repeatSelection(way))(lesson, pencil);

/** The gentlest way of making the bar whole again. */
const mendFirst: Gesture = onLine((desk) => {
  const bars = desk.piece.bars.flatMap((bar, index) => (bar.over === undefined ? [] : [index]));
  const near = bars.findLast((bar) => bar <= desk.pencil.bar) ?? bars[0];
  if (near === undefined) return refused(desk, 'nothing to mend');
  const whole = wholenessOf(desk, near);
  const way = whole.kind === 'whole' ? undefined : whole.mends[0];
  return way === undefined ? refused(desk, 'nothing to mend') : mend(near, way)(desk.lesson, desk.pencil);
});

/** Leads to what the command asks for. */
const opens: Gesture = onLine((desk) => ({
  lesson: desk.lesson,
  pencil: desk.pencil,
  did: { kind: 'go', bars: [desk.pencil.bar] },
}));

const otherDigits: Gesture = (lesson, pencil) =>
  setDigits(pencil.digits === 'degrees' ? 'frets' : 'degrees')(lesson, pencil);
const otherWay: Gesture = (lesson, pencil) =>
  setWay(pencil.way === 'rhythm first' ? 'note by note' : 'rhythm first')(lesson, pencil);

/** Up and down is a scale step, or the next string where frets are written. */
const vertical =
  (way: 1 | -1): Gesture =>
  (lesson, pencil) =>
    (pencil.digits === 'frets' ? goString(way === 1 ? -1 : 1) : byScaleStep(way))(lesson, pencil);

const ROWS: Readonly<Record<CommandGroup, readonly Row[]>> = {
  Write: [
    ...DEGREES,
    ...FRETS,
    { ...row('ten frets', ['+'], '+10', 'Ten frets higher: 2 becomes 12', tenFretsUp), when: 'frets' },
    {
      ...row('silence', ['0'], 'Silence', 'Write silence of the running value', writeSilence),
      when: 'degrees',
    },
    {
      ...row('rest', ['z'], 'Silence', 'Write silence, where digits are frets', writeSilence),
      when: 'frets',
    },
    ...NAMES,
    row('again', [','], 'Again', 'Strike the last note again', writeAgain),
    row('erase', ['Backspace'], 'To silence', 'Make what is selected silence', erase),
    row('take out', ['Delete'], 'Take out', 'Take the note out; what follows moves up', takeOut),
    row('empty bar', ['Shift+Backspace'], 'Empty the bar', 'Make the whole bar silence', emptyBar),
  ],
  Pitch: [
    row('step up', ['ArrowUp'], 'Step up', 'A scale step up (on the tab: the string above)', vertical(1)),
    row(
      'step down',
      ['ArrowDown'],
      'Step down',
      'A scale step down (on the tab: the string below)',
      vertical(-1),
    ),
    row('half up', ["'", 'Alt+ArrowUp'], 'Half step up', 'A half step up', byHalfStep(1)),
    row('half down', [';', 'Alt+ArrowDown'], 'Half step down', 'A half step down', byHalfStep(-1)),
    row('octave up', ['Shift+ArrowUp'], 'Octave up', 'An octave up', byOctave(1)),
    row('octave down', ['Shift+ArrowDown'], 'Octave down', 'An octave down', byOctave(-1)),
    row('other way', ['o'], 'Other side', 'The same note on the other side of the one before', otherSide),
    row('other string', ['s'], 'Other string', 'The same pitch on another string', otherString),
  ],
  'Length and place': [
    row('shorter', ['['], 'Shorter', 'Half as long', shorter),
    row('longer', [']'], 'Longer', 'Twice as long', longer),
    row('dot', ['.'], 'Dot', 'With a dot, or without it', dot),
    row('triplet', ['t'], 'Triplet', 'One of a triplet, or not', triplet),
    row('tie', ['-'], 'Tie', 'Let the note go on, over the bar line too', tie),
    row('fill', ['l'], 'Fill', 'Let the note last until the next one', fill),
    row('split', ['/'], 'Split', 'Strike the note twice in its time', split),
    row('join', ['j'], 'Join', 'One note of this one and the next', join),
    row('earlier', ['Alt+ArrowLeft'], 'Earlier', 'Earlier within the bar', moveNote(-1)),
    row('later', ['Alt+ArrowRight'], 'Later', 'Later within the bar', moveNote(1)),
    row('pull', ['Shift+Alt+ArrowLeft'], 'Pull', 'Earlier, with all that follows in the bar', moveRest(-1)),
    row('push', ['Shift+Alt+ArrowRight'], 'Push', 'Later, pushing what follows', moveRest(1)),
    row('mend', ['!'], 'Mend', 'Make a bar whole that holds too much', mendFirst),
  ],
  Marks: MARK_KEYS.map(([what, key, words]) =>
    row(`mark ${what}`, [key], words, `${words}, or not`, mark(what)),
  ),
  'Loudness and words': [
    row('louder', ['Shift+G'], 'Louder', 'Louder from here: a sign one step up', dynamic(1)),
    row('softer', ['Shift+H'], 'Softer', 'Softer from here: a sign one step down', dynamic(-1)),
    row(
      'crescendo',
      ['Shift+C'],
      'Growing',
      'Growing to the next sign, or over what is selected',
      hairpin('crescendo'),
    ),
    row(
      'diminuendo',
      ['Shift+V'],
      'Fading',
      'Fading to the next sign, or over what is selected',
      hairpin('diminuendo'),
    ),
    row('no dynamics', ['Shift+X'], 'No sign', 'Take the signs of loudness away', noDynamics),
    { ...row('word', ['Shift+A'], 'Word above', 'A word above the bar', opens), asks: 'word' },
  ],
  'Go and select': [
    row('back', ['ArrowLeft'], 'Back', 'To the note or silence before', go(-1)),
    row('on', ['ArrowRight'], 'On', 'To the next note or silence', go(1)),
    row('next bar', ['Enter'], 'Next bar', 'To the next bar', goBar(1)),
    row('bar before', ['Shift+Enter'], 'Bar before', 'To the bar before', goBar(-1)),
    row('first', ['Home'], 'First', 'To the beginning of the bar', goEdge('first')),
    row('last', ['End'], 'Last', 'To the last note of the bar', goEdge('last')),
    row('select back', ['Shift+ArrowLeft'], 'Select back', 'Select one more before', select(-1)),
    row('select on', ['Shift+ArrowRight'], 'Select on', 'Select one more behind', select(1)),
    row('select bar', ['Ctrl+A'], 'Whole bar', 'Select the bar, then the whole line', selectBar),
  ],
  'Copy and repeat': [
    row('rhythm', ['='], 'Rhythm before', 'The rhythm of the bar before; then its degrees', rhythmOfBefore),
    row(
      'feel rhythm',
      ['Shift+Y'],
      'Rhythm of the feel',
      'A rhythm of the feel; again, the next one',
      rhythmOfFeel,
    ),
    {
      ...row('tap', ['q'], 'Tap a rhythm', 'Tap the rhythm of the bar in its tempo', opens),
      asks: 'taps',
    },
    row(
      'repeat',
      ['r'],
      'Repeat',
      'The bar before, or what is selected, again by degree',
      repeated('by degree'),
    ),
    row('repeat as is', ['Shift+R'], 'Repeat as it is', 'The same, with its pitches', repeated('as it is')),
    row('copy', ['Ctrl+C'], 'Copy', 'Copy what is selected', copy),
    row('cut', ['Ctrl+X'], 'Cut', 'Cut what is selected', cut),
    row('paste', ['Ctrl+V'], 'Paste', 'Paste over the chords here, by degree', paste('by degree')),
    row('paste as is', ['Ctrl+Shift+V'], 'Paste as it is', 'Paste with its pitches', paste('as it is')),
  ],
  'The bar becomes': WISH_KEYS.map(([what, key, short]) =>
    row(`bar ${what}`, [key], short, `The bar becomes ${what}`, wish(what)),
  ),
  'The way of writing': [
    row('frets', ['n'], 'Digits', 'Digits are degrees, or frets on a string', otherDigits),
    row('rhythm first', ['v'], 'Rhythm first', 'Rhythm first, or note by note', otherWay),
  ],
};

/** Every command in the order in which they are shown. */
export const COMMANDS: readonly Command[] = COMMAND_GROUPS.flatMap((group) =>
  ROWS[group].map((each) => ({ ...each, group, gesture: settled(each.gesture) })),
);

/** @throws RangeError for an id that no command has. */
export function commandById(id: string): Command {
  const found = COMMANDS.find((each) => each.id === id);
  if (found === undefined) throw new RangeError(`No command ${id}`);
  return found;
}
