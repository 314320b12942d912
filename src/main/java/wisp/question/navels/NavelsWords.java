package wisp.question.navels;

import java.util.ArrayList;
import java.util.List;
import wisp.question.Counted;
import wisp.statistics.EValue;
import wisp.statistics.Interval;

/** What each part of the answer says, a sentence or two. */
public final class NavelsWords {
    private static final long NO_HERD = 100;
    private static final String LEANING = " This leans on the size seen being the true one, which is unsure: were the"
            + " true one smaller, it would take more.";

    private NavelsWords() {}

    /** The answer itself. */
    public static Counted answer(NavelsAnswer answer) {
        return NavelsSentence.of(answer);
    }

    /** What kind of evidence this is. */
    public static String observational() {
        return "These are a farm's records, not an experiment: nobody drew lots for which navel was treated when."
                + " Calves treated late may have been born at night, outside the pens or after a hard calving, and"
                + " those can be reasons of their own.";
    }

    /** Why follow-up starts at 24 h. */
    public static String landmark() {
        return "A landmark at 24 hours: each calf is put in a class by what was done before that age, and cases are"
                + " counted from then on, among calves alive, present and free of a navel case at that age. Without it,"
                + " a calf that fell ill or died before anybody came to treat it would count against late treatment by"
                + " construction.";
    }

    /** The trend over the classes. */
    public static String trend(NavelsAnswer answer) {
        Tested trend = answer.trend();
        if (!trend.known()) {
            return "No trend over the treated classes: " + trend.why();
        }
        String p = " (Cochran–Armitage z " + Plain.number(trend.statistic(), 2) + ", p " + Plain.p(trend.p()) + ").";
        if (trend.p() >= 1 - GroupRisk.LEVEL) {
            return "Over the five treated classes no steady rise or fall stands out from chance" + p;
        }
        return "Over the five treated classes risk " + (trend.statistic() > 0 ? "rises" : "falls")
                + " with delay by more than chance alone makes likely" + p;
    }

    /** What one doubling of the delay goes with, the model allowed for. */
    public static Counted doubling(NavelsAnswer answer) {
        AdjustedDose model = answer.late().adjusted();
        AdjustedDose.Term dose = model.dose();
        if (dose == null) {
            return new Counted("Minute by minute nothing is fitted. " + model.why());
        }
        Interval odds = dose.oddsRatio();
        boolean apart = odds.low() > 1 || odds.high() < 1;
        boolean apartInPens = dose.clustered() == null
                || dose.clustered().low() > 0
                || dose.clustered().high() < 0;
        boolean sure = apart && apartInPens;
        String chance = sure ? "" : "; it could be chance";
        NavelGroup in = NavelGroup.MODELLED;
        int pens = model.clusters() - model.withoutPen();
        return new Counted("Each doubling of the delay multiplies the odds of a navel infection by "
                + Plain.ratio(odds.value())
                + " (95 % interval " + Plain.span(odds) + ")" + chance + ". "
                + in.count(model.calves(), Plain.count(model.calves(), "treated calf", "treated calves")) + ", "
                + in.cases(model.cases(), Plain.count(model.cases(), "case", "cases")) + ", "
                + Plain.count(pens, "pen", "pens")
                + (model.withoutPen() == 0
                        ? "."
                        : ", and " + Plain.count(model.withoutPen(), "calf", "calves") + " without one.")
                + (sure ? "" : fewerThanAbove(answer)) + model.withCare());
    }

    /** Why the model can show less than the classes and the headline, where one of them finds more than chance. */
    private static String fewerThanAbove(NavelsAnswer answer) {
        int known = answer.late().known().n();
        int modelled = answer.late().adjusted().calves();
        boolean above = answer.late().against().moreThanChance()
                || answer.trend().known() && answer.trend().p() < 1 - GroupRisk.LEVEL;
        return !above || modelled == known
                ? ""
                : " It leaves out calves not treated by 24 hours and those with something it allows for not on record,"
                        + " so that it holds " + NavelGroup.MODELLED.count(modelled, Plain.whole(modelled)) + " of "
                        + NavelGroup.KNOWN.count(known, Plain.whole(known)) + " and can show less than is said above.";
    }

