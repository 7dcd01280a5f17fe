# the page
page-title = Brew sheet
page-sheet = What was said
page-language = Language
page-you-wrote = You wrote:
page-write-label = The next line
page-write-hint = Tea, vessel, size
page-write-on = In your own words
page-write = Write
page-write-full = One line holds no more than this; what was pasted may have been cut off.
page-choices = Choose
page-opening = Opening the sheet …
page-lost = No connection. What you write is kept and goes out when it is back.
page-waiting = waiting to go out
page-refused = could not go out – please write it again
page-left = Time left
page-pour-now = Pour now
page-ready-at = I call at
page-since = since then
page-sound = Sound and buzz when it is time to pour
page-sound-wake = Touch the sheet once, so that the sound may play.
page-print = Print this as a card
page-fresh = A fresh sheet for the next person
page-fresh-confirm = Clear this sheet from this device
page-telegram = Go on in Telegram
page-my-data = What is kept of me
page-elsewhere = This sheet on another device
page-elsewhere-show = Show a code for the other device
page-elsewhere-how = Open this page there, and type the code at its foot. It opens this sheet once, within five minutes.
page-elsewhere-type = A code from the other device
page-elsewhere-join = Open that sheet here
page-elsewhere-wrong = No sheet opens with that. The code may be used up or too old: ask for a new one there.
page-elsewhere-slow = Too many codes were tried. Please wait a minute.
page-from-label = From the label
page-no-script = To write here, please allow scripts for this page.
page-no-cookie = This page keeps your sheet by one cookie. Please allow it, and open the page again.
page-not-found = There is no such sheet here. The label or the link may be an old one.
page-failed = Something went wrong on our side. Please try again in a moment.
page-too-fast = That was a little too fast. Please wait a few seconds.
page-back = To the sheet
page-earlier = What was said before this is no longer shown here. “What is kept of me”, at the foot, has all that is kept.
page-file-gone = This file is no longer kept here. Ask for it again on the sheet.

# Mistakes of a brewing request
mistake-tea-missing = Say which tea, or at least which family.
mistake-tea-unknown = I don't know that tea. Give its family, or one of { $allowed }.
mistake-chart-unwritable = The chart cannot be written to { $file }. Name a file in a folder that is there.
mistake-tea-ambiguous = More than one tea fits: { $allowed }. Say which.
mistake-family-unknown = The family must be one of { $allowed }.
mistake-family-differs = { $tea } is of the family { $family }; leave the family out or give that one.
mistake-vessel-missing = Say which vessel: { $allowed }.
mistake-vessel-unknown = The vessel must be one of { $allowed }.
mistake-volume-missing = Say how many millilitres the vessel holds when full.
mistake-volume-out-of-range = The vessel must hold from { $least } to { $most } ml.
mistake-leaf-out-of-range = For this vessel the leaf must be from { $least } to { $most } g, so that it has room to open.
mistake-water-out-of-range = The water must be from { $least } to { $most } °C.
mistake-elevation-out-of-range = The elevation must be from { $least } to { $most } m.
mistake-guests-out-of-range = Guests must be a whole number from { $least } to { $most }.
mistake-strength-out-of-range = Strength must be from { $least } (light) to { $most } (strong); 1 is as the trade brews it.
mistake-style-unknown = The style must be one of { $allowed }.
mistake-style-needs-powder = Only powdered tea is whisked; leaf tea needs another style.
mistake-as-brewed-out-of-range = { $field } must be from { $least } to { $most }.
mistake-field-unknown = { $field } is not known here; allowed are { $allowed }.
mistake-field-missing = { $field } is missing.
mistake-text-expected = { $field } must be text.
mistake-unit-missing = { $said } of what? Write it with its unit, for example 95 °C, 120 ml or 5 g.
mistake-size-unknown = Fill it with water and pour that into a measuring jug, or weigh it: 1 g is 1 ml. Or choose what comes nearest.
mistake-number-expected = { $field } must be a number.
mistake-flag-expected = { $field } must be true or false.
mistake-list-expected = { $field } must be a list.
mistake-json-expected = Expected one JSON object.
mistake-flag-unknown = This is not one of { $allowed }, or its value is missing.
mistake-language-unknown = The language must be one of { $allowed }.

# the way in
hello = Hello. I work out how to brew your tea: how much leaf, how hot, how long. Tell me your tea and what you brew it in, for example “tieguanyin in a 110 ml gaiwan”.
hello-back = Hello. Which tea have you got, and what do you brew it in? Write it, or choose below.
hello-short = Tell me a tea and what you brew it in, or choose below.
# Said around a label and meaning nothing beside it: “ok, done”, “guide me please”.
said-around-labels = ok
    .typed = ok / okay / oke / alright / right / well / so / now / then / please / pls / yes / yep / yeah / sure / great / good / cool / fine / hi / thanks
# Said at any step and of anything: “done”. Where something else was asked, it answers that, and not the brew that goes on meanwhile.
said-at-any-step = done
    .typed = done / next / go / full / in / late / too late / too long / more / other / here / continue / wait / hold on / a moment / stop / end / enough / no more / that is enough / again / why / pause / finish / skip
# Said of the one that is chosen from a list: “I'll take the first”.
said-around-the-chosen = I'll take
    .typed = I'll take / I'll have / I'll do / we'll take / we'll do / I take / we take / I want / we want / I would like / I'd like / we'd like / let's take / let's do / let's go for / let's go with / give me / give us / book me for / book us for / book me on / book / put me down for / put us down for / sign me up for / sign us up for / make it / maybe / please / then / for me / for us / that is / it is
# Said of a list that is shown: the last of it, the first, the second.
said-for-last = the last
    .typed = the last / the last one / last one / the latest
said-for-1 = the first
    .typed = the first / the first one / first one / first / number one / no 1 / number 1 / option 1 / the 1st / 1st / 1st one / the top one
said-for-2 = the second
    .typed = the second / the second one / second one / second / number two / no 2 / number 2 / option 2 / the 2nd / 2nd / 2nd one
said-for-3 = the third
    .typed = the third / the third one / third one / third / number three / no 3 / number 3 / option 3 / the 3rd / 3rd / 3rd one
said-for-4 = the fourth
    .typed = the fourth / the fourth one / fourth one / fourth / number four / no 4 / number 4 / option 4 / the 4th / 4th one
said-for-5 = the fifth
    .typed = the fifth / the fifth one / fifth one / fifth / number five / no 5 / number 5 / option 5 / the 5th / 5th one
very-well = All right.
hello-again = I am still here. This is where we were:
choice-brew = Brew a tea
    .typed = brew / tea / start
choice-language = English / 中文
    .typed = language / 語言 / 语言
choice-shop = Talk to the shop
    .typed = shop / ask the shop / talk to a person
choice-english = English
choice-traditional = 繁體中文
choice-simplified = 简体中文
ask-language = Which language shall we speak?
language-changed = English it is.
nothing-to-read = I could not see any words in that.
not-understood = I did not understand that.
reads-two-languages = I only read English and Chinese. Of the rest I take what I know: a tea, a vessel, a number with its unit.
off-topic = That is outside my tea table; I only know brewing, care of tea things, and the shop.
about-me = I am this shop’s brewing helper: a program, no person. Tell me your tea and what you brew it in, and I work out leaf, water and times for just that; then I go through the brew with you, cup by cup. I remember how you like it, tell you of lessons, and pass on to the shopkeeper what I can’t answer.
you-are-welcome = You are welcome. Enjoy your tea.
until-next-time = Until next time. Enjoy your tea.
glad-it-tastes = Lovely. Tell me the tea and what you brewed it in, and I keep how it was made.
as-you-like = As you like.
tap-too-old = That choice belongs to something we have finished. Write to me, or choose below.
tap-already-so = It already is so.
nothing-before = There is nothing before this.
flow-changed = I was given new instructions meanwhile; what you told me is kept.
one-at-a-time = And when we have that, ask me the other once more: “{ $rest }”
ask-forget = Shall I forget everything about you – your vessels, taste, talks and questions? It can't be undone.
choice-forget = Forget everything
    .typed = yes / forget
choice-keep = Keep it
    .typed = no / keep
forgotten = Everything about you is gone from here, your questions to the shop too. What was sent into a chat stays in that chat.
kept = All is kept.

# the main job
ask-tea = Which tea is it? Write its name, or choose its family.
ask-tea-again = Write the tea's name, or choose its family:
brew-of-family = Of that kind I can plan these; what is on the shelf today the shop knows. Which shall it be?
ask-which-of-these = More than one tea fits. Which one do you mean?
ask-which-to-plan = Which one shall I plan whole?
ask-family-of-unknown = I don't know “{ $unknownTea }”. Which family is it? Then I can still work it out.
ask-family = Which family of tea is it?
ask-vessel = What will you brew in?
ask-vessel-of-these = All of these will do; the smaller one gives more and livelier cups. Which one shall it be?
ask-vessel-nearest = That one I don't know. Choose what comes nearest: how big it is, and whether it has a lid or a strainer.
ask-other-vessel = One of these? You can also just describe it.
ask-size = How much does it hold when full?
ask-change = What shall we change?
ask-leaf = How many grams of leaf will you use?
ask-water = How hot is your water?
choice-family = { FAMILY($item) }
choice-tea = { TEA($item) }
choice-vessel = { VESSEL($item) }
choice-size = { ML($item) }
choice-other-tea = Another tea
choice-other-vessel = Something else
choice-first-vessels = Back to the first list
choice-why = Why these numbers
    .typed = why / why these
choice-change = Change something
    .typed = change
choice-another-tea = Another tea
choice-plan-again = Show the plan
    .typed = plan / the plan / show me the plan / see the plan / show plan
choice-leaf-so-much = { GRAMS($soMany) } of leaf
    .typed = grams / leaf / of leaf / grams of leaf / g / the leaf
choice-so-many-infusions = { NUMBER($soMany) } infusions
    .typed = infusions / steeps / steepings / rounds / times / cups
choice-back-to-plan = Leave it as it is
choice-change-tea = The tea
choice-change-vessel = The vessel
choice-change-size = Its size
choice-change-leaf = How much leaf
choice-change-water = How hot
choice-lighter = Lighter
choice-stronger = Stronger
choice-you-say = You say
brew-by-its-look = By how it looks, most likely:
brew-so-far = { $tea ->
    [none] { FAMILY($family) }
   *[other] { TEA($tea) }
}{ $vessel ->
    [none] { "" }
   *[other] { " " }· { VESSEL($vessel) }
}{ $volumeMl ->
    [none] { "" }
   *[other] { " " }· { ML($volumeMl) }
}
brew-so-far-vessel = { $vessel ->
    [none] { ML($volumeMl) }
   *[other] { VESSEL($vessel) }{ $volumeMl ->
        [none] { "" }
       *[other] { " " }· { ML($volumeMl) }
    }
}
brew-comes-lighter = Lighter, then.
brew-comes-stronger = Stronger, then.
brew-title = { TEA($tea) } · { VESSEL($vessel) } · { ML($volumeMl) }
brew-title-family = { FAMILY($family) } · { VESSEL($vessel) } · { ML($volumeMl) } (as this family usually is)
brew-as-kept = (As you keep it for this tea. Anything else you tell me changes it.)
brew-kept = Kept as your usual for { TEA($tea) }: next time its name is enough. “My tea” shows it and lets it go again.
brew-kept-family = Kept as your usual for { FAMILY($family) }: next time its name is enough. “My tea” shows it and lets it go again.
nothing-to-keep = There is nothing to keep yet: tell me a tea and what you brew it in.
brew-title-bowl = { $tea ->
    [none] { FAMILY($family) }
   *[other] { TEA($tea) }
} · whisked in a bowl
brew-as-last-time = (Your vessel from last time. Tell me if it is another.)
brew-as-in-the-shop = (As the shop brews it. Tell me your own vessel below.)
brew-leaf = Leaf: { GRAMS($plan-leafG) }, about { SPOONS($plan-spoons) } level tsp; dry, { $plan-fill }.
brew-bags = { $plan-bags ->
    [1] One tea bag
   *[other] { $plan-bags } tea bags
 }: about { GRAMS($plan-leafG) } of small leaf, which gives quickly.
brew-spoonful = A level teaspoon of it is about { GRAMS($spoonG) }{ $spoons ->
    [1] .
   *[other] ; { SPOONS($spoons) } of them are about { GRAMS($leafG) }.
}
brew-leaf-enough = Yes: { GRAMS($plan-leafG) } is what this is planned with.
brew-no-scale = Without a scale: fill the teaspoon and strike it off level with a knife; that is near enough.
brew-leaf-powder = Powder: { GRAMS($plan-leafG) }, about { SPOONS($plan-spoons) } level tsp, sieved, with { ML($plan-waterMl) } of water; whisk until it foams.
brew-leaf-little = That is little leaf for this vessel ({ GRAMS($usualG) } is usual): the cups come out at about { PERCENT($strength) } of the usual strength.
brew-leaf-little-fits = For the usual strength brew it in about { ML($fitsMl) }, or take more leaf.
brew-leaf-little-longer = Or let it draw longer and fewer times, { DURATIONS($times) }: each about { NUMBER($strength, maximumFractionDigits: 1) } times as strong.
brew-leaf-much = That is much leaf for this vessel ({ GRAMS($usualG) } is usual): even with the shortest times the cups come out about { NUMBER($strength, maximumFractionDigits: 1) } times as strong as usual.
brew-leaf-much-fits = For the usual strength brew it in about { ML($fitsMl) }, or take less leaf.
choice-longer-fewer = Longer, fewer times
    .typed = simpler / a simpler way / something simpler / is there a simpler way / make it simpler / easier / less work / fewer steps / longer and fewer / fewer and longer / longer but fewer / fewer infusions
