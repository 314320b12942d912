package wisp.site;

import java.util.ArrayList;
import java.util.List;
import wisp.chart.Along;
import wisp.chart.Axis;
import wisp.chart.Format;
import wisp.chart.Ink;
import wisp.chart.Layer;
import wisp.chart.Limit;
import wisp.chart.Mark;
import wisp.chart.Picture;
import wisp.chart.Points;
import wisp.question.navels.Measured;
import wisp.question.navels.NavelGroup;
import wisp.question.navels.NavelStrata;
import wisp.question.navels.NavelStratum;
import wisp.question.navels.Plain;
import wisp.statistics.Interval;

/** Draws late against early in each part of the calves, and pooled within the parts, on a ratio scale. */
final class NavelPartsPicture {
    private static final String POOLED = "all, within groups";

    private NavelPartsPicture() {}

    static Picture of(NavelStrata strata, NavelLinks links) {
        List<String> names = new ArrayList<>();
        List<Mark> marks = new ArrayList<>();
        List<Mark> summary = new ArrayList<>();
        List<String> words = new ArrayList<>();
        for (NavelStratum part : strata.strata()) {
            Measured ratio = part.against().riskRatio();
            if (drawn(ratio)) {
                NavelCalvesAsked calves = NavelCalvesAsked.all(NavelGroup.KNOWN).ofStratum(part.name());
                String counts = part.late().cases() + " of " + part.late().n() + " late, "
                        + part.early().cases() + " of " + part.early().n() + " early; ratio ";
                marks.add(mark(ratio.interval(), names.size(), part.name(), counts)
                        .to(links.to(calves)));
                words.add(part.name() + " " + said(ratio.interval()));
                names.add(part.name());
            }
        }
        if (drawn(strata.pooled()) && marks.size() > 1) {
            summary.add(
                    mark(strata.pooled().interval(), names.size(), POOLED, "").to(links.calves(NavelGroup.KNOWN)));
            words.add(POOLED + " " + said(strata.pooled().interval()));
            names.add(POOLED);
        }
        List<Layer> layers = List.of(
                new Limit("no difference", Ink.MUTED, Along.X, 1),
                new Points("", Ink.FIRST, Along.X, marks),
                new Points("", Ink.SUMMARY, Along.X, summary));
        return new Picture(
                "navel-parts",
                "Late against early, by " + strata.by().title(),
                words.isEmpty()
                        ? "No group gives a risk ratio that can be drawn."
                        : "Dots with whiskers on a ratio scale about 1, no difference: " + String.join("; ", words)
                                + ".",
                Axis.log("Risk ratio, over 60 min or none against 60 min or less", Format.NUMBER),
                Axis.categories("Calves", names.isEmpty() ? List.of("none") : names),
                layers);
    }

    /** Whether a ratio has a place on a ratio scale: neither 0 nor without a limit. */
    static boolean drawn(Measured ratio) {
        return ratio.finite() && ratio.interval().low() > 0;
    }

    /** The groups that have no place in the picture, in words; empty where all have. */
    static String notDrawn(NavelStrata strata) {
        List<String> names = strata.strata().stream()
                .filter(part -> !drawn(part.against().riskRatio()))
                .map(NavelStratum::name)
                .toList();
        return names.isEmpty()
                ? ""
                : "Not drawn, having no case or no calf in one of the two: " + String.join(", ", names) + ".";
    }

    private static Mark mark(Interval ratio, int row, String name, String before) {
        return Mark.at(ratio.value(), row, name)
                .between(ratio.low(), ratio.high())
                .saying(before + said(ratio))
                .captioned(said(ratio));
    }

    private static String said(Interval ratio) {
        return Plain.ratio(ratio.value()) + " (" + Plain.span(ratio) + ")";
    }
}
