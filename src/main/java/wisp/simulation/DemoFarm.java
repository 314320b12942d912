package wisp.simulation;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.function.Consumer;
import wisp.event.Event;
import wisp.event.FarmDescribed;

/**
 * The demo: three seasons of an invented dairy farm, the last read while its youngest calves are still being followed.
 * Against the season before, colostrum came sooner from 2024-25 on; in 2025-26 navels are treated sooner, and the north
 * boxes are bedded every tenth day rather than every fourth and lie wetter.
 */
public final class DemoFarm {
    private static final OffsetDateTime CUT = OffsetDateTime.of(2026, 5, 20, 18, 0, 0, 0, ZoneOffset.ofHours(1));

    private DemoFarm() {}

    /** One season of the demo. */
    record Part(Model model, int calves, long seed) {}

    /**
     * Makes the demo again.
     *
     * @param arguments the folder to write to; {@code demo-data} where none is given
     */
    public static void main(String[] arguments) throws IOException {
        write(Path.of(arguments.length == 0 ? "demo-data" : arguments[0]));
    }

    /** Writes {@code demo.jsonl} and {@code demo.truths.json} into a folder. */
    static void write(Path folder) throws IOException {
        Files.createDirectories(folder);
        SimulateSeason.lines(DemoFarm::inOrder, folder.resolve("demo.jsonl"));
        ObjectNode json = new JsonMapper().createObjectNode();
        json.put("about", "Invented data. What is built into the three simulated seasons of the demo.");
        for (Part part : parts()) {
            json.set(part.model.calendar().season(), Truths.json(part.model, part.calves, part.seed));
        }
        Files.writeString(folder.resolve("demo.truths.json"), Truths.text(json));
    }

    /** Hands over every event in order of recording, each with its JSON. */
    static void inOrder(Consumer<Event> to) {
        RecordingOrder order = new RecordingOrder(to);
        List<FarmDescribed.Season> seasons = parts().stream()
                .map(part -> part.model.calendar())
                .map(c -> new FarmDescribed.Season(c.season(), c.from(), c.to()))
                .toList();
        order.add(Season.farm(parts().get(0).model, seasons));
        for (Part part : parts()) {
            Season.pens(part.model).forEach(order::add);
            Season.eachLife(
                    part.model, part.calves, part.seed, life -> life.events().forEach(order::add));
        }
        order.add(Season.booksRead(parts().get(2).model));
        order.handOnAll();
    }

    static List<Part> parts() {
        Model first = first();
        Model second = first.with(StandardModel.calendar(2024, CUT))
                .with(StandardModel.model().colostrum());
        NavelCare care = second.navelCare();
        Model third = second.with(StandardModel.calendar(2025, CUT))
                .with(new NavelCare(
                        16,
                        care.sigma(),
                        care.nightRatio(),
                        care.outsideRatio(),
                        care.neverByDay(),
                        care.neverByNight(),
                        care.products(),
                        care.sprayShare()))
                .withPlaces(wetNorthBoxes(second.places()));
        return List.of(new Part(first, 224, 2023), new Part(second, 238, 2024), new Part(third, 246, 2025));
    }

    private static Model first() {
        Model standard = StandardModel.model();
        ColostrumFeeding how = standard.colostrum();
        return standard.with(new Model.Farm(
                        "Sallowmere Farm, Ellerdene (invented)",
                        ZoneId.of("Europe/London"),
                        "england",
                        FarmDescribed.Enterprise.DAIRY))
                .with(StandardModel.calendar(2023, CUT))
                .with(new ColostrumFeeding(
                        3.6,
                        how.sigma(),
                        how.nightRatio(),
                        how.volumeL() - 0.5,
                        how.volumeSdL(),
                        how.suckledShare(),
                        how.brixPercent(),
                        how.brixSd(),
                        how.iggGL(),
                        how.iggSigma(),
                        how.iggPerDeficit(),
                        how.iggPerHour(),
                        how.iggPerBrix()));
    }

    private static List<Place> wetNorthBoxes(List<Place> places) {
        return places.stream()
                .map(p -> p.name().equals("north boxes") ? new Place(p.name(), true, p.share(), 0.6, 10) : p)
                .toList();
    }
}