brew-fill-bottom = it just covers the bottom
brew-fill-tenth = it fills about a tenth
brew-fill-fifth = it fills about a fifth
brew-fill-quarter = it fills about a quarter
brew-fill-third = it fills about a third
brew-fill-half = it fills about half
brew-fill-more = it fills more than half
brew-water = Water: { DEGREES($waterC, $unit) }; heat { ML($kettleMl) } in all.
brew-water-usual = Water of about { DEGREES($waterC, $unit) } is usual; the rest depends on what you brew it in.
brew-dose-right = { $is ->
    [more] { GRAMS($leafG) } is more than the usual { GRAMS($usualG) } and will do: the times are shorter for it
    [less] { GRAMS($leafG) } is less than the usual { GRAMS($usualG) } and will do: the times are longer for it
   *[same] { GRAMS($leafG) } is right
}.
brew-heat-right = { DEGREES($toldC, $unit) } is right for it{ $isSame ->
    [yes] {""}
   *[no] : about { DEGREES($waterC, $unit) } is usual
}.
brew-heat-doubted = { DEGREES($toldC, $unit) } is { $is ->
    [cooler] cooler than the usual { DEGREES($waterC, $unit) }: it draws slower
   *[hotter] hotter than the usual { DEGREES($waterC, $unit) }: it draws faster, and turns bitter sooner
}. To brew with that, say “{ DEGREES($toldC, $unit) }”.
brew-heat-hotter = { DEGREES($toldC, $unit) } is hotter than the usual { DEGREES($waterC, $unit) } and does no harm: it draws faster, and I reckon with that.
brew-heat-hot = { DEGREES($toldC, $unit) } is hot for it; about { DEGREES($waterC, $unit) } is usual, and hotter it turns bitter sooner. With it the times are shorter.
brew-heat-cooler = { DEGREES($toldC, $unit) } is cooler than the usual { DEGREES($waterC, $unit) }: it draws slower, and I reckon with that.
brew-boils-here = Where you are water boils at about { DEGREES($boilsAtC, $unit) }; I reckon with that from now on.
brew-boils-enough = Where you are water boils at about { DEGREES($boilsAtC, $unit) }. That is hot enough: about { DEGREES($waterC, $unit) } is usual.
brew-boils-short = Where you are water boils at about { DEGREES($boilsAtC, $unit) }; about { DEGREES($waterC, $unit) } is usual. Pour it straight off the boil: it draws slower, and I reckon with that.
brew-ahead = { $nth ->
    [1] For example: { VESSEL($vessel) } { ML($volumeMl) }
   *[other] Or: { VESSEL($vessel) } { ML($volumeMl) }
}, { GRAMS($leafG) } of leaf (about { SPOONS($spoons) } level tsp), { DEGREES($waterC, $unit) }, { $count ->
    [1] { DURATION($firstS) }, once
    [2] { DURATIONS($times) }
    [3] { DURATIONS($times) }
   *[other] { DURATIONS($times) } and so on, { $count } infusions
}.
brew-lasts = { $nth ->
    [1] { $n ->
        [0] { GRAMS($stockG) } is less than one brew wants
        [one] { GRAMS($stockG) } is enough for one brew
       *[other] { GRAMS($stockG) } is enough for about { $n } brews
    }
   *[other] { $n ->
        [0] Nor is it enough
        [one] Or for one
       *[other] Or for about { $n }
    }
}: { VESSEL($vessel) } { ML($volumeMl) }, { GRAMS($leafG) } each time.
brew-water-so-hot = { ML($waterMl) } of water at { DEGREES($waterC, $unit) }:
brew-leaf-without = No scale is needed: how much leaf it is, I tell in spoons too.
brew-water-without = It works without a thermometer: how long the boiled kettle stands, or how much cool water goes in, is told with every tea.
brew-water-stood = A boiled kettle of { ML($kettleMl) } that has stood { DURATION($seconds) } with its lid off is at about { DEGREES($waterC, $unit) } (± { SPREAD($uncertaintyC, $unit) }); with the lid on it is hotter.
brew-water-stood-right = That is near enough for this tea.
brew-water-stood-hot = For { DEGREES($wantedC, $unit) } pour { ML($coolMl) } of cool water into the kettle, or let it stand { DURATION($seconds) } more.
brew-water-stood-cool = { DEGREES($wantedC, $unit) } is wanted: heat it up once more. Or write “at { DEGREES($waterC, $unit) }”, and I reckon with that.
brew-kettle-near = Take { DEGREES($settingC, $unit) }: near enough to the { DEGREES($wantedC, $unit) } that are wanted.
brew-kettle-hotter = Take { DEGREES($settingC, $unit) }. For { DEGREES($wantedC, $unit) } pour { ML($coolMl) } of cool water to { ML($waterMl) } of it, or let it stand { DURATION($seconds) } with its lid off.
brew-kettle-cooler = Take { DEGREES($settingC, $unit) }, the hottest it has; { DEGREES($wantedC, $unit) } would be usual. Write “at { DEGREES($settingC, $unit) }”, and I reckon longer times with it.
brew-water-boiling = Water: just off the boil ({ DEGREES($waterC, $unit) } where you are); heat { ML($kettleMl) } in all.
brew-water-cold = Water: cold, { DEGREES($waterC, $unit) }, { ML($waterMl) }; keep it in the refrigerator all the while.
brew-warm = First warm the vessel with hot water and pour it out.
brew-rinse = Rinse the leaf { DURATION($plan-rinseS) } with the same water; don't drink that.
brew-time-once = Time: { DURATION($plan-firstS) }, once.
brew-follows = Whatever you change, I reckon all the numbers anew; these go with the plan as it stands.
brew-steeped-instead = Steeped instead of simmered:
brew-times = Times: { DURATIONS($plan-times) }. That is { $plan-count } infusions.
brew-so-many-cups = For { NUMBER($n) } of them put the same into each, { GRAMS($plan-leafG) } of leaf and { ML($plan-waterMl) } of water: { GRAMS($leafG) } of leaf in all. The times stay as they are.
brew-yield = Each infusion pours about { ML($plan-pouredMl) }, { ML($plan-pouredInAllMl) } in all.
brew-leaf-stays = The leaf stays in: drink down to a third, then fill up again.
brew-leaf-stays-hot = The leaf stays in, in water that stays hot: drink down to a third, then fill up again. Carried about for hours it comes to about { NUMBER($share, maximumFractionDigits: 1) } times the strength: then { GRAMS($lessG) } of leaf is enough, or pour the tea off into the flask.
brew-leaf-stays-hours = The leaf stays in: with so little of it the flask may be carried about for hours.
choice-leave-leaf-in = Leave the leaf in
    .typed = leaves stay in / leave the leaves in / leave it in / leaves in
brew-leaf-out = Nothing holds the leaf back in a mug: when the time is up, pour the tea off into another cup. If you have no other, leave the leaf in and drink down to it.
brew-leaf-bag-out = When the time is up, take the bag out and let it drip, without squeezing. A bag gives one cup.
brew-caffeine = Your plan as it stands: about { NUMBER($usualMg, maximumFractionDigits: 0) } mg of caffeine in all ({ NUMBER($leastMg, maximumFractionDigits: 0) } to { NUMBER($mostMg, maximumFractionDigits: 0) }, as leaves differ).
brew-no-shorter = Shorter can't be poured with this leaf; take less leaf, or cooler water.
brew-why-asked = How much leaf, how hot and how long follow from the tea, the vessel and its size; that's why I ask, and for nothing else.
brew-comes-with-it = I tell you that with the plan; this is all I need to know first.
brew-size-taken = I take it as { ML($volumeMl) }; if it holds more or less, write it with its unit, for example “120 ml”.
ask-tea-unsure = No matter, the leaf tells: little balls or long dark twists are mostly oolong, fine and black is black tea, green is green tea, silvery buds are white tea, a pressed cake is mostly puer, flowers are scented or herbal. Choose what comes nearest, or tell me how it looks.
brew-how-many = { $plan-count ->
    [1] Once, with this leaf in this vessel.
   *[other] { $plan-count } times; after that little is left in the leaf.
}
brew-refills = { $refills ->
    [1] Refill it once; after that there is little left in the leaf.
   *[other] Refill it { $refills } times; after that there is little left in the leaf.
}
brew-leaf-waits = Pour all the tea off each time; the leaf stays in the vessel and waits for the next water.
brew-leaf-off = When the time is up, take the leaf out, or pour all the tea off it.
brew-basket-out = When the time is up, lift the basket out, let it drip, and set it on a saucer; the leaf waits there for the next water.
brew-not-bitter = Poured in time it should come out in balance. If a cup is too strong or too weak for you, say so, and I change the times or the water.
brew-bitter-stays = With the leaf in it grows stronger as long as it stands, and bitter in the end: drink down to it in time and top up, or take the leaf out. Less leaf stands longer.
brew-bowls = For { NUMBER($guests) }: whisk a bowl for each, { GRAMS($leafG) } of powder in all.
brew-near-enough = Near enough will do: two degrees, a tenth of the leaf or a tenth of the time more or less you will hardly taste.
brew-as-before = As it was before, then.
brew-changed-as-asked = Only what you asked for; the other figures follow from it.
brew-as-first = This is the plan as it was first; nothing of it has been changed.
ask-number-of-what = { NUMBER($soMany) } of what?
brew-caffeine-times = Brewed { NUMBER($n) } times over, this plan comes to about { NUMBER($usualMg, maximumFractionDigits: 0) } mg of caffeine ({ NUMBER($leastMg, maximumFractionDigits: 0) } to { NUMBER($mostMg, maximumFractionDigits: 0) }, as leaves differ).
brew-caffeine-over = That is more than the 400 mg a day that EFSA holds to be without concern for healthy adults: make it fewer, or use the same leaf again. With a sensitive heart, in pregnancy or with medicines, ask a doctor.
brew-caffeine-near = With strong leaf that may pass the 400 mg a day that EFSA holds to be without concern for healthy adults, all drinks counted, and 200 mg at once: spread it over the day, or make it fewer. With a sensitive heart, in pregnancy or with medicines, ask a doctor.
brew-caffeine-within = That stays below the 400 mg a day that EFSA holds to be without concern for healthy adults, all drinks counted; at once no more than 200 mg. With a sensitive heart, in pregnancy or with medicines, ask a doctor.
brew-few = { $n ->
    [one] One infusion is fine too: stop after the first.
   *[other] { $n } infusions are fine too: keep to the times of the first { $n } and stop there. The leaf holds more, if you change your mind.
}
brew-once = Take the first time then, { DURATION($plan-firstS) }, and let that be all.
brew-once-small = A small vessel gives its tea in many short pours; one would leave most of it in the leaf. Say “one long steep”, and I work it out with less leaf.
brew-in-plain = In plain words: about { SPOONS($plan-spoons) } level teaspoons of leaf go in, the water on it; wait { DURATION($plan-firstS) }, then pour the tea off.
brew-in-plain-stays = In plain words: about { SPOONS($plan-spoons) } level teaspoons of leaf go in, the water on it; wait { DURATION($plan-firstS) } and drink, the leaf stays in.
brew-in-steps = “Guide me” takes you through it one step at a time, and you may ask what any word means.
brew-mug-taken = I take an ordinary mug of 300 ml, as most people have one; tell me if you would rather use something else.
brew-vessel-for = { $tea ->
    [none] { FAMILY($family) }
   *[other] { TEA($tea) }
}: { $family ->
    [green] a tall glass shows the leaf and is simply topped up; a porcelain gaiwan or glass pot is as good. A flask stews it
    [yellow] a tall glass shows the leaf and is simply topped up; a porcelain gaiwan or glass pot is as good. A flask stews it
    [white] a porcelain gaiwan, or a glass pot; aged white does well in a big pot too
    [oolong] a porcelain gaiwan or a small clay pot of 100 to 150 ml, for many short infusions
    [black] a porcelain gaiwan or teapot; a mug with a strainer does too
    [dark] a clay pot or a gaiwan; ripe tea stands a flask as well
    [scented] a porcelain gaiwan, a porcelain pot or a glass, but no clay pot, which keeps the scent
    [matcha] a wide bowl with a bamboo whisk
   *[other] a glass pot or a mug with a strainer
}. Say which you have and how much it holds, and I’ll work it out.
brew-simplest = That is the simplest way already: leaf in, water on, and off it when the time is up. Half a minute more or less only makes it stronger or weaker.
brew-simplest-stays = That is the simplest way already: the leaf stays in, you drink and top up, and nothing has to be timed closely.
brew-stews = Green and yellow leaf stews in a flask and turns dull: better pour it off when the time is up, or take a glass.
brew-about-tea = { TEA($tea) }, as far as I know it: { FAMILY($family) }, { brew-leaf-form }, brewed with water of about { DEGREES($waterC, $unit) }.
brew-rinse-of-it = { $tea ->
    [none] { FAMILY($family) }
   *[other] { TEA($tea) }
}: rinse it once for about { DURATION($seconds) } and pour that away; it wakes the leaf and takes off dust. In a mug or a large pot it may be left out.
brew-rinse-of-none = { $tea ->
    [none] { FAMILY($family) }
   *[other] { TEA($tea) }
} needs no rinse; you would pour the best away.
brew-caffeine-of-it = { $tea ->
    [none] { FAMILY($family) }
   *[other] { TEA($tea) }
}: a first cup, { GRAMS($leafG) } in { ML($ml) }, holds about { NUMBER($mg, maximumFractionDigits: 0) } mg of caffeine ({ NUMBER($leastMg, maximumFractionDigits: 0) } to { NUMBER($mostMg, maximumFractionDigits: 0) }, as leaves differ).
brew-caffeine-of-none = { $tea ->
    [none] { FAMILY($family) }
   *[other] { TEA($tea) }
}: no caffeine.
brew-left-open = About that I have nothing sure to say: for a person’s answer, say “talk to the shop”. The brew itself I work out.
brew-what-tea = { TEA($tea) }, by its family: { FAMILY($family) }.
brew-similar = Nearest to { TEA($tea) } in its family, { FAMILY($family) }: { EITHER($told) }. Name one, and I plan it; whether it is in the shop just now, the shop tells.
brew-similar-one = { TEA($tea) } ({ $shape ->
    [same] the same shape of leaf
   *[other] another shape of leaf
}, { $water ->
    [same] water about as hot
    [cooler] cooler water{ $roast ->
        [true], as for less roast
       *[false] {""}
    }
   *[hotter] hotter water{ $roast ->
        [true], as for more roast
       *[false] {""}
    }
})
brew-compared = Side by side · { VESSEL($vessel) } · { ML($volumeMl) }{ $isOwn ->
    [yes] {""}
   *[no] {" "}(as an example)
}
brew-leaf-form = { $form ->
    [ball-rolled] leaf rolled into balls
    [pellet] leaf rolled into pellets
    [twisted-strip] leaf twisted into strips
    [large-twisted] large twisted leaf
    [long-open] long open leaf
    [needle] leaf like needles
    [bud] buds
    [flat] flat leaf
    [curled] curled leaf
    [broken] broken leaf
    [granule] granules
    [compressed] pressed leaf
    [powder] powder
   *[flower] flowers
}
brew-compared-one = { TEA($tea) } ({ FAMILY($family) }, { brew-leaf-form }): { GRAMS($leafG) }, { DEGREES($waterC, $unit) }, the first { DURATION($firstS) }, { $count ->
    [1] once
   *[other] { $count } infusions
}.
brew-each = { TEA($tea) }: { GRAMS($leafG) } of leaf (about { SPOONS($spoons) } level tsp), { DEGREES($waterC, $unit) }, { $count ->
    [1] { DURATION($firstS) }, once
    [2] { DURATIONS($times) }
    [3] { DURATIONS($times) }
   *[other] { DURATIONS($times) } and so on, { $count } infusions
}.
brew-compared-alike = So they are brewed alike; what sets them apart is the taste.
brew-same-family = Much the same: I reckon { FAMILY($family) } by its leaf, not by its years. Old or pressed leaf mostly bears water up to boiling; taste the first cup and tell me.
brew-compared-taste = How each tastes and where it grew, the shop can tell: say “talk to the shop”. Name one, and I plan it.
brew-similar-unsure = Which of them is the lighter or the darker one I can't tell you from here; the shop can.
brew-similar-none = I know no other tea of the family of { TEA($tea) }; the shop may.
brew-not-followed = I'm not sure what you mean there.
# Asked beside a plan. What the rinse is for, what there is when all has been poured, and too long: common practice, no source
brew-strength-usual = As strong as it is usually brewed: about { NUMBER($first, maximumFractionDigits: 1) } mg out of the leaf in each ml of the first cup{ $count ->
    [1] .
   *[other] , { NUMBER($last, maximumFractionDigits: 1) } in the last.
 } Say “stronger” or “lighter”, and I work it out anew.
brew-strength-more = Stronger than usual, as you wished: about { NUMBER($first, maximumFractionDigits: 1) } mg out of the leaf in each ml of the first cup{ $count ->
    [1] .
   *[other] , { NUMBER($last, maximumFractionDigits: 1) } in the last.
 }
brew-strength-less = Lighter than usual, as you wished: about { NUMBER($first, maximumFractionDigits: 1) } mg out of the leaf in each ml of the first cup{ $count ->
    [1] .
   *[other] , { NUMBER($last, maximumFractionDigits: 1) } in the last.
 }
brew-rinse-why = { DURATION($plan-rinseS) } of hot water, poured away: it takes off dust, and rolled or pressed leaf begins to open. If you would rather not, say “without a rinse”.
brew-rinse-once = Once: { DURATION($plan-rinseS) } of hot water, poured away and not drunk; the first infusion after it is for drinking.
brew-cake = { $family ->
    [dark] Then pry off what this pot wants and loosen it before it goes in. Ask how to break a cake, and I tell you.
    [white] Then pry off what this pot wants and loosen it before it goes in. Ask how to break a cake, and I tell you.
   *[other] Pressed cakes are mostly puer or white tea. If yours is, write its name, and I plan that one.
  }
