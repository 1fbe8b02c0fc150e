// Runs a command as it was built, without looking whether it is old: `node run-command.mjs fill IN OUT`.
const [bundle, ...args] = process.argv.slice(2);
const { main } = await import(new URL(`../../dist/${bundle === 'rows' ? 'rows' : 'cli'}.js`, import.meta.url));
await main([bundle, ...args]);
