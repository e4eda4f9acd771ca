/** The folder of a path, whichever system's separators it has. */
export function folderOf(path: string): string {
  const at = Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\'));
  const folder = path.slice(0, Math.max(at, 0));
  // '/lot.gpkg' lies in '/', 'C:\lot.gpkg' in 'C:\'.
  return folder === '' || /^[A-Za-z]:$/.test(folder) ? path.slice(0, at + 1) : folder;
}
