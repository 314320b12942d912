/** Ear tag numbers: read, compared, shown and checked by their published formats; knows nothing of events. */
package wisp.tag;
