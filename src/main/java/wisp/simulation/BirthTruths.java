package wisp.simulation;

/** What is so about births and how dirty calves get. */
final class BirthTruths {
    private BirthTruths() {}

    static void births(Calvings how, TruthList to) {
        to.add(
                "born_dead",
                how.bornDeadOverall(),
                "Probability of a dead birth over the mix of parity, twins and ease; deaths inside 24 h come on top.");
        to.add(
                "born_dead_reference",
                how.bornDead(),
                "Probability of a dead birth for a single calf of an older dam, unassisted.");
        for (int ease = 2; ease <= 5; ease++) {
            to.add(
                    "born_dead_ratio_ease_" + ease,
                    how.bornDeadByEase().get(ease - 1),
                    "Risk ratio of a dead birth at ease " + ease + " against ease 1.");
        }
        to.add("born_dead_ratio_first_calving", how.bornDeadFirst(), "Risk ratio of a dead birth at a first calving.");
        to.add("born_dead_ratio_twin", how.bornDeadTwin(), "Risk ratio of a dead birth for a twin.");
        to.add("born_outside_by_day", how.outsideByDay(), "Share of calvings outside the calving pens at 06–22 h.");
        to.add("born_outside_by_night", how.outsideByNight(), "Share of calvings outside the calving pens at 22–06 h.");
        to.add("male", how.male(), "Share of bull calves.");
        to.add("keep_entire", how.keepEntire(), "Share of bull calves that are to stay entire.");
    }

    static void cleanliness(Model model, TruthList to) {
        for (Place place : model.places()) {
            String name = place.name().replace(' ', '_');
            to.add(
                    "dirty_" + name,
                    model.cleanliness().dirty(place),
                    "Probability of a cleanliness score of 2 or 3 in the " + place.name()
                            + ", over the days between beddings.");
            to.add(
                    "bedded_every_days_" + name,
                    place.beddedEveryDays(),
                    "Days from one bedding of the " + place.name() + " to the next; 0 for none.");
        }
        to.add(
                "dirty_odds_ratio_per_day_since_bedding",
                StrictMath.exp(model.cleanliness().perDaySinceBedding()),
                "Odds ratio of a higher score for each day since the pen was bedded.");
    }
}
