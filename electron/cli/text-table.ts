/** A table as text: each column is as wide as its longest entry, with figures at the right. */
export function textTable(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  right: readonly number[] = [],
): string {
  const all = [head, ...rows];
  const widths = head.map((_, at) => Math.max(...all.map((row) => widthOf(row[at] ?? ''))));
  const put = (row: readonly string[]) =>
    widths
      .map((width, at) => pad(row[at] ?? '', width, right.includes(at)))
      .join('  ')
      .trimEnd();
  const rule = put(widths.map((width) => '-'.repeat(width)));
  return [put(head), rule, ...rows.map(put)].join('\n');
}

function pad(text: string, width: number, atRight: boolean): string {
  const gap = ' '.repeat(Math.max(0, width - widthOf(text)));
  return atRight ? gap + text : text + gap;
}

function widthOf(text: string): number {
  return Array.from(text).length;
}
