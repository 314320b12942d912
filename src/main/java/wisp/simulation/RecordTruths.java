package wisp.simulation;

/** What is so about what gets written down. */
final class RecordTruths {
    private RecordTruths() {}

    static void records(Recording how, TruthList to) {
        to.add(
                "cleanliness_not_recorded_by_day",
                how.cleanlinessMissingByDay(),
                "Share of scores not written, births at 06–22 h.");
        to.add(
                "cleanliness_not_recorded_by_night",
                how.cleanlinessMissingByNight(),
                "Share of scores not written, births at 22–06 h.");
        to.add("navel_not_recorded", how.navelMissing(), "Share of navel treatments that were done and not written.");
        to.add(
                "navel_time_not_recorded",
                how.navelTimeUnknown(),
                "Share of navel treatments with only the date written.");
        to.add(
                "colostrum_not_recorded_by_day",
                how.colostrumMissingByDay(),
                "Share of calves without any feed written, births at 06–22 h.");
        to.add(
                "colostrum_not_recorded_by_night",
                how.colostrumMissingByNight(),
                "Share of calves without any feed written, births at 22–06 h.");
        to.add("birth_weight_not_recorded", how.weightMissing(), "Share of births without weight.");
        to.add("place_of_birth_not_recorded", how.penMissing(), "Share of births without place.");
        to.add("birth_time_not_recorded", how.birthTimeUnknown(), "Share of births with only the date written.");
        to.add("recovery_not_recorded", how.recoveryMissing(), "Share of recoveries not written.");
        to.add("entered_days_late", how.late(), "Share of events written two to six days late.");
        to.add(
                "navel_amended",
                how.amendedNavel(),
                "Share of navel treatments first written 12 h wrong, then amended.");
        to.add(
                "cleanliness_amended",
                how.amendedScore(),
                "Share of scores first written one point wrong, then amended.");
        to.add(
                "illness_retracted",
                how.retracted(),
                "Probability for a calf that another's diarrhoea is written for it, then withdrawn.");
        to.add("weighing_misdated", how.misdated(), "Probability for a calf of a weighing dated before its birth.");
    }
}
