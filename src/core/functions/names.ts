/** What flow files and sentences may name beside their own facts, for their check. What each holds is told by whoever makes it. */

/** What `heard.` may hold, for the check of flow files. */
export const heardNames: ReadonlySet<string> = new Set(
  (
    'language languageSure kind tea teas family vessel vessels material ware vesselFaint volumeMl leafG leafSpoons guests onlyGuests tempC ' +
    'noThermometer noScale elevationM style strength warmed rinsed drawnS bare taste act wants infusion unknownTea mistakes missing ' +
    'answer kept blank unit languageAlone lesson turn asks sizeWord sizeLikened unsure tellsNothing said plans errand named isAsking isNumber waits grumbles saves ' +
    'after awaited asksYield pouredAgo guestsMore few isLastOne hands isLate lateS countedTo steers asksWhere asksRefill asksOwnBrews asksOwnTaste asksLeft asksDrink forgotRinse takesIn justPoured nearAnswer skipTo coldAsk anyVessel noVessel isNameless look bags heldS isWarned mayBeWater poursNow stepsOn wasBoiling waterOn noWhisk wantsUsual stopsIt simmers asksWhich atWork boiledAgoS asksAdvice undoes cupsAsked cupsWanted likeTea compares packets tellsAge lacksLeaf rinsesTwice tellsCake stillDrinkable leafBy bareAsked isForeign coolsToC inKettleMl askedLines besides isLeftOpen forChild stockG faintAnswer complains asksDose asksRemedy simpler besideAnswer asksBoiling ofLesson doubtedC isLoose kettleC ofNext asksStand asksShopOf'
  ).split(' '),
);

/** What `house.` holds (conversation/house-facts.ts). */
export const houseNames = [
  'keeper',
  'staffed',
  'asked',
  'waitingCount',
  'channel',
  'code',
  'waiting',
  'answered',
  'kept',
  'standing',
  'everything',
  'lessons',
  'gone',
  'bookings',
  'doors',
  'past',
  'names',
  'series',
  'tzVersion',
  'mail',
  'freshCode',
  'tallies',
  'undelivered',
  'event',
] as const;
export type HouseName = (typeof houseNames)[number];

/** What `memory.` may hold without a flow that remembers it: a label shows the shop's own brew (content/shop-data.ts). */
export const rememberedByNoFlow: readonly string[] = ['usual'];

/** Beginnings of the keys that functions make up from codes in the data. */
export const madeUpKeys: readonly string[] = [
  'mistake-',
  'caution-',
  'why-',
  'plan-way-',
  'brew-fill-',
  'brew-water',
  'brew-heat-',
  'brew-dose-',
  'brew-boils-',
  'brew-ahead',
  'brew-lasts',
  'brew-about-',
  'brew-rinse-of-',
  'brew-caffeine-of-',
  'brew-leaf-',
  'brew-strength-',
  'brew-similar-',
  'brew-compared',
  'brew-each',
  'brew-kettle-',
  'brew-bowls',
  'brew-drawn-',
  'cup-',
  'brew-weighed-',
  'brew-stays-warm-',
  'taste-',
  'guide-told-',
  'my-told-',
  'desk-told-',
  'cold-',
];
