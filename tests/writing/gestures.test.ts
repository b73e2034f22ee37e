import { describe, expect, it } from 'vitest';
import { midiNumber, stringNumber } from '../../src/core/base';
import { keepBar, linePiece } from '../../src/core/lesson';
import {
  announce,
  describeAtHand,
  deskOf,
  mend,
  newPencil,
  wholenessOf,
  writeFromIdea,
  writeMidi,
  writePlace,
} from '../../src/core/writing';
import { Hand } from './hand';

const bars = (hand: Hand) => linePiece(hand.lesson, hand.pencil.pieceId)?.bars ?? [];

it('a pencil begins with the value of the beat: a dotted quarter in 12/8', () => {
  expect(newPencil('piece-1', 0).value).toBe(960);
  expect(newPencil('piece-1', 0, { count: 12, unit: 8 }).value).toBe(1440);
});

describe('writing', () => {
  it('puts a degree of the sounding chord nearest to the last note', () => {
    const hand = new Hand('| F | Dm | B♭ | C7 |').press('1 3 5 5');
    expect(hand.bar(0)).toBe('F1@0+960 A1@960+960 C2@1920+960 C2@2880+960');
    hand.press('1 7 [ 7');
    expect(hand.bar(1)).toBe('D2@0+960 C2@960+480 C2@1440+480');
  });

  it('takes the degrees from the scale that the chord has in its key', () => {
    // V7 in minor has the raised leading tone; over F7 in F major the seventh is flat.
    expect(new Hand('| E7 |', 'A minor').press('3').bar(0)).toBe('G♯1@0+960');
    expect(new Hand('| F7 |').press('7').bar(0)).toMatch(/^E♭/);
  });

  it('writes by name, by place on the neck and by what is played in', () => {
    const hand = new Hand('| Gm7 | C7 |').press('b e');
    expect(hand.bar(0)).toBe('B♭1@0+960 E1@960+960');
    hand.take(writePlace(stringNumber(3), 3)(hand.lesson, hand.pencil));
    expect(bars(hand)[0]?.notes[2]).toMatchObject({ pins: { string: 3, fret: 3 }, pitch: { letter: 'C' } });
    hand.take(writeMidi(midiNumber(34))(hand.lesson, hand.pencil));
    expect(hand.bar(0)).toMatch(/B♭1@2880\+960$/);
    hand.take(writeMidi(midiNumber(20))(hand.lesson, hand.pencil));
    expect(hand.refusal).toBe('below the neck');
  });

  it('writes frets on the string at hand, two digits with the key for ten', () => {
    const hand = new Hand('| C |', 'C major').press('n ArrowDown ArrowDown 3 2 +');
    expect(bars(hand)[0]?.notes.map(({ pins }) => pins)).toEqual([
      { string: 3, fret: 3 },
      { string: 3, fret: 12 },
    ]);
    expect(hand.press('n').pencil.digits).toBe('degrees');
  });

  it('writes over the note at hand and keeps its length, and goes on behind it', () => {
    const hand = new Hand('| F | F |').press('1 ] 5').press('ArrowLeft 3 1');
    expect(hand.bar(0)).toBe('A1@0+1920 F1@1920+1920');
  });

  it('lends the note after a dotted one what fills the beat', () => {
    expect(new Hand('| F |').press('1 . 5 3').bar(0)).toBe('F1@0+1440 C2@1440+480 A1@1920+960');
  });

  it('takes the rhythm of earlier bars, then its degrees', () => {
    const hand = new Hand('| F | Dm | B♭ |').press('1 [ 3 0 5 ] Enter = 1 3 5');
    expect(hand.bar(1)).toBe('D2@0+480 F2@480+480 A2@1440+960');
    expect(hand.pencil.next).toEqual({ bar: 2, tick: 0 });
  });

  it('goes back to the beginning of the first bar, also where writing would go on in the second', () => {
    const hand = new Hand('| F | Dm |').press('1 3 5 1 Shift+Enter 5');
    expect(hand.bar(0)).toMatch(/^C2@0/);
    expect(hand.bar(1)).toBe('');
    expect(hand.press('Home Shift+Enter Shift+Enter').refusal).toBe('end of the line');
  });

  it('goes through a bar again for its degrees where the rhythm comes first', () => {
    const hand = new Hand('| F | F |').press('v , ] , 1 5');
    expect(hand.bar(0)).toBe('F1@0+1920 C2@1920+1920');
  });

  it('keeps a bar that was touched from being composed', () => {
    const hand = new Hand('| F | C |').press('1');
    expect(bars(hand).map(({ kept, origin }) => [kept, origin])).toEqual([
      [true, 'hand'],
      [false, 'composed'],
    ]);
    expect(keepBar(hand.lesson, hand.pencil.pieceId, 0, false)).not.toBe(hand.lesson);
  });

  it('takes an idea note by note', () => {
    const hand = new Hand('| F | C |').press('1 1');
    const idea = bars(new Hand('| F |').press('1 3 5 8'))[0]?.notes ?? [];
    const takeNext = () => hand.take(writeFromIdea(idea, 0)(hand.lesson, hand.pencil));
    expect(takeNext().bar(0)).toBe('F1@0+960 F1@960+960 C2@1920+960');
    expect(takeNext().bar(0)).toBe('F1@0+960 F1@960+960 C2@1920+960 F2@2880+960');
    // Writing would go on over the next chord, which the idea is not for.
    expect(takeNext().refusal).toBe('idea is used up');
    expect(hand.bar(1)).toBe('');
  });
});

