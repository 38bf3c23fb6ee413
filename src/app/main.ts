import { Fault } from '../../shared/fault.js';
import { exitCode, type Io } from './io.js';
import { allVerbs, verbs } from './verbs.js';

const io: Io = {
  out: (text) =>
    new Promise((settle, fail) => {
      process.stdout.write(text, (why) => {
        if (why) fail(why);
        else settle();
      });
    }),
  err: (text) => process.stderr.write(text.endsWith('\n') ? text : `${text}\n`),
  input: process.stdin,
  env: process.env,
};

async function overview(): Promise<string> {
  const lines = ['usage: npm run -s turnstone -- VERB', ''];
  for (const verb of await allVerbs()) {
    lines.push(`  ${verb.usage}`, `      ${verb.words}`);
  }
  return lines.join('\n');
}

async function main(args: readonly string[]): Promise<number> {
  const [name, ...rest] = args;
  if (name === undefined || name === 'help' || name === '--help') {
    const text = `${await overview()}\n`;
    if (name === undefined) io.err(text);
    else await io.out(text);
    return name === undefined ? 2 : 0;
  }
  const load = Object.hasOwn(verbs, name) ? verbs[name] : undefined;
  if (!load) {
    throw new Fault(
      'usage',
      `Cannot do “${name}”, expected one of ${Object.keys(verbs).join(', ')}`,
      'Use “help” to see what each does.',
    );
  }
  const { verb } = await load();
  return verb.run(rest, io);
}

// A reader that stops early (head, a closed pipe) is no failure of ours.
process.stdout.on('error', (why: NodeJS.ErrnoException) => process.exit(why.code === 'EPIPE' ? 0 : 2));

try {
  process.exitCode = await main(process.argv.slice(2));
} catch (why) {
  if (why instanceof Fault) {
    io.err(`${why.message}.\n${why.remedy}`);
    process.exitCode = exitCode(why.code);
  } else if ((why as { code?: string }).code?.startsWith('ERR_PARSE_ARGS')) {
    io.err((why as Error).message);
    process.exitCode = 2;
  } else {
    io.err(
      `Cannot go on, something unexpected: ${why instanceof Error ? (why.stack ?? why.message) : 'unknown'}`,
    );
    process.exitCode = 1;
  }
}
