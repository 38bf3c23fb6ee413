import { getStopwords } from 'keyword-extractor';

/** Words in the list that carry meaning in children's texts. */
const meaningful = new Set(
  (
    'able alone appreciate asking associated available aside awfully believe best better brief cause causes changes ' +
    'clearly consider considering different downwards entirely example exactly fifth first five followed following ' +
    'follows forth four gone greetings help hopefully ignored immediate important inner less little looking mine ' +
    'necessary nine novel old plus possible second self sensible serious seriously seven six sorry sure taken thank ' +
    'thanks think third thorough thoroughly three together trying twice two useful value welcome wish wonder zero'
  ).split(' '),
);
/** Talk about the task, and forms that the list leaves out. */
const further = [
  "y'all",
  'gonna',
  'wanna',
  'gotta',
  'cuz',
  'cos',
  'bcuz',
  'im',
  'dont',
  'didnt',
  'doesnt',
  'isnt',
];
const alsoFurther = [
  'wasnt',
  'wont',
  'couldnt',
  'thats',
  'whats',
  'theyre',
  'ive',
  'ill',
  'shes',
  'hes',
  'em',
];

const stopWords: ReadonlySet<string> = new Set([
  ...getStopwords({ language: 'english' }).filter((word) => !meaningful.has(word)),
  ...further,
  ...alsoFurther,
]);

/** Whether a word in lower case, apostrophes straight, only holds a sentence together. */
export function isStopWord(lower: string): boolean {
  return stopWords.has(lower) || lower.length < 2;
}
