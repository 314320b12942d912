/** What is printed on paper: sheets as PDF, with the same figures as the pages. */
package wisp.report;
