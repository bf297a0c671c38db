import type { z } from 'zod';

const tellAtMost = 3;

/** What is wrong with what came over a channel, in one sentence. */
export function sayInputFault({ issues }: z.ZodError): string {
  const said = issues.slice(0, tellAtMost).map(({ path, message }) => `${placeOf(path)}${message.toLowerCase()}`);
  return `This cannot be taken as it stands: ${said.join('; ')}.`;
}

/** The last name on the way to what is wrong: `text` of a local value. */
function placeOf(path: readonly PropertyKey[]): string {
  const name = path.findLast((each) => typeof each === 'string');
  return name === undefined ? '' : `${name}, `;
}
