package wisp.simulation;

import wisp.event.BloodTested;
import wisp.event.Castrated;
import wisp.event.Disbudded;
import wisp.event.Left;
import wisp.event.Moved;
import wisp.event.Noted;
import wisp.event.Relief;
import wisp.event.Vaccinated;
import wisp.event.Weaned;
import wisp.event.Weighed;

/** Writes what is done with a calf as it grows: blood, castration, disbudding, moves, weights, weaning, sale. */
record Chores(Model model, WallClock clock, Chance chance) {
    /** The minute at which the calf is sold, {@link Long#MAX_VALUE} where it stays; health has no say in it. */
    long sale(Newborn calf) {
        Husbandry husbandry = model.husbandry();
        double share = !calf.bull() || calf.keepEntire()
                ? 0
                : calf.breed().dairy() ? husbandry.soldDairyBull() : husbandry.soldBeefBull();
        long day = onDay(calf, chance.whole(14, 35));
        return chance.happens(share) ? day : Long.MAX_VALUE;
    }

    void write(Newborn calf, long sale, Notebook page) {
        blood(calf, page);
        castration(calf, page);
        disbudding(calf, page);
        moves(calf, page);
        growth(calf, page);
        if (sale != Long.MAX_VALUE) {
            page.writeAtOnce(sale, new Left(Left.Reason.SOLD));
        }
        if (chance.happens(0.02)) {
            page.write(onDay(calf, chance.whole(1, 40)), new Noted("slow at the bucket, watch", null));
        }
    }

    private void blood(Newborn calf, Notebook page) {
        ColostrumFeeding how = model.colostrum();
        double hours = calf.feeds().get(0).minutes() / 60.0;
        double log = -how.iggPerDeficit() * calf.colostrumDeficit()
                - how.iggPerHour() * (hours - 2)
                + how.iggPerBrix() * (calf.brixPercent() - how.brixPercent())
                + how.iggSigma() * chance.normal();
        double igg = Math.min(80, how.iggGL() * StrictMath.exp(log));
        long when = calf.minute() + chance.whole(1470, 7 * 1440 - 30);
        double u = chance.uniform();
        double noise = chance.normal();
        if (!chance.happens(model.husbandry().bloodTested())) {
            return;
        }
        if (u < 0.4) {
            page.write(when, new BloodTested(null, null, tenth(igg)));
        } else if (u < 0.7) {
            page.write(when, new BloodTested(tenth(bound(4.35 + 0.0735 * igg + 0.15 * noise)), null, null));
        } else {
            page.write(when, new BloodTested(null, tenth(bound(7.25 + 0.086 * igg + 0.2 * noise)), null));
        }
    }

    private void castration(Newborn calf, Notebook page) {
        Husbandry how = model.husbandry();
        double u = chance.uniform();
        int early = chance.whole(1, 7);
        int past = chance.whole(8, 10);
        int clamped = chance.whole(21, 50);
        boolean bothIn = !chance.happens(how.oneMissed());
        boolean relieved = chance.happens(0.35);
        if (!calf.bull() || calf.keepEntire()) {
            return;
        }
        Relief none = new Relief(false, null);
        Relief pain = new Relief(relieved, relieved ? "meloxicam" : null);
        if (u < how.ring()) {
            page.write(onDay(calf, early), new Castrated(Castrated.Method.RING, bothIn, none, pain));
        } else if (u < how.ring() + how.ringLate()) {
            page.write(onDay(calf, past), new Castrated(Castrated.Method.RING, bothIn, none, pain));
        } else if (u < how.ring() + how.ringLate() + how.clamp()) {
            page.write(onDay(calf, clamped), new Castrated(Castrated.Method.CLAMP, bothIn, none, pain));
        }
    }

    private void disbudding(Newborn calf, Notebook page) {
        long when = onDay(calf, chance.whole(14, 38));
        boolean relieved = chance.happens(0.85);
        if (chance.happens(0.93)) {
            page.write(
                    when,
                    new Disbudded(
                            "hot iron",
                            new Relief(true, "procaine"),
                            new Relief(relieved, relieved ? "meloxicam" : null)));
        }
    }

    private void moves(Newborn calf, Notebook page) {
        String group = chance.happens(0.5) ? "calf house east" : "calf house west";
        page.write(onDay(calf, chance.whole(4, 9)), new Moved(group));
        long vaccination = onDay(calf, chance.whole(9, 14));
        if (chance.happens(model.husbandry().vaccinated())) {
            page.write(vaccination, new Vaccinated("respiratory syncytial virus, intranasal", null));
        }
    }

    private void growth(Newborn calf, Notebook page) {
        double gain = Math.max(0.3, 0.72 + 0.12 * chance.normal());
        int day = chance.whole(51, 63);
        long weaning = onDay(calf, day);
        if (chance.happens(0.7)) {
            page.write(weaning, new Weighed(Math.round(calf.weightKg() + gain * day)));
        }
        page.write(weaning + 20, new Weaned());
        page.write(weaning + 2880, new Moved("weaner yard"));
    }

    private static double bound(double value) {
        return Math.max(3, value);
    }

    private static double tenth(double value) {
        return Math.round(value * 10) / 10.0;
    }

    private long onDay(Newborn calf, int day) {
        return clock.minute(clock.date(calf.minute()).plusDays(day), chance.whole(480, 990));
    }
}
