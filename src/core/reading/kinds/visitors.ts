/** Who comes along or stays away, told with no word on what may be drunk. */

/** "My sister is ill, just me": it is told why somebody stays away, and nobody asks what may be drunk. */
export const saysWhoComes =
  /\b(?:just|only) (?:me|the one|one of us|one seat)\b|\b(?:i|ill|i will) come alone\b|\bnot coming\b|\b(?:cant|cannot|wont) (?:come|make it|be (?:there|coming))\b|(?:我|自己)一个人(?:就好|来|去|嚟)|(?:就|只有|净系|得)我(?:一个|自己)|来不了|去不了|唔(?:嚟|来|去)得|改(?:成|为|做)?一[位个]/;

/** "Can my six year old come", "can I bring my daughter, she's 8": nobody asks what is good for them. */
export const bringsAlong = (words: string): boolean => asksToBring.test(words) && !ofDrinking.test(words);

const child =
  '(?:kids?|child|children|sons?|daughters?|boys?|girls?|toddler|baby|teen\\w*|niece|nephew|grand\\w+|(?:\\d{1,2}|[a-z]+)[ -]?(?:years?|yrs?|yo)(?:[ -]olds?)?|\\d{1,2}yo)';
const asksToBring = new RegExp(
  `\\b(?:can|could|may|would|is it (?:ok|okay|all right|alright) (?:if|for)) (?:my|our|a|the|his|her) (?:[a-z0-9]+ ){0,3}?${child},? (?:who is \\w+ |\\d{1,2}, ?)?(?:to )?(?:come|join|attend|take part|sit in|tag along)\\b|` +
    `\\b(?:bring|bringing|take) (?:along )?(?:my|our|a|the) (?:[a-z0-9]+ ){0,3}?${child}\\b(?! (?:some|a|the|tea|their|his|her) )|\\b(?:is|are) (?:kids|children|toddlers|babies|under \\w+s) (?:welcome|allowed)\\b`,
);
const ofDrinking =
  /\b(?:drinks?|drinking|drank|sip\w*|caffeine|tea ok|safe|allerg\w*|medic\w*|pregnan\w*|ill|sick|doctor|hospital|hurt|burn\w*|swallow\w*|choke\w*|round|inside|(?:come|came|coming) (?:out|up|down) (?:in|with))\b/;
