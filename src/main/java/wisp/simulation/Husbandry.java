package wisp.simulation;

/**
 * What is done with calves, as probabilities.
 *
 * @param primaryTagMedianHours median age at the first tag (lognormal, sigma 0.6)
 * @param tagsTogether both tags at one time; else the second on days 2–18
 * @param tagLate the second tag after the legal limit, days 21–40
 * @param neverTagged no tag is ever written down
 * @param sampled a tissue sample with the first tag
 * @param registeredLate registered after day 27
 * @param ring bull calves ringed on days 1–7
 * @param ringLate ringed on days 8–10, past the limit
 * @param clamp castrated by clamp on days 21–50
 * @param oneMissed only one testicle below the ring
 * @param soldDairyBull dairy-breed bull calves sold on days 14–35
 * @param soldBeefBull other bull calves sold on days 14–35
 * @param bloodTested blood taken between 24 h and 7 d
 * @param vaccinated vaccinated on days 9–14
 * @param navelCheckEarly navel looked at on days 2–3
 * @param navelCheckLate navel looked at on day 7
 */
public record Husbandry(
        double primaryTagMedianHours,
        double tagsTogether,
        double tagLate,
        double neverTagged,
        double sampled,
        double registeredLate,
        double ring,
        double ringLate,
        double clamp,
        double oneMissed,
        double soldDairyBull,
        double soldBeefBull,
        double bloodTested,
        double vaccinated,
        double navelCheckEarly,
        double navelCheckLate) {}
