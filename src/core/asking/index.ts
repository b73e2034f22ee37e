export { chosenQuestions, MOST_QUESTIONS, questionsOf } from './questions';
export { DIFFICULTIES, type Difficulty, QUESTION_KINDS, type Question, type QuestionKind } from './types';
