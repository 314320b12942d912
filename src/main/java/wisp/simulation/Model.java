package wisp.simulation;

import java.time.ZoneId;
import java.util.List;
import wisp.event.FarmDescribed;

/**
 * The stated hazard model of one season: every constant that a simulated life is drawn from. Places have fixed effects
 * and beddings fixed days; nothing is drawn for a season or a pen as a whole, and no calf's fate depends on how many
 * others there are. Lives are therefore independent but for twins, who share dam, hour, place and ease.
 */
public record Model(
        Farm farm,
        Calendar calendar,
        List<Place> places,
        Calvings calvings,
        Cleanliness cleanliness,
        NavelCare navelCare,
        ColostrumFeeding colostrum,
        List<Illness> illnesses,
        BackgroundDeath death,
        Husbandry husbandry,
        Recording recording) {

    /** The invented farm. */
    public record Farm(String name, ZoneId zone, String jurisdiction, FarmDescribed.Enterprise enterprise) {}

    public Model {
        places = List.copyOf(places);
        illnesses = List.copyOf(illnesses);
        for (Illness illness : illnesses) {
            if (illness.isNavelInfection()) {
                break;
            }
            if (illness.ratios().afterNavel() != 1) {
                throw new IllegalArgumentException("The model lets " + illness.condition()
                        + " follow a navel infection that is not there yet: name navel-infection before it.");
            }
        }
    }

    /** The same with another farm. */
    public Model with(Farm other) {
        return new Model(
                other,
                calendar,
                places,
                calvings,
                cleanliness,
                navelCare,
                colostrum,
                illnesses,
                death,
                husbandry,
                recording);
    }

    /** The same in another season. */
    public Model with(Calendar other) {
        return new Model(
                farm,
                other,
                places,
                calvings,
                cleanliness,
                navelCare,
                colostrum,
                illnesses,
                death,
                husbandry,
                recording);
    }

    /** The same with other places. */
    public Model withPlaces(List<Place> other) {
        return new Model(
                farm,
                calendar,
                other,
                calvings,
                cleanliness,
                navelCare,
                colostrum,
                illnesses,
                death,
                husbandry,
                recording);
    }

    /** The same with other navel care. */
    public Model with(NavelCare other) {
        return new Model(
                farm,
                calendar,
                places,
                calvings,
                cleanliness,
                other,
                colostrum,
                illnesses,
                death,
                husbandry,
                recording);
    }

    /** The same with other feeding of colostrum. */
    public Model with(ColostrumFeeding other) {
        return new Model(
                farm,
                calendar,
                places,
                calvings,
                cleanliness,
                navelCare,
                other,
                illnesses,
                death,
                husbandry,
                recording);
    }

    /** The same with other illnesses. */
    public Model withIllnesses(List<Illness> other) {
        return new Model(
                farm,
                calendar,
                places,
                calvings,
                cleanliness,
                navelCare,
                colostrum,
                other,
                death,
                husbandry,
                recording);
    }

    /** The same with other background death. */
    public Model with(BackgroundDeath other) {
        return new Model(
                farm,
                calendar,
                places,
                calvings,
                cleanliness,
                navelCare,
                colostrum,
                illnesses,
                other,
                husbandry,
                recording);
    }

    /** The same with other records kept. */
    public Model with(Recording other) {
        return new Model(
                farm,
                calendar,
                places,
                calvings,
                cleanliness,
                navelCare,
                colostrum,
                illnesses,
                death,
                husbandry,
                other);
    }
}
