package wisp.simulation;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import wisp.event.Event;
import wisp.event.FarmDescribed;
import wisp.event.Noted;

/** Simulates one season. The same model, number of calves and seed give the same events on any machine. */
public final class Season {
    /** No life begins longer than this before one that is handed over earlier. */
    private static final Duration TWIN_LAG = Duration.ofMinutes(Newborn.LONGEST_TWIN_LAG_MINUTES);

    private Season() {}

    /** Every event of a season in order of recording, each with its JSON. */
    public static List<Event> simulate(Model model, int calves, long seed) {
        List<Event> events = new ArrayList<>();
        inOrder(model, calves, seed, events::add);
        return events;
    }

    /**
     * Hands over every event of a season in order of recording, each with its JSON. The farm's description comes first;
     * a note on the farm at the cut is the newest. Another seed gives other events of the same names: the log refuses
     * them beside the first, as they would be taken for the same calves.
     *
     * @param calves how many are born
     */
    public static void inOrder(Model model, int calves, long seed, Consumer<Event> to) {
        Calendar calendar = model.calendar();
        RecordingOrder order = new RecordingOrder(to);
        order.add(farm(model, List.of(new FarmDescribed.Season(calendar.season(), calendar.from(), calendar.to()))));
        pens(model).forEach(order::add);
        eachLife(model, calves, seed, life -> {
            order.handOnBefore(life.born().minus(TWIN_LAG));
            life.events().forEach(order::add);
        });
        order.add(booksRead(model));
        order.handOnAll();
    }

    /**
     * Hands over one life after another, in order of birth, without JSON: the way to many lives. Their subjects differ;
     * the beddings of {@link #pens} and the cut of {@link #booksRead} belong to no life.
     */
    public static void eachLife(Model model, int calves, long seed, Consumer<SimulatedLife> to) {
        WallClock clock = new WallClock(model.farm().zone());
        int number = 1;
        for (Calving calving : Calving.draw(model, calves, seed)) {
            Chance chance = new Chance(calving.seed());
            for (Newborn calf : Newborn.of(model, calving, number, clock, chance)) {
                SimulatedLife life = life(model, calf, number, clock, chance);
                if (!life.events().isEmpty()) {
                    to.accept(life);
                }
            }
            number += calving.litter();
        }
    }

    /** Beddings and cleanings of the pens, in order of pen and time, without JSON. */
    public static List<Event> pens(Model model) {
        return new Beddings(model, new WallClock(model.farm().zone())).events(source(model));
    }

    /** The farm's description with these seasons, holding from the day before the first, without JSON. */
    public static Event farm(Model model, List<FarmDescribed.Season> seasons) {
        OffsetDateTime time = seasons.get(0)
                .from()
                .minusDays(1)
                .atTime(9, 0)
                .atZone(model.farm().zone())
                .toOffsetDateTime();
        Model.Farm farm = model.farm();
        FarmDescribed data =
                new FarmDescribed(farm.name(), farm.zone(), farm.jurisdiction(), farm.enterprise(), seasons);
        return new Event(source(model), "farm", "farm", time, true, time.plusMinutes(5), "morning", data, null);
    }

    /** The newest event: a note on the farm at the cut, so that every simulation of a model ends at one moment. */
    public static Event booksRead(Model model) {
        OffsetDateTime cut = model.calendar().cut();
        return new Event(source(model), "cut", "farm", cut, true, cut, "evening", new Noted("books read", null), null);
    }

    static String source(Model model) {
        return "simulated:" + model.calendar().season();
    }

    private static SimulatedLife life(Model model, Newborn calf, int calving, WallClock clock, Chance chance) {
        String season = model.calendar().season();
        String subject = season + "-" + padded(calf.number());
        Notebook page = new Notebook(model, source(model), subject, clock, chance);
        FirstDay firstDay = new FirstDay(model, clock, chance);
        boolean known = firstDay.birth(calf, "cow-" + season + "-" + padded(calving), page);
        if (known && calf.alive()) {
            Chores chores = new Chores(model, clock, chance);
            long sale = chores.sale(calf);
            Course course = Course.of(model, calf, clock, chance);
            page.endsAt(Math.min(sale, course.death()));
            Sickness sickness = new Sickness(model, clock, chance);
            firstDay.care(calf, page);
            new Identity(model, clock, chance).write(calf, page);
            chores.write(calf, sale, page);
            sickness.navelChecks(calf, course, page);
            sickness.write(calf, course, page);
            Corrections.anotherCalfs(model, calf, page, chance);
            Corrections.misdated(model, calf, page, chance);
        }
        return new SimulatedLife(subject, clock.at(calf.minute()), calf.navelMinutes(), calf.score(), page.events());
    }

    private static String padded(int number) {
        String text = Integer.toString(number);
        return "0".repeat(Math.max(0, 4 - text.length())) + text;
    }
}
