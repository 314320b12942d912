package wisp.question;

import java.util.ArrayList;
import java.util.List;

/** How the answer was worked out, a sentence a step. */
final class PensMethod {
    private PensMethod() {}

    static List<Counted> of(PensAnswer answer) {
        List<String> steps = new ArrayList<>();
        steps.add(
                "A calf counts for the pen that was written down with its score, else for the pen of its birth. Scored"
                        + " calves without either stand in no pen"
                        + (answer.noPen() == 0
                                ? "."
                                : ": " + Counted.noPen(answer.noPen(), String.valueOf(answer.noPen())) + "."));
        steps.add("Intervals of shares are Wilson's, 95 %.");
        steps.add("Funnel limits are exact binomial limits about the share of all pens together, at 95 % and 99.8 %,"
                + " interpolated (Spiegelhalter 2005, Stat Med 24:1185, appendix A.1.1).");
        steps.add(
                "A pen is called dirtier or cleaner by more than chance only where three things agree: it lies outside"
                        + " the 95 % limits; the 95 % interval of its difference from all other pens (Newcombe 1998,"
                        + " method 10)"
                        + " leaves out 0; and Fisher's exact p-value, adjusted for all pens compared (Holm 1979), is"
                        + " below 0.05.");
        steps.add(spread(answer));
        steps.add(homogeneity(answer));
        steps.add("The chart by week has limits of three standard errors about the share of all weeks; a week is marked"
                + " only where it lies outside the exact 99.8 % limits too, as three standard errors are poor where"
                + " calves are few.");
        steps.add(
                "Days since bedding are exact days from the pen's last bedding on record to the birth. Stocking counts"
                        + " other calvings in the pen in the seven days before, twins as one. Their odds ratios come"
                        + " from a"
                        + " logistic model of calves of bedded pens with a term for each pen; p-values are Holm's, for"
                        + " all that the model is asked.");
        steps.add(timeOfYear(answer.circumstances().timeOfYear()));
        steps.add(
                "Illness: a first episode after the scoring and by 21 days of age, of calves whose 21 days are over or"
                        + " that died in them; death before illness counts as not ill. Risk ratios are within pens"
                        + " (Mantel and"
                        + " Haenszel, with the interval of Greenland and Robins 1985).");
        return steps.stream().map(Counted::new).toList();
    }

    private static String timeOfYear(TimeOfYear year) {
        return year.allowedFor()
                ? "The time of year is in that model as one yearly wave, a sine and a cosine of the day of birth"
                        + " (Stolwijk, Straatman and Zielhuis 1999, J Epidemiol Community Health 53:235), tested by"
                        + " Wald's chi-square on 2 degrees of freedom. Weather that does not come round with the year"
                        + " stays out of it."
                : "The time of year is not allowed for in that model. " + year.why();
    }

    private static String spread(PensAnswer answer) {
        PenSpread spread = answer.spread();
        if (!spread.fitted()) {
            return "Drawn-in shares cannot be given: " + spread.why();
        }
        if (spread.boundary()) {
            return "Drawn-in shares (beta-binomial, empirical Bayes by maximum likelihood): no spread beyond chance was"
                    + " found, so every pen's drawn-in share is that of all pens together, and each is as likely as any"
                    + " other to be the dirtiest. That says that no difference was seen, not that there is none.";
        }
        return "Drawn-in shares: the pens' true shares are taken to follow one beta distribution, fitted by maximum"
                + " likelihood (empirical Bayes); a pen with few calves is drawn far toward the herd's share, one with"
                + " many hardly. The probability of being the dirtiest comes from the same distributions.";
    }

    private static String homogeneity(PensAnswer answer) {
        PenHomogeneity test = answer.homogeneity();
        return test.why() != null
                ? "Whether the pens differ at all cannot be tested: " + test.why()
                : "Whether the pens differ at all: " + test.method()
                        + " (a chi-square distribution serves only where at"
                        + " least 5 dirty and 5 clean calves are expected in every pen).";
    }
}
