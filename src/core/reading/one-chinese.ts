/** Cantonese and Mandarin words of one meaning brought together, so that what is learnt from one serves the other. */

/** In the folded script of plainText. */
const sameWords: { readonly [word: string]: string } = {
  而家: '现在',
  听日: '明天',
  寻日: '昨天',
  今日: '今天',
  细路: '小孩',
  小朋友: '小孩',
  钟意: '喜欢',
  瞓觉: '睡觉',
  星期: '周',
  礼拜: '周',
  点解: '为什么',
  点样: '怎么',
  怎样: '怎么',
  边度: '哪里',
  几时: '什么时候',
  几钱: '多少钱',
  几多: '多少',
  几耐: '多久',
  朝早: '早上',
  雪柜: '冰箱',
  嘅: '的',
  喺: '在',
  唔: '不',
  咗: '了',
  冇: '没',
  饮: '喝',
  冲: '泡',
  俾: '给',
  畀: '给',
  佢: '他',
  系: '是',
  睇: '看',
  攞: '拿',
  边: '哪',
  啲: '些',
  嚟: '来',
  食: '吃',
  瞓: '睡',
  仲: '还',
  哋: '们',
  嗰: '那',
  咩: '什么',
  乜: '什么',
  搵: '找',
};
const sameWord = new RegExp(Object.keys(sameWords).join('|'), 'g');

export function oneChinese(plain: string): string {
  return plain.replace(sameWord, (word) => sameWords[word] ?? word);
}
