package wisp.indicator;

import java.util.Map;
import java.util.stream.Collectors;
import wisp.event.Birth.Sex;

/** Prints a definition as English sentences, from the same object that is evaluated. */
public final class IndicatorSentence {
    private static final Map<String, String> LIMITS = Map.of(
            "tags", "ear tags",
            "tissue-sample", "the tissue sample",
            "registration", "registration",
            "ring", "a ring");

    private IndicatorSentence() {}

    /** What the figure is, in two or three sentences. */
    public static String of(Indicator indicator) {
        Rule rule = indicator.rule();
        String who = population(indicator.population());
        String hours = indicator.needsHours() ? " Calves whose hour of birth is not known are left out." : "";
        if (rule instanceof Rule.Risk risk) {
            return risk(risk, who) + hours;
        } else if (rule instanceof Rule.Rate rate) {
            return rate(rate, who) + hours;
        } else if (rule instanceof Rule.CaseFatality fatality) {
            String within = fatality.within().text();
            return "Among episodes of " + fatality.title() + " followed for " + within
                    + " from their opening, the share whose calf died by then, of whatever cause." + hours;
        } else if (rule instanceof Rule.Feature feature) {
            return feature(feature, who) + hours;
        } else if (rule instanceof Rule.AmountByAge amount) {
            return amount(amount, who) + hours;
        }
        return limit(rule, who) + hours;
    }

    private static String limit(Rule rule, String who) {
        if (rule instanceof Rule.DoneByLimit done) {
            return "Among " + who + " whose outcome is settled, the share with "
                    + done.done().words() + " by the end of the last day that the law of the farm's jurisdiction allows"
                    + " for " + LIMITS.getOrDefault(done.limit(), done.limit()) + ", the day of birth being day 0."
                    + " A calf that left without it counts as not done; one that died without it before that day was"
                    + " over is left out.";
        } else if (rule instanceof Rule.DoneAtEnd atEnd) {
            return "Among " + who
                    + " that were alive and present at the end of the last day on which the law of the farm's"
                    + " jurisdiction allows " + LIMITS.getOrDefault(atEnd.limit(), atEnd.limit())
                    + ", the day of birth being day 0, the share with "
                    + atEnd.event().words() + " by then.";
        } else if (rule instanceof Rule.CastratedLawfully) {
            return "Among " + who + " that were castrated, the share whose first castration was by a method, at an age"
                    + " and with the anaesthetic that the law of the farm's jurisdiction asks for.";
        }
        throw new IllegalStateException("a rule of no known kind: " + rule);
    }

    private static String risk(Rule.Risk risk, String who) {
        Window window = risk.window();
        boolean death = risk.outcome() instanceof Outcome.Death;
        boolean fromBirth = window.start().exact().isZero();
        String free = risk.outcome() instanceof Outcome.Illness ill ? "free of " + ill.title() : "not yet a case";
        String group = fromBirth
                ? who + (death ? "" : " and " + free + " at birth")
                : who + " that were alive" + (death ? " and present" : ", present and " + free) + " at "
                        + window.start().text() + " of age";
        String what = death
                ? (fromBirth && !window.open() ? "that were born dead or died" : "that died")
                : "with " + risk.outcome().words();
        if (risk.leaveOutCensored()) {
            return "Among " + group + ", the share " + what + " " + span(window)
                    + ". Calves not followed that long do not count: those still here are pending, those that left are"
                    + " left out.";
        }
        return "Among " + group + ", the share " + what + " " + span(window)
                + ". Calves that left, or are not that old yet, count for as long as they were followed ("
                + (death ? "Kaplan–Meier" : "Aalen–Johansen, death before it competing") + ").";
    }

    private static String rate(Rule.Rate rate, String who) {
        String within = span(rate.window()) + " for each 1000 calf-days ";
        if (rate.outcome() instanceof Outcome.Illness ill) {
            return "The number of episodes of " + ill.title() + " that open " + within + "at risk in that span, among "
                    + who + ". Days inside an episode of it are not at risk of another.";
        }
        String number = rate.outcome() instanceof Outcome.Death
                ? "deaths "
                : rate.outcome().words() + " ";
        return "The number of " + number + within + "lived on the farm in that span, among " + who + ".";
    }

    private static String feature(Rule.Feature feature, String who) {
        String tests = feature.firstPresent().stream()
                .map(FieldTest::words)
                .collect(Collectors.joining(" or, where that was not recorded, "));
        return "Among " + who + " with " + feature.record().words() + " " + span(feature.window())
                + ", the share whose first such record shows " + tests + ".";
    }

    private static String amount(Rule.AmountByAge amount, String who) {
        String unit = EventPhrase.unit(amount.field());
        String share = amount.shareOfBirthWeight() == 0
                ? Plain.number(amount.otherwise()) + unit
                : Plain.number(amount.shareOfBirthWeight() * 100)
                        + " % of birth weight (one litre for one kilogram), or " + Plain.number(amount.otherwise())
                        + unit + " where no birth weight is recorded";
        return "Among " + who + ", with any record of "
                + EventPhrase.noun(amount.record().type()) + ", the share whose recorded "
                + EventPhrase.field(amount.field()) + " up to " + amount.by().text() + " of age adds up to at least "
                + share + ". Calves with an amount that nobody measured are left out unless the measured ones suffice.";
    }

    private static String span(Window window) {
        String end = window.end().text() + " of age";
        if (window.start().exact().isZero()) {
            return (window.open() ? "after birth and up to " : "from birth up to ") + end;
        }
        return (window.open() ? "after " : "from ") + window.start().text() + " and up to " + end;
    }

    private static String population(Population population) {
        String sex =
                population.sex() == null ? "calves" : population.sex() == Sex.MALE ? "bull calves" : "heifer calves";
        String born = population.bornDeadToo() ? "all " + sex + " born, dead or alive" : sex + " born alive";
        String entire = population.leaveOutEntire() ? " and not marked to stay entire" : "";
        String present = population.presentAt() == null
                ? ""
                : " that were alive and present at " + population.presentAt().text() + " of age";
        return born + entire + present;
    }
}
