import { sessionHeaders } from '#renderer/session-secret.ts';
import { saveBlob } from '#renderer/store/save-text.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { Hint } from '#renderer/kit/note.tsx';
import type { FilePart } from './file-part.ts';
import { DialogFoot } from './dialog-foot.tsx';

/** Saves a copy of the book through the browser; the open book stays open. */
export function CopyPart({ api, done }: FilePart) {
  const save = async () => {
    // Answered after every edit that was sent before it.
    const told = await api.call('book.info', {});
    if (!told.ok) return;
    const { name } = told.value;
    const copy = await fetchCopy(name);
    if (copy.ok) saveBlob(document, `Copy of ${name}`, copy.value);
    api.say(copy.ok ? `A copy of ${name} is saved by the browser.` : copy.fault);
    done();
  };
  return (
    <>
      <Hint>The whole book as one file, saved by the browser. You go on in the book that is open.</Hint>
      <DialogFoot done={done} act="Save the copy" may run={() => void save()} />
    </>
  );
}

async function fetchCopy(name: string): Promise<Result<Blob, string>> {
  try {
    const answer = await fetch('/copy', { headers: sessionHeaders() });
    return answer.ok ? ok(await answer.blob()) : failed((await answer.text()).trim());
  } catch {
    return failed(`No copy of ${name} was saved: Loamwright does not answer.`);
  }
}
