import { useState } from 'react';
import { useStore } from 'zustand';
import { counted } from '../../../core/base';
import type { Lesson } from '../../../core/lesson';
import { useAtWork } from '../at-work';
import { MadeFiles, useMaking } from '../making';
import { versionStem } from '../saving';
import { useForWhom } from './for-whom';
import { HandoutsInOne } from './handouts-in-one';
import { packetForMany } from './many';
import { CONTENTS, type Content, hasAnswers, linesOf, type Packed, packetOf } from './packing';
import { Ticks } from './ticks';

const LABELS: Readonly<Record<Content, string>> = {
  handout: 'Handout (PDF)',
  answers: 'Answers to its questions (PDF)',
  'practice page': 'Practice page',
  tracks: 'Tracks',
  clip: 'Clip',
  MusicXML: 'MusicXML',
  MIDI: 'MIDI',
};

/** Everything of a lesson in one ZIP: what goes in, one step that packs it, and the packet that is ready. */
export function Packet({ lesson }: { readonly lesson: Lesson }) {
  const { session } = useAtWork();
  const document = useStore(session.lessons, (state) => state.document);
  const { folders, copies, named, fields } = useForWhom(document);
  const [wanted, setWanted] = useState<readonly Content[]>(
    CONTENTS.filter((content) => content !== 'clip' && content !== 'answers'),
  );
  const making = useMaking<Packed>(
    { what: 'The packet', ready: 'The packet is ready.', doing: 'Packing' },
    async (options) =>
      folders === null
        ? packetOf(lesson, (await versionStem(session)).slice(1), wanted, options)
        : packetForMany(document, { folders, named, wanted }, options),
  );
  const packed = making.made;
  const lines = linesOf(lesson).length;
  const answered = hasAnswers(folders === null ? lesson : document);
  const offered = CONTENTS.filter((content) => answered || content !== 'answers');
  const { student = '' } = lesson.handout;
  return (
    <>
      {fields}
      {folders === null && student.trim() !== '' && (
        <p>The name “{student.trim()}” stands on the handout in it, where you typed it.</p>
      )}
      <Ticks
        legend="In the packet"
        where="in the packet"
        values={offered}
        ticked={wanted}
        label={(content) => LABELS[content]}
        onChange={setWanted}
      />
      <p>
        {lines === 0
          ? 'There is no line with bars yet: the packet holds the sheet and the practice page.'
          : `Tracks, clip, MusicXML and MIDI are made of ${lines === 1 ? 'the line' : counted(lines, 'line')}: tracks four times through, with and without bass, slower and at full tempo; the clip once through, which takes a while to make.`}
      </p>
      {answered && (
        <p>
          The answers are for you: they are kept out of the handout in it, and come as a file of their own
          where you tick them.
        </p>
      )}
      {folders?.length === 0 ? null : wanted.length === 0 ? (
        <p>Tick something, and the packet can be made.</p>
      ) : (
        making.button('Make the packet')
      )}
      {making.progress}
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
      {copies.length > 0 && (
        <HandoutsInOne key={JSON.stringify(copies)} document={document} copies={copies} />
      )}
    </>
  );
}
