import { storedText } from '#shared-calc/recipe/stored-text.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { sayBoxFault } from '#shared-calc/words/say-box-cause.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { joinLines } from '#shared-calc/bench/column-lines.ts';
import { columnKey } from '#shared-calc/jobs/job-sheet.ts';
import { splitSize } from '#shared-calc/jobs/read-sizes.ts';
import { lineFor } from '#shared-calc/recipe/lines-by-use.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { didYouMean } from '#shared-calc/rule/did-you-mean.ts';
import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import type { Line, Records } from '#shared-calc/records/records.ts';
import type { Arguments, OptionTable } from './read-arguments.ts';

/** The options that define an order. */
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
  /** The usual lines: of the recipe, or as its job was sold. A size may have its own. */
  readonly lines: readonly Line[];
  readonly columns: readonly ColumnInput[];
  /** Sizes that `--size` leaves out; they stand at the place all the same. */
  readonly beside: readonly ColumnInput[];
  readonly job: ReadonlyMap<string, string>;
  /** The job's id, if the order is a job. */
  readonly jobId?: string;
  /** Overrides from the command line; they are refused if they cannot be parsed. */
  readonly written: readonly { readonly column?: string; readonly line: string; readonly text: string }[];
}

interface Written {
  readonly column?: string;
  readonly line: string;
  readonly text: string;
}

/** Checks the options of an order before the book is opened. */
export function orderMisuse(given: Arguments): string | undefined {
  const [word] = given.words;
  if (word !== undefined) return `What is ${word} for? Sizes are given as --sizes T03,T07x2.`;
  const [job, sizes] = [given.text('job'), given.text('sizes')];
  if (job !== undefined && sizes !== undefined) return 'Give --job or --sizes, not both.';
  if (job === undefined && sizes === undefined) return 'Say which sizes: --sizes T03,T07x2, or --job J01.';
  return undefined;
}

/** Reads an order from its options: a job of the book, or a recipe and sizes. */
export function readOrder(given: Arguments, derived: Derived): Result<Order, string> {
  const misuse = orderMisuse(given);
  if (misuse !== undefined) return failed(misuse);
  const job = given.text('job');
  const base = job === undefined ? sizesOrder(given, given.text('sizes') ?? '', derived) : jobOrder(job, derived);
  if (!base.ok) return base;
  const whole = writeOver(given, base.value, derived);
  return whole.ok ? onlySize(given.text('size'), whole.value) : whole;
}

/** `--size T07` selects one size of an order. */
function onlySize(size: string | undefined, order: Order): Result<Order, string> {
  if (size === undefined) return ok(order);
  const keys = order.columns.map(({ key }) => key);
  if (!keys.includes(size)) {
    return failed(`--size ${size}: no such size in this order. Sizes: ${keys.join(', ')}.${didYouMean(size, keys)}`);
  }
  return ok({
    ...order,
    columns: order.columns.filter(({ key }) => key === size),
    beside: order.columns.filter(({ key }) => key !== size),
    written: order.written.filter(({ column }) => column === undefined || column === size),
  });
}

function sizesOrder(given: Arguments, sizes: string, { records, lines }: Derived): Result<Order, string> {
  const recipe = given.text('recipe') ?? 'H1';
  if (!records.recipe.has(recipe)) return failed(unknown('recipe', recipe, records.recipe));
  const columns: ColumnInput[] = [];
  for (const word of sizes.split(',').map((each) => each.trim())) {
    const column = readSize(word, columns, records);
    if (!column.ok) return column;
    const { recipe: own = recipe, ...rest } = column.value;
    columns.push(own === recipe ? rest : { ...rest, recipe: own, lines: lines(own) });
  }
  return ok({ recipe, lines: lines(recipe), columns, beside: [], job: new Map(), written: [] });
}

/** `T05:H3x2` is the tank T05 by the recipe H3, built twice; the second T05 of an order is `T05#2`. */
function readSize(word: string, before: readonly ColumnInput[], records: Records): Result<ColumnInput, string> {
  if (word === '') return failed('--sizes has an empty place; write the sizes as T03,T07x2.');
  const { tank: code, count, recipe } = splitSize(word, records);
  const tank = records.tank.get(code);
  if (!tank) return failed(unknownTank(code, records));
  if (recipe !== undefined && !records.recipe.has(recipe)) return failed(unknown('recipe', recipe, records.recipe));
  if (count < 1 || count > 999) return failed(`${word}: build a size 1 to 999 times.`);
  const own = recipe === undefined ? {} : { recipe };
  return ok({ key: columnKey(tank, before), tank, label: '', count, locals: new Map(), ...own });
}

function unknownTank(id: string, records: Records): string {
  return `No tank called ${id} in the tank book.${didYouMean(id, records.tank.keys())}`;
}

/** Of many known names only the nearest is suggested. */
function unknown(what: string, id: string, table: ReadonlyMap<string, unknown>): string {
  const all = table.size > 0 && table.size <= 12 ? ` There are: ${[...table.keys()].join(', ')}.` : '';
  return `No ${what} called ${id}.${didYouMean(id, table.keys())}${all}`;
}

function jobOrder(id: string, derived: Derived): Result<Order, string> {
  const job = derived.job(id);
  if (!job) return failed(unknown('job', id, derived.records.job));
  const { columns, job: whole } = job.bench.input();
  return ok({ recipe: job.job.recipe, lines: job.lines, columns, beside: [], job: whole, jobId: id, written: [] });
}

function writeOver(given: Arguments, order: Order, { records }: Derived): Result<Order, string> {
  const written: Written[] = [];
  const kit = given.text('kit');
  if (kit !== undefined) {
    const names = new Set(listsOf(order).flatMap((lines) => lineFor(lines, 'kit')?.name ?? []));
    if (names.size === 0) return failed(`No kit level is given in recipe ${order.recipe}.`);
    for (const line of names) written.push({ line, text: kit });
  }
  for (const set of given.texts('set')) {
    const one = readSet(set, order.columns);
    if (!one.ok) return one;
    const parsed = keep(one.value, joinLines(listsOf(order, one.value.column)), records);
    if (!parsed.ok) return parsed;
    written.push(parsed.value);
  }
  const over = (column: string | undefined, start: ReadonlyMap<string, string>) =>
    new Map([
      ...start,
      ...written.filter((each) => each.column === column).map((each) => [each.line, each.text] as const),
    ]);
  return ok({
    ...order,
    job: over(undefined, order.job),
    columns: order.columns.map((column) => ({ ...column, locals: over(column.key, column.locals) })),
    written,
  });
}

/** The lists of lines of an order, or of one of its sizes. */
function listsOf({ columns, lines: usual }: Order, key?: string): readonly (readonly Line[])[] {
  const some = columns.filter((column) => key === undefined || column.key === key);
  return some.map(({ lines = usual }) => lines);
}

/** A figure in the book's notation, whatever decimal sign the workshop uses. */
function keep(one: Written, lines: readonly Line[], records: Records): Result<Written, string> {
  const line = lines.find(({ name }) => name === one.line);
  if (!line) return ok(one);
  const stored = storedText(one.text, line, workshopOf(records).decimalComma);
  return stored.ok ? ok({ ...one, text: stored.value }) : failed(`${one.line}: ${sayBoxFault(stored.fault, one.line)}`);
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
