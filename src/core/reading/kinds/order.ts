/** Orders to a machine, which nobody here obeys. */

const order =
  /\b(?:ignore|disregard|forget|override|bypass)\b.{0,30}\b(?:instruction|prompt|rule|previous|above|guideline)|system prompt|drop table|<\s?script|忽略.{0,12}(?:指令|指示|规则)|无视.{0,12}(?:指令|指示|规则)|系统提示/;

export function isOrder(text: string): boolean {
  return order.test(text);
}
