package wisp.simulation;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;

/** What is built into a simulated season: the model's constants, and shares that follow from them by formula. */
public final class Truths {
    private static final JsonMapper JSON = new JsonMapper();

    private Truths() {}

    /** All truths of a model. */
    public static List<Truth> of(Model model) {
        List<Truth> truths = new ArrayList<>();
        births(model.calvings(), truths);
        cleanliness(model, truths);
        navels(model, truths);
        colostrum(model.colostrum(), truths);
        model.illnesses().forEach(illness -> illness(illness, truths));
        death(model.death(), truths);
        records(model.recording(), truths);
        chores(model.husbandry(), truths);
        return truths;
    }

    /** The same as JSON: one object, each truth under its name with its value and what it means. */
    public static ObjectNode json(Model model) {
        ObjectNode all = JSON.createObjectNode();
        for (Truth truth : of(model)) {
            all.putObject(truth.name()).put("value", rounded(truth.value())).put("means", truth.means());
        }
        return all;
    }

    /** JSON as text, indented, lines ended by a line feed on every machine. */
    static String text(ObjectNode json) {
        DefaultIndenter indent = new DefaultIndenter("  ", "\n");
        try {
            return JSON.writer(new DefaultPrettyPrinter().withObjectIndenter(indent))
                            .writeValueAsString(json) + "\n";
        } catch (JsonProcessingException cannotBe) {
            throw new IllegalStateException("a tree of numbers and text could not be written", cannotBe);
        }
    }

    /** The share of navels treated within so many minutes, of births by day or night, in or out of the pens. */
    static double treatedWithin(double minutes, NavelCare care, boolean night, boolean outside) {
        double z = StrictMath.log(minutes / care.median(night, outside)) / care.sigma();
        return (1 - care.never(night)) * NormalDistribution.of(0, 1).cumulativeProbability(z);
    }

    /** The same over all births: a third are by night. */
    static double treatedWithin(double minutes, Model model) {
        double outDay = model.calvings().outsideByDay();
        double outNight = model.calvings().outsideByNight();
        NavelCare care = model.navelCare();
        double day = outDay * treatedWithin(minutes, care, false, true)
                + (1 - outDay) * treatedWithin(minutes, care, false, false);
        double night = outNight * treatedWithin(minutes, care, true, true)
                + (1 - outNight) * treatedWithin(minutes, care, true, false);
        return day * 2 / 3 + night / 3;
    }

    private static void births(Calvings how, List<Truth> to) {
        add(
                to,
                "born_dead",
                how.bornDeadOverall(),
                "Probability of a dead birth over the mix of parity, twins and ease; deaths inside 24 h come on top.");
        add(
                to,
                "born_dead_reference",
                how.bornDead(),
                "Probability of a dead birth for a single calf of an older dam, unassisted.");
        for (int ease = 2; ease <= 5; ease++) {
            add(
                    to,
                    "born_dead_ratio_ease_" + ease,
                    how.bornDeadByEase().get(ease - 1),
                    "Risk ratio of a dead birth at ease " + ease + " against ease 1.");
        }
        add(to, "born_dead_ratio_first_calving", how.bornDeadFirst(), "Risk ratio of a dead birth at a first calving.");
        add(to, "born_dead_ratio_twin", how.bornDeadTwin(), "Risk ratio of a dead birth for a twin.");
        add(to, "born_outside_by_day", how.outsideByDay(), "Share of calvings outside the calving pens at 06–22 h.");
        add(
                to,
                "born_outside_by_night",
                how.outsideByNight(),
                "Share of calvings outside the calving pens at 22–06 h.");
        add(to, "male", how.male(), "Share of bull calves.");
        add(to, "keep_entire", how.keepEntire(), "Share of bull calves that are to stay entire.");
    }

    private static void cleanliness(Model model, List<Truth> to) {
        for (Place place : model.places()) {
            String name = place.name().replace(' ', '_');
            add(
                    to,
                    "dirty_" + name,
                    model.cleanliness().dirty(place),
                    "Probability of a cleanliness score of 2 or 3 in the " + place.name()
                            + ", over the days between beddings.");
            add(
                    to,
                    "bedded_every_days_" + name,
                    place.beddedEveryDays(),
                    "Days from one bedding of the " + place.name() + " to the next; 0 for none.");
        }
        add(
                to,
                "dirty_odds_ratio_per_day_since_bedding",
                StrictMath.exp(model.cleanliness().perDaySinceBedding()),
                "Odds ratio of a higher score for each day since the pen was bedded.");
    }

