package limbway.model.explain.flip;

import java.util.Set;

import limbway.model.enclosure.Enclosure;

/** What must not be built, beyond what the model itself knows. */
@FunctionalInterface
public interface BuildLimits {

    /**
     * Whether something may stand like that.
     *
     * @param changed the whole layout then
     * @param subjects ids of the supports and resources that are new or stand elsewhere
     * @return false if, for example, animals would come within reach of a barrier there
     */
    boolean allow(Enclosure changed, Set<String> subjects);

    /**
     * Everything may be built that the model can compile.
     *
     * @return limits that allow all
     */
    static BuildLimits none() {
        return (changed, subjects) -> true;
    }
}
