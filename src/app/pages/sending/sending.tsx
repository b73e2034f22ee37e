import '../../styles/sending.css';
import { useEffect, useRef } from 'react';
import { deriveSheet, type LinePiece, type LineSheet, lineAtHand } from '../../../core/lesson';
import type { Sending as What } from '../../state';
import { useAtWork, useEditor, useSettledLesson } from '../at-work';
import { Clip } from './clip';
import { Packet } from './packet';
import { Tracks } from './tracks';

const HEADINGS: Readonly<Record<What, string>> = {
  tracks: 'Tracks',
  clip: 'Clip',
  packet: 'Packet',
};

/** What is made of the line at hand to be sent home. */
export function Sending({ sending }: { readonly sending: What }) {
  const { session } = useAtWork();
  const lesson = useSettledLesson();
  const pieceId = useEditor((state) => state.pieceId);
  const heading = useRef<HTMLHeadingElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: whoever asks for something else is led there, too
  useEffect(() => heading.current?.focus(), [sending]);
  const piece = lineAtHand(lesson, pieceId);
  const sheet = piece && deriveSheet(piece, lesson.instrument, lesson.noteNames);
  const putAway = () => session.editor.setState({ sending: null });
  return (
    <section className="notice notice--calm sending" aria-labelledby="sending-heading">
      <div className="sending__head">
        <h2 id="sending-heading" tabIndex={-1} ref={heading}>
          {HEADINGS[sending]} of {sending === 'packet' || piece === null ? lesson.title : piece.name}
        </h2>
        <button type="button" className="button button--quiet" onClick={putAway}>
          Put away
        </button>
      </div>
      {sending === 'packet' ? (
        <Packet key={lesson.id} lesson={lesson} />
      ) : piece === null || sheet?.kind !== 'line' || sheet.bars.length === 0 ? (
        <p>There is no line to play along with yet: write a chord chart first.</p>
      ) : (
        <Line key={piece.id} sending={sending} piece={piece} sheet={sheet} />
      )}
    </section>
  );
}

interface LineProps {
  readonly sending: 'tracks' | 'clip';
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
}

const Line = ({ sending, ...line }: LineProps) =>
  sending === 'tracks' ? <Tracks {...line} /> : <Clip {...line} />;
