package wisp.question;

import java.time.LocalDate;
import java.util.List;
import wisp.statistics.Coefficients;

/**
 * Whether dirtiness follows the year: one yearly wave, a sine and a cosine of the day of birth, beside bedding,
 * stocking and pens in one logistic model (Stolwijk, Straatman and Zielhuis 1999, J Epidemiol Community Health 53:235).
 *
 * @param allowedFor whether the wave stands in the model
 * @param chiSquare Wald's, of both its terms being 0, on 2 degrees of freedom; not a number without it
 * @param p of that, not a number without it
 * @param adjustedP Holm's adjustment for bedding, stocking and the year
 * @param why why the data do not allow for it, null where they do
 */
public record TimeOfYear(boolean allowedFor, double chiSquare, double p, double adjustedP, String why) {
    private static final int MONTHS = 3;
    private static final int CALVES_A_TERM = 5;

    static TimeOfYear not(String why) {
        return new TimeOfYear(false, Double.NaN, Double.NaN, Double.NaN, why);
    }

    /** Whether dirtiness follows the year by more than chance. */
    public boolean moreThanChance() {
        return allowedFor && adjustedP < 0.05;
    }

    /**
     * Why the calves do not bear the wave beside so many terms; null where they do.
     *
     * @param terms of the model with the wave, its constant not counted
     */
    static String against(List<ScoredCalf> bedded, int terms) {
        long months = bedded.stream()
                .map(calf -> calf.life().birthDate().getMonth())
                .distinct()
                .count();
        if (months < MONTHS) {
            return "Calves of bedded pens were born in fewer than " + MONTHS
                    + " months of the year, too short a part of it.";
        }
        long dirty = bedded.stream().filter(ScoredCalf::dirty).count();
        long fewer = Math.min(dirty, bedded.size() - dirty);
        return fewer >= (long) CALVES_A_TERM * terms
                ? null
                : "With it the model would have " + terms + " terms, and at least " + CALVES_A_TERM
                        + " dirty and as many clean calves are wanted for each (Vittinghoff and McCulloch 2007, Am J"
                        + " Epidemiol 165:710); there are " + fewer + (dirty == fewer ? " dirty" : " clean")
                        + " calves in bedded pens.";
    }

    /** How far round the year a day lies, in radians; 0 on the first of January. */
    static double angle(LocalDate day) {
        return 2 * Math.PI * (day.getDayOfYear() - 1) / day.lengthOfYear();
    }

    /** Wald's chi-square of two neighbouring coefficients being 0 together. */
    static double chiSquare(Coefficients fit, int first) {
        double[][] v = fit.covariance();
        double a = fit.values()[first];
        double b = fit.values()[first + 1];
        double aa = v[first][first];
        double ab = v[first][first + 1];
        double bb = v[first + 1][first + 1];
        return (a * a * bb - 2 * a * b * ab + b * b * aa) / (aa * bb - ab * ab);
    }

    /** The chance of so large a chi-square on 2 degrees of freedom, which is exponential. */
    static double tail(double chiSquare) {
        return Math.exp(-chiSquare / 2);
    }
}
