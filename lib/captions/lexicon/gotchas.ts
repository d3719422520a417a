import { lessonsOfPeople } from "./lessons-of-people.ts";
import { lessonsOfThings } from "./lessons-of-things.ts";

/**
 * What shows a lesson: something that bit, looks like something else, goes in two ways, or stands wrong in the book.
 * Strong words count alone; two weak ones in neighbouring sentences count together.
 */
export const strongLessons = { ...lessonsOfPeople, ...lessonsOfThings } as const;
