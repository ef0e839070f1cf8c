package limbway.model.alteration;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;

import limbway.model.enclosure.Bearing;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.Support;
import limbway.model.geometry.Point;
import limbway.model.study.Variant;

/** One change of a layout, as somebody would build it. */
public sealed interface Alteration {

    /**
     * A place that is gone to is put elsewhere.
     *
     * @param resource id of the place
     * @param at where to
     * @param on id of the support or platform that then carries it, or empty
     */
    record ResourceMoved(String resource, Point at, String on) implements Alteration {}

    /**
     * A place that is gone to is added.
     *
     * @param resource the place; its id is not in use
     */
    record ResourceAdded(Resource resource) implements Alteration {}

    /**
     * A rope, pole or beam is added.
     *
     * @param support the support; its id is not in use
     * @param tiedTo ids of the supports to which it is tied, which then no longer sway freely
     */
    record SupportAdded(Support support, Set<String> tiedTo) implements Alteration {

        /** Keeps a copy of the ids. */
        public SupportAdded {
            tiedTo = Set.copyOf(tiedTo);
        }
    }

    /**
     * A support is replaced by another of the same id: thinner, longer, elsewhere.
     *
     * @param support what stands there then
     */
    record SupportReplaced(Support support) implements Alteration {}

    /**
     * A support is taken away; what it carried stays where it is.
     *
     * @param support id of the support
     */
    record SupportTaken(String support) implements Alteration {}

    /**
     * A deck is added.
     *
     * @param platform the deck; its id is not in use
     */
    record PlatformAdded(Platform platform) implements Alteration {}

    /**
     * The layout with this change.
     *
     * @param enclosure what stands there before
     * @return what stands there then
     * @throws IllegalArgumentException naming an id that is unknown, or already in use
     */
    default Enclosure applyTo(Enclosure enclosure) {
        if (this instanceof ResourceMoved moved) {
            return enclosure.withResources(exchanged(
                    enclosure.resources(),
                    old -> old.id().equals(moved.resource()),
                    old -> new Resource(old.id(), old.kind(), moved.at(), moved.on(), old.stalls(), old.bedding()),
                    moved.resource()));
        }
        if (this instanceof ResourceAdded added) {
            requireNew(
                    added.resource().id(),
                    enclosure.resources().stream().map(Resource::id).toList());
            return enclosure.withResources(with(enclosure.resources(), added.resource()));
        }
        if (this instanceof SupportAdded added) {
            requireNew(
                    added.support().id(),
                    enclosure.supports().stream().map(Support::id).toList());
            List<Support> steadied = enclosure.supports().stream()
                    .map(old -> added.tiedTo().contains(old.id()) ? steadied(old) : old)
                    .toList();
            return enclosure.withSupports(with(steadied, added.support()));
        }
        if (this instanceof SupportReplaced replaced) {
            return enclosure.withSupports(exchanged(
                    enclosure.supports(),
                    old -> old.id().equals(replaced.support().id()),
                    old -> replaced.support(),
                    replaced.support().id()));
        }
        if (this instanceof SupportTaken taken) {
            List<Support> left = enclosure.supports().stream()
                    .filter(old -> !old.id().equals(taken.support()))
                    .toList();
            if (left.size() == enclosure.supports().size()) {
                throw new IllegalArgumentException("alteration: nothing is called \"" + taken.support() + "\"");
            }
            return enclosure.withSupports(left);
        }
        PlatformAdded added = (PlatformAdded) this;
        requireNew(
                added.platform().id(),
                enclosure.platforms().stream().map(Platform::id).toList());
        return enclosure.withPlatforms(with(enclosure.platforms(), added.platform()));
    }

    /**
     * Id of what is different then.
     *
     * @return id of a support, platform or resource
     */
    default String subject() {
        if (this instanceof ResourceMoved moved) {
            return moved.resource();
        }
        if (this instanceof ResourceAdded added) {
            return added.resource().id();
        }
        if (this instanceof SupportAdded added) {
            return added.support().id();
        }
        if (this instanceof SupportReplaced replaced) {
            return replaced.support().id();
        }
        return this instanceof SupportTaken taken
                ? taken.support()
                : ((PlatformAdded) this).platform().id();
    }

    /**
     * A layout with some changes.
     *
     * @param layout the layout before
     * @param name name of the new layout
     * @param alterations changes, each made after those before it
     * @return the new layout; what was altered counts as new to the animals
     * @throws IllegalArgumentException naming an id that is unknown, or already in use
     */
    static Variant variant(Variant layout, String name, List<Alteration> alterations) {
        Enclosure enclosure = layout.enclosure();
        Set<String> added = new TreeSet<>(layout.added());
        for (Alteration alteration : alterations) {
            enclosure = alteration.applyTo(enclosure);
            if (alteration instanceof SupportTaken) {
                added.remove(alteration.subject());
            } else {
                added.add(alteration.subject());
            }
        }
        return new Variant(name, layout.note(), enclosure, layout.keeping(), added);
    }

    private static Support steadied(Support old) {
        return new Support(
                old.id(),
                old.kind(),
                old.axis(),
                old.diameterM(),
                old.tipDiameterM(),
                old.material(),
                new Bearing(old.bearing().stiffnessNPerM(), old.bearing().bearsKg(), false));
    }

    private static <T> List<T> with(List<T> old, T fresh) {
        List<T> all = new ArrayList<>(old);
        all.add(fresh);
        return all;
    }

    private static <T> List<T> exchanged(List<T> old, Predicate<T> which, Function<T, T> by, String id) {
        if (old.stream().noneMatch(which)) {
            throw new IllegalArgumentException("alteration: nothing is called \"" + id + "\"");
        }
        return old.stream().map(one -> which.test(one) ? by.apply(one) : one).toList();
    }

    private static void requireNew(String id, List<String> known) {
        if (known.contains(id)) {
            throw new IllegalArgumentException("alteration: \"" + id + "\" is in use already");
        }
    }
}
