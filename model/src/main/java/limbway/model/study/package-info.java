/**
 * One question: the layouts of an enclosure, the animals, and what the keepers do.
 *
 * <p>A study is what a scenario file is read into and what everything later starts from.
 */
package limbway.model.study;
