// What the page's pen asks of a way drawn on the section, handed on: `ui` does not see the room of lessons itself.

export {
  drawnWay,
  groundOf,
  lengthOf,
  type DrawnWay,
  type Ground,
  type Point,
} from '#learn/lesson/drawn-way.ts';
export type { Lesson, LessonOffer } from '#learn/lesson/lesson-schema.ts';
export { spokenLength } from '#learn/exercise/spoken-length.ts';
