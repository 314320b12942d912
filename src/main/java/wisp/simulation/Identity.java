package wisp.simulation;

import wisp.event.Registered;
import wisp.event.SampleResult;
import wisp.event.SampleSent;
import wisp.event.TagFitted;
import wisp.event.TissueSampled;

/** Writes tags, the tissue sample that the first tag takes, and the registration. */
record Identity(Model model, WallClock clock, Chance chance) {
    /** Herd mark of an invented herd; animals past 99,999 go under the next marks. */
    private static final long HERD = 42;

    void write(Newborn calf, Notebook page) {
        Husbandry how = model.husbandry();
        String number = number(model.calendar().from().getYear() % 10 * 1_000_000L + calf.number());
        long first = clock.whenSeen(
                calf.minute() + (long) Math.ceil(60 * chance.lognormal(how.primaryTagMedianHours(), 0.6)), chance);
        long second = second(calf, first);
        boolean never = chance.happens(how.neverTagged());
        if (never) {
            return;
        }
        page.write(first, new TagFitted(number, TagFitted.Ear.LEFT, TagFitted.Role.PRIMARY));
        page.write(second, new TagFitted(number, TagFitted.Ear.RIGHT, TagFitted.Role.SECONDARY));
        sample(number, first, page);
        registration(calf, number, second, page);
    }

    private long second(Newborn calf, long first) {
        double u = chance.uniform();
        Husbandry how = model.husbandry();
        int soon = chance.whole(2, 18);
        int late = chance.whole(21, 40);
        if (u < how.tagLate()) {
            return day(calf, late);
        }
        return u < how.tagLate() + how.tagsTogether() ? first : Math.max(first, day(calf, soon));
    }

    private void sample(String number, long when, Notebook page) {
        boolean taken = chance.happens(model.husbandry().sampled());
        long sent = when + chance.whole(1, 6) * 1440L;
        long back = sent + chance.whole(3, 8) * 1440L;
        double u = chance.uniform();
        if (!taken) {
            return;
        }
        page.write(when, new TissueSampled(number));
        page.write(sent, new SampleSent(number, "regional laboratory"));
        SampleResult.Result result = u < 0.985
                ? SampleResult.Result.NEGATIVE
                : u < 0.989 ? SampleResult.Result.POSITIVE : SampleResult.Result.INCONCLUSIVE;
        page.write(back, new SampleResult(result, number, "regional laboratory", "antigen"));
    }

    private void registration(Newborn calf, String number, long tagged, Notebook page) {
        boolean late = chance.happens(model.husbandry().registeredLate());
        int on = late ? chance.whole(28, 36) : chance.whole(4, 24);
        long when = day(calf, on);
        page.write(Math.max(when, tagged + 60), new Registered("passport for " + number));
    }

    /**
     * A number of the United Kingdom's numeric form. The rule of its check digit, herd × 100,000 + animal modulo 7,
     * plus one, is from memory and agrees with published sequences.
     */
    static String number(long animal) {
        long herd = HERD + animal / 100_000;
        long own = animal % 100_000;
        return "UK " + padded(herd, 6) + " " + ((herd * 100_000 + own) % 7 + 1) + padded(own, 5);
    }

    private static String padded(long number, int digits) {
        String text = Long.toString(number);
        return "0".repeat(digits - text.length()) + text;
    }

    private long day(Newborn calf, int day) {
        return clock.minute(clock.date(calf.minute()).plusDays(day), chance.whole(480, 990));
    }
}