    /** Late against early within pens: how many pens lend anything, and whether they differ. */
    public static Counted pens(NavelsAnswer answer) {
        OverPens pens = answer.late().against().mantelHaenszel();
        if (answer.late().against().why() != null || pens.pens() == 0) {
            return new Counted("No pen holds both early and late calves, so that nothing can be compared within pens.");
        }
        String who = (pens.pens() == 1 ? "One pen holds" : Plain.whole(pens.pens()) + " pens hold")
                + " both early and late calves"
                + (pens.seasons() > 1 ? " of one season, and each season is compared by itself" : "")
                + (pens.withoutPen() == 0 ? ". " : "; " + withoutPen(pens.withoutPen()) + " no pen on record. ");
        if (!pens.homogeneity().known()) {
            return new Counted(who + "Whether pens differ in this cannot be tested. "
                    + pens.homogeneity().why());
        }
        String p = " (Breslow–Day–Tarone, p " + Plain.p(pens.homogeneity().p()) + ").";
        if (pens.sparse()) {
            return new Counted(who
                    + "Whether pens differ in this stays open: they hold too few cases for a test to be trusted" + p);
        }
        return new Counted(who
                + (pens.homogeneity().p() < 1 - GroupRisk.LEVEL
                        ? "Pens differ in this by more than chance alone makes likely, so that one ratio for all hides"
                                + " something"
                        : "That pens differ in this could be chance")
                + p);
    }

    private static String withoutPen(int n) {
        return NavelGroup.WITHOUT_PEN.count(n, Plain.count(n, "calf", "calves")) + (n == 1 ? " has" : " have");
    }

    /** Whom the model leaves out, and what it does not allow for; why not is said beside the adjusted ratio. */
    public static Counted modelled(AdjustedDose model) {
        if (model.why() != null) {
            return new Counted("");
        }
        StringBuilder words = new StringBuilder();
        if (!model.leftOut().isEmpty()) {
            List<String> left = new ArrayList<>();
            model.leftOut()
                    .forEach((name, n) -> left.add(covariates(List.of(name)) + " ("
                            + NavelGroup.lacking(name).count(n, Plain.whole(n)) + ")"));
            words.append("Left out, as it is not recorded: ")
                    .append(String.join(", ", left))
                    .append('.');
        }
        if (!model.dropped().isEmpty()) {
            words.append(" Not allowed for: ")
                    .append(covariates(List.copyOf(model.dropped().keySet())))
                    .append('.');
        }
        return new Counted(words.toString().strip());
    }

    /** The E-value. */
    public static String eValue(NavelsAnswer answer) {
        EValue e = answer.late().eValue();
        if (e == null) {
            return "There is no E-value, as there is no finite risk ratio.";
        }
        Interval ratio = answer.late().against().riskRatio().interval();
        if (e.limit() == 1) {
            return "E-value " + Plain.ratio(e.estimate()) + ", and 1 for the limit of the interval: as the interval of"
                    + " the risk ratio holds 1, nothing hidden is needed to explain what is seen.";
        }
        String first = "E-value " + Plain.ratio(e.estimate()) + ": to explain away the risk ratio of "
                + Plain.ratio(ratio.value()) + ", something not recorded would have to go with both late treatment and"
                + " navel infection by a risk ratio of at least " + Plain.ratio(e.estimate()) + " each";
        return first + ", and of " + Plain.ratio(e.limit()) + " each to bring the interval to 1.";
    }

    /** What would be avoided. */
    public static Counted avoidable(NavelsAnswer answer) {
        AvoidableRisk avoidable = answer.avoidable();
        if (!avoidable.avoided().known()) {
            return new Counted("What would be avoided if every calf were treated within 15 minutes cannot be said. "
                    + avoidable.avoided().why());
        }
        Interval points = avoidable.avoided().interval();
        String chance = points.low() <= 0 && points.high() >= 0 ? ", so that the gain could be nothing at all" : "";
        int n = avoidable.calves();
        return new Counted("Had every calf been treated within 15 minutes, at " + Plain.number(avoidable.minutes(), 0)
                + (Plain.number(avoidable.minutes(), 0).equals("1") ? " minute" : " minutes")
                + " like the middle one of those who were, and were delay the whole reason, there would have been "
                + Plain.points(points.value(), "fewer", "more", n)
                + " navel infections in 100 calves (allowing for chance, "
                + Plain.points(points.low(), "fewer", "more", n) + " to "
                + Plain.points(points.high(), "fewer", "more", n)
                + chance + "). This stands on " + NavelGroup.COMPARED.count(n, Plain.count(n, "calf", "calves"))
                + " of known delay with everything on record that is allowed for."
                + (avoidable.withCare() ? " Here too there are fewer than ten cases a term: read it with care." : ""));
    }

