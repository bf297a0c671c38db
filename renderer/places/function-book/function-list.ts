import type { ListCell, ListPaper } from '#renderer/print/list-paper.ts';
import { letterheadOf } from '#shared-calc/papers/letterhead-of.ts';
import type { Workshop } from '#shared-calc/records/records.ts';
import type { TradeFunction } from '#shared-calc/trade/trade-function.ts';
import { argumentWords, functionGroups, givesWords } from './function-words.ts';

/** The whole function book: what each function works out, of what, and where it comes from. */
export function functionList(workshop: Workshop): ListPaper {
  return {
    letterhead: letterheadOf(workshop),
    notes: ['Functions without a name in rules work over lists or dates.'],
    names: [{ key: 'name', head: 'Function', figure: false }],
    columns: [
      { key: 'title', head: 'What it works out', figure: false },
      { key: 'args', head: 'Of', figure: false },
      { key: 'gives', head: 'Gives', figure: false },
      { key: 'source', head: 'Source', figure: false },
    ],
    groups: functionGroups().map(({ title, functions }) => ({
      key: title,
      head: title,
      rows: functions.map((each) => ({ key: each.name, cellOf: (column) => cellOf(each, column) })),
    })),
  };
}

function cellOf({ name, title, args, gives, source, inRules }: TradeFunction, column: string): ListCell {
  const cells: Readonly<Record<string, string>> = {
    name: inRules ? name : '',
    title,
    args: args
      .map((each) => [each.name, argumentWords(each).unit].filter((words) => words !== '').join(' '))
      .join(', '),
    gives: givesWords(gives).replace(/^gives /, ''),
    source,
  };
  return { text: cells[column] ?? '' };
}
