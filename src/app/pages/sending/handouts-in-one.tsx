import { useState } from 'react';
import { counted, type Result, success } from '../../../core/base';
import type { Lesson } from '../../../core/lesson';
import type { Copy } from '../../../core/students';
import type { MakeOptions } from '../../../tracks';
import { CheckField } from '../../controls';
import { MadeFiles, useMaking } from '../making';
import { fileStem, type MadeFile } from '../saving';
import { handoutsOf } from './class-handouts';

interface HandoutsProps {
  readonly document: Lesson;
  readonly copies: readonly Copy[];
}

/** Of a PDF, how much of the work is laying it out. */
const LAID_OUT = 0.7;

interface Written {
  readonly file: MadeFile;
  readonly remarks: string | null;
}

/** The handouts of a class, or of all versions, in one PDF or out of the printer in one go. */
export function HandoutsInOne({ document, copies }: HandoutsProps) {
  const [sheets, setSheets] = useState(false);
  const wishes = { copies, sheets };
  const write = async (options: MakeOptions): Promise<Result<Written | null, string>> => {
    const { handoutPdf } = await import('../../../handout');
    const built = await handoutsOf(document, wishes, {
      ...options,
      onShare: (share) => options.onShare(share * LAID_OUT),
    });
    if (!built.ok || built.value === null) return built.ok ? success(null) : built;
    const { bytes } = await handoutPdf(built.value, (done, all) =>
      options.onShare(LAID_OUT + ((1 - LAID_OUT) * done) / all),
    );
    if (options.signal.aborted) return success(null);
    const { remarks } = built.value;
    return success({
      file: { stem: `${fileStem(document.title)}-handouts`, kind: 'handout', content: bytes },
      remarks: remarks.length === 0 ? null : remarks.join(' '),
    });
  };
  const print = async (options: MakeOptions): Promise<Result<true | null, string>> => {
    const { printHandout } = await import('../../../handout');
    const built = await handoutsOf(document, wishes, options);
    if (!built.ok || built.value === null) return built.ok ? success(null) : built;
    await printHandout(built.value);
    return success(true);
  };
  const writing = useMaking(
    { what: 'The PDF of the handouts', ready: 'The PDF is ready.', doing: 'Writing the PDF' },
    write,
  );
  const printing = useMaking(
    {
      what: 'The printed handouts',
      ready: 'The handouts went to the printer.',
      doing: 'Laying out the handouts',
    },
    print,
  );
  return (
    <fieldset className="sending__group sending__handouts">
      <legend>Handouts in one go</legend>
      <p>
        {counted(copies.length, 'copy', 'copies')}, in this order:{' '}
        {copies.map(({ called }) => called).join(', ')}.
      </p>
      <CheckField
        label="Each begins on a sheet of its own"
        note="for printing on both sides"
        checked={sheets}
        onChange={setSheets}
      />
      <div className="sending__answers">
        {printing.button('Print the handouts')}
        {writing.button('One PDF of the handouts')}
      </div>
      {printing.progress}
      {writing.progress}
      {writing.made !== null && (
        <>
          {writing.made.remarks !== null && <p>{writing.made.remarks}</p>}
          <MadeFiles
            name="The PDF that is ready"
            zip={writing.made.file.stem}
            files={[{ ...writing.made.file, said: 'all handouts' }]}
          />
        </>
      )}
    </fieldset>
  );
}
