export * from './both-rules.ts';
export * from './length.ts';
export * from './reading.ts';
export * from './result.ts';
export * from './writing.ts';
