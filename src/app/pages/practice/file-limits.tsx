import { listed } from '../../../core/base';

/** What this browser lacks that the page uses where it is there, and what happens instead. */
function missing(kept: boolean): readonly string[] {
  return [
    ...(kept ? [] : ['remember where you were']),
    ...('wakeLock' in navigator ? [] : ['keep the screen awake']),
    ...(navigator.mediaDevices === undefined ? ['listen for the tuner and to your playing'] : []),
    ...('mediaSession' in navigator ? [] : ['hear the buttons of headphones']),
  ];
}

/** Says what the page cannot do here: a file that was opened from the downloads may do less than a page on the web. */
export function FileLimits({ kept }: { readonly kept: boolean }) {
  const isFile = window.location.protocol === 'file:';
  const lacks = missing(kept);
  if (lacks.length === 0 && !isFile) return null;
  const tunes = navigator.mediaDevices === undefined ? 'it hears' : 'it tunes, but hears';
  const more = isFile
    ? ` This page is a file on this device: ${tunes} your playing only where it is opened on the web; a browser may ask for the microphone each time, forget what a file kept when it is moved, and offer no installing. All else works without a network.`
    : '';
  return (
    <p className="practice__kept">
      {lacks.length > 0 && `In this browser the page cannot ${listed(lacks)}; all else works.`}
      {more}
    </p>
  );
}
