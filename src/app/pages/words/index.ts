export {
  chordsOf,
  countOf,
  degreesLine,
  describeBar,
  describeFacts,
  describePiece,
  describeScore,
  describeTechniques,
  stringName,
} from './describe';
