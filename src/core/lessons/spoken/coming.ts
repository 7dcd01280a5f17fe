/** "I'll be there", "oh great, yes please": yes to a reminder or an offer, in other words. */
import { plain } from './cut.ts';

/** Longer texts tell more than that. */
const longest = 60;

const coming =
  /^(?:(?:yes|yep|yeah|sure|of course|ok|okay|great|thanks|thank you|hi)[,.! ]+)*(?:(?:i|we|both of us)(?:'ll| will| can| shall)? (?:both )?(?:be there|come|make it)|(?:i'm|i am|we're|we are)(?: both)? coming|(?:i|we) can|see (?:you|ya|u) (?:there|tomorrow|then|soon|later|on \w+))\b[\w\s,.!]{0,24}$|^(?:[會会好嗯可以行]|可以的|沒問題|没问题|當然|当然)*[,，。!！ ]*(?:我們|我们|我哋|我|兩個人?都|两个人?都)*(?:一定|準時|准时|都)*(?:[會会](?:準時|准时)?|可以|能)?(?:到|去|來|来|嚟)(?:的|㗎|喔|哦|啊|啦)*[。!！～~]*$|^(?:明天|明日|聽日|听日|星期.|[週周].|到時|到时)?[見见][。!！～~]*$/iu;

export function saysComing(sentence: string): boolean {
  const text = plain(sentence).replaceAll('’', "'");
  return text.length <= longest && coming.test(text);
}

const accepts =
  /^(?:(?:oh|ah|wow|hi|great|lovely|fantastic|brilliant|wonderful|perfect|super|amazing|thanks|thank you|ok|okay)[,.!\s]+)*(?:yes|yes please|yep|yeah|sure|(?:i|we)(?:'ll| will| would| want to|'d love to)? (?:love to )?take (?:it|that|them)|please (?:do|keep it))\b[\w\s,.!]{0,24}$|^(?:太好了|好啊|好呀|好的|真的|哇)*[,，。!！ ]*(?:我|我們|我们)?(?:要|想要|接受)(?:這個|这个|那個|那个|座位|位子)*(?:了|的|啊|呀)*[。!！～~]*$/iu;

/** To a seat that is offered. */
export function saysYesTo(sentence: string): boolean {
  const text = plain(sentence).replaceAll('’', "'");
  return text.length <= longest && accepts.test(text);
}
