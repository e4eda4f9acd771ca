import { formatDay } from '../../core/units/index.ts';
import { useOpenYard } from '../app/context.ts';
import { PageHead } from './PageHead.tsx';

interface YardHeadProps {
  readonly title: string;
  readonly about?: string | undefined;
}

/** The head of a page of the open yard: to the right which yard, and the ground of which day. */
export function YardHead({ title, about }: YardHeadProps) {
  const { details } = useOpenYard().yard;
  const aside = (
    <>
      {details.name}
      <br />
      ground of {formatDay(details.groundDate)}
    </>
  );
  return <PageHead title={title} about={about} aside={aside} />;
}
