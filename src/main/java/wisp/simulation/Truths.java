package wisp.simulation;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializer;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;

/**
 * What is built into a simulated season: effects and shares, each with a sentence, among them those that follow from
 * the model by formula; and the model itself, its constants under their own names. What has no effect on health (gains
 * in weight, days of moves, doses) stands in the code alone.
 */
public final class Truths {
    private static final JsonMapper JSON = JsonMapper.builder()
            .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
            .addModule(new SimpleModule()
                    .addSerializer(LocalDate.class, ToStringSerializer.instance)
                    .addSerializer(OffsetDateTime.class, ToStringSerializer.instance)
                    .addSerializer(ZoneId.class, ToStringSerializer.instance))
            .build();

    private Truths() {}

    /** All truths of a model. */
    public static List<Truth> of(Model model) {
        TruthList truths = new TruthList();
        BirthTruths.births(model.calvings(), truths);
        BirthTruths.cleanliness(model, truths);
        CareTruths.navels(model, truths);
        CareTruths.colostrum(model.colostrum(), truths);
        model.illnesses().forEach(illness -> HealthTruths.illness(illness, truths));
        HealthTruths.death(model.death(), truths);
        RecordTruths.records(model.recording(), truths);
        CareTruths.chores(model.husbandry(), truths);
        return truths.told();
    }

    /**
     * What one simulation holds, as JSON.
     *
     * @param calves how many calves were asked for
     * @param seed the seed they were drawn with
     */
    static ObjectNode json(Model model, int calves, long seed) {
        ObjectNode all = JSON.createObjectNode();
        all.put("season", model.calendar().season());
        all.put("calves", calves);
        all.put("seed", seed);
        ObjectNode truths = all.putObject("truths");
        for (Truth truth : of(model)) {
            truths.putObject(truth.name())
                    .put("value", Math.round(truth.value() * 1e6) / 1e6)
                    .put("means", truth.means());
        }
        all.set("model", JSON.valueToTree(model));
        return all;
    }

    /** JSON as text, indented, lines ended by a line feed on every machine. */
    static String text(ObjectNode json) {
        DefaultIndenter indent = new DefaultIndenter("  ", "\n");
        try {
            return JSON.writer(new DefaultPrettyPrinter().withObjectIndenter(indent))
                            .writeValueAsString(json) + "\n";
        } catch (JsonProcessingException cannotBe) {
            throw new IllegalStateException("a tree of numbers and text could not be written", cannotBe);
        }
    }
}
