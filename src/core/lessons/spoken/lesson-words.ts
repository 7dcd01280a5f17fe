/** What lessons are called in English; one place for all who look for them. */
export const lessonWords = '(?:lessons?|class(?:es)?|courses?|workshops?)';
