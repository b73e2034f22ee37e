import { type Result, success } from '../core/base';
import type { ClipAnswer, ClipJob } from './clip-messages';
import { type MakeOptions, makeEach } from './make-each';

const NOT_MADE =
  'The clip could not be made. Close other pages that need much memory, or take fewer bars, then try again.';

/** A finished clip. */
type Clip = NonNullable<ClipAnswer>;

/** Makes a clip in a worker of its own; null where it was called off. It never throws: a fault is a sentence. */
export async function makeClip(job: ClipJob, options: MakeOptions): Promise<Result<Clip | null, string>> {
  const made = await makeEach<ClipJob, Clip>(
    () => new Worker(new URL('./clip-worker.ts', import.meta.url), { type: 'module' }),
    [job],
    NOT_MADE,
    options,
  );
  return made.ok ? success(made.value?.[0] ?? null) : made;
}
