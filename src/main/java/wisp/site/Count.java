package wisp.site;

/**
 * A number of calves that opens onto them.
 *
 * @param calves how many
 * @param href their list, empty where there is none to open
 */
public record Count(int calves, String href) {}
