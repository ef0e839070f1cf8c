package limbway.reports.page;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Resource;
import limbway.model.study.Animal;
import limbway.model.study.Feeding;
import limbway.model.study.Study;
import limbway.model.study.Variant;
import limbway.reports.Pole;
import limbway.reports.Yard;
import limbway.reports.words.Cautions;
import limbway.reports.words.Xml;
import limbway.sim.animal.DaySettings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

class ReportPageTest {

    private static final String HOSTILE = "<script>alert('x')</script><!--\"&amp; onload=\"1";

    private static String html;

    @BeforeAll
    static void write() {
        html = ReportPage.html(Yard.report(Yard.study()));
    }

    @Test
    void thePageNeedsNothingButItself() {
        assertFalse(html.contains("<link"));
        assertFalse(html.contains("<img"));
        assertFalse(html.contains("url(http"));
        // addresses of name spaces are names, not requests
        String withoutNames = html.replaceAll("xmlns(:\\w+)?=[\"'][^\"']*[\"']", "");
        // scripts are carried as they were published, with addresses in their comments; no request is allowed to them
        String withoutScripts = withoutNames.replaceAll("(?s)<script.*?</script>", "");
        assertFalse(withoutScripts.contains("src="), "no source");
        assertFalse(withoutScripts.contains("://"), "no address");
        assertTrue(html.contains("http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; script-src "
                + "'unsafe-inline' data:; style-src 'unsafe-inline'; img-src data:;"));
        assertTrue(html.startsWith("<!DOCTYPE html>\n<html lang=\"en\">"));
    }

    @Test
    void headingsAreInOrder() {
        Matcher heading = Pattern.compile("<h(\\d)").matcher(html);
        int last = 0;
        int count = 0;
        while (heading.find()) {
            int level = Integer.parseInt(heading.group(1));
            assertTrue(level <= last + 1, "level " + level + " after " + last);
            last = level;
            count++;
        }
        assertTrue(count > 10, "headings = " + count);
        assertEquals(2, html.split("<h1>", -1).length);
    }

    @Test
    void everyNameWithinThePageIsUnique() {
        Matcher id = Pattern.compile("\\bid=[\"']([^\"']*)[\"']").matcher(html);
        List<String> ids = new ArrayList<>();
        while (id.find()) {
            ids.add(id.group(1));
        }
        assertEquals(new LinkedHashSet<>(ids).size(), ids.size());
        Matcher link = Pattern.compile("href=\"#([^\"]*)\"").matcher(html);
        while (link.find()) {
            assertTrue(ids.contains(link.group(1)), link.group(1));
        }
    }

    @Test
    void theCautionsStandAtTheTopAndAtTheBottom() {
        String caution = Xml.escape(Cautions.IN_SHORT);
        int first = html.indexOf(caution);
        int last = html.lastIndexOf(caution);
        assertTrue(first > 0 && first < html.indexOf("id=\"answer\""));
        assertTrue(last > html.indexOf("id=\"again\""));
        for (String one : Cautions.inFull()) {
            assertTrue(html.contains(Xml.escape(one)), one);
        }
    }

    @Test
    void theOtherLayoutsSayWhatMakesTheDifference() {
        assertTrue(html.contains("percentage points under the same chance"));
        // the words of the variant: the rope hangs from a prop 2.5 m away, which is the thickness of the prop less
        assertTrue(html.contains("because prop and deck-1 are 2.45&nbsp;m apart")
                || html.contains("because deck-1 and prop are 2.45&nbsp;m apart"));
    }

    @Test
    void everyNumberHasItsSource() {
        String numbers = html.substring(html.indexOf("id=\"numbers\""), html.indexOf("id=\"again\""));
        for (var parameter : DaySettings.standard().parameters()) {
            assertTrue(numbers.contains(Xml.escape(parameter.name())), parameter.name());
        }
    }

    @Test
    void hostileNamesAreShownAndNotObeyed() {
        Variant pole = Pole.layout(HOSTILE);
        Enclosure old = pole.enclosure();
        List<Resource> renamed = old.resources().stream()
                .map(r -> new Resource(HOSTILE + r.id(), r.kind(), r.at(), r.on(), r.stalls()))
                .toList();
        Enclosure enclosure =
                new Enclosure(old.site(), old.ground(), old.supports(), old.platforms(), old.crowns(), renamed);
        List<Feeding> feedings = pole.feedings().stream()
                .map(feeding -> new Feeding(HOSTILE + feeding.resource(), feeding.at(), feeding.energyKj()))
                .toList();
        Variant layout = new Variant(HOSTILE, HOSTILE, enclosure, feedings);
        Study study = new Study(
                HOSTILE,
                Optional.empty(),
                List.of(new Animal(HOSTILE, Pole.female(), 1)),
                layout,
                List.of(),
                new TreeMap<>());
        String page = ReportPage.html(Yard.report(study));
        // those of the replay: its data, the import map, and what starts it
        assertEquals(3, page.split("<script", -1).length - 1);
        assertEquals(3, page.split("</script", -1).length - 1);
        assertFalse(page.contains("\" onload"));
        assertTrue(page.contains("&lt;script&gt;"));
    }

    @Test
    void aNumberKeepsItsUnitOnTheSameLine() {
        assertEquals(
                "1&nbsp;234&nbsp;J, 6&nbsp;% (5 to 7&nbsp;%)",
                new Html().text("1 234 J, 6 % (5 to 7 %)").toString());
    }
}