describe('changing', () => {
  it('moves by scale step, half step and octave, and to the other side of the note before', () => {
    const line = () => new Hand('| F | C7 |').press('1 3');
    expect(line().press('ArrowUp').bar(0)).toBe('F1@0+960 B♭1@960+960');
    expect(line().press("'").bar(0)).toMatch(/B♭1@960/);
    expect(line().press(';').bar(0)).toBe('F1@0+960 A♭1@960+960');
    expect(line().press('Shift+ArrowUp').bar(0)).toBe('F1@0+960 A2@960+960');
    expect(new Hand('| F |').press('8 3 o').bar(0)).toBe('F1@0+960 A1@960+960');
    expect(line().press('Shift+ArrowLeft Shift+ArrowUp').bar(0)).toBe('F2@0+960 A2@960+960');
  });

  it('goes to another string at the same pitch', () => {
    const hand = new Hand('| C |', 'C major').press('1 s');
    const [first] = bars(hand)[0]?.notes.map(({ pins }) => pins?.string) ?? [];
    hand.press('s');
    const [second] = bars(hand)[0]?.notes.map(({ pins }) => pins?.string) ?? [];
    expect(second).not.toBe(first);
    expect(hand.bar(0)).toBe('C2@0+960');
  });

  it('ties over the bar line, and changes both halves of a tie together', () => {
    const tied = new Hand('| F | F |').press('1 1 1 5 -');
    expect(tied.bar(0)).toMatch(/C2@2880\+960~$/);
    expect(tied.bar(1)).toBe('C2@0+960');
    tied.press('ArrowUp');
    expect([tied.bar(0), tied.bar(1)]).toEqual([expect.stringMatching(/D2@2880\+960~$/), 'D2@0+960']);
  });

  it('makes notes earlier and later, alone and with what follows', () => {
    const hand = () => new Hand('| F |').press('1 [ 3 5 ArrowLeft');
    expect(hand().press('Alt+ArrowRight').refusal).toBe('no room behind');
    expect(hand().press('Shift+Alt+ArrowRight').bar(0)).toBe('F1@0+480 A1@960+480 C2@1440+480');
    expect(hand().press('ArrowRight Alt+ArrowRight').bar(0)).toBe('F1@0+480 A1@480+480 C2@1440+480');
  });

  it('splits, joins and takes out', () => {
    const hand = new Hand('| F |').press('1 5 ArrowLeft /');
    expect(hand.bar(0)).toBe('F1@0+480 F1@480+480 C2@960+960');
    expect(hand.press('j').bar(0)).toBe('F1@0+960 C2@960+960');
    expect(hand.press('Delete').bar(0)).toBe('C2@0+960');
  });

  it('repeats and pastes over other chords by degree, or as it is', () => {
    const hand = new Hand('| F | Dm | B♭ | C |').press('1 3 5 3 r');
    expect(hand.bar(1)).toBe('D2@0+960 F2@960+960 A2@1920+960 F2@2880+960');
    hand.press('Ctrl+A Ctrl+C Enter Ctrl+V');
    expect(hand.bar(2)).toBe('B♭1@0+960 D2@960+960 F2@1920+960 D2@2880+960');
    hand.press('Enter Ctrl+Shift+V');
    expect(hand.bar(3)).toBe(hand.bar(1));
    expect(hand.press('Ctrl+A Ctrl+X').bar(3)).toBe('');
  });

  it('carries what is outside of the scale as the degree that it is', () => {
    // Over C7 the scale has B♭; B is its major seventh, which F has as E, and D7 as C♯. D♭ is its ♭2.
    const hand = new Hand('| C7 | F | D7 |').press("1 7 ' 2 ; Enter r");
    expect(hand.bar(0)).toBe('C2@0+960 B1@960+960 D♭2@1920+960');
    expect(hand.bar(1)).toBe('F2@0+960 E2@960+960 G♭2@1920+960');
    expect(hand.press('Shift+Enter Ctrl+A Ctrl+C Enter Enter Ctrl+V').bar(2)).toBe(
      'D2@0+960 C♯2@960+960 E♭2@1920+960',
    );
  });
});

