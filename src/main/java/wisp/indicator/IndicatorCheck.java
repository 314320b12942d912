package wisp.indicator;

import java.util.Set;

/** Says when a definition can be read but cannot be meant: it could never count anything, or not what it says. */
final class IndicatorCheck {
    private IndicatorCheck() {}

    static void check(Indicator indicator, YamlMap in) {
        Age presentAt = indicator.population().presentAt();
        if (indicator.rule() instanceof Rule.Risk risk) {
            window(indicator, risk.window(), in);
        } else if (indicator.rule() instanceof Rule.Rate rate) {
            window(indicator, rate.window(), in);
        } else if (indicator.rule() instanceof Rule.Feature feature) {
            late(presentAt, feature.window().end(), in);
            hours(indicator, feature.window().end(), in);
            if (feature.firstPresent().isEmpty()) {
                in.fault(
                        "feature", "Every calf would have a feature that asks nothing.", "Name a field and its value.");
            }
        } else if (indicator.rule() instanceof Rule.AmountByAge amount) {
            late(presentAt, amount.by(), in);
            hours(indicator, amount.by(), in);
        } else if (indicator.rule() instanceof Rule.CastratedLawfully) {
            female(indicator, in);
        } else if (indicator.rule() instanceof Rule.DoneAtEnd end) {
            limit(end.limit(), in);
            if (end.event().type() == wisp.event.EventType.CASTRATED) {
                female(indicator, in);
            }
        } else if (indicator.rule() instanceof Rule.DoneByLimit done) {
            limit(done.limit(), in);
        }
        target(indicator, in);
    }

    private static void window(Indicator indicator, Window window, YamlMap in) {
        late(indicator.population().presentAt(), window.start(), in);
        boolean death = outcome(indicator.rule()) instanceof Outcome.Death;
        boolean fromBirth = window.start().exact().isZero() && !window.open();
        if (indicator.population().bornDeadToo() && !(death && fromBirth)) {
            in.fault(
                    "population",
                    "Calves born dead can never come under risk in this window.",
                    "Leave out born: any, or count death from birth on.");
        }
        hours(indicator, window.end(), in);
    }

    private static void hours(Indicator indicator, Age end, YamlMap in) {
        if (end.exact().toHours() < 48 && !indicator.needsHours()) {
            in.fault(
                    "clock",
                    "A window that ends at " + end.text() + " cannot be judged by the day.",
                    "Write clock: hours, so that calves without an hour of birth are left out.");
        }
    }

    private static Outcome outcome(Rule rule) {
        return rule instanceof Rule.Risk risk ? risk.outcome() : rule instanceof Rule.Rate rate ? rate.outcome() : null;
    }

    private static void late(Age presentAt, Age start, YamlMap in) {
        if (presentAt != null && presentAt.compareTo(start) > 0) {
            in.fault(
                    "population",
                    "Outcomes from " + start.text() + " on would be counted before calves enter at " + presentAt.text()
                            + ".",
                    "Let the window begin no earlier than present_at.");
        }
    }

    private static void limit(String limit, YamlMap in) {
        Set<String> known = DayLimit.NAMES;
        if (!known.contains(limit) && !limit.isEmpty()) {
            in.fault(
                    "limit",
                    "No limits file has a limit " + limit + ".",
                    "Write one of: " + String.join(", ", known) + ".");
        }
    }

    private static void female(Indicator indicator, YamlMap in) {
        if (indicator.population().sex() != wisp.event.Birth.Sex.MALE) {
            in.fault("population", "Only bull calves are castrated.", "Write population: {sex: male}.");
        }
    }

    private static void target(Indicator indicator, YamlMap in) {
        Target target = indicator.target();
        boolean share = indicator.measure() != Measure.RATE;
        if (target != null && (target.value() <= 0 || (share && target.value() > 1))) {
            in.fault(
                    in.has("target") ? "target" : "targets",
                    "A target of " + Plain.number(target.value()) + " can never be missed or never be met.",
                    share ? "Give a share between 0 and 1." : "Give a rate over 0.");
        }
    }
}
