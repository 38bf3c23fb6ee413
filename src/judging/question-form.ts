/*
 * What the form of a question says, as data: each rule has an example that it matches and one that it must not.
 * Rules read the question in lower case, single-spaced, with children's spellings of question words put right.
 */

/** A rule over the wording of a question; `name` is also the name of the feature and of the reason. */
export interface FormRule {
  readonly name: string;
  readonly pattern: RegExp;
  readonly example: string;
  readonly not: string;
}

const rule = (name: string, pattern: RegExp, example: string, not: string): FormRule => ({
  name,
  pattern,
  example,
  not,
});

/** Question words at the start; at most one of these holds for a question that begins with one. */
export const openings: readonly FormRule[] = [
  rule('why', /^(why|how come)\b/, 'why did the lamp go out', 'who lit the lamp'),
  rule('how feel', /^how\b.*\b(feel|feels|felt|feeling)\b/, 'how did the boy feel', 'how did the boy run'),
  rule(
    'how many',
    /^how (many|much|long|old|far|big|often|tall|fast|deep)\b/,
    'how many boats came',
    'how did they come',
  ),
  rule('how', /^how\b/, 'how did she open it', 'what did she open'),
  rule('who', /^(who|whose|whom)\b/, 'who rang the bell', 'where is the bell'),
  rule('where', /^where\b/, 'where was the key', 'who had the key'),
  rule('when', /^when\b/, 'when did it rain', 'where did it rain'),
  rule('which', /^which\b/, 'which road did they take', 'what did they take'),
  rule(
    'what happened',
    /^what (happened|happens|occurred)\b/,
    'what happened after the storm',
    'what did the storm do',
  ),
  rule('what will', /^what (will|might|may|could)\b/, 'what will the fox do', 'what did the fox do'),
  rule('what cause', /^what (made|makes|caused|causes|led)\b/, 'what made the ice crack', 'what cracked'),
  rule(
    'what did do',
    /^what (did|does|do)\b.*\b(do|doing)\b/,
    'what did the cook do',
    'what did the cook see',
  ),
  rule('what did', /^what (did|does|do|didn't)\b/, 'what did the cook see', 'what was in the pot'),
  rule('what was', /^what (was|were|is|are|had|has)\b/, 'what was in the pot', 'what did she say'),
  rule('what', /^(what|name|list)\b/, 'what animal came', 'who came'),
  rule(
    'yes or no',
    /^(do|does|did|is|are|was|were|has|have|had|can|could|will|would|should|might)(n't)?\b/,
    'did the hen fly',
    'how did the hen fly',
  ),
];

/** Words anywhere in a question that say something of what it asks for. */
export const marks: readonly FormRule[] = [
  rule('will', /\bwill\b/, 'what will he do', 'what did he do'),
  rule('would', /\b(would|wouldn't)\b/, 'why would she go', 'why will she go'),
  rule('might', /\b(might|may|probably|likely|maybe|perhaps)\b/, 'where might it be', 'where is it'),
  rule('could', /\b(can|could|able)\b/, 'how could he see', 'how did he see'),
  rule('should', /\b(should|must|need|ought)\b/, 'what should they do', 'what did they do'),
  rule('negation', /n't\b|\b(not|no|never|nobody|nothing)\b/, "why didn't he go", 'why did he go'),
  rule('feel', /\b(feel|feels|felt|feeling|feelings)\b/, 'who felt sad', 'who was sad'),
  rule(
    'think',
    /\b(think|believe|know|suppose|guess|tell|understand)\b/,
    'what do you think',
    'what did he eat',
  ),
  rule(
    'want',
    /\b(want|wants|wanted|wish|hope|decide|try|agree|refuse)\b/,
    'why did he want it',
    'why did he eat it',
  ),
  rule(
    'say',
    /\b(say|says|said|ask|asks|asked|answer|call|called|reply|warn|promise)\b/,
    'what did he say',
    'what did he eat',
  ),
  rule('because', /\bbecause\b/, 'what happened because it rained', 'why did it rain'),
  rule('if', /\bif\b/, 'what happens if it rains', 'what happens when it rains'),
  rule('after', /\bafter\b/, 'what did he do after supper', 'what did he do before supper'),
  rule('before', /\b(before|until)\b/, 'what did he do before supper', 'what did he do after supper'),
  rule(
    'when inside',
    /.\b(when|while|as soon as|once)\b/,
    'how did he feel when it rained',
    'when did it rain',
  ),
  rule('about', /\b(about|toward|towards)\b/, 'what does it say about owls', 'who saw the owl'),
  rule(
    'alike',
    /\b(alike|similar|different|differently|difference|compare|compared|same|change|changed)\b/,
    'how are they alike',
    'how are they today',
  ),
  rule('instead', /\b(instead|rather|again|still|anymore)\b/, 'why did he stay instead', 'why did he stay'),
  rule('kind', /\b(kind|type|sort)\b/, 'what kind of boat was it', 'what boat was it'),
  rule('look', /\b(look|looks|looked|seem|sound|appear)\b/, 'what did it look like', 'what did it do'),
  rule('was', /^\w+ (was|were|wasn't|weren't|is|are|isn't)\b/, 'why was he late', 'why did he come late'),
  rule('now', /^\w+ (does|do|is|are|doesn't|don't)\b/, 'why does it rain', 'why did it rain'),
  rule(
    'happy or sad',
    /\b(happy|sad|angry|afraid|scared|upset|surprised|surprise|unhappy|excited|worried|mad|glad)\b/,
    'why was he sad',
    'why was he late',
  ),
  rule('it or they', /\b(it|they|them|he|she|him|this|that)\b/, 'why did they go', 'why did the men go'),
];
