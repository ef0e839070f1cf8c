package limbway.reports.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

import limbway.reports.lesson.LeftOut;
import limbway.reports.lesson.Lesson;
import limbway.reports.lesson.Step;
import limbway.reports.replay.Bundle;
import limbway.reports.replay.ReplayData;
import limbway.reports.words.LessonText;
import limbway.reports.words.Xml;

/**
 * A lesson as one HTML page that needs no other file and no network.
 *
 * <p>Without a script everything stands in order, with answers to unfold; the script shows one step after the other. On paper it
 * is a handout: questions with room to write, answers on the last page.
 */
public final class LessonPage {

    private LessonPage() {}

    /**
     * Writes the page.
     *
     * @param report what to teach
     * @return HTML, ending with a line end; the same report gives the same text
     */
    public static String html(LessonReport report) {
        Lesson lesson = report.lesson();
        Html html = Html.pageWithScripts(LessonText.TITLE + report.info().title(), resource("lesson.css"));
        html.element("p class=\"introduction\"", LessonText.INTRODUCTION);
        button(html, "print", LessonText.PRINT);
        html.close("header").open("main class=\"lesson\" data-choose=\"" + Xml.escape(LessonText.CHOOSE) + "\"");
        LessonStepView view = new LessonStepView(html, report);
        for (int i = 0; i < lesson.steps().size(); i++) {
            view.write(lesson.steps().get(i), i + 1, lesson.steps().size());
        }
        leftOut(html, lesson.leftOut());
        LessonAnswerSheet.write(html, lesson);
        made(html, report);
        report.replay().filter(replay -> showsWays(lesson)).ifPresent(replay -> html.markup(
                        "<script type=\"application/json\" class=\"replay-data\">"
                                + ReplayData.json(
                                        report.info().title(),
                                        List.of(replay.layout().withoutReasons()))
                                + "</script>\n")
                .markup(Bundle.modules()));
        html.markup("<script type=\"module\">\n" + resource("lesson.js") + "</script>\n");
        return html.end();
    }

    private static boolean showsWays(Lesson lesson) {
        return lesson.steps().stream().anyMatch(step -> step.id().equals("see"));
    }

    /** A button that does something only where the script runs, and is seen only there. */
    static void button(Html html, String name, String words) {
        html.open("p class=\"controls\"")
                .element("button type=\"button\" class=\"" + name + "\"", words)
                .close("p");
    }

    private static void leftOut(Html html, List<LeftOut> leftOut) {
        if (leftOut.isEmpty()) {
            return;
        }
        html.open("section class=\"left-out\"").paragraph(LessonText.LEFT_OUT);
        html.list(
                leftOut.stream().map(one -> one.what() + ": " + one.why() + ".").toList());
        html.close("section");
    }

    private static void made(Html html, LessonReport report) {
        var settings = report.info().settings();
        html.element(
                "p class=\"made\"",
                LessonText.MADE + report.info().scenario() + ", layout "
                        + report.info().layouts().get(0) + ", seed "
                        + settings.seed() + ", " + settings.replications() + " repetitions of " + settings.days()
                        + " days after " + settings.warmUpDays() + " of warm-up, Limbway "
                        + report.info().limbwayVersion() + ". " + LessonText.RECORD);
    }

    private static String resource(String name) {
        try (InputStream stream = Step.class.getResourceAsStream(name)) {
            if (stream == null) {
                throw new IllegalStateException("this program was packed without " + name);
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("this program cannot read " + name, e);
        }
    }
}
