import { enableCompileCache } from 'node:module';

enableCompileCache();
const { main } = await import('./main.ts');
process.exitCode = await main(process.argv.slice(2));
