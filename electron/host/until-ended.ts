/** Resolves when the user or the machine ends the program: Ctrl+C, a closed terminal, a shutdown. */
export function untilEnded(): Promise<void> {
  return new Promise((ended) => {
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, () => ended());
  });
}
