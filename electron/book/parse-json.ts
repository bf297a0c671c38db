/** JSON text as data; `undefined` if it is invalid, which then fails every schema. */
export function parseJson(text: unknown): unknown {
  if (typeof text !== 'string') return undefined;
  try {
    return JSON.parse(text);
  } catch {
    // Only invalid JSON fails here, and the schema that follows reports it.
    return undefined;
  }
}
