/** Loaded into each measured process: says at its end how much memory it held at the most, in KiB. */
process.on('exit', () => process.stderr.write(`maxrss ${process.resourceUsage().maxRSS}\n`));
