/** What a refusal of the browser's storage means where students are kept. */

const NO_DATABASE =
  'This browser does not let the page keep students (a private window, or storage is switched off), so nothing was kept.';
const FULL =
  'The room this browser gives the page is full, so this was not kept. Remove lessons you no longer need (Lessons, The whole shelf), then try again.';
const NEWER =
  'The students on this device are kept by a newer Ground Bass than this page. It cannot open them, and changes nothing of them. Reload the page to get the newer one.';

export const SILENT =
  "This browser's storage has not answered for three seconds, so nothing was kept. Try again in a moment.";

/** The names of the errors are those of the Storage Standard and the Indexed Database API. */
export function describeRegisterFault(fault: unknown): string {
  const name = fault instanceof Error ? fault.name : '';
  return name === 'QuotaExceededError' ? FULL : name === 'VersionError' ? NEWER : NO_DATABASE;
}