describe('the bar', () => {
  it('holds what is too much until it is mended, in one step and in three ways', () => {
    const over = () => new Hand('| F | C |').press('1 3 5 8 ]');
    expect(over().bar(0)).toBe('F1@0+960 A1@960+960 C2@1920+960 F2@2880+960~ | F2@3840+960');
    const hand = over();
    const desk = deskOf(hand.lesson, hand.pencil);
    expect(desk && wholenessOf(desk, 0)).toEqual({
      kind: 'too much',
      by: 960,
      mends: ['push on', 'cut'],
      lost: 0,
    });
    const pushed = over();
    pushed.take(mend(0, 'push on')(pushed.lesson, pushed.pencil));
    expect([pushed.bar(0), pushed.bar(1)]).toEqual([
      'F1@0+960 A1@960+960 C2@1920+960 F2@2880+960~',
      'F2@0+960',
    ]);
    const cut = over();
    expect(cut.take(mend(0, 'cut')(cut.lesson, cut.pencil)).bar(0)).toBe(
      'F1@0+960 A1@960+960 C2@1920+960 F2@2880+960',
    );
    const silent = new Hand('| F | C |').press('1 0 5 8 ] !');
    expect(silent.bar(0)).toBe('F1@0+960 C2@960+960 F2@1920+1920');
  });

  it.each([
    ['Shift+E', 'F1@0+960 C2@1920+960', 'easier: on the beats, 1 note fewer'],
    ['Shift+S', 'F1@0+480 C2@1920+960', 'sparser'],
    ['Shift+O', 'F1@960+960 C2@1920+960', 'silent on one'],
    ['PageDown', '', null],
    ['Shift+I', 'F2@0+480 E2@480+480 B♭1@1920+960', 'upside down around its first note, an octave up'],
  ])('becomes what %s asks', (key, expected, words) => {
    const hand = new Hand('| F | C |').press('1 [ 2 0 0 5 ] Home');
    expect(hand.bar(0)).toBe('F1@0+480 G1@480+480 C2@1920+960');
    hand.press(key);
    if (words === null) expect(hand.refusal).toBe('off the instrument');
    else {
      expect(hand.bar(0)).toBe(expected);
      expect(hand.last && announce(hand.last)).toContain(words);
    }
  });

  it('becomes easier on the beats of its metre: in 7/8 the last beat is three eighths long', () => {
    const hand = new Hand('(7/8) | F | C |').press('1 [ 2 3 4 5 6 7 Home Shift+E');
    expect(
      hand
        .bar(0)
        .split(' ')
        .map((note) => note.replace(/^.*@(\d+)\+.*$/, '$1')),
    ).toEqual(['0', '960', '1920']);
  });

  it('leads to the next chord, another way each time', () => {
    const hand = new Hand('| F | C |').press('1 1 1 1 Shift+L');
    expect(hand.bar(0)).toMatch(/B♭1@2880\+960$/);
    expect(hand.press('Shift+L').bar(0)).toMatch(/D2@2880\+960$/);
    expect(hand.press('Shift+L').bar(0)).toMatch(/B1@2880\+960$/);
  });
});

it('says what is at hand: pitch, degree, length, beat, string and fret', () => {
  const hand = new Hand('| F | C7 |').press('1 [ 3');
  expect(describeAtHand(hand.lesson, hand.pencil)).toBe('A1, 3, eighth, the & of 1 of bar 1, A string, open');
  hand.press('0');
  expect(hand.last && announce(hand.last)).toBe('Silence. Silence, beat 2 of bar 1');
});

it('a note that is too much is said to lie behind the bar line, and the sentence begins with a capital', () => {
  const hand = new Hand('| F | C7 |').press('1 3 5 6 Home ] End');
  expect(hand.bar(0)).toMatch(/ \| D\d@3840\+960$/);
  expect(describeAtHand(hand.lesson, hand.pencil)).toBe('D2, quarter, behind the bar line of bar 1');
  hand.press('Home ]');
  expect(hand.last && announce(hand.last)).toMatch(
    /^Bar 1 now holds too much\. F\d, R, whole, beat 1 of bar 1, /,
  );
});

it('what becomes of the digits and the running value is told, and a pickup is called one', () => {
  const hand = new Hand('(1) C7 | F | C |').press('1 n');
  const said = () => (hand.last === null ? '' : announce(hand.last));
  expect(said()).toMatch(
    /^Digits are frets now, on the (A|E) string\. C2, R, quarter, beat 4 of the pickup, /,
  );
  hand.press('ArrowUp');
  expect(said()).toMatch(/^(D|A) string\. C2, /);
  hand.press('n Enter ]');
  expect(said()).toBe('Half. Silence, beat 1 of bar 1');
});
