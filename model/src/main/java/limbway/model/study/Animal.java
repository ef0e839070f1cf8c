package limbway.model.study;

import java.util.Optional;

import limbway.model.body.Body;

/**
 * One animal of the study.
 *
 * @param name shown name, unique within the study
 * @param body what it weighs, reaches and grips, a carried infant included
 * @param rank 1 for the animal that others give way to, larger numbers below it
 * @param follows name of the animal that it keeps close to, for example its mother; empty for one that follows nobody
 * @param group name of the group that it belongs to; animals of other groups are avoided
 */
public record Animal(String name, Body body, int rank, Optional<String> follows, String group) {

    /**
     * An animal of the only group that follows nobody.
     *
     * @param name shown name, unique within the study
     * @param body what it weighs, reaches and grips, a carried infant included
     * @param rank 1 for the animal that others give way to, larger numbers below it
     */
    public Animal(String name, Body body, int rank) {
        this(name, body, rank, Optional.empty(), "");
    }
}
