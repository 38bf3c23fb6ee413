import { rulesOf, type Rule } from './rule.js';

const story =
  'in the (?:story|text|book|poem|passage)|this (?:story|text|book)|the author|character|lol|haha|hahaha|game over|my character|level|pretend|playing|joking';

/** Signs that stand together in one sentence, in whatever order, where no set phrase was found. The list is this project's own. */
export const moreRules: readonly Rule[] = rulesOf('alarm', [
  [
    'violence among own people',
    '(?:{parent}|mums|dads|stepdads|uncle|aunt|grandad|gran|brother|sister|{family}|neighbour) ~4 (?:broke|break|breaks|pushed|pushes|threw|throws|kicked|kicks|punched|punches|slapped|slaps|beats?|choked|chokes|strangled|strangles|hurt|hurts|hit|hits|stabbed|attacked|attacks|threatened|threatens|grabbed|grabs|burned|burnt|smashed|whipped|dragged) ~2 (?:mum|mums|dad|dads|sister|sisters|brother|brothers|baby|him|her|them|gran|dog|cat|arm|nose|head|face|door down|plates?|everything|things|walls?) ~3 (?:arm|nose|stairs|face|wall|floor|head|hair|ribs|tooth|down|again|every|all|and|because|last night|yesterday|when|badly|$|\\/)|(?:knife|gun|shotgun|machete|hammer) ~4 (?:mum|dad|brother|uncle|stepdad|me|us|bringing|my)|(?:my )?(?:{family}) (?:has|have|had|got|keeps|hides|took|pulled|owns) ~2 (?:a |the )?(?:knife|gun|weapon|shotgun|drugs|needles)|(?:police|ambulance) ~4 (?:came|come|took|called|again|house|home|because) ~5 (?:mum|dad|stepdad|brother|uncle|him|fight|fighting|hit|hurt)',
    'dad broke mums arm',
    'my sister hit the ball',
    '.*(?:hit|hits|hurt|kicked|threw|broke) (?:her|his) (?:head|arm|nose|face|tooth) (?:on|in|when|at|and).*',
    `${story}|(?:his|her|their|the|a|\\S+s) (?:mum|dad|stepdad|stepmum|uncle|aunt|grandad|gran|brother|sister|cousin|neighbour|parents)|accident|football|fell|bike|ball|tag|slipped|toe|skating|netball|trampoline`,
  ],
  [
    'marks of violence',
    '(?:i|my|me|§|friend|she|he|his|her|has|have|got|with) ~4 (?:bruise|bruises|black eye|black eyes|burn marks|cigarette burns|scars|marks all over|blood on|cuts all|cuts on)|(?:scratch|scratched|pick|picked|bite|bit|burn|burned|rub|cut|bang|banged|hit|punch) ~1 (?:my|myself) ~3 (?:till|until|so) ~2 (?:bleed|bleeds|bled|blood|hurts|raw)|(?:till|until) (?:it|they|i) (?:bleed|bleeds|bled)',
    'finch has bruises all over',
    'the apple has a soft spot',
    '',
    `${story}|fell|bike|football|apple|banana|peach|pear|skating|skate|tripped|rugby|netball|hockey|trampoline|pirate|soldier|knight|captain|mosquito`,
  ],
  [
    'a wish to be gone',
    '(?:want to|wanna|wish i could|wish to|would rather|going to|hope to) ~1 (?:be with|join|go to|see) ~3 (?:heaven|gran in|grandad in|angels|dead|who died|in the sky)|(?:want to|wish i could|going to|could just|feel like) ~1 (?:disappear|vanish|end it|ending it|be invisible|not exist|stop being|go away|run under|give up) ~1 (?:and (?:never|not)|forever|for good|from everyone|completely|now|all|because|on life|$|\\/)|(?:feel like|thinking of|thought of|think of|think about|thinking about) ~1 (?:ending it|ending things|ending my|giving up|hurting|not being)|(?:no|any|a|one|the|give me a) reason(?:s)? ~3 (?:to (?:live|be alive|be here|go on|stay alive|exist)|for me|i should (?:live|be alive|be here)|to keep going)|(?:kill me|end me|shoot me|somebody kill me) (?:now|please|i mean)|please (?:kill|end|shoot) me|(?:cant|couldnt|cannot|dont want to|tired of|done) ~1 (?:keep going|go on|carry on|cope|trying|living like this|being strong|face (?:it|tomorrow|school|another))|(?:everyone|they|mum|dad|people|world|you) ~3 (?:wants?|wish|wishes|want) ~1 me ~1 (?:dead|gone|to die|never born)|(?:i|my life) ~2 (?:dont|doesnt|do not|not) (?:deserve|matter)(?: to (?:live|be here|eat))?|(?:i am|i feel) ~2 (?:a mistake|unwanted|not wanted|better off dead|nothing|broken|so done|in the way|the problem at home)|(?:i|we) ~2 (?:too|also|as well|same) ~3 (?:stone at the bottom)|(?:want|wish) ~3 (?:be|was|were) a stone too|it (?:hurts|hurt) (?:to be alive|too much to)|(?:nobody|no one) ~2 (?:find|find me|look for me|save me)|dark thoughts|bad thoughts|hear(?:ing)? voices|(?:dont|not) ~2 (?:be here|be around|be alive|live) (?:tomorrow|next|much|long|to see|for)',
    'i want to disappear and never come back',
    'the fog will disappear',
    '(?:he|she|they|it|wolf|fox) .*',
    `${story}|(?:he|she|they|it|the \\S+|fox|wolf|boy|girl|who) ~2 (?:wants|wanted|cant|couldnt|can|could|is|was|tries|will) ~3 (?:disappear|vanish|go on|keep going|carry on|give up)|this (?:page|question|book|chapter)|homework|running|reading`,
  ],
  [
    'an adult near a child',
    '(?:coach|tutor|teacher|uncle|stepdad|man|men|guy|neighbour|stranger|trainer|driver|babysitter|older (?:boy|girl|kid|man|guy)|big boy|grown up|adult|someone|person|friend of (?:dad|mum)|dads friend|mums friend|lodger|he|she) ~7 (?:hugs?|hugging|touches|touching|strokes?|stares?|staring|winks?|kisses|tickles|follows?|following|watches|waits for|waiting for|talks? to|talking to|asks?|asking|texts?|texting|messages?|messaging|calls?|calling|writes?|writing|sends?|sending|whispers?|comes (?:up|close|near)|sits (?:close|next)|leans|invites?|gives?|brings?|buys?) ~1 (?:to )?(?:me|us|my)? ~7 (?:too (?:long|close|much)|weird|uncomfortable|funny feeling|alone|home alone|strange|scared|scary|creepy|dont like it|do not like|at night|late|secret|every day after school|in (?:his|the|a) (?:car|van|room|house)|after school|where i live|my address|what i wear|what i am wearing|my body|gifts?|presents? from him|if i am (?:alone|home)|not to tell|dont tell|sweets|money|cigarettes|beer|alcohol)|(?:man|men|guy|stranger|someone|he|car|van) ~5 (?:keeps|kept|keep) ~1 (?:talking|asking|following|texting|messaging|staring|watching|waiting|calling|coming|touching|driving|looking|sending|writing) ~2 (?:me|us|if|for|to|at|my|past)|(?:she|he|they|someone|person|player|friend) ~3 (?:keeps|kept|always|wants to know|asked|asks) ~3 (?:if i am|whether i am|when i am|am i) ~1 (?:alone|home alone|home|in bed|by myself)|(?:met|know|found|meeting|talk to|talking to|chat with|chatting with|speak to|friends with|in love with|dating|going out with) ~3 (?:man|guy|boy|girl|woman|person|someone|adult|older|friend|him|her) ~3 (?:online|internet|in a game|on a game|on the game|app|chat|web|website|on my phone|on the computer) ~6 (?:meet|coming|come|see|secret|pick|address|photo|picture|where|old|older|alone|love|tell|visit|house|send)|(?:i|we) ~1 (?:have|has|had|got|keep|share) ~1 (?:a|our|this) ~2 secret ~2 (?:with|from)? ?(?:him|her|tutor|coach|teacher|uncle|mum|dad|parents|man)|(?:tutor|coach|teacher|uncle|man|neighbour|he|grown up|stepdad|friend online) ~2 (?:says|said|told me|tells me|told|thinks) ~2 (?:we have|it is|this is|i am|we are|you have|i have) ~3 (?:secret|special|in love|his girlfriend|his girl|her boy|beautiful|sexy|pretty|mature|different from)|(?:grown up|adult|man|tutor|coach|teacher|uncle|someone|he) ~3 (?:asks?|asked|tells|told|wants|makes) ~2 (?:you|me|us|a child|kids|someone) ~3 (?:secret|alone|pictures?|photos?|touch|undress|clothes off|come in|in his)|(?:no|without|with no|off|take off|took off) ~2 clothes ~3 (?:camera|picture|photo|video|him|me|man)|(?:picture|pictures|photo|photos|video|videos) ~2 (?:me|my self) ~3 (?:no clothes|swimsuit|swimming|underwear|pants|bath|bed|shower|naked|changing|without|pyjamas)|(?:if i|or) (?:send|sent|give|show) ~2 (?:one more|another|more|a) ~1 (?:picture|photo|video)|(?:he|she|they|man) ~1 (?:is|are|will be|wants to) ~1 (?:coming|come) to (?:see|get|meet|pick) (?:me|us)',
    'my coach hugs me too long and it feels weird',
    'the man talks to the fox in the house',
    '(?:man|he|she|someone|grown up|adult|woman|teacher|person) ~5 (?:talks|asks|gives|tells|told|asked|calls|sends|brings|waits|follows|comes) ~1 (?:to )?(?:the|him|her|them|a|an|his|it|for the|for him) .*',
    `${story}|king|queen|captain|fox|wolf|witch|giant|(?:he|she|they|man|queen|king|captain|guard) ~2 (?:asks?|asked|tells?|told|gives?|gave|wants?) ~1 (?:him|her|them|the)`,
  ],
  [
    'nobody looks after me',
    '(?:nobody|no one|mum|dad|parents|they|stepdad|stepmum|gran) ~2 (?:takes care of|take care of|looks after|look after|feeds|feed|loves|checks on|cares for|cares about|helps|picks up|talks to|wakes up for|is ever home for|wants) ~1 (?:me|us|my (?:brother|sister|baby))(?= (?:anymore|at home|ever|now|because|and|properly|\\/)| $)|(?:mum|dad|parents|stepdad|stepmum|gran|they) ~2 (?:left|leaves|leave|has left|have left|walked out on|abandoned) (?:me|us)|(?:mum|dad|gran|stepdad) ~3 (?:sleeps all|in bed all|asleep all|cries all|crying all|drinks all|drunk all|just cries|never gets up|doesnt get up|wont get up|lies on|passed out|on the floor|wont wake|cant wake|isnt moving|takes drugs|uses drugs|does drugs|drinks too much|drinks alot|is always drunk)|(?:have to|had to|has to|must|i|we) ~1 (?:steal|stole|beg|begging|stealing|look in bins) ~2 (?:food|because|for food|so we)|(?:food|eat|dinner|lunch) ~4 (?:only|just) ~2 (?:at school|school dinners|free)|(?:only|just) ~2 (?:food|meal|eat|dinner) ~3 (?:at school|from school|a day|yesterday)|(?:cold|freezing|dark|wet|hungry|dirty) ~3 (?:at home|in our (?:flat|house)|in my (?:room|bed|house)) ~4 (?:no|because|every|cant|always|all)|(?:we|i) ~2 (?:cant|dont) ~1 (?:afford|have) ~1 (?:food|to eat|heating|electricity|a home)|(?:parents|mum|dad|mum and dad|everyone) ~2 (?:is|are|went|gone|been) ~2 (?:away|gone|out|abroad) ~2 (?:since|for days|for weeks|all week|for \\S+ days|and left|and i am alone)',
    'nobody takes care of me',
    'mum looks after the hens',
    '',
    `${story}|next door|aunt|gran came|on holiday`,
  ],
  [
    'a friend seems in danger',
    '(?:friend|§|mate|classmate|(?:girl|boy|kid) (?:next door|in my|in our|from|at|i know|who)|sister|brother|cousin) ~6 (?:bruises|bruise|black eye|not eating|stopped eating|crying all|cries every|cries all|cuts|cutting|self harm|scared to go home|scared of|hungry|no food|hurts? (?:her|him)|hits (?:her|him)|beats (?:her|him)|touches (?:her|him)|pills|tablets|knife|wants to die|kill herself|kill himself|goodbye|suicide|run away|running away|run away from home|locked in|alone at night|sleeps? (?:outside|in the park|in a car)|pictures of|naked|older man|older boyfriend|meets? a man)|(?:friend|friends|§|told me|mate|classmate|my class|our class) ~4 (?:her|his|their) (?:dad|mum|stepdad|uncle|brother|boyfriend|mums boyfriend) ~2 (?:hurts?|hits?|beats?|touches|locks|screams at|shouts at|kicks|punches|slaps|hitting|hurting) ~1 (?:her|him|them)|(?:told|tells|asked|begged|made) me ~2 (?:not to tell|dont tell|to keep it|never to tell|to promise)|(?:worried|scared|frightened) (?:about|for) ~1 (?:my|a|§|friend) ~8 (?:die|dead|hurt|kill|cut|home|dad|mum|eat|pills|himself|herself)',
    'wren said her dad hurts her',
    'his friend cut the rope',
    '',
    `${story}|(?:the|a|this) (?:boy|girl|prince|princess|king|fox|wolf|man|woman)|paper|cake|hair`,
  ],
]);
