/**
 * Files and standards in and out: CloudEvents as JSON Lines, CSV in Wisp's own columns or in anybody's through a
 * mapping file, ICAR ADE JSON, Parquet.
 */
package wisp.interchange;
