package wisp.indicator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wisp.cohort.Cohort;
import wisp.cohort.Herd;
import wisp.event.Castrated;
import wisp.event.FarmDescribed.Enterprise;
import wisp.testing.Events;

class LimitsFilesTest {
    private static final LocalDate BORN = LocalDate.parse("2026-03-01");
    private static final Definitions SHIPPED = Definitions.load(null);
    private static final String CHANGED = """
            id: england
            title: England
            aliases: [gb-eng]
            read_on: 2026-11
            days:
              tags: {by_day: 20, source: Old law, status: from memory}
              ring: {by_day: 7, source: Old law, status: from memory}
            castration:
              ring: {by_day: 7, source: Old law, status: from memory}
            dairy:
              hours:
                first-tag: {before_hours: 36, source: Old law, status: from memory}
            changes:
              - from: 2026-03-01
                days:
                  tags: {by_day: 3, source: New law, status: from memory}
                  ring: none
                castration:
                  ring: {allowed: false, source: New law, status: from memory}
                beef:
                  days:
                    tags: {by_day: 10, source: New law for beef, status: from memory}
            """;

    @TempDir
    private Path data;

    private static Law law(String place, Enterprise enterprise) {
        return SHIPPED.jurisdiction(place).orElseThrow().on(BORN, enterprise).orElseThrow();
    }

    private Definitions changed() throws IOException {
        Path file = data.resolve("analytics/limits/england.yaml");
        Files.createDirectories(file.getParent());
        Files.writeString(file, CHANGED);
        return Definitions.load(data);
    }

    @Test
    void everyShippedLimitSaysWhatItStandsOnAndWhenThatWasChecked() {
        Set<String> known = Set.of("verified", "verified (secondary)", "from memory");
        List<String> places = new ArrayList<>();
        for (Jurisdiction place : SHIPPED.jurisdictions()) {
            places.add(place.id());
            for (Enterprise enterprise : Enterprise.values()) {
                place.on(BORN, enterprise).orElseThrow().limits().forEach((name, limit) -> {
                    assertFalse(limit.source().isBlank(), place.id() + " " + name);
                    assertTrue(known.contains(limit.status()), place.id() + " " + name + ": " + limit.status());
                    assertTrue(limit.basis().readOn().matches("\\d{4}-\\d\\d"), place.id() + " " + name);
                });
            }
        }
        assertTrue(places.containsAll(List.of(
                "england",
                "wales",
                "scotland",
                "northern-ireland",
                "ireland",
                "eu",
                "germany",
                "united-states",
                "new-zealand")));
    }

    @Test
    void theDaysThatFiguresStandOnAreAsTheyWere() {
        Map<String, String> days = new TreeMap<>();
        for (Jurisdiction place : SHIPPED.jurisdictions()) {
            Map<String, Integer> byDay = new TreeMap<>();
            place.on(BORN, Enterprise.DAIRY)
                    .orElseThrow()
                    .days()
                    .forEach((name, limit) -> byDay.put(name, limit.byDay()));
            days.put(place.id(), byDay.toString());
        }
        assertEquals("{registration=27, ring=7, tags=20}", days.get("england"));
        assertEquals("{registration=27, ring=7, tags=20}", days.get("wales"));
        assertEquals("{registration=27, ring=6, tags=20, tissue-sample=40}", days.get("scotland"));
        assertEquals("{registration=27, ring=7, tags=20, tissue-sample=20}", days.get("northern-ireland"));
        assertEquals("{registration=27, ring=7, tags=20, tissue-sample=20}", days.get("ireland"));
        assertEquals("{tags=20}", days.get("eu"));
        assertEquals("{tags=20, tissue-sample=30}", days.get("germany"));
        assertEquals("{}", days.get("new-zealand"));
        assertEquals("{}", days.get("united-states"));
    }

    @Test
    void dairyCalvesNeedTheFirstTagSoonerThanBeefCalves() {
        assertEquals(
                36,
                law("england", Enterprise.DAIRY)
                        .hours(Law.FIRST_TAG)
                        .orElseThrow()
                        .before());
        assertTrue(law("england", Enterprise.BEEF).hours(Law.FIRST_TAG).isEmpty());
        assertTrue(law("ireland", Enterprise.DAIRY).hours(Law.FIRST_TAG).isEmpty());
    }

