import { readConfig, settings } from '../../src/app/config.js';
import { judgeLine } from '../../src/app/judge-line.js';
import { makeJudges } from '../../src/app/judges.js';
import { readJsonLines } from '../../src/app/json-lines.js';
import { demoPassages, fixtureText } from '../../src/app/demo-class.js';
import { verb as keepingVerb } from '../../src/app/verbs/keeping.js';
import { verb as readVerb } from '../../src/app/verbs/read.js';
import { readLexicon } from '../../src/lexicon/read-lexicon.js';
import type { Lexicon } from '../../src/lexicon/lexicon.js';
import type { Judges } from '../../shared/judgements.js';
import type { Chance } from './chance.js';
import { must, mustBeClear, type Entrance, type Input } from './entrance.js';
import { anyText, bareNames, mangled, sentence } from './texts.js';

let tools: { readonly lexicon: Lexicon; readonly judges: Judges } | null = null;

function judging(): { readonly lexicon: Lexicon; readonly judges: Judges } {
  if (tools === null) {
    const lexicon = readLexicon();
    tools = { lexicon, judges: makeJudges(lexicon) };
  }
  return tools;
}

/** An entrance whose inputs need no world. */
function plainly(name: string, share: number, make: (chance: Chance) => Input): Entrance {
  return {
    name,
    share,
    open: async (chance) => ({ next: () => make(chance), close: async () => {} }),
  };
}

const kinds = [
  'question',
  'sum-up',
  'clarify',
  'predict',
  'answer',
  'level',
  'hard-word',
  'screen',
  'none',
  ...bareNames,
];
const fieldNames = [
  'segment',
  'text',
  'answer',
  'word',
  'offset',
  'next',
  'question',
  'reference',
  'passage',
  'names',
];

function anyValue(chance: Chance, field: string): unknown {
  if (chance.oneIn(15)) return chance.pick([null, 1, -1, 1.5, true, [], {}, [null], { text: 'a' }, 1e300]);
  if (field === 'offset') return chance.int(200) - 2;
  if (field === 'reference' || field === 'names')
    return Array.from({ length: chance.int(4) }, () => anyText(chance));
  if (field === 'segment' || field === 'passage')
    return Array.from({ length: 1 + chance.int(6) }, () => sentence(chance)).join(' ');
  return anyText(chance);
}

/** The answer of a judge: every probability within 0 and 1, every place in order, nothing that JSON can't hold. */
function mustBeAnAnswer(value: unknown, path = ''): void {
  if (typeof value === 'number') must(Number.isFinite(value), `${path} is ${value}`);
  if (Array.isArray(value)) value.forEach((one, at) => mustBeAnAnswer(one, `${path}[${at}]`));
  else if (typeof value === 'object' && value !== null) {
    if (
      'start' in value &&
      'end' in value &&
      typeof value.start === 'number' &&
      typeof value.end === 'number'
    )
      must(value.start >= 0 && value.end >= value.start, `${path} is no place`);
    for (const [name, one] of Object.entries(value)) mustBeAnAnswer(one, `${path}.${name}`);
  } else must(value !== undefined, `${path} is missing`);
}

function aJudgeLine(chance: Chance): Input {
  const line: Record<string, unknown> = { kind: chance.pick(kinds) };
  for (const name of fieldNames) if (!chance.oneIn(4)) line[name] = anyValue(chance, name);
  const value: unknown = chance.oneIn(30) ? anyValue(chance, 'text') : line;
  return {
    shown: value,
    run: () => {
      const { judges, lexicon } = judging();
      const result = judgeLine(value, judges, lexicon);
      if ('error' in result)
        must(
          /^Cannot .+, expected .+/su.test(result.error),
          `an unclear refusal: ${result.error.slice(0, 80)}`,
        );
      else mustBeAnAnswer(result.answer);
    },
  };
}

function someBytes(chance: Chance): Uint8Array {
  const lines = Array.from({ length: 1 + chance.int(4) }, () => {
    const line = JSON.stringify({ kind: 'level', text: anyText(chance) });
    return chance.oneIn(3) ? mangled(chance, line) : line;
  });
  const bytes = Buffer.from(lines.join(chance.pick(['\n', '\r\n', '\n\n', '\r'])));
  if (chance.oneIn(2) && bytes.length > 0) bytes[chance.int(bytes.length)] = chance.int(256);
  return chance.oneIn(6) ? Buffer.concat([Buffer.from([0xef, 0xbb, 0xbf]), bytes]) : bytes;
}

