import type { Doing, Register, Relationship } from '../../shared/strategies.js';
import { fill } from './catalogue.js';
import { helpWords, stemWords } from './help-words.js';
import { frequentWords } from './passage-word.js';
import { sharesRun, withGaps } from './runs.js';

/** Nudge, stem, model on another text, shared turn. */
export type HelpStep = 1 | 2 | 3 | 4;

/** `gist` is the adult's sentence for the segment, `answer` one that is known but not posted; neither shows in steps 1 to 3. */
export interface HelpAbout {
  readonly segment: string;
  readonly gist: string | null;
  readonly answer?: string;
  readonly register: Register;
}

/** Words that help, and at most three things to pick from in the shared turn. */
export interface HelpGiven {
  readonly words: string;
  readonly choices?: string[];
}

type Key = keyof typeof helpWords;

/** A run of this many words gives an answer away (a rule of this project). */
const givenAway = 4;

const steps = { 1: 'nudge', 2: 'stem', 3: 'model', 4: 'shared' } as const;

/** Help with one thing to do, a little more each time. */
export function helpFor(doing: Doing, step: HelpStep, about: HelpAbout): HelpGiven {
  if (step === 4) return sharedTurn(doing, about);
  const secrets = [about.gist, about.answer ?? null].filter((text) => text !== null);
  const order: readonly Key[] = [`${doing} ${steps[step]}`, `${doing} nudge`, 'safe again'];
  for (const key of order) {
    const words = fill(helpWords[key], {}, about.register);
    if (!secrets.some((secret) => sharesRun(words, secret, givenAway))) return { words };
  }
  return { words: fill(helpWords['safe slow'], {}, about.register) };
}

/** Three starts for a question of a relationship. */
export function questionStems(relationship: Relationship, register: Register): readonly string[] {
  return ([1, 2, 3] as const).map((n) => fill(stemWords[`${relationship} ${n}`], {}, register));
}

function sharedTurn(doing: Doing, about: HelpAbout): HelpGiven {
  const say = (key: Key) => fill(helpWords[key], {}, about.register);
  switch (doing) {
    case 'predict':
      return {
        words: say('predict shared'),
        choices: [say('choice predict who'), say('choice predict find'), say('choice predict same')],
      };
    case 'question':
      return {
        words: say('question shared'),
        choices: [say('choice question why'), say('choice question how'), say('choice question if')],
      };
    case 'answer':
      return { words: say('answer shared'), choices: sentencesToPick(about.segment) };
    case 'clarify':
      return { words: say('clarify shared'), choices: longestWords(about.segment) };
    case 'sum-up':
      return sharedSumUp(about);
    case 'add':
      return {
        words: say('add shared'),
        choices: [say('choice add who'), say('choice add why'), say('choice add less')],
      };
    default:
      return doing satisfies never;
  }
}

/** Half of the adult's sentence with gaps; without one, what the part may be about, to pick from. */
function sharedSumUp({ gist, segment, register }: HelpAbout): HelpGiven {
  const half = gist === null ? null : withGaps(gist);
  if (half !== null) return { words: fill(helpWords['sum-up shared gaps'], { half }, register) };
  const topics = frequentWords(segment).slice(0, 3);
  return {
    words: fill(helpWords['sum-up shared'], {}, register),
    choices: topics.map(({ word }) => word),
  };
}

function longestWords(segment: string): string[] {
  const words = frequentWords(segment).map(({ word }) => word);
  return words.toSorted((a, b) => b.length - a.length).slice(0, 3);
}

/** First, middle and last sentence, roughly cut; enough to pick from. */
function sentencesToPick(segment: string): string[] {
  const all = segment
    .split(/(?<=[.!?]["”’]?)\s+(?=["“‘]?\p{Lu})/u)
    .map((sentence) => sentence.trim())
    .filter((sentence) => sentence !== '');
  if (all.length <= 3) return all;
  return [0, Math.floor(all.length / 2), all.length - 1].map((at) => all[at] ?? '');
}
