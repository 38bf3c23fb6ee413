import { parseArgs } from 'node:util';
import { Fault } from '../../../shared/fault.js';
import { readLexicon } from '../../lexicon/read-lexicon.js';
import { bytesOf, type Verb } from '../io.js';
import { readJsonLines } from '../json-lines.js';
import { judgeLine } from '../judge-line.js';
import { makeJudges } from '../judges.js';

/** Judges JSON Lines, one answer a line, in order. */
export const verb: Verb = {
  name: 'judge',
  usage: 'judge [FILE.jsonl]',
  words: 'judges JSON Lines from a file or standard input, one answer a line',
  async run(args, io) {
    const { positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { json: { type: 'boolean' } },
    });
    if (positionals.length > 1)
      throw new Fault('usage', 'Cannot judge, expected at most one file', `Use: ${verb.usage}`);
    const [path] = positionals;
    const input = path === undefined || path === '-' ? io.input : await bytesOf(path);
    const lexicon = readLexicon();
    const judges = makeJudges(lexicon);
    let refused = 0;
    for await (const one of readJsonLines(input)) {
      const result = 'fault' in one ? { error: one.fault } : judgeLine(one.value, judges, lexicon);
      if ('error' in result) {
        refused += 1;
        await io.out(`${JSON.stringify({ error: { line: one.line, message: result.error } })}\n`);
      } else await io.out(`${JSON.stringify(result.answer)}\n`);
    }
    return refused > 0 ? 1 : 0;
  },
};
