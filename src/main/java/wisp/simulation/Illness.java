package wisp.simulation;

/**
 * One illness: its hazard for the reference calf, what multiplies that hazard, and how it ends. The reference calf is
 * clean (score 0), had its navel treated at 30 minutes, enough colostrum by 6 h, was born unassisted to an older dam in
 * a month other than December, January and February.
 *
 * @param condition a key of the conditions file
 * @param hazard by age, none before 24 h
 * @param ratios what multiplies it
 * @param recurrence what an earlier episode, once over, multiplies it by
 * @param fatality probability that an episode ends in death, if nothing else ends the life first
 * @param daysIll median days from onset to recovery (lognormal, sigma 0.5)
 * @param daysToDeath mean days from onset to death (exponential)
 * @param medicine what it is treated with; empty for none
 * @param withdrawalDays an invented withdrawal for that medicine
 */
public record Illness(
        String condition,
        Hazard hazard,
        Ratios ratios,
        double recurrence,
        double fatality,
        double daysIll,
        double daysToDeath,
        String medicine,
        int withdrawalDays) {

    /**
     * Hazard ratios; 1 for no effect.
     *
     * @param navelDoubling each doubling of minutes from birth to navel treatment (delays count between 5 minutes and
     *     48 h, a navel never treated as 48 h)
     * @param dirtPoint each point of the cleanliness score
     * @param assisted calving ease 3–5
     * @param colostrumDeficit no colostrum by 6 h, against a tenth of birth weight; in proportion between (log scale)
     * @param firstCalf a dam at her first calving
     * @param winter born in December, January or February
     * @param afterNavel from the onset of a navel infection on
     */
    public record Ratios(
            double navelDoubling,
            double dirtPoint,
            double assisted,
            double colostrumDeficit,
            double firstCalf,
            double winter,
            double afterNavel) {}

    /** True for the illness that the model lets others follow. */
    boolean isNavelInfection() {
        return condition.equals("navel-infection");
    }
}
