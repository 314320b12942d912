package wisp.question.season;

import java.util.Optional;
import wisp.event.Birth;
import wisp.event.Birth.Sex;

/** The stratum of dam's parity and sex that a calf falls in when two seasons are given the same mix of calves. */
final class CalfMix {
    /** Parities from here on share a stratum, so that a season of a few hundred calves fills each. */
    private static final int OLDEST = 3;

    private CalfMix() {}

    /** The stratum in words; empty where parity or sex is not recorded. */
    static Optional<String> of(Birth birth) {
        if (birth.damParity() == null || birth.sex() == null || birth.sex() == Sex.UNKNOWN) {
            return Optional.empty();
        }
        int parity = Math.min(birth.damParity(), OLDEST);
        return Optional.of((parity == OLDEST ? "parity 3 and over" : "parity " + parity) + ", "
                + birth.sex().word());
    }
}
