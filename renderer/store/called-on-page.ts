import { capital } from '#shared-calc/rule/capital.ts';
import { functionInRules } from '#shared-calc/trade/all-functions.ts';
import type { Called } from '#shared-calc/words/called.ts';
import { calledLine, type LineFaces } from './line-faces.ts';

const noFaces: Pick<LineFaces, 'of'> = { of: () => undefined };

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
