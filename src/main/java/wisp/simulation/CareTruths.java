package wisp.simulation;

/** What is so about navels, colostrum and the chores that follow. */
final class CareTruths {
    private CareTruths() {}

    static void navels(Model model, TruthList to) {
        NavelCare care = model.navelCare();
        to.add(
                "navel_delay_median_minutes",
                care.medianMinutes(),
                "Median delay from birth to navel treatment by day in a calving pen; lognormal.");
        to.add("navel_delay_log_sd", care.sigma(), "Standard deviation of the natural logarithm of that delay.");
        to.add("navel_delay_ratio_night", care.nightRatio(), "What a birth at 22–06 h multiplies the median delay by.");
        to.add(
                "navel_delay_ratio_outside",
                care.outsideRatio(),
                "What a birth outside the calving pens multiplies the median delay by.");
        to.add("navel_treated_within_15_min", within(15, model), "Share of navels truly treated within 15 minutes.");
        to.add("navel_treated_within_60_min", within(60, model), "Share of navels truly treated within 60 minutes.");
        to.add("navel_treated_within_24_h", within(1440, model), "Share of navels truly treated within 24 hours.");
        to.add("navel_product_hazard_ratio", 1, "No product does better than another.");
        to.add("navel_method_hazard_ratio", 1, "Neither dip nor spray does better.");
    }

    static void colostrum(ColostrumFeeding how, TruthList to) {
        to.add(
                "colostrum_first_feed_median_hours",
                how.medianHours(),
                "Median delay to the first feed by day; lognormal.");
        to.add("colostrum_delay_ratio_night", how.nightRatio(), "What a birth at 22–06 h multiplies that median by.");
        to.add("colostrum_first_feed_mean_l", how.volumeL(), "Mean volume of the first feed.");
        to.add("colostrum_suckled", how.suckledShare(), "Share of calves that suckle, their volume not measured.");
        to.add(
                "igg_ratio_whole_deficit",
                StrictMath.exp(-how.iggPerDeficit()),
                "Ratio of serum IgG without any colostrum by 6 h to that with a tenth of birth weight.");
    }

    static void chores(Husbandry how, TruthList to) {
        to.add("second_tag_late", how.tagLate(), "Share with the second tag on days 21–40, past the limit.");
        to.add("never_tagged", how.neverTagged(), "Share for which no tag is written.");
        to.add("registered_late", how.registeredLate(), "Share registered after day 27.");
        to.add(
                "ringed_days_1_to_7",
                how.ring(),
                "Share of bull calves not kept entire that are ringed on days 1–7, if still there.");
        to.add("ringed_late", how.ringLate(), "Share of them ringed on days 8–10, past the limit.");
        to.add("one_testicle_missed", how.oneMissed(), "Share of castrations with one testicle missed.");
        to.add(
                "sold_dairy_bull",
                how.soldDairyBull(),
                "Share of dairy-breed bull calves not kept entire that are sold on days 14–35; health has no say.");
        to.add("sold_beef_bull", how.soldBeefBull(), "The same for other bull calves.");
        to.add(
                "blood_tested",
                how.bloodTested(),
                "Share of calves with blood taken from 24 h to 7 days, if still there.");
    }

    /** The share of navels treated within so many minutes over all births, a third of them by night. */
    static double within(double minutes, Model model) {
        double outDay = model.calvings().outsideByDay();
        double outNight = model.calvings().outsideByNight();
        NavelCare care = model.navelCare();
        double day = outDay * care.treatedWithin(minutes, false, true)
                + (1 - outDay) * care.treatedWithin(minutes, false, false);
        double night = outNight * care.treatedWithin(minutes, true, true)
                + (1 - outNight) * care.treatedWithin(minutes, true, false);
        return day * 2 / 3 + night / 3;
    }
}
