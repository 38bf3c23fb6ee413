import { alarmRulesOf } from './alarm-rule.js';

const play = 'GAME; LOL; quiz; joke; for_fun; cards; STORY';

/** Words that threaten somebody, or tell another to die. */
export const threatRules = alarmRulesOf([
  {
    name: 'threatens to hurt',
    when:
      'I|we|my_brother|my_dad|ima WILL KILL ' +
      'YOU|him|her|them|someone|somebody|everyone|everybody|all|my|the|people|SCHOOL|teacher|miss|' +
      'KIN|SIBLING|anyone|that; I|we|my_brother|my_brothers|ima WILL BEAT ' +
      'YOU|someone|somebody|your|everyone|all|her|him|anyone|them .. ' +
      '$|bad|face|up|so|hard|knife|teeth|legs|after|tomorrow|again|if|when|until|for|back|down|' +
      'nose|head|stairs|dead|bleed|stop|teaches|if_he|arm|house; I|we WILL make YOU|him|her|them ' +
      'bleed|pay|cry|suffer|regret|sorry|wish|dead; I KILL YOU; burn your house|YOU ' +
      'house|house_down|the_school; WILL set .. fire; i push|throw YOU|§ .. ' +
      'stairs|window|road|train; break|smash|cut|slit|bash your|YOU|his|her|§ ' +
      'face|neck|legs|head|throat|teeth|bones|arms|nose|fingers; WILL poison YOU|the|hamster|your; ' +
      'real one .. not; watch_out YOU; I put something|poison|stuff in YOU|§s|ivys|his|her|the ' +
      'drink|food|bottle|water; i come|coming|am_coming for|to YOU|get_you|your .. ' +
      'knife|night|dead|hide|bed|get; I|we|KIN are|am|is coming to_get YOU; get YOU|§ ' +
      'after|behind|at|outside|on|tomorrow|when|you_wait .. ' +
      'school|gym|class|gate|friday|boots|lesson|alone|bus; wait|waiting for YOU|§ .. ' +
      'gate|sticks|outside|knife|after|corner|alone; bring your boots|sticks|brothers; i ' +
      'know|no|found where|which|your|how YOU|way ' +
      'live|walk|lives|house|sleep|home|door|dog|street|go|path|bed; know_your ' +
      'house|dog|street|family|sister; school will|is_going_to|gonna burn|explode|pay; ' +
      'someone|one_of_you|somebody|everybody|all_of_you ' +
      'bleeds|dies|gets_hurt|will_die|will_bleed|gets_stabbed .. today|tomorrow|friday|monday|$; ' +
      'today|tomorrow someone|somebody|people bleeds|dies|bleed|die|get_hurt; YOU in hospital; last ' +
      'night|day|hour YOU|for_you|$; make YOU|u eat|drink|lick|beg glass|dirt|bleach|blood; wont|not ' +
      'have a_tongue|teeth|legs|a_face|fingers; cut YOU|your|the brakes|tongue|hair|fingers; ' +
      'want|wanna him|her|them|them_all to die|die_slowly|bleed|suffer .. slowly|front|all; ' +
      'would|will kill her|him|them|you if|and|one_day .. chance|could|will; list and ' +
      'YOU|you_are|your; number_one on|finch; accident on|at|with the_stairs|stairs|bike .. YOU; ' +
      'acid .. YOU|think|easy|face; never comes|come home|back .. YOU|your|sister|brother; something ' +
      'sharp; gets what|deserves|deserve .. knife|gun|friday|soon|i; real fire|gun|knife|bomb .. ' +
      'school|imagine',
    unless:
      `${play}; get you the|a|an|some|one|your|it|happy; ^_he|she|they|it; ice_cream; beat you|u ` +
      'at|in|to|again|by; beat_you_to; finish|find|end the|this|it|my|a; you_sit; book; ' +
      'snack|cake|sandwich; THEM answer; the_wolf|dragon|witch|monster|king|villain; ' +
      'back_with|broom; time; if_i_were|was|would; would; think|predict; i_bet; his|her_own; ' +
      'walk_together; get|find|make him|her|them|it help|happy|laugh|better; hug',
    example: 'i will stab you after school Wren',
    not: 'i will beat you at chess on friday',
  },
  {
    name: 'a threat',
    when:
      'YOU are|will_be|be|r|gonna|get|going|wont|dead ' +
      'dead|DIE|finished|next|bleed|regret|sorry|stabbed|killed|shot|hurt|jumped|walk|killed|' +
      'dead_meat .. $|TIME|by|tomorrow|friday|monday|after|if|when|all|again|see; youre|your|YOU ' +
      'dead on|by|monday|tomorrow|after|if|when; YOU be dead|sorry .. ' +
      'TIME|knife|bringing|monday|tomorrow; watch your_back|yourself; sleep with one_eye; ' +
      'YOU|dont|better not|dont come|go|be to|in|at school|class tomorrow|monday|on|tmrw; stay home ' +
      'if|on|monday|tomorrow; something|thing|sth bad|going|terrible|happen|happens|will .. ' +
      'school|class|tomorrow|monday .. dont|come|stay|see|you|happen; dont|not|better come .. ' +
      'something .. happen; tell|say|snitch|grass .. ' +
      'dead|finished|cut|kill|bleed|hurt|stab|get_you|sorry; if YOU tell|say|snitch|do|come|talk .. ' +
      'I|will|we|my KILL|BEAT|cut|stab|hurt|get|kill|slap; last|final warning; YOU wont|never ' +
      'walk|see|live|wake|talk|breathe after|again|next|tomorrow|anymore; next_time .. ' +
      'KILL|BEAT|stab|worse|bleed; gets the .. next|worse; wait_till|until|just_wait .. ' +
      'friday|monday|after_school|see|worse|tomorrow|bleed; you_all_will_see; get_stabbed; YOU will ' +
      'all be_sorry|pay|die|regret|see',
    unless:
      `${play}; miss_the_ending|miss; surprised; ending; page; funny; late; ^_he|she|they|it; ` +
      'battery|phone|tired; funnier; to_me; would; in_lava|lava; dead_to; say_sorry; ALIVE; book; ' +
      'snack',
    example: 'you will be dead by friday',
    not: 'you will be sorry if you miss the ending',
  },
  {
    name: 'has a weapon',
    when:
      'I|me|ima|KIN|FRIEND|boy|kid|he|HE|SIBLING|§|someone|girl|there ' +
      'have|has|got|bring|bringing|brought|take|taking|hide|hiding|carry|carries|hid|keep|keeps|' +
      'took|is|will|with|holds|shows|showed|real|a WEAPON ' +
      'to|in|for|at|with|on|and|tomorrow|monday|under|against|me|you|his|her|he|himself|herself|' +
      'home|bag|school|jacket|near|$; I|KIN|HE|someone|boy|he ' +
      'bring|bringing|brought|showed|shows|carries|holds WEAPON; my_brothers WEAPON; ' +
      'dads|brothers|mums knife|gun; real knife|gun|one .. bag|not; WEAPON .. in my|his|her ' +
      'bag|pocket|jacket|locker|backpack; shoot|burn|bomb|blow|blew|burning|shooting|set ' +
      'up|down|the|school|everyone|fire .. school|class|house|everyone; list of .. hurt|kill|kids; ' +
      'fight with|using knives|knife|weapons|sticks; WEAPON to school; WEAPON .. for ' +
      'YOU|§|her|him|my; i use .. gun; holds|held|puts|pointed WEAPON .. me|neck|at; ' +
      'messer|couteau|cuchillo mit|à|al; gun at home; know how to_use_it',
    unless:
      `${play}; kitchen|butter|bread|clay|scouts|carve|firewood|borrow|archery; toy|water|nerf; ` +
      'lego; bat_is; cricket; baseball; bats; pirate|robber|knight|soldier|captain|hunter; spoon; ' +
      'fork; lighter_than|blue|green|jacket; matches_the|football; bombs; play_the; acid_rain; cake; ' +
      'tool; ^_the_man|the|it; paint; scissors',
    example: 'i have a knife in my bag for wren',
    not: 'the robber has a knife in his bag',
  },
  {
    name: 'tells another to die',
    when:
      'kill yourself|urself|your_self|ur_self; ^_kys; kys; go|just|please|pls|hurry|why_dont_you ' +
      'die|kill_yourself|and_die|jump_off|drown|hang_yourself $|already|YOU|off|now|in|from|a|alone; ' +
      'go_die; ^_die YOU|$|already|now|slowly|alone|in; hope|wish|hoping YOU ' +
      'DIE|drown|choke|burn|dead|never_wake|bleed|suffer|get_hit|get_run_over|fall; hope u|YOU ' +
      'die|drown|dead; i_hope|wish .. YOU .. die|drown|dead|get_cancer; YOU ' +
      'should|must|could|better|needs|deserve|ought|can|have ' +
      'die|be_dead|drown|jump|not_exist|disappear|hang|kill|have_been|stand|go|lie|walk .. ' +
      'dead|off|edge|roof|tracks|drown|die|boat|river|stones|whistle|traffic|bridge|sea|window|' +
      'road|$; YOU should_be dead|killed|shot|gone; put|throw YOU|§ in|into|under|off .. ' +
      'river|train|stones|lake|bridge|fire|road; world|life|class|everyone|school ' +
      'nicer|better|happier|place|good|easier .. without|if|less|when YOU|§|teals|dead|gone; do ' +
      'us|everyone|world a|the favour .. die|wake|jump|gone|end|disappear; nobody|noone|who would ' +
      'cry|miss|care|notice|mind if|when|you YOU|§|u; NOBODY wants you alive|here_alive; drink|eat ' +
      'bleach|poison; why are you alive|still_alive|living|still_here; still alive YOU|§; YOU ' +
      'deserve to die|be_dead; do_it YOU $; less YOU|teals|finches; NOBODY would cry|miss|care ' +
      'if_you|when_you; YOU|§ should be|have|stand|get on|at|in|under .. ' +
      'boat|edge|tracks|road|drowned|ship; dont|never wake_up YOU|tomorrow|again; YOU .. rope|noose; ' +
      'rope and_a_chair; play on|in|with the train_tracks|tracks|traffic|motorway|road; jump_off|off ' +
      'a|the|from roof|bridge|cliff YOU; end_it YOU; YOU end_it|end_yourself|unalive; ' +
      'stops_you|stops_u; wish YOU were|was never|dead|not born; YOU should_never|never been|be ' +
      'born; rot in hell|a|the; just_die; die_already; unalive yourself; ^_YOU jump|die|hang|drown ' +
      '$; just|go jump YOU; in_front_of a|the bus|train|car|lorry YOU; YOU .. in_front_of a ' +
      'bus|train; waste of oxygen|air YOU|die; waste_of_oxygen|waste_of_air; disappear forever ' +
      'YOU|$; breathe|breathing our|my air; ^_go .. dont wake_up; dont wake_up|come_back ' +
      'YOU|tomorrow; hope|wish .. gets|get|kills|eats YOU and|your; hope YOU|your whole|family ' +
      'die|dies|burn; should|shouldve have|of|had been the|one .. drowned|died|killed|YOU; come to ' +
      'YOU|your funeral; funeral .. nobody; off yourself|urself; hang YOU|yourself|himself; ' +
      'everyone|all votes|vote|agrees YOU|that .. hang|die|jump|leave; clap|happy|party if|when YOU ' +
      '.. dead|fell|died|fall|die|cliff; fell|fall off|under a|the cliff|bridge|roof|bus YOU; nobody ' +
      'wants|needs|likes YOU alive|here|breathing',
    unless:
      `${play}; ^_he|she|they|it|i_think|the; laughing; batteries|battery; the_boss|level; ` +
      'in_the_film; character|king|wolf|dragon|villain|witch; phone; dont_die; ^_never; your_camera; ' +
      'of_laughter|boredom; dont_let; cross; live_for; swimming; pool; what|how YOU DIE; how_deep; ' +
      'have_to_dive',
    example: 'go kill yourself Wren',
    not: 'never say die is a saying',
  },
]);
