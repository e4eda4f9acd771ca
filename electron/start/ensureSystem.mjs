// The programs the tests ask for an independent answer, and the browser they click in: Debian's packages.
import { run, isOnPath, giveUp, say } from './tools.mjs';

/** A command, and the Debian package that has it. */
const NEEDED = [
  ['chromium', 'chromium'],
  ['pdftotext', 'poppler-utils'],
  ['ogrinfo', 'gdal-bin'],
  ['Planimeter', 'geographiclib-tools'],
];

/** Installs what is missing where that is allowed, and says what to install where it is not. */
export function ensureSystem() {
  const missing = NEEDED.filter(([command]) => !isOnPath(command)).map(([, name]) => name);
  if (missing.length === 0) return;
  const list = missing.join(' ');
  const isRoot = process.getuid?.() === 0;
  const maySudo = !isRoot && isOnPath('sudo') && run('sudo', ['-n', 'true']) === 0;
  if (!isOnPath('apt-get') || !(isRoot || maySudo)) {
    giveUp(`the tests need ${list} (Debian’s names). Install them, then run this again.`);
  }
  say(`installing ${list} (apt-get), a minute or two …`);
  const environment = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const aptGet = (...args) =>
    isRoot ? run('apt-get', args, environment) : run('sudo', ['-n', '-E', 'apt-get', ...args], environment);
  if (
    aptGet('-qq', 'update') !== 0 ||
    aptGet('-qq', 'install', '-y', '--no-install-recommends', ...missing) !== 0
  ) {
    giveUp(`apt-get could not install ${list}. See its words above.`);
  }
}
