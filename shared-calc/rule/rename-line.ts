import { readTokens } from './read-tokens.ts';

/**
 * A rule's text with one line renamed; spacing and everything else stays. Also works in a rule with faults. Units,
 * functions and quoted words are not changed, even if they have the same letters.
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
