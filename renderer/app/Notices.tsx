import type { UnitSystem } from '../../core/yard.ts';
import { ProblemWords } from '../shared/ProblemLines.tsx';
import { useBook, useSessionState } from './context.ts';
import type { Notice } from './session.ts';

/** What the person should know, at the foot of the left page, until put away. */
export function Notices({ units }: { readonly units: UnitSystem }) {
  const { session } = useBook();
  const { notices } = useSessionState();
  if (notices.length === 0) return null;
  return (
    <ul className="notices" aria-live="polite">
      {notices.map((notice) => (
        <li key={keyOf(notice)}>
          <p>
            {notice.kind === 'problem' ? (
              <ProblemWords problem={notice.problem} units={units} />
            ) : (
              notice.text
            )}
          </p>
          <button type="button" className="do" onClick={() => session.dismiss(notice)}>
            put away
          </button>
        </li>
      ))}
    </ul>
  );
}

function keyOf(notice: Notice): string {
  return notice.kind === 'problem' ? JSON.stringify(notice.problem) : notice.text;
}
