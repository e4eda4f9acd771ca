import type { SourceFile, SourceImport } from '../support/sourceFiles.ts';

/** What core's small files at the root may be used by: everything in core. */
const GROUND = ['core/spaces', 'core/result', 'core/problems', 'core/units'];
const GEOMETRY = [...GROUND, 'core/frame', 'core/kernel', 'core/yard'];
const ZONES = [...GEOMETRY, 'core/curves', 'core/slope', 'core/area', 'core/zones'];
const PLANNING = [
  ...ZONES,
  'core/products',
  'core/applicators',
  'core/sections',
  'core/passes',
  'core/hose',
  'core/staking',
];
const ALL_CORE = [...PLANNING, 'core/fieldCheck', 'core/plan', 'core/edits', 'core/problemText'];

/** Who may import whom: a part of the project, and the parts it may import besides itself. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  'core/spaces': [],
  'core/units': GROUND,
  'core/problems': GROUND,
  'core/result': GROUND,
  'core/problemText': GROUND,
  'core/frame': [...GROUND, 'core/yard'],
  'core/earth': [...GROUND, 'core/frame'],
  'core/crs': [...GROUND, 'core/earth'],
  'core/kernel': GROUND,
  'core/yard': GEOMETRY,
  'core/tape': [...GEOMETRY, 'core/curves'],
  'core/edits': [...GEOMETRY, 'core/earth', 'core/curves'],
  'core/curves': GEOMETRY,
  'core/slope': GEOMETRY,
  'core/area': [...GEOMETRY, 'core/curves'],
  'core/fieldCheck': [...GEOMETRY, 'core/curves', 'core/area'],
  'core/zones': [...GEOMETRY, 'core/curves', 'core/slope', 'core/area'],
  'core/products': ZONES,
  'core/applicators': [...ZONES, 'core/products'],
  'core/sections': [...ZONES, 'core/applicators'],
  'core/passes': ZONES,
  'core/staking': [...ZONES, 'core/sections', 'core/tape'],
  'core/hose': [...ZONES, 'core/sections', 'core/passes'],
  'core/plan': PLANNING,
  'core/compare': [...ZONES, 'core/earth'],
  'core/sheet': ALL_CORE,
  'core/yardFile': [...ALL_CORE, 'core/earth'],
  'core/book': ALL_CORE,
  'electron/contract': ['core'],
  'electron/host': ['core', 'electron/contract'],
  'electron/shell': ['core', 'electron/contract', 'electron/host'],
  'electron/local': ['core', 'electron/contract', 'electron/host'],
  'electron/command': ['core', 'electron/contract', 'electron/host'],
  'electron/start': [],
  'renderer/drawing': ['core'],
  'renderer/planning': ['core'],
  'renderer/map': ['core', 'renderer/drawing', 'renderer/shared', 'renderer/app'],
  'renderer/shared': ['core', 'electron/contract', 'renderer/app', 'renderer/drawing', 'renderer/planning'],
};

/** Where the window is put together: the only place that knows the tasks. */
const WINDOW = ['renderer/app', 'renderer'];
/** A task of the book may import these, and never another task. */
const TASK_MAY_IMPORT = [
  'core',
  'electron/contract',
  'renderer/app',
  'renderer/map',
  'renderer/shared',
  'renderer/drawing',
  'renderer/planning',
];

/** The folders that may import a package; nearly always one. */
const PACKAGE_HOMES: Readonly<Record<string, readonly string[]>> = {
  'better-sqlite3': ['electron/host/yardFile/'],
  pdfkit: ['electron/host/pdf/'],
  electron: ['electron/shell/'],
  leaflet: ['renderer/map/'],
  'clipper2-ts': ['core/kernel/'],
  'polyclip-ts': ['core/kernel/'],
  proj4: ['core/earth/', 'core/crs/'],
  'proj4-list': ['core/crs/'],
};

/** The contract's code that runs in the window; the rest of it is imported for its types. */
const CONTRACT_IN_WINDOW = ['electron/contract/channels.ts', 'electron/contract/wire.ts'];

/** 'core/kernel' for core/kernel/union.ts, 'core/yard' for core/yard.ts, 'renderer' for renderer/main.tsx. */
export function partOf(path: string): string {
  const [first = '', second = ''] = path.split('/');
  if (path.split('/').length > 2) return `${first}/${second}`;
  return first === 'core' ? path.replace(/\.ts$/, '') : first;
}

/** What is wrong with an import, or undefined. */
export function faultOf(file: SourceFile, each: SourceImport): string | undefined {
  const fault = each.isOurs ? faultOfOurs(file.path, each) : faultOfPackage(file.path, each);
  return fault && `${file.path} imports ${each.target}: ${fault}`;
}

function faultOfOurs(path: string, { target, isTypeOnly }: SourceImport): string | undefined {
  const from = partOf(path);
  const to = partOf(target);
  if (target.startsWith('tests/')) return 'nothing imports tests';
  if (from === to) return undefined;
  if (target.startsWith('core/') && target.split('/').length > 2 && !/^core\/\w+\/index\.ts$/.test(target)) {
    return 'from outside, a core folder is imported by its index only';
  }
  const isTask = path.startsWith('renderer/') && MAY_IMPORT[from] === undefined && !WINDOW.includes(from);
  if (to === 'electron/contract' && path.startsWith('renderer/') && !isTypeOnly) {
    const isCarrier = from === 'renderer/app' && CONTRACT_IN_WINDOW.includes(target);
    if (!isCarrier) return 'the contract is imported for its types only';
  }
  if (WINDOW.includes(from)) {
    return target.startsWith('renderer/') || ['core', 'electron/contract'].some((part) => isIn(to, part))
      ? undefined
      : 'the window reaches the host by the contract only';
  }
  const allowed = isTask ? TASK_MAY_IMPORT : MAY_IMPORT[from];
  if (allowed === undefined) return `${from} has no line in the table`;
  return allowed.some((part) => isIn(to, part)) ? undefined : `${from} may not import ${to}`;
}

function isIn(part: string, wider: string): boolean {
  return part === wider || part.startsWith(`${wider}/`);
}

function faultOfPackage(path: string, { target, isTypeOnly }: SourceImport): string | undefined {
  const name = target.startsWith('@')
    ? target.split('/').slice(0, 2).join('/')
    : (target.split('/')[0] ?? '');
  const homes = PACKAGE_HOMES[name];
  const isAtHome = homes?.some((home) => path.startsWith(home)) ?? true;
  if (!isAtHome && !(name === 'electron' && isTypeOnly)) {
    return `only ${homes?.join(' and ')} may import ${name}`;
  }
  const isNode = target.startsWith('node:');
  if (isNode && (path.startsWith('core/') || path.startsWith('renderer/'))) return 'there is no Node here';
  if (path.startsWith('electron/contract/') && name !== 'zod')
    return 'the contract needs no package but the guards’';
  if (path.startsWith('electron/start/') && !isNode && !path.endsWith('buildShell.mjs')) {
    return 'a start script runs before the packages are there';
  }
  if (
    path.startsWith('electron/shell/') &&
    name === 'electron' &&
    !isTypeOnly &&
    !path.endsWith('preload.ts') &&
    !path.endsWith('main.ts')
  ) {
    return 'only main and preload have Electron itself; the rest is given it';
  }
  return undefined;
}
