package limbway.reports.page;

import java.util.List;

import limbway.reports.lesson.AnswerChoice;
import limbway.reports.lesson.Block;
import limbway.reports.lesson.Question;
import limbway.reports.lesson.Step;
import limbway.reports.words.LessonText;

/** Writes the steps of a lesson. */
final class LessonStepView {

    /** Room on paper to say why. */
    private static final int LINES = 2;

    private final Html html;
    private final LessonReport report;

    LessonStepView(Html html, LessonReport report) {
        this.html = html;
        this.report = report;
    }

    void write(Step step, int number, int of) {
        boolean answered = step instanceof Step.Told;
        html.open("section class=\"step step-" + step.id() + (answered ? "" : " asked") + "\" aria-labelledby=\"step-"
                + step.id() + "\"");
        html.element("p class=\"place\"", LessonText.STEP + number + " of " + of);
        track(number, of);
        html.element("h2 id=\"step-" + step.id() + "\" tabindex=\"-1\"", step.title());
        step.before().forEach(this::block);
        if (step instanceof Step.Asked asked) {
            asked.questions().forEach(this::question);
            after(asked.after());
        } else if (step instanceof Step.Written written) {
            written(written);
            after(written.after());
        }
        html.open("p class=\"controls\"");
        if (number > 1) {
            html.element("button type=\"button\" class=\"back\"", LessonText.BACK);
        }
        if (number < of) {
            html.element("button type=\"button\" class=\"next\"", LessonText.NEXT);
        } else {
            html.element("button type=\"button\" class=\"print\"", LessonText.PRINT);
        }
        html.close("p").close("section");
    }

    private void track(int number, int of) {
        html.open("div class=\"track\" aria-hidden=\"true\"");
        for (int i = 1; i <= of; i++) {
            html.markup("<i" + (i < number ? " class=\"past\"" : i == number ? " class=\"here\"" : "") + "></i>");
        }
        html.close("div");
    }

    private void after(List<Block> blocks) {
        if (!blocks.isEmpty()) {
            html.open("div class=\"after\"");
            blocks.forEach(this::block);
            html.close("div");
        }
    }

    private void block(Block block) {
        if (block instanceof Block.Words words) {
            html.paragraph(words.text());
        } else if (block instanceof Block.Points points) {
            html.list(points.items());
        } else if (block instanceof Block.Shown shown) {
            html.figure(shown.picture());
        } else if (block instanceof Block.Tabled tabled) {
            html.table(tabled.caption(), tabled.table());
        } else if (block instanceof Block.Played played) {
            played(played);
        }
    }

    /** Seen only once the script has started the player. */
    private void played(Block.Played played) {
        report.replay().ifPresent(replay -> {
            html.open("div class=\"played\"")
                    .markup("<div class=\"replay\" data-card=\"" + replay.card()
                            + "\" data-options='{\"compact\":true,\"controls\":false}'></div>");
            LessonPage.button(html, "play", played.words());
            html.close("div");
        });
    }

    private void question(Question question) {
        html.open("div class=\"question\"").open("fieldset").element("legend", question.asked());
        for (int i = 0; i < question.choices().size(); i++) {
            html.open("p class=\"choice\"")
                    .open("label")
                    .markup("<input type=\"radio\" autocomplete=\"off\" name=\"" + question.id() + "\" value=\"" + i
                            + "\">")
                    .element("span", question.choices().get(i).words())
                    .close("label")
                    .close("p");
        }
        html.close("fieldset");
        LessonPage.button(html, "check", LessonText.CHECK);
        html.element("p class=\"verdict\" role=\"status\" aria-live=\"polite\"", "");
        html.open("details class=\"answer\"")
                .element("summary", LessonText.ANSWERS_HERE)
                .open("ul");
        for (AnswerChoice choice : question.choices()) {
            html.open("li data-right=\"" + choice.isRight() + "\"")
                    .element("strong", choice.words())
                    .text(": ")
                    .element("span class=\"feedback\"", choice.feedback());
            if (!choice.line().isEmpty()) {
                html.open("br").element("code", choice.line());
            }
            html.close("li");
        }
        html.close("ul").close("details");
        lines(LINES);
        html.close("div");
    }

    private void written(Step.Written written) {
        html.open("div class=\"question\"")
                .element("label class=\"own\" for=\"own\"", written.prompt())
                .element("textarea id=\"own\" rows=\"8\" autocomplete=\"off\"", "");
        LessonPage.button(html, "compare", LessonText.COMPARE);
        lines(written.lines());
        html.close("div");
    }

    /** Lines to write on, on paper. */
    private void lines(int count) {
        html.markup("<div class=\"lines\" aria-hidden=\"true\">" + "<i></i>".repeat(count) + "</div>\n");
    }
}
