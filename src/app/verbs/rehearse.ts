import { parseArgs } from 'node:util';
import { z } from 'zod';
import { Fault } from '../../../shared/fault.js';
import type { Message } from '../../../shared/messages.js';
import type { PersonId } from '../../../shared/ids.js';
import { bytesOf, readTextFile, type Io, type Verb } from '../io.js';
import { makeJudges } from '../judges.js';
import { readJsonLines } from '../json-lines.js';
import { plainText } from '../plain-text.js';
import { rehearse, type RehearsedPost } from '../rehearsal.js';

const postShape = z.object({
  at: z.union([z.string(), z.number()]),
  by: z.string().trim().min(1).max(40),
  do: z.enum(['predict', 'question', 'answer', 'clarify', 'sum-up']),
  text: z.string(),
  word: z.string().nullish(),
  to: z.string().nullish(),
});

function readPost(line: number, value: unknown): RehearsedPost | string {
  const read = postShape.safeParse(value);
  if (!read.success) {
    const issue = read.error.issues[0];
    return `Cannot take this post, wrong ${issue?.path.join('.') || 'shape'}: ${issue?.message ?? 'unknown'}`;
  }
  const { at: raw, by, do: doing, text, word, to } = read.data;
  const at = typeof raw === 'number' ? raw : Date.parse(/(?:Z|[+-]\d\d:?\d\d)$/.test(raw) ? raw : `${raw}Z`);
  if (!Number.isFinite(at) || Math.abs(at) > 4e12) {
    return 'Cannot take this post, expected at as a time like 2026-01-05T09:00:00Z';
  }
  return { line, at, by, do: doing, text, word: word ?? undefined, to: to ?? undefined };
}

async function readPosts(path: string, io: Io): Promise<{ posts: RehearsedPost[]; refused: number }> {
  const posts: RehearsedPost[] = [];
  let refused = 0;
  for await (const one of readJsonLines(await bytesOf(path))) {
    const post = 'fault' in one ? one.fault : readPost(one.line, one.value);
    if (typeof post === 'string') {
      refused += 1;
      io.err(`line ${one.line}: ${post}`);
    } else posts.push(post);
  }
  return { posts, refused };
}

function labelOf({ audience }: Message, nicknames: ReadonlyMap<PersonId, string>): string {
  switch (audience.to) {
    case 'channel':
      return 'channel';
    case 'staff':
      return 'staff';
    case 'person':
      return `to ${nicknames.get(audience.person) ?? 'somebody'}`;
  }
}

/** A message as the rehearsal prints it: a JSON line, or stamped plain text. */
function told(message: Message, at: number, nicknames: ReadonlyMap<PersonId, string>, json: boolean): string {
  const time = new Date(at).toISOString();
  const text = plainText(message);
  if (!json) {
    const stamp = time.slice(0, 16).replace('T', ' ');
    return `${stamp} ${labelOf(message, nicknames)}\n${text.replace(/^/gm, '    ')}\n`;
  }
  const to = message.audience.to === 'person' ? (nicknames.get(message.audience.person) ?? null) : null;
  return JSON.stringify({ type: 'message', audience: message.audience.to, to, text, at: time });
}

/** Rehearses a practice of an invented class and prints conversation and digest. */
export async function runRehearsal(
  paths: readonly string[],
  postsPath: string,
  options: { readonly seed: number; readonly json: boolean; readonly grade?: number },
  io: Io,
): Promise<number> {
  const passages = await Promise.all(
    paths.map(async (path) => ({
      text: await readTextFile(path),
      ...(options.grade === undefined ? {} : { grade: options.grade }),
    })),
  );
  const { posts, refused } = await readPosts(postsPath, io);
  if (posts.length === 0) {
    throw new Fault(
      'bad input',
      `Cannot rehearse ${postsPath}, expected at least one post, got none`,
      'Write one JSON object a line: {"at","by","do","text"}.',
    );
  }
  let refusals = refused;
  const names = new Map<PersonId, string>();
  let written = Promise.resolve();
  const put = (text: string): void => {
    written = written.then(() => io.out(`${text}\n`));
  };
  const result = await rehearse(makeJudges(), passages, posts, options.seed, {
    event: (event) => {
      if (event.type === 'person-added' && 'text' in event.nickname)
        names.set(event.person, event.nickname.text);
      if (options.json)
        put(JSON.stringify({ type: 'event', event: { ...event, at: new Date(event.at).toISOString() } }));
    },
    message: (message, at) => put(told(message, at, names, options.json)),
    refused: (line, why) => {
      refusals += 1;
      io.err(`line ${line}: ${why}`);
    },
  });
  put(
    options.json
      ? JSON.stringify({ type: 'digest', digest: result.digest })
      : result.pages.map(plainText).join('\n\n'),
  );
  await written;
  return refusals > 0 ? 1 : 0;
}

/** The verb. */
export const verb: Verb = {
  name: 'rehearse',
  usage: 'rehearse --passage FILE [--passage FILE ...] --posts FILE.jsonl [--seed N] [--json]',
  words: 'plays a practice from files: conversation and digest',
  async run(args, io) {
    const { values } = parseArgs({
      args: [...args],
      options: {
        passage: { type: 'string', multiple: true },
        posts: { type: 'string' },
        seed: { type: 'string' },
        json: { type: 'boolean' },
      },
    });
    const seed = Number(values.seed ?? '1');
    if (!values.passage || values.posts === undefined || !Number.isSafeInteger(seed)) {
      throw new Fault(
        'usage',
        'Cannot rehearse, expected at least one passage, posts, and a whole number as seed',
        `Use: ${verb.usage}`,
      );
    }
    return runRehearsal(values.passage, values.posts, { seed, json: values.json ?? false }, io);
  },
};
