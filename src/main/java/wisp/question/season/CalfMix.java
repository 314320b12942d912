package wisp.question.season;

import java.util.Optional;
import wisp.cohort.Cohort;
import wisp.event.Birth;
import wisp.event.Birth.Sex;

/**
 * The strata of dam's parity and sex that calves fall in when two seasons are given the same mix of calves; worked out
 * once a calf, as every figure asks for them.
 */
final class CalfMix {
    /** Parities from here on share a stratum, so that a season of a few hundred calves fills each. */
    private static final int OLDEST = 3;

    private final Cohort cohort;
    private final String[][] names = new String[OLDEST + 1][Sex.values().length];

    CalfMix(Cohort cohort) {
        this.cohort = cohort;
    }

    /** The stratum of a row in words; empty where parity or sex is not recorded. */
    Optional<String> of(int row) {
        Birth birth = cohort.lives().get(row).birth();
        if (birth.damParity() == null || birth.sex() == null || birth.sex() == Sex.UNKNOWN) {
            return Optional.empty();
        }
        int parity = Math.min(birth.damParity(), OLDEST);
        String[] ofParity = names[parity];
        int sex = birth.sex().ordinal();
        if (ofParity[sex] == null) {
            ofParity[sex] = name(parity, birth.sex());
        }
        return Optional.of(ofParity[sex]);
    }

    private static String name(int parity, Sex sex) {
        return (parity == OLDEST ? "parity 3 and over" : "parity " + parity) + ", " + sex.word();
    }
}
