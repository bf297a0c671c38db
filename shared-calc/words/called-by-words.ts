import { inSentence, lineLabel } from '#shared-calc/recipe/line-label.ts';
import { calledOf, type ColumnInput } from '#shared-calc/recipe/column.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { capital } from '#shared-calc/rule/capital.ts';
import { functionInRules } from '#shared-calc/trade/all-functions.ts';
import type { Called } from './called.ts';

/** Lines by name, each with its label. */
export interface Labels {
  readonly of: (name: string) => { readonly label: string } | undefined;
}

type Sizes = readonly Pick<ColumnInput, 'key' | 'label'>[];

const noLabels: Labels = { of: () => undefined };

/** A line by its label, inside a sentence; an unknown line by its name. */
export function calledLine({ of }: Labels, name: string): string {
  return inSentence(of(name)?.label ?? name);
}

/** Lines by their label, sizes by their given name, arguments by their name in words with their meaning after it. */
export function calledByWords(labels = noLabels, sizes: Sizes = []): Called {
  return {
    line: (name) => calledLine(labels, name),
    lineFirst: (name) => labels.of(name)?.label ?? name,
    size: (key) => calledOf(sizes.find((size) => size.key === key) ?? { key, label: '' }),
    argument: (fn, name) => {
      const meaning = functionInRules(fn)?.args.find((each) => each.name === name)?.says;
      return `${capital(name.replaceAll('_', ' '))}${meaning === undefined ? '' : ` (${meaning})`}`;
    },
  };
}

interface Named {
  readonly lines: readonly Line[];
  readonly columns: Sizes;
}

/** The same for the lines and sizes of a bench. */
export function calledByLines({ lines, columns }: Named): Called {
  const labels = new Map(lines.map((line) => [line.name, { label: lineLabel(line) }]));
  return calledByWords({ of: (name) => labels.get(name) }, columns);
}
