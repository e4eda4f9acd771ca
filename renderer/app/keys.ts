import type { Session } from './session.ts';
import { PAGES, type View } from './view.ts';

/**
 * Keys that hold everywhere in the book: undo, redo and the tabs. Keys of the sketch are the map's.
 *
 * @returns true when the key was one of them
 */
export function bookKey(event: KeyboardEvent, session: Session, view: View): boolean {
  const command = event.ctrlKey || event.metaKey;
  const key = event.key.toLowerCase();
  if (command && !event.altKey && (key === 'z' || key === 'y')) {
    // In a field the browser's own undo takes back what was typed.
    if (isTyping(event.target)) return false;
    view.input({ kind: 'interrupted' });
    if (key === 'y' || event.shiftKey) session.redo();
    else session.undo();
    return true;
  }
  const tab = PAGES[Number(event.key) - 1];
  if (event.altKey && !command && tab && (session.snapshot().yard !== null || tab.page === 'yards')) {
    view.go(tab.page);
    return true;
  }
  return false;
}

function isTyping(target: EventTarget | null): boolean {
  if (target instanceof HTMLTextAreaElement) return target.value !== '';
  return target instanceof HTMLInputElement && target.value !== '' && target.type !== 'checkbox';
}
