/**
 * Figures defined as data: a definition file is read into sealed records, checked for sense, put into an English
 * sentence and evaluated over a cohort. Every estimate carries the calves behind it.
 */
package wisp.indicator;
