export type { Coverage, Pass } from './pass.ts';
