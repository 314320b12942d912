/** The command line, one file a command, and the wiring of the whole. */
package wisp.cli;
