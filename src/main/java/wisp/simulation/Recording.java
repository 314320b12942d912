package wisp.simulation;

/**
 * What gets written down, as probabilities. Records are missing at random given whether the birth was by day or night,
 * never because of how the calf fared.
 *
 * @param cleanlinessMissingByDay score not written, births at 06–22 h
 * @param cleanlinessMissingByNight the same, 22–06 h
 * @param navelMissing a navel treatment that was done is not written
 * @param navelTimeUnknown only its date is written
 * @param colostrumMissingByDay feeds not written, births at 06–22 h
 * @param colostrumMissingByNight the same, 22–06 h
 * @param weightMissing birth weight not written
 * @param penMissing place of birth not written
 * @param birthTimeUnknown only the date of birth is written
 * @param recoveryMissing recovery not written
 * @param endOfShift written 2–8 h later
 * @param nextDay written a day later
 * @param late written 2–6 days later
 * @param amendedNavel navel treatment first written 12 h wrong and amended the next day
 * @param amendedScore cleanliness first written one point wrong and amended the next day
 * @param retracted a diarrhoea of another calf written for this one and withdrawn
 * @param misdated a weighing dated before the birth and never mended
 */
public record Recording(
        double cleanlinessMissingByDay,
        double cleanlinessMissingByNight,
        double navelMissing,
        double navelTimeUnknown,
        double colostrumMissingByDay,
        double colostrumMissingByNight,
        double weightMissing,
        double penMissing,
        double birthTimeUnknown,
        double recoveryMissing,
        double endOfShift,
        double nextDay,
        double late,
        double amendedNavel,
        double amendedScore,
        double retracted,
        double misdated) {

    double cleanlinessMissing(boolean night) {
        return night ? cleanlinessMissingByNight : cleanlinessMissingByDay;
    }

    double colostrumMissing(boolean night) {
        return night ? colostrumMissingByNight : colostrumMissingByDay;
    }
}
