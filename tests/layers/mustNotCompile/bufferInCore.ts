import '../../../core/kernel/index.ts';

// TS2591: core has no Node, and no geometry package may bring it in with its types
Buffer.from('');
