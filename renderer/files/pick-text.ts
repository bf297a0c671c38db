import { failed, ok, type Result } from '#shared-calc/result.ts';
import { encodingOf } from '#shared-calc/read/text-encoding.ts';
import { sayListFault } from '#shared-calc/words/say-list-fault.ts';

export interface PickedText {
  readonly name: string;
  readonly text: string;
}

/** Lets the user choose a text file and passes it to `take`; `refuse` gets a sentence if it is no text. */
export function pickText(page: Document, take: (picked: PickedText) => void, refuse: (sentence: string) => void): void {
  const input = page.createElement('input');
  input.type = 'file';
  input.accept = '.csv,.tsv,.txt,.psv,.htm,.html,text/csv,text/plain';
  input.addEventListener('change', () => {
    const [file] = input.files ?? [];
    if (!file) return;
    void readTextFile(file).then((read) => (read.ok ? take(read.value) : refuse(read.fault)));
  });
  input.click();
}

/** The text of a file, in whichever encoding it is. */
export async function readTextFile(file: File): Promise<Result<PickedText, string>> {
  try {
    const bytes = new Uint8Array(await file.arrayBuffer());
    const encoding = encodingOf(bytes);
    if (!encoding.ok) return failed(`${file.name}: ${sayListFault(encoding.fault)}`);
    return ok({ name: file.name, text: new TextDecoder(encoding.value).decode(bytes) });
  } catch {
    return failed(`${file.name} could not be read.`);
  }
}
