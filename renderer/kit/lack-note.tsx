import type { QuotePart } from '#shared-calc/papers/quote-part.ts';
import { sayPart } from '#shared-calc/papers/quote-part.ts';
import { sayMissingFigure } from '#shared-calc/buy/say-missing.ts';
import { lackRoute } from '#renderer/frame/lack-route.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { Caution } from './caution.tsx';
import { Link } from './link.tsx';

interface LackParts extends QuotePart {
  readonly job?: string | undefined;
  readonly records: Pick<Records, 'tank' | 'plant' | 'line'>;
}

/** What sums wait for, each figure with the way to where it is given; nothing under whole sums. */
export function LackNote({ missing, guesses, job, records }: LackParts) {
  if (missing.length === 0 && guesses.length === 0) return null;
  return (
    <Caution role="status">
      <p>{sayPart({ missing, guesses })}. What is not known counts as nothing here.</p>
      <ul>
        {missing.map((each) => (
          <li key={`${each.what} ${each.of} ${each.label}`}>
            <Link href={lackRoute(each, records, job)}>{sayMissingFigure(each)}</Link>
          </li>
        ))}
        {guesses.map(({ of, label }) => (
          <li key={of}>
            <Link href={lackRoute({ what: 'price', of, label }, records, job)}>price of {label}, a guess</Link>
          </li>
        ))}
      </ul>
    </Caution>
  );
}
