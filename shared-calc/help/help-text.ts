/** A stretch of a help text: plain, the name of an act, or a link to a topic. */
export type HelpSpan =
  | { readonly is: 'text'; readonly words: string }
  | { readonly is: 'act'; readonly words: string }
  | { readonly is: 'link'; readonly to: string; readonly words: string };

/** Parses a help text: `{dam}` and `{dam|dams}` are links to topics, `*Undo*` is what stands on a button. */
export function helpSpans(text: string, titleOf: (id: string) => string): readonly HelpSpan[] {
  return text.split(/(\{[^}]+\}|\*[^*]+\*)/).flatMap((part): readonly HelpSpan[] => {
    if (part === '') return [];
    if (part.startsWith('*')) return [{ is: 'act', words: part.slice(1, -1) }];
    if (!part.startsWith('{')) return [{ is: 'text', words: part }];
    const [to = '', words = titleOf(to)] = part.slice(1, -1).split('|');
    return [{ is: 'link', to, words }];
  });
}

/** The same text without marks. */
export function plainHelp(text: string, titleOf: (id: string) => string): string {
  return helpSpans(text, titleOf)
    .map(({ words }) => words)
    .join('');
}
