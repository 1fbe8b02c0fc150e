// Loaded before a program: writes the peak memory of its process [kB] to the file that PEAK_FILE names.
const { writeFileSync } = require('node:fs');

process.on('exit', () => writeFileSync(process.env.PEAK_FILE, String(process.resourceUsage().maxRSS)));
