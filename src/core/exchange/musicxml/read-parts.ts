import type { RawPart } from './raw';
import { PartReader } from './read-part';
import { childOf, childrenOf, numberOf, textOf, type XmlNode } from './xml-tree';

/** General MIDI's channel for percussion, counted from 1. */
const PERCUSSION_CHANNEL = 10;

/** What the list of parts says about one of them. */
function describedPart(listed: XmlNode | undefined, id: string): Omit<RawPart, 'staves' | 'measures'> {
  const instruments = childrenOf(listed, 'score-instrument').flatMap((instrument) => [
    textOf(instrument, 'instrument-name') ?? '',
    textOf(instrument, 'instrument-sound') ?? '',
  ]);
  const midi = childOf(listed, 'midi-instrument');
  return {
    id,
    name: textOf(listed, 'part-name') ?? '',
    instruments: instruments.filter((name) => name !== '').join(' '),
    program: numberOf(midi, 'midi-program'),
    percussion: numberOf(midi, 'midi-channel') === PERCUSSION_CHANNEL,
  };
}

/** The parts of a partwise score with their measures, up to `most` of them. */
export function readParts(score: XmlNode, most: number): readonly RawPart[] {
  const listed = childrenOf(childOf(score, 'part-list'), 'score-part');
  return childrenOf(score, 'part').map((part, index): RawPart => {
    const id = part.attributes.id ?? `part ${index + 1}`;
    const reader = new PartReader();
    const measures = childrenOf(part, 'measure')
      .slice(0, most)
      .map((measure) => reader.readMeasure(measure));
    return {
      ...describedPart(
        listed.find(({ attributes }) => attributes.id === id),
        id,
      ),
      staves: reader.staves,
      measures,
    };
  });
}
