package wisp.indicator;

import java.util.Locale;
import java.util.stream.Collectors;
import wisp.event.Birth.Sex;

/** Prints a definition as an English sentence, from the same object that is evaluated. */
public final class IndicatorSentence {
    private IndicatorSentence() {}

    /** What the figure is, in one or two sentences. */
    public static String of(Indicator indicator) {
        Rule rule = indicator.rule();
        String who = population(indicator.population());
        String sentence;
        if (rule instanceof Rule.Risk risk) {
            sentence = risk(risk, who);
        } else if (rule instanceof Rule.Rate rate) {
            sentence = "The number of times of " + rate.outcome().words() + " at age " + span(rate.window())
                    + ", per 1000 calf-days at risk, among " + who + "."
                    + (rate.outcome() instanceof Outcome.Illness ? " Days inside an episode are not at risk." : "");
        } else if (rule instanceof Rule.CaseFatality fatality) {
            sentence = "The share of episodes of " + fatality.condition() + " whose calf died within "
                    + fatality.within().text() + " of the episode's opening, among episodes followed that long.";
        } else if (rule instanceof Rule.DoneByLimit done) {
            sentence = "The share of " + who + " with " + done.done().words() + " by the end of the day that the "
                    + done.limit() + " limit of the farm's jurisdiction names, among calves whose outcome is settled;"
                    + " a calf that left without it counts as not done.";
        } else if (rule instanceof Rule.CastratedLawfully) {
            sentence =
                    "The share of castrated " + who + " that were castrated at an age, and with the anaesthetic, that"
                            + " the farm's jurisdiction asks for the method.";
        } else if (rule instanceof Rule.DoneAtEnd atEnd) {
            sentence = "Among " + who + " alive and present at the end of the day that the " + atEnd.limit()
                    + " limit of the farm's jurisdiction names, the share with "
                    + atEnd.event().words() + " by then.";
        } else if (rule instanceof Rule.Feature feature) {
            String tests = feature.firstPresent().stream().map(FieldTest::words).collect(Collectors.joining(", else "));
            sentence = "Among " + who + " with " + feature.record().words() + " at age " + span(feature.window())
                    + ", the share whose first such record has " + tests + ".";
        } else if (rule instanceof Rule.AmountByAge amount) {
            sentence = amount(amount, who);
        } else {
            throw new IllegalStateException("a rule of no known kind: " + rule);
        }
        return sentence + hours(indicator);
    }

    private static String risk(Rule.Risk risk, String who) {
        boolean death = risk.outcome() instanceof Outcome.Death;
        String method = risk.leaveOutCensored()
                ? " Calves not followed that long are pending, or left out where they left the farm."
                : " Calves not followed that long lend what follow-up they have ("
                        + (death ? "Kaplan–Meier" : "Aalen–Johansen with death competing") + ").";
        String free = death ? "" : " that were no case before";
        return "The probability of " + risk.outcome().words() + " at age " + span(risk.window()) + " among " + who
                + (risk.window().open() && !risk.window().start().exact().isZero()
                        ? " alive and present at " + risk.window().start().text()
                        : "")
                + free + "." + method;
    }

    private static String amount(Rule.AmountByAge amount, String who) {
        return "Among " + who + " with any " + amount.record().words() + " record, the share whose "
                + amount.field().replace('_', ' ') + " by age " + amount.by().text() + " adds up to at least "
                + Plain.number(amount.shareOfBirthWeight() * 100) + " % of birth weight ("
                + Plain.number(amount.otherwise()) + " where no weight is recorded).";
    }

    private static String span(Window window) {
        String start = window.start().exact().isZero()
                ? (window.open() ? "over 0" : "0")
                : (window.open() ? "over " : "") + window.start().text();
        return start + " to " + window.end().text();
    }

    private static String population(Population population) {
        String sex = population.sex() == null
                ? "calves"
                : population.sex() == Sex.MALE
                        ? "bull calves"
                        : population.sex().name().toLowerCase(Locale.ROOT) + " calves";
        String born = population.bornDeadToo() ? "all " + sex + " born" : sex + " born alive";
        String present = population.presentAt() == null
                ? ""
                : " and present past " + population.presentAt().text();
        return born + present + (population.leaveOutEntire() ? " and not to stay entire" : "");
    }

    private static String hours(Indicator indicator) {
        return indicator.needsHours() ? " Calves whose hour of birth is unknown are left out." : "";
    }
}
