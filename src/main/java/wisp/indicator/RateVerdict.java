package wisp.indicator;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import wisp.history.Episode;
import wisp.history.LifeEvent;

/** Judges one calf for a rate: its episodes in the window and its exact days at risk of one. */
final class RateVerdict {
    private RateVerdict() {}

    static Verdict of(Indicator indicator, Rule.Rate rate, FollowedLife followed) {
        Window window = rate.window();
        Duration start = window.start().exact();
        Optional<Verdict> absent = Entry.notPresent(indicator, followed, window.start());
        if (absent.isPresent()) {
            return absent.get();
        }
        Instant born = followed.life().born().time();
        Instant from = born.plus(start);
        Instant to = earlier(born.plus(window.end().exact()), followed.endTime());
        Duration atRisk = Duration.between(from, to);
        if (rate.outcome() instanceof Outcome.Illness illness) {
            for (Episode episode : followed.episodes(illness.condition())) {
                atRisk = atRisk.minus(overlap(episode, from, to));
            }
        }
        int counted = 0;
        LifeEvent because = null;
        for (LifeEvent event : RiskVerdict.outcomes(rate.outcome(), followed)) {
            if (window.holds(followed.ageAt(event))) {
                because = counted == 0 ? event : because;
                counted++;
            }
        }
        boolean cut = followed.end() == FollowedLife.End.CUT;
        boolean pending = cut && followed.endAge().compareTo(window.end().exact()) < 0;
        return Verdict.rated(followed.row(), FollowedLife.days(atRisk), counted, pending, because);
    }

    private static Duration overlap(Episode episode, Instant from, Instant to) {
        Instant opened = episode.opened().isBefore(from) ? from : episode.opened();
        Instant closed = earlier(episode.closed(), to);
        return closed.isAfter(opened) ? Duration.between(opened, closed) : Duration.ZERO;
    }

    private static Instant earlier(Instant a, Instant b) {
        return a.isBefore(b) ? a : b;
    }
}
