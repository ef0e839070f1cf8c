package limbway.sim.experiment.link;

import java.util.function.Function;

import limbway.model.link.LinkLimits;
import limbway.model.study.Variant;
import limbway.sim.animal.DaySettings;
import limbway.sim.experiment.RunSettings;
import limbway.sim.experiment.trial.Criterion;
import limbway.sim.habitat.Habitat;

/**
 * What is asked.
 *
 * @param layout the layout to add links to
 * @param habitat makes a layout ready to be lived in
 * @param day how animals spend their day
 * @param settings seed, days, date, threads and warm-up; its replications are those of a check
 * @param demandReplications replications in which the trips are counted that the search goes by, 1 or more
 * @param limits what may be tied where
 * @param links the most links in one proposal, 1 to 3; 0 to look at what may fail alone
 * @param checked how many proposals are lived in, 1 or more
 * @param checkedFalls how many falls are lived in, 0 or more
 * @param offGround share of travel off the ground, the criterion that decides
 * @param groundTrips trips a day that touch the ground
 */
public record LinkQuestion(
        Variant layout,
        Function<Variant, Habitat> habitat,
        DaySettings day,
        RunSettings settings,
        int demandReplications,
        LinkLimits limits,
        int links,
        int checked,
        int checkedFalls,
        Criterion offGround,
        Criterion groundTrips) {}
