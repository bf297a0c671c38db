import type { Command } from '#electron/cli/command.ts';
import { optionWords } from '#electron/cli/option-words.ts';
import { scripts, type CompletedCommand } from '#electron/cli/completion-scripts.ts';

const shells = [...scripts.keys()];

/** Words that a shell completes after `loamwright`, as a script for that shell. `all` is asked when it is run. */
export function completionCommand(all: () => Iterable<Command>): Command {
  return {
    name: 'completion',
    usage: `completion ${shells.join('|')}: a script by which that shell completes commands and options`,
    options: {},
    misuse: ({ words: [shell = '', ...more] }) =>
      scripts.has(shell) && more.length === 0 ? undefined : `Name one shell: ${shells.join(', ')}.`,
    run: ({ words: [shell = ''] }) => {
      const script = scripts.get(shell)?.([...all()].map(completed)) ?? '';
      return { is: 'answer', json: { shell, script }, table: () => script };
    },
  };
}

function completed({ name, options }: Command): CompletedCommand {
  const flags = Object.keys({ ...options, json: 'flag', help: 'flag' });
  return { name, options: flags.map((flag) => ({ flag: `--${flag}`, says: optionWords(name, flag)?.says ?? '' })) };
}
