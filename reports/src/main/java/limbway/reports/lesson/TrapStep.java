package limbway.reports.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import limbway.model.body.Body;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Support;
import limbway.model.graph.Grasp;
import limbway.reports.measure.Finding;
import limbway.reports.words.LessonSentence;
import limbway.reports.words.LessonText;
import limbway.sim.habitat.Habitat;

/** Something in this enclosure that looks as if it could be climbed on and cannot, as the audit found it. */
final class TrapStep {

    /** Kinds of findings that are about one support, the plainest first. */
    private static final List<String> OF_SUPPORT =
            List.of("too-thick", "weight-limit", "broken-by", "bends-away", "lost-to-wire");

    /** A gap that some cross and some do not. */
    private static final String GAP = "gap-for-some";

    private static final int MOST_SOUND = 3;
    private static final double HALF_PERCENT = 50;

    private final Habitat habitat;
    private final List<Finding> findings;

    private TrapStep(LessonSource source) {
        this.habitat = source.habitat();
        this.findings = source.audit().findings();
    }

    static void add(LessonSource source, Lesson.Draft draft) {
        Optional<Question> question = new TrapStep(source).question();
        if (question.isEmpty()) {
            draft.leaveOut(LessonText.TRAP, LessonText.NO_TRAP);
            return;
        }
        draft.add(new Step.Asked(
                "trap",
                LessonText.TRAP,
                List.of(new Block.Words(LessonText.BEFORE_TRAP)),
                List.of(question.get()),
                List.of()));
    }

    private Optional<Question> question() {
        for (String kind : OF_SUPPORT) {
            for (Finding finding : findings) {
                if (finding.kind().equals(kind) && isStrong(finding)) {
                    Optional<Question> question = ofSupport(finding);
                    if (question.isPresent()) {
                        return question;
                    }
                }
            }
        }
        return findings.stream()
                .filter(finding -> finding.kind().equals(GAP))
                .findFirst()
                .flatMap(this::ofGap);
    }

    /** Live wire that takes less than half of a support is no trap yet. */
    private static boolean isStrong(Finding finding) {
        return !finding.kind().equals("lost-to-wire") || finding.figure().orElse(0) < HALF_PERCENT;
    }

    private Optional<Question> ofSupport(Finding trap) {
        Enclosure enclosure = habitat.layout().enclosure();
        Optional<Body> who = habitat.bodies().stream()
                .filter(body -> trap.body().isEmpty() || body.name().equals(trap.body()))
                .findFirst();
        boolean isSupport =
                enclosure.supports().stream().anyMatch(one -> one.id().equals(trap.place()));
        if (who.isEmpty() || !isSupport) {
            return Optional.empty();
        }
        List<String> sound = sound(who.get());
        if (sound.isEmpty()) {
            return Optional.empty();
        }
        String answer = LessonSentence.sentence(trap.text()) + " " + LessonSentence.mend(trap.mend());
        // in the order of the drawing, so that the place among them tells nothing
        List<AnswerChoice> choices = new ArrayList<>();
        for (Support support : enclosure.supports()) {
            if (support.id().equals(trap.place())) {
                choices.add(
                        AnswerChoice.of(LessonSentence.support(support), true, LessonSentence.verdict(true, answer)));
            } else if (sound.contains(support.id())) {
                choices.add(AnswerChoice.of(
                        LessonSentence.support(support), false, LessonSentence.sound(support.id(), who.get(), answer)));
            }
        }
        return Optional.of(new Question("trap", LessonSentence.whichTrap(who.get()), choices, answer));
    }

    /** Supports that a body can be on all along and that no finding speaks against. */
    private List<String> sound(Body body) {
        Set<String> doubted = new TreeSet<>();
        for (Finding finding : findings) {
            if (OF_SUPPORT.contains(finding.kind())
                    && (finding.body().isEmpty() || finding.body().equals(body.name()))) {
                doubted.add(finding.place());
            }
        }
        return habitat.layout().enclosure().supports().stream()
                .filter(support -> !doubted.contains(support.id()) && Grasp.canUse(body, support))
                .map(Support::id)
                .limit(MOST_SOUND)
                .toList();
    }

    private Optional<Question> ofGap(Finding gap) {
        double wideM = gap.figure().orElseThrow();
        List<String> cross = new ArrayList<>();
        List<String> cannot = new ArrayList<>();
        for (Body body : habitat.bodies()) {
            (body.gapReachM() >= wideM ? cross : cannot).add(body.name());
        }
        if (cross.isEmpty() || cannot.isEmpty()) {
            return Optional.empty();
        }
        String answer = LessonSentence.sentence(gap.text()) + " " + LessonSentence.mend(gap.mend());
        return Optional.of(new Question(
                "trap",
                LessonSentence.whoCrosses(gap.place(), wideM),
                List.of(
                        AnswerChoice.of(
                                LessonText.EVERYBODY,
                                false,
                                LessonSentence.verdict(false, LessonSentence.only(cross), answer)),
                        AnswerChoice.of(LessonSentence.only(cross), true, LessonSentence.verdict(true, answer)),
                        AnswerChoice.of(
                                LessonText.NOBODY,
                                false,
                                LessonSentence.verdict(false, LessonSentence.only(cross), answer))),
                answer));
    }
}
