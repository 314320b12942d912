package wisp.indicator;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wisp.history.Episode;
import wisp.history.LifeEvent;

/** Judges one calf for a risk. */
final class RiskVerdict {
    private RiskVerdict() {}

    static Verdict of(Indicator indicator, Rule.Risk risk, FollowedLife followed) {
        Window window = risk.window();
        Duration start = window.start().exact();
        if (window.open() || !start.isZero()) {
            Optional<Verdict> absent = Entry.notPresent(indicator, followed, window.start());
            if (absent.isPresent()) {
                return absent.get();
            }
        }
        for (LifeEvent event : outcomes(risk.outcome(), followed)) {
            Duration age = followed.ageAt(event);
            if (indicator.needsHours() && followed.ambiguous(event, window)) {
                return Verdict.excluded(followed.row(), Entry.EVENT_TIME_UNKNOWN, event);
            } else if (before(window, age)) {
                return Verdict.outside(
                        followed.row(), "a case already at " + window.start().text());
            } else if (window.holds(age)) {
                return ended(followed, start, age, Verdict.Ending.OUTCOME, event);
            }
        }
        return withoutOutcome(risk, followed);
    }

    private static Verdict withoutOutcome(Rule.Risk risk, FollowedLife followed) {
        Duration start = risk.window().start().exact();
        Duration end = risk.window().end().exact();
        Duration last = followed.endAge();
        if (followed.end() == FollowedLife.End.DEATH && last.compareTo(end) <= 0) {
            LifeEvent death = followed.life().exit().event();
            return ended(followed, start, last, Verdict.Ending.COMPETING, death);
        }
        if (last.compareTo(end) >= 0) {
            return ended(followed, start, end, Verdict.Ending.COMPLETE, null);
        }
        boolean cut = followed.end() == FollowedLife.End.CUT;
        if (risk.leaveOutCensored()) {
            return cut
                    ? Verdict.pending(followed.row())
                    : Verdict.excluded(
                            followed.row(),
                            Entry.LEFT_BEFORE_SETTLED,
                            followed.life().exit().event());
        }
        double days = FollowedLife.days(last.minus(start));
        LifeEvent because = cut ? null : followed.life().exit().event();
        return Verdict.followed(followed.row(), days, Verdict.Ending.CENSORED, cut, because);
    }

    private static Verdict ended(
            FollowedLife followed, Duration start, Duration age, Verdict.Ending ending, LifeEvent because) {
        double days = FollowedLife.days(age.minus(start));
        return Verdict.followed(followed.row(), days, ending, false, because);
    }

    private static boolean before(Window window, Duration age) {
        int atStart = age.compareTo(window.start().exact());
        return window.open() ? atStart <= 0 : atStart < 0;
    }

    /** The outcomes of one life up to the end of follow-up, in order. */
    static List<LifeEvent> outcomes(Outcome outcome, FollowedLife followed) {
        if (outcome instanceof Outcome.Death) {
            boolean died = followed.end() == FollowedLife.End.DEATH;
            return died ? List.of(followed.life().exit().event()) : List.of();
        } else if (outcome instanceof Outcome.Illness illness) {
            List<Episode> episodes = followed.episodes(illness.condition());
            return episodes.isEmpty() ? List.of() : found(episodes, followed);
        } else if (outcome instanceof Outcome.Happening happening) {
            List<EventMatch> anyOf = happening.anyOf();
            return anyOf.size() == 1 ? followed.events(anyOf.get(0)) : happened(anyOf, followed);
        }
        throw new IllegalStateException("an outcome of no known kind: " + outcome);
    }

    private static List<LifeEvent> found(List<Episode> episodes, FollowedLife followed) {
        List<LifeEvent> found = new ArrayList<>(episodes.size());
        for (Episode episode : episodes) {
            if (!episode.event().time().isAfter(followed.cut())) {
                found.add(episode.event());
            }
        }
        return found;
    }

    private static List<LifeEvent> happened(List<EventMatch> anyOf, FollowedLife followed) {
        List<LifeEvent> happened = List.of();
        for (EventMatch match : anyOf) {
            for (LifeEvent event : followed.events(match)) {
                happened = happened.isEmpty() ? new ArrayList<>(2) : happened;
                if (!happened.contains(event)) {
                    happened.add(event);
                }
            }
        }
        if (happened.size() > 1) {
            happened.sort(LifeEvent.ORDER);
        }
        return happened;
    }
}
