import { useEffect, useState } from 'react';
import { CheckField } from '../../controls';
import type { Hearing } from './use-hearing';

/** Whether a recording is made, which is not done unless it is ticked; and the last one, to be listened to. */
export function KeptRecording({ recording: { asked, ask, recorded } }: Pick<Hearing, 'recording'>) {
  const [address, setAddress] = useState<string | null>(null);
  useEffect(() => {
    if (recorded === null) return setAddress(null);
    const made = URL.createObjectURL(recorded);
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [recorded]);
  if (typeof MediaRecorder === 'undefined')
    return <p>This browser records nothing, so the report goes without a recording.</p>;
  return (
    <div className="listening__recording">
      <CheckField label="Record what I play, for my teacher" checked={asked} onChange={ask} />
      {asked && (
        <p>
          It stays in this page’s memory until you save it beside the report, and is gone when you take the
          tick away or leave.
        </p>
      )}
      {address !== null && (
        // biome-ignore lint/a11y/useMediaCaption: a bass that is played has no words
        <audio controls src={address} aria-label="What you played" />
      )}
    </div>
  );
}
