export * from './exhaustive';
export * from './metre';
export * from './note';
export * from './pitch';
export * from './random';
export * from './result';
export * from './units';
