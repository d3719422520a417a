/** English sentences of the workshop: parted, read as orders, and the verbs they begin with. */
export { determiners, type Further, furtherCommands, isVerb, readSentence } from "./command.ts";
export { type Sentence, sentencesOf } from "./sentences.ts";
export { alongside, alsoNouns, verbs } from "./verbs.ts";
export { type Word, wordsIn } from "./words.ts";
