import { failed, ok, type Result } from '#shared-calc/result.ts';
import { nearestName } from '#shared-calc/rule/nearest.ts';
import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import type { Records, Tank } from '#shared-calc/records/records.ts';
import type { Arguments, OptionTable } from './read-arguments.ts';

/** The options that stand for an order. */
export const orderOptions = {
  recipe: 'text',
  sizes: 'text',
  kit: 'text',
  set: 'texts',
  job: 'text',
  on: 'text',
} as const satisfies OptionTable;

export interface Order {
  readonly recipe: string;
  readonly columns: readonly ColumnInput[];
  readonly job: ReadonlyMap<string, string>;
  /** The job's id, where the order stands for one. */
  readonly jobId?: string;
  /** Boxes written over on the command line itself, to be refused where they cannot be read. */
  readonly written: readonly { readonly column?: string; readonly line: string; readonly text: string }[];
}

interface Written {
  readonly column?: string;
  readonly line: string;
  readonly text: string;
}

/** Reads an order from its options: a job of the book, or a recipe and sizes. */
export function readOrder(given: Arguments, records: Records): Result<Order, string> {
  const job = given.text('job');
  const sizes = given.text('sizes');
  if (job !== undefined && sizes !== undefined) return failed('Give --job or --sizes, not both.');
  if (job === undefined && sizes === undefined) return failed('Say which sizes: --sizes T03,T07x2, or --job J01.');
  const base = job === undefined ? sizesOrder(given, sizes ?? '', records) : jobOrder(job, records);
  return base.ok ? writeOver(given, base.value) : base;
}

function sizesOrder(given: Arguments, sizes: string, records: Records): Result<Order, string> {
  const recipe = given.text('recipe') ?? 'H1';
  if (!records.recipe.has(recipe)) return failed(`No recipe called ${recipe}. ${known('Recipes', records.recipe)}`);
  const columns: ColumnInput[] = [];
  for (const word of sizes.split(',').map((each) => each.trim())) {
    const column = readSize(word, columns, records);
    if (!column.ok) return column;
    columns.push(column.value);
  }
  return ok({ recipe, columns, job: new Map(), written: [] });
}

/** `T07x2` is the tank T07, built twice; the second T07 of an order is `T07#2`. */
function readSize(word: string, before: readonly ColumnInput[], records: Records): Result<ColumnInput, string> {
  const parts = /^(.+?)(?:x(\d+))?$/.exec(word);
  const id = records.tank.has(word) ? word : (parts?.[1] ?? '');
  const tank = records.tank.get(id);
  if (!tank) return failed(unknownTank(id, records));
  const count = id === word ? 1 : Number(parts?.[2] ?? 1);
  if (count < 1 || count > 999) return failed(`${word}: build a size 1 to 999 times.`);
  return ok({ key: columnKey(tank, before), tank, label: tank.label, count, locals: new Map() });
}

export function columnKey(tank: Tank, before: readonly { readonly tank: Tank }[]): string {
  const same = before.filter((column) => column.tank.id === tank.id).length;
  return same === 0 ? tank.id : `${tank.id}#${same + 1}`;
}

function unknownTank(id: string, records: Records): string {
  const near = nearestName(id, [...records.tank.keys()]);
  return `No tank called ${id} in the tank book.${near === undefined ? '' : ` Did you mean ${near}?`}`;
}

function known(what: string, table: ReadonlyMap<string, unknown>): string {
  return `${what}: ${[...table.keys()].join(', ')}.`;
}

function jobOrder(id: string, records: Records): Result<Order, string> {
  const job = records.job.get(id);
  if (!job) return failed(`No job called ${id}. ${known('Jobs', records.job)}`);
  const locals = [...records.localValue.values()].filter((each) => each.job === id);
  const textsOf = (size: string | undefined) =>
    new Map(locals.filter((each) => each.size === size).map((each) => [each.line, each.text]));
  const sizes = [...records.size.values()].filter((each) => each.job === id).toSorted((a, b) => a.order - b.order);
  const columns: ColumnInput[] = [];
  for (const size of sizes) {
    const tank = records.tank.get(size.tank);
    if (!tank) return failed(unknownTank(size.tank, records));
    const key = columnKey(tank, columns);
    columns.push({ key, tank, label: size.label, count: size.count, locals: textsOf(size.id) });
  }
  return ok({ recipe: job.recipe, columns, job: textsOf(undefined), jobId: id, written: [] });
}

function writeOver(given: Arguments, order: Order): Result<Order, string> {
  const written: Written[] = [];
  const kit = given.text('kit');
  if (kit !== undefined) written.push({ line: 'kit', text: kit });
  for (const set of given.texts('set')) {
    const one = readSet(set, order.columns);
    if (!one.ok) return one;
    written.push(one.value);
  }
  const over = (column: string | undefined, start: ReadonlyMap<string, string>) =>
    new Map([...start, ...written.filter((each) => each.column === column).map((each) => [each.line, each.text] as const)]);
  return ok({
    ...order,
    job: over(undefined, order.job),
    columns: order.columns.map((column) => ({ ...column, locals: over(column.key, column.locals) })),
    written,
  });
}

/** `line=RULE` for the whole job, `T07.line=RULE` for one size, `T07#2.line=RULE` for its second column. */
export function readSet(set: string, columns: readonly ColumnInput[]): Result<Written, string> {
  const parts = /^(?:([^.=]+)\.)?([^.=\s]+)\s*=(.*)$/s.exec(set);
  const line = parts?.[2];
  if (line === undefined) return failed(`--set ${set}: write line=RULE, or T07.line=RULE for one size.`);
  const column = parts?.[1];
  const text = (parts?.[3] ?? '').trim();
  if (column === undefined) return ok({ line, text });
  if (columns.some((each) => each.key === column)) return ok({ column, line, text });
  return failed(`--set ${set}: no size ${column} in this order. Sizes: ${columns.map((each) => each.key).join(', ')}.`);
}
