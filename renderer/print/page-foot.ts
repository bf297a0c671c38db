import { useLayoutEffect } from 'preact/hooks';

/** Sets the foot of every printed page, left of its number. Before the next paint, as `usePaperName` does. */
export function usePageFoot(words: string): void {
  useLayoutEffect(() => putPageFoot(document, words), [words]);
}

/** Made in code: the words depend on the paper, and the content policy allows no inline style in the page. */
function putPageFoot(page: Document, words: string): () => void {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(footRule(words));
  page.adoptedStyleSheets = [...page.adoptedStyleSheets, sheet];
  return () => {
    page.adoptedStyleSheets = page.adoptedStyleSheets.filter((each) => each !== sheet);
  };
}

/** Escapes text from outside: quotes, backslashes and line ends are written as their code points. */
export function footRule(words: string): string {
  const safe = words.replaceAll(/["\\\p{Cc}]/gu, (sign) => `\\${sign.codePointAt(0)?.toString(16)} `);
  const look = 'font: 7.75pt sans-serif; color: #333; vertical-align: top; padding-top: 2mm;';
  return `@page {
  @bottom-left { content: "${safe}"; ${look} }
  @bottom-right { content: "page " counter(page) " of " counter(pages); ${look} }
}`;
}
