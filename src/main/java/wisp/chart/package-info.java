/**
 * Pictures of figures: one immutable {@link wisp.chart.Picture} and two painters, SVG for pages and PNG for print.
 *
 * <p>The package knows neither cattle nor statistics: it is given numbers, words and links, and draws them.
 */
package wisp.chart;
