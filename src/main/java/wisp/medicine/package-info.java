/** The medicine book: what was given to which animal, what is missing of each entry, and who left under withdrawal. */
package wisp.medicine;
