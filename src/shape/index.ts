export * from './clip.ts';
export * from './flatten.ts';
export * from './inset.ts';
export * from './measure.ts';
export * from './outline.ts';
