/** What a refusal of the browser's storage means to the teacher. */

const NO_DATABASE =
  'This browser does not let the page keep lessons (a private window, or storage is switched off). Save the lesson as a file before you close the page.';
const FULL =
  'The room this browser gives the page is full. Save the lesson as a file, then remove lessons you no longer need (Lessons, The whole shelf).';
const NEWER =
  'The lessons on this device are kept by a newer Ground Bass than this page. It cannot open them, and changes nothing of them. Save the lesson at hand as a file, then reload the page to get the newer one.';

/** Said while the storage gives no answer at all; nothing throws it. */
export const SILENT =
  "This browser's storage has not answered for three seconds, so nothing is kept on this device at the moment. The page goes on in memory: save the lesson as a file before you close it. Saving starts again by itself when the storage answers.";

const nameOf = (fault: unknown): string => (fault instanceof Error ? fault.name : '');

/** The names of the errors are those of the Storage Standard and the Indexed Database API. */
export function describeStorageFault(fault: unknown): string {
  switch (nameOf(fault)) {
    case 'QuotaExceededError':
      return FULL;
    case 'VersionError':
      return NEWER;
    default:
      return NO_DATABASE;
  }
}

/** Whether a database was closed or cleared under the hands of whoever was using it: then it is worth opening again. */
export const isGone = (fault: unknown): boolean => /^(InvalidState|Abort|Unknown)Error$/.test(nameOf(fault));
