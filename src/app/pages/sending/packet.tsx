import { useState } from 'react';
import { counted } from '../../../core/base';
import type { Lesson } from '../../../core/lesson';
import { CheckField } from '../../controls';
import { MadeFiles } from './made-files';
import { useMaking } from './making';
import { CONTENTS, type Content, linesOf, type Packed, packetOf } from './packing';

const LABELS: Readonly<Record<Content, string>> = {
  handout: 'Handout (PDF)',
  'practice page': 'Practice page',
  tracks: 'Tracks',
  MusicXML: 'MusicXML',
  MIDI: 'MIDI',
};

/** Everything of a lesson in one ZIP: what goes in, one step that packs it, and the packet that is ready. */
export function Packet({ lesson }: { readonly lesson: Lesson }) {
  const [wanted, setWanted] = useState<readonly Content[]>(CONTENTS);
  const [packed, setPacked] = useState<Packed | null>(null);
  const making = useMaking('The packet', 'Packing');
  const lines = linesOf(lesson).length;
  const pack = () =>
    making.run(async (options) => {
      const made = await packetOf(lesson, wanted, options);
      if (made.ok && made.value !== null) setPacked(made.value);
      return made.ok ? null : made.problem;
    });
  return (
    <>
      <fieldset className="sending__group">
        <legend>In the packet</legend>
        <div className="sending__ticks">
          {CONTENTS.map((content) => (
            <CheckField
              key={content}
              label={LABELS[content]}
              where="in the packet"
              checked={wanted.includes(content)}
              onChange={(on) =>
                setWanted(CONTENTS.filter((each) => (each === content ? on : wanted.includes(each))))
              }
            />
          ))}
        </div>
      </fieldset>
      <p>
        {lines === 0
          ? 'There is no line with bars yet: the packet holds the sheet and the practice page.'
          : `Tracks, MusicXML and MIDI are made of ${lines === 1 ? 'the line' : counted(lines, 'line')}; tracks four times through, with and without bass, slower and at full tempo.`}
      </p>
      {wanted.length === 0 ? (
        <p>Tick something, and the packet can be made.</p>
      ) : (
        !making.isBusy && (
          <button type="button" className="button button--main" onClick={pack}>
            Make the packet
          </button>
        )
      )}
      {making.shown}
      {packed !== null && (
        <>
          {packed.remarks !== null && <p>{packed.remarks}</p>}
          <MadeFiles
            name="The packet that is ready"
            zip={packed.file.stem}
            files={[{ ...packed.file, said: 'one ZIP' }]}
          />
        </>
      )}
    </>
  );
}
