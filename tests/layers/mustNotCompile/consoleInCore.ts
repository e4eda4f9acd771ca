import '../../../core/kernel/index.ts';

// TS2584: core says what it has to say by its results
console.log('');
