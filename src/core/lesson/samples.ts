import { bpm } from '../base';
import { setChartText } from './commands/chart';
import { composePiece } from './commands/compose';
import { changeLine } from './commands/piece';
import { addPiece } from './commands/pieces';
import { newLesson } from './create';
import type { Lesson, LinePiece } from './types';

/** A sample as a teacher would set it up; its line is composed like any other. */
interface Sample {
  readonly title: string;
  readonly notes: string;
  readonly line: Pick<LinePiece, 'name' | 'chartText' | 'feel' | 'tempo' | 'level' | 'seed' | 'techniques'>;
}

/** The weekly class of the samples is invented, and so are its tunes and their progressions. */
const SAMPLES: readonly Sample[] = [
  {
    title: 'Ferry queue, week 3',
    notes:
      'Tuesday class. Clap the rhythm first, and whisper beat one where it is silent. Then play with the drums only, then with everyone.',
    line: {
      name: 'Ferry queue',
      chartText: '| F | Dm | Gm | C7 |\n| F | F7 | Bb C | F |\n',
      feel: 'early-ska',
      tempo: bpm(126),
      level: 3,
      techniques: ['chord tones', 'scale steps', 'space'],
      seed: 4,
    },
  },
  {
    title: 'Last tram home, week 5',
    notes:
      'Thursday class. Count one to four aloud: the drums drop on three. Let the silences be as long as they are written.',
    line: {
      name: 'Last tram home',
      chartText: 'Verse:\n|: Am | Dm | Am | E7 :|\n\nBridge:\n| F | G | Am | E7 |\n',
      feel: 'one-drop',
      tempo: bpm(132),
      level: 3,
      techniques: ['chord tones', 'scale steps', 'space'],
      seed: 3,
    },
  },
];

export const SAMPLE_TITLES: readonly string[] = SAMPLES.map((sample) => sample.title);

/**
 * A sample lesson, ready to be heard: its line composed, blank bars for the student's own line below.
 * @param id names the lesson in storage.
 * @throws RangeError when there is no such sample.
 */
export function sampleLesson(index: number, id: string): Lesson {
  const sample = SAMPLES[index];
  if (sample === undefined) {
    throw new RangeError(`There is no sample ${index}`);
  }
  const empty = newLesson(id, sample.title);
  const pieceId = empty.pieces[0]?.id ?? '';
  const { chartText, ...settings } = sample.line;
  const set = changeLine({ ...empty, notes: sample.notes }, pieceId, (piece) => ({ ...piece, ...settings }));
  const composed = composePiece(setChartText(set, pieceId, chartText), pieceId);
  return addPiece(composed.lesson, 'blank', pieceId);
}
