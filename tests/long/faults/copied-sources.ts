import { execFile } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { z } from 'zod';
import { type FaultInFile } from './draw-faults.ts';

const Report = z.object({ testResults: z.array(z.object({ name: z.string(), status: z.string() })) });
/** A test that does not end because of a fault counts as having seen it. */
const longestRun = 120_000;

/** The result of tests: whether one failed, and the files of those that did. */
export interface Verdict {
  readonly failed: boolean;
  readonly by: readonly string[];
}

interface HowLong {
  /** It ends after this many failures; 0 for never. */
  readonly bail: number;
  /** Milliseconds; 0 for no limit. */
  readonly timeout: number;
}

/** A copy of the sources to insert faults in, with the project's packages. */
export class CopiedSources implements Disposable {
  readonly folder = mkdtempSync(path.join(tmpdir(), 'loamwright-faults-'));

  constructor(root: string) {
    const left = new Set(['node_modules', '.git', 'out'].map((each) => path.join(root, each)));
    cpSync(root, this.folder, { recursive: true, filter: (each) => !left.has(each) });
    symlinkSync(path.join(root, 'node_modules'), path.join(this.folder, 'node_modules'));
  }

  [Symbol.dispose](): void {
    rmSync(this.folder, { recursive: true, force: true });
  }

  /** Runs something while a fault is in its file. */
  async withFault<T>(fault: FaultInFile, act: () => Promise<T>): Promise<T> {
    const file = path.join(this.folder, fault.file);
    const text = readFileSync(file, 'utf8');
    writeFileSync(file, text.slice(0, fault.start) + fault.instead + text.slice(fault.end));
    try {
      return await act();
    } finally {
      writeFileSync(file, text);
    }
  }

  /** Whether a layer compiles; an unused import is left to the linter. Only what a change affects is checked again. */
  async compiles(layer: string): Promise<boolean> {
    const lenient = ['--noUnusedLocals', 'false', '--noUnusedParameters', 'false'];
    const info = path.join(this.folder, `${layer}.tsbuildinfo`);
    return this.#run('typescript/bin/tsc', [
      '-p',
      layer,
      '--noEmit',
      ...lenient,
      '--incremental',
      '--tsBuildInfoFile',
      info,
    ]);
  }

  /** Builds the declarations that layers read of each other. */
  async declare(): Promise<boolean> {
    return this.#run('typescript/bin/tsc', ['-b']);
  }

  /** Builds the page that the tests in the browser load. */
  async buildPage(): Promise<boolean> {
    return this.#run('vite/bin/vite.js', ['build', '--config', 'renderer/vite.config.ts', '--logLevel', 'error']);
  }

  /** Runs tests until one fails, or for the longest time a fault may take. */
  async test(files: readonly string[]): Promise<Verdict> {
    return this.#test(files, { bail: 1, timeout: longestRun });
  }

  /** Runs tests to their end. */
  async testWhole(files: readonly string[]): Promise<Verdict> {
    return this.#test(files, { bail: 0, timeout: 0 });
  }

  async #test(files: readonly string[], { bail, timeout }: HowLong): Promise<Verdict> {
    const report = path.join(this.folder, 'report.json');
    rmSync(report, { force: true });
    // One worker: the layers run in parallel, and files of one process share loaded modules.
    const fixed = [
      'run',
      '--config',
      'tests/vitest.config.ts',
      '--passWithNoTests',
      `--bail=${bail}`,
      '--maxWorkers=1',
    ];
    const said = ['--reporter=json', `--outputFile=${report}`];
    const passed = await this.#run('vitest/vitest.mjs', [...fixed, ...said, ...files], timeout);
    if (passed || !existsSync(report)) return { failed: !passed, by: [] };
    const { testResults } = Report.parse(JSON.parse(readFileSync(report, 'utf8')));
    const failing = testResults.filter(({ status }) => status === 'failed').map(({ name }) => name);
    return { failed: true, by: failing.map((each) => path.relative(this.folder, each)) };
  }

  async #run(tool: string, args: readonly string[], timeout = longestRun): Promise<boolean> {
    const command = [path.join(this.folder, 'node_modules', tool), ...args];
    const options = { cwd: this.folder, timeout, maxBuffer: 64_000_000 };
    return new Promise((done) => {
      execFile(process.execPath, command, options, (fault) => done(fault === null));
    });
  }
}
