package wisp.due;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import wisp.cohort.Cohort;
import wisp.indicator.Definitions;
import wisp.indicator.Estimate;
import wisp.indicator.Figures;
import wisp.indicator.Indicator;
import wisp.indicator.LimitTimes;
import wisp.indicator.PracticeStep;
import wisp.indicator.Selection;
import wisp.statistics.IncidenceCurve;
import wisp.statistics.Interval;
import wisp.statistics.WilsonInterval;

/**
 * What can be shown of one limit and season afterwards: the share inside, how long it took, and every calf outside.
 *
 * @param id the figure's or the step's id
 * @param season the season asked for
 * @param byHours whether time is in exact hours, and not in days
 * @param share the share inside with its interval; null where nobody is settled
 * @param calves what each calf is to it
 * @param limits the limits that were used, each with where it stands on the scale of time; NaN where it sets none
 * @param curve the share done by each time, null where no calf's time is known
 * @param outside every calf outside the limit
 * @param enteredLate calves inside the limit of which the record came in after it
 * @param cut the moment up to which calves were followed
 */
public record Proof(
        String id,
        String title,
        String season,
        boolean byHours,
        Interval share,
        List<ProofCalf> calves,
        Map<DueRule, Double> limits,
        IncidenceCurve curve,
        List<Breach> outside,
        List<Breach> enteredLate,
        Instant cut) {

    /**
     * The proof of a figure inside a limit, such as {@code tagged-inside-limit}, or of a step that is due, such as
     * {@code first-tag}; empty where nothing has that id.
     */
    public static Optional<Proof> of(Due due, Definitions definitions, Cohort cohort, Selection selection, String id) {
        Optional<Indicator> figure = definitions.indicator(id).filter(indicator -> LimitTimes.timed(indicator.rule()));
        String season = selection.seasonIn(cohort);
        if (figure.isPresent()) {
            Estimate estimate = new Figures(definitions).plain(figure.get(), cohort, selection);
            List<ProofCalf> calves = ProofCalves.ofFigure(estimate, definitions, cohort);
            return Optional.of(made(id, figure.get().title(), season, estimate.interval(), calves, cohort.cut()));
        }
        List<ProofCalf> calves = ProofCalves.ofStep(due, id, cohort, selection.calves(cohort));
        if (calves.isEmpty() && !ids(due, definitions, cohort).contains(id)) {
            return Optional.empty();
        }
        int inside = count(calves, ProofCalf.Part.INSIDE);
        int settled = inside + count(calves, ProofCalf.Part.BREACH);
        Interval share = settled == 0 ? null : WilsonInterval.of(inside, settled, 0.95);
        return Optional.of(made(id, title(due, id, cohort), season, share, calves, cohort.cut()));
    }

    /** The step as practice calls it, else as the list of what is due does. */
    private static String title(Due due, String id, Cohort cohort) {
        Optional<PracticeStep> practice = due.definitions().practice().step(id);
        if (practice.isPresent()) {
            return practice.get().text();
        }
        for (int row = 0; row < cohort.lives().size(); row++) {
            for (DueItem item : due.asIfPresent(cohort.lives().get(row), row, cohort.cut())) {
                if (item.step().equals(id) && item.span().closes() != null) {
                    return item.title();
                }
            }
        }
        return id.replace('-', ' ');
    }

    /** The ids that can be proved in a cohort: figures, and the timed steps of its calves. */
    public static Set<String> ids(Due due, Definitions definitions, Cohort cohort) {
        Set<String> ids = new LinkedHashSet<>();
        definitions.indicators().stream()
                .filter(indicator -> LimitTimes.timed(indicator.rule()))
                .forEach(indicator -> ids.add(indicator.id()));
        Set<String> steps = new TreeSet<>();
        for (int row = 0; row < cohort.lives().size(); row++) {
            due.of(cohort.lives().get(row), row, cohort.cut()).stream()
                    .filter(item -> item.span().closes() != null)
                    .forEach(item -> steps.add(item.step()));
        }
        ids.addAll(steps);
        return ids;
    }

    /** How many calves count in this way. */
    public int count(ProofCalf.Part part) {
        return count(calves, part);
    }

    /** The calves with which it was not done yet at a time of the curve, those that it has at risk there. */
    public List<ProofCalf> waiting(double time) {
        return calves.stream()
                .filter(TimeToDone::known)
                .filter(calf -> TimeToDone.followed(calf, cut) >= time)
                .toList();
    }

    private static int count(List<ProofCalf> calves, ProofCalf.Part part) {
        return (int) calves.stream().filter(calf -> calf.part() == part).count();
    }

    private static Proof made(
            String id, String title, String season, Interval share, List<ProofCalf> calves, Instant cut) {
        Map<String, DueRule> rules = new TreeMap<>();
        Map<DueRule, Double> limits = new LinkedHashMap<>();
        List<Breach> outside = new ArrayList<>();
        List<Breach> enteredLate = new ArrayList<>();
        for (ProofCalf calf : calves) {
            rules.putIfAbsent(calf.rule().place() + calf.rule().limit(), calf.rule());
            limits.putIfAbsent(rules.get(calf.rule().place() + calf.rule().limit()), calf.limit());
            if (calf.part() == ProofCalf.Part.BREACH) {
                outside.add(Breach.of(calf, cut));
            } else if (calf.enteredLate()) {
                enteredLate.add(Breach.of(calf, cut));
            }
        }
        boolean byHours = calves.stream().anyMatch(calf -> calf.span().byHours());
        IncidenceCurve curve = TimeToDone.of(calves, cut).orElse(null);
        return new Proof(
                id,
                title,
                season,
                byHours,
                share,
                List.copyOf(calves),
                limits,
                curve,
                List.copyOf(outside),
                List.copyOf(enteredLate),
                cut);
    }
}