    @Test
    void whatTheFilesSayBesideDaysIsRead() {
        Law england = law("england", Enterprise.DAIRY);
        assertEquals(28, england.lostTag().orElseThrow().days());
        assertEquals(2, england.tagCount().orElseThrow().number());
        assertEquals(5, england.medicineRecord().orElseThrow().number());
        assertTrue(england.medicineRecord().orElseThrow().fields().contains("withdrawal period"));
        assertTrue(england.movement().isPresent());
        assertEquals(1, england.notes().size());
        assertEquals(
                "with an anaesthetic from day 15, with pain relief from day 15, by a vet from day 29",
                law("ireland", Enterprise.DAIRY).disbudding().get("cautery").words());
        assertEquals(
                Basis.Kind.GOOD_PRACTICE,
                law("united-states", Enterprise.BEEF).notes().get(0).basis().kind());
    }

    @Test
    void aChangeHoldsForCalvesBornFromItsDayOnAndSaysNoneWhereNothingHoldsAnyMore() throws IOException {
        Jurisdiction place = changed().jurisdiction("gb-eng").orElseThrow();
        Law before = place.on(BORN.minusDays(1), Enterprise.DAIRY).orElseThrow();
        Law after = place.on(BORN, Enterprise.DAIRY).orElseThrow();
        assertEquals(20, before.day("tags").orElseThrow().byDay());
        assertEquals(7, before.day("ring").orElseThrow().byDay());
        assertEquals(3, after.day("tags").orElseThrow().byDay());
        assertTrue(after.day("ring").isEmpty());
        assertFalse(after.castration(Castrated.Method.RING).orElseThrow().allowed());
        assertEquals(36, after.hours(Law.FIRST_TAG).orElseThrow().before());
        assertEquals(
                10,
                place.on(BORN, Enterprise.BEEF)
                        .orElseThrow()
                        .day("tags")
                        .orElseThrow()
                        .byDay());
    }

    @Test
    void figuresJudgeEachCalfUnderTheLawOfTheDayOfItsBirth() throws IOException {
        Definitions definitions = changed();
        Events events = Events.london();
        for (String day : List.of("2026-02-28", "2026-03-01")) {
            events.add("birth", day, day + " 08:00", "alive: true, sex: male");
        }
        for (String calf : List.of("2026-02-28", "2026-03-01")) {
            events.add("tag-fitted", calf, "2026-03-06 08:00", "number: A" + calf);
            events.add("tag-fitted", calf, "2026-03-06 08:00", "number: B" + calf);
            events.add("castrated", calf, "2026-03-06 08:00", "method: ring");
        }
        events.add("noted", "farm", "2026-06-01 00:00", "text: the newest event");
        Herd herd = Herd.following();
        herd.apply(events.all());
        Cohort cohort = herd.cohort();
        for (String id : List.of("tagged-inside-limit", "castrated-inside-limit", "ring-window")) {
            Estimate figure = new Figures(definitions)
                    .of(definitions.indicator(id).orElseThrow(), cohort, Selection.NEWEST.ofSeason(Selection.ALL));
            assertEquals(1, figure.numerator(), id);
            assertEquals(id.equals("ring-window") ? 1 : 2, figure.denominator(), id);
        }
    }

    @Test
    void goodPracticeOfADataFolderReplacesAStepOrTakesItAway() throws IOException {
        Path file = data.resolve("analytics/practice.yaml");
        Files.createDirectories(file.getParent());
        Files.writeString(file, """
                blood-sample: none
                navel-treated:
                  text: Dip the navel
                  by: 1 h
                  source: Our vet.
                  status: verified
                  read_on: 2026-11
                """);
        Practice practice = Definitions.load(data).practice();
        assertTrue(practice.step(Practice.BLOOD_SAMPLE).isEmpty());
        assertEquals(
                "1 h", practice.step(Practice.NAVEL_TREATED).orElseThrow().by().text());
        assertEquals(
                "2 h",
                practice.step(Practice.COLOSTRUM_FIRST).orElseThrow().by().text());
        assertEquals(Practice.IDS.size(), SHIPPED.practice().steps().size());
    }
}