brew-rinse-may-skip = You may leave it out: the first cup then has a little of the tea dust, and tight leaf opens a little later. Say “without a rinse”, and I plan without it.
brew-rinse-not-needed = No rinse this way: the first infusion is for drinking. If you like, pour hot water on and off again within seconds.
brew-rinse-forgotten = No harm done: unrinsed it may carry a little tea dust and open a little slower, nothing more.
brew-rinse-water = Pour it away; over the cups it warms them at least. There is dust in it.
brew-no-rinse = Without a rinse, as you wish.
brew-half-full = Half full: { GRAMS($leafG) } of leaf in { ML($waterMl) } of water, and much the same times.
brew-warm-why = With hot water, poured out before the leaf goes in: a cold wall takes several degrees from the first infusion.
brew-warm-not-needed = It need not be warmed for this; a swirl of hot water, poured out again, does no harm.
brew-fill-up = About { ML($plan-waterMl) } of water each time; with the leaf it stands a little below the rim.
brew-fill-part = About { ML($plan-waterMl) } of water each time, and no more: for so little leaf the vessel isn't filled.
brew-any-vessel = Anything that bears boiling water and can be poured from, or drunk from with the leaf in it; the numbers follow the vessel.
brew-size-to-the-brim = All it holds, to the brim, without leaf. The room for leaf and rim I leave myself.
brew-size-any-unit = Millilitres, fluid ounces, cups or pints, as you like.
brew-for-whole = { $plan-count ->
    [1] For all of it: { GRAMS($plan-leafG) } of leaf, once, however many drink of it.
   *[other] For all of it: { GRAMS($plan-leafG) } of leaf go in once and stay in for all { $plan-count } infusions. Each pours about { ML($plan-pouredMl) }, to share among those who drink.
}
brew-ounces = { NUMBER($leafOz, maximumFractionDigits: 2) } oz of leaf, { NUMBER($waterOz, maximumFractionDigits: 1) } fl oz of water each time: 28.35 g are an ounce of leaf, 29.57 ml a US fluid ounce of water.
# Common practice, no source
brew-in-bowl = A bowl I reckon as a mug: open and without a lid.
brew-in-saucepan = A saucepan does for a pot: heat the water in it, take it off the heat, then put in the leaf and the lid on, and pour through a sieve. Count the water you pour as its size.
brew-in-iron-pot = Iron takes much heat from the water, and I reckon with that: warm it well first, and never put an enamelled one on the stove.
brew-in-jar = Few jars are made for boiling water, so one may crack: leave one with a chip or a scratch, warm it with hot tap water first, stand it on wood or a cloth, pour slowly, and let it stand until it can be touched. A mug is safer.
brew-no-coffee-maker = Leaf doesn't go into a coffee maker: it swells, and may block what lets the steam out. Heat the water in it at most, and brew in anything else that bears boiling water: a mug, a jug, a pot.
brew-leaf-dry = Dry leaf, as it comes out of the bag, weighed before any water is on it. Wet leaf weighs several times as much.
brew-in-all = The leaf draws { DURATION($plan-allS) } in all { $plan-count } infusions together, the first cup is there after { DURATION($plan-firstS) }. Heating the water, pouring and drinking come on top, and you may stop after any cup.
brew-ending = After { $plan-count ->
    [1] one infusion
   *[other] { $plan-count } infusions
 } there is little left. You may go on while you like what comes, each time much longer; when it tastes of hot water, it is over.
brew-ending-once = Once: a second cold infusion comes out thin.
brew-too-long = It only grows stronger and more bitter: pour it off as soon as you notice, and thin it with hot water until you like it. The next one keeps to its time again.
brew-too-long-stays = It grows stronger: top it up with hot water. That is all it takes.
brew-too-long-cold = A few hours more in the refrigerator only make it stronger; thin it with cold water. Take the leaf out, and drink it within a day.
brew-about-more = Where it grew and how it tastes the shop knows better than I do: say “talk to the shop”.
brew-drawn-stronger = After { DURATION($seconds) } instead of { DURATION($plannedS) } the first cup is about { NUMBER($share, maximumFractionDigits: 1) } times as strong as planned.
brew-drawn-weaker = After { DURATION($seconds) } instead of { DURATION($plannedS) } the first cup has about { PERCENT($share) } of the strength planned.
brew-drawn-as-planned = That is just the time it is planned with.
brew-drawn-alike = { DURATION($seconds) } instead of { DURATION($plannedS) }: you will hardly taste a difference in the first cup.
brew-age = I don't reckon with the years: brew it as above, and tell me how it tastes.
brew-infusion-later = Nothing is changed yet: when infusion { NUMBER($n) } comes, say “shorter” or “longer”, and I do it then.
brew-weighed-hotter = As reckoned is best to begin with: { DEGREES($plannedC, $unit) }. At { DEGREES($waterC, $unit) } it gives faster, smells higher and turns bitter sooner; the times would be { DURATIONS($times) }. If you want that, say “hotter”.
brew-weighed-cooler = As reckoned is best to begin with: { DEGREES($plannedC, $unit) }. At { DEGREES($waterC, $unit) } it is softer and sweeter, with less scent; the times would be { DURATIONS($times) }. If you want that, say “cooler”.
brew-weighed-more-leaf = { GRAMS($plannedG) } is what this vessel wants. With { GRAMS($leafG) } the times would be { DURATIONS($times) }, { $alike ->
    [yes] and the cup as strong as before
   *[no] and the first cup { NUMBER($share, maximumFractionDigits: 1) } times as strong
}. If you want that, say “more leaf”.
brew-weighed-less-leaf = { GRAMS($plannedG) } is what this vessel wants. With { GRAMS($leafG) } the times would be { DURATIONS($times) }, { $alike ->
    [yes] and the cup as strong as before
   *[no] and the first cup would have { PERCENT($share) } of the strength
}. If you want that, say “less leaf”.
brew-weighed-longer = Try the times above first. Longer, { DURATIONS($times) }, makes the first cup { NUMBER($share, maximumFractionDigits: 1) } times as strong, and more bitter. If you want that, say “longer”.
brew-weighed-shorter = Try the times above first. Shorter, { DURATIONS($times) }, leaves the first cup at { PERCENT($share) } of the strength. If you want that, say “shorter”.
brew-weighed-stronger = It is reckoned for the usual strength; taste it first. Stronger, the first cup would be { NUMBER($share, maximumFractionDigits: 1) } times as strong, with { GRAMS($leafG) } of leaf and { DURATIONS($times) }. If you want that, say “stronger”.
brew-weighed-lighter = It is reckoned for the usual strength; taste it first. Lighter, the first cup would be at { PERCENT($share) } of the strength, with { GRAMS($leafG) } of leaf and { DURATIONS($times) }. If you want that, say “lighter”.
brew-weighed-so-much-leaf = The times are reckoned for { GRAMS($plannedG) }. With { GRAMS($leafG) } they would be { DURATIONS($times) }, { $alike ->
    [yes] and the cup as strong as before
   *[no] and the first cup would have { PERCENT($share) } of the strength
}. If you want that, say “{ GRAMS($leafG) }”.
brew-weighed-so-hot = The times are reckoned for { DEGREES($plannedC, $unit) }. At { DEGREES($waterC, $unit) } they would be { DURATIONS($times) }; hotter water gives faster and turns bitter sooner. If you want that, say “{ DEGREES($waterC, $unit) }”.
brew-weighed-no-further = No need, and it hardly goes further that way with this leaf and this vessel.
brew-begin-when = Good. Write “guide me” when the water is hot, or just “filled” once it is on the leaf, and I keep the time.
brew-still-there = Your plan stands as above.
brew-calls-cold = I can: say “guide me”, tell me when it is in the refrigerator, and I call you here when it is ready, only not at night.
brew-calls = I can: say “guide me”, tell me when the water is on the leaf, and I call you here when it is time.
brew-no-further = It goes no further that way with this leaf and this vessel.
brew-stays-warm-lidded = With the tea in it and the lid on it is down to { DEGREES($drunkFromC, $unit) } after about { DURATION($drunkAfterS) } and lukewarm, { DEGREES($lukewarmC, $unit) }, after about { DURATION($lukewarmAfterS) }, in a room of { DEGREES(20, $unit) }; I reckon that from its size and wall, give or take a third. Pour the tea off the leaf, or it draws on; a cosy or a warmed flask keeps it longer.
brew-stays-warm-open = With the tea in it, it is down to { DEGREES($drunkFromC, $unit) } after about { DURATION($drunkAfterS) } and lukewarm, { DEGREES($lukewarmC, $unit) }, after about { DURATION($lukewarmAfterS) }, in a room of { DEGREES(20, $unit) }; I reckon that from its size and wall, give or take a third. A saucer on top or a warmed flask keeps it longer.
brew-stays-warm-insulated = Closed, it keeps the tea above { DEGREES($drunkFromC, $unit) } for about { DURATION($drunkAfterS) }, give or take a third, if it is a good one. Pour the tea off the leaf before you fill it, or it stews; once it is only lukewarm, don't keep it for hours.
brew-size-for-leaf = So much leaf wants about { ML($volumeMl) }. This is the plan for that size; a little more or less makes it a little lighter or stronger.
infusion-time = Infusion { $n }: { DURATION($infusion-seconds) }.
mistake-no-such-infusion = This plan has { $most } infusions.
standing-answer = { ANSWER($answer) }
standing-answer-or-shop = If that is not what you asked, say “talk to the shop”.
safety-unknown = I would rather not guess about health or safety. Please ask a doctor or pharmacist if it concerns your health.
answer-none-yet = There is no standing answer to that, and as you are the shop nobody else is asked.
ask-when-answered = The shop has your question and answers in its own time; I can't promise when. The answer comes here by itself, you need not wait.
sorry-for-that = I am sorry. Say “talk to the shop” and write what went wrong: a person answers.
ask-pass-on = I can't answer that well. Shall I pass it to the shop? The answer comes here.
choice-pass-on = Pass it to the shop
    .typed = yes / pass it on / yes please / tell them / yes tell them / please tell them / let them know / yes let them know / ask them / ask / please ask / please do / ok ask them / go on then / ask the shop / yes ask them / yes pass it on / yes ask the shop / please pass it on / sure ask them / could you ask / can you ask them
choice-leave-it = Leave it
    .typed = no / no thanks / don't / don't pass it on / no don't pass it on / don't ask them / no need / no need to ask / don't bother / no don't bother
choice-never-mind = Never mind
    .typed = no / nothing
ask-question = What shall I pass on? Write it in one message.
ask-that = “{ $lastAsked }” – shall I pass that on? To ask something else, write it in one message.
choice-pass-that-on = Pass that on
    .typed = yes / yes please / ask that / pass it on / please do / ask them / ask them that / yes ask them / yes pass it on / that / that one
choice-ask-else = Something else
    .typed = no something else / another question / a different question
passed-on = Passed to the shop. They answer in their own time; the answer comes here.
lesson-to-shop = The shop looks after lessons itself. Shall I pass your question on?
# with a booking: the file for the student's own calendar
lesson-calendar = For your calendar
lesson-calendar-cancelled = Takes it out of your calendar
lesson-calendar-notes = { $teacher ->
    [none] { "" }
   *[other] With { $teacher }.
 } { $bring ->
    [none] { "" }
   *[other] To bring: { $bring }.
 }


# the house itself
house-unknown-tap = That choice is no longer open. Please write what you would like instead.
house-stumbled = I stumbled over that message, sorry. It is noted; please try it in other words.
house-wordless = I had something to tell you here and could not put it into words, sorry. The shop is told of it. If it was urgent, such as a brew under way or a lesson soon, please go by what you know already, or ask the shop.
house-rung = { DURATION($seconds) }

# the check of the flow files
flows-checked = { $flows } flows, { $places } places, { $sentences } sentences: nothing wrong.

# over the infusion ladder
ladder-title = Infusions

# names of vessels, families and ways of brewing
vessel-gaiwan = Gaiwan
vessel-clay-pot = Clay pot
vessel-porcelain-pot = Porcelain pot
vessel-glass-pot = Glass pot
vessel-metal-pot = Metal pot
vessel-iron-pot = Iron pot
vessel-saucepan = Saucepan
vessel-kyusu = Kyusu
vessel-mug = Mug
vessel-infuser-mug = Mug with a basket
vessel-french-press = French press
vessel-thermos = Thermos
vessel-tumbler = Glass
vessel-jar = Jar
vessel-cold-jar = Jar in the refrigerator
family-green = Green tea
family-yellow = Yellow tea
family-white = White tea
family-oolong = Oolong
family-black = Black tea
family-dark = Dark tea (puer)
family-scented = Scented tea
family-herbal = Herbal tea
family-matcha = Matcha
style-gongfu = small pot, many infusions
style-western = big pot or mug
style-grandpa = leaves left in the glass
style-cold = cold in the refrigerator
style-whisked = whisked
style-cupping = tasting for comparison

# Cautions of a brew, by id. Figures: hot water, Moritz and Henriques; very hot drinks, IARC Monographs 116 (2016);
# caffeine, EFSA Journal 2015;13(5):4102; cold infusions, FDA Food Code (from memory)
caution-keep-cold = Careful: keep it in the refrigerator at 5 °C or below all the while, in a clean jar, and drink it within a day.
caution-flower-allergy = Careful: leave it if you are allergic to flowers of the daisy family or to pollen; ask a doctor if unsure.
caution-herb-allergy = Careful: leave it if you are allergic to this plant or its kin, be it flower, pollen or grain; ask a doctor if unsure.
caution-hot-water = Careful: the water scalds. Keep it away from children and pour slowly.
caution-very-hot-drink = Careful: let the cup cool below 65 °C before you drink.
caution-glass-shock = Careful: cold glass can crack with boiling water; warm it first.
caution-caffeine-adult = Careful: the whole brew may hold more than 200 mg of caffeine; share it or spread it over the day.
caution-pregnancy = When pregnant or breastfeeding, ask your doctor or midwife how much of this is right for you.
caution-children = Tea with caffeine is not for small children; ask a doctor about older ones.
caution-medicines = If you take medicines, ask a doctor or pharmacist whether this tea goes with them.

# What is asked of a cold infusion. Two hours in the warm: the FDA's advice to households, from memory; ice, straining, the
# evening before: common practice, no source
cold-begin-before = It needs { DURATION($seconds) } in the refrigerator: put it in that long before you want it, or the evening before, and take the leaf out in the morning.
cold-begin-by = To drink it { $wanted }, put it in the refrigerator by { $by } at the latest; an hour or two earlier does no harm.
cold-begin-evening = To drink it { $wanted }, it has to be in the refrigerator by { $by } at the latest. Easier: put it in the evening before, and take the leaf out in the morning; the hours more make it a little stronger, which cold water mends.
cold-begin-late = Until then there are only { DURATION($leftS) }, and it needs { DURATION($seconds) }. Put it in now and it comes out lighter, or brew it hot and strong and pour it over ice.
cold-ready-at = Begun { $begun }, it is ready { $ready }.
cold-ready-night = Begun { $begun }, it is ready { $ready }. Let it stand until you get up, and take the leaf out then: a little stronger, which cold water mends.
cold-stands = In the refrigerator it may stand a few hours longer: it gets a little stronger, which cold water mends. Drink it within a day.
cold-stands-hours = After { DURATION($seconds) } in the refrigerator it is about { NUMBER($strength, maximumFractionDigits: 1) } times as strong as planned; cold water mends that. Drink it within a day.
cold-stands-short = That is less than the { DURATION($seconds) } it needs: it comes out lighter.
cold-stands-too-long = Better not so long: keep it in the refrigerator all the while, and drink it within a day.
cold-on-the-way = Only if it stays as cold as in the refrigerator: in a cool bag with ice packs, or in a thermos rinsed with ice water. A parked car gets far too warm. What has stood in the warm for more than two hours is better thrown away.
cold-strain = Pour it through a strainer or a paper coffee filter into a clean bottle; if there is neither, hold the leaf back with the lid and pour slowly.
cold-taste-early = Taste it whenever you like, with a clean spoon. Once it suits you, take the leaf out; until then it slowly gets stronger.
cold-is-ready = It is ready { DURATION($seconds) } after it went into the refrigerator; taste a little with a clean spoon, and take the leaf out when it suits you.
cold-unchilled = Better not: in the warm it stands for hours at temperatures that bacteria like. Without a refrigerator, brew it hot and strong and pour it over ice.
cold-still-good = Yes, if it stood in the refrigerator below 5 °C all the time, in a clean bottle, and for no more than a day. If it was out in the warm for more than two hours, pour it away.
cold-lid = Yes, keep it closed: tea takes on the smells of a refrigerator, and it should stay clean.
cold-ice = Yes, ice water or ice will do; it then draws a little more slowly.


