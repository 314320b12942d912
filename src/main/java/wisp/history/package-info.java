/**
 * One animal's events folded into its life, the farm's into its own history. Everything here is a pure function of the
 * events and of the farm: no clock, no files, and the order in which events arrived does not matter.
 */
package wisp.history;
