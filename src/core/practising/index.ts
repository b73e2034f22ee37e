export { addEntry, diaryText, entryWords } from './diary';
export {
  EMPTY_RECORD,
  hearingDelay,
  type LastPractice,
  type PracticeEntry,
  type PracticeRecord,
  parseRecord,
  remember,
  withHearingDelay,
} from './record';
export { lastWords, settingsOf } from './remembered';
export { loadAfter, NO_LOAD, restStanding } from './rest';
export { closed, hear, type Moment, type Stretch } from './stretch';
