import { lackRoute } from '#renderer/frame/lack-route.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { countMissing, sayMissingFigure } from '#shared-calc/buy/say-missing.ts';
import type { Missing } from '#shared-calc/buy/missing.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { Caution } from './caution.tsx';
import { Link } from './link.tsx';
import css from './lack-note.module.css';

interface LackParts {
  /** Guesses among them. */
  readonly missing: readonly Missing[];
  readonly jobs: readonly string[];
  readonly records: Pick<Records, 'line'>;
}

/** What sums wait for, with the way to where it is given, all prices in one list and all measurements in another; nothing under whole sums. */
export function LackNote({ missing, jobs, records }: LackParts) {
  if (missing.length === 0) return null;
  const prices = missing.filter(({ what }) => what === 'price');
  const measures = missing.filter(({ what }) => what === 'measure');
  const inList = jobs.length > 0 && measures.length > 1;
  const others = missing.filter(({ what }) => what !== 'price' && !(inList && what === 'measure'));
  return (
    <Caution role="status">
      <p>{countMissing(missing)}: what is not known counts as nothing here.</p>
      <ul class={css['list']}>
        {prices.length > 0 && (
          <li>
            <Link href={writeRoute('prices', ...jobs)}>
              {prices.length === 1 ? '1 price' : `${prices.length} prices`}, in one list
            </Link>
          </li>
        )}
        {inList && (
          <li>
            <Link href={writeRoute('measures', ...jobs)}>{measures.length} measurements, in one list</Link>
          </li>
        )}
        {others.map((each) => (
          <li key={`${each.what} ${each.of} ${each.label}`}>
            <Link href={lackRoute(each, records, jobs)}>{sayMissingFigure(each)}</Link>
          </li>
        ))}
      </ul>
    </Caution>
  );
}
