"""Ordinary English words within a letter or two of ours, so never repaired into them.

Chosen by frequency with the `wordfreq` package (22,000 most frequent words).
"""

WORDS = """
accommodate accommodating accommodation accommodations action adam advance advanced advances advert
advertise adviser advisers aesthetic affects agree agrees ahhh ahmad aidan ajax allen ally altitude
amazon amish anchor apologise apologized appealing arch archived arrive arrives asean asia assigned
atom attended auctions automatic avon badges bain ballot bankers baptized barnes base baseline
basil basin basis beasts beep berger beta blade blades blender blind blog boast boasted boasts
booker bookings booming brace brag bran bras bray brides bridget briefing bruh bruno brute
budgeting budgets buggy burma cadillac camilla canine carole carter carved catcher catering cattle
causal cellular ceos charlotte chart charters checkout chemistry chopped chronicle classes classy
claus clicked cling clover clumsy collective columbia comin command commanded commander commands
commerce commuter compares comparison compassion compose composed composer composite comprise
comprised compute computed connections considerate constance constantine contraception contraction
converse converting cooker coral courts covert craft crafts crappy craving created creating crown
crows crunchy cuban cube cubs cues cunts cured curious cursed curses cursing customary cylinder
dazzling debts decay deceit decide decides declared declined declining dedicate definitive defy
deli demand demanded democrat denial deny deployed depth depths descent deterrent dewey dicks
direct director directors directory directs dirty disappear discussions disguise diver doin donna
draft drafted drafting draper dustin dusty electrical electrician elemental eleventh embarked
engage engages engraved enraged entertainer equilibrium erica eruption esther eternal ether excise
executing exile expansion explore explorer explorers explores exterior eyebrow facility faithfully
fang farmer faulty figure figured filtered fired fixation fixtures flames flick flock follow
footprint forgiven fostering fracking freeze freezes fritz fucker fulton functional funding funnier
gamer gamma giggle glam glow godzilla goggles goin grammy granted grappling greasy grinding groom
guardian guilt halves happiest harsh hath hawks heartbreak heater heller hicks hinder hindus
historian historians historic historical holder holders holly homeless hoop hooper hosted hosting
hosts hover hulk hulu hurdle hush idol idols immersed incidents incorporate inevitable inflation
inform informal informs inserted insisting insulting interrogation intestinal invalid invent
inventing inverted invincible irrigation jacked jane japan jealous jedi jogging jude juggling
junction kerr kremlin lakers lambert larvae latin latina latvia laura leeds leisure lester lipid
literal logos loki lola lucia luka lumber lyon machinery maid main makin mania manic manila
manipulate marching margot mascara masks meddling meditate melinda messi metadata microphone
migrate minister mislead molly monastery monsieur morris mosquito mosquitoes mount mystical
negotiate ness nudes obsession ocean offending offspring ohhh oooh oriental outlines parachute
patrol pepper perched persisted photon pitt placement possess posters pregnancy premise presented
presenter presenters pretend pretended prettiest princes princess principal principle principles
privy procedural promotion propelled provided puncture purely purge purposely quantify ranger
realised realized realizes refine refs regrets relapse relate relation relaxing reluctance relying
rented repaired replaces replacing reporter reporters reptiles requested requests resorts resource
restored retained retarded retires reversal revolve revolves rewarding rollers roman roots rotting
rowan royale rubio rudd rudy rumor rupture sahara sanitary sanity sash sayin scalp scarlett scooter
scrum selena sensational serene shadowy shameless sharp shooter shorten shove shuffle sicily
sickening silicone silver sissy skate skater skates skilled skinner slander slated slope smile
smiled smiles snoop socrates somethin soooo soros spacing spanning spicy spoiled sprinkle stabbed
stallion stamp stella storey storm stormy stripper stud study succeeds successor sudan summit
surfer survival survivor swamp swan swans sweaty systemic tackles talkin tasked termination
territorial territories texture textures thinkin thou thug thugs thus tickets timber toasted
torment trailer trailers traveled treasurer treasury treble trevor tricky trim trump trustees tudor
ulster unbelievably uncertainty unit unite united units unity usda uttar valor vault vegas
vibrations vicki vicky viii vineyard visa vita vitro vivid vols volume volumes vowed wanda
watershed waved weave webb webpage wedge welded wellness whim wilt winds witches witness wits
workin yankee york zeal zoom
listen rumbled culture churches earnings earning twins granite lisbon sewer peggy labeling burner
abbas abby abel abide abort abound abundance abundant academic accent accents accidental
accounts aces acne acre acres actual adds administrator administrators adult advise afternoons
afterward agent aggressively agnes aide aired aires airs alain alarms alba albert alberta
alcoholic allergies alliance allotted allows alloy alma almighty almonds along alps altar alter
amazingly amino amos amounted ample angela angelo anger angie angles anglo angus animals anime
ankles anna anon answers ante antibody antiques ants anyones appeal appealed appeals apples
apply appointments appreciates appreciative approved aqua arcade archer arches ardent areas
arena arenas aria arise arising aroma arose aroused arrows arts ashes aspen aspiring asus atlas
attached attack attacker attackers attempt attracted attracts avid avoids awakens aware axle
babe babys bach backing backs backward bacon badge bail bailed baird bake baked baking balances
bald bale bali ballet ballroom balm bananas bands bane bang banging bangs banished banjo bank
banking banks banned banquet bans barb barbados barbarian barbaric barbed barca bard bare bark
barker barley barn baron barr barred barrels barren barring barry bars bart based bash bashing
basketball baskets bass batch bates bathe bathrooms baths baton bats batter battered battle
battles battling bays beach bead beads beak beam beams bean beard beards bearings beast beat
beating beats beau beck becomes beds beech beer beers bees began begin beginnings beings
believed believer believers believes bella belle bellevue bells belongings belt belts benz bert
berth beside beth bets betting bianca bias bible bidding biden bids bieber biker bikes biking
bill billing bills billy bind binding binds bing bios birch birds births bitter bitterly blacks
blanc blanche bland blank blankets bleak blend blending blends blight bliss bloc blockade
blocking bloggers blogging bloke blond bloom blooming blooms blow blows blues blur blush blvd
boar boarding boards boat boating boats bobs bodys boeing boil boiler bois boko bold bolton bona
bond bondage bonded bonding bonds bong bono bonus bony boob boobs book booking books boom
boomers boon boone boost boosts booth booths booty border borders bore bored boring borne
boroughs boston bothers bots bottled bottoms bought bounce bounced bound bounty bout bowed bowen
bowled bowling bowls bows boxes boxing boyd boyfriends boys braces brad bragging brake braking
brand branding bravo breach breached breaches breadth bred breed breeding breeds brent bret brew
bricks bridging brig briggs brighten brightest brilliance brink brits broad brock brody broker
broncos brood brooke brothel brow browne browning browns brows browsing bruce brunch brushed
brussels buck buckley budding budget buff bugs building bulk bull bullets bulls bully bullying
bumper bumping buns burn burned burning burnt bursts burt burton bury busch bush bushs
businessmen butch butler buttons butts buys byrd bytes cable cafes cage cages cain cairo cake
cakes calcutta calf cali caller calmed calming calories camels cameo camera cameron cameroon
camp camped camping camps campus cams canada cancer cane cannon canoe cans canton canyon cape
capita capped caps capt carb carbs card cardinal cardinals cards cared career carey carl carla
carlo carly carmel carnival carpets carr carriages carrie carrier carriers carroll carrot
carrots cars carson cart carts carve carving cary cases casey cash casing casino cass caste
casting casts catchy cater caused causes cave caves cavs ceases cedar cell cellar cello cells
cent certainty cesar chai chain chairs champions champs chances chandler chang changer changing
channels chant chanting chap char characters charcoal charge charger chargers charges charmed
charming chat chats chatting cheat cheating checking checks cheeks cheer cheering cheeses chef
chefs chem chen cher cherries chess chic chick chickens chicks chile chili chill chilli chilling
chills chilly chin china ching chip chipped chips chocolates choi choir choke choo choose
choosing chop chopper chopping chores chose chris christians chun chung cigar cindy circa
circling circuits cisco clad clair clam clamp clan clans clap clara clare clarity clark clash
claudia clause claws clay cleaner cleaners cleanse cleansing clearer clearing climbers clinical
clinics clipped clippers clips clocks clone clones cloning close closer closes closest closures
clothed clothing cloud clouds club clues coach coaching coal coarse coast coastal coating
coatings coats cobb cock cocky coco cocoa code codes coding cody cohen coil coils cole coli
colin colleagues collide collisions collusion colo colon colonies colored coloring colors
colours colt combo comet comey comic comm comma commons comp compare compete competed complain
complained complains completes completion complexes compliant compressed compressor comprises
concert concerted concerto concerts conclusion concussion condo confidence confusion cong congo
conn conor cons consent consistent consistently constant constructing consular consulate consult
consultant consulted consume consumer consumers consumes cont contacted contacts contained
containers contains contempt contend contention contents contest contestant contested contests
context contexts continent contra contract contracting contracts contrast contrasting controller
controllers controls convened convenience conveniently convent converted conveyed convince cook
cooke cooked cookie cooking cooks cooling cope coping copper copy cora cord core cores corners
corny coroner corp corps corpses corpus corrected correctional corrections correctly correlation
corridors cortex cory cosby cost costa costs counted countered counters countess counties
counting countrys county coup coupe coupled couples coupon courses cousins cove coventry cover
coveted crab crabs cracker crackers cracking cracks cramped cramps crane crank crashes crashing
crater crates crave crawl craze creams crease create creed creek creep crest crew crews crimes
crippled crippling crises crop cropped crops crore crosses crossing crouch crow crude cruises
cruising crumble crumbs crushing cruz cuddle cult cunning cunt cure cures curing curl curling
curry curse curtain curtains curve cuts dairy daisy daly damage damages damn damon dams dana
dandy dane dangerously dank dans dare dared daring darn dart darts data date dated dave deal
dealing dean debit debt deceased deceived deception decks deco decor decrease decreases
dedicated dedication deed deem defeated defeating defect defender degree delaying dell demo
demos dems denis denise dense dent deposition depressing derive derives desks desperate
destroyer detained deter devil dial diaries diaz dick didn died diego diet diets differences
differently digs dine diner ding dinners dino dion dipped dipping dire directional directions
dirk disc dishes disk disney displayed disputes dissolve dive dives diving dock docs doctoral
doctorate doctors dodgy doesn dolan dole dolls dolly dome dominion domino dong donor donors
donuts doom dope doping dora doris dorm doubted doubts dove dover downey downing doyle dozen
dozens drag dragged dramas drawn draws dread dreamt dreamy dressed dresses drifting drilling
driven driver drivers drone dropping drought drove drowned drug drugs drums dual duck dude duel
dues duet duly dumb dumping dumps dune dunk durant dusk dvds dwelling dwellings dyer dyes eager
earl earliest earn earns ease east easter eaters eaton edged edgy eighteenth eighth elise elite
elle elsa elses emergence emergencies emery emptiness encore encounter energies engines englands
enjoy enroll enrolled enter enters entrances entry equality equals equip erased erin errors
escape especially etsy evacuate evacuation evan evenings everybodys everyones evidenced
excellence excellency exception excerpt excerpts excite executed existence exited expensive
exploded explored exported expose exposes expressive extend extending extension extensively
extras extremes faced faces fact faction facto facts fade fades failing failures fair fairs fake
faked faking fallon fame famed fanny fantastic farce fare fares farm farmed farms farther fate
fats fatty favorites favour favourites fearing fears feast feat feather feathers feds feelin
feelings fees felix fellas fellows fences feral fest fetal fetched feud fewer fiasco fiat fibre
fide fielding fields fife fifteenth fifth fighter figs fiji file filed filing fill filler fills
film filmed filming finale finals finch finder finds fined finer fines finishes finn finnish
fins fire firearm firearms firms fishing fists fitch fittings fitz flag flair flaming flap
flashed flashing flashy flats flatter flavor flavored flavors flavours flaw flawed flaws flea
fled flee fleet fleeting flex flickr flint flipped flipping flips flirting float floated
floating flood flooding flooring floors flop flora flour flower flowering flown flush flushing
focal fold folder folding following folly fond font fonts foods fool fooling fools footballer
force forces ford fore forged forget fork formally former forming forms fort forte forts forum
forwarded forwards foster founded founding fountains fourteenth fourth fractions fractures
fragmented fragments frail framed framing franco frank franks frat freaking fred freed freeing
fret friction fridays fried friendly fries fringe fronts frost froze fucking fuel fund funk
furnished fuse futures gabe gaelic gaga gage gail gains gala gale gall gallon gals game games
gaming gang gangs garde gardens gary gases gated gates gathers gators gauge gavin gays gaza gaze
gearing gems gene genie genital genre gentle giants gigantic giggling gigs giles gill gimme
girlfriends girly gland glass glaze glee globe glossy glover glowing glued goat goats gods gold
gong goods goofy gordon gorge gosh goth gotta gown grab grabs grace graceful gracious grad
graded grader grades grain grains gram grams grange grant granting grants graph graphs gras
grasp grasping grassy gravel graves greats greed greek greeks greene greens greenwich greer greg
greta grew grid grim grimes grin grind grip gripping grips grit grooming gross grounded
grounding grouping grove groves grow grows guard guardians guessing guest guests guineas guitar
gulf gunn guns gupta hack hacker hail haired hairs hairy hale halfway halls halo halt halted
handheld handing handler handlers handles handling handy hanged hanger hangover hank hanks hans
hara haram harden hardy hare harmed harmless harms harp harper harry hart haste hasty hatch
hatched hate haters hating hatred hats haul haunt haunting haven hawking hayes haze headed
heading headline heads heal healer health healy heap heaps hearing hearings hears heated heath
heats heaven heavenly heavens heck hedges heed heel heels heir helm helper hemp herb herd here
heres herman hermann herr highs hike hikes hiking hill hills hindi hindu hints hips hire hired
hires hiring hitting hive hoard hobbies hobby hodge holdings holes holidays holloway holt holy
homer homes homie homo honesty hong hood hook hooking hoops hoover hoped hopper horde horn horns
horrors horses hose housed houses hovering howd howe huang hubs hugh hugo hugs hull humane
humbled hume humming humour hundreds hungary hunt hunter hunting hunts hurley hutchinson huts
hyde hype ideals ignore ikea imam immortal impeccable implanted import important imported
imports improve improvements improves improvised incense incest inclusion increase increasingly
incredible incurred indexed indo indoor infect infections infectious infested inflated inflicted
info informed inhale injected injections injunction injure injuries inland insider insiders
inspected inspection inspires instantly instruction instructional insured intended intensely
intensive intent intention inter intercept intercepted interests interior internet interns
intestine intro invented inventor inventors invest invested iran islands issued itll ivan jade
jake jamal james jams jason java jeff jerk join joins joked joker jokes jolly jose joys judo
jumper jury kang kate keating keller kicker kidd killed killings kilometres kilos kinds kings
kissed kissing kitchens kits kittens knack kneel kneeling knew knit knob knocking knocks knots
known knows knox kong kung laborers labs laced lacey lacked lacks lacy laden lady ladys lake
lama lamar lambs lament lamps lana lance land landlords lands landslide lanes lang laos lapse
lara lars laser lash lasting lasts latex latte latter laughter launch launcher lava laws layer
leach leading leads leaflets leafs leafy leah lean leaned leaning leans lear lease leased leases
leasing least ledger lees lefty legion lemons lena lend lending lens lent leon lesions lesson
lest lets letter letting level lever levi levy lied lieu lifes lighten lighting liked likely
likes liking lilly lima limbo lime limit limiting limitless limo lined linen liner liners lines
ling linger link linked linking links lion liquidity liquids lisa listed listing listings lists
lite liter litre live lived lives living liza loaf loan loans lobe locating loch lock locked
locking locks lodging loft logged logging logo logs lois lone lonely loom looming loops loosen
loot looting lord lords lore lori lose loser losers loss losses lotus lounge lover lovers lowe
lowers lows luca lucas luck lucky lucy luke lukes lunar lunches lung lungs lure lust lynch mace
mach macho mack madame madden madras maga magnets maiden mailed mailing maine mains majors maker
makes malay male males mali mall malt malta mamma mana manager managers manages mandated mandy
mane mango mani manly mann manny manor mans manu mapping mara marches marco mare marie marino
mario marion marker market marking maroon married marries marry marrying martial mary mascot
mash masked mass massacre masses mast master matched matches matching mateo mater material
materials maternal mates math mats matt matte matters maya mayo mayor maze mead meadow meaning
meanings means meats medal medals median mediated mediation medic medicaid medically medicare
medicinal medieval medina meditation meet meetings megan mein melo melodic melodies melody melt
melting memes mend mendes mens mental mentioned mentions mentor menus mercy mere mesh mess
messed messes meta metals meteor mets meyer meyers mice mich mick micro midi midst mike miley
milf mill millers milling mills milo mina minds mined miner mines ming mini mining minors mint
minus misled misplaced missions missy mistaken mistakes mistress misty mitt mixer mixes mock
mode moderator modes modesty modi mods mold mole mona mondays money mono mont monte monty moods
moody moons moor moore moose moot moran mornings moron morrow morse mortar morton mosaic moses
moss moth motor motto mountain mounting mourning mouths movie movies mugs mule multiplied
multiply murder muscular muse musk mustard mute myles nadal nadia nadine nadu nagging named
names nano napa nasa nasas nash natal nate nato naughty naval neal nearby nearing neatly
necessity necks needing needles needs needy negatively negatives neil neon nephews nerd nero
nerve nervously nest nesting nets netting newer newt nicer niche nick nickel nico nigga nigh
nightly nike nile nineteenth ninja noaa noah nobility nobodys node nodes nokia nora norma norman
norse noses noted notes nothings noticed notices noticing notification noting notions notre noun
nova novice null numbers nuns nurses nyse objects odin ohio oily olga oman onwards opener
openings opera operate operates operational operations operator opposed opting oranges order
organ orion oslo others otter otto ounce outs outsider outsiders oven ovens overlay overrated
overs oversight overt overweight owen owens owes owned owners pablo pace pacers packed packer
packets packing pact padded padres page pages paid painfully paint painted painter painters
painting paintings paints pair paired pairs palace palaces palate paleo palin palm palmer pals
panda panel pans paolo papal papers papua parade paradise paradox paranoia pardon parent
parenting parked parking parks parlor particle partisan partnered parts party partying passage
passages passions passive pasta paste pastor pastoral patel patent path paths patiently patients
patricia pats patterned patty paulo pause paused paved paving pawn payer paying pays peace peak
peaks peanuts pear pearson peat peck pedro peek peel peeling peep peer peers penal pence pencils
pending penis penn pens perch percy perfected perfection periods perks perry personal persons
peru pesos pest pests pete petite petra petroleum pets petty phase phoned phones phony piano
picket pics pier pierce pies pigs pike piled pillows pinch pine pines pinky pint pints pipe
piper pipes pitched pitching pits pixel pizza placed plain plains plan plane planes planetary
planets plans plant planted plastics plated player playwright plaza plea pleading pleas pleased
pleases pleasing pleasures plot plots plotted plotting ploy plug plugs plumbing plush pluto
pockets pods poet pointer pointers pointless poke poked pole poles policing polio poll polled
polling polls polly polo poly pond ponder ponds pooh poole poorer pope popping poppy pops pore
pork port porter porto pose posed poses posh posing position positioned positions poster
postpone posts potion pots pottery pouch pounded pounding pounds power powering practical
practiced practices practise practised praising prank pray prayed preach precious precision
premises premiums prep pres present presenting presents pressing pressured pressures preston
prevalent prevented prevents previously prick pride primal prime print printed printers printing
prints prism prison proactive probable probe probes prod produce produced producer producers
products prof progressed progresses projecting projects prom promo prone prop property props
pros prosecuting prospects prosper prostate protect protected protections protector protestant
protesters protesting protestors protests proto proton published publishes publishing pubs puck
puerto pull puma pump punched punches punching pune punishing punk punt pups pure pursuing
puzzles qaeda quarterly quarters quartet queens queer quest questioned questions queue quid
quilt quincy quinn quits quiz quota quote rabbi racer racers rack racket racks rage raid raider
raiding rail railing rained raining rains rainy raises raja rake rally rallying rama ramos ramps
rams rand rang ranging ranks rant rape raped rapes rapids raping rapping rare rarity rated rates
ratio rations ratios rats rave rays reach reached reaches reaching reacting reactions reacts
read reader readiness reads realising realm realty reap receive receiver receivers receives
receiving recharge recipe recital recite reckon recording recover recovered recovering recovers
recreation rector recurrent redemption reduce reduces reduction reed reef reefs reel rees reeves
reflected reflects reformed refuge refugees regal regard regarded regularly regulars regulate
regulator reich reigning reilly rein reject rejection related relating released relegated relied
relies relieve relieved rely remain remainder remained remedies remembered remembers reminded
reminds remote removable removes renal render rene renewing reno rent rental renting rents repay
repeal repealed repeats repent replaced replay reports repost repressed reps resale rescuing
reset resides residing resisting resolve resort respected respects responded respondents
responders responses responsible restoring result resulted resulting retaining retains retina
retire retreated retrieve reuse revolver revolving rewards rewind reyes ribbons rica rich rick
rider rides ridge rigging rightly rights rigs rims rings rink rinse ripe ripper ripping risen
rises rising risk rita rite roads roam roaming roar roasting robb robbed robber robbing robe
robot rocked rocker rockets rocky rode rodeo rods rogers role rolf roller rollins rolls roma
rome romero roofs rookie rookies roommates rooms root rooting rope rory rosen roses rosie ross
rotate roth rotor rouge rounded rounding rounds route routed rover rowe rowling ruby rude ruin
ruining ruins ruler rules rushing russ ruth sabrina sacked sacks sacred safer saga sage sail
sailing sake salad salem sales salman salon saloon salsa salt salted salts salty salute salvador
salvage sama sami sams sand sanders sandra sands sane sang sans santa santo sara satin saturdays
sauna savages save saved saver saying scale scales scam scams scan scans scarce scares scarf
scaring scarred scars scary scattered score scored scorer scot scots scout scouting scouts
scrape screwing scroll seal sealing seams sean sears seas seasons seat seated seating seats
seattle secession secondly sect secured sediments seductive seed seeded seeds seek seeking seeks
seeming sega seize sell selling sells selves semen seminars senate sends sens sensing sent
separate separately separates sept serbia serenity serial serie series serve served server
servers servicing sessions setbacks seth settings settlers sevens seventeenth seventh severed
severity sewing sexes shabby shack shaded shades shading shady shaft shafts shah shaken shaker
shaky shale shalt sham shaming shan shane shape shaped shapes shaping share shared shares
sharing shark shattering shave shaving shaw shear shedding sheen sheep sheer sheets shells
shelly shen shia shift shine shining ship shipped shipping ships shirt shirts shite shocking
shocks shoe shoes shone shoot shooting shootings shoots shopping shore shorts shorty shots
shoved shoving show shown shrek shrink shun shuts shutting sided sidewalks siding siege sighs
sight sighting significance sikh silk silky silly silva similarly simmer simone sims sing
singers singh singing singled singles sings sink sinking sinks sinn sins sire siri sites situ
sixteenth sixth sized sizes skewed skies skill skills skins skipper slab slack slade slain slam
slap slapped slapping slash slate slave slay slaying sled sleek sleeper slew slice slices slick
slide slim sling slippers slot slots slowing slows sludge slum slut smack smallest smug snag
snails snake snakes snare snatched sneak sneakers sneaking snoring snowy soap soar soaring sober
soda sofia soften softened soho solar sold sole solos solve somebodys someones somethings song
songs sonia sony sooo sorta sorting sorts soul space spaces spacex spade spain spam spamming
span spanking spare spared sparkling sparks spawning speaking speaks spear spears spec specially
specials specialty specs spectral sped speed speeding spell spelled spelling spells spend
spending spies spills spin spins spirit spite spoon sport sporting sports spotted sprayed
spraying spring springer sprinkled sprung spur spurred spurs squad squadron squads square
squared squares squash squeeze squirt stab stabbing stables stacey stack stacking stacks stacy
staffing staffs stag staged staging stake stakes stale stalin stalk stalking stall stan
standings stare stared stares stark starr starred starring start startled startling starve stat
stated states stating stationed stations stats statue statues steaks steal stealing steaming
steep steering stein stem stems steph stepping sterling steven sticky stills sting stint stir
stirling stirring stitched stock stockings stocks stoke stoked stokes stolen stomp stoner stony
stood store stored stores storing stout stove straighten strait straits strand stranded strands
strangely stranger strangers strangest strangled strapped straps straws stray stream streamed
streets strengthen strengths stresses stretcher stride strife striker strikes strings stripe
stripped stripping strips strive stroke strongest struck strung studying stun stung stunt
sturgeon style subs subsidies subsidized suck sucked sucks sued sugars suggestion suing suite
suits summed summers sundays sung sunk suns superb supervise supported supporter supporting
supports supposedly surf surge surgeons suspected suspects suspended suspense sustained sven
swam swap swapped swapping swat sway swear swearing sweat sweating sweep sweeping sweeps sweets
swept swine swipe switch switches switching sword sworn syria tables tack tackle tackled
tackling taco taft tagging tags tails tainted taker takers tale tales talking talks tall tame
tamil tammy tangled tango tank tanks tanya taped taper tapes taping tara tart task tasting tasty
tata tate taxes taxing teach teal teams tear tearing tease techno teen teens tees telling tells
temperatures tempered tempo tempting tended tenders tending tenor tens tensions tent tenth tents
term terminal terminals terminate terra terry tesco tesla tess testing texas thai thee theo
thighs thine things thingy thinker thinkers thinner thirds thirteenth thistle thorn thorough
thousands threads threat threats thrilled thrive throats thursdays ticket ticking ticks tide
tides tied tier ties tighten tightly tilt timed timer timers timmy timor tinder ting tint tinted
tipped tipping tires tissues title titles tito tits toad toast tobias todd toddlers toilets
token tolerance toll tomas tomato tomb tommy tomorrows tone tones tong tongues toni tonights
tony tool topic topped topping tops torch toro tory toss totals tote tough toughest touring
towed towers towing town towns toxic traced traces tracey tracked tracking tracks tract traction
tracy trade trades trail trained training trains trait tram trance trans transparent trap
trapped trapping traps trash trays tread treating treaty trees trek tremendous trent trey trick
tricked trio trip tripping tristan troubled troubles trough trout troy truce trucking trucks
trunks trusting tube tuck tucker tuesdays tumblr tumor tune tuned tuning turbo turf turin turk
turkeys turks turner twain tweed tweeting twin tying type tyre tyres uncles unsuitable unusually
update updated upsets urged urgently urges usable user users ussr value valve vargas varies
various vase vega veil vein vending vera verge verse vigilant vile vine violence viral visibly
visitor vista vital vitamin viva voiced voicing volvo wade wage wager wages waist waited waiter
waits waived wales walker walled waller wallets wallis wally walt walter wand wandered wanderers
wandering wang ward ware warmed warn warner warp warped wars wary wash washer washes wasted
wasting watchers watches waters watt watts wave waves waving ways weakened weaknesses wealthy
weary weaving wedding wednesdays weeds weekends weigh weighing weighs weights weir weirdo
welcomed welcomes weld wells welp west whale wheres wherever whew whipping whisper whispered
whispering whispers whistles whod wholl whore whove wick widen wider widow wifi wiggle wight
wigs wilde willing wills willy wind winding windows wines wing winged winger wingers winner
winning winnings wins winters wipe wipes wired wise wished witch withdraw withdrawal withdrawing
wives woes wolf wolfe wolff wolfgang women wonderfully wonders wong wooded woods woody wool word
worded wording worker workings works workshop worlds worm wounded woven wraps wrestler wrestlers
wretched wright wrists writ writer writes writings wrongs wrote wrought yarn yearning yell
yelled yells yesterdays yielding youngest youngster yours youthful youths zara zombies zone
abba abnormal abode absentee abuja abundantly acer aided aims airy alia alice alike alot alton
amir analysis anita appalled applies arcs aries armor army arya ashe asher aspect aspects
attaches aunty avert baffling bama barns basque batches beale beef benny bette billion blacklist
blanchard blinding bling blocker blockers bomber boner bonn booing bora bose botox bounces bouts
bowers brackets branched bree bribe bride brief brisk brit bubbling bucket buick bumpy bundy
burr byte cabs camo carat cardigan carers carney carp carte cert channing chaplin chaps charting
chaser chet chime chipotle chute clams clashed classify click climber clinched cloak clout
clutching coles collier colton colts comets complacent condos conform conner conscience
contended contender contenders contends cops cortez coulter court cram creme crete cricketer
crimea current currents curvy dade daley dancer danger daylight decaying deepen defer
definitively defying deliver delivered delivers demi denoted depp desert deserted deserts
desperately desperation dessert desserts destroyers deteriorate detour devolved devout dior
disgrace disgraced diss dons doth doubly doug drew drinkers egan emil emitted emotion emotions
emperors employing entice entirety etching examines exist exists exit exits expertise exploiting
exploring facet fairness fave faye fend files finisher fireball firth flake flame flaps flask
flattering fling floss foes folds folk follower followers footy foraging foresight foreword
forks founder franchise francois frying fueling furthest fused gallup gator gazing gent gentry
gents giver glaring gliding gloom gloomy grabbing grady grate grating grids gripped grossed
grossing gustav gusts gyms hahn hailing halal hamper hana hardness harem hari hater heartache
heather hermione hijab hindered hives hogs hone honoring hookers hormonal horne hubble hunk icon
imagine imagined imagines importance importantly imran indicate indicates indication indications
indicator indicted indigo indy infer intersect invests irony isps jamaican jars jays jerry jews
judging jumbo juno kara keel kern kick kimi kindle kinky kirk labourers lager lagging lair laird
lamented lange lapd lark lashes latinos launchers league leather leds levant lewd libel libs
lice lien loathing lobes looted loyal lube lyft lyme magma mantra maps marc mari marlon mars
mart marx mask massacred massacres mata matteo meade meantime medial medics mentoring meps
metabolic metallica midway migrating mika milne minh mink miserably moat mobs moira molding
molested montreal mori moths moyes muir multiplier munro murky nanny nemo nifty nigel nook novel
novo nude nugget obligated offended officer ogden oleg omen opec operas organise organised
organize organized overtly oxide paine pant parisian partridge pasha passer pastry patsy patti
pave peaked peaking pebble peking peng perilous perk perm persia persuade peruvian peta
pickering pickled pierre pitchers pitted pixar planner planners platter plow plume plump
poaching pont potts premiers prepping prescribe preserve preserves presided presumed pricey
primate primates primed prince prize proc processed professed prog propel protectors pryor
pumpkins puns purse putin puzzled puzzling quickest quirk rabid racking ranting ratchet raving
reciting recorded recreated redo redress reels refunded refute regina reins relentless
relentlessly relevance remodeling repression resolves resorting retainer retrieved reusable
revising riddled riders rife ringo ritchie rivera roaring romo routing rovers roxy rudder rumble
rundown rung ruse salah saudi saudis saunders scent schedule schedules scoreless scripted secs
sects seduced seeding serb settler sever sewn shaq shawl shay shea shippers shower showering
shred silas simple skim skis skit slabs slag slaps slashed slicing slider slur smacked snuff
soaps sobs soma sonny sprinter stacked staffers stalling stamping starlight staten static
station stead stomping storming streamline strikers strives striving sufferers sugary sumner
sums sunni supplemental swayed tapering tardis tarot telly templar terminus tessa thaw theresa
thong thrones tinker tomatoes torches tori torque toto tout tracer tracker traits tranquil
trials tsar tung turing unbeatable unbreakable uniformed unmatched usps valet vast vendetta
vents vest vests veterinarian veto vice vigil wafer wavy weaken weaver welding wellbeing wheeled
wheeling whipped whistler whit wielding withhold woof worthy zoned
fuck vote mission height zones junk wicked apollo vent cite kobe skirts zack stalls inject owls
sherry jang kale katz stalled shiva vowel volt tolls kool haunts kali vowels volts shilling voss
redneck jagged kant
stubble nibble_x
pitting knitting kitting sitting_x
burp burped burping burps belch belched
agatha aged ames amid apes arbor arid axes barge barrie basel betty boasting boosting braves
calgary catheter christi christy circle circled claiming clement climate climates climatic
climax cocaine confessed confuse cosmo costco crochet crotch dawg declaration deformation
departmental deportation divine docking dreaded dreamer dubbed elias ellis enthusiast
enthusiasts etiquette exiting fifa finite flakes flattered glance hooked hooks hump inch inches
juicy kernel lansing launching lorry machete mapped march mardi masking mentality mitch mocking
noticeably opal oral oval pallet porno radiation remanded resolute resolution resolutions revive
scramble shores slump slurs sonata spice spine spoke spores squire studs template templates
temple temples thrust transporting traveling truss upper vanilla visit waste whatsoever
"""
