export * from './sheet-types';
export * from './types';
