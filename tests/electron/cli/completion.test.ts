import { execFileSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import { commands } from '#electron/cli/commands.ts';
import { lw, lwJson } from './run-cli.ts';

/** What bash offers for a line that is typed as far as here. */
async function offered(line: string): Promise<readonly string[]> {
  const { out } = await lw('completion', 'bash');
  const words = line.split(' ');
  const typed = `COMP_WORDS=(${words.map((word) => `'${word}'`).join(' ')}); COMP_CWORD=${words.length - 1}`;
  const said = execFileSync('bash', ['-c', `${out}\n${typed}; _loamwright; printf '%s\\n' "\${COMPREPLY[@]}"`], {
    encoding: 'utf8',
  });
  return said.split('\n').filter((each) => each !== '');
}

describe('completion', () => {
  test.each([
    ['loamwright be', ['bench']],
    ['loamwright book ', ['backups', 'check', 'export', 'import-prices', 'new', 'recover', 'restore']],
    ['loamwright bench --si', ['--sizes']],
    ['loamwright job sizes --bo', ['--book']],
    ['loamwright quote --job J01 --iss', ['--issue']],
    ['loamwright work x', []],
  ])('bash offers for "%s" %j', async (line, offers) => {
    expect(await offered(line)).toEqual(offers);
  });

  test.each(['bash', 'zsh', 'fish', 'powershell'])('%s knows every command and option', async (shell) => {
    const { script } = (await lwJson('completion', shell)) as { script: string };
    const flag = (option: string) => (shell === 'fish' ? `-l '${option}'` : `--${option}`);
    const missing = [...commands.values()].flatMap(({ name, options }) => [
      ...name.split(' ').filter((word) => !script.includes(word)),
      ...Object.keys(options).filter((option) => !script.includes(flag(option))),
    ]);
    expect(missing).toEqual([]);
  });

  test('another shell is refused', async () => {
    expect(await lw('completion', 'csh')).toEqual({
      code: 2,
      out: '',
      err: 'Name one shell: bash, zsh, fish, powershell.\n',
    });
  });
});
