import { Fault } from '../../shared/fault.js';
import { exitCode, type Io, type Verb } from './io.js';

/** Every verb, loaded only when it is used, so that a short command starts fast. */
const verbs: Readonly<Record<string, () => Promise<{ readonly verb: Verb }>>> = {
  start: () => import('./verbs/start.js'),
  read: () => import('./verbs/read.js'),
  judge: () => import('./verbs/judge.js'),
  rehearse: () => import('./verbs/rehearse.js'),
  demo: () => import('./verbs/demo.js'),
  evaluate: () => import('./verbs/evaluate.js'),
  train: () => import('./verbs/train.js'),
  'make-class': () => import('./verbs/make-class.js'),
  'make-link': () => import('./verbs/make-link.js'),
  digest: () => import('./verbs/digest.js'),
  export: () => import('./verbs/export.js'),
  erase: () => import('./verbs/erase.js'),
  backup: () => import('./verbs/backup.js'),
  restore: () => import('./verbs/restore.js'),
  doctor: () => import('./verbs/doctor.js'),
};

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
  for (const load of Object.values(verbs)) {
    const { verb } = await load();
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
