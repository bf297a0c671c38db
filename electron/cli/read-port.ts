import { failed, ok, type Result } from '#shared-calc/result.ts';

/** Parses the port option; without it, any free port is used. */
export function readPort(text: string | undefined): Result<number | undefined, string> {
  if (text === undefined) return ok(undefined);
  const port = Number(text);
  const isPort = /^\d{1,5}$/.test(text) && port >= 1 && port <= 65_535;
  return isPort ? ok(port) : failed(`--port ${text}: a port is a number from 1 to 65535.`);
}
