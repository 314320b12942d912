package wisp.simulation;

import java.util.List;

/** The usual constants of the seven illnesses, navel infection first since two others follow it. */
final class StandardIllnesses {
    private StandardIllnesses() {}

    static List<Illness> all() {
        return List.of(navelInfection(), diarrhoea(), pneumonia(), jointIll(), septicaemia(), bloat(), other());
    }

    private static Illness navelInfection() {
        return new Illness(
                "navel-infection",
                Hazard.of(1, 0.007, 2, 0.0078, 10, 0.0016, 21, 0.0004, 35),
                new Illness.Ratios(1.20, 1.25, 1.0, 1.4, 1.0, 1.0, 1),
                0.4,
                0.03,
                6,
                6,
                "procaine benzylpenicillin",
                10);
    }

    private static Illness diarrhoea() {
        return new Illness(
                "diarrhoea",
                Hazard.of(1, 0.007, 3, 0.015, 5, 0.017, 14, 0.006, 28, 0.0015, 60, 0.0004, 150),
                new Illness.Ratios(1.0, 1.2, 1.1, 1.5, 1.2, 1.3, 1),
                0.4,
                0.035,
                4,
                4,
                "oral rehydration salts",
                0);
    }

    private static Illness pneumonia() {
        return new Illness(
                "pneumonia",
                Hazard.of(1, 0.001, 7, 0.0022, 21, 0.0029, 60, 0.0012, 150),
                new Illness.Ratios(1.0, 1.0, 1.1, 1.5, 1.1, 1.6, 1),
                0.5,
                0.05,
                5,
                6,
                "florfenicol",
                37);
    }

    private static Illness jointIll() {
        return new Illness(
                "joint-ill",
                Hazard.of(3, 0.0004, 21, 0.0001, 60),
                new Illness.Ratios(1.05, 1.15, 1.2, 2.0, 1.0, 1.0, 5),
                0.4,
                0.15,
                9,
                10,
                "amoxicillin",
                18);
    }

    private static Illness septicaemia() {
        return new Illness(
                "septicaemia",
                Hazard.of(1, 0.0016, 3, 0.0004, 10),
                new Illness.Ratios(1.05, 1.2, 1.5, 3.0, 1.2, 1.0, 3),
                0.4,
                0.5,
                5,
                1.5,
                "amoxicillin",
                18);
    }

    private static Illness bloat() {
        return new Illness(
                "bloat", Hazard.of(7, 0.00015, 90), new Illness.Ratios(1, 1, 1, 1, 1, 1, 1), 1, 0.3, 2, 1, "", 0);
    }

    private static Illness other() {
        return new Illness(
                "other",
                Hazard.of(1, 0.0007, 60, 0.0003, 150),
                new Illness.Ratios(1, 1.05, 1.2, 1.2, 1.1, 1, 1),
                0.6,
                0.04,
                5,
                6,
                "meloxicam",
                15);
    }
}