    private static void navels(Model model, List<Truth> to) {
        NavelCare care = model.navelCare();
        add(
                to,
                "navel_delay_median_minutes",
                care.medianMinutes(),
                "Median delay from birth to navel treatment by day in a calving pen; lognormal.");
        add(to, "navel_delay_log_sd", care.sigma(), "Standard deviation of the natural logarithm of that delay.");
        add(
                to,
                "navel_delay_ratio_night",
                care.nightRatio(),
                "What a birth at 22–06 h multiplies the median delay by.");
        add(
                to,
                "navel_delay_ratio_outside",
                care.outsideRatio(),
                "What a birth outside the calving pens multiplies the median delay by.");
        add(
                to,
                "navel_treated_within_15_min",
                treatedWithin(15, model),
                "Share of navels truly treated within 15 minutes.");
        add(
                to,
                "navel_treated_within_60_min",
                treatedWithin(60, model),
                "Share of navels truly treated within 60 minutes.");
        add(
                to,
                "navel_treated_within_24_h",
                treatedWithin(1440, model),
                "Share of navels truly treated within 24 hours.");
        add(to, "navel_product_hazard_ratio", 1, "No product does better than another.");
        add(to, "navel_method_hazard_ratio", 1, "Neither dip nor spray does better.");
    }

    private static void colostrum(ColostrumFeeding how, List<Truth> to) {
        add(
                to,
                "colostrum_first_feed_median_hours",
                how.medianHours(),
                "Median delay to the first feed by day; lognormal.");
        add(to, "colostrum_delay_ratio_night", how.nightRatio(), "What a birth at 22–06 h multiplies that median by.");
        add(to, "colostrum_first_feed_mean_l", how.volumeL(), "Mean volume of the first feed.");
        add(to, "colostrum_suckled", how.suckledShare(), "Share of calves that suckle, their volume not measured.");
        add(
                to,
                "igg_ratio_whole_deficit",
                StrictMath.exp(-how.iggPerDeficit()),
                "Ratio of serum IgG without any colostrum by 6 h to that with a tenth of birth weight.");
    }

    private static void illness(Illness illness, List<Truth> to) {
        String c = illness.condition();
        Illness.Ratios ratios = illness.ratios();
        add(
                to,
                c + "_reference_risk_21d",
                risk(illness, 21),
                "Risk of " + c + " by 21 days for the reference calf, were there no death.");
        add(
                to,
                c + "_reference_risk_60d",
                risk(illness, 60),
                "Risk of " + c + " by 60 days for the reference calf, were there no death.");
        add(
                to,
                c + "_hazard_ratio_navel_delay_doubled",
                ratios.navelDoubling(),
                "Hazard ratio of " + c
                        + " for each doubling of the minutes to navel treatment, between 5 minutes and 48 h.");
        add(
                to,
                c + "_hazard_ratio_dirt_point",
                ratios.dirtPoint(),
                "Hazard ratio of " + c + " for each point of the cleanliness score.");
        add(
                to,
                c + "_hazard_ratio_ease_3_to_5",
                ratios.assisted(),
                "Hazard ratio of " + c + " for ease 3 to 5 against 1 or 2.");
        add(
                to,
                c + "_hazard_ratio_no_colostrum",
                ratios.colostrumDeficit(),
                "Hazard ratio of " + c + " for no colostrum by 6 h against a tenth of birth weight.");
        add(
                to,
                c + "_hazard_ratio_first_calving",
                ratios.firstCalf(),
                "Hazard ratio of " + c + " for a first calving.");
        add(
                to,
                c + "_hazard_ratio_winter",
                ratios.winter(),
                "Hazard ratio of " + c + " for a birth in December, January or February.");
        add(
                to,
                c + "_hazard_ratio_after_navel_infection",
                ratios.afterNavel(),
                "Hazard ratio of " + c + " from the onset of a navel infection on.");
        add(
                to,
                c + "_hazard_ratio_again",
                illness.recurrence(),
                "Hazard ratio of a further episode of " + c + " once one is over.");
        add(
                to,
                c + "_fatality",
                illness.fatality(),
                "Probability that an episode of " + c + " ends in death, if nothing else ends the life first.");
    }