# The plan in a terminal
plan-title = { TEA($tea) } · { VESSEL($vessel) } · { ML($volumeMl) }
plan-title-family = { FAMILY($family) } · { VESSEL($vessel) } · { ML($volumeMl) }
plan-leaf = Leaf    { GRAMS($leafG) } (about { SPOONS($spoons) } level tsp); dry, it fills { PERCENT($fill) } of the vessel
plan-water = Water   { DEGREES($waterC) }, { ML($waterMl) } a filling; heat { ML($kettleMl) } in all
plan-water-cold = Water   cold, { DEGREES($waterC) }, { ML($waterMl) }; keep it in the refrigerator
plan-clamped = Boils   at { DEGREES($boilsAtC) } where you are; { $style ->
    [cupping] write that beside what you taste
   *[other] the times make up for it
}
plan-warm = Warm    the vessel with hot water first, then pour that away
plan-rinse = Rinse   { DURATION($seconds) } with the same water; don't drink it
plan-rung = { DURATION($seconds) }
plan-caffeine = Caffeine about { NUMBER($usualMg, maximumFractionDigits: 0) } mg in all ({ NUMBER($leastMg, maximumFractionDigits: 0) } to { NUMBER($mostMg, maximumFractionDigits: 0) }, as leaves differ)
plan-cup = Each of { NUMBER($guests) } cups gets about { ML($cupMl) }
plan-way-boil = Use it just off the boil.
plan-way-mix = { $nth ->
    [1] Without a thermometer:
   *[other] Or
} { ML($boilingMl) } boiling and { ML($coolMl) } cool water together (± { SPREAD($uncertaintyC, $unit) }).
plan-way-wait = { $nth ->
    [1] Without a thermometer: let
   *[other] Or let
} the boiled kettle stand { DURATION($seconds) } with its lid off (± { SPREAD($uncertaintyC, $unit) }).
plan-way-pitcher = Or pour it through { $pours ->
    [one] a cool pitcher once
   *[other] cool pitchers { NUMBER($pours) } times
} (± { SPREAD($uncertaintyC, $unit) }).
plan-chart-strength = Strength, mg/ml
plan-chart-left = Left in the leaf

# Why a plan is as it is
why-leaf = { GRAMS($leafG) } of leaf in { ML($waterMl) } is one gram to { NUMBER($mlPerG) } ml; dry, it fills { PERCENT($fill) } of the vessel, so it has room to open.
why-water-warmed = Water of { DEGREES($waterC) } (it boils at { DEGREES($boilsAtC) } where you are) meets leaf and wall at { DEGREES($warmC) }; in a cold vessel it would be { DEGREES($coldC) }, so warming saves { NUMBER($costC) } degrees.
why-water-unwarmed = Water of { DEGREES($waterC) } (it boils at { DEGREES($boilsAtC) } where you are) falls to { DEGREES($coldC) } in the cold vessel; not warming it costs you { NUMBER($costC) } degrees, and the times make up for that.
why-water-cold = Water of { DEGREES($waterC) } draws the sweet part and leaves most of the bitter part in the leaf, but it needs hours instead of minutes.
why-times = { DURATION($firstS) } brings the first cup to { NUMBER($strength, maximumFractionDigits: 1) } mg/ml; what is left comes out slower, so the last of { NUMBER($count) } needs { DURATION($lastS) } for { NUMBER($lastStrength, maximumFractionDigits: 1) } mg/ml.
why-time = { DURATION($firstS) } brings the cup to { NUMBER($strength, maximumFractionDigits: 1) } mg/ml; { $count ->
    [one] one infusion gives
   *[other] { NUMBER($count) } infusions give
} what this leaf has to give.

# how it tasted
ask-taste = How was it?
ask-taste-nearest = I see. Which of these comes nearest?
ask-remember-taste = Shall I remember that for you?
choice-remember = Remember it
    .typed = yes / yes please / remember
choice-how-was-it = How it tasted
choice-bitter = Bitter
choice-weak = Weak
choice-flat = Flat
choice-sour = Sour
choice-lost-scent = No scent
choice-right = Just right
    .typed = just right / nice / very nice / nice one / good / very good / great / lovely / perfect / delicious / tasty / yum / wonderful / that is nice / that is good / thats nice / thats good / its nice / its good
taste-cause-bitter = Bitter mostly means that it drew too hot or too long.
taste-cause-strong = Too strong is mostly too much leaf, or too long.
taste-cause-dry = A dry, rough mouth comes from tannins, which heat and long standing draw out; young raw puer, strong black tea and broken leaf have many.
taste-cause-weak = Weak mostly means that it had too little time, or too little leaf.
taste-cause-sour = Sour mostly means that it stood too long on the leaf.
taste-cause-flat = Flat mostly means that the water was not hot enough to open the leaf.
taste-cause-lost-scent = Scent goes when the water is not hot enough, or when the lid stays on after pouring.
taste-cause-right = Good to hear.
cup-reckoned-for = Reckoned for: { VESSEL($vessel) } { ML($volumeMl) }.
cup-heat-over = { DEGREES($value, $unit) } is hot for it: { DEGREES($usual, $unit) } is usual. Hotter water draws more, and the bitter part most of all.
cup-heat-under = { DEGREES($value, $unit) } is cool for it: { DEGREES($usual, $unit) } is usual, and cooler water draws less.
cup-time-over = { DURATION($value) } instead of { DURATION($usual) } made { $infusion ->
    [1] the cup
   *[other] infusion { $infusion }
 } about { NUMBER($share, maximumFractionDigits: 1) } times as strong as usual.
cup-time-under = After { DURATION($value) } instead of { DURATION($usual) } { $infusion ->
    [1] the cup
   *[other] infusion { $infusion }
 } had about { PERCENT($share) } of the usual strength.
cup-leaf-over = { GRAMS($value) } of leaf instead of { GRAMS($usual) } made it about { NUMBER($share, maximumFractionDigits: 1) } times as strong.
cup-leaf-under = { GRAMS($value) } of leaf instead of { GRAMS($usual) } gave about { PERCENT($share) } of the usual strength.
cup-remedy = Next time: { LIST($parts) }.
cup-next-heat = { DEGREES($usual, $unit) }
cup-next-time = { DURATION($usual) }
cup-next-leaf = { GRAMS($usual) } of leaf
cup-as-usual = As you tell it, the cup was made about as I would make it; the rest is a matter of taste.
taste-water-down = Next time take water of { DEGREES($waterC, $unit) } instead of { DEGREES($fromC, $unit) }.
taste-water-up = Next time take water of { DEGREES($waterC, $unit) } instead of { DEGREES($fromC, $unit) }.
taste-strength-down = Next time pour sooner, for a cup about { PERCENT($share) } lighter.
taste-strength-up = Next time wait longer, for a cup about { PERCENT($share) } stronger.
taste-leaf-down = Next time take about { PERCENT($share) } less leaf.
taste-leaf-up = Next time take about { PERCENT($share) } more leaf.
taste-likely = That may well be.
taste-stays = Then it stays as it is.
taste-far-enough = I have moved it as far as is sensible; another leaf may suit you better.
taste-remembered = Remembered, for this family of tea.
taste-kept = (As you like { FAMILY($family) }: { LIST($parts) }.)
taste-mended = (For the cup that { $taste ->
    [bitter] was bitter
    [strong] was too strong
    [dry] left the mouth dry
    [weak] was weak
    [flat] was flat
    [sour] was sour
   *[other] had no scent
 }: { LIST($parts) }. “Save this” keeps it, “as usual again” drops it.)
brew-unknown-tea = I don't know “{ $unknownTea }” itself, so this is for its family.
mistake-number-in-words = I need a number there, for example 150.

# Telegram: how the bot presents itself, what its menu offers, and what a tap there says
telegram-name = Beside your kettle
telegram-about = How much leaf, how hot, how long: for your tea, in your vessel.
telegram-description =
    Tell me which tea you have and what you brew it in. I answer with the leaf, the water and the time of each infusion, and stand by while you brew.
    Ask me about lessons too. What I can't answer goes to the shop, and the reply comes here.
telegram-command-brew = How to brew a tea
telegram-command-my-tea = Your taste, vessels and brews
telegram-command-lessons = Lessons at the shop
telegram-command-shop = Talk to the shop
telegram-command-language = English or Chinese
telegram-command-back = One step back
telegram-command-start-over = Start over
telegram-says-brew = Brew a tea
telegram-says-my-tea = My tea
telegram-says-lessons = Which lessons are there?
telegram-says-shop = I'd like to talk to the shop
telegram-says-language = English / 中文
telegram-says-back = back
telegram-says-start-over = start over
telegram-token-refused = Telegram does not accept this token. Get the bot's token again where the bot was made, and put it in the settings.
telegram-unreachable = Telegram cannot be reached just now. I keep trying; everything else works.
telegram-second-copy = Another copy of this program asks Telegram with the same token; only one can. Stop the other one, or give this one a bot of its own.

# channels/mail
mail-unreachable = The mail server cannot be reached; letters wait until it can. See NINTHPOUR_SMTP_URL.
mail-login-refused = The mail server refuses the login; letters wait until NINTHPOUR_SMTP_URL is right.
mail-foot = If something has changed, just answer this mail; a person at the shop reads it.

# core/lessons: what a person got wrong about a lesson
mistake-lesson-title-missing = What is the lesson called?
mistake-lesson-past = { $starts } is past already. Please give a time to come.
mistake-lesson-day-missing = On which day?
mistake-lesson-time-missing = At what time does it begin?
mistake-lesson-level-unclear = Is it for beginners, for those who have begun, or advanced?
mistake-lesson-seats-missing = How many seats are there?
mistake-lesson-seats = { $seats } seats cannot be: { $most ->
    [1] there is one at most
   *[other] from 1 to { $most }
 }.
mistake-lesson-minutes = A lesson lasts from 1 to { $most } minutes, not { $minutes }.
mistake-lesson-ends-before-start = It would end at { $ends } and begin at { $starts }. Please say both again.
mistake-lesson-time-unreadable = I can't read “{ $starts }” as a day and time.
mistake-lesson-hour-unclear = “{ $words }”: in the morning or in the evening?
mistake-lesson-hour-never = On that day the clocks in { $zone } go forward and never show { $starts }. Please give another time.
mistake-lesson-hour-twice = On that day the clocks in { $zone } go back and show { $starts } twice. Please give another time.
mistake-lesson-series-hour-never = The clocks in { $zone } never show { $starts }; that lesson begins at { $begins }.
mistake-lesson-series-hour-twice = The clocks in { $zone } show { $starts } twice; that lesson begins the first time.
mistake-lesson-date-unreadable = There is no day “{ $words }”.
mistake-lesson-date-unclear = “{ $words }” can be two days. Please write the month as a word.
mistake-lesson-weekday-differs = { $date } is not that day of the week. Which of the two is right?
mistake-lesson-zone-unknown = I know no time zone called “{ $zone }”. They are written like America/Denver.
mistake-lesson-sentence-too-long = Please say it in one sentence of at most { $most } characters.
mistake-lesson-there-already = It is { WHEN($starts) } already. To when shall it move?
mistake-lesson-changed-meanwhile = Somebody has just changed this lesson; it begins { WHEN($starts) } now. Please look again.
mistake-lesson-cancelled = This lesson has been cancelled.
mistake-lesson-not-cancelled = This lesson has not been called off.
mistake-lesson-over = This lesson is over.
mistake-lesson-started = This lesson has begun already.
mistake-lesson-already-booked = You have a booking for this lesson already.
mistake-lesson-already-back = They have a booking for it again already.
mistake-lesson-booking-unknown = There is no such booking.
mistake-lesson-booking-left = This booking has been given back already.
mistake-lesson-booking-not-seated = This booking has no seat yet.
mistake-lesson-leave-closed = Seats could be given back until { WHEN($until) }. If you can't come, please let the shop know.
mistake-lesson-offer-gone = This offer has ended, and the seat has gone on to the next.
mistake-lesson-offer-open = Please take or decline the seat you are offered first.
mistake-lesson-full = { $free ->
    [0] There is no seat left.
    [one] There is one seat left.
   *[other] There are { $free } seats left.
}
mistake-lesson-seats-below-taken = { $taken } seats are taken already, so { $seats } are too few.
mistake-lesson-door-closed = People can be ticked off from an hour before the lesson.

# content: what is wrong in a table of lessons or bookings
lesson-table-place = Line { $line }, { $column }: { $mistake }
lesson-table-there = { $file } is there already. Please name another file.
lesson-table-past = { $count ->
    [one] One more lies in the past and is left out.
   *[other] { $count } more lie in the past and are left out.
 }
mistake-lesson-table-series = A series is planned in data/shop/lessons.yaml or in the chat; here each lesson stands by itself.
mistake-lesson-table-tea = “{ $words }” is no tea of the catalogue.
mistake-lesson-table-empty = This table is empty; it needs a line that names its columns.
mistake-lesson-table-column-missing = This column is missing.
mistake-lesson-table-column-unknown = I know no such column.
mistake-lesson-table-column-twice = This column is there twice.
mistake-lesson-table-id = “{ $words }” is no name for a link: at most 40 of A–Z, a–z, 0–9, dot, hyphen, underscore.
mistake-lesson-table-number = “{ $words }” is not a whole number.
mistake-lesson-table-choice = “{ $words }” is not one of: { $allowed }.
mistake-lesson-table-instant = “{ $words }” is not a time in UTC, such as 2026-12-06T02:00Z.
mistake-lesson-table-twice = “{ $words }” is in line { $earlier } already.
lesson-table-missing = There is no file { $file }.
mistake-lesson-table-cells = This line has too few or too many cells; each needs as many as the first line has columns.
mistake-lesson-table-quote = A quotation mark stands in the middle of a cell here; put the whole cell in quotation marks and write each mark inside it twice.
mistake-lesson-table-quote-open = A quotation mark is opened in this line and never closed.
mistake-lesson-table-encoding = There are signs here that are not UTF-8; please save the file as UTF-8.
mistake-lesson-table-no-yaml = This is not YAML from here on: look at the blanks at the start of the line, and at colons and quotation marks.
mistake-lesson-table-no-list = A list is expected: each entry begins with a hyphen.
mistake-lesson-table-no-item = Here an entry with the columns' names is expected, such as “seats: 2”.
mistake-lesson-table-no-text = Here words or a number are expected, not a list.
mistake-lesson-table-no-tea = There must be one tea at least.
mistake-lesson-table-tea-name = The catalogue calls this tea “{ $words }”; names are changed in data/teas/catalogue.yaml.
mistake-lesson-row-no-lesson = There is no lesson “{ $words }”.
mistake-lesson-row-nameless = A name is missing.
mistake-lesson-row-mail = “{ $words }” is no mail address; leave the cell empty for who has none.
mistake-lesson-row-there = { $name } is on the list of this lesson already.
mistake-lesson-row-full = { $free ->
    [0] There is no seat left; write “waiting” under standing for a place in the waiting list.
    [one] There is only one seat left; write “waiting” under standing for a place in the waiting list.
   *[other] There are only { $free } seats left; write “waiting” under standing for a place in the waiting list.
}
mistake-lesson-row-waits-untold = Who waits is told of a free seat by mail, so an address is needed here.
mistake-lesson-row-new = The house fills this in itself; for someone new leave it empty.
mistake-lesson-row-unknown = There is no booking “{ $words }”; for someone new leave the cell empty.
mistake-lesson-row-edited = This booking stands otherwise ({ $seats ->
    [one] one seat
   *[other] { $seats } seats
}); a booking that is known is changed in the chat, not here.

# the hand-over to the shop
ask-waits = Your question waits for the shop. Nobody from the shop is here at the moment; the answer comes here.
ask-enough = Five of your questions are waiting for the shop already. Please let it answer those first.
ask-kept-answer = The shop says: { $heard-kept-answer }
shop-told-answer =
    You asked: { $question }
    The shop writes: { $text }
