/** JSON text as data; `undefined` where it is none, which then fits no schema. */
export function parseJson(text: unknown): unknown {
  if (typeof text !== 'string') return undefined;
  try {
    return JSON.parse(text);
  } catch {
    // The only failure is text that is not JSON, and the schema after this tells of it.
    return undefined;
  }
}
