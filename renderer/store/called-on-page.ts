import { lineLabel } from '#shared-calc/papers/bench-csv.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { capital } from '#shared-calc/rule/capital.ts';
import { functionInRules } from '#shared-calc/trade/all-functions.ts';
import type { Called } from '#shared-calc/words/called.ts';
import { calledLine, type Labels } from './line-faces.ts';

const noFaces: Labels = { of: () => undefined };

/** The page calls a line by its label, and an argument by its name in words with what it means behind it. */
export function calledOnPage(faces = noFaces): Called {
  return {
    line: (name) => calledLine(faces, name),
    lineFirst: (name) => faces.of(name)?.label ?? name,
    argument: (fn, name) => {
      const meaning = functionInRules(fn)?.args.find((each) => each.name === name)?.says;
      return `${capital(name.replaceAll('_', ' '))}${meaning === undefined ? '' : ` (${meaning})`}`;
    },
  };
}

/** The same for a recipe's lines as they are. */
export function calledByLines(lines: readonly Line[]): Called {
  const labels = new Map(lines.map((line) => [line.name, { label: lineLabel(line) }]));
  return calledOnPage({ of: (name) => labels.get(name) });
}