function someLines(chance: Chance): Input {
  const bytes = someBytes(chance);
  const cut = chance.int(bytes.length + 1);
  return {
    shown: Buffer.from(bytes).toString('latin1'),
    run: async () => {
      let last = 0;
      const input = (async function* () {
        yield bytes.subarray(0, cut);
        yield bytes.subarray(cut);
      })();
      for await (const one of readJsonLines(input)) {
        must(one.line > last, 'lines are counted backwards');
        last = one.line;
        if ('fault' in one) must(/^Cannot .+, expected .+/su.test(one.fault), 'an unclear refusal');
      }
    },
  };
}

const passages = demoPassages.map(fixtureText);

function aPassage(chance: Chance): Input {
  let text = chance.oneIn(5) ? anyText(chance) : chance.pick(passages);
  for (let times = chance.int(6); times > 0; times -= 1) text = mangled(chance, text);
  if (chance.oneIn(6)) text = text.replaceAll('.', chance.pick(['', '!', '\n', '\n\n', ' . ', '"']));
  const grade = chance.int(14) - 1;
  return {
    shown: { text: text.slice(0, 2000), grade },
    run: () => {
      const { judges } = judging();
      try {
        const reading = judges.read(text, { ...(grade > 0 && grade < 13 ? { grade } : {}) });
        must(reading.segments.length > 0, 'a passage without a part');
        for (const segment of reading.segments) {
          must(segment.text.trim() !== '', 'an empty part');
          for (const { word } of segment.hardWords)
            must(segment.text.includes(word), 'a hard word that is not there');
        }
        mustBeAnAnswer(reading);
      } catch (why) {
        mustBeClear(why);
      }
    },
  };
}

const quiet = { out: async () => {}, err: () => {}, input: (async function* () {})(), env: {} };

function someArguments(chance: Chance): Input {
  const verb = chance.pick([readVerb, keepingVerb]);
  const options = [
    '--grade',
    '--title',
    '--json',
    '--',
    '-',
    '--data',
    '--grade=5',
    'package.json',
    'README.md',
    'src',
    '/nothing',
  ];
  const args = Array.from({ length: chance.int(5) }, () =>
    chance.oneIn(3) ? anyText(chance) : chance.pick(options),
  );
  return {
    shown: { verb: verb.name, args },
    run: async () => {
      try {
        await verb.run(args, quiet);
      } catch (why) {
        if ((why as { code?: string }).code?.startsWith('ERR_PARSE_ARGS')) return;
        mustBeClear(why);
      }
    },
  };
}

function aConfiguration(chance: Chance): Input {
  const good = [
    '127.0.0.1',
    '8080',
    '0',
    'yes',
    'no',
    'info',
    './data',
    'https://school.test',
    'x'.repeat(40),
    '12345678',
  ];
  const env: Record<string, string | undefined> = {};
  for (const { name, secret } of settings) {
    if (!chance.oneIn(3)) continue;
    env[name] = secret
      ? `sealed-${chance.int(2 ** 31)}-${'x'.repeat(chance.int(30))}`
      : chance.oneIn(3)
        ? anyText(chance)
        : chance.pick(good);
  }
  if (chance.oneIn(6)) env[chance.pick(bareNames)] = anyText(chance);
  return {
    shown: env,
    run: () => {
      try {
        const config = readConfig(env);
        must(
          Number.isInteger(config.port) && config.port >= 0 && config.port < 65_536,
          `port ${config.port}`,
        );
      } catch (why) {
        mustBeClear(why);
        const secrets = settings.filter(({ secret, name }) => secret && (env[name] ?? '').trim().length > 8);
        for (const { name } of secrets)
          must(!(why as Error).message.includes(env[name]?.trim() ?? ''), `${name} is told`);
      }
    },
  };
}

/** Files, lines and settings that come in from outside. */
export const throughFiles: readonly Entrance[] = [
  plainly('judge lines', 8, aJudgeLine),
  plainly('JSON Lines', 4, someLines),
  plainly('passage files', 3, aPassage),
  plainly('arguments of verbs', 1, someArguments),
  plainly('configuration', 8, aConfiguration),
];
