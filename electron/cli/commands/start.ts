import { today } from '#electron/service/today.ts';
import type { Command } from '#electron/cli/command.ts';
import { refusal, wrongUse } from '#electron/cli/outcome.ts';
import { readPort } from '#electron/cli/read-port.ts';
import { bookOption, refuseMissing } from '#electron/cli/with-book.ts';

/** Serves the page on a loopback address until Ctrl+C. */
export const startCommand: Command = {
  name: 'start',
  usage: 'start [--port N] [--no-browser]: the page on a loopback address, until Ctrl+C',
  options: { ...bookOption, port: 'text', 'no-browser': 'flag' },
  run: async (given) => {
    const missing = refuseMissing(given);
    if (missing) return missing;
    const port = readPort(given.text('port'));
    if (!port.ok) return wrongUse(port.fault);
    // Imported here, so that the other commands start without it.
    const { startServing } = await import('#electron/host/start-serving.ts');
    const ended = await startServing({
      book: given.text('book'),
      port: port.value,
      browser: !given.flag('no-browser'),
      today,
      say: (line) => process.stdout.write(`${line}\n`),
    });
    if (ended.ok) return { is: 'goes on' };
    return ended.fault.is === 'no book' ? { is: 'no book', says: ended.fault.says } : refusal(ended.fault.says);
  },
};
