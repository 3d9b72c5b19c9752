#!/usr/bin/env node
import { ranCommand } from "./ranCommand.ts";

process.stdout.on("error", (fault: NodeJS.ErrnoException) => {
  if (fault.code !== "EPIPE") throw fault;
  process.exit(0);
});

const code = await ranCommand(process.argv.slice(2));
// A command that found something amiss with what it was given has said so there itself.
if (code !== 0) process.exitCode = code;
