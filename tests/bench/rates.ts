import { spawn, type ChildProcess } from 'node:child_process';
import { generateKeyPairSync } from 'node:crypto';
import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { application, discordToken } from '../support/discord-stand-in.js';
import { median, progress, quantile, type Figure } from './figures.js';
import { httpLine, sendAll, type Line, type Ready, type Round } from './line.js';
import { openPlatform, type Platform } from './platform.js';
import { discordBody, discordRequest, slackRequest, slackSecret } from './requests.js';
import { makeSchool } from './school.js';

const inFlight = 32;
const classes = 96;
/** Six pupils a class send ten posts each, as many as a busy segment has. */
const rounds = 7;
const perRound = 720;
/** A bare handler is so quick that a round of it needs more requests to be measured. */
const bareTimes = 3;

/** Starts a process and waits for its first line of JSON. */
function start(
  args: readonly string[],
  env: Readonly<Record<string, string>> = {},
): Promise<{ readonly child: ChildProcess; readonly first: Readonly<Record<string, unknown>> }> {
  const child = spawn(process.execPath, args, {
    env: { PATH: process.env['PATH'] ?? '', ...env },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  return new Promise((settle, fail) => {
    let out = '';
    child.on('close', (code) => fail(new Error(`Cannot measure, a server ended early with ${code}`)));
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      out += text;
      const end = out.indexOf('\n');
      if (end >= 0) settle({ child, first: JSON.parse(out.slice(0, end)) as Record<string, unknown> });
    });
  });
}

async function end(child: ChildProcess): Promise<void> {
  const closed = new Promise((settle) => child.on('close', settle));
  child.kill('SIGTERM');
  const late = setTimeout(() => child.kill('SIGKILL'), 5000);
  await closed;
  clearTimeout(late);
}

/** Milliseconds of processor time that a process has had, in hundredths of a second as Linux counts; NaN elsewhere. */
function processorTime({ pid }: ChildProcess): number {
  try {
    const fields = readFileSync(`/proc/${pid ?? 0}/stat`, 'utf8')
      .replace(/^.*\) /u, '')
      .split(' ');
    return (Number(fields[11]) + Number(fields[12])) * 10;
  } catch {
    return Number.NaN;
  }
}

/** A round with the processor time that the server took for each answer, in milliseconds. */
type Measured = Round & { readonly processor: number };

/** One library: how the bare handler and the whole program are started and reached, and what both are sent. */
interface Library {
  readonly name: string;
  readonly bare: readonly string[];
  readonly env: Readonly<Record<string, string>>;
  readonly path: string | null;
  /** Where the bare handler takes the same. */
  readonly barePath: string;
  request(n: number): Ready;
}

async function reach(library: Library, platform: Platform, port: number, path: string): Promise<Line> {
  if (library.path !== null) return httpLine(port, path, inFlight);
  for (let waits = 0; !platform.gateway.connected(); waits += 1) {
    if (waits > 2000) throw new Error('Cannot measure, expected the bot on the gateway');
    await new Promise((settle) => setTimeout(settle, 5));
  }
  return platform.line;
}

