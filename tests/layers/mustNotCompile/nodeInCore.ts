import '../../../core/kernel/index.ts';
// TS2591: core has no disk
import { readFileSync } from 'node:fs';

readFileSync('');
