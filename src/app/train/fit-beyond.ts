import type { Features } from '../../judging/question-features.js';
import type { QuestionModel } from '../../judging/question-model.js';
import { fitBlend, type FittedBlend } from './fit-blend.js';
import type { OwnQuestion } from './own-questions.js';

const names = ['beyond', 'own', 'search', 'mainIdea', 'answerable'] as const;
type Name = (typeof names)[number];

/** With passages left out in turn: logistic alone kappa .53, trees of depth 2 and 3 .54 and .57, the mean .57; ridge 10 to 100 within .02. */
const options = {
  ridge: 60,
  trees: { trees: 100, depth: 3, rate: 0.08, rows: 0.7, columns: 0.3, ridge: 5, least: 4, seed: 1 },
  parts: 3,
};

/** What each model tells apart, and among which questions. */
const tasks: Readonly<
  Record<
    Name,
    { readonly label: (each: OwnQuestion) => boolean; readonly among: (each: OwnQuestion) => boolean }
  >
> = {
  beyond: { label: (each) => ownLabel(each) === 1, among: () => true },
  own: {
    label: ({ relationship }) => relationship === 'on my own',
    among: (each) => ownLabel(each) === 1,
  },
  search: {
    label: ({ relationship }) => relationship === 'think and search',
    among: (each) => ownLabel(each) === 0,
  },
  mainIdea: { label: ({ mainIdea }) => mainIdea === true, among: ({ mainIdea }) => mainIdea !== null },
  answerable: {
    label: ({ answerable }) => answerable === true,
    among: ({ answerable }) => answerable !== null,
  },
};

/** 1 where the answer is in the head, 0 where it is in the text. */
export function ownLabel({ relationship }: OwnQuestion): 0 | 1 {
  return relationship === 'on my own' || relationship === 'author and me' ? 1 : 0;
}

/** Fits what is learned from our own questions; `unseen` are log odds of being inferential by models that had not seen the passage. */
export function fitBeyond(
  features: readonly Features[],
  own: readonly OwnQuestion[],
): { readonly blends: Pick<QuestionModel, Name>; readonly unseen: readonly number[] } {
  const passages = [...new Set(own.map(({ passage }) => passage))];
  const part = (i: number): number => passages.indexOf(own[i]!.passage) % options.parts;
  const fit = (name: Name): FittedBlend => {
    const { label, among } = tasks[name];
    return fitBlend(
      features,
      own.map((each) => (label(each) ? 1 : 0)),
      { ...options, parts: name === 'beyond' ? options.parts : 0, part, use: (i) => among(own[i]!) },
    );
  };
  const fits = Object.fromEntries(names.map((name) => [name, fit(name)])) as Record<Name, FittedBlend>;
  return {
    blends: Object.fromEntries(names.map((name) => [name, fits[name].blend])) as Record<
      Name,
      FittedBlend['blend']
    >,
    unseen: fits.beyond.unseen,
  };
}
