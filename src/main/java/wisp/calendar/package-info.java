/** What is due as a calendar that phones follow (RFC 5545), and the secret addresses under which each person has it. */
package wisp.calendar;
