import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, posix } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

export interface SourceImport {
  /** What is imported: a path from the project's root ('core/yard.ts'), or a package's name as written. */
  readonly target: string;
  readonly isOurs: boolean;
  /** Gone when the types are stripped, so it couples nothing at run time. */
  readonly isTypeOnly: boolean;
  /** Fetched by itself when it is wanted, or run in a worker. */
  readonly isApart: boolean;
}

export interface SourceFile {
  /** From the project's root, with '/'. */
  readonly path: string;
  readonly text: string;
  /** The text with comments and the insides of strings blanked, line for line. */
  readonly code: string;
  readonly imports: readonly SourceImport[];
}

/** Every source file under some folders of the project. */
export function readSources(...folders: readonly string[]): readonly SourceFile[] {
  return folders.flatMap((folder) => pathsUnder(folder)).map(readSource);
}

/** Every path under a folder of the project, files only, in order. */
export function pathsUnder(folder: string): readonly string[] {
  return readdirSync(join(ROOT, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(ts|tsx|mjs)$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name).slice(ROOT.length).replaceAll('\\', '/'))
    .sort();
}

function readSource(path: string): SourceFile {
  const text = readFileSync(join(ROOT, path), 'utf8');
  return { path, text, code: withoutCommentsAndStrings(text), imports: importsIn(path, text) };
}

/** Import and export statements, dynamic imports, and files a worker is started from. */
const STATEMENTS = [
  /^(?:import|export)\s+(type\s)?[^'"`;]*?\sfrom\s*['"]([^'"]+)['"]/gm,
  /^import\s*()['"]([^'"]+)['"]/gm,
  /(?<!typeof )\bimport\(\s*()['"]([^'"]+)['"]\s*\)/gm,
  /\bnew URL\(\s*()['"](\.[^'"]+\.tsx?)['"]/gm,
];

function importsIn(path: string, text: string): readonly SourceImport[] {
  return STATEMENTS.flatMap((statement) => [...text.matchAll(statement)]).map(([whole, type, name = '']) => {
    const isOurs = name.startsWith('.');
    const target = isOurs ? posix.join(dirname(path), name) : name;
    const isTypeOnly = Boolean(type) || namesOnlyTypes(whole);
    return { target, isOurs, isTypeOnly, isApart: /^(import|new URL)\(/.test(whole) };
  });
}

/** `import { type A, type B } from`. */
function namesOnlyTypes(statement: string): boolean {
  const names = /\{([^}]*)\}/
    .exec(statement)?.[1]
    ?.split(',')
    .filter((name) => name.trim() !== '');
  return names !== undefined && names.length > 0 && names.every((name) => name.trim().startsWith('type '));
}

/** Comments, quoted text and plain template text; code inside `${}` stays only as far as it has no quotes. */
const INERT = /\/\*[\s\S]*?\*\/|\/\/[^\n]*|'(?:\\.|[^'\\\n])*'|"(?:\\.|[^"\\\n])*"/g;

function withoutCommentsAndStrings(text: string): string {
  return text.replace(INERT, (inert) => inert.replace(/[^\n]/g, ' '));
}
