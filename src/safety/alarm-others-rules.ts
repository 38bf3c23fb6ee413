import { rulesOf, type Rule } from './rule.js';

const who =
  '{family}|{adult}|{kids}|he|she|they|someone|§|{family} and {family}|his (?:friend|friends|mate|mates)|her (?:friend|boyfriend)|my \\S+|the \\S+';
/** Where a knock is play or sport. */
const play =
  'pillow|pillows|snowball|snowballs|tag|ball|balloon|bomb|game|playing|play|played|fight lol|accident|accidentally|mistake|level|boss|swing|frisbee|football|netball|hockey|rugby|tennis|basketball|pool|lol|haha|hahaha|joking|tickle fight';

/** Words that may mean that somebody hurts a child or that nobody cares for it. The list is this project's own. */
export const othersRules: readonly Rule[] = rulesOf('alarm', [
  [
    'somebody hits me',
    `(?:${who}) ~3 (?:{hit}) ~1 (?:me|us|my (?:mum|sister|brother|little brother|little sister|baby \\S+|head|arm|back|face|hair|hand|neck|dog)|things? at (?:me|us)|stuff at (?:me|us)|\\S+ at (?:me|us|my mum))`,
    'my stepdad hits me',
    'the wolf hit the tree',
    '(?:it|ball|sun|rain|news|idea|smell|cold|song|story|text|book) ~2 (?:{hit}) .*|.*(?:make|makes|made|help|helps|let|lets) (?:me|us)',
    play,
  ],
  [
    'is hurt at home',
    '(?:hurt|hurts|hit|hits|beats?|beaten|beat up|slapped|punched|kicked|scared|unsafe|not safe|dont feel safe|shouted at|screamed at|locked up|bullied|attacked|touched) ~2 (?:at home|at my house|in my (?:own )?(?:house|home|room)|by (?:my|a|the|some) (?:{family}|{adult}|{kids})|by (?:my )?(?:mum|dad|stepdad|uncle|brother|him|her|them))|(?:get|gets|got|getting|be|being|am|was) (?:hit|beaten|beat up|slapped|kicked|punched|hurt|belted|whipped|smacked|the belt|a beating|a hiding|battered|thrown) ~3 (?:{often}|by|for)|(?:get|gets|got|give|gives|gave) ~1 (?:the belt|a beating|beatings|a black eye|a hiding)',
    'i get beaten when i am late',
    'we got beaten 4 to 1 by the rovers',
    '.*(?:in football|\\d|at chess|by the rovers|in the race|at football|in the final).*|(?:got|get|getting|was|be|am) (?:beaten|beat up|hurt|hit|kicked) by (?!my|him|her|them|a man|the man).*',
  ],
  [
    'marks and bruises',
    '(?:bruise|bruises|black eye|burn|burns|marks?|scars?|cuts?|bleeding|broken arm|blood) ~6 (?:from (?:him|her|them|dad|mum|stepdad|my|when|the belt|what)|he|she|again|because of|where (?:he|she|they|dad|mum)|and (?:i )?(?:have to|had to|must|say)|long sleeves|dont tell|{family}|cover|hide|hiding)|(?:have to|had to|must|told me to|always|i) (?:say|tell|lie|pretend) ~4 (?:i )?(?:fell|tripped|walked into|bumped|fall|was an accident|clumsy|bike)|(?:hide|hiding|cover|covering|show) ~2 (?:bruise|bruises|marks|scars|cuts)|wear long sleeves ~3 (?:see|hide|cover|because)',
    'i have a bruise from him again',
    'i fell and got a bruise',
  ],
  [
    'afraid of somebody',
    '(?:scared|afraid|frightened|terrified|frighten|scares|petrified) ~2 (?:of (?:my )?(?:{family}|him|her|them|home|going home|what (?:he|she|they)|being at home|the man|my (?:tutor|coach|teacher)|mums|dads)|to (?:go|be|come|get|walk) (?:to )?(?:home|school|at home|in my house|back|back home|alone with|with him|bed at|into)|when (?:he|she|dad|mum|stepdad|they) (?:comes|come|drinks|gets|is|shouts|starts|are)|at home|in my (?:house|home|room)|he (?:will|might|is going|comes)|she (?:will|might)|they (?:will|might)|if (?:he|she|they|dad|mum) (?:finds|find|comes|hears)|because (?:he|she|they|of) (?:said|says|told|him|keeps))|(?:dont|didnt|not|never|cant|hate) (?:want to|like|wanna|dare|dare to)? ?(?:go|going|be|being|be at|stay|come|sleep) (?:at )?(?:home|back home|back there|there alone|alone with (?:him|her)|with him|at his|near him|in my house|at my (?:dads|mums|uncles))',
    'im scared to go home',
    'she was scared to go in the cave',
    '',
    '(?:he|she|they|boy|girl|the \\S+|it|people|mouse|who) (?:is|was|were|are|be|gets?|got|felt|feels|looked|seems?|must be|might be) ~2 (?:scared|afraid|frightened|terrified)|fun|too good|beach|party|holiday|lol|haha|yet|playing|story|book',
  ],
  [
    'trouble at home',
    '(?:{parent}|he|she|they|{family}|neighbour|girl|boy|woman|man|baby) ~3 (?:fight|fighting|fights|scream|screaming|screams|yell|yells|yelling|shout|shouts|shouting|smash|smashes|smashed|cry|crying|cries|break things|throwing things|throws things|argue|arguing|drunk|drinks|drinking|drugs) ~5 (?:every (?:night|day|evening|time)|all (?:night|day|the time)|at night|hide|hiding|under (?:the|my) bed|scared|because of him|at me|at us|at my|and (?:then )?(?:he|she|hits|throws|hit)|so i|i cant sleep|me and my|police|knife)|(?:gets|get|is|was|are|always|comes home|got|been) (?:so |very |really )?(?:drunk|high|stoned|wasted) ~4 (?:and|then|every|again|at|hits|throws|i|we|all|me|us)|(?:hear|heard|hearing) ~3 (?:mum|dad|mums|sister|brother|her|him|baby|girl|boy|neighbour) ~1 (?:scream|screaming|cry|crying|shout|beg|begging)|(?:knife|gun|belt) ~4 (?:at home|dad|mum|stepdad|at (?:me|us|mum|her)|to (?:mum|my))|(?:hide|hid|hides|hiding) ~3 (?:under|in|behind) ~3 (?:because|when|until|from (?:him|her|dad|mum|them|my))(?: ~2 (?:he|him|she|her|dad|mum|them|stepdad|my))?',
    'i hide when my dad gets drunk and shouts at us',
    'the baby cries all night in the poem',
    '',
    'hide and seek|hid from|in the (?:story|poem|text|book)|surprise|lol|haha|tag',
  ],
  [
    'calls for help',
    '(?:please|someone|somebody|anyone|can|could|plz) ~3 (?:help me|save me|call the police|get help|come and get me|help us|rescue me)(?: ~3 (?:home|he|she|scared|room|outside|now|is))?|(?:he|she|they|someone|man|dad|stepdad|uncle) ~2 (?:is|are|outside|at|comes|came|come|coming|gets|got|walks|climbs|sneaks) ~1 (?:outside|into|in|at|to|near) ~1 my (?:room|bed|bedroom|door|window|house)|(?:i am|im|i feel|we are|i|we) ~1 (?:not safe|unsafe|in danger|in trouble at home|dont feel safe|trapped|locked in|being hurt|being followed|being hit|being abused)|(?:i|we) need (?:help|to get out|to get away|someone to help|to talk to someone|to tell someone)(?: ~2 (?:home|him|here|dad|now|please|badly|out))|(?:following|followed|follows) me|call (?:the )?(?:police|999|911|112|childline)|(?:dont|cant|nobody to|no one to|who can i|who do i|what do i do if|how do i) (?:know who to )?(?:tell|talk to) ~3 (?:what|about|him|home|happens|happening|if|anyone|someone|nobody|believe)|nobody (?:believes|listens to|helps) me',
    'please can somebody help me he is outside my room',
    'can someone help me with this word',
    '(?:please|someone|anyone|can|could|plz) ~3 help (?:me|us) (?:with|understand|find|read|spell|to|on|out|clarify|please|answer|i dont get|think|work|what).*|.*help (?:me|us)(?= $).*',
  ],
  [
    'touches me',
    '(?:touch|touches|touched|touching|kiss|kisses|kissed|kissing|tickle|tickles|rub|rubs|cuddles|stroke|strokes|feels|felt|undress|undresses|grope\\S*|hugs) ~2 (?:me|my (?:body|leg|legs|bum|bottom|private|privates|chest|hair|skin)|us) ?(?:down there|there|in a|when|at night|and|weird|where|under|too)?|(?:private parts?|privates|down there|no clothes|clothes off|naked|undress\\S*|nude|nudes|sex|sexy|sexual\\S*|rape\\S*|molest\\S*|abus\\S*)|(?:sleeps?|gets?|gets? in|climbs?|lies?) ~2 (?:in|into|on) my bed|(?:watches|watch|looks|look|films|films|sees) ~1 me ~3 (?:shower|bath|undress|change|changing|getting dressed|dress|sleep|in the toilet)|does (?:things|stuff|bad things) (?:to|with) (?:me|us)|makes? me (?:do|touch|watch|take|sit on|sleep|keep|feel) (?:things|stuff|bad|him|it|his|off|in|weird|uncomfortable|with|secrets|a secret)',
    'i dont like how my uncle touches me',
    'the snow touched my nose',
    '(?:touched|tickled|kissed|hugs) (?:me|my hair|my \\S+|us)|(?:snow|rain|wind|dog|cat|puppy|horse|sun|leaf|it|story|that|this|ending|poem) ~2 (?:touched|kissed|touches|licks?|tickled?) .*|(?:mum|dad|gran|grandad|aunt) ~1 (?:kisses|kissed|tickles|cuddles|hugs) me(?: goodnight| before| to| and| when)?|(?:touched|tickled|kissed) (?:me|my hair)',
  ],
  [
    'something bad happens',
    '(?:something|things|stuff|bad thing|bad things|bad stuff|somethings) ~2 (?:bad|wrong|horrible|terrible|awful|weird|scary|happens|happened|happening|is happening)? ?(?:happens|happened|happening|goes on|going on|is wrong) ~1 (?:to (?:me|her|him|us|§)|at (?:home|her house|his house|my house|school|hers|mine|night))|(?:happens|happened|happening|goes on) ~1 (?:to me|to us|at home|at my house|in my house|at ours|in our house|to my (?:brother|sister|mum))|(?:that|this|it) (?:is|was|happened|happens) ~2 (?:like|what) (?:my (?:dad|mum|stepdad|house|home|life|family)|me at home|at home|our house)|(?:just )?like (?:my (?:dad|mum|stepdad|uncle|house|home|life)|me at home|at (?:my )?home|in my house)(?: ~2 (?:does|do|is|when|hits|shouts|he|she))?|same ~2 (?:as|at|in|with) (?:me|my (?:dad|mum|stepdad|house|home|family)|home)|(?:dad|mum|stepdad|uncle|brother) (?:does|did|do|says) (?:that|this|it|the same) ~1 to (?:me|us|mum)',
    'that happened to me at home',
    'it happened at the castle',
    '(?:just )?like my (?:dad|mum|house|home|life|uncle|stepdad)(?= )(?! (?:does|do|when|hits|shouts|he|she))|same ~2 (?:as|at|in|with) (?:me|my (?:mum|dad|family|house))',
  ],
  [
    'a friend in trouble',
    '(?:friend|friends|§|(?:girl|boy|kid) (?:next door|in (?:my|our|the) (?:class|group|school)|i know|at (?:my )?school|from (?:my|our) \\S+)|sister|brother|cousin|someone i know|mate|classmate) ~2 (?:(?:cuts|cut|hurts|kills|starves|burns|hates|harms|cutting|hurting|scratches) (?:herself|himself|themselves|themself|her arm|her arms|his arm|his arms|her wrists|her legs)|(?:wants|want|wanted|is going|going|tried|plans|thinking of|talks about|talking about|said|says) ~4 (?:to die|die|be dead|dying|kill (?:herself|himself|themself|themselves)|suicide|end it|not be here|not be alive|disappear forever|hurt (?:herself|himself)|run away|running away|jump)|(?:says|said|thinks|told|tells) ~3 (?:life (?:isnt|is not|not)|not worth|nothing matters|dont want to (?:live|be here|be alive)|goodbye forever|better off|end (?:it|her life|his life))|(?:told|tells|texted|messaged|showed) (?:me|us) ~5 (?:(?:hits?|hurts?|beats?|touches|bad (?:things? )?happens?|cuts?|bruises?|scared|secret|pills|knife|goodbye|alone|hungry|die|dead|not eat|nobody feeds|hides|afraid|live anymore|kicks?|locked))|(?:gets|is getting|got|is being|being|is) (?:hit|beaten|hurt|beat up|slapped|locked|abused|bullied|starved) ~2 (?:at home|by|every|all)|(?:screams|cries|is screaming|crying|begs|screaming) (?:every|all|at) (?:night|day|the time)|(?:hasnt|has not|never|dont|didnt) ~1 (?:eaten|eat|eats|got any food|been home|come home|wake|wake up))(?: ~3 \\S+)?|(?:promised|swore|made me promise|made me swear|asked me) ~2 (?:not|never) to tell|(?:gave|gives|giving) (?:me|us|everyone|away) ~3 (?:her|his|all) ~4 (?:forever|for good|goodbye|wont need|dont need|keep it)|(?:said|saying|says) (?:goodbye|bye) ~4 (?:forever|weird|strange|for good|like it was|and gave|crying|ever)',
    'my friend cuts herself',
    'his friend cut the rope',
    '',
    'secret about',
  ],
]);
