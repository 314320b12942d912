package wisp.question.navels;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;

/**
 * What else differs between calves and is allowed for: cleanliness (score 0–3), calving ease (1–5), no colostrum by
 * 6 h, birth at night, and the season where there are several. Only calves with all of them recorded are taken. One
 * that fewer than half of the calves have recorded would cost more calves than it is worth, and one that never varies
 * says nothing: such are dropped, and named. Night and season, on record for every calf, come last and only where the
 * cases (or the others, if they are fewer) bear ten for each column, that of the delay among them (Peduzzi and others
 * 1996, J Clin Epidemiol 49:1373). The others are kept against that rule, which is then said; below five cases, or
 * five calves without, nothing is fitted at all.
 *
 * @param calves those with everything recorded
 * @param names of the covariates that are used
 * @param terms of the columns: a season has one for each but the first
 * @param columns one a term, one value a calf
 * @param dropped covariates not used, and why
 * @param without calves left out, by what was not recorded first
 */
record Covariates(
        List<NavelCalf> calves,
        List<String> names,
        List<String> terms,
        double[][] columns,
        Map<String, String> dropped,
        Map<String, List<NavelCalf>> without) {

    /** The name of birth at night. */
    static final String NIGHT = "night";

    /** The name of the season, and the beginning of its terms'. */
    static final String SEASON = "season";

    /** Cases that a column needs. */
    static final int CASES = 10;

    /** Cases, and calves without, below which nothing is fitted. */
    static final int LEAST = 5;

    private static final Map<String, Function<NavelCalf, Integer>> ALL = all();

    private static Map<String, Function<NavelCalf, Integer>> all() {
        Map<String, Function<NavelCalf, Integer>> all = new LinkedHashMap<>();
        all.put("cleanliness", NavelCalf::cleanliness);
        all.put("ease", NavelCalf::ease);
        all.put("no_colostrum_by_6_h", calf -> calf.colostrumBy6h() == null ? null : calf.colostrumBy6h() ? 0 : 1);
        return all;
    }

    static Covariates of(List<NavelCalf> everyone) {
        Map<String, String> dropped = new LinkedHashMap<>();
        Map<String, Function<NavelCalf, Integer>> used = new LinkedHashMap<>(ALL);
        ALL.forEach((name, value) -> {
            long recorded =
                    everyone.stream().map(value).filter(Objects::nonNull).count();
            if (2 * recorded < everyone.size()) {
                dropped.put(name, "It is recorded for fewer than half of the calves.");
                used.remove(name);
            }
        });
        Map<String, List<NavelCalf>> without = new LinkedHashMap<>();
        List<NavelCalf> complete = new ArrayList<>();
        for (NavelCalf calf : everyone) {
            used.keySet().stream()
                    .filter(name -> used.get(name).apply(calf) == null)
                    .findFirst()
                    .ifPresentOrElse(
                            name -> without.computeIfAbsent(name, first -> new ArrayList<>())
                                    .add(calf),
                            () -> complete.add(calf));
        }
        Covariates covariates =
                new Covariates(complete, new ArrayList<>(), new ArrayList<>(), new double[0][], dropped, without);
        for (String name : used.keySet()) {
            covariates = covariates.with(name, Map.of(name, used.get(name)), false);
        }
        return covariates
                .with(NIGHT, Map.of(NIGHT, calf -> calf.night() ? 1 : 0), true)
                .withSeasons();
    }

    private Covariates withSeasons() {
        Map<String, Function<NavelCalf, Integer>> seasons = new LinkedHashMap<>();
        calves.stream()
                .map(NavelCalf::season)
                .distinct()
                .sorted()
                .skip(1)
                .forEach(season ->
                        seasons.put(SEASON + " " + season, calf -> calf.season().equals(season) ? 1 : 0));
        return seasons.isEmpty() ? this : with(SEASON, seasons, true);
    }

    /** With one covariate more, of one column or several, if it varies and, where asked, the cases bear it. */
    private Covariates with(String name, Map<String, Function<NavelCalf, Integer>> more, boolean ifBorne) {
        List<double[]> all = new ArrayList<>(Arrays.asList(columns));
        more.values()
                .forEach(value ->
                        all.add(calves.stream().map(value).mapToDouble(v -> v).toArray()));
        double[] first = all.get(columns.length);
        if (Arrays.stream(first).distinct().count() < 2) {
            dropped.put(name, calves.isEmpty() ? "No calf has it all on record." : "It is the same for every calf.");
            return this;
        }
        int fewer = fewer();
        if (ifBorne && fewer < CASES * (1 + all.size())) {
            dropped.put(
                    name,
                    "With it the model needs " + CASES * (1 + all.size()) + " cases and as many calves without, ten a"
                            + " term; " + fewer + " is the smaller number.");
            return this;
        }
        names.add(name);
        terms.addAll(more.keySet());
        return new Covariates(calves, names, terms, all.toArray(double[][]::new), dropped, without);
    }

    /** Cases, or the others where they are fewer. */
    private int fewer() {
        int cases = (int) calves.stream().filter(NavelCalf::sick).count();
        return Math.min(cases, calves.size() - cases);
    }

    /** Why nothing is fitted, null where the cases bear it. */
    String tooFew() {
        if (fewer() >= LEAST) {
            return null;
        }
        boolean cases = 2 * calves.stream().filter(NavelCalf::sick).count() <= calves.size();
        return "Fewer than " + LEAST + (cases ? " cases" : " calves that were no case")
                + ": not adjusted. So few cannot tell one reason from another.";
    }

    /**
     * What is to be minded of a model whose terms are kept against the rule of ten a term; empty where they keep it.
     *
     * @param leading columns before the covariates, that of the delay among them
     */
    String withCare(int leading) {
        int columns = leading + terms.size();
        int cases = (int) calves.stream().filter(NavelCalf::sick).count();
        if (fewer() >= CASES * columns) {
            return "";
        }
        return " Read it with care: its " + (columns == 1 ? "one term is" : columns + " terms are")
                + " kept against the rule of ten a term, which asks for " + CASES * columns
                + (fewer() == cases ? " cases" : " calves that were no case") + "; there are " + fewer() + ".";
    }

    /** How many calves are left out, by what was not recorded first. */
    Map<String, Integer> leftOut() {
        Map<String, Integer> leftOut = new LinkedHashMap<>();
        without.forEach((name, those) -> leftOut.put(name, those.size()));
        return leftOut;
    }

    /** The calves left out as this was not recorded first. */
    List<NavelCalf> lacking(String name) {
        return without.getOrDefault(name, List.of());
    }

    /** The design: ones, the leading columns, the covariates. */
    double[][] design(double[]... leading) {
        double[][] design = new double[calves.size()][];
        for (int i = 0; i < design.length; i++) {
            design[i] = new double[1 + leading.length + columns.length];
            design[i][0] = 1;
            for (int j = 0; j < leading.length; j++) {
                design[i][1 + j] = leading[j][i];
            }
            for (int j = 0; j < columns.length; j++) {
                design[i][1 + leading.length + j] = columns[j][i];
            }
        }
        return design;
    }

    boolean[] outcomes() {
        boolean[] sick = new boolean[calves.size()];
        for (int i = 0; i < sick.length; i++) {
            sick[i] = calves.get(i).sick();
        }
        return sick;
    }

    /** The pen of each calf as a number; a calf without one is a cluster by itself. */
    int[] clusters() {
        Map<String, Integer> numbers = new LinkedHashMap<>();
        int[] clusters = new int[calves.size()];
        for (int i = 0; i < clusters.length; i++) {
            String pen = calves.get(i).pen();
            clusters[i] = pen == null ? -1 - i : numbers.computeIfAbsent(pen, p -> numbers.size());
        }
        return clusters;
    }
}
