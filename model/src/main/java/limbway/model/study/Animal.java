package limbway.model.study;

import limbway.model.body.Body;

/**
 * One animal of the group.
 *
 * @param name shown name, unique within the study
 * @param body what it weighs, reaches and grips, a carried infant included
 * @param rank 1 for the animal that others give way to, larger numbers below it
 */
public record Animal(String name, Body body, int rank) {}