    /** How many calves would settle it. */
    public static Counted needed(NavelsAnswer answer) {
        TwoGroups against = answer.late().against();
        if (Withstanding.whole(answer)) {
            return new Counted("As far as chance goes, it is settled that calves treated late fared "
                    + (against.riskRatio().interval().value() > 1 ? "worse" : "better") + " than those treated early."
                    + " What treating every calf within 15 minutes would change is another question. More calves would"
                    + " tell the size of the difference more narrowly, not whether delay is the reason.");
        }
        if (against.moreThanChance()) {
            return new Counted("Whether calves treated late fare otherwise than those treated early is not settled: the"
                    + " bare difference between late and early is more than chance alone makes likely, but "
                    + Withstanding.but(answer) + ".");
        }
        if (against.riskRatio().excludes(1) || against.ratioAt21Days().excludes(1)) {
            return new Counted(
                    "Whether it is settled that late and early differ hangs on the way of reckoning: intervals and"
                            + " exact test do not agree.");
        }
        CalvesNeeded needed = answer.needed();
        if (needed.why() != null) {
            return new Counted(
                    "How many calves would settle whether late and early differ cannot be said. " + needed.why());
        }
        int known = answer.late().known().n();
        if (needed.inAll() > NO_HERD * known) {
            String now = NavelGroup.KNOWN.count(known, Plain.whole(known));
            return new Counted(
                    "The difference seen is so small that no herd could settle it: with a chance of 80 % that it shows,"
                            + " it takes about " + Plain.about(needed.inAll()) + " calves, and there are " + now
                            + ". A larger difference may still be there, as the interval says.");
        }
        String inAll = "To settle a difference of the size seen, with a chance of 80 % that it shows, takes about "
                + Plain.about(needed.inAll()) + " calves with the same mix of early and late: ";
        return new Counted(
                needed.more() == 0
                        ? inAll + "there are that many, and it could be chance all the same." + LEANING
                        : inAll + "about " + Plain.about(needed.more()) + " more." + LEANING);
    }

    /** What to mind. */
    public static List<Counted> cautions(NavelsAnswer answer) {
        List<String> cautions = new ArrayList<>();
        cautions.add(observational());
        int censored = answer.late().known().censored();
        if (censored > 0) {
            cautions.add(NavelGroup.CENSORED.count(censored, Plain.count(censored, "calf", "calves"))
                    + (censored == 1 ? " has" : " have")
                    + " not been followed to the end, " + ending(answer, censored)
                    + ". Risks at 21 days allow for that;"
                    + " ratios and tests of counts take such calves as not sick, which is fair only if early and late"
                    + " calves leave alike.");
        }
        cautions.add("A treatment that nobody wrote down counts as none by 24 hours, though missing is not no.");
        cautions.add(
                "Navels that look bad are looked at more often. Product, way of use and medicines are for the vet in"
                        + " charge to decide.");
        return cautions.stream().map(Counted::new).toList();
    }

    /** Why calves were not followed to 21 days: those still followed are too young, the others left. */
    private static String ending(NavelsAnswer answer, int censored) {
        int young = (int) NavelGroup.CENSORED.of(answer.calves()).stream()
                .filter(calf -> calf.verdict().pending())
                .count();
        return young == 0 ? "having left" : young == censored ? "being too young" : "having left or being too young";
    }

    /** Covariates in words. */
    public static String covariates(List<String> names) {
        List<String> words = names.stream()
                .map(name -> switch (name) {
                    case "cleanliness" -> "cleanliness";
                    case "ease" -> "calving ease";
                    case "no_colostrum_by_6_h" -> "colostrum by 6 hours";
                    case Covariates.NIGHT -> "birth at night";
                    default -> name.replace('_', ' ');
                })
                .toList();
        return words.size() < 2
                ? String.join("", words)
                : String.join(", ", words.subList(0, words.size() - 1)) + " and " + words.get(words.size() - 1);
    }
}