shop-told-correction =
    You asked: { $question }
    Correction: the shop puts its earlier answer right. Please go by this one: { $text }
shop-told-answer-about = the answer to: { $question }
shop-told-correction-about = the corrected answer to: { $question }
shop-told-question = A customer asks: { $question }
shop-told-waiting = { $n }. { $question }
shop-told-kept = { $n }. { $question } – { $reply }
shop-told-earlier = Earlier they asked: { $question } – The answer was: { $answer }
shop-told-same = Asked before: { $question } – The answer was: { $answer }
shop-told-gone = (no longer kept)
shop-told-code = Nobody is shopkeeper yet. Whoever writes { $code } to the bot within { $minutes } minutes becomes shopkeeper.
shop-welcome = You are a shopkeeper now. What customers ask is passed on to you here; write “questions” to see what waits.
shop-code-wrong = That code opens nothing, or nothing any more.
shop-not-yours = That is for shopkeepers only.
shop-nothing-waiting = No question is waiting.
shop-waiting = { $count ->
    [one] One question is waiting.
   *[other] { $count } questions are waiting, the oldest first.
}
shop-question = They ask, in { $it-language ->
    [zh-Hant] Traditional Chinese
    [zh-Hans] Simplified Chinese
   *[en] English
}: { $it-question }
shop-write-answer = Write your answer; it is sent to them word for word.
shop-which-one = Another question came in while you wrote. Is this meant for “{ $it-question }”?
shop-left-waiting = It stays among the questions that wait.
shop-answered = Sent to the customer, in answer to: { $it-question }
shop-answered-waits = They cannot be reached at the moment: your answer to “{ $it-question }” waits here until they come back.
shop-for-whom = That sounds like something for me. Shall it go to the customer as your answer to “{ $it-question }”?
shop-none-sent = No answer that was sent is kept here, so there is none to correct.
shop-sent = These answers were sent, the latest first. Which one shall be put right?
shop-ask-correction = They asked: { $sent-question } – You answered: { $sent-reply } – Write the answer as it should read; I'll show it to you before it goes out.
shop-correction-sure = The customer who asked “{ $sent-question }” gets this, marked as a correction: { $draft } – Shall I send it?
shop-as-sent = The answer stays as it was sent.
shop-corrected = Sent to the customer as a correction.
shop-corrected-waits = Put right. They cannot be reached at the moment: the correction waits here until they come back.
shop-corrected-kept = The answer that is kept of it is put right too.
shop-corrected-meanwhile = Somebody from the shop has put it right meanwhile.
shop-ask-wording = For which question shall I keep this answer? Write it as anyone would ask, without names. Asked was: { $it-question }
shop-kept = Kept. Whoever asks that gets this answer.
shop-kept-as-asked = Kept. Whoever asks that gets this answer, until the person whose words the question is in wants to be forgotten.
shop-nothing-kept = No answer is kept.
shop-standing = These answers are kept, the latest first:
shop-dropped = Dropped.
mistake-question-answered = That question is no longer open: someone from the shop has answered it, or it was taken back.
mistake-answer-same = That is what the answer says already.
mistake-question-gone = That question and its answer are no longer kept.
mistake-kept-answer-gone = That answer is no longer kept.
choice-shop-questions = Questions for the shop
    .typed = questions
choice-shop-question = Answer { $n }
    .typed = the first one / first one / the first
choice-shop-same = Send that answer again
choice-shop-send-it = Yes, send it there
choice-shop-other = No, show the questions
choice-shop-later = Leave it waiting
choice-shop-next = Next question
    .typed = next
choice-shop-done = That is all
    .typed = done
choice-shop-correct = Correct the answer
    .typed = correct it / correct that / correct this / correct the last answer / correct an answer / that was wrong / fix it / fix that / wrong answer
choice-shop-correct-n = Correct { $n }
choice-shop-another-answer = Another answer
    .typed = not that one / another one / a different one
choice-shop-as-sent = Leave it as it is
    .typed = never mind / leave it / forget it / leave it as it was / it was fine
choice-shop-send-correction = Yes, send the correction
    .typed = send it / send / yes send it / send the correction
choice-shop-other-words = Write the answer anew
choice-shop-keep = Keep it as a standing answer
    .typed = keep / keep it / keep this / keep that / keep that answer / save it / save this / save
choice-shop-as-asked = As it was asked
choice-shop-keep-not = Don't keep it
choice-shop-standing = Answers that are kept
choice-shop-drop = Drop { $n }

# what is kept of a person, and forgetting it
my-data-page = Everything kept about you is in one file: “What is kept of me”, at the foot of this page.
my-data-why = What for: what you write and what I answer, { $messageDays } days, so that nothing is lost or said twice. Your vessels, taste and last brews, so that I needn't ask again. Your questions and bookings, so that the shop can answer and keep your seat; the shop sees these, and I give nothing to anyone else. { $idleDays ->
        [0] It stays until you say “forget me”.
       *[other] Anyone who hasn't written for { $idleDays } days is forgotten; say “forget me” and it happens at once.
    } Backups go after { $backupDays } more days.
my-data-here = This is everything kept about you:
    { $everything }
other-device-page = “This sheet on another device”, at the foot of this page, shows a code. Type it at the foot of the page there, and this sheet is open on both.
other-device-telegram = Telegram has this conversation on all your devices: open it there.
other-device-here = Here I can't take it along. On the shop's page a sheet opens on a second device by a code; the way is at its foot.
forget-page = What still stands on this page is on your device only; “A fresh sheet for the next person”, at its foot, clears it.
# the guided brew
choice-guide = Guide me
    .typed = guide me / take me through it / lead me / walk me through / step by step / guide / walk me through it / guide me through it
choice-guide-ready = Ready
    .typed = ok / sifted / sieved / set out / all set / done / done that / done it / did that / did it / i am ready / i'm ready / go / next
choice-guide-done = Done
    .typed = ok / ready / done that / done it / did that / did it / warm / warmed / it is warm / next / poured / poured it away / poured it out / i poured it away
choice-guide-in = The leaf is in
    .typed = ok / next / ready / done / done that / done it / did that / did it / in / in it goes / it is in / leaf is in / leaves are in / i put it in / added
choice-guide-rinsed = Rinsed
    .typed = ok / next / ready / done / done that / done it / did that / did it / rinsed it / i rinsed it / rinse done
choice-guide-filled = Filled
    .typed = ok / done / done that / done it / did that / did it / full / now / water is in / filled up / i filled it / poured in / i poured it in / in the fridge
choice-guide-poured-on = Poured on
    .typed = poured / it is poured / i poured / i poured it
choice-guide-poured = { $style ->
    [cold] Strained
    [grandpa] Drunk down to a third
   *[other] Poured
}
    .typed = ok / done / done that / done it / did that / did it / poured off / poured / poured out / it is poured / i poured / i poured it / i poured it off / taken out / strained / drank it / i drank it / drunk
choice-guide-next-filled = { $style ->
    [cold] Strained, and the next is filled
    [grandpa] Drunk, and filled up again
   *[other] Poured, and the next is filled
}
    .typed = filled / next filled / drank it and filled up again / drunk and filled / poured and filled again / poured and filled up
choice-guide-at-night = Call me at { $at } all the same
    .typed = wake me / call me at night / call me anyway
choice-guide-longer = It stood longer
    .typed = too long / late
choice-guide-taste = { $item ->
    [right] Just right
    [bitter] Bitter
   *[weak] Weak
}
choice-guide-why = Why
choice-guide-more = Something else
    .typed = more / other
choice-guide-seconds = { DURATION($item) }
choice-guide-degrees = { DEGREES($item, $unit) }
choice-guide-people = { $item }
choice-guide-pause = Pause
    .typed = wait / hold on / a moment / brb / back in a minute / i have to go / i need to go / someone is at the door
choice-guide-skip = Leave this infusion out
    .typed = skip
choice-guide-cooler = The water has cooled
    .typed = the water is cold / water has cooled / my water cooled down / the water went cold / kettle went cold
choice-guide-new-kettle = Fresh hot water
    .typed = fresh water / new water / reheated / reheated it / boiled it again / i reheated it / the kettle is hot again / i boiled it again / boiled again / hot water again
choice-guide-guests = More guests, or fewer
    .typed = more guests / someone came / more people / fewer people
choice-guide-go-on = Go on
    .typed = continue / back to it / here
choice-guide-finish = Finish
    .typed = end / enough / no more / that is enough / i am done / i'm done / i'm finished / finished / i think i'm done / i think i am done / that's it / that's all / done for today
choice-guide-end-and-begin = End it and begin this one
choice-guide-end-for-other = Begin anew in the other
    .typed = begin anew / the other / new one / start again in the other
choice-guide-poured-in-time = { $style ->
    [cold] Strained in time
   *[other] Poured in time
}
    .typed = in time / on time / only the tap / just the tap / the tap / i forgot to tap / forgot to tap / forgot the tap / i poured it in time / i had poured it
choice-guide-it-stood = It stood all the while
    .typed = it stood / it stood all that time / it is still standing / i forgot it / i forgot the tea
choice-guide-was-cold = In the refrigerator, at once
    .typed = yes / yes it was / in the fridge / it was in the fridge
choice-guide-was-not-cold = No, or not sure
    .typed = no / not sure / i don't know / on the table / at room temperature
choice-guide-brew-again = The same once more
    .typed = again / same again / the same again / do the same again / once more / same once more / another round / another pot / one more pot / make it again / brew it again / do it again
guide-two-brews = Your { $name } is still under way, at infusion { $n }. One pot at a time is easier to keep in mind.
guide-set-out = { VESSEL($brew-vessel) }, { GRAMS($brew-leafG) } of leaf (about { SPOONS($brew-spoons) } level tsp): set them out. Heat { ML($brew-kettleMl) } of water to { DEGREES($brew-waterC, $memory-unit) }.
guide-set-out-bags = { VESSEL($brew-vessel) } and { $brew-bags ->
    [1] one tea bag
   *[other] { $brew-bags } tea bags
 }: set them out. Heat { ML($brew-kettleMl) } of water to { DEGREES($brew-waterC, $memory-unit) }.
guide-set-out-powder = Set out: a bowl, a whisk, a fine sieve, { GRAMS($brew-leafG) } of powder. Heat a little water to { DEGREES($brew-waterC, $memory-unit) }.
guide-set-out-cold = { VESSEL($brew-vessel) }, clean, { GRAMS($brew-leafG) } of leaf (about { SPOONS($brew-spoons) } level tsp), { ML($brew-waterMl) } of cold water: set them out.
guide-set-out-pitcher = A pitcher beside it to pour into, so that all cups are alike.
guide-set-out-guests = Cups for { $brew-guests }, yours the last in the row.
guide-care-table = Stand the kettle well back from the edge, its cord too, and small children a step away.
guide-care-lid = Hold it by the rim and the knob of the lid: the steam leaves where the lid is ajar, so tilt it away from you.
guide-warm = Warm vessel and cups with hot water, then pour it away.
guide-measure = Put in { GRAMS($brew-leafG) } of leaf: about { SPOONS($brew-spoons) } level tsp.
guide-measure-bags = Hang { $brew-bags ->
    [1] the bag
   *[other] all { $brew-bags } bags
 } in, the string over the rim.
