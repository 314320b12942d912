package wisp.simulation;

import java.util.ArrayList;
import java.util.List;
import wisp.event.Birth;
import wisp.event.ColostrumFed;

/**
 * What is true of one calf from its first day, written down or not.
 *
 * @param number its place in the season, from 1
 * @param minute when it was born, minutes since 1970 in UTC
 * @param winter born in December, January or February
 * @param score cleanliness, 0–3
 * @param navelMinutes from birth to navel treatment; infinite where never treated
 * @param colostrumDeficit 0 where a tenth of birth weight was fed by 6 h, 1 where nothing was
 */
record Newborn(
        int number,
        long minute,
        boolean night,
        boolean winter,
        Place place,
        int damParity,
        int ease,
        int litter,
        Birth.Sex sex,
        Calvings.Breed breed,
        double weightKg,
        boolean alive,
        boolean keepEntire,
        int score,
        double navelMinutes,
        List<Feed> feeds,
        double brixPercent,
        double colostrumDeficit) {

    /** The second twin comes at most this long after the first. */
    static final int LONGEST_TWIN_LAG_MINUTES = 40;

    /** One feed of colostrum, its volume true even where nobody measured it. */
    record Feed(long minutes, double volumeL, ColostrumFed.Method method) {}

    boolean twin() {
        return litter > 1;
    }

    boolean bull() {
        return sex == Birth.Sex.MALE;
    }

    boolean assisted() {
        return ease >= 3;
    }

    /** The delay in minutes that hazards go by: between 5 minutes and 48 h. */
    double navelExposure() {
        return Math.max(5, Math.min(2880, navelMinutes));
    }

    /** The calves of a calving; twins share place, ease and breed. */
    static List<Newborn> of(Model model, Calving calving, int firstNumber, WallClock clock, Chance chance) {
        boolean night = clock.night(calving.minute());
        boolean winter = clock.date(calving.minute()).getMonthValue() % 12 < 3;
        Calvings how = model.calvings();
        boolean outside = chance.happens(night ? how.outsideByNight() : how.outsideByDay());
        Place place = chance.one(model.places(), p -> p.calvingPen() == outside ? 0 : p.share());
        int ease = 1 + chance.index(how.ease(calving.damParity(), calving.litter() > 1));
        Calvings.Breed breed = chance.one(how.breeds(), Calvings.Breed::share);
        List<Newborn> calves = new ArrayList<>(calving.litter());
        for (int i = 0; i < calving.litter(); i++) {
            long minute = calving.minute() + (i == 0 ? 0 : chance.whole(5, LONGEST_TWIN_LAG_MINUTES));
            int days = new Beddings(model, clock).daysSince(place, minute);
            calves.add(one(model, calving, firstNumber + i, minute, night, winter, place, days, ease, breed, chance));
        }
        return calves;
    }

    private static Newborn one(
            Model model,
            Calving calving,
            int number,
            long minute,
            boolean night,
            boolean winter,
            Place place,
            int daysSinceBedding,
            int ease,
            Calvings.Breed breed,
            Chance chance) {
        Calvings how = model.calvings();
        boolean twin = calving.litter() > 1;
        boolean male = chance.happens(how.male());
        double mean = breed.weightKg() + (male ? 2 : 0) - (twin ? 6 : 0) - (calving.damParity() == 1 ? 3 : 0);
        double weight = Math.round(2 * Math.max(18, mean + 4.5 * chance.normal())) / 2.0;
        boolean alive = !chance.happens(how.bornDead(ease, calving.damParity(), twin));
        boolean keepEntire = male && chance.happens(how.keepEntire());
        int score = score(model.cleanliness(), place, daysSinceBedding, chance);
        NavelCare navel = model.navelCare();
        boolean never = chance.happens(navel.never(night));
        double delay = Math.ceil(chance.lognormal(navel.median(night, !place.calvingPen()), navel.sigma()));
        ColostrumFeeding feeding = model.colostrum();
        List<Feed> feeds = feeds(feeding, night, chance);
        double brix = tenth(Math.max(10, feeding.brixPercent() + feeding.brixSd() * chance.normal()));
        return new Newborn(
                number,
                minute,
                night,
                winter,
                place,
                calving.damParity(),
                ease,
                calving.litter(),
                male ? Birth.Sex.MALE : Birth.Sex.FEMALE,
                breed,
                weight,
                alive,
                keepEntire,
                score,
                never ? Double.POSITIVE_INFINITY : delay,
                feeds,
                brix,
                deficit(feeds, weight));
    }

    private static int score(Cleanliness model, Place place, int days, Chance chance) {
        double u = chance.uniform();
        int score = 0;
        while (score < 3 && u < model.atLeast(score + 1, place, days)) {
            score++;
        }
        return score;
    }

    private static List<Feed> feeds(ColostrumFeeding how, boolean night, Chance chance) {
        double median = 60 * how.medianHours() * (night ? how.nightRatio() : 1);
        long first = (long) Math.ceil(chance.lognormal(median, how.sigma()));
        boolean suckled = chance.happens(how.suckledShare());
        ColostrumFed.Method method = suckled
                ? ColostrumFed.Method.SUCKLED
                : chance.happens(0.4) ? ColostrumFed.Method.TUBE : ColostrumFed.Method.BOTTLE;
        double volume = tenth(Math.max(0.3, Math.min(5, how.volumeL() + how.volumeSdL() * chance.normal())));
        Feed one = new Feed(first, volume, method);
        if (!chance.happens(0.7)) {
            return List.of(one);
        }
        double again = tenth(Math.max(0.5, 2.2 + 0.4 * chance.normal()));
        return List.of(one, new Feed(first + chance.whole(480, 720), again, ColostrumFed.Method.BOTTLE));
    }

    private static double deficit(List<Feed> feeds, double weightKg) {
        double fed = 0;
        for (Feed feed : feeds) {
            fed += feed.minutes() <= 360 ? feed.volumeL() : 0;
        }
        return Math.max(0, 1 - fed / (0.1 * weightKg));
    }

    private static double tenth(double value) {
        return Math.round(value * 10) / 10.0;
    }
}
