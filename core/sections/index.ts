export type { CutLine, Section } from './section.ts';