guide-smell = Close the lid for a breath and smell the warm leaf.
guide-rinse = Fill with { DEGREES($brew-waterC, $memory-unit) } water, count to { $brew-rinseS }, pour off. Don't drink this one.
guide-count = Infusion { $brew-n }: fill from high, count to { $brew-seconds }, pour off low, to the last drop.
guide-counting = Now count to { $brew-seconds }, pour off and say “poured”.
guide-water-on = Then the water is on the leaf now. If it is poured off already, say “poured”.
guide-fill = Infusion { $brew-n }, { DURATION($brew-seconds) }: fill with { ML($brew-waterMl) } at { DEGREES($brew-waterC, $memory-unit) } and tap at once.
guide-top-up = Infusion { $brew-n }, { DURATION($brew-seconds) }: fill it up again with { DEGREES($brew-waterC, $memory-unit) } water and tap at once.
guide-fill-cold = Infusion { $brew-n }, { DURATION($brew-seconds) } in the refrigerator: fill with { ML($brew-waterMl) } of cold water, cover it, put it in and tap.
guide-cups = That is about { ML($brew-cupMl) } for each of { $brew-guests }.
guide-invite = Serve the guests first with an open hand; the host drinks with them.
guide-holding = Infusion { $brew-n }: { DURATION($brew-seconds) } from your tap. I call when it is time.
guide-holding-till-evening = Infusion { $brew-n } would be ready at { $from }. So as not to disturb your night, I call a little early, at { $to }; the taste is nearly there by then.
guide-holding-till-morning = Infusion { $brew-n } would be ready at { $from }. It has time, so I let you sleep and call at { $to }; should it be too strong then, add cold water.
guide-told-clock = { CLOCK($wall) }
guide-told-until = Infusion { $n }, { DURATION($seconds) }
guide-pour-now = { $late ->
    [no] { $style ->
        [cold] Infusion { $n } is ready: take it out and strain it.
        [grandpa] Infusion { $n } is ready to drink. Leave a third in the glass for the next.
       *[other] Pour off now, infusion { $n }: low, to the last drop.
    }
    [some] { $style ->
        [cold] Infusion { $n } is ready: take it out and strain it.
        [grandpa] Infusion { $n } is ready to drink. Leave a third in the glass for the next.
       *[other] Pour off now, infusion { $n }. I call { DURATION($lateS) } late, sorry.
    }
   *[long] { $style ->
        [cold] Infusion { $n } has been ready for { DURATION($lateS) }; I was away, sorry. Strain it now; if it is too strong, add cold water.
        [grandpa] Infusion { $n } has been ready to drink for { DURATION($lateS) }; I was away, sorry. Leave a third in the glass for the next.
       *[other] Infusion { $n } was to be poured { DURATION($lateS) } ago; I was away, sorry. If it still stands, taste before you serve it.
    }
}
guide-told-poured = Infusion { $n }: { DURATION($seconds) }.
guide-told-below = Goes on below.
guide-told-late = You poured { DURATION($seconds) } late, { $next }.
guide-told-early = You poured { DURATION($seconds) } early, { $next }.
guide-told-rest-more = After this rest, { DURATION($seconds) } more now.
guide-told-rest-less = After this rest, { DURATION($seconds) } less now.
guide-told-next-more = so { DURATION($seconds) } more now
guide-told-next-less = so { DURATION($seconds) } less now
guide-told-next-same = and the next stays as it was
guide-told-next-none = and the leaf has given what it had
guide-told-water = Water of { DEGREES($waterC, $unit) } from now on, { $next }.
guide-told-drawn = As you wish: { DURATION($seconds) }.
guide-told-longer = Longer from now on, { $next }.
guide-told-shorter = Shorter from now on, { $next }.
guide-told-next-paced = This one stays as it is; the next is about { DURATION($seconds) }.
guide-told-pace-end = It goes no further that way with this leaf in this vessel.
guide-told-guests = For { $guests }: about { ML($cupMl) } each.
guide-told-guests-two = For { $guests } one pouring is only { ML($cupMl) } each: collect two in the pitcher, then share.
guide-told-later = Infusion { $n }: about { DURATION($seconds) }. It is reckoned anew once those before it are poured.
guide-told-now = You are at infusion { $n } of about { $ends }: { DURATION($seconds) }, water { DEGREES($waterC, $unit) }, { GRAMS($leafG) } of leaf.
guide-told-left = Infusion { $n } of about { $ends } draws, { DURATION($seconds) } to go: water { DEGREES($waterC, $unit) }, { GRAMS($leafG) } of leaf.
guide-told-whisk = { GRAMS($leafG) } of powder, { ML($waterMl) } at { DEGREES($waterC, $unit) }, about { DURATION($seconds) } of whisking.
guide-told-spent = The leaf has given what it had.
guide-told-taste-right = Good. I leave it as it is.
guide-told-taste-far = I have moved it as far as is sensible; another leaf may suit you better.
guide-told-taste-stronger = Stronger from now on, { $next }. I remember it for this family.
guide-told-taste-lighter = Lighter from now on, { $next }. I remember it for this family.
guide-told-taste-water = Water of { DEGREES($waterC, $unit) } from now on, { $next }. I remember it for this family.
guide-told-taste-next-stronger = Next time a little stronger; I remember it for this family.
guide-told-taste-next-lighter = Next time a little lighter; I remember it for this family.
guide-told-taste-next-water = Next time water of { DEGREES($waterC, $unit) }; I remember it for this family.
guide-told-taste-more-leaf = This leaf is in; next time I say a little more. I remember it for this family.
guide-told-taste-less-leaf = This leaf is in; next time I say a little less. I remember it for this family.
guide-told-as-poured = As you poured it
guide-told-tea = { TEA($tea) }
guide-told-family = { FAMILY($family) }
guide-ask-taste = How was it? One tap, if you like.
guide-ask-how-long = About how long did it stand?
guide-ask-more = What has changed?
guide-ask-guests = How many drink now?
guide-ask-stood = { $style ->
    [cold] Infusion { $n } has been ready for { DURATION($sinceS) }. Did it stand all that time, or was only the tap forgotten?
   *[other] Infusion { $n } was to be poured { DURATION($sinceS) } ago. Did it stand all that time, or was only the tap forgotten?
}
guide-stood-caution = Then taste before you share it; it will be strong.
guide-ask-cold = The wet leaf has waited { DURATION($awayS) }. Was it drained, covered and in the refrigerator from the start?
guide-rinse-again = Then rinse it once with boiling water, pour that away, and drink the rest today.
guide-throw-away = Then better throw the leaf away: wet leaf in the warm feeds bacteria.
guide-kept = Kept as your usual for this tea: next time its name is enough.
guide-other-vessel = What draws now is counted for the { VESSEL($brew-vessel) } of { ML($brew-volumeMl) }. Finish this one, or begin anew with fresh leaf in the { VESSEL($vessel) } of { ML($volumeMl) }?
guide-caffeine = So far this brew has given about { NUMBER($mg, maximumFractionDigits: 0) } mg of caffeine ({ NUMBER($leastMg, maximumFractionDigits: 0) } to { NUMBER($mostMg, maximumFractionDigits: 0) }, as leaves differ).
guide-noted-already = That is noted already.
guide-not-followed-asked = I'm not sure what you mean there; “talk to the shop” passes a question on.
guide-calls-at = I call you at { $at }, here in this chat; you need not set anything.
guide-calls-when-filled = I call you when it is time: say “filled” as soon as the water is on the leaf.
guide-left = { $left ->
    [1] This is about the last one.
   *[other] With this one, about { $left } infusions are left.
}
guide-held-as-told = Then I take it as { DURATION($seconds) }.
guide-leaf-does-not-wait = The leaf doesn't wait: pour it off if you must go, and tap. I count what it got.
guide-advice = The taste decides. Bitter or harsh: cooler water or a shorter time. Thin: a longer time, or more leaf in the next pot. Nothing is changed yet; tell me how it tasted.
guide-times-follow = Each infusion has a time of its own, worked out for what is still in the leaf. If a cup is thin, say so, and the next ones draw longer; if it is bitter, shorter.
guide-leaf-is-in = The leaf that is in stays, and I change the time instead. Weigh it anew for the next pot.
guide-quiet = An hour has passed. The leaf keeps a few hours more with the lid ajar. Shall we go on?
guide-quiet-long = The leaf has rested { DURATION($awayS) }. Shall we go on?
guide-quiet-dry = The leaf is in, and nothing is poured yet. Shall we go on?
guide-quiet-hold = { $brew-style ->
    [cold] It has been ready for { DURATION($sinceS) }: take it out, strain it and keep the tea cold. Is that done?
   *[other] It is { DURATION($sinceS) } since infusion { $brew-n } was to be poured. Shall we go on?
}
guide-waits = Take your time, nothing is drawing yet. Write when you are back.
guide-drink-after-rinse = Not the water that warms, nor the rinse: both are poured away. The first for drinking is infusion 1.
guide-drink-first = Water that only warms is poured away; the first infusion is for drinking.
guide-drink-this = Yes, from the first infusion on all of it is for drinking.
guide-paused = Take your time. Pour off to the last drop and leave the lid ajar; within four hours we go on.
guide-may-skip = Yes, an infusion can be left out: say “skip” when its turn comes, and the leaf keeps it for the next one.
guide-skipped = Left out; the leaf keeps it for the next.
guide-spent = The leaf has given what it had.
guide-whisk = Sieve the powder into the warm bowl, add { ML($brew-waterMl) } at { DEGREES($brew-waterC, $memory-unit) }, and whisk quickly back and forth until fine foam stands, about { DURATION($brew-seconds) }.
guide-finish = That was { $count ->
    [one] one infusion
   *[other] { $count } infusions
}. Drink up, tip the leaf out and look at it: whole leaf opened well.
guide-finish-cold = Keep it in the refrigerator, at 5 °C or below, and drink it within a day. The leaf has done its work: tip it out.
guide-finish-powder = Drink it while the foam stands. Rinse bowl and whisk in clear water, and let the whisk dry upright.
guide-finish-early = Then not today. Nothing was brewed.
guide-finished-already = This brew is finished.
guide-care-clay = Rinse the pot with hot water only, no soap, and let it dry open.
guide-care-pot = Rinse the pot and the cups with hot water and let them dry open.
guide-finish-bags = That was it: a bag gives one cup. Enjoy it.
guide-why-set-out = Why: once the leaf is wet it doesn't wait, so everything stands within reach first.
guide-why-warm = Why: a cold wall takes several degrees from the first infusion, just when the leaf should open.
guide-why-measure = Why: { GRAMS($brew-leafG) } for { ML($brew-waterMl) } is what the times are worked out for; more leaf would want shorter ones.
guide-why-rinse = Why: the rinse wets and opens the leaf, so that the first cup isn't thin, and washes dust off.
guide-rinse-stood = Then it is no rinse any more, and much is in it already: drink it, with hot water added as you like, or pour it away. What follows is a little thinner.
guide-rinse-may-skip = You may leave it out: then say “without a rinse”.
guide-why-infuse = Why { DURATION($brew-seconds) }: that brings this cup to the strength aimed at, from what the leaf still holds and has done so far.
guide-why-hold = Why now: the time counts from your tap; pouring off stops the leaf.
guide-why-whisk = Why: powder doesn't dissolve, it floats; whisking spreads it and the foam softens it.

# my tea
choice-my-tea = My tea
choice-my-vessels = My vessels
choice-my-vessel = { $item-called ->
    [none] { VESSEL($item-vessel) }
   *[other] { $item-called }
}, { ML($item-volumeMl) }
choice-my-vessel-use = Brew in it
choice-my-vessel-name = Name it
choice-my-vessel-forget = Forget it
choice-my-brews = My brews
choice-my-brew-again = { $item-tea ->
    [none] { FAMILY($item-family) }
   *[other] { TEA($item-tea) }
} again, { VESSEL($item-vessel) } { ML($item-volumeMl) }
choice-my-taste-reset = { FAMILY($item) } as usual again
    .typed = as usual again / the usual way again / the usual way / forget that / forget my taste / forget that taste / without my taste / not like that / like everybody / put it back to normal / back to normal
my-nothing-yet = I remember nothing of your tea yet.
my-told-taste = { FAMILY($family) }: { LIST($parts) }.
my-told-usual = as usual
my-told-cooler = { $degrees } °C cooler
my-told-hotter = { $degrees } °C hotter
my-told-lighter = { PERCENT($share) } lighter
my-told-stronger = { PERCENT($share) } stronger
my-told-less-leaf = { PERCENT($share) } less leaf
my-told-more-leaf = { PERCENT($share) } more leaf
my-told-tea = { TEA($tea) }
my-told-family = { FAMILY($family) }
my-told-brew = { $name }, { VESSEL($vessel) } { ML($volumeMl) }, { $days ->
    [0] today
    [one] a day ago
   *[other] { $days } days ago
}: { DURATIONS($times) }{ $how }
my-told-was-untold = .
my-told-was-right = ; just right.
my-told-was-bitter = ; bitter.
my-told-was-strong = ; strong.
my-told-was-dry = ; dry in the mouth.
my-told-was-weak = ; weak.
my-told-was-flat = ; flat.
my-told-was-sour = ; sour.
my-told-was-lost-scent = ; little scent.
my-vessels-are = { $count ->
    [one] One vessel.
   *[other] { $count } vessels.
}
my-brews-are = { $count ->
    [one] One brew kept.
   *[other] Your last { $count } brews.
}
my-keeps = Kept as your usual:
my-told-keeps = { $name }, { VESSEL($vessel) } { ML($volumeMl) }: { GRAMS($leafG) }, { DEGREES($waterC, $unit) }.
my-usual-gone = Let go of: that tea is planned afresh again.
choice-my-usual-drop = { $item-tea ->
    [none] { FAMILY($item-family) }
   *[other] { TEA($item-tea) }
}: forget my usual
my-taste-gone = Forgotten: { FAMILY($family) } is as usual again.
my-choose-vessel = These I know. Which one?
my-one-vessel = { $called ->
    [none] { VESSEL($vessel) }
   *[other] { $called } ({ VESSEL($vessel) })
}, { ML($volumeMl) }
my-vessel-gone = Forgotten.
my-ask-vessel-name = What do you call it? I will know it by that name.
my-vessel-named = From now on I know it by that name.
my-no-vessels = I know no vessel of yours.
my-no-brews = No brew is kept.

# labels for the shelf
label-sheet-title = Labels, { $shop }
label-vessel = { VESSEL($vessel) }, { ML($volumeMl) }
label-plan = { GRAMS($leafG) } · { DEGREES($waterC) }{ $rinseS ->
    [none] { "" }
   *[other] { " " }· rinse { DURATION($rinseS) }
} · { $more ->
    [true] first { $shown }: { DURATIONS($first) }
   *[false] { DURATIONS($first) }
}{ $count ->
    [one] , once
   *[other] { " " }· { $count } infusions
}
label-scan = Scan for the full plan and cautions
label-made = { $count ->
    [one] One label
   *[other] { $count } labels
} on { $pages ->
    [one] one page
   *[other] { $pages } pages
}: { $file }
label-print-as-is = Print at actual size (100 %), not fitted to the page.
label-left-out-long = Left out { TEA($tea) }: “{ $text }” is too long for a label of { $size }.
label-left-out-letters = Left out { TEA($tea) }: something in “{ $text }” cannot be written with the letters there are.
label-origin-missing = The code on each label opens the page: say where it stands, with --origin https://tea.example.org or as NINTHPOUR_ORIGIN.
label-origin-wrong = “{ $origin }” is no address to print. Write it like https://tea.example.org, without a path.
label-paper-unknown = There is no paper “{ $paper }”; there is { $allowed }.
label-size-unknown = There is no size “{ $size }” on { $paper }; there is { $allowed }.
label-bot-wrong = “{ $bot }” is no name of a Telegram bot.
label-unwritable = The labels cannot be written to { $file }. Name a file in a folder that is there.

# core/lessons: what those who booked a lesson are told
lesson-told-head = “{ $title }”, { WHEN($starts) }{ $place ->
    [none] { "" }
   *[other] , { $place }
 }
lesson-told-to-bring = { $bring ->
    [none] { "" }
   *[other] To bring: { $bring }.
 }
lesson-told-your-seats = { $seats ->
    [1] { "" }
   *[other] You have { $seats } seats.
 }
lesson-told-week-before = A lesson of yours is coming up: { lesson-told-head }. { lesson-told-your-seats } { lesson-told-to-bring }
lesson-told-evening-before = Your lesson is near: { lesson-told-head }. { lesson-told-your-seats } { lesson-told-to-bring } Can you come?
lesson-told-two-hours-before = See you soon: { lesson-told-head }. { lesson-told-your-seats }
lesson-told-thanks = Thank you for coming to “{ $title }”. Would you like to brew one of its teas at home?
lesson-told-thanks-only = Thank you for coming to “{ $title }”.
lesson-told-offer = { $seats ->
    [1] A seat has come free: { lesson-told-head }. It is kept for you until { WHEN($until) }.
   *[other] { $seats } seats have come free: { lesson-told-head }. They are kept for you until { WHEN($until) }.
 }
lesson-told-lapsed = The time to take the seat has passed, and it has gone on to the next: { lesson-told-head }. You may put yourself on the list again.
lesson-told-moved = Your lesson has been moved. It was to be { WHEN($was) }; now it is { lesson-told-head }. If the new time does not suit you, you may give your seat back.
lesson-told-lasts = Your lesson lasts { NUMBER($minutes) } minutes now: { lesson-told-head }. If that does not suit you, you may give your seat back.
lesson-told-cancelled = Your lesson will not take place: { lesson-told-head }. We are sorry.
lesson-told-cancelled-because = Your lesson will not take place: { lesson-told-head }. The shop writes: { $reason }
lesson-told-changed = Something has changed about your lesson. This is how it is now: { lesson-told-head }{ $teacher ->
    [none] { "" }
   *[other] , with { $teacher }
 }. { lesson-told-to-bring }
lesson-told-recomputed = The rules for the clocks have changed. Your lesson keeps its time at the shop: { lesson-told-head }. This puts your calendar right.
lesson-told-written = The shop writes about “{ $title }”, { WHEN($starts) }: { $text }
lesson-told-resumed = { $standing ->
    [waiting] This lesson takes place after all: { lesson-told-head }. You are on the waiting list as before.
   *[seated] Your lesson takes place after all: { lesson-told-head }. { $seats ->
        [1] Your seat is still yours; if the day no longer suits you, you may give it back.
       *[other] Your { $seats } seats are still yours; if the day no longer suits you, you may give them back.
     }
 }
lesson-told-written-to-all = The shop writes to everybody who is coming to its lessons: { $text }
lesson-told-nameless = no name given
choice-lesson-coming = I'm coming
choice-lesson-absent = I can't come
choice-lesson-accept = Take it
choice-lesson-decline = Leave it to others
choice-lesson-brew = Brew { TEA($tea) }

# flows/lesson.yaml and core/functions: lessons as students see them
lesson-list = These lessons are coming up.
lesson-more = { $count ->
    [1] And one more later.
   *[other] And { $count } more later.
 }
lesson-none = No lessons are planned at the moment. Ask again, or let the shop know what you would like to learn.
lesson-past-then = That day is past already.
lesson-one-by-one = One after the other: choose the first, and when it is booked the next.
lesson-none-such = There is no such lesson.
lesson-none-on = { $weekday ->
    [1] There is no lesson on Mondays.
    [2] There is no lesson on Tuesdays.
    [3] There is no lesson on Wednesdays.
    [4] There is no lesson on Thursdays.
    [5] There is no lesson on Fridays.
    [6] There is no lesson on Saturdays.
   *[7] There is no lesson on Sundays.
 }
lesson-which = Which of these shall it be?
lesson-detail-which = Each lesson has its own answer to that: choose one, and I tell you all of it.
lesson-costs = “{ $title }”: { $price }.
lesson-none-then = There is no lesson on that day.
lesson-told-elsewhen = { $moves ->
    [0] “{ $title }” is not on that day but { WHEN($starts) }.
   *[other] “{ $title }” has been moved to { WHEN($starts) }.
 }
lesson-of-level = { $level ->
    [advanced] For those who know a good deal:
    [intermediate] For those who have begun:
   *[beginner] For these nothing need be known before.
 }
