export {
  capitalised,
  chordsOf,
  countOf,
  degreesLine,
  describeBar,
  describeFacts,
  describePiece,
  describeScore,
  describeTechniques,
  listOf,
  stringName,
} from './describe';
