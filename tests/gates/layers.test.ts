import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { z } from 'zod';

/*
 * Tests the gates on wrong files. fixtures/layers has the project's layout and is copied to a temporary folder with the
 * project's settings; each wrong file must be refused by its own rule.
 */

const root = fileURLToPath(new URL('../..', import.meta.url));
const layers = ['shared-calc', 'electron', 'renderer', 'tests'];
const settings = ['.oxlintrc.json', 'package.json', 'tsconfig.json'];

/** Every wrong file and the linter's expected message; a file not listed here must pass. */
const lintMustSay: Readonly<Record<string, readonly string[]>> = {
  'electron/book/calls-its-caller.ts': ['no-restricted-imports'],
  'electron/book/forgets-to-wait.ts': ['no-floating-promises', 'no-misused-promises'],
  'electron/book/opens-a-window.ts': ['no-restricted-imports'],
  'electron/service/leaves-a-case-out.ts': ['switch-exhaustiveness-check'],
  'electron/service/peeks-into-the-page.ts': ['no-restricted-imports'],
  'electron/service/speaks-aloud.ts': ['consistent-type-imports', 'eqeqeq', 'no-console'],
  'renderer/NamedOtherwise.ts': ['filename-case'],
  'renderer/borrows-a-library.ts': ['no-restricted-imports'],
  'renderer/commands/ring-there.ts': ['no-cycle'],
  'renderer/panels/ring-back.ts': ['no-cycle'],
  'renderer/peeks-into-the-book.ts': ['no-restricted-imports'],
  'renderer/places/jobs/borrows-from-a-neighbour.ts': ['no-restricted-imports'],
  'shared-calc/bench/hands-out-a-default.ts': ['no-default-export'],
  'shared-calc/buy/takes-anything.ts': ['no-explicit-any', 'no-non-null-assertion'],
  'shared-calc/calendar/type-ring-back.ts': ['no-cycle'],
  'shared-calc/calendar/type-ring-there.ts': ['no-cycle'],
  'shared-calc/papers/gathers.ts': ['no-barrel-file'],
  'shared-calc/price/digs-too-deep.ts': ['max-depth'],
  'shared-calc/price/fills-a-file.ts': ['max-lines'],
  'shared-calc/price/goes-on-and-on.ts': ['max-lines-per-function'],
  'shared-calc/price/turns-too-often.ts': ['complexity', 'max-params'],
  'shared-calc/quantity/asks-the-clock.ts': ['no-restricted-globals', 'no-restricted-properties'],
  'shared-calc/quantity/borrows-a-library.ts': ['no-restricted-imports'],
  'shared-calc/quantity/leans-upward.ts': ['no-restricted-imports'],
  'shared-calc/quantity/reads-a-file.ts': ['no-restricted-imports', 'no-unsafe-assignment', 'no-unsafe-call'],
  'shared-calc/quantity/touches-the-page.ts': ['no-unsafe-member-access'],
  'shared-calc/records/steps-over.ts': ['no-relative-parent-imports', 'no-restricted-imports'],
  'shared-calc/trade/ring-back.ts': ['no-cycle'],
  'shared-calc/trade/ring-there.ts': ['no-cycle'],
  'shared-calc/words/leaves-for-later.ts': ['no-warning-comments'],
  'tests/starts-a-download.ts': ['no-restricted-imports'],
};

/** TS2591 and TS2584: the name is not of this layer's world; TS6307: the file is of another layer. */
const compilerMustSay: Readonly<Record<string, readonly string[]>> = {
  'electron/service/peeks-into-the-page.ts': ['TS6307'],
  'electron/service/speaks-aloud.ts': ['TS1484'],
  'renderer/peeks-into-the-book.ts': ['TS6307'],
  'shared-calc/quantity/reads-a-file.ts': ['TS2591'],
  'shared-calc/quantity/touches-the-page.ts': ['TS2584'],
};

const LintReport = z.object({
  diagnostics: z.array(z.object({ filename: z.string(), code: z.string(), severity: z.string() })),
  number_of_files: z.number(),
});
const UnusedReport = z.object({
  issues: z.array(z.object({ file: z.string(), exports: z.array(z.object({ name: z.string() })) })),
});

