import { spawnSync } from 'node:child_process';

/** What another program said. */
export interface Said {
  readonly out: string;
  readonly err: string;
}

/** Runs one of GDAL's programs; a missing one says what to install, a failing one what it complained of. */
export function gdal(program: 'ogrinfo' | 'ogr2ogr', ...args: string[]): Said {
  return run(program, args);
}

/** GDAL's own check of a GeoPackage against the standard, with the further checks it knows. */
export function validateGeoPackage(path: string): Said {
  const script = ['-m', 'osgeo_utils.samples.validate_gpkg', '--extra', '--warning-as-error', path];
  return run('/usr/bin/python3', script);
}

function run(program: string, args: readonly string[]): Said {
  const ended = spawnSync(program, args, { encoding: 'utf8', env: { ...process.env, LC_ALL: 'C.UTF-8' } });
  if (ended.error !== undefined || /No module named/.test(ended.stderr)) {
    throw new Error(`${program} cannot be run; on Debian: apt-get install gdal-bin. ${ended.stderr ?? ''}`);
  }
  if (ended.status !== 0) throw new Error(`${program} ${args.join(' ')}: ${ended.stdout}${ended.stderr}`);
  return { out: ended.stdout, err: ended.stderr };
}
