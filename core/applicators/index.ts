export type { LoadMix } from './loadMix.ts';
