import { useEffect, useState } from 'react';
import { FileButton } from '../../controls';

const NOT_PLAYED =
  'This file is no recording that this browser can play. Ask for the one that the practice page saved, or open it in another browser. Nothing was changed.';

/** A recording that came beside a report: listened to from its file, and kept nowhere. */
export function RecordingFromHome({ where }: { readonly where: string }) {
  const [address, setAddress] = useState<string | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  useEffect(() => () => (address === null ? undefined : URL.revokeObjectURL(address)), [address]);
  return (
    <div className="register__recording">
      <FileButton
        accept="audio/*,video/webm,.webm,.ogg,.m4a"
        onChoose={async (file) => {
          setFault(null);
          setAddress(URL.createObjectURL(file));
        }}
      >
        Listen to a recording<span className="visually-hidden"> {where}</span>
      </FileButton>
      {address !== null && (
        // biome-ignore lint/a11y/useMediaCaption: a bass that is played has no words
        <audio
          controls
          src={address}
          aria-label={`Recording from home ${where}`}
          onError={() => {
            setAddress(null);
            setFault(NOT_PLAYED);
          }}
        />
      )}
      {fault !== null && <p role="alert">{fault}</p>}
    </div>
  );
}
