/**
 * How did the season go? Figures beside last season's and the targets, and where to look for the reason: cause, age,
 * pen and week, each opening onto its calves.
 */
package wisp.question.season;
