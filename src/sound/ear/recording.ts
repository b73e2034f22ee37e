/** What a microphone hears, kept in memory until it is taken or forgotten. */
export interface Recording {
  /** Ends it; null where nothing was taken in. */
  end(): Promise<Blob | null>;
}

/** Records a microphone into memory; null where the browser does not. */
export function record(stream: MediaStream): Recording | null {
  if (typeof MediaRecorder === 'undefined') return null;
  try {
    const recorder = new MediaRecorder(stream);
    const parts: Blob[] = [];
    const ended = new Promise<void>((resolve) => {
      recorder.addEventListener('stop', () => resolve(), { once: true });
    });
    recorder.addEventListener('dataavailable', ({ data }) => {
      if (data.size > 0) parts.push(data);
    });
    recorder.start(1000);
    return {
      end: async () => {
        if (recorder.state !== 'inactive') recorder.stop();
        await ended;
        return parts.length === 0 ? null : new Blob(parts, { type: recorder.mimeType });
      },
    };
  } catch {
    return null;
  }
}
