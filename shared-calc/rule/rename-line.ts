import { readTokens } from './read-tokens.ts';

/**
 * A rule's text with one line's name put for another, spacing and all else kept. Works in a rule that has
 * faults too. Units, functions and words in quotes are not touched, even where they read the same.
 */
export function renameInRule(text: string, from: string, to: string): string {
  const tokens = readTokens(text);
  let renamed = '';
  let copied = 0;
  for (const [at, token] of tokens.entries()) {
    if (token.is !== 'word' || token.word !== from || tokens[at + 1]?.is === 'open') continue;
    renamed += text.slice(copied, token.from) + to;
    copied = token.to;
  }
  return renamed + text.slice(copied);
}