async function measure(library: Library, data: string): Promise<readonly Figure[]> {
  // Each has a platform of its own, since a gateway hands an interaction to one line.
  const [own, other] = [await openPlatform(), await openPlatform()];
  const folder = mkdtempSync(join(tmpdir(), 'turnstone-bench-'));
  cpSync(data, folder, { recursive: true });
  const profile = process.env['BENCH_PROFILE'];
  const flags = profile === undefined ? [] : ['--cpu-prof', '--cpu-prof-dir', profile];
  const [bare, full] = await Promise.all([
    start([
      '--import',
      'tsx',
      join(import.meta.dirname, 'bare.ts'),
      library.bare[0] ?? '',
      own.url,
      library.bare[1] ?? '',
    ]),
    start([...flags, 'dist/src/app/main.js', 'start', '--json'], {
      ...library.env,
      TURNSTONE_DATA: folder,
      TURNSTONE_PORT: '0',
      TURNSTONE_LOG: 'error',
      SLACK_API: `${other.url}/api/`,
      DISCORD_API: other.url,
    }),
  ]);
  try {
    const bareLine = await reach(library, own, Number(bare.first['port']), library.barePath);
    const port = Number(new URL(String(full.first['url'])).port);
    const fullLine = await reach(library, other, port, library.path ?? '');
    let answers = 0;
    let held = 0;
    const kept = (answer: string): void => {
      answers += 1;
      // Feedback on a draft offers to send it; what the screen holds, or calls an adult for, is kept without being judged.
      if (answer.includes('Send it')) return;
      if (!/A grown-up (?:looks first|has been told)/u.test(answer))
        throw new Error(`Cannot measure, expected feedback, got ${answer.slice(0, 900)}`);
      held += 1;
    };
    const run = async (
      { child }: { readonly child: ChildProcess },
      line: Line,
      requests: readonly Ready[],
      check: (answer: string) => void,
    ): Promise<Measured> => {
      const before = processorTime(child);
      const round = await sendAll(line, requests, inFlight, check);
      return { ...round, processor: (processorTime(child) - before) / requests.length };
    };
    const bares: Measured[] = [];
    const fulls: Measured[] = [];
    let sent = 0;
    const batch = (many: number): readonly Ready[] =>
      Array.from({ length: many }, () => library.request(sent++));
    for (let round = -1; round < rounds; round += 1) {
      progress(`${library.name}: round ${round + 1} of ${rounds} ...`);
      const requests = batch(perRound);
      // Twice the same to the bare handler would be one update to Discord's library, so these are new.
      const more =
        library.path === null ? requests : Array.from({ length: bareTimes }, () => requests).flat();
      const quick = await run(bare, bareLine, more, () => undefined);
      const whole = await run(full, fullLine, requests, kept);
      if (round < 0) continue;
      bares.push(quick);
      fulls.push(whole);
    }
    await bareLine.close();
    await fullLine.close();
    if (held > answers / 20)
      throw new Error(`Cannot measure, expected posts that are judged, ${held} were held`);
    progress(`${library.name}: ${answers - held} of ${answers} posts were judged, the others held`);
    return figuresOf(library.name, bares, fulls);
  } finally {
    await Promise.all([end(bare.child), end(full.child)]);
    await Promise.all([own.stop(), other.stop()]);
    rmSync(folder, { recursive: true, force: true });
  }
}

function figuresOf(name: string, bares: readonly Measured[], fulls: readonly Measured[]): readonly Figure[] {
  const of = (what: string, all: readonly Measured[]): readonly Figure[] => {
    const waits = all.flatMap((one) => one.waits);
    return [
      { name: `${name}: ${what}`, value: median(all.map(({ rate }) => rate)), unit: 'answers a second' },
      { name: `${name}: ${what}, p50`, value: quantile(waits, 0.5), unit: 'ms' },
      { name: `${name}: ${what}, p99`, value: quantile(waits, 0.99), unit: 'ms' },
      {
        name: `${name}: ${what}, processor`,
        value: median(all.map(({ processor }) => processor)),
        unit: 'ms an answer',
      },
    ];
  };
  const shares = fulls.map(({ rate }, at) => rate / (bares[at]?.rate ?? Number.NaN));
  return [
    ...of('bare handler', bares),
    ...of('whole path', fulls),
    { name: `${name}: share kept`, value: median(shares), unit: 'of the bare rate', target: '0.5' },
  ];
}

/** What share of a bare handler's rate the whole path keeps, for each library; bare and whole take turns. */
export async function rateFigures(only?: string): Promise<readonly Figure[]> {
  const data = mkdtempSync(join(tmpdir(), 'turnstone-bench-school-'));
  const figures: Figure[] = [];
  try {
    const { pupils, segment } = await makeSchool(data, classes);
    const keys = generateKeyPairSync('ed25519');
    const publicKey = keys.publicKey.export({ format: 'der', type: 'spki' }).subarray(12).toString('hex');
    const discord = { DISCORD_TOKEN: discordToken, DISCORD_APPLICATION_ID: application };
    const libraries: readonly Library[] = [
      {
        name: 'Slack',
        bare: ['slack', slackSecret],
        env: { SLACK_BOT_TOKEN: 'xoxb-whole', SLACK_SIGNING_SECRET: slackSecret },
        path: '/slack/events',
        barePath: '/slack/events',
        request: (n) => slackRequest(pupils, segment, n),
      },
      {
        name: 'Discord',
        bare: ['discord', discordToken],
        env: discord,
        path: null,
        barePath: '',
        request: (n) => ({ body: discordBody(pupils, segment, n), headers: {} }),
      },
      {
        name: 'Discord over HTTP',
        bare: ['discord over HTTP', publicKey],
        env: { ...discord, DISCORD_PUBLIC_KEY: publicKey },
        path: '/discord/interactions',
        barePath: '/',
        request: (n) => discordRequest(discordBody(pupils, segment, n), keys.privateKey),
      },
    ];
    for (const library of libraries) {
      if (only !== undefined && library.name !== only) continue;
      figures.push(...(await measure(library, data)));
    }
  } finally {
    rmSync(data, { recursive: true, force: true });
  }
  return figures;
}
