package wisp.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wisp.cohort.Cohort;
import wisp.event.Castrated;
import wisp.indicator.CastrationLimit;
import wisp.indicator.DayLimit;
import wisp.indicator.Definitions;
import wisp.indicator.Indicator;
import wisp.indicator.Jurisdiction;
import wisp.indicator.Rule;
import wisp.indicator.Selection;

/**
 * A limit of law that a figure used.
 *
 * @param place whose law it is
 * @param limit what it says
 * @param source the statute
 * @param standing whether the source was read or is given from memory, and when
 */
public record LimitUsed(String place, String limit, String source, String standing) {

    /** The limits that a figure uses for the calves asked for, by the law of the place where each was born. */
    static List<LimitUsed> of(Indicator indicator, Definitions definitions, Cohort cohort, Selection selection) {
        List<String> places = new ArrayList<>();
        for (int row : selection.calves(cohort)) {
            String place = cohort.lives().get(row).farm().jurisdiction();
            if (!places.contains(place)) {
                places.add(place);
            }
        }
        List<LimitUsed> used = new ArrayList<>();
        for (String place : places) {
            Optional<Jurisdiction> law = definitions.jurisdiction(place);
            law.ifPresent(found -> add(indicator.rule(), found, used));
        }
        return used;
    }

    private static void add(Rule rule, Jurisdiction law, List<LimitUsed> used) {
        if (rule instanceof Rule.DoneByLimit done) {
            day(done.limit(), law, used);
        } else if (rule instanceof Rule.DoneAtEnd atEnd) {
            day(atEnd.limit(), law, used);
        } else if (rule instanceof Rule.CastratedLawfully) {
            for (Castrated.Method method : Castrated.Method.values()) {
                CastrationLimit limit = law.castration().get(method);
                if (limit != null) {
                    used.add(of(law, method.word() + ": " + words(limit), limit.source(), limit.status()));
                }
            }
        }
    }

    private static void day(String name, Jurisdiction law, List<LimitUsed> used) {
        DayLimit limit = law.days().get(name);
        if (limit != null) {
            used.add(of(law, "by the end of day " + limit.byDay() + " of life", limit.source(), limit.status()));
        }
    }

    private static LimitUsed of(Jurisdiction law, String limit, String source, String status) {
        String standing = status.toLowerCase(Locale.ROOT).equals("verified")
                ? "verified against its source, last read " + law.readOn()
                : status + ", not verified: check it before you rely on it (file of " + law.readOn() + ")";
        return new LimitUsed(law.title(), limit, source, standing);
    }

    private static String words(CastrationLimit limit) {
        if (!limit.allowed()) {
            return "forbidden at any age";
        }
        List<String> parts = new ArrayList<>();
        if (limit.byDay() != null) {
            parts.add("by the end of day " + limit.byDay() + " of life");
        }
        if (limit.anaestheticFromDay() != null) {
            parts.add(
                    limit.anaestheticFromDay() == 0
                            ? "with an anaesthetic at any age"
                            : "with an anaesthetic from day " + limit.anaestheticFromDay());
        }
        if (limit.anaestheticFromMonths() != null) {
            parts.add("with an anaesthetic from " + limit.anaestheticFromMonths() + " months of age");
        }
        return parts.isEmpty() ? "no limit of age stated" : String.join(", ", parts);
    }
}
