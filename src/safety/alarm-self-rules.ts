import { rulesOf, type Rule } from './rule.js';

/** Things that a text, a game or a day can do to a child only in a manner of speaking. */
const figure =
  'laughing|laughter|boredom|embarrassment|cringe|to know|to see|to find out|for a|of heat|of hunger lol|inside lol|lol at';

/** Words that may mean harm to oneself. A word screen calls a person and diagnoses nothing; the list is this project's own. */
export const selfRules: readonly Rule[] = rulesOf('alarm', [
  [
    'wants to die',
    `(?:want to|wants to|wanted to|wish to|wish i|wish i could|going to|ready to|deserve to|rather|better to|better if i|hope i|hoping i|like to|need to|i should|i should just|i could|i could just|i might as well|think about|thinking about|think of|thinking of|thought about|thoughts of|thoughts about|dream of|dream about|plan to|planning to|feel like|try to|tried to|trying to|just let me|let me|about) ~2 (?:die|dying|be dead|being dead|was dead|were dead|am dead|died|not be here|not being here|wasnt here|werent here|be gone|was gone|were gone|not exist|not existing|didnt exist|disappear forever|not be alive|wasnt alive|werent alive|isnt alive|wasnt born|was never born|were never born|never been born|never born|never wake up|not wake up|dont wake up|didnt wake up|end it|end my life|end it all|end everything|take my life|take my own life|stop living|stop existing|fall asleep forever|sleep forever|suicide)`,
    'i want to die',
    'the wolf was about to die',
    '',
    `(?:die|dead|dying|died) (?:laughing|of (?:boredom|laughter|embarrassment|heat|shame|cringe)|from (?:laughing|boredom|embarrassment))|(?:he|she|they|it|the \\S+|who|wolf|king|queen|boy|soldiers?) ~3 (?:want to|wants to|wanted to|going to|about to|might|rather|ready to|hoped to|tried to|was|were|is|are|will|would|could|should|deserve to) ~2 (?:die|dying|died|disappear)(?: ~3 \\S+)?|(?:think|hope|hoping|guess|predict|bet|thought|wish) ~3 (?:he|she|they|it|the \\S+) ~4 (?:die|died|dead|dying|dies)|(?:die|dying|died) (?:of|from) (?:${figure})`,
  ],
  [
    'does not want to live',
    '(?:i|§|he|she|friend|sister|brother|mum|dad|\\S+) ?(?:really |just )?(?:dont|didnt|not|never|wont|cant|no longer) (?:really |even |feel like )?(?:want to|wants to|wanting to|wanted to|like|care if i|need to|deserve to|see why i should) ?(?:be|stay|live|living|wake up|exist|go on living|being|am|keep) ?(?:here|alive|living|in this world|on this earth|going|around)? ?(?:anymore|any longer|tomorrow|in the morning|again)?',
    'i dont want to be here anymore',
    'i dont want to be the leader',
    '.*(?:want to|like|need to|care if i|wanted to|feel like|even|really|just)(?: (?:be|stay|am|keep|being|go|live))?|.* going|(?:he|she|they|it|wolf|fox|people|\\S+s) .*',
  ],
  [
    'hurts oneself',
    '(?:kill|kills|killing|hurt|hurts|hurting|harm|harms|harming|cut|cuts|cutting|hit|hits|hitting|burn|burns|burning|hate|hates|starve|starving|drown|hang|stab|scratch|scratches|scratching|punch|punches|unalive|bite|bites|punish|choke|end|shoot|poison|do something to|do something bad to|do things to|threw up|make) ~1 (?:myself|my self|himself|herself|themselves|me self) ?(?:sick|bleed|throw up)?|self harm(?:ing|ed|s)?|selfharm',
    'i hurt myself when i am sad',
    'i make myself a sandwich',
    '(?:make|end) (?:myself|himself|herself|themselves)|(?:kill|kills|hurt|hurts|hit|hits|cut|cuts|hate|hates|burn|burns|drown|hang|stab|bite|shoot|scratch|starve|poison|punish) (?:himself|herself|themselves)',
  ],
  [
    'suicide',
    'suicid\\S*|overdose\\S*|self harm\\S*|sewerslide|kms|unaliv\\S*|(?:took|take|taking|swallow|swallowed) ~3 (?:pills|tablets|medicine)(?: ~3 (?:die|sleep|all))?|razor(?: blade)?s?|(?:cut|cuts|cutting|scars|marks|slit) ~2 (?:my|her|his) (?:arm|arms|wrist|wrists|leg|legs|skin|thigh|thighs)|jump ~1 (?:off|from|in front of) ~2 (?:bridge|roof|window|building|train|cliff|car|bus|lorry)|(?:hang|noose|rope) ~3 (?:myself|round my neck|around my neck)|(?:step|walk|run|lie) ~1 (?:in front of|under|on) ~1 (?:train|car|bus|traffic|tracks|lorry)',
    'i think about suicide',
    'the goat can jump far',
    '(?:he|she|they|it|boy|goat|fox|\\S+s) (?:take|took|jump).*',
  ],
  [
    'no point in living',
    '(?:whats the|what is the|no|see no|isnt any|any|is there a|there is no|not much|see the|see any) (?:point|reason|use|sense) ?(?:of|in|to)? ?(?:me )?(?:live|living|life|being alive|be alive|being here|going on|go on|anything anymore|anything|existing|getting up|trying anymore|carrying on)|life (?:isnt|is not|not|aint|wasnt) ~1 (?:worth|for me|fun anymore)|(?:not|isnt|aint|never) worth (?:living|it anymore|being alive)|worthless ~2 me|(?:i am|i feel|im|feel|feeling) ~2 (?:worthless|a burden|hopeless|empty inside|numb|invisible to everyone|like nothing|dead inside|like dying|trapped)|hate ~1 (?:my life|being me|being alive|living|my self)|tired of (?:living|life|being alive|everything|being here|it all|being me)|sick of (?:living|life|being alive|being me)|give up on (?:life|everything|living)',
    'whats the point of living',
    'what is the point of the story',
  ],
  [
    'better off without me',
    '(?:better|happier|easier|fine|nicer|best) ~2 (?:without me|if i (?:was|were|am|wasnt|werent|had|died|left|disappeared|didnt)|when i am gone|once i am gone)|(?:nobody|who|anyone|no one|everyone|nobody else) ~3 (?:miss|care|cares|notice|notices|mind|sad|cry|come|glad|happy) ~2 (?:if i (?:was|were|am|died|disappeared|vanished|left|wasnt|go|went|die)|when i (?:am|die)|me if|me when|if i|i am gone)|nobody (?:would )?(?:cares|care|notice|notices) (?:about me|if i|me|whether i)|i wish i (?:was|were) (?:never|not|somebody else|someone else|invisible forever|a ghost)',
    'they would all be better off without me',
    'the hens were better off without the fox',
  ],
  [
    'says goodbye for ever',
    '(?:goodbye|bye|farewell|suicide|last) (?:letter|note|message|letters) |(?:goodbye|good bye|bye) ~3 (?:forever|for good|everybody i|this is the end|this is my last|i cant|world|cruel world|i am done|i loved)|(?:anymore|any longer|done|over|end) ~2 (?:\\/ )?(?:goodbye|good bye|bye) ?(?:everyone|all|forever|world|mum|dad)?|(?:wont|never|not|last time|dont) ~4 see (?:me|each other) ~1 (?:again|anymore|after|ever|alive|monday|tomorrow)|see me (?:again|anymore) (?:after|ever)|(?:after|by|on|until) \\S+ (?:i|you) wont ~4 (?:be here|see me|be around|have to|exist)|(?:wont|not going to|not) be (?:here|around|alive) ~1 (?:much longer|next|after|anymore|on|tomorrow|by|for|to see)|(?:last|final) (?:time|day|message|post) ~3 (?:see me|hear from me|on earth|alive|ever|i will)|(?:wrote|write|written|writing|left) ~2 (?:goodbye|my will|a last letter|a note for when)|(?:gave|give|giving|given) ~1 (?:away )?(?:all )?my (?:things|stuff|toys|bracelet|favourite \\S+) ~2 (?:away )?(?:because|since|forever|before i|i wont|dont need)',
    'i wrote a goodbye letter to my mum',
    'goodbye everyone see you tomorrow',
  ],
  [
    'wants it all to stop',
    '(?:want|wish|need|make|just) ~1 (?:it|everything|the pain|my life|this|the world|it all) ~1 (?:all )?(?:to )?(?:stop|end|be over|go away|finish|over)(?= forever| now| \\/| and | $)|nothing (?:matters|helps|makes me happy|is fun)(?: anymore| to me| now| i| just)?|(?:cant|couldnt|dont want to) (?:do|take|go on|cope|stand|handle|live|carry on|deal|keep going|bear|continue) ?(?:with )?(?:this|it|like this|on|life|doing this|going)? ?(?:anymore|any longer|any more|much longer|forever)|(?:sleep|asleep|bed) ~2 (?:and |but )?(?:not|never|dont|wont|didnt) (?:have to )?wake(?: up)?|never wake up|(?:cry|crying|cried) ~2 (?:to sleep|every night|each night|every day|all night)|(?:voice|voices) ~2 (?:tells?|telling|say|says|in my head)|(?:nobody|no one) ~1 (?:loves|wants|needs|understands) me|(?:i|im) ~2 (?:so )?(?:alone|lonely) ~2 (?:nobody|all the time|always|in the world|that i)|do something (?:bad|terrible|stupid|silly) to (?:me|myself)',
    'i just want it all to stop',
    'i want it to stop raining',
    '.*(?:cant|couldnt) (?:do|take|stand) (?:this|it) (?:word|page|question|one|part).*|(?:nothing) (?:matters|helps) .*',
  ],
  [
    'not eating, not sleeping',
    '(?:i|ive|have|i am) ~2 (?:stopped eating|not eating (?:anymore|anything|so|because|at all|again)|starve|starving (?:on purpose|so)|skip(?:ping)? (?:all )?(?:my )?meals|throw up (?:after|my|on)|make (?:me|my self) sick|threw up on purpose|dont eat (?:so|to|because|anymore)|scared to eat|too fat to)|(?:throw|throwing) up (?:so|to) ~2 (?:thin|skinny|not get fat)',
    'i stopped eating so i get thin',
    'i am not eating mushrooms',
  ],
]);
