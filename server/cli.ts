import { runCli } from './cli/run-cli.ts';

// A reader that has seen enough, such as `head`, closes the pipe; that is no error.
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') process.exitCode = 3;
  });
}

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
