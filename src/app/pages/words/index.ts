export {
  chordsOf,
  degreesLine,
  describeFacts,
  describePiece,
  describeScore,
  describeTechniques,
} from './describe';
