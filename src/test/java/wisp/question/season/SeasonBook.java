package wisp.question.season;

import java.time.LocalDate;
import java.util.List;
import wisp.cohort.Cohort;
import wisp.cohort.Herd;
import wisp.indicator.Definitions;
import wisp.indicator.Selection;
import wisp.testing.Events;

/** Two seasons, S1 in 2025 and S2 in 2026, written calf by calf, and the answer about the second. */
final class SeasonBook {
    static final Definitions SHIPPED = Definitions.load(null);

    private final Events events = Events.london();
    private int calves;

    SeasonBook() {
        events.add(
                "farm-described",
                "farm",
                "2025-01-01 00:00",
                "zone: Europe/London, jurisdiction: england, seasons: [{name: S1, from: 2025-01-01, to: 2026-01-01},"
                        + " {name: S2, from: 2026-01-01, to: 2027-01-01}]");
    }

    /** A calf born at six in the morning; the key that it gets. */
    String born(String date, String fields) {
        String key = "C" + ++calves;
        events.add("birth", key, date + " 06:00", fields);
        return key;
    }

    /** As many calves alike. */
    SeasonBook born(int count, String date, String fields) {
        for (int i = 0; i < count; i++) {
            born(date, fields);
        }
        return this;
    }

    /** As many calves of which only the day of birth is known. */
    SeasonBook bornAtNoHour(int count, String date, String fields) {
        for (int i = 0; i < count; i++) {
            events.add("birth", "C" + ++calves, date + " 00:00", fields + ", time_known: false");
        }
        return this;
    }

    SeasonBook at(String key, String when, String type, String fields) {
        events.add(type, key, when, fields);
        return this;
    }

    /** Calves that die at noon some days after their birth. */
    SeasonBook dead(int count, String date, int days, String fields, String cause) {
        for (int i = 0; i < count; i++) {
            String when = LocalDate.parse(date).plusDays(days) + " 12:00";
            at(born(date, fields), when, "died", cause);
        }
        return this;
    }

    /** Somebody writes something down, so that follow-up goes on to here. */
    SeasonBook followedTo(String when) {
        events.add("noted", "farm", when, "text: seen");
        return this;
    }

    Cohort cohort() {
        Herd herd = Herd.following();
        herd.apply(events.all());
        return herd.cohort();
    }

    SeasonAnswer answer() {
        return answer("S2");
    }

    SeasonAnswer answer(String season) {
        return new SeasonQuestion(SHIPPED).of(cohort(), Selection.NEWEST.ofSeason(season));
    }

    SeasonFigure figure(String id) {
        return figure(answer(), id);
    }

    static SeasonFigure figure(SeasonAnswer answer, String id) {
        return answer.figures().stream()
                .filter(figure -> figure.estimate().indicator().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    static List<String> keys(CalfList list, Cohort cohort) {
        return list.rows().stream().map(row -> cohort.lives().get(row).key()).toList();
    }
}
