/**
 * Animals living through days in a compiled enclosure, on MASON's clock.
 *
 * <p>Knows only {@code limbway.model}. Start at {@code experiment}, which repeats what {@code day} runs; {@code animal}
 * holds needs and choices, {@code chance} the random streams, {@code journal} what happened.
 */
package limbway.sim;
