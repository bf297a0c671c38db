import { readAnswer } from '#shared-calc/contract/read-answer.ts';
import { sessionHeaders } from '#renderer/session-secret.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';

/** Sends a book from the browser's machine; the program takes a copy into its own folder and opens it. */
export async function sendBook(file: File): Promise<Result<string, string>> {
  const headers = { ...sessionHeaders(), 'content-type': 'application/octet-stream' };
  try {
    const answer = await fetch(`/book?name=${encodeURIComponent(file.name)}`, { method: 'POST', headers, body: file });
    const text = await answer.text();
    if (!answer.ok) return failed(text.trim());
    // Answered as the channel that opens a book.
    const read = readAnswer('file.open', JSON.parse(text));
    return read.ok ? ok(read.value.name) : failed(read.fault.says);
  } catch {
    // The connection broke off, or the answer is not the program's.
    return failed(`${file.name} could not be sent.`);
  }
}

/** Lets the user choose a book file. */
export function pickBook(page: Document, take: (file: File) => void): void {
  const input = page.createElement('input');
  input.type = 'file';
  input.accept = '.loamwright';
  input.addEventListener('change', () => {
    const [file] = input.files ?? [];
    if (file) take(file);
  });
  input.click();
}
