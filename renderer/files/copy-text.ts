/** Copies text through the page's own copy event, which needs no permission; `false` if the browser refuses. */
export function copyText(page: Document, text: string): boolean {
  const put = (event: ClipboardEvent) => {
    event.clipboardData?.setData('text/plain', text);
    event.preventDefault();
  };
  page.addEventListener('copy', put, { once: true, capture: true });
  const done = page.execCommand('copy');
  page.removeEventListener('copy', put, { capture: true });
  return done;
}
