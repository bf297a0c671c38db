import type { QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import { surveyLines } from '#shared-calc/jobs/survey-job.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { lineLabel } from './bench-csv.ts';
import { frozenText } from './quote-sizes.ts';

export interface QuoteFindings {
  /** What was found at the survey or assumed. Where sizes differ, each says its own. */
  readonly assumed: readonly { readonly label: string; readonly value: string }[];
  /** Checks that do not hold or are not known yet, then the standing cautions; each with who decides. */
  readonly cautions: readonly { readonly says: string; readonly decides: string; readonly sizes: readonly string[] }[];
  /** Days within which plants that die are replaced once, by the kit; the longest of the sizes. */
  readonly plantsReplacedDays: number | undefined;
}

const replacedDays: Readonly<Record<string, number>> = { basic: 14, full: 30, show: 90 };

/** What a printed quote says beside its prices, from the frozen body. */
export function quoteFindings(body: QuoteBody): QuoteFindings {
  return {
    assumed: surveyLines(body.lines).flatMap((line) => assumedOf(line, body)),
    cautions: [...cautionsOf(body)],
    plantsReplacedDays: replacedWithin(body),
  };
}

function assumedOf(line: Line, body: QuoteBody): QuoteFindings['assumed'] {
  const values = body.columns.flatMap(({ key, figures }) => {
    const value = figures[line.name];
    return value === undefined ? [] : [{ key, text: frozenText(value, line, body) }];
  });
  const texts = new Set(values.map(({ text }) => text));
  if (texts.size === 0) return [];
  const [only = ''] = texts;
  const value = texts.size === 1 ? only : values.map(({ key, text }) => `${key} ${text}`).join(', ');
  return [{ label: lineLabel(line), value }];
}

function* cautionsOf({ columns, lines }: QuoteBody): Generator<QuoteFindings['cautions'][number]> {
  const failing = columns.flatMap(({ key, checks }) =>
    checks.filter((check) => check.holds !== true).map(({ says, decides }) => ({ says, decides, key })),
  );
  for (const [says, same] of Map.groupBy(failing, (check) => check.says)) {
    yield { says, decides: same[0]?.decides ?? '', sizes: same.map(({ key }) => key) };
  }
  const standing = lines.filter((line) => line.caution !== undefined);
  for (const [says = '', [line]] of Map.groupBy(standing, ({ caution }) => caution)) {
    yield { says, decides: line?.decides ?? '', sizes: [] };
  }
}

function replacedWithin({ columns }: QuoteBody): number | undefined {
  const days = columns.flatMap(({ figures }) => replacedDays[String(figures['kit'])] ?? []);
  return days.length === 0 ? undefined : Math.max(...days);
}
