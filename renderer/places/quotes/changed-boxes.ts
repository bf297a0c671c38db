import { frozenCalled } from '#shared-calc/papers/quote-sizes.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import type { FrozenWritten, QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import type { ChangedBy } from '#shared-calc/price/what-changed.ts';

/** A cell or a size that differs between two quotes, in words. */
export interface ChangedBox {
  readonly what: string;
  readonly from: string;
  readonly to: string;
  readonly by: ChangedBy;
}

/**
 * What was written differently in two issued quotes: sizes first, then cells for the whole job, then cells of sizes.
 */
export function changedBoxes(from: QuoteBody, to: QuoteBody): readonly ChangedBox[] {
  const label = (name: string) => {
    const line = to.lines.find((each) => each.name === name) ?? from.lines.find((each) => each.name === name);
    return line ? lineLabel(line) : name;
  };
  const sizes = changedSizes(from, to);
  const whole = changedIn(from.whole, to.whole, label);
  const columns = to.columns.flatMap((column) => {
    const before =
      from.columns.find(({ size }) => size === column.size) ?? from.columns.find(({ key }) => key === column.key);
    return changedIn(before?.locals ?? [], column.locals, (name) => `${label(name)} of ${frozenCalled(column)}`);
  });
  return [...sizes, ...whole, ...columns];
}

function changedSizes(from: QuoteBody, to: QuoteBody): readonly ChangedBox[] {
  const stand = ({ columns }: QuoteBody) => columns.map(({ key, count }) => `${key} ${count}`).join();
  const say = ({ columns }: QuoteBody) =>
    columns
      .map((column) => (column.count === 1 ? frozenCalled(column) : `${frozenCalled(column)} × ${column.count}`))
      .join(', ');
  return stand(from) === stand(to) ? [] : [{ what: 'Sizes', from: say(from), to: say(to), by: 'client' }];
}

const house = 'as the house';

function changedIn(
  before: readonly FrozenWritten[],
  after: readonly FrozenWritten[],
  label: (line: string) => string,
): readonly ChangedBox[] {
  const was = new Map(before.map((box) => [box.line, box]));
  const is = new Map(after.map((box) => [box.line, box]));
  return [...new Set([...was.keys(), ...is.keys()])].flatMap((line) => {
    const [old, next] = [was.get(line), is.get(line)];
    if (old?.text === next?.text) return [];
    const by = next?.by ?? old?.by ?? 'us';
    return [{ what: label(line), from: textOf(old), to: textOf(next), by }];
  });
}

function textOf(box: FrozenWritten | undefined): string {
  if (!box) return house;
  return box.text === '' ? 'no figure' : box.text;
}
