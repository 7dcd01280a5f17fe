/** What a vessel holds, told by something everybody knows: "like a coke can", 一碗飯那麼大. It is told back as a guess. */

/** Millilitres. Common practice, no source; of a fist and a ball: judgement. */
const things: readonly (readonly [RegExp, number])[] = [
  [
    /可乐罐|易拉罐|易开罐|[铝饮][罐料]罐|汽水罐|啤酒罐|一罐(?:可乐|汽水|啤酒)|罐装(?:可乐|汽水|饮料)|\b(?:coke|cola|soda|beer|drinks?) can\b|\bcan of (?:coke|cola|soda|beer)\b/,
    330,
  ],
  [/宝特瓶|\bwater bottle\b|矿泉水瓶|一瓶矿泉水/, 500],
  [/(?:红|葡萄)?酒瓶|\bwine bottle\b/, 750],
  [/(?:面|汤)碗|碗公|海碗|大碗|\bsoup bowl\b/, 500],
  [/饭碗|碗饭|吃饭的碗|食饭[的嘅]碗|\brice bowl\b/, 250],
  [/拳头|\bfist\b/, 200],
  [/\borange\b|橙子?|柳丁/, 200],
  [/\bapple\b|苹果/, 200],
  [/\bgrapefruit\b|柚子/, 400],
  [/网球|\btennis ball\b/, 150],
  [/鸡蛋|\begg\b/, 50],
];

/** "Bigger than a can" tells no size, and 換成飯碗 another vessel. */
const isCompared =
  /[换改用]|\b(?:use|using|instead|switch)\b|\b(?:bigger|smaller|more|less|larger) than\b|比.{1,12}[大小多少]|没有?.{1,10}那么大/;
/** Longer texts tell more than that. */
const longest = 40;

/** Takes a plain text that says how much the vessel holds. */
export function sizeOfThing(plain: string): number | null {
  if (plain.length > longest || /\d/.test(plain) || isCompared.test(plain)) return null;
  return things.find(([thing]) => thing.test(plain))?.[1] ?? null;
}

/** "A pot the size of an orange", told with the rest: the thing right behind. */
const asBigAs =
  /\b(?:(?:about |around |roughly )?the size of|as big as|big as|no bigger than|the same size as) (?:an?|my|one) (?:small |large |big |little |normal )?([a-z]+(?: [a-z]+)?)/;

export function sizeNamed(plain: string): number | null {
  const thing = asBigAs.exec(plain)?.[1];
  return thing === undefined ? null : (things.find(([known]) => known.exec(thing)?.index === 0)?.[1] ?? null);
}
