#!/usr/bin/env node
// The command line as a process: prints what is answered to it, sets the exit code.

import { setFlagsFromString } from 'node:v8';
import { isMainThread, workerData } from 'node:worker_threads';
import { broken } from '#cli/line/own-fault.ts';
import { answerTo } from './answer-to.ts';

async function main(): Promise<void> {
  // a reader that has seen enough closes the pipe: that is no fault
  for (const stream of [process.stdout, process.stderr]) {
    stream.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code !== 'EPIPE') throw error;
      process.exit();
    });
  }
  const [verb = 'layerwright'] = process.argv.slice(2);
  const fall = (error: unknown): void => {
    process.stderr.write(broken(verb, error).err);
    process.exit(3);
  };
  process.on('uncaughtException', fall);
  process.on('unhandledRejection', fall);
  const outcome = await answerTo(process.argv.slice(2)).catch((error: unknown) => broken(verb, error));
  process.exitCode = outcome.code;
  for (const piece of outcome.out) process.stdout.write(piece);
  if (outcome.err !== '') process.stderr.write(outcome.err);
}

// most calls end within a second, before code that the engine optimizes pays: let it begin later than it does by itself
setFlagsFromString('--interrupt-budget=1000000');
// as a thread of its own it has no command line to read
if (isMainThread) await main();
else if ('numbers' in workerData) (await import('#cli/many/spread-thread.ts')).spreadThread();
else await (await import('#cli/many/file-thread.ts')).fileThread();
