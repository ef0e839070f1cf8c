package limbway.reports.browser;

import java.util.ArrayList;
import java.util.List;

import limbway.reports.browser.Words.Field;
import limbway.scenarios.entry.Form;

/** The small yard with hostile texts in everything that takes them, and words from right to left in all other names. */
final class HostileYard {

    /** What takes any text; {@code FreeTextTest} holds that there is no more. */
    static final List<Field> FREE = List.of(
            new Field(Form.SCENARIO, "title"),
            new Field(Form.GROUND, "surface"),
            new Field(Form.VARIANT, "name"),
            new Field(Form.VARIANT, "note"),
            new Field(Form.ANIMAL, "name"),
            new Field(Form.ANIMAL, "group"));

    /** Names stand in charts and headings of tables, so that each holds a part of the texts only. */
    private static final int PARTS = 5;

    private static final String BETWEEN = " \u00a6 ";

    private HostileYard() {}

    /** The texts that the reader takes. */
    static List<String> taken() {
        Words small = Words.of("small.yaml");
        return Hostile.texts().stream()
                .filter(text -> small.with(FREE.get(0), 0, text).isRead())
                .toList();
    }

    static Words words() {
        List<String> taken = taken();
        Words yard = Words.of("small.yaml");
        int part = 0;
        for (Field field : FREE) {
            for (int n = 0; n < yard.count(field.form()); n++) {
                if (yard.says(field, n)) {
                    boolean isName = field.key().equals("name");
                    yard = yard.with(field, n, isName ? part(taken, part++) : String.join(BETWEEN, taken));
                }
            }
        }
        return fromRightToLeft(yard);
    }

    /** Every fifth text; a word before them keeps spreadsheets from computing the name. */
    private static String part(List<String> texts, int part) {
        List<String> some = new ArrayList<>(List.of("n" + part));
        for (int i = part % PARTS; i < texts.size(); i += PARTS) {
            some.add(texts.get(i));
        }
        return String.join(BETWEEN, some);
    }

    private static Words fromRightToLeft(Words yard) {
        Words named = yard;
        for (Form form : Form.values()) {
            Field name = new Field(form, form.word());
            for (int n = 0; n < yard.count(form) && form.required().contains(form.word()); n++) {
                Words tried = named.with(name, n, Hostile.RIGHT_TO_LEFT_WORD + "-" + form.word() + n);
                named = tried.isRead() ? tried : named;
            }
        }
        return named;
    }
}
