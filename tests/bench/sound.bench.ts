import { bench, describe } from 'vitest';
import { bpm } from '../../src/core/base';
import { buildPerformance, secondsAt } from '../../src/core/performance';
import { createMemory } from '../../src/sound/synthesis/memory';
import {
  buffersOf,
  isInPieces,
  renderHead,
  renderPiece,
  renderRest,
  type SegmentRequest,
} from '../../src/sound/synthesis/segment';
import type { Stems } from '../../src/sound/synthesis/stems';
import { createKit, type Kit } from '../../src/sound/synthesis/voices';
import { sheetOf } from '../performance/sheets';
import { SKA_LINE } from '../sound/tunes';
import { tellFigure, workOf } from './told';
import { A_FRAME, benchWithin } from './within';

const RATE = 48_000;

/** How many times as fast as it sounds the music is to be mixed. */
const BUDGET = { least: 1000 };

const ROUNDS = 7;

const tune = (bars: number, tempo = 126) => {
  const chart = Array.from({ length: bars / 4 }, () => '| F | Dm | Gm | C7 |').join('\n');
  const line = Array.from({ length: bars }, (_, bar) => SKA_LINE[bar % 4] ?? '');
  return buildPerformance(sheetOf({ chart, feel: 'early-ska', bars: line }), {
    tempo: bpm(tempo),
    countIn: 1,
    passage: null,
  });
};

/** Seconds of a piece, as the player asks for them. */
const PIECE = 6;

/** The worker's, which the page gives back what it has played. */
const memory = createMemory();

/** Once through, as the player has it made: a short round whole, a long one in pieces. */
function renderOnce(request: SegmentRequest, kit: Kit): void {
  const giveBack = (...all: readonly (Stems | null)[]): void => memory.giveBack(buffersOf(...all));
  const head = renderHead(request, kit);
  giveBack(head.lead);
  if (!isInPieces(head)) {
    const { round, after } = renderRest(request, kit);
    giveBack(round, after);
    return;
  }
  const end = head.roundLength - head.begin;
  const length = PIECE * RATE;
  for (let from = head.leadLength; from < end; from += length)
    giveBack(renderPiece(request, kit, from, Math.min(length, end - from)));
}

for (const bars of [8, 32, 128]) {
  const tuneOfBars = tune(bars);
  const request = { performance: tuneOfBars, rounds: 'endless', begin: 0, leaving: null } as const;
  describe(`the stems of ${bars} bars, ${secondsAt(tuneOfBars, tuneOfBars.end).toFixed(0)} s of music`, () => {
    const kit = createKit(RATE, memory);
    renderOnce(request, kit);
    const seconds = secondsAt(tuneOfBars, tuneOfBars.end);
    const tell = (when: string, work: () => void): void => {
      const times = workOf(ROUNDS, work).map((milliseconds) => (seconds * 1000) / milliseconds);
      tellFigure(`The stems of ${bars} bars, ${when}`, 'times real time', BUDGET, times);
    };
    tell('every sound made anew', () => renderOnce(request, createKit(RATE, memory)));
    tell('after a change of a note', () => renderOnce({ ...request, performance: { ...tuneOfBars } }, kit));
    // Steps so large that another tempo gives every chord another length, and so another sound: each is new here.
    const others = Array.from({ length: ROUNDS }, (_, round) => tune(bars, 126 - 6 * (round + 1)));
    tell('after a change of the tempo', () => {
      renderOnce({ ...request, performance: others.pop() ?? tuneOfBars }, kit);
    });
    bench('every sound made anew', () => {
      renderOnce(request, createKit(RATE, memory));
    });
    bench('with the sounds at hand, as after a change', () => {
      renderOnce({ ...request, performance: { ...tuneOfBars } }, kit);
    });
  });
}

describe('a performance', () => {
  const sheet = sheetOf({
    chart: Array.from({ length: 8 }, () => '| F | Dm | Gm | C7 |').join('\n'),
    bars: Array.from({ length: 32 }, (_, bar) => SKA_LINE[bar % 4] ?? ''),
  });
  const what = 'The performance of 32 bars built';
  benchWithin({ what, name: 'of 32 bars', budget: A_FRAME }, () => {
    buildPerformance(sheet, { tempo: bpm(126), countIn: 1, passage: null });
  });
});
