import { added, type Added, type Change, updated, type Updated } from './change.ts';
import { allKinds, type RecordKind, type Records } from './records.ts';
import { sameData } from './same-data.ts';

/** The change from one state of a book to another, with a label. */
export function diffRecords(label: string, from: Records, to: Records): Change {
  const parts = allKinds.map((kind) => diffKind(kind, from, to));
  return {
    label,
    added: parts.flatMap((part) => part.added),
    updated: parts.flatMap((part) => part.updated),
    removed: parts.flatMap((part) => part.removed),
  };
}

function diffKind(kind: RecordKind, from: Records, to: Records): Omit<Change, 'label'> {
  const part: { added: Added[]; updated: Updated[]; removed: Added[] } = { added: [], updated: [], removed: [] };
  if (from[kind] === to[kind]) return part;
  for (const [id, record] of to[kind]) {
    const before = from[kind].get(id);
    if (!before) part.added.push(added(kind, record));
    else if (!sameData(before, record)) part.updated.push(updated(kind, before, record));
  }
  for (const [id, record] of from[kind]) if (!to[kind].has(id)) part.removed.push(added(kind, record));
  return part;
}
