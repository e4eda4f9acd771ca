import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A file system of its own, of a few hundred kilobytes. */
export interface SmallDisk {
  readonly folder: string;
  /** From now on nobody can write to it, root included. */
  makeReadOnly(): void;
  /** The same for one file in it. */
  makeFileReadOnly(path: string): void;
  remove(): void;
}

/** Whether this process may mount file systems; without that, only SQLite's own limits can be tried. */
export function canMount(): boolean {
  const disk = tryMount(64);
  disk?.remove();
  return disk !== null;
}

export function smallDisk(kilobytes: number): SmallDisk {
  const disk = tryMount(kilobytes);
  if (disk === null) throw new Error('this process may not mount a file system');
  return disk;
}

function tryMount(kilobytes: number): SmallDisk | null {
  const folder = mkdtempSync(join(tmpdir(), 'platpace-disk-'));
  const mount = (...args: string[]) => spawnSync('mount', args).status === 0;
  if (!mount('-t', 'tmpfs', '-o', `size=${kilobytes}k`, 'tmpfs', folder)) {
    rmSync(folder, { recursive: true });
    return null;
  }
  const bound: string[] = [];
  return {
    folder,
    makeReadOnly: () => {
      if (!mount('-o', 'remount,ro', folder)) throw new Error('remounting read-only failed');
    },
    makeFileReadOnly: (path) => {
      const done = mount('--bind', path, path) && mount('-o', 'remount,ro,bind', path);
      if (!done) throw new Error('remounting a file read-only failed');
      bound.push(path);
    },
    remove: () => {
      for (const path of bound) spawnSync('umount', ['-l', path]);
      // Lazily: after a failed test a store may still have its file open.
      if (spawnSync('umount', ['-l', folder]).status !== 0) throw new Error(`${folder} cannot be unmounted`);
      rmSync(folder, { recursive: true });
    },
  };
}
