#!/usr/bin/env node
import { processIo } from './io/processIo.js';
import { runCli } from './runCli.js';

process.exitCode = await runCli(process.argv.slice(2), processIo());
