import '../../../core/kernel/index.ts';

// TS2304: core has no time to wait for
setTimeout(() => {}, 1);
