import { missingData, missingFigures } from '#shared-calc/bench/waits.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import { benchCsv } from '#shared-calc/papers/bench-csv.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { cautionJson } from '#electron/cli/cautions-answer.ts';
import { benchTable, orderCautions } from '#electron/cli/bench-table.ts';
import { columnSums } from '#electron/cli/column-sums.ts';
import type { Command } from '#electron/cli/command.ts';
import { jsonBox } from '#electron/cli/json-figure.ts';
import { jsonChecks } from '#electron/cli/order-checks.ts';
import { orderMisuse, orderOptions } from '#electron/cli/order-options.ts';
import { refusal } from '#electron/cli/outcome.ts';
import type { Arguments } from '#electron/cli/read-arguments.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';
import { unknownLines, workOrder, type WorkedOrder } from '#electron/cli/work-order.ts';

/** Sizes side by side, with every line, check and sum. */
export const benchCommand: Command = {
  name: 'bench',
  usage:
    'bench --sizes T03,T07x2,T05:H3 [--recipe H1] [--kit K] [--set line=RULE] [--lines a,b] [--csv]: sizes side by side',
  options: { ...orderOptions, ...bookOption, lines: 'text', basis: 'text', csv: 'flag', bom: 'flag' },
  misuse: orderMisuse,
  run: (given) =>
    withBook(given, (book) => {
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
  const names = given
    .text('lines')
    ?.split(',')
    .map((name) => name.trim());
  if (!names) return ok(all);
  const unknown = unknownLines(names, all);
  return unknown.length > 0 ? failed(unknown) : ok(all.filter((line) => names.includes(line.name)));
}

function benchJson(worked: WorkedOrder, lines: readonly Line[]) {
  const { bench, order, pricing, workshop } = worked;
  return {
    recipe: order.recipe,
    columns: order.columns.map(({ key, tank, count, recipe = order.recipe }) => ({
      size: key,
      tank: tank.id,
      recipe,
      count,
      lines: Object.fromEntries(lines.map((line) => [line.name, jsonBox(bench, bench.box(key, line.name))])),
      checks: jsonChecks(worked, key),
      missing: missingFigures(bench, key).map(missingData),
      ...columnSums({ bench, pricing, workshop }, key),
    })),
    cautions: orderCautions(worked, lines).map(cautionJson),
  };
}
