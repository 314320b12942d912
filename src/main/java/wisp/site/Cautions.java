package wisp.site;

import wisp.indicator.Indicator;
import wisp.indicator.Measure;
import wisp.indicator.Rule;

/** The caution that a figure needs, where acting on it could hurt a calf or break a law. */
final class Cautions {
    private Cautions() {}

    static String of(Indicator indicator) {
        if (indicator.rule() instanceof Rule.CastratedLawfully || indicator.rule() instanceof Rule.DoneAtEnd) {
            return "Castration hurts at any age. Ask the vet about anaesthetic and pain relief even where the law does"
                    + " not demand them, and look again at any calf of which not both testicles were below the ring."
                    + " Limits differ between countries and change: local law and the vet in charge decide.";
        }
        if (indicator.measure() == Measure.INSIDE_LIMIT) {
            return "The limit is quoted from the limits file of the farm's jurisdiction, with its source and whether it"
                    + " was verified. Law changes: local law decides.";
        }
        if (indicator.id().startsWith("navel-infection")) {
            return "What farms record is not an experiment: calves treated late may differ in other ways, and sick"
                    + " navels are looked at more. Talk to the vet before changing what is done to navels.";
        }
        if (indicator.rule() instanceof Rule.Feature || indicator.rule() instanceof Rule.AmountByAge) {
            return "Calves without a record are left out, not counted as well or badly done by.";
        }
        return "Small numbers swing by chance: read the interval before the value. Treatment is for the vet to decide;"
                + " keep to withdrawal periods.";
    }
}
