import { counted, failure, listed, type Result, success } from '../../base';
import { type FeelId, isFeelId } from '../../feel';
import { FEEL_FIELD } from '../own-words';
import { Remarks } from '../reading/remarks';
import type { ScoreRead } from '../reading/score-read';
import type { Wishes } from '../reading/wishes';
import { barsOf } from './bars-of';
import {
  type Candidate,
  candidateId,
  candidateName,
  candidatesOf,
  isForBass,
  likeliest,
  voiceChoices,
  voiceId,
  withVoice,
} from './candidates';
import { chordChoices } from './chords-of';
import { tuningOf } from './line-of';
import type { RawPart } from './raw';
import { readParts } from './read-parts';
import { childOf, childrenOf, textOf, type XmlNode } from './xml-tree';

type Read = Result<ScoreRead, { readonly message: string }>;

/** The tempo at the beginning, and a sentence where it changes. */
function tempoOf(parts: readonly RawPart[], remarks: Remarks): number | null {
  const all = parts.flatMap(({ measures }) =>
    measures.flatMap(({ tempi }, bar) => tempi.map(({ at, quarters }) => ({ bar, at, quarters }))),
  );
  const sorted = all.sort((one, other) => one.bar - other.bar || one.at - other.at);
  const first = sorted[0]?.quarters ?? null;
  for (const { bar, quarters } of sorted) {
    if (first !== null && Math.abs(quarters - first) > 0.5) {
      remarks.inBar('The piece has one tempo here, the first in the file; it changes', bar);
    }
  }
  return first;
}

function creditsOf(score: XmlNode): readonly string[] {
  const about = childOf(score, 'identification');
  const creators = childrenOf(about, 'creator').map(({ attributes, text }) =>
    attributes.type === undefined ? text : `${attributes.type}: ${text}`,
  );
  return [...creators, ...childrenOf(about, 'rights').map(({ text }) => text)].filter((line) => line !== '');
}

/** Notes that belong to the staff but not to the voice that is read. */
function sayOtherVoices({ part, staff, voice }: Candidate, remarks: Remarks): void {
  part.measures.forEach(({ notes }, bar) => {
    if (notes.some((note) => note.staff === staff && note.voice !== voice)) {
      remarks.inBar('One voice is read; there are others', bar);
    }
  });
}

/** Notes that are none for a lesson are said with their bars, other signs all together. */
function sayExtras({ part, staff, voice }: Candidate, remarks: Remarks): void {
  const signs = new Set<string>();
  part.measures.forEach(({ extras }, bar) => {
    for (const extra of extras) {
      if (extra.staff !== staff || (extra.voice !== voice && extra.voice !== '')) continue;
      if (/notes/.test(extra.what)) {
        remarks.inBar(`Left out: ${extra.what}`, bar);
      } else signs.add(extra.what);
    }
  });
  if (signs.size > 0) remarks.say(`Left out, as a lesson has no place for them: ${listed([...signs])}.`);
}

function sayPart(candidate: Candidate, all: readonly Candidate[], remarks: Remarks): void {
  const name = candidateName(candidate, all);
  if (all.length > 1) {
    remarks.say(`The line is the part “${name}”, one of ${all.length} that could be read.`);
  }
  const tab = candidate.tab ?? candidate;
  if (tab.facts.capo) remarks.say('The capo of the tab is left out.');
}

/**
 * Finds the line in a MusicXML document: the part that is most likely the bass, or the one that is asked for, with
 * the chords, sections and tempi of the whole score.
 * @param wishes what is asked for, by ids of an earlier reading of the same file
 * @param most measures that are read
 */
export function readScore(score: XmlNode, wishes: Wishes, most: number, remarks: Remarks): Read {
  if (score.name === 'score-timewise') {
    return failure({
      message:
        'This MusicXML file lists its music measure by measure (score-timewise). Save it part by part (score-partwise), as nearly all programs do, and open it again. Nothing was changed.',
    });
  }
  if (score.name !== 'score-partwise') {
    return failure({
      message: `This XML file is not a MusicXML score: it begins with “${score.name.slice(0, 40)}” instead of “score-partwise”. Nothing was changed.`,
    });
  }
  const parts = readParts(score, most);
  const candidates = candidatesOf(parts);
  const likely = candidates.find((one) => candidateId(one) === wishes.part) ?? likeliest(candidates);
  if (likely === null) {
    return failure({ message: 'There is no part with notes of a pitch in this file. Nothing was changed.' });
  }
  const measures = childrenOf(score, 'part').map((part) => childrenOf(part, 'measure').length);
  if (Math.max(...measures) > most) {
    remarks.say(
      `A lesson has ${most} bars at most; the rest of ${counted(Math.max(...measures), 'bar')} is left out.`,
    );
  }
  const candidate = withVoice(likely, wishes.voice);
  // Of a tune that is not taken nothing needs to be said.
  const aboutNotes = wishes.take === 'line' ? remarks : new Remarks();
  sayPart(candidate, candidates, aboutNotes);
  const sources = chordChoices(parts, candidate.part);
  const source = (sources.find(({ id }) => id === wishes.chords) ?? sources[0])?.id ?? null;
  const { bars, swing } = barsOf(parts, candidate, source, remarks, aboutNotes);
  sayOtherVoices(candidate, aboutNotes);
  sayExtras(candidate, aboutNotes);
  const work = textOf(score, 'work', 'work-title') || null;
  const movement = textOf(score, 'movement-title') || null;
  return success({
    found: {
      title: work ?? movement,
      name: work === null ? null : movement,
      credits: creditsOf(score),
      tempo: tempoOf(parts, remarks),
      swing,
      feel: feelOf(score),
      own: isOwn(score),
      forBass: isForBass(candidate),
      tuning: tuningOf(
        candidate,
        bars.flatMap(({ notes }) => notes),
      ),
      bars,
    },
    parts: {
      all: candidates.map((one) => ({ id: candidateId(one), name: candidateName(one, candidates) })),
      read: candidateId(candidate),
    },
    voices: { all: voiceChoices(candidate), read: voiceId(candidate) },
    chords: { all: sources, read: source },
  });
}

/** Whether this program wrote the file. */
const isOwn = (score: XmlNode): boolean =>
  textOf(score, 'identification', 'encoding', 'software') === 'Ground Bass';

/** The feel that our own files name. */
function feelOf(score: XmlNode): FeelId | null {
  const fields = childrenOf(
    childOf(childOf(score, 'identification'), 'miscellaneous'),
    'miscellaneous-field',
  );
  const feel = fields.find(({ attributes }) => attributes.name === FEEL_FIELD)?.text ?? '';
  return isOwn(score) && isFeelId(feel) ? feel : null;
}
