/*
 * What tells the four relationships apart beyond stories, by the trade's decision rule: could someone who did not read
 * answer it (on my own)? Is it all in the text, in one place (right there) or in several (think and search)? Else author
 * and me. Where the answer lives decides; the wording only adds to it.
 */
import { keyTerms } from '../text/key-terms.js';
import { rootOf } from './root.js';
import type { Analysis } from '../text/analysis.js';
import type { FormRule } from './question-form.js';
import type { QuestionView } from './question-view.js';
import type { JudgingTools } from './tools.js';

/** Wording that says who the answer is asked of, or how many places it takes (signal stems: common practice, no source). */
export const signals: readonly FormRule[] = [
  { name: 'you', pattern: /\b(you|your|yours|u|we|us|our)\b/, example: 'what would you do', not: 'what did she do' },
  { name: 'have you ever', pattern: /\b(have|has|had|did|do|are|were|would|could|can|will) (you|your|u)\b(?! (think|know|tell|believe))/, example: 'have you ever seen a fox', not: 'what do you think the fox wants' },
  { name: 'you think', pattern: /\b(you|u) (think|believe|know)\b|\b(can|could) you tell\b|\byou suppose\b/, example: 'why do you think he left', not: 'why did he leave' },
  { name: 'in your life', pattern: /\b(your (family|school|house|home|life|town|class|teacher|friend|friends|mum|mom|dad)|if (you|it) (was|were) (you|yours))\b/, example: 'does your school have a pond', not: 'does the school have a pond' },
  { name: 'anybody', pattern: /\b(people|peple|someone|somebody|anyone|anybody|everyone|everybody|kids|children|animals|most|a person|a kid)\b/, example: 'why do people cry', not: 'why did the girl cry' },
  { name: 'right or fair', pattern: /\b(should|fair|agree|better|best|important|okay|ok|right|wrong)\b/, example: 'should wolves be protected', not: 'how many wolves are there' },
  { name: 'writer', pattern: /\b(author|auther|writer|narrator|text|passage|mean|means)\b/, example: 'what does the author want', not: 'what does the girl want' },
  { name: 'what it shows', pattern: /\b(tell us|tells us|tell you|tells you|show|shows|suggest|suggests|sort of person|kind of person)\b|\bwhat can (you|we) tell\b/, example: 'what does the hat tell us', not: 'what hat was it' },
  { name: 'evidence wanted', pattern: /\b(clue|clues|proof|evidence|how do (you|we) know|facts)\b/, example: 'which clues show that he is cold', not: 'is he cold' },
  { name: 'several', pattern: /\b(all|both|each|steps|list|reasons|ways|different|difference|compare|compared|alike|same|change|changed|changes|two|three|things|which things|put together)\b/, example: 'what are all the steps', not: 'what is the first step' },
  { name: 'two questions', pattern: /.(,| and| or) (then )?(what|why|how|when|where|who|which|did|was|is|does|do|could|what's)\b/, example: 'why did they go and what did they find', not: 'why did they go' },
  { name: 'from to', pattern: /\bfrom\b.*\b(to|till|until)\b|\bin the end\b|\bstart\b.*\bend\b/, example: 'what happens from seed to flower', not: 'where is it from' },
  { name: 'guess', pattern: /\b(would|might|could|probably|if|will|maybe|next)\b/, example: 'what might happen next', not: 'what happened last week' },
  { name: 'inside', pattern: /\b(feel|felt|feels|think|thinks|want|wants|wanted|know|knows|believe|trust|care|cares|mind)\b/, example: 'how did she feel', not: 'how did she run' },
  { name: 'manner', pattern: /^(why|how)\b(?! (many|much|long|far|old|big|often|fast|deep|tall))/, example: 'why did it melt', not: 'how many melted' },
  { name: 'one fact', pattern: /^(who|where|when|which|how (many|much|long|far|old|big|often|fast|deep|tall))\b/, example: 'who rang', not: 'why did it ring' },
  { name: 'what if', pattern: /\bif\b|\bwhat would\b|\b(would|could|might) (have|ever|still)\b|\bwithout\b/, example: 'what would happen without rain', not: 'what happened in the rain' },
  { name: 'judging', pattern: /\b(best|better|worst|worse|good|bad|more|most|hardest|harder|easier|easiest|favou?rite|like|fun|nice|cute|scary|funny|silly|brave|smart|clever|mean|kind|real|true|hard|easy|strange|weird|cool|boring)\b/, example: 'which is harder to build', not: 'which was built first' },
  { name: 'meant', pattern: /\b(mean|means|meant|meaning|really|point|lesson|learn|message|feel like)\b/, example: 'what did she mean by that', not: 'what did she say' },
  { name: 'people in general', pattern: /^(why|how|when|where|what|which|who)?\s*(do|does|can|are|is|should|would) (people|peple|a|an|you|kids|we|some|other|all|most|any)?\s*\w+s?\b/, example: 'why do people cry', not: 'why did she cry' },
  { name: 'the or a name', pattern: /\b(the|this|that|these|those|mr|mrs|he|she|they|his|her|their|its|him|them)\b/, example: 'where is the boat', not: 'where do boats come from' },
  { name: 'every', pattern: /\b(all|every|list|both|each|ways|steps|reasons|things|how did .* change|how does .* change|over the|from start|in order|give)\b/, example: 'what are all the steps', not: 'what is the step' },
  { name: 'did', pattern: /\b(did|was|were|had|didn't|wasn't|weren't|happened)\b/, example: 'where was the boat', not: 'where is the boat' },
  { name: 'yes or no', pattern: /^(do|does|did|is|are|was|were|has|have|had|can|could|will|would|should|might)\b/, example: 'did it melt', not: 'why did it melt' },
]; // prettier-ignore

/** Puts what the wording signals, and how much the question is about this text at all, into `into`. */
export function generalFeatures(view: QuestionView, into: Record<string, number>, tools: JudgingTools): void {
  const { wording, terms } = view;
  const { names } = view.segment;
  for (const { name, pattern } of signals) into[name] = pattern.test(wording.plain) ? 1 : 0;
  const { cover = 0, anybody = 0, you = 0, manner = 0 } = into;
  const past = pastShare(view.segment.analysis);
  const present =
    /\b(do|does|is|are|has|have|can)\b/.test(wording.plain) && !/\b(did|was|were|had)\b/.test(wording.plain);
  const definite = /\b(the|this|that|these|those|he|she|they|it|his|her|their|its|him|them)\b/.test(
    wording.plain,
  );
  Object.assign(into, {
    'names it': terms.some(({ word }) => names.has(word.stem)) ? 1 : 0,
    'points at it': definite ? 1 : 0,
    'text in the past': past,
    'now in a tale': present && past > 0.06 ? 1 : 0,
    'key terms': keyShare(view, tools),
    'anybody, not the text': anybody * (1 - cover),
    'you, not the text': you * (1 - cover),
    'manner and cover': manner * cover,
  });
}

const pasts = new WeakMap<Analysis, number>();
const keys = new WeakMap<Analysis, ReadonlyMap<string, number>>();

/** Share of words that put a text into the past. */
function pastShare(segment: Analysis): number {
  const known = pasts.get(segment);
  if (known !== undefined) return known;
  const past = segment.tokens.filter(({ lower }) =>
    /^(was|were|had|did|said|went|came)$|[^e]ed$/.test(lower),
  ).length;
  const share = past / Math.max(1, segment.tokens.length);
  pasts.set(segment, share);
  return share;
}

/** Share of the key terms' weight that a question names, 0..1. */
function keyShare({ segment, terms }: QuestionView, tools: JudgingTools): number {
  const weights = keys.get(segment.analysis) ?? keyWeights(segment.analysis, tools);
  const total = [...weights.values()].reduce((sum, weight) => sum + weight, 0);
  const named = terms.reduce((sum, { word }) => sum + (weights.get(word.stem) ?? 0), 0);
  return total > 0 ? named / total : 0;
}

function keyWeights(segment: Analysis, { lexicon }: JudgingTools): ReadonlyMap<string, number> {
  const weights = new Map(
    keyTerms(segment, lexicon).map(({ term, weight }) => [rootOf(term.toLowerCase(), lexicon), weight]),
  );
  keys.set(segment, weights);
  return weights;
}
