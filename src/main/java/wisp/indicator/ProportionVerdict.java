package wisp.indicator;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import wisp.event.ColostrumFed;
import wisp.history.Episode;
import wisp.history.LifeEvent;

/** Judges one calf, or each of its episodes, for a proportion. */
final class ProportionVerdict {
    static final String NOT_RECORDED = "not-recorded";
    static final String SUCKLED_UNMEASURED = "suckled-unmeasured";
    static final String AMOUNT_NOT_RECORDED = "amount-not-recorded";

    private ProportionVerdict() {}

    static Verdict feature(Rule.Feature rule, FollowedLife followed) {
        Window window = rule.window();
        List<LifeEvent> records = followed.events(rule.record());
        LifeEvent unclear = null;
        LifeEvent first = null;
        for (LifeEvent event : records) {
            unclear = unclear == null && followed.ambiguous(event, window) ? event : unclear;
            boolean inside = first == null && event.timeKnown() && window.holds(followed.ageAt(event));
            first = inside ? event : first;
        }
        if (first != null) {
            return judged(rule, first, followed);
        }
        if (unclear != null) {
            return Verdict.excluded(followed.row(), Entry.EVENT_TIME_UNKNOWN, unclear);
        }
        return missing(window.end().exact(), followed);
    }

    private static Verdict judged(Rule.Feature rule, LifeEvent first, FollowedLife followed) {
        for (FieldTest test : rule.firstPresent()) {
            if (EventFields.value(first.data(), test.field()) != null) {
                return Verdict.settled(followed.row(), test.passes(first.data()), first);
            }
        }
        return Verdict.excluded(followed.row(), NOT_RECORDED, first);
    }

    static Verdict amount(Rule.AmountByAge rule, FollowedLife followed) {
        Duration by = rule.by().exact();
        List<LifeEvent> records = followed.events(rule.record());
        if (records.isEmpty()) {
            return missing(by, followed);
        }
        double total = 0;
        String unknown = null;
        for (LifeEvent event : records) {
            if (followed.ageAt(event).compareTo(by) > 0) {
                continue;
            }
            Object amount = EventFields.value(event.data(), rule.field());
            if (!event.timeKnown()) {
                unknown = Entry.EVENT_TIME_UNKNOWN;
            } else if (amount instanceof Number number) {
                total += number.doubleValue();
            } else {
                unknown = suckled(event) ? SUCKLED_UNMEASURED : AMOUNT_NOT_RECORDED;
            }
        }
        Double weight = followed.life().birth().weightKg();
        double needed = weight == null ? rule.otherwise() : rule.shareOfBirthWeight() * weight;
        // a tenth of a weight is rarely a round binary number; a millionth of a litre is no difference
        if (total >= needed - 1e-6) {
            return Verdict.settled(followed.row(), true, records.get(0));
        }
        return unknown == null
                ? Verdict.settled(followed.row(), false, records.get(0))
                : Verdict.excluded(followed.row(), unknown, records.get(0));
    }

    static List<Verdict> caseFatality(Rule.CaseFatality rule, FollowedLife followed) {
        List<Verdict> verdicts = new ArrayList<>();
        for (Episode episode : followed.episodes(rule.condition())) {
            if (!episode.opened().isAfter(followed.cut())) {
                verdicts.add(fatality(episode.opened().plus(rule.within().exact()), episode, followed));
            }
        }
        return verdicts.isEmpty() ? List.of(Verdict.outside(followed.row(), "no episode")) : verdicts;
    }

    private static Verdict fatality(Instant deadline, Episode episode, FollowedLife followed) {
        boolean died = followed.end() == FollowedLife.End.DEATH;
        if (died && !followed.endTime().isAfter(deadline)) {
            return Verdict.settled(followed.row(), true, followed.life().exit().event());
        }
        if (!followed.endTime().isBefore(deadline)) {
            return Verdict.settled(followed.row(), false, episode.event());
        }
        return followed.end() == FollowedLife.End.CUT
                ? Verdict.pending(followed.row())
                : Verdict.excluded(followed.row(), Entry.LEFT_BEFORE_SETTLED, episode.event());
    }

    /** No record yet, or none at all. */
    private static Verdict missing(Duration windowEnd, FollowedLife followed) {
        boolean open =
                followed.end() == FollowedLife.End.CUT && followed.endAge().compareTo(windowEnd) < 0;
        return open ? Verdict.pending(followed.row()) : Verdict.excluded(followed.row(), NOT_RECORDED, null);
    }

    private static boolean suckled(LifeEvent event) {
        return event.data() instanceof ColostrumFed fed && fed.method() == ColostrumFed.Method.SUCKLED;
    }
}
