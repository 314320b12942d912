package wisp.chart;

import java.util.List;

/** Several pictures of one kind on the same scales, so that they can be compared side by side. */
public final class SmallMultiples {

    private static final int TICKS = 6;

    private SmallMultiples() {}

    /** The pictures with both axes running over all that any of them shows; category axes stay as they are. */
    public static List<Picture> onOneScale(List<Picture> pictures) {
        return pictures.stream()
                .map(picture ->
                        picture.over(shared(picture.x(), pictures, Along.X), shared(picture.y(), pictures, Along.Y)))
                .toList();
    }

    private static Axis shared(Axis axis, List<Picture> pictures, Along along) {
        List<Domain> domains = pictures.stream()
                .map(picture -> Domain.of(picture, along, TICKS))
                .toList();
        return axis.within(
                domains.stream().mapToDouble(Domain::low).min().orElseThrow(),
                domains.stream().mapToDouble(Domain::high).max().orElseThrow());
    }
}
