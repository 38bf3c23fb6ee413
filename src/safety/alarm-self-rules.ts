import { alarmRulesOf } from './alarm-rule.js';

const figure = 'LOL;FIGURE;GAME;^_he|she|they|it|who|why|everyone';

/** Words that may mean harm to oneself. A word screen calls a person and diagnoses nothing; the list is this project's own. */
export const selfRules = alarmRulesOf([
  {
    name: 'wants to die',
    when:
      'I WANT|wonna DIE; I want|wanna_to die|dead|gone; I keep thinking DIE; I WANT to be_dead|gone; ' +
      'I would_rather_be_dead; just|please let_me_die; I should|might|could just DIE; I feel_like ' +
      'DIE; god|them to take_me; wish DIE me; wish could|cud|can do_that|do_it|too|also|that_too; ' +
      'my_plan_is .. over|end|gone; I better_off dead; i kill_myself; ready|going to DIE $; i WANT ' +
      'to kms; ^_kms; ^_WANT DIE; want|wish to|i let_go|be_nothing|be_gone|get_out_of_life; ' +
      'cant_wait to be nothing|gone|dead; just let me go|die|sleep; wish .. would|could take_me; ' +
      'want|wish .. go where|to .. mum|gran|grandad|dad went|is|heaven; dont|not want to be me; i ' +
      'should|want|could stop being $; sucks .. want out; i_want_out; I just want it|everything|all ' +
      'over; how|when she|he|i will do_it; i want_it too|also|as_well',
    unless:
      `${figure}; THEM to die; want|hope|wish|think|thought HE|it|him|her|them|you|people|the; WANT ` +
      'of_boredom; disappear when|from_class; cross_my_heart; ALIVE i; rather than; to_see; ' +
      'dead_body; how_deep; deep_do; would_run; miss_asks; YOU',
    example: 'i want to die',
    not: 'the wolf wants to kill the lamb',
  },
  {
    name: 'does not want to live',
    when:
      'I dont|not|no|never WANT|like to|be live|living|alive|exist|wake|existing $; I dont|not|no ' +
      'WANT live|living|alive|exist|existing|wake at_all|anymore|anylonger|again|now|really|up|more; ' +
      'me dont WANT live; dont WANT be_here anymore|again|ever|longer|more; ' +
      'dont_want_to_be_in_this_world; dont_want_this_life; wish didnt|dont have be|live ' +
      'alive|living; i dont want exist; dont WANT my life; not|never|no WANT be alive; ' +
      'dont_want_to_be_anymore; tired|sick|done for|of|with ' +
      'to_be_alive|be_alive|live|life|alive|living|everything; I wish I not|never|wasnt|werent|didnt ' +
      'born|made|alive|exist|existed|be; wish I never_be|been|had_never_been; wish I had_not|never ' +
      '.. made|born; me|i dont|not want|wanna live at_all|anymore|either; should never be ' +
      'born|made|here; why was|did|am I born|alive|exist; i cant_live_anymore; cant do life; ' +
      'what|whats the|is point of|in|to me|my|life|living|being|live|existing|waking; no|any|a ' +
      'reason|point|sense to|in|of live|living|life|wake|alive|be|stay|exist|going; dont have to ' +
      'be|live alive|long|anymore; not_worth living|it_anymore|life; life isnt|not|no worth; never ' +
      'been born; never_been_made; i was a mistake; had_not been_born; me_i_dont want live',
    unless: 'LOL; pizza; ^_HE; in_a_bed; ^_THEM KIN|THEIRKIN; why he|she|they|YOU; YOU_have',
    example: 'i dont want to live anymore',
    not: 'i dont want to be the leader',
  },
  {
    name: 'hurts oneself',
    when:
      'I|to|and|sometimes|keep SELFCUT myself; I SELFCUT myself|me_again; SELFCUT my_BODY ' +
      'with|until|till|because|so|when|and|on_purpose|again|compass|WHEN; I cut again|$; i_cut_$; ' +
      'SELFCUT|MARK on my arm|arms|leg|legs|wrist|wrists|thigh ' +
      'i|no|nobody|from_me|myself|WHEN|again; I HARM|ROUGH|SELFCUT my BODY .. ' +
      'until|till|bleed|bleeds|stops|quiet|feel|helps|better|on_purpose|again|myself; have_to|must ' +
      'punish me|myself; self|selfharm|selfharming harm|harming|hurting; i_ritze; have|got|more cuts ' +
      'on|all my|me; make myself throw|sick|vomit|puke|starve; throw up after|every|so; i ' +
      'starve_myself; i dont|not deserve food|eat|live|anything|love; havent|not|stopped ' +
      'eaten|eat|eating .. because|so fat|disgusting|thin|gone|disappear|smaller|ugly; day_4; ' +
      'can_you_die .. not; something bad|stupid to_myself; do|did something to_myself; SELFCUT ' +
      'on_purpose; hate myself so|and|more|i; hold my_breath .. over|die|dead|never|forever; ' +
      'hurting_myself; SELFCUT my BODY on|against the|a wall|door|floor|desk|table; can|could ' +
      'YOU|i|someone|a die from not|starving|cutting; hurt myself again|on_purpose|sometimes|$; ' +
      'SELFCUT me_self; i deserve|deserv bad|pain|to_hurt|it_all; dont|not deserve|deserv ' +
      'to|love|food|live; make myself|me bleed|sick|throw_up; razor|blade|blades in|from my|the ' +
      'pencil_case|bag|room|drawer|box ..; i pull my_hair out; scratch|scratched to check|feel|see; ' +
      'hides|hide blades|razors|pills; i practise|practice holding',
    unless: 'GAME; CARE; LOL; laughing; ^_he|she; cut_myself_on; paper; gardening|brambles|berries|cat',
    example: 'i hurt myself when i am sad',
    not: 'i make myself a sandwich',
  },
  {
    name: 'a way to die',
    when:
      'I take|took|taken|swallowed|found|find|have|thinking|thought|know|hide|count|counted|keep ' +
      'PILLS; how many PILLS; PILLS too_many|all|at_once; PILLS .. ' +
      'sleep|die|dead|forever|over|think; KIN PILLS last_night|and_i; took|take some|all .. PILLS; ' +
      'I|think|thinking|about|want|could|wanna jump|jumping|step|walk|stepping|walking|fall ' +
      'off|from|in_front|under|into LEAP|car|cars|school|it; I stand|stood|sit|go at|on|near|by|to ' +
      'bridge|roof|cliff|tracks|train|railway|edge; jump|jumping off|from LEAP; how|when to ' +
      'DIE|kill_myself; what|how is|way .. fastest|easiest|best die|dead|death|kill; does|if .. ' +
      'hurt|hurts .. die|dead|stop_breathing|drown|dying; do_it .. hurt; if I stop ' +
      'breathing|stop_breathing; rope .. neck|myself|tree|tonight|around; wish .. ' +
      'car|bus|train|it|he had|would hit|kill|run_over me; in_front_of KIN|the train|bus|car|lorry; ' +
      'look|think|stare .. sea|water|river .. in|into and not; want to drown; I|me ' +
      'suicide|suicidal|kms|overdose|hang_myself|kill_myself; suicide is|note|plan|thoughts|on; i|we ' +
      'unalive|unalived; i_wanna unalive; kms; sleep_pills; want .. suicide|unalive; ' +
      'like|think|look|stand .. going|go|walk in_and|into_it; in_and_not coming|come out|back; ' +
      'hold|held my_breath .. over|end|stop|die; on_day NUM; WANT be in|inside a|the|one ' +
      'grave|ground|coffin; grave .. want be; WANT let_go; kill_myself; ' +
      'think|thinking|thought|dream|dreamed about|of ' +
      'falling|drowning|jumping|disappearing|not_being|stopping|going_under|going_in; I ' +
      'walk|been|go|went|stand to|over|on|onto the_bridge|the_roof|the_tracks .. ' +
      'twice|think|thinking|sometimes|every|alone|look; drank|ate|swallowed|eaten ' +
      'something|whole|bleach|pack|lots from|pack|of|under; fall|fell|jump from|off the ' +
      'third|top|window|high floor|storey|building|quick; stop .. heart beating|stop|my|your; way to ' +
      '.. heart stop; make look like accident; tall building; road|street dont look|close_my_eyes ' +
      'anymore|maybe|one_day; go under water|the_pier; could just go_under|let_go|fall|drown',
    unless:
      'GAME; LOL; FUN; mean|means; lake; pier; pool; kms_away; BOOKWORK|spell; mission; spend; ' +
      'frogs|bees|fish|birds|they|he|she|people die|dead; ' +
      'hay|vitamins|allergy|doctor|tasted|strawberry; tasted; if_i_was; ^_HE; to_school; km; shed; ' +
      'mat',
    example: 'i took some of mums tablets so i never wake up',
    not: 'the goat can jump far',
  },
  {
    name: 'better off without me',
    when:
      'EVERYONE|KIN|it|life|all|things better|happier|easier|glad|fine|nicer|rich|relieved ' +
      'without_me|if_i|if_me|when_i|when_im|if_there; better|happier|happyer|easier .. ' +
      'without_me|if_i|when_i_am; EVERYONE happier|better i; it easier for them with only; ' +
      'EVERYONE|KIN WANT me DIE|gone|dead; NOBODY|who|noone would|will|even ' +
      'cry|miss|notice|care|know|mind|remember .. if_i|me|i_was|when_i; NOBODY would|will|wud ' +
      'miss|notice me|i; if i|me gone|dead|died|disappeared|wasnt|left|vanished|not .. ' +
      'NOBODY|notice|miss|care|better|happier; NOBODY miss|notice me; KIN|everything better|happier ' +
      'if KIN had|has|got different|other|another; world better|happier|nicer without_me|if_i; waste ' +
      'of space|air|life; i useless|worthless|burden|nothing|rubbish|trash .. ' +
      'and|to|everyone|everybody|anyway|so; no_use_to_anybody; no_use_to_anyone; i_am a ' +
      'burden|waste|mistake|problem; NOBODY miss me; same_tilda',
    unless: 'LOL; GAME; ^_he|she|it; TELL_us; she|he thinks|is|feels|says; NOBODY_asked; homework',
    example: 'they would all be better off without me',
    not: 'the hens were better off without the fox',
  },
  {
    name: 'says goodbye for ever',
    when:
      'goodbye|bye forever|for_ever|world|everybody|everyone_i|for_good|life; cant|done|over|anymore ' +
      '.. goodbye|bye; goodbye letter|note|message|card; letter|note for when|mum|dad|them .. ' +
      'gone|dead|not; wrote|write|left|writing KIN|a|my|mum .. goodbye|letter .. ' +
      'gone|goodbye|dead|die|leave; last|final post|message|time|night|words .. ' +
      'look|ever|alive|writing|see|live|be|goodbye; this_is .. last|final .. time|message|post ' +
      'writing|i|ever|from; dont|no look|search|wait|come .. for me .. tomorrow|again|anymore; ' +
      'never|wont|not see|hear me|from_me again|after|anymore|ever; wont|not have_to see me; I|me ' +
      'not|wont going|be here|around|alive ' +
      'for|by|much|longer|anymore|next_birthday|christmas|soon|when_you; i_will|am_going be gone ' +
      'soon|tomorrow|forever|monday|friday|$; i_will_be_gone; I gave|give|giving away|all my ' +
      'things|stuff|toys|everything|favourite; YOU can have|take my .. need|dont|wont|never; wont ' +
      'need them|it anymore|any; where KIN is|are|went .. ground|heaven|dead|grave|now|sky; soon .. ' +
      'with KIN heaven|dead|grave|angels; be|am_going|go with|to KIN in heaven|grave|ground; be ' +
      'where KIN is .. ground|dead|heaven; i picked|chose|know|have the|a day|date|place|plan .. ' +
      'it|already|$; this is the_end_for|goodbye; thank|thanks .. bye tonight|forever; tonight .. i ' +
      'do_it|end; i decided .. die|it|really; i really do_it; no_one|NOBODY stop me when|if|now; ' +
      'then_its over; my_life_is over; sorry_for_everything; i|me invisible .. here; note|letter ' +
      'ready|in|under my_drawer|drawer|pillow|bag|for_when; wont|not|never get that|be ' +
      'old|older|grown; isnt|wont|not be|a next week|birthday|summer|year|christmas|tomorrow ' +
      'for_me|i|$; tell|tells my|mum|KIN i loved|love|was_sorry; not|wont going|be a ' +
      'problem|burden|trouble much|anymore|longer|soon; this is_it|the_end goodbye|class|everyone; ' +
      'goodbye .. easy; who gets|can_have my; wont_be_around; by_then i_am|i_will|im ' +
      'gone|dead|not_here; gave|give YOU|him|her|away my .. wont need|dont_need|no_need; this ' +
      'summer|year|christmas i_wont; it will all be_over soon',
    unless:
      'LOL; dentist; holiday|holidays|visit|visiting; GAME; ^_HE; for_today; before_the; ' +
      'charity|jumble|little_cousin; weekend; week .. holiday; WOULD; chapter|book|film; wednesday; ' +
      'tuesday',
    example: 'goodbye forever everyone',
    not: 'bye everyone see you on tuesday',
  },
  {
    name: 'cannot go on',
    when:
      'I cant go_on|carry_on|take_it|cope|take_this|do_it|bear anymore|any_more|longer|no_more|$; ' +
      'i_cant_take; done with everything|life|all|it_all|trying|living; I am done forever|with_life; ' +
      'dont know|no how .. longer|can|to go|do|carry|cope|keep; how_much_longer i; hate ' +
      'my_life|my_self|being_alive|living|being_me; hate myself; my_life is|feels ' +
      'over|pointless|worthless|meaningless|hell|nothing|done|ruined|empty; nothing ' +
      'matters|helps|left; want|wish it|all|everything|the_pain to|would ' +
      'stop|end|over|be_over|go_away; want feel nothing|anything|numb; dont_want_to feel; too_sad to ' +
      'live; dont_want|not_want feel anything|nothing|this; hurts inside|so_much .. feel|die|stop; ' +
      'no hope|reason left|anymore|for_me; give up on life|everything|living|myself; i_feel ' +
      'dead|empty|numb inside|all; want|wish to disappear|vanish|be_invisible .. ' +
      'forever|not|never|come|back|everyone; end .. my life|it_all; thinking|think about|of ' +
      'end|ending|death|dying|dead|letting_go',
    unless:
      'LOL; BOOKWORK; GAME; HE|it cant; ^_HE; this_book; eyes; chapters; hat|hair; KIN .. better; ' +
      'wolf|king|captain; questions; of_the',
    example: 'i just cant go on anymore',
    not: 'i cant do this question',
  },
  {
    name: 'wishes not to wake up',
    when:
      'WANT|wish|pray|prayed|ask|hope|asked|beg|rather|could|like .. sleep|asleep .. ' +
      'never|not|forever|dont|and_not; WANT|wish|pray|ask|hope|asked|beg|god .. not|never|dont ' +
      'wake|get|waking|open|woke; sleep|asleep .. never|not wake|get_up|waking|have_to; eyes .. stay ' +
      'closed|shut; i_wish .. do_that|didnt_wake; not|never wake_up|wake tomorrow|again|ever|$; hope ' +
      '.. stay closed; wish i_was asleep forever',
    unless: 'LOL; cat; saturday; FUN; ^_HE|the|poor; cosy; KIN wont|cant|wake|not; GAME; ANIMAL_wake',
    example: 'i wish i could sleep and never wake up',
    not: 'i want to sleep all day its saturday',
  },
]);
