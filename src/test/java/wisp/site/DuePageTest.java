package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the page of what is due shows of one invented morning. */
class DuePageTest {
    @TempDir
    private static Path folder;

    private static RunningSite site;

    @BeforeAll
    static void serve() {
        site = CalvingMorning.serve(folder);
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    @Test
    void theFirstSentenceSaysWhatPressesAndWhatClosesFirst() {
        String answer = words(part(page("/due"), "<p class=\"answer\">", "</p>"));
        assertEquals(
                "4 things are overdue and 7 close today; the first closes at 08:05 today: Enough colostrum, 10 % of"
                        + " birth weight or 3 l, by 6 h for 26-102.",
                answer);
    }

    @Test
    void everyCountOpensAsManyItems() {
        String page = page("/due");
        Matcher count = Pattern.compile("<a href=\"#([a-z]+)\">(\\d+) ").matcher(page);
        int parts = 0;
        while (count.find()) {
            String section = part(page, "id=\"" + count.group(1) + "\"", "</section>");
            assertEquals(Integer.parseInt(count.group(2)), items(section), count.group());
            parts++;
        }
        assertEquals(5, parts);
    }

    @Test
    void theOrderByPenHoldsTheSameItemsAndItsCountsLeadToThemByTime() {
        String time = page("/due");
        String pens = page("/due?order=pen");
        assertEquals(new TreeMap<>(anchors(time)), new TreeMap<>(anchors(pens)));
        assertEquals(List.of("box 1", "box 2", "calf house", "straw yard"), headings(pens));
        assertTrue(pens.contains("<a href=\"/due#overdue\">4 things are overdue</a>"), pens);
    }

    @Test
    void itemsStandByWhatClosesFirst() {
        List<String> today = new ArrayList<>();
        Matcher item = Pattern.compile("<p class=\"end\"><strong>([^<]*)</strong> <span>([^<]*)</span>")
                .matcher(part(page("/due"), "id=\"today\"", "</section>"));
        while (item.find()) {
            today.add(item.group(1) + " " + item.group(2));
        }
        String end = "today end of day";
        assertEquals(List.of("08:05 today", "08:15 today", "12:15 today", "16:30 today", end, end, end), today);
    }

    @Test
    void calvesAreCalledByTheirTagAndElseByTheirKeyWithPenAndAge() {
        String page = page("/due");
        assertTrue(
                page.contains("<a href=\"/calves/26-096\">UK 123456 500096</a> <span>straw yard</span>"
                        + " <span class=\"age\">day 7</span>"),
                page);
        assertTrue(
                page.contains(
                        "<a href=\"/calves/26-101\">26-101</a> <span>box 1</span> <span class=\"age\">85 min old"),
                page);
    }

    @Test
    void thePenFilterMeansWhereACalfStandsAndSaysThatItNarrows() {
        String page = page("/due?pen=straw+yard&order=pen");
        assertEquals(List.of("straw yard"), headings(page));
        assertTrue(page.contains("Only calves standing in straw yard are listed."), page);
        assertTrue(page.contains("<a href=\"/due?order=pen\">List all calves</a>"), page);
    }

    @Test
    void anotherMorningIsJudgedAtItsMidnight() {
        String page = page("/due?on=2026-04-20");
        assertTrue(page.contains("The list for the morning of Monday 20 April 2026, 00:00"), page);
        assertTrue(page.contains("name=\"on\" value=\"2026-04-20\""), page);
    }

    @Test
    void aStepWhoseTimeHasNotBegunHasNoTick() {
        String item = part(page("/due"), "id=\"d-2-navel-look-early\"", "</li>");
        assertTrue(item.contains("From 15 Apr 2026 00:00 on."), item);
        assertFalse(item.contains("method=\"post\""), item);
    }

    @Test
    void everyLimitNamesItsSourceAndWhetherItWasRead() {
        String worked = part(page("/due"), "id=\"worked\"", "</section>");
        assertTrue(worked.contains("gov.uk calf guidance (primary tag before 36 hours)"), worked);
        assertTrue(worked.contains("law, England"), worked);
        assertTrue(worked.contains("verified, 2026-11"), worked);
        assertTrue(worked.contains("from memory, 2026-11"), worked);
    }

    @Test
    void aWrongParameterIsRefusedWithItsMend() {
        HttpResponse<String> wrong = site.get("/due?order=size");
        assertEquals(400, wrong.statusCode());
        assertTrue(wrong.body().contains("Those that there are: time, pen."), wrong.body());
        assertEquals(400, site.get("/due?on=tomorrow").statusCode());
        assertEquals(400, site.get("/due?moon=full").statusCode());
    }

    @Test
    void anOpenFormIsOpenOnArrival() {
        String address = "/due?open=d-5-castrate";
        assertEquals(1, page(address).split("<details class=\"write( only)?\" open>", -1).length - 1);
    }

    @Test
    void theCsvHoldsALineForEachItem() {
        List<String> lines = site.get("/due.csv").body().lines().toList();
        assertEquals(1 + items(page("/due")), lines.size());
        assertTrue(lines.get(0).startsWith("calf,tag,pen,step,title,event,state,opens,closes,limit,kind,place,source"));
    }

    @Test
    void theSheetHoldsEveryPenAndWhatItsLimitsStandOn() throws Exception {
        byte[] pdf =
                site.send(site.request("/due.pdf"), BodyHandlers.ofByteArray()).body();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            for (String wanted : List.of(
                    "Reedholm Farm (invented)",
                    "Tuesday 14 April 2026 07:40",
                    "box 1",
                    "straw yard",
                    "UK 123456 500096",
                    "Initials",
                    "Clamp: no anaesthetic or vet is asked by law yet",
                    "gov.uk calf guidance (primary tag before 36 hours)",
                    Json.read(site.get("/api/v1/log/heads").body()).get("hash").asText())) {
                assertTrue(text.contains(wanted), () -> wanted + " is not in " + text);
            }
        }
    }

    @Test
    void aCalfsPageLeadsToWhatIsDueForIt() {
        String page = page("/calves/26-092");
        String due = part(page, "<section id=\"due\">", "</section>");
        assertTrue(due.contains("href=\"/due?open=d-5-castrate#d-5-castrate\""), due);
        assertTrue(due.contains("impossible now"), due);
        assertTrue(due.contains("Register"), "what comes later is named, without a link");
    }

    private static String page(String path) {
        HttpResponse<String> answer = site.get(path);
        assertEquals(200, answer.statusCode(), answer.body());
        return Wire.spaced(answer.body());
    }

    private static String part(String page, String from, String to) {
        int start = page.indexOf(from);
        assertTrue(start >= 0, () -> from + " is not in " + page);
        return page.substring(start, page.indexOf(to, start));
    }

    private static int items(String page) {
        return page.split("<li class=\"due ", -1).length - 1;
    }

    private static Map<String, Integer> anchors(String page) {
        Map<String, Integer> anchors = new TreeMap<>();
        Matcher item =
                Pattern.compile("<li class=\"due [^\"]*\" id=\"([^\"]*)\"").matcher(page);
        while (item.find()) {
            anchors.merge(item.group(1), 1, Integer::sum);
        }
        return anchors;
    }

    private static List<String> headings(String page) {
        List<String> headings = new ArrayList<>();
        Matcher heading = Pattern.compile("<h2>([^<]*) <span class=\"count\">").matcher(page);
        while (heading.find()) {
            headings.add(heading.group(1));
        }
        return headings;
    }

    private static String words(String html) {
        return html.replaceAll("<[^>]*>", "").replaceAll("\\s+", " ").strip();
    }
}
