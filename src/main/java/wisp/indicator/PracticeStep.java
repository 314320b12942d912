package wisp.indicator;

import java.util.List;
import wisp.event.FarmDescribed.Enterprise;

/**
 * One thing that good practice asks to be done with a calf at an age, in exact age or in days of life.
 *
 * @param id its name
 * @param text what is asked, in words
 * @param from the age from which it can be done, birth where not said
 * @param best the age by which it is best done, null where not said
 * @param by the age by which it should be done, null where counted in days of life
 * @param until the age after which it makes no more sense, null where not said
 * @param fromDay the first day of life, null where counted in exact age
 * @param byDay the last day of life by which it should be done, null where counted in exact age
 * @param untilDay the last day of life on which it still makes sense, null where not said
 * @param shareOfBirthWeight litres for each kilogram of birth weight, null where no amount is asked
 * @param otherwise litres where no birth weight is recorded, null where no amount is asked
 * @param herds the kinds of herd that it is asked of
 */
public record PracticeStep(
        String id,
        String text,
        Age from,
        Age best,
        Age by,
        Age until,
        Integer fromDay,
        Integer byDay,
        Integer untilDay,
        Double shareOfBirthWeight,
        Double otherwise,
        List<Enterprise> herds,
        Basis basis) {

    /**
     * Litres that are asked for; 0 where no amount is.
     *
     * @param birthWeightKg null where it is not known
     */
    public double litres(Double birthWeightKg) {
        if (otherwise == null || shareOfBirthWeight == null) {
            return 0;
        }
        return birthWeightKg == null ? otherwise : birthWeightKg * shareOfBirthWeight;
    }
}
