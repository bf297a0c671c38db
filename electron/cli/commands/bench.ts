import { checksOf } from '#shared-calc/bench/checks.ts';
import { orderSums } from '#shared-calc/bench/order-sums.ts';
import { coinsText } from '#shared-calc/buy/coins.ts';
import { showValue, shownUnit } from '#shared-calc/quantity/shown-unit.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import { benchCsv } from '#shared-calc/papers/bench-csv.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { nearestName } from '#shared-calc/rule/nearest.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { stateWords } from '#shared-calc/words/state-words.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';
import type { Command } from '#electron/cli/command.ts';
import { jsonBox } from '#electron/cli/json-figure.ts';
import { orderOptions } from '#electron/cli/order-options.ts';
import { refusal } from '#electron/cli/outcome.ts';
import type { Arguments } from '#electron/cli/read-arguments.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';
import { workOrder, type WorkedOrder } from '#electron/cli/work-order.ts';

/** Sizes side by side: every line, check and sum. */
export const benchCommand: Command = {
  name: 'bench',
  usage: 'bench --sizes T03,T07x2 [--recipe H1] [--kit K] [--set line=RULE] [--lines a,b] [--csv]: sizes side by side',
  options: { ...orderOptions, ...bookOption, lines: 'text', basis: 'text', csv: 'flag', bom: 'flag' },
  run: (given) =>
    withBook(given, { whenMissing: 'make' }, (book) => {
      const worked = workOrder(given, book.records());
      if (!worked.ok) return refusal(...worked.fault);
      const lines = chosenLines(given, worked.value);
      if (!lines.ok) return refusal(...lines.fault);
      return {
        is: 'answer',
        json: benchJson(worked.value, lines.value),
        table: () => benchTable(worked.value, lines.value),
        csv: () => benchCsv(worked.value.bench, lines.value, displayOf(worked.value.workshop)),
      };
    }),
};

function chosenLines(given: Arguments, { bench }: WorkedOrder): Result<readonly Line[], readonly string[]> {
  const all = bench.input().lines;
  const asked = given.text('lines')?.split(',').map((name) => name.trim());
  if (!asked) return ok(all);
  const names = all.map((line) => line.name);
  const unknown = asked.filter((name) => !names.includes(name));
  if (unknown.length === 0) return ok(all.filter((line) => asked.includes(line.name)));
  return failed(
    unknown.map((name) => {
      const near = nearestName(name, names);
      return `Nothing called ${name}.${near === undefined ? '' : ` Did you mean ${near}?`}`;
    }),
  );
}

function benchJson({ bench, order, pricing, workshop }: WorkedOrder, lines: readonly Line[]) {
  const display = displayOf(workshop);
  return {
    recipe: order.recipe,
    columns: order.columns.map(({ key, tank, count }) => ({
      size: key,
      tank: tank.id,
      count,
      lines: Object.fromEntries(lines.map((line) => [line.name, jsonBox(bench.box(key, line.name))])),
      checks: checksOf(bench, key, display).map(({ line, level, holds, says, decides }) => ({
        line: line.name,
        level,
        holds: holds ?? null,
        says,
        decides,
      })),
      ...columnSums({ bench, order, pricing, workshop }, key),
    })),
  };
}

function columnSums({ bench, pricing, workshop }: WorkedOrder, column: string) {
  const sums = orderSums(bench, [column], pricing);
  if (!sums.ok) return { sums: null, fault: sayOrderFault(sums.fault) };
  const { costCoins, netCoins, grossCoins, depositCoins, hours } = sums.value.quote;
  const money = (coins: number) => coinsText(coins, workshop.coinDecimals);
  return {
    sums: {
      cost: money(costCoins),
      net: money(netCoins),
      tax: money(grossCoins - netCoins),
      gross: money(grossCoins),
      deposit: money(depositCoins),
      hours,
    },
  };
}

function benchTable(worked: WorkedOrder, lines: readonly Line[]): string {
  const { bench, order, workshop } = worked;
  const display = displayOf(workshop);
  const keys = order.columns.map((column) => column.key);
  const head = ['', '', ...order.columns.map(({ key, count }) => (count === 1 ? key : `${key} x${count}`))];
  const rows: (readonly string[])[] = [];
  let section = '';
  for (const line of lines) {
    if (line.section !== section) rows.push([line.section.toUpperCase()]);
    section = line.section;
    const boxes = keys.map((key) => bench.box(key, line.name));
    const shown = boxes.map((box) => [
      ...stateWords(box),
      ...(box.value === undefined ? [] : [showValue(box.value, line.unit, display)]),
    ]);
    rows.push([line.name, shownUnit(line.unit, display), ...shown.map((words) => words.join(' '))]);
  }
  return [
    textTable(head, rows, keys.map((_, at) => at + 2)),
    '',
    sumsTable(worked, keys),
    ...keys.flatMap((key) => failedChecks(worked, key)),
  ].join('\n');
}

function sumsTable(worked: WorkedOrder, keys: readonly string[]): string {
  const sums = keys.map((key) => columnSums(worked, key));
  const names = ['hours', 'cost', 'net', 'tax', 'gross', 'deposit'] as const;
  const rows = names.map((name) => [
    name,
    name === 'hours' ? 'h' : worked.workshop.currency,
    ...sums.map(({ sums: each }) => (each ? String(each[name]) : 'not known yet')),
  ]);
  return textTable(['SUMS', '', ...keys], rows, keys.map((_, at) => at + 2));
}

function failedChecks({ bench, workshop }: WorkedOrder, key: string): readonly string[] {
  return checksOf(bench, key, displayOf(workshop))
    .filter((check) => check.holds !== true)
    .map((check) => {
      const level = check.holds === undefined ? 'not known yet' : check.level;
      return `${key}  ${level}: ${check.says} ${check.decides} decides.`;
    });
}
