import { linesOf } from '#shared-calc/recipe/lines-of.ts';
import { renamedLine } from '#shared-calc/recipe/rename-line.ts';
import type { HouseChange, IssuedQuote, Job, Line, Records, Tank } from '#shared-calc/records/records.ts';
import { renameInRule } from '#shared-calc/rule/rename-line.ts';
import { answerOf, changesOf, withChange } from './house-changes.ts';
import { readQuoteBody, type FrozenWritten, type QuoteBody } from './quote-body.ts';
import { bodyInCoins } from './rescale-body.ts';

/** The house that a sold job is worked in: that of its quote, with the changes it took. */
export interface SoldHouse {
  readonly quote: IssuedQuote;
  /** As issued, under the names that lines have now and in the coins of now. */
  readonly body: QuoteBody;
  readonly lines: readonly Line[];
  readonly tanks: ReadonlyMap<string, Tank>;
  /** Changes that it took since the quote, in order of day. */
  readonly taken: readonly HouseChange[];
  /** Changes in force that are not in the quote, answered or not. */
  readonly since: readonly HouseChange[];
}

const bodies = new WeakMap<IssuedQuote, { readonly is: QuoteBody | undefined }>();

/** The body of an issued quote, parsed once. */
export function bodyOf(quote: IssuedQuote): QuoteBody | undefined {
  const known = bodies.get(quote) ?? { is: readQuoteBody(quote.body) };
  bodies.set(quote, known);
  return known.is;
}

/** The quote that a job is sold as; none if it is not sold, or the quote cannot be read. */
export function soldQuote({ issuedQuote }: Pick<Records, 'issuedQuote'>, { soldAs }: Job): IssuedQuote | undefined {
  const quote = soldAs === undefined ? undefined : issuedQuote.get(soldAs);
  return quote && bodyOf(quote) ? quote : undefined;
}

interface Now {
  /** The lines of its recipe as they are now. */
  readonly lines: readonly Line[];
  /** All changes of its recipe. */
  readonly changes: readonly HouseChange[];
  readonly coinDecimals: number;
}

export function soldHouse(quote: IssuedQuote, job: string, now: Now): SoldHouse | undefined {
  const issued = bodyOf(quote);
  if (!issued) return undefined;
  const body = underNames(bodyInCoins(issued, now.coinDecimals), renamedSince(issued.lines, now.lines));
  const known = new Set(issued.changes);
  const since = now.changes.filter(({ id, inForceOn }) => inForceOn !== undefined && !known.has(id));
  const taken = since.filter((change) => answerOf(change, job)?.answer === 'take');
  const lines = taken.reduce(withChange, body.lines);
  return { quote, body, lines, taken, since, tanks: new Map(body.columns.map(({ tank }) => [tank.id, tank])) };
}

type Tables = Pick<Records, 'recipe' | 'line' | 'difference' | 'issuedQuote' | 'houseChange' | 'workshop'>;

/** The lines that a job is worked from: those it was sold with, else its recipe's. */
export function jobLines(records: Tables, job: Job): readonly Line[] {
  const lines = linesOf(records, job.recipe);
  const quote = soldQuote(records, job);
  if (!quote) return lines;
  const coinDecimals = records.workshop.get('workshop')?.coinDecimals ?? 2;
  return soldHouse(quote, job.id, { lines, changes: changesOf(records, job.recipe), coinDecimals })?.lines ?? lines;
}

type Renames = ReadonlyMap<string, string>;

/** Names of lines that were renamed since a quote was issued. */
function renamedSince(then: readonly Line[], now: readonly Line[]): Renames {
  const names = new Map(now.map(({ id, name }) => [id, name]));
  const taken = new Set(then.map(({ name }) => name));
  const renames = new Map<string, string>();
  for (const { id, name } of then) {
    const next = names.get(id);
    if (next !== undefined && next !== name && !taken.has(next)) renames.set(name, next);
  }
  return renames;
}

function underNames(body: QuoteBody, renames: Renames): QuoteBody {
  if (renames.size === 0) return body;
  const inText = (text: string) => [...renames].reduce((so, [from, to]) => renameInRule(so, from, to), text);
  const nameOf = (line: string) => renames.get(line) ?? line;
  const written = (list: readonly FrozenWritten[]) =>
    list.map((each) => ({ ...each, line: nameOf(each.line), text: inText(each.text) }));
  return {
    ...body,
    lines: body.lines.map((line) => [...renames].reduce((so, [from, to]) => renamedLine(so, from, to), line)),
    whole: written(body.whole),
    columns: body.columns.map(({ given, ...column }) => ({
      ...column,
      locals: written(column.locals),
      ...(given && { given: given.map((each) => ({ ...each, line: nameOf(each.line) })) }),
    })),
  };
}

/** Whether a job is worked from its quote; what it writes over stands on the lines of that. */
export function isSold(records: Pick<Records, 'job' | 'issuedQuote'>, id: string): boolean {
  const job = records.job.get(id);
  return job !== undefined && soldQuote(records, job) !== undefined;
}
