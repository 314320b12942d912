package wisp.simulation;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import wisp.event.FarmDescribed;

/**
 * The model's usual constants. They are invented ({@link StandardIllnesses} holds those of illness); their size is set
 * so that a season looks like published herds:
 *
 * <ul>
 *   <li>dead at birth or within 24–48 h 6.5 %, four fifths of them born dead (NAHMS Dairy 2007); unweighted mean of 26
 *       studies 6.2 % (Cuttance and Laven 2019, Vet J 252); first calvings higher (Mee 2013, Animals 3:1036);
 *   <li>death from 24 h to weaning 5.0 % (Urie et al. 2018, J Dairy Sci 101:9229), 4.5 % (Johnson et al. 2017, Vet Rec
 *       Open);
 *   <li>diarrhoea by nine weeks 48 % (24–74 % between farms), failure of passive transfer 20.7 % (Johnson et al. 2017);
 *   <li>first colostrum at 2.8 h on average, 2.9 l (Urie et al. 2018, J Dairy Sci 101:9168);
 *   <li>median herd prevalence of navel infection 15.9 % (Dachrodt et al. 2022, Front Vet Sci 9:990798).
 * </ul>
 *
 * No published effect of the delay to navel treatment was at hand: that one is free invention.
 */
public final class StandardModel {
    private StandardModel() {}

    /** The season 2024-25 of a simulated dairy farm in England. */
    public static Model model() {
        return new Model(
                new Model.Farm("Simulated farm", ZoneId.of("Europe/London"), "england", FarmDescribed.Enterprise.DAIRY),
                calendar(2024, OffsetDateTime.of(2025, 5, 20, 18, 0, 0, 0, ZoneOffset.ofHours(1))),
                places(),
                calvings(),
                new Cleanliness(List.of(-0.2, 1.6, 3.2), 0.14),
                navelCare(),
                new ColostrumFeeding(2.2, 0.7, 1.6, 3.3, 0.8, 0.25, 23.5, 4, 22, 0.45, 0.9, 0.05, 0.05),
                StandardIllnesses.all(),
                new BackgroundDeath(Hazard.of(0, 0.008, 1, 0.0006, 7, 0.0002, 28, 0.0001, 60, 0.00007, 150), 2.5, 1.5),
                new Husbandry(
                        13, 0.55, 0.04, 0.01, 0.96, 0.03, 0.78, 0.03, 0.10, 0.04, 0.55, 0.25, 0.45, 0.85, 0.85, 0.75),
                new Recording(
                        0.08, 0.22, 0.03, 0.04, 0.06, 0.14, 0.12, 0.03, 0.03, 0.15, 0.18, 0.04, 0.015, 0.012, 0.008,
                        0.008, 0.005));
    }

    /** Births from September to mid May about a peak in November, in the season that begins on 1 August. */
    static Calendar calendar(int year, OffsetDateTime cut) {
        return new Calendar(
                year + "-" + (year + 1) % 100,
                LocalDate.of(year, 8, 1),
                LocalDate.of(year + 1, 8, 1),
                LocalDate.of(year, 9, 1),
                LocalDate.of(year + 1, 5, 15),
                LocalDate.of(year, 11, 18),
                28,
                0.65,
                cut);
    }

    private static List<Place> places() {
        return List.of(
                new Place("straw yard", true, 0.34, 0.0, 5),
                new Place("north boxes", true, 0.20, -0.6, 4),
                new Place("south boxes", true, 0.18, -0.3, 4),
                new Place("orchard shed", true, 0.16, 0.7, 7),
                new Place("old dairy", true, 0.12, 0.2, 5),
                new Place("cubicles", false, 0.48, 1.2, 0),
                new Place("passage", false, 0.20, 1.7, 0),
                new Place("field", false, 0.32, 0.1, 0));
    }

    private static Calvings calvings() {
        return new Calvings(
                List.of(0.30, 0.25, 0.19, 0.13, 0.08, 0.05),
                0.008,
                0.035,
                List.of(0.62, 0.22, 0.11, 0.04, 0.01),
                List.of(0.83, 0.11, 0.04, 0.015, 0.005),
                List.of(0.65, 0.22, 0.09, 0.03, 0.01),
                List.of(
                        new Calvings.Breed("Holstein", 0.58, 42, true),
                        new Calvings.Breed("Jersey cross", 0.16, 34, true),
                        new Calvings.Breed("Angus cross", 0.26, 40, false)),
                0.51,
                0.06,
                0.12,
                0.24,
                0.028,
                List.of(1.0, 1.6, 4.0, 8.0, 10.0),
                1.5,
                2.0);
    }

    private static NavelCare navelCare() {
        return new NavelCare(
                30,
                1.3,
                2.2,
                2.0,
                0.03,
                0.06,
                List.of(
                        new NavelCare.Product("iodine tincture 10 %", 10, 0.7),
                        new NavelCare.Product("chlorhexidine 0.5 %", 0.5, 0.3)),
                0.55);
    }
}
