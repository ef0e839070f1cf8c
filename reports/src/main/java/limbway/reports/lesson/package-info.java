/**
 * A lesson for people who are new to an enclosure: why an ape takes the ground, made from the scenario's own data.
 *
 * <p>Knows the model, lives, measures, charts and words; no page, no file and no command. A lesson is a row of
 * {@link limbway.reports.lesson.Step steps}, each with its questions, their right answers and what is said to each choice;
 * every number in them is of a layout that was compiled or lived in. Start at {@link limbway.reports.lesson.Lesson}.
 */
package limbway.reports.lesson;
