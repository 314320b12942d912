package wisp.simulation;

/** What is so about illness and death. */
final class HealthTruths {
    private HealthTruths() {}

    static void illness(Illness illness, TruthList to) {
        String c = illness.condition();
        for (Hazard.Band band : illness.hazard().bands()) {
            to.add(
                    c + "_reference_hazard_per_day_from_day_" + (int) band.fromDay(),
                    band.perDay(),
                    "Hazard of " + c + " for the reference calf, per calf-day, over days " + (int) band.fromDay()
                            + " to " + (int) band.toDay() + " of age.");
        }
        to.add(
                c + "_reference_risk_21d",
                risk(illness, 21),
                "Risk of " + c + " by 21 days for the reference calf, were there no death.");
        to.add(
                c + "_reference_risk_60d",
                risk(illness, 60),
                "Risk of " + c + " by 60 days for the reference calf, were there no death.");
        ratios(c, illness.ratios(), to);
        to.add(
                c + "_hazard_ratio_again",
                illness.recurrence(),
                "Hazard ratio of a further episode of " + c + " once one is over.");
        to.add(
                c + "_fatality",
                illness.fatality(),
                "Probability that an episode of " + c + " ends in death, if nothing else ends the life first.");
    }

    private static void ratios(String c, Illness.Ratios ratios, TruthList to) {
        to.add(
                c + "_hazard_ratio_navel_delay_doubled",
                ratios.navelDoubling(),
                "Hazard ratio of " + c
                        + " for each doubling of the minutes to navel treatment, between 5 minutes and 48 h.");
        to.add(
                c + "_hazard_ratio_dirt_point",
                ratios.dirtPoint(),
                "Hazard ratio of " + c + " for each point of the cleanliness score.");
        to.add(
                c + "_hazard_ratio_ease_3_to_5",
                ratios.assisted(),
                "Hazard ratio of " + c + " for ease 3 to 5 against 1 or 2.");
        to.add(
                c + "_hazard_ratio_no_colostrum",
                ratios.colostrumDeficit(),
                "Hazard ratio of " + c + " for no colostrum by 6 h against a tenth of birth weight.");
        to.add(c + "_hazard_ratio_first_calving", ratios.firstCalf(), "Hazard ratio of " + c + " for a first calving.");
        to.add(
                c + "_hazard_ratio_winter",
                ratios.winter(),
                "Hazard ratio of " + c + " for a birth in December, January or February.");
        to.add(
                c + "_hazard_ratio_after_navel_infection",
                ratios.afterNavel(),
                "Hazard ratio of " + c + " from the onset of a navel infection on.");
    }

    static void death(BackgroundDeath how, TruthList to) {
        to.add(
                "death_reference_risk_24h",
                1 - StrictMath.exp(-how.hazard().between(0, 1)),
                "Risk of death inside 24 h for a live birth, single and unassisted.");
        to.add(
                "death_reference_risk_24h_to_60d",
                1 - StrictMath.exp(-how.hazard().between(1, 60)),
                "Risk of death from 24 h to 60 days outside the illnesses, for such a calf.");
        to.add(
                "death_hazard_ratio_ease_3_to_5",
                how.assisted(),
                "Hazard ratio of death outside the illnesses for ease 3 to 5.");
        to.add("death_hazard_ratio_twin", how.twin(), "Hazard ratio of death outside the illnesses for a twin.");
    }

    private static double risk(Illness illness, double days) {
        return 1 - StrictMath.exp(-illness.hazard().between(0, days));
    }
}
