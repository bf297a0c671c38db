import { commasInBrackets, readTokens } from './read-tokens.ts';

/** A rule's text with `;` between the arguments of its functions, as it is shown where the decimal comma is set. */
export function separated(text: string): string {
  const tokens = readTokens(text);
  let shown = '';
  let copied = 0;
  for (const at of commasInBrackets(tokens)) {
    const { from = 0, to = 0 } = tokens[at] ?? {};
    const gap = /\s/.test(text[to] ?? ' ') ? '' : ' ';
    shown += `${text.slice(copied, from)};${gap}`;
    copied = to;
  }
  return shown + text.slice(copied);
}
