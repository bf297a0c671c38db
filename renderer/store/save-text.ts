/** Long enough for any browser to have started saving the file. */
const KEPT_MS = 10_000;

/** Saves a text as a file of that name, in the folder where the browser or the desktop saves files. */
export function saveText(page: Document, name: string, text: string, kind = 'text/csv;charset=utf-8'): void {
  saveBlob(page, name, new Blob([text], { type: kind }));
}

/** The same for what is no text. */
export function saveBlob(page: Document, name: string, blob: Blob): void {
  const link = page.createElement('a');
  const address = URL.createObjectURL(blob);
  link.href = address;
  link.download = name;
  page.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(address), KEPT_MS);
}
