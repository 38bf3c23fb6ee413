import { makeTools } from '../../judging/tools.js';
import { readLexicon } from '../../lexicon/read-lexicon.js';
import { trainHardWords } from './hard-words.js';
import { trainMeaning } from './meaning.js';
import { trainAnswer } from './train-answer.js';
import { trainScreen } from './train-screen.js';
import { trainSumUp } from './sum-up.js';
import { trainQuestion } from './train-question.js';

/** Where text is written. */
export interface Sink {
  write(text: string): unknown;
}

/** Learns all weights of the question's and the answer's judges from the labelled data in a folder and writes them beside the judges; 0 when done. The same data give the same files. */
export function runTrain({ data }: { readonly data: string }, out: Sink, err: Sink): Promise<number> {
  const tools = makeTools(readLexicon());
  err.write('learning from questions ...\n');
  const { model, files } = trainQuestion(data, tools);
  for (const file of files) out.write(`${file}\n`);
  err.write('learning from answers ...\n');
  for (const file of trainAnswer(data, tools, model.locator)) out.write(`${file}\n`);
  err.write('learning from meanings ...\n');
  for (const file of trainMeaning(data, tools)) out.write(`${file}\n`);
  err.write('learning from hard words ...\n');
  for (const file of trainHardWords(data, tools.lexicon)) out.write(`${file}\n`);
  err.write('learning from sum-ups ...\n');
  for (const file of trainSumUp(data, tools)) out.write(`${file}\n`);
  err.write('learning from posts to screen ...\n');
  out.write(
    `${trainScreen(
      (word) => tools.lexicon.knows(word),
      (line) => err.write(line),
    )}\n`,
  );
  return Promise.resolve(0);
}
