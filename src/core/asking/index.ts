export { AT_SIGHT } from './at-sight';
export { type AskedOfBlank, askedOfBlank, promptsFor, promptWords } from './prompts';
export { chosenQuestions, questionSeed, questionsOf } from './questions';
export { DIFFICULTIES, type Difficulty, QUESTION_KINDS, type Question, type QuestionKind } from './types';
