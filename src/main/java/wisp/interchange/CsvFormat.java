package wisp.interchange;

import java.nio.charset.Charset;

/**
 * What a mapping says of a CSV file's outer form; each is null where the file shall tell it.
 *
 * @param encoding how its letters are written
 * @param delimiter what stands between cells
 */
record CsvFormat(Charset encoding, Character delimiter) {}
