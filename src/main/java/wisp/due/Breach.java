package wisp.due;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import wisp.history.Exit;
import wisp.history.Life;
import wisp.history.LifeEvent;

/**
 * One calf outside a limit, or inside it and only written down afterwards, by both clocks.
 *
 * @param row its row in the cohort
 * @param closes when the limit ended, null where it set no time
 * @param done what was done, null where nothing was
 * @param words what happened, whole sentences
 */
public record Breach(Life life, int row, Instant closes, LifeEvent done, String words) {
    static Breach of(ProofCalf calf, Instant cut) {
        return new Breach(calf.life(), calf.row(), calf.span().closes(), calf.done(), words(calf, cut));
    }

    /** When it was recorded, null where nothing was done. */
    public Instant recorded() {
        return done == null ? null : done.recorded();
    }

    private static String words(ProofCalf calf, Instant cut) {
        ZoneId zone = calf.life().farm().zone();
        LifeEvent done = calf.done();
        String limit = calf.span().closes() == null
                ? ""
                : calf.span().byHours()
                        ? "The limit ended " + Said.moment(calf.span().closes(), zone) + "."
                        : "The last day was "
                                + Said.day(day(calf.span().closes().minusNanos(1), zone)) + ".";
        if (done == null) {
            return (limit + " " + notDone(calf, zone, cut)).strip();
        }
        String when = done.timeKnown() ? Said.moment(done.time(), zone) : Said.day(day(done.time(), zone));
        String how = calf.breach().isEmpty() ? "" : " Outside the law: " + calf.breach() + ".";
        String recorded = " Recorded " + Said.moment(done.recorded(), zone)
                + (calf.enteredLate() ? ", after the limit had passed; entered late is not done late." : ".");
        return (limit + " Done " + when + late(calf, zone) + "." + recorded + how).strip();
    }

    private static String late(ProofCalf calf, ZoneId zone) {
        if (calf.span().closes() == null || !calf.span().over(calf.done().time())) {
            return "";
        }
        if (calf.span().byHours()) {
            long minutes =
                    ChronoUnit.MINUTES.between(calf.span().closes(), calf.done().time());
            return ", " + (minutes < 120 ? minutes + " min" : minutes / 60 + " h") + " late";
        }
        long days = ChronoUnit.DAYS.between(
                day(calf.span().closes().minusNanos(1), zone), day(calf.done().time(), zone));
        return ", " + days + (days == 1 ? " day" : " days") + " late";
    }

    private static String notDone(ProofCalf calf, ZoneId zone, Instant cut) {
        Exit exit = calf.life().exit();
        if (exit != null && !exit.time().isAfter(cut)) {
            String how = exit.death() ? "It died " : "It left ";
            return how + Said.day(day(exit.time(), zone)) + " without it.";
        }
        return "Nothing is on record of it by " + Said.moment(cut, zone) + ".";
    }

    private static LocalDate day(Instant moment, ZoneId zone) {
        return moment.atZone(zone).toLocalDate();
    }
}
