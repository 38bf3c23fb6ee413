import { answers } from './answers.js';
import { clarifying } from './clarify.js';
import { ownQuestions } from './own-questions.js';
import { predictions } from './predict.js';
import { questions } from './questions.js';
import { reading } from './reading.js';
import type { Evaluation } from './row.js';
import { screening } from './screening.js';
import { spelling } from './spelling.js';
import { sumUps } from './sum-up.js';

/** All that `evaluate` measures, in the order of its table. */
export const evaluations: readonly Evaluation[] = [
  questions,
  ownQuestions,
  answers,
  sumUps,
  clarifying,
  predictions,
  reading,
  screening,
  spelling,
];
