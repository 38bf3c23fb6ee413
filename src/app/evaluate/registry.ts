import { answers } from './answers.js';
import { ownQuestions } from './own-questions.js';
import { questions } from './questions.js';
import type { Evaluation } from './row.js';

/** All that `evaluate` measures, in the order of its table. */
export const evaluations: readonly Evaluation[] = [questions, ownQuestions, answers];
