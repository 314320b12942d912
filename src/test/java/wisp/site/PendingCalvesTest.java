package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What the page of records says of calves that figures wait for, and of those that left under withdrawal. */
class PendingCalvesTest {

    private static String section(String page, String id) {
        String from = page.substring(page.indexOf("<section id=\"" + id + "\">"));
        return from.substring(0, from.indexOf("</section>"));
    }

    @Test
    void figuresThatWaitForTheSameCalvesStandInOneRowWhoseCalvesOpen() {
        try (SmallSite site = new SmallSite()) {
            site.event("birth", "A", "2026-11-01T07:30:00Z", "{\"alive\":true,\"sex\":\"female\"}");
            site.event("birth", "B", "2026-11-02T07:30:00Z", "{\"alive\":true,\"sex\":\"female\"}");
            String pending = section(site.get("/records").body(), "pending");
            Matcher row = Pattern.compile("<tr role=\"row\"><th role=\"rowheader\" scope=\"row\"><span>(.*?)</span>")
                    .matcher(pending);
            Set<String> calves = new HashSet<>();
            int rows = 0;
            while (row.find()) {
                rows++;
                calves.add(row.group(1));
                assertTrue(row.group(1).contains("href=\"/calves/"), row.group(1));
            }
            assertTrue(rows > 0, pending);
            assertEquals(rows, calves.size(), "a set of calves stands once");
            assertTrue(pending.split("part=pending", -1).length - 1 > rows, pending);
        }
    }

    @Test
    void theWithdrawalSentenceStandsOnceAndSaysWhoseCalvesItSpeaksOf() {
        try (SmallSite site = new SmallSite()) {
            for (String calf : new String[] {"A", "B"}) {
                site.event("birth", calf, "2026-11-01T07:30:00Z", "{\"alive\":true,\"sex\":\"female\"}");
                site.event(
                        "treated",
                        calf,
                        "2026-11-10T09:00:00Z",
                        "{\"medicine\":\"penicillin\",\"meat_withdrawal_days\":28}");
                site.event("left", calf, "2026-11-12T09:00:00Z", "{\"reason\":\"sold\"}");
            }
            String left = section(site.get("/records").body(), "left");
            assertEquals(2, left.split("must know", -1).length, left);
            assertTrue(left.contains("Of all calves, whatever the filters."), left);
            assertTrue(left.contains("2 calves that left"), left);
            assertTrue(left.contains("href=\"/calves/A\"") && left.contains("href=\"/calves/B\""), left);
        }
    }
}