lesson-glad = How good to hear.
lesson-glad-teas = How good to hear. Its teas can be brewed at home as well.
lesson-told-brewed = In “{ $title }” we brewed { LIST($teas) }.
lesson-no-teas = The teas of that lesson are not written down here. The shop knows; say “talk to the shop”.
lesson-which-tea = Which of them?
lesson-missed = That happens. It is given again:
lesson-missed-not-yet = That happens. It is not on the list again yet.
lesson-once-more = It is given again:
lesson-once-more-not-yet = It is not on the list again yet.
choice-lesson-wish = Tell the shop what I would like
lesson-which-for = For { $count }, then. Which of these lessons shall it be?
lesson-bring-along = Yes, as long as there are seats: book for all of you at once. Which one shall it be?
lesson-heard-nothing = I find your booking, and it stands. A message comes a week before, the evening before and two hours before, but not at night; those whose time was past when you booked are not sent.
lesson-not-booked-here = In this chat no seat is booked. If you booked at the shop, by telephone or in another chat, the shop has it on its list. Shall I pass on what you wrote, so that they look?
lesson-mail = Letters go only to those whom the shop has written down with their address. Shall I pass on what you wrote, so that it does so?
lesson-how-waits = When a lesson is full you can go on its waiting list. As soon as a seat comes free, the first on the list is offered it for a stated time, then the next; you are told here.
lesson-reminders-off = { $which ->
    [two-hours-before] I won't remind you on the day itself any more; a week before and the evening before stay.
    [evening-before] I won't remind you the evening before any more; a week before and two hours before stay.
    [week-before] I won't remind you a week before any more; the evening before and two hours before stay.
   *[off] I won't remind you of lessons any more.
  } If a lesson is moved or does not take place you are told all the same. “Turn reminders on” brings them back.
lesson-reminders-on = Reminders are on again.
lesson-reminders-are-off = You have turned off reminders{ $which ->
    [two-hours-before] {" "}on the day itself
    [evening-before] {" "}the evening before
    [week-before] {" "}a week before
   *[off] {""}
  }. “Turn reminders on” brings them back.
lesson-late = You have a seat in { $what }. Whether you can join late is for the shop to say: shall I pass on what you wrote, so that they know?
lesson-refund = Whether money comes back is for the shop to say: shall I pass on what you wrote?
lesson-late-unbooked = Whether one can join late is for the shop to say. Shall I pass on what you wrote?
lesson-reminds = I do that by myself for every seat you book: a week before, the evening before and two hours before, but not at night.
lesson-how-many = For how many people?
lesson-ask-name = Under which name shall I put it on the list at the door?
mistake-name-too-long = That is longer than a name. Please write it in at most { $most } characters.
mistake-name-without-letters = A name has letters.
lesson-named = Put down as { $name }.
lesson-nothing-booked = You have no booking at the moment.
lesson-mine = You have booked:
lesson-past = You were at:
lesson-give-back = Shall I give this back? { $what }
lesson-swap-stays = Your seat stays as it is.
lesson-swap-which = Which of your bookings do you mean?
lesson-move-to-which = To which one shall I move { $what }?
lesson-told-swap = Give back { $was } and take { lesson-told-seats } here instead: { lesson-told-head }?
lesson-told-swap-full = There is no room for you there, so your seat stays: { $was }.
lesson-told-swapped = Changed. You have { lesson-told-seats }: { lesson-told-head }. { $was } is given back; take it out of your calendar, if it is in there. The new one can be given back until { WHEN($until) }.
choice-lesson-swap = Yes, change it
    .typed = yes please / do it / change it
lesson-kept-seat = Then it stays yours.
lesson-subject = { $what ->
    [offer] A seat has come free
    [lapsed] The seat has gone on
    [lasts] It lasts longer or shorter
    [moved] Moved
    [cancelled] Does not take place
    [cancelled-because] Does not take place
    [changed] Something has changed
    [recomputed] Please look at your calendar
    [did-leave] Given back
    [taken-off] Given back
    [resumed] Takes place after all
    [put-back] Your seat
    [written] A word from the shop
    [reseated-by-shop] Your seats
    [transferred] Another lesson
    [written-to-one] A word from the shop
    [written-down] Your seat
    [written-down-waiting] On the waiting list
    [thanks] Thank you for coming
    [thanks-only] Thank you for coming
   *[other] A reminder
 }: “{ $title }”, { WHEN($starts) }
lesson-subject-all = A word from the shop
lesson-when = { WHEN($starts) }
lesson-told-line = { $n }. { lesson-told-head } – { lesson-told-state-short }
lesson-told-state-short = { $state ->
    [seated] you have { $seats ->
        [1] a seat
       *[other] { $seats } seats
     }
    [waiting] you are on the waiting list
    [offered] a seat is kept for you
    [full] full, { $waiting } waiting
   *[free] { $free ->
        [1] one seat free
       *[other] { $free } seats free
     }
 }
lesson-told-one = { lesson-told-head }. { $minutes } minutes{ $teacher ->
    [none] { "" }
   *[other] {" "}with { $teacher }
 }, { $level ->
    [advanced] for those who know a good deal
    [intermediate] for those who have begun
   *[beginner] nothing need be known before
 }{ $after ->
    [none] { "" }
   *[other] ; it builds on “{ $after }”
 }.{ $price ->
    [none] { "" }
   *[other] {" "}{ $price }.
 } { lesson-told-to-bring }
lesson-told-teas = We brew { LIST($teas) }.
lesson-told-state = { $state ->
    [seated] { $seats ->
        [1] You have a seat.
       *[other] You have { $seats } seats.
     } It can be given back until { WHEN($until) }.
    [waiting] You are number { $number } on the waiting list, with { $seats ->
        [1] one seat
       *[other] { $seats } seats
     } wished for.
    [offered] { $seats ->
        [1] A seat is kept for you until { WHEN($until) }.
       *[other] { $seats } seats are kept for you until { WHEN($until) }.
     }
    [full] It is full; { $waiting ->
        [0] nobody is waiting yet
        [1] one is waiting
       *[other] { $waiting } are waiting
     }.
   *[free] { $free ->
        [1] One seat is free.
       *[other] { $free } seats are free.
     }
 }
lesson-told-enrolled = { $seats ->
    [1] You have a seat: { lesson-told-head }.
   *[other] You have { $seats } seats: { lesson-told-head }.
 } I'll remind you before. It can be given back until { WHEN($until) }.
lesson-told-listed = You are on the waiting list: { lesson-told-head }. As soon as there is room for { $seats ->
    [1] you
   *[other] { $seats }
 }, I'll write to you.
lesson-told-full = { $free ->
    [0] “{ $title }”, { WHEN($starts) }, is full; { $waiting ->
        [0] nobody is waiting yet
        [1] one is waiting
       *[other] { $waiting } are waiting
     }.
    [1] Only one seat is free: { lesson-told-head }.
   *[other] Only { $free } seats are free: { lesson-told-head }.
 } Shall I put you on the waiting list?
lesson-told-did-coming = Good, see you there: { lesson-told-head }.
lesson-told-did-absent = Thank you for letting us know. { $seats ->
    [1] Your seat goes
   *[other] Your seats go
 } on to others: { lesson-told-head }.
lesson-told-did-accept = { $seats ->
    [1] The seat is yours: { lesson-told-head }.
   *[other] The { $seats } seats are yours: { lesson-told-head }.
 } I'll remind you before.
lesson-told-did-decline = The seat goes on to the next: { lesson-told-head }.
lesson-told-seats-same = You have { lesson-told-seats } already: { lesson-told-head }.
lesson-told-reseat = { lesson-told-head }: { $state ->
    [waiting] wait for { lesson-told-seats } instead of { $was }?
   *[seated] { lesson-told-seats } instead of { $was }?
 }
lesson-told-reseated = { $state ->
    [waiting] You now wait for { lesson-told-seats }
   *[seated] You now have { lesson-told-seats }
 }: { lesson-told-head }.
lesson-told-did-leave = Given back: { lesson-told-head }.
lesson-told-taken-off = The shop has taken you off the list: { lesson-told-head }. If you would like to come after all, or it is a mistake, just write here.
lesson-told-reseated-by-shop = The shop has changed your booking to { $seats ->
    [1] one seat
   *[other] { $seats } seats
 }; it was { $was }: { lesson-told-head }. If that is not right, just write here.
lesson-told-transferred = The shop has put you into another lesson: { lesson-told-head }. { lesson-told-your-seats } It takes the place of { $was }, which you can take out of your calendar. If that is not right, just write here.
lesson-told-written-to-one = The shop writes to you about “{ $title }”, { WHEN($starts) }: { $text }
lesson-told-put-back = { $standing ->
    [waiting] The shop has put you back on the waiting list, in the place you had: { lesson-told-head }.
   *[seated] The shop has put you back on the list: { lesson-told-head }. { lesson-told-your-seats }
 }
lesson-told-mine = { $n }. { lesson-told-head } – { $state ->
    [cancelled] does not take place
    [waiting] number { $number } on the waiting list
    [offered] a seat is kept for you
    [coming] { lesson-told-seats }, you are coming
   *[seated] { lesson-told-seats }
 }
lesson-told-seats = { $seats ->
    [1] one seat
   *[other] { $seats } seats
 }
lesson-told-was = “{ $title }”, { WHEN($starts) }
mistake-no-such-lesson = This lesson is not on the list any more.
mistake-gone-lesson = { $why ->
    [cancelled] “{ $title }”, { WHEN($starts) }, has been cancelled.
    [over] “{ $title }”, { WHEN($starts) }, is over.
   *[begun] “{ $title }”, { WHEN($starts) }, has begun already.
 }
mistake-no-such-booking = I find no such booking of yours.
choice-lesson-see = { $title }, { WHEN($starts, style: "short") }
choice-lesson-later = Later ones
    .typed = later / more / next
choice-lesson-list = Lessons
    .typed = lessons / the lessons / all lessons
choice-lesson-mine = My lessons
    .typed = my lessons / my bookings / what have I booked
choice-lesson-enrol = Book seats
    .typed = book / book a seat / yes please
choice-lesson-wait = Put me on the waiting list
    .typed = waiting list / wait
choice-lesson-seats = { $count }
choice-lesson-leave = Give it back
    .typed = cancel / cancel my booking
choice-lesson-give-back = Yes, give it back
choice-lesson-keep = No, keep it
choice-lesson-reseat = Yes, change it
    .typed = change it
choice-lesson-leave-so = No, leave it so
choice-lesson-nameless = No name
choice-lesson-done = That is all

# flows/lesson-desk.yaml and core/functions/desk-*: lessons as the shopkeeper sees them
choice-lesson-desk = Lessons, behind the counter
    .typed = lessons desk / plan lessons / behind the counter
desk-lessons = These lessons are planned.
desk-which = Which lesson do you mean?
desk-none = No lessons are planned. Write one in a sentence, or tap “Add a lesson”.
desk-told-line = { $n }. “{ $title }”, { WHEN($starts) } – { desk-told-taken }
desk-told-taken = { $taken } of { $seats } seats taken{ $waiting ->
    [0] { "" }
   *[other] , { $waiting } waiting
 }
desk-undelivered-hint = Some messages could not be delivered.
choice-desk-lesson = { $n }. { $title }
choice-desk-later = Later ones
choice-desk-add = Add a lesson
    .typed = add a lesson / new lesson
choice-desk-today = Today
    .typed = today's list / who comes today / who is coming today / the morning / this morning
choice-desk-asked = What is asked for
    .typed = what is asked for
choice-desk-undelivered = What could not be delivered
choice-desk-code = A code for a colleague
desk-what-next = What next?
choice-desk-done = That is all
choice-desk-back = To the lessons
choice-desk-this = To this lesson
choice-desk-steps = Step by step
choice-desk-drop = Drop it
    .typed = drop / never mind / forget it / cancel / stop / leave it
choice-desk-leave = Leave it
    .typed = leave it / not now / leave them / better not / keep them / no leave it / no / no thanks / never mind / no never mind / dont / leave it be / forget it / keep it
desk-still-planning = I am in the middle of a new lesson. To leave it, say “drop it”.
desk-not-put-yet = It is not on the list yet.
choice-desk-put = Put it on the list
    .typed = yes / put it on / ok / do it / publish / publish it / add it / put it up / put it on the list / list it / put it online / perfect / looks good / great / that is right / thats right / go ahead / yes please / perfect put it up
choice-desk-again = Try again
choice-desk-found-tick = { $mark ->
    [here] Here: { $n }
   *[away] Stayed away: { $n }
}
choice-desk-list = Show the list again
choice-desk-people = Who is coming
    .typed = who is coming / who comes
choice-desk-guest = Add someone without a chat
choice-desk-move = Move it
    .typed = move / move it
choice-desk-alter = Change something
choice-desk-repeat = Repeat it
    .typed = repeat
choice-desk-write = Write to all who are coming
choice-desk-cancel = Cancel it
choice-desk-tick = { $mark ->
    [here] Here: { $n }
    [away] Stayed away: { $n }
   *[back] Take back: { $n }
}
choice-desk-release = Give back: { $n }
choice-desk-release-yes = Yes, give it back
    .typed = yes
choice-desk-undo = Put them back
    .typed = undo / undo that / undo it / put them back / put her back / put him back / that was wrong / a mistake / oops
choice-desk-guest-yes = Yes, write them down
    .typed = yes
choice-desk-move-yes = Yes, move it
    .typed = yes
choice-desk-no-reason = Without a reason
choice-desk-off-yes = Yes, call them off
    .typed = yes / yes please / do it / go ahead / call them off / call it off / cancel them / cancel it
choice-desk-off-why = Give a reason
    .typed = give a reason / with a reason / tell them why
choice-desk-off-only = Only “{ $title }”
choice-desk-cancel-yes = Yes, cancel it
    .typed = yes
choice-desk-write-yes = Yes, send it
    .typed = yes / send / send it / go ahead
choice-desk-door = Tick off who was here
    .typed = tick off / tick them off / who was here
choice-desk-alter-yes = Yes, change it
    .typed = yes / yes please / do it / change it
choice-desk-resume = It takes place after all
    .typed = undo / undo that / undo it / put it back / put them back / that was wrong / the wrong one / wrong one / a mistake / oops / it is on after all
choice-desk-resume-yes = Yes, put it back
    .typed = yes / yes please / do it / go ahead / put it back / put them back
choice-desk-resume-only = Only { $n }
choice-desk-resume-one = Put back { $n }
choice-desk-write-only = Only to those of { $n }
choice-desk-every-week = Every week
choice-desk-every-other-week = Every other week
choice-desk-every-month = Every month
choice-desk-seen = I have seen it
choice-desk-change = { desk-told-field }
desk-told-field = { $field ->
    [starts] Day and time
    [minutes] How long
    [seats] Seats
    [title] Name
    [level] For whom
    [place] Place
    [teacher] Teacher
    [price] Price
   *[bring] What to bring
 }
desk-add = Say it in one sentence, such as: Saturday 7 pm, white tea, 8 seats. “Every Saturday” repeats it.
desk-ask-field = { $field ->
    [starts] On which day, and at what time?
    [minutes] How many minutes does it last?
    [seats] How many seats?
    [title] What is it called?
    [level] For beginners, for those who have begun, or advanced?
    [place] Where?
    [teacher] Who teaches?
    [price] What does it cost, and where is it paid?
   *[bring] What should people bring?
 }
desk-planned = This is how I have understood it. Shall I put it on the list?
desk-planned-series = This is how I have understood it. Shall I put all of them on the list?
desk-told-level = { $level ->
    [advanced] advanced
    [intermediate] for those who have begun
   *[beginner] for beginners
 }
desk-told-draft = “{ $title }”, { WHEN($starts) }{ $year ->
    [none] { "" }
   *[other] {" "}({ $year })
 }, { $minutes } minutes, { $seats ->
    [1] one seat
   *[other] { $seats } seats
 }, { desk-told-level }{ $place ->
    [none] { "" }
   *[other] , { $place }
 }{ $teacher ->
    [none] { "" }
   *[other] , with { $teacher }
 }.{ $price ->
    [none] { "" }
   *[other] {" "}{ $price }.
 }{ $bring ->
    [none] { "" }
   *[other] {" "}To bring: { $bring }.
 }{ $tea ->
    [none] { "" }
   *[other] {" "}We brew { TEA($tea) }.
 }
