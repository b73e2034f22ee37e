export { COMMAND_GROUPS, type Command, type CommandGroup } from './command';
export { COMMANDS, commandById } from './commands';
export { type Desk, deskOf, harmonyAt, lengthOf, notesIn } from './context';
export { goTo, select, selectNone, selectTo, setRunning } from './go';
export {
  commandFor,
  type KeyPress,
  keysOf,
  keyText,
  namesOfPress,
  type OwnKeys,
  readOwnKeys,
  whyNoKey,
  withKey,
} from './keys';
export { moveTo, toValue } from './lengths';
export { type Mend, mend, type Wholeness, wholenessOf } from './mend';
export { nameFor, scaleStepFrom } from './pitch';
export { toPitch } from './pitches';
export { atHand, fitPencil, newPencil, selectedNotes, selectionOf, settled, stopsIn } from './places';
export { struckIn } from './played-in';
export { inTurn, ontoString, staffPitch, toStaffStep, writeOnStaff } from './pointing';
export { stillSaid } from './remarks';
export { type RhythmChoice, rhythmChoices } from './rhythms';
export { wordAbove, writeWord } from './signs';
export { barTime, quantised, type Tap, tapped } from './taps';
export * from './types';
export { NOTE_VALUES } from './values';
export { announce, describeAtHand, mendWords, refusalWords, stepName, withFindings } from './words';
export { degreePitch, placePitch, target, writeDegree, writeFromIdea, writeMidi, writePlace } from './write';
