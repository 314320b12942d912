package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wisp.chart.Curve;
import wisp.chart.Ink;
import wisp.chart.Layer;
import wisp.chart.Mark;
import wisp.chart.Picture;
import wisp.chart.Points;
import wisp.chart.Scale;
import wisp.chart.SvgPainter;
import wisp.history.Life;
import wisp.indicator.Definitions;
import wisp.testing.Calf;

/** What stands where on a calf's line of time. */
class LifePictureTest {
    private static final Definitions DEFINITIONS = Definitions.load(null);

    @Test
    void limitsRunToTheEndOfTheirLastDay() {
        Picture picture = of(Calf.bornAt("2026-03-03 07:00"), "2026-04-30T00:00:00Z");
        // England: tags by day 20, registration by day 27 (analytics/limits/england.yaml)
        assertEquals(List.of(0.0, 21.0), span(picture, "Ear tags, by day 20"));
        assertEquals(List.of(0.0, 28.0), span(picture, "Registration, by day 27"));
        assertFalse(rows(picture).contains("Ring, by day 7"), "its sex is not recorded");
    }

    @Test
    void aMaleHasTheRingsLimitUnlessItStaysEntire() {
        Calf male = new Calf("A").born("2026-03-03 07:00", "alive: true, sex: male");
        assertEquals(List.of(0.0, 8.0), span(of(male, "2026-04-30T00:00:00Z"), "Ring, by day 7"));
        Calf entire = new Calf("A").born("2026-03-03 07:00", "alive: true, sex: male, keep_entire: true");
        assertFalse(rows(of(entire, "2026-04-30T00:00:00Z")).contains("Ring, by day 7"));
    }

    @Test
    void whatWasDoneAfterItsLimitIsACrossAndSaysSo() {
        Calf calf = Calf.bornAt("2026-03-03 07:00");
        calf.at("2026-03-24 09:00", "tag-fitted", "number: UK1, ear: left");
        Mark mark = mark(of(calf, "2026-04-30T00:00:00Z"), Ink.ALARM, "Ear tags, by day 20");
        assertEquals("day 21, late", mark.caption());
        assertEquals(21 + 9 / 24.0, mark.x());
        assertEquals("#event-2", mark.link().orElseThrow());
    }

    @Test
    void aLimitEndsWithTheCalf() {
        Calf calf = Calf.bornAt("2026-03-03 07:00");
        calf.at("2026-03-10 12:00", "died", "cause: bloat");
        assertEquals(List.of(0.0, 7.5), span(of(calf, "2026-04-30T00:00:00Z"), "Ear tags, by day 20"));
    }

    @Test
    void onTheLastDayIsInside() {
        Calf calf = Calf.bornAt("2026-03-03 07:00");
        calf.at("2026-03-23 23:59", "tag-fitted", "number: UK1, ear: left");
        assertEquals(
                "day 20",
                mark(of(calf, "2026-04-30T00:00:00Z"), Ink.FIRST, "Ear tags, by day 20")
                        .caption());
    }

    @Test
    void aDayOfTwentyThreeHoursIsOneDay() {
        LifeDays days = new LifeDays(Calf.bornAt("2026-03-28 12:00").life());
        // noon on 29 March 2026: 11 of that day's 23 hours have passed
        assertEquals(1 + 11 / 23.0, days.at(Instant.parse("2026-03-29T11:00:00Z")), 1e-12);
        assertEquals(2.5, days.at(Instant.parse("2026-03-30T11:00:00Z")), 1e-12);
    }

    @Test
    void episodesAndWithdrawalAreBars() {
        Calf calf = Calf.bornAt("2026-03-03 00:00");
        calf.at("2026-03-10 12:00", "illness-found", "condition: diarrhoea");
        calf.at("2026-03-10 12:00", "treated", "medicine: salts, condition: diarrhoea, meat_withdrawal_days: 3");
        calf.at("2026-03-12 12:00", "recovered", "condition: diarrhoea");
        Picture picture = of(calf, "2026-04-30T00:00:00Z");
        assertEquals(List.of(7.5, 9.5), span(picture, "Diarrhoea"));
        assertEquals(List.of(7.5, 11.0), span(picture, "Medicines, meat withdrawal as bar"));
        assertTrue(picture.alternative().contains("diarrhoea from day 7 to day 9."), picture.alternative());
        assertTrue(
                picture.alternative().contains("salts on day 7, withdrawal to the end of day 10."),
                picture.alternative());
    }

    @Test
    void aDeathIsACrossInARowOfItsOwn() {
        Calf calf = Calf.bornAt("2026-03-03 07:00");
        calf.at("2026-03-10 12:00", "died", "cause: diarrhoea");
        Picture picture = of(calf, "2026-04-30T00:00:00Z");
        assertEquals(7.5, mark(picture, Ink.ALARM, "Death").x());
        assertEquals(7.5, span(picture, "On the farm, then died").get(1));
    }

    @Test
    void bornDeadAndBarelyBornCanBeDrawn() {
        Calf dead = new Calf("A").born("2026-03-03 07:00", "alive: false");
        assertTrue(SvgPainter.figure(of(dead, "2026-03-03T07:00:00Z")).contains("On the farm, then born dead"));
        Calf just = new Calf("A").born("2026-03-03", "alive: true");
        assertTrue(SvgPainter.figure(of(just, "2026-03-03T00:00:00Z")).contains("On the farm"));
    }

    @Test
    void theFirstDayIsDrawnHourByHourWhereItsHoursAreKnown() {
        Calf calf = Calf.bornAt("2026-03-03 07:00");
        calf.aged(Duration.ofMinutes(30), "navel-treated", "method: dip");
        assertTrue(FirstDayPicture.of(calf.life()).isEmpty(), "one event needs no picture");
        calf.aged(Duration.ofHours(2), "colostrum-fed", "volume_l: 3");
        calf.aged(Duration.ofHours(30), "weighed", "weight_kg: 40");
        Picture picture = FirstDayPicture.of(calf.life()).orElseThrow();
        assertEquals(List.of("navel treated", "colostrum"), rows(picture));
        assertEquals(0.5, mark(picture, Ink.FIRST, "navel treated").x());
        Calf day = new Calf("A").born("2026-03-03", "alive: true");
        day.at("2026-03-03 09:00", "navel-treated", "method: dip");
        day.at("2026-03-03 10:00", "colostrum-fed", "volume_l: 3");
        assertEquals(Optional.empty(), FirstDayPicture.of(day.life()));
    }

    private static Picture of(Calf calf, String cut) {
        Life life = calf.life();
        return LifePicture.of(life, DEFINITIONS.law(life), Instant.parse(cut));
    }

    private static List<String> rows(Picture picture) {
        return ((Scale.Categories) picture.y().scale()).names();
    }

    private static List<Double> span(Picture picture, String row) {
        int at = rows(picture).indexOf(row);
        assertTrue(at >= 0, rows(picture).toString());
        for (Layer layer : picture.layers()) {
            if (layer instanceof Curve curve && curve.knots().get(0).y() == at) {
                return curve.knots().stream().map(knot -> knot.x()).toList();
            }
        }
        throw new AssertionError("no span in the row " + row);
    }

    private static Mark mark(Picture picture, Ink ink, String row) {
        int at = rows(picture).indexOf(row);
        return picture.layers().stream()
                .filter(layer -> layer instanceof Points && layer.ink() == ink)
                .flatMap(layer -> layer.marks().stream())
                .filter(mark -> mark.y() == at)
                .findFirst()
                .orElseThrow();
    }
}
