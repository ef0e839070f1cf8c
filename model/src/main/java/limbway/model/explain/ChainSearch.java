package limbway.model.explain;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;

import limbway.model.enclosure.Support;

/** Finds the chain of islands on which the widest gap is least, and among those the sum of gaps. */
final class ChainSearch {

    /** Makes a chain over a support too thick to hold dearer than one without; small beside any gap that matters [m]. */
    private static final double THICK_M = 1e-6;

    private record Step(int from, int to, Gap gap, double missingM) {}

    private record Arrival(int island, double sumM) {}

    private final Map<Integer, List<Step>> steps = new LinkedHashMap<>();
    private final List<Double> widths = new ArrayList<>();
    private final Map<Integer, Support> tooThick;

    ChainSearch(Groups groups, Map<Long, Gap> gaps, Map<Integer, Support> tooThick, double reachM) {
        this.tooThick = tooThick;
        gaps.forEach((key, gap) -> {
            int a = groups.of((int) (key >>> 32));
            int b = groups.of((int) (long) key);
            double missingM = gap.clearM() > reachM ? gap.clearM() : 0;
            steps.computeIfAbsent(a, k -> new ArrayList<>()).add(new Step(a, b, gap, missingM));
            steps.computeIfAbsent(b, k -> new ArrayList<>()).add(new Step(b, a, gap.reversed(), missingM));
            widths.add(missingM);
        });
        Collections.sort(widths);
    }

    Optional<Chain> find(List<Integer> from, List<Integer> to) {
        Set<Integer> targets = new LinkedHashSet<>(to);
        int low = 0;
        int high = widths.size() - 1;
        Optional<Chain> best = high < 0 ? Optional.empty() : within(widths.get(high), from, targets);
        if (best.isEmpty()) {
            return best;
        }
        while (low < high) {
            int middle = (low + high) / 2;
            Optional<Chain> narrower = within(widths.get(middle), from, targets);
            if (narrower.isPresent()) {
                high = middle;
                best = narrower;
            } else {
                low = middle + 1;
            }
        }
        return best;
    }

    private Optional<Chain> within(double widestM, List<Integer> from, Set<Integer> targets) {
        Map<Integer, Double> sums = new LinkedHashMap<>();
        Map<Integer, Step> came = new LinkedHashMap<>();
        PriorityQueue<Arrival> queue =
                new PriorityQueue<>(Comparator.comparingDouble(Arrival::sumM).thenComparingInt(Arrival::island));
        for (int island : from) {
            sums.put(island, 0.0);
            queue.add(new Arrival(island, 0));
        }
        while (!queue.isEmpty()) {
            Arrival at = queue.poll();
            if (at.sumM > sums.get(at.island)) {
                continue;
            }
            if (targets.contains(at.island)) {
                return Optional.of(chain(at.island, came));
            }
            for (Step step : steps.getOrDefault(at.island, List.of())) {
                double sumM = at.sumM + step.missingM + (tooThick.containsKey(step.to) ? THICK_M : 0);
                if (step.missingM <= widestM && sumM < sums.getOrDefault(step.to, Double.POSITIVE_INFINITY)) {
                    sums.put(step.to, sumM);
                    came.put(step.to, step);
                    queue.add(new Arrival(step.to, sumM));
                }
            }
        }
        return Optional.empty();
    }

    private Chain chain(int arrived, Map<Integer, Step> came) {
        List<Gap> gaps = new ArrayList<>();
        List<Support> thick = new ArrayList<>();
        int at = arrived;
        while (true) {
            if (tooThick.containsKey(at)) {
                thick.add(0, tooThick.get(at));
            }
            Step step = came.get(at);
            if (step == null) {
                return new Chain(gaps, thick);
            }
            if (step.missingM > 0) {
                gaps.add(0, step.gap);
            }
            at = step.from;
        }
    }
}
