import { useState } from 'react';
import { counted } from '../../../core/base';
import type { Lesson } from '../../../core/lesson';
import type { Copy } from '../../../core/students';
import { CheckField } from '../../controls';
import { InOne } from '../making';
import { handoutsOf } from './class-handouts';
import { hasAnswers } from './packing';

interface HandoutsProps {
  readonly document: Lesson;
  readonly copies: readonly Copy[];
}

/** The handouts of a class, or of all versions, in one PDF or out of the printer in one go. */
export function HandoutsInOne({ document, copies }: HandoutsProps) {
  const [sheets, setSheets] = useState(false);
  return (
    <fieldset className="sending__group sending__handouts">
      <legend>Handouts in one go</legend>
      <p>
        {counted(copies.length, 'copy', 'copies')}, in this order:{' '}
        {copies.map(({ called }) => called).join(', ')}.
        {hasAnswers(document) && ' The answers come once, behind all copies, for you.'}
      </p>
      <CheckField
        label="Each begins on a sheet of its own"
        note="for printing on both sides"
        checked={sheets}
        onChange={setSheets}
      />
      <InOne
        noun="handouts"
        said="all handouts"
        file={`${document.title}-handouts`}
        build={(options) => handoutsOf(document, { copies, sheets }, options)}
      />
    </fieldset>
  );
}
