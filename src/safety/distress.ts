import type { Finding } from '../../shared/judgements.js';
import { overlap, type Setting } from './setting.js';
import type { Spoken } from './spoken.js';

/**
 * For what no rule foresees: signs of different kinds that meet in one post about the child's own life. One sign alone is
 * everyday talk; three kinds together call a person. Kinds, words and the number are this project's own choice.
 */
const kinds: Readonly<Record<string, RegExp>> = {
  'own people':
    / (?:mum|mums|dad|dads|stepdad|stepmum|uncle|aunt|gran|grandad|brother|sister|cousin|parents|boyfriend|girlfriend|coach|tutor|teacher|neighbour|babysitter|carer) /u,
  violence:
    / (?:hits?|hitting|beats?|beating|slaps?|slapped|punch(?:es|ed)?|kicks?|kicked|smash(?:es|ed|ing)?|chok(?:es?|ed)|strangled?|throttl\S+|burn(?:ed|t|s)?|whips?|throws?|threw|shoves?|shoved|grabs?|grabbed|fights?|fighting|attack\S*|hurts?|hurting|stabs?|stabbed|threaten\S*|forces?|forced|drags?|dragged|breaks?|broke) /u,
  anger:
    / (?:angry|mad|furious|rage|screams?|screaming|shouts?|shouting|yells?|yelling|drunk|drinks|drinking|drugs|high) /u,
  injury:
    / (?:blood|bleed\S*|bruis\S+|black and blue|black eye|scars?|wounds?|hospital|ambulance|broken (?:arm|nose|rib|leg)|unconscious|pills|tablets|needles?) /u,
  weapon: / (?:knife|knives|gun|blade|razor|bat|belt|hammer|machete|petrol) /u,
  death: / (?:die|dies|dying|dead|death|kill|kills|killing|suicide|alive|heaven|funeral|grave) /u,
  fear: / (?:scared|afraid|frightened|terrified|crying|cry|cries|cried|hide|hides|hiding|hid|shaking|unsafe|not safe|nightmares?|trapped|panic) /u,
  despair:
    / (?:on purpose|pointless|worthless|hopeless|goodbye|last (?:time|day|message)|never again|cant go on|can go on|no hope|alone|nobody|empty|give up|lonely|hate my|end it) /u,
  want: / (?:hungry|starv\S+|fridge|no food|not eat|dont (?:let me )?eat|eat at school|locks?|locked|cupboard|cellar|freezing|no bed|sleep(?:ing)? (?:in|outside|on)|outside all|homeless|wash my|wont wake|cant wake|days ago|hasnt come|havent come|left us|all the work) /u,
  body: / (?:naked|undress\S*|clothes|pants|underwear|shirt|body|bum|private|privates|lap|kiss\S*|touch\S*|bath|shower|bed|bedroom|cuddl\S*|swimsuit|bra) /u,
  pictures: / (?:photos?|pictures?|camera|webcam|video|videos|selfie|screenshots?|pics) /u,
  secrecy:
    / (?:secret|secrets|dont tell|not to tell|never tell|if i tell|cant tell|nobody knows|promise\S*|mustnt|between us|delete|hide it|prison|police|get in trouble) /u,
  stranger:
    / (?:man|men|stranger|online|internet|older|adult|grown up|messages|texts|dms|met|meets|meeting|follows|following|number|where i live|my address|come alone|his (?:car|house|room|flat)) /u,
  leaving:
    / (?:run away|running away|ran away|never coming back|not coming back|leave home|leaving home|night bus|packed|sneak\S*|tonight|at night|in the night|midnight|every night|all night) /u,
};
const everyday =
  / (?:lol|haha|hahaha|hide and seek|birthday|present|surprise|pillow|game|games|film|movie|match|football|netball|rugby|boss|level|holiday|sleepover|party|camping|spider|spiders|pancakes|swimming lesson|trampoline|by accident|accidentally|bonfire|fireworks|picnic|pizza|cake|in the (?:story|text|book|poem|passage)) /u;
const ownVoice = / (?:i|i am|i have|i will|me|my|myself|we|us|our|§|§s|im) /u;
const aside =
  / (?:i|we) (?:think|thought|predict|guess|bet|hope|wonder|say|agree|disagree|feel|know|believe|read|liked?|noticed)(?: that)? | my (?:prediction|question|answer|idea|guess|sum-up|favourite) /gu;
const fewest = 3;

/** An alarm where three kinds of signs meet in words of the child's own, which the passage doesn't have; null otherwise. */
export function distressIn(spoken: Spoken, setting: Setting): Finding | null {
  const text = spoken.text.replace(aside, '  ');
  if (!ownVoice.test(text) || everyday.test(spoken.text)) return null;
  const met = Object.values(kinds).filter((kind) => {
    const match = kind.exec(text);
    return match !== null && overlap(match[0].trim().split(' '), setting) < 1;
  });
  if (met.length < fewest) return null;
  const last = spoken.heard.at(-1);
  return {
    kind: 'alarm',
    rule: 'signs of trouble that meet',
    place: { in: 'text', start: spoken.heard[0]?.start ?? 0, end: last?.end ?? 0 },
  };
}
