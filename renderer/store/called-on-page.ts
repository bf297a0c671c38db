import { tradeFunctions } from '#shared-calc/trade/all-functions.ts';
import type { Called } from '#shared-calc/words/called.ts';
import { inSentence, type LineFaces } from './line-faces.ts';

/** The page calls a line by its label, and an argument by its name in words with what it means behind it. */
export function calledOnPage(faceOf: LineFaces['of'] = () => undefined): Called {
  return {
    line: (name) => inSentence(faceOf(name)?.label ?? name),
    lineFirst: (name) => faceOf(name)?.label ?? name,
    argument: (fn, name) => {
      const words = name.replaceAll('_', ' ');
      const meaning = tradeFunctions.find((each) => each.name === fn)?.args.find((each) => each.name === name)?.says;
      return `${words.charAt(0).toUpperCase()}${words.slice(1)}${meaning === undefined ? '' : ` (${meaning})`}`;
    },
  };
}
