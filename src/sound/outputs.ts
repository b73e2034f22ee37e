/**
 * The outputs the browser tells of, by their names for the page; before the page may know the names, one nameless
 * entry stands for all of them. Null where the browser tells nothing.
 */
async function outputsOf(devices: MediaDevices): Promise<ReadonlySet<string> | null> {
  try {
    const all = await devices.enumerateDevices();
    return new Set(all.flatMap(({ kind, deviceId }) => (kind === 'audiooutput' ? [deviceId] : [])));
  } catch {
    return null;
  }
}

/**
 * Calls `onGone` when an output that was there when the watch began is there no longer: headphones that are pulled
 * out must not turn the loudspeakers on. Asks for no permission.
 * @returns ends the watch
 */
export function watchOutputs(onGone: () => void): () => void {
  const devices: MediaDevices | undefined = Reflect.get(navigator, 'mediaDevices');
  if (devices === undefined) {
    return () => {};
  }
  let over = false;
  const before = outputsOf(devices);
  const look = async (): Promise<void> => {
    const [then, now] = await Promise.all([before, outputsOf(devices)]);
    if (over || then === null || now === null) {
      return;
    }
    if ([...then].some((output) => !now.has(output))) {
      onGone();
    }
  };
  const onChange = (): void => {
    void look();
  };
  devices.addEventListener('devicechange', onChange);
  return () => {
    over = true;
    devices.removeEventListener('devicechange', onChange);
  };
}
