import type { Result } from '../../core/result.ts';
import { draftingScales, scaleWords, type SheetPage as PrintedPage } from '../../core/sheet/index.ts';
import { useBook, useOpenYard, usePlanState, useSessionState } from '../app/context.ts';
import { ChoiceField } from '../shared/ChoiceField.tsx';
import { download } from '../shared/download.ts';
import { PagePart } from '../shared/PageHead.tsx';
import { YardHead } from '../shared/YardHead.tsx';
import { PlanNews } from '../shared/PlanNews.tsx';
import { ProblemLines } from '../shared/ProblemLines.tsx';
import type { Paper, SheetWish } from './useSheet.ts';

interface SheetPageProps {
  readonly wish: SheetWish;
  readonly onWish: (wish: SheetWish) => void;
  readonly sheet: Result<readonly PrintedPage[]> | null;
  readonly shown: number;
  readonly onShow: (page: number) => void;
}

const PAPERS = [
  ['letter', 'Letter, 8.5 × 11 in'],
  ['a4', 'A4, 210 × 297 mm'],
] as const;

/** The plan on paper: which paper, which scale, which page is looked at, and saving it. */
export function SheetPage({ wish, onWish, sheet, shown, onShow }: SheetPageProps) {
  const { session } = useBook();
  const { file } = useSessionState();
  const { yard } = useOpenYard();
  const { stale } = usePlanState();
  const units = yard.details.unitSystem;
  const pages = sheet?.ok ? sheet.value : [];

  async function save(): Promise<void> {
    if (file === null || pages.length === 0) return;
    const title = `${yard.details.name}, plan of ${yard.details.groundDate}`;
    const made = await session.ask('Making the PDF', () =>
      session.host.makePdf({ yard: file.handle, title, madeAt: new Date().toISOString(), pages }),
    );
    if (made !== null) download(made);
  }

  return (
    <>
      <YardHead title="Sheet" />
      <PlanNews />
      <PagePart title="Paper" aside="printed exactly to scale; print at 100 %">
        <ChoiceField<Paper>
          label="paper"
          value={wish.paper}
          choices={PAPERS}
          onChoose={(paper) => onWish({ ...wish, paper })}
        />
        <ChoiceField
          label="scale of the whole yard"
          value={String(wish.scale)}
          choices={[
            ['auto', 'the largest that fits'] as const,
            ...draftingScales(units).map((scale) => [String(scale), scaleWords(scale, units)] as const),
          ]}
          onChoose={(scale) => onWish({ ...wish, scale: scale === 'auto' ? 'auto' : Number(scale) })}
        />
      </PagePart>
      {sheet !== null && !sheet.ok && <ProblemLines problems={sheet.problems} units={units} />}
      {pages.length > 0 && (
        <PagePart title="Pages" aside={`${pages.length} to print`}>
          <div className="do-row">
            {pages.map((page, i) => (
              <button
                // biome-ignore lint/suspicious/noArrayIndexKey: a page is its number
                key={i}
                type="button"
                className="do"
                aria-pressed={i === shown}
                onClick={() => onShow(i)}
                title={`${page.widthMm} × ${page.heightMm} mm`}
              >
                {i + 1}
              </button>
            ))}
          </div>
          <div className="do-row">
            <button type="button" className="do do-main" disabled={stale} onClick={() => void save()}>
              save as PDF
            </button>
          </div>
          <p className="said">
            Each map page carries a 100 mm check line: lay a ruler on it after printing. If it is not 100 mm,
            the printer has shrunk the page.
          </p>
        </PagePart>
      )}
    </>
  );
}
