/** Sentences that stand beside an answer, on standard error: the answer itself stays whole for programs. */
export function tellNotices(notices: readonly string[]): void {
  for (const notice of notices) process.stderr.write(`${notice}\n`);
}
