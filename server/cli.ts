import { runCli } from './cli/run-cli.ts';

process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  // A reader that has seen enough, such as `head`, closes the pipe; that is no error.
  if (error.code === 'EPIPE') return;
  process.stderr.write(`hightap: the output cannot be written (${error.code})\n`);
  process.exitCode = 3;
});
process.stderr.on('error', () => {});

try {
  const { code, stdout, stderr } = await runCli(process.argv.slice(2), { stdin: process.stdin });
  process.exitCode = code;
  if (stderr !== '') process.stderr.write(stderr);
  if (stdout !== '') process.stdout.write(stdout);
} catch (error) {
  const reason = error instanceof Error ? error.message.split('\n')[0] : String(error);
  process.stderr.write(`hightap: a fault of the program, not of the job: ${reason}\n`);
  process.exitCode = 3;
}
