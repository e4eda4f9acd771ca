import { type SheetPage, sheetToSvg } from '../../core/sheet/index.ts';

interface PaperViewProps {
  readonly page: SheetPage | undefined;
  readonly imageUrls: ReadonlyMap<string, string>;
}

/** One printed page as it will come out, in place of the sketch. Paper is white by day and by night. */
export function PaperView({ page, imageUrls }: PaperViewProps) {
  if (page === undefined) {
    return (
      <div className="paper-table">
        {<p className="said">The sheet appears here once there is a plan.</p>}
      </div>
    );
  }
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a small window scrolls the paper, by keyboard too
    <section className="paper-table" aria-label="The sheet" tabIndex={0}>
      <div
        className="paper"
        role="img"
        aria-label="Printed page"
        // biome-ignore lint/security/noDangerouslySetInnerHtml: made by core, which escapes every text it is given
        dangerouslySetInnerHTML={{ __html: sheetToSvg(page, (hash) => imageUrls.get(hash) ?? null) }}
      />
    </section>
  );
}
