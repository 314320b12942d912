package wisp.due;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wisp.history.Exit;
import wisp.history.Life;
import wisp.indicator.Definitions;

/** Limits of law and good practice applied to lives: how each step with each calf stands at a moment. */
public final class Due {
    private final Definitions definitions;
    private final List<Step> steps;

    /** The steps that Wisp knows. */
    public Due(Definitions definitions) {
        this(
                definitions,
                List.of(
                        new NavelSteps(),
                        new ColostrumSteps(),
                        new TagSteps(),
                        new LostTagStep(),
                        new SampleSteps(),
                        new CastrationStep(),
                        new BloodStep(),
                        new RegisterStep(),
                        new DisbuddingStep()));
    }

    private Due(Definitions definitions, List<Step> steps) {
        this.definitions = definitions;
        this.steps = steps;
    }

    /** The same with one more kind of step. */
    public Due with(Step more) {
        List<Step> all = new ArrayList<>(steps);
        all.add(more);
        return new Due(definitions, List.copyOf(all));
    }

    /** The definitions in use. */
    Definitions definitions() {
        return definitions;
    }

    /**
     * Every step with one calf, done ones and those that it does not need among them; none before its birth, and none
     * for an animal without a recorded birth.
     *
     * @param row its row in the cohort
     */
    public List<DueItem> of(Life life, int row, Instant at) {
        return asIfPresent(life, row, at).stream().map(item -> gone(life, item)).toList();
    }

    /** The same as if the calf were alive and here. */
    List<DueItem> asIfPresent(Life life, int row, Instant at) {
        if (life.born() == null || life.born().time().isAfter(at)) {
            return List.of();
        }
        DueCalf calf = new DueCalf(life, row, at, definitions.law(life), definitions.practice());
        List<DueItem> items = new ArrayList<>();
        for (Step step : steps) {
            items.addAll(step.of(calf));
        }
        return items;
    }

    /** A calf that is no more here needs nothing, but for what a scheme asks of dead ones too. */
    private static DueItem gone(Life life, DueItem item) {
        return Optional.ofNullable(life.exit())
                .filter(exit -> item.state() != DueState.DONE && item.state() != DueState.NOT_NEEDED)
                .filter(exit -> !(exit.death() && item.goesOn()))
                .map(exit -> item.state(DueState.NOT_NEEDED, words(exit)).ways(List.of()))
                .orElse(item);
    }

    private static String words(Exit exit) {
        return switch (exit.kind()) {
            case BORN_DEAD -> "It was born dead.";
            case DIED -> "It died.";
            case LEFT -> "It left.";
        };
    }
}
