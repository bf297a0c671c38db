import { readTokens } from './read-tokens.ts';

/**
 * A rule's text with one line renamed; spacing and everything else stays. Also works in a rule with faults. Units,
 * functions and quoted words are not changed, even if they have the same letters.
 */
export function renameInRule(text: string, from: string, to: string): string {
  return replaceInRule(text, (name) => (name === from ? to : undefined));
}

/** The same with other text in place of some names. */
export function replaceInRule(text: string, textFor: (name: string) => string | undefined): string {
  const tokens = readTokens(text);
  let replaced = '';
  let copied = 0;
  for (const [at, token] of tokens.entries()) {
    const put = token.is === 'word' && tokens[at + 1]?.is !== 'open' ? textFor(token.word) : undefined;
    if (put === undefined) continue;
    replaced += text.slice(copied, token.from) + put;
    copied = token.to;
  }
  return replaced + text.slice(copied);
}
