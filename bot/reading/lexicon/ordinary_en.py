"""Ordinary English words within a letter or two of ours, so never repaired into them.

Chosen by frequency with the `wordfreq` package (22,000 most frequent words).
"""

WORDS = """
abbas able aboard abolished abort abortion abortions abound abundance abundant academic accent
accepts accidental acclaimed aces acne acre acres addressing administrator administrators adult
advise afternoons afterward agent aggressively agnes aide aiding aired aires airs alain alarms
alba albert alberta alcoholic alignment allergies alliance allotted allowing alma almighty
almonds along altar alter altogether amino amos amounted amounts ample anders angela angelo
angels anger angie angles anglo angus animals anime ankles anon answers ante antibody antiques
ants anyones anywhere apiece apollo appeal appealed appeals apples apply appointing appointments
appreciates appreciative approved aqua arcade archer arches ardent areas arena arenas aria
arises arising aroma arose aroused arresting arriving arrows arts ascending ascertain ashes
aspen aspiring asus atlas attached attack attacker attackers attained attempted attracted
attracts avid avoids awaiting awakens aware awhile babe babys bach backing backs backward bacon
bacteria bacterial badge bail bailed baird bake baked baking balances bald bale bali ballet
ballroom balm bananas bands bane bang banging bangs banished banjo bank banking banks banned
banquet bans barb barbados barbarian barbaric barbed barca bard bare bark barker barley barn
barnes baron baroness barr barred barrels barren barriers barring barrow barry bars bart based
bash bashing basing basketball baskets bass batch bates bathe bathrooms baths baton bats batter
battered battle battles battling bays beach bead beads beak beam beams bean beard beards
bearings beat beaten beating beats beau beck becomes beds beech beer beers bees began begged
begin beginnings behaving beings belief believed believer believers believes bella belle
bellevue bells belonging belt belts bender benz bert berth beside best beth bets bianca bias
bible bidding biden bids bieber biker bikes biking bill billed billing billings bills billy bind
binding binds bing bios birch birds births bitten bitter bitterly blacks blanc blanche bland
blank blankets blanks blasting bleak blend blending blends blessing blight blinking bliss bloc
blockade blocking bloggers blogging bloke blond bloom blooming blooms blow blower blows blues
blur blurry blush blvd boar boarding boards boasting boat boating boats bobs bodys boeing boil
boiler bois boko bold bolton bona bond bondage bonded bonding bonds bong bono bonus bony boob
boobs book booked booking bookings books boom boomers boon boone boost boosting boosts booth
booths booty border borders bore bored boring borne boroughs boston bothers bots bottled bottoms
bought bounce bounced bound bounty bout bowed bowen bowled bowling bowls bows boxes boxing boyd
boyfriends boys braces brad bragging brains brake braking branches brand branding bravo breach
breached breaches breadth bred breed breeding breeds brent bret brew bridge bridging brig briggs
brighter brightly brilliance brink brits broad brock brody broker broncos brood brooke brothel
brow browne browning browns brows browsing brunch brushed brushing brussels bubbling buck
buckley budding budget buff bugs building bulk bull bulls bully bullying bumper bumping buns
burn burned burning burnt bursting bursts burt burton bury busch bush bushes bushs businessmen
butch butler buttons butts buys byrd bytes cable cafes cage cages cain cairo cake cakes calcutta
calf cali caller calmed calming calories camels cameo camera cameron cameroon camp camped
camping camps campus cams canada cancer candle cane cannon canoe cans canton canyon cape capita
capped caps capt cara carb carbs card cardinal cardinals cards cared career carey carl carla
carlo carly carmel carnival carpets carr carriages carrie carrier carriers carroll carrot
carrots cars carson cart carts carve cary cases casey cash casing casino casket cass caste
casting castro casts catchy cater cattle caused causes cave caves cavs ceases cedar cell cellar
cello cells cent certainty cesar chai chain chairs champions champs chances chandler chang
changer changing channels chant chanting chap char characters charcoal charge charger chargers
charges charmed charming chat chats chatting cheat cheating checking checks cheeks cheer
cheering cheeses chef chefs chem chen cher cherries chess chic chick chickens chicks chile chili
chill chilli chilling chills chilly chin china ching chip chipped chips chocolates choi choir
choke choo choose choosing chop chopped chopper chopping chores chose chris chubby chun chung
churches cigar cindy circa circling circuits cisco citing clad clair clam clamp clan clans clap
clara clare clarity clark clash claudia clause claws clay cleaner cleaners cleanse cleansing
clearer clearing cleavage clicked clicking clicks climb climbers clinch clinging clinical
clinics clipped clippers clips clocks clone clones cloning close closer closes closest closures
clothed clothing cloud clouds club clues coach coaching coal coarse coast coastal coating
coatings coats cobb cock cocky coco cocoa code codes coding cody coercion cohen coil coils
colder cole coli colin colleagues collide colo colon colonies colored coloring colors colours
colt combo comet comey comic comm comma commando committed committing commons comp compare
compete competed complain complained complains completes completion complexes compliant
composite compressed compressor comprises concert concerted concerto concerts conclusion
concussion condo confidence confusion cong congo conn conor cons consent consistent consistently
constable constant constructing constructions consular consulate consult consultant consulted
consume consumer consumers consumes cont contacted contacts contained containers contains
contempt contend contention contents contest contested contests context contexts continent
contra contract contracting contracts contrast contrasting controller controllers controls
convened convent converse converted conveyed convince cook cooke cooked cookie cooking cooks
cooling cooper cooperation cope coping copper copy cora cord core cores corners corny coroner
corp corps corpses corpus corrected correctional corrections correctly correlation corridors
cortex cory cosby cost costa costly costs counted countered counters countess counties counting
countrys county coup coupe coupled couples coupon courses cousins cove coventry cover coveted
crab crabs cracker crackers cracking cracks cramped cramps crane crank crashes crashing crater
crates crave crawl craze creams crease create creating creed creek creep crest crew crews crimes
crippled crippling crises crop cropped crops crore crosses crossing crouch crow cruise cruisers
cruises cruising crumble crumbling crumbs crushing cuddle culinary cult cultures cunning cunt
cure cures curing curl curled curling curry curse curtain curtains curve cuts cutter dairy daisy
daly damage damages damn damon dams dana dandy dane dangerously dank dans dare dared daring
darkness darn dart darts data date dated dating daughters daunting dave deal dealing dealings
dean dearly debating debit debt deceased deceived deception decks deco decor decrease decreases
dedicated dedication deed deem deemed deeply defeated defeating defect defender degree
dehydrated delaying deleting delights dell demo demos denial denis denise dennis dense dent
departing deposition depressing derive derives desks desperate destroyer detached detained deter
determine devil diagnosis dial diaries diaz dick didn died diego diet diets differences
differently diffusion digs dillon dine diner ding dinners dino dion dipped dipping dire
directional directions dirk disc dishes disk disney displayed disputes dissolve dive dives
diving dock docs doctoral doctorate doctors dodgy doesn dolan dole dollar dolls dolly dome
dominion domino dong donor donors donuts doom doomed dope doping dora doris dorm doubted doubts
dove dover downey downing doyle dozen dozens drag dragged dragon dramas drawn draws dread dreamt
dreamy dressed dresses drifting drilling driven driver drivers drone dropping drought drove
drowned drug drugs drums dual dubbed duck dude duel dues duet duly dumb dumping dumps dune dunk
durant dusk dvds dwelling dwellings dyer dyes eager earl earliest earn earned earning earns ease
east easter eaters eaton edged edgy eighteenth eighth either ejected eliminate elise elite elle
elsa elses emergence emergencies emery emotion emotions emptiness enable enclosure encore
encounter ending energies engines englands enjoy enroll enrolled ensure enter enters entrances
entry equality equals erased erin errors escape especially estranged etched etsy evacuate
evacuation evan evenings everybodys everyones evidenced excellence excellency exception excerpt
excerpts exchanged exchanges excite executed existence exited expensive exploded explored
exported expose exposes expressive extend extending extension extensively extras extremes faced
faces fact faction facto facts fade fades failing failures fair fairness fairs fake faked faking
falcon fallon fame famed fanny fantastic farce fare fares farm farmed farms farther fate fats
fatty favorites favour favourites fearing fears feast feat feather feathers feds feelin feelings
fees felix fellas fellow fellows fences fender feral fernando fest fetal fetched feud fewer
fiasco fiat fibre fide fielding fields fife fifteenth fifth fighter fighters figs fiji file
filed filing fill filler fills film filmed filming finale finals finch finder findings finds
fined finer fines finishes finn finnish fins fire firearm firearms firms fishing fists fitch
fittings fitz flag flair flaming flanders flap flash flashed flashing flats flatter flavor
flavored flavors flavours flaw flawed flaws flea fled flee fleet fleeting flex flickr flint
flipped flipping flips flirting float floated floating floats flood flooding flooring floors
flop flora flour flower flowering flown flush flushing flying focal focusing fold folder folding
followed following folly fond font fonts foods fool fooling fools footballer force forces ford
fore forged forget fork formal formally former forming forms fort forte forts forum forwarded
forwards foster founded fountains fourteenth fourth fracking fractions fractures fragmented
fragments frail framed framing franco frank franks frat freaking freaks fred freed freeing fret
friction fridays fried friendly fries fringe fronts frost froze frying fucked fucking fuel
fumble fund funk furnished fuse future futures gabe gaelic gaga gage gail gains gala gale gall
gallon galloway gals gamble game games gaming gang gangs garde gardens gary gases gated gates
gather gathers gators gauge gavin gays gaza gaze geared gearing gems gender gene genie genital
genre gentle giants gifted gigantic giggling gigs giles gill gimme girlfriends girly gland glass
glee glitter globe glover glowing glued goat goats gods godzilla gold gong goods goofy gordon
gorge gosh goth gotta governed gown grab grabbing grabs grace graceful gracious grad graded
grader grades grain grains gram grams gran grange grant granting grants graph graphs grappling
gras grasp grasping grassy gravel graves greats greed greek greeks greene greens greenwich greer
greg greta grew grid grieving grim grimes grin grind grinding grip gripping grips grit grooming
gross grounded grounding grouping grove groves grow grows guard guardians guessing guest guests
guineas guitar gulf gunn guns gupta gutter guys hack hacker hail hailed haired hairs hairy hale
halfway halls halo halt halted handheld handing handler handlers handles handling handy hanged
hanger hangover hank hanks hans hara haram harden hardy hare harmed harmless harms harp harper
harry hart haste hastings hasty hatch hatched hate haters hating hatred hats haul hauled haunt
haunting haven hawking hayes haze headed heading headline heads heal healer health healy heap
heaps hearing hearings hears heated heater heath heats heaven heavenly heavens heck hedges heed
heel heels height heir helena helm helper helping hemp herb herd here heres herman hermann
hermione herr highs hike hikes hiking hill hills hindi hindu hinges hints hips hire hired hires
hiring hitter hitting hive hoard hobbies hobby hodge holder holdings holes holloway holt holy
homer homes homie homo honesty hong hood hook hooked hooking hooper hoops hoover hoped hopper
horde horn horns horrors horses horton hose hotter housed houses hovering howd howe huang hubs
hugh hugo hugs hull humane humble humbled hume humming humour hundreds hungary hunt hunter
hunting hunts hurley hutchinson huts hyde hype ideals ignore ikea imam immortal impartial
impatient impeccable imperfect implanted import important imported imports improperly improve
improvements improves improvised incense incest inclusion incomplete incorrect increase
increasingly incredible incurred indefinitely indexed indifference indifferent indo indoor
infect infections infectious infested inflated inflicted info informed inhale injected
injections injunction injure injuries inland insider insiders insignificant inspected inspection
inspires instantly instruction instructional insure insured intended intensely intensive intent
intention inter intercept intercepted interests internet interns intestine intro invented
inventor inventors invest invested invisible iphone iran islands issued ivan jacked jacket jade
jailed jake jamal james jams jason java jeff jerk join joins joked joker jokes jolly jose joys
judged judo jumper jury kang kate keating keeper keller kicker kidd killed killings kilometres
kilos kinds kings kissed kissing kitchens kits kittens knack kneel kneeling knees knew knight
knights knit knitting knob knocking knocks knots known knows knox kong kung laborers labs laced
lacey lacked lacks lacy ladder laden lady ladys lake lama lamar lambs lament lamps lana lance
land landed landlords lands landslide lanes lang laos lapse lara lars laser lash lashes lasting
lasts latex latina latino latte latter laughter launch launcher launching lava lawful laws layer
leach leading leads leaflets leafs leafy leah lean leaned leaning leans lear lease leased leases
leasing least ledger lees lefty leggings legion lemons lena lend lender lending lens lent leon
lesions lesson lest lets letter level leveling lever levi levy lied lieu lifes lighten lighting
lightning liked likely likes liking lilly lima limbo lime limit limiting limitless limo lined
linen liner liners lines ling linger link linked linking links lion liquidity liquids lisa
listed listing listings lists lite liter litre live lived lives living liza loaf loan loaned
loans lobe locating loch lock locked locking locks lodging loft logged logging logo logs lois
lone lonely loom looming loops loosen loot looting lord lords lore lori lose loser losers loss
losses lotion lotus lounge lover lovers lowe lowers lows luca lucas luck lucky lucy luke lukes
lumber lunar lunches lung lungs lure lust lynch mace mach macho mack madame madden madras maga
magnets maiden mailed mailing maine mains majors maker makes makeup making malay male males mali
mall malone malt malta mamma mana manager managers manages managing mandated mandy mane mango
mani manly mann manny manor mans manu mapped mapping mara marched marches marco mare marie
marino mario marker market marking markings married marries marrying martial marvelous mary
mascot mash mashed masked mass massacre masses mast master matched matches matching mateo mater
material materials maternal mates math mating mats matt matte matters maya mayo mayor maze
mclean mead meadow meaning meanings means meats medal medals meddling median mediated mediation
medic medicaid medically medicare medicinal medieval medina meditation meet meetings megan mein
melo melodic melodies melody melt melted melting memes mend mendes mens mental mentioned
mentions mentor menus mere mesh mess messed messes meta metals meteor mets meyer meyers mice
mich mick micro middle midi midst mighty mike miley milf milk mill miller millers milling mills
milo mina minds mined miner mines ming mini mining minors mint minus misled misplaced missions
missy mistaken mistakes mister mistress misty mitt mixer mixes mock mocked mode moderation
moderator modes modesty modi mods mold mole mona mondays money mono mont monte monty moods moody
moons moor moore moose moot moran mornings moron morrow morse mortar morton mosaic moses
mosquito moss moth motor motorway motto mounds mountain mountains mounting mourning mouths movie
movies mugs mule multiplied multiply murder muscular muse musk mustard muster mute myles nadal
nadia nadine nadu nagging nailed named names nano napa narrow nasa nasas nascar nash natal nate
nation nato naughty naval neal nearby nearing neatly necessity necks needing needles needs needy
negatively negatives neil nemesis neon nephews nerd nero nerve nervously nest nesting nets newer
newt nicer niche nick nickel nico nigga nigger nigh nightly nike nile nineteenth ninja nintendo
noaa noah nobility nobodys node nodes noise nokia nora norma norman norse norton noses noted
notes nothings noticed notices noticing notification noting notion notions notre noun nova
novice null numbers nuns nurses nyse objects obsession obtained odin ohio oily olga omitted
onward onwards opener openings opera operate operates operational operations operator opposed
opting oranges ordained order ordinary ordination organ orion others otter otto ounce ounces
outs outsider outsiders oven ovens overlay overrated overs oversight overt overweight owen owens
owes owned owners pablo pace pacers packed packer packets packing pact padded padres page pages
paid painfully paint painted painter painters painting paintings paints pair paired pairs palace
palaces palate paleo palin palm palmer pals panda pandemic panel pans panthers paolo papal
papers papua parade paradise paradox paranoia pardon parent parenting parked parking parks
parlor particle partisan partnered partners parts party partying passage passages passions
passive pasta paste pastoral patel patent path pathetic paths patience patiently patients
patricia pats patterned patty paulo paused paved paving pawn payer paying pays peace peak peaked
peaks peanuts pear pearson peat peck pedro peek peel peeled peeling peep peer peers penal pence
pencils pending penis penn pens perceived perception perch percy perfected perfection performed
periods perks perry personal persons peru pesos pest pests pete peters petite petra petroleum
pets petty phased phases phelps phoned phones phony piano picket pickle pics pier pierce pies
pigs pike piled pillows pinch pine pines pinky pint pinterest pints pipe piper pipes pitched
pitching pits pixel pizza placed plain plains plan plane planes planetary plans plant planted
planting plants plastics plated player playwright plaza plea pleading pleas pleased pleases
pleasing plight plot plots plotted plotting ploy plug plugs plumbing plunge plunged plush pluto
pockets pods poet pointer pointers pointless poke poked pole poles policing polio politics poll
polled polling polls polly polo poly pond ponder ponds pooh poole poorer pope popping poppy pops
pore pork port porter porto portugal pose posed poses posh posing position positioned positions
postal poster postpone posts potion pots pottery pouch pounded pounding pounds power powering
practical practiced practices practise practised praise praised praising prank pray prayed
preach preached preaching preceding precious precision premises premiums prep preparation pres
present presenting presents pressing pressured pressures preston prevalent prevented prevents
previously prick pride primal prime print printed printers printing prints prism prison
proactive probable probe probes prod produce produced producer producers products prof
progressed progresses projected projecting projects prom promo prompting prone prop property
props pros prosecuting prospects prosper prostate protect protected protections protector
protestant protesters protesting protestors protests proto proton provoked published publishes
publishing pubs puck puerto pull puma pump pumped punched punches punching pune punishing punk
punt pups pure pursuing quarterly quarters quartet queens queer quest questioned questions queue
quid quilt quincy quinn quits quitting quiz quota quote rabbi racer racers racing rack racket
racks radios rage raid raider raiding rail railing rained raining rains rainy raises raja rake
rally rallying rama ramos ramps rams rand rang ranged ranging ranks rant rape raped rapes rapids
raping rapper rapping rare rarely rarity rated rates rating ratio rations ratios rats rave rays
reach reached reaches reaching reacting reactions reacts read reader readiness reading realising
realm realty reap reason recalling receive receiver receivers receives receiving recharge recipe
recital recite reckon reclaimed recording recover recovered recovering recovers recreation
rector recurrent recycling redemption reduce reduces reduction reed reef reefs reel rees reeves
reflected reflects reformed refuge refugees regal regularly regulars regulate regulator reich
reigning reilly rein reject rejection related relating released relegated relied relies relieve
relieved rely remain remainder remained remedies remembered remembers reminded reminds remote
removable removes renal render rene renewing reno rent rental rented renting rents reopening
repay repeal repealed repeats repent replaced replacing replay reports repost repressed
reprinted reproductive reps resale rescuing reset residence resides residing residues resisting
resolve resort respected respects responded responders responses responsible restoring
restrained restraining result resulted resulting retained retaining retains retina retire
retreated retrieve returning reuse reversal revolver revolving rewind reyes ribbons rica rich
rick riddle rider rides ridge riding rigging rightly rights rigs rims rings rink rinse ripe
ripper ripping risen rises rising risk rita rite roads roam roaming roar roasting robb robbed
robber robbing robe robot rocked rocker rockets rocky rode rodeo rods rogers role rolf roller
rollins rolls roma rome romero roofs rookie rookies roommates rooms root rooting rope rory rosen
roses rosie ross rotate roth rotor rotting rouge rounded rounding rounds route routed routing
rover rowe rowing rowling ruby rude rugged ruin ruining ruins ruler rules rumble rushed rushes
rushing russ ruth sabrina sacked sacks sacred saddle safer saga sage sail sailed sailing saints
sake salad salem sales salman salon saloon salsa salt salted salts salty salute salvador salvage
sama sami sams sand sanders sandra sands sane sang sans santa santo sara satin saturdays sauna
saunders savages save saved saver saving saying scale scales scam scan scarce scares scarf
scaring scarred scars scary scattered score scored scorer scot scots scout scouting scouts
scrape screening screwing scroll scrolling seal sealing seams sean sears seas seasons seat
seated seating seats seattle secession secondly sect secured sediments seductive seed seeded
seeds seek seeking seeks seeming sega seize selena sell selling sells selves semen seminars
senate sends sens sensing sent sentences separate separately separates sept serbia serenity
serial serie series serve served server servers sessions setbacks seth setting settings settlers
sevens seventeenth seventh severed severity sewing sexes sexually shack shaded shades shading
shady shaft shafts shah shaken shaker shaky shale shalt sham shaming shan shane shape shaped
shapes shaping share shared shares sharing shark shattering shave shaving shaw shear shedding
sheen sheep sheer sheets shells shelly shen sheridan sherry shia shift shine shines shining ship
shipped shipping ships shirt shirts shite shocking shocks shoe shoes shone shoot shooters
shooting shootings shoots shopping shore shorts shorty shots shoved shoving show showed shown
shrek shrink shrugged shun shuts shutting sided sidewalks siding siege sierra sighs sight
sighting sightings sights significance sikh silk silky silly silva similarly simmer simone sims
sing singer singers singh singing singled singles sings sink sinking sinks sinn sinner sins sire
siri sites situ sixteenth sixth sized sizes sketches skewed skies skill skills skins skipper
slab slack slade slain slam slap slapped slapping slash slate slater slaughter slave slay
slaying sled sleek sleeper slew slice slices slick slide slim sling slippers slot slots slowed
slower slowing slows sludge slum slut smack smallest smiles smug snag snails snake snakes snare
snatched sneak sneakers sneaking snoring snow soap soar soaring sober socket soda sofia soften
softened soho solar sold sole solos solve somebodys someones somethings sometime song sonia sons
sony sooo soothing sorta sorting sorts sought soul sounded sounding sounds sourcing space spaces
spacex spacing spade spain spam spamming span spanking spanning spare spared sparkling sparks
spawning speaking speaks spear spears spec specially specials specialty specs spectral sped
speed speeding spell spelled spelling spells spend spending spies spilling spills spin spinning
spins spirit spite splinter spoiling spoon sport sporting sports spotted sprayed spraying spring
springer sprinkled sprung spur spurred spurs squad squadron squads square squared squares squash
squeeze squirt stab stabbing stables stacey stack stacking stacks stacy staffing staffs stag
staged staging stainless stake stakes stale stalin stalk stalking stall stan standings stare
stared stark starr starred starring stars start startled startling starve stat stated states
stating stationed stations stats statue statues staying steaks steal stealing steaming steep
steering stein stem stems steph stepping sterling steven sticky stiles stills sting stint stir
stirling stirring stitched stock stockings stocks stoke stoked stokes stolen stomp stoner stony
stood store stored stores storing stout stove straighten strait straits strand stranded strands
strangely stranger strangers strangest strangled strapped straps strata straws stray stream
streamed streets strengthen strengths stresses stressing stretcher stretching stride strife
striker strikes strings stripe stripped stripper stripping strips strive striving stroke
strongest struck strung stumbling stun stung stunning stunt sturgeon style subconscious subs
subsidies subsidized suck sucked sucks sugars suggestion suing suite suits summed summers
sundays sung sunk superb supervise supported supporting supposedly surf surge surgeons suspected
suspects suspended suspense sustained sutton sven swam swap swapped swapping swat sway swear
swearing sweat sweating sweep sweeping sweeps sweets swept swine swipe switch switched switches
switching sword sworn syria tables tack tackle tackled tackling taco taft tagged tagging tags
tails tainted taker takers tale tales talked talking talks tall tame tamil tammy tangled tango
tank tanks tanya tanzania taped taper tapes taping tapped tara tart task tasked tasting tasty
tata tate taught taxes taxing teach teal teams tear tearing tease teased teasing techno teen
teens tees telling tells temperatures tempered tempo tempting tended tenders tending tenor tens
tensions tent tenth tents term terminal terminals terminate terra terror terry tesco tesla tess
testing texas thai thankful thanking thee theo thighs thine things thingy thinker thinkers
thinking thinner thirds thirteenth thistle thorn thorough thousands threads threat threats
thrill thrilled thrive thriving throats thunder thursdays ticket ticking ticks tide tides tied
tier ties tighten tightly tilt timed timer timers timmy timor tinder ting tinker tint tinted
tipped tipping tires tissues title titles tito tits toad toast tobias todd toddlers toilets
token tolerance tolerated toll tomas tomato tomb tommy tomorrows tone tones tong tongues toni
tonights tony tool topic topped topping tops torch toro torque tory toss totals tote tough
toughest toured touring towed towers towing town towns toxic traced traces tracey tracked
tracking tracks tract traction tracy trade trades trail trailing trained training trains trait
tram trance trans transparent trap trapped trapping traps trash trays tread treating treaty
trees trek tremendous trenches trending trent trey trick tricked trio trip tripping tristan
trolling troubled troubles trough trout troy truce trucking trucks trunks trusting trusts tube
tuck tucker tuesdays tumblr tumor tune tuned tuning turbo turbulent turf turin turk turkeys
turks turner twain tweed tweeting twin twisting tying type tyre tyres uncertain uncles
unconstitutional uncovered unexpected unfinished ungrateful unhealthy unions unloading unlocked
unresolved unsettling unsuitable unusually upbringing update updated uplifting uploading upsets
urgently usable user users ussr value valve vargas varies various vase vega veil vein vending
vera verge verse vigilant vile vine violence viral visibly visitor vista vital vitamin viva
voiced voicing volvo vouchers wade wage wager wages waist waited waiter waits waived wales
walker walled waller wallets walls wally walt walter wand wandered wanderers wandering wang
wanting ward warden ware warmed warn warner warp warped wars wary wash washer washes wasted
wasting watchers watches waters watt watts wave waves waving ways weaknesses wealthy weary
weaving wedding weddings wednesdays weeds weigh weighing weighs weights weir weirdo weld wells
welp west whale wheres wherever whew whipping whisper whispered whispering whispers whistles
whod wholl whopping whore whove wick wicked widen wider widow wifi wiggle wight wigs wilde
willing willow willy wind winding windows wines wing winged winger wingers winner winning
winnings wins winters wipe wipes wired wise wished witch withdraw withdrawal withdrawing wives
woes wolf wolfe wolff wolfgang women wonderfully wonders wong wooded woods woody wool word
worded wording worker workings works workshop worlds worm wounded woven wraps wreath wrecking
wrestler wrestlers wretched wright wrists writ write writer writes writing writings wrongs
wrought yarn yearly yearning yell yelled yells yesterdays yielding youngest youngster youthful
youths zambia zara zombies zone
"""
