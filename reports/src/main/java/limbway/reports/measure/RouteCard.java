package limbway.reports.measure;

import java.util.Optional;
import java.util.OptionalInt;

import limbway.model.body.Body;
import limbway.model.explain.GroundReason;
import limbway.model.explain.flip.Flip;
import limbway.model.route.Search;

/**
 * What is known of the trips of one body between two places, with the doors in one state.
 *
 * @param body who travels
 * @param from name of the place where the trips start
 * @param to name of the place where they end
 * @param atSecond a time of day at which the doors are as they were on these trips [s after midnight]; empty where all
 *     doors were open that ever are
 * @param ways the cheapest way of each kind, from wherever in the first place it is cheapest
 * @param reason why they lead where they lead
 * @param tripsAbove trips off the ground, in all repetitions
 * @param tripsOnGround trips with a move on the ground, in all repetitions
 * @param groundM metres on the ground on all of them [m]
 * @param flip one change that turns such trips off the ground; empty where none was found or none was looked for
 * @param flipAsked whether one was looked for
 */
public record RouteCard(
        Body body,
        String from,
        String to,
        OptionalInt atSecond,
        Search.Reached ways,
        GroundReason reason,
        int tripsAbove,
        int tripsOnGround,
        double groundM,
        Optional<Flip> flip,
        boolean flipAsked) {}
