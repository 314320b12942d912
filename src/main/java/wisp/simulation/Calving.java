package wisp.simulation;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * One calving before anything is known of its calves.
 *
 * @param minute when it was, minutes since 1970 in UTC
 * @param litter calves born
 * @param seed of everything else drawn for it
 */
record Calving(long minute, int damParity, int litter, long seed) {
    /** Calvings in order of time that bring exactly this many calves. */
    static List<Calving> draw(Model model, int calves, long seed) {
        if (calves < 0) {
            throw new IllegalArgumentException("A season cannot have " + calves + " calves: ask for none or more.");
        }
        Chance chance = new Chance(seed);
        WallClock clock = new WallClock(model.farm().zone());
        List<Calving> calvings = new ArrayList<>(calves);
        for (int born = 0; born < calves; ) {
            int parity = 1 + chance.index(model.calvings().parity());
            boolean twins = chance.happens(model.calvings().twins(parity)) && born + 2 <= calves;
            long minute = clock.minute(day(model.calendar(), chance), chance.whole(0, 1439));
            calvings.add(new Calving(minute, parity, twins ? 2 : 1, chance.word()));
            born += twins ? 2 : 1;
        }
        calvings.sort(Comparator.comparingLong(Calving::minute));
        return calvings;
    }

    private static LocalDate day(Calendar calendar, Chance chance) {
        int last = (int) ChronoUnit.DAYS.between(calendar.firstBirth(), calendar.lastBirth());
        if (!chance.happens(calendar.peakShare())) {
            return calendar.firstBirth().plusDays(chance.whole(0, last));
        }
        long peak = ChronoUnit.DAYS.between(calendar.firstBirth(), calendar.peak());
        while (true) {
            long day = Math.round(peak + calendar.peakSdDays() * chance.normal());
            if (day >= 0 && day <= last) {
                return calendar.firstBirth().plusDays(day);
            }
        }
    }
}
