package limbway.model.shade;

import java.util.List;

/** What came of the search for a roof. */
public sealed interface RoofAnswer {

    /**
     * How far each platform is from ending the breaches, nearest first.
     *
     * @return one for each platform; none where nothing is to be mended
     */
    List<Shortfall> shortfalls();

    /** The rule is kept all the year: nothing to mend. */
    record NothingToMend() implements RoofAnswer {
        @Override
        public List<Shortfall> shortfalls() {
            return List.of();
        }
    }

    /**
     * The rule asks for more platforms in shade than there are: no roof can keep it.
     *
     * @param wanted platforms that the rule asks for
     * @param counted platforms that were counted, fewer than wanted
     */
    record TooFewPlatforms(int wanted, int counted) implements RoofAnswer {
        @Override
        public List<Shortfall> shortfalls() {
            return List.of();
        }
    }

    /**
     * The search was stopped before it had an answer.
     *
     * @param minutesBefore time in breach
     */
    record Interrupted(int minutesBefore) implements RoofAnswer {
        @Override
        public List<Shortfall> shortfalls() {
            return List.of();
        }
    }

    /**
     * A roof ends every breach; the whole audit with the roof in the layout says so.
     *
     * @param roof the smallest of its kind: plain roofs first, then those with one screen, and so on
     * @param minutesBefore time in breach without it
     * @param after the year with it, without a breach
     * @param shortfalls how far each platform was from ending the breaches
     */
    record Found(Roof roof, int minutesBefore, ShadeYear after, List<Shortfall> shortfalls) implements RoofAnswer {
        /** Keeps a copy of the list. */
        public Found {
            shortfalls = List.copyOf(shortfalls);
        }
    }

    /**
     * No roof of the family over one platform ends every breach.
     *
     * @param best the smallest that ends all that the best of the largest roofs ends
     * @param minutesBefore time in breach without it
     * @param after the year with it
     * @param lowestSunDeg least height of the sun above the level at the moments that stay in breach
     * @param highestSunDeg greatest height of the sun at those moments
     * @param minutesOfTwo time left at which shade on one platform more is not enough, whichever it is
     * @param shortfalls how far each platform is from ending the breaches
     */
    record NoneFound(
            Roof best,
            int minutesBefore,
            ShadeYear after,
            double lowestSunDeg,
            double highestSunDeg,
            int minutesOfTwo,
            List<Shortfall> shortfalls)
            implements RoofAnswer {
        /** Keeps a copy of the list. */
        public NoneFound {
            shortfalls = List.copyOf(shortfalls);
        }
    }
}
