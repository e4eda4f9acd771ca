import '../../../core/kernel/index.ts';

// TS2584: core has no screen, and no geometry package may bring one in with its types
document.title;
