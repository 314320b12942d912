package wisp.site;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wisp.cohort.Cohort;
import wisp.event.Castrated;
import wisp.indicator.Basis;
import wisp.indicator.Definitions;
import wisp.indicator.Indicator;
import wisp.indicator.Law;
import wisp.indicator.Limit;
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
        Set<Law> laws = Collections.newSetFromMap(new IdentityHashMap<>());
        Set<LimitUsed> used = new LinkedHashSet<>();
        for (int row : selection.calves(cohort)) {
            Optional<Law> law = definitions.law(cohort.lives().get(row));
            law.filter(laws::add).ifPresent(found -> add(indicator.rule(), found, used));
        }
        return List.copyOf(used);
    }

    private static void add(Rule rule, Law law, Set<LimitUsed> used) {
        if (rule instanceof Rule.DoneByLimit done) {
            day(done.limit(), law, used);
        } else if (rule instanceof Rule.DoneAtEnd atEnd) {
            day(atEnd.limit(), law, used);
        } else if (rule instanceof Rule.CastratedLawfully) {
            for (Castrated.Method method : Castrated.Method.values()) {
                law.castration(method)
                        .ifPresent(limit -> used.add(of(law, method.word() + ": " + limit.words(), limit)));
            }
        }
    }

    private static void day(String name, Law law, Set<LimitUsed> used) {
        law.day(name).ifPresent(limit -> used.add(of(law, "by the end of day " + limit.byDay() + " of life", limit)));
    }

    private static LimitUsed of(Law law, String says, Limit limit) {
        Basis basis = limit.basis();
        String standing = basis.verified()
                ? "verified against its source, last read " + basis.readOn()
                : basis.status() + ", not verified: check it before you rely on it (file of " + basis.readOn() + ")";
        String since = law.from() == null ? "" : " for calves born from " + law.from() + " on";
        return new LimitUsed(law.title(), says + since, basis.source(), standing);
    }
}
