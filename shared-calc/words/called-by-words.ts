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

/** A line by its label, within a sentence; one that the recipe does not have by its name. */
export function calledLine({ of }: Labels, name: string): string {
  return inSentence(of(name)?.label ?? name);
}

/**
 * A line is called by its label, a size by the name it was given, an argument by its name in words with what it means
 * behind it.
 */
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

/** The same for the lines and sizes of a bench as they are. */
export function calledByLines({ lines, columns }: Named): Called {
  const labels = new Map(lines.map((line) => [line.name, { label: lineLabel(line) }]));
  return calledByWords({ of: (name) => labels.get(name) }, columns);
}
