/**
 * The questions that people ask of a season. Each answer is worked out from the verdicts of a shipped definition, so
 * that its counts open onto the same calves as the figure of that name.
 */
package wisp.question;
