import { type Result, success } from '../../../core/base';
import type { Handout } from '../../../handout';
import type { MakeOptions } from '../../../tracks';
import { writtenHandout } from '../saving';
import { MadeFiles } from './made-files';
import { useMaking } from './making';

interface InOneProps {
  /** `booklet`, `handouts`: what it is called after *the*. */
  readonly noun: string;
  /** What the file holds: `all handouts`. */
  readonly said: string;
  /** Name of the PDF, in any characters. */
  readonly file: string;
  /** Lays everything out; null where it was called off. */
  readonly build: (options: MakeOptions) => Promise<Result<Handout | null, string>>;
}

/** Of a PDF, how much of the work is laying it out. */
const LAID_OUT = 0.7;

/** Many sheets in one go: a step that prints them and one that writes one PDF, and what the teacher should know of them. */
export function InOne({ noun, said, file, build }: InOneProps) {
  const writing = useMaking(
    { what: `The PDF of the ${noun}`, ready: 'The PDF is ready.', doing: `Writing the ${noun}` },
    async (options) => {
      const built = await build({ ...options, onShare: (share) => options.onShare(share * LAID_OUT) });
      if (!built.ok || built.value === null) return built.ok ? success(null) : built;
      const written = await writtenHandout(built.value, file, (done, all) =>
        options.onShare(LAID_OUT + ((1 - LAID_OUT) * done) / all),
      );
      return success(options.signal.aborted ? null : written);
    },
  );
  const printing = useMaking(
    {
      what: `The printed ${noun}`,
      ready: `The ${noun} went to the printer.`,
      doing: `Laying out the ${noun}`,
    },
    async (options) => {
      const built = await build(options);
      if (!built.ok || built.value === null) return built.ok ? success(null) : built;
      const { printHandout } = await import('../../../handout');
      await printHandout(built.value);
      return success(built.value.remarks.join(' '));
    },
  );
  const remarks = new Set([writing.made?.remarks ?? '', printing.made ?? '']);
  return (
    <>
      <div className="sending__answers">
        {printing.button(`Print the ${noun}`)}
        {writing.button(`One PDF of the ${noun}`)}
      </div>
      {printing.progress}
      {writing.progress}
      {[...remarks].map((remark) => remark !== '' && <p key={remark}>{remark}</p>)}
      {writing.made !== null && (
        <MadeFiles
          name={`The PDF of the ${noun} that is ready`}
          zip={writing.made.file.stem}
          files={[{ ...writing.made.file, said }]}
        />
      )}
    </>
  );
}
