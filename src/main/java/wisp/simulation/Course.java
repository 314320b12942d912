package wisp.simulation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How a calf's health went: each illness comes by its own hazard, given the calf's first day and, where the model says
 * so, an earlier navel infection; the first death of all ends the life.
 *
 * @param episodes in order of onset, none after death
 * @param death when it died, {@link Long#MAX_VALUE} where it did not
 * @param cause the condition it died of, null for none of them
 */
record Course(List<Episode> episodes, long death, String cause) {
    static Course of(Model model, Newborn calf, WallClock clock, Chance chance) {
        List<Episode> all = new ArrayList<>(2);
        double afterNavel = Double.POSITIVE_INFINITY;
        for (Illness illness : model.illnesses()) {
            double first = episodes(illness, calf, afterNavel, clock, chance, all);
            if (illness.isNavelInfection()) {
                afterNavel = first;
            }
        }
        long death = background(model.death(), calf, chance);
        String cause = null;
        for (Episode episode : all) {
            if (episode.fatal() && episode.end() < death) {
                death = episode.end();
                cause = episode.illness().condition();
            }
        }
        long last = death;
        all.removeIf(episode -> episode.onset() >= last);
        all.sort(Comparator.comparingLong(Episode::onset));
        return new Course(all, death, cause);
    }

    /** Adds the episodes of one illness and gives the age in days at the first, infinite where there is none. */
    private static double episodes(
            Illness illness, Newborn calf, double afterNavel, WallClock clock, Chance chance, List<Episode> into) {
        double ratio = ratio(illness.ratios(), calf);
        double first = Double.POSITIVE_INFINITY;
        double age = 0;
        while (true) {
            age = onset(illness, ratio, age, afterNavel, chance);
            if (age == Double.POSITIVE_INFINITY) {
                return first;
            }
            long onset = clock.whenSeen(calf.minute() + (long) Math.ceil(age * 1440), chance);
            first = Math.min(first, age);
            boolean fatal = chance.happens(illness.fatality());
            double days =
                    fatal ? illness.daysToDeath() * chance.exponential() : chance.lognormal(illness.daysIll(), 0.5);
            long end = onset + Math.max(30, (long) (days * 1440));
            into.add(new Episode(illness, onset, end, fatal));
            if (fatal) {
                return first;
            }
            age = (end - calf.minute()) / 1440.0;
            ratio = ratio(illness.ratios(), calf) * illness.recurrence();
        }
    }

    /** An exponential has no memory: what is not reached by the navel infection is drawn anew from there on. */
    private static double onset(Illness illness, double ratio, double from, double afterNavel, Chance chance) {
        double age = illness.hazard().reaches(from, ratio, chance.exponential());
        if (age <= afterNavel || illness.ratios().afterNavel() == 1) {
            return age;
        }
        double since = Math.max(from, afterNavel);
        return illness.hazard().reaches(since, ratio * illness.ratios().afterNavel(), chance.exponential());
    }

    static double ratio(Illness.Ratios ratios, Newborn calf) {
        double doublings = StrictMath.log(calf.navelExposure() / 30) / StrictMath.log(2);
        return StrictMath.pow(ratios.navelDoubling(), doublings)
                * StrictMath.pow(ratios.dirtPoint(), calf.score())
                * StrictMath.pow(ratios.colostrumDeficit(), calf.colostrumDeficit())
                * (calf.assisted() ? ratios.assisted() : 1)
                * (calf.damParity() == 1 ? ratios.firstCalf() : 1)
                * (calf.winter() ? ratios.winter() : 1);
    }

    private static long background(BackgroundDeath how, Newborn calf, Chance chance) {
        double ratio = (calf.assisted() ? how.assisted() : 1) * (calf.twin() ? how.twin() : 1);
        double age = how.hazard().reaches(0, ratio, chance.exponential());
        return age == Double.POSITIVE_INFINITY ? Long.MAX_VALUE : calf.minute() + Math.max(20, (long) (age * 1440));
    }
}
