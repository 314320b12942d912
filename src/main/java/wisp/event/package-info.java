/**
 * What happened: one immutable record a kind of husbandry event, the CloudEvents envelope round it, and the checks that
 * an event must pass by itself before it may be recorded.
 */
package wisp.event;
