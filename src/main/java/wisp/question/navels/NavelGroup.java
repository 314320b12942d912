package wisp.question.navels;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import wisp.indicator.Verdict;
import wisp.question.Counted;

/** A group of calves that the answer counts; each can be listed calf by calf. */
public enum NavelGroup {
    KNOWN("whose delay to navel treatment is known", only(NavelCalf::known)),
    EARLY("treated within 60 minutes of birth", only(calf -> calf.early())),
    LATE("treated later than 60 minutes after birth, or not by 24 hours", only(calf -> calf.late())),
    TREATED("treated by 24 hours at a known age", only(calf -> calf.treated())),
    TREATED_LATE("treated later than 60 minutes after birth", only(calf -> calf.treated() && calf.late())),
    WITH_PEN("of known delay and pen of birth", only(calf -> calf.known() && calf.pen() != null)),
    WITHOUT_PEN(
            "of known delay and without a pen of birth on record", only(calf -> calf.known() && calf.pen() == null)),
    CENSORED(
            "of known delay and not followed to 21 days",
            only(calf -> calf.known() && calf.verdict().ending() == Verdict.Ending.CENSORED)),
    WITHOUT_CLEANLINESS(
            "treated, without a cleanliness score, which the model allows for",
            everyone -> Covariates.of(TREATED.of(everyone)).lacking("cleanliness")),
    WITHOUT_EASE(
            "treated, without a recorded calving ease, which the model allows for",
            everyone -> Covariates.of(TREATED.of(everyone)).lacking("ease")),
    WITHOUT_COLOSTRUM(
            "treated, without colostrum of recorded time, which the model allows for",
            everyone -> Covariates.of(TREATED.of(everyone)).lacking("no_colostrum_by_6_h")),
    MODELLED("treated, with everything recorded that the model allows for", NavelGroup::modelled),
    COMPARED("of known delay, with everything recorded that is allowed for", NavelGroup::compared),
    NOT_COMPARED("of known delay, without everything recorded that is allowed for", NavelGroup::notCompared),
    UNTREATED("without a navel treatment on record by 24 hours", only(calf -> calf.known() && !calf.treated())),
    UNKNOWN("whose delay is not known", only(calf -> !calf.known())),
    TREATMENT_HOUR("treated on a day written without its hour", only(calf -> !calf.known() && calf.birthHourKnown())),
    BIRTH_HOUR("born on a day written without its hour", only(calf -> !calf.birthHourKnown())),
    PLACED_EARLY(
            "of unknown delay, but treated within 60 minutes whatever the hours were",
            only(calf -> !calf.known() && calf.possible() == PossibleDelay.EARLY)),
    PLACED_LATE(
            "of unknown delay, but treated later than 60 minutes or not at all whatever the hours were",
            only(calf -> !calf.known() && calf.possible() == PossibleDelay.LATE)),
    MOVABLE("of unknown delay, which may have been on either side of 60 minutes", only(calf -> calf.movable()));

    private final String title;
    private final Function<List<NavelCalf>, List<NavelCalf>> choice;

    NavelGroup(String title, Function<List<NavelCalf>, List<NavelCalf>> choice) {
        this.title = title;
        this.choice = choice;
    }

    /** Its name in addresses. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What its calves have in common, after the word "calves". */
    public String title() {
        return title;
    }

    /** The group of this name. */
    public static Optional<NavelGroup> named(String word) {
        return Arrays.stream(values())
                .filter(group -> group.word().equals(word))
                .findFirst();
    }

    /** Its calves, of all calves at risk. */
    public List<NavelCalf> of(List<NavelCalf> everyone) {
        return choice.apply(everyone);
    }

    /** The words of a count of its calves, with the name of their list. */
    String count(int n, String words) {
        return Counted.count(n, words, "group", word());
    }

    /** The same of those that fell ill. */
    String cases(int n, String words) {
        return Counted.count(n, words, "group", word(), "cases", "true");
    }

    /** The calves that the model leaves out, as one of the things it allows for is not recorded. */
    static NavelGroup lacking(String covariate) {
        return switch (covariate) {
            case "cleanliness" -> WITHOUT_CLEANLINESS;
            case "ease" -> WITHOUT_EASE;
            default -> WITHOUT_COLOSTRUM;
        };
    }

    private static Function<List<NavelCalf>, List<NavelCalf>> only(Predicate<NavelCalf> holds) {
        return calves -> calves.stream().filter(holds).toList();
    }

    private static List<NavelCalf> modelled(List<NavelCalf> everyone) {
        return Covariates.of(TREATED.of(everyone)).calves();
    }

    private static List<NavelCalf> compared(List<NavelCalf> everyone) {
        return Covariates.of(KNOWN.of(everyone)).calves();
    }

    private static List<NavelCalf> notCompared(List<NavelCalf> everyone) {
        Set<NavelCalf> compared = new HashSet<>(compared(everyone));
        return KNOWN.of(everyone).stream()
                .filter(calf -> !compared.contains(calf))
                .toList();
    }
}
