import { type ReactNode, useState } from 'react';
import { copyText } from './copyText.ts';
import { PagePart } from './PageHead.tsx';

interface WorkingFoldProps {
  readonly aside: string;
  /** What the working is made from; a copy made of an earlier one is not said to be made of this. */
  readonly of: unknown;
  /** The whole of it as plain text, made when it is copied. */
  readonly text: () => string;
  /** Shown whether it is open or not. */
  readonly always?: ReactNode;
  /** Made when it is open. */
  readonly children: () => ReactNode;
}

/** How a figure comes about, to be checked by hand or copied; closed until asked for. */
export function WorkingFold({ aside, of, text, always, children }: WorkingFoldProps) {
  const [open, setOpen] = useState(false);
  const [said, setSaid] = useState<{ readonly of: unknown; readonly words: string } | null>(null);

  async function copy(): Promise<void> {
    const done = await copyText(text());
    setSaid({ of, words: done ? 'copied' : 'this window could not copy' });
  }

  return (
    <PagePart title="Working" aside={aside}>
      {always}
      <div className="do-row">
        <button type="button" className="do" aria-expanded={open} onClick={() => setOpen(!open)}>
          {open ? 'hide' : 'show the working'}
        </button>
        {open && (
          <>
            <button type="button" className="do" onClick={() => void copy()}>
              copy
            </button>
            <span className="note" role="status">
              {said !== null && said.of === of ? said.words : ''}
            </span>
          </>
        )}
      </div>
      {open && children()}
    </PagePart>
  );
}
