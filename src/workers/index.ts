export { answerJobs } from './answering';
export type { WorkerCall, WorkerReply } from './messages';
export { type AskOptions, type NoAnswer, PATIENCE, type WatchedWorker, watchWorker } from './watched';