    private static void death(BackgroundDeath how, List<Truth> to) {
        add(
                to,
                "death_reference_risk_24h",
                1 - StrictMath.exp(-how.hazard().between(0, 1)),
                "Risk of death inside 24 h for a live birth, single and unassisted.");
        add(
                to,
                "death_reference_risk_24h_to_60d",
                1 - StrictMath.exp(-how.hazard().between(1, 60)),
                "Risk of death from 24 h to 60 days outside the illnesses, for such a calf.");
        add(
                to,
                "death_hazard_ratio_ease_3_to_5",
                how.assisted(),
                "Hazard ratio of death outside the illnesses for ease 3 to 5.");
        add(to, "death_hazard_ratio_twin", how.twin(), "Hazard ratio of death outside the illnesses for a twin.");
    }

    private static void records(Recording how, List<Truth> to) {
        add(
                to,
                "cleanliness_not_recorded_by_day",
                how.cleanlinessMissingByDay(),
                "Share of scores not written, births at 06–22 h.");
        add(
                to,
                "cleanliness_not_recorded_by_night",
                how.cleanlinessMissingByNight(),
                "Share of scores not written, births at 22–06 h.");
        add(to, "navel_not_recorded", how.navelMissing(), "Share of navel treatments that were done and not written.");
        add(
                to,
                "navel_time_not_recorded",
                how.navelTimeUnknown(),
                "Share of navel treatments with only the date written.");
        add(
                to,
                "colostrum_not_recorded_by_day",
                how.colostrumMissingByDay(),
                "Share of calves without any feed written, births at 06–22 h.");
        add(
                to,
                "colostrum_not_recorded_by_night",
                how.colostrumMissingByNight(),
                "Share of calves without any feed written, births at 22–06 h.");
        add(to, "birth_weight_not_recorded", how.weightMissing(), "Share of births without weight.");
        add(to, "place_of_birth_not_recorded", how.penMissing(), "Share of births without place.");
        add(to, "birth_time_not_recorded", how.birthTimeUnknown(), "Share of births with only the date written.");
        add(to, "recovery_not_recorded", how.recoveryMissing(), "Share of recoveries not written.");
        add(to, "entered_days_late", how.late(), "Share of events written two to six days late.");
        add(
                to,
                "navel_amended",
                how.amendedNavel(),
                "Share of navel treatments first written 12 h wrong, then amended.");
        add(
                to,
                "cleanliness_amended",
                how.amendedScore(),
                "Share of scores first written one point wrong, then amended.");
        add(
                to,
                "illness_retracted",
                how.retracted(),
                "Probability for a calf that another's diarrhoea is written for it, then withdrawn.");
        add(to, "weighing_misdated", how.misdated(), "Probability for a calf of a weighing dated before its birth.");
    }

    private static void chores(Husbandry how, List<Truth> to) {
        add(to, "second_tag_late", how.tagLate(), "Share with the second tag on days 21–40, past the limit.");
        add(to, "never_tagged", how.neverTagged(), "Share for which no tag is written.");
        add(to, "registered_late", how.registeredLate(), "Share registered after day 27.");
        add(
                to,
                "ringed_days_1_to_7",
                how.ring(),
                "Share of bull calves not kept entire that are ringed on days 1–7, if still there.");
        add(to, "ringed_late", how.ringLate(), "Share of them ringed on days 8–10, past the limit.");
        add(to, "one_testicle_missed", how.oneMissed(), "Share of castrations with one testicle missed.");
        add(
                to,
                "sold_dairy_bull",
                how.soldDairyBull(),
                "Share of dairy-breed bull calves not kept entire that are sold on days 14–35; health has no say.");
        add(to, "sold_beef_bull", how.soldBeefBull(), "The same for other bull calves.");
        add(
                to,
                "blood_tested",
                how.bloodTested(),
                "Share of calves with blood taken from 24 h to 7 days, if still there.");
    }

    private static double risk(Illness illness, double days) {
        return 1 - StrictMath.exp(-illness.hazard().between(0, days));
    }

    private static double rounded(double value) {
        return Math.round(value * 1e6) / 1e6;
    }

    private static void add(List<Truth> to, String name, double value, String means) {
        to.add(new Truth(name, value, means));
    }
}
