package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The medicine book's page and files; the clock stands at 25 November 2026. */
class MedicinesPageTest {
    private SmallSite site;

    @BeforeEach
    void start() {
        site = new SmallSite();
        site.event("birth", "c1", "2026-11-01T06:00:00Z", "{\"alive\":true}");
        site.event("birth", "c2", "2026-11-02T06:00:00Z", "{\"alive\":true}");
    }

    @AfterEach
    void stop() {
        site.close();
    }

    @Test
    void withoutATreatmentItSaysSo() {
        String page = site.get("/medicines").body();
        assertTrue(page.contains("No animal here is under a recorded meat withdrawal."), page);
        assertTrue(page.contains("No medicine is on record in these days."), page);
        assertEquals(1, csv("").size());
    }

    @Test
    void whoIsUnderWithdrawalNowIsNamedFirst() {
        treated("c1", "2026-11-20T09:00:00Z", "\"meat_withdrawal_days\":5"); // to the end of 25 November
        treated("c2", "2026-11-20T09:00:00Z", "\"meat_withdrawal_days\":4"); // to the end of 24 November
        String page = site.get("/medicines").body();
        assertTrue(page.contains("One animal here is under withdrawal and not for food."), page);
        assertTrue(page.contains("25 Nov 2026"), page);
        String before = site.get("/medicines?as-of=2026-11-24").body();
        assertTrue(before.contains("2 animals here are under withdrawal and not for food."), before);
    }

    @Test
    void aWithdrawalThatNobodyRecordedIsNotTakenForNone() {
        treated("c1", "2026-11-20T09:00:00Z", "\"batch\":\"B1\"");
        assertTrue(site.get("/medicines").body().contains("Of one animal a withdrawal period is not recorded"));
    }

    @Test
    void leavingUnderWithdrawalIsMarkedOnEveryPageThatTellsOfIt() {
        treated("c1", "2026-11-20T09:00:00Z", "\"meat_withdrawal_days\":28");
        site.event("left", "c1", "2026-11-21T09:00:00Z", "{\"reason\":\"sold\"}");
        String sentence = "under the withdrawal of Oralyte to the end of 18 Dec 2026";
        assertTrue(site.get("/medicines").body().contains(sentence));
        assertTrue(site.get("/calves/c1").body().contains("left under withdrawal"));
        assertTrue(site.get("/records").body().contains(sentence));
        assertFalse(site.get("/medicines?given-from=2026-11-22").body().contains(sentence));
    }

    @Test
    void theFilesHoldTheDaysAskedFor() {
        treated("c1", "2026-11-10T09:00:00Z", "\"meat_withdrawal_days\":28");
        treated("c1", "2026-11-12T09:00:00Z", "\"meat_withdrawal_days\":28");
        assertEquals(3, csv("").size());
        List<String> one = csv("?given-from=2026-11-11&given-to=2026-11-12");
        assertEquals(2, one.size());
        assertTrue(one.get(1).startsWith("2026-11-12T09:00:00Z,c1,,medicine,Oralyte,"), one.get(1));
        assertTrue(one.get(1).contains(",28,2026-12-10,"), one.get(1));
        var pdf = site.get("/medicines.pdf?given-from=2026-11-11");
        assertEquals(200, pdf.statusCode());
        assertTrue(pdf.body().startsWith("%PDF-"));
    }

    @Test
    void theSeasonChosenElsewhereLeavesNoAnimalOut() {
        treated("c1", "2026-11-10T09:00:00Z", "\"meat_withdrawal_days\":28");
        assertEquals(2, csv("?season=2026&pen=barn").size());
    }

    @Test
    void aDayThatIsNoneIsRefusedWithItsMend() {
        var answer = site.get("/medicines?given-from=yesterday");
        assertEquals(400, answer.statusCode());
        assertTrue(answer.body().contains("Write it as 2026-03-01."), answer.body());
        assertEquals(
                400,
                site.get("/medicines.csv?given-from=2026-11-02&given-to=2026-11-01")
                        .statusCode());
    }

    private void treated(String calf, String time, String fields) {
        site.event("treated", calf, time, "{\"medicine\":\"Oralyte\"," + fields + "}");
    }

    private List<String> csv(String query) {
        return site.get("/medicines.csv" + query).body().lines().toList();
    }
}
