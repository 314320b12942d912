package wisp.chart;

import java.awt.BasicStroke;
import java.util.ArrayList;
import java.util.List;

/**
 * One XChart series to be: corners in pixels, and how they are joined.
 *
 * @param form how the corners are drawn
 * @param ink whose colour it has
 * @param stroke line width and dash
 * @param opacity of the inside of an area, from 0 to 1
 * @param parts chains of corners; a line is broken between them, an area has one
 */
record Trace(Form form, Ink ink, BasicStroke stroke, double opacity, List<List<Outline.Corner>> parts) {

    enum Form {
        LINE,
        AREA,
        DOTS
    }

    static Trace line(Ink ink, double width, float[] dash, List<List<Outline.Corner>> parts) {
        return new Trace(Form.LINE, ink, stroke(width, dash), 0, parts);
    }

    static Trace area(Ink ink, double width, double opacity, List<Outline.Corner> corners) {
        List<Outline.Corner> closed = new ArrayList<>(corners);
        closed.add(corners.get(0));
        return new Trace(Form.AREA, ink, stroke(width, new float[0]), opacity, List.of(closed));
    }

    static Trace dots(Ink ink, List<Outline.Corner> corners) {
        return new Trace(Form.DOTS, ink, stroke(1, new float[0]), 1, List.of(corners));
    }

    static BasicStroke stroke(double width, float[] dash) {
        float wide = (float) width;
        return dash.length == 0
                ? new BasicStroke(wide, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
                : new BasicStroke(wide, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0);
    }
}