desk-told-repeats = { $every ->
    [day] { $step ->
        [1] Every day
       *[other] Every { $step } days
     }
    [month] { $step ->
        [1] Every month
       *[other] Every { $step } months
     }, on the { $by ->
        [date] { NUMBER($day, type: "ordinal") ->
            [one] { $day }st
            [two] { $day }nd
            [few] { $day }rd
           *[other] { $day }th
         }
       *[weekday] { $nth ->
            [1] first
            [2] second
            [3] third
            [4] fourth
           *[other] last
         } { desk-told-weekday }
     }
   *[week] { $step ->
        [1] Every week
        [2] Every other week
       *[other] Every { $step } weeks
     }
 }{ $times ->
    [0] { $until ->
        [none] , without an end
       *[other] , until { DAY($until) }
     }
   *[other] , { $times } times{ $until ->
        [none] { "" }
       *[other] , until { DAY($until) } at the latest
     }
 }.
desk-told-weekday = { $weekday ->
    [1] Monday
    [2] Tuesday
    [3] Wednesday
    [4] Thursday
    [5] Friday
    [6] Saturday
   *[other] Sunday
 }
desk-told-date = { DAY($starts) }
desk-told-dates = That is { LIST($dates) }{ $more ->
    [0] .
    [open] , and so on.
   *[other] , and { $more } more.
 }
desk-told-again = “{ $title }” again, the first time { WHEN($starts) }.
desk-put = It is on the list.
desk-put-series = They are on the list; any that are more than ten weeks away come onto it as their time nears.
desk-told-lesson = “{ $title }”, { WHEN($starts) }, { $minutes } minutes, { desk-told-level }{ $place ->
    [none] { "" }
   *[other] , { $place }
 }{ $teacher ->
    [none] { "" }
   *[other] , with { $teacher }
 }. { desk-told-taken }.
desk-told-off = It has been cancelled.{ $reason ->
    [none] { "" }
   *[other] {" "}You wrote: { $reason }
 }
desk-people = On the list for “{ $title }”:
desk-nobody = Nobody has booked “{ $title }” yet.
desk-told-more = And { $count } more on the list.
desk-told-person = { $n }. { $name }, { $seats ->
    [1] one seat
   *[other] { $seats } seats
 }{ $state ->
    [coming] , is coming
    [here] , is here
    [away] , stayed away
    [waiting] , on the waiting list
    [offered] , a seat is kept for them
   *[booked] { "" }
 }
desk-told-person-untold = { desk-told-person } – no way to remind them
desk-tick = Tap a number when they are here. Whoever is here already has another button: stayed away after all.
desk-attended-never = No lesson has been given in the last weeks.
desk-attended-none = No lesson was given then.
desk-told-attended = “{ $title }”, { WHEN($starts) }: { $booked ->
    [0] nobody had booked.
   *[other] { $here } here, { $away } stayed away{ $unsaid ->
        [0] .
       *[other] , { $unsaid } not ticked off.
     }
 }
desk-told-attended-line = { $n }. { $name }, { $seats ->
    [1] one seat
   *[other] { $seats } seats
 } – { desk-told-came }
desk-told-came = { $state ->
    [here] was here
    [away] stayed away
   *[unsaid] not ticked off
 }
desk-told-attended-one = { $name } – “{ $title }”, { WHEN($starts) }: { desk-told-came }.
desk-told-ticked = { $n }. { $name } – { $mark ->
    [here] is here.
    [away] stayed away.
   *[back] taken back.
}
desk-ask-guest = Write name, mail address and seats in one line, such as: Mei Lin, mei@example.org, 2. Without an address the name is enough.
desk-ask-guest-name = Write name and seats in one line, such as: Mei Lin, 2. Letters cannot be sent yet, so you would tell them of changes yourself.
desk-told-no-phone = Telephone numbers are not kept here; please keep it yourself.
desk-told-guest-untold = { $name } gets { $count ->
    [1] one seat
   *[other] { $count } seats
 } in “{ $title }”, { WHEN($starts) }. Without an address there is no way to remind them or to tell them of a change; that would be for you to do. Shall I write them down?
desk-told-guest-seated = { $name } gets { $count ->
    [1] one seat
   *[other] { $count } seats
 } in “{ $title }”, { WHEN($starts) }, and a letter to { $mail }. Shall I write them down?
desk-told-guest-waiting = “{ $title }” does not have that many seats free. { $name } would go on the waiting list, with a letter to { $mail }. Shall I write them down?
desk-who = Who is that about? Write the name.
desk-found-none = I find nobody of that name on the lists.
desk-found-one = On the lists:
desk-found-some = That fits more than one:
desk-found-which = That fits more than one. Who is it?
desk-told-found = { $n }. { $name } – “{ $title }”, { WHEN($starts) }, { $seats ->
    [1] one seat
   *[other] { $seats } seats
}{ $state ->
    [coming] , is coming
    [here] , is here
    [away] , stayed away
    [waiting] , on the waiting list
    [offered] , a seat is kept for them
   *[booked] { "" }
}{ $reach ->
    [none] {" "}– no way to remind them
   *[other] { "" }
}
desk-told-release = { $name } gives back { $standing ->
    [waiting] the place on the waiting list
   *[other] { $count ->
        [1] the seat
       *[other] { $count } seats
     }
 } in “{ $title }”, { WHEN($starts) }.{ $reach ->
    [mail] {" "}They get a letter.
    [chat] {" "}They are told in their chat.
   *[other] { "" }
 } Shall I give it back?
desk-released = Given back; who waits is offered what is free.
desk-put-back = Put back on the list; whom a message reaches is told.
desk-gone-on = That seat has gone on already, so it can't be undone from here.
desk-told-they-hear = { $reach ->
    [mail] {" "}They get a letter.
    [chat] {" "}They are told in their chat.
   *[other] {" "}No message reaches them: please tell them yourself.
 }
desk-told-reseat = { $name } gets { $seats ->
    [1] one seat
   *[other] { $seats } seats
 } instead of { $was } in “{ $title }”, { WHEN($starts) }.{ desk-told-they-hear } Shall I change it?
desk-told-ask-seats = How many seats shall { $name } have in all? Now it is { $was }: “{ $title }”, { WHEN($starts) }.
desk-told-seats-same = { $name } has { $was ->
    [1] one seat
   *[other] { $was } seats
 } already: “{ $title }”, { WHEN($starts) }. How many shall it be?
desk-told-transfer = { $name } gives back { $was } and gets { $count ->
    [1] one seat
   *[other] { $count } seats
 } in “{ $title }”, { WHEN($starts) }.{ desk-told-they-hear } Shall I change it?
desk-told-ask-lesson = Into which lesson shall { $name } go? Write its day or its name. Now it is “{ $title }”, { WHEN($starts) }.
desk-told-none-there = There is no other lesson then. Into which one shall { $name } go? Write its day or its name.
desk-told-ask-note = What shall I write to { $name }? It goes out word for word, to nobody else.
desk-told-note = To { $name } alone: “{ $text }”. { $reach ->
    [mail] It goes out as a letter.
   *[other] It goes to their chat.
 } Shall I send it?
desk-guest-changed = Changed.
desk-nothing-to-undo = There is nothing here that I could undo.
mistake-lesson-guest-there = They have a booking in that lesson already.
mistake-lesson-guest-no-room = “{ $title }”, { WHEN($starts) }, has { $most } seats, { $free } of them free: { $name } can't have { $seats }. More seats can be added with “Change something”.
mistake-lesson-guest-untold = No message reaches { $name }: there is no address, or they have turned the house away. Please tell them yourself.
choice-desk-found-this = { $n }
choice-desk-guest-seats = Change the seats
choice-desk-guest-other = Put into another lesson
choice-desk-guest-write = Write to them
choice-desk-guest-other-yes = Yes, put them there
    .typed = yes / yes please / do it / change it
choice-desk-reverse = Undo it
    .typed = undo / undo that / that was wrong / a mistake / oops / put it back / change it back
desk-guest-down = Written down; the letter is on its way.
desk-guest-down-untold = Written down. In the list it says that there is no way to remind them.
desk-ask-move = To when? A day keeps the hour, an hour keeps the day.
desk-told-move = “{ $title }” moves from { WHEN($was) } to { WHEN($starts) }. { desk-told-reach } Shall I move it?
desk-told-lasts = “{ $title }”, { WHEN($starts) }, lasts { NUMBER($minutes) } minutes from now on. { desk-told-reach } Shall I change it?
desk-told-reach = { $reached ->
    [0] { $unreached ->
        [0] Nobody has booked.
        [1] There is one booking, with no way to tell them from here: please do it yourself.
       *[other] There are { $unreached } bookings, with no way to tell them from here: please do it yourself.
     }
    [1] One booking will be told.{ desk-told-unreached }
   *[other] { $reached } bookings will be told.{ desk-told-unreached }
 }
desk-told-unreached = { $unreached ->
    [0] { "" }
    [1] {" "}One more has no way to be told from here: please tell them yourself.
   *[other] {" "}{ $unreached } more have no way to be told from here: please tell them yourself.
 }
desk-moved = Moved, and everybody who booked is being told.
desk-moved-some = Moved. Whom no message reaches is listed under “What could not be delivered”; please tell them yourself.
desk-ask-reason = Why? What you write goes to everybody who booked, word for word.
desk-told-cancel = “{ $title }”, { WHEN($starts) }, will not take place. { desk-told-reach } Shall I cancel it?
desk-cancelled = Cancelled, and everybody who booked is being told.
desk-cancelled-some = Cancelled. Whom no message reaches is listed under “What could not be delivered”; please tell them yourself.
desk-off-which = Which series shall end?
desk-off-none = There is no series on the list.
desk-off-nothing = No lesson is on those days, so there is nothing to call off.
desk-off-later = None of them is on the list yet; they would not come onto it.
desk-off-changed = One of them has changed meanwhile. This is how it stands now.
desk-off-sure = { $count ->
    [1] This lesson would not take place. Shall I call it off?
   *[other] These { $count } lessons would not take place. Shall I call them off?
 }
desk-told-off-more = { $more ->
    [1] And one more.
   *[other] And { $more } more.
 }
desk-told-series-ends = “{ $title }” ends then: nothing comes onto the list after { DAY($starts) }.
desk-told-series-skips = “{ $title }” would leave out as well, not on the list yet: { LIST($dates) }.
desk-told-off-people = { desk-told-reach }{ $people ->
    [0] { "" }
    [1] {" "}That is one person, who hears of each lesson by itself.
   *[other] {" "}They are { $people } people, who hear of each lesson by itself.
 }
desk-told-off-reason = With this reason, word for word: “{ $reason }”
desk-off-put = Called off, and everybody who booked is being told.
desk-off-put-quietly = Called off; nobody had booked.
desk-off-put-some = Called off. Whom no message reaches is listed under “What could not be delivered”; please tell them yourself.
desk-off-put-later = Done: they will not come onto the list.
desk-resume-sure = { $count ->
    [0] Nothing of it was on the list yet. Shall I undo it?
    [1] This lesson would take place after all. Shall I put it back?
   *[other] These { $count } lessons would take place after all. Shall I put them back?
 }
desk-resume-seats = The seats are as they were; whoever can't come any more may give theirs back.
desk-told-series-back = “{ $title }” goes on as before.
desk-resume-none = No lesson to come is called off.
desk-resumed = Back on the list, and everybody who booked is being told.
desk-resumed-some = Back on the list. Whom no message reaches is listed under “What could not be delivered”; please tell them yourself.
desk-resumed-quietly = Back on the list.
desk-off-listed = Called off:
desk-ask-alter = What shall be different?
desk-told-alter = “{ $title }”, { WHEN($starts) } – { desk-told-field }: { $words }. { desk-told-reach } Shall I change it?
desk-reminds = Everybody with a seat is reminded by the house: a week before, the evening before and two hours before, but not at night. For anything else, write to them.
desk-told-altered = Changed: “{ $title }”, { WHEN($starts) } – { desk-told-field }: { $words }. Those who booked are told if it concerns them.
desk-ask-repeat = How often?
desk-ask-write = What shall I tell them? It goes out word for word.
desk-write-sure = To those of “{ $title }”, { WHEN($starts) }: “{ $text }”. { $reached ->
    [0] It reaches nobody from here.
    [1] It reaches one booking.
   *[other] It reaches { $reached } bookings.
 }{ desk-told-unreached } Shall I send it?
desk-untold = No message reaches { LIST($names) }.
desk-told-name = { $name }
desk-write-nobody = Nobody has booked, so there is nobody to write to.
desk-write-all-sure = “{ $text }” goes to { $reached ->
    [0] nobody from here
    [1] one person
   *[other] { $reached } people
 }{ $count ->
    [1] { "" }
   *[other] {" "}in { $count } lessons, once to each
 }.{ desk-told-unreached } Shall I send it?
desk-written = It is on its way.
desk-written-some = It goes to whom it reaches. The others are listed under “What could not be delivered”; please tell them yourself.
desk-nothing-today = No lesson today.
desk-told-next = The next one: “{ $title }”, { WHEN($starts) } – { desk-told-taken }
desk-none-then = No lesson is on that day.
desk-no-stock = I keep no list of what is in stock: whoever asks for it is told so, and the question comes to you. A tea that is new, or brewed otherwise, goes into the shop's own files, and is known here from the next start on.
desk-swaps-singly = Lessons move one at a time, each with its own letter to those who booked. Say for example “move the first cup on the 12th to the 19th at 3 pm”, and then the same of the other.
desk-hours-stay = What customers are told of your opening hours stays as it is: that stands among the shop's own answers.
desk-told-day = Today: “{ $title }”, { WHEN($starts) } – { desk-told-taken }
desk-told-morning = Good morning. This is today.
desk-told-waiting = { $count ->
    [1] One question is waiting.
   *[other] { $count } questions are waiting.
 }
desk-nothing-asked = Nobody has asked for a tea in the last 30 days.
desk-asked = Asked for most in the last 30 days:
desk-bitter = “Too bitter” was said of:
desk-told-tally = { $n }. { TEA($tea) } – { $count }
desk-all-delivered = Everything has been delivered, as far as is known.
desk-no-notes = I keep no notes on people, only what they told me themselves: please write it down in a book of your own.
desk-undelivered = These messages could not be delivered:
desk-told-undelivered = { $name }, { WHEN($at) } – { $why ->
    [address] the mail address does not work
    [could-not-be-reached] they could not be reached
    [no-address] they left no address; please tell them yourself
    [no-words] its words failed; please see what they were waiting for
    [restored] not sent after a backup was restored
    [too-late] it would have come too late
   *[other] the channel would not take it
 }
desk-told-undelivered-about = { desk-told-undelivered } ({ $about })
desk-seen = Put aside.
desk-code = This code makes one colleague a shopkeeper, once, within ten minutes. They write it here in their own chat:
    { $code }
desk-code-told = A code was given out. A new one makes the old one worthless.
lesson-told-written-down = The shop has put you down: { lesson-told-head }. { lesson-told-your-seats } { lesson-told-to-bring }
lesson-told-written-down-waiting = The shop has put you on the waiting list: { lesson-told-head }. You get a letter when there is room.
mistake-lesson-no-mail = Letters cannot be sent yet: whoever runs the house has to name a mail server.
mistake-lesson-guest-no-mail = Letters cannot be sent yet: whoever runs the house has to name a mail server. Until then, write the name without an address.
mistake-lesson-guest-mail = “{ $words }” is no mail address. For someone without one the name is enough.
mistake-lesson-guest-no-name = I find no name in that line.
mistake-lesson-guest-name-long = A name has at most { $most } characters.
mistake-lesson-guest-waits-untold = { $free ->
    [0] There is no seat left
    [one] There is only one seat left
   *[other] There are only { $free } seats left
 }; for the waiting list an address is needed, since who waits is told of a free seat by mail.
mistake-lesson-words-too-long = Please say it in at most { $most } characters.
mistake-lesson-repeats-unclear = How often shall it come again? For example “every month”, “every other week, six times” or “the first Saturday of each month”.
mistake-lesson-not-said = I did not understand that here. Name a day and an hour to plan a lesson, or choose below.
mistake-lesson-repeats-already = This lesson is one of a series already.
