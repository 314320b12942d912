package wisp.indicator;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wisp.history.Farm;
import wisp.history.Life;

/** Everything that is defined as data: conditions, indicators and the limits of each jurisdiction. */
public final class Definitions {
    private final Conditions conditions;
    private final Map<String, Indicator> indicators;
    private final Map<String, Jurisdiction> jurisdictions;
    private final Map<String, Target> ownTargets;
    private final Practice practice;
    private final Map<String, Jurisdiction> byName = new HashMap<>();

    private Definitions(
            Conditions conditions,
            Map<String, Indicator> indicators,
            Map<String, Jurisdiction> jurisdictions,
            Map<String, Target> ownTargets,
            Practice practice) {
        this.conditions = conditions;
        this.indicators = indicators;
        this.jurisdictions = jurisdictions;
        this.ownTargets = ownTargets;
        this.practice = practice;
        jurisdictions.values().forEach(place -> place.names().forEach(name -> byName.putIfAbsent(name, place)));
    }

    /**
     * Reads the shipped definitions, then those of a data folder's {@code analytics}, which add to them or replace them
     * by id.
     *
     * @param dataFolder null where there is none
     * @throws WrongDefinitions with every fault of every file
     */
    public static Definitions load(Path dataFolder) {
        return with(dataFolder == null ? null : dataFolder.resolve("analytics"));
    }

    /**
     * Reads the shipped definitions, then those of a folder of one's own, which add to them or replace them by id.
     *
     * @param analytics null where there is none
     * @throws WrongDefinitions with every fault of every file
     */
    public static Definitions with(Path analytics) {
        List<DefinitionFault> faults = new ArrayList<>();
        Map<String, String> conditionFiles = new LinkedHashMap<>();
        pick(DefinitionFiles.shipped(""), "conditions.yaml", conditionFiles);
        pick(DefinitionFiles.own(analytics, ""), "conditions.yaml", conditionFiles);
        Conditions conditions = Conditions.read(conditionFiles, faults);
        Map<String, Indicator> indicators = new LinkedHashMap<>();
        Map<String, Jurisdiction> jurisdictions = new LinkedHashMap<>();
        for (Map<String, String> files :
                List.of(DefinitionFiles.shipped("limits"), DefinitionFiles.own(analytics, "limits"))) {
            files.forEach((file, text) ->
                    new LimitsReader(file, faults).read(text).ifPresent(place -> jurisdictions.put(place.id(), place)));
        }
        indicators(DefinitionFiles.shipped("indicators"), conditions, indicators, faults);
        indicators(DefinitionFiles.own(analytics, "indicators"), conditions, indicators, faults);
        Map<String, String> targetFiles = new LinkedHashMap<>();
        pick(DefinitionFiles.own(analytics, ""), OwnTargets.FILE, targetFiles);
        Map<String, Target> ownTargets = OwnTargets.read(targetFiles, indicators, faults);
        Map<String, String> practiceFiles = new LinkedHashMap<>();
        pick(DefinitionFiles.shipped(""), PracticeReader.FILE, practiceFiles);
        pick(DefinitionFiles.own(analytics, ""), PracticeReader.FILE, practiceFiles);
        Practice practice = PracticeReader.read(practiceFiles, faults);
        if (!faults.isEmpty()) {
            throw new WrongDefinitions(faults);
        }
        return new Definitions(conditions, indicators, jurisdictions, ownTargets, practice);
    }

    /** The shipped conditions and limits with one indicator file's text instead of the shipped indicators. */
    static Definitions only(String file, String text) {
        Definitions shipped = load(null);
        List<DefinitionFault> faults = new ArrayList<>();
        Map<String, Indicator> indicators = new LinkedHashMap<>();
        indicators(Map.of(file, text), shipped.conditions, indicators, faults);
        if (!faults.isEmpty()) {
            throw new WrongDefinitions(faults);
        }
        return new Definitions(shipped.conditions, indicators, shipped.jurisdictions, Map.of(), shipped.practice);
    }

    private static void pick(Map<String, String> files, String name, Map<String, String> into) {
        files.forEach((file, text) -> {
            if (file.endsWith(name)) {
                into.put(file, text);
            }
        });
    }

    /** Two files of one place that define the same id contradict each other. */
    private static void indicators(
            Map<String, String> files,
            Conditions conditions,
            Map<String, Indicator> into,
            List<DefinitionFault> faults) {
        Map<String, String> fileOf = new LinkedHashMap<>();
        files.forEach((file, text) -> {
            for (Indicator indicator : new DefinitionReader(conditions, faults).read(file, text)) {
                String other = fileOf.put(indicator.id(), file);
                if (other != null) {
                    String problem = "The id " + indicator.id() + " is defined in " + other + " too.";
                    faults.add(new DefinitionFault(file, 1, problem, "Give one of them another id."));
                }
                into.put(indicator.id(), indicator);
            }
        });
    }

    /** The known illnesses. */
    public Conditions conditions() {
        return conditions;
    }

    /** Every indicator, in the order of reading. */
    public Collection<Indicator> indicators() {
        return indicators.values();
    }

    /** The indicator of this id. */
    public Optional<Indicator> indicator(String id) {
        return Optional.ofNullable(indicators.get(id));
    }

    /** What the farm itself wants of a figure, beside what is published. */
    public Optional<Target> ownTarget(String id) {
        return Optional.ofNullable(ownTargets.get(id));
    }

    /** The jurisdictions whose limits are known. */
    public Collection<Jurisdiction> jurisdictions() {
        return jurisdictions.values();
    }

    /** The law under which a calf lives, empty where its farm's jurisdiction is not known or it has no birth. */
    public Optional<Law> law(Life life) {
        return Law.of(life, jurisdiction(life.farm().jurisdiction()));
    }

    /** The law of a farm's place on a day, for what hangs on that day and not on a birth. */
    public Optional<Law> law(Farm farm, LocalDate day) {
        return jurisdiction(farm.jurisdiction()).flatMap(there -> there.on(day, farm.enterprise()));
    }

    /** What good practice asks beside the law. */
    public Practice practice() {
        return practice;
    }

    /** The jurisdiction that a farm's description names. */
    public Optional<Jurisdiction> jurisdiction(String name) {
        return Optional.ofNullable(byName.get(Jurisdiction.plain(name)));
    }
}