let project = '';

beforeAll(() => {
  project = mkdtempSync(path.join(tmpdir(), 'loamwright-gates-'));
  cpSync(path.join(root, 'fixtures/layers'), project, { recursive: true });
  const copied = [...settings, ...layers.map((layer) => `${layer}/tsconfig.json`)];
  for (const file of copied) cpSync(path.join(root, file), path.join(project, file));
  symlinkSync(path.join(root, 'node_modules'), path.join(project, 'node_modules'), 'junction');
});

afterAll(() => {
  rmSync(project, { recursive: true });
});

describe('the linter', () => {
  test('refuses every wrong file by the rule meant for it, and no other file', () => {
    const report = LintReport.parse(JSON.parse(runIn(project, 'oxlint/bin/oxlint', ['--format=json'])));
    const said = report.diagnostics.map((each) => [each.filename, each.code.replace(/^.*\((.*)\)$/, '$1')] as const);

    expect(gather(said)).toEqual(lintMustSay);
    expect(new Set(report.diagnostics.map((each) => each.severity))).toEqual(new Set(['error']));
    expect(report.number_of_files).toBe(sourcesIn(project).length);
  });

  test('reads every source of the project itself', () => {
    const read = runIn(root, 'oxlint/bin/oxlint', ['--debug=files']).trim().split('\n');

    expect(read.map((file) => file.replaceAll('\\', '/')).toSorted()).toEqual(sourcesIn(root));
  });

  test('has a wall for every folder of the core', () => {
    const Walls = z.object({ overrides: z.array(z.object({ files: z.array(z.string()) })) });
    const walls = Walls.parse(JSON.parse(readFileSync(path.join(root, '.oxlintrc.json'), 'utf8')));
    const walled = new Set(walls.overrides.flatMap((each) => each.files));
    const open = foldersIn('shared-calc').filter((folder) => !walled.has(`shared-calc/${folder}/**`));

    expect(open).toEqual([]);
  });
});

describe('the compiler', () => {
  test('keeps each layer in its own world, types included', () => {
    const said = runIn(project, 'typescript/bin/tsc', ['-b', '--pretty', 'false'])
      .split('\n')
      .flatMap((line) => {
        const [, file, code] = /^(.*)\(\d+,\d+\): error (TS\d+):/.exec(line) ?? [];
        return file !== undefined && code !== undefined ? [[file, code] as const] : [];
      });

    expect(gather(said)).toEqual(compilerMustSay);
  });
});

describe('the search for unused code', () => {
  test('finds what is exported for nobody', () => {
    const report = UnusedReport.parse(JSON.parse(runIn(project, 'knip/bin/knip.js', ['--reporter=json'])));
    const unused = report.issues.flatMap((each) => each.exports.map(({ name }) => `${each.file} ${name}`));

    expect(unused).toEqual(['shared-calc/calendar/half-used.ts keptForNobody']);
  });
});

function runIn(folder: string, tool: string, args: readonly string[]): string {
  const program = path.join(root, 'node_modules', tool);
  return spawnSync(process.execPath, [program, ...args], { cwd: folder, encoding: 'utf8' }).stdout;
}

function gather(said: readonly (readonly [string, string])[]): Record<string, readonly string[]> {
  const byFile: Record<string, readonly string[]> = {};
  for (const [file, rule] of said) {
    byFile[file] = [...new Set([...(byFile[file] ?? []), rule])].toSorted();
  }
  return byFile;
}

/** Built files and screenshots of the page. */
const made = /\/dist\/|^tests\/browser\/screens\//;

function sourcesIn(folder: string): readonly string[] {
  return layers
    .flatMap((layer) =>
      readdirSync(path.join(folder, layer), { recursive: true, encoding: 'utf8' })
        .map((file) => `${layer}/${file.replaceAll('\\', '/')}`)
        .filter((file) => /\.(tsx?|js)$/.test(file) && !made.test(file)),
    )
    .toSorted();
}

function foldersIn(folder: string): readonly string[] {
  const entries = readdirSync(path.join(root, folder), { withFileTypes: true });
  return entries.filter((each) => each.isDirectory()).map((each) => each.name);
}
