/**
 * Puts text on the clipboard; where the window may not, by way of a field that is selected and copied.
 *
 * @returns whether it is there now
 */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return copyBySelection(text);
  }
}

function copyBySelection(text: string): boolean {
  const held = document.activeElement;
  const field = document.createElement('textarea');
  field.className = 'unseen';
  field.value = text;
  document.body.append(field);
  field.select();
  const done = document.execCommand('copy');
  field.remove();
  if (held instanceof HTMLElement) held.focus();
  return done;
}
