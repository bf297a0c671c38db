import { renamedLine } from '#shared-calc/recipe/rename-line.ts';
import type { HouseChange, IssuedQuote, Job, Line, Records, Tank } from '#shared-calc/records/records.ts';
import { sameData } from '#shared-calc/records/same-data.ts';
import { renameInRule } from '#shared-calc/rule/rename-line.ts';
import { answerOf, byDay, withChange } from './house-changes.ts';
import { frozenHouses, readQuoteBody, type FrozenWritten, type QuoteBody } from './quote-body.ts';
import { bodyInCoins } from './rescale-body.ts';

/** The house that a sold job is worked in: that of its quote, with the changes it took. */
export interface SoldHouse {
  readonly quote: IssuedQuote;
  /** As issued, under the names that lines have now and in the coins of now. */
  readonly body: QuoteBody;
  /** The usual lines. */
  readonly lines: readonly Line[];
  /** The lines of a recipe, for a tank where it was sold with lines of its own; none for a recipe that was not sold. */
  readonly linesOf: (recipe: string, tank?: string) => readonly Line[] | undefined;
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

/** A recipe as it is now. */
interface HouseNow {
  readonly lines: readonly Line[];
  readonly changes: readonly HouseChange[];
}

interface Now {
  /** Of every recipe in the quote. */
  readonly houses: ReadonlyMap<string, HouseNow>;
  readonly coinDecimals: number;
}

/** The recipes that an issued quote was worked from. */
export function soldRecipes(quote: IssuedQuote): readonly string[] {
  const body = bodyOf(quote);
  return body ? [...new Set(frozenHouses(body).map(({ recipe }) => recipe.id))] : [];
}

export function soldHouse(quote: IssuedQuote, job: string, { houses, coinDecimals }: Now): SoldHouse | undefined {
  const issued = bodyOf(quote);
  if (!issued) return undefined;
  const body = underNames(bodyInCoins(issued, coinDecimals), (recipe) => houses.get(recipe)?.lines ?? []);
  const known = new Set(issued.changes);
  const changes = [...houses.values()].flatMap((house) => house.changes).toSorted(byDay);
  const since = changes.filter(({ id, inForceOn }) => inForceOn !== undefined && !known.has(id));
  const taken = since.filter((change) => answerOf(change, job)?.answer === 'take');
  const linesOf = soldLines(body, taken);
  const tanks = new Map(body.columns.map(({ tank }) => [tank.id, tank]));
  return { quote, body, lines: linesOf(body.recipe.id) ?? [], linesOf, taken, since, tanks };
}

/** The lines of a tank are those of its column in the quote, with the changes that hold for it. */
function soldLines(body: QuoteBody, taken: readonly HouseChange[]): SoldHouse['linesOf'] {
  const houses = frozenHouses(body);
  const known = new Map<string, readonly Line[]>();
  return (recipe, tank) => {
    const isOf = (house = 0) => houses[house]?.recipe.id === recipe;
    const column = body.columns.find((each) => each.tank.id === tank && isOf(each.house));
    const at = column ? (column.house ?? 0) : houses.findIndex((_, house) => isOf(house));
    const house = houses[at];
    if (!house) return undefined;
    const usual = houses.find((_, each) => isOf(each)) ?? house;
    const own = taken.filter(
      (change) => change.recipe === recipe && holdsFor(change, tank) && !isOfOthers(change, house.lines, usual.lines),
    );
    const key = [at, ...own.map(({ id }) => id)].join('\n');
    const lines = known.get(key) ?? own.reduce(withChange, house.lines);
    known.set(key, lines);
    return lines;
  };
}

/** A change for all tanks of a line that this tank has otherwise than the others. */
function isOfOthers({ for: tanks, before }: HouseChange, own: readonly Line[], usual: readonly Line[]): boolean {
  if (tanks !== undefined || before === undefined || own === usual) return false;
  const [here, there] = [own, usual].map((lines) => lines.find(({ id }) => id === before.id));
  return !sameData(here, there);
}

/** Whether a change holds for a tank; one for some tanks alone does not hold for the others. */
export function holdsFor({ for: tanks }: HouseChange, tank: string | undefined): boolean {
  return tanks === undefined || (tank !== undefined && tanks.includes(tank));
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

/** A body under the names that the lines of each of its recipes have now. */
function underNames(body: QuoteBody, linesNow: (recipe: string) => readonly Line[]): QuoteBody {
  const renames = frozenHouses(body).map(({ recipe, lines }) => renamedSince(lines, linesNow(recipe.id)));
  if (renames.every(({ size }) => size === 0)) return body;
  const of = (house = 0) => renamer(renames[house] ?? new Map());
  return {
    ...body,
    lines: of().lines(body.lines),
    ...(body.houses && {
      houses: body.houses.map(({ lines, ...house }, at) => ({ ...house, lines: of(at + 1).lines(lines) })),
    }),
    whole: of().written(body.whole),
    columns: body.columns.map(({ given, ...column }) => ({
      ...column,
      locals: of(column.house).written(column.locals),
      ...(given && { given: given.map((each) => ({ ...each, line: of(column.house).name(each.line) })) }),
    })),
  };
}

function renamer(renames: Renames) {
  const inText = (text: string) => [...renames].reduce((so, [from, to]) => renameInRule(so, from, to), text);
  const name = (line: string) => renames.get(line) ?? line;
  return {
    name,
    lines: (lines: readonly Line[]) =>
      lines.map((line) => [...renames].reduce((so, [from, to]) => renamedLine(so, from, to), line)),
    written: (list: readonly FrozenWritten[]) =>
      list.map((each) => ({ ...each, line: name(each.line), text: inText(each.text) })),
  };
}

/** Whether a job is worked from its quote; what it writes over stands on the lines of that. */
export function isSold(records: Pick<Records, 'job' | 'issuedQuote'>, id: string): boolean {
  const job = records.job.get(id);
  return job !== undefined && soldQuote(records, job) !== undefined;
}
